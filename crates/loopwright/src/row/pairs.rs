//! A row as pairs of runs, plain and change in turn, and the two texts that take one pass to find: stretches with a short
//! period, and one ordinary pair with the times that differ.
//!
//! Both take time in proportion to the runs, so that rows too long to be searched for their shortest text cost little.

use super::{Item, Run, Varied, terms};

/// Longer bodies of a bracket are not worth printing, in pairs.
const LONGEST_BODY: usize = 12;

/// A text of more terms is given up: nobody knits from it.
pub(super) const MOST_TERMS: usize = 120;

/// The row in stretches of a short period, of which the longest is taken first; its first pair apart, since the piece at
/// the marker fits no repeat. None where its stretches have more than `most` terms.
pub(super) fn folded(runs: &[Run], most: usize) -> Option<Vec<Item>> {
    let (pairs, odd) = runs.as_chunks::<2>();
    let [whole, apart] = [0, 1].map(|head| {
        let (apart, rest) = pairs.split_at_checked(head)?;
        Some([bare(apart.as_flattened()), by_stretches(rest, most)?, bare(odd)].concat())
    });
    [whole, apart].into_iter().flatten().min_by_key(|items| terms(items))
}

/// Each pair by itself, equal neighbours counted.
pub(super) fn counted(runs: &[Run]) -> Vec<Item> {
    let (pairs, odd) = runs.as_chunks::<2>();
    let stretches = pairs.chunk_by(|one, next| one == next);
    let counted = stretches.flat_map(|stretch| bracket(&stretch[0], stretch.len()));
    counted.chain(bare(odd)).collect()
}

fn bare(runs: &[Run]) -> Vec<Item> {
    runs.iter().copied().map(Item::Run).collect()
}

fn by_stretches(mut pairs: &[[Run; 2]], most: usize) -> Option<Vec<Item>> {
    let (mut items, mut long) = (Vec::new(), 0);
    while !pairs.is_empty() {
        let (period, times) = longest_stretch(pairs);
        let (stretch, rest) = pairs.split_at(period * times);
        let mut stretch = bracket(stretch[..period].as_flattened(), times);
        long += terms(&stretch);
        if long > most {
            return None;
        }
        items.append(&mut stretch);
        pairs = rest;
    }
    Some(items)
}

/// The period, in pairs, that carries furthest from here, and how often it comes; of equally far the shortest.
fn longest_stretch(pairs: &[[Run; 2]]) -> (usize, usize) {
    let mut longest = (1, 1);
    for period in 1..=LONGEST_BODY.min(pairs.len() / 2) {
        let same = pairs
            .iter()
            .zip(&pairs[period..])
            .take_while(|(one, later)| one == later);
        let times = 1 + same.count() / period;
        if times > 1 && period * times > longest.0 * longest.1 {
            longest = (period, times);
        }
    }
    longest
}

/// A bracket, or its bare contents when it is worked once.
fn bracket(body: &[Run], times: usize) -> Vec<Item> {
    if times == 1 {
        return bare(body);
    }
    let times = u32::try_from(times).unwrap_or(u32::MAX);
    vec![Item::Repeat {
        body: bare(body),
        times,
    }]
}

/// The ordinary pair with the times that differ, for each stretch of one change; with the first pair apart where that is of
/// another length. None where the plain runs have more than two lengths, so that there is nothing ordinary, or where `most`
/// times would not be enough to name.
pub(super) fn varied(runs: &[Run], most: usize) -> Option<Vec<Item>> {
    let (pairs, odd) = runs.as_chunks::<2>();
    let from = |head: usize| {
        let (apart, rest) = pairs.split_at_checked(head)?;
        let stretches = rest.chunk_by(|[_, one], [_, next]| one == next);
        let told: Option<Vec<_>> = stretches.map(|stretch| varied_stretch(stretch, most)).collect();
        Some([bare(apart.as_flattened()), told?.concat(), bare(odd)].concat())
    };
    from(0).or_else(|| from(1))
}

/// The same for a stretch in which the change is one. What differs has to be a plain run: nobody counts changes to the
/// change.
fn varied_stretch(pairs: &[[Run; 2]], most: usize) -> Option<Vec<Item>> {
    let [first, _] = *pairs.first()?;
    let Some([other, _]) = pairs.iter().find(|[plain, _]| *plain != first).copied() else {
        return Some(bracket(&pairs[0], pairs.len()));
    };
    let is_plain = first.stitch.is_plain() && first.stitch == other.stitch;
    if !is_plain || pairs.iter().any(|[plain, _]| *plain != first && *plain != other) {
        return None;
    }
    let others = pairs.iter().filter(|[plain, _]| *plain == other).count();
    if others.min(pairs.len() - others) > most {
        return None;
    }
    let (usual, instead) = if 2 * others > pairs.len() {
        (other, first)
    } else {
        (first, other)
    };
    let times = (1_u32..).zip(pairs);
    Some(vec![Item::Varied(Varied {
        body: vec![usual, pairs[0][1]],
        times: u32::try_from(pairs.len()).unwrap_or(u32::MAX),
        instead,
        at: times
            .filter(|(_, [plain, _])| *plain == instead)
            .map(|(time, _)| time)
            .collect(),
    })])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::{Row, Stitch, shortest};
    use proptest::prelude::*;

    fn plain_and_change(plain: u32) -> [Run; 2] {
        [Run::new(Stitch::Knit, plain), Run::new(Stitch::K2tog, 1)]
    }

    #[test]
    fn a_long_row_in_two_blocks_is_two_brackets() {
        let runs = [plain_and_change(7).repeat(4_000), plain_and_change(6).repeat(9_000)].concat();
        assert_eq!(
            shortest(&runs).to_string(),
            "(K7, k2tog) 4000 times, (K6, k2tog) 9000 times"
        );
    }

    #[test]
    fn a_long_row_with_pieces_at_the_marker_keeps_its_period() {
        let part = [plain_and_change(7).repeat(2), plain_and_change(6).repeat(3)].concat();
        let mut runs = part.repeat(500);
        runs[0].count = 3;
        runs.push(Run::new(Stitch::Knit, 4));
        let row = shortest(&runs);
        assert!(row.terms() < 25, "{row}");
        assert!(row.runs().eq(runs));
    }

    #[test]
    fn the_ordinary_run_is_named_where_changes_are_dense() {
        let part = [plain_and_change(1).repeat(4), plain_and_change(2).to_vec()].concat();
        let runs = [
            part.repeat(3),
            plain_and_change(1).repeat(3),
            vec![Run::new(Stitch::Knit, 4)],
        ]
        .concat();
        assert_eq!(
            shortest(&runs).to_string(),
            "(K1, k2tog) 18 times, but K2 the 5th, 10th and 15th time, K4"
        );
    }

    proptest! {
        #[test]
        fn folding_changes_the_text_and_not_the_row(
            parts in prop::collection::vec((1_u32..3, 1_usize..40), 1..12),
            times in 1_usize..6,
        ) {
            let once: Vec<Run> = parts.iter().flat_map(|(p, n)| plain_and_change(*p).repeat(*n)).collect();
            let runs = once.repeat(times);
            for items in [folded(&runs, MOST_TERMS), varied(&runs, usize::MAX), Some(counted(&runs))].into_iter().flatten() {
                let row = Row { items };
                prop_assert!(row.runs().eq(runs.iter().copied()));
                prop_assert!(row.depth() <= 1);
            }
        }
    }
}
