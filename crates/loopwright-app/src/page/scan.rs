//! "Scan it": the link to a tool as it stands, as a picture, so that a class takes the sum from the screen. It is drawn only
//! while the fold is open.

use crate::desk::Desk;
use crate::drawing::qr;
use crate::part::plain::text_element;
use crate::route::{self, Route};
use crate::tool;
use crate::words::carry as words;
use web_sys::Element;
use yew::prelude::*;

/// How the address of a page begins that no other device can open.
const ON_DISK: &str = "file:";

/// The fold below a tool, if there is such a tool.
pub fn scan(desk: &Desk, id: &str) -> Html {
    let tool = tool::find(id).filter(|tool| !tool.is_hers_alone);
    tool.map_or_else(Html::default, |tool| {
        let link = route::link(&Route::tool(tool.id, &tool.filled(desk)));
        let key = ["scan-", tool.id].concat();
        html! { <Scan {key} {link} picture={words::TOOL_PICTURE} about={words::SCAN_TOOL} too_long={words::TOOL_TOO_LONG} /> }
    })
}

/// A link, and the words around its picture.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The link.
    pub link: String,
    /// What the picture is, for those who cannot see it.
    pub picture: &'static str,
    /// What it is for.
    pub about: &'static str,
    /// What is said where the link is too long for a picture.
    pub too_long: &'static str,
}

/// The fold with the picture of a link.
#[component]
pub fn Scan(props: &Props) -> Html {
    let open = use_state_eq(|| false);
    let set = open.setter();
    let ontoggle = move |event: Event| {
        let fold: Element = event.target_unchecked_into();
        set.set(fold.has_attribute("open"));
    };
    let content = if *open { inside(props) } else { Html::default() };
    html! { <details class="scan" {ontoggle}><summary>{ words::SCAN }</summary>{ content }</details> }
}

fn inside(props: &Props) -> Html {
    if props.link.starts_with(ON_DISK) {
        return text_element("p", "quiet", words::ON_THIS_DISK);
    }
    match qr::picture_of(&props.link, props.picture) {
        Some(picture) => html! {
            <>
                { text_element("p", "quiet", props.about) }
                { picture }
                { text_element("p", "address", props.link.clone()) }
            </>
        },
        None => text_element("p", "quiet", props.too_long),
    }
}
