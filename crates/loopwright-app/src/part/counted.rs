//! The stitches after each shaping round, one by one, folded below the answer unless that sends there.

use super::plain::{el, folded, items};
use crate::words::{rounds as words, schedule};
use loopwright::shaping::Schedule;
use yew::prelude::*;

/// Rounds that are listed: nobody knits from a longer list.
const MOST: usize = 200;

/// The counts of a schedule, below its headline.
pub fn counted(schedule: &Schedule, headline: &str) -> Html {
    let mut listed = schedule::listed(schedule, MOST);
    if listed.is_empty() {
        return Html::default();
    }
    if listed.len() == MOST {
        listed.push(words::AND_ON.into());
    }
    let list = el("div", "listed", vec![items("ul", listed)]);
    if words::is_below(headline) {
        return list;
    }
    folded("meanings", words::COUNTS, vec![list])
}
