//! What lies folded below an answer stands open on paper: the rounds to tick, and what the abbreviations mean. A style
//! cannot open a fold in every browser, so it is opened before the page is printed and folded again after.

use gloo_events::EventListener;
use gloo_utils::{document, window};
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::Element;
use yew::prelude::*;

/// The folds that are opened: those of the answer. What is folded in the question has its usual start, and a help to
/// fill a field is of no use on paper. A picture of the link is on paper where she opened it.
const FOLDS: &str = "details:not([open],.more,.how,.scan)";

/// Opens folds before printing and folds them again after, as long as the page is there.
#[hook]
pub fn use_folds_open_on_paper() {
    use_effect_with((), |()| {
        let opened: Rc<RefCell<Vec<Element>>> = Rc::default();
        let again = opened.clone();
        let before = EventListener::new(&window(), "beforeprint", move |_| {
            opened.borrow_mut().extend(open_folds())
        });
        let after = EventListener::new(&window(), "afterprint", move |_| fold(again.take()));
        move || drop((before, after))
    });
}

fn open_folds() -> Vec<Element> {
    let mut opened = Vec::new();
    while let Ok(Some(folded)) = document().query_selector(FOLDS) {
        // One that cannot be opened would be met for ever.
        if folded.set_attribute("open", "").is_err() {
            break;
        }
        opened.push(folded);
    }
    opened
}

fn fold(opened: Vec<Element>) {
    for folded in opened {
        let _ = folded.remove_attribute("open");
    }
}
