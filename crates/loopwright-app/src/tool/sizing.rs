//! The view of size and ease: the bust, the pattern's list, what the list measures; the size, how all of them sit on one
//! scale, what the knitter's own gauge moves, the sum.

use crate::desk::Desk;
use crate::drawing::girths::{self, Girths, Row};
use crate::part::plain::{el, folded, items, list, says, tells, text};
use crate::part::{
    Advice, Choice, Label, TAPE, answered, counts_field, gauge, known, lengths_field, more, select, signed, tool_page,
    working,
};
use crate::words::page;
use crate::words::sizing::{self as words, Teller};
use ask::Reading;
use loopwright::sizing::{Answer, Line, Question, Told, Why, answer};
use loopwright::tables::body;
use loopwright::units::Length;
use loopwright::units::print::Step;
use yew::prelude::*;

mod ask;
mod states;

pub use states::STATES;

const SHEET: &str = "sizing";

/// How a length is printed.
type Print<'a> = &'a dyn Fn(Length) -> String;

/// A page draws at most this many sizes: the best.
const MOST_DRAWN: usize = 10;

/// Fields that are always seen.
const UNFOLDED: [&str; 4] = ["bust", "sizes", "ease", "percent"];

/// Fields of lengths that are folded away: of a wrap, and of a sweater.
const OF_WRAP: [(&str, &str); 4] = [
    ("round", words::LABEL_ROUND),
    ("upper_arm", words::LABEL_UPPER_ARM),
    ("neck", words::LABEL_NECK),
    ("head", words::LABEL_HEAD),
];
const OF_SWEATER: [(&str, &str); 1] = [("high_bust", words::LABEL_HIGH_BUST)];

/// Fields of gauges, and the names that what is typed there is kept under.
const GAUGES: [(&str, &str, Option<&str>); 4] = [
    ("pattern_stitches", words::LABEL_PATTERN_STITCHES, None),
    ("pattern_rows", words::LABEL_PATTERN_ROWS, None),
    ("own_stitches", words::LABEL_OWN_STITCHES, Some("gauge_stitches")),
    ("own_rows", words::LABEL_OWN_ROWS, Some("gauge_rows")),
];

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let print = |length: Length| TAPE.print(desk, length);
    let mut reading = Reading::new(desk, &print);
    let question = reading.question();
    let mut answers = Html::default();
    if reading.wrong.is_empty() {
        let fine = |length: Length| TAPE.print_to(desk, length, Step::Hundredth);
        match answer(&question) {
            Ok(answer) => answers = shown(&question, &answer, &print, &fine),
            Err(problems) => problems.iter().for_each(|problem| reading.fail(problem)),
        }
    }
    let quiet = reading.quiet();
    if !quiet.is_empty() {
        answers = says("p", "quiet", quiet);
    }
    tool_page(&reading.sheet, form(&reading), answers)
}

/// Its small picture: three sizes about a body.
pub fn sign() -> Html {
    girths::sign()
}

impl Reading<'_> {
    /// In place of an answer, what is to be done first.
    fn quiet(&self) -> &'static str {
        if let [("listed", _)] = self.wrong.as_slice() {
            return words::WHICH;
        }
        let mut quiet = "";
        for (field, sentence) in &self.wrong {
            if !sentence.is_empty() {
                if UNFOLDED.contains(field) {
                    return page::MEND;
                }
                quiet = page::UNDER_MORE;
            }
        }
        let typed = |field| !self.sheet.text(field, "").trim().is_empty();
        match quiet {
            "" if self.wrong.is_empty() => "",
            "" if typed("bust") || typed("sizes") => page::STILL,
            "" => words::WAITING,
            _ => quiet,
        }
    }

    /// What to type instead in a field, if anything.
    fn say(&self, field: &str) -> Option<Advice> {
        let wrong = self.wrong.iter().find(|(name, _)| *name == field);
        let (_, sentence) = wrong.filter(|(_, sentence)| !sentence.is_empty())?;
        Some(Advice {
            sentence: sentence.clone().into(),
            nearest: Vec::new(),
        })
    }

    fn tape(&self, name: &'static str, label: &str) -> Html {
        TAPE.field(&self.sheet, name, label, "", self.say(name))
    }

    fn choice(&self, name: &'static str, label: &'static str, choices: &[(&'static str, &'static str)]) -> Html {
        let choice = select(&self.sheet, name, Label::Shown(label), Choice::keyed(choices), "");
        el("div", "wide", vec![choice])
    }
}

/// The bust, the list, what it measures and how it should sit; the rest under "more".
fn form(reading: &Reading) -> Html {
    let sheet = &reading.sheet;
    let mut fields = vec![
        reading.tape("bust", words::LABEL_BUST),
        known(sheet, "bust", "bust"),
        lengths_field(sheet, "sizes", words::LABEL_SIZES, reading.say("sizes")),
        reading.choice("listed", words::LABEL_LISTED, &words::LISTEDS),
    ];
    if reading.garment {
        let (choices, ease): (&[_], _) = if reading.wrap {
            (&words::ROOMS, words::LABEL_ROOM)
        } else {
            (&words::FITS, words::LABEL_EASE)
        };
        fields.push(reading.choice("fit", words::LABEL_FIT, choices));
        match sheet.text("fit", "").as_str() {
            "ease" => fields.push(reading.tape("ease", ease)),
            "more" if !reading.wrap => {
                let percent = signed(sheet, "percent", words::LABEL_PERCENT, reading.say("percent"));
                fields.push(el("div", "quantity", vec![percent]));
            }
            _ => {}
        }
    }
    fields.push(more(the_rest(reading)));
    let mut steps = Vec::new();
    for (tape, _) in body::TAPE {
        steps.push(says("li", "", words::tape(tape)));
    }
    let how = vec![el("ol", "", steps), says("p", "source", words::HOW_SOURCE)];
    fields.push(folded("how", words::HOW, how));
    list(fields)
}

/// Fields that have a sensible start; only those that matter to what is knitted.
fn the_rest(reading: &Reading) -> Vec<Html> {
    let sheet = &reading.sheet;
    let mut fields = vec![reading.choice("garment", words::LABEL_GARMENT, &words::GARMENTS)];
    let lengths: &[_] = if reading.wrap { &OF_WRAP } else { &OF_SWEATER };
    for (name, label) in lengths {
        fields.push(reading.tape(name, label));
    }
    fields.push(reading.choice("cloth", words::LABEL_CLOTH, &words::CLOTHS));
    for (name, label, kept) in GAUGES {
        fields.push(gauge(sheet, name, label, reading.say(name)));
        fields.extend(kept.map(|kept| known(sheet, name, kept)));
    }
    let say = reading.say("stitches");
    fields.push(counts_field(sheet, "stitches", words::LABEL_STITCHES, say));
    fields
}

/// The answer with its next best, its drawing and its sum.
fn shown(question: &Question, answer: &Answer, print: Print, fine: Print) -> Html {
    let Some(best) = answer.ranked.first() else {
        return Html::default();
    };
    let teller = Teller { question, print };
    let (mut why, mut line) = (teller.why(answer.why), ["Knit size ", teller.name(best.size)].concat());
    let mut outcome = teller.measured(best);
    let beyond = teller.beyond(answer);
    let is_beyond = beyond.is_some();
    if let Some(beyond) = beyond {
        (why, line) = (words::BEYOND, beyond);
        outcome.0 = ["The nearest is size ", teller.name(best.size), ". ", &outcome.0].concat();
    }
    let mut parts = vec![answered(why, tells("p", "row", line), outcome)];
    if matches!(answer.why, Why::Tie(_) | Why::CloseCall(_)) {
        parts.push(says("p", "practice", page::PRACTICE));
    }
    let mut sizes = Vec::new();
    for (place, ranked) in answer.ranked.iter().enumerate() {
        if place == 1 {
            let lead = if ranked.tied {
                "Just as near: size @. "
            } else {
                "Next best: size @. "
            };
            parts.push(tells("p", "next", teller.sits(lead, ranked)));
        }
        let lead = if ranked.tied {
            "Size @, just as near. "
        } else {
            "Size @. "
        };
        sizes.push(teller.sits(lead, ranked));
    }
    parts.push(el("figure", "scale", vec![drawn(&teller, answer, is_beyond)]));
    if sizes.len() > 2 {
        parts.push(folded("places", words::ALL_SIZES, vec![items("ol", sizes)]));
    }
    if let Some(moves) = &answer.moves {
        let moves = vec![
            says("h3", "", words::MOVES),
            items("ul", words::moves(moves, teller.print)),
        ];
        parts.push(el("section", "notes", moves));
    }
    parts.push(notes(&teller, &answer.notes));
    let mut steps = Vec::new();
    let fine = Teller { question, print: fine };
    for Line { told, values } in &answer.steps {
        steps.push(fine.tell(words::told(*told).0, values));
    }
    parts.push(working(steps, words::SOURCE));
    list(parts)
}

/// What else she should know, each that stands on practice with its mark.
fn notes(teller: &Teller, lines: &[Line]) -> Html {
    let mut notes = Vec::new();
    for Line { told, values } in lines {
        // These are the headline.
        if matches!(told, Told::NoneLargeEnough | Told::NoneSmallEnough) {
            continue;
        }
        let (pattern, practice) = words::told(*told);
        let mut note = vec![text(teller.tell(pattern, values).into())];
        if practice {
            note.push(says("small", "practice", page::PRACTICE));
        }
        notes.push(el("li", "", note));
    }
    if notes.is_empty() {
        return Html::default();
    }
    let notes = vec![says("h3", "", page::NOTES), el("ul", "", notes)];
    el("section", "notes", notes)
}

/// All sizes on one scale, in the order of the list; the best of them, where there are many.
fn drawn(teller: &Teller, answer: &Answer, beyond: bool) -> Html {
    let mut rows = Vec::new();
    for size in 0..teller.question.sizes.len() {
        let best = answer.ranked.iter().take(MOST_DRAWN).enumerate();
        for (place, ranked) in best.filter(|(_, ranked)| ranked.size == size) {
            rows.push(Row {
                name: teller.drawn_name(place, ranked, beyond),
                said: teller.drawn(ranked),
                girth: ranked.girth,
                place,
            });
        }
    }
    girths::girths(&Girths {
        body: (answer.body, teller.body(answer)),
        target: answer.target.map(|target| (target, teller.target(target))),
        rows,
    })
}
