//! Makes a row as short as it can be written.
//!
//! The family of texts: runs (`K7`), and brackets of runs (`(K7, k2tog) 4 times`). No bracket stands within a bracket:
//! nobody counts two things at once. A run is never cut into two terms. The length of a text is its number of terms:
//! one a run, one for each "so many times". Up to [`LONGEST_EXACT`] runs the shortest text is found exactly, by the
//! shortest path through the row: from each place the next step is one run, or one bracket, and brackets are the tandem
//! repeats of the row. Where two texts are equally short the one with fewer brackets wins. The tests hold it against an
//! exhaustive search. Longer rows are folded in one pass.
//!
//! Beside that family there is one more text: the ordinary bracket, and the times that differ ([`super::Varied`]). It is
//! taken where it is shorter. The sum is our own; "shortest text of one family" has no source in the trade.

use super::pairs::{MOST_TERMS, counted, folded, varied};
use super::{Item, Row, Run, terms};

/// Rows of more runs than this are not searched exactly: time grows with the square of the runs and more.
pub const LONGEST_EXACT: usize = 160;

/// A text of so few terms is taken as it is: what differs some of the times takes five terms at least.
const SHORT: usize = 5;

/// The shortest text for these runs; above [`LONGEST_EXACT`] runs, the shortest that folding finds.
///
/// Neighbouring runs of the same stitch are joined first, and empty runs dropped.
pub fn shortest(runs: &[Run]) -> Row {
    let runs = joined(runs);
    let items = shortest_items(&runs, MOST_TERMS);
    let items = items.or_else(|| varied(&runs, usize::MAX));
    Row {
        items: items.unwrap_or_else(|| counted(&runs)),
    }
}

/// The same where it has so many terms at most, without looking further where it has more.
pub(crate) fn shortest_within(runs: &[Run], most: usize) -> Option<Row> {
    let runs = joined(runs);
    let items = shortest_items(&runs, most).or_else(|| varied(&runs, most));
    items.filter(|items| terms(items) <= most).map(|items| Row { items })
}

/// The shortest with every bracket the same each time, or with the times that differ named; none where the former would
/// have more than `most` terms.
fn shortest_items(runs: &[Run], most: usize) -> Option<Vec<Item>> {
    let alike = if runs.len() > LONGEST_EXACT {
        folded(runs, most)?
    } else {
        exact(runs)
    };
    if terms(&alike) <= SHORT {
        return Some(alike);
    }
    match varied(runs, terms(&alike)) {
        Some(varied) if terms(&varied) < terms(&alike) => Some(varied),
        Some(_) | None => Some(alike),
    }
}

/// The shortest text with brackets but none within brackets.
fn exact(runs: &[Run]) -> Vec<Item> {
    let mut best = vec![Step::NOWHERE; runs.len() + 1];
    best[0].cost = Cost::default();
    let brackets = tandems(runs);
    for from in 0..runs.len() {
        let here = best[from].cost;
        let mut offer = |length: usize, period: usize, cost: Cost| {
            if cost < best[from + length].cost {
                best[from + length] = Step { cost, length, period };
            }
        };
        offer(1, 1, here.and(1, 0));
        for &(period, rounds) in &brackets[from] {
            for times in 2..=rounds {
                offer(times * period, period, here.and(period + 1, 1));
            }
        }
    }
    unfolded(runs, &best)
}

/// Writes down the text that was found.
fn unfolded(runs: &[Run], best: &[Step]) -> Vec<Item> {
    let mut items = Vec::new();
    let mut end = runs.len();
    while end > 0 {
        let Step { length, period, .. } = best[end];
        end -= length.max(1);
        items.push(if length == period {
            Item::Run(runs[end])
        } else {
            Item::Repeat {
                body: runs[end..end + period].iter().copied().map(Item::Run).collect(),
                times: u32::try_from(length / period).unwrap_or(u32::MAX),
            }
        });
    }
    items.reverse();
    items
}

/// Joins neighbours that are the same stitch.
fn joined(runs: &[Run]) -> Vec<Run> {
    let mut joined: Vec<Run> = Vec::with_capacity(runs.len());
    for run in runs.iter().filter(|run| run.count > 0) {
        match joined.last_mut() {
            Some(last) if last.stitch == run.stitch => last.count += run.count,
            _ => joined.push(*run),
        }
    }
    joined
}

/// How long a text is; fewer terms first, then fewer brackets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Cost {
    terms: usize,
    brackets: usize,
}

impl Cost {
    const fn and(self, terms: usize, brackets: usize) -> Self {
        Self {
            terms: self.terms + terms,
            brackets: self.brackets + brackets,
        }
    }
}

/// The last term of the best text up to a place: it starts `length` runs before and is `length / period` rounds of
/// a bracket, or a bare run when both are 1.
#[derive(Clone, Copy, Debug)]
struct Step {
    cost: Cost,
    length: usize,
    period: usize,
}

impl Step {
    const NOWHERE: Self = Self {
        cost: Cost {
            terms: usize::MAX,
            brackets: 0,
        },
        length: 0,
        period: 0,
    };
}

/// For each place the tandem repeats that start there, as (period, most rounds).
///
/// A period that is itself several rounds of a shorter one is left out: the shorter one is always the shorter text.
fn tandems(runs: &[Run]) -> Vec<Vec<(usize, usize)>> {
    let length = runs.len();
    // ahead[period]: how many runs from here on are the same as those `period` later.
    let mut ahead = vec![0_usize; length / 2 + 1];
    let mut found = vec![Vec::new(); length];
    for at in (0..length).rev() {
        for (period, ahead) in ahead.iter_mut().enumerate().skip(1) {
            let same = runs.get(at + period) == Some(&runs[at]);
            *ahead = if same { *ahead + 1 } else { 0 };
        }
        found[at] = tandems_at(&ahead);
    }
    found
}

fn tandems_at(ahead: &[usize]) -> Vec<(usize, usize)> {
    let mut found: Vec<(usize, usize)> = Vec::new();
    for (period, same) in ahead.iter().enumerate().skip(1) {
        let rounds = 1 + same / period;
        let is_several = |&(short, most): &(usize, usize)| period % short == 0 && most * short >= period;
        if rounds > 1 && !found.iter().any(is_several) {
            found.push((period, rounds));
        }
    }
    found
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::row::Stitch;
    use proptest::prelude::*;
    use std::collections::HashMap;

    /// The fewest terms of any text in which no bracket holds a bracket and every bracket is the same every time, by
    /// trying every first term of every stretch.
    ///
    /// Nothing is shared with the search above: no tandem table, no rule about which periods matter.
    pub(crate) fn fewest_terms(runs: &[Run]) -> usize {
        fn fewest(runs: &[Run], known: &mut HashMap<usize, usize>) -> usize {
            if runs.is_empty() {
                return 0;
            }
            if let Some(&terms) = known.get(&runs.len()) {
                return terms;
            }
            let mut best = 1 + fewest(&runs[1..], known);
            for period in 1..=runs.len() / 2 {
                let rounds = runs
                    .chunks_exact(period)
                    .take_while(|chunk| *chunk == &runs[..period])
                    .count();
                for times in 2..=rounds {
                    best = best.min(1 + period + fewest(&runs[times * period..], known));
                }
            }
            known.insert(runs.len(), best);
            best
        }
        fewest(&joined(runs), &mut HashMap::new())
    }

    fn unrolled(row: &Row) -> Vec<Run> {
        joined(&row.runs().collect::<Vec<_>>())
    }

    fn any_runs() -> impl Strategy<Value = Vec<Run>> {
        let run = (0_usize..3, 1_u32..3).prop_map(|(s, n)| Run::new([Stitch::Knit, Stitch::K2tog, Stitch::Yo][s], n));
        let part = prop::collection::vec(run, 1..5);
        // Repetition is made on purpose, or hardly any row would have a bracket.
        prop::collection::vec((part, 1_usize..4), 1..4)
            .prop_map(|parts| parts.into_iter().flat_map(|(part, times)| part.repeat(times)).collect())
    }

    proptest! {
        #[test]
        fn the_text_is_the_shortest_of_its_family(runs in any_runs()) {
            let row = shortest(&runs);
            let is_varied = row.items.iter().any(|item| matches!(item, Item::Varied(_)));
            prop_assert_eq!(unrolled(&row), joined(&runs));
            prop_assert!(row.depth() <= 1);
            let fewest = fewest_terms(&runs);
            prop_assert!(if is_varied { row.terms() < fewest } else { row.terms() == fewest }, "{}", row);
        }
    }

    #[test]
    fn no_bracket_holds_a_bracket() {
        let sevens = [Run::new(Stitch::Knit, 7), Run::new(Stitch::K2tog, 1)].repeat(3);
        let part: Vec<Run> = sevens
            .into_iter()
            .chain([Run::new(Stitch::Knit, 6), Run::new(Stitch::K2tog, 1)])
            .collect();
        assert_eq!(
            shortest(&part.repeat(4)).to_string(),
            "(K7, k2tog) 16 times, but K6 the 4th, 8th, 12th and 16th time"
        );
    }
}
