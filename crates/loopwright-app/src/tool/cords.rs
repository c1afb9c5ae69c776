//! The view of cords: stitches along a piece and the gauge before washing; the fewest cords, when to change, and where no
//! cord serves the ways to do without.

use super::State;
use crate::desk::Desk;
use crate::drawing::cords::Bars;
use crate::drawing::sign::sign as lines;
use crate::part::plain::{el, items, list, says, tells};
use crate::part::{
    Below, Field, Label, Page, Reading, Say, Sheet, TAPE, answered, asked, choice, choices, chosen, field, fields,
    gauges, good_to_know, lengths_field, list_unit, more, working,
};
use crate::words::cords as words;
use crate::words::problem;
use crate::words::tell::Long;
use loopwright::bounds::Bounds;
use loopwright::cords::{Answer, Around, By, GIRTH, Question, ROUNDS, Run, STITCHES, TIP, answer, read_list};
use loopwright::problem::Kind;
use loopwright::units::LengthUnit;
use yew::prelude::*;

/// The fields under "more".
const FOLDED: [&str; 3] = ["around", "cords", "tip"];

/// What else may be typed.
const REST: [Field; 2] = [
    Field::Figure(("tip", words::LABEL_TIP, "", Some(&TAPE))),
    Field::Figure(("around", words::LABEL_AROUND, "", Some(&TAPE))),
];

/// The gauge that is kept, of a swatch that is not washed and of a washed one.
const KEPT: [&str; 2] = ["gauge_stitches_unwashed", "gauge_stitches"];

/// The named states.
pub const STATES: &[State] = &[
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

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "cords");
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&sheet, &question, &answer));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &|wrong| problem::sentence(&wrong.kind),
    };
    asked(&sheet, &page, &form, answers)
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let girth = reading.length_if_any(&TAPE, "around", GIRTH);
    let mut question = Question::about(match girth {
        Some(girth) => Around::Girth(girth),
        None => stitches(reading),
    });
    if girth.is_none() {
        let gauge = Some(reading.gauge("gauge"));
        match chosen(sheet, &words::SWATCHES) {
            0 => question.unwashed = gauge,
            _ => question.washed = gauge,
        }
    }
    question.flat = is_flat(sheet);
    question.tip = reading.length_if_any(&TAPE, "tip", TIP);
    match read_list(&sheet.text("cords", ""), list_unit(sheet, "cords")) {
        Ok(cords) => question.cords = cords,
        Err(why) => reading.wrong("cords", Kind::Unreadable(why)),
    }
    question
}

/// What grows or shrinks; a tube where nothing is said of its end.
fn stitches(reading: &mut Reading) -> Around {
    let from = reading.count("from", STITCHES, "");
    let to = reading.count_if_any("to", STITCHES).unwrap_or(from);
    let rounds = if from == to {
        reading.count_if_any("rounds", ROUNDS).unwrap_or(1)
    } else {
        reading.count("rounds", Bounds::new(2, ROUNDS.most), "")
    };
    Around::Even { from, to, rounds }
}

fn is_flat(sheet: &Sheet) -> bool {
    chosen(sheet, &words::KNITTINGS) == 1
}

fn form(sheet: &Sheet, say: Say) -> Html {
    let mut piece = Vec::new();
    for (before, name, label) in words::PIECE {
        piece.push(says("span", "", before));
        piece.push(field(sheet, name, Label::Unseen(label), "", say(name)));
    }
    piece.push(says("span", "", words::rounds(is_flat(sheet))));
    let swatch = vec![says("span", "", words::SWATCH), choice(sheet, &words::SWATCHES)];
    let kept = KEPT[chosen(sheet, &words::SWATCHES).min(1)];
    let rest = vec![
        choices(sheet, &[&words::KNITTINGS]),
        lengths_field(sheet, "cords", words::LABEL_CORDS, say("cords")),
        fields(sheet, &REST, say),
    ];
    list(vec![
        el("div", "line", piece),
        el("div", "line", swatch),
        gauges(sheet, &[("gauge", words::LABEL_GAUGE, kept)], say),
        more(rest),
    ])
}

/// The cords, the changes, the drawing and the sum.
fn shown(sheet: &Sheet, question: &Question, answer: &Answer) -> Html {
    let desk = &sheet.desk;
    // A cord is called as it was typed.
    let typed = !question.cords.is_empty() && list_unit(sheet, "cords") == LengthUnit::Inch;
    let inches = typed || TAPE.in_inches(desk);
    let long: Long = &|length| TAPE.print(desk, length);
    let cord: Long = &|length| words::cord(length, inches, long);
    let headline = words::headline(answer, cord);
    let line = tells("p", "row", headline.clone());
    let mut below = Below::of(answered(words::ANSWER, line, words::outcome(answer, long)));
    let mut before = None;
    for stretch in &answer.plan {
        below.tell("verdict", words::change(before, stretch, question.flat, cord));
        if let By::Gap(gap) = &stretch.by {
            let whole = answer.plan.len() == 1;
            below.tell("", words::gap(stretch, whole, question.flat));
            below.add(items("ul", words::ways(gap, long)));
        }
        before = Some(stretch);
    }
    match question.around {
        Around::Even { from, to, rounds } if from != to => {
            below.add(drawn(question, answer, rounds, headline, cord));
        }
        _ => below.tell("", words::serving(answer, cord)),
    }
    below.add(good_to_know(words::notes(question, answer, long, cord)));
    below.add(working(words::steps(question, answer, long, cord), words::SOURCE));
    below.done()
}

/// The cords along the piece; `said` is the headline, and what is drawn follows it for those who cannot see it.
fn drawn(question: &Question, answer: &Answer, rounds: u32, mut said: String, cord: Long) -> Html {
    let mut bars = Bars::over(rounds);
    said += ": ";
    for other in &answer.cords {
        if !other.runs.is_empty() {
            let name = cord(other.length);
            said += &words::runs(&name, &other.runs, question.flat);
            let picked = answer.picks.contains(&other.length);
            bars.add(&name, [if picked { "pick" } else { "" }, "bar"], &other.runs);
        }
    }
    let mut gaps = Vec::new();
    for stretch in &answer.plan {
        if matches!(stretch.by, By::Gap(_)) {
            let (from, to) = (stretch.latest, stretch.last);
            gaps.push(Run { from, to });
        }
    }
    if !gaps.is_empty() {
        said += &words::runs(words::NO_CORD, &gaps, question.flat);
        bars.add(words::NO_CORD, ["", "wanted"], &gaps);
    }
    for stretch in &answer.plan {
        bars.mark(stretch.earliest);
        bars.mark(stretch.latest);
    }
    bars.mark(rounds);
    let caption = says("figcaption", "quiet", words::KEY);
    el("figure", "scale", vec![bars.drawn(&said), caption])
}

/// Its small picture: three cords along a piece.
pub fn sign() -> Html {
    let drawn = [("bar thick", "M8 30H44M60 74H96"), ("bar", "M26 52H80")];
    lines("girths sign", "0 0 104 104", &drawn)
}
