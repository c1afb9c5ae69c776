//! What is said of a pattern at another gauge: the headline, the cells of the tables, the shaping, and the sum.

use super::super::intl::{fill_pattern, fill_pattern_with, number};
use super::super::schedule::{rows, written};
use super::super::units::{Lengths, gauge_in_sum as gauge, part_of, symbol};
use super::{Column, Drawn, NO_COUNT};
use loopwright::cast_on::Knitting;
use loopwright::regauge::{Answer, Converted, Piece, Question, RowsWait, Shaped, places};
use loopwright::spacing::Fraction;
use loopwright::units::{Gauge, Length};

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
    pub fn followed(&self) -> Option<&Converted> {
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
            ([], found, _) => self.in_place_of("Rows at your gauge", found, &self.question.row_gaps),
            (found, _, _) => self.in_place_of("Stitches at your gauge", found, &self.question.count_gaps),
        }
    }

    /// Counts, those of the pattern that they stand for, and what they measure: an old count never stands alone.
    fn in_place_of(&self, title: &'static str, found: &[Converted], gaps: &[usize]) -> Lead {
        let found_at = places(found, gaps);
        let listed = |write: &dyn Fn(&Converted) -> String| list(found_at.iter().map(|place| place.map(write)));
        let counts = listed(&|one| number(one.count));
        let pattern = listed(&|one| number(one.pattern));
        let measures = listed(&|one| self.lengths.write_number(one.becomes));
        let unit = symbol(self.lengths.unit.into());
        let before = match found.iter().all(|one| one.count == one.pattern) {
            true => "As in the pattern; at your gauge that measures".into(),
            false => fill_pattern_with(
                "In place of @ in the pattern; at your gauge that measures",
                &[],
                &[&pattern],
            ),
        };
        Lead {
            title,
            line: counts,
            outcome: (before, format!("{measures}\u{a0}{unit}")),
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
                "If your swatch was read half a stitch wrong, # stitches measure @ to @. The size of # stitches is as near, and need not stretch.",
                &[count, tied.pattern],
                &words,
            ),
            None => fill_pattern_with(
                "If your swatch was read half a stitch wrong, # stitches measure @ to @.",
                &[count],
                &words,
            ),
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

    /// One count and what it becomes; where it is rounded, from what.
    fn converted(&self, found: &Converted, theirs: Gauge, ours: Gauge) -> String {
        let (theirs, was, ours) = (gauge(theirs), self.lengths.write(found.was), gauge(ours));
        let takes = part_of(found.ideal);
        let is_exact = found.ideal == Fraction::new(u64::from(found.count), 1);
        let (pattern, words) = match is_exact {
            true => ("# at @ measure @; at @ that takes #.", vec![&*theirs, &was, &ours]),
            false => (
                "# at @ measure @; at @ that takes @, so #.",
                vec![&*theirs, &was, &ours, &takes],
            ),
        };
        fill_pattern_with(pattern, &[found.pattern, found.count], &words)
    }

    /// The figures in the drawing of the counts: of the size to follow beside the width that is wanted, or of the first
    /// count, with the rows that are drawn with it.
    pub fn drawn_stitches(&self, found: &Converted, tall: Option<&Converted>) -> Drawn {
        let count = |count: u32, length: Length| {
            fill_pattern_with("# {stitch|stitches}, @", &[count], &[&self.lengths.write(length)])
        };
        match (self.answer.follow, self.question.wanted, tall) {
            (Some(_), Some(wanted), _) => Drawn {
                above: fill_pattern_with("wanted: @", &[], &[&self.lengths.write(wanted)]),
                below: count(found.pattern, found.unchanged),
                kept: String::new(),
            },
            (_, _, Some(tall)) => Drawn {
                above: self.by_rows(found.pattern, tall.pattern),
                below: self.by_rows(found.count, tall.count),
                kept: self.kept(found),
            },
            (_, _, None) => Drawn {
                above: count(found.pattern, found.was),
                below: count(found.count, found.becomes),
                kept: self.kept(found),
            },
        }
    }

    /// So many stitches, so many rows high.
    fn by_rows(&self, stitches: u32, count: u32) -> String {
        let high = rows(count, self.is_round());
        fill_pattern_with("# {stitch|stitches} by @", &[stitches], &[&high])
    }

    /// The figures in the drawing of rows.
    pub fn drawn_rows(&self, found: &Converted) -> Drawn {
        let count = |count: u32, length: Length| {
            let words = [&*rows(count, self.is_round()), &self.lengths.write(length)];
            fill_pattern_with("@, @", &[], &words)
        };
        Drawn {
            above: count(found.pattern, found.was),
            below: count(found.count, found.becomes),
            kept: self.kept(found),
        }
    }

    /// Beside where the pattern's count would end.
    fn kept(&self, found: &Converted) -> String {
        fill_pattern_with("# kept: @", &[found.pattern], &[&self.lengths.write(found.unchanged)])
    }

    /// The figures in the drawing of a shaped piece.
    pub fn drawn_shaping(&self, shaped: &Shaped) -> Drawn {
        let piece = |piece: &Piece| {
            let long = rows(piece.rows, self.is_round());
            fill_pattern_with("# to #, @", &[piece.from, piece.to], &[&long])
        };
        Drawn {
            above: piece(&shaped.was),
            below: piece(&shaped.becomes),
            kept: String::new(),
        }
    }

    /// What waits for a row gauge, where something does.
    pub fn rows_wait(&self) -> Option<String> {
        let gauge = match self.answer.rows_wait? {
            RowsWait::Pattern => "the pattern’s rows",
            RowsWait::Own => "the rows of your swatch",
            RowsWait::Both => "the pattern’s rows and those of your swatch",
        };
        let pattern = "Rows and shaping are still to come: type @ under “@”.";
        Some(fill_pattern_with(pattern, &[], &[gauge, super::ABOUT_ROWS]))
    }
}

/// Figures as a pattern has them: `132 (144, 156)`, with a dash for a size that has none.
fn list(figures: impl Iterator<Item = Option<String>>) -> String {
    let figures: Vec<String> = figures
        .map(|figure| figure.unwrap_or_else(|| NO_COUNT.to_owned()))
        .collect();
    match figures.as_slice() {
        [] => String::new(),
        [only] => only.clone(),
        [first, others @ ..] => format!("{first} ({})", others.join(", ")),
    }
}
