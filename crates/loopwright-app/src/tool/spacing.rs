//! The view of even spacing: a sentence with fields in it, the row, the ring or comb of the needle, the sum.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::needle::{self, Needle};
use crate::fields;
use crate::form::kept::{Kept, Value};
use crate::form::{Field, Fields, Reader, Start};
use crate::part::plain::{element, element_with, list, text_element};
use crate::part::{
    Figure, Form, Part, Part::Words, Summary, View, answer_choice, answered, keep_count, notes, row, wait, working,
};
use crate::store::Typed;
use crate::words::followed;
use crate::words::page::MORE;
use crate::words::row::line;
use crate::words::spacing as words;
use loopwright::bounds::Bounds;
use loopwright::choice::Key;
use loopwright::follow::{Event, Plan};
use loopwright::problem::Problem;
use loopwright::spacing::{
    Answer, Ask, Asked, Decrease, Edge, EdgeKind, Fabric, Face, Increase, Knitting, MULTIPLE, Marker, Name, Order,
    Question, STITCHES, Spaced, USUAL_EDGE, Way, Working, answer, plan,
};
use yew::prelude::*;

/// Numbers in the second field; what is too many there is for the maths to say.
const AMOUNTS: Bounds<u32> = Bounds::new(0, STITCHES.most * 2);

/// A page draws at most this many changes as marks.
const MOST_DRAWN: usize = 2_000;

/// Places listed where the text is too long to knit from.
const MOST_LISTED: usize = 600;

/// Places shown before the page says that there are more.
const FIRST_LISTED: usize = 120;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=132&amount=16"),
    State::new("increases", "stitches=96&ask=gain&amount=20"),
    State::new("flat-mirrored", "stitches=61&amount=7&knitting=flat&edge=mirrored"),
    State::new("purl-rib", "stitches=120&amount=12&face=purl&fabric=rib"),
    State::new("multiple", "stitches=131&ask=multiple&amount=8&plus=3"),
    State::new("impossible", "stitches=132&amount=70"),
    State::new("odd-double", "stitches=132&ask=reach&amount=117&decrease=sk2p"),
    State::new("unreadable", "stitches=13z&amount=7 1/2"),
    State::new("one-change", "stitches=24&amount=1"),
    State::new("sixty-changes", "stitches=510&amount=60"),
    State::new("extreme", "stitches=100000&amount=31416&order=even"),
];

fields! { FIELDS of Name, words::label;
    Stitches => Field::count(STITCHES).offering_counts().in_sentence(),
    Ask => Field::choice::<Asked>().in_sentence(),
    Amount => Field::count(AMOUNTS).in_sentence(),
    Plus => Field::count(Bounds::new(0, MULTIPLE.most)).starts(Start::Count(0)).in_sentence().only_if(is_multiple),
    Knitting => Field::choice::<Working>().in_sentence(),
    Decrease => Field::choice::<Decrease>().folded(MORE).only_if(may_decrease),
    Increase => Field::choice::<Increase>().folded(MORE).only_if(may_increase),
    Edge => Field::choice::<EdgeKind>().folded(MORE).only_if(is_flat),
    Marker => Field::choice::<Marker>().folded(MORE).only_if(is_round),
    EdgePlain => Field::count(Bounds::new(0, STITCHES.most))
        .starts(Start::Count(USUAL_EDGE))
        .offering(Kept::Edge)
        .folded(MORE)
        .only_if(has_plain_edge),
    Face => Field::choice::<Face>().folded(MORE),
    Fabric => Field::choice::<Fabric>().folded(MORE),
    Order => Field::text().in_answer(),
}

fn is_multiple(fields: &Fields) -> bool {
    fields.choice::<Asked>(Name::Ask) == Asked::Multiple
}

fn may_decrease(fields: &Fields) -> bool {
    match fields.choice(Name::Ask) {
        Asked::Lose | Asked::Reach | Asked::Multiple | Asked::Decreases => true,
        Asked::Gain | Asked::Increases => false,
    }
}

fn may_increase(fields: &Fields) -> bool {
    match fields.choice(Name::Ask) {
        Asked::Gain | Asked::Reach | Asked::Multiple | Asked::Increases => true,
        Asked::Lose | Asked::Decreases => false,
    }
}

fn is_flat(fields: &Fields) -> bool {
    fields.choice::<Working>(Name::Knitting) == Working::Flat
}

fn is_round(fields: &Fields) -> bool {
    !is_flat(fields)
}

fn has_plain_edge(fields: &Fields) -> bool {
    is_flat(fields) && fields.choice::<EdgeKind>(Name::Edge) == EdgeKind::AtLeast
}

/// Even spacing.
pub struct Spacing;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Spacing>(words::TITLE);

impl Tool for Spacing {
    const ID: &'static str = "spacing";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            stitches: reader.count(Name::Stitches),
            ask: ask(&mut reader),
            knitting: knitting(&mut reader),
            decrease: reader.choice(Name::Decrease),
            increase: reader.choice(Name::Increase),
            face: reader.choice(Name::Face),
            fabric: reader.choice(Name::Fabric),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        vec![(Gift::After, Value::Count(answer.after).as_typed())]
    }

    fn plan(fields: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let chosen = chosen_way(fields, answer);
        // Nobody knits from a text that is too long, and the page says what to knit instead.
        let way = if chosen.readable {
            chosen
        } else {
            &answer.ways[answer.suggested]
        };
        let plan = plan(question, answer, way).for_hand(fields.settings().hand(), |spaced| spaced);
        let told = |event: &Event<Spaced>| followed::spaced(plan.knitting, event.doing, event.written.as_ref());
        Some(plan.told(told))
    }

    fn form(form: &Form) -> Html {
        let mut want = vec![
            Words(words::AND_WANT),
            Part::Field(Name::Ask),
            Part::Field(Name::Amount),
        ];
        if is_multiple(&form.view.fields) {
            want.extend([Words(words::PLUS), Part::Field(Name::Plus)]);
        }
        list(vec![
            form.line(&[
                Words(words::I_HAVE),
                Part::Field(Name::Stitches),
                Words(words::STITCHES),
            ]),
            form.line(&want),
            form.line(&[Words(words::WORKING), Part::Field(Name::Knitting)]),
            form.columns(),
        ])
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        shown(view, question, answer)
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        let round = matches!(question.knitting, Knitting::Round { .. });
        let way = chosen_way(fields, answer);
        Summary {
            title: words::once(round),
            lines: vec![line(&way.row)],
            outcome: words::outcome(answer),
            figures: vec![
                Figure::count("before", answer.before),
                Figure::count("after", answer.after),
                Figure::count("changes", answer.changes),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    fn problem(_: &Fields, question: Option<&Question>, problem: &Problem) -> String {
        words::problem(question, problem)
    }

    /// A ring of twenty stitches with five decreases.
    fn sign() -> Html {
        needle::ring(&Needle {
            stitches: 20,
            places: vec![2, 6, 10, 14, 18],
            uses: 2,
            gives: 1,
            caption: None,
        })
    }
}

fn ask(reader: &mut Reader) -> Ask {
    let amount = reader.count(Name::Amount);
    match reader.choice(Name::Ask) {
        Asked::Lose => Ask::Lose(amount),
        Asked::Gain => Ask::Gain(amount),
        Asked::Reach => Ask::Reach(amount),
        Asked::Multiple => Ask::Multiple {
            of: amount,
            plus: reader.count(Name::Plus),
        },
        Asked::Decreases => Ask::Decreases(amount),
        Asked::Increases => Ask::Increases(amount),
    }
}

fn knitting(reader: &mut Reader) -> Knitting {
    match reader.choice(Name::Knitting) {
        Working::Round => Knitting::Round {
            end_on_change: reader.choice::<Marker>(Name::Marker) == Marker::EndOnChange,
        },
        Working::Flat => Knitting::Flat {
            edge: match reader.choice(Name::Edge) {
                EdgeKind::Half => Edge::Half,
                EdgeKind::AtLeast => Edge::AtLeast(reader.count(Name::EdgePlain)),
                EdgeKind::Mirrored => Edge::Mirrored,
            },
        },
    }
}

/// The answer in the order it is chosen, with its drawing and its sum.
fn shown(view: &View, question: &Question, answer: &Answer) -> Html {
    let way = chosen_way(&view.fields, answer);
    let round = matches!(question.knitting, Knitting::Round { .. });
    let mut marks = Vec::new();
    for change in way.row.changes().take(MOST_DRAWN + 1) {
        marks.push(change.after as u32);
    }
    let listed = places(&marks, answer.changes, way.readable);
    let line = if way.readable {
        row(&way.row)
    } else {
        let blocks = row(&answer.ways[answer.suggested].row);
        list(vec![text_element("p", "", words::too_long(way.row.terms())), blocks])
    };
    list(vec![
        answered(words::once(round), line, words::outcome(answer)),
        neighbours(view, answer),
        orders(view, answer),
        figure(answer, marks, round),
        listed,
        notes(answer.notes.iter().map(words::note).collect(), &way.row),
        keep_count(view, answer.after),
        working(answer.steps.iter().map(words::step).collect(), words::SOURCE),
    ])
}

/// The order the knitter chose, or the suggested one.
fn chosen_way<'a>(fields: &Fields, answer: &'a Answer) -> &'a Way {
    let order = Order::from_key(&fields.text(Name::Order.into()));
    let chosen = answer.ways.iter().find(|way| Some(way.order) == order);
    chosen.unwrap_or(&answer.ways[answer.suggested])
}

/// The orders it can be written in, where there are several. An order that is none, as a link may bring it, is said.
fn orders(view: &View, answer: &Answer) -> Html {
    let written = view.fields.text(Name::Order.into());
    if !written.is_empty() && Order::from_key(&written).is_none() {
        let said = text_element("p", "advice", words::no_order(&written));
        return list(vec![said, choice_of_order(view, answer)]);
    }
    choice_of_order(view, answer)
}

fn choice_of_order(view: &View, answer: &Answer) -> Html {
    if answer.ways.len() < 2 {
        return Html::default();
    }
    let option = |way: &Way| (way.order.key(), words::order(way.order, way.drift));
    let options = answer.ways.iter().map(option).collect();
    let chosen = chosen_way(&view.fields, answer).order.key();
    element("div", "line", vec![answer_choice(view, Name::Order, options, chosen)])
}

/// The counts either side, when a multiple was asked for: a tap goes there.
fn neighbours(view: &View, answer: &Answer) -> Html {
    let Some(multiples) = answer.multiples else {
        return Html::default();
    };
    let mut line = vec![text_element("span", "", words::MULTIPLES)];
    for reached in [multiples.below, multiples.above].into_iter().flatten() {
        let set = vec![
            (Name::Ask.into(), Asked::Reach.key().into()),
            (Name::Amount.into(), reached.stitches.to_string()),
        ];
        line.push(view.sheet.setting(words::reached(answer.before, &reached), set));
    }
    element("p", "line", line)
}

/// The drawing, with how a ring is read below it.
fn figure(answer: &Answer, places: Vec<u32>, round: bool) -> Html {
    let mut figure = vec![drawn(answer, places, round)];
    if round {
        figure.push(text_element("figcaption", "quiet", words::RING_KEY));
    }
    element("figure", "needle", figure)
}

fn drawn(answer: &Answer, places: Vec<u32>, round: bool) -> Html {
    let caption = needle::Caption {
        text: words::drawing(answer, &places, round),
        count: words::counts(answer),
        changes: words::changes(answer),
    };
    let picture = Needle {
        stitches: answer.before,
        places,
        uses: answer.change.uses(),
        gives: answer.change.gives(),
        caption: Some(caption),
    };
    if round {
        needle::ring(&picture)
    } else {
        needle::comb(&picture)
    }
}

/// Where the changes fall, folded away unless the row is too long to knit from.
fn places(marks: &[u32], changes: u32, readable: bool) -> Html {
    let most = if readable { FIRST_LISTED } else { MOST_LISTED };
    let mut places = Vec::new();
    for mark in marks.iter().take(most) {
        places.push(text_element("li", "", mark.to_string()));
    }
    let content = vec![
        text_element("summary", "", words::PLACES),
        text_element("p", "", words::places(places.len() as u32, changes)),
        element("ol", "numbers", places),
    ];
    let attributes = [("class", "places"), ("open", "open")];
    element_with("details", &attributes[..if readable { 1 } else { 2 }], content)
}
