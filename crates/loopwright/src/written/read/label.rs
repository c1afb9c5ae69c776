//! What a line is called: `Row 1 (RS):`, `Rows 2 and 4:`, `1st row:`, `Row 2 and all even rows:`, `Next rnd:`, `Yoke:`.

use super::super::line::{Every, Label};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;
use crate::terms::Side;

/// A label has so many tokens at most.
const LONGEST: usize = 30;

impl Reader<'_> {
    /// The label here; none where the line begins with what is worked.
    pub(super) fn label(&mut self) -> Option<Label> {
        let start = self.at;
        let mut label = self
            .attempt(Self::numbered_label)
            .or_else(|| self.attempt(Self::every_label))
            .or_else(|| self.attempt(Self::named_label))?;
        let end = self.place_from(start).end;
        label.place.end = end;
        let called = self.text.get(label.place.range()).unwrap_or_default();
        label.called = called.trim_end_matches([':', '.', '-', '–', '—', ' ']).to_owned();
        Some(label)
    }

    /// `Row 1`, `Rnds 3-5`, `1st and 3rd rows`, with the side, the others it stands for, and its mark.
    fn numbered_label(&mut self) -> Option<Label> {
        let start = self.at;
        let (round, rows) = match self.row_word() {
            Some(round) => (round, self.row_numbers()?),
            None => self.ordinal_rows()?,
        };
        let every = self.attempt(|reader| reader.and_every(&rows));
        let side = self.side_behind();
        self.attempt(Self::remark);
        self.label_mark();
        Some(self.labelled(start, Some(round), rows, (every, side)))
    }

    /// A remark in a bracket before the colon: `(dec row)`. It is part of the name and says nothing else.
    fn remark(&mut self) -> Option<()> {
        let Some(Kind::Open(closing)) = self.here() else {
            return None;
        };
        self.at += 1;
        while let Some(Kind::Word(_)) = self.here() {
            self.at += 1;
        }
        (self.here() == Some(Kind::Close(closing))).then(|| self.at += 1)?;
        (self.here() == Some(Kind::Mark(':'))).then_some(())
    }

    /// `1st row`, `2nd and 4th rows`.
    pub(super) fn ordinal_rows(&mut self) -> Option<(bool, Vec<(u32, u32)>)> {
        let mut rows = Vec::new();
        loop {
            let Some(Kind::Number(row)) = self.here() else {
                return None;
            };
            let is_ordinal = self.is_key(self.at + 1, Key::Ordinal) || self.is_key(self.at + 1, Key::Stitches);
            (is_ordinal && self.touches(self.at)).then(|| self.at += 2)?;
            rows.push((row, row));
            let comma = self.take_mark(',');
            if !(self.take(Key::And) || comma) {
                break;
            }
        }
        Some((self.row_word()?, rows))
    }

    /// `and all even rows`, `(and all even rows)`, `and every foll alt row`, `and all WS rows`.
    fn and_every(&mut self, rows: &[(u32, u32)]) -> Option<Every> {
        let bracket = match self.here() {
            Some(Kind::Open(closing)) => Some(Kind::Close(closing)),
            _ => None,
        };
        self.at += usize::from(bracket.is_some());
        self.take_mark(',');
        self.take(Key::And).then_some(())?;
        (self.take(Key::All) || self.take(Key::Every)).then_some(())?;
        self.take(Key::Following);
        let every = match self.which_rows() {
            Some(every) => every,
            None => {
                self.take(Key::Alternate).then_some(())?;
                let is_even = rows.first()?.0 % 2 == 0;
                if is_even { Every::Even } else { Every::Odd }
            }
        };
        self.row_word()?;
        if bracket.is_some() {
            (self.here() == bracket).then(|| self.at += 1)?;
        }
        Some(every)
    }

    /// `Even rows:`, `All WS rows:`, `Every even-numbered rnd:`.
    fn every_label(&mut self) -> Option<Label> {
        let start = self.at;
        let _every = self.take(Key::All) || self.take(Key::Every);
        let every = self.which_rows()?;
        let round = self.row_word()?;
        let side = self.side_behind();
        self.label_mark();
        Some(self.labelled(start, Some(round), Vec::new(), (Some(every), side)))
    }

    fn which_rows(&mut self) -> Option<Every> {
        let every = match self.here()? {
            Kind::Word(Meaning::Says(Key::Even)) => Every::Even,
            Kind::Word(Meaning::Says(Key::Odd)) => Every::Odd,
            Kind::Word(Meaning::Says(Key::Right)) => Every::Side(Side::Right),
            Kind::Word(Meaning::Says(Key::Wrong)) => Every::Side(Side::Wrong),
            _ => return None,
        };
        self.at += 1;
        self.take_mark('-');
        self.take(Key::Numbered);
        Some(every)
    }

    /// `Next row (RS):`, `Dec rnd:`, `Yoke:`: words before a colon.
    fn named_label(&mut self) -> Option<Label> {
        let start = self.at;
        let colon = self.colon()?;
        let mut label = self.labelled(start, None, Vec::new(), (None, None));
        // A dash and a colon alone are no name.
        let mut is_named = false;
        while self.at < colon {
            is_named |= matches!(self.here(), Some(Kind::Word(_)));
            match self.here()? {
                Kind::Word(Meaning::Says(Key::Row)) => label.round = Some(false),
                Kind::Word(Meaning::Says(Key::Round)) => label.round = Some(true),
                Kind::Word(Meaning::Says(Key::Right)) => label.side = Some(Side::Right),
                Kind::Word(Meaning::Says(Key::Wrong)) => label.side = Some(Side::Wrong),
                Kind::Number(times) => {
                    // Only `Next 4 rows` has a number that stands for something.
                    let is_next = self.is_key(start, Key::Next) && self.at == start + 1;
                    is_next.then_some(())?;
                    label.times = times;
                }
                Kind::Word(_) | Kind::Open(_) | Kind::Close(_) | Kind::Mark('-') => {}
                _ => return None,
            }
            self.at += 1;
        }
        self.at += 1;
        is_named.then_some(label)
    }

    /// Where the colon of a label is: before it are words, and no bracket is open.
    fn colon(&self) -> Option<usize> {
        let mut depth = 0_usize;
        for at in self.at..self.at + LONGEST {
            match self.kind(at)? {
                Kind::Open(_) => depth += 1,
                Kind::Close(_) => depth = depth.checked_sub(1)?,
                Kind::Mark(':') if depth == 0 => return (at > self.at).then_some(at),
                Kind::Mark(',' | ';' | '.') | Kind::Star(_) => return None,
                _ => {}
            }
        }
        None
    }

    /// Whether a word says row, or round: true for round.
    fn row_word(&mut self) -> Option<bool> {
        if self.take(Key::Row) {
            return Some(false);
        }
        self.take(Key::Round).then_some(true)
    }

    /// `(RS)`, `[WS]`, `- RS`, `(right side)`.
    fn side_behind(&mut self) -> Option<Side> {
        self.attempt(|reader| {
            let closing = match reader.here()? {
                Kind::Open(closing) => Some(closing),
                Kind::Mark('-' | ',') => None,
                Kind::Word(_) => {
                    reader.at -= 1;
                    None
                }
                _ => return None,
            };
            reader.at += 1;
            let side = if reader.take(Key::Right) {
                Side::Right
            } else {
                Side::Wrong
            };
            (side == Side::Right || reader.take(Key::Wrong)).then_some(())?;
            reader.take(Key::Side);
            if let Some(closing) = closing {
                (reader.here() == Some(Kind::Close(closing))).then(|| reader.at += 1)?;
            }
            Some(side)
        })
    }

    /// The mark that ends a label, if any: a colon, a full stop or a dash.
    fn label_mark(&mut self) {
        let _mark = self.take_mark(':') || self.take_mark('.') || self.take_mark('-');
    }

    fn labelled(
        &self,
        start: usize,
        round: Option<bool>,
        rows: Vec<(u32, u32)>,
        (every, side): (Option<Every>, Option<Side>),
    ) -> Label {
        Label {
            place: self.place_from(start),
            round,
            rows,
            every,
            side,
            times: 1,
            called: String::new(),
        }
    }
}
