//! The words of the lines of a pattern, worked before they are knitted.

mod doubt;
mod drawn;
mod fault;
mod nearest;
mod outcome;

pub use doubt::{bracket_notes, doubt};
pub use drawn::{drawn, drawn_key};
pub use fault::{fault, is_word};
pub use nearest::nearest;
pub use outcome::{reason, short};

use super::Title;
use super::intl::{fill_pattern, fill_pattern_with, number};
use super::page::quoted;
use loopwright::problem::{Kind, Problem};
use loopwright::terms::Keep;
use loopwright::written::{Answer, Failure, Fault, LineWorked, Name, Outcome, Worked};

pub const TITLE: Title = Title {
    name: "Work the line",
    asks: "Does every line of a pattern come out, in every size? And where one does not, what would?",
};
pub const WORKED: &str = "The first row is worked";
pub const STAYS: &str = "This text stays";
pub const WAITING: &str = "What comes of each line appears here.";
pub const LINE_BY_LINE: &str = "Worked line by line";
pub const SOURCE: &str = "What a stitch takes and leaves follows from how it is made. The abbreviations are those of the trade body’s list, from memory; those that are not on it are common practice, no source.";
pub const CANNOT_JUDGE: &str =
    "Only the stitches are counted here. Whether the fabric is what was meant, your needles will tell.";
pub const EXAMPLE: &str = "CO 23 sts. Row 1 (RS): K2, *k2tog, yo; rep from * to last 3 sts, k3.";
pub const SIZES_REMARK: &str =
    "Leave this empty for one size, or where the pattern says it itself, as in “Sizes: S (M, L)”.";
pub const STITCHES_REMARK: &str = "Leave this empty where the pattern begins with its cast-on.";
pub const OWN_REMARK: &str = "One to a line: the word, how many stitches it takes from the left needle, and how many it leaves on the right one. As in “bobbly uses 1 gives 5”.";
pub const STITCHES_EXAMPLE: &str = "96 (108, 120)";
pub const OWN: &str = "Stitches of my own";
pub const ALL_SIZES: &str = "all sizes";
pub const SIZE: &str = "Look at";
pub const ALL_LINES: &str = "Every line";
pub const LINE: &str = "Line";
pub const BEFORE: &str = "Before";
pub const USED: &str = "Used";
pub const AFTER: &str = "After";
pub const DOES_NOT: &str = "What does not come out";
pub const IN_THIS_ROW: &str = "It goes wrong here, in a row that it repeats:";
pub const NOT_READ: &str = "What could not be read";
pub const NO_ROWS: &str = "Lines that are no rows";
pub const DOUBTS: &str = "Said in a way that may mean two things";
pub const IT_IS_MINE: &str = "It is a stitch of mine: uses 1, gives 1";
pub const EVENLY: &str = "Work it out in Even spacing";
/// Below the table.
pub const MARKS: &str = "✓ comes out, with the stitches after it. ✕ does not. ? is not read. In brackets: it stands on a line above that does not come out.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::PatternText => "The lines, typed or pasted",
        Name::Keep => STAYS,
        Name::Working => "In the round or flat",
        Name::Sizes => "Sizes, how many or what they are called",
        Name::Stitches => "Stitches on the needle before the first line",
        Name::OwnStitches => "My stitches",
        Name::Size => SIZE,
    }
}

/// What it means where the text stays.
pub const fn stays(keep: Keep) -> &'static str {
    match keep {
        Keep::OnPage => "The text is only on this page: it is gone when you close it.",
        Keep::OnDevice => {
            "The text is kept on this device, and in the copies that you save of it. It goes into no link."
        }
    }
}

/// What is wrong with a field.
pub fn problem(problem: &Problem) -> String {
    let name = problem.field.name::<Name>();
    match (name, problem.kind) {
        (Some(Name::PatternText), Kind::TooMany { most }) => fill_pattern(
            "This is too long to be worked at once: up to # letters can be, about a hundred pages. Take a part of it.",
            &[most],
        ),
        (Some(Name::Stitches), Kind::Missing) => {
            "Type how many stitches are on the needle before the first line, or begin with the cast-on.".into()
        }
        (Some(Name::Stitches), Kind::Differs { other: 1 }) => "There is one size: type one count.".into(),
        (Some(Name::Stitches), Kind::Differs { other }) => {
            fill_pattern("There are # sizes: type one count for all, or one for each.", &[other])
        }
        (Some(Name::Sizes), Kind::Unreadable(_)) => {
            "Type how many sizes there are, up to 30, or what they are called, as in S, M, L.".into()
        }
        (Some(Name::OwnStitches), Kind::Unreadable(_)) => {
            "Type the word and two whole numbers for each, as in “bobbly uses 1 gives 5”.".into()
        }
        _ => super::problem::sentence(&problem.kind),
    }
}

/// What a line is called: by its own name, or by its place.
pub fn line_name(line: &LineWorked, at: usize) -> String {
    match &line.called {
        Some(called) => called.clone(),
        None => fill_pattern("Line #", &[place(at)]),
    }
}

/// A place counted from nought, as people count.
pub fn place(at: usize) -> u32 {
    u32::try_from(at).map_or(u32::MAX, |at| at.saturating_add(1))
}

/// A count as it stands in a sentence.
fn count(stitches: u64) -> u32 {
    u32::try_from(stitches).unwrap_or(u32::MAX)
}

/// A size by its name; nothing where there is only one.
pub fn size_name(answer: &Answer, size: usize) -> Option<&str> {
    let name = answer.sizes.get(size).filter(|_| answer.sizes.len() > 1);
    name.map(String::as_str)
}

/// What comes of all lines in one sentence.
pub fn headline(answer: &Answer, text: &str) -> String {
    match answer.failures.first() {
        Some(failure) => failed(answer, failure, text),
        None if answer.worked == 0 => "None of these lines could be read as a row".into(),
        None => {
            let lines = match (answer.unread, answer.worked) {
                (1.., _) => "What could be read comes out".into(),
                (0, 1) => "The line comes out".into(),
                (0, 2) => "Both lines come out".into(),
                (0, lines) => fill_pattern("All # lines come out", &[lines]),
            };
            let sizes = if answer.sizes.len() > 1 { " in every size" } else { "" };
            lines + sizes
        }
    }
}

/// `Row 7 runs out 1 short in the 9th k2tog, in size M`.
pub fn failed(answer: &Answer, failure: &Failure, text: &str) -> String {
    let line = answer.lines.get(failure.line);
    let name = line.map_or_else(String::new, |line| line_name(line, failure.line));
    let what = reason(&failure.worked, text);
    match size_name(answer, failure.size) {
        Some(size) => fill_pattern_with("@ @, in size @", &[], &[&name, &what, size]),
        None => format!("{name} {what}"),
    }
}

/// In how many sizes a line fails, where it is not the first alone.
pub fn in_sizes(answer: &Answer, failure: &Failure) -> Option<String> {
    let all = u32::try_from(answer.sizes.len()).unwrap_or(u32::MAX);
    match failure.sizes {
        1 => None,
        sizes if sizes == all => Some("It comes out in no size.".into()),
        sizes => Some(fill_pattern_with(
            "It does not come out in # of @ sizes.",
            &[sizes],
            &[&number(all)],
        )),
    }
}

/// What it comes to: how many lines come out of how many.
pub fn outcome(answer: &Answer) -> (String, String) {
    let of = match answer.sizes.len() {
        0 | 1 => fill_pattern("Of # {line|lines}", &[answer.worked]),
        sizes => fill_pattern(
            "Of # {line|lines} in # {size|sizes}",
            &[answer.worked, count(sizes as u64)],
        ),
    };
    let well = answer.worked.saturating_sub(answer.failing);
    let mut comes = fill_pattern("# {comes|come} out", &[well]);
    if answer.unread > 0 {
        comes += &fill_pattern("; # more {is|are} not read", &[answer.unread]);
    }
    (of, comes)
}

/// A line that is no row.
pub fn no_row(line: &str) -> String {
    quoted(line)
}

/// Lines that are no rows and are not quoted.
pub fn more_no_rows(more: u32) -> String {
    fill_pattern("And # {line|lines} more.", &[more])
}

/// Places that could not be read and are not pointed at one by one.
pub fn more_unread(more: u32) -> String {
    fill_pattern(
        "And # {place|places} more that could not be read. Mend the first ones and look again.",
        &[more],
    )
}

/// Lines that may mean two things and are not told one by one.
pub fn more_doubts(more: u32) -> String {
    fill_pattern("And # {line|lines} more that may mean two things.", &[more])
}

/// What is wrong in a line.
pub fn fault_in(line: &LineWorked, at: usize, what: &Fault, text: &str) -> String {
    fill_pattern_with("@, @", &[], &[&line_name(line, at), &fault(what, text)])
}

/// A word of hers added to those that she wrote down.
pub fn own_stitch_added(before: &str, word: &str) -> String {
    let line = format!("{word} uses 1 gives 1");
    match before.trim_end() {
        "" => line,
        before => format!("{before}\n{line}"),
    }
}

/// A size where one is chosen.
pub fn one_size(name: &str) -> String {
    fill_pattern_with("size @", &[], &[name])
}

/// The words of a line behind its name, shortened.
pub fn behind_name(line: &LineWorked, text: &str) -> String {
    let rest = match &line.called {
        Some(called) => text.trim_start().strip_prefix(called.as_str()).unwrap_or(text),
        None => text,
    };
    let rest = rest.trim_start_matches([':', '.', '-', ' ']);
    match rest.char_indices().nth(SHOWN) {
        Some((end, _)) => format!(" {}…", rest.get(..end).unwrap_or_default()),
        None => format!(" {rest}"),
    }
}

/// So many letters of a line stand in the table.
const SHOWN: usize = 60;

/// A count in the table.
pub fn counted(stitches: u64) -> String {
    number(count(stitches))
}

/// Stitches that a line uses in the table; of one that is not read nobody knows.
pub fn used(worked: &Worked) -> String {
    match worked.outcome {
        Outcome::Unread => "–".into(),
        _ => counted(worked.used),
    }
}

/// The mark before the word of an outcome, in brackets where the count before is not sure.
pub fn mark(worked: &Worked) -> &'static str {
    match (worked.outcome, worked.stands_on) {
        (Outcome::ComesOut, None) => "✓\u{a0}",
        (Outcome::ComesOut, Some(_)) => "(✓)\u{a0}",
        (Outcome::NotWorked, _) => "–",
        (Outcome::Unread, _) => "?\u{a0}",
        (_, None) => "✕\u{a0}",
        (_, Some(_)) => "(✕)\u{a0}",
    }
}

/// Lines that are not listed.
pub fn not_listed(lines: u32) -> String {
    fill_pattern("Of the other # lines those that come out are not listed.", &[lines])
}

/// Failures that are not opened.
pub fn not_opened(failures: u32) -> String {
    fill_pattern(
        "# more {line does|lines do} not come out. Mend the first ones: others may stand on them.",
        &[failures],
    )
}

/// Where the count before a line is not sure.
pub fn stands_on(answer: &Answer, worked: &Worked) -> Option<String> {
    let at = worked.stands_on?;
    let line = answer.lines.get(at)?;
    Some(fill_pattern_with(
        "The count before it is not sure: @ does not come out.",
        &[],
        &[&line_name(line, at)],
    ))
}

#[cfg(test)]
mod tests;
