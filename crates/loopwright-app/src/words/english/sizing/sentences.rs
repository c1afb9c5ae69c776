//! What is said about sizes: the one to knit, how each sits, what the knitter's own gauge moves.

use super::super::intl::{decimal, tenths};
use super::super::units::Lengths;
use crate::words::english::units::quantity;
use loopwright::sizing::{ARMHOLE, Answer, Cloth, Garment, Listed, Moves, Note, PerMille, Question, Ranked, Span, Why};
use loopwright::tables::fit::Fit;
use loopwright::units::print::Step;
use loopwright::units::{Gauge, Length, LengthUnit};

/// The longest name of a size in the drawing.
const LONGEST_NAME: usize = 12;

/// What sizes are called, and the unit they are said in.
#[derive(Clone, Copy)]
pub struct Sentences<'a> {
    /// The question with its list.
    pub question: &'a Question,
    /// How lengths are written.
    pub lengths: Lengths,
}

/// The headline of the answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Headline {
    /// Why it is this one.
    pub title: &'static str,
    /// What to knit.
    pub line: String,
    /// How that sits, and the word for it.
    pub outcome: (String, String),
}

impl Sentences<'_> {
    /// What a size is called.
    pub fn name(&self, size: usize) -> &str {
        let listed = self.question.sizes.get(size);
        listed.map_or("", |size| size.label.as_str())
    }

    /// An ease with its sign.
    pub(super) fn ease(&self, ease: Length) -> String {
        sign(ease.to_nm()).to_owned() + &self.lengths.write(far(ease))
    }

    /// One girth, or a range with its unit behind the second: `81 to 86 cm`.
    pub(super) fn span(&self, Span { from, to }: Span) -> String {
        let last = self.lengths.write(to);
        if from == to {
            return last;
        }
        format!("{} to {last}", self.lengths.write_number(from))
    }

    fn are_bodies_listed(&self) -> bool {
        self.question.listed == Some(Listed::Body)
    }

    /// The size to knit; or that there is none, where she is outside them all.
    pub fn headline(&self, answer: &Answer, best: &Ranked) -> Headline {
        let (measured, feels) = self.measured(best);
        let name = self.name(best.size);
        match self.beyond(answer) {
            Some(line) => Headline {
                title: "Outside all sizes",
                line,
                outcome: (format!("The nearest is size {name}. {measured}"), feels),
            },
            None => Headline {
                title: self.why(answer.why),
                line: format!("Knit size {name}"),
                outcome: (measured, feels),
            },
        }
    }

    fn why(&self, why: Why) -> &'static str {
        match why {
            Why::OnlySize => "The only size there is",
            Why::Within => "Your bust lies in its range",
            Why::Nearest if self.are_bodies_listed() => "The nearest to your bust",
            Why::Nearest => "The nearest to what you want",
            Why::Tie(cloth) | Why::CloseCall(cloth) => match cloth {
                Cloth::Stretches => "Between two: this one stretches to fit",
                Cloth::Drapes => "Between two: this one drapes",
            },
        }
    }

    /// That there is no size for her, where she is outside them all.
    fn beyond(&self, answer: &Answer) -> Option<String> {
        let note = answer.notes.iter().find(|note| note.is_beyond())?;
        Some(match *note {
            Note::NoneLargeEnough { lacks } if answer.why == Why::OnlySize => {
                format!("It does not fit: it is {} too small", self.lengths.write(lacks))
            }
            Note::NoneSmallEnough { over } if answer.why == Why::OnlySize => {
                format!("It does not fit: it is {} too large", self.lengths.write(over))
            }
            ref other => self.note(other),
        })
    }

    /// What it measures or whom it is for, and how it feels.
    fn measured(&self, ranked: &Ranked) -> (String, String) {
        match (ranked.garment, ranked.ease) {
            (Some(garment), Some(ease)) => {
                let made = self.made_for(ranked).map_or_else(String::new, |made| made + "; ");
                let round = self.round(ranked, garment);
                (
                    format!("{made}{round}, {}:", self.than(ranked, ease)),
                    feel(ranked).into(),
                )
            }
            _ => {
                let made = self.made_for(ranked).unwrap_or_default();
                let yours = if ranked.suits { ", and yours is" } else { "; yours is" };
                (made + yours, self.against(ranked))
            }
        }
    }

    /// The bodies it is for, where bodies are listed.
    fn made_for(&self, ranked: &Ranked) -> Option<String> {
        let bodies = self.span(ranked.girth);
        let made = if ranked.girth.from == ranked.girth.to {
            format!("Made for a bust of {bodies}")
        } else {
            format!("Made for {bodies}")
        };
        self.are_bodies_listed().then_some(made)
    }

    /// How her bust lies against the bodies it is for.
    fn against(&self, ranked: &Ranked) -> String {
        let away = self.lengths.write(ranked.away());
        let is_one = ranked.girth.from == ranked.girth.to;
        match ranked.off.to_nm() {
            1.. | ..0 if ranked.suits && is_one => "the same, for all that a tape can tell".into(),
            1.. | ..0 if ranked.suits => "within, for all that a tape can tell".into(),
            ..0 => format!("{away} more"),
            0 if is_one => "the same".into(),
            0 => "within".into(),
            1.. => format!("{away} less"),
        }
    }

    /// What the garment measures.
    fn round(&self, ranked: &Ranked, garment: Length) -> String {
        let girth = self.lengths.write(garment);
        let size = self.question.sizes.get(ranked.size);
        match size.map(|size| size.girth.middle()) {
            Some(listed) if listed != garment && !self.are_bodies_listed() => {
                let listed = self.lengths.write(listed);
                format!("{girth} round at your gauge ({listed} in the pattern)")
            }
            _ => format!("{girth} round"),
        }
    }

    /// How much more or less than her that is.
    fn than(&self, ranked: &Ranked, ease: Length) -> String {
        let away = self.lengths.write(far(ease));
        let (is_sweater, is_less) = (ranked.fit.is_some(), ease < Length::ZERO);
        match (is_sweater, is_less) {
            (true, _) if self.lengths.is_nought(ease) => "as you measure".into(),
            (false, _) if self.lengths.is_nought(ease) => "as bust and arms measure".into(),
            (true, false) => format!("{away} more than you"),
            (true, true) => format!("{away} less than you"),
            (false, false) => format!("{away} more than bust and arms"),
            (false, true) => format!("{away} less than bust and arms"),
        }
    }

    /// The next best size, with how it sits; or that there is no other.
    pub fn next_best(&self, ranked: Option<&Ranked>) -> String {
        let Some(ranked) = ranked else {
            return "There is no next best: it is the only size in the list.".to_owned();
        };
        let (name, (measured, feels)) = (self.name(ranked.size), self.measured(ranked));
        let lead = if ranked.tied { "Just as near" } else { "Next best" };
        format!("{lead}: size {name}. {measured} {feels}.")
    }

    /// One size among all, with how it sits.
    pub fn among_all(&self, ranked: &Ranked) -> String {
        let (name, (measured, feels)) = (self.name(ranked.size), self.measured(ranked));
        let tied = if ranked.tied { ", just as near" } else { "" };
        format!("Size {name}{tied}. {measured} {feels}.")
    }

    /// A size in the drawing: what it is called, by its place from best to worse.
    pub fn drawn_name(&self, place: usize, ranked: &Ranked, is_beyond: bool) -> String {
        let tag = match place {
            0 if is_beyond => ": nearest",
            0 => ": knit this",
            _ if ranked.tied => ": as near",
            1 => ": next best",
            _ => "",
        };
        let name = self.name(ranked.size);
        match name.char_indices().nth(LONGEST_NAME) {
            Some((cut, _)) => format!("{}…{tag}", &name[..cut]),
            None => format!("{name}{tag}"),
        }
    }

    /// A size in the drawing: the bodies it fits, or its ease.
    pub fn drawn(&self, ranked: &Ranked) -> String {
        match ranked.ease {
            Some(ease) if !self.are_bodies_listed() => format!("{} {}", self.ease(ease), feel(ranked)),
            _ => self.span(ranked.girth),
        }
    }

    /// The body in the drawing.
    pub fn body(&self, answer: &Answer) -> String {
        let body = self.lengths.write(answer.body);
        if answer.body == self.question.bust {
            format!("you {body}")
        } else {
            format!("bust and arms {body}")
        }
    }

    /// The garment that was looked for, in the drawing.
    pub fn target(&self, target: Length) -> String {
        let target = self.lengths.write(target);
        match self.question.garment {
            Garment::Wrap(_) => format!("at least {target}"),
            Garment::Sweater => format!("wanted {target}"),
        }
    }
}

/// The drawing for those who do not see it: the body, the garment that was looked for, and each size with its words.
pub fn drawing<'a>(body: &str, target: Option<&str>, sizes: impl Iterator<Item = (&'a str, &'a str)>) -> String {
    let target = target.map(|target| format!("; {target}")).unwrap_or_default();
    let sizes: String = sizes.map(|(name, sits)| format!("; {name}, {sits}")).collect();
    format!("A scale of girths: {body}{target}{sizes}.")
}

/// The word for how a garment feels.
fn feel(ranked: &Ranked) -> &'static str {
    match ranked.fit {
        Some(Fit::VeryClose) => "very close",
        Some(Fit::Close) => "close",
        Some(Fit::Standard) => "standard",
        Some(Fit::Loose) => "loose",
        Some(Fit::Oversized) => "oversized",
        None if ranked.ease < Some(Length::ZERO) => "it binds",
        None => "it has room",
    }
}

/// How far a length is from nothing, whichever way.
fn far(length: Length) -> Length {
    length.max(Length::ZERO.saturating_sub(length))
}

fn sign(value: i64) -> &'static str {
    match value {
        ..0 => "−",
        0 => "",
        1.. => "+",
    }
}

/// A gauge as a sum has it: `21 in 10 cm`.
pub(super) fn gauge(gauge: Gauge) -> String {
    let is_of_inches = gauge.span().to_nm() % Length::INCH.to_nm() == 0;
    let unit = if is_of_inches { LengthUnit::Inch } else { LengthUnit::Cm };
    let span = quantity(gauge.span(), unit, Step::Tenth);
    format!("{} in {span}", decimal(gauge.count()))
}

/// So many per cent more, or less.
pub(super) fn per_cent(share: PerMille) -> String {
    let part = tenths(f64::from(share.0.unsigned_abs()) / 10.0);
    format!("{}{part}\u{a0}%", sign(i64::from(share.0)))
}

/// Yarn against what the pattern takes: `about as much yarn`, `about 10 % more yarn`.
fn as_much_yarn(share: PerMille) -> String {
    let part = tenths(f64::from(share.0.unsigned_abs()) / 10.0);
    match share.0 {
        0 => "about as much yarn".into(),
        ..0 => format!("about {part}\u{a0}% less yarn"),
        1.. => format!("about {part}\u{a0}% more yarn"),
    }
}

/// What her gauge moves.
pub fn moves(moves: &Moves, lengths: Lengths) -> Vec<String> {
    let stitches = per_cent(moves.stitches);
    let counts = match moves.rows {
        Some(rows) => format!(
            "In the same length, against the pattern: stitches {stitches}, rows {}.",
            per_cent(rows)
        ),
        None => {
            format!(
                "In the same length, against the pattern: stitches {stitches}. Row gauge was taken to change as the stitches do."
            )
        }
    };
    let yarn = format!(
        "If you keep the pattern’s stitch counts and its lengths, you need {}; for a piece of the same size, {}.",
        as_much_yarn(moves.yarn_same_size),
        as_much_yarn(moves.yarn_same_measure)
    );
    let by_rows = moves.armhole_by_rows.filter(|by_rows| *by_rows != ARMHOLE);
    let armhole = by_rows.map(|by_rows| {
        format!(
            "Lengths hold where you knit to the measure; row counts do not: an armhole of {} comes to {} by them.",
            lengths.write(ARMHOLE),
            lengths.write(by_rows)
        )
    });
    [Some(counts), Some(yarn), armhole].into_iter().flatten().collect()
}
