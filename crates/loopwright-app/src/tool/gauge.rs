//! The view of gauge: counts from the swatch and the pattern's; the gauge or the needle to try, the piece as it would be
//! beside the one that is wanted, and what stitches and rows say, each with the tap that keeps it for all tools.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::outline::{self, Figures, Piece, Size};
use crate::fields;
use crate::form::kept::{Kept, Offer, Value};
use crate::form::{Field, Fields, NEEDLE, Reader, Start, TAPE};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Summary, View, answered, good_to_know, keep_offer, wait, working};
use crate::store::Typed;
use crate::words::gauge as words;
use crate::words::page::MORE;
use crate::words::units::Lengths;
use loopwright::cast_on::WIDTH;
use loopwright::gauge::{Answer, Direction, Measured, Name, Question, USUAL_LENGTH, USUAL_WIDTH, answer};
use loopwright::problem::{Kind, Problem};
use loopwright::tail::NEEDLE as NEEDLES;
use loopwright::units::Length;
use loopwright::units::parse::Unreadable;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=21, 20 1/2, 21&pattern=19"),
    State::new("needle", "stitches=21&pattern=22&needle=4"),
    State::new("no-thinner", "stitches=21&pattern=22&needle=1.5"),
    State::new("the-same", "stitches=21&pattern=21&rows=28&pattern_rows=28"),
    State::new("alone", "stitches=21"),
    State::new("keep", "stitches=21, 21 1/2&pattern=21&rows=30&pattern_rows=28"),
    State::new(
        "washed",
        "stitches=21&pattern=22 in 4 in&rows=28&pattern_rows=28&stitches_unwashed=21 1/2&rows_unwashed=30",
    ),
    State::new("unwashed-far-off", "stitches_unwashed=30&pattern=20"),
    State::new("uneven", "stitches=18, 24&pattern=21"),
    State::new("short", "stitches=5 in 1 in&pattern=22 in 4 in"),
    State::new("impossible", "stitches=21, 0&pattern=500&rows=28 in 2 m"),
    State::new("unreadable", "stitches=21, many&pattern=21 cm"),
    State::new(
        "extreme",
        "stitches=400 in 5 mm&pattern=1 in 100 cm&rows=1 in 100 cm&pattern_rows=400 in 5 mm&width=20 m",
    ),
];

fields! { FIELDS of Name, words::label;
    Stitches => Field::gauges().beside(Name::Rows.key()).taken(Kept::GaugeStitches).remarked(words::SPOTS),
    Pattern => Field::gauge().beside(Name::PatternRows.key()).kept(Kept::PatternStitches).remarked(words::BAND),
    Needle => Field::length(&NEEDLE, NEEDLES).kept(Kept::Needle),
    Rows => Field::gauges().of_rows().beside(Name::Stitches.key()).taken(Kept::GaugeRows).folded(MORE),
    PatternRows => Field::gauge().of_rows().beside(Name::Pattern.key()).kept(Kept::PatternRows).folded(MORE),
    StitchesUnwashed => Field::gauges()
        .beside(Name::RowsUnwashed.key())
        .taken(Kept::GaugeStitchesUnwashed)
        .folded(MORE),
    RowsUnwashed => Field::gauges()
        .of_rows()
        .beside(Name::StitchesUnwashed.key())
        .taken(Kept::GaugeRowsUnwashed)
        .folded(MORE),
    Width => Field::length(&TAPE, WIDTH).starts(Start::Length(USUAL_WIDTH)).folded(MORE),
    Length => Field::length(&TAPE, WIDTH).starts(Start::Length(USUAL_LENGTH)).folded(MORE),
}

/// Gauge.
pub struct Gauge;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Gauge>(words::TITLE);

impl Tool for Gauge {
    const ID: &'static str = "gauge";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            stitches: reader.gauges(Name::Stitches),
            rows: reader.gauges(Name::Rows),
            stitches_unwashed: reader.gauges(Name::StitchesUnwashed),
            rows_unwashed: reader.gauges(Name::RowsUnwashed),
            pattern: reader.gauge_if_any(Name::Pattern),
            pattern_rows: reader.gauge_if_any(Name::PatternRows),
            needle: reader.length_if_any(Name::Needle),
            width: reader.length(Name::Width),
            length: reader.length(Name::Length),
        };
        if let Some(kind) = no_stitches(&question) {
            reader.wrong(Name::Stitches, kind);
        }
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn offers(answer: &Answer) -> Vec<Offer> {
        let of_one = |(direction, found)| [Some(offer(direction, found)), offer_before(direction, found)];
        answer.directions().flat_map(of_one).flatten().collect()
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        // An answer of rows alone stands where stitches would.
        let rows = if answer.rows_only {
            Some(&answer.stitches)
        } else {
            answer.rows.as_ref()
        };
        let gauge = |measured: &Measured| Value::Gauge(measured.gauge).as_typed();
        vec![
            (
                Gift::StitchGauge,
                (!answer.rows_only).then(|| gauge(&answer.stitches)).flatten(),
            ),
            (Gift::RowGauge, rows.and_then(gauge)),
        ]
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        shown(view, question, answer)
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let (title, line) = words::headline(answer);
        let rows = answer.rows.as_ref().map(|rows| Figure::gauge("rows", rows.gauge));
        let mut figures = vec![Figure::gauge("stitches", answer.stitches.gauge)];
        figures.extend(rows);
        Summary {
            title,
            lines: vec![line],
            outcome: words::outcome(question, answer, fields.lengths(&TAPE)),
            figures,
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(fields: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem, &fields.text(problem.field))
    }

    /// A piece that comes out smaller than the one that was wanted.
    fn sign() -> Html {
        let size = |width| Size {
            width: Length::from_mm(width),
            height: Length::from_mm(84),
        };
        let piece = Piece {
            would_be: size(272),
            wanted: size(320),
            known_width: None,
            known_height: None,
        };
        outline::piece(&piece, Figures::default())
    }
}

/// Without stitches there is no answer: an untouched form waits for them, and one with rows asks for them.
fn no_stitches(question: &Question) -> Option<Kind> {
    if !question.stitches.is_empty() || !question.stitches_unwashed.is_empty() {
        return None;
    }
    let has_rows = !question.rows.is_empty() || !question.rows_unwashed.is_empty();
    Some(if has_rows {
        Kind::Missing
    } else {
        Kind::Unreadable(Unreadable::Empty)
    })
}

/// The gauge to knit by.
const fn offer(direction: Direction, found: &Measured) -> Offer {
    (kept(direction, found.washed), Value::Gauge(found.gauge))
}

/// The gauge before washing, where the washed one is known as well.
fn offer_before(direction: Direction, found: &Measured) -> Option<Offer> {
    let before = found.before_washing()?;
    Some((kept(direction, false), Value::Gauge(before)))
}

const fn kept(direction: Direction, washed: bool) -> Kept {
    match (direction, washed) {
        (Direction::Stitches, true) => Kept::GaugeStitches,
        (Direction::Stitches, false) => Kept::GaugeStitchesUnwashed,
        (Direction::Rows, true) => Kept::GaugeRows,
        (Direction::Rows, false) => Kept::GaugeRowsUnwashed,
    }
}

/// The answer, the drawing, what stitches and rows say, and the sum.
fn shown(view: &View, question: &Question, answer: &Answer) -> Html {
    let lengths = view.lengths(&TAPE);
    let (title, line) = words::headline(answer);
    let one_way = |(direction, found)| one_way(view, direction, question, (answer, found));
    let steps = |(direction, found)| words::steps(direction, question, found, lengths);
    let notes = answer.notes.iter().map(|note| words::note(*note).into());
    let rows_only = answer.rows_only.then(|| text_element("p", "verdict", words::ROWS_ONLY));
    // Each has its place whether it is there or not, so that none takes that of another.
    list(vec![
        answered(
            title,
            text_element("p", "row", line),
            words::outcome(question, answer, lengths),
        ),
        words::needle(answer).map_or_else(Html::default, |needle| text_element("p", "", needle)),
        rows_only.unwrap_or_default(),
        figure(question, answer, lengths),
        element("div", "ways", answer.directions().map(one_way).collect()),
        working(answer.directions().flat_map(steps).collect(), words::SOURCE),
        good_to_know(notes.collect()),
    ])
}

/// The piece as it would be beside the one that is wanted; as long as the pattern's gauge is not there, the one that is
/// wanted alone, so that nothing has to make room when it is typed. Without rows beside the pattern's, its length is the one that
/// is wanted.
fn figure(question: &Question, answer: &Answer, lengths: Lengths) -> Html {
    let drawn = words::picture(question, answer, lengths);
    let is_apart = drawn.seen == words::Seen::Apart;
    let rows = answer.compared_rows();
    let piece = Piece {
        would_be: Size {
            width: answer.stitches.would_be,
            height: rows.map_or(question.length, |rows| rows.would_be),
        },
        wanted: Size {
            width: question.width,
            height: question.length,
        },
        known_width: answer.stitches.known().filter(|_| is_apart),
        known_height: rows.and_then(Measured::known).filter(|_| is_apart),
    };
    let caption = words::drawing(drawn.seen, piece.bands_seen());
    let figures = Figures {
        words: [
            &*drawn.would_be,
            if is_apart { "; " } else { "" },
            &drawn.wanted,
            ". ",
            caption,
        ]
        .concat(),
        inside: drawn.would_be,
        below: drawn.wanted,
    };
    let picture = outline::piece(&piece, figures);
    let caption = text_element("figcaption", "quiet", caption);
    element("figure", "scale", vec![picture, caption])
}

/// What stitches, or rows, say. What the headline has said is not said again.
fn one_way(view: &View, direction: Direction, question: &Question, (answer, found): (&Answer, &Measured)) -> Html {
    let before = found
        .before_washing()
        .map(|gauge| text_element("p", "", words::before(gauge)));
    let keep_before = offer_before(direction, found).map(|offer| keep_offer(view, offer));
    let lengths = view.lengths(&TAPE);
    let findings = words::findings(direction, question.wanted(direction), found, lengths);
    let findings = findings.into_iter().map(|sentence| text_element("p", "", sentence));
    let counted = words::counted(direction, answer, found);
    element(
        "div",
        "",
        vec![
            text_element("h3", "", words::heading(direction)),
            list(
                counted
                    .map(|counted| text_element("p", "", counted))
                    .into_iter()
                    .collect(),
            ),
            keep_offer(view, offer(direction, found)),
            list(before.into_iter().chain(keep_before).collect()),
            list(findings.collect()),
        ],
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::tests::fields_of;

    #[test]
    fn washed_and_unwashed_gauges_are_kept_under_names_of_their_own() {
        let offered = |name| {
            let state = NAMED.iter().find(|state| state.name == name).unwrap();
            let question = Gauge::read(&fields_of::<Gauge>(state)).unwrap();
            let offers = Gauge::offers(&answer(&question).unwrap());
            offers.into_iter().map(|(kept, _)| kept).collect::<Vec<_>>()
        };
        let all = [
            Kept::GaugeStitches,
            Kept::GaugeStitchesUnwashed,
            Kept::GaugeRows,
            Kept::GaugeRowsUnwashed,
        ];
        assert_eq!(offered("washed"), all);
        assert_eq!(offered("unwashed-far-off"), [Kept::GaugeStitchesUnwashed]);
    }
}
