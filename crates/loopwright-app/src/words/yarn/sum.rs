//! What is good to know about the yarn, and the sum line by line.

use super::{Exact, Fine, Held, Number, Print, Value, Word, Yarn, tell};
use loopwright::tables::Certainty;
use loopwright::yarn::{Answer, Ask, Found, Note, PerStitch, Piece, Question, Shape};

/// One note.
pub fn note(note: Note) -> &'static str {
    match note {
        Note::Weighed => "A weighed swatch tells it better than any formula.",
        Note::WeighingIsBetter => {
            "A fair estimate, from numbers found for machine-knitted wool. A weighed swatch tells it better."
        }
        Note::WeighMore => "Your swatch is light for a scale. Weigh a larger one if you can.",
        Note::GarterIsPractice => {
            "The sum for a garter gauge is common practice, no source. A stockinette gauge tells it better."
        }
        Note::LaceAsStockinette => {
            "Lace is taken for stockinette here. If it was measured pinned out, choose that, or you buy too much."
        }
        Note::PinnedOut => "Your swatch is pinned out: its gauge was brought back to rest, or you would buy too much.",
        Note::Unwashed => "Wash the swatch as you will wash the piece: gauge changes in the wash.",
        Note::SumTheSchedule => {
            "A tapered piece is taken as even from end to end. Where the pattern gives each row, sum those and choose “stitches I summed”."
        }
        Note::EdgesNotCounted => {
            "Of stitches you summed, cast-on and bind-off are not counted in. Allow for them as other yarn."
        }
        Note::BothYarns => "Two colours: this is both yarns together. Buy each for its share.",
        Note::OtherThickness => "The pattern's yarn is of another thickness. Knit a swatch before you buy.",
        Note::OneDyeLot => "Buy all of it from one dye lot.",
    }
}

/// The sum, line by line.
pub fn steps(question: &Question, answer: &Answer, print: Print) -> Vec<String> {
    let mut steps = Vec::new();
    let say = &mut |pattern: &str, numbers: &[u32], values: &[Value]| steps.push(tell(print, pattern, numbers, values));
    match &question.ask {
        Ask::Piece(piece) => counted(piece, answer, say),
        Ask::Balls { balls, ball } => say(
            "# {ball|balls} of @ {is|are} @ at most; for less than @ it would ask for one fewer.",
            &[*balls],
            &[Held(ball.length), Held(answer.length.most), Yarn(answer.length.least)],
        ),
        Ask::Length(_) => {}
    }
    if let Some(per_stitch) = &answer.per_stitch {
        looped(per_stitch, say);
    }
    let ball = question.ball.length;
    let sum = [
        Exact(answer.length.most),
        Exact(answer.need),
        Held(ball),
        Held(answer.bought),
        Exact(answer.length.expected),
        Exact(answer.leftover),
    ];
    say(
        "Top of the range @, with the reserve @; in balls of @, rounded up: #. Left: @ − @ = @.",
        &[answer.balls],
        &sum,
    );
    steps
}

type Say<'a> = &'a mut dyn FnMut(&str, &[u32], &[Value]);

/// How many stitches there are.
fn counted(piece: &Piece, answer: &Answer, say: Say) {
    for (place, section) in (1..).zip(&piece.sections) {
        let times = section.times;
        let (across, rows) = section.shape.across_and_rows();
        let sum = Number(section.sum().to_f64());
        let mut values = [sum; 3];
        let (pattern, numbers) = match section.shape {
            Shape::Trapezoid { stitches, to, rows } if stitches == to => {
                ("Section #: # × # × # = @ stitches.", [place, times, stitches, rows, 0])
            }
            Shape::Trapezoid { stitches, to, rows } => (
                "Section #: # × (# + #) ÷ 2 × # = @ stitches.",
                [place, times, stitches, to, rows],
            ),
            Shape::Measured { .. } => {
                values = [Number(across), Number(rows), sum];
                (
                    "Section #: # × @ stitches × @ rows, by the swatch's gauge = @ stitches.",
                    [place, times, 0, 0, 0],
                )
            }
            Shape::Rows(_) | Shape::Stitches(_) => ("Section #: # × as summed = @ stitches.", [place, times, 0, 0, 0]),
        };
        say(pattern, &numbers, &values);
    }
    if let Some(sum) = answer.stitches {
        say("Stitches in all: @.", &[], &[Number(sum.to_f64())]);
    }
}

/// How much yarn is in each, and how far that may be off.
fn looped(per_stitch: &PerStitch, say: Say) {
    let length = Fine(per_stitch.length);
    match per_stitch.found {
        Found::Geometry {
            density,
            product,
            dry,
            wet,
            fully,
        } => {
            let practice = match per_stitch.certainty {
                Certainty::Practice => " (common practice, no source)",
                _ => "",
            };
            say(
                "In 1 cm² lie @ stitches, and each takes √(@ ÷ @) cm = @@. Stockinette never washed takes @, washed @, tumbled @.",
                &[],
                &[
                    Number(density),
                    Number(product),
                    Number(density),
                    length,
                    Word(practice),
                    Fine(dry),
                    Fine(wet),
                    Fine(fully),
                ],
            );
        }
        Found::Weighing { loops } => say(
            "The swatch is @ of yarn, shared by @ stitches, its edges counted in: @ each.",
            &[],
            &[Yarn(per_stitch.swatch), Number(loops.round()), length],
        ),
    }
    say(
        "It may be off by @\u{a0}% for hand and fibre (common practice, no source) and @\u{a0}% for reading; reckoned with @\u{a0}%.",
        &[],
        &[per_stitch.hand, per_stitch.reading, per_stitch.spread].map(Number),
    );
}

/// Where the rule comes from.
pub fn source(question: &Question) -> &'static str {
    match question.ask {
        Ask::Piece(_) => {
            "Yarn in a stitch from a stockinette gauge: Munden, J. Text. Inst. 50 (1959) T448, as tabulated in Spencer, Knitting Technology, section 22.5, read as others transcribe it. How much more other fabrics take, edges, seams, ends, the width of the range and the reserve: common practice, no source."
        }
        Ask::Length(_) => "Plain arithmetic: the pattern's length by what one ball holds, rounded up.",
        Ask::Balls { .. } => {
            "A pattern that asks for seven balls would ask for six if they were enough; the rest is arithmetic."
        }
    }
}
