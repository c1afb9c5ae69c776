//! Why a line does not come out: in a sentence, and in a word or two for a table.

use super::super::intl::{fill_pattern, fill_pattern_with, number};
use super::super::page::quoted;
use super::super::row::ordinal;
use super::count;
use loopwright::written::{Outcome, Worked};

/// Behind the name of a line: `runs out 1 short in the 9th k2tog`.
pub fn reason(worked: &Worked, text: &str) -> String {
    let word = worked.place.map_or("", |place| place.text(text)).trim();
    what(worked.outcome, word)
}

/// The same of an outcome, with the word at which it comes about.
pub fn what(outcome: Outcome, word: &str) -> String {
    match outcome {
        Outcome::ComesOut => "comes out".into(),
        Outcome::LeftOver {
            stitches,
            repeats: Some(repeats @ 1..),
        } => fill_pattern_with(
            "leaves # {stitch|stitches} over after the @ repeat",
            &[count(stitches)],
            &[&ordinal(count(repeats))],
        ),
        Outcome::LeftOver { stitches, .. } => fill_pattern("leaves # {stitch|stitches} over", &[count(stitches)]),
        Outcome::RunsOut { short, time: 0 | 1 } => fill_pattern_with(
            "runs out # {stitch|stitches} short at @",
            &[count(short)],
            &[&quoted(word)],
        ),
        Outcome::RunsOut { short, time } => fill_pattern_with(
            "runs out # short in the @ @",
            &[count(short)],
            &[&ordinal(count(time)), word],
        ),
        Outcome::ToLast {
            wanted, leaves, before, ..
        } if leaves == before => fill_pattern(
            "cannot stop at the last #: only # {is|are} there",
            &[count(wanted), count(leaves)],
        ),
        Outcome::ToLast { wanted, leaves, .. } => fill_pattern(
            "cannot stop at the last #: one repeat more leaves #",
            &[count(wanted), count(leaves)],
        ),
        Outcome::MakesNothing => "repeats what uses no stitch, and never comes to its end".into(),
        Outcome::NoMarker { ahead: None } => "looks for a marker that is not there".into(),
        Outcome::NoMarker { ahead: Some(ahead) } => fill_pattern(
            "has no marker here: the next one is # {stitch|stitches} on",
            &[count(ahead)],
        ),
        Outcome::PastMarker { short } => fill_pattern(
            "comes to a marker that is # {stitch|stitches} too near",
            &[count(short)],
        ),
        Outcome::Nothing => "has nothing there to pass over, or to take back".into(),
        Outcome::Differs { said, is } => {
            fill_pattern("says # {stitch|stitches}, and there are #", &[count(said), count(is)])
        }
        Outcome::NoSuchRow { row } => fill_pattern("repeats row #, which is not there", &[row]),
        Outcome::OtherRows { named, made } => fill_pattern(
            "names # {row|rows}, and what it repeats makes #",
            &[count(named), count(made)],
        ),
        Outcome::ByLength => "goes by a length and changes the count, so that it cannot be told".into(),
        Outcome::NeverComesTo { wanted, before, after } => fill_pattern(
            "never comes to # stitches: # before, # after",
            &[count(wanted), count(before), count(after)],
        ),
        Outcome::Endless => "is longer than anybody knits".into(),
        Outcome::Unread => "is not read".into(),
        Outcome::NotWorked => "is not worked".into(),
        Outcome::CannotTell => "goes on past the beginning of the round, and cannot be counted".into(),
    }
}

/// In a word or two, for a table.
pub fn short(worked: &Worked) -> String {
    match worked.outcome {
        Outcome::ComesOut => number(count(worked.after)),
        Outcome::LeftOver { stitches, .. } => fill_pattern("# over", &[count(stitches)]),
        Outcome::RunsOut { short, .. } => fill_pattern("# short", &[count(short)]),
        Outcome::ToLast { leaves, .. } => fill_pattern("# left", &[count(leaves)]),
        Outcome::MakesNothing => "no end".into(),
        Outcome::NoMarker { .. } => "no marker".into(),
        Outcome::PastMarker { .. } => "marker".into(),
        Outcome::Nothing => "nothing there".into(),
        Outcome::Differs { is, .. } => fill_pattern("is #", &[count(is)]),
        Outcome::NoSuchRow { row } => fill_pattern("no row #", &[row]),
        Outcome::OtherRows { made, .. } => fill_pattern("# {row|rows}", &[count(made)]),
        Outcome::ByLength => "by length".into(),
        Outcome::NeverComesTo { wanted, .. } => fill_pattern("never #", &[count(wanted)]),
        Outcome::Endless => "no end".into(),
        Outcome::Unread => "not read".into(),
        Outcome::NotWorked => String::new(),
        Outcome::CannotTell => "not told".into(),
    }
}
