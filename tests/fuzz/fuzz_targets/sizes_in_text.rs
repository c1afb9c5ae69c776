//! One size marked through a text: no letter of it is lost.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("sizes_in_text", text));
