//! The view of the cast-on count: how wide and at what gauge, the count, the needle with its markers, and a tally that
//! is tapped at each marker while casting on. A tap is kept like any other figure: the stitches that are on the needle.

use super::next::Gift;
use super::{Entry, State, Tool};
use crate::drawing::cast_on as drawing;
use crate::fields;
use crate::form::kept::{Kept, Offer, Value};
use crate::form::{Field, Fields, Reader, Start, TAPE, plus_behind, read_multiple};
use crate::part::plain::{button, element, items, list, status, text, text_element};
use crate::part::{
    Figure, Form, Part, Part::Words, Summary, View, answer_choice, answered, good_to_know, keep_count, keep_offer,
    wait, working,
};
use crate::store::Typed;
use crate::words::intl::number;
use crate::words::page::{MORE, PRACTICE};
use crate::words::{Worded, cast_on as words};
use loopwright::bounds::Bounds;
use loopwright::cast_on::{
    Answer, Distance, EDGE, Join, Knitting, MULTIPLE, MarkerPlan, Multiple, Name, PLUS, Question, STITCHES, USUAL_EDGE,
    USUAL_SEAM, WIDTH, Working, answer, plan,
};
use loopwright::choice::Key;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use yew::prelude::*;

/// The named states.
const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "width=100&gauge=21"),
    State::new("multiple", "width=100&gauge=21&multiple=8&plus=3&on=60"),
    State::new("as-near", "width=100&gauge=22&multiple=8"),
    State::new("plus", "width=100&gauge=22&knitting=flat&multiple=8 + 3"),
    State::new(
        "flat-sewn",
        "width=49.5&gauge=21 1/2&knitting=flat&multiple=4&plus=2&edge=2",
    ),
    State::new("one-more", "width=54&gauge=20&extra=extra&every=50&on=109"),
    State::new("impossible", "width=20 m&gauge=400&knitting=flat&edge=99&multiple=0"),
    State::new("unreadable", "width=wide&gauge=21 cm"),
    State::new("extreme", "width=20 m&gauge=400&on=40000"),
];

fields! { FIELDS of Name, words::label;
    Knitting => Field::choice::<Working>().in_sentence(),
    Width => Field::length(&TAPE, WIDTH).labelled_by(width_label).offering(Kept::Girth),
    Gauge => Field::gauge().kept(Kept::GaugeStitches),
    Multiple => Field::count(MULTIPLE)
        .with_plus()
        .starts(Start::Count(Multiple::ANY.of))
        .kept(Kept::Multiple)
        .folded(MORE),
    Plus => Field::count(PLUS).starts(Start::From(plus_start)).folded(MORE),
    Edge => Field::count(EDGE)
        .starts(Start::Count(USUAL_EDGE))
        .kept(Kept::Edge)
        .folded(MORE)
        .only_if(is_flat)
        .remarked(words::OUTSIDE),
    Seam => Field::count(EDGE)
        .starts(Start::Count(USUAL_SEAM))
        .folded(MORE)
        .only_if(is_flat)
        .remarked(words::OUTSIDE_PRACTICE),
    Extra => Field::choice::<Join>().folded(MORE).only_if(is_round),
    Every => Field::choice::<Distance>().in_answer(),
    On => Field::count(Bounds::new(0, STITCHES.most)).starts(Start::Count(0)).in_answer(),
}

fn width_label(fields: &Fields) -> &'static str {
    words::width_label(fields.choice(Name::Knitting))
}

fn plus_start(fields: &Fields) -> String {
    plus_behind(fields, Name::Multiple)
}

fn is_flat(fields: &Fields) -> bool {
    match fields.choice(Name::Knitting) {
        Working::Flat => true,
        Working::Round => false,
    }
}

fn is_round(fields: &Fields) -> bool {
    !is_flat(fields)
}

/// How many to cast on.
pub struct CastOn;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<CastOn>(words::TITLE);

impl Tool for CastOn {
    const ID: &'static str = "cast_on";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            width: reader.length(Name::Width),
            gauge: reader.gauge(Name::Gauge),
            multiple: read_multiple(&mut reader, Name::Multiple, Name::Plus),
            knitting: knitting(&mut reader),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn offers(answer: &Answer) -> Vec<Offer> {
        vec![(Kept::CastOn, Value::Count(answer.pick.cast_on))]
    }

    fn gifts(_: &Question, answer: &Answer) -> Vec<(Gift, Option<Typed>)> {
        vec![
            (Gift::CastOn, Value::Count(answer.pick.cast_on).as_typed()),
            (Gift::After, Value::Count(answer.pick.worked).as_typed()),
        ]
    }

    fn plan(fields: &Fields, question: &Question, answer: &Answer) -> Option<Plan<String>> {
        let plan = plan(question, answer, fields.choice(Name::Every));
        Some(plan.told(|event| words::followed(&event.doing)))
    }

    fn form(form: &Form) -> Html {
        list(vec![
            form.line(&[Words(words::I_KNIT), Part::Field(Name::Knitting)]),
            form.columns(),
        ])
    }

    /// The count, the needle, the tally and the sum.
    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        let lengths = view.lengths(&TAPE);
        let line = text_element("p", "row", words::headline(answer));
        let offers = Self::offers(answer).into_iter().map(|offer| keep_offer(view, offer));
        list(vec![
            answered(
                words::title(question.knitting),
                line,
                words::outcome(question, answer, lengths),
            ),
            text_element("p", "", words::widths(answer, lengths)),
            text_element("p", "quiet", words::NEIGHBOURS),
            items("ul", words::neighbours(answer, lengths)),
            list(offers.collect()),
            keep_count(view, answer.pick.worked),
            counting(view, answer),
            good_to_know(answer.notes.iter().map(words::note).collect()),
            working(words::steps(question, answer, lengths), words::SOURCE),
        ])
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        Summary {
            title: words::title(question.knitting),
            lines: vec![words::headline(answer)],
            outcome: words::outcome(question, answer, fields.lengths(&TAPE)),
            figures: vec![
                Figure::count("cast_on", answer.pick.cast_on),
                Figure::length("width", answer.pick.width),
            ],
        }
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        wait(view, problems, words::WAITING)
    }

    /// A needle with two markers and an open group.
    fn sign() -> Html {
        drawing::needle(&MarkerPlan::of(26, 10), 0, "", &[String::new(), String::new()])
    }
}

fn knitting(reader: &mut Reader) -> Knitting {
    match reader.choice(Name::Knitting) {
        Working::Round => Knitting::Round {
            extra: match reader.choice(Name::Extra) {
                Join::Plain => false,
                Join::Extra => true,
            },
        },
        Working::Flat => Knitting::Flat {
            edge: reader.count(Name::Edge),
            seam: reader.count(Name::Seam),
        },
    }
}

/// The needle with its markers, and the tally.
fn counting(view: &View, answer: &Answer) -> Html {
    let distance: Distance = view.fields.choice(Name::Every);
    let plan = answer.markers_at(distance);
    let on = on_needle(&view.fields).min(plan.stitches);
    let counts: Vec<String> = plan.marks().into_iter().map(number).collect();
    let distances = Distance::ALL.iter().map(|each| (each.key(), each.words().to_owned()));
    let every = vec![
        answer_choice(view, Name::Every, distances.collect(), distance.key()),
        text_element("small", "practice", PRACTICE),
    ];
    let figure = vec![
        drawing::needle(&plan, on, &words::drawing(&plan, on), &counts),
        text_element("figcaption", "quiet", words::groups(&plan)),
    ];
    let mut taps = vec![button(words::reached(plan.next(on)), tap(view, plan, MarkerPlan::next))];
    if on > 0 {
        let before = plan.before(on).unwrap_or(0);
        taps.push(button(words::back(before), tap(view, plan, MarkerPlan::before)));
    }
    let section = vec![
        text_element("h3", "", words::TALLY),
        element("div", "line", every),
        element("figure", "needle", figure),
        status(text(words::on_needle(on, plan.stitches).into())),
        element("div", "taps", taps),
    ];
    element("section", "tally", section)
}

/// How many stitches are on the needle; none where what stands there is no count.
fn on_needle(fields: &Fields) -> u32 {
    Reader::new(fields).count(Name::On)
}

/// A tap counts from what is on the needle when it comes, so that two quick ones are two.
fn tap(view: &View, plan: MarkerPlan, goes: fn(MarkerPlan, u32) -> Option<u32>) -> Callback<MouseEvent> {
    let (sheet, settings) = (view.sheet.clone(), view.fields.settings().clone());
    Callback::from(move |_| {
        let now = Fields::new(FIELDS, sheet.desk.fields(sheet.id), settings.clone());
        let on = goes(plan, on_needle(&now)).map(|on| Typed::plain(on.to_string()));
        sheet.desk.write(sheet.id, Name::On.key(), on);
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::tests::fields_of;
    use loopwright::problem::Kind;

    /// `8 + 3` beside a typed 0 is two answers to one question, and neither is dropped in silence.
    #[test]
    fn a_plus_is_asked_about_where_two_are_typed() {
        let read = |link| CastOn::read(&fields_of::<CastOn>(&State::new("plus", link)));
        let asked = Problem::new(Name::Plus, Kind::Differs { other: 3 });
        for plus in ["0", "5"] {
            let link = format!("width=100&gauge=21&knitting=flat&multiple=8 + 3&plus={plus}");
            assert_eq!(read(link.leak()), Err(vec![asked]));
        }
        for plus in ["", "&plus=", "&plus=3"] {
            let link = format!("width=100&gauge=21&knitting=flat&multiple=8 + 3{plus}");
            assert_eq!(read(link.leak()).map(|question| question.multiple.plus), Ok(3));
        }
    }

    /// What stands outside the width says so at its field.
    #[test]
    fn edge_and_seam_stitches_are_said_to_stand_outside_the_width() {
        for name in [Name::Edge, Name::Seam] {
            let row = FIELDS.iter().find(|field| field.key == name.key()).unwrap();
            assert!(row.remark.contains("outside the width"), "{}", row.remark);
        }
    }

    #[test]
    fn what_is_no_count_is_nothing_on_the_needle() {
        let on = |link| on_needle(&fields_of::<CastOn>(&State::new("on", link)));
        assert_eq!((on("on=60"), on(""), on("on=many")), (60, 0, 0));
    }
}
