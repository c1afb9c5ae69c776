//! The multiple that a pattern asks a count to be, and the stitches beside its repeats: two fields, of which the first
//! takes both as they are written, `8 + 3`.

use super::plain::list;
use super::{Label, Reading, Say, Sheet, field};
use loopwright::cast_on::{MULTIPLE, Multiple, PLUS};
use loopwright::problem::Kind;
use loopwright::units::count::read_plus;
use loopwright::units::parse::Unreadable;
use yew::prelude::*;

/// The multiple as it is typed, with the plus that may stand behind it.
#[inline(never)]
fn written(sheet: &Sheet) -> Result<(u32, Option<u32>), Unreadable> {
    read_plus(&sheet.text("multiple", "1"), MULTIPLE, PLUS)
}

/// The two fields.
pub fn multiple_fields(sheet: &Sheet, [multiple, plus]: [&'static str; 2], say: Say) -> Html {
    let behind = written(sheet).ok().and_then(|(_, plus)| plus).unwrap_or(0).to_string();
    list(vec![
        field(sheet, "multiple", Label::Shown(multiple), "1", say("multiple")),
        field(sheet, "plus", Label::Shown(plus), &behind, say("plus")),
    ])
}

/// What the pattern asks the count to be. A plus behind the multiple, as in `8 + 3`, fills the field of the plus, unless
/// another stands there.
pub fn multiple(reading: &mut Reading, sheet: &Sheet) -> Multiple {
    let typed = reading.count_if_any("plus", PLUS).unwrap_or(0);
    match written(sheet) {
        Ok((of, None)) => Multiple { of, plus: typed },
        Ok((of, Some(plus))) if typed == 0 || typed == plus => Multiple { of, plus },
        other => {
            let why = other.err().unwrap_or(Unreadable::TwoNumbers);
            reading.wrong("multiple", Kind::Unreadable(why));
            Multiple { of: 1, plus: typed }
        }
    }
}
