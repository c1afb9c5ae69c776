//! What a tool asks: one table of fields a tool, and how their texts become the values of a question.
//!
//! The table is read by everything that has to do with fields: the form that draws them, the reader that makes a
//! question of them, the fold that hides them, links, named states, and the place where a problem is shown. It is data;
//! nothing here draws, and nothing here knows a tool.

pub mod doubt;
mod fields;
mod hand;
mod keeping;
pub mod kept;
mod measures;
mod multiple;
pub mod pair;
mod printing;
mod reader;
mod scale;
mod span;
mod standing;
mod strange;
pub mod taken;
mod takes;

pub use fields::{Fields, Settings};
pub use hand::HAND;
pub use keeping::Keeping;
pub use measures::Measures;
pub use multiple::{plus_behind, read_multiple};
pub use reader::Reader;
pub use scale::{NEEDLE, SETTINGS, Scale, TAPE, WEIGHT, YARN, read_needle};
pub use span::{SPANS, Span, gauge_as_typed, span_of, span_read};
pub use strange::written_unit;
pub use takes::gauge_text;

use crate::words::Worded;
use loopwright::bounds::Bounds;
use loopwright::choice::{Choice, GroupName};
use loopwright::gauge::Direction;
use loopwright::units::{Length, LengthUnit, Mass};

/// One field of a tool: a row of its table.
#[derive(Clone, Copy)]
pub struct Field {
    /// Its key in what is stored and linked.
    pub key: &'static str,
    /// The repeated group it belongs to, if any.
    pub group: Option<&'static GroupName>,
    /// What it is called beside the field.
    pub label: &'static str,
    /// What it is called instead, where that depends on the other fields.
    pub label_by: Option<fn(&Fields) -> &'static str>,
    /// What it holds.
    pub kind: Kind,
    /// What stands in it before anything is typed.
    pub start: Start,
    /// What may be typed, for example: shown in the empty field as such, and never taken for a value.
    pub example: Start,
    /// Under which name its value holds for all tools.
    pub kept: Keeping,
    /// Whether what stands in the field is not to be kept, only taken from what is.
    pub take_only: bool,
    /// Whether a count may have a plus behind it, `8 + 3`.
    pub plus: bool,
    /// Where in the form it stands.
    pub place: Place,
    /// Whether it is asked at all, as the others stand.
    pub asked: fn(&Fields) -> bool,
    /// Whether one of its options, by its key, can be chosen as the others stand.
    pub offered: fn(&Fields, &str) -> bool,
    /// A remark below it; none if that is empty.
    pub remark: &'static str,
    /// What is counted in it, if it is a gauge.
    pub counts: Direction,
    /// The key of the field of the same fabric's other direction, if it is a gauge and there is one.
    pub beside: Option<&'static str>,
    /// Whether a link has it, and whatever is made of one: an embedded page, a picture to scan.
    pub linked: bool,
}

/// What a field holds.
#[derive(Clone, Copy)]
pub enum Kind {
    /// A whole number.
    Count(Bounds<u32>),
    /// A length, shown in the units of a scale.
    Length(&'static Scale<Length>, Bounds<Length>),
    /// A weight.
    Mass(&'static Scale<Mass>, Bounds<Mass>),
    /// One gauge.
    Gauge,
    /// Several counts of one gauge.
    Gauges,
    /// One of a few.
    Choice(Options),
    /// A list as it stands in a pattern.
    List(List),
    /// Text that the tool reads itself.
    Text,
    /// The text of a pattern, line by line, or what quotes it: it is hers alone (`desk::hers`).
    Pattern,
    /// No field: a place below which stands what is wrong with several fields together.
    Whole,
}

/// A list of numbers.
#[derive(Clone, Copy)]
pub struct List {
    /// What stands in it as long as it is empty.
    pub example: &'static str,
    /// Whether its numbers are lengths, with a unit beside the list.
    pub lengths: bool,
}

/// The units that a list of lengths may be in, each by the key that is stored as the unit of its text.
pub const LIST_UNITS: [(&str, LengthUnit); 2] = [("cm", LengthUnit::Cm), ("in", LengthUnit::Inch)];

/// What can be chosen in a field: each by its key and its words.
#[derive(Clone, Copy)]
pub struct Options {
    at: fn(usize) -> Option<(&'static str, &'static str)>,
    start: fn() -> &'static str,
    read: fn(&str) -> Option<&'static str>,
}

impl Options {
    /// The options of a choice.
    pub const fn of<C: Choice + Worded>() -> Self {
        Self {
            at: |place| C::ALL.get(place).map(|choice| (choice.key(), choice.words())),
            start: || C::START.key(),
            read: |stored| C::from_key(stored).map(C::key),
        }
    }

    /// All of them, in the order they are shown.
    pub fn all(&self) -> Vec<(&'static str, &'static str)> {
        (0..).map_while(self.at).collect()
    }

    /// The key of the one that holds before anything is chosen.
    pub fn start(&self) -> &'static str {
        (self.start)()
    }

    /// The key of the one that a stored text stands for, if it is one of them: the text itself, or what has replaced it.
    pub fn read(&self, stored: &str) -> Option<&'static str> {
        (self.read)(stored)
    }
}

/// What stands in a field before anything is typed.
#[derive(Clone, Copy)]
pub enum Start {
    /// Nothing.
    Empty,
    /// A count.
    Count(u32),
    /// Words.
    Text(&'static str),
    /// A length.
    Length(Length),
    /// A weight.
    Mass(Mass),
    /// What follows from the other fields.
    From(fn(&Fields) -> String),
}

/// Where in the form a field stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// In the sentence that the tool writes around its fields.
    Sentence,
    /// Below the sentence, in a short column.
    Open,
    /// Folded away below this title.
    Folded(&'static str),
    /// Beside the answer, which draws it; the form passes over it.
    Answer,
}

impl Field {
    /// A field that holds this, with nothing in it, in the open column.
    pub const fn new(kind: Kind) -> Self {
        Self {
            key: "",
            group: None,
            label: "",
            label_by: None,
            kind,
            start: Start::Empty,
            example: Start::Empty,
            kept: Keeping::Nothing,
            take_only: false,
            plus: false,
            place: Place::Open,
            asked: always,
            offered: all_options,
            remark: "",
            counts: Direction::Stitches,
            beside: None,
            linked: true,
        }
    }

    /// A whole number.
    pub const fn count(bounds: Bounds<u32>) -> Self {
        Self::new(Kind::Count(bounds))
    }

    /// A length.
    pub const fn length(scale: &'static Scale<Length>, bounds: Bounds<Length>) -> Self {
        Self::new(Kind::Length(scale, bounds))
    }

    /// A weight.
    pub const fn mass(scale: &'static Scale<Mass>, bounds: Bounds<Mass>) -> Self {
        Self::new(Kind::Mass(scale, bounds))
    }

    /// One gauge.
    pub const fn gauge() -> Self {
        Self::new(Kind::Gauge)
    }

    /// Several counts of one gauge.
    pub const fn gauges() -> Self {
        Self::new(Kind::Gauges)
    }

    /// One of a few.
    pub const fn choice<C: Choice + Worded>() -> Self {
        Self::new(Kind::Choice(Options::of::<C>()))
    }

    /// A list of counts.
    pub const fn counts(example: &'static str) -> Self {
        Self::new(Kind::List(List {
            example,
            lengths: false,
        }))
    }

    /// A list of lengths.
    pub const fn lengths(example: &'static str) -> Self {
        Self::new(Kind::List(List { example, lengths: true }))
    }

    /// Text that the tool reads itself.
    pub const fn text() -> Self {
        Self::new(Kind::Text)
    }

    /// The text of a pattern, or what quotes it. It is in no link.
    pub const fn pattern() -> Self {
        Self::new(Kind::Pattern).unlinked()
    }

    /// No link has it.
    pub const fn unlinked(self) -> Self {
        Self { linked: false, ..self }
    }

    /// A place for what is wrong with several fields together.
    pub const fn whole() -> Self {
        Self::new(Kind::Whole)
    }

    /// It starts with this.
    pub const fn starts(self, start: Start) -> Self {
        Self { start, ..self }
    }

    /// As long as it is empty this stands in it as an example.
    pub const fn example(self, example: Start) -> Self {
        Self { example, ..self }
    }

    /// It takes a repeat with the stitches beside it, `8 + 3`.
    pub const fn with_plus(self) -> Self {
        Self { plus: true, ..self }
    }

    /// It stands in the sentence.
    pub const fn in_sentence(self) -> Self {
        Self {
            place: Place::Sentence,
            ..self
        }
    }

    /// It lies folded away below this title.
    pub const fn folded(self, title: &'static str) -> Self {
        Self {
            place: Place::Folded(title),
            ..self
        }
    }

    /// It stands beside the answer.
    pub const fn in_answer(self) -> Self {
        Self {
            place: Place::Answer,
            ..self
        }
    }

    /// It is asked only where this holds.
    pub const fn only_if(self, asked: fn(&Fields) -> bool) -> Self {
        Self { asked, ..self }
    }

    /// What it is called depends on the other fields.
    pub const fn labelled_by(self, label: fn(&Fields) -> &'static str) -> Self {
        Self {
            label_by: Some(label),
            ..self
        }
    }

    /// Of its options only those can be chosen of which this holds. What is stored as another one counts as the one that
    /// holds before anything is chosen.
    pub const fn offered_if(self, offered: fn(&Fields, &str) -> bool) -> Self {
        Self { offered, ..self }
    }

    /// It is a gauge in rows.
    pub const fn of_rows(self) -> Self {
        Self {
            counts: Direction::Rows,
            ..self
        }
    }

    /// The field of this key is the same fabric's gauge in the other direction: a text that names both fills both.
    pub const fn beside(self, other: &'static str) -> Self {
        Self {
            beside: Some(other),
            ..self
        }
    }

    /// This stands below it.
    pub const fn remarked(self, remark: &'static str) -> Self {
        Self { remark, ..self }
    }

    /// It is called this, where one field is asked in several ways, each with a row of its own.
    pub const fn labelled(self, label: &'static str) -> Self {
        Self { label, ..self }
    }

    /// The row of this name; used by the [`fields`](crate::fields) macro.
    pub const fn named(self, key: &'static str, group: Option<&'static GroupName>, label: &'static str) -> Self {
        let label = if self.label.is_empty() { label } else { self.label };
        Self {
            key,
            group,
            label,
            ..self
        }
    }

    /// What it is called as the other fields stand.
    pub fn label_in(&self, fields: &Fields) -> &'static str {
        self.label_by.map_or(self.label, |label| label(fields))
    }

    /// The title below which it lies folded away.
    pub const fn fold(&self) -> Option<&'static str> {
        match self.place {
            Place::Folded(title) => Some(title),
            Place::Sentence | Place::Open | Place::Answer => None,
        }
    }
}

const fn always(_: &Fields) -> bool {
    true
}

const fn all_options(_: &Fields, _: &str) -> bool {
    true
}

/// The table of a tool, a row for each name of a field, and where there is a repeated group a row for each name of a field
/// that every member of it has. A name without a row does not compile; one that is asked in several ways has a row for
/// each, of which one at most is asked at a time.
///
/// ```ignore
/// fields! { FIELDS of Name, words::label;
///     Stitches => Field::count(STITCHES).in_sentence(),
///     Amount => Field::count(AMOUNTS).in_sentence(),
///     [each SectionName, words::section_label;
///         Rows => Field::count(ROWS).in_sentence(),
///     ]
/// }
/// ```
#[macro_export]
macro_rules! fields {
    ($table:ident of $names:ident, $label:path; $($name:ident => $field:expr,)+
        $([each $members:ident, $member_label:path; $($member:ident => $member_field:expr,)+])?
    ) => {
        /// The fields, in the order of the form.
        pub const $table: &[$crate::form::Field] = &[
            $($crate::field_row!($names::$name, $names, $label, $field),)+
            $($($crate::field_row!($members::$member, $members, $member_label, $member_field),)+)?
        ];

        #[allow(unreachable_patterns)]
        const _: fn($names) = |name| match name {
            $($names::$name => (),)+
        };

        $(#[allow(unreachable_patterns)]
        const _: fn($members) = |name| match name {
            $($members::$member => (),)+
        };)?
    };
}

/// One row of a table: the field under its name.
#[macro_export]
macro_rules! field_row {
    ($name:path, $names:ident, $label:path, $field:expr) => {{
        let field: $crate::form::Field = $field;
        field.named(
            $name.key(),
            <$names as loopwright::choice::FieldName>::GROUP,
            $label($name),
        )
    }};
}
