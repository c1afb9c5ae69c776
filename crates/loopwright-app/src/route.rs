//! Which page an address means, by its hash alone: a static folder at any sub-path, a `file:` page and a link with
//! data in it all work without a server's help.
//!
//! `#/`  `#/about`  `#/about/links`  `#/gallery`  `#/gallery/spacing/impossible`  `#/spacing?stitches=132&change=k2tog`
//! `#/project`  `#/project/3`  `#/project/3/knit`  `#/knit/yoke`  `#/embed/spacing?stitches=132&frame.light=dusk`  `#/p=1eJyr...`, a project
//!
//! A field is text as typed. Its unit travels beside it: `girth=36&girth.unit=in`. Reading is total: whatever is in
//! the address, it is a route, if only [`Route::Unknown`].

mod page;

pub use page::{go, link, replace, use_route};

use crate::frame;
use crate::store::{Fields, Typed};
use loopwright_project::StepId;
use std::collections::BTreeMap;

/// Fields as they stand in an address, in their order.
pub type Pairs = Vec<(String, String)>;

/// A page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of tools.
    Home,
    /// What is known of the open project, its steps, and all that follows.
    Project,
    /// One step of the open project.
    Step(StepId),
    /// A tool's answer, to be knitted from row by row.
    Knit(String),
    /// The answer of a step of the open project, to be knitted from.
    KnitStep(StepId),
    /// A project that is brought, to be looked at before it is kept.
    Brought(String),
    /// What is stored, how to back up, cautions.
    About,
    /// Every tool, field, choice and unit, for whoever writes links.
    Links,
    /// Every part and tool in its named states.
    Gallery,
    /// One state of one tool.
    GalleryState {
        /// The tool's id.
        tool: String,
        /// The state's name.
        state: String,
    },
    /// A tool, with fields if the address is a link that brings some.
    Tool {
        /// The tool's id; whether there is such a tool is for the list of tools to say.
        id: String,
        /// What the link brings.
        fields: Pairs,
    },
    /// A tool alone, to be shown inside another page.
    Embed {
        /// The tool's id.
        id: String,
        /// The preset question.
        fields: Pairs,
        /// How it is shown, as [`frame::parse`] reads it.
        options: Pairs,
    },
    /// An address that means nothing here, as it was.
    Unknown(String),
}

impl Route {
    /// The link to a tool with these fields.
    pub fn tool(id: impl Into<String>, fields: &Fields) -> Self {
        Self::Tool {
            id: id.into(),
            fields: to_pairs(fields),
        }
    }

    /// The link to a tool inside another page, with these fields and shown in this way.
    pub fn embed(id: impl Into<String>, fields: &Fields, options: &frame::Options) -> Self {
        Self::Embed {
            id: id.into(),
            fields: to_pairs(fields),
            options: frame::print(options),
        }
    }
}

/// Before a project that is brought. In the name of a tool the sign would be written in another way.
const BROUGHT: &str = "p=";

/// The route that a hash means. Anything before the first `/` is not looked at.
pub fn parse(hash: &str) -> Route {
    let Some(path) = hash.strip_prefix('#').unwrap_or(hash).strip_prefix('/') else {
        return Route::Home;
    };
    if let Some(project) = path.strip_prefix(BROUGHT) {
        return Route::Brought(decode(project));
    }
    let (path, query) = path.split_once('?').unwrap_or((path, ""));
    let names: Vec<String> = path.strip_suffix('/').unwrap_or(path).split('/').map(decode).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    match names[..] {
        [""] => Route::Home,
        ["about"] => Route::About,
        ["about", "links"] => Route::Links,
        ["project"] => Route::Project,
        ["project", step] => StepId::parse(step).map_or_else(|| Route::Unknown(hash.into()), Route::Step),
        ["project", step, "knit"] => StepId::parse(step).map_or_else(|| Route::Unknown(hash.into()), Route::KnitStep),
        ["knit", tool] if !tool.is_empty() => Route::Knit(tool.into()),
        ["gallery"] => Route::Gallery,
        ["gallery", tool, state] if !tool.is_empty() && !state.is_empty() => Route::GalleryState {
            tool: tool.into(),
            state: state.into(),
        },
        ["embed", id] if !id.is_empty() => embed(id, query),
        [id] if id != "embed" => Route::Tool {
            id: id.into(),
            fields: parse_query(query),
        },
        _ => Route::Unknown(hash.into()),
    }
}

fn embed(id: &str, query: &str) -> Route {
    let (options, fields) = parse_query(query)
        .into_iter()
        .partition(|(name, _)| frame::is_option(name));
    Route::Embed {
        id: id.into(),
        fields,
        options,
    }
}

/// The hash of a route, with its `#`.
pub fn print(route: &Route) -> String {
    match route {
        Route::Home => "#/".into(),
        Route::Brought(project) => format!("#/{BROUGHT}{}", encode(project)),
        Route::About => "#/about".into(),
        Route::Links => "#/about/links".into(),
        Route::Project => "#/project".into(),
        Route::Step(step) => format!("#/project/{step}"),
        Route::Knit(tool) => format!("#/knit/{}", encode(tool)),
        Route::KnitStep(step) => format!("#/project/{step}/knit"),
        Route::Gallery => "#/gallery".into(),
        Route::GalleryState { tool, state } => format!("#/gallery/{}/{}", encode(tool), encode(state)),
        Route::Tool { id, fields } => format!("#/{}{}", encode(id), print_query(fields)),
        Route::Embed { id, fields, options } => {
            let pairs = [fields.as_slice(), options].concat();
            format!("#/embed/{}{}", encode(id), print_query(&pairs))
        }
        Route::Unknown(hash) => hash.clone(),
    }
}

/// Fields with their units beside them, as an address carries them.
pub fn to_pairs(fields: &Fields) -> Pairs {
    let mut pairs = Pairs::new();
    for (field, typed) in fields.iter() {
        pairs.push((field.clone(), typed.text.clone()));
        if let Some(unit) = &typed.unit {
            pairs.push((unit_name(field), unit.clone()));
        }
    }
    pairs
}

/// The fields that an address brings. A unit without its field is passed over; the last of a repeated field stands.
pub fn to_fields(pairs: &[(String, String)]) -> Fields {
    read_fields(pairs).0
}

/// What an address says in vain.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum InVain {
    /// The same name stands behind it once more.
    Repeated(String),
    /// A unit without its field.
    Alone(String),
}

/// The fields that an address brings, and what it says in vain. One pass, however many there are.
pub fn read_fields(pairs: &[(String, String)]) -> (Fields, Vec<InVain>) {
    let mut in_vain = Vec::new();
    let mut last = BTreeMap::new();
    for (name, text) in pairs {
        if last.insert(name.clone(), text.clone()).is_some() {
            in_vain.push(InVain::Repeated(name.clone()));
        }
    }
    let (units, texts): (BTreeMap<String, String>, BTreeMap<String, String>) =
        last.into_iter().partition(|(name, _)| name.ends_with(UNIT));
    let is_alone = |name: &&String| name.strip_suffix(UNIT).is_none_or(|field| !texts.contains_key(field));
    in_vain.extend(units.keys().filter(is_alone).cloned().map(InVain::Alone));
    let typed = |(field, text): (String, String)| {
        let unit = units.get(&unit_name(&field)).cloned();
        (field, Typed { text, unit })
    };
    (texts.into_iter().map(typed).collect(), in_vain)
}

const UNIT: &str = ".unit";

fn unit_name(field: &str) -> String {
    format!("{field}{UNIT}")
}

/// The fields of an address, behind its question mark.
pub fn parse_query(query: &str) -> Pairs {
    query
        .split('&')
        .filter(|pair| !pair.is_empty())
        .map(|pair| pair.split_once('=').unwrap_or((pair, "")))
        .map(|(field, text)| (decode(field), decode(text)))
        .collect()
}

/// The question mark and the fields behind it; nothing where there are none.
pub fn print_query(fields: &[(String, String)]) -> String {
    let mut query = String::new();
    for (field, text) in fields {
        query.push(if query.is_empty() { '?' } else { '&' });
        query.push_str(&encode(field));
        query.push('=');
        query.push_str(&encode(text));
    }
    query
}

/// Leaves as it is what a browser may leave as it is in a hash, and no messenger takes for the end of a link.
fn encode(text: &str) -> String {
    let mut encoded = String::new();
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || b"-_.~".contains(&byte) {
            encoded.push(byte.into());
        } else {
            encoded += &format!("%{byte:02X}");
        }
    }
    encoded
}

/// Total: a `%` that means no byte is only a `%`, and what is no text is marked as such.
fn decode(text: &str) -> String {
    let mut rest = text.as_bytes();
    let mut decoded = Vec::new();
    while let [first, after @ ..] = rest {
        let (byte, left) = match after {
            [high, low, left @ ..] if *first == b'%' => match (hex(*high), hex(*low)) {
                (Some(high), Some(low)) => (high << 4 | low, left),
                _ => (*first, after),
            },
            _ => (*first, after),
        };
        decoded.push(byte);
        rest = left;
    }
    String::from_utf8_lossy(&decoded).into_owned()
}

fn hex(digit: u8) -> Option<u8> {
    char::from(digit).to_digit(16).map(|digit| digit as u8)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn pairs(pairs: &[(&str, &str)]) -> Pairs {
        let owned = |(field, text): &(&str, &str)| (field.to_string(), text.to_string());
        pairs.iter().map(owned).collect()
    }

    fn tool(id: &str, fields: &[(&str, &str)]) -> Route {
        Route::Tool {
            id: id.into(),
            fields: pairs(fields),
        }
    }

    #[test]
    fn addresses_mean_what_the_head_of_this_file_says() {
        let rows = [
            ("", Route::Home),
            ("#", Route::Home),
            ("#/", Route::Home),
            ("#main", Route::Home),
            ("#/about", Route::About),
            ("#/about/links", Route::Links),
            ("#/p=1eJyr-_A", Route::Brought("1eJyr-_A".into())),
            ("#/p=", Route::Brought(String::new())),
            ("#/p=1/a?b=%3D", Route::Brought("1/a?b==".into())),
            ("#/p%3D1", tool("p=1", &[])),
            ("#/gallery/", Route::Gallery),
            ("#/project", Route::Project),
            ("#/project/12", Route::Step(StepId(12))),
            ("#/project/012", Route::Unknown("#/project/012".into())),
            (
                "#/gallery/spacing/impossible",
                Route::GalleryState {
                    tool: "spacing".into(),
                    state: "impossible".into(),
                },
            ),
            ("#/spacing", tool("spacing", &[])),
            (
                "#/spacing?stitches=132&change=k2tog",
                tool("spacing", &[("stitches", "132"), ("change", "k2tog")]),
            ),
            (
                "#/embed/spacing?girth=7%C2%BD&girth.unit=in",
                Route::Embed {
                    id: "spacing".into(),
                    fields: pairs(&[("girth", "7½"), ("girth.unit", "in")]),
                    options: Pairs::new(),
                },
            ),
            (
                "#/embed/spacing?frame.light=dusk&stitches=132&frame.x=%26",
                Route::Embed {
                    id: "spacing".into(),
                    fields: pairs(&[("stitches", "132")]),
                    options: pairs(&[("frame.light", "dusk"), ("frame.x", "&")]),
                },
            ),
            ("#/a?=&b&&c=d=e", tool("a", &[("", ""), ("b", ""), ("c", "d=e")])),
            ("#/a?b=%FF%", tool("a", &[("b", "\u{fffd}%")])),
            ("#/embed", Route::Unknown("#/embed".into())),
            ("#/gallery//x", Route::Unknown("#/gallery//x".into())),
            ("#/a/b/c/d", Route::Unknown("#/a/b/c/d".into())),
        ];
        for (hash, route) in rows {
            assert_eq!(parse(hash), route, "{hash}");
        }
    }

    #[test]
    fn a_unit_travels_beside_its_field() {
        let fields = Fields::from_iter([
            ("girth".to_string(), Typed::with_unit("36 1/2", "in")),
            ("name".to_string(), Typed::plain("a & b = c")),
        ]);
        let route = Route::tool("size", &fields);
        assert_eq!(
            print(&route),
            "#/size?girth=36%201%2F2&girth.unit=in&name=a%20%26%20b%20%3D%20c"
        );
        let Route::Tool { fields: back, .. } = parse(&print(&route)) else {
            panic!("a tool's link is a tool's link")
        };
        assert_eq!(to_fields(&back), fields);
        assert!(to_fields(&pairs(&[("girth.unit", "in")])).is_empty());
    }

    fn any_name() -> impl Strategy<Value = String> {
        any::<String>().prop_filter("a name is not empty", |name| !name.is_empty())
    }

    fn any_route() -> impl Strategy<Value = Route> {
        let fields = || proptest::collection::vec(any::<(String, String)>(), 0..5);
        let option = |(name, value): (String, String)| ([frame::PREFIX, &name].concat(), value);
        let options = move || fields().prop_map(move |pairs| pairs.into_iter().map(option).collect());
        let reserved = ["about", "gallery", "embed", "project"];
        prop_oneof![
            Just(Route::Home),
            Just(Route::Project),
            any::<u32>().prop_map(|step| Route::Step(StepId(step))),
            any::<String>().prop_map(Route::Brought),
            Just(Route::About),
            Just(Route::Links),
            Just(Route::Gallery),
            (any_name(), any_name()).prop_map(|(tool, state)| Route::GalleryState { tool, state }),
            (any_name(), fields())
                .prop_filter("not a page's own name", move |(id, _)| !reserved.contains(&id.as_str()))
                .prop_map(|(id, fields)| Route::Tool { id, fields }),
            (any_name(), fields(), options()).prop_map(|(id, fields, options)| Route::Embed { id, fields, options }),
        ]
    }

    proptest! {
        #[test]
        fn every_route_comes_back_from_its_address(route in any_route()) {
            prop_assert_eq!(parse(&print(&route)), route);
        }

        #[test]
        fn any_text_is_a_route_and_its_address_is_the_same_route(hash in any::<String>(), path in "(p=)?[a#/?&=%.]{0,12}") {
            for hash in [hash, format!("#/{path}")] {
                let route = parse(&hash);
                prop_assert_eq!(parse(&print(&route)), route);
            }
        }
    }
}
