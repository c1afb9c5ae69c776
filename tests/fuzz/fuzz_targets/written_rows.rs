//! Written rows: what is read comes to an end on the needle, and comes back from what is written.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("written_rows", text));
