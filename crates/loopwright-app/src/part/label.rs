//! What a field is called, for those who see it and for those who hear it.

use yew::prelude::*;

/// What a field is called.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Label<'a> {
    /// Beside the field.
    Shown(&'a str),
    /// The sentence around the field says it; the label is for those who cannot see that.
    Unseen(&'a str),
}

impl Label<'_> {
    /// The label of the element with this id.
    pub fn draw(self, element: &str) -> Html {
        let element = element.to_owned();
        match self {
            Self::Shown(label) => html! { <label for={element}>{ label }</label> },
            Self::Unseen(label) => html! { <label for={element} class="unseen">{ label }</label> },
        }
    }
}
