//! The lines that put a tool into a page: a plain frame, since most hosted blogs strip scripts; and a script with an element
//! of our own name, which grows with what is in it.
//!
//! Each value stands in an attribute in double quotes, escaped, whatever it is.

use super::address::Address;
use super::heights::height;
use crate::frame::{Light, Options};
use crate::route::{self, Route};
use crate::store::Fields;
use crate::words::panel as words;
use loopwright::choice::Choice;

/// What a frame may do. Its own origin, so that it need not be asked across origins for its files; forms, since a return key
/// in a field would be a fault without; and a window of its own for the way to the tool.
const SANDBOX: &str = "allow-scripts allow-same-origin allow-forms allow-popups allow-popups-to-escape-sandbox";

/// What it may do besides, where it has a button that prints.
const PRINTS: &str = " allow-modals";

/// A tool on its way into a page.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// The tool's id.
    pub id: &'static str,
    /// What it is called.
    pub title: &'static str,
    /// What is filled in.
    pub preset: Fields,
    /// How it is shown.
    pub options: Options,
    /// How wide the column is, in pixels.
    pub width: u32,
}

impl Placed {
    /// The hash of its frame.
    pub fn hash(&self) -> String {
        route::print(&Route::embed(self.id, &self.preset, &self.options))
    }

    /// How high its frame is.
    pub fn height(&self) -> u32 {
        height(self.id, self.width)
    }

    /// The lines of a plain frame.
    pub fn frame(&self, address: &Address) -> String {
        let prints = if self.options.print { PRINTS } else { "" };
        let attributes = [
            ("src", address.page(&self.hash())),
            ("title", self.title.to_owned()),
            ("width", "100%".to_owned()),
            ("height", self.height().to_string()),
            ("loading", "lazy".to_owned()),
            // A style would be dropped by pages with a strict policy.
            ("frameborder", "0".to_owned()),
            ("sandbox", [SANDBOX, prints].concat()),
        ];
        [&opened("iframe", &attributes), "</iframe>\n"].concat()
    }

    /// The lines of a script and an element.
    pub fn element(&self, address: &Address) -> String {
        // Not a module: one that waits would let the text around jump when the element takes its room.
        let script = [("src", address.file("embed.js"))];
        let link = route::print(&Route::tool(self.id, &self.preset));
        let away = [("href", address.page(&link))];
        let (element, link) = (opened("loopwright-tool", &self.attributes()), opened("a", &away));
        let words = escaped(&words::fallback(self.title));
        let script = opened("script", &script);
        [
            &script,
            "</script>\n",
            &element,
            &link,
            &words,
            "</a></loopwright-tool>\n",
        ]
        .concat()
    }

    /// The attributes of the element; what is as usual is left out.
    fn attributes(&self) -> Vec<(&'static str, String)> {
        let Options {
            locked,
            cursor,
            light,
            accent,
            units,
            print,
            afresh,
            language,
        } = &self.options;
        let buttons: Vec<&str> = [(*print, "print"), (*afresh, "afresh")]
            .into_iter()
            .filter_map(|(asked, name)| asked.then_some(name))
            .collect();
        let listed = |list: String| (!list.is_empty()).then_some(list);
        let values = route::print_query(&route::to_pairs(&self.preset));
        let all = [
            ("tool", Some(self.id.to_owned())),
            ("values", values.strip_prefix('?').map(str::to_owned)),
            ("locked", listed(locked.join(","))),
            ("cursor", cursor.clone()),
            ("light", light_unless_usual(*light)),
            ("accent", accent.map(|accent| accent.print())),
            ("units", units.map(|units| units.key().to_owned())),
            ("language", language.map(str::to_owned)),
            ("buttons", listed(buttons.join(" "))),
        ];
        all.into_iter()
            .filter_map(|(name, value)| Some((name, value?)))
            .collect()
    }
}

fn light_unless_usual(light: Light) -> Option<String> {
    (light != Light::START).then(|| light.key().to_owned())
}

/// The opening of an element.
fn opened(tag: &str, attributes: &[(&str, String)]) -> String {
    let mut written = ["<", tag].concat();
    for (name, value) in attributes {
        written += &[" ", name, "=\"", &escaped(value), "\""].concat();
    }
    written + ">"
}

/// A text as it stands in markup, in an attribute or between elements.
fn escaped(text: &str) -> String {
    let mut written = String::new();
    for letter in text.chars() {
        match letter {
            '&' => written += "&amp;",
            '<' => written += "&lt;",
            '>' => written += "&gt;",
            '"' => written += "&quot;",
            '\'' => written += "&#39;",
            _ => written.push(letter),
        }
    }
    written
}

#[cfg(test)]
mod tests;
