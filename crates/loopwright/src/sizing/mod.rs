//! Size from bust plus ease: "My bust is 91 cm. Which size do I knit, and how will it sit?"
//!
//! Ease is the garment round the bust less the body round the bust. So the first question is what the pattern's number
//! measures. A list that says *to fit* names bodies: look for the body in it and add nothing, since the ease is in the
//! garment already. A list of *finished* measures names garments: add the ease that is wanted to the body, and take the
//! nearest. At another gauge than the pattern's a size does not measure what is listed: its stitches divided by the
//! knitter's own gauge do, and the pick is made on that.
//!
//! A wrap hangs from neck and arms. What binds is the girth round bust and both upper arms, and the neck opening over the
//! head; ease at the bust says nothing.
//!
//! The fits and their edition are in [`fit`](crate::tables::fit). Ease as a difference is a definition; the smaller size
//! for knits that stretch, the larger for drape, and the estimates marked as such, are common practice, no source.
//!
//! ```
//! use loopwright::sizing::{Ask, Listed, Question, answer, read_sizes};
//! use loopwright::tables::fit::Fit;
//! use loopwright::units::{Length, LengthUnit};
//!
//! let bust = Length::from_mm(910);
//! let finished = read_sizes("97 (103, 111)", LengthUnit::Cm).unwrap();
//! let question = Question { listed: Some(Listed::Garment), ask: Ask::Fit(Fit::Standard), ..Question::about(bust, finished) };
//! let found = answer(&question).unwrap();
//! assert_eq!((found.pick, found.ranked[0].ease), (0, Some(Length::from_mm(60))));
//!
//! let to_fit = read_sizes("S 86-91, M 91-97, L 97-102", LengthUnit::Cm).unwrap();
//! let question = Question { listed: Some(Listed::Body), ..Question::about(Length::from_mm(940), to_fit) };
//! assert_eq!(answer(&question).unwrap().pick, 1);
//! ```

mod check;
mod choices;
mod limits;
mod note;
mod own;
mod rank;
mod read;
mod size;
mod standard;
mod step;

pub use crate::units::printed::{Unread, WhyUnread};
pub use choices::{GarmentKind, Measured, Name, Room, Wanted};
pub use limits::{
    ARM_OF_BUST, CLOSE_CALL, EASE, FULL_OVER_HIGH, GIRTH, HEAD, LIKELY, SIZES, STITCHES, TAPE_MARK, TOO_TIGHT,
};
pub use note::Note;
pub use own::{ARMHOLE, Moves};
pub use read::{FAR_APART, SizeList, read_counts, read_listed, read_size_list, read_sizes, with_stitches};
pub use size::{Size, Span};
pub use standard::Standard;
pub use step::Step;

use crate::choice::Choice;
use crate::problem::Problem;
use crate::tables::fit::Fit;
use crate::units::{Gauge, Length};

/// Thousandths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct PerMille(pub i32);

/// The body, the list, and how it should sit.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Question {
    /// The body round the fullest part of the bust, within [`GIRTH`].
    pub bust: Length,
    /// The body round the chest above the bust, under the arms, where measured; within [`GIRTH`].
    pub high_bust: Option<Length>,
    /// What is knitted.
    pub garment: Garment,
    /// The pattern's sizes, in any order.
    pub sizes: Vec<Size>,
    /// What the listed numbers measure. It is asked and never guessed: without it there is no answer.
    pub listed: Option<Listed>,
    /// How it should sit. Not looked at where bodies are listed.
    pub ask: Ask,
    /// Which way to go where two sizes are as good as each other.
    pub cloth: Cloth,
    /// The pattern's gauge, washed.
    pub pattern: Option<Gauges>,
    /// The knitter's own gauge, washed.
    pub own: Option<Gauges>,
}

impl Question {
    /// The usual question about a bust and a list: a sweater of standard fit that stretches. What the list measures is
    /// still to be asked.
    pub fn about(bust: Length, sizes: Vec<Size>) -> Self {
        Self {
            bust,
            high_bust: None,
            garment: Garment::Sweater,
            sizes,
            listed: None,
            ask: Ask::Fit(Fit::Standard),
            cloth: Cloth::START,
            pattern: None,
            own: None,
        }
    }
}

/// What is knitted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Garment {
    /// Worn round the body with the arms outside: sweater, cardigan, vest.
    Sweater,
    /// Worn over the arms: wrap, poncho, cape. The listed girth is the one at the underarm, not the hem.
    Wrap(Wrap),
}

/// What binds in a wrap, where measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Wrap {
    /// The girth round bust and both upper arms, arms hanging; within [`GIRTH`].
    pub round: Option<Length>,
    /// Round one upper arm, within [`GIRTH`]; used where `round` is not measured.
    pub upper_arm: Option<Length>,
    /// The neck opening, stretched, where it goes over the head; within [`GIRTH`].
    pub neck: Option<Length>,
    /// Round the head, within [`GIRTH`].
    pub head: Option<Length>,
}

/// What the listed numbers measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Listed {
    /// The body: "to fit bust".
    Body,
    /// The garment: "finished bust", "actual measurement".
    Garment,
}

/// How it should sit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ask {
    /// One of the five fits. For a wrap it only means that nothing may bind.
    Fit(Fit),
    /// So much ease, less than nothing allowed; within [`EASE`]. For a wrap it is room past the girth that binds.
    Ease(Length),
    /// So many thousandths of the body.
    Percent(PerMille),
}

/// How the fabric takes a girth that is a little off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Cloth {
    /// It stretches, and snug is welcome: down.
    Stretches,
    /// It is to drape: up.
    Drapes,
}

/// Stitches and rows of one fabric, each within [`Gauge::COUNTS`] over [`Gauge::SPANS`]. Each carries its own span: 10 cm
/// and 4 in may meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Gauges {
    /// Stitches.
    pub stitches: Gauge,
    /// Rows, where known.
    pub rows: Option<Gauge>,
}

/// The size to knit, and how all of them sit.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Answer {
    /// The size to knit, as its place in the list of the question.
    pub pick: usize,
    /// Why this one.
    pub why: Why,
    /// Every size: the pick, then the runner-up, then from better to worse.
    pub ranked: Vec<Ranked>,
    /// The girth of the body that the sizes were held against: the bust, or for a wrap round bust and arms. A list of
    /// bodies is of busts, whatever is knitted.
    pub body: Length,
    /// The garment girth that was looked for; none where bodies are listed.
    pub target: Option<Length>,
    /// What the knitter's own gauge moves, where both gauges are known.
    pub moves: Option<Moves>,
    /// What else she should know.
    pub notes: Vec<Note>,
    /// The sum.
    pub steps: Vec<Step>,
}

impl Answer {
    /// The next best size, where there is one.
    pub fn runner_up(&self) -> Option<usize> {
        self.ranked.get(1).map(|second| second.size)
    }
}

/// Why a size was picked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Why {
    /// There is only one size.
    OnlySize,
    /// The body lies in its range, for all that a [tape](TAPE_MARK) can tell, and in no other as well.
    Within,
    /// It is the nearest to what was looked for.
    Nearest,
    /// Another is exactly as near; the cloth decided.
    Tie(Cloth),
    /// Another is as near within [`CLOSE_CALL`]; the cloth decided.
    CloseCall(Cloth),
}

/// How one size sits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Ranked {
    /// Its place in the list of the question.
    pub size: usize,
    /// The bodies it fits, or what the garment measures; at the knitter's own gauge where that is known.
    pub girth: Span,
    /// What the garment measures round the bust, where known; at the knitter's own gauge where that is known.
    pub garment: Option<Length>,
    /// Whether `garment` comes from the size's stitches at her own gauge. From the listed girth by the two gauges it may
    /// be off by what the pattern rounded to whole repeats.
    pub from_stitches: bool,
    /// The garment less the body, where known: the ease of a sweater, the room in a wrap.
    pub ease: Option<Length>,
    /// The same in thousandths of the body.
    pub share: PerMille,
    /// The word for the ease of a sweater.
    pub fit: Option<Fit>,
    /// Whether it is as wanted: the body in its range, the ease in the band, nothing binding.
    pub suits: bool,
    /// How much larger it is than what was looked for, or smaller; nothing for a range with the body in it.
    pub off: Length,
    /// Whether it is exactly as good as the pick, were it not for the cloth.
    pub tied: bool,
}

impl Ranked {
    /// How far it is from what was looked for, whichever way.
    pub fn away(&self) -> Length {
        self.off.max(Length::ZERO.saturating_sub(self.off))
    }
}

/// Picks the size.
///
/// # Errors
/// A [`Problem`] for every field that is missing or outside its bounds.
pub fn answer(question: &Question) -> Result<Answer, Vec<Problem>> {
    check::check(question)?;
    let sought = rank::Sought::of(question, question.bust);
    let (ranked, why) = sought.rank(own::gauge(question.own));
    let moves = own::moves(question);
    Ok(Answer {
        notes: note::notes(&sought, &ranked),
        steps: step::steps(&sought, &ranked),
        pick: ranked.first().map_or(0, |best| best.size),
        why,
        ranked,
        body: sought.body,
        target: sought.target,
        moves,
    })
}

#[cfg(test)]
mod tests;
