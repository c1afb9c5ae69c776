//! A printer of lists in every style that patterns have, and that reading gives back each of its numbers.

use super::{Figures, read};
use proptest::prelude::*;
use proptest::sample::select;

/// How a list is set.
#[derive(Clone, Debug)]
pub(crate) struct Style {
    setting: Setting,
    fraction: Fraction,
    /// What stands between the ends of a range, where the numbers are ranges.
    range: Option<&'static str>,
    unit: Unit,
    names: Names,
}

/// What parts the numbers.
#[derive(Clone, Copy, Debug)]
enum Setting {
    /// The first, and the others in brackets: opening, between, closing.
    Bracket(&'static str, &'static str, &'static str),
    /// Every second in a bracket within the one before.
    Nested,
    /// Each but the first in brackets of its own.
    Single,
    /// A mark between.
    Mark(&'static str),
}

/// How the half of a number is written.
#[derive(Clone, Copy, Debug)]
enum Fraction {
    None,
    Sign,
    Slash,
    Dash,
    Point,
    Comma,
}

/// Where a unit stands.
#[derive(Clone, Copy, Debug)]
enum Unit {
    None,
    Each(&'static str),
    AtTheEnd(&'static str),
}

/// Where the names stand.
#[derive(Clone, Copy, Debug)]
enum Names {
    None,
    BeforeEach(&'static str),
    InFront,
}

pub(crate) const NAMES: [&str; 8] = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X"];

/// A number is so many halves.
pub(crate) type Printed = (u32, u32);

impl Style {
    /// Whether a reader who knows the trade could read it in one way only.
    pub(crate) fn is_plain(&self, numbers: &[Printed]) -> bool {
        let mark = match self.setting {
            Setting::Mark(mark) => mark,
            Setting::Bracket(_, between, _) => between,
            Setting::Nested | Setting::Single => ", ",
        };
        let is_bare = matches!(self.setting, Setting::Mark(_));
        let are_ranges = self.range.is_some();
        let is_named = !matches!(self.names, Names::None);
        let is_fraction = !matches!(self.fraction, Fraction::None);
        // Of those in one bracket.
        let has_three = numbers.len() > 2 + usize::from(!is_bare);
        match mark.trim() {
            // A comma without a space parts whole numbers only, and three of them.
            "," if mark == "," => has_three && !is_fraction && !are_ranges && matches!(self.unit, Unit::None),
            "-" | "–" | "—" => {
                has_three
                    && !are_ranges
                    && !matches!(self.fraction, Fraction::Dash)
                    && !matches!(self.names, Names::BeforeEach(_))
            }
            "/" => has_three && !matches!(self.fraction, Fraction::Dash),
            ":" => !matches!(self.names, Names::BeforeEach(_)) && (!is_bare || has_three && !is_named),
            "" => !matches!(self.range, Some(" to " | " - " | " – ")) || is_bare,
            _ => true,
        }
    }

    /// Whether it stands in one line.
    pub(crate) fn is_in_one_line(&self) -> bool {
        !matches!(self.setting, Setting::Mark("\n"))
    }

    /// Whether brackets part its numbers.
    pub(crate) fn has_brackets(&self) -> bool {
        !matches!(self.setting, Setting::Mark(_))
    }

    /// These numbers; whole ones where no half can be written.
    pub(crate) fn printable(&self, numbers: Vec<Printed>) -> Vec<Printed> {
        match self.fraction {
            Fraction::None => numbers
                .into_iter()
                .map(|(from, to)| (from / 2 * 2, to / 2 * 2))
                .collect(),
            _ => numbers,
        }
    }

    fn number(&self, halves: u32) -> String {
        let whole = halves / 2;
        let half = match self.fraction {
            _ if halves.is_multiple_of(2) => "",
            Fraction::None => "",
            Fraction::Sign => "½",
            Fraction::Slash => " 1/2",
            Fraction::Dash => "-1/2",
            Fraction::Point => ".5",
            Fraction::Comma => ",5",
        };
        let unit = match self.unit {
            Unit::Each(unit) => unit,
            Unit::None | Unit::AtTheEnd(_) => "",
        };
        format!("{whole}{half}{unit}")
    }

    fn entry(&self, place: usize, (from, to): Printed) -> String {
        let name = match self.names {
            Names::BeforeEach(behind) => format!("{}{behind}", NAMES[place]),
            Names::None | Names::InFront => String::new(),
        };
        match self.range {
            Some(dash) => format!("{name}{}{dash}{}", self.number(from), self.number(to)),
            None => format!("{name}{}", self.number(from)),
        }
    }

    fn set(&self, entries: &[String]) -> String {
        let (first, others) = entries.split_first().expect("a list has an entry");
        match self.setting {
            Setting::Mark(mark) => entries.join(mark),
            Setting::Bracket(open, between, close) => format!("{first} {open}{}{close}", others.join(between)),
            Setting::Single => others
                .iter()
                .fold(first.clone(), |list, entry| format!("{list} ({entry})")),
            Setting::Nested => {
                let brackets = [("(", ")"), ("[", "]"), ("{", "}")];
                let inner = |(place, entry): (usize, &String)| format!(" {}{entry}", brackets[place % 3].0);
                let opened: String = others.iter().enumerate().map(inner).collect();
                let closed: String = (0..others.len()).rev().map(|place| brackets[place % 3].1).collect();
                format!("{first}{opened}{closed}")
            }
        }
    }

    pub(crate) fn print(&self, numbers: &[Printed]) -> String {
        let entries: Vec<String> = numbers
            .iter()
            .enumerate()
            .map(|(place, number)| self.entry(place, *number))
            .collect();
        let names: Vec<String> = NAMES
            .iter()
            .take(numbers.len())
            .map(|name| (*name).to_owned())
            .collect();
        let front = match self.names {
            Names::InFront => self.set(&names) + ": ",
            Names::None | Names::BeforeEach(_) => String::new(),
        };
        let unit = match self.unit {
            Unit::AtTheEnd(unit) => unit,
            Unit::None | Unit::Each(_) => "",
        };
        format!("{front}{}{unit}", self.set(&entries))
    }

    /// Each number as it stands in the text, without its unit.
    pub(crate) fn written(&self, numbers: &[Printed]) -> Vec<Vec<String>> {
        let bare = Self {
            unit: Unit::None,
            ..self.clone()
        };
        let each = numbers.iter().map(|(from, to)| match self.range {
            Some(_) => vec![bare.number(*from), bare.number(*to)],
            None => vec![bare.number(*from)],
        });
        each.collect()
    }
}

fn settings() -> impl Strategy<Value = Setting> {
    let marks = [
        ", ", ",", "; ", "/", " / ", " ", "-", "–", " — ", ":", ": ", "\n", " | ", " • ", " and ",
    ];
    let between = [", ", ",", ": ", ":", "; ", " ", "/", "-", "–"];
    let brackets = [("(", ")"), ("[", "]"), ("{", "}")];
    prop_oneof![
        select(marks.to_vec()).prop_map(Setting::Mark).boxed(),
        (select(brackets.to_vec()), select(between.to_vec()))
            .prop_map(|((open, close), between)| Setting::Bracket(open, between, close))
            .boxed(),
        Just(Setting::Nested).boxed(),
        Just(Setting::Single).boxed(),
    ]
}

pub(crate) fn styles() -> impl Strategy<Value = Style> {
    use Fraction::{Comma, Dash, None as Whole, Point, Sign, Slash};
    let units = vec![
        Unit::None,
        Unit::Each("cm"),
        Unit::Each("\""),
        Unit::Each("”"),
        Unit::Each(" in"),
        Unit::AtTheEnd("cm"),
        Unit::AtTheEnd(" in"),
    ];
    let names = vec![
        Names::None,
        Names::None,
        Names::BeforeEach(" "),
        Names::BeforeEach(": "),
        Names::InFront,
    ];
    let ranges = vec![None, None, Some("-"), Some("–"), Some(" - "), Some(" to ")];
    (
        settings(),
        select(vec![Whole, Sign, Slash, Dash, Point, Comma]),
        select(ranges),
        select(units),
        select(names),
    )
        .prop_map(|(setting, fraction, range, unit, names)| Style {
            setting,
            fraction,
            range,
            unit,
            names,
        })
}

/// Sizes that grow, as patterns have them.
pub(crate) fn numbers() -> impl Strategy<Value = Vec<Printed>> {
    (8_u32..220, prop::collection::vec((3_u32..20, 2_u32..9), 2..=8)).prop_map(|(first, steps)| {
        let grow = |sum: &mut u32, (step, more): (u32, u32)| {
            *sum += step;
            Some((*sum, *sum + more))
        };
        steps.into_iter().scan(first + 20, grow).collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, max_global_rejects: 100_000, ..ProptestConfig::default() })]
    #[test]
    fn reading_gives_back_every_number_of_every_style(style in styles(), numbers in numbers()) {
        let numbers = style.printable(numbers);
        prop_assume!(style.is_plain(&numbers));
        let text = style.print(&numbers);
        let reading = read(&text);
        let figures = reading.entries.iter().filter_map(|entry| entry.figures.as_ref());
        let read: Vec<Vec<String>> = figures
            .map(|figures: &Figures| figures.each().map(|figure| text[figure.range.clone()].to_owned()).collect())
            .collect();
        prop_assert_eq!(read, style.written(&numbers), "{}", text);
        prop_assert_eq!(&reading.unplaced, &[], "{}", text);
    }
}
