//! One row of a line: worked as it is usually meant, and in the other way where something is in doubt.

use super::super::line::{Doing, Item, Line, Said};
use super::super::needle::Needle;
use super::super::place::Place;
use super::course::{Course, is_work};
use super::walk::{Halt, Meant, Walk};
use super::{Doubt, MOST_STEPS_IN_ALL, Otherwise, Outcome};
use crate::terms::Working;

/// A row worked in one way.
pub(super) struct Trial {
    pub needle: Needle,
    pub used: u64,
    pub halt: Option<Halt>,
    pub meant: Meant,
    doubts: [bool; 3],
}

impl Trial {
    fn outcome(&self) -> Outcome {
        self.halt.map_or(Outcome::ComesOut, |halt| halt.outcome)
    }
}

impl Course<'_> {
    /// Works a row of a line, and notes what came of it.
    pub fn row(&mut self, at: usize) {
        let pattern = self.pattern;
        let Some(line) = pattern.lines.get(at) else { return };
        self.choose_working(line);
        if !line.is_whole {
            self.fail(at, Outcome::Unread);
            return self.believe(line);
        }
        if line.items.is_empty() {
            return;
        }
        if self.watched == Some(at) && self.kept.is_none() {
            self.kept = Some((self.needle.clone(), self.working));
        }
        let before = self.needle.total();
        let usual = self.trial(line, self.needle.clone(), None);
        let (trial, otherwise) = self.best(line, usual);
        self.note(at, line, before, trial, otherwise);
        if line.items.iter().any(is_work) {
            self.done(at);
        }
        for item in &line.items {
            if let Doing::RowsAgain(again) = &item.doing {
                self.again(at, again, item.place);
            }
        }
    }

    /// Rows and rounds are as their lines say.
    pub fn choose_working(&mut self, line: &Line) {
        match line.label.as_ref().and_then(|label| label.round) {
            Some(true) => self.working = Working::Round,
            Some(false) => self.working = Working::Flat,
            None => {}
        }
        if line.items.iter().any(|item| item.doing == Doing::Join) {
            self.working = Working::Round;
        }
    }

    /// Takes the count that the pattern says, where the line could not be worked; or on an empty needle what it casts on,
    /// which is not sure.
    pub fn believe(&mut self, line: &Line) {
        let said = line.items.iter().rev().find_map(|item| match &item.doing {
            Doing::Said(Said::Total(amount)) => amount.of(self.size)?.value,
            _ => None,
        });
        if let Some(said) = said {
            self.needle.set(u64::from(said));
            self.stands_on = None;
        } else if self.needle.total() == 0 {
            let cast_on = line.items.iter().find_map(|item| match &item.doing {
                Doing::CastOn(amount) => amount.of(self.size)?.value,
                _ => None,
            });
            self.needle.set(cast_on.map_or(0, u64::from));
        }
    }

    /// Works the row in one way on a needle of its own.
    pub fn trial(&mut self, line: &Line, needle: Needle, meant: Meant) -> Trial {
        let mut trial = self.walked(line, needle.clone(), meant, None).0;
        if let Some(Halt {
            outcome: Outcome::RunsOut { short, .. },
            place,
        }) = trial.halt
        {
            let (_, seen) = self.walked(line, needle, meant, Some(place));
            let time = seen + 1;
            let outcome = Outcome::RunsOut { short, time };
            trial.halt = Some(Halt { outcome, place });
        }
        trial
    }

    /// The same, counting how often a word was worked.
    fn walked(&mut self, line: &Line, mut needle: Needle, meant: Meant, watched: Option<Place>) -> (Trial, u64) {
        let before = needle.total();
        needle.crossed = false;
        let works = line.items.iter().any(is_work);
        if works {
            needle.begin_row(self.working);
        }
        let mut walk = Walk::new(&mut needle, self.working, self.size, meant);
        walk.watched = watched;
        walk.steps = (self.steps / MOST_STEPS_IN_ALL) * super::MOST_STEPS;
        let result = if works { walk.row(&line.items) } else { Ok(()) };
        let (used, repeats, doubts, seen) = (walk.used, walk.repeats, walk.doubts, walk.seen);
        self.steps += walk.steps;
        if !works && line.items.iter().any(|item| item.doing == Doing::Turn) {
            needle.turn();
        }
        let end = result.and_then(|()| at_the_end(&needle, repeats, &line.items));
        if end.is_err() {
            needle.settle();
        }
        let end = end.and_then(|()| self.as_said(&line.items, before, needle.total()));
        let halt = end.err();
        let trial = Trial {
            needle,
            used,
            halt,
            meant,
            doubts,
        };
        (trial, seen)
    }

    /// Whether the pattern says the count that there is.
    pub fn as_said(&self, items: &[Item], before: u64, is: u64) -> Result<(), Halt> {
        if items.iter().any(|item| matches!(item.doing, Doing::RowsAgain(_))) {
            return Ok(());
        }
        self.as_said_after(items, before, is)
    }

    pub fn as_said_after(&self, items: &[Item], before: u64, is: u64) -> Result<(), Halt> {
        for item in items {
            let Doing::Said(said) = &item.doing else { continue };
            let (Said::Total(amount) | Said::Gained(amount) | Said::Lost(amount)) = said;
            let Some(value) = amount.of(self.size).and_then(|figure| figure.value).map(u64::from) else {
                continue;
            };
            let said = match said {
                Said::Total(_) => value,
                Said::Gained(_) => before.saturating_add(value),
                Said::Lost(_) => before.saturating_sub(value),
            };
            if said != is {
                let outcome = Outcome::Differs { said, is };
                let place = item.place;
                return Err(Halt { outcome, place });
            }
        }
        Ok(())
    }

    /// Where something is in doubt, the way in which the row comes out; and what comes of the other one, if that differs.
    fn best(&mut self, line: &Line, usual: Trial) -> (Trial, Option<Otherwise>) {
        let met = [Doubt::Times, Doubt::BindOff, Doubt::CastOn];
        let met = met.into_iter().filter(|doubt| usual.doubts[*doubt as usize]);
        let mut first: Option<(Trial, Doubt)> = None;
        for doubt in met {
            let other = self.trial(line, self.needle.clone(), Some(doubt));
            if usual.halt.is_some() && other.halt.is_none() {
                let otherwise = told(doubt, true, &usual);
                return (other, Some(otherwise));
            }
            first.get_or_insert((other, doubt));
        }
        let otherwise = first.and_then(|(other, doubt)| {
            let is_same = other.outcome() == usual.outcome() && other.needle.total() == usual.needle.total();
            (!is_same).then(|| told(doubt, false, &other))
        });
        (usual, otherwise)
    }

    pub fn note(&mut self, at: usize, line: &Line, before: u64, trial: Trial, otherwise: Option<Otherwise>) {
        let outcome = trial.outcome();
        let is_left_undone = !matches!(outcome, Outcome::ComesOut | Outcome::Differs { .. });
        self.needle = trial.needle;
        if let Some(worked) = self.worked.get_mut(at) {
            if worked.rows == 0 {
                worked.before = before;
                worked.used = trial.used;
                worked.stands_on = self.stands_on;
                worked.otherwise = otherwise;
            }
            worked.rows += 1;
            worked.crosses_marker |= self.needle.crossed;
            if worked.outcome.is_well() {
                worked.outcome = outcome;
                worked.place = trial.halt.map(|halt| halt.place);
                worked.row = worked.rows;
            }
            worked.after = self.needle.total();
        }
        self.meant[at] = trial.meant;
        if outcome != Outcome::ComesOut {
            self.stands_on.get_or_insert(at);
        }
        if is_left_undone {
            self.believe(line);
        }
    }
}

const fn told(doubt: Doubt, is_usual: bool, trial: &Trial) -> Otherwise {
    Otherwise {
        doubt,
        is_usual,
        after: trial.needle.total(),
        outcome: match trial.halt {
            Some(halt) => halt.outcome,
            None => Outcome::ComesOut,
        },
    }
}

/// Nothing may be left, unless the work was turned.
fn at_the_end(needle: &Needle, repeats: Option<u64>, items: &[Item]) -> Result<(), Halt> {
    let stitches = needle.ahead();
    if stitches == 0 || needle.is_turned() {
        return Ok(());
    }
    let place = items.iter().rev().find(|item| is_work(item)).map(|item| item.place);
    let outcome = Outcome::LeftOver { stitches, repeats };
    let place = place.unwrap_or_default();
    Err(Halt { outcome, place })
}
