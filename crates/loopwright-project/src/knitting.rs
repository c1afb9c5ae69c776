//! How far she is in her knitting, as it is kept: one text for each tap, under a name of its own.
//!
//! A tap adds to what is there and overwrites nothing. So two windows in which she taps add up, in whatever order their
//! taps reach the log, and a tap can be taken back as a whole. Names begin with the time, so that taps lie in the order in
//! which they were made:
//!
//! | name                    | text        | means                                                     |
//! |-------------------------|-------------|-----------------------------------------------------------|
//! | `1764491000123-k3-0`    | `+1`        | a row is done                                             |
//! | `1764491000301-k3-1`    | `+1 quick`  | another one, tapped less than 300 ms later                |
//! | `1764491061000-k3-2`    | `-1`, `+18` | back a row, on to a row by its number                     |
//! | `1764491062000-k3-3`    | `again 24 +1` | a repeat within row 24 is done                          |
//! | `1764491063000-k3-4`    | `start`     | a row begins now, so that its time can be learnt from     |
//!
//! What no version wrote counts nothing, and stays where it is.

use crate::text::{Texts, Typed};
use std::fmt;

/// Two taps less than this apart are one too many, perhaps: both count, and the second is marked.
pub const QUICK_MS: u64 = 300;

/// Whether a sheet of a project holds taps: `yoke.knit`, and of a second counter `step.3.knit.2`.
pub fn is_knitting(sheet: &str) -> bool {
    sheet.split('.').any(|part| part == "knit")
}

/// What a tap means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tap {
    /// So many rows on, or back.
    Rows(i64),
    /// One row on, very soon after the tap before.
    Quick,
    /// So many repeats on, or back, within a row.
    Again {
        /// The row.
        row: u32,
        /// How many.
        by: i64,
    },
    /// A row begins now.
    Start,
}

impl Tap {
    /// The tap that a kept text means; none where it means nothing.
    pub fn parse(text: &str) -> Option<Self> {
        let number = |text: &str| text.starts_with(['+', '-']).then(|| text.parse().ok()).flatten();
        let words: Vec<&str> = text.split(' ').collect();
        match words[..] {
            ["start"] => Some(Self::Start),
            ["+1", "quick"] => Some(Self::Quick),
            ["again", row, by] => Some(Self::Again {
                row: row.parse().ok()?,
                by: number(by)?,
            }),
            [by] => Some(Self::Rows(number(by)?)),
            _ => None,
        }
    }

    /// The rows that it goes on.
    pub const fn rows(self) -> i64 {
        match self {
            Self::Rows(by) => by,
            Self::Quick => 1,
            Self::Again { .. } | Self::Start => 0,
        }
    }
}

impl fmt::Display for Tap {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Rows(by) => write!(text, "{by:+}"),
            Self::Quick => text.write_str("+1 quick"),
            Self::Again { row, by } => write!(text, "again {row} {by:+}"),
            Self::Start => text.write_str("start"),
        }
    }
}

/// A tap as it was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Made {
    /// When it was made, in milliseconds since 1970.
    pub at: u64,
    /// What it means.
    pub tap: Tap,
}

/// The name of a tap: when it was made, in which window, and how many that window had made before.
pub fn name(at: u64, window: &str, count: u32) -> String {
    format!("{at:013}-{window}-{count}")
}

/// All taps that lie on a sheet, in the order in which they were made.
pub fn taps(texts: &Texts) -> Vec<Made> {
    texts.iter().filter_map(|(name, typed)| made(name, typed)).collect()
}

/// The name of the last tap on a sheet, which can be taken back.
pub fn last_name(texts: &Texts) -> Option<&str> {
    let is_tap = |(name, typed): &(&String, &Typed)| made(name, typed).is_some();
    texts.iter().rev().find(is_tap).map(|(name, _)| &**name)
}

fn made(name: &str, typed: &Typed) -> Option<Made> {
    let at = name.split_once('-')?.0.parse().ok()?;
    let tap = Tap::parse(&typed.text)?;
    Some(Made { at, tap })
}

/// How many rows are done: all that was tapped on and back, in the order in which it was.
pub fn rows_done(taps: &[Made]) -> u32 {
    taps.iter().fold(0, |done, made| moved(done, made.tap.rows()))
}

/// So many, moved by so many. Two windows may go back at once, and there is nothing before the first: the next tap on is to be
/// seen, and so is a tap back after one that went on and on.
pub fn moved(done: u32, by: i64) -> u32 {
    let moved = i64::from(done).saturating_add(by).max(0);
    u32::try_from(moved).unwrap_or(u32::MAX)
}

/// How many repeats of a row are done.
pub fn repeats_done(taps: &[Made], in_row: u32) -> u32 {
    let by = |made: &Made| match made.tap {
        Tap::Again { row, by } if row == in_row => by,
        _ => 0,
    };
    taps.iter().fold(0, |done, made| moved(done, by(made)))
}

/// The tap "a row is done", made now: quick, where the one before it was made a moment ago. One that is to be made only later
/// was made by a clock that has been set since.
pub fn on(taps: &[Made], now: u64) -> Tap {
    let before = |made: &&Made| made.tap.rows() > 0 && made.at <= now;
    match taps.iter().rev().find(before) {
        Some(last) if now.saturating_sub(last.at) < QUICK_MS => Tap::Quick,
        Some(_) | None => Tap::Rows(1),
    }
}

/// Rows that were tapped one after the other: the number of each row, and the milliseconds from the tap before it, or from
/// its start. A jump or a way back begins anew.
pub fn times(taps: &[Made]) -> Vec<(u32, u64)> {
    let mut times = Vec::new();
    let mut row = 0;
    let mut before: Option<u64> = None;
    for made in taps {
        row = moved(row, made.tap.rows());
        if let (Tap::Rows(1), Some(since)) = (made.tap, before) {
            times.push((row, made.at.saturating_sub(since)));
        }
        before = match made.tap {
            Tap::Rows(1) | Tap::Start => Some(made.at),
            Tap::Quick | Tap::Rows(_) => None,
            Tap::Again { .. } => before,
        };
    }
    times
}

/// Since when she has been at it without a rest of this length, up to the last tap; none where nothing was tapped.
pub fn at_it_for(taps: &[Made], rest: u64) -> Option<u64> {
    let (last, earlier) = taps.split_last()?;
    let mut first = last.at;
    for made in earlier.iter().rev() {
        if first.saturating_sub(made.at) > rest {
            break;
        }
        first = made.at;
    }
    Some(last.at.saturating_sub(first))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn sheet(taps: &[(u64, &str)]) -> Texts {
        let kept = |(count, (at, text)): (usize, &(u64, &str))| (name(*at, "w", count as u32), Typed::plain(*text));
        taps.iter().enumerate().map(kept).collect()
    }

    #[test]
    fn a_sheet_of_taps_is_known_by_its_name() {
        for name in ["yoke.knit", "step.3.knit", "step.3.knit.2"] {
            assert!(is_knitting(name), "{name}");
        }
        for name in ["yoke", "step.3", "step.3.from", "step.3.about", "knitting", "known.was"] {
            assert!(!is_knitting(name), "{name}");
        }
    }

    #[test]
    fn taps_add_up_on_and_back() {
        let texts = sheet(&[
            (1, "+1"),
            (2, "+1"),
            (3, "-1"),
            (4, "+18"),
            (5, "start"),
            (6, "again 20 +1"),
        ]);
        assert_eq!(rows_done(&taps(&texts)), 19);
        assert_eq!(
            (repeats_done(&taps(&texts), 20), repeats_done(&taps(&texts), 19)),
            (1, 0)
        );
    }

    #[test]
    fn there_is_no_row_before_the_first() {
        assert_eq!(rows_done(&taps(&sheet(&[(1, "-1"), (2, "-4")]))), 0);
        // Two windows go back from the first row at once: the next tap on counts.
        let both_back = [(1, "+1"), (2, "-1"), (3, "-1"), (4, "+1")];
        assert_eq!(rows_done(&taps(&sheet(&both_back))), 1);
        // And so does one back, however far a tap that somebody stored went on.
        let far = [(1, "+9223372036854775807"), (2, "+9223372036854775807"), (3, "-1")];
        assert_eq!(rows_done(&taps(&sheet(&far))), u32::MAX - 1);
    }

    #[test]
    fn what_no_version_wrote_counts_nothing() {
        for text in [
            "",
            "1",
            "+",
            "++1",
            "+1 slow",
            "quick",
            "again x +1",
            "again 3 1",
            "+9999999999999999999999",
            "NaN",
        ] {
            assert_eq!(Tap::parse(text), None, "{text}");
        }
        let mut texts = sheet(&[(1, "+1")]);
        texts.insert("began".into(), Typed::plain("+7"));
        texts.insert("x-1-1".into(), Typed::plain("+7"));
        assert_eq!(rows_done(&taps(&texts)), 1);
    }

    #[test]
    fn a_second_tap_a_moment_later_counts_and_is_marked() {
        let texts = sheet(&[(1_000, "+1")]);
        assert_eq!(on(&taps(&texts), 1_299), Tap::Quick);
        assert_eq!(on(&taps(&texts), 1_300), Tap::Rows(1));
        assert_eq!(on(&[], 0), Tap::Rows(1));
        // The clock went ahead, and was set back: the taps from then are no measure of those of now.
        assert_eq!(on(&taps(&texts), 900), Tap::Rows(1));
        let ahead = sheet(&[(1_000, "+1"), (9_000, "+1")]);
        assert_eq!(
            (on(&taps(&ahead), 2_000), on(&taps(&ahead), 1_100)),
            (Tap::Rows(1), Tap::Quick)
        );
        assert_eq!(rows_done(&taps(&sheet(&[(1_000, "+1"), (1_200, "+1 quick")]))), 2);
    }

    #[test]
    fn rows_are_timed_from_tap_to_tap_and_not_over_a_jump() {
        let texts = sheet(&[
            (0, "start"),
            (60, "+1"),
            (130, "+1"),
            (140, "+8"),
            (300, "+1"),
            (350, "+1"),
            (351, "+1 quick"),
        ]);
        assert_eq!(times(&taps(&texts)), [(1, 60), (2, 70), (12, 50)]);
    }

    #[test]
    fn a_rest_begins_anew() {
        let texts = sheet(&[(0, "+1"), (400, "+1"), (450, "+1"), (520, "+1")]);
        assert_eq!(at_it_for(&taps(&texts), 100), Some(120));
        assert_eq!(at_it_for(&taps(&texts), 1_000), Some(520));
        assert_eq!(at_it_for(&[], 100), None);
    }

    fn any_tap() -> impl Strategy<Value = Tap> {
        prop_oneof![
            any::<i64>().prop_map(Tap::Rows),
            Just(Tap::Quick),
            Just(Tap::Start),
            (any::<u32>(), any::<i64>()).prop_map(|(row, by)| Tap::Again { row, by }),
        ]
    }

    proptest! {
        #[test]
        fn a_tap_is_read_as_it_was_written(tap in any_tap()) {
            prop_assert_eq!(Tap::parse(&tap.to_string()), Some(tap));
        }

        #[test]
        fn reading_is_total(text in ".*") {
            let _ = Tap::parse(&text);
        }

        /// Two windows tap as they like: what is kept is the same, whichever of them the log heard first.
        #[test]
        fn windows_add_up(ours in prop::collection::vec((0_u64..500, -2_i64..9), 0..20), theirs in prop::collection::vec((0_u64..500, -2_i64..9), 0..20)) {
            let kept = |window: &'static str, taps: &[(u64, i64)]| -> Vec<(String, Typed)> {
                let one = |(count, (at, by)): (usize, &(u64, i64))| (name(*at, window, count as u32), Typed::plain(Tap::Rows(*by).to_string()));
                taps.iter().enumerate().map(one).collect()
            };
            let (ours, theirs) = (kept("a", &ours), kept("b", &theirs));
            let one: Texts = ours.iter().chain(&theirs).cloned().collect();
            let other: Texts = theirs.iter().chain(&ours).cloned().collect();
            prop_assert_eq!(rows_done(&taps(&one)), rows_done(&taps(&other)));
            prop_assert_eq!(one.len(), ours.len() + theirs.len());
        }
    }
}
