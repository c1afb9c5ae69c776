//! Printed lists: every sign of a text that says a number is inside a token that was used, or is pointed at.

#![no_main]

use libfuzzer_sys::fuzz_target;

#[path = "../../hostile/account.rs"]
mod account;

fuzz_target!(|text: &str| account::every_number_is_used_or_pointed_at(text));
