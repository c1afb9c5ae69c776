//! What is said about sizes: the one to knit, how each sits, what the knitter's own gauge moves.

use super::super::intl::{decimal, say_made, stitches, tenths};
use super::{cloth, told};
use loopwright::sizing::{ARMHOLE, Answer, Garment, Listed, Moves, PerMille, Question, Ranked, Span, Told, Value, Why};
use loopwright::tables::fit::Fit;
use loopwright::units::print::{self, Step};
use loopwright::units::{Length, LengthUnit};

/// What sizes are called, and the unit they are said in.
pub struct Teller<'a> {
    /// The question with its list.
    pub question: &'a Question,
    /// Prints a length in the unit the knitter uses.
    pub print: &'a dyn Fn(Length) -> String,
}

impl Teller<'_> {
    /// A sentence with these in the places of its `@`s.
    #[inline(never)]
    pub fn tell(&self, pattern: &str, values: &[Value]) -> String {
        let mut words = Vec::new();
        for value in values {
            words.push(self.value(value));
        }
        say_made(pattern, &[], words)
    }

    fn value(&self, value: &Value) -> String {
        match *value {
            Value::Size(size) => self.name(size).to_owned(),
            Value::Length(length) => (self.print)(length),
            Value::Ease(ease) => {
                let far = ease.max(Length::ZERO.saturating_sub(ease));
                [sign(ease.to_nm()), &(self.print)(far)].concat()
            }
            Value::Span(Span { from, to }) if from == to => (self.print)(from),
            Value::Span(Span { from, to }) => {
                // The unit stands behind the second: "81 to 86 cm".
                let first = (self.print)(from);
                let number = first.rsplit_once([' ', '\u{a0}']).map_or(&*first, |(number, _)| number);
                [number, " to ", &(self.print)(to)].concat()
            }
            Value::Share(share) => per_cent(share),
            Value::Gauge(gauge) => {
                let inches = gauge.span().to_nm() % Length::INCH.to_nm() == 0;
                let unit = if inches { LengthUnit::Inch } else { LengthUnit::Cm };
                let span = print::with_unit(gauge.span(), unit, Step::Tenth);
                [&decimal(gauge.count()), " in ", &span].concat()
            }
            Value::Stitches(count) => stitches(count),
        }
    }

    /// What a size is called.
    pub fn name(&self, size: usize) -> &str {
        let listed = self.question.sizes.get(size);
        listed.map_or("", |size| size.label.as_str())
    }

    /// Whether bodies are listed.
    pub fn bodies(&self) -> bool {
        self.question.listed == Some(Listed::Body)
    }

    /// Why it is this one, above the answer.
    pub fn why(&self, why: Why) -> &'static str {
        match why {
            Why::OnlySize => "The only size there is",
            Why::Within => "Your bust lies in its range",
            Why::Nearest if self.bodies() => "The nearest to your bust",
            Why::Nearest => "The nearest to what you want",
            Why::Tie(way) | Why::CloseCall(way) => cloth(way),
        }
    }

    /// That there is no size for her, where she is outside them all.
    pub fn beyond(&self, answer: &Answer) -> Option<String> {
        for (none, only) in [
            (Told::NoneLargeEnough, "It does not fit: it is @ too small"),
            (Told::NoneSmallEnough, "It does not fit: it is @ too large"),
        ] {
            if let Some(values) = answer.note(none) {
                let pattern = if answer.why == Why::OnlySize {
                    only
                } else {
                    told(none).0
                };
                return Some(self.tell(pattern, values));
            }
        }
        None
    }

    /// What it measures or whom it is for, and how it feels.
    pub fn measured(&self, ranked: &Ranked) -> (String, String) {
        let Span { from, to } = ranked.girth;
        let mut said = String::new();
        if self.bodies() {
            let made = if from == to {
                "Made for a bust of @"
            } else {
                "Made for @"
            };
            said = self.tell(made, &[Value::Span(ranked.girth)]);
        }
        let (Some(garment), Some(ease)) = (ranked.garment, ranked.ease) else {
            said.push_str(if ranked.suits { ", and yours is" } else { "; yours is" });
            let pattern = match ranked.off.to_nm() {
                ..0 => "@ more",
                0 if from == to => "the same",
                0 => "within",
                1.. => "@ less",
            };
            return (said, self.tell(pattern, &[Value::Length(ranked.away())]));
        };
        let listed = self
            .question
            .sizes
            .get(ranked.size)
            .map_or(garment, |size| size.girth.middle());
        let round = match self.bodies() {
            true => "; @ round",
            false if listed == garment => "@ round",
            false => "@ round at your gauge (@ in the pattern)",
        };
        said += &self.tell(round, &[Value::Length(garment), Value::Length(listed)]);
        let less = ease < Length::ZERO;
        let far = if less { Length::ZERO.saturating_sub(ease) } else { ease };
        let none = (self.print)(far) == (self.print)(Length::ZERO);
        let than = match (ranked.fit.is_some(), less) {
            (true, _) if none => ", as you measure:",
            (false, _) if none => ", as bust and arms measure:",
            (true, false) => ", @ more than you:",
            (true, true) => ", @ less than you:",
            (false, false) => ", @ more than bust and arms:",
            (false, true) => ", @ less than bust and arms:",
        };
        said += &self.tell(than, &[Value::Length(far)]);
        (said, feel(ranked).into())
    }

    /// One size with how it sits.
    pub fn sits(&self, lead: &str, ranked: &Ranked) -> String {
        let (measured, feels) = self.measured(ranked);
        self.tell(lead, &[Value::Size(ranked.size)]) + &measured + " " + &feels + "."
    }

    /// A size in the drawing: what it is called, by its place from best to worse.
    pub fn drawn_name(&self, place: usize, ranked: &Ranked, beyond: bool) -> String {
        const LONGEST: usize = 12;
        let tag = match place {
            0 if beyond => ": nearest",
            0 => ": knit this",
            _ if ranked.tied => ": as near",
            1 => ": next best",
            _ => "",
        };
        let name = self.name(ranked.size);
        match name.char_indices().nth(LONGEST) {
            Some((cut, _)) => [&name[..cut], "…", tag].concat(),
            None => [name, tag].concat(),
        }
    }

    /// A size in the drawing: the bodies it fits, or its ease.
    pub fn drawn(&self, ranked: &Ranked) -> String {
        match ranked.ease {
            Some(ease) if !self.bodies() => self.tell("@ ", &[Value::Ease(ease)]) + feel(ranked),
            _ => self.value(&Value::Span(ranked.girth)),
        }
    }

    /// The body in the drawing.
    pub fn body(&self, answer: &Answer) -> String {
        let arms = answer.body != self.question.bust;
        let pattern = if arms { "bust and arms @" } else { "you @" };
        self.tell(pattern, &[Value::Length(answer.body)])
    }

    /// The garment that was looked for, in the drawing.
    pub fn target(&self, target: Length) -> String {
        let least = matches!(self.question.garment, Garment::Wrap(_));
        let pattern = if least { "at least @" } else { "wanted @" };
        self.tell(pattern, &[Value::Length(target)])
    }
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

fn sign(value: i64) -> &'static str {
    match value {
        ..0 => "−",
        0 => "",
        1.. => "+",
    }
}

/// So many per cent more, or less.
fn per_cent(share: PerMille) -> String {
    let part = tenths(f64::from(share.0.unsigned_abs()) / 10.0);
    [sign(i64::from(share.0)), &part, "\u{a0}%"].concat()
}

/// What her gauge moves.
pub fn moves(moves: &Moves, print: &dyn Fn(Length) -> String) -> Vec<String> {
    let counts = match moves.rows {
        Some(_) => "In the same length, against the pattern: stitches @, rows @.",
        None => "In the same length, against the pattern: stitches @; rows were taken to go with them.",
    };
    let rows = moves.rows.unwrap_or(moves.stitches);
    let yarn = "Yarn, against the pattern: @ for a size followed as it is, @ for a piece of the same measures.";
    let mut said = vec![
        say_made(counts, &[], vec![per_cent(moves.stitches), per_cent(rows)]),
        say_made(
            yarn,
            &[],
            vec![per_cent(moves.yarn_same_size), per_cent(moves.yarn_same_measure)],
        ),
    ];
    if let Some(by_rows) = moves.armhole_by_rows.filter(|by_rows| *by_rows != ARMHOLE) {
        let pattern =
            "Lengths hold where you knit to the measure; row counts do not: an armhole of @ comes to @ by them.";
        said.push(say_made(pattern, &[], vec![print(ARMHOLE), print(by_rows)]));
    }
    said
}
