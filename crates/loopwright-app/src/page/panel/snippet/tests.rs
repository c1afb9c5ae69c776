//! The lines are read back as a browser reads them: whatever stands in a field, it comes back as the value of one attribute,
//! and no element or attribute is there that was not meant.

use super::*;
use crate::frame::{self, Accent, Units};
use crate::store::Typed;
use proptest::prelude::*;

fn address() -> Address {
    Address::of("https://example.org/loopwright/", "").unwrap()
}

fn placed(fields: &[(&str, &str)]) -> Placed {
    let typed = |(field, text): &(&str, &str)| ((*field).to_owned(), Typed::plain(*text));
    Placed {
        id: "spacing",
        title: "Even spacing",
        preset: fields.iter().map(typed).collect(),
        options: Options::default(),
        width: 360,
    }
}

/// An element as it was read: its name and its attributes.
type Tag = (String, Vec<(String, String)>);

/// Reads markup in the way of a browser, as far as these lines need it: tags with attributes in double quotes, and text.
fn tags(mut html: &str) -> Vec<Tag> {
    let mut found = Vec::new();
    while let Some(start) = html.find('<') {
        html = &html[start + 1..];
        let name_end = html.find([' ', '>', '\n', '\t', '/']).unwrap();
        let name_end = if name_end == 0 {
            html.find('>').unwrap()
        } else {
            name_end
        };
        let name = html[..name_end].to_owned();
        html = &html[name_end..];
        let mut attributes = Vec::new();
        while !html.starts_with('>') {
            html = html.trim_start();
            let (attribute, rest) = html.split_once("=\"").unwrap();
            let (value, rest) = rest.split_once('"').unwrap();
            attributes.push((attribute.to_owned(), unescaped(value)));
            html = rest;
        }
        found.push((name, attributes));
    }
    found
}

fn unescaped(text: &str) -> String {
    let marks = [
        ("&lt;", "<"),
        ("&gt;", ">"),
        ("&quot;", "\""),
        ("&#39;", "'"),
        ("&amp;", "&"),
    ];
    marks
        .iter()
        .fold(text.to_owned(), |text, (written, meant)| text.replace(written, meant))
}

fn value<'a>((_, attributes): &'a Tag, name: &str) -> Option<&'a str> {
    let found = attributes.iter().find(|(attribute, _)| attribute == name);
    found.map(|(_, value)| value.as_str())
}

fn names((_, attributes): &Tag) -> Vec<&str> {
    attributes.iter().map(|(name, _)| name.as_str()).collect()
}

#[test]
fn the_plain_frame_is_one_line() {
    let mut placed = placed(&[("stitches", "132"), ("amount", "16")]);
    placed.options.locked = vec!["stitches".into()];
    let height = placed.height();
    assert_eq!(
        placed.frame(&address()),
        format!(
            "<iframe src=\"https://example.org/loopwright/#/embed/spacing?amount=16&amp;stitches=132&amp;\
             frame.locked=stitches\" title=\"Even spacing\" width=\"100%\" height=\"{height}\" loading=\"lazy\" \
             frameborder=\"0\" sandbox=\"allow-scripts allow-same-origin allow-forms allow-popups \
             allow-popups-to-escape-sandbox\"></iframe>\n"
        )
    );
    placed.options.print = true;
    assert!(placed.frame(&address()).contains("allow-modals"));
}

#[test]
fn the_element_names_what_is_not_as_usual() {
    let mut placed = placed(&[("stitches", "132")]);
    let link = "<a href=\"https://example.org/loopwright/#/spacing?stitches=132\">Even spacing in Loopwright</a>";
    let script = "<script src=\"https://example.org/loopwright/embed.js\"></script>\n";
    assert_eq!(
        placed.element(&address()),
        format!("{script}<loopwright-tool tool=\"spacing\" values=\"stitches=132\">{link}</loopwright-tool>\n")
    );
    placed.options = Options {
        locked: vec!["stitches".into(), "knitting".into()],
        cursor: Some("amount".into()),
        light: Light::Day,
        accent: Accent::parse("8a3324").ok(),
        units: Some(Units::Inches),
        print: true,
        afresh: true,
        language: Some("en"),
    };
    let options = "locked=\"stitches,knitting\" cursor=\"amount\" light=\"day\" accent=\"8a3324\" units=\"inches\" \
                   language=\"en\" buttons=\"print afresh\"";
    let element = format!("<loopwright-tool tool=\"spacing\" values=\"stitches=132\" {options}>");
    assert!(
        placed.element(&address()).contains(&element),
        "{}",
        placed.element(&address())
    );
}

#[test]
fn what_looks_like_markup_stays_a_value() {
    let hostile = [
        "\"><script>alert(1)</script>",
        "' onload='alert(1)",
        "</iframe><img src=x onerror=alert(1)>",
        "&quot;&#34;&amp;",
        "javascript:alert(1)",
        "]]><!--",
        "\u{0}\n\r\t\u{2028}",
        "% & = # ?",
    ];
    for text in hostile {
        check(&placed(&[("stitches", text), (text, "1")]), text);
    }
}

/// Both snippets hold the elements and attributes they are to hold, and the address brings every field back.
fn check(placed: &Placed, told: &str) {
    let frame = tags(&placed.frame(&address()));
    let meant = ["src", "title", "width", "height", "loading", "frameborder", "sandbox"];
    assert_eq!(frame.len(), 2, "{told:?}: {frame:?}");
    assert_eq!(names(&frame[0]), meant, "{told:?}");
    let hash = value(&frame[0], "src").and_then(|src| src.strip_prefix("https://example.org/loopwright/"));
    let Route::Embed { id, fields, options } = route::parse(hash.unwrap()) else {
        panic!("{told:?}: {hash:?} is no frame");
    };
    assert_eq!(
        (id.as_str(), route::to_fields(&fields)),
        ("spacing", placed.preset.clone())
    );
    assert_eq!(frame::parse(&options), (placed.options.clone(), Vec::new()));
    let element = tags(&placed.element(&address()));
    let tags: Vec<&str> = element.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(
        tags,
        ["script", "/script", "loopwright-tool", "a", "/a", "/loopwright-tool"],
        "{told:?}"
    );
    let values = route::parse_query(value(&element[2], "values").unwrap_or_default());
    assert_eq!(route::to_fields(&values), placed.preset);
}

fn any_preset() -> impl Strategy<Value = Fields> {
    let name = "[^.]{1,8}".prop_filter("no option's name", |name| !name.starts_with(frame::PREFIX));
    let unit = proptest::option::of(any::<String>());
    let typed = (any::<String>(), unit).prop_map(|(text, unit)| Typed { text, unit });
    proptest::collection::btree_map(name, typed, 0..4).prop_map(|fields| fields.into_iter().collect())
}

proptest! {
    #[test]
    fn no_value_of_a_field_breaks_out_of_its_attribute(
        preset in any_preset(),
        locked in proptest::collection::hash_set("[^, ]{1,5}", 0..3),
    ) {
        let locked: Vec<String> = locked.into_iter().filter(|key| key.trim() == key).collect();
        let options = Options { locked, ..Options::default() };
        check(&Placed { preset, options, ..placed(&[]) }, "any");
    }

    #[test]
    fn any_text_between_quotes_comes_back(text in any::<String>()) {
        let read = tags(&opened("p", &[("title", text.clone())]));
        prop_assert_eq!(value(&read[0], "title"), Some(text.as_str()));
    }
}
