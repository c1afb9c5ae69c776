//! Addresses that nobody would send, made up from a seed out of those in `tests/fuzz/corpus/links.txt`: each means a page, and
//! what it brings is answered or refused in words. libFuzzer cannot reach this reader, which is part of the page.

use crate::form::Settings;
use crate::frame;
use crate::route::{self, Route};
use crate::tool::Tools;
use loopwright_project::Toolbox;
use std::panic::catch_unwind;
use texts::MadeUp;

#[path = "../../../tests/fuzz/made_up.rs"]
mod texts;

const LINKS: &str = include_str!("../../../tests/fuzz/corpus/links.txt");

/// Any number will do; another one makes other addresses.
const SEED: u64 = 132_116;

/// Enough to cut and mix each of the lines many times.
const ADDRESSES: u32 = 2_000;

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
