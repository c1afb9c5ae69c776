//! Her own words, as she writes them down: `bobbly uses 1 gives 5`, one to a line.

use super::OwnStitch;
use crate::bounds::Bounds;
use crate::units::count;
use crate::units::parse::Unreadable;

/// Stitches that a word of hers may use or give.
pub const OWN: Bounds<u32> = Bounds::new(0, 100);

/// Words that say which number is which; they may be left out.
const SAYING: [&str; 9] = ["uses", "use", "takes", "gives", "give", "makes", "and", "sts", "st"];

/// Reads words of hers: each a word, the stitches that it takes from the left needle, and those that it leaves on the
/// right one.
///
/// # Errors
/// What is no such number, or breaks off.
pub fn read_own(text: &str) -> Result<Vec<OwnStitch>, Unreadable> {
    let is_between = |sign: char| sign.is_whitespace() || matches!(sign, ',' | ';' | ':' | '=');
    let pieces: Vec<&str> = text
        .split(is_between)
        .filter(|piece| !piece.is_empty() && !SAYING.contains(&piece.to_lowercase().as_str()))
        .collect();
    pieces.chunks(3).map(one).collect()
}

fn one(pieces: &[&str]) -> Result<OwnStitch, Unreadable> {
    let [word, uses, gives] = pieces else {
        return Err(Unreadable::Unfinished);
    };
    Ok(OwnStitch {
        word: (*word).to_owned(),
        uses: count::read(uses, OWN)?.value,
        gives: count::read(gives, OWN)?.value,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_has_two_numbers_behind_it() {
        let own = |word: &str, uses, gives| OwnStitch {
            word: word.into(),
            uses,
            gives,
        };
        assert_eq!(read_own("bobbly uses 1 gives 5"), Ok(vec![own("bobbly", 1, 5)]));
        assert_eq!(
            read_own("bobbly: uses 1, gives 5\npeak 3 1"),
            Ok(vec![own("bobbly", 1, 5), own("peak", 3, 1)])
        );
        assert_eq!(read_own(" "), Ok(vec![]));
        assert_eq!(read_own("bobbly uses 1"), Err(Unreadable::Unfinished));
        assert_eq!(read_own("bobbly uses one gives 5"), Err(Unreadable::NotANumber));
        assert!(matches!(read_own("bobbly 1 101"), Err(Unreadable::TooLarge { .. })));
    }
}
