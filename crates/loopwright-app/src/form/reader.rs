//! Reads the fields of a tool into its question, one after the other. Where a text is no value the problem is noted and
//! the least there may be stands in, so that one reading finds all that is wrong; a question with problems is never asked.

use super::{Field, Fields, Kind as Holds, Scale, Start};
use crate::store::Typed;
use loopwright::bounds::Bounds;
use loopwright::choice::{Choice, FieldName};
use loopwright::problem::{FieldPath, Kind, Problem};
use loopwright::units::parse::Unreadable;
use loopwright::units::printed::Unread;
use loopwright::units::{Gauge, Length, Mass, Measure, count, gauge_text};

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

    /// The text of a field.
    pub fn text(&self, name: impl FieldName) -> String {
        self.fields.text(self.fields.path(name))
    }

    /// A whole number. A field that was emptied counts as what it starts with.
    pub fn count(&mut self, name: impl FieldName) -> u32 {
        self.count_at(self.fields.path(name))
    }

    /// The same, within narrower bounds than the table has, where another field says what may stand in this one.
    pub fn count_within(&mut self, name: impl FieldName, bounds: Bounds<u32>) -> u32 {
        self.count_at_within(self.fields.path(name), bounds)
    }

    /// A whole number in a field that may stay empty.
    pub fn count_if_any(&mut self, name: impl FieldName) -> Option<u32> {
        let path = self.fields.path(name);
        self.fields.is_typed_at(path).then(|| self.count_at(path))
    }

    /// A whole number in a field that starts with one and may be emptied.
    pub fn count_unless_emptied(&mut self, name: impl FieldName) -> Option<u32> {
        let is_emptied = self.text(name).trim().is_empty();
        (!is_emptied).then(|| self.count(name))
    }

    /// A length. A field that was emptied counts as what it starts with.
    pub fn length(&mut self, name: impl FieldName) -> Length {
        self.length_at(self.fields.path(name))
    }

    /// A length in a field that may stay empty.
    pub fn length_if_any(&mut self, name: impl FieldName) -> Option<Length> {
        let path = self.fields.path(name);
        self.fields.is_typed_at(path).then(|| self.length_at(path))
    }

    /// A weight. A field that was emptied counts as what it starts with.
    pub fn mass(&mut self, name: impl FieldName) -> Mass {
        self.mass_at(self.fields.path(name))
    }

    /// A weight in a field that may stay empty.
    pub fn mass_if_any(&mut self, name: impl FieldName) -> Option<Mass> {
        let path = self.fields.path(name);
        self.fields.is_typed_at(path).then(|| self.mass_at(path))
    }

    /// A gauge.
    pub fn gauge(&mut self, name: impl FieldName) -> Gauge {
        self.gauge_at(self.fields.path(name))
    }

    /// A gauge in a field that may stay empty.
    pub fn gauge_if_any(&mut self, name: impl FieldName) -> Option<Gauge> {
        let path = self.fields.path(name);
        self.fields.is_typed_at(path).then(|| self.gauge_at(path))
    }

    /// Several counts of one gauge; none where the field is empty.
    pub fn gauges(&mut self, name: impl FieldName) -> Vec<Gauge> {
        self.gauges_at(self.fields.path(name))
    }

    /// A list that was read, or what stands in for it. Of a list that is not begun nothing is said.
    pub fn listed<T>(&mut self, name: impl FieldName, read: Result<T, Unread>, otherwise: T) -> T {
        self.listed_at(self.fields.path(name), read, otherwise)
    }

    /// What a tool read itself, or what stands in for it while the problem is noted.
    pub fn value<T>(&mut self, name: impl FieldName, read: Result<T, Unreadable>, otherwise: T) -> T {
        self.value_at(self.fields.path(name), read, otherwise)
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
            Err(self.told_once())
        }
    }

    /// Each thing that is wrong, told once: of a field the first that was found, and nothing of a field into which nothing was
    /// typed and which only follows from another one that cannot be read.
    fn told_once(mut self) -> Vec<Problem> {
        let mut fields = Vec::new();
        self.problems.retain(|problem| {
            let is_first = !fields.contains(&problem.field);
            fields.push(problem.field);
            is_first
        });
        let is_told = |problem: &Problem| problem.kind != Kind::Unreadable(Unreadable::Empty);
        let follows = |problem: &Problem| {
            let starts_from_another = |row: &Field| matches!(row.start, Start::From(_));
            self.fields.row(problem.field).is_some_and(starts_from_another) && !self.fields.is_typed_at(problem.field)
        };
        if self
            .problems
            .iter()
            .any(|problem| is_told(problem) && !follows(problem))
        {
            self.problems.retain(|problem| !is_told(problem) || !follows(problem));
        }
        self.problems
    }
}

/// What the functions above do, whichever tool the name belongs to.
impl Reader {
    fn count_at(&mut self, path: FieldPath) -> u32 {
        match self.kind(path) {
            Some(Holds::Count(bounds)) => self.count_at_within(path, bounds),
            _ => self.no_such(path, 0),
        }
    }

    fn count_at_within(&mut self, path: FieldPath, bounds: Bounds<u32>) -> u32 {
        let text = self.text_or_start(path).text;
        let read = count::read(&text, bounds).map(|read| read.value);
        self.value_at(path, read, bounds.least)
    }

    fn length_at(&mut self, path: FieldPath) -> Length {
        match self.kind(path) {
            Some(Holds::Length(scale, bounds)) => self.measure(path, scale, bounds),
            _ => self.no_such(path, Length::ZERO),
        }
    }

    fn mass_at(&mut self, path: FieldPath) -> Mass {
        match self.kind(path) {
            Some(Holds::Mass(scale, bounds)) => self.measure(path, scale, bounds),
            _ => self.no_such(path, Mass::ZERO),
        }
    }

    fn gauge_at(&mut self, path: FieldPath) -> Gauge {
        self.value_at(path, self.fields.gauge_read(path), Gauge::of(1, Gauge::TEN_CM))
    }

    fn gauges_at(&mut self, path: FieldPath) -> Vec<Gauge> {
        let (text, span) = self.fields.gauge(path);
        if text.trim().is_empty() {
            return Vec::new();
        }
        let read = gauge_text::read_several(text, span.length, self.fields.counts(path));
        self.listed_at(path, read, Vec::new())
    }

    fn listed_at<T>(&mut self, path: FieldPath, read: Result<T, Unread>, otherwise: T) -> T {
        read.unwrap_or_else(|unread| {
            let is_begun = !self.fields.text(path).trim().is_empty();
            let kind = if is_begun {
                Kind::UnreadableList(unread)
            } else {
                Kind::Unreadable(Unreadable::Empty)
            };
            self.problems.push(Problem::new(path, kind));
            otherwise
        })
    }

    fn measure<T: Measure>(&mut self, path: FieldPath, scale: &Scale<T>, bounds: Bounds<T>) -> T {
        let typed = scale.settled(self.fields.settings(), self.text_or_start(path));
        self.value_at(path, scale.read(&typed, bounds), bounds.least)
    }

    fn value_at<T>(&mut self, path: FieldPath, read: Result<T, Unreadable>, otherwise: T) -> T {
        read.unwrap_or_else(|why| {
            self.problems.push(Problem::new(path, Kind::Unreadable(why)));
            otherwise
        })
    }

    fn kind(&self, path: FieldPath) -> Option<Holds> {
        self.fields.row(path).map(|row| row.kind)
    }

    fn text_or_start(&self, path: FieldPath) -> Typed {
        let typed = self.fields.typed(path).filter(|typed| !typed.text.trim().is_empty());
        typed.cloned().unwrap_or_else(|| self.fields.start(path))
    }

    /// A field that is read as something it does not hold: a mistake in a table, found by the test that reads every tool.
    fn no_such<T>(&mut self, path: FieldPath, otherwise: T) -> T {
        debug_assert!(false, "{path} does not hold that");
        self.problems.push(Problem::new(path, Kind::Missing));
        otherwise
    }
}
