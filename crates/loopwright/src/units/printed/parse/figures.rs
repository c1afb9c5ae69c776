//! The number of an entry: one, a range, or a dash in its place; and which numbers a unit counts for.

use super::Parser;
use crate::units::Unit;
use crate::units::printed::{Figure, Figures, TokenKind};

impl Parser<'_> {
    /// A number, a range, or a dash in place of one; several where dashes part three numbers or more.
    pub(super) fn figures(&mut self) -> Vec<Figures> {
        if self.kind(self.at) == Some(TokenKind::Dash) && !self.is_number(self.at + 1) {
            return self.nothing().into_iter().collect();
        }
        let mut chain = Vec::new();
        let mut dash = None;
        while let Some(figure) = self.figure() {
            chain.push(figure);
            dash = self.tokens.get(self.at).filter(|_| self.is_dash(self.at));
            if dash.is_none() || !self.is_number(self.at + 1) {
                break;
            }
            self.at += 1;
        }
        // `86-`, but neither `86 - S` nor `86 to fit`.
        let open = dash.filter(|dash| dash.kind == TokenKind::Dash && !self.is_words(self.at + 1));
        match (chain.as_slice(), open) {
            ([from, to], None) => vec![range(from.clone(), to.clone())],
            (_, None) => chain.into_iter().map(Figures::One).collect(),
            (_, Some(dash)) => {
                self.at += 1;
                let last = chain.pop().map(|last| Figures::Open(last, dash.range.clone()));
                chain.into_iter().map(Figures::One).chain(last).collect()
            }
        }
    }

    /// A dash where a number would be.
    pub(super) fn nothing(&mut self) -> Option<Figures> {
        let dash = self.tokens.get(self.at)?.range.clone();
        self.at += 1;
        Some(Figures::Nothing(dash))
    }

    /// A number with the unit behind it.
    pub(super) fn figure(&mut self) -> Option<Figure> {
        let number = self
            .tokens
            .get(self.at)
            .filter(|token| token.kind == TokenKind::Number)?;
        self.at += 1;
        let unit = match self.kind(self.at) {
            Some(TokenKind::Unit(unit)) if self.measures(self.at) => Some(unit),
            _ => None,
        };
        if let Some(unit) = unit {
            self.at += 1;
            self.measure(unit);
        }
        Some(Figure {
            range: number.range.clone(),
            unit,
        })
    }

    /// A unit counts for the numbers before it that have none.
    pub(super) fn measure(&mut self, unit: Unit) {
        self.reading.unit.get_or_insert(unit);
        for entry in self.reading.entries.iter_mut().skip(self.unmeasured) {
            if let Some(figures) = &mut entry.figures {
                figures.measure(unit);
            }
        }
        self.begin_measures();
    }

    /// Units that follow count for what follows.
    pub(super) fn begin_measures(&mut self) {
        self.unmeasured = self.reading.entries.len();
        self.waits_for_unit = false;
    }
}

/// A range of two numbers; where one has a unit it counts for both.
fn range(mut from: Figure, mut to: Figure) -> Figures {
    from.unit = from.unit.or(to.unit);
    to.unit = to.unit.or(from.unit);
    Figures::Range(from, to)
}
