//! The sentences of what is good to know beside the size, and of the sum.

use super::super::intl::stitches;
use super::Sentences;
use super::sentences::{gauge, per_cent};
use loopwright::sizing::{Note, Step};

impl Sentences<'_> {
    /// One note.
    pub fn note(&self, note: &Note) -> String {
        let (name, length) = (|size| self.name(size), |length| self.lengths.write(length));
        match *note {
            Note::NoneLargeEnough { lacks } => format!("No size fits: the largest is {} too small", length(lacks)),
            Note::NoneSmallEnough { over } => format!("No size fits: the smallest is {} too large", length(over)),
            Note::BetweenSizes { smaller, larger, gap } => format!(
                "You are between size {} and size {}, in a gap of {}.",
                name(smaller),
                name(larger),
                length(gap)
            ),
            Note::OnEdge { size, edge, is_lower } => format!(
                "Size {} {} at {}: a tape cannot tell that from yours, so you are in it.",
                name(size),
                if is_lower { "begins" } else { "ends" },
                self.lengths.fine().write(edge)
            ),
            Note::NoneAsAsked => "No size sits as you asked; this is the nearest.".into(),
            Note::SmallBust => "That is a very small bust: are these inches?".into(),
            Note::LargeBust => "That is a very large bust: are these centimetres?".into(),
            Note::LooksLikeBodies => "Ranges are mostly of bodies: look once more.".into(),
            Note::OneSize => "There is one size only; this is how it sits.".into(),
            Note::Unsorted => "The sizes stand out of order; each was taken by its own number.".into(),
            Note::Overlap { first, second } => {
                format!("Size {} and size {} fit some of the same bodies.", name(first), name(second))
            }
            Note::EaseIsInTheList => {
                "The list names bodies, with the ease in the garment already: none was added.".into()
            }
            Note::EaseUnknown => "How it will sit is not known until you type the stitches of each size and a gauge, under “More about this”.".into(),
            Note::TooTight { share } => format!(
                "An ease of {} of you is more than most knitting bears: stretch your swatch that far first.",
                per_cent(share)
            ),
            Note::StitchesLeftOut { size, makes, listed } => format!(
                "The stitches of size {} make {}, not {}, and were left out. Type back and front together.",
                name(size),
                length(makes),
                length(listed)
            ),
            Note::PickMoved { size } => format!("At the pattern’s gauge it would be size {}.", name(size)),
            Note::OwnGaugeUnused => {
                "Your gauge could not be used yet: type the pattern’s gauge, or the stitches of each size.".into()
            }
            Note::PatternGaugeUnused => "The pattern’s gauge alone moves nothing: type your own too.".into(),
            Note::StitchesUnknown => "Girths at your gauge may be off by what the pattern rounded; with the stitches of each size they are as sure as your gauge.".into(),
            Note::HighBust { fuller, size } => format!(
                "Your bust is {} more than above it: size {} would fit the shoulders, with room added in front.",
                length(fuller),
                name(size)
            ),
            Note::GirthAtUnderarm => "The girth has to be the one at the underarm, not at the hem.".into(),
            Note::RoundEstimated { upper_arm } => format!(
                "Round bust and arms was reckoned from the bust and an upper arm of {}. One tape round all is better.",
                length(upper_arm)
            ),
            Note::NeckUnknown => {
                "Does the neck go over the head? Type its opening under “More about this”.".into()
            }
            Note::NeckBinds { short } => format!("The neck is {} too tight for the head.", length(short)),
            Note::NeckUnsure { heads } => format!(
                "That neck goes over some heads and not over others: they are {}. Measure yours.",
                self.span(heads)
            ),
        }
    }

    /// One line of the sum.
    pub fn step(&self, step: &Step) -> String {
        let (name, length) = (|size| self.name(size), |length| self.lengths.write(length));
        match *step {
            Step::RoundBoth { bust, upper_arm, round } => format!(
                "Bust and two upper arms: {} + 2 × {} = {}.",
                length(bust),
                length(upper_arm),
                length(round)
            ),
            Step::Target { body, ease, garment } => format!(
                "Body and ease: {} and {} make {}.",
                length(body),
                self.ease(ease),
                length(garment)
            ),
            Step::ByStitches {
                size,
                stitches: count,
                gauge: at,
                girth,
            } => format!(
                "Size {}: {}, {}, make {}.",
                name(size),
                stitches(count),
                gauge(at),
                length(girth)
            ),
            Step::ByGauges {
                size,
                listed,
                pattern,
                own,
                girth,
            } => format!(
                "Size {}: {} listed, with {} in the pattern and {} of yours: {}.",
                name(size),
                length(listed),
                gauge(pattern),
                gauge(own),
                length(girth)
            ),
            Step::Inside { size, bodies, body } => format!(
                "Size {} is for {}, and you are {}.",
                name(size),
                self.span(bodies),
                length(body)
            ),
            Step::Outside {
                size,
                bodies,
                body,
                away,
            } => format!(
                "Size {} is for {}, and you are {}: that is {} outside.",
                name(size),
                self.span(bodies),
                length(body),
                length(away)
            ),
            Step::Sits {
                size,
                garment,
                body,
                ease,
                share,
            } => format!(
                "Size {}: {} − {} = {}, {} of you.",
                name(size),
                length(garment),
                length(body),
                self.ease(ease),
                per_cent(share)
            ),
        }
    }
}
