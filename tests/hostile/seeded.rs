//! Everything that reads text, against texts that are made up from a seed out of those in `tests/fuzz/corpus`. A text that
//! something is wrong with is named.

use crate::made_up::MadeUp;
use crate::readers::{READERS, Reader};
use std::fs;
use std::panic::catch_unwind;
use std::path::Path;

/// Where the texts to begin with are, a line each.
const CORPUS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/fuzz/corpus");

/// Any number will do; another one makes other texts.
const SEED: u64 = 132_116;

fn try_out(name: &str) {
    let reader = READERS
        .iter()
        .find(|reader| reader.name == name)
        .expect("a reader of this name");
    let corpus = fs::read_to_string(Path::new(CORPUS).join(format!("{name}.txt"))).expect("texts to begin with");
    for text in corpus.lines() {
        try_one(reader, text);
    }
    let mut made_up = MadeUp::of(corpus.lines(), SEED);
    for _ in 0..reader.texts {
        try_one(reader, &made_up.text());
    }
}

fn try_one(reader: &Reader, text: &str) {
    let outcome = catch_unwind(|| (reader.read)(text));
    assert!(outcome.is_ok(), "{} cannot have this text: {text:?}", reader.name);
}

macro_rules! readers {
    ($($name:ident)*) => {
        $(#[test]
        fn $name() {
            try_out(stringify!($name));
        })*

        #[test]
        fn every_reader_is_tried() {
            assert_eq!(READERS.map(|reader| reader.name), [$(stringify!($name)),*]);
        }
    };
}

readers! { printed_lists measures written_rows written_lines sizes_in_text project_files project_links project_sheets }

#[test]
fn the_same_seed_makes_the_same_texts() {
    let texts = |seed| {
        let mut made_up = MadeUp::of(["132 (144, 156) sts"], seed);
        (0..50).map(|_| made_up.text()).collect::<Vec<_>>()
    };
    assert_eq!(texts(1), texts(1));
    assert_ne!(texts(1), texts(8));
}
