//! The words of the flare. Lengths come in printed, in the unit the knitter uses, by the function `long`.

use super::cast_on::Long;
use super::intl::{decimal, fill_pattern, fill_pattern_with, fill_pattern_with_strings, number, tenths};
use super::tail::Print;
use super::{Title, Worded, followed, schedule, units};
use loopwright::flare::{Answer, BindOffYarn, Doing, Hang, Hem, HemKind, Name, Placing, Question};
use loopwright::follow::Event;
use loopwright::problem::{Kind, Problem};
use loopwright::shaping::{Knitting, Rates};
use loopwright::terms::Range;

pub const TITLE: Title = Title {
    name: "Flare",
    asks: "When to increase from neck to hem, and how it will hang.",
};
pub const WAITING: &str = "The increase rounds appear here.";
pub const ANSWER: &str = "From neck to hem";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Neck => "Stitches at the neck",
        Name::Depth => "From neck to hem along the fabric",
        Name::Hem => "The hem",
        Name::Girth => "Round the hem, washed",
        Name::Stitches => "Stitches at the hem",
        Name::Gauge => "Stitches in the washed swatch",
        Name::RowGauge => "Rows in the washed swatch, in this fabric",
        Name::Each => "Stitches added in one increase round",
        Name::Lines => "Where they are added",
        Name::Multiple => "The hem is a multiple of",
        Name::First => "Plain rounds before the first increase",
        Name::Last => "Plain rounds at the end, at least",
        Name::Rhythm => "The increase rounds are",
    }
}

impl Worded for HemKind {
    fn words(self) -> &'static str {
        match self {
            Self::Flat => "lies flat",
            Self::Girth => "is so far round",
            Self::Stitches => "has so many stitches",
        }
    }
}

impl Worded for Placing {
    fn words(self) -> &'static str {
        match self {
            Self::InLines => "in lines, one above the other",
            Self::Scattered => "scattered over the round",
        }
    }
}

/// Whether the headline tells all increase rounds; otherwise it sends to the counts below it.
pub fn tells_rounds(answer: &Answer) -> bool {
    Rates::of(&answer.schedule) != Rates::Listed
}

/// What to knit.
pub fn headline(question: &Question, answer: &Answer) -> String {
    if answer.gain == 0 {
        return schedule::written(&answer.schedule);
    }
    // A round that is alone has the rest, if there is one.
    let each = match (answer.increase_rounds, answer.rest) {
        (1, Some(rest)) => rest,
        _ => question.each,
    };
    let listed = || fill_pattern("in # rounds, as listed below", &[answer.increase_rounds]);
    let rounds = schedule::phrase(&answer.schedule).unwrap_or_else(listed);
    let mut sentence = fill_pattern_with("Increase # @", &[each], &[&rounds]);
    if let (2.., Some(rest)) = (answer.increase_rounds, answer.rest) {
        sentence += &fill_pattern("; in the last of them only #", &[rest]);
    }
    sentence + "."
}

/// How near the increase rounds keep to an even slope; nothing where there is no slope.
pub fn drift(question: &Question, answer: &Answer) -> Option<String> {
    let drift = || schedule::drift(None, &answer.drift, question.each);
    (answer.increase_rounds > 1).then(drift)
}

/// What it comes to.
pub fn outcome(answer: &Answer, long: Long) -> (String, String) {
    let girth = vec![long(answer.shape.hem_girth)];
    let numbers = [answer.rounds, answer.increase_rounds, answer.hem];
    let pattern = if answer.gain == 0 {
        "# {round|rounds}, all plain. The hem has"
    } else {
        "# rounds, # of them {an increase round|increase rounds}. The hem has"
    };
    let before = fill_pattern(pattern, &numbers);
    (
        before,
        fill_pattern_with_strings("# stitches, @ round", &numbers[2..], girth),
    )
}

/// What is done in an increase round that is followed: "Increase round: make 1 at each of the 8 lines."
pub fn followed(event: &Event<Doing>) -> String {
    match event.doing {
        Doing::InLines { lines } => fill_pattern("Increase round: make 1 at each of the # {line|lines}.", &[lines]),
        Doing::Scattered(spaced) => followed::spaced(Knitting::Round, spaced, event.written.as_ref()),
    }
}

/// How it hangs.
pub fn hang(answer: &Answer, long: Long) -> String {
    let shape = &answer.shape;
    let (slant, radius) = (long(shape.slant), long(shape.radius));
    match answer.hang {
        Hang::Tube => fill_pattern_with_strings("It hangs straight: a tube, @ deep.", &[], vec![slant]),
        Hang::Cone => fill_pattern_with_strings(
            "It hangs as a cone: @ along its side, the hem @ out from the middle and @ below the neck.",
            &[],
            vec![slant, radius, long(shape.drop)],
        ),
        Hang::Flat => fill_pattern_with_strings(
            "It lies flat: @ from neck to hem, the hem @ out from the middle.",
            &[],
            vec![slant, radius],
        ),
        Hang::Ruffle => fill_pattern_with_strings(
            "It ruffles: @ along the fabric, the hem @ out from the middle and no farther. It is @ times as long as the circle there, and waves.",
            &[],
            vec![slant, radius, tenths(f64::from(shape.fullness) / 1_000.0)],
        ),
    }
}

/// How it grows beside a flat circle, and where the increases stand.
pub fn growth(question: &Question, answer: &Answer) -> String {
    let sentence = fill_pattern(
        "To lie flat it would gain # stitches; it gains #.",
        &[answer.flat_gain, answer.gain],
    );
    if answer.gain == 0 {
        return sentence;
    }
    let pattern = if question.lines {
        " In an increase round add one at each of # lines; mark them at the neck."
    } else {
        " In an increase round spread # evenly, none right above the last ones: the tool Even spacing says where."
    };
    sentence + &fill_pattern(pattern, &[question.each])
}

/// More increase rounds than this have no rings of their own in the drawing.
pub const MOST_RINGS: u32 = 50;

/// Below the drawing: what is solid, and what is broken where that is there.
pub fn key(answer: &Answer, neck: u32, long: Long) -> String {
    let [radius, flat] = [answer.shape.radius, answer.shape.flat_radius].map(long);
    let numbers = [neck, answer.hem];
    let mut sentence = fill_pattern_with(
        "From the side and from above: the neck has # stitches, the hem # and lies @ out from the middle.",
        &numbers,
        &[&radius],
    );
    if (1..=MOST_RINGS).contains(&answer.increase_rounds) {
        sentence += " Thin rings: the increase rounds.";
    }
    match answer.hang {
        Hang::Tube | Hang::Cone => {
            sentence
                + &fill_pattern_with(
                    " Broken: where the hem would lie if the piece lay flat, @ out.",
                    &[],
                    &[&flat],
                )
        }
        Hang::Flat | Hang::Ruffle => sentence,
    }
}

/// The words in the drawing.
pub fn labels(question: &Question, answer: &Answer, long: Long) -> Labels {
    Labels {
        words: [&hang(answer, long), " ", &key(answer, question.neck, long)].concat(),
        neck: number(question.neck),
        hem: number(answer.hem),
        slant: long(answer.shape.slant),
    }
}

/// What is written into the drawing.
pub struct Labels {
    /// For those who cannot see it.
    pub words: String,
    /// At the neck.
    pub neck: String,
    /// At the hem.
    pub hem: String,
    /// Along the side.
    pub slant: String,
}

/// What a bind-off takes.
pub fn bind_off(answer: &Answer, print: Print) -> String {
    let pattern = "To bind off # stitches: @ to @ of yarn plain, @ to @ elastic, @ to @ as an i-cord (common practice, no source).";
    let BindOffYarn { plain, elastic, i_cord } = answer.bind_off;
    let between = |range: Range| [print.nearest(range.least), print.up(range.most)];
    let lengths = [plain, elastic, i_cord].map(between).concat();
    fill_pattern_with_strings(pattern, &[answer.hem], lengths)
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long) -> Vec<String> {
    let [gauge, rows] = [question.gauge, question.row_gauge].map(units::gauge);
    let (depth, rate) = (long(question.depth), decimal(f64::from(answer.flat_rate) / 1_000.0));
    let mut steps = vec![fill_pattern_with(
        "Depth times row gauge: @ at @ are # rounds.",
        &[answer.rounds],
        &[&depth, &rows],
    )];
    if let Hem::Girth(girth) = question.hem {
        steps.push(fill_pattern_with(
            "Girth times gauge: @ at @; the nearest count that can be had is #.",
            &[answer.hem],
            &[&long(girth), &gauge],
        ));
    }
    if answer.gain > 0 {
        steps.push(gain_sum(question, answer));
    }
    steps.push(fill_pattern_with(
        "A flat circle: 2 × π × @ ÷ @ = @ stitches a round, # in # rounds, rounded once.",
        &[answer.flat_gain, answer.rounds],
        &[&gauge, &rows, &rate],
    ));
    steps
}

/// What is gained, and in how many rounds.
fn gain_sum(question: &Question, answer: &Answer) -> String {
    let pattern = match answer.rest {
        Some(_) => "The hem less the neck: # − # = #, in # {round|rounds} of #, the last of them of #.",
        None => "The hem less the neck: # − # = #, in # {round|rounds} of #.",
    };
    let numbers = [
        answer.hem,
        question.neck,
        answer.gain,
        answer.increase_rounds,
        question.each,
        answer.rest.unwrap_or(0),
    ];
    fill_pattern(pattern, &numbers)
}

pub const SOURCE: &str = "Geometry of circle and cone. Eight at a time, a plain round at the end, flat within a twentieth of the rate, yarn to bind off: common practice, no source.";

/// What to type instead. Of what would make growth that is too fast possible, one thing is enough.
pub fn problem(problem: &Problem) -> String {
    let before = match (problem.field.name(), problem.kind) {
        (Some(Name::Each), Kind::TooFew { least: 2.. }) => {
            "There are too few rounds for that; changing one of the marked figures is enough. "
        }
        (Some(Name::Each), Kind::TooMany { .. }) => "The neck has one gap a stitch, and each takes one increase. ",
        (Some(Name::First | Name::Last), Kind::TooMany { .. }) => {
            "So many plain rounds leave too few for the increases. "
        }
        (Some(Name::Multiple), Kind::NoExact { .. }) => {
            "From this neck, so many at a time never make that multiple: scatter them, or begin with another count. "
        }
        (Some(Name::Stitches), Kind::TooFew { .. }) | (Some(Name::Girth), Kind::TooSmall { .. }) => {
            "A flare only grows. "
        }
        _ => "",
    };
    [before, &super::problem::sentence(&problem.kind)].concat()
}

#[cfg(test)]
mod tests;
