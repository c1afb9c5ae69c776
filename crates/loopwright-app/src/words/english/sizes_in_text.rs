//! The words of one size marked through a pattern.

use super::intl::{fill_pattern, fill_pattern_with, fill_pattern_with_strings};
use super::page::listed;
use super::{Title, Worded};
use loopwright::problem::{Kind, Problem};
use loopwright::sizes_in_text::{Answer, DoubtKind, ForSome, HerCount, Name, Part, SIZES, Show, Verdict, line_number};

pub const TITLE: Title = Title {
    name: "Mark one size",
    asks: "Which of the numbers in my pattern are mine?",
};
pub const EXAMPLE: &str =
    "Paste the pattern here, or type a few lines of it.\nSizes: S (M, L)\nCast on 96 (108, 120) sts.";
pub const EXAMPLE_SIZES: &str = "S, M, L";
pub const STAYS: &str = "This text stays";
pub const WAITING: &str = "Your pattern appears here, with your size marked in every line.";
pub const FOUND: &str = "In this text";
pub const YOUR_SIZE: &str = "Your size";
pub const WHICH: &str = "Tap your size.";
pub const FOR_YOU: &str = "For you:";
pub const OPEN_FILE: &str = "Or open a text file";
pub const FILE_TOO_LONG: &str =
    "That file is larger than 1 MB, and was not read. A pattern is much shorter: save its text by itself.";
pub const FILE_UNREADABLE: &str =
    "That file could not be read as text. Open it in its own program, and copy the lines from there.";
pub const COPY: &str = "Copy as plain text";
pub const COPIED: &str = "Copied: your size only, without any marks.";
pub const NOT_COPIED: &str =
    "The browser did not let the page copy. Choose “only my size” above, and copy the lines by hand.";
pub const ANOTHER: &str = "Is another size yours further on?";
pub const ANOTHER_HOW: &str =
    "The hem of a larger one, for example. Tap the size, then the line from which on it is yours.";
pub const LEAVE_IT: &str = "Leave it";
pub const COUNTS: &str = "Stitch counts for your project";
pub const COUNTS_HOW: &str = "A tap keeps a count, and other tools offer it from then on.";
pub const TAKE_BACK: &str = "Ask me again";
pub const NO_STEP: &str = "A dash: your size has no such step.";
/// Where a tool has no way into a project, and why.
pub const STAYS_HERE: &str = "A pattern is somebody's work, so its text goes into no project, link or other page from here. Your place in the knitting is kept by the tools with rows, under “On the needles”.";
pub const SOURCE: &str =
    "That a pattern prints its sizes in one order, and what makes a list doubtful: common practice, no source.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::PatternText => "The pattern",
        Name::Keep => STAYS,
        Name::Sizes => "Its sizes, if no line of it names them",
        Name::Size => YOUR_SIZE,
        Name::Show => "Show",
        Name::Decided => "What you said about doubtful lists",
        Name::OtherSizes => "Another size from a line on",
        Name::Next => ANOTHER,
    }
}

impl Worded for Show {
    fn words(self) -> &'static str {
        match self {
            Self::Struck => "my size large, the others struck",
            Self::Only => "only my size",
            Self::All => "as it is printed",
        }
    }
}

/// What staying where it is means.
pub const fn keeping(is_kept: bool) -> &'static str {
    if is_kept {
        "It is kept on this device, and in the copies that you save. No link and no project takes it along."
    } else {
        "It is gone when you close or reload the page, and nothing of it is sent or stored. To have it again tomorrow, keep it on this device."
    }
}

/// What to do about a problem.
pub fn problem(problem: &Problem) -> String {
    let name = problem.field.name::<Name>();
    match (name, problem.kind) {
        (Some(Name::PatternText), Kind::TooMany { most }) => fill_pattern(
            "This is too long to be marked at once: up to # letters can be, about a hundred pages. Take a part of it.",
            &[most],
        ),
        (Some(Name::Sizes), Kind::Missing) => {
            "No line of this text names its sizes. Type them here, smallest first: S, M, L.".into()
        }
        (Some(Name::Sizes), Kind::TooFew { .. }) => "Name at least two sizes, with commas between: S, M, L.".into(),
        (Some(Name::Sizes), Kind::TooMany { .. }) => fill_pattern("Name # sizes at most.", &[SIZES.most]),
        (_, kind) => super::problem::sentence(&kind),
    }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// How many lists were found, and of how many numbers each.
pub fn headline(answer: &Answer) -> String {
    let lists = count(answer.found.lists.len());
    match lists {
        0 => fill_pattern("No list with # numbers was found", &[count(answer.names.len())]),
        lists => fill_pattern(
            "# {list|lists} of numbers for # sizes",
            &[lists, count(answer.names.len())],
        ),
    }
}

/// How many are in doubt, and how many are hers.
pub fn outcome(answer: &Answer) -> (String, String) {
    let doubt = match count(answer.in_doubt) {
        0 => "Nothing is in doubt.".to_owned(),
        doubts => fill_pattern("# {is|are} in doubt and {waits|wait} for your word.", &[doubts]),
    };
    match answer.size {
        None => (doubt, WHICH.into()),
        Some(_) => (
            [&doubt, " ", FOR_YOU].concat(),
            fill_pattern("# {number|numbers}", &[count(answer.marked)]),
        ),
    }
}

/// Above the text: for whom it is marked, also on paper.
pub fn marked_for(answer: &Answer) -> String {
    let name = answer.size.and_then(|size| answer.names.get(size));
    name.map_or_else(
        || "The pattern".into(),
        |name| fill_pattern_with("The pattern, for size @", &[], &[name]),
    )
}

/// Where the names of the sizes come from.
pub fn named_in(answer: &Answer) -> String {
    match answer.named_in {
        Some(line) => fill_pattern("The sizes are those of line #.", &[line_number(line)]),
        None => "The sizes are those that you named.".into(),
    }
}

/// A tap that takes the sizes of another line.
pub fn take_names(line: usize, names: &[String]) -> String {
    fill_pattern_with("Take line #: @", &[line_number(line)], &[&names.join(", ")])
}

/// What is in doubt about a list.
pub fn doubt(kind: DoubtKind, list: &str, sizes: usize) -> String {
    let pattern = match kind {
        DoubtKind::TooFew => "“@” has fewer numbers than the # sizes.",
        DoubtKind::TooMany => "“@” has more numbers than the # sizes.",
        DoubtKind::OutOfOrder => "In “@” the numbers do not go one way, as the other lists do.",
        DoubtKind::FarApart => "In “@” one number is far from its neighbours: a point or a digit may be missing.",
        DoubtKind::WrongBracket => "In “@” a bracket is closed by one of another kind.",
        DoubtKind::NotClosed => "In “@” a bracket is never closed.",
        DoubtKind::NotOpened => "In “@” a bracket is closed that was never opened.",
        DoubtKind::UnitAmong => "In “@” some numbers have a unit and the others have none.",
        DoubtKind::Strange => "In “@” something stands among the numbers that is none.",
        DoubtKind::SomeRanges => "“@” begins with a range: it may be rows, and no list.",
        DoubtKind::MayBeRepeat => "“@” may be a repeat, and no list of sizes.",
        DoubtKind::MayBeCount => "In “@” the bracket may only say how many stitches there are now.",
        DoubtKind::MayBeForAll => "“@” may be for every size.",
        DoubtKind::MayBeDate => "“@” may be a date.",
    };
    fill_pattern_with(pattern, &[count(sizes)], &[&begun(list)])
}

/// Letters of a list that are enough to know it by.
const ENOUGH: usize = 60;

fn begun(list: &str) -> String {
    let words = list.split_whitespace().collect::<Vec<_>>().join(" ");
    match words.char_indices().nth(ENOUGH) {
        Some((end, _)) => [&words[..end], "…"].concat(),
        None => words,
    }
}

pub const IS_LIST: &str = "One for each size, as it stands";
pub const IS_FOR_ALL: &str = "For every size";

/// A tap that says which number is hers.
pub fn mine(number: &str, size: &str) -> String {
    fill_pattern_with("For @ it is @", &[], &[size, number])
}

/// What she said.
pub fn said(verdict: Verdict, number: Option<&str>) -> String {
    match (verdict, number) {
        (Verdict::List, _) => "You said: one for each size, as it stands.".into(),
        (Verdict::ForAll, _) => "You said: for every size.".into(),
        (Verdict::Number { .. }, Some(number)) => fill_pattern_with("You said: yours is @.", &[], &[number]),
        (Verdict::Number { .. }, None) => "You said which is yours.".into(),
    }
}

/// The line speaks to some sizes only.
pub fn for_some(place: &ForSome, names: &[String], hers: Option<usize>) -> String {
    let named: Vec<String> = place
        .sizes
        .iter()
        .filter_map(|size| names.get(*size).cloned())
        .collect();
    let pattern = match hers.map(|size| place.sizes.contains(&size)) {
        Some(true) => "This line speaks to @: yours is among them.",
        Some(false) => "This line speaks to @ only: yours is not among them.",
        None => "This line speaks to @ only.",
    };
    fill_pattern_with(pattern, &[], &[&listed(&named)])
}

/// A tap on a line from which on another size is hers.
pub fn from_here(size: &str) -> String {
    fill_pattern_with("From here: @", &[], &[size])
}

/// That the line is still to be tapped.
pub fn tap_line(size: &str) -> String {
    fill_pattern_with(
        "Now tap “From here” at the line from which on @ is yours.",
        &[],
        &[size],
    )
}

/// From this line on another size is hers.
pub fn begins(size: &str) -> String {
    fill_pattern_with("From this line on your size is @.", &[], &[size])
}

pub const END_IT: &str = "Take this away";

/// Two sizes meet at a line.
pub fn join(line: usize, before: &str, after: &str) -> String {
    fill_pattern_with(
        "At line # size @ meets size @: see that the stitches before it are as many as those after it need.",
        &[line_number(line)],
        &[before, after],
    )
}

/// The line from which on another size was hers is gone.
pub fn lost(words: &str, size: &str) -> String {
    fill_pattern_with(
        "From the line “@” on @ was yours; there is no such line any more.",
        &[],
        &[&begun(words), size],
    )
}

/// One stitch count, and the line it comes from.
pub fn stitch_count(found: &HerCount) -> String {
    let line = line_number(found.of.line);
    let what = match (found.of.is_cast_on, found.of.part) {
        (true, None) => "cast on",
        (true, Some(part)) => return part_cast_on(line, found.stitches, part),
        (false, Some(part)) => self::part(part),
        (false, None) => return fill_pattern("Line #: # {stitch|stitches}", &[line, found.stitches]),
    };
    fill_pattern_with("Line #: # {stitch|stitches}, @", &[line, found.stitches], &[what])
}

fn part_cast_on(line: u32, stitches: u32, of: Part) -> String {
    fill_pattern_with("Line #: # {stitch|stitches} cast on, @", &[line, stitches], &[part(of)])
}

const fn part(part: Part) -> &'static str {
    match part {
        Part::Neck => "neck",
        Part::Body => "body",
        Part::Sleeve => "sleeve",
        Part::Underarm => "underarm",
    }
}

/// The working: what was looked for, and what was left alone.
pub fn steps(answer: &Answer) -> Vec<String> {
    let sizes = count(answer.names.len());
    vec![
        fill_pattern_with_strings("The sizes: @.", &[], vec![listed(&answer.names)]),
        fill_pattern(
            "Looked for: every run of # numbers in brackets, or with slashes, colons, dashes or commas between.",
            &[sizes],
        ),
        "Left alone: brackets with words in them, such as (k1, p1), rows 1-4, needles, gauges and dates.".into(),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::sizes_in_text::{Question, answer};

    fn asked(text: &str, size: Option<usize>) -> Answer {
        let question = Question {
            size,
            ..Question::about(text.into())
        };
        answer(&question).unwrap()
    }

    #[test]
    fn the_top_says_what_was_found_and_what_is_hers() {
        let text = "Sizes: S (M, L)\nCast on 96 (108, 120) sts.\nKnit 6 (7) rows.";
        let found = asked(text, Some(1));
        assert_eq!(headline(&found), "3 lists of numbers for 3 sizes");
        let (before, after) = outcome(&found);
        assert_eq!(before, "1 is in doubt and waits for your word. For you:");
        assert_eq!(after, "2 numbers");
        assert_eq!(outcome(&asked(text, None)).1, "Tap your size.");
        assert_eq!(named_in(&found), "The sizes are those of line 1.");
        assert_eq!(stitch_count(&found.counts[0]), "Line 2: 108 stitches, cast on");
    }

    #[test]
    fn a_doubt_is_pointed_at_with_its_own_words() {
        assert_eq!(
            doubt(DoubtKind::TooFew, "6\n(7)", 3),
            "“6 (7)” has fewer numbers than the 3 sizes."
        );
        let long = "1 ".repeat(100);
        assert!(doubt(DoubtKind::MayBeDate, &long, 3).contains('…'));
    }
}
