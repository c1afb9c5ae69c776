//! The view of cords: stitches along a piece and the gauge before washing; the fewest cords, when to change, and where no
//! cord serves the ways to do without.

use super::{Entry, State, Tool};
use crate::drawing::cords::{Bar, Bars};
use crate::drawing::sign::sign as lines;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, NEEDLE, Reader, TAPE};
use crate::part::plain::{element, items, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, wait, working};
use crate::words::cords as words;
use crate::words::page::MORE;
use crate::words::tell::Long;
use loopwright::bounds::Bounds;
use loopwright::cords::{
    Answer, Around, By, GIRTH, Name, Question, ROUNDS, Run, STITCHES, Stretch, Swatch, TIP, answer, read_list,
    read_steps, rounds_between,
};
use loopwright::problem::{Kind, Problem};
use loopwright::tail::NEEDLE as NEEDLES;
use loopwright::terms::Working;
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("tube", "from=100&gauge=21"),
    State::new("filled", "from=90&to=230&rounds=60&gauge=20"),
    State::new("same", "from=100&rounds=60&gauge=21"),
    State::new("steps", "from=90&steps=5: 120, 12: 160, 25: 230&rounds=40&gauge=20"),
    State::new("one-round", "from=90&to=300&rounds=60&gauge=20"),
    State::new(
        "shrinking",
        "from=240&to=40&rounds=101&gauge=20&swatch=washed&cords=40, 60 and 80&tip=9",
    ),
    State::new("missing", "from=80&to=250&rounds=80&gauge=20&cords=40 100"),
    State::new(
        "flat",
        "from=20&to=400&rounds=180&gauge=20&knitting=flat&cords=40 60 120",
    ),
    State::new("needle", "from=90&to=230&rounds=60&gauge=20&needle=4"),
    State::new("girth", "around=35&tip=12&cords=23, 30"),
    State::new("impossible", "from=90&to=100&rounds=1&gauge=500&cords=4"),
    State::new("unreadable", "from=many&gauge=21 cm&cords=some"),
    State::new("extreme", "from=1&to=100000&rounds=10000&gauge=20"),
];

fields! { FIELDS of Name, words::label;
    From => Field::count(STITCHES).offering_counts().in_sentence(),
    To => Field::count(STITCHES).offering_counts().in_sentence(),
    Rounds => Field::count(ROUNDS).in_sentence(),
    Steps => Field::counts(words::EXAMPLE_STEPS).folded(MORE),
    Swatch => Field::choice::<Swatch>().in_sentence(),
    Gauge => Field::gauge().kept_by(kept_gauge).in_sentence(),
    Knitting => Field::choice::<Working>().folded(MORE),
    Cords => Field::lengths(words::EXAMPLE).folded(MORE).kept(Kept::Cords),
    Tip => Field::length(&TAPE, TIP).folded(MORE).kept(Kept::Tip),
    Around => Field::length(&TAPE, GIRTH).folded(MORE),
    Needle => Field::length(&NEEDLE, NEEDLES).kept(Kept::Needle).folded(MORE),
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
        question.cords = reader.listed(Name::Cords, cords, Vec::new());
        question.needle = reader.length_if_any(Name::Needle);
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn cords(fields: &Fields, question: &Question, answer: &Answer) -> Vec<(Length, String)> {
        let long: Long = &|length| fields.tape(length);
        let in_inches = is_in_inches(fields, question);
        let called = |pick: &Length| (*pick, words::cord(*pick, in_inches, long));
        answer.picks.iter().map(called).collect()
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

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let long: Long = &|length| fields.tape(length);
        let in_inches = is_in_inches(fields, question);
        let cord: Long = &|length| words::cord(length, in_inches, long);
        Summary {
            title: words::ANSWER,
            lines: vec![words::headline(answer, cord)],
            outcome: words::outcome(question, answer, long),
            figures: answer.picks.iter().map(|pick| Figure::length("cord", *pick)).collect(),
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(fields: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem, &fields.text(problem.field))
    }

    /// Three cords along a piece.
    fn sign() -> Html {
        let drawn = [("bar thick", "M8 30H44M60 74H96"), ("bar", "M26 52H80")];
        lines("girths sign", "0 0 104 104", &drawn)
    }
}

/// A piece that grows or shrinks, in steps or evenly; and its gauge.
fn stitches(reader: &mut Reader) -> Question {
    let from = reader.count(Name::From);
    let around = if reader.fields().is_typed(Name::Steps) {
        in_steps(reader, from)
    } else {
        even(reader, from)
    };
    let gauge = Some(reader.gauge(Name::Gauge));
    let (unwashed, washed) = match reader.choice(Name::Swatch) {
        Swatch::Unwashed => (gauge, None),
        Swatch::Washed => (None, gauge),
    };
    Question {
        unwashed,
        washed,
        ..Question::about(around)
    }
}

/// Growth in steps. A count for the end has to be that of the last step, and the rounds no fewer than they take.
fn in_steps(reader: &mut Reader, from: u32) -> Around {
    let read = read_steps(&reader.text(Name::Steps));
    let steps = reader.value(Name::Steps, read, Vec::new());
    let end = steps.last().copied();
    if let (Some(to), Some(end)) = (reader.count_if_any(Name::To), end)
        && to != end.stitches
    {
        reader.wrong(Name::To, Kind::Differs { other: end.stitches });
    }
    let least = end.map_or(ROUNDS.least, |end| end.round);
    let rounds = if reader.fields().is_typed(Name::Rounds) {
        reader.count_within(Name::Rounds, Bounds::new(least, ROUNDS.most))
    } else {
        least
    };
    Around::Steps { from, steps, rounds }
}

/// Even growth; none where nothing is said of the end.
fn even(reader: &mut Reader, from: u32) -> Around {
    let to = reader.count_if_any(Name::To).unwrap_or(from);
    let rounds = if from == to {
        reader.count_if_any(Name::Rounds).unwrap_or(ROUNDS.least)
    } else {
        reader.count_within(Name::Rounds, rounds_between(from, to))
    };
    Around::Even { from, to, rounds }
}

/// Whether cords are called by their inches: each is called as it was typed.
fn is_in_inches(fields: &Fields, question: &Question) -> bool {
    let (_, unit) = fields.list_unit(Name::Cords.into());
    let is_typed_in_inches = !question.cords.is_empty() && unit == LengthUnit::Inch;
    is_typed_in_inches || fields.in_inches(&TAPE)
}

/// The cords, the changes, the drawing and the sum.
fn shown(view: &View, question: &Question, answer: &Answer) -> Html {
    let in_inches = is_in_inches(&view.fields, question);
    let long: Long = &|length| view.tape(length);
    let cord: Long = &|length| words::cord(length, in_inches, long);
    let line = text_element("p", "row", words::headline(answer, cord));
    let easier = answer
        .easier
        .as_ref()
        .map(|easier| words::easier(easier, question.flat, cord));
    let growth = match question.around {
        Around::Even { from, to, rounds } if from != to => drawn(question, answer, rounds, cord),
        Around::Steps { rounds, .. } => drawn(question, answer, rounds, cord),
        Around::Even { .. } | Around::Girth(_) | Around::Rounds(_) => {
            text_element("p", "", words::serving(answer, cord))
        }
    };
    // Each has its place whether it is there or not, so that none takes that of another.
    list(vec![
        answered(words::ANSWER, line, words::outcome(question, answer, long)),
        words::needle(answer).map_or_else(Html::default, |needle| text_element("p", "", needle)),
        element("div", "", changes(question, answer, cord)),
        easier.map_or_else(Html::default, |easier| text_element("p", "", easier)),
        growth,
        working(words::steps(question, answer, long, cord), words::SOURCE),
        good_to_know(words::notes(question, answer, long, cord)),
        element("div", "", gaps(question, answer, cord)),
    ])
}

/// From which round on which cord; of a piece that grows and stays on what it began with, that it does.
fn changes(question: &Question, answer: &Answer, cord: Long) -> Vec<Html> {
    let is_same_all_along = match question.around {
        Around::Even { from, to, .. } => from == to,
        Around::Steps { .. } => false,
        Around::Girth(_) | Around::Rounds(_) => true,
    };
    if let ([stretch], false) = (answer.plan.as_slice(), is_same_all_along) {
        return vec![text_element("p", "verdict", words::all_along(stretch, question.flat))];
    }
    let mut before = None;
    let mut changes = Vec::new();
    for stretch in &answer.plan {
        let change = words::change(before, stretch, question.flat, cord);
        if !change.is_empty() {
            changes.push(text_element("p", "verdict", change));
        }
        before = Some(stretch);
    }
    changes
}

/// What to do where no cord serves: after all else, since it is long where it is there at all.
fn gaps(question: &Question, answer: &Answer, cord: Long) -> Vec<Html> {
    let whole = answer.plan.len() == 1;
    let mut gaps = Vec::new();
    for stretch in &answer.plan {
        if let By::Gap(gap) = &stretch.by {
            gaps.push(text_element("p", "", words::gap(stretch, whole, question.flat)));
            gaps.push(items("ul", words::ways(gap, cord)));
        }
    }
    gaps
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
    let key = words::key(answer, !gaps.is_empty(), question.flat);
    let caption = text_element("figcaption", "quiet", key);
    element("figure", "scale bars", vec![picture, caption])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::tests::fields_of;

    fn read(link: &'static str) -> Result<Around, Vec<Problem>> {
        let fields = fields_of::<Cords>(&State::new("", link));
        Cords::read(&fields).map(|question| question.around)
    }

    /// What a knitter types after each round is the growth, and no number beside it is dropped.
    #[test]
    fn steps_are_the_growth_of_the_piece() {
        let steps = |rounds| Around::Steps {
            from: 90,
            steps: read_steps("5: 120, 12: 160").unwrap(),
            rounds,
        };
        assert_eq!(read("from=90&gauge=20&steps=5: 120, 12: 160"), Ok(steps(12)));
        assert_eq!(
            read("from=90&gauge=20&rounds=40&to=160&steps=5: 120, 12: 160"),
            Ok(steps(40))
        );
        let wrong = |link| read(link).unwrap_err()[0];
        let to = wrong("from=90&gauge=20&to=150&steps=5: 120, 12: 160");
        assert_eq!(to, Problem::new(Name::To, Kind::Differs { other: 160 }));
        assert_eq!(
            wrong("from=90&gauge=20&rounds=9&steps=5: 120, 12: 160").field,
            Name::Rounds.into()
        );
        assert_eq!(wrong("from=90&gauge=20&steps=5: 120, 160").field, Name::Steps.into());
    }
}
