//! Lays an order of runs along the needle: where it begins at the marker, what stands at the edges, which way each
//! change leans; and picks, among the places a ring may begin, the one with the shortest text.

use super::order::{self, Batch, Fraction, Order};
use super::{Edge, Face, Knitting, LONGEST_TEXT, Spread, Way};
use crate::row::{Item, LONGEST_EXACT, Row, Run, shortest, shortest_within};

/// Beginnings tried for a ring too long to try them all.
const BEGINNINGS: usize = 2;

/// Rings of more runs than this are cut at the first place that will do: nobody counts so far.
const TRY_ONE: u32 = 500;

/// Of so long a ring, batches up to which it is written batch by batch.
const FEW_BATCHES: usize = 19;

/// Runs up to which every beginning of a ring is tried that may be the best one.
const TRY_ALL: u32 = 40;

/// Every way worth offering to work this spread, the most even last.
pub(super) fn ways(spread: &Spread) -> Vec<Way> {
    match spread.knitting {
        Knitting::Round { end_on_change } => ring_ways(spread, end_on_change && !spread.change.is_in_gap()),
        Knitting::Flat { edge: Edge::Half } => ring_ways(spread, false),
        Knitting::Flat {
            edge: Edge::AtLeast(least),
        } => edged_ways(spread, least),
        Knitting::Flat { edge: Edge::Mirrored } => mirrored_ways(spread),
    }
}

fn way(order: Order, row: Row, drift: Fraction) -> Way {
    Way {
        order,
        readable: row.terms() <= LONGEST_TEXT,
        row,
        drift,
    }
}

/// Orders that close on themselves: in the round, and flat with half a run at each end.
fn ring_ways(spread: &Spread, end_on_change: bool) -> Vec<Way> {
    order::orders(spread.plain, spread.changes)
        .into_iter()
        .map(|(order, ring)| {
            let drift = order::drift(&ring);
            way(order, shortest_ring(spread, &ring, end_on_change), drift)
        })
        .collect()
}

/// The shortest text among the beginnings of a ring; of equally short ones one that is the same every time.
fn shortest_ring(spread: &Spread, ring: &[Batch], end_on_change: bool) -> Row {
    shortest_beginning(spread, ring, end_on_change, |runs| Some(shortest(runs))).unwrap_or_default()
}

/// The shortest of the texts that are written for the beginnings of a ring.
fn shortest_beginning(
    spread: &Spread,
    ring: &[Batch],
    end_on_change: bool,
    write: impl Fn(&[Run]) -> Option<Row>,
) -> Option<Row> {
    if spread.changes > TRY_ONE && ring.len() <= FEW_BATCHES && ring.iter().all(|batch| batch.run > 0) {
        return Some(by_batches(spread, ring, end_on_change));
    }
    let begun = beginnings(ring, spread.changes, end_on_change).into_iter().map(|runs| {
        let (first, last) = if end_on_change {
            (runs.first, 0)
        } else {
            halves(runs.first)
        };
        write(&laid(spread, first, &runs.rest, last, &|_| spread.change))
    });
    begun.flatten().min_by_key(|row| {
        (
            row.terms(),
            row.items.iter().any(|item| matches!(item, Item::Varied(_))),
        )
    })
}

/// The row that is suggested in the round, where one strays so little that nobody sees it and can be read: the others are
/// written only as far as they are shorter.
pub(super) fn suggested_ring(spread: &Spread) -> Option<Row> {
    let unseen = order::unseen(spread.plain, spread.changes);
    let mut best: Option<(usize, Fraction, Row)> = None;
    for (_, ring) in order::orders(spread.plain, spread.changes) {
        let drift = order::drift(&ring);
        let most = best.as_ref().map_or(LONGEST_TEXT, |(terms, ..)| *terms);
        if drift > unseen {
            continue;
        }
        let Some(row) = shortest_beginning(spread, &ring, false, |runs| shortest_within(runs, most)) else {
            continue;
        };
        let terms = row.terms();
        let is_better = best.as_ref().is_none_or(|best| (terms, drift) < (best.0, best.1));
        if terms <= LONGEST_TEXT && is_better {
            best = Some((terms, drift, row));
        }
    }
    best.map(|(.., row)| row)
}

/// A long ring of few batches, written batch by batch: its runs are never told one by one.
fn by_batches(spread: &Spread, ring: &[Batch], end_on_change: bool) -> Row {
    let may_split = may_split(ring, end_on_change);
    let at = ring.iter().position(|batch| may_split(batch.run)).unwrap_or(0);
    let cut = ring[at];
    let (first, last) = if end_on_change { (cut.run, 0) } else { halves(cut.run) };
    let opened = Batch {
        times: cut.times - 1,
        ..cut
    };
    let plain = spread.plain_stitch();
    let pair = |run| [Run::new(plain, run), Run::new(spread.change, 1)].map(Item::Run);
    let mut items = pair(first).to_vec();
    for Batch { run, times } in [&[opened][..], &ring[at + 1..], &ring[..at]].concat() {
        match times {
            0 => {}
            1 => items.extend(pair(run)),
            _ => items.push(Item::Repeat {
                body: pair(run).to_vec(),
                times,
            }),
        }
    }
    items.push(Item::Run(Run::new(plain, last)));
    items.retain(|item| !matches!(item, Item::Run(run) if run.count == 0));
    Row { items }
}

/// A run in two pieces, the longer one last, so that the round never ends on a change if it can be helped.
pub(super) fn halves(run: u32) -> (u32, u32) {
    (run / 2, run - run / 2)
}

/// A ring cut open: the run at the marker, and the others in order.
struct Cut {
    first: u32,
    rest: Vec<u32>,
}

/// Which runs may stand at the marker: where one is split there, it must have a stitch for either side if any has.
fn may_split(ring: &[Batch], end_on_change: bool) -> impl Fn(u32) -> bool {
    let longest = ring.iter().map(|batch| batch.run).max().unwrap_or(0);
    move |run| end_on_change || run >= 2 || longest < 2 && run == longest
}

/// Batches up to which a cut amid them may be the best one; of longer ones it would make two brackets.
const SMALL_BATCH: usize = 4;

/// The places to cut a ring open: anywhere in a small batch, and at the ends of a large one.
fn beginnings(ring: &[Batch], changes: u32, end_on_change: bool) -> Vec<Cut> {
    let may_split = may_split(ring, end_on_change);
    let most = if changes <= TRY_ALL {
        TRY_ALL as usize
    } else if changes <= TRY_ONE {
        BEGINNINGS
    } else {
        1
    };
    let (mut places, mut start) = (Vec::new(), 0);
    for batch in ring {
        let end = start + batch.times as usize;
        match end - start {
            _ if !may_split(batch.run) => {}
            0..=SMALL_BATCH => places.extend(start..end),
            _ => places.extend([start, end - 1]),
        }
        start = end;
    }
    places.truncate(most);
    let ring = unrolled(ring);
    let cut = |at: usize| Cut {
        first: ring[at],
        rest: [&ring[at + 1..], &ring[..at]].concat(),
    };
    places.into_iter().map(cut).collect()
}

/// Plain `first`, a change, then each run of `between` with a change after it, then plain `last`.
fn laid(
    spread: &Spread,
    first: u32,
    between: &[u32],
    last: u32,
    change: &dyn Fn(usize) -> crate::row::Stitch,
) -> Vec<Run> {
    let plain = spread.plain_stitch();
    let mut runs = Vec::with_capacity(2 * between.len() + 3);
    for (place, run) in std::iter::once(&first).chain(between).enumerate() {
        runs.push(Run::new(plain, *run));
        runs.push(Run::new(change(place), 1));
    }
    runs.push(Run::new(plain, last));
    runs
}

/// Flat with at least so many plain stitches at each end: half a run where that is enough, else just so many, and
/// what is left shared between the changes.
fn edged_ways(spread: &Spread, least: u32) -> Vec<Way> {
    let least = least.max(u32::from(spread.change.is_in_gap()));
    let shortest_half = spread.plain / spread.changes / 2;
    if shortest_half >= least || spread.changes == 1 {
        return ring_ways(spread, false);
    }
    let gaps = spread.changes - 1;
    order::orders(spread.plain - 2 * least, gaps)
        .into_iter()
        .map(|(order, line)| {
            let drift = order::drift(&line);
            let between = unrolled(&line);
            let row = shortest(&laid(spread, least, &between, least, &|_| spread.change));
            way(order, row, drift)
        })
        .collect()
}

fn unrolled(batches: &[Batch]) -> Vec<u32> {
    let mut runs = Vec::new();
    for batch in batches {
        runs.resize(runs.len() + batch.times as usize, batch.run);
    }
    runs
}

/// Flat, the second half the mirror of the first.
fn mirrored_ways(spread: &Spread) -> Vec<Way> {
    let mirror = Mirror::of(spread);
    let even = mirror.most_even();
    let blocks = mirror.blocks();
    let mut lines = vec![(Order::MostEven, even)];
    if blocks != lines[0].1 {
        lines.insert(0, (Order::TwoBlocks, blocks));
    }
    lines
        .into_iter()
        .map(|(order, between)| {
            let drift = order::drift(&order::batches(between.iter().copied()));
            way(order, shortest(&mirror.laid(spread, &between)), drift)
        })
        .collect()
}

/// The plain stitches of a mirrored row: an edge piece at each end, and runs between the changes.
pub(super) struct Mirror {
    first: u32,
    last: u32,
    between: u32,
    gaps: u32,
    /// A kfb is a plain stitch and a bar: it is spaced by its bar, and takes its stitch from the run before it.
    by_bar: bool,
}

impl Mirror {
    pub(super) fn of(spread: &Spread) -> Self {
        let by_bar = spread.change.uses() == 1;
        let plain = spread.plain + if by_bar { spread.changes } else { 0 };
        let gaps = spread.changes - 1;
        let least = u32::from(by_bar || spread.change.is_in_gap());
        let edge = if gaps == 0 {
            plain / 2
        } else {
            (plain / spread.changes / 2).max(least)
        };
        let between = plain - 2 * edge;
        // An odd plain rest with a change in the middle: one end gets the stitch that cannot be mirrored.
        let odd = u32::from(between % 2 == 1 && gaps.is_multiple_of(2));
        Self {
            first: edge,
            last: edge + odd,
            between: between - odd,
            gaps,
            by_bar,
        }
    }

    /// Whether one end has a stitch more than the other.
    pub(super) fn is_out_by_one(&self) -> bool {
        self.first != self.last
    }

    /// Runs that end at their even share rounded to the nearest stitch, halves towards the middle.
    fn most_even(&self) -> Vec<u32> {
        let (between, gaps) = (u64::from(self.between), u64::from(self.gaps));
        let end = |run: u64| {
            let doubled = 2 * run * between;
            let down = 2 * run > gaps && (doubled + gaps).is_multiple_of(2 * gaps);
            (doubled + gaps) / (2 * gaps) - u64::from(down)
        };
        (0..gaps).map(|run| (end(run + 1) - end(run)) as u32).collect()
    }

    /// The runs there is an even number of at the two ends, the others in the middle.
    fn blocks(&self) -> Vec<u32> {
        if self.gaps == 0 {
            return Vec::new();
        }
        let shares = order::Shares::of(self.between, self.gaps);
        let (outer, inner) = if shares.long.times.is_multiple_of(2) {
            (shares.long, shares.short)
        } else {
            (shares.short, shares.long)
        };
        let half = Batch {
            run: outer.run,
            times: outer.times / 2,
        };
        unrolled(&[half, inner, half])
    }

    fn laid(&self, spread: &Spread, between: &[u32]) -> Vec<Run> {
        let taken = u32::from(self.by_bar);
        let between: Vec<u32> = between.iter().map(|run| run - taken).collect();
        let changes = spread.changes as usize;
        laid(spread, self.first - taken, &between, self.last, &|place| {
            let second_half = 2 * place + 1 > changes;
            let middle = 2 * place + 1 == changes;
            leaning(spread, second_half, middle)
        })
    }
}

/// The change for one half of a mirrored row. Worked from the right edge, the first half leans left and the second
/// right, towards the middle, for decreases; away from it for increases. On a purl row the hands come from the left
/// edge, so the halves change places.
fn leaning(spread: &Spread, second_half: bool, middle: bool) -> crate::row::Stitch {
    use crate::row::{Lean, Stitch};
    let change = match spread.change {
        Stitch::M1 => Stitch::M1L,
        Stitch::M1p => Stitch::M1Lp,
        other => other,
    };
    if middle {
        return spread.change;
    }
    let decreases = change.uses() > change.gives();
    let from_right = matches!(spread.face, Face::Knit);
    let right_half = second_half != from_right;
    let wanted = if right_half == decreases {
        Lean::Left
    } else {
        Lean::Right
    };
    if change.lean() == Lean::Upright || change.lean() == wanted {
        change
    } else {
        change.mirror()
    }
}

const _: () = assert!(
    2 * (TRY_ALL as usize) < LONGEST_EXACT,
    "every ring tried in full is searched exactly"
);
