//! One line of a pattern by itself, on the needle that it finds, to be tried in other ways.

use super::super::drawn::{Drawn, Recorder};
use super::super::line::{Item, Line, Pattern};
use super::super::needle::Needle;
use super::course::{Course, is_work};
use super::walk::Walk;
use super::{Outcome, Start};
use crate::terms::Working;

/// A line on its needle.
pub(in super::super) struct Bench<'a> {
    course: Course<'a>,
    needle: Needle,
    working: Working,
    at: usize,
}

impl<'a> Bench<'a> {
    /// The needle as the line finds it; none where the line is never worked.
    pub fn at(pattern: &'a Pattern, start: &Start, size: usize, at: usize) -> Option<Self> {
        let mut course = Course::new(pattern, start, size);
        course.watched = Some(at);
        course.run();
        let (needle, working) = course.kept.take()?;
        Some(Self {
            course,
            needle,
            working,
            at,
        })
    }

    pub const fn working(&self) -> Working {
        self.working
    }

    /// Stitches on the needle.
    pub const fn stitches(&self) -> u64 {
        self.needle.total()
    }

    /// What comes of another line in its place, and the stitches after it.
    pub fn tried(&mut self, line: &Line) -> (Outcome, u64) {
        self.tried_on(line, self.needle.clone())
    }

    /// What comes of the line itself with another number of stitches.
    pub fn tried_with(&mut self, line: &Line, stitches: u64) -> (Outcome, u64) {
        self.tried_on(line, Needle::with(stitches, &[], self.working))
    }

    fn tried_on(&mut self, line: &Line, needle: Needle) -> (Outcome, u64) {
        self.course.working = self.working;
        let meant = self.course.meant.get(self.at).copied().flatten();
        let trial = self.course.trial(line, needle, meant);
        let outcome = trial.halt.map_or(Outcome::ComesOut, |halt| halt.outcome);
        (outcome, trial.needle.total())
    }

    /// The first row of a line stitch by stitch, as far as it goes.
    pub fn drawn(&self, line: &Line) -> Drawn {
        let mut needle = self.needle.clone();
        needle.begin_row(self.working);
        let meant = self.course.meant.get(self.at).copied().flatten();
        let mut walk = Walk::new(&mut needle, self.working, self.course.size, meant);
        walk.recorder = Some(Recorder::default());
        let is_halted = walk.row(&line.items).is_err();
        let recorder = walk.recorder.take().unwrap_or_default();
        let left = if needle.is_turned() { 0 } else { needle.ahead() };
        recorder.done(left, is_halted)
    }

    /// Stitches that a line uses, where that is the same on every needle.
    pub fn needs(&self, line: &Line) -> Option<u64> {
        let mut needle = Needle::default();
        let walk = Walk::new(&mut needle, self.working, self.course.size, None);
        let worked: Vec<&Item> = line.items.iter().filter(|item| is_work(item)).collect();
        let uses = worked.iter().try_fold(0_u64, |sum, item| {
            Some(sum.saturating_add(walk.fixed(std::slice::from_ref(*item))?.uses))
        });
        uses.filter(|_| line.is_whole && !worked.is_empty())
    }
}
