//! In mid-knit: what the tape says beside what it should say, and where to stop.

use super::{Question, Tape};
use crate::units::Length;
use crate::units::rate::Rate;

/// Whether the knitting is as long as the swatch said it would be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Standing {
    /// As long, as near as a count to the half row can tell.
    OnCourse,
    /// Longer: the rows are taller than the swatch's, and fewer will do.
    Ahead,
    /// Shorter: the rows are flatter than the swatch's, and it takes more.
    Behind,
}

/// What the tape says, and what follows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Course {
    /// Ahead, behind or neither.
    pub standing: Standing,
    /// What the tape should say, by the unwashed gauge.
    pub should_be: Length,
    /// By how much it says more; negative for less.
    pub off: Length,
    /// How long what is done will be after washing, if it washes as the swatch did.
    pub after_washing: Length,
    /// Rows in all: the pick of the answer, or off course those that come nearest to the wanted length if the rest is
    /// knitted as what is done.
    pub rows: u32,
    /// Of these still to be knitted.
    pub to_go: u32,
    /// Or knitted too many.
    pub past: u32,
    /// What the tape should say when they are done: unwashed, and without edges.
    pub stop_at: Length,
}

impl Course {
    pub(super) fn of(question: &Question, tape: Tape, pick: u32, wanted: Length) -> Self {
        let washed = Rate::of(question.gauge);
        let before = question.unwashed.map_or(washed, Rate::of);
        let misread = |halves| before.misread(halves).width_of(tape.rows);
        let standing = match tape.length {
            long if long > misread(-1) => Standing::Ahead,
            long if long < misread(1) => Standing::Behind,
            _ => Standing::OnCourse,
        };
        let should_be = before.width_of(tape.rows);
        let after_washing = before.worked_at(tape.length, washed);
        let own = |length: Length| Rate::of_measured(tape.rows, length);
        let (rows, rate) = match standing {
            Standing::OnCourse => (pick, before),
            _ => {
                let exact = question.exact(wanted, own(after_washing));
                (question.ends().nearest(exact).0, own(tape.length))
            }
        };
        Self {
            standing,
            should_be,
            off: tape.length.saturating_sub(should_be),
            after_washing,
            rows,
            to_go: rows.saturating_sub(tape.rows),
            past: tape.rows.saturating_sub(rows),
            stop_at: rate.width_of(rows),
        }
    }
}
