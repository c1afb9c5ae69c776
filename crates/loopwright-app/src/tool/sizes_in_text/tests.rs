//! The named states are what they are called.

use super::*;
use crate::form::Settings;
use crate::tool::tests::fields_of;
use crate::tool::{Entry as Row, find};

fn answered(state: &str) -> Answer {
    let state = NAMED.iter().find(|named| named.name == state).unwrap();
    let question = SizesInText::read(&fields_of::<SizesInText>(state)).unwrap();
    SizesInText::answer(&question).unwrap()
}

#[test]
fn the_states_say_what_they_are_called() {
    let filled = answered("filled");
    assert_eq!((filled.names.len(), filled.in_doubt, filled.size), (5, 0, Some(2)));
    assert!(filled.plain.contains("Cast on 184 sts and join"));
    assert_eq!(filled.lines[9].for_some[0].sizes, [3, 4]);
    assert!(answered("doubtful").in_doubt >= 3);
    assert_eq!(answered("decided").in_doubt, answered("doubtful").in_doubt - 2);
    let by_part = answered("by-part");
    assert_eq!((by_part.joins.len(), by_part.lost.len()), (2, 1));
    assert!(by_part.plain.contains("Cast on 48 sts."));
    assert_eq!((answered("many").names.len(), answered("many").in_doubt), (12, 0));
}

/// No link holds anything of a text, and none brings one.
#[test]
fn no_link_has_a_text_of_hers() {
    let row: &Row = find("sizes_in_text").unwrap();
    let state = NAMED.iter().find(|state| state.name == "by-part").unwrap();
    let typed = crate::route::to_fields(&crate::route::parse_query(state.link));
    let fields = Fields::new(row.fields, typed, Settings::default());
    let keys: Vec<String> = fields.linked().into_keys().collect();
    assert_eq!(keys, ["size"]);
    let taken = row.take(&crate::route::parse_query(state.link));
    assert_eq!(taken.fields.into_keys().collect::<Vec<_>>(), ["size"]);
    assert_eq!(taken.left_out.number(), 2);
}
