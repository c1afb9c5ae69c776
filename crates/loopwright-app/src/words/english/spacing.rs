//! The words of even spacing.

use super::intl::{either, fill_pattern, fill_pattern_with, number, stitches, times};
use super::page::quoted;
use super::stitch::abbreviation;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::row::{Lean, Stitch};
use loopwright::spacing::{
    Answer, Ask, Asked, Decrease, EdgeKind, Fabric, Face, Fraction, Increase, Marker, Name, Note, Order, Question,
    Reached, Step,
};
use loopwright::units::parse::Unreadable;

pub const TITLE: Title = Title {
    name: "Even spacing",
    asks: "Lose or gain stitches evenly across a round or a row.",
};
pub const I_HAVE: &str = "I have";
pub const STITCHES: &str = "stitches";
pub const AND_WANT: &str = "and want to";
pub const PLUS: &str = "plus";
pub const WORKING: &str = "working";
pub const WAITING: &str = "The row you knit appears here.";
pub const PLACES: &str = "Where to hang markers";
pub const MULTIPLES: &str = "The nearest such counts";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Stitches => "Stitches on the needle",
        Name::Ask => "What to do",
        Name::Amount => "How many",
        Name::Plus => "Edge stitches beside the repeats",
        Name::Knitting => "In the round or flat",
        Name::Decrease => "Decrease with",
        Name::Increase => "Increase with",
        Name::Marker => "At the marker",
        Name::Edge => "At the edges",
        Name::EdgePlain => "Plain stitches at each edge",
        Name::Face => "This row or round is",
        Name::Fabric => "The fabric is",
        Name::Order => "Write it as",
    }
}

impl Worded for Asked {
    fn words(self) -> &'static str {
        match self {
            Self::Lose => "lose",
            Self::Gain => "gain",
            Self::Reach => "end with",
            Self::Multiple => "end on a multiple of",
            Self::Decreases => "make decreases:",
            Self::Increases => "make increases:",
        }
    }
}

impl Worded for Marker {
    fn words(self) -> &'static str {
        match self {
            Self::Split => "keep changes off the marker",
            Self::EndOnChange => "end on the change: the shortest text",
        }
    }
}

impl Worded for EdgeKind {
    fn words(self) -> &'static str {
        match self {
            Self::Half => "half a stretch at each edge",
            Self::AtLeast => "at least so many plain stitches",
            Self::Mirrored => "mirrored, with leaning pairs",
        }
    }
}

impl Worded for Decrease {
    fn words(self) -> &'static str {
        match self {
            Self::K2tog => "k2tog (leans right)",
            Self::Ssk => "ssk (leans left)",
            Self::P2tog => "p2tog",
            Self::Sk2p => "sk2p (takes away two)",
            Self::Cdd => "cdd, centred (takes away two)",
        }
    }
}

impl Worded for Increase {
    fn words(self) -> &'static str {
        match self {
            Self::M1 => "M1, from the bar",
            Self::Yo => "yo, a yarn over",
            Self::Kfb => "kfb, front and back",
        }
    }
}

impl Worded for Face {
    fn words(self) -> &'static str {
        match self {
            Self::Knit => "a knit one",
            Self::Purl => "a purl one",
        }
    }
}

impl Worded for Fabric {
    fn words(self) -> &'static str {
        match self {
            Self::Stockinette => "stockinette",
            Self::Garter => "garter",
            Self::Rib => "rib",
        }
    }
}

/// An order, with what it costs.
pub fn order(order: Order, drift: Fraction) -> String {
    let name = match order {
        Order::TwoBlocks => "two blocks",
        Order::BlocksInTurn => "blocks in turn",
        Order::MostEven => "most even",
    };
    if drift < Fraction::new(1, 1) {
        return fill_pattern_with("@ (within a stitch)", &[], &[name]);
    }
    // Nobody sees a tenth of a stitch.
    fill_pattern_with("@ (up to # {stitch|stitches} off)", &[drift.rounded()], &[name])
}

/// A link asks for an order that there is not.
pub fn no_order(written: &str) -> String {
    format!(
        "{} is no order that is known here; the suggested one is shown.",
        quoted(written)
    )
}

/// Above the row: how often it is worked.
pub fn once(round: bool) -> &'static str {
    if round {
        "Work this round once"
    } else {
        "Work this row once"
    }
}

/// Below the row: the count.
pub fn outcome(answer: &Answer) -> (String, String) {
    (
        fill_pattern("# {stitch|stitches} become", &[answer.before]),
        number(answer.after),
    )
}

/// How many changes, of which kind.
pub fn changes(answer: &Answer) -> String {
    fill_pattern_with("# × @", &[answer.changes], &[abbreviation(answer.change)])
}

/// The count before and after.
pub fn counts(answer: &Answer) -> String {
    fill_pattern("# → #", &[answer.before, answer.after])
}

/// Below the ring.
pub const RING_KEY: &str = "The pin is your marker; read clockwise.";

/// What the drawing shows.
pub fn drawing(answer: &Answer, places: &[u32], round: bool) -> String {
    let shape = if round { "A round" } else { "A row" };
    let kind = if answer.after < answer.before {
        "{decrease|decreases}"
    } else {
        "{increase|increases}"
    };
    let mut pattern = ["@ of # {stitch|stitches} with # ", kind, ", after stitch "].concat();
    let mut numbers = vec![answer.before, answer.changes];
    for place in places.iter().take(8) {
        pattern.push_str(if numbers.len() > 2 { ", #" } else { "#" });
        numbers.push(*place);
    }
    pattern.push_str(if answer.changes > 8 { ", and so on." } else { "." });
    fill_pattern_with(&pattern, &numbers, &[shape])
}

/// Below the places.
pub fn places(shown: u32, changes: u32) -> String {
    if shown < changes {
        return fill_pattern(
            "Hang a marker after each of these stitches: the first # of #.",
            &[shown, changes],
        );
    }
    "Hang a marker after each of these stitches, counted on the needle before you begin.".into()
}

/// A row too long to write.
pub fn too_long(terms: usize) -> String {
    let terms = u32::try_from(terms).unwrap_or(u32::MAX);
    fill_pattern(
        "Written out, this order is # steps long, and nobody can knit from that. Hang markers by the list below, or knit this instead:",
        &[terms],
    )
}

/// A count that could be had, and what it takes.
pub fn reached(from: u32, reached: &Reached) -> String {
    let by = reached.stitches.abs_diff(from);
    let verb = if reached.stitches < from { "lose" } else { "gain" };
    fill_pattern_with("# (@ #)", &[reached.stitches, by], &[verb])
}

/// One note.
pub fn note(note: &Note) -> String {
    let (pattern, number) = match *note {
        Note::SplitAtMarker { .. } => (
            "The plain stitches before and after the marker are one stretch in two pieces, so that no change stands at the marker.",
            0,
        ),
        Note::ChangeAtMarker => (
            "There are too few plain stitches to keep a change off the marker. Move the marker past it as you come to it.",
            0,
        ),
        Note::KeptOffMarker => (
            "An increase between two stitches is easily lost at the marker, so it is kept away from there all the same.",
            0,
        ),
        Note::KnitRoundIsBetter => (
            "In garter, work the changes on the knit round: they are easier to see.",
            0,
        ),
        Note::RightSideIsBetter => (
            "Work the changes on a right-side row if you can: they are easier to see and to count.",
            0,
        ),
        Note::KeepToPurlRibs => (
            "In rib, move each change to the nearest purl rib, or take away whole repeats, so that the knit ribs run on.",
            0,
        ),
        Note::PlusDropped { plus } => (
            "A round has no edges, so the # {stitch|stitches} beside the repeats {is|are} dropped.",
            plus,
        ),
        Note::MirroredButForOne => (
            "It cannot be mirrored exactly: with a change in the middle and an odd number of plain stitches, one end has a stitch more.",
            0,
        ),
        Note::MiddleLeans { change } => {
            let words = [abbreviation(change), lean(change)];
            return fill_pattern_with(
                "The @ in the middle leans @; it has no partner on the other half.",
                &[],
                &words,
            );
        }
        Note::KfbBar => (
            "The bar of a kfb lies to the left of its stitch, so there is one plain stitch more at the end than at the start. To the eye it is even.",
            0,
        ),
        Note::YarnOverHole => ("A yarn over leaves a hole. Where you want none, choose M1.", 0),
    };
    fill_pattern(pattern, &[number])
}

fn lean(stitch: Stitch) -> &'static str {
    match stitch.lean() {
        Lean::Left => "left",
        Lean::Right => "right",
        Lean::Upright => "neither way",
    }
}

/// One line of the sum.
pub fn step(step: &Step) -> String {
    match *step {
        Step::Plain { uses: 0, plain, .. } => fill_pattern(
            "An increase between two stitches uses none, so all # stay plain.",
            &[plain],
        ),
        Step::Plain {
            stitches: all,
            changes,
            uses,
            plain,
        } => fill_pattern(
            "Of # stitches the changes use # × #, so # stay plain.",
            &[all, changes, uses, plain],
        ),
        Step::Edges { first, last } => {
            fill_pattern("Plain at the edges: # at the start, # at the end.", &[first, last])
        }
        Step::Shared {
            plain,
            runs,
            short,
            short_times,
            long_times: 0,
        } => fill_pattern(
            "Shared between the changes: # ÷ # = #, so # {stretch|stretches} of # plain.",
            &[plain, runs, short, short_times, short],
        ),
        Step::Shared {
            plain,
            runs,
            short,
            short_times,
            long_times,
        } => fill_pattern(
            "Shared between the changes: # ÷ # = #, and # left over, so # {stretch|stretches} of # plain and # of #.",
            &[
                plain,
                runs,
                short,
                long_times,
                long_times,
                short + 1,
                short_times,
                short,
            ],
        ),
        Step::After {
            plain,
            changes,
            gives,
            after,
        } => fill_pattern("Stitches then: # + # × # = #.", &[plain, changes, gives, after]),
    }
}

pub const SOURCE: &str = "Sharing out is arithmetic; the most even order follows Bresenham, IBM Systems Journal 4(1), 1965, from memory. Keeping changes off the marker, how many stitches off nobody sees, where changes are easiest to see, and which way pairs lean: common practice, no source.";

/// What to type instead.
pub fn problem(question: Option<&Question>, problem: &Problem) -> String {
    // Every field here is a count.
    if problem.kind == Kind::Unreadable(Unreadable::UnknownUnit) {
        return "Type the number alone, as in 132.".into();
    }
    match (question, problem.field.name()) {
        (Some(question), Some(Name::Amount)) => amount_problem(question, &problem.kind),
        (Some(_), Some(Name::Stitches)) => match problem.kind {
            Kind::TooFew { least } => {
                fill_pattern("There is no room for a change on so few. Type # or more.", &[least])
            }
            ref other => super::problem::sentence(other),
        },
        (Some(question), Some(Name::EdgePlain)) => match problem.kind {
            Kind::TooMany { most } => fill_pattern_with(
                "On @, edges as wide as that leave no room for a change. Type # or fewer.",
                &[most],
                &[&stitches(question.stitches)],
            ),
            ref other => super::problem::sentence(other),
        },
        _ => super::problem::sentence(&problem.kind),
    }
}

fn amount_problem(question: &Question, kind: &Kind) -> String {
    let all = stitches(question.stitches);
    let (down, up) = (
        abbreviation(question.decrease.stitch()),
        abbreviation(question.increase.stitch()),
    );
    match (*kind, question.ask) {
        (Kind::TooMany { most }, Ask::Lose(_)) => fill_pattern_with(
            "# is the most that @ can lose with @. Type # or fewer.",
            &[most, most],
            &[&all, down],
        ),
        (Kind::TooMany { most }, Ask::Gain(_)) => fill_pattern_with(
            "# is the most that @ can gain with @. Type # or fewer.",
            &[most, most],
            &[&all, up],
        ),
        (Kind::TooMany { most }, Ask::Decreases(_) | Ask::Increases(_)) => {
            let stitch = if matches!(question.ask, Ask::Decreases(_)) {
                down
            } else {
                up
            };
            fill_pattern_with(
                "There is room for @ @ on @. Type # or fewer.",
                &[most],
                &[stitch, &times(most), &all],
            )
        }
        (Kind::NoExact { .. }, Ask::Lose(_)) => fill_pattern_with(
            "@ takes away two stitches at a time. Type @.",
            &[],
            &[down, &either(&kind.nearest())],
        ),
        (Kind::NoExact { .. }, Ask::Reach(target)) if !kind.nearest().is_empty() => {
            let stitch = if target < question.stitches { down } else { up };
            let words = [stitch, &all, &either(&kind.nearest())];
            fill_pattern_with("In one row with @, @ cannot become #. Type @.", &[target], &words)
        }
        (Kind::NoExact { .. }, Ask::Reach(_)) => {
            fill_pattern_with("@ cannot be changed that way. Type more stitches above.", &[], &[&all])
        }
        _ => super::problem::sentence(kind),
    }
}

#[cfg(test)]
mod tests;
