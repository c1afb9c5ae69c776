//! Plain elements from data: a tag, a class, and what stands inside. Where an element has several attributes or children
//! within children, `html!` reads better and is used.

use std::collections::BTreeMap;
use yew::prelude::*;
use yew::virtual_dom::{VList, VTag, VText};

/// An element with these attributes and children.
pub fn element_with(tag: &'static str, attributes: &[(&'static str, &str)], children: Vec<Html>) -> Html {
    let mut element = VTag::new(tag);
    for (name, value) in attributes {
        element.add_attribute(name, value.to_string());
    }
    if let Some(inside) = element.children_mut() {
        *inside = list(children);
    }
    element.into()
}

/// An element with a class, or with none if that is empty.
pub fn element(tag: &'static str, class: &'static str, children: Vec<Html>) -> Html {
    let class = [("class", class)];
    element_with(tag, if class[0].1.is_empty() { &[] } else { &class }, children)
}

/// Several things, one after the other.
pub fn list(children: Vec<Html>) -> Html {
    VList::with_children(children, None).into()
}

/// Text.
pub fn text(text: AttrValue) -> Html {
    VText::new(text).into()
}

/// An element that holds words.
pub fn text_element(tag: &'static str, class: &'static str, words: impl Into<AttrValue>) -> Html {
    element(tag, class, vec![text(words.into())])
}

/// A place whose words are read out when they change.
pub fn status(content: Html) -> Html {
    element_with("p", &[("role", "status")], vec![content])
}

/// A link.
pub fn link(href: String, content: Vec<Html>) -> Html {
    element_with("a", &[("href", &href)], content)
}

/// One of the things to choose. That it is chosen is a property of it and not an attribute: once something was chosen by
/// hand, browsers pass over the attribute, and would go on showing what no longer counts.
pub fn option(key: &str, words: String, is_chosen: bool) -> Html {
    let mut option = VTag::new("option");
    option.key = Some(key.into());
    option.add_attribute("value", key.to_owned());
    option.add_property("selected", is_chosen);
    option.add_child(text(words.into()));
    option.into()
}

/// A button.
pub fn button(label: String, onclick: Callback<MouseEvent>) -> Html {
    html! { <button type="button" {onclick}>{ label }</button> }
}

/// A button that does not ask for attention.
pub fn quiet_button(label: String, onclick: Callback<MouseEvent>) -> Html {
    html! { <button type="button" class="quiet" {onclick}>{ label }</button> }
}

/// What lies folded below its summary.
pub fn folded(class: &'static str, summary: &'static str, content: Vec<Html>) -> Html {
    let mut children = vec![text_element("summary", "", summary)];
    children.extend(content);
    element("details", class, children)
}

/// A list of sentences: `ul`, `ol`. Where another one comes before a sentence, that stays what it was.
pub fn items(tag: &'static str, sentences: Vec<String>) -> Html {
    let mut said: BTreeMap<String, u32> = BTreeMap::new();
    let item = |sentence: String| {
        let before = said.entry(sentence.clone()).or_default();
        *before += 1;
        html! { <li key={format!("{before} {sentence}")}>{ sentence }</li> }
    };
    element(tag, "", sentences.into_iter().map(item).collect())
}

/// A line of a drawing.
pub fn path(class: &str, d: &str) -> Html {
    element_with("path", &[("class", class), ("d", d)], Vec::new())
}
