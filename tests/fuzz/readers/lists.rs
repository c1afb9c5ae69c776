//! Printed lists: no list drops a number. Every sign of a text that says a number is used, or is pointed at.

use loopwright::bounds::Bounds;
use loopwright::cords::read_list;
use loopwright::sizing::{Listed, SizeList, read_counts, read_size_list};
use loopwright::units::printed::{Figures, Reading, Unread, read};
use loopwright::units::{Gauge, LengthUnit};
use std::ops::Range;

/// Reads a text as a printed list, as sizes and as counts.
pub fn every_number_is_used_or_pointed_at(text: &str) {
    let reading = read(text);
    covers("a list", text, &places(&reading));
    in_short_lists(text, &reading);
    for unit in [LengthUnit::Cm, LengthUnit::Inch] {
        for listed in [None, Some(Listed::Body), Some(Listed::Garment)] {
            match read_size_list(text, unit, listed) {
                Ok(SizeList { used, set_aside, .. }) => covers("sizes", text, &[used, set_aside].concat()),
                Err(unread) => points(text, unread),
            }
        }
    }
    match read_counts(text, Bounds::new(0, u32::MAX)) {
        Ok(counts) => {
            let is_number = |figures: &&Figures| !matches!(figures, Figures::Nothing(_));
            let figures = reading.entries.iter().filter_map(|entry| entry.figures.as_ref());
            let numbers = figures.filter(is_number).count();
            // Those before a colon may be names, one for each count.
            let names = numbers.saturating_sub(counts.iter().flatten().count());
            assert!(
                names <= reading.before_colon.unwrap_or(0),
                "{numbers} numbers and {} counts: {text:?}",
                counts.len()
            );
        }
        Err(unread) => points(text, unread),
    }
}

/// As cords and as counts of a gauge no number is dropped either: there is one for each, or the list is pointed at.
fn in_short_lists(text: &str, reading: &Reading) {
    let figures = reading.entries.iter().filter(|entry| entry.figures.is_some()).count();
    match read_list(text, LengthUnit::Cm) {
        Ok(cords) => assert!(
            cords.len() >= figures,
            "{figures} numbers and {} cords: {text:?}",
            cords.len()
        ),
        Err(unread) => points(text, unread),
    }
    if let Err(unread) = Gauge::read_list(text, Gauge::TEN_CM) {
        points(text, unread);
    }
}

/// Every place of which a reading gives an account.
fn places(reading: &Reading) -> Vec<Range<usize>> {
    let mut places = reading.unplaced.clone();
    for entry in &reading.entries {
        places.extend(entry.head.iter().chain(&entry.before).chain(&entry.after).cloned());
        places.extend(entry.figures.iter().map(Figures::range));
    }
    places
}

/// Panics where a sign that says a number stands in none of the places.
fn covers(what: &str, text: &str, places: &[Range<usize>]) {
    let mut sorted = places.to_vec();
    sorted.sort_unstable_by_key(|place| place.start);
    let mut sorted = sorted.into_iter().peekable();
    for (at, mark) in text.char_indices().filter(|(_, mark)| mark.is_numeric()) {
        while sorted.next_if(|place| place.end <= at).is_some() {}
        let is_covered = sorted.peek().is_some_and(|place| place.contains(&at));
        assert!(is_covered, "read as {what}, {mark:?} at {at} is dropped: {text:?}");
    }
}

/// Panics where a refusal points at nothing of the text.
fn points(text: &str, unread: Unread) {
    let piece = text.get(unread.from..unread.to);
    assert!(
        piece.is_some_and(|piece| !piece.is_empty() || text.is_empty()),
        "{unread:?} of {text:?}"
    );
}
