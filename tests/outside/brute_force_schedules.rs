//! Shaping schedules against every set of rows there is.
//!
//! Source: a brute-force oracle, written here and nowhere else: for 1 to 24 rows, every subset of the rows is one way of
//! shaping, 16,777,215 in 24 rows, and nothing is assumed about gaps, rates or blocks. Of the subsets that are lawful
//! (right-side rows where asked, the first shaping row as early as the plain rows before it allow, enough plain rows
//! after the last) it is kept which there are and how far their gaps differ. All values are computed.

use crate::marks::{Marked, value};
use loopwright::shaping::{Ask, Knitting, Order, Question, Side, answer};
use loopwright::tables::Certainty;

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[value("every set of up to 24 rows", Certainty::Computed)];

const ROWS: u32 = 24;
const MOST: usize = 8;

/// For so many shaping rows, the first row and the last: the least that the gaps between them differ by, and how many
/// sets have their gaps differ by no more than is allowed. Gaps are counted in rows.
#[derive(Clone, Copy)]
struct Best {
    spread: u32,
    within: u32,
}

type Table = Vec<Option<Best>>;

fn at(count: usize, first: u32, last: u32) -> usize {
    (count * 32 + first as usize) * 32 + last as usize
}

/// Every set of the rows up to [`ROWS`] that are lawful by their side.
fn every_set(lawful: u32, allowed: u32) -> Table {
    let mut table = vec![None; (MOST + 1) * 32 * 32];
    // All subsets of a mask, the mask itself first.
    let mut set = lawful;
    while set > 0 {
        if set.count_ones() as usize <= MOST {
            let (mut rest, mut least, mut most, mut before) = (set, u32::MAX, 0, None);
            while rest > 0 {
                let row = rest.trailing_zeros();
                rest &= rest - 1;
                if let Some(before) = before {
                    least = least.min(row - before);
                    most = most.max(row - before);
                }
                before = Some(row);
            }
            let spread = most.saturating_sub(least);
            let (first, last) = (set.trailing_zeros(), set.ilog2());
            let best = table[at(set.count_ones() as usize, first, last)].get_or_insert(Best { spread, within: 0 });
            best.spread = best.spread.min(spread);
            best.within += u32::from(spread <= allowed);
        }
        set = (set - 1) & lawful;
    }
    table
}

/// A row as a bit: row 1 is bit 1.
fn rows_on(knitting: Knitting, right_side: bool) -> u32 {
    (1..=ROWS)
        .filter(|row| !right_side || knitting.side(*row) == Side::Right)
        .map(|row| 1 << row)
        .sum()
}

#[test]
fn schedules_are_the_best_of_every_set_of_rows() {
    let (right, wrong) = (
        Knitting::Flat { next: Side::Right },
        Knitting::Flat { next: Side::Wrong },
    );
    let any = every_set(rows_on(Knitting::Round, false), 1);
    let odd = every_set(rows_on(right, true), 2);
    let even = every_set(rows_on(wrong, true), 2);
    let kinds = [
        (Knitting::Round, false, &any),
        (Knitting::Round, true, &any),
        (right, false, &any),
        (wrong, false, &any),
        (right, true, &odd),
        (wrong, true, &even),
    ];
    let (mut had, mut refused) = (0, 0);
    for (knitting, right_side, table) in kinds {
        let lawful = rows_on(knitting, right_side);
        for (rows, stitches, each) in small() {
            for (first, last) in [(0, 0), (0, 1), (1, 1), (2, 0), (3, 2), (0, 5)] {
                let question = Question {
                    each,
                    right_side,
                    knitting,
                    first: Some(first),
                    last,
                    ..Question::about(Ask::Lose(stitches), rows)
                };
                let shaped = (stitches / each) as usize;
                // The earliest row behind the plain ones, and the latest that leaves enough.
                let Some(start) = (first + 1..=ROWS).find(|row| lawful >> row & 1 == 1) else {
                    continue;
                };
                let ends = (start..=rows.saturating_sub(last)).rev();
                let best = ends
                    .clone()
                    .find_map(|end| table[at(shaped, start, end)].map(|best| (end, best)));
                for order in [Order::CloseFirst, Order::WideFirst, Order::Mixed, Order::OneRate] {
                    let ours = answer(&Question { order, ..question });
                    let Some((end, best)) = best else {
                        assert!(ours.is_err(), "{question:?}");
                        refused += 1;
                        continue;
                    };
                    let ours = ours.expect("there is a set of rows");
                    had += 1;
                    let mine: Vec<u32> = ours.schedule.rows().map(|shaped| shaped.row).collect();
                    assert_eq!(mine.len(), shaped);
                    assert!(mine.iter().all(|row| lawful >> row & 1 == 1 && *row <= rows - last));
                    assert_eq!(mine.first(), Some(&start));
                    let gaps: Vec<u32> = mine.windows(2).map(|pair| pair[1] - pair[0]).collect();
                    let spread = gaps.iter().max().unwrap_or(&0) - gaps.iter().min().unwrap_or(&0);
                    if order == Order::OneRate {
                        // One rate, and no set of rows with one rate ends later.
                        assert_eq!(spread, 0);
                        let later = ends
                            .clone()
                            .find(|end| table[at(shaped, start, *end)].is_some_and(|best| best.spread == 0));
                        assert_eq!(mine.last(), later.as_ref());
                        continue;
                    }
                    // No set of rows uses more of the rows, and of those that end there none is more even.
                    assert_eq!(mine.last(), Some(&if shaped == 1 { start } else { end }));
                    assert_eq!(
                        spread,
                        table[at(shaped, start, mine[shaped - 1])].map_or(0, |best| best.spread)
                    );
                    assert!(
                        spread
                            <= if right_side && knitting != Knitting::Round {
                                2
                            } else {
                                1
                            }
                    );
                    assert!(best.within > 0);
                    assert_eq!(ours.schedule.rows().map(|shaped| shaped.change).sum::<u32>(), stitches);
                }
            }
        }
    }
    // Nothing was skipped by mistake.
    assert_eq!(had + refused, 6 * 288 * 6 * 4);
    assert!(had > 30_000 && refused > 10_000);
}

/// Rows to 24, stitches to 8, one or two a shaping row.
fn small() -> impl Iterator<Item = (u32, u32, u32)> {
    let all = (1..=ROWS).flat_map(|rows| (1..=8).flat_map(move |stitches| [(rows, stitches, 1), (rows, stitches, 2)]));
    all.filter(|(_, stitches, each)| stitches % each == 0)
}

/// When the beginning is a gap like the others, gaps are counted from row 0, or on right-side rows from the right-side
/// row before row 1; again against every set.
#[test]
fn a_beginning_that_is_a_gap_is_as_even_as_the_rest() {
    let (right, wrong) = (
        Knitting::Flat { next: Side::Right },
        Knitting::Flat { next: Side::Wrong },
    );
    for (knitting, right_side, origin, unit) in [
        (Knitting::Round, false, 0, 1),
        (wrong, true, 0, 2),
        (right, true, -1, 2),
    ] {
        let lawful = rows_on(knitting, right_side);
        for (rows, stitches, each) in small() {
            let question = Question {
                each,
                right_side,
                knitting,
                first: None,
                ..Question::about(Ask::Gain(stitches), rows)
            };
            let lawful = (1..rows).filter(|row| lawful >> row & 1 == 1).count() as u32;
            let Ok(ours) = answer(&question) else {
                assert!(lawful < stitches / each, "{question:?}");
                continue;
            };
            assert!(lawful >= stitches / each);
            let mut before = origin;
            let mut gaps = Vec::new();
            for shaped in ours.schedule.rows() {
                gaps.push(i64::from(shaped.row) - before);
                before = i64::from(shaped.row);
            }
            let (least, most) = (gaps.iter().min().unwrap_or(&0), gaps.iter().max().unwrap_or(&0));
            assert!(most - least <= unit, "{question:?} {gaps:?}");
            assert!(
                (1..=unit).contains(&(i64::from(rows) - before)),
                "{question:?} ends at {before}"
            );
        }
    }
}
