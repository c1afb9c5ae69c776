//! What is said of a change in the middle, and of stitches that are dropped.

use super::*;

/// k2tog leans right, and no pair of them is a mirror.
#[test]
fn the_middle_is_said_to_lean_as_it_does() {
    let written = |change| note(&Note::MiddleLeans { change });
    assert!(written(Stitch::K2tog).starts_with("The k2tog in the middle leans right;"));
    assert!(written(Stitch::Ssk).starts_with("The ssk in the middle leans left;"));
    let dropped = note(&Note::PlusDropped { plus: 3 });
    assert!(
        dropped.contains("the 3 stitches beside the repeats are dropped"),
        "{dropped}"
    );
}
