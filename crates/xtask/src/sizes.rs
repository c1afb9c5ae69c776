//! How many bytes travel: each file as it is, packed with gzip, and packed with brotli, as a table; and how many may.

use crate::{files::Files, house};
use anyhow::{Context, Result, ensure};
use std::{fs, io::Write};

/// What the house may weigh without a tool in it, in bytes: Yew, the desk, fields, drawings, styles. Fifteen thousand of
/// them are what iterators, `format!`, the library's maps and its sort weigh where sources are written to be read, and
/// fifteen thousand the readers of printed lists, labels and needles, and what they ask where a number is in doubt.
const HOUSE: usize = 162_000;

/// What each tool adds to that: its sums, its sentences, and a drawing to scale. It was seven thousand when a tool had a
/// line for an answer; rounds written out, tracks, divisions and short rows with their pictures, questions the other way
/// round, and what the next tool is handed weigh the rest.
const TOOL: usize = 11_700;

/// Pages that are no tool, and what the readers of whole texts add to what a tool may weigh, each with what it weighed when it
/// came. None may add more than [`PAGE`].
const PAGES: [(&str, usize); 27] = [
    ("home, with its search", 8_300),
    ("a tool inside another page", 14_500),
    ("what it tells that page, as data", 6_000),
    ("the lines to put it there, with their preview", 15_900),
    ("the element for other pages, and the lesson that has it", 7_100),
    ("the page in one file", 5_200),
    ("projects: facts that fields follow, and which project is open", 14_000),
    ("the steps of a project, each answered without being drawn", 15_500),
    (
        "the page of a project: facts, what moved, totals, the piece to scale, an example",
        15_000,
    ),
    ("steps of a project that are knitted at the same time", 9_000),
    (
        "what a project comes to: stitches, hours, cords, and the yarn's sections from its steps",
        11_000,
    ),
    ("a project as a file, written and read by serde_json", 15_500),
    (
        "a project as a link, packed and unpacked, and looked at before it is kept",
        15_500,
    ),
    ("a link as a picture to scan", 13_000),
    (
        "counts by names of her own, further facts, and what of them cannot be read",
        15_500,
    ),
    (
        "what is said of a storage that fails, and a later version's project to look at",
        11_000,
    ),
    ("the rows of nine tools, told one by one", 16_000),
    ("the page that is knitted from, row by row", 15_500),
    (
        "the place in the knitting, its counters, her pace, and the screen kept awake",
        8_500,
    ),
    (
        "what a link, a copy or a file says in vain, each said where it stands",
        13_000,
    ),
    ("the page about links, made from the tables of the fields", 8_000),
    (
        "windows that show one truth, a storage that is looked at again, and what lay there before",
        16_000,
    ),
    (
        "lists of sizes found in a whole text, and what is doubtful in them",
        12_500,
    ),
    (
        "a text that is hers alone: opened, marked, asked about, kept only if she says so",
        6_500,
    ),
    (
        "written lines read: abbreviations, repeats, sizes, and what cannot be read",
        15_500,
    ),
    ("written lines worked on a needle, with markers and holders", 11_000),
    (
        "where a line does not come out: its place, its drawing, and the nearest that would",
        10_500,
    ),
];

/// The most that a page which is no tool may add.
const PAGE: usize = 16_000;

/// How many bytes the folder may weigh in all, each file packed with brotli, and what the number is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Budget {
    /// How many tools there are.
    pub tools: usize,
    /// What all pages that are no tool may add.
    pub pages: usize,
}

impl Budget {
    /// The budget for as many tools as the maths lists now.
    pub fn now() -> Result<Self> {
        let path = house::root().join("crates/loopwright/src/tools.rs");
        let source = fs::read_to_string(&path).with_context(|| format!("cannot read {}", path.display()))?;
        let tools = tools(&source).len();
        ensure!(
            tools > 0,
            "{} lists no tool in the form `tool in Group,`",
            path.display()
        );
        for (name, weight) in PAGES {
            ensure!(
                weight <= PAGE,
                "the page {name} may add {PAGE} bytes to the budget, not {weight}"
            );
        }
        let pages = PAGES.iter().map(|(_, weight)| weight).sum();
        Ok(Self { tools, pages })
    }

    /// The number of bytes.
    pub fn bytes(self) -> usize {
        HOUSE + TOOL * self.tools + self.pages
    }
}

/// The tools in the rows of the form `tool in Group,` of their list.
pub fn tools(source: &str) -> Vec<String> {
    let row = |line: &str| match line.split_whitespace().collect::<Vec<_>>()[..] {
        [tool, "in", group] if group.ends_with(',') => Some(tool.to_owned()),
        _ => None,
    };
    source.lines().filter_map(row).collect()
}

/// A file's three sizes in bytes.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Sizes {
    /// As it is.
    pub raw: usize,
    /// Packed with gzip at its strongest.
    pub gzip: usize,
    /// Packed with brotli at its strongest.
    pub brotli: usize,
}

/// Packs with gzip, without a time or a name, so that the same bytes always give the same bytes.
pub fn gzip(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut encoder = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?)
}

/// The sizes of one file.
pub fn sizes(bytes: &[u8]) -> Result<Sizes> {
    Ok(Sizes {
        raw: bytes.len(),
        gzip: gzip(bytes)?.len(),
        brotli: brotli(bytes)?.len(),
    })
}

/// The sizes of all files together, each packed by itself.
pub fn total(files: &Files) -> Result<Sizes> {
    let mut sum = Sizes::default();
    for bytes in files.values() {
        sum = plus(sum, sizes(bytes)?);
    }
    Ok(sum)
}

/// A table with a line for each file and one for all, and what that last line says.
pub fn table(files: &Files) -> Result<(String, Sizes)> {
    let mut text = line("bytes", ["raw", "gzip -9", "brotli 11"].map(str::to_owned));
    let mut sum = Sizes::default();
    for (path, bytes) in files {
        let sizes = sizes(bytes)?;
        sum = plus(sum, sizes);
        text += &row(path, sizes);
    }
    Ok((text + &row("in all", sum), sum))
}

fn plus(a: Sizes, b: Sizes) -> Sizes {
    Sizes {
        raw: a.raw + b.raw,
        gzip: a.gzip + b.gzip,
        brotli: a.brotli + b.brotli,
    }
}

fn row(name: &str, sizes: Sizes) -> String {
    line(
        name,
        [sizes.raw, sizes.gzip, sizes.brotli].map(|count| count.to_string()),
    )
}

fn line(name: &str, [raw, gzip, brotli]: [String; 3]) -> String {
    format!("{name:<32}{raw:>10}{gzip:>10}{brotli:>11}\n")
}

/// Packs with brotli, at its strongest.
pub fn brotli(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut packed = Vec::new();
    // The window (22, 4 MB) is the widest that every browser takes, and what servers use.
    brotli::CompressorWriter::new(&mut packed, 1 << 16, 11, 22).write_all(bytes)?;
    Ok(packed)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_budget_grows_with_the_list_of_tools() {
        let source = "//! A tool in a file,\nthen! {\n    gauge in Before,\n    cast_on in Starting,\n}\n";
        assert_eq!(tools(source).len(), 2);
        let pages = 12_500;
        assert_eq!(Budget { tools: 16, pages: 0 }.bytes(), 349_200);
        assert_eq!(Budget { tools: 17, pages }.bytes(), 373_400);
        assert!(Budget::now().unwrap().tools >= 16);
    }

    #[test]
    fn packing_makes_repetition_small_and_is_repeatable() {
        let bytes = b"knit ".repeat(1000);
        let found = sizes(&bytes).unwrap();
        assert!(found.raw == 5000 && found.gzip < 100 && found.brotli < 60, "{found:?}");
        assert_eq!(gzip(&bytes).unwrap(), gzip(&bytes).unwrap());
    }

    #[test]
    fn the_table_has_a_line_for_each_file_and_one_for_all() {
        let files = Files::from([("a".to_owned(), vec![0; 10]), ("b".to_owned(), vec![0; 20])]);
        let (table, sum) = table(&files).unwrap();
        assert_eq!(table.lines().count(), 4);
        assert!(table.lines().last().unwrap().contains("30"), "{table}");
        assert_eq!(sum, total(&files).unwrap());
    }
}
