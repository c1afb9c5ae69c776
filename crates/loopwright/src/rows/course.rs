//! In mid-knit: what the tape says beside what it should say, and where to stop.

use super::chart::{Chart, Count};
use super::{Question, ROWS, Tape};
use crate::gauge::rate::{PARTS, Rate};
use crate::units::Length;

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
    /// Rows to go to the pick; 0 when they are done.
    pub to_go: u32,
    /// What the tape should say at the pick, unwashed and without edges.
    pub stop_at: Length,
    /// The number that comes nearest to the wanted length if all is knitted as what is done; none when that is more than
    /// [`super::ROWS`].
    pub revised: Option<Count>,
}

impl Course {
    pub(super) fn of(question: &Question, chart: &Chart, tape: Tape, pick: &Count, wanted: Length) -> Self {
        let washed = Rate::of(question.gauge);
        let before = question.unwashed.map_or(washed, Rate::of);
        let bare = chart.without_edges();
        let should_be = bare.length(tape.rows, before);
        let standing = match tape.length {
            long if long > bare.read_wrong(tape.rows, before, -1) => Standing::Ahead,
            long if long < bare.read_wrong(tape.rows, before, 1) => Standing::Behind,
            _ => Standing::OnCourse,
        };
        let after_washing = before.worked_at(tape.length, washed);
        let own = Rate {
            count: i128::from(tape.rows) * PARTS,
            span: i128::from(after_washing.to_nm()).max(1),
        };
        let (revised, _) = chart.nearest(wanted, own);
        Self {
            standing,
            should_be,
            off: tape.length.saturating_sub(should_be),
            after_washing,
            to_go: pick.rows.saturating_sub(tape.rows),
            stop_at: bare.length(pick.rows, before),
            revised: (revised <= ROWS.most).then(|| chart.count(revised, own, wanted)),
        }
    }
}
