//! What a size measures at the knitter's own gauge, and what else her gauge moves.
//!
//! Girth = stitches / own gauge, where the size's stitches are known: the pattern has rounded them to whole repeats, and
//! that can be a centimetre or two. Without the stitches it is the listed girth by the two gauges. A range of bodies
//! moves by as much as the garment does, since the ease the designer meant stays the same.
//!
//! Lengths that are knitted *to a measure* hold; lengths that are knitted *by rows* do not. Yarn for a piece of the same
//! measures goes with the square root of stitches times rows to the area (a stitch's yarn goes with one over that root:
//! Munden 1959, from memory), so 10 % more of them is 4.9 % more yarn.

use super::rank::Found;
use super::{Listed, Measures, PerMille, Question, Size, Span};
use crate::units::{Gauge, Length};

/// A usual armhole, to show on it what rows do. Common practice, no source.
pub(super) const ARMHOLE: Length = Length::from_mm(220);

/// Stitches and listed girth may differ by this share before it is said, and by this many before they are not believed.
/// Common practice, no source.
const DIFFER: f64 = 0.03;
const DOUBT: f64 = 0.15;
/// The same where bodies are listed, and the garment may have any ease.
const DOUBT_OF_BODY: (f64, f64) = (0.7, 1.6);

/// Whose gauge to reckon with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Gauged {
    /// The pattern's.
    Pattern,
    /// The knitter's own, where known.
    Own,
}

/// What the knitter's own gauge moves, where both are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Moves {
    /// How many stitches more to the length, in thousandths of the pattern's.
    pub stitches: PerMille,
    /// How many rows more to the length; none where a row gauge is missing.
    pub rows: Option<PerMille>,
    /// How much wider the picked size is than the pattern has it, where that is known.
    pub girth: Option<Length>,
    /// A usual armhole, knitted by the pattern's rows: what it should measure.
    pub armhole: Length,
    /// What it does measure at her own row gauge; none where a row gauge is missing.
    pub armhole_by_rows: Option<Length>,
    /// Yarn more for a piece of the same measures.
    pub yarn_same_measure: PerMille,
    /// Yarn more than the pattern has for the picked size, its stitches kept and its lengths knitted to measure.
    pub yarn_same_size: PerMille,
    /// Whether the rows were taken to change as the stitches do, since a row gauge is missing.
    pub rows_assumed: bool,
}

/// What a size of garment measures; none where nothing can be said.
pub(super) fn measures(question: &Question, size: &Size, gauged: Gauged) -> Option<Measures> {
    let listed = (question.listed == Some(Listed::Garment)).then(|| size.girth.middle());
    let stitches = size
        .stitches
        .filter(|_| doubt(question, size).is_none_or(|d| !d.disbelieved));
    let by = |gauge: Option<Gauge>| gauge.zip(stitches).and_then(|(g, s)| g.width_of(f64::from(s)));
    let (theirs, ours) = gauges(question);
    let pattern = listed.or_else(|| by(theirs));
    let ours = ours.filter(|_| gauged == Gauged::Own);
    let exact = by(ours);
    let own = exact.or_else(|| regauged(listed?, theirs?, ours?));
    (pattern.is_some() || own.is_some()).then_some(Measures {
        pattern,
        own,
        from_stitches: exact.is_some(),
    })
}

/// The range of bodies a size fits at the knitter's own gauge: moved by as much as the garment is.
pub(super) fn moved_range(question: &Question, size: &Size, measures: Option<Measures>, gauged: Gauged) -> Span {
    let (theirs, ours) = gauges(question);
    let ours = ours.filter(|_| gauged == Gauged::Own);
    let by = match measures.map(|m| (m.pattern, m.own)) {
        Some((Some(pattern), Some(own))) => Some(own.saturating_sub(pattern)),
        // Without the stitches the garment is taken to be about as wide as the body.
        _ => theirs.zip(ours).and_then(|(theirs, ours)| {
            let middle = size.girth.middle();
            Some(regauged(middle, theirs, ours)?.saturating_sub(middle))
        }),
    };
    size.girth.moved(by.unwrap_or(Length::ZERO))
}

/// A girth in the pattern's gauge, knitted stitch for stitch at another.
fn regauged(girth: Length, theirs: Gauge, ours: Gauge) -> Option<Length> {
    ours.width_of(theirs.count_over(girth))
}

/// The pattern's stitch gauge and the knitter's own.
pub(super) fn gauges(question: &Question) -> (Option<Gauge>, Option<Gauge>) {
    (question.pattern.map(|g| g.stitches), question.own.map(|g| g.stitches))
}

/// Stitches that do not go with the listed girth.
#[derive(Clone, Copy, Debug)]
pub(super) struct Doubt {
    /// What is listed.
    pub listed: Length,
    /// What the stitches make at the gauge.
    pub worked: Length,
    /// Too far off to be reckoned with.
    pub disbelieved: bool,
    /// About half: the stitches of the front or the back alone.
    pub one_piece: bool,
}

/// Whether the stitches of a size go with its listed girth, by the pattern's gauge or, failing that, her own.
pub(super) fn doubt(question: &Question, size: &Size) -> Option<Doubt> {
    let stitches = f64::from(size.stitches?);
    let (theirs, ours) = gauges(question);
    let worked = theirs.or(ours)?.width_of(stitches).unwrap_or(Length::MAX);
    let listed = size.girth.middle();
    let of = worked.to_nm() as f64 / listed.to_nm() as f64;
    let garment = question.listed == Some(Listed::Garment) && theirs.is_some();
    let disbelieved = if garment {
        (of - 1.0).abs() > DOUBT
    } else {
        of < DOUBT_OF_BODY.0 || of > DOUBT_OF_BODY.1
    };
    let said = disbelieved || garment && (of - 1.0).abs() > DIFFER;
    said.then_some(Doubt {
        listed,
        worked,
        disbelieved,
        one_piece: (0.45..0.62).contains(&of),
    })
}

pub(super) fn moves(question: &Question, found: &Found) -> Option<Moves> {
    let (theirs, ours) = (question.pattern?, question.own?);
    let ratio = |theirs: Gauge, ours: Gauge| ours.per_cm() / theirs.per_cm();
    let stitches = ratio(theirs.stitches, ours.stitches);
    let row_gauges = theirs.rows.zip(ours.rows);
    let rows = row_gauges.map(|(theirs, ours)| ratio(theirs, ours));
    let measured = found.best().and_then(|best| best.measures);
    let by_rows = |(theirs, ours)| regauged(ARMHOLE, theirs, ours);
    let taken = rows.unwrap_or(stitches);
    Some(Moves {
        stitches: more(stitches),
        rows: rows.map(more),
        girth: measured.and_then(|m| Some(m.own?.saturating_sub(m.pattern?))),
        armhole: ARMHOLE,
        armhole_by_rows: row_gauges.and_then(by_rows),
        yarn_same_measure: more((stitches * taken).sqrt()),
        yarn_same_size: more((taken / stitches).sqrt()),
        rows_assumed: rows.is_none(),
    })
}

/// How much more than once, in thousandths.
fn more(times: f64) -> PerMille {
    // A float that is too large, or none, becomes the nearest whole number or nought.
    PerMille(((times - 1.0) * 1000.0).round() as i32)
}
