//! When each cord serves, along the piece: rounds from left to right, and below each other a bar for each cord. One that
//! is picked has a thick bar and strong words; where none serves the line is dotted. An upright line stands at each end
//! of a window in which to change.

use super::girths::{whole, words};
use super::path::Path;
use crate::part::plain::{self, element_with};
use crate::words::intl::number;
use loopwright::cords::Run;
use yew::prelude::*;

/// Where the bars begin, behind their words, and how wide all rounds are.
const LEFT: f64 = 96.0;
const WIDE: f64 = 248.0;
/// The first bar, below the numbers of the windows, and from one bar to the next.
const TOP: f64 = 40.0;
const ROW: f64 = 28.0;
/// Room for the number of a round.
const ROOM: f64 = 40.0;

/// What a bar stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bar {
    /// A cord to take.
    Picked,
    /// A cord that would serve too.
    Other,
    /// No cord at all.
    Gap,
}

impl Bar {
    /// The class of the bar with its name.
    const fn class(self) -> &'static str {
        match self {
            Self::Picked => "pick",
            Self::Other | Self::Gap => "",
        }
    }

    /// The class of its line.
    const fn line(self) -> &'static str {
        match self {
            Self::Picked | Self::Other => "bar",
            Self::Gap => "wanted",
        }
    }
}

/// The drawing of a piece of so many rounds: first its bars, from the top, then the marks along them.
pub struct Bars {
    rounds: f64,
    content: Vec<Html>,
    /// Where the next bar is.
    y: f64,
    uprights: Path,
    /// How far the numbers reach.
    numbered: f64,
}

impl Bars {
    /// Nothing is drawn yet.
    pub fn over(rounds: u32) -> Self {
        Self {
            rounds: f64::from(rounds.max(1)),
            content: Vec::new(),
            y: TOP,
            uprights: Path::default(),
            numbered: 0.0,
        }
    }

    fn x(&self, round: f64) -> f64 {
        LEFT + WIDE * round / self.rounds
    }

    /// A bar over these rounds, beside its name.
    pub fn add(&mut self, name: &str, bar: Bar, runs: &[Run]) {
        let mut path = Path::default();
        for run in runs {
            let from = self.x(f64::from(run.from) - 1.0);
            path.line(&[(from, self.y), (self.x(f64::from(run.to)), self.y)]);
        }
        let line = plain::path(bar.line(), &path.written());
        let content = vec![line, words("", 0.0, self.y + 5.0, name)];
        self.content.push(plain::element("g", bar.class(), content));
        self.y += ROW;
    }

    /// An upright at a round, with its number where there is room.
    pub fn mark(&mut self, round: u32) {
        let x = self.x(f64::from(round) - 0.5);
        self.uprights.line(&[(x, TOP - 14.0), (x, self.y - 14.0)]);
        if x - self.numbered >= ROOM {
            self.content.push(words("", x, TOP - 20.0, &number(round)));
            self.numbered = x;
        }
    }

    /// All of it; and what it shows, for those who cannot see it.
    pub fn drawn(mut self, words: &str) -> Html {
        self.content.push(plain::path("rule", &self.uprights.written()));
        let view = format!("0 0 360 {}", whole(self.y));
        let attributes = [
            ("class", "girths"),
            ("viewBox", &*view),
            ("role", "img"),
            ("aria-label", words),
        ];
        element_with("svg", &attributes, self.content)
    }
}
