//! From the fields as typed to the question, and what cannot be read of them.

use super::SHEET;
use crate::desk::Desk;
use crate::part::{Sheet, TAPE, list_unit, read_gauge_if_any};
use crate::words::sizing as words;
use loopwright::bounds::Bounds;
use loopwright::problem::{Kind, Problem};
use loopwright::sizing::{
    Ask, Cloth, EASE, GIRTH, Garment, Gauges, Listed, PerMille, Question, Size, Unread, Wrap, read_listed,
    with_stitches,
};
use loopwright::tables::fit::Fit;
use loopwright::units::{Length, count};

const FITS: [(&str, Fit); 5] = [
    ("standard", Fit::Standard),
    ("very-close", Fit::VeryClose),
    ("close", Fit::Close),
    ("loose", Fit::Loose),
    ("oversized", Fit::Oversized),
];

/// Per cent more than the body, or less.
const PERCENT: Bounds<u32> = Bounds::new(0, 100);

/// The fields as they stand, with what was found wrong with them.
pub struct Reading<'a> {
    /// The fields.
    pub sheet: Sheet,
    /// Whether it is worn over the arms.
    pub wrap: bool,
    /// Whether the list is said to be of garments.
    pub garment: bool,
    /// What to type instead, by field; an empty sentence where nothing was typed yet.
    pub wrong: Vec<(&'static str, String)>,
    /// Prints a length in the unit the knitter uses.
    pub print: &'a dyn Fn(Length) -> String,
}

impl<'a> Reading<'a> {
    /// Nothing is read yet.
    pub fn new(desk: &Desk, print: &'a dyn Fn(Length) -> String) -> Self {
        let sheet = Sheet::new(desk, SHEET);
        Self {
            wrap: sheet.text("garment", "") == "wrap",
            garment: sheet.text("listed", "") == "garment",
            wrong: Vec::new(),
            sheet,
            print,
        }
    }

    /// The question; only of use if nothing is wrong.
    pub fn question(&mut self) -> Question {
        let bust = TAPE.read(&self.sheet, "bust", GIRTH, "");
        let bust = self.or(bust, "bust", Length::ZERO);
        let drapes = self.sheet.text("cloth", "") == "drapes";
        Question {
            listed: self.listed(),
            ask: self.wanted(),
            cloth: if drapes { Cloth::Drapes } else { Cloth::Stretches },
            pattern: self.gauges("pattern_stitches", "pattern_rows"),
            own: self.gauges("own_stitches", "own_rows"),
            high_bust: self.length("high_bust", !self.wrap),
            garment: self.worn(),
            ..Question::about(bust, self.sizes())
        }
    }

    fn listed(&self) -> Option<Listed> {
        match self.sheet.text("listed", "").as_str() {
            "body" => Some(Listed::Body),
            "garment" => Some(Listed::Garment),
            _ => None,
        }
    }

    /// Something is wrong.
    pub fn fail(&mut self, problem: &Problem) {
        self.wrong
            .push((problem.field.key(), words::problem(problem, self.print)));
    }

    fn or<T>(&mut self, read: Result<T, Kind>, field: &'static str, otherwise: T) -> T {
        read.unwrap_or_else(|kind| {
            self.fail(&Problem::new(field, kind));
            otherwise
        })
    }

    /// A girth that may stay empty, where it is asked for.
    fn length(&mut self, field: &'static str, asked: bool) -> Option<Length> {
        if !asked {
            return None;
        }
        let read = TAPE.read_if_any(&self.sheet, field, GIRTH);
        self.or(read, field, None)
    }

    fn worn(&mut self) -> Garment {
        if !self.wrap {
            return Garment::Sweater;
        }
        Garment::Wrap(Wrap {
            round: self.length("round", true),
            upper_arm: self.length("upper_arm", true),
            neck: self.length("neck", true),
            head: self.length("head", true),
        })
    }

    /// How it should sit, which is only asked where garments are listed.
    fn wanted(&mut self) -> Ask {
        const THOUSANDTHS: i32 = 10;
        match self.sheet.text("fit", "").as_str() {
            "ease" if self.garment => {
                let read = TAPE.read(&self.sheet, "ease", EASE, "");
                Ask::Ease(self.or(read, "ease", Length::ZERO))
            }
            "more" if self.garment && !self.wrap => {
                let (sign, read) = per_cent(&self.sheet.text("percent", ""));
                let percent = self.or(read, "percent", 0);
                Ask::Percent(PerMille(sign * THOUSANDTHS * percent as i32))
            }
            _ => Ask::Fit(self.sheet.one_of("fit", &FITS)),
        }
    }

    /// Stitches and rows; rows alone are no gauge for a girth.
    fn gauges(&mut self, stitches: &'static str, rows: &'static str) -> Option<Gauges> {
        let (across, up) = (
            read_gauge_if_any(&self.sheet, stitches),
            read_gauge_if_any(&self.sheet, rows),
        );
        let rows = self.or(up, rows, None);
        if across == Ok(None) && rows.is_some() {
            let (field, kind) = (stitches, Kind::Missing);
            self.fail(&Problem::new(field, kind));
        }
        let stitches = self.or(across, stitches, None)?;
        Some(Gauges { stitches, rows })
    }

    fn sizes(&mut self) -> Vec<Size> {
        let text = self.sheet.text("sizes", "");
        // Which of two lists she means is asked below; until she says it, either will do.
        let listed = self.listed().or(Some(Listed::Body));
        let sizes = read_listed(&text, list_unit(&self.sheet, "sizes"), listed);
        let sizes = self.list("sizes", &text, sizes);
        if sizes.is_empty() {
            return sizes;
        }
        let text = self.sheet.text("stitches", "");
        self.list("stitches", &text, with_stitches(sizes, &text))
    }

    /// A list that was read, or a sentence about what of it was not. Of a list that is not begun nothing is said.
    fn list(&mut self, field: &'static str, text: &str, read: Result<Vec<Size>, Unread>) -> Vec<Size> {
        match read {
            Ok(sizes) => sizes,
            Err(unread) => {
                let begun = !text.trim().is_empty();
                let sentence = begun.then(|| words::unread(&unread, self.print));
                self.wrong.push((field, sentence.unwrap_or_default()));
                Vec::new()
            }
        }
    }
}

/// `5`, `5 %`, `-10%`: which way, and how many per cent.
fn per_cent(text: &str) -> (i32, Result<u32, Kind>) {
    let text = text.trim().trim_end_matches('%');
    let less = text.strip_prefix(['-', '−', '–']);
    let sign = if less.is_some() { -1 } else { 1 };
    let read = count::read(less.unwrap_or(text), PERCENT);
    (sign, read.map(|read| read.value).map_err(Kind::Unreadable))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn per_cent_are_read_with_their_sign_and_without() {
        for (text, wanted) in [
            ("5", 5),
            ("5%", 5),
            ("+5 %", 5),
            ("-10%", -10),
            ("−10 %", -10),
            (" -5 ", -5),
            ("0", 0),
        ] {
            let (sign, read) = per_cent(text);
            assert_eq!(read.map(|read| sign * read as i32), Ok(wanted), "{text}");
        }
        for text in ["", "-", "%", "--5", "101", "five"] {
            assert!(per_cent(text).1.is_err(), "{text}");
        }
    }
}
