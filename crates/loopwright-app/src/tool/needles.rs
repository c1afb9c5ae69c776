//! The view of needle sizes: a size in one system, the millimetres, and what the same needle is called in the others.

use super::State;
use crate::desk::Desk;
use crate::drawing::sign as drawing;
use crate::part::plain::{el, says, tells, text};
use crate::part::{
    Below, Page, Reading, Say, Sheet, answered, asked, choice, chosen, good_to_know, keep, signed, working,
};
use crate::store::Typed;
use crate::words::needles as words;
use loopwright::needles::{Answer, Needle, Question, Size, answer};
use loopwright::problem::Kind;
use loopwright::tables::needle::System;
use loopwright::tail::NEEDLE;
use yew::prelude::*;

/// What a size may be named in, in the order of the choice; last a hole, in millimetres.
const SYSTEMS: [System; 5] = [System::Us, System::Uk, System::Japanese, System::Metric, System::Metric];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "size=7"),
    State::new("nearest", "size=5&system=jp"),
    State::new("two", "size=17"),
    State::new("hole", "size=5.5&system=hole"),
    State::new("impossible", "size=12"),
    State::new("unreadable", "size=seven"),
    State::new("extreme", "size=50 mm&system=uk"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "needles");
    let mut reading = Reading::of(&sheet);
    let question = Question {
        size: size(&mut reading, &sheet),
    };
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(desk, &answer));
    let page = Page {
        folded: &[],
        waiting: words::WAITING,
        problem: &words::problem,
    };
    asked(&sheet, &page, &form, answers)
}

/// From the fields as typed to the size.
fn size(reading: &mut Reading, sheet: &Sheet) -> Size {
    let system = chosen(sheet, &words::SYSTEMS).min(SYSTEMS.len() - 1);
    match Size::read(&sheet.text("size", ""), SYSTEMS[system]) {
        Ok(Size::Metric(across)) if system == SYSTEMS.len() - 1 => Size::Hole(across),
        Ok(size) => size,
        Err(why) => {
            reading.wrong("size", Kind::Unreadable(why));
            Size::Metric(NEEDLE.least)
        }
    }
}

fn form(sheet: &Sheet, say: Say) -> Html {
    let sentence = vec![
        signed(sheet, "size", words::LABEL_SIZE, say("size")),
        choice(sheet, &words::SYSTEMS),
    ];
    el("div", "line", sentence)
}

/// The millimetres, the names and how they were found.
fn shown(desk: &Desk, answer: &Answer) -> Html {
    let line = tells("p", "row", words::headline(answer));
    let mut below = Below::of(answered(words::ANSWER, line, words::outcome(answer)));
    for needle in &answer.needles {
        below.add(tells("h3", "", words::called(needle)));
        below.add(names(needle));
        let typed = Typed::with_unit(words::millimetres(needle.across), "mm");
        below.add(keep(desk, "needle", typed));
    }
    below.add(good_to_know(vec![words::NEAREST.into()]));
    below.add(working(vec![words::STEP.into()], words::SOURCE));
    below.done()
}

/// The names of a needle, each with how sure it is.
fn names(needle: &Needle) -> Html {
    let mut table = Vec::new();
    for named in &needle.named {
        table.push(says("dt", "", words::system(named.system)));
        let sure = says("small", "practice", words::certainty(named.certainty));
        table.push(el("dd", "", vec![text(words::named(named).into()), sure]));
    }
    el("div", "meanings", vec![el("dl", "", table)])
}

/// Its small picture: three holes of a needle gauge, and a shaft in the middle one.
pub fn sign() -> Html {
    let holes = "M32 38a14 14 0 1 0 .1 0zM96 30a22 22 0 1 0 .1 0zM176 22a30 30 0 1 0 .1 0z";
    let lines = [("marker", holes), ("marks fewer", "M96 33a19 19 0 1 0 .1 0z")];
    drawing::sign("", "0 0 224 104", &lines)
}
