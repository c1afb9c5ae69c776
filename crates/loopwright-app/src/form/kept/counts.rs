//! The counts of stitches that a project knows by name: cast-on, neck, body, sleeve, underarm, and those to which she gave a
//! name of her own. A field that asks for a count and for no fact in particular is offered all of them.

use super::Kept;
use crate::store::{Fields, Typed};
use crate::words::{facts, known as words};
use loopwright_project::{OwnCount, own_counts};

/// The counts that every project has a name for, in the order in which a garment is worked.
const COUNTS: [Kept; 5] = [Kept::CastOn, Kept::Neck, Kept::Body, Kept::Sleeve, Kept::Underarm];

/// So many counts of her own are looked at: more are nobody's garment, and a file of a stranger must not stop the page.
const MOST_OWN: usize = 200;

/// What a count is called.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Called {
    /// As every project calls it.
    Kept(Kept),
    /// As she calls it, which may be nothing yet.
    Own(String),
}

impl Called {
    /// What a fact of this key is called among the counts; none if it is no count.
    pub fn of_key(key: &str, known: &Fields) -> Option<Self> {
        let kept = COUNTS.into_iter().find(|kept| kept.key() == key).map(Self::Kept);
        let own = || own_counts(known).into_iter().find(|count| count.key() == key);
        kept.or_else(|| own().map(|count| Self::Own(count.name(known).to_owned())))
    }

    /// The name before its number: `body 206`.
    pub fn name(&self) -> String {
        match self {
            Self::Kept(kept) => short(*kept).to_owned(),
            Self::Own(name) => words::own_name(name),
        }
    }

    /// The name within a sentence: `as the body`, `as “hood”`.
    pub fn in_sentence(&self) -> String {
        match self {
            Self::Kept(kept) => words::the(short(*kept)),
            Self::Own(name) => words::quoted(name),
        }
    }
}

impl Kept {
    /// Its short name, of those that stand beside a number: the counts, and what is easily taken for one.
    pub const fn called(self) -> Option<&'static str> {
        match self {
            Self::CastOn => Some(facts::CALLED_CAST_ON),
            Self::Neck => Some(facts::CALLED_NECK),
            Self::Body => Some(facts::CALLED_BODY),
            Self::Sleeve => Some(facts::CALLED_SLEEVE),
            Self::Underarm => Some(facts::CALLED_UNDERARM),
            Self::Girth => Some(facts::CALLED_GIRTH),
            Self::Edge => Some(facts::CALLED_EDGE),
            Self::Multiple => Some(facts::CALLED_MULTIPLE),
            Self::Bust
            | Self::Needle
            | Self::YarnClass
            | Self::GaugeStitches
            | Self::GaugeRows
            | Self::GaugeStitchesUnwashed
            | Self::GaugeRowsUnwashed
            | Self::UpperArm
            | Self::Head
            | Self::Sizes
            | Self::PatternStitches
            | Self::PatternRows
            | Self::Cords
            | Self::Tip
            | Self::BallLength
            | Self::BallMass
            | Self::Shoulder
            | Self::WaistToUnderarm
            | Self::Wraps
            | Self::BallPrice
            | Self::CastOnNeedle => None,
        }
    }
}

fn short(kept: Kept) -> &'static str {
    kept.called().unwrap_or_else(|| kept.label())
}

/// A count that a project knows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedCount {
    /// The key of the fact.
    pub key: String,
    /// What it is called.
    pub called: Called,
    /// How many stitches, as typed; empty as long as there is only the name.
    pub typed: Typed,
}

/// Every count that a project has a name for, whether its number is known or not: first those of each project, then her own.
pub fn named_counts(known: &Fields) -> Vec<NamedCount> {
    let text = |key: &str| known.get(key).cloned().unwrap_or_else(|| Typed::plain(""));
    let kept = COUNTS.into_iter().map(|kept| NamedCount {
        key: kept.key().to_owned(),
        called: Called::Kept(kept),
        typed: text(kept.key()),
    });
    let own = own_counts(known).into_iter().take(MOST_OWN).map(|count| NamedCount {
        key: count.key(),
        called: Called::Own(count.name(known).to_owned()),
        typed: text(&count.key()),
    });
    kept.chain(own).collect()
}

/// What is wrong with the name of a count of hers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NameTrouble {
    /// It has none.
    Missing,
    /// Another count is called the same.
    Same,
}

/// What is wrong with the name of this count, if anything: capitals and spaces around it make no other name.
pub fn name_trouble(count: OwnCount, known: &Fields) -> Option<NameTrouble> {
    let plain = |name: &str| name.trim().to_lowercase();
    let name = plain(count.name(known));
    if name.is_empty() {
        return Some(NameTrouble::Missing);
    }
    let others = named_counts(known).into_iter().filter(|other| other.key != count.key());
    let mut names = others.map(|other| match other.called {
        Called::Kept(kept) => plain(short(kept)),
        Called::Own(name) => plain(&name),
    });
    names.any(|other| other == name).then_some(NameTrouble::Same)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn known(facts: &[(&str, &str)]) -> Fields {
        let fact = |(key, text): &(&str, &str)| ((*key).to_owned(), Typed::plain(*text));
        facts.iter().map(fact).collect()
    }

    #[test]
    fn a_count_is_called_as_every_project_does_or_as_she_does() {
        let known = known(&[
            ("body", "206"),
            ("count_1", "96"),
            ("count_1_name", "hood"),
            ("count_2", "40"),
        ]);
        let name = |key: &str| Called::of_key(key, &known).map(|called| called.name());
        assert_eq!(name("body").as_deref(), Some("body"));
        assert_eq!(name("count_1").as_deref(), Some("hood"));
        assert_eq!(name("count_2"), Some(words::own_name("")));
        assert_eq!(name("count_3"), None);
        assert_eq!(name("bust"), None);
        let keys: Vec<String> = named_counts(&known).into_iter().map(|count| count.key).collect();
        assert_eq!(
            keys,
            ["cast_on", "neck", "body", "sleeve", "underarm", "count_1", "count_2"]
        );
    }

    #[test]
    fn an_empty_name_and_one_that_is_there_already_are_found() {
        let name = |name: &str| {
            let known = known(&[
                ("count_1", "96"),
                ("count_1_name", name),
                ("count_2", "40"),
                ("count_2_name", "Hood"),
            ]);
            name_trouble(own_counts(&known)[0], &known)
        };
        assert_eq!(name(""), Some(NameTrouble::Missing));
        assert_eq!(name("  "), Some(NameTrouble::Missing));
        assert_eq!(name("hood "), Some(NameTrouble::Same));
        assert_eq!(name("Neck"), Some(NameTrouble::Same));
        assert_eq!(name("hoo"), None);
        assert_eq!(name("__proto__"), None);
    }

    #[test]
    fn a_long_name_is_shown_by_its_beginning() {
        let name = Called::Own("\u{1f9f6}".repeat(400)).name();
        assert!(name.chars().count() < 30, "{name}");
    }
}
