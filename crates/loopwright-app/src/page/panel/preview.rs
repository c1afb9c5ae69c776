//! How the tool will look in a column of her page: the page itself, in a frame. It is loaded once; what is chosen after that
//! changes its address only, and leaves no step for "back" to go to.

use web_sys::HtmlIFrameElement;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The hash of the frame.
    pub hash: String,
    /// What the tool is called.
    pub title: &'static str,
    /// How wide the column is.
    pub width: u32,
    /// How high the frame is.
    pub height: u32,
}

/// The frame.
#[component]
pub fn Preview(props: &Props) -> Html {
    let frame = use_node_ref();
    let first = use_memo((), |()| props.hash.clone());
    {
        let (frame, first) = (frame.clone(), first.clone());
        let is_loaded = use_mut_ref(|| false);
        use_effect_with(props.hash.clone(), move |hash| {
            if *is_loaded.borrow() || *hash != *first {
                show(&frame, hash);
            }
            *is_loaded.borrow_mut() = true;
        });
    }
    html! {
        <iframe ref={frame} class="preview" src={(*first).clone()} title={props.title} width={props.width.to_string()}
            height={props.height.to_string()} />
    }
}

fn show(frame: &NodeRef, hash: &str) {
    let window = frame
        .cast::<HtmlIFrameElement>()
        .and_then(|frame| frame.content_window());
    if let Some(window) = window {
        // A frame that does not follow shows what was chosen before; the lines are right all the same.
        let _ = window.location().replace(hash);
    }
}
