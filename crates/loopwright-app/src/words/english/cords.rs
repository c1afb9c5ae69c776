//! The words of cords. Lengths come in printed, in the unit the knitter uses: `long` prints any length, `cord` one of a
//! circular needle, which is known by its label.

use super::intl::{fill_pattern, fill_pattern_with};
use super::needles::called_us;
use super::tell::{Long, Value, fill_pattern_with_values};
use super::{Title, Worded};
use loopwright::cords::{Answer, Around, By, Cord, Easier, Gap, Name, Question, Run, SQUEEZE, Stretch, Swatch};
use loopwright::problem::{Kind, Problem};
use loopwright::tables::needle::CIRCULARS;
use loopwright::terms::Working;
use loopwright::units::Length;

pub const TITLE: Title = Title {
    name: "Cord lengths",
    asks: "Which circular needles a piece needs, and when to change.",
};
pub const FROM: &str = "From";
pub const TO: &str = "to";
pub const STITCHES_IN: &str = "stitches in";
pub const SWATCH: &str = "I counted my swatch";
pub const EXAMPLE_STEPS: &str = "5: 120, 12: 160";
pub const EXAMPLE: &str = "40, 60, 80";
pub const WAITING: &str = "Type the stitches and the gauge; the other two fields only if the piece grows or shrinks.";
pub const ANSWER: &str = "Knit it on";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::From => "Stitches at the start",
        Name::To => "Stitches at the end",
        Name::Rounds => "Over how many rounds",
        Name::Steps => "Or growth in steps: after which round, how many stitches",
        Name::Swatch => "Counted before or after washing",
        Name::Gauge => "Stitches in the swatch",
        Name::Knitting => "In the round or flat",
        Name::Cords => "Your circular needles",
        Name::Tip => "Tip of your short ones",
        Name::Around => "Or how far round, on the needle",
        Name::Needle => "Needle, how thick",
    }
}

impl Worded for Swatch {
    fn words(self) -> &'static str {
        match self {
            Self::Unwashed => "before washing it",
            Self::Washed => "after washing it",
        }
    }
}

/// After how many of them there are.
pub const fn rounds(working: Working) -> &'static str {
    match working {
        Working::Flat => "rows",
        Working::Round => "rounds",
    }
}

/// A circular needle, in inches by its label where it has one.
pub fn cord(length: Length, inches: bool, long: Long) -> String {
    let row = CIRCULARS.iter().find(|row| inches && row.label == length);
    row.map_or_else(
        || long(length),
        |row| fill_pattern("#\u{a0}in", &[u32::from(row.inches)]),
    )
}

/// Which cords, one after the other.
pub fn headline(answer: &Answer, cord: Long) -> String {
    let stretches = answer.plan.iter().map(|stretch| match stretch.by {
        By::Cord(length) => cord(length),
        By::Gap(Gap { small: true, .. }) => "double-pointed needles or magic loop".into(),
        By::Gap(Gap {
            sold: Some((shortest, _)),
            ..
        }) => fill_pattern_with("a cord of @, which is not among these", &[], &[&cord(shortest)]),
        By::Gap(Gap { sold: None, .. }) => "two circular needles".into(),
    });
    stretches.collect::<Vec<String>>().join(", then ")
}

/// How thick all of them have to be; nothing where that is not known.
pub fn needle(answer: &Answer) -> Option<String> {
    let needle = answer.needle?;
    let pattern = match answer.picks.len() {
        0 | 1 => "Take it as @: another thickness would change your gauge.",
        _ => "Take each of them as @, tips that screw on as well: another thickness would change your gauge.",
    };
    Some(fill_pattern_with(pattern, &[], &[&called_us(needle.across, needle.us)]))
}

/// What lies on the needle; by a washed swatch that is known less surely.
pub fn outcome(question: &Question, answer: &Answer, long: Long) -> (String, String) {
    let [start, end] = answer.girths;
    let pattern = if start == end { "@" } else { "@, in the end @" };
    let girths = fill_pattern_with_values(pattern, &[Value::Length(start), Value::Length(end)], long);
    let before = if is_by_washed_swatch(question) {
        "By your washed swatch that is"
    } else {
        "On the needle, before washing, that is"
    };
    (before.into(), girths)
}

/// Whether only the washed gauge is there to go by.
fn is_by_washed_swatch(question: &Question) -> bool {
    !matches!(question.around, Around::Girth(_)) && question.unwashed.is_none() && question.washed.is_some()
}

/// A round, or a row of what is knitted back and forth.
pub const fn round(flat: bool) -> &'static str {
    if flat { "row" } else { "round" }
}

/// When to change to a part of the plan; nothing where there is no change to a cord.
pub fn change(before: Option<&Stretch>, to: &Stretch, flat: bool, cord: Long) -> String {
    let (Some(before), By::Cord(length)) = (before, to.by) else {
        return String::new();
    };
    let pattern = match before.by {
        By::Gap(_) => "@ from @ # on.",
        By::Cord(_) if to.earliest == to.latest => "Change to @ at @ #: no other @ will do.",
        By::Cord(_) => "Change to @ between @ # and @ #, on a plain @.",
    };
    let round = round(flat);
    fill_pattern_with(
        pattern,
        &[to.earliest, to.latest],
        &[&cord(length), round, round, round],
    )
}

/// Of a piece that grows or shrinks, and is knitted on one thing from beginning to end.
pub fn all_along(stretch: &Stretch, flat: bool) -> String {
    let round = round(flat);
    match stretch.by {
        By::Cord(_) => fill_pattern_with("It does for every @: nothing to change.", &[], &[round]),
        By::Gap(_) => "None of the cords will do; what to take instead stands below.".into(),
    }
}

/// Above the ways to knit where no cord serves; `whole` when that is all of the piece.
pub fn gap(stretch: &Stretch, whole: bool, flat: bool) -> String {
    let pattern = if whole {
        "None of the cords will do. Instead:"
    } else {
        "From @ # to @ # none of the cords will do. Instead:"
    };
    let round = round(flat);
    fill_pattern_with(pattern, &[stretch.latest, stretch.last], &[round, round])
}

/// The ways to knit where no cord serves.
pub fn ways(gap: &Gap, cord: Long) -> Vec<String> {
    let double_pointed = gap.small.then(|| "Double-pointed needles.".into());
    let loop_on = |least| {
        fill_pattern_with(
            "Magic loop, on a cord of @ or more, tips and all.",
            &[],
            &[&cord(least)],
        )
    };
    let magic_loop = gap.magic_loop.map(loop_on);
    let cord = gap.sold.map(|(shortest, longest)| {
        let pattern = if shortest == longest {
            "A cord of @."
        } else {
            "A cord of @ to @."
        };
        fill_pattern_with(pattern, &[], &[&cord(shortest), &cord(longest)])
    });
    let two = "Two circular needles, with half the stitches on each.".into();
    double_pointed
        .into_iter()
        .chain(magic_loop)
        .chain(cord)
        .chain([two])
        .collect()
}

/// The cords that serve all of a piece that neither grows nor shrinks; nothing where none does.
pub fn serving(answer: &Answer, cord: Long) -> String {
    let serving = answer.cords.iter().filter(|other| !other.runs.is_empty());
    let names: Vec<String> = serving.map(|other| cord(other.length)).collect();
    if names.is_empty() {
        return String::new();
    }
    fill_pattern_with("Any of these will do: @", &[], &[&names.join(", ")])
}

/// Where a change can fall on a single round only: what one cord more gives.
pub fn easier(easier: &Easier, flat: bool, cord: Long) -> String {
    let round = round(flat);
    let change = |to: &Stretch| match to.by {
        By::Cord(length) if to.earliest < to.latest => {
            let words = [&*cord(length), round, round];
            Some(fill_pattern_with(
                "to @ between @ # and @ #",
                &[to.earliest, to.latest],
                &words,
            ))
        }
        By::Cord(length) => Some(fill_pattern_with(
            "to @ at @ #",
            &[to.earliest],
            &[&cord(length), round],
        )),
        By::Gap(_) => None,
    };
    let changes: Vec<String> = easier.plan.iter().skip(1).filter_map(change).collect();
    let words = [&*cord(easier.cord), &changes.join(", ")];
    fill_pattern_with("With a cord of @ as well you have more time to change: @.", &[], &words)
}

/// What the drawing shows, for those who cannot see it: the headline, and the rounds of each cord that serves.
pub fn drawing(answer: &Answer, gaps: &[Run], flat: bool, cord: Long) -> String {
    let serving = answer
        .cords
        .iter()
        .map(|other| runs(&cord(other.length), &other.runs, flat));
    let serving: String = serving.collect();
    format!("{}: {serving}{}", headline(answer, cord), runs(NO_CORD, gaps, flat))
}

/// The rounds of a cord, or of what no cord serves, in the drawing's words.
pub fn runs(name: &str, runs: &[Run], flat: bool) -> String {
    let run = |run: &Run| fill_pattern_with("@, @ # to #. ", &[run.from, run.to], &[name, round(flat)]);
    runs.iter().map(run).collect()
}

pub const NO_CORD: &str = "no cord";

/// Below the drawing: the marks that are in it, and no others.
pub fn key(answer: &Answer, has_gap: bool, flat: bool) -> String {
    let is_spare = |cord: &Cord| !cord.runs.is_empty() && !answer.picks.contains(&cord.length);
    let mut key = Vec::new();
    if !answer.picks.is_empty() {
        key.push("Thick: take these.");
    }
    if answer.cords.iter().any(is_spare) {
        key.push("Thin: would do too.");
    }
    if has_gap {
        key.push("Dotted: no cord will do.");
    }
    key.push(if flat {
        "The numbers are rows."
    } else {
        "The numbers are rounds."
    });
    key.join(" ")
}

/// What is good to know.
pub fn notes(question: &Question, answer: &Answer, long: Long, cord: Long) -> Vec<String> {
    let mut notes = Vec::new();
    if matches!(question.around, Around::Girth(_)) {
        notes.push("A ruffle’s girth is that of its stitches, not of the body.".into());
    } else if is_by_washed_swatch(question) {
        notes.push(
            "Your swatch is washed, and what lies on the needle is not: take the numbers of @s as about right, and near a limit measure on the needle."
                .replace('@', round(question.flat)),
        );
    }
    notes.extend(growth(question));
    for other in &answer.cords {
        let pattern = match other.tip {
            Some(_) if other.stiff => "@ is left out: tips longer than @ will not bend into a ring.",
            Some(_) if question.tip.is_none() && answer.picks.contains(&other.length) => {
                "If the tips of your @ are longer than @ they will not bend into a ring: type how long one is."
            }
            Some(_) | None => continue,
        };
        let most = other.tip.map_or(String::new(), long);
        notes.push(fill_pattern_with(pattern, &[], &[&cord(other.length), &most]));
    }
    if question.cords.is_empty() {
        notes.push(
            "These are the fewest of the usual cords, 40 to 150 cm (16 to 60 in). Type yours under “More about this”."
                .into(),
        );
    }
    notes
}

/// How the stitches are taken to change along the piece.
fn growth(question: &Question) -> Option<String> {
    let round = round(question.flat);
    match &question.around {
        Around::Even { from, to, .. } if from < to => Some(fill_pattern_with(
            "The growth is taken as even from the first @ to the last. If yours comes in steps, as a yoke’s does, type them under “More about this”.",
            &[],
            &[round],
        )),
        Around::Even { from, to, .. } if from > to => Some(fill_pattern_with(
            "The stitches are taken to go evenly from the first @ to the last. If they go in steps, type them under “More about this”.",
            &[],
            &[round],
        )),
        Around::Even { from, rounds, .. } if *rounds > 1 => Some(fill_pattern_with(
            "All # @s have # {stitch|stitches}: type the stitches at the end if the piece grows or shrinks.",
            &[*rounds, *from],
            &[round],
        )),
        Around::Even { .. } | Around::Girth(_) | Around::Steps { .. } | Around::Rounds(_) => None,
    }
}

/// What to type instead.
pub fn problem(problem: &Problem, text: &str) -> String {
    match (problem.field.name(), problem.kind) {
        (Some(Name::Steps), _) => {
            "Type a round and the stitches after it, then the next: 5: 120, 12: 160. Each round comes later than the one before.".into()
        }
        (_, Kind::UnreadableList(unread)) => super::problem::list(unread, text),
        (_, kind) => super::problem::sentence(&kind),
    }
}

/// The sum.
pub fn steps(question: &Question, answer: &Answer, long: Long, cord: Long) -> Vec<String> {
    let mut steps = Vec::new();
    let ends = match &question.around {
        Around::Even { from, to, .. } => Some((*from, *to)),
        Around::Steps { from, steps, .. } => steps.last().map(|last| (*from, last.stitches)),
        Around::Girth(_) | Around::Rounds(_) => None,
    };
    if let (Some((from, to)), Some(over)) = (ends, question.gauge()) {
        let pattern = if from == to {
            "# {stitch|stitches} at @: @."
        } else {
            "# and # stitches at @: @ and @."
        };
        let [start, end] = answer.girths.map(Value::Length);
        let values = [Value::Count(from), Value::Count(to), Value::Gauge(over), start, end];
        steps.push(fill_pattern_with_values(pattern, &values, long));
    }
    for pick in &answer.picks {
        let values = [*pick, pick.saturating_mul(SQUEEZE)].map(Value::Length);
        let (pattern, values) = if question.flat {
            (" takes anything up to @.", &values[1..])
        } else {
            (" takes from @ to @ of knitting.", &values[..])
        };
        steps.push(cord(*pick) + &fill_pattern_with_values(pattern, values, long));
    }
    steps
}

pub const SOURCE: &str = "A cord takes knitting from its own length, tips and all, to twice it; back and forth anything up to twice it. Up to 40 cm a tip is at most a quarter of it; magic loop takes 80 cm. Common practice, no source.";

#[cfg(test)]
mod tests;
