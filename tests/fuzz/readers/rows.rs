//! Written rows: what is read can be written and read again, and a row comes to an end on any needle.

use loopwright::row::{self, Stuck, Worked};

/// Reads the text as a row and works it: on as many stitches as it uses it leaves none over and makes what it says.
pub fn every_row_comes_to_an_end(text: &str) {
    let read = match row::read(text) {
        Ok(read) => read,
        Err(misread) => {
            assert!(misread.at <= text.chars().count(), "{misread} in {text:?}");
            return;
        }
    };
    let (uses, gives) = (read.uses(), read.gives());
    let written = read.to_string();
    let again = row::read(&written).unwrap_or_else(|misread| panic!("{written:?}, of {text:?}: {misread}"));
    assert_eq!((again.uses(), again.gives()), (uses, gives), "{written:?}, of {text:?}");
    for stitches in [0, 1, 132, u32::MAX] {
        let _ = row::work(&read, stitches);
    }
    let Ok(stitches) = u32::try_from(uses) else { return };
    match row::work(&read, stitches) {
        Ok(Worked {
            on_needle, left_over, ..
        }) => assert_eq!((on_needle, left_over), (gives, 0), "{text:?}"),
        Err(Stuck::Endless) => {}
        Err(stuck @ Stuck::RanOut { .. }) => panic!("{stuck} on {stitches}: {text:?}"),
    }
}
