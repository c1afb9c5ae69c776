//! The example: a round-yoke pullover from the neck down, invented by us, as a project of its own. Each of its steps stands
//! on the facts or on another step, so that all of it moves when her gauge does. The tests walk it.

use super::yarn::in_section;
use crate::form::kept::Kept;
use crate::tool::Gift;
use crate::words::demo as words;
use loopwright::choice::FieldName;
use loopwright::terms::Working;
use loopwright::{cast_on, cords, rows, shaping, sizing, swatch, tail, yarn, yoke};
use loopwright_project::{Project, Reference, Step, StepId, Typed};

/// The project.
pub fn pullover() -> Project {
    let mut project = Project {
        name: words::NAME.into(),
        ..Project::default()
    };
    facts(&mut project);
    let size = before_casting_on(&mut project);
    let neck = neckband(&mut project);
    let yoke = round_yoke(&mut project, neck);
    let (body, body_length) = body(&mut project, size);
    let (sleeve, sleeve_length) = sleeves(&mut project, yoke);
    yarn_for(&mut project, [neck, yoke, body, body_length, sleeve, sleeve_length]);
    project
}

fn facts(project: &mut Project) {
    let mut know = |kept: Kept, typed: Typed| project.facts.insert(kept.key().into(), typed);
    know(Kept::Bust, Typed::with_unit("94", "cm"));
    know(Kept::GaugeStitches, Typed::with_unit("22", "10 cm"));
    know(Kept::GaugeRows, Typed::with_unit("30", "10 cm"));
    know(Kept::Needle, Typed::with_unit("4", "mm"));
    know(Kept::YarnClass, Typed::plain("light"));
}

/// The swatch, and the size that is picked from five.
fn before_casting_on(project: &mut Project) -> StepId {
    let plan = Draft::of("swatch", words::SWATCH, words::BEFORE)
        .typed(swatch::Name::Gauge, "22")
        .typed(swatch::Name::Rows, "30");
    project.add(plan.step);
    let size = Draft::of("sizing", words::SIZE, words::BEFORE)
        .typed(sizing::Name::Sizes, "94 (103: 111: 120: 129)")
        .typed(sizing::Name::Listed, sizing::Measured::Garment.key())
        .typed(sizing::Name::Stitches, "206 (226: 244: 264: 284)")
        .typed(sizing::Name::PatternStitches, "22");
    project.add(size.step)
}

fn neckband(project: &mut Project) -> StepId {
    let neck = Draft::of("cast_on", words::NECK, words::NECKBAND)
        .measured(cast_on::Name::Width, "44")
        .typed(cast_on::Name::Multiple, "8");
    let neck = project.add(neck.step);
    let tail = Draft::of("tail", words::TAIL, words::NECKBAND).from(tail::Name::Stitches, neck, Gift::CastOn);
    project.add(tail.step);
    neck
}

fn round_yoke(project: &mut Project, neck: StepId) -> StepId {
    let depth = Draft::of("rows", words::DEPTH, words::YOKE)
        .measured(rows::Name::Length, "22")
        .typed(rows::Name::Knitting, rows::Turning::Round.key());
    let depth = project.add(depth.step);
    let below = Draft::of("cast_on", words::BELOW, words::BEFORE)
        .measured(cast_on::Name::Width, "160")
        .typed(cast_on::Name::Multiple, "8");
    let below = project.add(below.step);
    let yoke = Draft::of("yoke", words::YOKE, words::YOKE)
        .from(yoke::Name::From, neck, Gift::After)
        .from(yoke::Name::To, below, Gift::After)
        .from(yoke::Name::Rounds, depth, Gift::Rows)
        .typed(yoke::Name::Multiple, "8");
    let yoke = project.add(yoke.step);
    let cords = Draft::of("cords", words::CORDS, words::YOKE)
        .from(cords::Name::From, yoke, Gift::Before)
        .from(cords::Name::Steps, yoke, Gift::Steps)
        .from(cords::Name::Rounds, yoke, Gift::Rows)
        .typed(cords::Name::Swatch, cords::Swatch::Washed.key());
    project.add(cords.step);
    yoke
}

/// The body is as wide as the size that was picked.
fn body(project: &mut Project, size: StepId) -> (StepId, StepId) {
    let stitches = Draft::of("cast_on", words::BODY_STITCHES, words::BODY)
        .from(cast_on::Name::Width, size, Gift::Girth)
        .typed(cast_on::Name::Knitting, Working::Round.key());
    let stitches = project.add(stitches.step);
    let length = Draft::of("rows", words::BODY_LENGTH, words::BODY)
        .measured(rows::Name::Length, "36")
        .typed(rows::Name::Knitting, rows::Turning::Round.key());
    (stitches, project.add(length.step))
}

fn sleeves(project: &mut Project, yoke: StepId) -> (StepId, StepId) {
    let wrist = Draft::of("cast_on", words::WRIST, words::BEFORE).measured(cast_on::Name::Width, "22");
    let wrist = project.add(wrist.step);
    let length = Draft::of("rows", words::SLEEVE_LENGTH, words::SLEEVE)
        .measured(rows::Name::Length, "42")
        .typed(rows::Name::Knitting, rows::Turning::Round.key());
    let length = project.add(length.step);
    let decreases = Draft::of("shaping", words::SLEEVE_SHAPING, words::SLEEVE)
        .typed(shaping::Name::Ask, shaping::Asked::Reach.key())
        .typed(shaping::Name::Knitting, shaping::KnittingKind::Round.key())
        .typed(shaping::Name::Rest, shaping::LastRow::MayChangeFewer.key())
        .from(shaping::Name::Stitches, yoke, Gift::Sleeve)
        .from(shaping::Name::Amount, wrist, Gift::After)
        .from(shaping::Name::Rows, length, Gift::Rows);
    let mut step = decreases.step;
    step.amount = "2".into();
    (project.add(step), length)
}

/// The yarn for yoke, body and both sleeves.
fn yarn_for(project: &mut Project, [neck, yoke, body, body_length, sleeve, sleeve_length]: [StepId; 6]) {
    use yarn::SectionName::{BindOff, CastOn, Name, On, Rows, Shape, Stitches, Times, To};
    let tapered = yarn::ShapeKind::Tapered.key();
    let draft = Draft::of("yarn", words::YARN, words::AT_THE_END)
        .measured_in(yarn::Name::BallLength, "150", "m")
        .measured_in(yarn::Name::BallMass, "50", "g")
        .section(0, Name, words::YOKE)
        .section(0, Shape, tapered)
        .section_from(0, Stitches, neck, Gift::After)
        .section_from(0, To, yoke, Gift::After)
        .section_from(0, Rows, yoke, Gift::Rows)
        .section(1, On, yarn::Presence::In.key())
        .section(1, Name, words::BODY)
        .section_from(1, Stitches, body, Gift::After)
        .section_from(1, Rows, body_length, Gift::Rows)
        .section(1, BindOff, yarn::Ending::Elastic.key())
        .section(2, On, yarn::Presence::In.key())
        .section(2, Name, words::SLEEVE)
        .section(2, Times, "2")
        .section(2, CastOn, yarn::Beginning::Live.key())
        .section(2, Shape, tapered)
        .section_from(2, Stitches, yoke, Gift::Sleeve)
        .section_from(2, To, sleeve, Gift::After)
        .section_from(2, Rows, sleeve_length, Gift::Rows)
        .section(2, BindOff, yarn::Ending::Elastic.key());
    project.add(draft.step);
}

/// A front with an armhole and a neck at the same time, in which the neck takes so many stitches away; and some rows more. For
/// the gallery and the tests.
pub fn fronts(neck: &str) -> Project {
    let mut project = Project {
        name: words::FRONT.into(),
        ..Project::default()
    };
    facts(&mut project);
    let shaping = |name, amount: &str, rows, each| {
        Draft::of("shaping", name, words::FRONT)
            .typed(shaping::Name::Ask, shaping::Asked::Lose.key())
            .typed(shaping::Name::Amount, amount)
            .typed(shaping::Name::Rows, rows)
            .typed(shaping::Name::Each, each)
    };
    let armhole = shaping(words::ARMHOLE, "12", "60", "1").typed(shaping::Name::Stitches, "50");
    let armhole = project.add(armhole.step);
    let mut neck =
        shaping(words::FRONT_NECK, neck, "20", "4").typed(shaping::Name::Sides, shaping::ShapedSides::Any.key());
    neck.step.set_alongside(Some(armhole));
    neck.step.from_row = "41".into();
    project.add(neck.step);
    let plain = Draft::of("rows", words::TO_THE_SHOULDER, words::FRONT).measured(rows::Name::Length, "4");
    project.add(plain.step);
    project
}

/// A step on its way.
struct Draft {
    step: Step,
}

impl Draft {
    fn of(tool: &str, name: &str, section: &str) -> Self {
        let section = section.to_owned();
        Self {
            step: Step {
                section,
                ..Step::new(tool, name)
            },
        }
    }

    fn put(mut self, field: String, typed: Typed) -> Self {
        self.step.fields.insert(field, typed);
        self
    }

    fn refer(mut self, field: String, step: StepId, gift: Gift) -> Self {
        let gift = gift.key().to_owned();
        self.step.from.insert(field, Reference::Step { step, gift });
        self
    }

    fn typed(self, field: impl FieldName, text: &str) -> Self {
        self.put(field.key().into(), Typed::plain(text))
    }

    fn measured(self, field: impl FieldName, text: &str) -> Self {
        self.measured_in(field, text, "cm")
    }

    fn measured_in(self, field: impl FieldName, text: &str, unit: &str) -> Self {
        self.put(field.key().into(), Typed::with_unit(text, unit))
    }

    fn from(self, field: impl FieldName, step: StepId, gift: Gift) -> Self {
        self.refer(field.key().into(), step, gift)
    }

    fn section(self, place: usize, field: yarn::SectionName, text: &str) -> Self {
        self.put(in_section(place, field), Typed::plain(text))
    }

    fn section_from(self, place: usize, field: yarn::SectionName, step: StepId, gift: Gift) -> Self {
        self.refer(in_section(place, field), step, gift)
    }
}

#[cfg(test)]
#[path = "../../../loopwright-project/src/file/schema.rs"]
mod schema;

#[cfg(test)]
mod tests;
