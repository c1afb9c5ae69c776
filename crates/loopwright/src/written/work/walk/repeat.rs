//! Brackets and asterisks: so many times, or as far as there is room.

use super::bulk::Sum;
use super::*;

impl Walk<'_> {
    pub(super) fn repeat(&mut self, repeat: &Repeat, place: Place) -> Result<(), Halt> {
        match &repeat.often {
            Often::Times(amount, counted) => {
                let times = self.times_in_all(repeat, amount, *counted);
                self.so_often(repeat, times, place)
            }
            Often::Reach(reach) => {
                self.needle.begin();
                self.until(repeat, reach, place)
            }
        }
    }

    /// How often in all. "Rep from * 3 times" is four in all, unless it is meant otherwise.
    fn times_in_all(&mut self, repeat: &Repeat, amount: &Amount, counted: Counted) -> u64 {
        let times = amount.value(self.size);
        match (repeat.stars, counted) {
            (None, _) | (_, Counted::All) => times,
            (Some(_), Counted::More) => times + 1,
            (Some(_), Counted::Unsaid) => {
                self.doubts[Doubt::Times as usize] = true;
                times + u64::from(self.meant != Some(Doubt::Times))
            }
        }
    }

    fn so_often(&mut self, repeat: &Repeat, times: u64, place: Place) -> Result<(), Halt> {
        let sum = if repeat.but.is_none() && self.may_hurry() && times > 1 {
            self.fixed(&repeat.body)
        } else {
            None
        };
        let mut round = 0;
        while round < times {
            self.step(place)?;
            let at_once = match sum {
                // The first round is walked, where anything may be at its edge.
                Some(sum) if round > 0 => self.at_once(sum, times - round),
                _ => 0,
            };
            if let (Some(sum), true) = (sum, at_once > 0) {
                self.work_at_once(sum, at_once);
                round += at_once;
                continue;
            }
            self.round(repeat, round + 1)?;
            round += 1;
        }
        self.repeats = Some(times);
        Ok(())
    }

    /// One round of the bracket, which is another one some of the times.
    fn round(&mut self, repeat: &Repeat, time: u64) -> Result<(), Halt> {
        let but = repeat
            .but
            .as_ref()
            .filter(|but| u32::try_from(time).is_ok_and(|time| but.at.binary_search(&time).is_ok()));
        let Some(but) = but else {
            return self.walk_body(&repeat.body);
        };
        let mut is_done = false;
        self.record_bracket(Recorder::opens);
        for item in &repeat.body {
            match &item.doing {
                Doing::Stitches(stitches) if !is_done && stitches.name == but.instead.name => {
                    is_done = true;
                    self.step(item.place)?;
                    self.stitches(&but.instead, item.place)?;
                }
                _ => self.item(item)?,
            }
        }
        self.record_bracket(Recorder::closes);
        Ok(())
    }

    /// Again and again, as far as that. Whether there is room is looked at before each time.
    fn until(&mut self, repeat: &Repeat, reach: &Reach, place: Place) -> Result<(), Halt> {
        let target = self.target(reach, place)?;
        // Behind an asterisk it is worked once before it is repeated.
        if repeat.stars.is_some() && self.needle.ahead() == target {
            self.walk_body(&repeat.body)?;
            return self.not_past(target, self.used, place);
        }
        match self.fixed(&repeat.body) {
            Some(sum) => self.evenly(repeat, (reach, target), sum, place),
            None => self.unevenly(repeat, (reach, target), place),
        }
    }

    /// A bracket that always uses the same.
    fn evenly(&mut self, repeat: &Repeat, (reach, target): (&Reach, u64), sum: Sum, place: Place) -> Result<(), Halt> {
        let mut rounds = 0;
        if sum.uses == 0 && self.needle.ahead() > target {
            return Err(self.halt(Outcome::MakesNothing, place));
        }
        while self.needle.ahead() > target {
            self.step(place)?;
            let left = self.needle.ahead() - target;
            if left < sum.uses {
                self.stops_at((reach, target), left, sum.uses, rounds, place)?;
            }
            let may_hurry = rounds > 0 && self.may_hurry();
            let at_once = if may_hurry {
                self.at_once(sum, left / sum.uses)
            } else {
                0
            };
            if at_once > 0 {
                self.work_at_once(sum, at_once);
            } else {
                self.walk_body(&repeat.body)?;
            }
            rounds += at_once.max(1);
        }
        self.repeats = Some(rounds);
        Ok(())
    }

    /// A bracket that goes by what is on the needle.
    fn unevenly(&mut self, repeat: &Repeat, (reach, target): (&Reach, u64), place: Place) -> Result<(), Halt> {
        let (mut rounds, mut target) = (0, target);
        while self.needle.ahead() > target {
            self.step(place)?;
            let before = (self.needle.ahead(), self.needle.to_marker());
            self.walk_body(&repeat.body)?;
            rounds += 1;
            if (self.needle.ahead(), self.needle.to_marker()) == before {
                return Err(self.halt(Outcome::MakesNothing, place));
            }
            self.repeats = Some(rounds);
            match reach {
                // A marker that was passed is no longer the next one.
                Reach::Marker(_) => target = target.min(self.needle.ahead()),
                Reach::End | Reach::Last(_) => self.not_past(target, before.0, place)?,
            }
        }
        Ok(())
    }

    /// Whether so many are still left as were to be left.
    fn not_past(&self, wanted: u64, before: u64, place: Place) -> Result<(), Halt> {
        let leaves = self.needle.ahead();
        if leaves >= wanted {
            return Ok(());
        }
        let repeats = self.repeats.unwrap_or(0);
        Err(self.halt(
            Outcome::ToLast {
                wanted,
                leaves,
                before,
                repeats,
            },
            place,
        ))
    }
}
