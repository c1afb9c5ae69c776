//! What a word of a pattern means: a stitch, a manner of making one, a number, or a word that orders the others.
//!
//! A word is looked up whole, in small letters. One that has two meanings in the trade says so and is not chosen for her:
//! `yf` is a yarn over to some and the yarn to the front to others. Her own words come first.

use super::key::KEYS;
pub(super) use super::key::Key;
use super::technique::{Sort, TECHNIQUES, Technique};
use super::token::MOST;
use super::{Crossing, Family, Manner, OwnStitch};
use std::collections::HashMap;
use std::sync::OnceLock;

/// What a word means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Meaning {
    Unknown,
    /// It means one thing to some and another to others.
    Twofold,
    Stitch(&'static Technique),
    /// One of her own, by its place among them, and what a number behind it counts.
    Own(usize, Sort),
    /// A word with a number inside: `k4tog`, `C4F`.
    Counted(Family, u32),
    Crossing(Crossing),
    Manner(Manner),
    Number(u32),
    Says(Key),
}

impl Meaning {
    /// Whether a count may stand right behind it: `k7`, `sl1`, `BO5`.
    pub(super) const fn may_touch_its_count(self) -> bool {
        match self {
            Self::Stitch(technique) => matches!(technique.sort, Sort::Plain),
            Self::Own(_, sort) => matches!(sort, Sort::Plain),
            Self::Says(key) => matches!(key, Key::BindOff | Key::CastOn | Key::Times),
            _ => false,
        }
    }

    /// Whether a count may stand right before it: `3x`, `20sts`, `5th`.
    pub(super) const fn may_follow_its_count(self) -> bool {
        matches!(self, Self::Says(Key::Times | Key::Stitches | Key::Ordinal))
    }
}

/// Words that have two meanings in the trade. Common practice, no source.
const TWOFOLD: &[&str] = &["yf", "yfd", "inc", "dec", "k1b", "kb", "c/o"];

const MANNERS: &[(Manner, &[&str])] = &[
    (Manner::ThroughBack, &["tbl"]),
    (Manner::YarnInFront, &["wyif"]),
    (Manner::YarnInBack, &["wyib"]),
    (Manner::Purlwise, &["pwise", "purlwise"]),
    (Manner::Knitwise, &["kwise", "knitwise"]),
];

const NUMBERS: [&str; 12] = [
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
];

/// The longest word that is known has so many letters at most.
const LONGEST: usize = 12;

/// Every word that is known to everybody.
fn known() -> &'static HashMap<&'static str, Meaning> {
    static KNOWN: OnceLock<HashMap<&'static str, Meaning>> = OnceLock::new();
    KNOWN.get_or_init(|| {
        let stitches = TECHNIQUES.iter().flat_map(|technique| {
            let names = technique.also.iter().chain([&technique.written]);
            names.map(move |name| (*name, Meaning::Stitch(technique)))
        });
        let keys = KEYS
            .iter()
            .flat_map(|(key, words)| words.iter().map(|word| (*word, Meaning::Says(*key))));
        let manners = MANNERS
            .iter()
            .flat_map(|(manner, words)| words.iter().map(|word| (*word, Meaning::Manner(*manner))));
        let crossings = Crossing::ALL
            .into_iter()
            .map(|crossing| (crossing.small(), Meaning::Crossing(crossing)));
        let twofold = TWOFOLD.iter().map(|word| (*word, Meaning::Twofold));
        let numbers = NUMBERS
            .into_iter()
            .zip(1..)
            .map(|(word, number)| (word, Meaning::Number(number)));
        let all = stitches.chain(keys).chain(manners).chain(crossings);
        all.chain(twofold).chain(numbers).collect()
    })
}

/// What words mean in one pattern.
pub(super) struct Vocabulary {
    known: &'static HashMap<&'static str, Meaning>,
    own: HashMap<String, Meaning>,
}

impl Vocabulary {
    pub(super) fn with(own: &[OwnStitch]) -> Self {
        let entry = |(place, stitch): (usize, &OwnStitch)| {
            let sort = if stitch.uses == 1 && stitch.gives == 1 {
                Sort::Plain
            } else {
                Sort::Change
            };
            (stitch.word.to_lowercase(), Meaning::Own(place, sort))
        };
        Self {
            known: known(),
            own: own.iter().enumerate().map(entry).collect(),
        }
    }

    pub(super) fn meaning(&self, word: &str) -> Meaning {
        if !self.own.is_empty()
            && let Some(own) = self.own.get(word.to_lowercase().as_str())
        {
            return *own;
        }
        let mut small = [0_u8; LONGEST];
        let Some(small) = small.get_mut(..word.len()) else {
            return Meaning::Unknown;
        };
        small.copy_from_slice(word.as_bytes());
        small.make_ascii_lowercase();
        // An apostrophe that a tablet has curled is plain in the list.
        let Ok(small) = std::str::from_utf8(small) else {
            return Meaning::Unknown;
        };
        self.known.get(small).copied().unwrap_or_else(|| counted(small, word))
    }
}

/// A word with a number inside: `k4tog`, `C4F`; or one with a curly apostrophe.
fn counted(small: &str, word: &str) -> Meaning {
    if word.contains('\u{2019}') {
        let plain = word.replace('\u{2019}', "'").to_lowercase();
        return known().get(plain.as_str()).copied().unwrap_or(Meaning::Unknown);
    }
    for family in Family::ALL {
        let (before, behind) = family.around();
        let number = small.strip_prefix(before).and_then(|rest| rest.strip_suffix(behind));
        let number = number.filter(|number| number.bytes().all(|sign| sign.is_ascii_digit()));
        if let Some(number) = number.and_then(|number| number.parse().ok()) {
            let fits = (2..=MOST).contains(&number);
            return if fits {
                Meaning::Counted(family, number)
            } else {
                Meaning::Unknown
            };
        }
    }
    Meaning::Unknown
}
