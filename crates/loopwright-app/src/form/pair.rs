//! Two fields of one fabric: its stitches and its rows. A label names both at once, so that a text which does, typed into
//! one, fills the other where that is empty. What is filled in follows the text as it is typed on, is marked as filled in,
//! and goes by one tap. What was typed there by hand is never touched.

use super::takes::gauge_text;
use super::{Field, Fields, gauge_as_typed};
use crate::store::Typed;
use loopwright::gauge::Direction;
use loopwright::units::Gauge;

/// The field of the other direction, if it is asked.
pub fn other_field(fields: &Fields, field: &'static Field) -> Option<&'static Field> {
    let key = field.beside?;
    let mut rows = fields.table(field.group);
    rows.find(|row| row.key == key && (row.asked)(fields))
}

/// The gauge that a text names for the other direction than the field it was typed into.
pub fn named_for_other(field: &Field, typed: &Typed) -> Option<Gauge> {
    let read = gauge_text(typed).ok()?;
    read.of(field.counts)?;
    read.other(field.counts).map(|counted| counted.gauge)
}

/// What a text fills the field of the other direction with.
fn filling(field: &Field, typed: &Typed) -> Option<Typed> {
    named_for_other(field, typed).and_then(gauge_as_typed)
}

/// What becomes of the field of the other direction as a text takes the place of the one before: nothing, or this text,
/// or none at all.
pub fn following(field: &Field, before: Option<&Typed>, now: &Typed, other: Option<&Typed>) -> Option<Option<Typed>> {
    let was = before.and_then(|typed| filling(field, typed));
    let is = filling(field, now);
    let is_empty = other.is_none_or(|typed| typed.text.trim().is_empty());
    let is_filled_in = was.is_some() && other == was.as_ref();
    (was != is && (is_empty || is_filled_in)).then_some(is)
}

/// What the text in the other field names for this one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Named {
    /// What it names, as it would be typed here.
    pub filling: Typed,
    /// The text.
    pub text: String,
    /// Whether that is what stands here.
    pub stands_here: bool,
}

/// What the text in the field of the other direction names for this one, if anything.
pub fn named_beside(fields: &Fields, field: &'static Field) -> Option<Named> {
    let other = other_field(fields, field)?;
    let typed = fields.typed(fields.path_of(other))?;
    let filling = filling(other, typed)?;
    let here = fields.typed(fields.path_of(field));
    Some(Named {
        stands_here: here == Some(&filling),
        text: typed.text.trim().to_owned(),
        filling,
    })
}

/// The other direction.
pub const fn opposite(direction: Direction) -> Direction {
    match direction {
        Direction::Stitches => Direction::Rows,
        Direction::Rows => Direction::Stitches,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(text: &str) -> Typed {
        Typed::with_unit(text, "10 cm")
    }

    /// Types a text mark by mark, and gives what stands in the other field at the end.
    fn type_on(texts: &[&str], mut other: Option<Typed>) -> Option<Typed> {
        let field = Field::gauge();
        let mut before: Option<Typed> = None;
        for text in texts {
            let now = typed(text);
            if let Some(filled) = following(&field, before.as_ref(), &now, other.as_ref()) {
                other = filled;
            }
            before = Some(now);
        }
        other
    }

    #[test]
    fn a_text_that_names_both_fills_the_empty_one_as_it_is_typed() {
        let text = "20 sts and 28 rows";
        let starts: Vec<&str> = (1..=text.len()).map(|end| &text[..end]).collect();
        assert_eq!(type_on(&starts, None), Some(typed("28")));
        assert_eq!(
            type_on(&["22 x 3", "22 x 30", "22 x 30 = 4 in"], None),
            Some(Typed::with_unit("30", "4 in"))
        );
        // What was filled in is taken back with the text that named it.
        assert_eq!(type_on(&["22 x 30", "22 x 3", "22 x", "22"], None), None);
    }

    #[test]
    fn what_was_typed_by_hand_is_never_touched() {
        let own = Some(typed("31"));
        assert_eq!(type_on(&["22 x 3", "22 x 30", "22"], own.clone()), own);
        // Cleared by a tap, it stays clear until another number is named.
        let field = Field::gauge();
        assert_eq!(
            following(&field, Some(&typed("22 x 30")), &typed("22 x 30 "), None),
            None
        );
        assert_eq!(following(&field, Some(&typed("22")), &typed("23"), None), None);
    }
}
