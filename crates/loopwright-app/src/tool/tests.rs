//! What holds for every tool of the list: each is read, answered and offered in every named state without a page, by names
//! and not by places; and every key that is stored or linked is written down.

use super::*;
use crate::form::kept::{Dimension, Kept};
use crate::form::{Keeping, Kind, Settings};
use crate::route;
use crate::store::Typed;
use loopwright::choice::Key;
use loopwright::problem;
use loopwright_project::own_counts;

/// Every key of every field and choice, as it is stored and linked.
const KEYS: &str = include_str!("keys.txt");

#[test]
fn every_tool_holds_to_what_holds_for_all() {
    for tool in TOOLS {
        (tool.check)();
    }
}

/// What is stored and linked opens for ever, so a line of the file may be added and never changed or taken away.
#[test]
fn every_key_is_the_one_that_was_stored() {
    let mut keys = String::new();
    for tool in TOOLS {
        for field in tool.fields {
            keys += &format!("{} {}\n", tool.id, written(field));
        }
    }
    for kept in Kept::ALL {
        keys += &format!("known {}\n", kept.key());
    }
    // A count of hers has its number, and its name beside it.
    let own = own_counts(&store::Fields::from([("count_1".to_owned(), Typed::plain("96"))]))[0];
    for key in [own.key(), own.name_key()] {
        keys += &format!("known {}\n", key.replace('1', "<n>"));
    }
    // Behind them stands what the panel keeps, which has a test of its own.
    let written: String = KEYS
        .lines()
        .take_while(|line| !line.starts_with("frame "))
        .map(|line| [line, "\n"].concat())
        .collect();
    let differing = keys.lines().zip(written.lines()).find(|(now, then)| now != then);
    assert!(keys == written, "{differing:?}; the keys are now:\n{keys}");
}

/// A field with its choices: `edge = half* | least | mirrored`, with a mark at what holds before anything is chosen.
fn written(field: &Field) -> String {
    let group = field
        .group
        .map_or(String::new(), |group| format!("{}<n>_", group.stored));
    let key = format!("{group}{}", field.key);
    let Kind::Choice(options) = field.kind else {
        return key;
    };
    let start = options.start();
    let option = |(key, _): &(&'static str, &'static str)| {
        let mark = if *key == start { "*" } else { "" };
        format!("{key:?}{mark}")
    };
    let options: Vec<String> = options.all().iter().map(option).collect();
    format!("{key} = {}", options.join(" | "))
}

/// The fields of a tool in one of its states.
pub fn fields_of<T: Tool>(state: &State) -> Fields {
    fields_in(T::FIELDS, state)
}

/// The same for a table of fields.
pub fn fields_in(table: &'static [Field], state: &State) -> Fields {
    let typed = route::to_fields(&route::parse_query(state.link));
    Fields::new(table, typed, Settings::default())
}

/// What holds for a tool.
pub fn check<T: Tool>() {
    every_state_is_read::<T>();
    no_field_is_found_by_its_place::<T>();
    what_is_kept_is_of_the_kind_of_its_field::<T>();
    what_cannot_be_read_is_never_offered::<T>();
}

/// Texts of every kind of field, read by some of them and refused by others.
const TEXTS: [&str; 16] = [
    "7", "US 6", "6 us", "US 12", "10½", "1,150", "88 112", "22 x 30", "28 rows", "21-22", "7 1/", "seven", "9999999",
    "-1", "7 cm", "light",
];

/// Of each text that is no value of a field the field says so: what stands in it is then not offered to be kept, nor what
/// is kept to be used.
fn what_cannot_be_read_is_never_offered<T: Tool>() {
    let kept = T::FIELDS.iter().filter(|field| !matches!(field.kept, Keeping::Nothing));
    for (field, text) in kept.flat_map(|field| TEXTS.map(|text| (field, text))) {
        let filled = T::STATES.iter().find(|state| state.name == super::FILLED);
        let mut typed = route::to_fields(&route::parse_query(filled.map_or("", |state| state.link)));
        let fields = Fields::new(T::FIELDS, typed.clone(), Settings::default());
        let path = fields.path_of(field);
        typed.insert(path.stored(), Typed::plain(text));
        let read = T::read(&Fields::new(T::FIELDS, typed, Settings::default()));
        let problems = read.err().unwrap_or_default();
        let is_unreadable = |problem: &Problem| {
            let kind = problem.kind;
            problem.field == path && matches!(kind, problem::Kind::Unreadable(_) | problem::Kind::UnreadableList(_))
        };
        let is_refused = problems.iter().any(is_unreadable);
        assert!(
            !is_refused || !field.takes(&Typed::plain(text)),
            "{}: {} takes {text:?}",
            T::ID,
            field.key
        );
    }
}

/// Each field that a state fills is in the table, and the states called "filled" and "empty" are what they are called.
fn every_state_is_read<T: Tool>() {
    for state in T::STATES {
        let fields = fields_of::<T>(state);
        assert_eq!(fields.unknown(), [""; 0], "{}, state {}", T::ID, state.name);
        let outcome = T::read(&fields).and_then(|question| T::answer(&question));
        match state.name {
            super::FILLED => assert!(outcome.is_ok(), "{}: {:?}", T::ID, outcome.err()),
            "empty" => assert!(outcome.is_err(), "{} answers nobody", T::ID),
            _ => {}
        }
        if let Ok(answer) = outcome {
            let offers = T::offers(&answer);
            let is_taken = |offer: &Offer| offer.1.as_typed().is_some();
            assert!(
                state.name != "filled" || offers.iter().all(is_taken),
                "{}: {offers:?}",
                T::ID
            );
        }
    }
}

/// From its table in any other order the question is the same.
fn no_field_is_found_by_its_place<T: Tool>() {
    for turn in 1..T::FIELDS.len() {
        let mut rows = T::FIELDS.to_vec();
        rows.rotate_left(turn);
        rows.swap(0, turn / 2);
        // A table lives as long as the program; a test may leak a few.
        let rows: &'static [Field] = rows.leak();
        for state in T::STATES {
            let typed = route::to_fields(&route::parse_query(state.link));
            let shuffled = T::read(&Fields::new(rows, typed, Settings::default()));
            let usual = T::read(&fields_of::<T>(state));
            assert_eq!(
                format!("{shuffled:?}"),
                format!("{usual:?}"),
                "{}, state {}",
                T::ID,
                state.name
            );
        }
    }
}

fn what_is_kept_is_of_the_kind_of_its_field<T: Tool>() {
    let fields = Fields::new(T::FIELDS, Default::default(), Settings::default());
    for field in T::FIELDS {
        let mut facts = field.asked_facts(&fields);
        match field.kept {
            Keeping::Offered(kept) => facts.push(kept),
            Keeping::Counts => facts.push(Kept::Neck),
            Keeping::Nothing | Keeping::As(_) | Keeping::Either(..) | Keeping::By(_) => {}
        }
        for kept in facts {
            assert!(fits(field, kept), "{}: {} is kept as {}", T::ID, field.key, kept.key());
        }
    }
}

fn fits(field: &Field, kept: Kept) -> bool {
    match kept.dimension() {
        Dimension::Count => matches!(field.kind, Kind::Count(_)) && !field.plus,
        Dimension::Multiple => matches!(field.kind, Kind::Count(_)),
        Dimension::Length | Dimension::Needle => matches!(field.kind, Kind::Length(..)),
        Dimension::Gauge => matches!(field.kind, Kind::Gauge | Kind::Gauges),
        Dimension::YarnClass => matches!(field.kind, Kind::Choice(_)),
        Dimension::Mass => matches!(field.kind, Kind::Mass(..)),
        Dimension::List => matches!(field.kind, Kind::List(_)),
        Dimension::Text => matches!(field.kind, Kind::Text),
    }
}

/// How many lines of so many characters a sentence takes, broken between its words.
pub fn lines_of(sentence: &str, wide: usize) -> usize {
    let mut lines = vec![0];
    for word in sentence.split_whitespace() {
        let last = lines.len() - 1;
        let with_word = lines[last] + usize::from(lines[last] > 0) + word.chars().count();
        if with_word <= wide {
            lines[last] = with_word;
        } else {
            lines.push(word.chars().count());
        }
    }
    lines.len()
}

/// What the answer to these fields hands on, if there is one.
pub fn given<T: Tool>(fields: &Fields) -> Option<Gifts> {
    let question = T::read(fields).ok()?;
    let answer = T::answer(&question).ok()?;
    Some(page::given::<T>(&question, &answer))
}

/// What is wrong with these fields.
pub fn problems<T: Tool>(fields: &Fields) -> Vec<Problem> {
    let question = ask::read::<T>(fields);
    question
        .and_then(|question| T::answer(&question))
        .err()
        .unwrap_or_default()
}
