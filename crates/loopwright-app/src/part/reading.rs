//! The fields of a sheet as they are read one after the other into a question, with what is wrong with them.

use super::plain::list;
use super::{Advice, Label, Scale, Sheet, field, read_gauge, read_gauges};
use loopwright::bounds::Bounds;
use loopwright::problem::{Kind, Problem};
use loopwright::units::{Gauge, Length};
use yew::prelude::*;

/// What to type instead in a field, if anything.
pub type Say<'a> = &'a dyn Fn(&'static str) -> Option<Advice>;

/// A field of a form that is drawn row by row: its name, its label, what it starts with, and its scale if it holds a
/// length.
pub type Row = (&'static str, &'static str, &'static str, Option<&'static Scale<Length>>);

/// The fields of a form, row by row.
#[inline(never)]
pub fn rows(sheet: &Sheet, rows: &[Row], say: Say) -> Html {
    let mut drawn = Vec::new();
    for &(name, label, start, scale) in rows {
        drawn.push(match scale {
            Some(scale) => scale.field(sheet, name, label, start, say(name)),
            None => field(sheet, name, Label::Shown(label), start, say(name)),
        });
    }
    list(drawn)
}

/// A reader of fields. Where a text is no value it notes the problem and goes on with the least there may be, so that
/// one reading finds all that is wrong.
pub struct Reading<'a> {
    sheet: &'a Sheet,
    /// What is wrong.
    pub problems: Vec<Problem>,
}

impl<'a> Reading<'a> {
    /// Nothing is read yet.
    pub fn of(sheet: &'a Sheet) -> Self {
        let problems = Vec::new();
        Self { sheet, problems }
    }

    /// Notes what is wrong with a field.
    #[inline(never)]
    pub fn wrong(&mut self, field: &'static str, kind: Kind) {
        self.problems.push(Problem::new(field, kind));
    }

    /// A whole number.
    #[inline(never)]
    pub fn count(&mut self, field: &'static str, bounds: Bounds<u32>, start: &str) -> u32 {
        self.sheet.count(field, bounds, start).unwrap_or_else(|kind| {
            self.wrong(field, kind);
            bounds.least
        })
    }

    /// A length.
    #[inline(never)]
    pub fn length(
        &mut self,
        scale: &Scale<Length>,
        field: &'static str,
        bounds: Bounds<Length>,
        start: &str,
    ) -> Length {
        scale.read(self.sheet, field, bounds, start).unwrap_or_else(|kind| {
            self.wrong(field, kind);
            bounds.least
        })
    }

    /// A gauge.
    #[inline(never)]
    pub fn gauge(&mut self, field: &'static str) -> Gauge {
        read_gauge(self.sheet, field).unwrap_or_else(|kind| {
            self.wrong(field, kind);
            Gauge::of(1, Gauge::TEN_CM)
        })
    }

    /// A gauge in a field that may stay empty.
    #[inline(never)]
    pub fn gauge_if_any(&mut self, field: &'static str) -> Option<Gauge> {
        self.is_typed(field).then(|| self.gauge(field))
    }

    /// Several counts of one gauge; none where the field is empty.
    #[inline(never)]
    pub fn gauges(&mut self, field: &'static str) -> Vec<Gauge> {
        read_gauges(self.sheet, field).unwrap_or_else(|kind| {
            self.wrong(field, kind);
            Vec::new()
        })
    }

    /// A whole number in a field that may stay empty.
    #[inline(never)]
    pub fn count_if_any(&mut self, field: &'static str, bounds: Bounds<u32>) -> Option<u32> {
        self.is_typed(field).then(|| self.count(field, bounds, ""))
    }

    /// A length in a field that may stay empty.
    #[inline(never)]
    pub fn length_if_any(
        &mut self,
        scale: &Scale<Length>,
        field: &'static str,
        bounds: Bounds<Length>,
    ) -> Option<Length> {
        self.is_typed(field).then(|| self.length(scale, field, bounds, ""))
    }

    /// A count and a length that mean something only together: the empty one of them is missing.
    pub fn both(
        &mut self,
        (counted, counts): (&'static str, Bounds<u32>),
        (measured, scale, lengths): (&'static str, &Scale<Length>, Bounds<Length>),
    ) -> Option<(u32, Length)> {
        let count = self.count_if_any(counted, counts);
        let length = self.length_if_any(scale, measured, lengths);
        match (count, length) {
            (Some(_), None) => self.wrong(measured, Kind::Missing),
            (None, Some(_)) => self.wrong(counted, Kind::Missing),
            _ => {}
        }
        count.zip(length)
    }

    /// Everything is read.
    ///
    /// # Errors
    /// What is wrong.
    pub fn done(self) -> Result<(), Vec<Problem>> {
        if self.problems.is_empty() {
            Ok(())
        } else {
            Err(self.problems)
        }
    }

    fn is_typed(&self, field: &str) -> bool {
        !self.sheet.text(field, "").trim().is_empty()
    }
}
