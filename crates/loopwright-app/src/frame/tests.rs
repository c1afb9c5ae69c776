//! Options come back from the address they are written into, whatever they are; and whatever stands in an address is
//! either an option or a fault.

use super::*;
use proptest::prelude::*;

fn pairs(pairs: &[(&str, &str)]) -> Vec<(String, String)> {
    let owned = |(name, value): &(&str, &str)| ((*name).to_owned(), (*value).to_owned());
    pairs.iter().map(owned).collect()
}

#[test]
fn nothing_asked_is_as_usual() {
    assert_eq!(parse(&[]), (Options::default(), Vec::new()));
    assert_eq!(print(&Options::default()), []);
}

#[test]
fn each_option_is_read() {
    let all = pairs(&[
        ("frame.locked", "stitches, amount,,stitches"),
        ("frame.cursor", "plus"),
        ("frame.accent", "#8A3324"),
        ("frame.light", "day"),
        ("frame.units", "inches"),
        ("frame.print", "yes"),
        ("frame.afresh", "no"),
        ("frame.language", "en"),
    ]);
    let (options, faults) = parse(&all);
    assert_eq!(faults, []);
    let wanted = Options {
        locked: vec!["stitches".into(), "amount".into()],
        cursor: Some("plus".into()),
        light: Light::Day,
        accent: Accent::parse("8a3324").ok(),
        units: Some(Units::Inches),
        print: true,
        afresh: false,
        language: Some("en"),
    };
    assert_eq!(options, wanted);
    assert_eq!(
        print(&options)[0],
        ("frame.locked".to_owned(), "stitches,amount".to_owned())
    );
}

#[test]
fn what_cannot_be_done_is_a_fault_and_changes_nothing() {
    let hostile = [
        ("frame.colour", "red"),
        ("frame.", ""),
        ("frame.light", "Dusk"),
        ("frame.units", "cm"),
        ("frame.print", "1"),
        ("frame.language", "xx"),
        ("frame.accent", "red"),
        ("frame.accent", "808080"),
    ];
    for pair in hostile {
        let (options, faults) = parse(&pairs(&[pair]));
        assert_eq!((options, faults.len()), (Options::default(), 1), "{pair:?}");
    }
}

#[test]
fn whether_a_colour_can_be_read_is_asked_of_the_light_before_or_behind_it() {
    for order in [["frame.light", "frame.accent"], ["frame.accent", "frame.light"]] {
        let asked = order.map(|name| (name, if name == "frame.light" { "dusk" } else { "8a3324" }));
        let (options, faults) = parse(&pairs(&asked));
        assert_eq!((options.light, options.accent), (Light::Dusk, None));
        assert!(matches!(faults[..], [Fault::Accent(NoAccent::Faint(..))]), "{faults:?}");
    }
}

fn any_options() -> impl Strategy<Value = Options> {
    let key = || "[^, ]{1,6}".prop_filter("no space at its ends", |key| key.trim() == key);
    let locked = proptest::collection::hash_set(key(), 0..4);
    let light = proptest::sample::select(Light::ALL);
    let units = proptest::option::of(proptest::sample::select(Units::ALL));
    let buttons = any::<(bool, bool, bool)>();
    let accent = any::<[u8; 3]>();
    (locked, proptest::option::of(key()), light, units, buttons, accent).prop_map(
        |(locked, cursor, light, units, (print, afresh, language), [red, green, blue])| Options {
            locked: locked.into_iter().collect(),
            cursor,
            light,
            accent: Accent::parse(&format!("{red:02x}{green:02x}{blue:02x}"))
                .and_then(|accent| accent.readable(light))
                .ok(),
            units,
            print,
            afresh,
            language: language.then_some(intl::LANGUAGE),
        },
    )
}

proptest! {
    #[test]
    fn options_come_back_from_their_address(options in any_options()) {
        prop_assert_eq!(parse(&print(&options)), (options, Vec::new()));
    }

    #[test]
    fn reading_is_total_and_what_was_read_is_read_again(
        asked in proptest::collection::vec(("(frame\\.)?[a-z.]{0,8}|\\PC{0,4}", "\\PC{0,8}"), 0..6)
    ) {
        let (options, _) = parse(&asked);
        prop_assert_eq!(parse(&print(&options)), (options, Vec::new()));
    }
}
