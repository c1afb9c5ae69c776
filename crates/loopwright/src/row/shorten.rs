//! Makes a row as short as it can be written.
//!
//! The family of texts: runs (`K7`), brackets of runs (`(K7, k2tog) 4 times`), and brackets that hold such brackets
//! once (`((K7, k2tog) 3 times, K6, k2tog) 4 times`), deeper nobody can knit from. A run is never cut into two terms.
//! The length of a text is its number of terms: one a run, one for each "so many times".
//!
//! Up to [`LONGEST_EXACT`] runs the shortest text is found exactly, by the shortest path through the row: from each
//! place the next step is one run, or one bracket, and brackets are the tandem repeats of the row. Where two texts
//! are equally short the one with fewer brackets wins. The tests hold it against an exhaustive search.
//! The sum is our own; "shortest text of one family" has no source in the trade.

use super::fold::fold;
use super::{Item, Row, Run};

/// Rows of more runs than this are not searched exactly: time grows with the square of the runs and more.
pub const LONGEST_EXACT: usize = 160;

/// The shortest text for these runs; above [`LONGEST_EXACT`] runs, the shortest that folding finds.
///
/// Neighbouring runs of the same stitch are joined first, and empty runs dropped.
pub fn shortest(runs: &[Run]) -> Row {
    let runs = joined(runs);
    let items = if runs.len() > LONGEST_EXACT {
        fold(&runs)
    } else {
        exact(runs)
    };
    Row { items }
}

/// The shortest text of the family, brackets within brackets once.
fn exact(runs: Vec<Run>) -> Vec<Item> {
    let search = Search::new(runs);
    // What a bracket may hold: for each place, the best text of brackets without brackets from there on.
    let inner: Vec<Vec<Step>> = (0..search.runs.len())
        .map(|start| search.paths(start, search.longest_body(start), &|_, period| Cost::runs(period)))
        .collect();
    let outer = search.paths(0, search.runs.len(), &|start, period| inner[start][period].cost);
    search.unfold(0, search.runs.len(), &outer, Some(&inner))
}

/// The shortest text with brackets but none within brackets: what may stand inside a bracket.
pub(super) fn exact_without_nesting(runs: &[Run]) -> Vec<Item> {
    let search = Search::new(runs.to_vec());
    let paths = search.paths(0, search.runs.len(), &|_, period| Cost::runs(period));
    search.unfold(0, search.runs.len(), &paths, None)
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Cost {
    terms: usize,
    brackets: usize,
}

impl Cost {
    const ZERO: Self = Self::runs(0);
    const NONE: Self = Self::runs(usize::MAX / 4);

    const fn runs(terms: usize) -> Self {
        Self { terms, brackets: 0 }
    }

    fn and(self, other: Self) -> Self {
        Self {
            terms: self.terms + other.terms,
            brackets: self.brackets + other.brackets,
        }
    }

    /// The cost of a bracket around this.
    fn bracketed(self) -> Self {
        Self {
            terms: self.terms + 1,
            brackets: self.brackets + 1,
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

struct Search {
    runs: Vec<Run>,
    /// `brackets[start]`: the periods of tandem repeats that start there, each with the most rounds it has.
    brackets: Vec<Vec<(usize, usize)>>,
}

impl Search {
    fn new(runs: Vec<Run>) -> Self {
        let brackets = tandems(&runs);
        Self { runs, brackets }
    }

    /// The longest body of a bracket that starts here: no text of more runs is ever asked for.
    fn longest_body(&self, start: usize) -> usize {
        self.brackets[start]
            .iter()
            .map(|&(period, _)| period)
            .max()
            .unwrap_or(0)
    }

    /// The best texts of every stretch of up to `longest` runs that starts at `start`, where a bracket's body of `period`
    /// runs costs `body`.
    fn paths(&self, start: usize, longest: usize, body: &dyn Fn(usize, usize) -> Cost) -> Vec<Step> {
        let nothing = Step {
            cost: Cost::NONE,
            length: 0,
            period: 0,
        };
        let mut best = vec![nothing; longest + 1];
        best[0].cost = Cost::ZERO;
        for from in 0..longest {
            let here = best[from].cost;
            let mut offer = |length: usize, period: usize, cost: Cost| {
                if cost < best[from + length].cost {
                    best[from + length] = Step { cost, length, period };
                }
            };
            offer(1, 1, here.and(Cost::runs(1)));
            for &(period, rounds) in &self.brackets[start + from] {
                let cost = here.and(body(start + from, period).bracketed());
                for times in 2..=rounds.min((longest - from) / period) {
                    offer(times * period, period, cost);
                }
            }
        }
        best
    }

    /// Writes down the text that `paths` found for `length` runs from `start`.
    fn unfold(&self, start: usize, length: usize, paths: &[Step], inner: Option<&[Vec<Step>]>) -> Vec<Item> {
        let mut items = Vec::new();
        let mut end = length;
        while end > 0 {
            let step = paths[end];
            end -= step.length;
            items.push(self.term(start + end, step, inner));
        }
        items.reverse();
        items
    }

    fn term(&self, at: usize, step: Step, inner: Option<&[Vec<Step>]>) -> Item {
        if step.length == step.period {
            return Item::Run(self.runs[at]);
        }
        let body = match inner {
            Some(inner) => self.unfold(at, step.period, &inner[at], None),
            None => self.runs[at..at + step.period].iter().copied().map(Item::Run).collect(),
        };
        Item::Repeat {
            body,
            times: u32::try_from(step.length / step.period).unwrap_or(u32::MAX),
        }
    }
}

/// For each place the tandem repeats that start there, as (period, most rounds).
///
/// A period that is itself several rounds of a shorter one is left out: the shorter one is always the shorter text.
fn tandems(runs: &[Run]) -> Vec<Vec<(usize, usize)>> {
    let ahead = common_ahead(runs);
    (0..runs.len())
        .map(|at| {
            let mut found: Vec<(usize, usize)> = Vec::new();
            let longest = (runs.len() - at) / 2;
            for (period, same) in ahead[at].iter().enumerate().take(longest + 1).skip(1) {
                let rounds = 1 + same / period;
                let within_shorter = found
                    .iter()
                    .any(|&(short, most)| period % short == 0 && most * short >= period);
                if rounds > 1 && !within_shorter {
                    found.push((period, rounds));
                }
            }
            found
        })
        .collect()
}

/// `ahead[at][period]`: how many runs from `at` on are the same as those `period` later.
fn common_ahead(runs: &[Run]) -> Vec<Vec<usize>> {
    let length = runs.len();
    let mut ahead = vec![Vec::new(); length];
    for at in (0..length).rev() {
        ahead[at] = (0..=length - at)
            .map(|period| {
                let later = at + period;
                if later >= length || runs[at] != runs[later] {
                    return 0;
                }
                1 + ahead
                    .get(at + 1)
                    .and_then(|next: &Vec<usize>| next.get(period))
                    .unwrap_or(&0)
            })
            .collect();
    }
    ahead
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::row::Stitch;
    use proptest::prelude::*;
    use std::collections::HashMap;

    /// The fewest terms of any text of the family, by trying every first term of every stretch.
    ///
    /// Nothing is shared with the search above: no tandem table, no rule about which periods matter.
    pub(crate) fn fewest_terms(runs: &[Run]) -> usize {
        fn fewest(runs: &[Run], depth: usize, known: &mut HashMap<(usize, usize, usize), usize>) -> usize {
            if runs.is_empty() {
                return 0;
            }
            // Stretches of one row are told apart by where they lie.
            let key = (runs.as_ptr() as usize, runs.len(), depth);
            if let Some(&terms) = known.get(&key) {
                return terms;
            }
            let mut best = 1 + fewest(&runs[1..], depth, known);
            for period in 1..=runs.len() / 2 {
                let rounds = runs
                    .chunks_exact(period)
                    .take_while(|chunk| *chunk == &runs[..period])
                    .count();
                if depth == 0 || rounds < 2 {
                    continue;
                }
                let body = fewest(&runs[..period], depth - 1, known);
                for times in 2..=rounds {
                    best = best.min(1 + body + fewest(&runs[times * period..], depth, known));
                }
            }
            known.insert(key, best);
            best
        }
        fewest(&joined(runs), 2, &mut HashMap::new())
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
            prop_assert_eq!(unrolled(&row), joined(&runs));
            prop_assert!(row.depth() <= 2);
            prop_assert_eq!(row.terms(), fewest_terms(&runs), "{}", row);
        }
    }

    #[test]
    fn brackets_hold_brackets_once() {
        let sevens = [Run::new(Stitch::Knit, 7), Run::new(Stitch::K2tog, 1)].repeat(3);
        let part: Vec<Run> = sevens
            .into_iter()
            .chain([Run::new(Stitch::Knit, 6), Run::new(Stitch::Ssk, 1)])
            .collect();
        assert_eq!(
            shortest(&part.repeat(4)).to_string(),
            "((K7, k2tog) 3 times, K6, ssk) 4 times"
        );
    }
}
