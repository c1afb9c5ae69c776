//! The view of the cast-on count: how wide and at what gauge, the count, the needle with its markers, and a tally that
//! is tapped at each marker while casting on. A tap is kept like any other figure: the stitches that are on the needle.

use super::State;
use crate::desk::Desk;
use crate::drawing::cast_on as drawing;
use crate::part::plain::{button, el, items, list, says, status, tells, text};
use crate::part::{
    Choice, Label, Page, Reading, Row, Say, Sheet, TAPE, answered, asked, gauges, good_to_know, keep, more, multiple,
    multiple_fields, rows, select, working,
};
use crate::store::Typed;
use crate::words::intl::number;
use crate::words::{cast_on as words, page::PRACTICE, problem};
use loopwright::bounds::Bounds;
use loopwright::cast_on::{Answer, EDGE, Knitting, MarkerPlan, Question, STITCHES, WIDTH, answer};
use loopwright::units::Length;
use yew::prelude::*;

/// The field of the tally: how many stitches are on the needle.
const ON: &str = "on";

/// The fields under "more".
const FOLDED: [&str; 4] = ["multiple", "plus", "edge", "seam"];

/// Seam stitches at each edge, before anything is typed.
const SEAM: &str = "1";

/// What stands at the edges of a flat piece.
const EDGES: [Row; 2] = [
    ("edge", words::LABEL_EDGE, "0", None),
    ("seam", words::LABEL_SEAM, SEAM, None),
];

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "width=100&gauge=21"),
    State::new("multiple", "width=100&gauge=21&multiple=8&plus=3&on=60"),
    State::new("as-near", "width=100&gauge=22&multiple=8"),
    State::new("plus", "width=100&gauge=22&knitting=flat&multiple=8 + 3"),
    State::new(
        "flat-sewn",
        "width=49.5&gauge=21 1/2&knitting=flat&multiple=4&plus=2&edge=2",
    ),
    State::new("one-more", "width=54&gauge=20&extra=extra&every=50&on=109"),
    State::new("impossible", "width=20 m&gauge=400&knitting=flat&edge=99&multiple=0"),
    State::new("unreadable", "width=wide&gauge=21 cm"),
    State::new("extreme", "width=20 m&gauge=400&on=40000"),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, "cast_on");
    let long = |length: Length| TAPE.print(desk, length);
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading, &sheet);
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&sheet, &question, &answer, &long));
    let page = Page {
        folded: &FOLDED,
        waiting: words::WAITING,
        problem: &|wrong| problem::sentence(&wrong.kind),
    };
    asked(&sheet, &page, &form, answers)
}

/// Its small picture: a needle with two markers and an open group.
pub fn sign() -> Html {
    drawing::needle(&MarkerPlan::of(26, 10), 0, "", &[String::new(), String::new()])
}

fn is_flat(sheet: &Sheet) -> bool {
    sheet.text("knitting", "") == "flat"
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    Question {
        width: reading.length(&TAPE, "width", WIDTH, ""),
        gauge: reading.gauge("gauge"),
        multiple: multiple(reading, sheet),
        knitting: if is_flat(sheet) {
            Knitting::Flat {
                edge: reading.count("edge", EDGE, "0"),
                seam: reading.count("seam", EDGE, SEAM),
            }
        } else {
            Knitting::Round {
                extra: sheet.text("extra", "") == "extra",
            }
        },
    }
}

/// The fields, and the rest under "more".
fn form(sheet: &Sheet, say: Say) -> Html {
    let flat = is_flat(sheet);
    let choice = |name, label, choices| select(sheet, name, label, Choice::keyed(choices), "");
    let how = vec![
        says("span", "", words::I_KNIT),
        choice("knitting", Label::Unseen(words::LABEL_KNITTING), &words::KNITTINGS),
    ];
    let labels = [words::LABEL_MULTIPLE, words::LABEL_PLUS];
    let mut rest = vec![multiple_fields(sheet, labels, say)];
    if flat {
        rest.push(rows(sheet, &EDGES, say));
        rest.push(says("p", "practice", PRACTICE));
    } else {
        rest.push(choice("extra", Label::Shown(words::LABEL_JOIN), &words::JOINS));
    }
    list(vec![
        el("div", "line", how),
        TAPE.field(sheet, "width", words::by_knitting(flat)[1], "", say("width")),
        gauges(sheet, &[("gauge", words::LABEL_GAUGE, "gauge_stitches")], say),
        more(rest),
    ])
}

/// The count, the needle, the tally and the sum.
fn shown(sheet: &Sheet, question: &Question, answer: &Answer, long: words::Long) -> Html {
    let flat = is_flat(sheet);
    let line = tells("p", "row", words::headline(answer));
    let notes = answer.notes.iter().map(words::note).collect();
    list(vec![
        answered(
            words::by_knitting(flat)[0],
            line,
            words::outcome(question, answer, long),
        ),
        tells("p", "", words::widths(answer, long)),
        says("p", "quiet", words::NEIGHBOURS),
        items("ul", words::neighbours(answer, long)),
        keep(&sheet.desk, "cast_on", Typed::plain(answer.pick.cast_on.to_string())),
        counting(sheet, answer),
        good_to_know(notes),
        working(words::steps(question, answer, long), words::SOURCE),
    ])
}

/// The needle with its markers, and the tally.
fn counting(sheet: &Sheet, answer: &Answer) -> Html {
    let chosen = sheet.text("every", "");
    let place = words::EVERY.iter().position(|(every, _)| *every == chosen);
    let plan = answer.markers[place.unwrap_or(0)];
    let on = on_needle(sheet).min(plan.stitches);
    let counts: Vec<String> = plan.marks().into_iter().map(number).collect();
    let figure = vec![
        drawing::needle(&plan, on, &words::drawing(&plan, on), &counts),
        tells("figcaption", "quiet", words::groups(&plan)),
    ];
    let label = Label::Shown(words::LABEL_EVERY);
    let every = vec![
        select(sheet, "every", label, Choice::keyed(&words::EVERY), ""),
        says("small", "practice", PRACTICE),
    ];
    let mut taps = vec![button(
        words::reached(plan.next(on)),
        tap(sheet, plan, MarkerPlan::next),
    )];
    if on > 0 {
        taps.push(button(
            words::back(plan.before(on).unwrap_or(0)),
            tap(sheet, plan, MarkerPlan::before),
        ));
    }
    let section = vec![
        says("h3", "", words::TALLY),
        el("div", "line", every),
        el("figure", "needle", figure),
        status(text(words::on_needle(on, plan.stitches).into())),
        el("div", "taps", taps),
    ];
    el("section", "tally", section)
}

fn on_needle(sheet: &Sheet) -> u32 {
    let all = Bounds::new(0, STITCHES.most);
    sheet.count(ON, all, "0").unwrap_or(0)
}

/// A tap counts from what is on the needle when it comes, so that two quick ones are two.
fn tap(sheet: &Sheet, plan: MarkerPlan, goes: fn(MarkerPlan, u32) -> Option<u32>) -> Callback<MouseEvent> {
    let sheet = sheet.clone();
    Callback::from(move |_| {
        let to = goes(plan, on_needle(&sheet)).map(|on| Typed::plain(on.to_string()));
        sheet.desk.write(sheet.id, ON, to);
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_keys_of_the_markers_are_their_distances() {
        let distances = loopwright::cast_on::EVERY.map(|every| every.to_string());
        assert_eq!(distances, words::EVERY.map(|(every, _)| every));
        assert_eq!(loopwright::cast_on::USUAL_SEAM.to_string(), SEAM);
    }
}
