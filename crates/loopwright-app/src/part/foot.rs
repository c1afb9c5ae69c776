//! The line of an answer at the foot of a phone's window, until the answer itself is in sight.
//!
//! It is the same line a second time and for the eye only: nothing of it is read out, printed or pressed. Where question and
//! answer stand side by side the styles hide it.

use super::plain::{text, text_element};
use wasm_bindgen::prelude::*;
use web_sys::{Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit};
use yew::prelude::*;

/// How much of the answer has to stand above the lower edge of the window to be in sight: a line of it, and the foot.
const IN_SIGHT: &str = "0px 0px -96px 0px";

/// Which numbers an answer is for, where other ones stand in the fields by now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Since(pub Option<AttrValue>);

/// What the foot shows of an answer.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its line.
    pub line: Html,
    /// What it comes to.
    pub outcome: AttrValue,
}

/// The foot, behind the answer whose line it shows.
#[component]
pub fn Foot(props: &Props) -> Html {
    let since = use_context::<Since>().and_then(|since| since.0);
    let place = use_node_ref();
    let hidden = !use_is_below(&place);
    let since = since.map_or_else(Html::default, |since| text_element("small", "", since));
    html! {
        <div ref={place} class="foot" aria-hidden="true" {hidden}>
            { since }
            { props.line.clone() }
            <strong>{ text(props.outcome.clone()) }</strong>
        </div>
    }
}

/// Whether the element before this one is still below the window.
#[hook]
fn use_is_below(place: &NodeRef) -> bool {
    let is_below = use_state_eq(|| false);
    let (place, set) = (place.clone(), is_below.setter());
    use_effect_with((), move |()| {
        let answer = place.cast::<Element>().and_then(|foot| foot.previous_element_sibling());
        let watch = answer.and_then(|answer| Watch::over(&answer, move |is_below| set.set(is_below)));
        move || drop(watch)
    });
    *is_below
}

/// Tells whether an element is below the window, as long as it lives.
struct Watch {
    observer: IntersectionObserver,
    _tell: Closure<dyn Fn(Vec<IntersectionObserverEntry>)>,
}

impl Watch {
    /// None in a browser that cannot tell: there the foot never shows.
    fn over(element: &Element, tell: impl Fn(bool) + 'static) -> Option<Self> {
        let tell = Closure::<dyn Fn(_)>::new(move |entries: Vec<IntersectionObserverEntry>| {
            if let Some(entry) = entries.last() {
                tell(!entry.is_intersecting() && entry.bounding_client_rect().top() > 0.0);
            }
        });
        let options = IntersectionObserverInit::new();
        options.set_root_margin(IN_SIGHT);
        let observer = IntersectionObserver::new_with_options(tell.as_ref().unchecked_ref(), &options).ok()?;
        observer.observe(element);
        Some(Self { observer, _tell: tell })
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}
