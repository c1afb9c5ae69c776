//! The words of the swatch. Lengths are printed by the function `long`, in the unit the knitter uses.

use super::Title;
use super::intl::{fill_pattern, fill_pattern_with, fill_pattern_with_strings};
use super::needles::called_us;
use super::tell::Long;
use super::terms::plus_dropped;
use super::units::{count_of, gauge, span_of};
use loopwright::gauge::Called;
use loopwright::swatch::{Answer, LEAST_BESIDE, Name, Needles, Note, Question, Rows};
use loopwright::terms::Working;
use loopwright::units::Length;

pub const TITLE: Title = Title {
    name: "Swatch",
    asks: "How many stitches to cast on so that it can be measured, and what then.",
};
pub const I_KNIT: &str = "The piece is knitted";
pub const WAITING: &str = "The stitches of your swatch appear here.";
pub const BEFORE: &str = "On the needle of the piece";
pub const ORDER: &str = "In this order";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Gauge => "Stitches you hope for, washed",
        Name::Knitting => "In the round or flat",
        Name::Rows => "Rows you hope for, washed",
        Name::Multiple => "The pattern takes a multiple of",
        Name::Plus => "plus, for its two edges",
        Name::RowRepeat => "Rows of one repeat",
        Name::Needle => "Needle",
    }
}

/// The count.
pub fn headline(answer: &Answer) -> String {
    fill_pattern("Cast on #", &[answer.cast_on])
}

/// What of it is measured.
pub fn outcome(answer: &Answer) -> (String, String) {
    let before = ["Over ", &span_of(answer.span), " in the middle you hope for"].concat();
    (before, fill_pattern_with("@ stitches", &[], &[&count_of(answer.hoped)]))
}

/// Of how many repeats, how high, and how wide.
pub fn height(question: &Question, answer: &Answer, long: Long) -> String {
    let ends = vec![long(answer.height), long(answer.width)];
    let height = match answer.rows {
        Some(rows) => fill_pattern_with_strings("Work # {row|rows}, @ high; it should be @ wide.", &[rows.count], ends),
        None => fill_pattern_with_strings("Work until it is @ high; it should be @ wide.", &[], ends),
    };
    let numbers = [answer.repeats, question.multiple.of, answer.plus];
    match (question.multiple.of, answer.plus) {
        (1, _) => height,
        (_, 0) => fill_pattern("That is # {repeat|repeats} of #. ", &numbers) + &height,
        _ => fill_pattern("That is # {repeat|repeats} of #, plus #. ", &numbers) + &height,
    }
}

/// The needle, and which to try next.
pub fn needles(answer: &Answer) -> Option<String> {
    let Needles { this, thinner, thicker } = answer.needles?;
    let called = |needle: Called| called_us(needle.across, needle.us);
    let pattern = match (thinner, thicker) {
        (Some(_), Some(_)) => {
            "Knit it with @. If it comes out with too few stitches, swatch again with @; with too many, with @."
        }
        (Some(_), None) => "Knit it with @. If it comes out with too few stitches, swatch again with @.",
        (None, Some(_)) => "Knit it with @. If it comes out with too many stitches, swatch again with @.",
        (None, None) => "Knit it with @.",
    };
    let needles = [Some(this), thinner, thicker].into_iter().flatten().map(called);
    Some(fill_pattern_with_strings(pattern, &[], needles.collect()))
}

/// In the middle of the drawing, and below it.
pub fn drawn(answer: &Answer) -> [String; 2] {
    let middle = fill_pattern_with("@ stitches", &[], &[&count_of(answer.hoped)]);
    let whole = match answer.rows {
        Some(rows) => fill_pattern("# stitches by # {row|rows}", &[answer.cast_on, rows.count]),
        None => fill_pattern("# stitches", &[answer.cast_on]),
    };
    [middle, whole]
}

/// Below the drawing, and for those who cannot see it.
pub fn drawing(answer: &Answer, long: Long) -> String {
    let lengths = vec![long(answer.width), long(answer.height), span_of(answer.span)];
    let pattern = "Solid: the swatch, @ by @. Dotted: the middle that is measured, @ each way.";
    fill_pattern_with_strings(pattern, &[], lengths)
}

/// What to do, in this order.
pub fn order(knitting: Working, span: Length) -> Vec<String> {
    let (work, cut) = match knitting {
        Working::Round => (
            "On a circular or double-pointed needle, work every row from the same side: slide the stitches back and carry the strand loosely across the back.",
            Some("Cut the strands across the back, so that it lies flat."),
        ),
        Working::Flat => ("Work it back and forth, as the piece will be.", None),
    };
    let before = [
        "Take the very needle of the piece: wood and metal do not knit alike.",
        work,
        "Bind off loosely.",
    ];
    let after = [
        "Count once before washing: while you knit, compare with this count.",
        "Wash it as the piece will be washed, by the label of the yarn.",
        "Lay it out without pulling, and let it dry fully.",
    ];
    let measure = fill_pattern_with(
        "Lay the tape over @ in the middle, at several spots, 2 to 3 stitches away from the edges, and count what is there.",
        &[],
        &[&span_of(span)],
    );
    let fixed = before.into_iter().chain(cut).chain(after).map(String::from);
    fixed.chain([measure]).collect()
}

/// One note.
pub fn note(note: &Note) -> String {
    match *note {
        Note::PlusDropped { plus } => plus_dropped(plus),
        Note::FlatDiffers => {
            "Many knit and purl differently: a swatch worked flat can be a stitch or two off for a round.".into()
        }
    }
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let (span, own) = (span_of(answer.span), gauge(question.gauge));
    // Where the gauge is a whole count of that very span there is nothing to reckon.
    let measured = match answer.hoped.thousandths() == answer.measured * 1_000 {
        true if answer.span == question.gauge.span() => None,
        true => Some(fill_pattern_with("@, so # over @.", &[answer.measured], &[&own, &span])),
        false => {
            let pattern = "@, so room for # whole stitches in @.";
            Some(fill_pattern_with(pattern, &[answer.measured], &[&own, &span]))
        }
    };
    let numbers = [LEAST_BESIDE, answer.measured, answer.beside, answer.cast_on];
    let beside = match question.multiple.of {
        1 => fill_pattern(
            "About half of that again on each side, never under #: # + # = #.",
            &numbers,
        ),
        _ => fill_pattern(
            "About half of that again on each side, never under #, up to whole repeats: # + # = #.",
            &numbers,
        ),
    };
    let height = match (answer.rows, question.row_repeat) {
        (None, _) => fill_pattern_with(
            "Half as much again as @ in height: @.",
            &[],
            &[&span, &long(answer.height)],
        ),
        (Some(Rows { count, .. }), 1) => {
            let pattern = "Half as much again as @ in height: # {row|rows}.";
            fill_pattern_with(pattern, &[count], &[&span])
        }
        (Some(Rows { least, repeats, count }), repeat) => fill_pattern_with(
            "Half as much again as @ in height: # {row|rows}; in whole repeats # × # = #, @.",
            &[least, repeats, repeat, count],
            &[&span, &long(answer.height)],
        ),
    };
    measured.into_iter().chain([beside, height]).collect()
}

pub const SOURCE: &str = "How much room and how high, what is done in which order, and how far flat and round may differ: common practice, no source.";

#[cfg(test)]
mod tests;
