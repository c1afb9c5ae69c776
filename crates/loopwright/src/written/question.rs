//! Every line of a pattern for every size: what the tool asks, and what it answers.
//!
//! Lines that name the sizes, and those in which nothing is worked that could be read, are left where they stand and say
//! so; the others are worked in order. For each line that does not come out there is the nearest that would, of the first
//! size in which it fails.

use super::drawn::{Drawn, drawn};
use super::near::{Near, nearest};
use super::{
    Bracketed, Doing, Fault, FaultKind, Line, Name, Outcome, OwnStitch, Pattern, Place, Start, Worked, read, sizes_of,
    work,
};
use crate::bounds::Bounds;
use crate::check::Check;
use crate::problem::{Kind, Problem};
use crate::sizes_in_text::{TEXT, named};
use crate::terms::Working;
use crate::units::parse::Unreadable;

/// Stitches that may be on the needle before the first line.
pub const STITCHES: Bounds<u32> = Bounds::new(0, 100_000);

/// Of so many lines that do not come out the nearest is looked for; the others are counted.
pub const MOST_OPENED: usize = 20;

/// The lines, and what they are worked on.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The lines as they are written: [`TEXT`] bytes.
    pub text: String,
    /// What the sizes are called; none for those that the text names, or for one where it names none.
    pub sizes: Vec<String>,
    /// Stitches on the needle before the first line, within [`STITCHES`]: one count for all sizes, one for each, or none
    /// where the text casts on.
    pub stitches: Vec<u32>,
    /// In the round or flat, until a line says otherwise.
    pub working: Working,
    /// Words of hers.
    pub own: Vec<OwnStitch>,
}

impl Question {
    /// Some lines that cast on themselves, in the sizes that they name.
    pub fn about(text: impl Into<String>) -> Self {
        Self {
            text: text.into(),
            sizes: Vec::new(),
            stitches: Vec::new(),
            working: Working::Flat,
            own: Vec::new(),
        }
    }
}

/// What comes of the lines.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// What the sizes are called; one without a name where there is only one.
    pub sizes: Vec<String>,
    /// Every line, in the order of the text.
    pub lines: Vec<LineWorked>,
    /// Lines that do not come out, in the order of the text, [`MOST_OPENED`] at most.
    pub failures: Vec<Failure>,
    /// How many lines do not come out in some size.
    pub failing: u32,
    /// How many lines are worked, those that fail among them.
    pub worked: u32,
    /// How many have words in them that could not be read.
    pub unread: u32,
    /// What could not be read, of all lines.
    pub faults: Vec<Fault>,
    /// Brackets right behind a number, and whether they were taken for sizes or for something to repeat.
    pub brackets: Vec<Bracketed>,
}

/// What comes of one line in each size.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct LineWorked {
    /// Where it stands in the text.
    pub place: Place,
    /// What it is called: `Row 7`; none where it has no name.
    pub called: Option<String>,
    /// What it is.
    pub kind: LineKind,
    /// What comes of it, one for each size.
    pub sizes: Vec<Worked>,
}

/// What a line is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum LineKind {
    /// It is worked.
    Row,
    /// It has words in it that could not be read, so that it is not worked.
    Unread,
    /// Nothing in it could be read as anything that is worked.
    Sentence,
    /// It names the sizes.
    Sizes,
    /// It has a name and nothing else: `Yoke:`.
    Heading,
}

/// A line that does not come out.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Failure {
    /// Which line, counted from nought.
    pub line: usize,
    /// The first size in which it fails, counted from nought.
    pub size: usize,
    /// In how many sizes it fails.
    pub sizes: u32,
    /// What comes of it in that size.
    pub worked: Worked,
    /// The nearest lines that would come out in that size.
    pub nearest: Vec<Near>,
    /// Its row as far as it goes, stitch by stitch.
    pub drawn: Option<Drawn>,
}

/// Works every line for every size.
///
/// # Errors
/// A [`Problem`] names each field that is out of bounds, and the stitches where there are none to begin on.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check_length(&question.text)?;
    let sizes = sizes(question);
    let (mut pattern, mut faults) = read(&question.text, sizes.len(), &question.own);
    let kinds = kinds(&question.text, &mut pattern, &mut faults);
    check(question, &sizes, &pattern, &kinds)?;
    let starts: Vec<Start> = (0..sizes.len()).map(|size| start(question, size)).collect();
    let by_size: Vec<Vec<Worked>> = starts
        .iter()
        .enumerate()
        .map(|(size, start)| work(&pattern, start, size))
        .collect();
    let lines: Vec<LineWorked> = pattern
        .lines
        .iter()
        .zip(kinds)
        .enumerate()
        .map(|(at, (line, kind))| {
            let sizes = by_size.iter().filter_map(|worked| worked.get(at).copied());
            line_worked(line, kind, sizes.collect())
        })
        .collect();
    let (failing, failures) = failures(&pattern, &lines, &starts);
    Ok(Answer {
        failing,
        failures,
        worked: many(&lines, LineKind::Row),
        unread: many(&lines, LineKind::Unread),
        lines,
        sizes,
        faults,
        brackets: pattern.brackets,
    })
}

/// What comes of a line. One that repeats a row that could not be read is not worked either.
fn line_worked(line: &Line, kind: LineKind, sizes: Vec<Worked>) -> LineWorked {
    let is_unread = sizes.iter().any(|worked| worked.outcome == Outcome::Unread);
    let kind = match kind {
        LineKind::Row if is_unread => LineKind::Unread,
        other => other,
    };
    LineWorked {
        place: line.place,
        called: line.label.as_ref().map(|label| label.called.clone()),
        kind,
        sizes,
    }
}

/// A text that is too long is not read at all.
fn check_length(text: &str) -> Result<(), Vec<Problem>> {
    let bytes = u32::try_from(text.len()).unwrap_or(u32::MAX);
    if bytes <= TEXT.most {
        return Ok(());
    }
    let kind = Kind::TooMany { most: TEXT.most };
    Err(vec![Problem::new(Name::PatternText, kind)])
}

/// What the sizes are called: as asked, as the text says, or one without a name.
fn sizes(question: &Question) -> Vec<String> {
    let asked = &question.sizes;
    let sizes = if asked.is_empty() {
        sizes_of(&question.text)
    } else {
        asked.clone()
    };
    if sizes.is_empty() { vec![String::new()] } else { sizes }
}

fn start(question: &Question, size: usize) -> Start {
    let of_size = question.stitches.get(size).or_else(|| question.stitches.first());
    Start {
        working: question.working,
        ..Start::with(of_size.copied().unwrap_or(0))
    }
}

fn check(question: &Question, sizes: &[String], pattern: &Pattern, kinds: &[LineKind]) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    if question.text.trim().is_empty() {
        let kind = Kind::Unreadable(Unreadable::Empty);
        check.problems.push(Problem::new(Name::PatternText, kind));
    }
    let many = u32::try_from(sizes.len()).unwrap_or(u32::MAX);
    check.count(Name::Sizes, many, super::SIZES);
    for stitches in &question.stitches {
        check.count(Name::Stitches, *stitches, STITCHES);
    }
    for own in &question.own {
        check.count(Name::OwnStitches, own.uses, super::OWN);
        check.count(Name::OwnStitches, own.gives, super::OWN);
    }
    match question.stitches.len() {
        0 if !begins_by_itself(pattern, kinds) => {
            check.problems.push(Problem::new(Name::Stitches, Kind::Missing));
        }
        0 | 1 => {}
        counts if counts == sizes.len() => {}
        _ => check
            .problems
            .push(Problem::new(Name::Stitches, Kind::Differs { other: many })),
    }
    check.done()
}

/// Whether the first line that is worked casts on, or there is none.
fn begins_by_itself(pattern: &Pattern, kinds: &[LineKind]) -> bool {
    let mut rows = pattern.lines.iter().zip(kinds);
    let first = rows.find(|(_, kind)| matches!(kind, LineKind::Row | LineKind::Unread));
    first.is_none_or(|(line, _)| line.items.iter().any(|item| casts_on(&item.doing)))
}

fn casts_on(doing: &Doing) -> bool {
    match doing {
        Doing::CastOn(_) => true,
        Doing::AtStartOfRows(inner, _) => casts_on(&inner.doing),
        _ => false,
    }
}

/// What each line is; those that are not worked are emptied, so that none of the others stands on them.
fn kinds(text: &str, pattern: &mut Pattern, faults: &mut Vec<Fault>) -> Vec<LineKind> {
    let names: Vec<usize> = named(text)
        .iter()
        .filter_map(|line| line.ranges.first().map(|range| range.start))
        .collect();
    let tells_rows = |fault: &&Fault| matches!(fault.kind, FaultKind::Twofold | FaultKind::Star | FaultKind::HowMany);
    let telling: Vec<Place> = faults.iter().filter(tells_rows).map(|fault| fault.place).collect();
    let mut kinds = Vec::new();
    for line in &mut pattern.lines {
        let kind = kind(line, &names, &telling);
        if matches!(kind, LineKind::Sizes | LineKind::Sentence) {
            line.items.clear();
            line.label = None;
            line.is_whole = true;
        }
        if kind == LineKind::Sizes {
            faults.retain(|fault| !line.place.range().contains(&fault.place.start));
        }
        kinds.push(kind);
    }
    kinds
}

/// `telling` is where words stand that tell of rows though they could not be read, in the order of the text.
fn kind(line: &Line, names: &[usize], telling: &[Place]) -> LineKind {
    if names.iter().any(|name| line.place.range().contains(name)) {
        return LineKind::Sizes;
    }
    // What is called a row is one, though nothing of it could be read; so is "dec 1 st at each end" or "rep for sleeve".
    let next_telling = telling.partition_point(|place| place.start < line.place.start);
    let tells = telling
        .get(next_telling)
        .is_some_and(|place| place.start < line.place.end);
    let is_called_row = tells || line.label.as_ref().is_some_and(|label| label.round.is_some());
    match (line.items.is_empty(), line.is_whole) {
        (false, true) => LineKind::Row,
        (false, false) => LineKind::Unread,
        (true, false) if is_called_row => LineKind::Unread,
        (true, false) => LineKind::Sentence,
        (true, true) => LineKind::Heading,
    }
}

fn many(lines: &[LineWorked], kind: LineKind) -> u32 {
    let many = lines.iter().filter(|line| line.kind == kind).count();
    u32::try_from(many).unwrap_or(u32::MAX)
}

/// Every line that fails, counted, and the first of them with what would come out.
fn failures(pattern: &Pattern, lines: &[LineWorked], starts: &[Start]) -> (u32, Vec<Failure>) {
    let fails = |worked: &&Worked| !worked.outcome.is_well() && worked.outcome != Outcome::Unread;
    let mut failing = 0_u32;
    let mut failures = Vec::new();
    for (at, line) in lines.iter().enumerate().filter(|(_, line)| line.kind == LineKind::Row) {
        let Some(size) = line.sizes.iter().position(|worked| fails(&worked)) else {
            continue;
        };
        failing = failing.saturating_add(1);
        if let (true, Some(start), Some(worked)) =
            (failures.len() < MOST_OPENED, starts.get(size), line.sizes.get(size))
        {
            failures.push(Failure {
                line: at,
                size,
                sizes: u32::try_from(line.sizes.iter().filter(fails).count()).unwrap_or(u32::MAX),
                worked: *worked,
                nearest: nearest(pattern, start, size, at),
                // A row that fails only when it is worked again is not the one that is drawn.
                drawn: (worked.row <= 1).then(|| drawn(pattern, start, size, at)).flatten(),
            });
        }
    }
    (failing, failures)
}
