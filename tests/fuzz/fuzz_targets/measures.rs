//! Measures, counts, needles and gauges: what is read lies within the limits.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../readers/mod.rs"]
mod readers;

fuzz_target!(|text: &str| readers::read("measures", text));
