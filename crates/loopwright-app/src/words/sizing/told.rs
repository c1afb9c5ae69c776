//! The sentences of what is told beside the size: each `@` is the next of the values it comes with.

use loopwright::sizing::Told;

/// The pattern of a sentence, and whether it stands on common practice.
pub fn told(told: Told) -> (&'static str, bool) {
    match told {
        Told::NoneLargeEnough => ("No size fits: the largest is @ too small", false),
        Told::NoneSmallEnough => ("No size fits: the smallest is @ too large", false),
        Told::BetweenSizes => ("You are between size @ and size @, in a gap of @.", false),
        Told::NoneAsAsked => ("No size sits as you asked; this is the nearest.", false),
        Told::SmallBust => ("That is a very small bust: are these inches?", false),
        Told::LargeBust => ("That is a very large bust: are these centimetres?", false),
        Told::LooksLikeBodies => ("Ranges are mostly of bodies: look once more.", false),
        Told::OneSize => ("There is one size only; this is how it sits.", false),
        Told::Unsorted => ("The sizes stand out of order; each was taken by its own number.", false),
        Told::Overlap => ("Size @ and size @ fit some of the same bodies.", false),
        Told::EaseIsInTheList => (
            "The list names bodies, with the ease in the garment already: none was added.",
            false,
        ),
        Told::EaseUnknown => (
            "How it will sit is not known until you type the stitches of each size and a gauge, under “More about this”.",
            false,
        ),
        Told::TooTight => (
            "An ease of @ of you is more than most knitting bears: stretch your swatch that far first.",
            true,
        ),
        Told::StitchesLeftOut => (
            "The stitches of size @ make @, not @, and were left out. Type back and front together.",
            true,
        ),
        Told::PickMoved => ("At the pattern’s gauge it would be size @.", false),
        Told::OwnGaugeUnused => (
            "Your gauge could not be used yet: type the pattern’s gauge, or the stitches of each size.",
            false,
        ),
        Told::PatternGaugeUnused => ("The pattern’s gauge alone moves nothing: type your own too.", false),
        Told::StitchesUnknown => (
            "Girths at your gauge may be off by what the pattern rounded; with the stitches of each size they are exact.",
            false,
        ),
        Told::HighBust => (
            "Your bust is @ more than above it: size @ would fit the shoulders, with room added in front.",
            true,
        ),
        Told::GirthAtUnderarm => ("The girth has to be the one at the underarm, not at the hem.", false),
        Told::RoundEstimated => (
            "Round bust and arms was reckoned from the bust and an upper arm of @. One tape round all is better.",
            true,
        ),
        Told::NeckUnknown => (
            "Does the neck go over the head? Type its opening under “More about this”.",
            false,
        ),
        Told::NeckBinds => ("The neck is @ too tight for the head.", true),
        Told::NeckUnsure => (
            "That neck goes over some heads and not over others: they are @. Measure yours.",
            true,
        ),
        Told::RoundBoth => ("Bust and two upper arms: @ + 2 × @ = @.", false),
        Told::Target => ("Body and ease: @ and @ make @.", false),
        Told::ByStitches => ("Size @: @, @, make @.", false),
        Told::ByGauges => ("Size @: @ listed, with @ in the pattern and @ of yours: @.", false),
        Told::Inside => ("Size @ is for @, and you are @.", false),
        Told::Outside => ("Size @ is for @, and you are @: that is @ outside.", false),
        Told::Sits => ("Size @: @ − @ = @, @ of you.", false),
    }
}
