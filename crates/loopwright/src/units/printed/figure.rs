//! Where a printed number ends.
//!
//! In a list the marks inside a number are also the marks between numbers. These rules tell them apart:
//!
//! | printed | read |
//! |---|---|
//! | `7 1/2`, `7-1/2`, `3/4` | a fraction: in lowest terms, of the kind that a tape has |
//! | `8/9/10`, `6/8`, `36/38`, `6-7/8-9` | numbers parted by slashes |
//! | `96,5`, `38,75` | decimals |
//! | `86,91`, `97,103`, `86,91,97` | numbers parted by commas: the second is a neighbour of the first, or there are three |
//! | `1,150`, `1 150`, `1'150` | one number: the second part would be no neighbour of the first |
//!
//! These are common practice, no source. A number that is doubtful by itself, such as `1,150` as a length, is asked about
//! where its value is read.

use crate::units::fraction::{begins, fraction, raised, value};

/// What a tape has parts of: thirds are printed, the others are marked.
const PARTS: [i128; 5] = [2, 3, 4, 8, 16];

/// A neighbour in a list is at most so many times as large. Common practice, no source.
const NEIGHBOUR: u32 = 3;

/// A fraction of small or raised digits has so many marks at most: six on either side of its stroke, and spaces about
/// that. More are no measure, and each place of a long run would look through all of it.
const LONGEST_FRACTION: usize = 15;

/// Where the number ends that begins at a place; none where no number does.
pub(super) fn end(marks: &[char], from: usize) -> Option<usize> {
    if let Some(end) = fraction_end(marks, from) {
        return Some(end);
    }
    let whole = digits_end(marks, from);
    if whole == from {
        let is_point = marks.get(from) == Some(&'.') && !is_digit(marks, from.wrapping_sub(1));
        let end = digits_end(marks, from + 1);
        return (is_point && end > from + 1).then_some(end);
    }
    let end = grouped_end(marks, from, whole);
    Some(if end == whole { mixed_end(marks, whole) } else { end })
}

/// A fraction that stands alone: one sign, raised digits, or a slash with digits on both sides.
fn fraction_end(marks: &[char], from: usize) -> Option<usize> {
    if !is_digit(marks, from) {
        // One mark more than the longest has, to tell one that goes on.
        let most = marks.len().min(from.saturating_add(LONGEST_FRACTION + 1));
        let rest = marks
            .get(from..most)
            .filter(|rest| rest.first().is_some_and(|mark| begins(*mark) || raised(*mark)))?;
        let (_, behind) = fraction(rest).ok()??;
        let length = rest.len() - behind.len();
        return (length <= LONGEST_FRACTION).then_some(from + length);
    }
    let (bottom, end) = slashed(marks, from)?;
    let joins = |place: usize| match marks.get(place) {
        Some('/') => true,
        // `6-7/8-9` are two ranges; `1/2-3/4` is one.
        Some('-') => matches!(bottom, 8 | 16),
        Some(_) | None => false,
    };
    let is_joined_before = joins(from.wrapping_sub(1)) && is_digit(marks, from.wrapping_sub(2));
    let is_joined_behind = joins(end) && is_digit(marks, end + 1);
    (!is_joined_before && !is_joined_behind).then_some(end)
}

/// A fraction of digits with a slash, in lowest terms and of the kind that a tape has: its lower part and its end.
fn slashed(marks: &[char], from: usize) -> Option<(i128, usize)> {
    let top_end = digits_end(marks, from);
    let bottom_end = digits_end(marks, top_end + 1);
    if top_end == from || !is_mark(marks, top_end, '/') || bottom_end == top_end + 1 {
        return None;
    }
    let top = value(marks.get(from..top_end)?)?;
    let bottom = value(marks.get(top_end + 1..bottom_end)?)?;
    let is_lowest = if bottom == 3 { top % 3 != 0 } else { top % 2 != 0 };
    (PARTS.contains(&bottom) && (1..bottom).contains(&top) && is_lowest).then_some((bottom, bottom_end))
}

/// The end of a whole number with the fraction beside it, where there is one.
fn mixed_end(marks: &[char], whole: usize) -> usize {
    let joint = marks.get(whole).copied();
    let beside = whole + usize::from(matches!(joint, Some(' ' | '-')));
    if beside > whole && is_digit(marks, beside) {
        let is_part = |(bottom, end): &(i128, usize)| match marks.get(*end) {
            Some('/' | '-') if !is_digit(marks, end + 1) => true,
            // `34 1/2/36 1/2`: a half or a quarter is a part of the number before it.
            Some('/') => joint == Some(' ') && matches!(bottom, 2 | 4),
            // `15-1/2-16-1/2`, but not the years `0-1/2-3`.
            Some('-') => joint == Some(' ') || matches!(bottom, 2 | 4) && is_digit(marks, whole.wrapping_sub(2)),
            Some(_) | None => true,
        };
        return slashed(marks, beside).filter(is_part).map_or(whole, |(_, end)| end);
    }
    if is_digit(marks, beside) {
        return whole;
    }
    fraction_end(marks, beside).unwrap_or(whole)
}

/// The end of digits with the decimals or thousands behind them.
fn grouped_end(marks: &[char], from: usize, whole: usize) -> usize {
    let (mut start, mut end) = (from, whole);
    loop {
        let group = digits_end(marks, end + 1);
        let belongs = group > end + 1
            && match marks.get(end) {
                Some('.') => true,
                Some(',') => is_comma_inside(marks, start..end, group),
                Some('\'') => group == end + 4 && !is_behind_mark(marks, start),
                Some(' ') => is_space_inside(marks, start..end, group) && !is_behind_mark(marks, start),
                Some(_) | None => false,
            };
        if !belongs {
            return end;
        }
        (start, end) = (end + 1, group);
    }
}

/// Whether the comma behind these digits is inside a number that goes on to the end of the group.
fn is_comma_inside(marks: &[char], before: std::ops::Range<usize>, group_end: usize) -> bool {
    let group = before.end + 1..group_end;
    let (first, second) = (worth(marks, before.clone()), worth(marks, group.clone()));
    let is_behind_thousands = is_mark(marks, before.start.wrapping_sub(1), ',');
    let is_behind_digits = is_digit(marks, before.start.wrapping_sub(2));
    if is_behind_thousands && is_behind_digits {
        // Within `1,234,567`; in `86,91,97` the first comma has parted already.
        return group.len() == 3 && before.len() == 3 && is_thousands_so_far(marks, before.start);
    }
    if is_mark(marks, before.start.wrapping_sub(1), '.') && before.len() != 3 {
        return false;
    }
    let goes_on = is_mark(marks, group_end, ',') && is_digit(marks, group_end + 1);
    let has_fraction = marks
        .get(group_end)
        .is_some_and(|mark| (begins(*mark) && !mark.is_ascii_digit()) || raised(*mark));
    let are_neighbours = second.saturating_mul(NEIGHBOUR) >= first && second <= first.saturating_mul(NEIGHBOUR);
    match group.len() {
        1 | 2 => !goes_on && !has_fraction && (second <= first || second * 3 > first.saturating_mul(4)),
        3 => before.len() <= 3 && !has_fraction && !are_neighbours,
        _ => false,
    }
}

/// Whether the comma before a group was found to part thousands: its first part was no neighbour.
fn is_thousands_so_far(marks: &[char], group: usize) -> bool {
    let comma = group.wrapping_sub(1);
    let mut first = comma;
    while first > 0 && is_digit(marks, first - 1) && comma - first < 3 {
        first -= 1;
    }
    let (first, second) = (worth(marks, first..comma), worth(marks, group..group + 3));
    first.saturating_mul(NEIGHBOUR) < second || second.saturating_mul(NEIGHBOUR) < first
}

/// Whether a point or a comma stands before these digits, so that they are decimals.
fn is_behind_mark(marks: &[char], start: usize) -> bool {
    let mark = marks.get(start.wrapping_sub(1));
    matches!(mark, Some('.' | ',')) && is_digit(marks, start.wrapping_sub(2))
}

/// Whether the space behind these digits parts thousands: `1 150`, but neither `97 103` nor `6 100 110`.
fn is_space_inside(marks: &[char], before: std::ops::Range<usize>, group_end: usize) -> bool {
    let group = before.end + 1..group_end;
    let next = digits_end(marks, group_end + 1);
    let is_first_of_row = is_mark(marks, group_end, ' ') && next == group_end + 4;
    let is_one_digit = before.len() == 1 && !is_mark(marks, before.start, '0');
    let has_stroke = is_mark(marks, group_end, '/');
    group.len() == 3 && is_one_digit && !has_stroke && !is_first_of_row
}

/// What digits say, held at the most that can be.
fn worth(marks: &[char], digits: std::ops::Range<usize>) -> u32 {
    let digits = marks.get(digits).unwrap_or_default().iter();
    digits
        .filter_map(|mark| mark.to_digit(10))
        .fold(0, |sum: u32, digit| sum.saturating_mul(10).saturating_add(digit))
}

fn digits_end(marks: &[char], from: usize) -> usize {
    let digits = marks.get(from..).unwrap_or_default().iter();
    from + digits.take_while(|mark| mark.is_ascii_digit()).count()
}

fn is_digit(marks: &[char], place: usize) -> bool {
    marks.get(place).is_some_and(char::is_ascii_digit)
}

fn is_mark(marks: &[char], place: usize, mark: char) -> bool {
    marks.get(place) == Some(&mark)
}
