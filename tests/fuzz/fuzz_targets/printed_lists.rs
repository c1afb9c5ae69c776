//! Printed lists: every sign of a text that says a number is inside a token that was used, or is pointed at.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("printed_lists", text));
