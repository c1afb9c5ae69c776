//! The view of yarn needed: the pieces and the swatch, or the pattern's yarn; the balls to buy, drawn; where it goes.

mod form;
mod read;
mod sections;
mod show;
mod states;
mod without_ball;

use super::{Bought, Entry, State, Tool};
use crate::drawing::balls::{self, Balls};
use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Reader, Start, TAPE, WEIGHT, YARN};
use crate::part::plain::text_element;
use crate::part::{Form, Summary, View, wait};
use crate::words::page::MORE;
use crate::words::yarn as words;
use loopwright::fabric::Fabric;
use loopwright::problem::{Kind, Problem};
use loopwright::units::{Length, LengthUnit, Mass};
use loopwright::yarn::{
    Answer, BALL_LENGTH, BALL_MASS, BALLS, Band, Beginning, Counted, EXTRA, Ending, Extras, MEASURED, Name, PINNED,
    Presence, Question, RESERVE, ROWS, RestKind, STATED, STITCHES, SWATCH_MASS, SectionName, ShapeKind, Source,
    SwatchKind, TAPERED, TIMES, TOTAL, USUAL_PINNED, USUAL_TIMES, USUAL_YARN, YARNS, answer, practice,
};
use yew::prelude::*;

/// No ball of hers: what a band may say.
const BAND_LENGTH: Start = Start::Length(Length::of(125, LengthUnit::M));
const BAND_MASS: Start = Start::Mass(Mass::from_grams(50));

fields! { FIELDS of Name, words::label;
    From => Field::choice::<Source>().in_sentence(),
    Balls => Field::count(BALLS).in_sentence().only_if(is_from_balls),
    PatternLength => Field::length(&YARN, BALL_LENGTH)
        .example(BAND_LENGTH)
        .in_sentence()
        .only_if(is_from_balls),
    PatternMass => Field::mass(&WEIGHT, BALL_MASS)
        .example(BAND_MASS)
        .in_sentence()
        .only_if(is_from_balls),
    Length => Field::length(&YARN, STATED).in_sentence().only_if(is_from_length),
    Sections => Field::whole().in_sentence().only_if(is_from_piece),
    By => Field::choice::<SwatchKind>().in_sentence().only_if(is_from_piece),
    SwatchFabric => Field::choice::<Fabric>().in_sentence().only_if(is_from_piece),
    SwatchStitches => Field::gauge()
        .beside(Name::SwatchRows.key())
        .kept_by(kept_stitches)
        .in_sentence()
        .only_if(has_stockinette_gauge),
    SwatchRows => Field::gauge()
        .of_rows()
        .beside(Name::SwatchStitches.key())
        .kept_by(kept_rows)
        .in_sentence()
        .only_if(has_stockinette_gauge),
    OwnStitches => Field::gauge().beside(Name::OwnRows.key()).in_sentence().only_if(has_other_gauge),
    OwnRows => Field::gauge().of_rows().beside(Name::OwnStitches.key()).in_sentence().only_if(has_other_gauge),
    WeighedStitches => Field::count(STITCHES).in_sentence().only_if(has_weighed_swatch),
    WeighedRows => Field::count(ROWS).in_sentence().only_if(has_weighed_swatch),
    SwatchMass => Field::mass(&WEIGHT, SWATCH_MASS).in_sentence().only_if(has_weighed_swatch),
    Rest => Field::choice::<RestKind>().in_sentence().only_if(has_measured_swatch),
    Pinned => Field::count(PINNED)
        .starts(Start::Count(USUAL_PINNED))
        .in_sentence()
        .only_if(is_pinned_out),
    Swatch => Field::whole().in_sentence().only_if(is_from_piece),
    Measured => Field::whole().in_sentence().only_if(is_from_piece),
    BallLength => Field::length(&YARN, BALL_LENGTH).example(BAND_LENGTH).in_sentence().kept(Kept::BallLength),
    BallMass => Field::mass(&WEIGHT, BALL_MASS)
        .example(BAND_MASS)
        .labelled_by(ball_mass_label)
        .in_sentence()
        .kept(Kept::BallMass),
    Reserve => Field::count(RESERVE).starts(Start::From(usual_reserve)).folded(MORE),
    CountSwatch => Field::choice::<Counted>().folded(MORE).only_if(is_from_piece),
    CountJoins => Field::choice::<Counted>().folded(MORE).only_if(is_from_piece),
    Seams => Field::length(&TAPE, EXTRA)
        .starts(Start::Length(Extras::USUAL.seams))
        .folded(MORE)
        .only_if(is_from_piece),
    Other => Field::length(&YARN, EXTRA)
        .starts(Start::Length(Extras::USUAL.other))
        .folded(MORE)
        .only_if(is_from_piece),
    [each SectionName, words::section_label;
        On => Field::choice::<Presence>().starts(Start::From(sections::usual_presence)).in_sentence(),
        Times => Field::count(TIMES).starts(Start::Count(USUAL_TIMES)).in_sentence(),
        Shape => Field::choice::<ShapeKind>().in_sentence(),
        Fabric => Field::choice::<Fabric>().in_sentence(),
        Stitches => Field::count(TAPERED).offering_counts().in_sentence().only_if(has_rows),
        Stitches => Field::count(TOTAL).in_sentence().only_if(is_summed),
        To => Field::count(TAPERED).offering_counts().in_sentence().only_if(is_tapered),
        Rows => Field::count(ROWS).in_sentence().only_if(has_rows),
        Width => Field::length(&TAPE, MEASURED).in_sentence().only_if(is_measured),
        Length => Field::length(&TAPE, MEASURED).in_sentence().only_if(is_measured),
        CastOn => Field::choice::<Beginning>().starts(Start::From(usual_beginning)).in_sentence(),
        BindOff => Field::choice::<Ending>().starts(Start::From(usual_ending)).in_sentence(),
        Name => Field::text().example(Start::Text(words::EXAMPLE_NAME)).in_sentence(),
        Yarn => Field::count(YARNS).starts(Start::Count(USUAL_YARN)).in_sentence().only_if(sections::are_several),
    ]
}

fn is_from_piece(fields: &Fields) -> bool {
    fields.choice::<Source>(Name::From) == Source::Piece
}

fn is_from_balls(fields: &Fields) -> bool {
    fields.choice::<Source>(Name::From) == Source::Balls
}

fn is_from_length(fields: &Fields) -> bool {
    fields.choice::<Source>(Name::From) == Source::Length
}

fn has_weighed_swatch(fields: &Fields) -> bool {
    is_from_piece(fields) && fields.choice::<SwatchKind>(Name::By) == SwatchKind::Weighed
}

fn has_measured_swatch(fields: &Fields) -> bool {
    is_from_piece(fields) && fields.choice::<SwatchKind>(Name::By) == SwatchKind::Measured
}

fn has_stockinette_gauge(fields: &Fields) -> bool {
    has_measured_swatch(fields) && fields.choice::<Fabric>(Name::SwatchFabric) == Fabric::Stockinette
}

fn has_other_gauge(fields: &Fields) -> bool {
    has_measured_swatch(fields) && !has_stockinette_gauge(fields)
}

fn is_pinned_out(fields: &Fields) -> bool {
    has_measured_swatch(fields) && fields.choice::<RestKind>(Name::Rest) == RestKind::PinnedOut
}

/// What is kept for all tools is a stockinette gauge, and of one that is not washed it is another.
fn kept_stitches(fields: &Fields) -> Kept {
    match fields.choice(Name::Rest) {
        RestKind::Washed | RestKind::PinnedOut => Kept::GaugeStitches,
        RestKind::Unwashed => Kept::GaugeStitchesUnwashed,
    }
}

fn kept_rows(fields: &Fields) -> Kept {
    match fields.choice(Name::Rest) {
        RestKind::Washed | RestKind::PinnedOut => Kept::GaugeRows,
        RestKind::Unwashed => Kept::GaugeRowsUnwashed,
    }
}

/// A pattern's figure has its reserve in it.
fn usual_reserve(fields: &Fields) -> String {
    let percent = match fields.choice(Name::From) {
        Source::Piece => practice::RESERVE,
        Source::Balls | Source::Length => practice::RESERVE_IN_PATTERN,
    };
    percent.to_string()
}

fn is_summed(fields: &Fields) -> bool {
    fields.choice::<ShapeKind>(SectionName::Shape) == ShapeKind::Summed
}

fn has_rows(fields: &Fields) -> bool {
    match fields.choice(SectionName::Shape) {
        ShapeKind::Straight | ShapeKind::Tapered => true,
        ShapeKind::Measured | ShapeKind::Summed => false,
    }
}

fn is_tapered(fields: &Fields) -> bool {
    fields.choice::<ShapeKind>(SectionName::Shape) == ShapeKind::Tapered
}

fn is_measured(fields: &Fields) -> bool {
    fields.choice::<ShapeKind>(SectionName::Shape) == ShapeKind::Measured
}

/// A section that is not the first goes on from the one before.
fn usual_beginning(fields: &Fields) -> String {
    let beginning = if sections::is_first(fields) {
        Beginning::CastOn
    } else {
        Beginning::Live
    };
    beginning.key().into()
}

/// A section is bound off only where that is said.
fn usual_ending(_: &Fields) -> String {
    Ending::Live.key().into()
}

/// Without a swatch on the scale a ball's weight may stay out.
fn ball_mass_label(fields: &Fields) -> &'static str {
    words::ball_mass_label(has_weighed_swatch(fields))
}

/// Yarn needed.
pub struct Yarn;

/// Its row in the list of tools.
pub const ENTRY: Entry = Entry::of::<Yarn>(words::TITLE);

impl Tool for Yarn {
    const ID: &'static str = "yarn";
    const FIELDS: &'static [Field] = FIELDS;
    const STATES: &'static [State] = states::NAMED;
    type Question = Question;
    type Answer = Answer;

    fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
        let mut reader = Reader::new(fields);
        let question = Question {
            ask: read::ask(&mut reader),
            ball: read::ball(&mut reader, Name::BallLength, Name::BallMass),
            reserve: reader.count(Name::Reserve),
            yarns: read::yarns(&mut reader),
        };
        reader.done(question)
    }

    fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
        answer(question)
    }

    fn bought(answer: &Answer) -> Option<Bought> {
        let Answer { need, balls, .. } = *answer;
        Some(Bought { need, balls })
    }

    fn form(form: &Form) -> Html {
        form::form(form)
    }

    fn show(view: &View, question: &Question, answer: &Answer) -> Html {
        show::show(view, question, answer)
    }

    fn summary(fields: &Fields, question: &Question, answer: &Answer) -> Summary {
        show::summary(fields, question, answer)
    }

    fn wait(view: &View, problems: &[Problem]) -> Html {
        match problems.first() {
            Some(problem) if problem.kind == Kind::NeedsSwatch => {
                let fabric = view.fields.choice(Name::SwatchFabric);
                text_element("p", "quiet", words::refused(fabric))
            }
            first => without_ball::yarn(view, problems)
                .unwrap_or_else(|| wait(view, problems, words::waiting(first.map(|problem| problem.field)))),
        }
    }

    fn problem(_: &Fields, _: Option<&Question>, problem: &Problem) -> String {
        words::problem(problem)
    }

    /// Three balls, the last one partly used.
    fn sign() -> Html {
        let metres = |metres| Length::of(metres, LengthUnit::M);
        balls::balls(&Balls {
            count: 3,
            all: metres(30),
            bands: vec![
                (Band::Sure, metres(22)),
                (Band::Perhaps, metres(25)),
                (Band::Reserve, metres(28)),
            ],
            caption: None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::tests::fields_of;
    use loopwright::yarn::{Ask, BindOff};

    const SCARF: &str = "s1_stitches=40&s1_rows=400&swatch_stitches=21&swatch_rows=28";

    fn read(link: String) -> Result<Question, Vec<Problem>> {
        Yarn::read(&fields_of::<Yarn>(&State::new("", link.leak())))
    }

    /// The example in a field is no ball of hers: nothing is worked out with it.
    #[test]
    fn an_example_is_never_taken_for_a_ball() {
        let fields = fields_of::<Yarn>(&State::new("", SCARF));
        let ball = Name::BallLength.into();
        assert_eq!(
            (fields.text(ball), fields.example(ball).text),
            (String::new(), "125".into())
        );
        let missing = read(SCARF.into()).unwrap_err();
        assert!(missing.iter().all(|problem| problem.field == ball) && !missing.is_empty());
        let question = read(format!("{SCARF}&ball_length=125")).unwrap();
        assert_eq!(question.ball.mass, None);
    }

    /// A section is bound off only where that was said; what was stored keeps what it says.
    #[test]
    fn a_section_is_bound_off_where_that_is_said() {
        let bind_off = |link: &str| {
            let question = read(format!("{SCARF}&ball_length=125{link}")).unwrap();
            let Ask::Piece(piece) = question.ask else { return None };
            piece.sections.first().and_then(|section| section.bind_off)
        };
        assert_eq!(bind_off(""), None);
        assert_eq!(bind_off("&s1_bind_off=plain"), Some(BindOff::Plain));
        assert_eq!(bind_off("&s1_bind_off=icord"), Some(BindOff::ICord));
        assert_eq!(bind_off("&s1_bind_off=no"), None);
    }

    #[test]
    fn a_section_keeps_the_name_that_was_typed() {
        let question = read(format!("{SCARF}&ball_length=125&s1_name= left front ")).unwrap();
        let Ask::Piece(piece) = question.ask else { panic!() };
        assert_eq!(piece.sections[0].name, "left front");
    }
}
