//! The stitches after each shaping round, one by one, folded below the answer unless that sends there.

use super::plain::{element, folded, items};
use crate::words::schedule;
use loopwright::shaping::Schedule;
use yew::prelude::*;

/// Rounds that are listed: nobody knits from a longer list.
pub const MOST: usize = 200;

/// The counts of a schedule, below a headline that names the rounds or sends to these.
pub fn counted(schedule: &Schedule, headline_names_rounds: bool) -> Html {
    listed("listed ticked", schedule::listed(schedule, MOST), headline_names_rounds)
}

/// The same, of rounds that say more than a count: fewer of them stand beside each other.
pub fn counts(rounds: Vec<String>, headline_names_rounds: bool) -> Html {
    listed("listed ticked long", rounds, headline_names_rounds)
}

fn listed(class: &'static str, rounds: Vec<String>, headline_names_rounds: bool) -> Html {
    if rounds.is_empty() {
        return Html::default();
    }
    let list = element("div", class, vec![items("ul", rounds)]);
    match headline_names_rounds {
        true => folded("meanings", schedule::COUNTS, vec![list]),
        false => list,
    }
}
