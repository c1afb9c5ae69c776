//! Shortens rows too long to be searched for their shortest text.
//!
//! Two foldings are tried on the row, with and without its first and its last run (the pieces either side of a marker
//! fit no repeat): the one period of the whole row, written once with how often it comes; and pairs of runs, counted,
//! then pairs of those, counted again. Both take time in proportion to the runs. The shorter text is kept; that it is
//! the shortest possible is not claimed here.

use super::shorten::exact_without_nesting;
use super::{Item, Run, terms};

/// Bodies longer than this are not worth printing.
const LONGEST_BODY: usize = 160;

/// The shorter of the foldings of these runs, or the runs as they stand if nothing repeats.
pub(super) fn fold(runs: &[Run]) -> Vec<Item> {
    let mut best = bare(runs);
    let mut fewest = terms(&best);
    for head in 0..=1 {
        for tail in 0..=1 {
            let middle = &runs[head..runs.len() - tail];
            for folded in [by_period(middle), by_pairs(middle)].into_iter().flatten() {
                let length = head + tail + terms(&folded);
                if length < fewest {
                    fewest = length;
                    best = [bare(&runs[..head]), folded, bare(&runs[runs.len() - tail..])].concat();
                }
            }
        }
    }
    best
}

fn bare(runs: &[Run]) -> Vec<Item> {
    runs.iter().copied().map(Item::Run).collect()
}

/// `(body) so many times` and what is left over of the body, if the whole row has a short period.
fn by_period(runs: &[Run]) -> Option<Vec<Item>> {
    let period = shortest_period(runs);
    let rounds = runs.len() / period.max(1);
    if period == 0 || period > LONGEST_BODY || rounds < 2 {
        return None;
    }
    let mut items = vec![Item::Repeat {
        body: exact_without_nesting(&runs[..period]),
        times: u32::try_from(rounds).ok()?,
    }];
    items.extend(exact_without_nesting(&runs[rounds * period..]));
    Some(items)
}

/// The smallest shift by which the row lies on itself, by its border table (Knuth, Morris and Pratt 1977, from
/// memory).
fn shortest_period(runs: &[Run]) -> usize {
    let mut border = vec![0_usize; runs.len()];
    for at in 1..runs.len() {
        let mut length = border[at - 1];
        while length > 0 && runs[at] != runs[length] {
            length = border[length - 1];
        }
        border[at] = length + usize::from(runs[at] == runs[length]);
    }
    runs.len() - border.last().unwrap_or(&0)
}

/// Counts pairs of runs, then pairs of what was counted.
fn by_pairs(runs: &[Run]) -> Option<Vec<Item>> {
    let (pairs, odd) = runs.as_chunks::<2>();
    let counted = count_equal(pairs);
    let folded = |offset: usize| {
        let (before, rest) = counted.split_at(offset.min(counted.len()));
        let (twos, last) = rest.as_chunks::<2>();
        let mut items = brackets(before);
        for (two, times) in count_equal(twos) {
            items.append(&mut bracket(brackets(&two), times));
        }
        items.append(&mut brackets(last));
        items.append(&mut bare(odd));
        items
    };
    [folded(0), folded(1)].into_iter().min_by_key(|items| terms(items))
}

/// Neighbours that are equal, with how many there are.
fn count_equal<T: PartialEq + Copy>(parts: &[T]) -> Vec<(T, u32)> {
    let mut counted: Vec<(T, u32)> = Vec::new();
    for part in parts {
        match counted.last_mut() {
            Some((same, times)) if same == part => *times += 1,
            _ => counted.push((*part, 1)),
        }
    }
    counted
}

fn brackets(pairs: &[([Run; 2], u32)]) -> Vec<Item> {
    let mut items = Vec::new();
    for (pair, times) in pairs {
        items.append(&mut bracket(bare(pair), *times));
    }
    items
}

/// A bracket, or its bare contents when it is worked once.
fn bracket(body: Vec<Item>, times: u32) -> Vec<Item> {
    if times == 1 {
        return body;
    }
    vec![Item::Repeat { body, times }]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::{Row, Stitch};
    use proptest::prelude::*;

    fn plain_and_change(plain: u32) -> [Run; 2] {
        [Run::new(Stitch::Knit, plain), Run::new(Stitch::K2tog, 1)]
    }

    #[test]
    fn a_long_row_in_two_blocks_is_two_brackets() {
        let runs = [plain_and_change(7).repeat(4_000), plain_and_change(6).repeat(9_000)].concat();
        let row = Row { items: fold(&runs) };
        assert_eq!(row.to_string(), "(K7, k2tog) 4000 times, (K6, k2tog) 9000 times");
    }

    #[test]
    fn a_long_row_with_pieces_at_the_marker_keeps_its_period() {
        let part = [plain_and_change(7).repeat(2), plain_and_change(6).repeat(3)].concat();
        let mut runs = part.repeat(500);
        runs[0].count = 3;
        runs.push(Run::new(Stitch::Knit, 4));
        let row = Row { items: fold(&runs) };
        assert!(row.terms() < 25, "{row}");
        assert!(row.runs().eq(runs));
    }

    proptest! {
        #[test]
        fn folding_changes_the_text_and_not_the_row(
            parts in prop::collection::vec((1_u32..3, 1_usize..40), 1..12),
            times in 1_usize..6,
        ) {
            let once: Vec<Run> = parts.iter().flat_map(|(p, n)| plain_and_change(*p).repeat(*n)).collect();
            let runs = once.repeat(times);
            let row = Row { items: fold(&runs) };
            prop_assert!(row.runs().eq(runs));
            prop_assert!(row.depth() <= 2);
        }
    }
}
