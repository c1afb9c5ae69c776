//! Addresses, records of the log and copies that nobody would write, made up from a seed out of those in `tests/fuzz/corpus`.
//! Each address means a page, and what it brings is answered or refused in words; each record is read or stays what it is;
//! and of a copy everything is taken or counted. libFuzzer cannot reach these readers, which are part of the page.

use crate::backup::taking::take;
use crate::form::Settings;
use crate::frame;
use crate::route::{self, Route};
use crate::store::record::line;
use crate::store::{Entry, Line, Sheets};
use crate::tool::Tools;
use loopwright_project::Toolbox;
use std::panic::catch_unwind;
use texts::MadeUp;

#[path = "../../../tests/fuzz/made_up.rs"]
mod texts;

const LINKS: &str = include_str!("../../../tests/fuzz/corpus/links.txt");
const RECORDS: &str = include_str!("../../../tests/fuzz/corpus/log_records.txt");

/// Any number will do; another one makes other addresses.
const SEED: u64 = 132_116;

/// Enough to cut and mix each of the lines many times.
const ADDRESSES: u32 = 2_000;
const LOGS: u32 = 1_000;
const RECORDS_OF_A_LOG: usize = 20;

#[test]
fn any_address_is_a_page() {
    for address in LINKS.lines() {
        open(address);
    }
    let mut made_up = MadeUp::of(LINKS.lines(), SEED);
    for _ in 0..ADDRESSES {
        let address = made_up.text();
        let outcome = catch_unwind(|| open(&address));
        assert!(outcome.is_ok(), "the page cannot have this address: {address:?}");
    }
}

/// Reads an address as the page does, and asks the tool that it names.
fn open(address: &str) {
    let route = route::parse(address);
    assert_eq!(route::parse(&route::print(&route)), route);
    match route {
        Route::Tool { id, fields } => ask(&id, &fields),
        Route::Embed { id, fields, options } => {
            let _ = frame::parse(&options);
            ask(&id, &fields);
        }
        Route::Brought(project) => {
            let _ = loopwright_project::link::read(&project);
        }
        _ => {}
    }
}

fn ask(id: &str, pairs: &route::Pairs) {
    let fields = route::to_fields(pairs);
    let answer = Tools::measuring(Settings::default()).answer(id, &fields);
    let is_said = answer.err().is_none_or(|troubles| !troubles.is_empty());
    assert!(is_said, "{id} has no answer and does not say why");
}

/// Whatever stands in a log, it is read, and as a copy to bring back it is taken or counted.
#[test]
fn any_log_is_read_and_any_copy_is_counted() {
    let mut made_up = MadeUp::of(RECORDS.lines(), SEED);
    let mut known = 0;
    for _ in 0..LOGS {
        let records: Vec<String> = (0..RECORDS_OF_A_LOG).map(|_| made_up.text()).collect();
        let outcome = catch_unwind(|| bring_back(&records));
        known += outcome.unwrap_or_else(|_| panic!("the page cannot have this log: {records:#?}"));
    }
    assert!(known > LOGS as usize, "only {known} of all records were read");
}

/// Reads the records, and brings what they say back as a copy; how many were read.
fn bring_back(records: &[String]) -> usize {
    let lines = records.iter().map(|record| (record, line(record)));
    let read = lines.filter_map(|(record, line)| match line {
        Line::Known(entry) => Some(entry),
        Line::Foreign(text) => {
            assert_eq!(&text, record, "what is not read stays what it is");
            None
        }
    });
    let entries: Vec<Entry> = read.collect();
    let mut sheets = Sheets::default();
    for entry in &entries {
        sheets.apply(entry);
    }
    let copy: Vec<Entry> = entries.iter().filter(|entry| entry.typed.is_some()).cloned().collect();
    let set = copy.len();
    let taken = take(copy.clone());
    let is_there = |entry: &&Entry| taken.sheets.text(&entry.sheet, &entry.field).is_some();
    assert!(
        copy.iter().filter(is_there).count() + taken.left_out.number() >= set,
        "{copy:#?}"
    );
    entries.len()
}
