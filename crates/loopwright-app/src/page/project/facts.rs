//! What is known of a project, edited in place: the same fields as in the tools, under a few headings. A heading below which
//! nothing stands is folded, and says beside it what is set once something is.

use crate::desk::Desk;
use crate::fields;
use crate::form::kept::{Dimension, Kept, SHEET};
use crate::form::{Field, Fields, NEEDLE, Reader, SETTINGS, Settings, TAPE, WEIGHT, YARN};
use crate::part::plain::{element, text_element};
use crate::part::{Form, Sheet, View};
use crate::store::Typed;
use crate::words::facts as words;
use loopwright::choice::Key;
use loopwright::problem::Problem;
use loopwright::tail::{NEEDLE as NEEDLES, STITCHES, YarnClass};
use loopwright::{cords, sizing, yarn};
use yew::prelude::*;

fields! { FIELDS of Kept, unlabelled;
    GaugeStitches => Field::gauge().beside(Kept::GaugeRows.key()).labelled(words::GAUGE_STITCHES),
    GaugeRows => Field::gauge().of_rows().beside(Kept::GaugeStitches.key()).labelled(words::GAUGE_ROWS),
    Bust => Field::length(&TAPE, sizing::GIRTH).labelled(words::BUST),
    Needle => Field::length(&NEEDLE, NEEDLES).labelled(words::NEEDLE),
    YarnClass => Field::choice::<YarnClass>().labelled(words::YARN_CLASS),
    CastOn => Field::count(STITCHES).labelled(words::CAST_ON),
    GaugeStitchesUnwashed => Field::gauge().beside(Kept::GaugeRowsUnwashed.key()).folded(words::SWATCH).labelled(words::GAUGE_STITCHES_UNWASHED),
    GaugeRowsUnwashed => Field::gauge().of_rows().beside(Kept::GaugeStitchesUnwashed.key()).folded(words::SWATCH).labelled(words::GAUGE_ROWS_UNWASHED),
    UpperArm => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY).labelled(words::UPPER_ARM),
    Head => Field::length(&TAPE, sizing::GIRTH).folded(words::BODY).labelled(words::HEAD),
    Sizes => Field::lengths(words::EXAMPLE_SIZES).folded(words::PATTERN).labelled(words::SIZES),
    PatternStitches => Field::gauge().beside(Kept::PatternRows.key()).folded(words::PATTERN).labelled(words::PATTERN_STITCHES),
    PatternRows => Field::gauge().of_rows().beside(Kept::PatternStitches.key()).folded(words::PATTERN).labelled(words::PATTERN_ROWS),
    Cords => Field::lengths(words::EXAMPLE_CORDS).folded(words::KIT).labelled(words::CORDS),
    Tip => Field::length(&TAPE, cords::TIP).folded(words::KIT).labelled(words::TIP),
    BallLength => Field::length(&YARN, yarn::BALL_LENGTH).folded(words::YARN).labelled(words::BALL_LENGTH),
    BallMass => Field::mass(&WEIGHT, yarn::BALL_MASS).folded(words::YARN).labelled(words::BALL_MASS),
}

/// Each row has its label with it: words do not know what is kept.
const fn unlabelled(_: Kept) -> &'static str {
    ""
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
        sentence: &|problem| crate::words::problem::sentence(&problem.kind),
    };
    // The most asked stand in two columns, where there is room for them.
    let column = |facts: &[Kept]| element("div", "fields", form.asked(facts));
    let content = vec![
        text_element("h2", "", words::TITLE),
        element("div", "columns", COLUMNS.map(column).into()),
        form.folds(None),
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

/// What cannot be read.
fn problems(fields: &Fields) -> Vec<Problem> {
    let mut reader = Reader::new(fields);
    for kept in Kept::ALL {
        match kept.dimension() {
            Dimension::Count => drop(reader.count_if_any(*kept)),
            Dimension::Length | Dimension::Needle => drop(reader.length_if_any(*kept)),
            Dimension::Mass => drop(reader.mass_if_any(*kept)),
            Dimension::Gauge => drop(reader.gauge_if_any(*kept)),
            // A list is read by the tool that asks for it, and there is no wrong choice.
            Dimension::List | Dimension::YarnClass => {}
        }
    }
    reader.done(()).err().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route;
    use crate::tool::TOOLS;

    fn known(link: &str) -> Fields {
        let typed = route::to_fields(&route::parse_query(link));
        Fields::new(FIELDS, typed, Settings::default())
    }

    #[test]
    fn what_cannot_be_read_is_pointed_at_and_nothing_else() {
        assert!(problems(&known("")).is_empty());
        let all = "gauge_stitches=22&bust=94&needle=US 6&cast_on=96&ball_mass=50&tip=12&sizes=86 (94)";
        assert!(problems(&known(all)).is_empty());
        let wrong = problems(&known("gauge_stitches=22 cm&bust=wide&needle=4&cast_on=7 1/2"));
        let mut keys: Vec<&str> = wrong.iter().map(|problem| problem.field.key()).collect();
        keys.sort_unstable();
        assert_eq!(keys, ["bust", "cast_on", "gauge_stitches"]);
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
}
