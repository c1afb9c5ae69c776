//! The address of the page that is open: following it, changing it, and copying it.

use super::{Route, parse, print};
use gloo_events::EventListener;
use gloo_utils::window;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::Element;
use yew::prelude::*;

/// The route of this page; follows the address. A hash without `/`, such as a skip link's, leaves the page where it is.
#[hook]
pub fn use_route() -> Route {
    let route = use_state_eq(|| parse(&hash()));
    let set = route.setter();
    use_effect_with((), move |()| {
        let by_link = Rc::new(Cell::new(false));
        let pressed = note_links(by_link.clone());
        let listener = EventListener::new(&window(), "hashchange", move |_| {
            let hash = hash();
            if hash.is_empty() || hash.starts_with("#/") {
                // A page that a link leads to is read from its top; one that is gone back to is found where it was left.
                if by_link.take() {
                    window().scroll_to_with_x_and_y(0.0, 0.0);
                }
                set.set(parse(&hash));
            }
        });
        move || drop((listener, pressed))
    });
    (*route).clone()
}

/// Notes that a link to another page was followed.
fn note_links(by_link: Rc<Cell<bool>>) -> EventListener {
    EventListener::new(&window(), "click", move |event| {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let link = target.map(|element| element.closest("a[href^='#/']"));
        by_link.set(matches!(link, Some(Ok(Some(_)))));
    })
}

/// Goes to a page.
pub fn go(route: &Route) {
    let _ = window().location().set_hash(&print(route));
}

/// Goes to a page in place of this one, so that "back" does not lead here again.
pub fn replace(route: &Route) {
    let _ = window().location().replace(&link(route));
}

/// The whole address of a page, to be copied.
pub fn link(route: &Route) -> String {
    let here = window().location().href().unwrap_or_default();
    let page = here.split('#').next().unwrap_or_default();
    [page, &print(route)].concat()
}

fn hash() -> String {
    window().location().hash().unwrap_or_default()
}
