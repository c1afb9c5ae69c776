//! Walking along the items of one row, with the needle.
//!
//! A run is worked at once however long it is, and so are the rounds of a bracket that always uses and gives the same, as
//! far as the next marker. The time a row takes goes by its text, not by its stitches.

use super::super::drawn::{CellKind, Recorder};
use super::super::line::{Amount, Count, Counted, Doing, Item, Often, Reach, Repeat, Share, Stitches};
use super::super::name::StitchName;
use super::super::needle::Needle;
use super::super::place::Place;
use super::super::technique::Sort;
use super::{Doubt, MOST_STEPS, Outcome};
use crate::terms::Working;

mod aside;
mod bulk;
mod record;
mod repeat;
mod rows;

/// Where a row came to a halt, and why.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Halt {
    pub outcome: Outcome,
    pub place: Place,
}

/// One way to understand what may be meant in two: the usual one, or the other one of a doubt.
pub(super) type Meant = Option<Doubt>;

/// A walk along one row.
pub(super) struct Walk<'a> {
    pub needle: &'a mut Needle,
    pub working: Working,
    pub size: usize,
    pub meant: Meant,
    /// Stitches used so far.
    pub used: u64,
    /// How often the last repeat was worked.
    pub repeats: Option<u64>,
    /// Doubtful places that were met.
    pub doubts: [bool; 3],
    /// A word whose times are counted: brackets are then walked round by round.
    pub watched: Option<Place>,
    /// How often it was worked.
    pub seen: u64,
    /// Steps taken.
    pub steps: u64,
    /// Writes down what is worked, stitch by stitch; brackets are then walked round by round.
    pub recorder: Option<Recorder>,
    /// Something was bound off just now.
    bridge: bool,
}

impl<'a> Walk<'a> {
    pub fn new(needle: &'a mut Needle, working: Working, size: usize, meant: Meant) -> Self {
        Self {
            needle,
            working,
            size,
            meant,
            used: 0,
            repeats: None,
            doubts: [false; 3],
            watched: None,
            seen: 0,
            steps: 0,
            recorder: None,
            bridge: false,
        }
    }

    /// All items of a row in their order.
    pub fn row(&mut self, items: &[Item]) -> Result<(), Halt> {
        for (place, item) in items.iter().enumerate() {
            if let Doing::AtStartOfRows(inner, rows) = &item.doing {
                return self.at_start_of_rows(inner, rows, &items[place + 1..]);
            }
            self.item(item)?;
        }
        Ok(())
    }

    pub fn items(&mut self, items: &[Item]) -> Result<(), Halt> {
        items.iter().try_for_each(|item| self.item(item))
    }

    fn step(&mut self, place: Place) -> Result<(), Halt> {
        self.steps += 1;
        if self.steps > MOST_STEPS || self.needle.total() > u64::from(u32::MAX) {
            return Err(self.halt(Outcome::Endless, place));
        }
        Ok(())
    }

    const fn halt(&self, outcome: Outcome, place: Place) -> Halt {
        Halt { outcome, place }
    }

    fn item(&mut self, item: &Item) -> Result<(), Halt> {
        self.step(item.place)?;
        match &item.doing {
            Doing::Stitches(stitches) => self.stitches(stitches, item.place),
            Doing::Repeat(repeat) => self.repeat(repeat, item.place),
            Doing::IntoOne(body) => self.all_in_one(body, item.place),
            Doing::PlaceMarker => {
                self.place_marker(item.place);
                Ok(())
            }
            Doing::SlipMarker => self.marker(item.place, true),
            Doing::RemoveMarker => self.marker(item.place, false),
            Doing::BindOff(share) => self.bind_off(share, item.place),
            Doing::CastOn(amount) => {
                self.cast_on(amount, item.place);
                Ok(())
            }
            Doing::Hold(share) => self.hold(share, item.place),
            Doing::Return => self.take_back(item.place),
            Doing::Turn => {
                self.record(CellKind::Turn, 1, item.place);
                self.needle.turn();
                Ok(())
            }
            Doing::WrapAndTurn => self.wrap(item.place),
            Doing::Rows(name, rows) => self.rows(name, rows.value(self.size), item.place),
            // However many rows they are, the count is that of one; an even number ends on the side where it began.
            Doing::RowsToLength(name, _) => self.rows(name, 2, item.place),
            // What is joined, told or repeated as rows is the affair of the whole course of lines.
            Doing::Join | Doing::Said(_) | Doing::RowsAgain(_) | Doing::AtStartOfRows(..) => Ok(()),
        }
    }

    fn stitches(&mut self, stitches: &Stitches, place: Place) -> Result<(), Halt> {
        self.needle.begin();
        let times = match &stitches.count {
            Count::One => 1,
            Count::Of(amount) => amount.value(self.size),
            Count::Reach(reach) => return self.as_far_as(stitches, reach, place),
        };
        self.bridged(stitches.word);
        self.run(&stitches.name, times, stitches.word)
    }

    /// The stitch that stands on the right needle after a bind-off, if it is not counted with those that follow.
    fn bridged(&mut self, place: Place) {
        if std::mem::take(&mut self.bridge) && self.needle.ahead() > 0 {
            self.doubts[Doubt::BindOff as usize] = true;
            if self.meant == Some(Doubt::BindOff) {
                self.used += 1;
                self.needle.work(1, 1, 1);
                self.record(CellKind::Knit, 1, place);
            }
        }
    }

    /// So many of one stitch.
    fn run(&mut self, name: &StitchName, times: u64, word: Place) -> Result<(), Halt> {
        let uses = name.uses();
        let wanted = uses.saturating_mul(times);
        let ahead = self.needle.ahead();
        let is_plain = name.sort() == Sort::Plain;
        if self.watched == Some(word) {
            let worked = if uses == 0 || wanted <= ahead {
                times
            } else {
                ahead / uses
            };
            self.seen += if is_plain { u64::from(wanted <= ahead) } else { worked };
        }
        if wanted > ahead {
            let halt = self.runs_out(uses, wanted, is_plain, word);
            self.record_what_fits(name, word);
            return Err(halt);
        }
        self.used = self.used.saturating_add(wanted);
        self.needle.work(times, uses, name.gives());
        self.record_stitches(name, times, word);
        self.bridge = false;
        let lifts = name.lifts().saturating_mul(times);
        if lifts > 0 && !self.needle.pass_over(lifts) {
            return Err(self.halt(Outcome::Nothing, word));
        }
        Ok(())
    }

    fn runs_out(&self, uses: u64, wanted: u64, is_plain: bool, word: Place) -> Halt {
        let ahead = self.needle.ahead();
        if self.needle.backwards {
            return self.halt(Outcome::CannotTell, word);
        }
        let short = if is_plain { wanted - ahead } else { uses - ahead % uses };
        self.halt(Outcome::RunsOut { short, time: 0 }, word)
    }

    /// One stitch again and again, as far as that.
    fn as_far_as(&mut self, stitches: &Stitches, reach: &Reach, place: Place) -> Result<(), Halt> {
        self.bridge = false;
        let target = self.target(reach, place)?;
        let left = self.needle.ahead() - target;
        let uses = stitches.name.uses();
        if uses == 0 {
            return if left > 0 {
                Err(self.halt(Outcome::MakesNothing, place))
            } else {
                Ok(())
            };
        }
        let times = left / uses;
        self.run(&stitches.name, times, stitches.word)?;
        if uses > 1 {
            self.repeats = Some(times);
        }
        self.stops_at((reach, target), left % uses, uses, times, place)
    }

    /// What is left where there is no room for once more.
    fn stops_at(
        &self,
        (reach, target): (&Reach, u64),
        left: u64,
        uses: u64,
        repeats: u64,
        place: Place,
    ) -> Result<(), Halt> {
        let ahead = self.needle.ahead();
        let outcome = match reach {
            _ if left == 0 => return Ok(()),
            Reach::End => Outcome::LeftOver {
                stitches: left,
                repeats: Some(repeats),
            },
            Reach::Marker(_) => Outcome::PastMarker { short: uses - left },
            Reach::Last(_) => Outcome::ToLast {
                wanted: target,
                leaves: ahead.saturating_sub(uses),
                before: ahead,
                repeats,
            },
        };
        Err(self.halt(outcome, place))
    }

    /// How many stitches are to be left ahead.
    fn target(&self, reach: &Reach, place: Place) -> Result<u64, Halt> {
        let ahead = self.needle.ahead();
        match reach {
            Reach::End => Ok(0),
            Reach::Last(amount) => match amount.value(self.size) {
                wanted if wanted <= ahead => Ok(wanted),
                wanted => {
                    let (leaves, before, repeats) = (ahead, ahead, 0);
                    let outcome = Outcome::ToLast {
                        wanted,
                        leaves,
                        before,
                        repeats,
                    };
                    Err(self.halt(outcome, place))
                }
            },
            Reach::Marker(amount) => {
                // In the round the marker at its beginning stands behind the last stitch.
                let is_round = self.working == Working::Round;
                let to = self.needle.to_marker().or(is_round.then_some(ahead));
                let Some(to) = to else {
                    return Err(self.halt(Outcome::NoMarker { ahead: None }, place));
                };
                let before = amount.as_ref().map_or(0, |amount| amount.value(self.size));
                match to.checked_sub(before) {
                    Some(worked) => Ok(ahead - worked),
                    None => Err(self.halt(Outcome::PastMarker { short: before - to }, place)),
                }
            }
        }
    }

    /// All of a bracket in one stitch.
    fn all_in_one(&mut self, body: &[Item], place: Place) -> Result<(), Halt> {
        self.needle.begin();
        let Some(sum) = self.fixed(body) else {
            return Err(self.halt(Outcome::CannotTell, place));
        };
        if self.needle.ahead() == 0 {
            return Err(self.runs_out(1, 1, false, place));
        }
        self.used += 1;
        self.needle.work(1, 1, sum.gives);
        self.record(CellKind::of(1, sum.gives), 1, place);
        Ok(())
    }
}
