//! The view of size and ease: the bust, the pattern's list, what the list measures; the size, how all of them sit on one
//! scale, what the knitter's own gauge moves, the sum.

mod read;
mod standard;
mod states;

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::girths::{self, Girths, Row};
use crate::fields;
use crate::form::kept::{Kept, Offer, Value};
use crate::form::{Field, Fields, TAPE};
use crate::part::plain::{element, folded, items, list, text, text_element};
use crate::part::{Figure, Form, Summary, View, answered, keep_offer, wait, working};
use crate::store::Typed;
use crate::words::page::{self, MORE};
use crate::words::sizing::{self as words, Headline, Sentences};
use loopwright::problem::{FieldPath, Problem};
use loopwright::sizing::{
    Answer, Cloth, EASE, GIRTH, GarmentKind, Measured, Name, Note, Question, Ranked, Room, Wanted, Why, answer,
};
use loopwright::tables::body;
use yew::prelude::*;

/// A page draws at most this many sizes: the best.
const MOST_DRAWN: usize = 10;

fields! { FIELDS of Name, words::label;
    Bust => Field::length(&TAPE, GIRTH).kept(Kept::Bust),
    Sizes => Field::lengths(words::EXAMPLE_SIZES).kept(Kept::Sizes),
    Listed => Field::choice::<Measured>(),
    Fit => Field::choice::<Wanted>().only_if(is_fit_asked),
    Fit => Field::choice::<Room>().only_if(is_room_asked),
    Ease => Field::length(&TAPE, EASE).only_if(is_ease_asked),
    Ease => Field::length(&TAPE, EASE).labelled(words::ROOM).only_if(is_measured_room_asked),
    Percent => Field::text().only_if(is_percent_asked),
    Garment => Field::choice::<GarmentKind>().folded(MORE),
    HighBust => Field::length(&TAPE, GIRTH).folded(MORE).only_if(is_sweater),
    Round => Field::length(&TAPE, GIRTH).folded(MORE).only_if(is_wrap),
    UpperArm => Field::length(&TAPE, GIRTH).folded(MORE).only_if(is_wrap).kept(Kept::UpperArm),
    Neck => Field::length(&TAPE, GIRTH).folded(MORE).only_if(is_wrap),
    Head => Field::length(&TAPE, GIRTH).folded(MORE).only_if(is_wrap).kept(Kept::Head),
    Cloth => Field::choice::<Cloth>().folded(MORE),
    PatternStitches => Field::gauge().beside(Name::PatternRows.key()).folded(MORE).kept(Kept::PatternStitches),
    PatternRows => Field::gauge().of_rows().beside(Name::PatternStitches.key()).folded(MORE).kept(Kept::PatternRows),
    OwnStitches => Field::gauge().beside(Name::OwnRows.key()).folded(MORE).kept(Kept::GaugeStitches),
    OwnRows => Field::gauge().of_rows().beside(Name::OwnStitches.key()).folded(MORE).kept(Kept::GaugeRows),
    Stitches => Field::counts(words::EXAMPLE_STITCHES).folded(MORE),
}

fn is_wrap(fields: &Fields) -> bool {
    fields.choice::<GarmentKind>(Name::Garment) == GarmentKind::Wrap
}

fn is_sweater(fields: &Fields) -> bool {
    !is_wrap(fields)
}

fn are_garments_listed(fields: &Fields) -> bool {
    fields.choice::<Measured>(Name::Listed) == Measured::Garment
}

fn is_fit_asked(fields: &Fields) -> bool {
    are_garments_listed(fields) && is_sweater(fields)
}

fn is_room_asked(fields: &Fields) -> bool {
    are_garments_listed(fields) && is_wrap(fields)
}

fn is_ease_asked(fields: &Fields) -> bool {
    is_fit_asked(fields) && fields.choice::<Wanted>(Name::Fit) == Wanted::Ease
}

fn is_percent_asked(fields: &Fields) -> bool {
    is_fit_asked(fields) && fields.choice::<Wanted>(Name::Fit) == Wanted::Percent
}

fn is_measured_room_asked(fields: &Fields) -> bool {
    is_room_asked(fields) && fields.choice::<Room>(Name::Fit) == Room::Ease
}

/// Size and ease.
pub struct Sizing;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Sizing>(words::TITLE);

impl Tool for Sizing {
    const ID: &'static str = "sizing";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = states::NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        read::read(fields)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn offers(answer: &Answer) -> Vec<Offer> {
        let girth = answer.ranked.first().and_then(|size| size.garment);
        girth
            .map(|girth| (Kept::Girth, Value::Length(girth)))
            .into_iter()
            .collect()
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        let pick = answer.ranked.first();
        let girth = pick.and_then(|size| size.garment);
        vec![(Gift::Girth, girth.map(|girth| TAPE.typed(girth)))]
    }

    fn form(form: &Form) -> Html {
        let tape = body::TAPE.iter().map(|step| words::tape(step.tape).to_owned());
        let how = vec![
            items("ol", tape.collect()),
            text_element("p", "source", words::HOW_SOURCE),
        ];
        list(vec![
            form.columns(),
            folded("how", words::HOW, how),
            standard::offered(form.view),
        ])
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let Some(best) = answer.ranked.first() else {
            return Html::default();
        };
        let lengths = view.lengths(&TAPE);
        shown(view, &Sentences { question, lengths }, answer, best)
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let lengths = fields.lengths(&TAPE);
        let best = answer.ranked.first();
        let headline = best.map(|best| Sentences { question, lengths }.headline(answer, best));
        let mut figures = vec![
            Figure::count("size", answer.pick as u32 + 1),
            Figure::length("body", answer.body),
        ];
        figures.extend(best.and_then(|best| best.ease).map(|ease| Figure::length("ease", ease)));
        match headline {
            Some(Headline { title, line, outcome }) => Summary {
                title,
                lines: vec![line],
                outcome,
                figures,
            },
            None => Summary::default(),
        }
    }

    /// First to say what the list measures, where that is all that is missing.
    fn wait(view: &View, problems: &[Problem]) -> Html {
        let is_begun = view.fields.is_typed(Name::Bust) || view.fields.is_typed(Name::Sizes);
        let sentence = match problems {
            [only] if only.field == FieldPath::from(Name::Listed) => words::WHICH,
            _ if is_begun => page::STILL,
            _ => words::WAITING,
        };
        wait(view, problems, sentence)
    }

    fn problem(fields: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem, &fields.text(problem.field), fields.lengths(&TAPE))
    }

    /// Three sizes about a body.
    fn sign() -> Html {
        girths::sign()
    }
}

/// The answer with its next best, its drawing and its sum.
fn shown(view: &View, sentences: &Sentences, answer: &Answer, best: &Ranked) -> Html {
    let Headline { title, line, outcome } = sentences.headline(answer, best);
    let mut content = vec![answered(title, text_element("p", "row", line), outcome)];
    if matches!(answer.why, Why::Tie(_) | Why::CloseCall(_)) {
        content.push(text_element("p", "practice", page::PRACTICE));
    }
    // The line always stands there, so that what is below keeps its place while a list is typed.
    content.push(text_element("p", "next", sentences.next_best(answer.ranked.get(1))));
    content.push(element("figure", "scale", vec![drawn(sentences, answer)]));
    if answer.ranked.len() > 2 {
        let all = answer.ranked.iter().map(|ranked| sentences.among_all(ranked));
        content.push(folded("places", words::ALL_SIZES, vec![items("ol", all.collect())]));
    }
    if let Some(moves) = &answer.moves {
        let moves = vec![
            text_element("h3", "", words::MOVES),
            items("ul", words::moves(moves, sentences.lengths)),
        ];
        content.push(element("section", "notes", moves));
    }
    content.push(notes(sentences, &answer.notes));
    content.extend(Sizing::offers(answer).into_iter().map(|offer| keep_offer(view, offer)));
    let fine = Sentences {
        lengths: sentences.lengths.fine(),
        ..*sentences
    };
    let steps = answer.steps.iter().map(|step| fine.step(step));
    content.push(working(steps.collect(), words::SOURCE));
    list(content)
}

/// What else she should know, each that stands on practice with its mark. What says that she is outside all sizes is the
/// headline already.
fn notes(sentences: &Sentences, notes: &[Note]) -> Html {
    let drawn = notes.iter().filter(|note| !note.is_beyond()).map(|note| {
        let mut content = vec![text(sentences.note(note).into())];
        if note.is_practice() {
            content.push(text_element("small", "practice", page::PRACTICE));
        }
        element("li", "", content)
    });
    let drawn: Vec<Html> = drawn.collect();
    if drawn.is_empty() {
        return Html::default();
    }
    let titled = vec![text_element("h3", "", page::NOTES), element("ul", "", drawn)];
    element("section", "notes", titled)
}

/// All sizes on one scale, in the order of the list; the best of them, where there are many.
fn drawn(sentences: &Sentences, answer: &Answer) -> Html {
    let is_beyond = answer.notes.iter().any(Note::is_beyond);
    let best = &answer.ranked[..answer.ranked.len().min(MOST_DRAWN)];
    let row = |size: usize| {
        let place = best.iter().position(|ranked| ranked.size == size)?;
        Some(Row {
            name: sentences.drawn_name(place, &best[place], is_beyond),
            caption: sentences.drawn(&best[place]),
            girth: best[place].girth,
            place,
        })
    };
    let rows: Vec<Row> = (0..sentences.question.sizes.len()).filter_map(row).collect();
    let body = sentences.body(answer);
    let target = answer.target.map(|target| (target, sentences.target(target)));
    let words = words::drawing(
        &body,
        target.as_ref().map(|(_, words)| words.as_str()),
        rows.iter().map(|row| (row.name.as_str(), row.caption.as_str())),
    );
    girths::girths(&Girths {
        body: (answer.body, body),
        target,
        rows,
        words,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One field is asked in two ways, and what was chosen in the one is no choice of the other.
    #[test]
    fn a_sweater_is_asked_for_ease_and_a_wrap_for_room() {
        let label = |link: &'static str| {
            let fields = crate::tool::tests::fields_of::<Sizing>(&State::new("", link));
            let row = fields.row(FieldPath::from(Name::Ease));
            row.filter(|row| (row.asked)(&fields)).map(|row| row.label)
        };
        let ease = words::label(Name::Ease);
        assert_eq!(label("listed=garment&fit=ease"), Some(ease));
        assert_eq!(label("listed=garment&garment=wrap&fit=ease"), Some(words::ROOM));
        assert_eq!(label("listed=garment&garment=wrap&fit=loose"), None);
        assert_eq!(label("listed=body&fit=ease"), None);
    }
}
