//! Which hand she knits with, chosen once for all that is followed.

use super::Settings;
use loopwright::choice::{Choice, Key};
use loopwright::terms::Hand;

/// The setting it is stored under.
pub const HAND: &str = "hand";

impl Settings {
    /// The hand that is chosen; right before anything is.
    pub fn hand(&self) -> Hand {
        self.text(HAND).and_then(Hand::from_key).unwrap_or(Hand::START)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{Fields, Typed};

    #[test]
    fn the_hand_is_read_by_the_keys_it_is_stored_under() {
        for (key, hand) in [("right", Hand::Right), ("left", Hand::Left), ("both", Hand::Right)] {
            let stored = Fields::from_iter([("hand".to_owned(), Typed::plain(key))]);
            assert_eq!(Settings::new(stored).hand(), hand, "{key}");
        }
        assert_eq!(Settings::default().hand(), Hand::Right);
    }
}
