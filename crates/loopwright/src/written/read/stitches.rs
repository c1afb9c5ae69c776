//! Stitches and how many: `k7`, `k2tog 3 times`, `p to last 3 sts`, `sl 1 wyif`, `2/2 RC`, `knit 4 rows`.

use super::super::fault::FaultKind;
use super::super::line::{Amount, Count, Counted, Doing, Item, Often, Repeat, Share, Stitches};
use super::super::name::{Family, Manner, StitchName};
use super::super::place::Place;
use super::super::technique::{Sort, TECHNIQUES};
use super::super::token::Kind;
use super::super::vocabulary::{Key, Meaning};
use super::Reader;

/// Fabrics in which every stitch is one stitch, beside patterns and ribs that were told before. Common practice, no source.
const FABRICS: &[&str] = &["stockinette", "stocking", "garter", "moss", "seed", "ribbing"];

impl Reader<'_> {
    /// A stitch with what stands behind it.
    pub(super) fn stitch(&mut self) -> Option<Doing> {
        let seen = self.attempt(Self::as_they_appear);
        if let Some(doing) = seen.or_else(|| self.attempt(Self::slipped_marker_or_held)) {
            return Some(doing);
        }
        let start = self.at;
        let name = self.name()?;
        let word = self.place_from(start);
        match name.sort() {
            Sort::Plain => self.plain(start, name, word),
            Sort::Change => Some(self.change(name, word)),
        }
    }

    /// `K the knit sts and p the purl sts`: every stitch is worked as it is seen, to the end.
    fn as_they_appear(&mut self) -> Option<Doing> {
        let start = self.at;
        for place in 0..2 {
            if place > 0 {
                self.take_mark(',');
                self.take(Key::And).then_some(())?;
            }
            self.knit_or_purl()?;
            self.skip(&[Key::The]);
            self.knit_or_purl()?;
            self.take(Key::Stitches).then_some(())?;
        }
        let as_set = TECHNIQUES.iter().find(|one| one.written == "patt")?;
        Some(Doing::Stitches(Stitches {
            name: StitchName::Known(as_set),
            word: self.place_from(start),
            count: Count::Reach(super::Reach::End),
            manner: Vec::new(),
        }))
    }

    fn knit_or_purl(&mut self) -> Option<()> {
        let is_either =
            matches!(self.here(), Some(Kind::Word(Meaning::Stitch(one))) if ["k", "p"].contains(&one.written));
        is_either.then(|| self.at += 1)
    }

    /// The name that stands here.
    fn name(&mut self) -> Option<StitchName> {
        let name = match self.here()? {
            Kind::Word(Meaning::Stitch(technique)) => StitchName::Known(technique),
            Kind::Word(Meaning::Own(place, _)) => StitchName::Own(self.own.get(place)?.clone()),
            Kind::Word(Meaning::Counted(family, over)) => StitchName::Counted { family, over },
            _ => return None,
        };
        self.at += 1;
        Some(name)
    }

    /// `sl m`, `sl next 20 sts to holder`.
    fn slipped_marker_or_held(&mut self) -> Option<Doing> {
        let is_slip = matches!(self.here(), Some(Kind::Word(Meaning::Stitch(one))) if one.written == "sl");
        is_slip.then_some(())?;
        self.at += 1;
        self.skip(&[Key::The]);
        if self.take(Key::Marker) {
            return Some(Doing::SlipMarker);
        }
        self.held()
    }

    /// A plain stitch: the number behind it counts stitches, or rows.
    fn plain(&mut self, start: usize, name: StitchName, word: Place) -> Option<Doing> {
        self.attempt(Self::in_pattern);
        let even = self.take(Key::Even);
        self.attempt(Self::in_pattern);
        if let Some(rows) = self.attempt(Self::so_many_rows) {
            self.attempt(Self::in_pattern);
            return Some(Doing::Rows(name, rows));
        }
        let length = self.attempt(|reader| {
            let _each = reader.take(Key::Every) && (reader.take(Key::Row) || reader.take(Key::Round));
            reader.length()
        });
        if let Some(length) = length {
            return Some(Doing::RowsToLength(name, length));
        }
        if let Some(reach) = self.attempt(Self::reach) {
            let manner = self.manner();
            let count = Count::Reach(reach);
            return Some(Doing::Stitches(Stitches {
                name,
                word,
                count,
                manner,
            }));
        }
        if even {
            let count = Count::Reach(super::Reach::End);
            let manner = Vec::new();
            return Some(Doing::Stitches(Stitches {
                name,
                word,
                count,
                manner,
            }));
        }
        if let Some((times, counted)) = self.attempt(Self::times) {
            return self.times_over(start, name, word, (times, counted));
        }
        self.attempt(|reader| {
            reader.skip(&[Key::The, Key::Next, Key::First]);
            (reader.is_amount() || reader.is_key(reader.at, Key::Stitches)).then_some(())
        });
        let amount = self.amount();
        if let Some(together) = amount.as_ref().and_then(|amount| self.together(&name, amount)) {
            let word = self.place_from(start);
            return Some(self.change(together, word));
        }
        self.skip(&[Key::Stitches]);
        self.attempt(Self::in_pattern);
        let manner = self.manner();
        let count = amount.map_or(Count::One, Count::Of);
        let times = self.attempt(Self::times);
        let stitches = Stitches {
            name,
            word,
            count,
            manner,
        };
        Some(match times {
            Some((times, counted)) => self.bracketed(start, stitches, (times, counted)),
            None => Doing::Stitches(stitches),
        })
    }

    /// Whether a number stands here, for all sizes or for each.
    fn is_amount(&self) -> bool {
        matches!(
            self.here(),
            Some(Kind::Number(_) | Kind::Odd | Kind::Word(Meaning::Number(_)))
        )
    }

    /// `in patt`, `in St st`, `as set`: the pattern goes on, and no count comes of it.
    pub(super) fn in_pattern(&mut self) -> Option<()> {
        if self.take(Key::In) {
            self.skip(&[Key::The, Key::Up]);
            self.fabric()?;
            self.attempt(Self::as_set);
            return Some(());
        }
        self.as_set()
    }

    /// `patt`, `rib`, `St st`, `garter stitch`, `rev St st`: a fabric in which every stitch is one stitch.
    fn fabric(&mut self) -> Option<()> {
        let _reverse = ["rev", "reverse"].iter().any(|word| self.takes_word(word));
        if matches!(self.here(), Some(Kind::Word(Meaning::Stitch(one))) if ["patt", "rib"].contains(&one.written)) {
            self.at += 1;
            return Some(());
        }
        if FABRICS.iter().any(|word| self.takes_word(word)) {
            self.take(Key::Stitches);
            return Some(());
        }
        // `St st`: both words are the word for a stitch.
        (self.take(Key::Stitches) && self.take(Key::Stitches)).then_some(())
    }

    fn as_set(&mut self) -> Option<()> {
        (self.take(Key::As) && self.take(Key::Up)).then_some(())
    }

    /// `4 rows`, `for 4 rnds`, `4 rows even`.
    fn so_many_rows(&mut self) -> Option<Amount> {
        self.skip(&[Key::For]);
        let amount = self.amount()?;
        (self.take(Key::Row) || self.take(Key::Round)).then_some(())?;
        self.take(Key::Even);
        Some(amount)
    }

    /// `k 2 tog`, `purl 3 together`.
    fn together(&mut self, name: &StitchName, amount: &Amount) -> Option<StitchName> {
        let StitchName::Known(technique) = name else {
            return None;
        };
        let family = match technique.written {
            "k" => Family::KnitTogether,
            "p" => Family::PurlTogether,
            _ => return None,
        };
        let over = amount.figures.first()?.value.filter(|_| amount.figures.len() == 1)?;
        (over > 1 && self.take(Key::Together)).then_some(())?;
        let (before, behind) = family.around();
        let written = format!("{before}{over}{behind}");
        let known = TECHNIQUES.iter().find(|one| one.written == written);
        Some(known.map_or(StitchName::Counted { family, over }, StitchName::Known))
    }

    /// A change: it is said how many times, or how far.
    fn change(&mut self, name: StitchName, word: Place) -> Doing {
        let mut manner = self.manner();
        let count = if let Some((times, _)) = self.attempt(Self::times) {
            Count::Of(times)
        } else if let Some(reach) = self.attempt(Self::reach) {
            Count::Reach(reach)
        } else if self.attempt(Self::in_each_stitch).is_some() {
            Count::Reach(super::Reach::End)
        } else {
            Count::One
        };
        manner.extend(self.manner());
        if count == Count::One && self.is_amount() {
            self.fault_here(FaultKind::HowOften);
        }
        Doing::Stitches(Stitches {
            name,
            word,
            count,
            manner,
        })
    }

    /// `kfb in each st`, `kfb in every st across`: all the way.
    fn in_each_stitch(&mut self) -> Option<()> {
        (self.take(Key::In) && self.take(Key::Every) && self.take(Key::Stitches)).then_some(())?;
        self.take(Key::Across);
        Some(())
    }

    /// `k1 twice` is `(k1) twice`.
    fn times_over(&mut self, start: usize, name: StitchName, word: Place, times: (Amount, Counted)) -> Option<Doing> {
        let manner = self.manner();
        let count = Count::One;
        let stitches = Stitches {
            name,
            word,
            count,
            manner,
        };
        Some(self.bracketed(start, stitches, times))
    }

    fn bracketed(&self, start: usize, stitches: Stitches, (times, counted): (Amount, Counted)) -> Doing {
        let item = Item {
            place: self.place_from(start),
            doing: Doing::Stitches(stitches),
        };
        Doing::Repeat(Repeat {
            body: vec![item],
            often: Often::Times(times, counted),
            stars: None,
            but: None,
        })
    }

    /// `tbl`, `wyif`, `pwise`.
    fn manner(&mut self) -> Vec<Manner> {
        let mut manner = Vec::new();
        while let Some(Kind::Word(Meaning::Manner(one))) = self.here() {
            self.at += 1;
            manner.push(one);
        }
        manner
    }

    /// `2/2 RC`, `2/1/2 LPC`.
    pub(super) fn cable(&mut self) -> Option<Doing> {
        let start = self.at;
        let mut parts = [0; 3];
        for (place, part) in parts.iter_mut().enumerate() {
            if place > 0 && !self.take_mark('/') {
                break;
            }
            let Some(Kind::Number(value @ 1..)) = self.here() else {
                return None;
            };
            *part = value;
            self.at += 1;
        }
        let Some(Kind::Word(Meaning::Crossing(crossing))) = self.here() else {
            return None;
        };
        self.at += 1;
        let word = self.place_from(start);
        Some(self.change(StitchName::Cable { parts, crossing }, word))
    }

    /// `next 20 sts on holder`, `rem sts on waste yarn`: what is put aside.
    pub(super) fn held(&mut self) -> Option<Doing> {
        self.skip(&[Key::The, Key::Next, Key::First, Key::Last]);
        let share = if self.take(Key::Rest) || self.take(Key::All) {
            Share::Rest
        } else {
            Share::Of(self.amount()?)
        };
        self.take(Key::Stitches).then_some(())?;
        (self.take(Key::On) || self.take(Key::To)).then_some(())?;
        self.skip(&[Key::The, Key::Stitches]);
        (self.take(Key::Holder) || self.take(Key::Waste)).then_some(())?;
        self.skip(&[Key::Waste, Key::Holder, Key::Needle]);
        Some(Doing::Hold(share))
    }
}
