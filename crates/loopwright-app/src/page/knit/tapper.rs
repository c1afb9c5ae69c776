//! What taps: a tap is made on a counter as it stands now, also by a callback that is older than the last tap, and has a name
//! that no tap of another window has.

use crate::desk::Desk;
use crate::knit::{Comfort, Counter, Followed, Rows, Subject, buzz};
use js_sys::{Date, Math};
use loopwright_project::knitting::{self, Tap};
use std::cell::Cell;
use std::rc::Rc;
use yew::prelude::*;

/// The clock beside her, in milliseconds since 1970.
pub fn now() -> u64 {
    Date::now() as u64
}

/// The window that taps.
#[derive(Clone)]
pub struct Naming {
    window: Rc<str>,
    count: Rc<Cell<u32>>,
}

impl Naming {
    /// A window that has not tapped yet.
    pub fn new() -> Self {
        let random = (Math::random() * f64::from(u32::MAX)) as u32;
        Self {
            window: format!("{random:x}").into(),
            count: Rc::default(),
        }
    }

    /// The name of the next tap.
    fn name(&self, now: u64) -> String {
        let count = self.count.get();
        self.count.set(count.wrapping_add(1));
        knitting::name(now, &self.window, count)
    }
}

/// Which tap is made where a counter stands so; none where there is nothing to tap.
pub type Which = fn(&Counter, Moment) -> Option<Tap>;

/// What a tap may depend on beside its counter.
#[derive(Clone, Copy)]
pub struct Moment {
    /// The time of the clock.
    pub now: u64,
    /// How many rows there are.
    pub rows: u32,
}

/// A row is done, where there is one left.
pub fn on(counter: &Counter, moment: Moment) -> Option<Tap> {
    (counter.done < moment.rows).then(|| counter.on(moment.now))
}

/// One row back.
pub fn back(counter: &Counter, _: Moment) -> Option<Tap> {
    counter.back()
}

/// All that is needed for a tap. Cheap to clone.
#[derive(Clone)]
pub struct Tapper {
    /// Where taps are kept.
    pub desk: Desk,
    /// What is knitted.
    pub subject: Subject,
    /// Its rows.
    pub rows: Rc<Rows>,
    /// The window.
    pub naming: Naming,
}

impl Tapper {
    /// Where she is now.
    pub fn followed(&self) -> Followed {
        self.subject.followed(&self.desk, &self.rows)
    }

    /// Taps on a counter.
    pub fn tap(&self, counter: u32, which: impl FnOnce(&Counter, Moment) -> Option<Tap>) {
        let followed = self.followed();
        let rows = self.rows.plan.rows;
        let moment = Moment { now: now(), rows };
        let found = followed.counters.iter().find(|one| one.number == counter);
        let Some(tap) = found.and_then(|found| which(found, moment)) else {
            return;
        };
        let name = self.naming.name(moment.now);
        self.subject.tap(&self.desk, &self.rows, counter, &name, tap);
        if Comfort::Buzz.is_on(&self.desk) {
            buzz();
        }
    }

    /// A callback that taps on a counter.
    pub fn tapping(&self, counter: u32, which: Which) -> Callback<MouseEvent> {
        let tapper = self.clone();
        Callback::from(move |_| tapper.tap(counter, which))
    }

    /// A callback that leads a counter to a row.
    pub fn jumping(&self, counter: u32, row: u32) -> Callback<MouseEvent> {
        let tapper = self.clone();
        Callback::from(move |_| tapper.tap(counter, |counter, _| counter.to(row)))
    }
}
