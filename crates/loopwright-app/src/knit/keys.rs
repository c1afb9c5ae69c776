//! Keys that count: those of a keyboard, and those that page turners send.

use gloo_events::{EventListener, EventListenerOptions};
use gloo_utils::window;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent};
use yew::prelude::*;

/// What a key means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turn {
    /// A row is done.
    On,
    /// A row back.
    Back,
}

/// What has the focus while a key is pressed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Focus {
    /// Something that is typed into or chosen from: keys are for it.
    Field,
    /// Something to press: space and enter press it, and must not count twice.
    Control,
    /// A link: enter follows it, and space does nothing of its own.
    Link,
    /// The page.
    Page,
}

/// What a key means, by the name that browsers give it.
pub fn meaning(key: &str, focus: Focus) -> Option<Turn> {
    match (focus, key) {
        (Focus::Field, _) | (Focus::Control, " " | "Enter") | (Focus::Link, "Enter") => None,
        (_, " " | "Enter" | "ArrowRight" | "ArrowDown" | "PageDown") => Some(Turn::On),
        (_, "ArrowLeft" | "ArrowUp" | "PageUp" | "Backspace") => Some(Turn::Back),
        _ => None,
    }
}

/// Calls for each key that counts, as long as its page is there. A key that is held down counts once.
#[hook]
pub fn use_turns(turned: Callback<Turn>) {
    use_effect(move || {
        let options = EventListenerOptions::enable_prevent_default();
        let listener = EventListener::new_with_options(&window(), "keydown", options, move |event| {
            let Some(event) = event.dyn_ref::<KeyboardEvent>() else {
                return;
            };
            let is_chord = event.ctrl_key() || event.alt_key() || event.meta_key();
            let Some(turn) = meaning(&event.key(), focus(event)).filter(|_| !is_chord) else {
                return;
            };
            // The page must not scroll as well, nor while the key is held.
            event.prevent_default();
            if !event.repeat() {
                turned.emit(turn);
            }
        });
        move || drop(listener)
    });
}

fn focus(event: &KeyboardEvent) -> Focus {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    let is = |selector: &str| {
        let found = target.as_ref().map(|element| element.closest(selector));
        matches!(found, Some(Ok(Some(_))))
    };
    let is_one_of = |selectors: &[&str]| selectors.iter().any(|selector| is(selector));
    if is_one_of(&["input", "textarea", "select", "[contenteditable]"]) {
        Focus::Field
    } else if is_one_of(&["button", "summary"]) {
        Focus::Control
    } else if is("a") {
        Focus::Link
    } else {
        Focus::Page
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn page_turners_count_wherever_nothing_is_typed() {
        for key in ["PageDown", "ArrowRight", "ArrowDown"] {
            assert_eq!(meaning(key, Focus::Page), Some(Turn::On));
            assert_eq!(meaning(key, Focus::Control), Some(Turn::On));
            assert_eq!(meaning(key, Focus::Field), None);
        }
        assert_eq!(meaning("PageUp", Focus::Control), Some(Turn::Back));
    }

    #[test]
    fn a_button_that_has_the_focus_is_pressed_and_counts_once() {
        for key in [" ", "Enter"] {
            assert_eq!(meaning(key, Focus::Page), Some(Turn::On));
            assert_eq!(meaning(key, Focus::Control), None);
        }
        assert_eq!(meaning(" ", Focus::Link), Some(Turn::On));
        assert_eq!(meaning("Enter", Focus::Link), None);
        assert_eq!(meaning("Tab", Focus::Page), None);
        assert_eq!(meaning("a", Focus::Page), None);
    }
}
