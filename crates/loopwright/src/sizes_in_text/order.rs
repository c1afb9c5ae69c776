//! Whether the numbers of a list are in order: from size to size they rise, or they fall.
//!
//! Both rules are common practice, no source. A list that neither rises nor falls is pointed at, as long as that is rare
//! in this pattern; and so is the only one that falls, where three or more others rise. A number that is more than three
//! times its neighbour may have lost its point; small numbers may grow faster, so that those below five may grow
//! eightfold.

use super::{Doubt, DoubtKind, Entry, EntryKind, List};
use crate::bounds::Bounds;
use crate::units::parse::{Unreadable, Wanted, read};
use crate::units::{Length, LengthUnit, count};
use std::ops::Range;

/// A neighbour is at most so many times as large.
const NEIGHBOUR: i64 = 3;

/// Small numbers grow by so many times at most.
const SMALL_NEIGHBOUR: i64 = 8;

/// Numbers below this are small.
const SMALL: i64 = 5;

/// Of so many lists one may be out of order; where more are, order says nothing.
const RARE: usize = 4;

/// So many others have to rise before the only one that falls is pointed at.
const OTHERS: usize = 3;

/// In which order numbers stand.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Order {
    Level,
    Rising,
    Falling,
    /// Neither; the place of the number that breaks it.
    Broken(usize),
}

/// Points at lists that are out of order.
pub(super) fn check(text: &str, lists: &mut [List]) {
    let orders: Vec<Option<Order>> = lists.iter_mut().map(|list| of_list(text, list)).collect();
    let count = |wanted: fn(Order) -> bool| orders.iter().flatten().filter(|order| wanted(**order)).count();
    let broken = count(|order| matches!(order, Order::Broken(_)));
    let falling = count(|order| order == Order::Falling);
    let rising = count(|order| order == Order::Rising);
    let all = count(|_| true);
    let is_rare = broken == 1 || broken * RARE <= all;
    for (list, order) in lists.iter_mut().zip(orders) {
        let at = match order {
            Some(Order::Broken(place)) if is_rare => list.entries.get(place).map(|entry| entry.range.clone()),
            Some(Order::Falling) if falling == 1 && broken == 0 && rising >= OTHERS => Some(list.range.clone()),
            _ => None,
        };
        if let Some(at) = at {
            let kind = DoubtKind::OutOfOrder;
            list.doubt = Some(Doubt { kind, at });
        }
    }
}

/// The order of a list of which nothing else is in doubt. Points at a number that is far from its neighbours.
fn of_list(text: &str, list: &mut List) -> Option<Order> {
    let figures: Vec<&Entry> = list
        .entries
        .iter()
        .filter(|entry| entry.kind != EntryKind::NoStep)
        .collect();
    if list.doubt.is_some() || figures.iter().any(|entry| entry.kind == EntryKind::Name) {
        return None;
    }
    let values: Option<Vec<i64>> = figures.iter().map(|entry| value(text, &entry.number)).collect();
    let values = values?;
    if let Some(at) = far_apart(&values).and_then(|place| figures.get(place)) {
        let (kind, at) = (DoubtKind::FarApart, at.range.clone());
        list.doubt = Some(Doubt { kind, at });
        return None;
    }
    // The order is asked of all entries, the doubt is shown at one of them.
    let order = order(&values);
    let place = |figure: usize| {
        let at = figures.get(figure)?.range.clone();
        list.entries.iter().position(|entry| entry.range == at)
    };
    match order {
        Order::Broken(figure) => place(figure).map(Order::Broken),
        other => Some(other),
    }
}

/// What a number says, in nanometres as if it were centimetres: they hold every fraction that is printed.
fn value(text: &str, place: &Range<usize>) -> Option<i64> {
    let number = text.get(place.clone())?;
    let wanted = Wanted::<Length>::any(LengthUnit::Cm);
    match read(number, &wanted) {
        Ok(read) => Some(read.value.to_nm()),
        // `1,150`: here a thousand, since its neighbours are.
        Err(Unreadable::Ambiguous(_)) => {
            let count = count::read(number, Bounds::new(0, 1_000_000)).ok()?;
            Some(Length::of(i64::from(count.value), LengthUnit::Cm).to_nm())
        }
        Err(_) => None,
    }
}

/// Which number is far from its neighbours: the one that is the farthest from the middle one.
fn far_apart(values: &[i64]) -> Option<usize> {
    let one = Length::of(1, LengthUnit::Cm).to_nm();
    let are_far = |pair: &[i64]| {
        let (less, more) = (pair[0].min(pair[1]), pair[0].max(pair[1]));
        let times = if less >= SMALL * one {
            NEIGHBOUR
        } else {
            SMALL_NEIGHBOUR
        };
        less > 0 && more > less.saturating_mul(times)
    };
    values.windows(2).find(|pair| are_far(pair))?;
    let mut sorted = values.to_vec();
    sorted.sort_unstable();
    let middle = *sorted.get((sorted.len() - 1) / 2)?;
    // How many times as large or as small, in hundredths.
    let apart = |value: i64| {
        let (less, more) = (i128::from(value.min(middle).max(1)), i128::from(value.max(middle)));
        100 * more / less
    };
    (0..values.len()).max_by_key(|place| apart(values[*place]))
}

fn order(values: &[i64]) -> Order {
    let is_rising = |values: &[i64]| values.is_sorted();
    let is_falling = |values: &[i64]| values.is_sorted_by(|one, other| one >= other);
    match (is_rising(values), is_falling(values)) {
        (true, true) => Order::Level,
        (true, false) => Order::Rising,
        (false, true) => Order::Falling,
        (false, false) => Order::Broken(breaking(values)),
    }
}

/// The number without which the others rise; the first that is less than the one before where no single one does.
fn breaking(values: &[i64]) -> usize {
    let rises_without = |place: &usize| {
        let others: Vec<i64> = values
            .iter()
            .enumerate()
            .filter(|(at, _)| at != place)
            .map(|(_, value)| *value)
            .collect();
        others.is_sorted()
    };
    let first_fall = values
        .windows(2)
        .position(|pair| pair[1] < pair[0])
        .map_or(0, |at| at + 1);
    (0..values.len()).find(rises_without).unwrap_or(first_fall)
}
