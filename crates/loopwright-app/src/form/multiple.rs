//! The multiple that a pattern asks a count to be, and the stitches beside its repeats: two fields, of which the first
//! takes both as they are written, `8 + 3`.

use super::{Fields, Reader};
use loopwright::choice::FieldName;
use loopwright::problem::Kind;
use loopwright::terms::{MULTIPLE, Multiple, PLUS};
use loopwright::units::count::read_plus;

/// What stands behind the multiple, for the field of the plus to start with.
pub fn plus_behind(fields: &Fields, multiple: impl FieldName) -> String {
    let read = read_plus(&fields.text(fields.path(multiple)), MULTIPLE, PLUS);
    let plus = read.ok().and_then(|(_, plus)| plus);
    plus.unwrap_or(0).to_string()
}

/// What the pattern asks the count to be. Where a plus stands behind the multiple and another one was typed into the
/// field of the plus, nought among them, neither is taken for the other: it is asked.
pub fn read_multiple(reader: &mut Reader, multiple: impl FieldName, plus: impl FieldName + Copy) -> Multiple {
    let typed = reader.count_if_any(plus);
    match read_plus(&reader.text(multiple), MULTIPLE, PLUS) {
        Ok((of, None)) => Multiple {
            of,
            plus: typed.unwrap_or(0),
        },
        Ok((of, Some(other))) => {
            if typed.is_some_and(|typed| typed != other) {
                reader.wrong(plus, Kind::Differs { other });
            }
            Multiple { of, plus: other }
        }
        Err(why) => {
            reader.wrong(multiple, Kind::Unreadable(why));
            Multiple::ANY
        }
    }
}
