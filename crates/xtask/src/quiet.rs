//! Leaves out what the program would say when it stops by a fault in it.
//!
//! A Rust panic makes a message and then traps. A knitter never sees the message: on the trap `boot.js` shows the
//! recover screen. So each function that only makes the message or hands it on traps at once, and `wasm-opt` drops what
//! fed it. The program still stops where it stopped.
//!
//! Text is made by `core::fmt` for those messages alone: the page's own words are put together without it. Where that
//! is so, all of `core::fmt` goes as well. `trunk serve` builds without this step and says everything to whoever works
//! on the page.

use crate::run::say;
use anyhow::{Result, ensure};
use std::ops::Range;
use walrus::{
    ConstExpr, Data, DataKind, Function, FunctionId, FunctionKind, InstrLocId, Module,
    ir::{Unreachable, Value, Visitor, dfs_in_order},
};

/// The function every panic with a message goes through.
const PANIC: &str = "core::panicking::panic_fmt";

/// What the names of the functions hold that only report a panic. All of them never return, or serve one that does not.
const REPORTERS: [&str; 20] = [
    "core::panicking::",
    "core::option::expect_failed",
    "core::option::unwrap_failed",
    "core::result::unwrap_failed",
    "core::slice::index::slice_",
    "core::str::slice_error_fail",
    "core::cell::panic_already_",
    "core::cell::lazy::panic",
    "alloc::raw_vec::handle_error",
    "alloc::raw_vec::capacity_overflow",
    "alloc::alloc::handle_alloc_error",
    "std::thread::local::panic_access_error",
    "std::panicking::begin_panic",
    "std::panicking::panic_handler",
    "std::panicking::panic_with_hook",
    "::__rust_end_short_backtrace",
    "::rust_begin_unwind",
    "::assert_failed",
    "::len_mismatch_fail",
    "console_error_panic_hook::hook",
];

/// Makes each function that only reports a panic trap at once, and blanks what it would have said.
///
/// # Errors
/// When the function every panic goes through is not there by its name: then a new compiler names them in another way.
pub fn quiet(module: &mut Module) -> Result<()> {
    ensure!(
        module.funcs.iter().any(|function| name(function).starts_with(PANIC)),
        "the program has no function {PANIC}, so its panics cannot be made quiet"
    );
    trap(module, |name| REPORTERS.iter().any(|reporter| name.contains(reporter)));
    match formatter(module) {
        None => trap(module, formats),
        Some(name) => say(&format!(
            "{name} makes text by core::fmt, so the page has to carry that"
        )),
    }
    for id in module.data.iter().map(Data::id).collect::<Vec<_>>() {
        let data = module.data.get_mut(id);
        if let DataKind::Active {
            offset: ConstExpr::Value(Value::I32(start)),
            ..
        } = data.kind
        {
            blank_places(start.cast_unsigned(), &mut data.value);
        }
    }
    walrus::passes::gc::run(module);
    Ok(())
}

/// Makes the functions with such names trap at once.
fn trap(module: &mut Module, is_meant: impl Fn(&str) -> bool) {
    for function in module.funcs.iter_mut() {
        let is_meant = is_meant(&name(function));
        if let FunctionKind::Local(body) = &mut function.kind
            && is_meant
        {
            let entry = body.entry_block();
            body.block_mut(entry).instrs = vec![(Unreachable {}.into(), InstrLocId::default())];
        }
    }
}

/// Whether a function of this name makes text by `core::fmt`.
fn formats(name: &str) -> bool {
    name.contains("core::fmt::") || name.contains("alloc::fmt::format")
}

/// The first function that calls on `core::fmt` and is no part of it.
fn formatter(module: &Module) -> Option<String> {
    module.funcs.iter_local().find_map(|(caller, body)| {
        let mut calls = Calls::default();
        dfs_in_order(&mut calls, body, body.entry_block());
        let caller = name(module.funcs.get(caller));
        let mut called = calls.0.iter().map(|id| name(module.funcs.get(*id)));
        (!formats(&caller) && called.any(|name| formats(&name))).then_some(caller)
    })
}

/// The functions that a function calls by name.
#[derive(Default)]
struct Calls(Vec<FunctionId>);

impl Visitor<'_> for Calls {
    fn visit_function_id(&mut self, function: &FunctionId) {
        self.0.push(*function);
    }
}

/// Blanks the places in the sources that panics name, and the paths of those sources; `start` is the first byte's address.
///
/// A place is four words: the address of a path, its length, a line and a column. Nothing else looks like one.
fn blank_places(start: u32, bytes: &mut [u8]) {
    let mut blanks: Vec<Range<usize>> = Vec::new();
    for (at, place) in bytes.windows(16).enumerate().step_by(4) {
        let word = |number: usize| {
            place[number * 4..]
                .first_chunk()
                .map_or(0, |word| u32::from_le_bytes(*word))
        };
        let from = word(0).wrapping_sub(start) as usize;
        let path = from..from.saturating_add(word(1) as usize);
        let is_place = (1..20_000).contains(&word(2)) && (1..1_000).contains(&word(3));
        if is_place && bytes.get(path.clone()).is_some_and(|path| path.ends_with(b".rs")) {
            blanks.extend([at..at + 16, path]);
        }
    }
    for blank in blanks {
        bytes[blank].fill(0);
    }
}

fn name(function: &Function) -> String {
    plain(function.name.as_deref().unwrap_or_default())
}

/// A function's name without the hashes of its crates, which stand in brackets.
fn plain(name: &str) -> String {
    let mut depth = 0;
    let mut plain = String::new();
    for letter in name.chars() {
        match letter {
            '[' => depth += 1,
            ']' => depth -= 1,
            _ if depth == 0 => plain.push(letter),
            _ => (),
        }
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;
    use walrus::{FunctionBuilder, FunctionId};

    /// A program whose exported `main` calls a function of this name, which calls another.
    fn program(name: &str) -> Module {
        let mut module = Module::default();
        let told = add(&mut module, "told", None);
        let teller = add(&mut module, name, Some(told));
        let main = add(&mut module, "main", Some(teller));
        module.exports.add("main", main);
        module
    }

    fn add(module: &mut Module, name: &str, callee: Option<FunctionId>) -> FunctionId {
        let mut builder = FunctionBuilder::new(&mut module.types, &[], &[]);
        builder.name(name.to_owned());
        if let Some(callee) = callee {
            builder.func_body().call(callee);
        }
        builder.finish(Vec::new(), &mut module.funcs)
    }

    fn traps(module: &Module, name: &str) -> bool {
        let function = module.funcs.get(module.funcs.by_name(name).unwrap());
        let body = function.kind.unwrap_local();
        body.block(body.entry_block())
            .instrs
            .first()
            .is_some_and(|first| first.0.is_unreachable())
    }

    #[test]
    fn a_panic_traps_and_what_fed_it_is_gone() {
        let name = "core[c593]::panicking::panic_fmt";
        let mut module = program(name);
        quiet(&mut module).unwrap();
        assert!(traps(&module, name) && !traps(&module, "main"));
        assert!(module.funcs.by_name("told").is_none());
    }

    #[test]
    fn what_the_page_itself_formats_stays() {
        let (panic, write) = ("core::panicking::panic_fmt", "core[c593]::fmt::write");
        let mut module = program(write);
        assert_eq!(formatter(&module).as_deref(), Some("main"));
        let panic = add(&mut module, panic, None);
        module.exports.add("panic", panic);
        quiet(&mut module).unwrap();
        assert!(!traps(&module, write));
    }

    #[test]
    fn a_program_whose_panics_are_not_found_is_refused() {
        assert!(quiet(&mut program("core::panics::tell")).is_err());
    }

    #[test]
    fn places_in_the_sources_are_blanked_and_nothing_else() {
        let path = b"word a/b.rs word";
        let address = |place: u32| [16 + 5, 6, place, 9].map(u32::to_le_bytes).concat();
        let mut bytes = [path.as_slice(), &address(7), &address(0)].concat();
        blank_places(16, &mut bytes);
        assert_eq!(&bytes[..16], b"word \0\0\0\0\0\0 word");
        assert_eq!(bytes[16..32], [0; 16], "line 7, column 9");
        assert_eq!(bytes[32..], address(0), "no line 0");
    }

    #[test]
    fn hashes_of_crates_say_nothing() {
        assert_eq!(
            plain("<core[c5]::cell::X as a[b[0]]::Y>::z"),
            "<core::cell::X as a::Y>::z"
        );
    }
}
