//! The view of cords: stitches along a piece and the gauge before washing; the fewest cords, when to change, and where no
//! cord serves the ways to do without.

use super::{Entry, State, Tool};
use crate::drawing::cords::{Bar, Bars};
use crate::drawing::sign::sign as lines;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Reader, TAPE};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{Below, Form, Part, Part::Words, View, answered, good_to_know, wait, working};
use crate::words::cords as words;
use crate::words::page::MORE;
use crate::words::tell::Long;
use loopwright::cords::{
    Answer, Around, By, GIRTH, Name, Question, ROUNDS, Run, STITCHES, Stretch, Swatch, TIP, answer, read_list,
    rounds_between,
};
use loopwright::problem::Problem;
use loopwright::terms::Working;
use loopwright::units::LengthUnit;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("tube", "from=100&gauge=21"),
    State::new("filled", "from=90&to=230&rounds=60&gauge=20"),
    State::new(
        "shrinking",
        "from=240&to=40&rounds=101&gauge=20&swatch=washed&cords=40, 60 and 80&tip=9",
    ),
    State::new("missing", "from=80&to=250&rounds=80&gauge=20&cords=40 100"),
    State::new(
        "flat",
        "from=20&to=400&rounds=180&gauge=20&knitting=flat&cords=40 60 120",
    ),
    State::new("girth", "around=35&tip=12&cords=23, 30"),
    State::new("impossible", "from=90&to=100&rounds=1&gauge=500&cords=4"),
    State::new("unreadable", "from=many&gauge=21 cm&cords=some"),
    State::new("extreme", "from=1&to=100000&rounds=10000&gauge=20"),
];

fields! { FIELDS of Name, words::label;
    From => Field::count(STITCHES).in_sentence(),
    To => Field::count(STITCHES).in_sentence(),
    Rounds => Field::count(ROUNDS).in_sentence(),
    Swatch => Field::choice::<Swatch>().in_sentence(),
    Gauge => Field::gauge().kept_by(kept_gauge).in_sentence(),
    Knitting => Field::choice::<Working>().folded(MORE),
    Cords => Field::lengths(words::EXAMPLE).folded(MORE),
    Tip => Field::length(&TAPE, TIP).folded(MORE),
    Around => Field::length(&TAPE, GIRTH).folded(MORE),
}

fn kept_gauge(fields: &Fields) -> Kept {
    match fields.choice(Name::Swatch) {
        Swatch::Unwashed => Kept::GaugeStitchesUnwashed,
        Swatch::Washed => Kept::GaugeStitches,
    }
}

/// Cords.
pub struct Cords;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Cords>(words::TITLE);

impl Tool for Cords {
    const ID: &'static str = "cords";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    /// Where a girth is typed, neither stitches nor a gauge are read.
    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let mut question = match reader.length_if_any(Name::Around) {
            Some(girth) => Question::about(Around::Girth(girth)),
            None => stitches(&mut reader),
        };
        question.flat = reader.choice::<Working>(Name::Knitting) == Working::Flat;
        question.tip = reader.length_if_any(Name::Tip);
        let (_, unit) = fields.list_unit(Name::Cords.into());
        let cords = read_list(&reader.text(Name::Cords), unit);
        question.cords = reader.value(Name::Cords, cords, Vec::new());
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn form(form: &Form) -> Html {
        let working = form.view.fields.choice(Name::Knitting);
        list(vec![
            form.line(&[
                Words(words::FROM),
                Part::Field(Name::From),
                Words(words::TO),
                Part::Field(Name::To),
                Words(words::STITCHES_IN),
                Part::Field(Name::Rounds),
                Words(words::rounds(working)),
            ]),
            form.line(&[Words(words::SWATCH), Part::Field(Name::Swatch)]),
            form.labelled(Name::Gauge),
            form.columns(),
        ])
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        shown(view, question, answer)
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    /// Three cords along a piece.
    fn sign() -> Html {
        let drawn = [("bar thick", "M8 30H44M60 74H96"), ("bar", "M26 52H80")];
        lines("girths sign", "0 0 104 104", &drawn)
    }
}

/// A piece that grows or shrinks; a tube where nothing is said of its end.
fn stitches(reader: &mut Reader) -> Question {
    let from = reader.count(Name::From);
    let to = reader.count_if_any(Name::To).unwrap_or(from);
    let rounds = if from == to {
        reader.count_if_any(Name::Rounds).unwrap_or(ROUNDS.least)
    } else {
        reader.count_within(Name::Rounds, rounds_between(from, to))
    };
    let gauge = Some(reader.gauge(Name::Gauge));
    let (unwashed, washed) = match reader.choice(Name::Swatch) {
        Swatch::Unwashed => (gauge, None),
        Swatch::Washed => (None, gauge),
    };
    Question {
        unwashed,
        washed,
        ..Question::about(Around::Even { from, to, rounds })
    }
}

/// The cords, the changes, the drawing and the sum.
fn shown(view: &View, question: &Question, answer: &Answer) -> Html {
    // A cord is called as it was typed.
    let (_, unit) = view.fields.list_unit(Name::Cords.into());
    let is_typed_in_inches = !question.cords.is_empty() && unit == LengthUnit::Inch;
    let in_inches = is_typed_in_inches || view.in_inches(&TAPE);
    let long: Long = &|length| view.tape(length);
    let cord: Long = &|length| words::cord(length, in_inches, long);
    let line = text_element("p", "row", words::headline(answer, cord));
    let mut below = Below::of(answered(words::ANSWER, line, words::outcome(answer, long)));
    let mut before = None;
    for stretch in &answer.plan {
        below.sentence("verdict", words::change(before, stretch, question.flat, cord));
        if let By::Gap(gap) = &stretch.by {
            let whole = answer.plan.len() == 1;
            below.sentence("", words::gap(stretch, whole, question.flat));
            below.add(items("ul", words::ways(gap, long)));
        }
        before = Some(stretch);
    }
    match question.around {
        Around::Even { from, to, rounds } if from != to => below.add(drawn(question, answer, rounds, cord)),
        Around::Even { .. } | Around::Girth(_) | Around::Rounds(_) => below.sentence("", words::serving(answer, cord)),
    }
    below.add(good_to_know(words::notes(question, answer, long, cord)));
    below.add(working(words::steps(question, answer, long, cord), words::SOURCE));
    below.done()
}

/// The cords along the piece.
fn drawn(question: &Question, answer: &Answer, rounds: u32, cord: Long) -> Html {
    let mut bars = Bars::over(rounds);
    for other in answer.cords.iter().filter(|cord| !cord.runs.is_empty()) {
        let is_picked = answer.picks.contains(&other.length);
        let bar = if is_picked { Bar::Picked } else { Bar::Other };
        bars.add(&cord(other.length), bar, &other.runs);
    }
    let is_gap = |stretch: &&Stretch| matches!(stretch.by, By::Gap(_));
    let gaps: Vec<Run> = answer.plan.iter().filter(is_gap).map(Stretch::run).collect();
    if !gaps.is_empty() {
        bars.add(words::NO_CORD, Bar::Gap, &gaps);
    }
    for stretch in &answer.plan {
        bars.mark(stretch.earliest);
        bars.mark(stretch.latest);
    }
    bars.mark(rounds);
    let picture = bars.drawn(&words::drawing(answer, &gaps, question.flat, cord));
    let caption = text_element("figcaption", "quiet", words::KEY);
    element("figure", "scale", vec![picture, caption])
}
