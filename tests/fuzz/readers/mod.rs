//! What reads text, by the names of its fuzz targets, each with what has to be so of any text. libFuzzer makes up texts against
//! them (`cargo xtask fuzz`), and so do the tests in `tests/hostile`, a fixed number from a seed.

mod lines;
pub mod lists;
mod marked;
pub mod measures;
mod projects;
mod rows;

/// A reader, and how many texts are tried on it in the tests: as many as take a few seconds.
pub struct Reader {
    /// What it is called: its fuzz target, and the file of texts in `corpus/` to begin with.
    pub name: &'static str,
    /// Reads a text, and panics where something is not as it has to be.
    pub read: fn(&str),
    /// How many texts.
    #[allow(dead_code, reason = "libFuzzer counts seconds")]
    pub texts: u32,
}

/// All of them.
pub const READERS: [Reader; 8] = [
    Reader::new("printed_lists", lists::every_number_is_used_or_pointed_at, 20_000),
    Reader::new("measures", measures::every_reading_is_within_limits, 20_000),
    Reader::new("written_rows", rows::every_row_comes_to_an_end, 5_000),
    Reader::new("written_lines", lines::every_line_comes_to_an_end, 1_000),
    Reader::new("sizes_in_text", marked::no_letter_is_lost, 5_000),
    Reader::new("project_files", projects::a_file_that_opens_comes_back, 20_000),
    Reader::new("project_links", projects::a_link_that_opens_comes_back, 20_000),
    Reader::new("project_sheets", projects::any_sheets_are_a_project, 20_000),
];

impl Reader {
    const fn new(name: &'static str, read: fn(&str), texts: u32) -> Self {
        Self { name, read, texts }
    }
}

/// Reads a text with the reader of this name.
#[allow(dead_code, reason = "for libFuzzer")]
pub fn read(name: &str, text: &str) {
    let reader = READERS.iter().find(|reader| reader.name == name);
    (reader.expect("a reader of this name").read)(text);
}
