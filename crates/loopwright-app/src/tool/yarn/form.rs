//! The fields as they are drawn: a sentence or two for each section, the swatch, the ball; the rest is folded away.

use super::sections::{are_several, fresh, is_first, sections, taken_out};
use crate::part::plain::{element, list, text_element};
use crate::part::{Form, Part, Part::Words, answer_choice};
use crate::words::Worded;
use crate::words::yarn as words;
use loopwright::fabric::Fabric;
use loopwright::problem::{FieldPath, Kind, Problem};
use loopwright::yarn::{Beginning, Name, Presence, SectionName, ShapeKind, Source, SwatchKind};
use yew::prelude::*;

/// Draws the question.
pub fn form(form: &Form) -> Html {
    let asked = match form.view.fields.choice(Name::From) {
        Source::Piece => piece(form),
        Source::Balls => list(vec![
            form.line(&[
                Words(words::THE_PATTERN_ASKS),
                Part::Field(Name::Balls),
                Words(words::BALLS),
            ]),
            element("div", "", form.asked(&[Name::PatternLength, Name::PatternMass])),
        ]),
        Source::Length => element("div", "", form.asked(&[Name::Length])),
    };
    list(vec![
        form.line(&[Words(words::WORK_FROM), Part::Field(Name::From)]),
        asked,
        element("div", "", form.asked(&[Name::BallLength, Name::BallMass])),
        form.columns(),
    ])
}

/// The sections and the swatch.
fn piece(form: &Form) -> Html {
    let fields = &form.view.fields;
    let all = sections(fields);
    let is_many = all.len() > 1;
    let numbered = (1..).zip(all);
    let drawn = numbered.map(|(place, index)| form.member(index, |form| section(form, is_many.then_some(place))));
    let taps = vec![
        presence(form, words::ADD, fresh(fields), Presence::In),
        presence(form, words::BRING_BACK, taken_out(fields), Presence::In),
    ];
    list(vec![
        list(drawn.collect()),
        element("div", "line", taps),
        form.line(&[
            Words(words::I),
            Part::Field(Name::By),
            Words(words::A_SWATCH_OF),
            Part::Field(Name::SwatchFabric),
        ]),
        swatch(form),
        trouble(form),
    ])
}

/// One section, with its number where there are several.
fn section(form: &Form, place: Option<u32>) -> Html {
    let kind = form.view.fields.choice(SectionName::Shape);
    let knit = form.line(&[
        Words(words::I_KNIT),
        Part::Field(SectionName::Times),
        Words(words::TIMES),
        Part::Field(SectionName::Shape),
        Words(words::OF),
        Part::Field(SectionName::Fabric),
    ]);
    element(
        "div",
        "section",
        vec![
            head(form, place),
            knit,
            yarn(form),
            figures(form, kind),
            edges(form, kind),
        ],
    )
}

/// Which yarn a section is knitted with, where there are several sections.
fn yarn(form: &Form) -> Html {
    if are_several(&form.view.fields) {
        form.line(&[Words(words::WITH_YARN), Part::Field(SectionName::Yarn)])
    } else {
        Html::default()
    }
}

/// A section's number, its name and the way to take it out, where there are several; the name alone where one was typed
/// before the others were taken out.
fn head(form: &Form, place: Option<u32>) -> Html {
    match place {
        Some(place) => {
            let numbered = text_element("h2", "", words::section(place));
            let out = presence(form, words::TAKE_OUT, form.view.fields.index(), Presence::Out);
            element("div", "line", vec![numbered, form.labelled(SectionName::Name), out])
        }
        None if form.view.fields.is_typed(SectionName::Name) => {
            element("div", "line", vec![form.labelled(SectionName::Name)])
        }
        None => Html::default(),
    }
}

/// The figures of a section.
fn figures(form: &Form, kind: ShapeKind) -> Html {
    match kind {
        ShapeKind::Straight => form.line_of(
            "line counts",
            &[
                Part::Field(SectionName::Stitches),
                Words(words::STITCHES),
                Part::Field(SectionName::Rows),
                Words(words::ROWS),
            ],
        ),
        ShapeKind::Tapered => form.line(&[
            Words(words::FROM),
            Part::Field(SectionName::Stitches),
            Words(words::TO),
            Part::Field(SectionName::To),
            Words(words::STITCHES_OVER),
            Part::Field(SectionName::Rows),
            Words(words::ROWS),
        ]),
        ShapeKind::Measured => element("div", "", form.asked(&[SectionName::Width, SectionName::Length])),
        ShapeKind::Summed => form.line(&[Part::Field(SectionName::Stitches), Words(words::STITCHES_IN_ALL)]),
    }
}

/// How a section begins and ends. Of stitches that were summed no edge is known.
fn edges(form: &Form, kind: ShapeKind) -> Html {
    match kind {
        ShapeKind::Straight | ShapeKind::Tapered | ShapeKind::Measured => {
            let mut edges = vec![beginning(form)];
            edges.extend(form.asked(&[SectionName::BindOff]));
            element("div", "fields", edges)
        }
        ShapeKind::Summed => Html::default(),
    }
}

/// How a section begins: the first with a cast-on, and one after it from live stitches, as long as nothing else is chosen.
fn beginning(form: &Form) -> Html {
    let option = |(beginning, words): (Beginning, &'static str)| (beginning.key(), words.to_owned());
    let options = if is_first(&form.view.fields) {
        [Beginning::CastOn, Beginning::Live].map(|beginning| (beginning, beginning.words()))
    } else {
        [Beginning::Live, Beginning::CastOn].map(|beginning| (beginning, words::beginning_after(beginning)))
    };
    let chosen = form.view.fields.choice::<Beginning>(SectionName::CastOn).key();
    answer_choice(form.view, SectionName::CastOn, options.map(option).into(), chosen)
}

/// The swatch's figures, and how it came to rest.
fn swatch(form: &Form) -> Html {
    match form.view.fields.choice(Name::By) {
        SwatchKind::Weighed => list(vec![
            form.line_of(
                "line counts",
                &[
                    Part::Field(Name::WeighedStitches),
                    Words(words::STITCHES),
                    Part::Field(Name::WeighedRows),
                    Words(words::ROWS),
                ],
            ),
            element("div", "", form.asked(&[Name::SwatchMass])),
        ]),
        SwatchKind::Measured => {
            let gauge = Name::gauge_in(form.view.fields.choice(Name::SwatchFabric));
            let mut drawn = form.asked(&gauge);
            drawn.push(element("div", "fields", form.asked(&[Name::Rest, Name::Pinned])));
            list(drawn)
        }
    }
}

/// What is wrong with several fields together, and for a swatch that cannot tell, two ways out.
fn trouble(form: &Form) -> Html {
    let is_of_several = |problem: &&Problem| {
        matches!(
            problem.field.name(),
            Some(Name::Sections | Name::Swatch | Name::Measured)
        )
    };
    let Some(problem) = form.problems.iter().find(is_of_several) else {
        return Html::default();
    };
    let mut content = vec![text_element("p", "", words::problem(problem))];
    if problem.kind == Kind::NeedsSwatch {
        let stockinette = (Name::SwatchFabric.into(), Fabric::Stockinette.key());
        let weighed = (Name::By.into(), SwatchKind::Weighed.key());
        content.push(tap(form, words::TAKE_STOCKINETTE, stockinette));
        content.push(tap(form, words::TAKE_WEIGHED, weighed));
    }
    element("div", "problem", content)
}

/// A button that brings a section or takes it out, if there is one.
fn presence(form: &Form, label: &'static str, index: Option<usize>, presence: Presence) -> Html {
    index.map_or_else(Html::default, |index| {
        tap(form, label, (SectionName::On.at(index), presence.key()))
    })
}

/// A button that sets a choice.
fn tap(form: &Form, label: &'static str, (field, key): (FieldPath, &'static str)) -> Html {
    form.view.sheet.setting(label.into(), vec![(field, key.into())])
}
