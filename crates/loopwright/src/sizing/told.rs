//! What a knitter should know beside the size, and the sum. Data only: the page makes the sentences.

use super::rank::{Sought, is_wrap};
use super::{FULL_OVER_HIGH, Garment, HEAD, LIKELY, Listed, PerMille, Question, Ranked, Span, own};
use crate::units::{Gauge, Length};

/// What is told: a note, or a step of the sum. Behind each stand the values it comes with, in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Told {
    /// No garment is as large as is wanted, or the body is larger than every size. The length that the nearest lacks.
    NoneLargeEnough,
    /// No garment is as small as is wanted, or the body is smaller than every size. The length that is too much.
    NoneSmallEnough,
    /// The body lies between two sizes, in neither. The smaller size, the larger, the gap.
    BetweenSizes,
    /// No size sits as was asked; the pick is the nearest.
    NoneAsAsked,
    /// The bust is below what is [`LIKELY`]: perhaps inches were typed for centimetres.
    SmallBust,
    /// The bust is above what is [`LIKELY`]: perhaps centimetres were typed for inches.
    LargeBust,
    /// The list was said to be of garments, but it has ranges, which mostly are of bodies.
    LooksLikeBodies,
    /// There is only one size: how it sits is what can be said.
    OneSize,
    /// The sizes do not stand in order of girth.
    Unsorted,
    /// Two sizes fit some of the same bodies. The two.
    Overlap,
    /// Bodies are listed: no ease was added, since it is in the garment already.
    EaseIsInTheList,
    /// The real ease is not known until a finished measure, or stitches and a gauge, are typed.
    EaseUnknown,
    /// The pick is tighter than is usual. Its ease as a share of the body.
    TooTight,
    /// The stitches of a size cannot go round its girth and were left out. The size, what they make, what is listed.
    StitchesLeftOut,
    /// At the pattern's gauge another size would be picked. That size.
    PickMoved,
    /// Her own gauge could not be used: the pattern's gauge or the stitches are missing.
    OwnGaugeUnused,
    /// The pattern's gauge could not be used: her own is missing.
    PatternGaugeUnused,
    /// What a size measures at her gauge comes from the listed girth, not from its stitches; it may be off a little.
    StitchesUnknown,
    /// The bust is much fuller than the high bust: a size by that fits the shoulders, with room to be added in front.
    /// How much fuller, the size.
    HighBust,
    /// The listed girth of a wrap is to be the one at the underarm, not at the hem.
    GirthAtUnderarm,
    /// The girth round bust and both arms is an estimate. The upper arm that was taken.
    RoundEstimated,
    /// The neck opening is not known.
    NeckUnknown,
    /// The neck does not go over the head. By how much it is short.
    NeckBinds,
    /// The neck goes over some heads and not over others: measure the head. Smaller and larger heads.
    NeckUnsure,
    /// Bust and twice the upper arm: bust, upper arm, sum.
    RoundBoth,
    /// The garment that is looked for: body, ease, sum.
    Target,
    /// What a size measures: the size, its stitches, the gauge, the girth.
    ByStitches,
    /// What a size measures: the size, what is listed, the pattern's gauge, her own, the girth.
    ByGauges,
    /// The body is one of those a size is for: the size, the bodies, the body, nothing.
    Inside,
    /// The body is none of those a size is for: the size, the bodies, the body, how far outside that is.
    Outside,
    /// How a size sits: the size, garment, body, difference, the same as a share of the body.
    Sits,
}

/// A value that something is told with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Value {
    /// A size, as its place in the list of the question.
    Size(usize),
    /// A length, never below nothing.
    Length(Length),
    /// A length that may be less than nothing.
    Ease(Length),
    /// From one girth to another.
    Span(Span),
    /// A part of something.
    Share(PerMille),
    /// So many stitches.
    Stitches(u32),
    /// A gauge.
    Gauge(Gauge),
}

/// One thing that is told.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Line {
    /// What.
    pub told: Told,
    /// With which values.
    pub values: Vec<Value>,
}

#[inline(never)]
fn tell(lines: &mut Vec<Line>, told: Told, values: &[Value]) {
    let values = values.to_vec();
    lines.push(Line { told, values });
}

/// What else she should know.
pub(super) fn notes(sought: &Sought, ranked: &[Ranked]) -> Vec<Line> {
    let mut notes = Vec::new();
    let Some(best) = ranked.first() else {
        return notes;
    };
    if !best.suits {
        between_or_beyond(sought, ranked, &mut notes);
    }
    if sought.bust < LIKELY.least {
        tell(&mut notes, Told::SmallBust, &[]);
    }
    if sought.bust > LIKELY.most {
        tell(&mut notes, Told::LargeBust, &[]);
    }
    of_list(sought.question, &mut notes);
    if sought.target.is_none() {
        tell(&mut notes, Told::EaseIsInTheList, &[]);
    }
    if best.ease.is_none() && !is_wrap(sought.question) {
        tell(&mut notes, Told::EaseUnknown, &[]);
    }
    if sought.too_tight(best) {
        tell(&mut notes, Told::TooTight, &[Value::Share(best.share)]);
    }
    of_gauges(sought, ranked, &mut notes);
    if is_wrap(sought.question) {
        of_wrap(sought, &mut notes);
    } else if let Some(high) = sought.question.high_bust {
        let more = sought.bust.saturating_sub(high);
        if more > FULL_OVER_HIGH {
            let (by_high, _) = Sought::of(sought.question, high).rank(own::gauge(sought.question.own));
            if let Some(best) = by_high.first() {
                tell(
                    &mut notes,
                    Told::HighBust,
                    &[Value::Length(more), Value::Size(best.size)],
                );
            }
        }
    }
    notes
}

fn between_or_beyond(sought: &Sought, ranked: &[Ranked], notes: &mut Vec<Line>) {
    let smaller = ranked.iter().find(|other| other.off < Length::ZERO);
    let larger = ranked.iter().find(|other| other.off > Length::ZERO);
    match (smaller, larger) {
        (Some(smaller), None) => tell(notes, Told::NoneLargeEnough, &[Value::Length(smaller.away())]),
        (None, Some(larger)) => tell(notes, Told::NoneSmallEnough, &[Value::Length(larger.away())]),
        (Some(smaller), Some(larger)) if sought.target.is_none() => {
            let gap = Value::Length(larger.girth.from.saturating_sub(smaller.girth.to));
            let values = [Value::Size(smaller.size), Value::Size(larger.size), gap];
            tell(notes, Told::BetweenSizes, &values);
        }
        _ => tell(notes, Told::NoneAsAsked, &[]),
    }
}

/// What is odd about the list.
fn of_list(question: &Question, notes: &mut Vec<Line>) {
    let (mut ranges, mut unsorted, mut overlap) = (0, false, None);
    for (first, one) in question.sizes.iter().enumerate() {
        let one = one.girth;
        ranges += usize::from(one.from < one.to);
        for (second, other) in question.sizes.iter().enumerate().skip(first + 1) {
            let other = other.girth;
            unsorted |= one.middle() > other.middle();
            if one.from.max(other.from) < one.to.min(other.to) {
                overlap = overlap.or(Some([Value::Size(first), Value::Size(second)]));
            }
        }
    }
    let sizes = question.sizes.len();
    let mostly_ranges = ranges * 2 > sizes && question.listed == Some(Listed::Garment);
    for (told, holds) in [
        (Told::LooksLikeBodies, mostly_ranges),
        (Told::OneSize, sizes == 1),
        (Told::Unsorted, unsorted),
    ] {
        if holds {
            tell(notes, told, &[]);
        }
    }
    if let Some(sizes) = overlap {
        tell(notes, Told::Overlap, &sizes);
    }
}

fn of_gauges(sought: &Sought, ranked: &[Ranked], notes: &mut Vec<Line>) {
    let question = sought.question;
    for (size, listed) in question.sizes.iter().enumerate() {
        if let Some(makes) = own::doubted(question, listed) {
            let listed = Value::Length(listed.girth.middle());
            let values = [Value::Size(size), Value::Length(makes), listed];
            tell(notes, Told::StitchesLeftOut, &values);
        }
    }
    if question.own.is_none() {
        let used = sought.target.is_none() && ranked.first().is_some_and(|best| best.garment.is_some());
        if question.pattern.is_some() && !used {
            tell(notes, Told::PatternGaugeUnused, &[]);
        }
        return;
    }
    let (by_pattern, _) = sought.rank(None);
    if let (Some(other), Some(best)) = (by_pattern.first(), ranked.first()) {
        if other.size != best.size {
            tell(notes, Told::PickMoved, &[Value::Size(other.size)]);
        }
        if question.pattern.is_none() && !best.from_stitches {
            tell(notes, Told::OwnGaugeUnused, &[]);
        } else if ranked.iter().any(|ranked| !ranked.from_stitches) {
            tell(notes, Told::StitchesUnknown, &[]);
        }
    }
}

fn of_wrap(sought: &Sought, notes: &mut Vec<Line>) {
    let Garment::Wrap(wrap) = sought.question.garment else {
        return;
    };
    if sought.target.is_some() {
        tell(notes, Told::GirthAtUnderarm, &[]);
    }
    if let Some(arm) = sought.arm {
        tell(notes, Told::RoundEstimated, &[Value::Length(arm)]);
    }
    let heads = wrap.head.map_or(HEAD, Span::one);
    match wrap.neck {
        None => tell(notes, Told::NeckUnknown, &[]),
        Some(neck) if neck < heads.from => {
            let short = Value::Length(heads.from.saturating_sub(neck));
            tell(notes, Told::NeckBinds, &[short]);
        }
        Some(neck) if neck < heads.to => tell(notes, Told::NeckUnsure, &[Value::Span(heads)]),
        Some(_) => {}
    }
}

/// The sum, for the pick and the runner-up.
pub(super) fn steps(sought: &Sought, ranked: &[Ranked]) -> Vec<Line> {
    let question = sought.question;
    let mut steps = Vec::new();
    let body = Value::Length(sought.body);
    if let Some(arm) = sought.arm {
        let values = [Value::Length(sought.bust), Value::Length(arm), body];
        tell(&mut steps, Told::RoundBoth, &values);
    }
    if let Some(target) = sought.target {
        let ease = Value::Ease(target.saturating_sub(sought.body));
        tell(&mut steps, Told::Target, &[body, ease, Value::Length(target)]);
    }
    for ranked in ranked.iter().take(2) {
        if sought.target.is_none() {
            let (bodies, away) = (Value::Span(ranked.girth), Value::Length(ranked.away()));
            let told = if ranked.suits { Told::Inside } else { Told::Outside };
            tell(&mut steps, told, &[Value::Size(ranked.size), bodies, body, away]);
        }
        let (Some(garment), Some(ease)) = (ranked.garment, ranked.ease) else {
            continue;
        };
        let (size, girth) = (Value::Size(ranked.size), Value::Length(garment));
        let listed = &question.sizes[ranked.size];
        let (theirs, ours) = (own::gauge(question.pattern), own::gauge(question.own));
        // The garment of a list of bodies is known by its stitches alone.
        let stitches = listed
            .stitches
            .filter(|_| ranked.from_stitches || sought.target.is_none());
        let gauge = if ranked.from_stitches { ours } else { theirs };
        match (stitches, gauge, ours) {
            (Some(stitches), Some(gauge), _) => {
                let values = [size, Value::Stitches(stitches), Value::Gauge(gauge), girth];
                tell(&mut steps, Told::ByStitches, &values);
            }
            (None, Some(theirs), Some(ours)) => {
                let listed = Value::Length(listed.girth.middle());
                let values = [size, listed, Value::Gauge(theirs), Value::Gauge(ours), girth];
                tell(&mut steps, Told::ByGauges, &values);
            }
            _ => {}
        }
        let values = [size, girth, body, Value::Ease(ease), Value::Share(ranked.share)];
        tell(&mut steps, Told::Sits, &values);
    }
    steps
}
