//! Where a line does not come out: the nearest that would.
//!
//! One number of the line is changed at a time, and each try is worked on the needle that the line finds: a bracket more or
//! less often, other plain stitches at its edges. Beside it stand the nearest counts with which the line comes out as it
//! is, and the row that reaches the count which the pattern says, or the next line needs, evenly spaced. The first change
//! that comes out is the nearest, since they are tried in order of their size.

use super::line::{Amount, Count, Doing, Figure, Item, Line, Often, Pattern, Reach, Repeat, Said};
use super::place::Place;
use super::technique::Sort;
use super::work::{Bench, Outcome, Start};
use crate::row::Row;
use crate::spacing;
use crate::terms::Working;

/// Numbers are changed by so much at most.
const FARTHEST: u32 = 40;

/// A line that would come out.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Near {
    /// What is other in it.
    pub way: Way,
    /// Stitches after it.
    pub after: u64,
}

impl Near {
    /// The line as it would be, of the text that was read; none where the line itself stays as it is.
    pub fn text(&self, text: &str, line: Place) -> Option<String> {
        match &self.way {
            Way::Repeats(edit) | Way::Said(edit) => Some(with_edits(text, line, &[*edit])),
            Way::Plain(edits) => Some(with_edits(text, line, edits)),
            Way::Before(_) => None,
            Way::Spaced(row) => Some(row.to_string()),
        }
    }
}

/// The line with other numbers in it. A number that is said by a word has the whole of it in its place.
fn with_edits(text: &str, line: Place, edits: &[Edit]) -> String {
    let mut written = String::new();
    let mut at = line.start;
    for edit in edits {
        written += text.get(at..edit.place.start).unwrap_or_default();
        let was = edit.place.text(text).trim().to_lowercase();
        written += &match was.as_str() {
            "once" | "twice" | "thrice" => format!("{} times", edit.now),
            "st" | "sts" | "stitch" | "stitches" => format!("{} sts", edit.now),
            _ => edit.now.to_string(),
        };
        at = edit.place.end;
    }
    written + text.get(at..line.end).unwrap_or_default()
}

/// What is other in a line that would come out.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Way {
    /// A bracket is worked more or less often.
    Repeats(Edit),
    /// Other plain stitches; two numbers where `to last 3 sts, k3` says it twice.
    Plain(Vec<Edit>),
    /// The count that the pattern says is another one.
    Said(Edit),
    /// The line as it is, with another count before it.
    Before(u64),
    /// Another row altogether, evenly spaced.
    Spaced(Row),
}

/// A number to be changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Edit {
    /// Where it stands.
    pub place: Place,
    /// What it says.
    pub was: u32,
    /// What it should say.
    pub now: u32,
}

/// The nearest lines that would come out in place of one that does not, for one size; none where it does.
pub fn nearest(pattern: &Pattern, start: &Start, size: usize, at: usize) -> Vec<Near> {
    let (Some(line), Some(mut bench)) = (pattern.lines.get(at), Bench::at(pattern, start, size, at)) else {
        return Vec::new();
    };
    let (outcome, after) = bench.tried(line);
    if outcome.is_well() {
        return Vec::new();
    }
    let mut found = Vec::new();
    if let Outcome::Differs { is, .. } = outcome {
        found.extend(as_it_is(line, size, is));
    }
    let numbers = numbers(&line.items, size);
    for (is_times, figures) in &numbers {
        let near = nearest_of(&mut bench, line, figures);
        found.extend(near.map(|(edits, after)| Near {
            way: match (is_times, edits.first()) {
                (true, Some(edit)) => Way::Repeats(*edit),
                _ => Way::Plain(edits),
            },
            after,
        }));
    }
    if !matches!(outcome, Outcome::Differs { .. }) {
        found.extend(with_other_counts(&mut bench, line));
    }
    let wanted = said(line, size).map_or_else(|| needed_next(&bench, pattern, at), Some);
    found.extend(
        wanted
            .filter(|wanted| *wanted != after || !outcome.is_well())
            .and_then(|wanted| spaced(&bench, wanted)),
    );
    found
}

/// The number that says how many there are, as it should be.
fn as_it_is(line: &Line, size: usize, is: u64) -> Option<Near> {
    let now = u32::try_from(is).ok()?;
    let figure = line.items.iter().find_map(|item| match &item.doing {
        Doing::Said(Said::Total(amount)) => amount.of(size),
        _ => None,
    })?;
    let was = figure.value?;
    let place = figure.place;
    let way = Way::Said(Edit { place, was, now });
    Some(Near { way, after: is })
}

/// The numbers of a line that may be changed, outside of brackets: whether it is "so many times", and the places that have
/// to say the same.
fn numbers(items: &[Item], size: usize) -> Vec<(bool, Vec<Figure>)> {
    let mut numbers = Vec::new();
    for (place, item) in items.iter().enumerate() {
        let next = items.get(place + 1).and_then(plain_amount);
        match &item.doing {
            Doing::Repeat(Repeat {
                often: Often::Times(amount, _),
                ..
            }) => {
                numbers.extend(amount.of(size).map(|figure| (true, vec![figure])));
            }
            Doing::Repeat(Repeat {
                often: Often::Reach(Reach::Last(amount)),
                ..
            }) => {
                let both = amount.of(size).into_iter().chain(next.and_then(|next| next.of(size)));
                numbers.push((false, both.collect()));
            }
            _ => numbers.extend(
                plain_amount(item)
                    .and_then(|amount| amount.of(size))
                    .map(|figure| (false, vec![figure])),
            ),
        }
    }
    numbers
}

/// How many plain stitches an item is, where it says a number.
fn plain_amount(item: &Item) -> Option<&Amount> {
    match &item.doing {
        Doing::Stitches(stitches) if stitches.name.sort() == Sort::Plain => match &stitches.count {
            Count::Of(amount) => Some(amount),
            Count::One | Count::Reach(_) => None,
        },
        _ => None,
    }
}

/// The smallest change of these numbers together with which the line comes out.
fn nearest_of(bench: &mut Bench<'_>, line: &Line, figures: &[Figure]) -> Option<(Vec<Edit>, u64)> {
    let same = figures.first()?.value?;
    if figures.iter().any(|figure| figure.value != Some(same)) {
        return None;
    }
    let changes = (1..=FARTHEST).flat_map(|by| [same.checked_add(by), same.checked_sub(by)]);
    for now in changes.flatten().filter(|now| *now > 0) {
        let edit = |figure: &Figure| Edit {
            place: figure.place,
            was: same,
            now,
        };
        let edits: Vec<Edit> = figures.iter().map(edit).collect();
        let mut other = line.clone();
        edit_items(&mut other.items, &edits);
        let (outcome, after) = bench.tried(&other);
        if outcome.is_well() {
            return Some((edits, after));
        }
    }
    None
}

/// Writes other numbers into the items of a line; those within brackets are left.
fn edit_items(items: &mut [Item], edits: &[Edit]) {
    for item in items {
        let amount = match &mut item.doing {
            Doing::Stitches(stitches) => match &mut stitches.count {
                Count::Of(amount) | Count::Reach(Reach::Last(amount)) => amount,
                _ => continue,
            },
            Doing::Repeat(repeat) => match &mut repeat.often {
                Often::Times(amount, _) | Often::Reach(Reach::Last(amount)) => amount,
                Often::Reach(_) => continue,
            },
            _ => continue,
        };
        for figure in &mut amount.figures {
            if let Some(edit) = edits.iter().find(|edit| edit.place == figure.place) {
                figure.value = Some(edit.now);
            }
        }
    }
}

/// The nearest counts on either side with which the line comes out as it is.
fn with_other_counts(bench: &mut Bench<'_>, line: &Line) -> Vec<Near> {
    let before = bench.stitches();
    let needs = bench.needs(line).filter(|needs| *needs != before);
    let mut near = |stitches: u64| {
        let (outcome, after) = bench.tried_with(line, stitches);
        let way = Way::Before(stitches);
        outcome.is_well().then_some(Near { way, after })
    };
    if let Some(needs) = needs {
        return near(needs).into_iter().collect();
    }
    let most = u64::from(FARTHEST);
    let below = (1..=most).filter_map(|by| before.checked_sub(by)).find_map(&mut near);
    let above = (1..=most).map(|by| before + by).find_map(&mut near);
    below.into_iter().chain(above).collect()
}

/// The count that the line says there is after it.
fn said(line: &Line, size: usize) -> Option<u64> {
    line.items.iter().find_map(|item| match &item.doing {
        Doing::Said(Said::Total(amount)) => amount.of(size)?.value.map(u64::from),
        _ => None,
    })
}

/// The count that the next line needs, where it needs the same on every needle.
fn needed_next(bench: &Bench<'_>, pattern: &Pattern, at: usize) -> Option<u64> {
    bench.needs(pattern.lines.get(at + 1)?)
}

/// The evenly spaced row from what is on the needle to so many.
fn spaced(bench: &Bench<'_>, wanted: u64) -> Option<Near> {
    let stitches = u32::try_from(bench.stitches()).ok()?;
    let target = u32::try_from(wanted).ok()?;
    let knitting = match bench.working() {
        Working::Round => spacing::Knitting::Round { end_on_change: false },
        Working::Flat => spacing::Knitting::Flat {
            edge: spacing::Edge::Half,
        },
    };
    let question = spacing::Question {
        ask: spacing::Ask::Reach(target),
        knitting,
        ..spacing::Question::about(stitches)
    };
    let row = spacing::suggested_row(&question).ok()?;
    let way = Way::Spaced(row);
    Some(Near { way, after: wanted })
}
