//! Projects as files: each opens or is refused, and what opened comes back.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("project_files", text));
