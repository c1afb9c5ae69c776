//! What a knitter should know beside the size. Data only: the page makes the sentences.

use super::own::{self, Gauged};
use super::rank::{self, Basis, Body, Found, Goal};
use super::size::{Place, place};
use super::{CLOSE_CALL, FULL_OVER_HIGH, Feel, Garment, HEAD, Listed, PerMille, Question, Ranked, Span, Wrap};
use crate::tables::fit::Fit;
use crate::units::Length;

/// Another gauge than the pattern's by more than this is another fabric. Common practice, no source.
const FAR_GAUGE: i32 = 100;

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// Bodies are listed: no ease was added, since it is in the garment already.
    EaseIsInTheList,
    /// The real ease is not known until a finished measure, or stitches and a gauge, are typed.
    EaseUnknown,
    /// The list was said to be of garments, but it has ranges, which mostly are of bodies.
    LooksLikeBodies,
    /// The body is outside every size, or no garment is as large or as small as was looked for.
    BeyondTheList {
        /// Whether a larger size would be wanted.
        larger: bool,
        /// How far the picked size is off.
        by: Length,
    },
    /// The body lies between two sizes, in neither.
    BetweenSizes {
        /// The size below.
        smaller: usize,
        /// The size above.
        larger: usize,
        /// How wide the gap is.
        gap: Length,
    },
    /// No size sits as was asked; this is the nearest.
    NoneAsAsked,
    /// There is only one size: how it sits is what can be said.
    OneSize,
    /// The sizes do not stand in order of girth.
    Unsorted,
    /// Two sizes fit some of the same bodies.
    Overlap {
        /// The first of the two in the list.
        first: usize,
        /// The other.
        second: usize,
    },
    /// Two sizes are listed with the same girth.
    Alike {
        /// The first of the two in the list.
        first: usize,
        /// The other.
        second: usize,
    },
    /// The pick is tighter than is usual.
    TooTight {
        /// The ease in thousandths of the body.
        share: PerMille,
    },
    /// The older edition of the fits has another word for this ease, or none.
    OlderEdition {
        /// Its word; none where the ease falls in one of its gaps.
        fit: Option<Fit>,
    },
    /// At the pattern's gauge another size would be picked.
    PickMoved {
        /// That size.
        from: usize,
    },
    /// What a size measures at her gauge comes from the listed girth, not from its stitches; it may be off a little.
    StitchesUnknown,
    /// The stitches and the listed girth of a size differ more than rounding to repeats would.
    StitchesDiffer {
        /// The size.
        size: usize,
        /// What is listed.
        listed: Length,
        /// What its stitches make.
        worked: Length,
    },
    /// The stitches of a size cannot go round that girth and were not reckoned with.
    StitchesNotBelieved {
        /// The size.
        size: usize,
        /// What is listed.
        listed: Length,
        /// What its stitches make.
        worked: Length,
        /// They are about half: those of the front or the back alone.
        one_piece: bool,
    },
    /// Her own gauge could not be used: the pattern's gauge or the stitches are missing.
    OwnGaugeUnused,
    /// Her gauge is far from the pattern's: it is another fabric.
    GaugeFar {
        /// Stitches more to the length, in thousandths.
        share: PerMille,
    },
    /// Lengths by measure hold; the pattern's row counts do not.
    RowCountsDoNotHold,
    /// The bust is much fuller than the high bust: this size fits the shoulders, with room to be added in front.
    HighBust {
        /// The size by the high bust.
        size: usize,
        /// The full bust less the high bust.
        more: Length,
    },
    /// The high bust is larger than the bust: one of the two was measured elsewhere.
    HighBustLarger,
    /// The girth round bust and both arms is an estimate.
    RoundEstimated {
        /// The upper arm too was taken from the bust.
        from_bust_alone: bool,
    },
    /// The listed girth of a wrap is to be the one at the underarm, not at the hem.
    GirthAtUnderarm,
    /// The neck does not go over the head.
    NeckBinds {
        /// By how much it is short.
        short: Length,
    },
    /// The neck goes over some heads and not over others: measure the head.
    NeckUnsure {
        /// The neck, stretched.
        neck: Length,
        /// Smaller and larger heads.
        heads: Span,
    },
    /// The neck opening is not known.
    NeckUnknown,
}

pub(super) fn notes(question: &Question, listed: Listed, goal: &Goal, body: &Body, found: &Found) -> Vec<Note> {
    let mut notes = Vec::new();
    notes.extend(beyond_or_between(question, goal, found));
    list_notes(question, listed, &mut notes);
    if let Some(best) = found.best() {
        pick_notes(goal, best, &mut notes);
    }
    gauge_notes(question, goal, body, found, &mut notes);
    match question.garment {
        Garment::Sweater => notes.extend(high_bust(question, listed)),
        Garment::Wrap(wrap) => wrap_notes(&wrap, body, &mut notes),
    }
    notes
}

fn beyond_or_between(question: &Question, goal: &Goal, found: &Found) -> Option<Note> {
    let best = found.best().filter(|best| !best.suits)?;
    let beyond = |larger| Some(Note::BeyondTheList { larger, by: best.away });
    match goal.target() {
        None => {
            let mut fits = vec![Span::one(Length::ZERO); question.sizes.len()];
            for ranked in &found.ranked {
                fits[ranked.size] = ranked.fits.unwrap_or(question.sizes[ranked.size].girth);
            }
            match place(fits.iter().copied(), question.bust) {
                Place::Above { .. } => beyond(true),
                Place::Below { .. } => beyond(false),
                Place::Between { smaller, larger } => {
                    let gap = fits[larger].from.saturating_sub(fits[smaller].to);
                    Some(Note::BetweenSizes { smaller, larger, gap })
                }
                Place::In { .. } | Place::Nowhere => None,
            }
        }
        Some(target) => {
            let girths = || found.ranked.iter().filter_map(Ranked::garment);
            let past = best.away > CLOSE_CALL;
            if past && girths().all(|girth| girth < target) {
                beyond(true)
            } else if past && girths().all(|girth| girth > target) {
                beyond(false)
            } else {
                Some(Note::NoneAsAsked)
            }
        }
    }
}

fn list_notes(question: &Question, listed: Listed, notes: &mut Vec<Note>) {
    let spans: Vec<Span> = question.sizes.iter().map(|size| size.girth).collect();
    let ranges = spans.iter().filter(|span| span.from < span.to).count();
    if listed == Listed::Garment && ranges * 2 > spans.len() {
        notes.push(Note::LooksLikeBodies);
    }
    if spans.len() == 1 {
        notes.push(Note::OneSize);
    }
    if !spans.is_sorted_by_key(|span| span.middle()) {
        notes.push(Note::Unsorted);
    }
    let pairs = || (0..spans.len()).flat_map(|a| (a + 1..spans.len()).map(move |b| (a, b)));
    if let Some((first, second)) = pairs().find(|(a, b)| spans[*a] == spans[*b]) {
        notes.push(Note::Alike { first, second });
    }
    let overlap = |(a, b): &(usize, usize)| {
        let (a, b) = (spans[*a], spans[*b]);
        a != b && a.from.max(b.from) < a.to.min(b.to)
    };
    if let Some((first, second)) = pairs().find(overlap) {
        notes.push(Note::Overlap { first, second });
    }
}

fn pick_notes(goal: &Goal, best: &Ranked, notes: &mut Vec<Note>) {
    if matches!(goal, Goal::Bodies { .. }) {
        notes.push(Note::EaseIsInTheList);
    }
    match best.feel {
        Feel::Unknown => notes.push(Note::EaseUnknown),
        Feel::Ease {
            ease,
            share,
            fit,
            too_tight,
        } => {
            if too_tight {
                notes.push(Note::TooTight { share });
            }
            let older = Fit::older(ease);
            if !older.contains(&fit) || older.len() > 1 {
                let fit = older.into_iter().find(|other| *other != fit);
                notes.push(Note::OlderEdition { fit });
            }
        }
        Feel::Room { .. } => {}
    }
}

fn gauge_notes(question: &Question, goal: &Goal, body: &Body, found: &Found, notes: &mut Vec<Note>) {
    for (size, listed) in question.sizes.iter().enumerate() {
        notes.extend(own::doubt(question, listed).map(|doubt| {
            let own::Doubt {
                listed,
                worked,
                one_piece,
                ..
            } = doubt;
            if doubt.disbelieved {
                Note::StitchesNotBelieved {
                    size,
                    listed,
                    worked,
                    one_piece,
                }
            } else {
                Note::StitchesDiffer { size, listed, worked }
            }
        }));
    }
    if question.own.is_none() {
        return;
    }
    let by_pattern = rank::find(question, goal, body, Gauged::Pattern);
    if by_pattern.pick != found.pick {
        notes.push(Note::PickMoved { from: by_pattern.pick });
    }
    let exact = |ranked: &Ranked| ranked.measures.is_some_and(|m| m.from_stitches);
    let both = question.pattern.is_some();
    if !both && !found.best().is_some_and(exact) {
        notes.push(Note::OwnGaugeUnused);
    } else if !found.ranked.iter().all(exact) {
        notes.push(Note::StitchesUnknown);
    }
    let Some(moves) = own::moves(question, found) else {
        return;
    };
    if moves.stitches.0.abs() > FAR_GAUGE {
        notes.push(Note::GaugeFar { share: moves.stitches });
    }
    if moves.rows.is_some_and(|rows| rows.0 != 0) {
        notes.push(Note::RowCountsDoNotHold);
    }
}

fn high_bust(question: &Question, listed: Listed) -> Option<Note> {
    let high = question.high_bust?;
    let more = question.bust.saturating_sub(high);
    if more < Length::ZERO {
        return Some(Note::HighBustLarger);
    }
    if more <= FULL_OVER_HIGH {
        return None;
    }
    let by_high = Question {
        bust: high,
        high_bust: None,
        ..question.clone()
    };
    let body = Body::of(&by_high);
    let goal = Goal::of(&by_high, listed, &body);
    let size = rank::find(&by_high, &goal, &body, Gauged::Own).pick;
    Some(Note::HighBust { size, more })
}

fn wrap_notes(wrap: &Wrap, body: &Body, notes: &mut Vec<Note>) {
    notes.push(Note::GirthAtUnderarm);
    match body.basis {
        Basis::UpperArm(_) => notes.push(Note::RoundEstimated { from_bust_alone: false }),
        Basis::GuessedArm(_) => notes.push(Note::RoundEstimated { from_bust_alone: true }),
        Basis::Bust | Basis::Measured => {}
    }
    let Some(neck) = wrap.neck else {
        notes.push(Note::NeckUnknown);
        return;
    };
    let heads = wrap.head.map_or(HEAD, Span::one);
    if neck < heads.from {
        notes.push(Note::NeckBinds {
            short: heads.from.saturating_sub(neck),
        });
    } else if neck < heads.to {
        notes.push(Note::NeckUnsure { neck, heads });
    }
}
