//! Projects as they are kept: any sheets of any texts are one.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("project_sheets", text));
