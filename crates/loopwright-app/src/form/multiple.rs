//! The multiple that a pattern asks a count to be, and the stitches beside its repeats: two fields, of which the first
//! takes both as they are written, `8 + 3`.

use super::{Fields, Reader};
use loopwright::choice::FieldName;
use loopwright::problem::Kind;
use loopwright::terms::{MULTIPLE, Multiple, PLUS};
use loopwright::units::count::read_plus;
use loopwright::units::parse::Unreadable;

/// What stands behind the multiple, for the field of the plus to start with.
pub fn plus_behind(fields: &Fields, multiple: impl FieldName) -> String {
    let read = read_plus(&fields.text(fields.path(multiple)), MULTIPLE, PLUS);
    let plus = read.ok().and_then(|(_, plus)| plus);
    plus.unwrap_or(0).to_string()
}

/// What the pattern asks the count to be. A plus behind the multiple counts unless another stands in the field of the
/// plus.
pub fn read_multiple(reader: &mut Reader, multiple: impl FieldName, plus: impl FieldName) -> Multiple {
    let typed = reader.count_if_any(plus).unwrap_or(0);
    match read_plus(&reader.text(multiple), MULTIPLE, PLUS) {
        Ok((of, None)) => Multiple { of, plus: typed },
        Ok((of, Some(plus))) if typed == 0 || typed == plus => Multiple { of, plus },
        Ok((of, Some(_))) => {
            reader.wrong(multiple, Kind::Unreadable(Unreadable::TwoNumbers));
            Multiple { of, plus: typed }
        }
        Err(why) => {
            reader.wrong(multiple, Kind::Unreadable(why));
            Multiple { of: 1, plus: typed }
        }
    }
}
