//! From tokens to lines, by recursive descent. The grammar stands in the words of the [module above](super).
//!
//! What cannot be read is a fault with its place, and reading goes on behind it, so that one word that is not known hides
//! nothing of the rest.

use super::fault::{Fault, FaultKind};
use super::line::{Bracketed, Count, Doing, Item, Line, Pattern, Reach, RowsOften};
use super::name::OwnStitch;
use super::place::Place;
use super::technique::Sort;
use super::token::{Kind, Token, tokens};
use super::vocabulary::{Key, Meaning, Vocabulary};

mod advice;
mod again;
mod amount;
mod bracket;
mod doing;
mod items;
mod label;
mod length;
mod often;
mod rows;
mod said;
mod stitches;

/// Brackets stand in brackets so deep at most.
const MOST_NESTED: usize = 8;

/// Reads the lines of a pattern for so many sizes, with the words that she has named. No text makes it panic.
///
/// What could not be read is beside it: a line with a fault is kept, and is not worked.
pub fn read(text: &str, sizes: usize, own: &[OwnStitch]) -> (Pattern, Vec<Fault>) {
    let tokens = tokens(text, &Vocabulary::with(own));
    let mut reader = Reader {
        text,
        tokens: &tokens,
        at: 0,
        own,
        sizes: sizes.max(1),
        depth: 0,
        passed: Vec::new(),
        brackets: Vec::new(),
        faults: Vec::new(),
    };
    let mut lines = Vec::new();
    while reader.at < tokens.len() {
        lines.push(reader.line());
        // The end of the line itself.
        reader.at += 1;
    }
    let pattern = Pattern {
        sizes: reader.sizes,
        lines,
        brackets: reader.brackets,
    };
    (pattern, in_one_piece(reader.faults, text))
}

/// Words one behind the other that all say nothing in their place are pointed at as one piece.
fn in_one_piece(faults: Vec<Fault>, text: &str) -> Vec<Fault> {
    let mut pieces: Vec<Fault> = Vec::with_capacity(faults.len());
    for fault in faults {
        match pieces.last_mut() {
            Some(last) if goes_on(last, &fault, text) => last.place = last.place.to(fault.place),
            _ => pieces.push(fault),
        }
    }
    pieces
}

/// Whether both say nothing in their place, and nothing but a space parts them.
fn goes_on(last: &Fault, next: &Fault, text: &str) -> bool {
    let are_out_of_place = [last, next].iter().all(|fault| fault.kind == FaultKind::OutOfPlace);
    let between = text.get(last.place.end..next.place.start);
    are_out_of_place && between.is_some_and(|between| between.bytes().all(|byte| byte == b' '))
}

struct Reader<'a> {
    text: &'a str,
    tokens: &'a [Token],
    at: usize,
    own: &'a [OwnStitch],
    sizes: usize,
    depth: usize,
    passed: Vec<Place>,
    brackets: Vec<Bracketed>,
    faults: Vec<Fault>,
}

impl Reader<'_> {
    fn line(&mut self) -> Line {
        let start = self.at;
        let faults = self.faults.len();
        let label = self.label();
        let mut items = self.items();
        all_the_way_if_alone(&mut items);
        let mut line = Line {
            place: self.place_from(start),
            label,
            items,
            passed: std::mem::take(&mut self.passed),
            is_whole: true,
        };
        self.rows_say_how_often(&line);
        line.is_whole = self.faults.len() == faults;
        line
    }

    /// Rows that are repeated without a word of how often have to be all of a line that names its rows.
    fn rows_say_how_often(&mut self, line: &Line) {
        if line.as_before().is_none() {
            unsaid(&line.items, &mut self.faults);
        }
    }

    /// What stands at a token; nothing at the end of the line.
    fn kind(&self, at: usize) -> Option<Kind> {
        let kind = self.tokens.get(at)?.kind;
        (kind != Kind::Line).then_some(kind)
    }

    fn here(&self) -> Option<Kind> {
        self.kind(self.at)
    }

    fn is_key(&self, at: usize, key: Key) -> bool {
        self.kind(at) == Some(Kind::Word(Meaning::Says(key)))
    }

    /// Takes a word if it stands here.
    fn take(&mut self, key: Key) -> bool {
        let is_here = self.is_key(self.at, key);
        self.at += usize::from(is_here);
        is_here
    }

    /// Takes any of these words, as many as stand here.
    fn skip(&mut self, keys: &[Key]) {
        while keys.iter().any(|key| self.take(*key)) {}
    }

    fn take_mark(&mut self, mark: char) -> bool {
        let is_here = self.here() == Some(Kind::Mark(mark));
        self.at += usize::from(is_here);
        is_here
    }

    /// Tries to read something, and stays here where it is not there.
    fn attempt<T>(&mut self, read: impl FnOnce(&mut Self) -> Option<T>) -> Option<T> {
        let (at, faults, brackets) = (self.at, self.faults.len(), self.brackets.len());
        let read = read(self);
        if read.is_none() {
            self.at = at;
            self.faults.truncate(faults);
            self.brackets.truncate(brackets);
        }
        read
    }

    /// From a token to the last one that was taken.
    fn place_from(&self, start: usize) -> Place {
        let first = self.tokens.get(start).map_or(Place::default(), |token| token.place);
        let last = self.at.checked_sub(1).filter(|last| *last >= start);
        match last.and_then(|last| self.tokens.get(last)) {
            Some(last) => first.to(last.place),
            None => Place {
                end: first.start,
                ..first
            },
        }
    }

    /// Where something is missing: right behind what was taken last.
    fn place_behind(&self) -> Place {
        let end = self.at.checked_sub(1).and_then(|last| self.tokens.get(last));
        let end = end.map_or(0, |token| token.place.end);
        Place { start: end, end }
    }

    /// Points at the token that stands here, and passes it.
    fn fault_here(&mut self, kind: FaultKind) {
        let start = self.at;
        self.at += 1;
        let place = self.place_from(start);
        self.faults.push(Fault { place, kind });
    }

    fn fault_behind(&mut self, kind: FaultKind) {
        let place = self.place_behind();
        self.faults.push(Fault { place, kind });
    }

    fn item_from(&self, start: usize, doing: Doing) -> Item {
        Item {
            place: self.place_from(start),
            doing,
        }
    }

    /// Notes what was taken since as words that say nothing by themselves.
    fn pass_from(&mut self, start: usize) {
        let place = self.place_from(start);
        self.passed.push(place);
    }
}

/// Points at rows that are repeated without a word of how often.
fn unsaid(items: &[Item], faults: &mut Vec<Fault>) {
    for item in items {
        match &item.doing {
            Doing::RowsAgain(again) if again.often == RowsOften::Named => {
                let (place, kind) = (item.place, FaultKind::HowOften);
                faults.push(Fault { place, kind });
            }
            Doing::Repeat(repeat) => unsaid(&repeat.body, faults),
            Doing::IntoOne(body) => unsaid(body, faults),
            _ => {}
        }
    }
}

/// `Row 2: Purl.` is all of the row: one plain stitch without a number, alone in its line.
fn all_the_way_if_alone(items: &mut [Item]) {
    let is_stitches =
        |item: &&mut Item| matches!(item.doing, Doing::Stitches(_) | Doing::Repeat(_) | Doing::IntoOne(_));
    let mut worked = items.iter_mut().filter(is_stitches);
    let (Some(first), None) = (worked.next(), worked.next()) else {
        return;
    };
    if let Doing::Stitches(stitches) = &mut first.doing
        && stitches.count == Count::One
        && stitches.name.sort() == Sort::Plain
    {
        stitches.count = Count::Reach(Reach::End);
    }
}
