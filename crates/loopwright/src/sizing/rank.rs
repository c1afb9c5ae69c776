//! Every size held against the body, and the one to pick.

use super::{
    ARM_OF_BUST, Ask, CLOSE_CALL, Cloth, Garment, Listed, PerMille, Question, Ranked, TAPE_MARK, TOO_TIGHT, Why, own,
};
use crate::tables::fit::Fit;
use crate::units::rate::Quotient;
use crate::units::{Gauge, Length};
use std::cmp::Reverse;

/// What is looked for.
pub(super) struct Sought<'a> {
    pub question: &'a Question,
    pub bust: Length,
    /// The upper arm, where the girth that binds was not measured but added up.
    pub arm: Option<Length>,
    /// The girth that sizes are held against.
    pub body: Length,
    /// The garment girth that is wanted; none where bodies are listed.
    pub target: Option<Length>,
}

impl<'a> Sought<'a> {
    /// What is looked for in a question, with this for the bust.
    pub(super) fn of(question: &'a Question, bust: Length) -> Self {
        let (mut arm, mut body) = (None, bust);
        let bodies = question.listed == Some(Listed::Body);
        if let (Garment::Wrap(wrap), false) = (question.garment, bodies) {
            let upper_arm = wrap.upper_arm.unwrap_or_else(|| share_of(bust, ARM_OF_BUST));
            arm = Some(upper_arm).filter(|_| wrap.round.is_none());
            body = wrap.round.unwrap_or(bust.saturating_add(upper_arm.saturating_mul(2)));
        }
        let ease = match question.ask {
            Ask::Fit(_) if is_wrap(question) => Length::ZERO,
            Ask::Fit(fit) => fit.band().aim,
            Ask::Ease(ease) => ease,
            Ask::Percent(share) => share_of(bust, share),
        };
        let target = (question.listed == Some(Listed::Garment)).then(|| body.saturating_add(ease));
        Self {
            question,
            bust,
            arm,
            body,
            target,
        }
    }

    /// Every size as it sits at a gauge, the pick first, and why it is that.
    pub(super) fn rank(&self, own: Option<Gauge>) -> (Vec<Ranked>, Why) {
        let sizes = 0..self.question.sizes.len();
        let mut ranked: Vec<Ranked> = sizes.map(|size| self.hold(size, own)).collect();
        // From better to worse.
        ranked.sort_unstable_by_key(|held| (!held.suits, held.away(), held.girth.middle(), held.size));
        let (chosen, why) = self.choose(&ranked);
        if let Some(better) = ranked.get_mut(..=chosen) {
            better.rotate_right(1);
        }
        if let [best, others @ ..] = ranked.as_mut_slice() {
            for other in others {
                other.tied = other.suits == best.suits && other.away() == best.away();
            }
        }
        (ranked, why)
    }

    /// Which of the sorted sizes to pick: of those as good as the first, the one that goes with the cloth.
    fn choose(&self, ranked: &[Ranked]) -> (usize, Why) {
        let [best, _, ..] = ranked else {
            return (0, Why::OnlySize);
        };
        let cloth = self.question.cloth;
        let rivals = self.rivals(best, ranked);
        let why = match rivals.as_slice() {
            [] if best.suits && self.target.is_none() => Why::Within,
            [] => Why::Nearest,
            all if all.iter().all(|(_, rival)| rival.away() == best.away()) => Why::Tie(cloth),
            _ => Why::CloseCall(cloth),
        };
        let all = std::iter::once((0, best)).chain(rivals);
        let chosen = match cloth {
            Cloth::Stretches => all.min_by_key(|(place, ranked)| (ranked.girth.middle(), *place)),
            Cloth::Drapes => all.min_by_key(|(place, ranked)| (Reverse(ranked.girth.middle()), *place)),
        };
        (chosen.map_or(0, |(place, _)| place), why)
    }

    /// The sizes that are as good as the best, with their places: those exactly as near, and the nearest of those that are
    /// the other way off and as near as a tape can tell.
    fn rivals<'r>(&self, best: &Ranked, ranked: &'r [Ranked]) -> Vec<(usize, &'r Ranked)> {
        let is_tied = |other: &Ranked| other.away() == best.away();
        let is_across = |other: &Ranked| match is_tied(other) {
            true => other.off != best.off,
            false => self.is_close_call(best, other),
        };
        let others = ranked.iter().enumerate().skip(1);
        let alike: Vec<_> = others.take_while(|(_, other)| other.suits == best.suits).collect();
        let nearest_across = alike
            .iter()
            .find(|(_, other)| is_across(other))
            .map(|(_, other)| other.away());
        let is_rival = |other: &Ranked| is_tied(other) || is_across(other) && Some(other.away()) == nearest_across;
        alike.into_iter().filter(|(_, other)| is_rival(other)).collect()
    }

    /// Whether a size that is not as near as the best is the other way off, and no tape can tell. Snug is welcome, and
    /// tighter than most knitting bears is not.
    fn is_close_call(&self, best: &Ranked, other: &Ranked) -> bool {
        let is_opposite = best.off.to_nm().signum() * other.off.to_nm().signum() < 0;
        let is_as_near = other.away().saturating_sub(best.away()) <= CLOSE_CALL;
        let strains = self.too_tight(other) && !self.too_tight(best);
        is_opposite && is_as_near && !strains
    }

    /// One size held against the body.
    fn hold(&self, size: usize, own: Option<Gauge>) -> Ranked {
        let question = self.question;
        let own::Measures {
            girth,
            garment,
            from_stitches,
        } = own::measures(question, &question.sizes[size], own);
        // Ease at the bust says nothing of a wrap.
        let garment_of = garment.filter(|_| self.target.is_some() || !is_wrap(question));
        let ease = garment_of.map(|garment| garment.saturating_sub(self.body));
        let fit = ease.filter(|_| !is_wrap(question)).map(Fit::of);
        let off = girth.off(self.target.unwrap_or(self.bust));
        let mut held = Ranked {
            size,
            girth,
            garment,
            from_stitches,
            ease,
            share: share(ease.unwrap_or(Length::ZERO), self.body),
            fit,
            suits: false,
            off,
            tied: false,
        };
        held.suits = match question.ask {
            _ if self.target.is_none() => held.away() <= TAPE_MARK,
            _ if is_wrap(question) => off >= Length::ZERO,
            Ask::Fit(wanted) => fit == Some(wanted) && !self.too_tight(&held),
            Ask::Ease(_) | Ask::Percent(_) => held.away() <= CLOSE_CALL,
        };
        held
    }

    /// Whether a sweater is tighter than [`TOO_TIGHT`]: by its ease, before any rounding of the share.
    pub(super) fn too_tight(&self, ranked: &Ranked) -> bool {
        let ease = ranked.ease.filter(|_| ranked.fit.is_some());
        ease.is_some_and(|ease| ease < share_of(self.bust, TOO_TIGHT))
    }
}

pub(super) fn is_wrap(question: &Question) -> bool {
    matches!(question.garment, Garment::Wrap(_))
}

/// A part in thousandths of a whole, rounded to the nearest.
fn share(part: Length, whole: Length) -> PerMille {
    let share = rounded(i128::from(part.to_nm()) * 1_000, i128::from(whole.to_nm()).max(1));
    PerMille(i32::try_from(share).unwrap_or(i32::MAX))
}

/// So many thousandths of a whole, rounded to the nearest nanometre.
fn share_of(whole: Length, share: PerMille) -> Length {
    let part = rounded(i128::from(whole.to_nm()) * i128::from(share.0), 1_000);
    Length::from_nm(i64::try_from(part).unwrap_or(i64::MAX))
}

/// The nearest whole number; halves go away from nought, so that as much less is written like as much more.
fn rounded(over: i128, under: i128) -> i128 {
    let over_nought = Quotient {
        over: over.abs(),
        under,
    };
    over.signum() * over_nought.nearest()
}
