//! Written lines: no text goes on for ever, and what is printed reads the same.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("written_lines", text));
