//! The words of the swatch. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::Title;
use super::cast_on;
use super::intl::{say, say_with};
use super::units::{gauge, span_of};
use loopwright::cast_on::Note;
use loopwright::swatch::{Answer, LEAST_BESIDE, Question, Rows};
use loopwright::units::Length;

/// What it is called.
pub const TITLE: Title = Title {
    name: "Swatch",
    asks: "How many stitches to cast on so that it can be measured, and what then.",
};
/// The label of the stitches.
pub const LABEL_GAUGE: &str = "Stitches you hope for, washed";
/// Before the choice of round or flat.
pub const I_KNIT: &str = "The piece is knitted";
/// The label of the rows.
pub const LABEL_ROWS: &str = "Rows you hope for, washed";
/// The label of the rows of a repeat.
pub const LABEL_ROW_REPEAT: &str = "Rows of one repeat";
/// Where the answer will be.
pub const WAITING: &str = "The stitches of your swatch appear here.";
/// Above the answer.
pub const BEFORE: &str = "On the needle of the piece";
/// Above what is done.
pub const ORDER: &str = "In this order";

/// How a length is printed.
pub type Long<'a> = &'a dyn Fn(Length) -> String;

/// The count.
pub fn headline(answer: &Answer) -> String {
    say("Cast on #", &[answer.cast_on])
}

/// What of it is measured.
pub fn outcome(answer: &Answer) -> (String, String) {
    let before = ["Over ", &span_of(answer.span), " in the middle you hope for"].concat();
    (before, say("# {stitch|stitches}", &[answer.measured]))
}

/// Of how many repeats, how high, and how wide.
pub fn height(question: &Question, answer: &Answer, long: Long) -> String {
    let pattern = match (question.multiple.of, answer.plus) {
        (1, _) => "",
        (_, 0) => "These are # {repeat|repeats} of #. ",
        _ => "These are # {repeat|repeats} of #, plus #. ",
    };
    let said = say(pattern, &[answer.repeats, question.multiple.of, answer.plus]);
    let pattern = match answer.rows {
        Some(_) => "Work # {row|rows}, @ high; it should be @ wide.",
        None => "Work until it is @ high; it should be @ wide.",
    };
    let ends = [answer.height, answer.width].map(long);
    let rows = answer.rows.map_or(0, |rows| rows.count);
    said + &say_with(pattern, &[rows], &[&ends[0], &ends[1]])
}

/// Below the drawing, and instead of it.
pub fn drawing(answer: &Answer, long: Long) -> String {
    let lengths = [long(answer.width), long(answer.height), span_of(answer.span)];
    let pattern = "The swatch, @ by @; dotted, the middle that is measured, @ each way.";
    say_with(pattern, &[], &[&lengths[0], &lengths[1], &lengths[2]])
}

/// What to do, in this order: flat, or in the round.
pub fn order(round: bool, span: Length) -> Vec<String> {
    let [how, cut] = if round {
        [
            "On a circular or double-pointed needle, work every row from the same side: slide the stitches back and carry the strand loosely across the back.",
            "Cut the strands across the back, so that it lies flat.",
        ]
    } else {
        ["Work it back and forth, as the piece will be.", ""]
    };
    let all = [
        "Take the very needle of the piece: wood and metal do not knit alike.",
        how,
        "Bind off loosely.",
        cut,
        "Count once before washing: the tape goes by that while you knit.",
        "Wash it as the piece will be washed, by the label of the yarn.",
        "Lay it out without pulling, and let it dry fully.",
        "Lay the tape over @ in the middle, at several spots, 2 to 3 stitches away from the edges, and count what is there.",
    ];
    let (mut said, span) = (Vec::new(), span_of(span));
    for step in all {
        if !step.is_empty() {
            said.push(say_with(step, &[], &[&span]));
        }
    }
    said
}

/// What is good to know.
pub fn notes(question: &Question) -> Vec<String> {
    let plus = question.multiple.plus;
    let mut notes = Vec::new();
    if question.round {
        if plus > 0 {
            notes.push(cast_on::note(&Note::PlusDropped { plus }));
        }
        notes.push(
            "Many knit and purl differently: a swatch worked flat can be a stitch or two off for a round.".into(),
        );
    }
    notes
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let Answer {
        cast_on,
        measured,
        beside,
        ..
    } = *answer;
    let words = [gauge(question.gauge), span_of(answer.span), long(answer.height)];
    let (pattern, rows) = match answer.rows {
        Some(Rows { least, repeats, count }) => (
            "Half as much again as @ in height: # {row|rows}; in whole repeats # × # = #, @.",
            [least, repeats, question.row_repeat, count],
        ),
        None => ("Half as much again as @ in height: @.", [0; 4]),
    };
    vec![
        say_with("@, so # stitches over @.", &[measured], &[&words[0], &words[1]]),
        say(
            "About half of that again on each side, never under #, up to whole repeats: # + # = #.",
            &[LEAST_BESIDE, measured, beside, cast_on],
        ),
        say_with(pattern, &rows, &[&words[1], &words[2]]),
    ]
}

/// Where the rules come from.
pub const SOURCE: &str = "How much room and how high, and what is done in which order: common practice, no source.";

#[cfg(test)]
mod tests;
