//! How many bytes travel: each file as it is, packed with gzip, and packed with brotli, as a table.

use crate::files::Files;
use anyhow::Result;
use std::io::Write;

/// The most that the folder may weigh in all, each file packed with brotli.
pub const BUDGET: usize = 200_000;

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

/// A table with a line for each file and one for all.
pub fn table(files: &Files) -> Result<String> {
    let mut text = line("bytes", ["raw", "gzip -9", "brotli 11"].map(str::to_owned));
    let mut sum = Sizes::default();
    for (path, bytes) in files {
        let sizes = sizes(bytes)?;
        sum = plus(sum, sizes);
        text += &row(path, sizes);
    }
    Ok(text + &row("in all", sum))
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

fn brotli(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut packed = Vec::new();
    // The window (22, 4 MB) is the widest that every browser takes, and what servers use.
    brotli::CompressorWriter::new(&mut packed, 1 << 16, 11, 22).write_all(bytes)?;
    Ok(packed)
}

#[cfg(test)]
mod tests {
    use super::*;

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
        let table = table(&files).unwrap();
        assert_eq!(table.lines().count(), 4);
        assert!(table.lines().last().unwrap().contains("30"), "{table}");
        assert_eq!(total(&files).unwrap().raw, 30);
    }
}
