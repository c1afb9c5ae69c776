//! What is known of a project, edited in place: the same fields as in the tools, under a few headings. A heading below which
//! nothing stands is folded, and says beside it what is set once something is.

use crate::desk::Desk;
use crate::fields;
use crate::form::kept::{Dimension, Kept, SHEET};
use crate::form::{Field, Fields, NEEDLE, Reader, SETTINGS, Settings, Start, TAPE, WEIGHT, YARN};
use crate::part::plain::{element, text_element};
use crate::part::{Form, Sheet, View};
use crate::store::Typed;
use crate::words::{facts as words, known};
use loopwright::choice::Key;
use loopwright::problem::{Kind, Problem};
use loopwright::sizing::Listed;
use loopwright::tail::{NEEDLE as NEEDLES, STITCHES, WRAPS, YarnClass};
use loopwright::terms::{MULTIPLE, PLUS};
use loopwright::units::count::read_plus;
use loopwright::units::printed::Unread;
use loopwright::{cast_on, cords, sizing, yarn, yoke};
use loopwright_project::{Texts, own_counts};
use std::collections::BTreeMap;
use yew::prelude::*;

fields! { FIELDS of Kept, Kept::label;
    GaugeStitches => Field::gauge().beside(Kept::GaugeRows.key()),
    GaugeRows => Field::gauge().of_rows().beside(Kept::GaugeStitches.key()),
    Bust => Field::length(&TAPE, sizing::GIRTH),
    Needle => Field::length(&NEEDLE, NEEDLES),
    YarnClass => Field::choice::<YarnClass>(),
    CastOn => Field::count(STITCHES),
    Neck => Field::count(STITCHES).folded(words::COUNTS),
    Body => Field::count(STITCHES).folded(words::COUNTS),
    Sleeve => Field::count(STITCHES).folded(words::COUNTS),
    Underarm => Field::count(yoke::UNDERARM).folded(words::COUNTS),
    GaugeStitchesUnwashed => Field::gauge().beside(Kept::GaugeRowsUnwashed.key()).folded(words::SWATCH),
    GaugeRowsUnwashed => Field::gauge().of_rows().beside(Kept::GaugeStitchesUnwashed.key()).folded(words::SWATCH),
    UpperArm => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY),
    Head => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY),
    Shoulder => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY),
    WaistToUnderarm => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY),
    Sizes => Field::lengths(words::EXAMPLE_SIZES).folded(words::PATTERN),
    Girth => Field::length(&TAPE, cast_on::WIDTH).folded(words::PATTERN),
    PatternStitches => Field::gauge().beside(Kept::PatternRows.key()).folded(words::PATTERN),
    PatternRows => Field::gauge().of_rows().beside(Kept::PatternStitches.key()).folded(words::PATTERN),
    Multiple => Field::count(MULTIPLE).with_plus().folded(words::PATTERN),
    Edge => Field::count(cast_on::EDGE).folded(words::PATTERN),
    CastOnNeedle => Field::length(&NEEDLE, NEEDLES).folded(words::KIT),
    Cords => Field::lengths(words::EXAMPLE_CORDS).folded(words::KIT),
    Tip => Field::length(&TAPE, cords::TIP).folded(words::KIT),
    BallLength => Field::length(&YARN, yarn::BALL_LENGTH).folded(words::YARN),
    BallMass => Field::mass(&WEIGHT, yarn::BALL_MASS).folded(words::YARN),
    BallPrice => Field::text().example(Start::Text(words::EXAMPLE_PRICE)).folded(words::YARN),
    Wraps => Field::count(WRAPS).folded(words::YARN),
}

/// The facts that stand open, column by column.
const COLUMNS: [&[Kept]; 2] = [
    &[Kept::GaugeStitches, Kept::GaugeRows, Kept::CastOn],
    &[Kept::Bust, Kept::Needle, Kept::YarnClass],
];

/// All that is known, each in its field.
pub fn facts(desk: &Desk) -> Html {
    let view = View {
        fields: Fields::new(FIELDS, desk.fields(SHEET), Settings::new(desk.fields(SETTINGS))),
        sheet: Sheet::new(desk, SHEET, None),
    };
    let problems = problems(&view.fields);
    let form = Form {
        view: &view,
        problems: &problems,
        sentence: &|problem| sentence(&view.fields, problem),
    };
    // The most asked stand in two columns, where there is room for them.
    let column = |facts: &[Kept]| element("div", "fields", form.asked(facts));
    let content = vec![
        text_element("h2", "", words::TITLE),
        element("div", "columns", COLUMNS.map(column).into()),
        form.folds(None),
        super::own::own(desk),
    ];
    element("section", "known-facts", content)
}

/// Every fact by what it is called, its key, and how it is said.
pub fn named() -> impl Iterator<Item = (&'static str, &'static str, impl Fn(&Typed) -> String)> {
    Kept::ALL.iter().filter_map(|kept| {
        let row = FIELDS.iter().find(|row| row.key == kept.key())?;
        Some((row.label, kept.key(), |typed: &Typed| kept.print(typed)))
    })
}

/// What a project calls its own counts, in their order, each with its number as typed: those of one name together.
pub fn own_named(facts: &Texts) -> Vec<(String, String)> {
    let mut told: Vec<(String, String)> = Vec::new();
    let mut places: BTreeMap<String, usize> = BTreeMap::new();
    for own in own_counts(facts) {
        let name = match own.name(facts) {
            "" => known::own_name(""),
            name => name.to_owned(),
        };
        let number = facts.get(&own.key()).map_or("", |typed| typed.text.trim());
        match places.get(&name).and_then(|place| told.get_mut(*place)) {
            Some((_, numbers)) => *numbers = known::and(numbers, number),
            None => {
                places.insert(name.clone(), told.len());
                told.push((name, number.to_owned()));
            }
        }
    }
    told
}

/// What cannot be read.
fn problems(fields: &Fields) -> Vec<Problem> {
    let mut reader = Reader::new(fields);
    let strange = fields.strange();
    let is_strange = |kept: &&Kept| strange.iter().any(|problem| problem.field == (**kept).into());
    for kept in Kept::ALL.iter().filter(|kept| !is_strange(kept)) {
        match kept.dimension() {
            Dimension::Count => drop(reader.count_if_any(*kept)),
            Dimension::Length | Dimension::Needle => drop(reader.length_if_any(*kept)),
            Dimension::Mass => drop(reader.mass_if_any(*kept)),
            Dimension::Gauge => drop(reader.gauge_if_any(*kept)),
            Dimension::List => {
                if let Some(unread) = unread_list(fields, *kept) {
                    reader.wrong(*kept, Kind::UnreadableList(unread));
                }
            }
            Dimension::Multiple => {
                if fields.is_typed(*kept) {
                    let read = read_plus(&reader.text(*kept), MULTIPLE, PLUS);
                    reader.value(*kept, read, (MULTIPLE.least, None));
                }
            }
            // A wrong choice is strange, and what she wrote for herself nobody reads.
            Dimension::YarnClass | Dimension::Text => {}
        }
    }
    reader.found(strange);
    reader.done(()).err().unwrap_or_default()
}

/// Why a list cannot be read by the tool that asks for it. Of sizes that are two lists the tool asks which one is meant.
fn unread_list(fields: &Fields, kept: Kept) -> Option<Unread> {
    let path = kept.into();
    let (text, (_, unit)) = (fields.text(path), fields.list_unit(path));
    if text.trim().is_empty() {
        return None;
    }
    match kept {
        Kept::Sizes => sizing::read_listed(&text, unit, Some(Listed::Body)).err(),
        Kept::Cords => cords::read_list(&text, unit).err(),
        _ => None,
    }
}

/// What to type instead, as the tool that asks for the fact says it.
fn sentence(fields: &Fields, problem: &Problem) -> String {
    if let Some(strange) = fields.strange_sentence(problem.field) {
        return strange;
    }
    let text = fields.text(problem.field);
    match Kept::from_key(problem.field.key()) {
        Some(Kept::Sizes) => crate::words::sizing::problem(problem, &text, fields.lengths(&TAPE)),
        Some(Kept::Cords) => crate::words::cords::problem(problem, &text),
        _ => crate::words::problem::sentence(&problem.kind),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route;
    use crate::tool::TOOLS;
    use loopwright_project::Trouble;

    fn typed(link: &str) -> Fields {
        let typed = route::to_fields(&route::parse_query(link));
        Fields::new(FIELDS, typed, Settings::default())
    }

    #[test]
    fn what_cannot_be_read_is_pointed_at_and_nothing_else() {
        assert!(problems(&typed("")).is_empty());
        let all = "gauge_stitches=22&bust=94&needle=US 6&cast_on=96&ball_mass=50&tip=12&sizes=86 (94)";
        assert!(problems(&typed(all)).is_empty());
        let wrong = problems(&typed("gauge_stitches=22 cm&bust=wide&needle=4&cast_on=7 1/2"));
        let mut keys: Vec<&str> = wrong.iter().map(|problem| problem.field.key()).collect();
        keys.sort_unstable();
        assert_eq!(keys, ["bust", "cast_on", "gauge_stitches"]);
    }

    #[test]
    fn a_list_that_cannot_be_read_is_pointed_at_as_its_tool_does() {
        for (list, key, tool) in [("86, ninety, 94", "sizes", "sizing"), ("40; 60; x", "cords", "cords")] {
            let typed: crate::store::Fields = [(key.to_owned(), Typed::plain(list))].into();
            let fields = Fields::new(FIELDS, typed.clone(), Settings::default());
            let wrong = problems(&fields);
            assert_eq!(wrong.len(), 1, "{list}: {wrong:?}");
            let here = sentence(&fields, &wrong[0]);
            let tool = crate::tool::find(tool).unwrap();
            let troubles = (tool.outcome)(&Fields::new(tool.fields, typed, Settings::default())).unwrap_err();
            let said = |trouble: &Trouble| match trouble {
                Trouble::Field { field, sentence } => (*field == key).then(|| sentence.clone()),
                _ => None,
            };
            assert_eq!(troubles.iter().find_map(said), Some(here));
        }
    }

    #[test]
    fn a_repeat_may_have_its_edge_behind_it() {
        let known = |facts: &[(&str, &str)]| {
            let fact = |(key, text): &(&str, &str)| ((*key).to_owned(), Typed::plain(*text));
            Fields::new(FIELDS, facts.iter().map(fact).collect(), Settings::default())
        };
        let right = [("multiple", "8 + 3"), ("ball_price", "about six"), ("underarm", "0")];
        assert!(problems(&known(&right)).is_empty());
        let wrong = [("multiple", "eight"), ("wraps", "0"), ("edge", "-1")];
        assert_eq!(problems(&known(&wrong)).len(), 3);
    }

    #[test]
    fn every_fact_that_is_not_folded_has_its_column() {
        let open = FIELDS.iter().filter(|row| row.fold().is_none());
        let mut open: Vec<&str> = open.map(|row| row.key).collect();
        let mut columns: Vec<&str> = COLUMNS.into_iter().flatten().map(|kept| kept.key()).collect();
        open.sort_unstable();
        columns.sort_unstable();
        assert_eq!(open, columns);
    }

    /// Whatever stands here as a fact is of the kind that the fields of the tools are.
    #[test]
    fn a_fact_is_typed_as_the_tools_ask_for_it() {
        let nothing = |table| Fields::new(table, Default::default(), Settings::default());
        for tool in TOOLS {
            for field in tool.fields {
                let Some(kept) = field.kept_name(&nothing(tool.fields)) else {
                    continue;
                };
                let row = nothing(FIELDS).row(kept.into()).unwrap();
                assert_eq!(row.counts, field.counts, "{} {}", tool.id, field.key);
            }
        }
    }

    #[test]
    fn counts_of_her_own_are_told_by_their_names() {
        let facts = [
            ("count_1", "96"),
            ("count_1_name", "hood"),
            ("count_3_name", "cuff"),
            ("count_4", "90"),
            ("count_4_name", " hood"),
            ("bust", "92"),
        ];
        let facts = facts.map(|(key, text)| (key.to_owned(), Typed::plain(text)));
        let told = own_named(&facts.into());
        assert_eq!(
            told,
            [("hood".to_owned(), "96, 90".to_owned()), ("cuff".into(), String::new())]
        );
    }
}
