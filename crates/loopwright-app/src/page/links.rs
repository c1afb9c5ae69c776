//! What may stand in a link, for whoever writes one: every tool with its fields, what each takes, units and choices. It is made
//! from the tables of the tools, so that it says what is so.

use crate::form::{Field, Kind, LIST_UNITS, SPANS, Scale};
use crate::frame::{self, Light, Name, Units};
use crate::part::plain::{element, element_with, link, list, text, text_element};
use crate::route::{self, Route};
use crate::tool::{Entry, TOOLS};
use crate::words::{Worded, intl, links as words};
use loopwright::choice::{Choice, Key};
use loopwright::gauge::Direction;
use loopwright::units::{LengthUnit, MassUnit, Measure};
use yew::prelude::*;

/// Examples of links, by the named states that they are.
const EXAMPLES: [(&str, &str); 2] = [
    (words::WHAT, "#/spacing?stitches=132&amount=16"),
    (
        words::UNIT,
        "#/cast_on?width=36&width.unit=in&gauge=20&gauge.unit=4%20in",
    ),
];

/// The page.
pub fn links() -> Html {
    let heading = |words| text_element("h2", "", words);
    let says_so = |words| text_element("p", "", words);
    let mut page = vec![text_element("h1", "", words::TITLE)];
    page.extend(
        EXAMPLES
            .into_iter()
            .flat_map(|(says, hash)| [says_so(says), example(hash)]),
    );
    page.extend([
        says_so(words::SIGNS),
        says_so(words::LEFT_OUT),
        heading(words::UNITS),
        units(),
    ]);
    page.extend([heading(words::FIELDS)]);
    page.extend(TOOLS.iter().map(described));
    page.extend([heading(words::INSIDE), says_so(words::INSIDE_TEXT), options()]);
    element("article", "about links", page)
}

fn example(hash: &str) -> Html {
    let opens = link(hash.to_owned(), vec![text(words::TRY.into())]);
    element("p", "", vec![code(hash), text(" ".into()), opens])
}

fn code(written: &str) -> Html {
    text_element("code", "", written.to_owned())
}

/// The units, each by its shortest name.
fn units() -> Html {
    let lengths: Vec<&str> = LengthUnit::ALL.iter().map(|unit| unit.symbol()).collect();
    let weights: Vec<&str> = MassUnit::ALL.iter().map(|unit| unit.symbol()).collect();
    let spans: Vec<&str> = SPANS.iter().map(|span| span.key).collect();
    let named = [
        (words::LENGTHS, lengths),
        (words::WEIGHTS, weights),
        (words::SPANS, spans),
    ];
    let rows = named.into_iter().flat_map(|(what, keys)| {
        let keys = keys.into_iter().flat_map(|key| [code(key), text(" ".into())]);
        [text_element("dt", "", what), element("dd", "", keys.collect())]
    });
    list(vec![
        element("dl", "", rows.collect()),
        text_element("p", "", words::BY_NAME),
    ])
}

/// What is said of one field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Described {
    /// What it is called in a link.
    pub key: String,
    /// What it is called on the page.
    pub label: &'static str,
    /// What it takes.
    pub takes: String,
    /// What there is to choose: each key with its words, and whether it holds as long as nothing is chosen.
    pub choices: Vec<(&'static str, &'static str, bool)>,
}

/// What is said of the fields of a tool.
pub fn fields_of(tool: &Entry) -> Vec<Described> {
    let fields = tool
        .fields
        .iter()
        .filter(|field| !matches!(field.kind, Kind::Whole) && field.linked);
    fields.map(describe).collect()
}

fn describe(field: &Field) -> Described {
    let key = match field.group {
        Some(group) => [group.stored, "1_", field.key].concat(),
        None => field.key.to_owned(),
    };
    Described {
        key,
        label: field.label,
        takes: takes(field),
        choices: choices(field),
    }
}

fn takes(field: &Field) -> String {
    let is_rows = field.counts == Direction::Rows;
    let spans = [SPANS[0].key, SPANS[1].key];
    match field.kind {
        Kind::Count(bounds) if field.plus => words::count_with_plus(bounds),
        Kind::Count(bounds) => words::count(bounds),
        Kind::Length(scale, _) if scale.named.is_some() => words::needle(&shown(scale)),
        Kind::Length(scale, bounds) => words::length(bounds, &shown(scale)),
        Kind::Mass(scale, bounds) => words::weight(bounds, &shown(scale)),
        Kind::Gauge => words::gauge(is_rows, &spans),
        Kind::Gauges => words::gauges(is_rows, &spans),
        Kind::Choice(_) => words::CHOICE.into(),
        Kind::List(about) if about.lengths => words::lengths(&LIST_UNITS.map(|(key, _)| key)),
        Kind::List(_) => words::LIST.into(),
        Kind::Text | Kind::Pattern | Kind::Whole => words::TEXT.into(),
    }
}

fn shown<T: Measure>(scale: &Scale<T>) -> Vec<&'static str> {
    scale.units().map(|unit| unit.key).collect()
}

fn choices(field: &Field) -> Vec<(&'static str, &'static str, bool)> {
    let Kind::Choice(options) = field.kind else {
        return Vec::new();
    };
    let all = options.all().into_iter();
    all.map(|(key, words)| (key, words, key == options.start())).collect()
}

/// A tool in a fold, so that sixteen of them are found on a phone.
fn described(tool: &'static Entry) -> Html {
    let rows = fields_of(tool).into_iter().flat_map(|field| {
        let takes = match field.label {
            "" => field.takes,
            label => [label, ": ", &field.takes].concat(),
        };
        let mut says = vec![text(takes.into())];
        if !field.choices.is_empty() {
            says.push(element("ul", "", field.choices.into_iter().map(choice).collect()));
        }
        [element("dt", "", vec![code(&field.key)]), element("dd", "", says)]
    });
    let mut content = vec![text_element("summary", "", words::tool(tool.title.name, tool.id))];
    content.extend(
        tool.fields
            .iter()
            .any(|field| field.group.is_some())
            .then(|| text_element("p", "", words::EACH)),
    );
    content.push(element("dl", "", rows.collect()));
    element_with("details", &[("class", "more")], content)
}

fn choice((key, says, is_start): (&'static str, &'static str, bool)) -> Html {
    let mut content = vec![code(key), text([" ", says].concat().into())];
    if is_start {
        content.push(text_element("small", "quiet", [" (", words::STARTS, ")"].concat()));
    }
    element("li", "", content)
}

/// How a tool may be shown inside another page.
fn options() -> Html {
    let rows = Name::ALL.iter().flat_map(|name| {
        let mut says = vec![text(about(*name).into())];
        let values = values(*name);
        if !values.is_empty() {
            let values = values.into_iter().map(|(key, words)| choice((key, words, false)));
            says.push(element("ul", "", values.collect()));
        }
        let key = [frame::PREFIX, name.key()].concat();
        [element("dt", "", vec![code(&key)]), element("dd", "", says)]
    });
    element("dl", "", rows.collect())
}

const fn about(name: Name) -> &'static str {
    match name {
        Name::Locked => words::LOCKED,
        Name::Cursor => words::CURSOR,
        Name::Light => words::LIGHT,
        Name::Accent => words::ACCENT,
        Name::Units => words::FRAME_UNITS,
        Name::Print => words::PRINT,
        Name::Afresh => words::AFRESH,
        Name::Language => words::LANGUAGE,
    }
}

fn values(name: Name) -> Vec<(&'static str, &'static str)> {
    match name {
        Name::Light => worded::<Light>(),
        Name::Units => worded::<Units>(),
        Name::Print | Name::Afresh => vec![(frame::YES, words::YES)],
        Name::Language => vec![(intl::LANGUAGE, "")],
        Name::Locked | Name::Cursor | Name::Accent => Vec::new(),
    }
}

fn worded<C: Choice + Worded>() -> Vec<(&'static str, &'static str)> {
    C::ALL.iter().map(|choice| (choice.key(), choice.words())).collect()
}

/// The way to this page.
pub fn way() -> Html {
    link(route::print(&Route::Links), vec![text(words::WAY.into())])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::taken::has;
    use crate::tool;

    /// Whatever stands in a table is told: each field with its key, what it takes, and each choice with its words.
    #[test]
    fn every_field_and_every_choice_of_every_tool_is_listed() {
        for tool in TOOLS {
            let told = fields_of(tool);
            let is_told = |field: &&Field| !matches!(field.kind, Kind::Whole) && field.linked;
            let fields = tool.fields.iter().filter(is_told);
            assert_eq!(told.len(), fields.clone().count(), "{}", tool.id);
            for (told, field) in told.iter().zip(fields) {
                assert!(
                    has(tool.fields, &told.key) && told.key.ends_with(field.key),
                    "{}",
                    told.key
                );
                assert!(!told.takes.is_empty(), "{}", told.key);
                let Kind::Choice(options) = field.kind else {
                    assert_eq!(told.choices, []);
                    continue;
                };
                let keys: Vec<_> = told.choices.iter().map(|(key, words, _)| (*key, *words)).collect();
                assert_eq!(keys, options.all());
                assert_eq!(told.choices.iter().filter(|(_, _, is_start)| *is_start).count(), 1);
            }
        }
    }

    /// What is given as an example is a link of which all is taken, and that is answered.
    #[test]
    fn every_example_is_a_link_that_is_answered() {
        for (_, hash) in EXAMPLES {
            let Route::Tool { id, fields } = route::parse(hash) else {
                panic!("{hash} is no tool's");
            };
            let tool = tool::find(&id).unwrap();
            let taken = tool.take(&fields);
            assert_eq!(taken.left_out.of_a_link(), None, "{hash}");
            let fields = crate::form::Fields::new(tool.fields, taken.fields, Default::default());
            assert!((tool.outcome)(&fields).is_ok(), "{hash}");
        }
    }
}
