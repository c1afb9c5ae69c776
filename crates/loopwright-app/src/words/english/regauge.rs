//! The words of a pattern at another gauge.

use super::intl::{decimal, fill_pattern, fill_pattern_with, number};
use super::schedule::{rows, written};
use super::units::{Lengths, gauge};
use super::{Title, Worded};
use loopwright::cast_on::Knitting;
use loopwright::problem::{Kind, Problem};
use loopwright::regauge::{Answer, Converted, KnittingKind, Name, Parity, Question, Shaped, ShapingSide};
use loopwright::units::{Gauge, Length};

pub const TITLE: Title = Title {
    name: "Pattern at my gauge",
    asks: "What a pattern’s numbers become at your own gauge.",
};
pub const ABOUT_COUNTS: &str = "What the counts must keep";
pub const ABOUT_ROWS: &str = "Rows and lengths";
pub const ABOUT_SHAPING: &str = "Shaping in the pattern";
pub const EXAMPLE_COUNTS: &str = "such as 132 (144, 156)";
pub const EXAMPLE_ROWS: &str = "such as 40 (42, 46)";
pub const WAITING: &str = "The pattern’s numbers at your gauge appear here.";
pub const STITCHES: &str = "Stitches";
pub const ROWS: &str = "Rows";
pub const SHAPING: &str = "The shaping, shared out anew";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Pattern => "The pattern’s stitches",
        Name::Own => "Your stitches, washed",
        Name::Counts => "Stitches in the pattern, one or many",
        Name::Wanted => "Width I want: which size to follow?",
        Name::Multiple => "The pattern takes a multiple of",
        Name::Plus => "plus, for its two edges",
        Name::Knitting => "In the round or flat",
        Name::Edge | Name::Seam => "Flat: edge and seam stitches at each edge",
        Name::Parity => "Odd or even",
        Name::PatternRows => "The pattern’s rows",
        Name::OwnRows => "Your rows, washed",
        Name::Rows => "Rows in the pattern, one or many",
        Name::Length => "A length that is worked by rows",
        Name::RowRepeat => "Rows of one repeat",
        Name::From => "From so many stitches",
        Name::To => "to so many",
        Name::ShapingRows => "in so many rows, plain ones too",
        Name::Each => "Stitches changed in a shaping row",
        Name::Sides => "Shaping rows may be",
    }
}

impl Worded for KnittingKind {
    fn words(self) -> &'static str {
        match self {
            Self::Round => "in the round",
            Self::Extra => "in the round, one more to join",
            Self::Flat => "flat, back and forth",
        }
    }
}

impl Worded for Parity {
    fn words(self) -> &'static str {
        match self {
            Self::Any => "need not stay",
            Self::Kept => "stays: a stitch is the centre",
        }
    }
}

impl Worded for ShapingSide {
    fn words(self) -> &'static str {
        match self {
            Self::Right => "right-side rows only",
            Self::Any => "any rows",
        }
    }
}

/// A column of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// What the pattern has.
    Pattern,
    /// What that becomes.
    Own,
    /// What it would measure if it were kept.
    Kept,
}

impl Column {
    /// From left to right.
    pub const ALL: [Self; 3] = [Self::Pattern, Self::Own, Self::Kept];

    /// What stands above it.
    pub const fn heading(self) -> &'static str {
        match self {
            Self::Pattern => "In the pattern",
            Self::Own => "At your gauge",
            Self::Kept => "Kept as it is",
        }
    }
}

/// The headline of the answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lead {
    /// Above it.
    pub title: &'static str,
    /// What is worked.
    pub line: String,
    /// What it stands for, or comes to.
    pub outcome: (String, String),
}

/// What is said of a question and its answer.
#[derive(Clone, Copy)]
pub struct Sentences<'a> {
    /// The question.
    pub question: &'a Question,
    /// Its answer.
    pub answer: &'a Answer,
    /// How lengths are written.
    pub lengths: Lengths,
}

impl Sentences<'_> {
    /// The size to follow.
    fn followed(&self) -> Option<&Converted> {
        self.answer.stitches.get(self.answer.follow.as_ref()?.size)
    }

    const fn is_round(&self) -> bool {
        matches!(self.question.knitting, Knitting::Round { .. })
    }

    /// What is worked, and what it comes to.
    pub fn lead(&self) -> Lead {
        if let Some(size) = self.followed() {
            return Lead {
                title: "For the width you want",
                line: fill_pattern("Follow the size of # stitches", &[size.pattern]),
                outcome: ("At your gauge it measures".into(), self.measures(size)),
            };
        }
        // The rows of a length stand last, and in the headline only where they are alone.
        let many = self.question.rows.len().max(1);
        let rows_found = self.answer.rows.get(..many).unwrap_or_default();
        match (self.answer.stitches.as_slice(), rows_found, &self.answer.shaping) {
            ([], [], Some(shaped)) => Lead {
                title: "Shaping at your gauge",
                line: fill_pattern("From # to # stitches", &[shaped.from, shaped.to]),
                outcome: ("In".into(), rows(shaped.rows, self.is_round())),
            },
            ([], found, _) => in_place_of("Rows at your gauge", found),
            (found, _, _) => in_place_of("Stitches at your gauge", found),
        }
    }

    /// What the size to follow measures, and by how much that misses the width.
    fn measures(&self, size: &Converted) -> String {
        let off = self.answer.follow.map_or(Length::ZERO, |follow| follow.off);
        let measures = self.lengths.write(size.unchanged);
        if self.lengths.is_nought(off) {
            measures
        } else if off < Length::ZERO {
            let under = Length::ZERO.saturating_sub(off);
            format!("{measures}, {} less than you want", self.lengths.write(under))
        } else {
            format!("{measures}, {} more than you want", self.lengths.write(off))
        }
    }

    /// What it may be if the swatch was misread; of a size that is followed also whether another is as near. Nothing
    /// where no stitches are counted.
    pub fn near(&self) -> Option<String> {
        let first = self.answer.stitches.first()?;
        let count = self.followed().map_or(first.count, |size| size.pattern);
        let tied = self.answer.follow.and_then(|follow| follow.tied);
        let tied = tied.and_then(|tied| self.answer.stitches.get(tied));
        let range = self.answer.range;
        let words = [&*self.lengths.write(range.least), &self.lengths.write(range.most)];
        Some(match tied {
            Some(tied) => fill_pattern_with(
                "Half a stitch misread, # measure @ to @. The size of # is as near, and stretches less.",
                &[count, tied.pattern],
                &words,
            ),
            None => fill_pattern_with("Half a stitch misread, # measure @ to @.", &[count], &words),
        })
    }

    /// What stands in a column of the table, the size to follow marked by a word.
    pub fn cell(&self, column: Column, found: &Converted, is_followed: bool) -> String {
        match column {
            Column::Pattern => fill_pattern_with("#: @", &[found.pattern], &[&self.lengths.write(found.was)]),
            Column::Own => fill_pattern_with("#: @", &[found.count], &[&self.lengths.write(found.becomes)]),
            Column::Kept if is_followed => format!("{}: follow this", self.lengths.write(found.unchanged)),
            Column::Kept => self.lengths.write(found.unchanged),
        }
    }

    /// The ends of the shaping and its rows.
    pub fn ends(&self, shaped: &Shaped) -> String {
        fill_pattern_with(
            "From # to # stitches in @, # of them shaped.",
            &[shaped.from, shaped.to, shaped.times],
            &[&rows(shaped.rows, self.is_round())],
        )
    }

    /// The instruction for the shaping.
    pub fn shaping(&self, shaped: &Shaped) -> String {
        match &shaped.schedule {
            Some(schedule) => written(schedule),
            None => format!(
                "Too steep at your gauge: it takes {}. Change more at once, or begin sooner.",
                rows(shaped.needs, self.is_round())
            ),
        }
    }

    /// What is good to know.
    pub fn notes(&self) -> Vec<String> {
        let question = self.question;
        let mut notes = Vec::new();
        if self.is_round() && question.multiple.plus > 0 {
            notes.push(fill_pattern(
                "A round has no edges: the # beside the repeats {is|are} dropped.",
                &[question.multiple.plus],
            ));
        }
        match question.knitting {
            Knitting::Round { extra: true } | Knitting::Flat { edge: 1.., .. } => {
                notes.push("Edges and the join are in the counts, not in their measures.".into());
            }
            Knitting::Round { extra: false } | Knitting::Flat { edge: 0, .. } => {}
        }
        if question.pattern.span() != question.own.span() {
            notes.push("The spans differ, and are compared so: 4 in are longer than 10 cm.".into());
        }
        if self.answer.shaping.is_some() {
            notes.push("Ends and rows are converted and shared out anew, never the rate.".into());
        }
        notes
    }

    /// The sum.
    pub fn steps(&self) -> Vec<String> {
        let (question, answer) = (self.question, self.answer);
        let stitches = answer.stitches.first();
        let mut steps = Vec::new();
        steps.extend(stitches.map(|found| self.converted(found, question.pattern, question.own)));
        if let (Some(theirs), Some(ours)) = (question.pattern_rows, question.own_rows) {
            let first = answer.rows.first();
            steps.extend(first.map(|found| self.converted(found, theirs, ours)));
        }
        if let Some(size) = self.followed() {
            let words = [&*gauge(question.own), &self.lengths.write(size.unchanged)];
            steps.push(fill_pattern_with("# at @ measure @.", &[size.pattern], &words));
        }
        steps
    }

    fn converted(&self, found: &Converted, theirs: Gauge, ours: Gauge) -> String {
        let words = [
            &*gauge(theirs),
            &self.lengths.write(found.was),
            &gauge(ours),
            &decimal(found.ideal.to_f64()),
        ];
        fill_pattern_with(
            "# at @ measure @; at @ that takes @, so #.",
            &[found.pattern, found.count],
            &words,
        )
    }
}

/// Counts, and those of the pattern that they stand for.
fn in_place_of(title: &'static str, found: &[Converted]) -> Lead {
    Lead {
        title,
        line: list(found.iter().map(|one| one.count)),
        outcome: ("In place of".into(), list(found.iter().map(|one| one.pattern))),
    }
}

/// Counts as a pattern has them: `132 (144, 156)`.
fn list(counts: impl Iterator<Item = u32>) -> String {
    let counts: Vec<String> = counts.map(number).collect();
    match counts.as_slice() {
        [] => String::new(),
        [only] => only.clone(),
        [first, others @ ..] => format!("{first} ({})", others.join(", ")),
    }
}

pub const SOURCE: &str = "Arithmetic. Of two equally near the smaller: common practice, no source. Yarn goes with the square root of stitches times rows: Munden 1959, from memory.";

/// What to type instead, for a problem with a field in which `text` stands.
pub fn problem(problem: &Problem, text: &str) -> String {
    match (problem.kind, problem.field.name()) {
        (Kind::Missing, Some(Name::Counts)) => "Type the stitches of the sizes here.".into(),
        (Kind::Missing, Some(Name::PatternRows | Name::OwnRows)) => "Type both row gauges for this.".into(),
        (Kind::UnreadableList(unread), _) => super::problem::list(unread, text),
        (Kind::Missing, _) => "Type this too, or empty the field that goes with it.".into(),
        (kind, _) => super::problem::sentence(&kind),
    }
}

#[cfg(test)]
mod tests;
