//! What is good to know about the yarn, and the sum line by line.

use super::Value::{About, Exact, Fine, Held, Number, Word, Yarn};
use super::{Printer, section_name};
use loopwright::tables::Certainty;
use loopwright::units::Length;
use loopwright::yarn::{Answer, Ask, Found, Note, PerStitch, PerYarn, Piece, Question, Section, Shape};

/// One note.
pub fn note(note: Note, question: &Question, print: &Printer) -> String {
    let sentence = match note {
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
        Note::LeftOpen { section, bind_off } => return left_open(section as usize, bind_off, question, print),
    };
    sentence.into()
}

/// Of a section that ends with live stitches from which nothing goes on.
fn left_open(place: usize, bind_off: Length, question: &Question, print: &Printer) -> String {
    let sections = match &question.ask {
        Ask::Piece(piece) => piece.sections.as_slice(),
        Ask::Balls { .. } | Ask::Length(_) => &[],
    };
    let takes = print.sentence("a plain bind-off takes about @ more.", &[], &[Yarn(bind_off)]);
    match sections.get(place) {
        Some(section) if sections.len() > 1 || !section.name.is_empty() => {
            let name = section_name(place, section);
            format!("{name}: nothing is counted for binding off; {takes}")
        }
        _ => format!("Nothing is counted for binding off; {takes}"),
    }
}

/// The sum, line by line.
pub fn steps(question: &Question, answer: &Answer, print: &Printer) -> Vec<String> {
    let mut steps = match &question.ask {
        Ask::Piece(piece) => counted(piece, answer, print),
        Ask::Balls { balls, ball } => vec![print.sentence(
            "# {ball|balls} of @ {is|are} @ at most; for less than @ it would ask for one fewer.",
            &[*balls],
            &[Held(ball.length), Held(answer.length.most), Yarn(answer.length.least)],
        )],
        Ask::Length(_) => Vec::new(),
    };
    if let Some(per_stitch) = &answer.per_stitch {
        steps.push(loop_length(per_stitch, print));
        steps.push(print.sentence(
            "It may be off by @\u{a0}% for hand and fibre (common practice, no source) and @\u{a0}% for reading; reckoned with @\u{a0}%.",
            &[],
            &[per_stitch.hand, per_stitch.reading, per_stitch.spread].map(About),
        ));
    }
    if !answer.yarns.is_empty() {
        steps.extend(answer.yarns.iter().map(|yarn| of_yarn(yarn, question, print)));
        return steps;
    }
    steps.push(print.sentence(
        "Top of the range @, with the reserve @; in balls of @, rounded up: #. Left: @ − @ = @.",
        &[answer.balls],
        &[
            Exact(answer.length.most),
            Exact(answer.need),
            Held(question.ball.length),
            Held(answer.bought),
            Exact(answer.length.expected),
            Exact(answer.leftover),
        ],
    ));
    steps
}

/// The balls of one yarn of several.
fn of_yarn(yarn: &PerYarn, question: &Question, print: &Printer) -> String {
    let values = [Exact(yarn.length.most), Exact(yarn.need), Held(question.ball.length)];
    let pattern = "Yarn #: top of the range @, with the reserve @; in balls of @, rounded up: #.";
    print.sentence(pattern, &[yarn.yarn, yarn.balls], &values)
}

/// How many stitches there are.
fn counted(piece: &Piece, answer: &Answer, print: &Printer) -> Vec<String> {
    let sections = piece.sections.iter().enumerate();
    let of_section = |(place, section)| format!("{}: {}", section_name(place, section), stitches_of(section, print));
    let mut steps: Vec<String> = sections.map(of_section).collect();
    if let Some(sum) = answer.stitches {
        steps.push(print.sentence("Stitches in all: @.", &[], &[Number(sum.to_f64())]));
    }
    steps
}

/// How many stitches a section has.
fn stitches_of(section: &Section, print: &Printer) -> String {
    let times = section.times;
    let sum = Number(section.sum().to_f64());
    match section.shape {
        Shape::Trapezoid { stitches, to, rows } if stitches == to => {
            print.sentence("# × # × # = @ stitches.", &[times, stitches, rows], &[sum])
        }
        Shape::Trapezoid { stitches, to, rows } => print.sentence(
            "# × (# + #) ÷ 2 × # = @ stitches.",
            &[times, stitches, to, rows],
            &[sum],
        ),
        Shape::Measured { .. } => {
            let (across, rows) = section.shape.across_and_rows().unwrap_or_default();
            print.sentence(
                "# × @ stitches × @ rows, by the swatch's gauge = @ stitches.",
                &[times],
                &[Number(across), Number(rows), sum],
            )
        }
        Shape::Rows(_) | Shape::Stitches(_) => print.sentence("# × as summed = @ stitches.", &[times], &[sum]),
    }
}

/// How much yarn is in each stitch.
fn loop_length(per_stitch: &PerStitch, print: &Printer) -> String {
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
                Certainty::Read | Certainty::Quoted | Certainty::FromMemory | Certainty::Computed => "",
            };
            print.sentence(
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
            )
        }
        Found::Weighing { loops } => print.sentence(
            "The swatch is @ of yarn, shared by @ stitches, its edges counted in: @ each.",
            &[],
            &[Yarn(per_stitch.swatch), Number(loops.round()), length],
        ),
    }
}

/// Where the rule comes from.
pub fn source(question: &Question) -> &'static str {
    match question.ask {
        Ask::Piece(_) => {
            "Yarn in a stitch from a stockinette gauge: Munden, J. Text. Inst. 50 (1959) T448, as tabulated in Spencer, Knitting Technology, section 22.5; as others quote it, and neither was read. Tumbled was added later, by others (from memory). How much more other fabrics take, edges, seams, ends, the width of the range and the reserve: common practice, no source."
        }
        Ask::Length(_) => "Plain arithmetic: the pattern's length by what one ball holds, rounded up.",
        Ask::Balls { .. } => {
            "Taken for granted: a pattern that asks for seven balls would ask for six if they were enough. The rest is arithmetic."
        }
    }
}
