//! Every size held against the body, and the one to pick.

use super::own::{self, Gauged};
use super::{
    ARM_OF_BUST, Answer, Ask, CLOSE_CALL, Cloth, Feel, Garment, Listed, Measures, PerMille, Question, Ranked, Span,
    TOO_TIGHT, Why,
};
use crate::tables::fit::{Band, Fit};
use crate::units::Length;
use std::cmp::Ordering;

/// The girth that sizes are held against, and how it is known.
#[derive(Clone, Copy, Debug)]
pub(super) struct Body {
    pub bust: Length,
    pub girth: Length,
    pub basis: Basis,
}

/// How the girth that binds is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Basis {
    /// A sweater: it is the bust.
    Bust,
    /// A wrap, measured round bust and both arms.
    Measured,
    /// A wrap, from the bust and one upper arm.
    UpperArm(Length),
    /// A wrap, from the bust alone, with an upper arm of this size.
    GuessedArm(Length),
}

impl Body {
    pub(super) fn of(question: &Question) -> Self {
        let bust = question.bust;
        let round = |arm: Length| bust.saturating_add(arm.saturating_mul(2));
        let (girth, basis) = match question.garment {
            Garment::Sweater => (bust, Basis::Bust),
            Garment::Wrap(wrap) => match (wrap.round, wrap.upper_arm) {
                (Some(girth), _) => (girth, Basis::Measured),
                (None, Some(arm)) => (round(arm), Basis::UpperArm(arm)),
                (None, None) => {
                    let arm = share_of(bust, ARM_OF_BUST);
                    (round(arm), Basis::GuessedArm(arm))
                }
            },
        };
        Self { bust, girth, basis }
    }
}

/// What is looked for.
#[derive(Clone, Copy, Debug)]
pub(super) enum Goal {
    /// A range of bodies with this bust in it.
    Bodies { bust: Length },
    /// A garment with this ease past the body, in this band if a fit was asked for.
    Ease {
        body: Length,
        ease: Length,
        band: Option<&'static Band>,
    },
    /// A garment with at least this room past the girth that binds.
    Room { body: Length, least: Length },
}

impl Goal {
    pub(super) fn of(question: &Question, listed: Listed, body: &Body) -> Self {
        if listed == Listed::Body {
            return Self::Bodies { bust: body.bust };
        }
        let (ease, band) = match question.ask {
            Ask::Fit(fit) => (fit.band().aim, Some(fit.band())),
            Ask::Ease(ease) => (ease, None),
            Ask::Percent(share) => (share_of(body.bust, share), None),
        };
        match question.garment {
            Garment::Sweater => Self::Ease {
                body: body.girth,
                ease,
                band,
            },
            Garment::Wrap(_) => {
                let least = if band.is_some() { Length::ZERO } else { ease };
                Self::Room {
                    body: body.girth,
                    least,
                }
            }
        }
    }

    /// The garment girth that is looked for.
    pub(super) fn target(&self) -> Option<Length> {
        match *self {
            Self::Bodies { .. } => None,
            Self::Ease { body, ease: past, .. } | Self::Room { body, least: past } => Some(body.saturating_add(past)),
        }
    }
}

/// What came of it.
#[derive(Clone, Debug)]
pub(super) struct Found {
    pub pick: usize,
    pub runner_up: Option<usize>,
    pub why: Why,
    pub tied: Vec<usize>,
    pub ranked: Vec<Ranked>,
}

impl Found {
    /// The pick, which is always there.
    pub(super) fn best(&self) -> Option<&Ranked> {
        self.ranked.first()
    }
}

/// One size with which side of the goal it lies on.
#[derive(Clone, Copy)]
struct Held {
    ranked: Ranked,
    side: Ordering,
    girth: Length,
}

/// Ranks the sizes and picks one.
pub(super) fn find(question: &Question, goal: &Goal, body: &Body, gauged: Gauged) -> Found {
    let hold = |size| hold(question, goal, body, gauged, size);
    let mut held: Vec<Held> = (0..question.sizes.len()).map(hold).collect();
    held.sort_by_key(|h| (!h.ranked.suits, h.ranked.away, h.girth));
    let rivals = rivals(&held);
    let chosen = match question.cloth {
        Cloth::Stretches => rivals.iter().min_by_key(|rival| rival.girth),
        Cloth::Drapes => rivals.iter().max_by_key(|rival| rival.girth),
    };
    let why = why(goal, question.cloth, &held, &rivals);
    let is_chosen = |h: &Held| chosen.is_some_and(|chosen| h.ranked.size == chosen.ranked.size);
    // The pick to the front; the others keep their order.
    held.sort_by_key(|h| !is_chosen(h));
    let ranked: Vec<Ranked> = held.iter().map(|h| h.ranked).collect();
    let Some(best) = ranked.first().copied() else {
        return Found {
            pick: 0,
            runner_up: None,
            why,
            tied: Vec::new(),
            ranked,
        };
    };
    let as_good = |other: &&Ranked| other.suits == best.suits && other.away == best.away;
    Found {
        pick: best.size,
        runner_up: ranked.get(1).map(|second| second.size),
        why,
        tied: ranked[1..].iter().filter(as_good).map(|other| other.size).collect(),
        ranked,
    }
}

/// Which of the sorted sizes are as good as the first: those exactly as near, and the nearest of those that are the
/// other way off and as near as a tape can tell.
fn rivals(held: &[Held]) -> Vec<Held> {
    let Some(best) = held.first() else {
        return Vec::new();
    };
    let across = |other: &&Held| {
        best.side != Ordering::Equal && other.side == best.side.reverse() && other.ranked.suits == best.ranked.suits
    };
    let nearest_across = held.iter().find(across).map(|other| other.ranked.away);
    let rival = |other: &&Held| {
        let away = other.ranked.away;
        let tied = other.ranked.suits == best.ranked.suits && away == best.ranked.away;
        let close = away.saturating_sub(best.ranked.away) <= CLOSE_CALL;
        tied || across(other) && close && Some(away) == nearest_across
    };
    held.iter().filter(rival).copied().collect()
}

fn why(goal: &Goal, cloth: Cloth, held: &[Held], rivals: &[Held]) -> Why {
    let alike = |pair: &[Held]| pair[0].ranked.away == pair[1].ranked.away;
    match held {
        [_] => Why::OnlySize,
        _ if rivals.len() > 1 && rivals.windows(2).all(alike) => Why::Tie(cloth),
        _ if rivals.len() > 1 => Why::CloseCall(cloth),
        [best, ..] if best.ranked.suits && matches!(goal, Goal::Bodies { .. }) => Why::Within,
        _ => Why::Nearest,
    }
}

/// One size held against the body.
fn hold(question: &Question, goal: &Goal, body: &Body, gauged: Gauged, size: usize) -> Held {
    let listed = &question.sizes[size];
    let measures = own::measures(question, listed, gauged);
    let garment = measures.and_then(|measures| measures.girth());
    let feel = garment.map_or(Feel::Unknown, |garment| feel(question, body, garment));
    let garment = garment.unwrap_or(Length::ZERO);
    let fits = match goal {
        Goal::Bodies { .. } => Some(own::moved_range(question, listed, measures, gauged)),
        Goal::Ease { .. } | Goal::Room { .. } => None,
    };
    let (suits, away, side, girth) = match (*goal, fits) {
        (Goal::Bodies { bust }, fits) => against_range(fits.unwrap_or(listed.girth), bust),
        (Goal::Ease { body, ease, band }, _) => {
            let (away, side) = apart(garment, body.saturating_add(ease));
            let suits = match (band, feel) {
                (Some(band), Feel::Ease { ease, too_tight, .. }) => band.has(ease) && !too_tight,
                _ => away <= CLOSE_CALL,
            };
            (suits, away, side, garment)
        }
        (Goal::Room { body, least }, _) => {
            let (away, side) = apart(garment, body.saturating_add(least));
            (side != Ordering::Less, away, side, garment)
        }
    };
    let ranked = Ranked {
        size,
        fits,
        measures,
        feel,
        suits,
        away,
    };
    Held { ranked, side, girth }
}

fn against_range(fits: Span, bust: Length) -> (bool, Length, Ordering, Length) {
    let side = if fits.has(bust) {
        Ordering::Equal
    } else {
        fits.from.cmp(&bust)
    };
    (fits.has(bust), fits.away(bust), side, fits.middle())
}

/// How far a girth is from the one looked for, and which way.
fn apart(girth: Length, wanted: Length) -> (Length, Ordering) {
    let off = girth.saturating_sub(wanted);
    (off.max(Length::ZERO.saturating_sub(off)), off.cmp(&Length::ZERO))
}

fn feel(question: &Question, body: &Body, garment: Length) -> Feel {
    let past = garment.saturating_sub(body.girth);
    match question.garment {
        Garment::Wrap(_) => Feel::Room { room: past },
        Garment::Sweater => Feel::Ease {
            ease: past,
            share: share(past, body.bust),
            fit: Fit::of(past),
            too_tight: tighter(past, body.bust, TOO_TIGHT),
        },
    }
}

/// Whether an ease is less than this share of the body: exact, before any rounding of the share.
fn tighter(ease: Length, body: Length, share: PerMille) -> bool {
    i128::from(ease.to_nm()) * 1000 < i128::from(body.to_nm()) * i128::from(share.0)
}

/// A part in thousandths of a whole, rounded to the nearest; nothing of nothing.
pub(super) fn share(part: Length, whole: Length) -> PerMille {
    if whole <= Length::ZERO {
        return PerMille(0);
    }
    let (part, whole) = (i128::from(part.to_nm()), i128::from(whole.to_nm()));
    let rounded = (part * 2000 + whole).div_euclid(whole * 2);
    PerMille(i32::try_from(rounded).unwrap_or(if rounded < 0 { i32::MIN } else { i32::MAX }))
}

/// So many thousandths of a whole, rounded to the nearest nanometre.
pub(super) fn share_of(whole: Length, share: PerMille) -> Length {
    let thousandths = i128::from(whole.to_nm()) * i128::from(share.0);
    let rounded = (thousandths * 2 + 1000).div_euclid(2000);
    Length::from_nm(i64::try_from(rounded).unwrap_or(if rounded < 0 { i64::MIN } else { i64::MAX }))
}

impl Answer {
    /// How the size to knit sits.
    pub fn best(&self) -> Option<&Ranked> {
        self.ranked.first()
    }
}

impl Ranked {
    /// What the garment measures, where known.
    pub fn garment(&self) -> Option<Length> {
        self.measures.as_ref().and_then(Measures::girth)
    }
}
