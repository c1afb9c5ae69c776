//! What a knitter should know beside the size. Data only: the page makes the sentences.

use super::rank::{Sought, is_wrap};
use super::{FULL_OVER_HIGH, Garment, HEAD, LIKELY, Listed, PerMille, Question, Ranked, Span, Wrap, own};
use crate::units::Length;

/// One thing to know. A size is its place in the list of the question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// No garment is as large as is wanted, or the body is larger than every size.
    NoneLargeEnough {
        /// What the nearest lacks.
        lacks: Length,
    },
    /// No garment is as small as is wanted, or the body is smaller than every size.
    NoneSmallEnough {
        /// What is too much of the nearest.
        over: Length,
    },
    /// The body lies between two sizes, in neither.
    BetweenSizes {
        /// The smaller size.
        smaller: usize,
        /// The larger size.
        larger: usize,
        /// From the one to the other.
        gap: Length,
    },
    /// The body is outside the range of the pick by less than a tape can tell, and was taken to be in it.
    OnEdge {
        /// The pick.
        size: usize,
        /// Where its range ends on the side of the body.
        edge: Length,
        /// Whether that is its lower end.
        is_lower: bool,
    },
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
    /// Two sizes fit some of the same bodies.
    Overlap {
        /// The one that is listed first.
        first: usize,
        /// The other.
        second: usize,
    },
    /// Bodies are listed: no ease was added, since it is in the garment already.
    EaseIsInTheList,
    /// The real ease is not known until a finished measure, or stitches and a gauge, are typed.
    EaseUnknown,
    /// The pick is tighter than is usual.
    TooTight {
        /// Its ease as a share of the body.
        share: PerMille,
    },
    /// The stitches of a size cannot go round its girth and were left out.
    StitchesLeftOut {
        /// The size.
        size: usize,
        /// What its stitches make.
        makes: Length,
        /// What is listed.
        listed: Length,
    },
    /// At the pattern's gauge another size would be picked.
    PickMoved {
        /// That size.
        size: usize,
    },
    /// Her own gauge could not be used: the pattern's gauge or the stitches are missing.
    OwnGaugeUnused,
    /// The pattern's gauge could not be used: her own is missing.
    PatternGaugeUnused,
    /// What a size measures at her gauge comes from the listed girth, not from its stitches; it may be off a little.
    StitchesUnknown,
    /// The bust is much fuller than the high bust: a size by that fits the shoulders, with room to be added in front.
    HighBust {
        /// How much fuller.
        fuller: Length,
        /// The size that fits the shoulders.
        size: usize,
    },
    /// The listed girth of a wrap is to be the one at the underarm, not at the hem.
    GirthAtUnderarm,
    /// The girth round bust and both arms is an estimate.
    RoundEstimated {
        /// The upper arm that was taken.
        upper_arm: Length,
    },
    /// The neck opening is not known.
    NeckUnknown,
    /// The neck does not go over the head.
    NeckBinds {
        /// By how much it is short.
        short: Length,
    },
    /// The neck goes over some heads and not over others: measure the head.
    NeckUnsure {
        /// Smaller and larger heads.
        heads: Span,
    },
}

impl Note {
    /// Whether it says that the body is outside all sizes, so that none fits.
    pub const fn is_beyond(&self) -> bool {
        matches!(self, Self::NoneLargeEnough { .. } | Self::NoneSmallEnough { .. })
    }

    /// Whether it stands on common practice, without a source.
    pub const fn is_practice(&self) -> bool {
        match self {
            Self::OnEdge { .. }
            | Self::TooTight { .. }
            | Self::StitchesLeftOut { .. }
            | Self::HighBust { .. }
            | Self::RoundEstimated { .. }
            | Self::NeckBinds { .. }
            | Self::NeckUnsure { .. } => true,
            Self::NoneLargeEnough { .. }
            | Self::NoneSmallEnough { .. }
            | Self::BetweenSizes { .. }
            | Self::NoneAsAsked
            | Self::SmallBust
            | Self::LargeBust
            | Self::LooksLikeBodies
            | Self::OneSize
            | Self::Unsorted
            | Self::Overlap { .. }
            | Self::EaseIsInTheList
            | Self::EaseUnknown
            | Self::PickMoved { .. }
            | Self::OwnGaugeUnused
            | Self::PatternGaugeUnused
            | Self::StitchesUnknown
            | Self::GirthAtUnderarm
            | Self::NeckUnknown => false,
        }
    }
}

/// What else she should know.
pub(super) fn notes(sought: &Sought, ranked: &[Ranked]) -> Vec<Note> {
    let mut notes = Vec::new();
    let Some(best) = ranked.first() else {
        return notes;
    };
    if !best.suits {
        notes.push(between_or_beyond(sought, ranked));
    }
    if sought.target.is_none() {
        notes.extend(on_edge(best));
    }
    if sought.bust < LIKELY.least {
        notes.push(Note::SmallBust);
    }
    if sought.bust > LIKELY.most {
        notes.push(Note::LargeBust);
    }
    of_list(sought.question, &mut notes);
    if sought.target.is_none() {
        notes.push(Note::EaseIsInTheList);
    }
    if best.ease.is_none() && !is_wrap(sought.question) {
        notes.push(Note::EaseUnknown);
    }
    if sought.too_tight(best) {
        notes.push(Note::TooTight { share: best.share });
    }
    of_gauges(sought, ranked, &mut notes);
    match sought.question.garment {
        Garment::Wrap(wrap) => of_wrap(sought, &wrap, &mut notes),
        Garment::Sweater => notes.extend(of_high_bust(sought)),
    }
    notes
}

fn between_or_beyond(sought: &Sought, ranked: &[Ranked]) -> Note {
    let smaller = ranked.iter().find(|other| other.off < Length::ZERO);
    let larger = ranked.iter().find(|other| other.off > Length::ZERO);
    match (smaller, larger) {
        (Some(smaller), None) => Note::NoneLargeEnough { lacks: smaller.away() },
        (None, Some(larger)) => Note::NoneSmallEnough { over: larger.away() },
        (Some(smaller), Some(larger)) if sought.target.is_none() => Note::BetweenSizes {
            smaller: smaller.size,
            larger: larger.size,
            gap: larger.girth.from.saturating_sub(smaller.girth.to),
        },
        (Some(_), Some(_)) | (None, None) => Note::NoneAsAsked,
    }
}

/// That the body is in the range of a size only for all that a tape can tell.
fn on_edge(best: &Ranked) -> Option<Note> {
    let is_lower = best.off > Length::ZERO;
    let edge = if is_lower { best.girth.from } else { best.girth.to };
    let size = best.size;
    let is_on_edge = best.suits && best.off != Length::ZERO && best.girth.from < best.girth.to;
    is_on_edge.then_some(Note::OnEdge { size, edge, is_lower })
}

/// What is odd about the list.
fn of_list(question: &Question, notes: &mut Vec<Note>) {
    let sizes = &question.sizes;
    let ranges = sizes.iter().filter(|size| size.girth.from < size.girth.to).count();
    if ranges * 2 > sizes.len() && question.listed == Some(Listed::Garment) {
        notes.push(Note::LooksLikeBodies);
    }
    if sizes.len() == 1 {
        notes.push(Note::OneSize);
    }
    if !sizes.is_sorted_by_key(|size| size.girth.middle()) {
        notes.push(Note::Unsorted);
    }
    notes.extend(overlap(question));
}

/// The first two sizes that fit some of the same bodies.
fn overlap(question: &Question) -> Option<Note> {
    let girths: Vec<Span> = question.sizes.iter().map(|size| size.girth).collect();
    for (first, one) in girths.iter().enumerate() {
        for (second, other) in girths.iter().enumerate().skip(first + 1) {
            if one.from.max(other.from) < one.to.min(other.to) {
                return Some(Note::Overlap { first, second });
            }
        }
    }
    None
}

fn of_gauges(sought: &Sought, ranked: &[Ranked], notes: &mut Vec<Note>) {
    let question = sought.question;
    for (size, listed) in question.sizes.iter().enumerate() {
        if let Some(makes) = own::doubted(question, listed) {
            let listed = listed.girth.middle();
            notes.push(Note::StitchesLeftOut { size, makes, listed });
        }
    }
    let Some(best) = ranked.first() else {
        return;
    };
    if question.own.is_none() {
        let used = sought.target.is_none() && best.garment.is_some();
        if question.pattern.is_some() && !used {
            notes.push(Note::PatternGaugeUnused);
        }
        return;
    }
    let (by_pattern, _) = sought.rank(None);
    if let Some(other) = by_pattern.first().filter(|other| other.size != best.size) {
        notes.push(Note::PickMoved { size: other.size });
    }
    if question.pattern.is_none() && !best.from_stitches {
        notes.push(Note::OwnGaugeUnused);
    } else if ranked.iter().any(|ranked| !ranked.from_stitches) {
        notes.push(Note::StitchesUnknown);
    }
}

/// The size that fits the shoulders, where the bust is much fuller than they are.
fn of_high_bust(sought: &Sought) -> Option<Note> {
    let high = sought.question.high_bust?;
    let fuller = sought.bust.saturating_sub(high);
    if fuller <= FULL_OVER_HIGH {
        return None;
    }
    let (by_high, _) = Sought::of(sought.question, high).rank(own::gauge(sought.question.own));
    let size = by_high.first()?.size;
    Some(Note::HighBust { fuller, size })
}

fn of_wrap(sought: &Sought, wrap: &Wrap, notes: &mut Vec<Note>) {
    if sought.target.is_some() {
        notes.push(Note::GirthAtUnderarm);
    }
    if let Some(upper_arm) = sought.arm {
        notes.push(Note::RoundEstimated { upper_arm });
    }
    let heads = wrap.head.map_or(HEAD, Span::one);
    match wrap.neck {
        None => notes.push(Note::NeckUnknown),
        Some(neck) if neck < heads.from => notes.push(Note::NeckBinds {
            short: heads.from.saturating_sub(neck),
        }),
        Some(neck) if neck < heads.to => notes.push(Note::NeckUnsure { heads }),
        Some(_) => {}
    }
}
