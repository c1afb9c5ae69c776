//! The view of the lines of a pattern: each of them worked for every size, the first that fails opened, and what would come
//! out in its place.

mod opened;
mod read;
mod states;
mod table;
mod unread;

use super::{Entry, State, Tool};
use crate::drawing::written as drawing;
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Start};
use crate::part::plain::{element, list, text_element};
use crate::part::{Figure, Form, Part, Part::Words, Summary, View, answered, good_to_know, wait};
use crate::words::written as words;
use loopwright::problem::Problem;
use loopwright::terms::{Keep, Working};
use loopwright::written::{Answer, Name, Question, SIZES, STITCHES, answer};
use yew::prelude::*;

fields! { FIELDS of Name, words::label;
    PatternText => Field::pattern().example(Start::Text(words::EXAMPLE)).in_sentence(),
    Keep => Field::choice::<Keep>().unlinked().in_sentence(),
    Working => Field::choice::<Working>().starts(Start::Text(Working::Flat.key())).in_sentence(),
    Sizes => Field::text().in_sentence().remarked(words::SIZES_REMARK),
    Stitches => Field::count(STITCHES)
        .offering(Kept::CastOn)
        .in_sentence()
        .only_if(is_one_size)
        .remarked(words::STITCHES_REMARK),
    Stitches => Field::counts(words::STITCHES_EXAMPLE)
        .in_sentence()
        .only_if(are_several_sizes)
        .remarked(words::STITCHES_REMARK),
    OwnStitches => Field::pattern().folded(words::OWN).remarked(words::OWN_REMARK),
    Size => Field::count(SIZES).in_answer(),
}

fn is_one_size(fields: &Fields) -> bool {
    read::sizes(fields).len() < 2
}

fn are_several_sizes(fields: &Fields) -> bool {
    !is_one_size(fields)
}

/// The lines of a pattern, worked.
pub struct Written;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Written>(words::TITLE);

impl Tool for Written {
    const ID: &'static str = "written";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = states::NAMED;
    const IS_HERS_ALONE: bool = true;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        read::question(fields)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    /// The text, where it stays, and what it is worked on.
    fn form(form: &Form) -> Html {
        let keep: Keep = form.view.fields.choice(Name::Keep);
        list(vec![
            element("div", "fields", form.asked(&[Name::PatternText])),
            form.line(&[Words(words::STAYS), Part::Field(Name::Keep)]),
            text_element("p", "quiet", words::stays(keep)),
            form.line(&[Words(words::WORKED), Part::Field(Name::Working)]),
            element("div", "fields", form.asked(&[Name::Sizes, Name::Stitches])),
            form.folds(None),
        ])
    }

    /// The first line that fails, the others, what could not be read, and the table of all.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let line = text_element("p", "row spoken", words::headline(answer, &question.text));
        let mut notes = words::bracket_notes(answer, &question.text);
        notes.push(words::CANNOT_JUDGE.into());
        list(vec![
            answered(words::LINE_BY_LINE, line, words::outcome(answer)),
            opened::failures(question, answer),
            unread::faults(view, question, answer),
            table::table(view, question, answer),
            table::doubts(answer),
            unread::no_rows(question, answer),
            good_to_know(notes),
            text_element("p", "source", words::SOURCE),
        ])
    }

    fn summary(_: &Fields, question: &Question, answer: &Answer) -> Summary {
        Summary {
            title: words::LINE_BY_LINE,
            lines: vec![words::headline(answer, &question.text)],
            outcome: words::outcome(answer),
            figures: vec![
                Figure::count("worked", answer.worked),
                Figure::count("failing", answer.failing),
                Figure::count("unread", answer.unread),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Three lines of writing, and a mark beside each.
    fn sign() -> Html {
        drawing::sign()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::tests::fields_of;

    fn read(link: &'static str) -> Result<Question, Vec<Problem>> {
        Written::read(&fields_of::<Written>(&State::new("", link)))
    }

    /// The stitches are one count where there is one size, and a list where there are several.
    #[test]
    fn stitches_go_by_the_sizes() {
        let stitches = |link| read(link).map(|question| question.stitches);
        assert_eq!(stitches("pattern_text=K10&stitches=10"), Ok(vec![10]));
        assert_eq!(stitches("pattern_text=K10&sizes=2&stitches=10 (12)"), Ok(vec![10, 12]));
        assert_eq!(stitches("pattern_text=K10&sizes=S, M&stitches=10"), Ok(vec![10]));
        assert_eq!(stitches("pattern_text=K10"), Ok(vec![]));
        assert!(stitches("pattern_text=K10&stitches=ten of them").is_err());
    }

    #[test]
    fn what_is_hers_is_read_from_its_lines() {
        let own = |link| read(link).map(|question| question.own.len());
        assert_eq!(own("pattern_text=K10&own_stitches=bobbly uses 1 gives 5"), Ok(1));
        assert!(own("pattern_text=K10&own_stitches=bobbly").is_err());
    }
}
