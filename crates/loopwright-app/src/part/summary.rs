//! An answer as data: what the headline says, as plain text, and its figures. It is what a page around a framed tool is
//! told; the headline that is drawn says the same.

use loopwright::units::{Gauge, Length, Mass};

/// An answer in short.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Summary {
    /// What is done with the line.
    pub title: &'static str,
    /// The line, or several.
    pub lines: Vec<String>,
    /// What it comes to: the words before the outcome, and the outcome.
    pub outcome: (String, String),
    /// The figures of the answer.
    pub figures: Vec<Figure>,
}

impl Summary {
    /// All of it in one line of plain text.
    pub fn sentence(&self) -> String {
        let (before, after) = &self.outcome;
        let mut sentence = self.title.to_owned();
        for line in &self.lines {
            sentence.push(' ');
            sentence.push_str(line);
        }
        sentence.push_str(if ends_a_sentence(&sentence) { " " } else { ". " });
        [&sentence, before, " ", after, "."].concat()
    }

    /// The same for a list of many answers.
    pub fn in_a_list(&self) -> String {
        let (before, after) = &self.outcome;
        let title = self.title.trim_end_matches(':');
        let mut line = [title, ": ", &self.lines.join(" ")].concat();
        line.push_str(if ends_a_sentence(&line) { " " } else { ". " });
        [&line, before, " ", after, "."].concat()
    }
}

fn ends_a_sentence(text: &str) -> bool {
    text.ends_with(['.', '!', '?', ':'])
}

/// One figure: its name in the answer of the maths, and how much it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Figure {
    /// The name.
    pub name: &'static str,
    /// How much.
    pub amount: Amount,
}

/// How much of what.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// So many stitches, rows, balls.
    Count(u32),
    /// So long.
    Length(Length),
    /// So heavy.
    Mass(Mass),
    /// So many over a span.
    Gauge(Gauge),
}

impl Figure {
    /// A count.
    pub const fn count(name: &'static str, count: u32) -> Self {
        Self {
            name,
            amount: Amount::Count(count),
        }
    }

    /// A length.
    pub const fn length(name: &'static str, length: Length) -> Self {
        Self {
            name,
            amount: Amount::Length(length),
        }
    }

    /// A gauge.
    pub const fn gauge(name: &'static str, gauge: Gauge) -> Self {
        Self {
            name,
            amount: Amount::Gauge(gauge),
        }
    }

    /// A weight.
    pub const fn mass(name: &'static str, mass: Mass) -> Self {
        Self {
            name,
            amount: Amount::Mass(mass),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_holds_the_title_the_line_and_the_outcome() {
        let summary = |line: &str| Summary {
            title: "Knit once around",
            lines: vec![line.into()],
            outcome: ("132 stitches become".into(), "116 stitches".into()),
            figures: vec![Figure::count("after", 116)],
        };
        assert_eq!(
            summary("K3, k2tog").sentence(),
            "Knit once around K3, k2tog. 132 stitches become 116 stitches."
        );
        assert!(summary("Every 6th row.").sentence().contains("row. 132"));
    }
}
