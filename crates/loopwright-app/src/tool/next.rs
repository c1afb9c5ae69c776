//! Where a knitter goes on from an answer: the tools that follow from it, and what each of them is handed.
//!
//! The table says what travels from where to where: a text as it was typed, or a value of the answer. Beneath an answer each
//! row becomes a link, with what it carries said beside it. The link lays that on the other tool's sheet, and what lay there
//! before can be put back.

use super::cast_on::CastOn;
use super::cords::Cords;
use super::flare::Flare;
use super::gauge::Gauge;
use super::needles::Needles;
use super::raglan::Raglan;
use super::regauge::Regauge;
use super::rows::Rows;
use super::shaping::Shaping;
use super::sizing::Sizing;
use super::spacing::Spacing;
use super::stairs::Stairs;
use super::swatch::Swatch;
use super::tail::Tail;
use super::toolbox::takes;
use super::yarn::Yarn;
use super::yoke::Yoke;
use super::{Entry, Tool, find};
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::View;
use crate::part::plain::{element, list, text, text_element};
use crate::route::{self, Route};
use crate::store::{self, Typed};
use crate::words::next as words;
use loopwright::problem::FieldPath;
use loopwright::{
    cast_on, cords, flare, gauge, regauge, rows, shaping, sizing, spacing, stairs, swatch, tail, terms, yarn, yoke,
};
use loopwright_project::{Reference, StepId};
use yew::prelude::*;

/// A value that an answer hands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gift {
    /// Stitches over a span, of the washed swatch.
    StitchGauge,
    /// Rows over a span, of the washed swatch.
    RowGauge,
    /// What the garment measures round.
    Girth,
    /// Stitches to cast on.
    CastOn,
    /// Stitches before the first row of the answer.
    Before,
    /// Stitches after its last row.
    After,
    /// All its rows or rounds.
    Rows,
    /// The rounds in which the count changes, each with the count after it.
    Steps,
    /// A needle, across.
    Needle,
    /// Stitches round the body below a yoke.
    Body,
    /// Stitches round each sleeve below a yoke.
    Sleeve,
}

loopwright::keys!(Gift {
    StitchGauge = "stitch_gauge",
    RowGauge = "row_gauge",
    Girth = "girth",
    CastOn = "cast_on",
    Before = "before",
    After = "after",
    Rows = "rows",
    Steps = "steps",
    Needle = "needle",
    Body = "body",
    Sleeve = "sleeve",
});

/// What an answer hands on, as it would be typed.
pub type Gifts = Vec<(Gift, Typed)>;

/// From where a field of the next tool gets its text.
#[derive(Clone, Copy, Debug)]
enum Source {
    /// A field of this tool, as it was typed.
    Field(&'static str),
    /// The answer.
    Answer(Gift),
    /// What the way from one tool to the other settles.
    Settled(&'static str),
}

use Source::{Answer, Field, Settled};

/// One way on: from a tool to another, and what goes into which of its fields. Without the first of them she has no reason to
/// go, and the tool is not named; the others go along where they are known.
struct Way {
    from: &'static str,
    to: &'static str,
    carries: &'static [(Source, &'static str)],
}

impl Way {
    const fn new<From: Tool, To: Tool>(carries: &'static [(Source, &'static str)]) -> Self {
        Self {
            from: From::ID,
            to: To::ID,
            carries,
        }
    }
}

/// The stitches of the first section of a piece.
const FIRST_SECTION: &str = "s1_stitches";

const ROUND: Source = Settled(terms::Working::Round.key());

/// Every way on, in the order in which a garment is worked.
const WAYS: &[Way] = &[
    Way::new::<Needles, Gauge>(&[(Answer(Gift::Needle), gauge::Name::Needle.key())]),
    Way::new::<Needles, Tail>(&[(Answer(Gift::Needle), tail::Name::Needle.key())]),
    Way::new::<Swatch, Gauge>(&[
        (Field(swatch::Name::Gauge.key()), gauge::Name::Pattern.key()),
        (Field(swatch::Name::Rows.key()), gauge::Name::PatternRows.key()),
    ]),
    Way::new::<Gauge, Regauge>(&[
        (Field(gauge::Name::Pattern.key()), regauge::Name::Pattern.key()),
        (Answer(Gift::StitchGauge), regauge::Name::Own.key()),
        (Field(gauge::Name::PatternRows.key()), regauge::Name::PatternRows.key()),
        (Answer(Gift::RowGauge), regauge::Name::OwnRows.key()),
    ]),
    Way::new::<Gauge, CastOn>(&[(Answer(Gift::StitchGauge), cast_on::Name::Gauge.key())]),
    Way::new::<Gauge, Rows>(&[(Answer(Gift::RowGauge), rows::Name::Gauge.key())]),
    Way::new::<Gauge, Yarn>(&[
        (Answer(Gift::StitchGauge), yarn::Name::SwatchStitches.key()),
        (Answer(Gift::RowGauge), yarn::Name::SwatchRows.key()),
    ]),
    Way::new::<Sizing, CastOn>(&[
        (Answer(Gift::Girth), cast_on::Name::Width.key()),
        (Field(sizing::Name::OwnStitches.key()), cast_on::Name::Gauge.key()),
        (ROUND, cast_on::Name::Knitting.key()),
    ]),
    Way::new::<Regauge, CastOn>(&[
        (Field(regauge::Name::Wanted.key()), cast_on::Name::Width.key()),
        (Field(regauge::Name::Own.key()), cast_on::Name::Gauge.key()),
        (Field(regauge::Name::Multiple.key()), cast_on::Name::Multiple.key()),
    ]),
    Way::new::<CastOn, Tail>(&[
        (Answer(Gift::CastOn), tail::Name::Stitches.key()),
        (Field(cast_on::Name::Gauge.key()), tail::Name::Gauge.key()),
    ]),
    Way::new::<CastOn, Spacing>(&[
        (Answer(Gift::After), spacing::Name::Stitches.key()),
        (Field(cast_on::Name::Knitting.key()), spacing::Name::Knitting.key()),
    ]),
    Way::new::<CastOn, Cords>(&[
        (Answer(Gift::After), cords::Name::From.key()),
        (Field(cast_on::Name::Gauge.key()), cords::Name::Gauge.key()),
        (Field(cast_on::Name::Knitting.key()), cords::Name::Knitting.key()),
    ]),
    Way::new::<CastOn, Yarn>(&[
        (Answer(Gift::After), FIRST_SECTION),
        (Field(cast_on::Name::Gauge.key()), yarn::Name::SwatchStitches.key()),
    ]),
    Way::new::<Tail, Spacing>(&[(Field(tail::Name::Stitches.key()), spacing::Name::Stitches.key())]),
    Way::new::<Spacing, Shaping>(&[(Answer(Gift::After), shaping::Name::Stitches.key())]),
    Way::new::<Spacing, Yoke>(&[(Answer(Gift::After), yoke::Name::From.key())]),
    Way::new::<Yoke, Cords>(&[
        (Answer(Gift::Before), cords::Name::From.key()),
        (Answer(Gift::Steps), cords::Name::Steps.key()),
        (Answer(Gift::Rows), cords::Name::Rounds.key()),
    ]),
    Way::new::<Yoke, Rows>(&[
        (Answer(Gift::Rows), rows::Name::Rows.key()),
        (Settled(rows::Asked::Rows.key()), rows::Name::Ask.key()),
        (Settled(rows::Turning::Round.key()), rows::Name::Knitting.key()),
    ]),
    Way::new::<Yoke, Shaping>(&[(Answer(Gift::Sleeve), shaping::Name::Stitches.key())]),
    Way::new::<Raglan, Cords>(&[
        (Answer(Gift::Before), cords::Name::From.key()),
        (Answer(Gift::After), cords::Name::To.key()),
        (Answer(Gift::Rows), cords::Name::Rounds.key()),
    ]),
    Way::new::<Flare, Cords>(&[
        (Answer(Gift::Before), cords::Name::From.key()),
        (Answer(Gift::After), cords::Name::To.key()),
        (Answer(Gift::Rows), cords::Name::Rounds.key()),
        (Field(flare::Name::Gauge.key()), cords::Name::Gauge.key()),
    ]),
    Way::new::<Rows, Shaping>(&[(Answer(Gift::Rows), shaping::Name::Rows.key())]),
    Way::new::<Shaping, Stairs>(&[(Answer(Gift::After), stairs::Name::Stitches.key())]),
];

/// The ways on from an answer, each with what it carries.
pub fn next(view: &View, gifts: &[(Gift, Typed)]) -> Html {
    // Another page has one tool in a frame, and a link of its own to the rest.
    if view.sheet.frame.is_some() {
        return Html::default();
    }
    let ways = WAYS.iter().filter(|way| way.from == view.sheet.id);
    let ways: Vec<Html> = ways.filter_map(|way| drawn(view, way, gifts)).collect();
    if ways.is_empty() {
        return Html::default();
    }
    element(
        "section",
        "next",
        vec![text_element("h3", "", words::TITLE), element("ul", "", ways)],
    )
}

fn drawn(view: &View, way: &Way, gifts: &[(Gift, Typed)]) -> Option<Html> {
    let tool = find(way.to)?;
    let carried = carried(&view.fields, way, gifts)?;
    let said = said(view, tool, way, &carried);
    let name = vec![text(tool.title.name.into())];
    let name = match view.sheet.desk.step() {
        Some(step) => from_step(view, way, step, carried, name),
        None => {
            let mut laid = view.sheet.desk.fields(tool.id);
            laid.extend(carried);
            let href = route::print(&Route::tool(tool.id, &laid));
            handing_over(view, way.to, href, laid, store::Fields::new(), name)
        }
    };
    Some(element(
        "li",
        "",
        vec![list(vec![name, text_element("span", "", said)])],
    ))
}

/// The way on from a step: what it hands on stays its own, so that the next one moves with it.
fn from_step(view: &View, way: &Way, step: StepId, mut carried: store::Fields, name: Vec<Html>) -> Html {
    let mut from = store::Fields::new();
    for (source, key) in way.carries {
        let reference = match source {
            Answer(gift) => Some(Reference::Step {
                step,
                gift: gift.key().to_owned(),
            }),
            Field(field) => view.fields.given_from(FieldPath::alone(field)).cloned(),
            Settled(_) => None,
        };
        if let Some(reference) = reference.filter(|_| carried.contains_key(*key)) {
            carried.remove(*key);
            from.insert((*key).to_owned(), Typed::plain(reference.to_string()));
        }
    }
    let href = route::print(&Route::tool(way.to, &store::Fields::new()));
    handing_over(view, way.to, href, carried, from, name)
}

/// A link that lays on the sheet of a tool what it is handed, before the browser goes there.
fn handing_over(
    view: &View,
    to: &'static str,
    href: String,
    fields: store::Fields,
    from: store::Fields,
    name: Vec<Html>,
) -> Html {
    let desk = view.sheet.desk.clone();
    let onclick = Callback::from(move |_: MouseEvent| desk.hand_over(to, &fields, &from));
    html! { <a {href} {onclick}>{ for name }</a> }
}

/// The texts that a way carries, by the fields they go into: none that the other tool would refuse.
fn carried(fields: &Fields, way: &Way, gifts: &[(Gift, Typed)]) -> Option<store::Fields> {
    let taken = |&(source, key): &(Source, &'static str)| {
        let typed = match source {
            Field(key) => {
                let typed = fields.typed(FieldPath::alone(key));
                typed.filter(|typed| !typed.text.trim().is_empty()).cloned()
            }
            Answer(gift) => gifts
                .iter()
                .find(|(given, _)| *given == gift)
                .map(|(_, typed)| typed.clone()),
            Settled(text) => Some(Typed::plain(text)),
        }?;
        takes(way.to, key, &typed).then(|| (key.to_owned(), typed))
    };
    way.carries.first().and_then(taken)?;
    Some(way.carries.iter().filter_map(taken).collect())
}

/// What is carried, as it will stand there.
fn said(view: &View, tool: &Entry, way: &Way, carried: &store::Fields) -> String {
    let settings = Settings::new(view.sheet.desk.fields(SETTINGS));
    let fields = Fields::new(tool.fields, carried.clone(), settings);
    let standing = |key: &str| {
        let (fields, field) = fields.stored_as(key).filter(|_| carried.contains_key(key))?;
        fields.standing(field)
    };
    let texts = way.carries.iter().filter_map(|&(source, key)| match source {
        Answer(gift) => standing(key).map(|text| counted(gift, text)),
        Field(_) => standing(key),
        Settled(_) => None,
    });
    words::carrying(&texts.collect::<Vec<_>>())
}

/// A value with the word for what it counts, where a bare number would not say.
fn counted(gift: Gift, text: String) -> String {
    match gift {
        Gift::CastOn | Gift::Before | Gift::After | Gift::Body | Gift::Sleeve => words::stitches(&text),
        Gift::Rows => words::rows(&text),
        Gift::Steps => words::STEPS.into(),
        Gift::StitchGauge => words::stitch_gauge(&text),
        Gift::RowGauge => words::row_gauge(&text),
        Gift::Girth | Gift::Needle => text,
    }
}

#[cfg(test)]
mod tests {
    use super::super::{TOOLS, tests::fields_in};
    use super::*;
    use loopwright::problem;

    /// In every named state that has an answer the next tool has each field that is carried, and can read its text.
    #[test]
    fn what_is_carried_is_read_where_it_goes() {
        for way in WAYS {
            let [from, to] = [way.from, way.to].map(|id| find(id).unwrap());
            let mut walked = 0;
            for state in from.states {
                let fields = fields_in(from.fields, state);
                let Some(carried) = (from.given)(&fields).and_then(|gifts| carried(&fields, way, &gifts)) else {
                    continue;
                };
                walked += 1;
                let next = Fields::new(to.fields, carried.clone(), Settings::default());
                assert_eq!(next.unknown(), [""; 0], "{} to {}", from.id, to.id);
                let is_unread = |problem: &problem::Problem| {
                    let is_carried = carried.contains_key(&problem.field.stored());
                    is_carried && matches!(problem.kind, problem::Kind::Unreadable(_))
                };
                let problems = (to.problems)(&next);
                assert!(
                    !problems.iter().any(is_unread),
                    "{} to {}: {carried:?}: {problems:?}",
                    from.id,
                    to.id
                );
            }
            assert!(walked > 0, "no state of {} leads to {}", way.from, way.to);
        }
    }

    #[test]
    fn a_tool_is_named_once_among_the_ways_on() {
        for tool in TOOLS {
            let mut to: Vec<&str> = WAYS
                .iter()
                .filter(|way| way.from == tool.id)
                .map(|way| way.to)
                .collect();
            let all = to.len();
            to.sort_unstable();
            to.dedup();
            assert_eq!(to.len(), all, "{}", tool.id);
        }
    }
}
