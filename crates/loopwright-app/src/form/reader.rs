//! Reads the fields of a tool into its question, one after the other. Where a text is no value the problem is noted and
//! the least there may be stands in, so that one reading finds all that is wrong; a question with problems is never asked.

use super::{Fields, Kind as Holds, Scale};
use crate::store::Typed;
use loopwright::bounds::Bounds;
use loopwright::choice::{Choice, FieldName};
use loopwright::problem::{FieldPath, Kind, Problem};
use loopwright::units::list::Unread;
use loopwright::units::parse::Unreadable;
use loopwright::units::{Gauge, Length, Mass, Measure, count};

/// A reader of the fields of one tool.
pub struct Reader {
    fields: Fields,
    problems: Vec<Problem>,
}

impl Reader {
    /// Nothing is read yet.
    pub fn new(fields: &Fields) -> Self {
        Self {
            fields: fields.clone(),
            problems: Vec::new(),
        }
    }

    /// The fields that are read.
    pub const fn fields(&self) -> &Fields {
        &self.fields
    }

    /// Reads one member of the repeated group.
    pub fn member<T>(&mut self, index: usize, read: impl FnOnce(&mut Self) -> T) -> T {
        let all = self.fields.clone();
        self.fields = all.member(index);
        let value = read(self);
        self.fields = all;
        value
    }

    /// Notes what is wrong with a field.
    pub fn wrong(&mut self, name: impl FieldName, kind: Kind) {
        let path = self.fields.path(name);
        self.problems.push(Problem::new(path, kind));
    }

    /// Notes what the maths found wrong.
    pub fn found(&mut self, problems: Vec<Problem>) {
        self.problems.extend(problems);
    }

    /// What is wrong so far.
    pub fn problems(&self) -> &[Problem] {
        &self.problems
    }

    /// What is chosen.
    pub fn choice<C: Choice>(&self, name: impl FieldName) -> C {
        self.fields.choice(name)
    }

    /// Whether something was typed into a field.
    pub fn is_typed(&self, name: impl FieldName) -> bool {
        self.fields.is_typed(name)
    }

    /// The text of a field.
    pub fn text(&self, name: impl FieldName) -> String {
        self.fields.text(self.fields.path(name))
    }

    /// A whole number. A field that was emptied counts as what it starts with.
    pub fn count(&mut self, name: impl FieldName) -> u32 {
        let path = self.fields.path(name);
        let Some(Holds::Count(bounds)) = self.kind(path) else {
            return self.no_such(name, 0);
        };
        self.count_within(name, bounds)
    }

    /// The same, within narrower bounds than the table has, where another field says what may stand in this one.
    pub fn count_within(&mut self, name: impl FieldName, bounds: Bounds<u32>) -> u32 {
        let text = self.text_or_start(self.fields.path(name)).text;
        let read = count::read(&text, bounds).map(|read| read.value);
        self.value(name, read, bounds.least)
    }

    /// A length. A field that was emptied counts as what it starts with.
    pub fn length(&mut self, name: impl FieldName) -> Length {
        match self.kind(self.fields.path(name)) {
            Some(Holds::Length(scale, bounds)) => self.measure(name, scale, bounds),
            _ => self.no_such(name, Length::ZERO),
        }
    }

    /// A weight. A field that was emptied counts as what it starts with.
    pub fn mass(&mut self, name: impl FieldName) -> Mass {
        match self.kind(self.fields.path(name)) {
            Some(Holds::Mass(scale, bounds)) => self.measure(name, scale, bounds),
            _ => self.no_such(name, Mass::ZERO),
        }
    }

    /// A gauge.
    pub fn gauge(&mut self, name: impl FieldName) -> Gauge {
        let (text, span) = self.fields.gauge(self.fields.path(name));
        let read = Gauge::read(text, span.length);
        self.value(name, read, Gauge::of(1, Gauge::TEN_CM))
    }

    /// Several counts of one gauge; none where the field is empty.
    pub fn gauges(&mut self, name: impl FieldName) -> Vec<Gauge> {
        let (text, span) = self.fields.gauge(self.fields.path(name));
        match Gauge::read_list(text, span.length) {
            Err(Unreadable::Empty) => Vec::new(),
            read => self.value(name, read, Vec::new()),
        }
    }

    /// A list that was read, or what stands in for it. Of a list that is not begun nothing is said.
    pub fn listed<T>(&mut self, name: impl FieldName, read: Result<T, Unread>, otherwise: T) -> T {
        read.unwrap_or_else(|unread| {
            let is_begun = !self.text(name).trim().is_empty();
            self.wrong(
                name,
                if is_begun {
                    Kind::UnreadableList(unread)
                } else {
                    Kind::Unreadable(Unreadable::Empty)
                },
            );
            otherwise
        })
    }

    /// A whole number in a field that may stay empty.
    pub fn count_if_any(&mut self, name: impl FieldName) -> Option<u32> {
        self.is_typed(name).then(|| self.count(name))
    }

    /// A whole number in a field that starts with one and may be emptied.
    pub fn count_unless_emptied(&mut self, name: impl FieldName) -> Option<u32> {
        let is_emptied = self.text(name).trim().is_empty();
        (!is_emptied).then(|| self.count(name))
    }

    /// A length in a field that may stay empty.
    pub fn length_if_any(&mut self, name: impl FieldName) -> Option<Length> {
        self.is_typed(name).then(|| self.length(name))
    }

    /// A gauge in a field that may stay empty.
    pub fn gauge_if_any(&mut self, name: impl FieldName) -> Option<Gauge> {
        self.is_typed(name).then(|| self.gauge(name))
    }

    /// A count and a length that mean something only together: the empty one of them is missing.
    pub fn both(&mut self, counted: impl FieldName, measured: impl FieldName) -> Option<(u32, Length)> {
        let (count, length) = (self.count_if_any(counted), self.length_if_any(measured));
        match (count, length) {
            (Some(_), None) => self.wrong(measured, Kind::Missing),
            (None, Some(_)) => self.wrong(counted, Kind::Missing),
            (Some(_), Some(_)) | (None, None) => {}
        }
        count.zip(length)
    }

    /// The question, if everything could be read.
    ///
    /// # Errors
    /// What is wrong, field by field.
    pub fn done<Q>(self, question: Q) -> Result<Q, Vec<Problem>> {
        if self.problems.is_empty() {
            Ok(question)
        } else {
            Err(self.problems)
        }
    }

    /// What was read, or what stands in for it while the problem is noted.
    pub fn value<T>(&mut self, name: impl FieldName, read: Result<T, Unreadable>, otherwise: T) -> T {
        read.unwrap_or_else(|why| {
            self.wrong(name, Kind::Unreadable(why));
            otherwise
        })
    }

    fn measure<T: Measure>(&mut self, name: impl FieldName, scale: &Scale<T>, bounds: Bounds<T>) -> T {
        let typed = self.text_or_start(self.fields.path(name));
        let read = scale.as_typed(&typed).read(bounds).map(|read| read.value);
        self.value(name, read, bounds.least)
    }

    fn kind(&self, path: FieldPath) -> Option<Holds> {
        self.fields.row(path).map(|row| row.kind)
    }

    fn text_or_start(&self, path: FieldPath) -> Typed {
        let typed = self.fields.typed(path).filter(|typed| !typed.text.trim().is_empty());
        typed.cloned().unwrap_or_else(|| self.fields.start(path))
    }

    /// A field that is read as something it does not hold: a mistake in a table, found by the test that reads every tool.
    fn no_such<T>(&mut self, name: impl FieldName, otherwise: T) -> T {
        debug_assert!(false, "{} does not hold that", self.fields.path(name));
        self.wrong(name, Kind::Missing);
        otherwise
    }
}
