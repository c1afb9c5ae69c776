//! The question, "Which numbers of this pattern are mine?", and its answer: the text line by line, with her size marked.

use super::marked::{MarkedLine, marked};
use super::{
    Decision, Found, FromLine, Hers, Join, Name, SizesLine, StitchCount, counts, find, for_some, named, plain_text,
};
use crate::bounds::Bounds;
use crate::problem::{Kind, Problem};

/// A text has so many bytes: about a hundred printed pages, and more than any pattern has.
pub const TEXT: Bounds<u32> = Bounds::new(1, 250_000);

/// So many sizes are told apart.
pub const SIZES: Bounds<u32> = Bounds::new(2, 64);

/// A pattern, its sizes, and which of them is hers.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The text: [`TEXT`] bytes.
    pub text: String,
    /// The names of the sizes, [`SIZES`] of them; none where they are to be read in the pattern's own line.
    pub names: Vec<String>,
    /// Her size, counted from nought; none where it is not chosen yet, or is none of them.
    pub size: Option<usize>,
    /// Another one from a line on.
    pub from: Vec<FromLine>,
    /// Her word about lists that are in doubt.
    pub decisions: Vec<Decision>,
}

impl Question {
    /// Which numbers of a text are hers, where nothing else is said.
    pub const fn about(text: String) -> Self {
        Self {
            text,
            names: Vec::new(),
            size: None,
            from: Vec::new(),
            decisions: Vec::new(),
        }
    }
}

/// The text with her size marked in it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The names of the sizes.
    pub names: Vec<String>,
    /// The line from which they were read, counted from nought; none where they were told.
    pub named_in: Option<usize>,
    /// Every line that names sizes, the one that says it best first.
    pub offered: Vec<SizesLine>,
    /// Her size, counted from nought.
    pub size: Option<usize>,
    /// What was found.
    pub found: Found,
    /// The text line by line.
    pub lines: Vec<MarkedLine>,
    /// How many lists have a number that is hers.
    pub marked: usize,
    /// How many lists have still to be asked about.
    pub in_doubt: usize,
    /// Where two sizes meet.
    pub joins: Vec<Join>,
    /// Lines from which on another size was hers, and which are no longer there.
    pub lost: Vec<FromLine>,
    /// The stitch counts.
    pub counts: Vec<HerCount>,
    /// The text for her size only.
    pub plain: String,
}

/// A stitch count in her size.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct HerCount {
    /// How many.
    pub stitches: u32,
    /// What it may be a count of.
    pub of: StitchCount,
}

/// Marks her size in a text.
///
/// # Errors
/// A text that is empty or too long, or sizes that nobody has named.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    let text = question.text.as_str();
    if text.trim().is_empty() {
        return Err(vec![Problem::new(Name::PatternText, Kind::Missing)]);
    }
    let bytes = u32::try_from(text.len()).unwrap_or(u32::MAX);
    if let Some(problem) = Problem::of_count(Name::PatternText, bytes, TEXT) {
        return Err(vec![problem]);
    }
    let offered = named(text);
    let (names, named_in) = names(question, &offered);
    let number = u32::try_from(names.len()).unwrap_or(u32::MAX);
    if number < SIZES.least && question.names.is_empty() {
        return Err(vec![Problem::new(Name::Sizes, Kind::Missing)]);
    }
    if let Some(problem) = Problem::of_count(Name::Sizes, number, SIZES) {
        return Err(vec![problem]);
    }
    Ok(of_sizes(question, names, named_in, offered))
}

/// The names of the sizes, and the line from which they were read.
fn names(question: &Question, offered: &[SizesLine]) -> (Vec<String>, Option<usize>) {
    match offered.first() {
        Some(line) if question.names.is_empty() => (line.names.clone(), Some(line.line)),
        _ => (question.names.clone(), None),
    }
}

fn of_sizes(question: &Question, names: Vec<String>, named_in: Option<usize>, offered: Vec<SizesLine>) -> Answer {
    let text = question.text.as_str();
    let found = find(text, &names);
    let size = question.size.filter(|size| *size < names.len());
    // Without a size of hers nothing is marked: no size has this number.
    let hers = Hers {
        size: size.unwrap_or(usize::MAX),
        from: question.from.clone(),
    };
    let lines = marked(
        text,
        &found,
        &hers,
        &question.decisions,
        &for_some(text, &found, &names),
    );
    let has = |is_meant: fn(&MarkedLine) -> usize| lines.iter().map(is_meant).sum();
    Answer {
        marked: has(MarkedLine::marked),
        in_doubt: has(|line| line.asked.iter().filter(|asked| asked.is_open()).count()),
        joins: hers.joins(text, &found),
        lost: hers.lost(text, &found).cloned().collect(),
        counts: her_counts(text, &found, &hers),
        plain: plain_text(text, &found, &hers, &question.decisions),
        names,
        named_in,
        offered,
        size,
        found,
        lines,
    }
}

/// The counts in the size that is hers in their line.
fn her_counts(text: &str, found: &Found, hers: &Hers) -> Vec<HerCount> {
    let sizes = hers.by_line(text, found);
    let hers = |of: StitchCount| {
        let size = *sizes.get(of.line)?;
        let stitches = (*of.stitches.get(size)?)?;
        Some(HerCount { stitches, of })
    };
    counts(text, found).into_iter().filter_map(hers).collect()
}

/// The names of the sizes as they are typed: `S, M, L`, `S (M, L)`, `one, two`.
pub fn read_names(typed: &str) -> Vec<String> {
    let by_codes = named(&["Sizes: ", typed].concat()).into_iter().next();
    let by_marks = || {
        let marks = |mark: char| ",;/|()[]{}\n".contains(mark);
        let names = typed
            .split(marks)
            .map(|name| name.split_whitespace().collect::<Vec<_>>().join(" "));
        names.filter(|name| !name.is_empty()).collect::<Vec<String>>()
    };
    let by_marks = by_marks();
    match by_codes {
        Some(line) if line.names.len() >= by_marks.len() => line.names,
        _ => by_marks,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sizes_in_text::{DoubtKind, PieceKind, Verdict};

    const TEXT: &str = "Sizes: S (M, L)\nBody\nCast on 96 (108, 120) sts.\nWork 6 (7) rows, then (k1, p1) twice.";

    fn asked(size: Option<usize>) -> Answer {
        answer(&Question {
            size,
            ..Question::about(TEXT.into())
        })
        .unwrap()
    }

    #[test]
    fn her_size_is_marked_line_by_line() {
        let answer = asked(Some(1));
        assert_eq!((answer.names.len(), answer.named_in), (3, Some(0)));
        assert_eq!((answer.marked, answer.in_doubt), (2, 1));
        let hers = answer.lines[2]
            .pieces
            .iter()
            .find(|piece| piece.kind == PieceKind::Hers);
        assert_eq!(hers.map(|piece| &TEXT[piece.range.clone()]), Some("108"));
        assert_eq!(answer.lines[3].asked[0].kind, DoubtKind::TooFew);
        assert_eq!(answer.counts[0].stitches, 108);
        assert!(answer.plain.starts_with("Sizes: M\nBody\nCast on 108 sts."));
        // Each line is its own text, each byte once.
        for (line, range) in answer.lines.iter().zip(&answer.found.lines.ranges) {
            let shown: String = line.pieces.iter().map(|piece| &TEXT[piece.range.clone()]).collect();
            assert_eq!(shown, TEXT[range.clone()]);
        }
    }

    #[test]
    fn without_a_size_nothing_is_marked_and_all_is_counted() {
        let answer = asked(None);
        assert_eq!((answer.marked, answer.counts.len()), (0, 0));
        assert_eq!((answer.found.lists.len(), answer.in_doubt), (3, 1));
        assert_eq!(answer.plain, TEXT);
        assert_eq!(asked(Some(7)).size, None);
    }

    #[test]
    fn her_word_settles_a_doubt_and_another_size_begins_at_its_line() {
        let first = asked(Some(1));
        let doubtful = &first.found.lists[2];
        let decision = Decision {
            list: first.found.place(TEXT, doubtful).unwrap(),
            verdict: Verdict::Number { size: 2, entry: 1 },
        };
        let from = FromLine {
            line: first.found.lines.place(TEXT, 3).unwrap(),
            size: 2,
        };
        let answer = answer(&Question {
            size: Some(1),
            from: vec![from],
            decisions: vec![decision.clone()],
            ..Question::about(TEXT.into())
        })
        .unwrap();
        assert_eq!((answer.in_doubt, answer.marked, answer.joins.len()), (0, 3, 1));
        assert_eq!(answer.lines[3].asked[0].said, Some(decision.verdict));
        assert_eq!(answer.lines[3].begins, Some(2));
        assert!(answer.plain.ends_with("Work 7 rows, then (k1, p1) twice."));
    }

    #[test]
    fn what_is_empty_too_long_or_unnamed_gets_a_problem() {
        let problem = |text: &str| answer(&Question::about(text.into())).unwrap_err()[0];
        assert_eq!(problem(" \n"), Problem::new(Name::PatternText, Kind::Missing));
        assert_eq!(problem("Cast on 96 sts"), Problem::new(Name::Sizes, Kind::Missing));
        let long = problem(&"k1 ".repeat(400_000));
        assert_eq!(long, Problem::new(Name::PatternText, Kind::TooMany { most: 250_000 }));
        let one = answer(&Question {
            names: vec!["S".into()],
            ..Question::about("Cast on 96 sts".into())
        });
        assert_eq!(
            one.unwrap_err()[0],
            Problem::new(Name::Sizes, Kind::TooFew { least: 2 })
        );
    }

    #[test]
    fn names_are_read_as_they_are_typed() {
        for typed in ["S, M, L", "S (M, L)", "S/M/L", "S M L"] {
            assert_eq!(read_names(typed), ["S", "M", "L"], "{typed}");
        }
        assert_eq!(read_names("one, the  other"), ["one", "the other"]);
        assert_eq!(read_names("S"), ["S"]);
        assert_eq!(read_names(" "), [""; 0]);
    }
}
