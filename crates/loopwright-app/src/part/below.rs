//! What stands below the headline of an answer, one thing after the other.

use super::plain::{items, list, text_element};
use yew::prelude::*;

/// What was said so far.
pub struct Below(Vec<Html>);

impl Below {
    /// Below this headline.
    pub fn of(headline: Html) -> Self {
        Self(vec![headline])
    }

    /// Something that is drawn already.
    pub fn add(&mut self, drawn: Html) {
        self.0.push(drawn);
    }

    /// A sentence, if there is one.
    pub fn sentence(&mut self, class: &'static str, sentence: String) {
        if !sentence.is_empty() {
            self.0.push(text_element("p", class, sentence));
        }
    }

    /// A title, and sentences below it, if there are any.
    pub fn list(&mut self, title: &'static str, sentences: Vec<String>) {
        if !sentences.is_empty() {
            self.0.push(text_element("h3", "", title));
            self.0.push(items("ul", sentences));
        }
    }

    /// All of it.
    pub fn done(self) -> Html {
        list(self.0)
    }
}
