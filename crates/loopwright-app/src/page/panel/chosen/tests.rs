//! What is kept in the panel becomes what it says, for the tool it was said of.

use super::*;
use crate::tool::{self, TOOLS};

fn fields(query: &str) -> store::Fields {
    route::to_fields(&route::parse_query(query))
}

fn of(id: &str, typed: &str, kept: &str) -> Chosen {
    let tool = tool::find(id).unwrap();
    chosen(tool, &fields(typed), &fields(kept), &Settings::default())
}

fn keys(chosen: &Chosen) -> Vec<&str> {
    chosen.rows.iter().map(|row| row.key.as_str()).collect()
}

#[test]
fn before_anything_is_chosen_all_that_is_typed_is_filled_in() {
    let chosen = of("spacing", "stitches=132&amount=16&order=even", "");
    assert_eq!(chosen.placed.preset, fields("stitches=132&amount=16&order=even"));
    assert_eq!((chosen.placed.options, chosen.placed.width), (Options::default(), 360));
}

#[test]
fn a_row_stands_for_each_field_that_is_asked() {
    let chosen = of("spacing", "stitches=132&order=even", "");
    assert_eq!(keys(&chosen)[..4], ["stitches", "ask", "amount", "knitting"]);
    // What is chosen beside the answer goes along, and what is not asked is no row.
    assert!(!keys(&chosen).contains(&"order") && !keys(&chosen).contains(&"plus"));
    let row = |key| chosen.rows.iter().find(|row| row.key == key).unwrap();
    assert_eq!(row("stitches").standing.as_deref(), Some("132"));
    assert!(row("stitches").is_typed && !row("knitting").is_typed);
    assert_eq!(row("amount").standing, None);
}

#[test]
fn members_of_a_group_have_rows_of_their_own() {
    let chosen = of(
        "yarn",
        "s1_stitches=90&s2_on=yes&s2_stitches=60",
        "yarn.locked=s2_stitches",
    );
    let row = |key| chosen.rows.iter().find(|row| row.key == key).unwrap();
    assert!(
        row("s2_stitches").label.ends_with("(2)"),
        "{}",
        row("s2_stitches").label
    );
    assert_eq!(chosen.placed.options.locked, ["s2_stitches"]);
    let place = |key: &str| keys(&chosen).iter().position(|row| *row == key);
    assert!(place("s1_stitches") < place("s1_rows") && place("s1_rows") < place("s2_stitches"));
}

#[test]
fn what_is_fixed_or_left_out_is_so_for_its_own_tool() {
    let kept = "spacing.locked=stitches,amount,order&spacing.left=knitting&tail.locked=stitches";
    let chosen = of("spacing", "stitches=132&knitting=flat", kept);
    // Nothing stands in the second, and the third is no field of the question.
    assert_eq!(chosen.placed.options.locked, ["stitches"]);
    assert_eq!(chosen.placed.preset, fields("stitches=132"));
}

#[test]
fn the_cursor_is_where_something_can_be_typed() {
    let cursor = |kept| of("spacing", "stitches=132", kept).placed.options.cursor;
    assert_eq!(cursor("spacing.cursor=amount").as_deref(), Some("amount"));
    assert_eq!(cursor("spacing.cursor=stitches&spacing.locked=stitches"), None);
    assert_eq!(cursor("spacing.cursor=rows"), None);
}

#[test]
fn a_colour_is_taken_where_it_can_be_read() {
    let accent = |kept| {
        let chosen = of("spacing", "", kept);
        (
            chosen.placed.options.accent.map(Accent::print),
            chosen.no_accent.is_some(),
        )
    };
    assert_eq!(accent("accent=%238A3324"), (Some("8a3324".into()), false));
    assert_eq!(accent("accent=8a3324&light=dusk"), (None, true));
    assert_eq!(accent("accent=red"), (None, true));
    assert_eq!(accent("accent=%20"), (None, false));
}

#[test]
fn units_are_said_where_they_are_not_as_usual() {
    let units = |kept, settings: &Settings| {
        let tool = tool::find("rows").unwrap();
        chosen(tool, &fields(""), &fields(kept), settings).placed.options.units
    };
    let inches = Settings::new(fields("measures=inches"));
    assert_eq!(units("", &Settings::default()), None);
    assert_eq!(units("units=inches", &Settings::default()), Some(Units::Inches));
    assert_eq!(units("", &inches), Some(Units::Inches));
    assert_eq!(units("units=centimetres", &inches), None);
}

#[test]
fn buttons_are_there_where_they_are_asked_for() {
    for (key, asked) in [
        ("none", (false, false)),
        ("afresh", (false, true)),
        ("both", (true, true)),
        ("x", (false, false)),
    ] {
        let options = of("spacing", "", &["buttons=", key].concat()).placed.options;
        assert_eq!((options.print, options.afresh), asked, "{key}");
    }
}

#[test]
fn the_lists_that_are_kept_change_by_one_field() {
    let chosen = of("spacing", "stitches=132&amount=16", "spacing.locked=stitches");
    let plain = |keys| Some(Typed::plain(keys));
    assert_eq!(
        becoming(&chosen, "amount", Use::Locked),
        [(OfTool::Locked, plain("stitches,amount")), (OfTool::Left, None)]
    );
    assert_eq!(
        becoming(&chosen, "stitches", Use::Left),
        [(OfTool::Locked, None), (OfTool::Left, plain("stitches"))]
    );
}

/// Of every tool in every named state the frame takes what the panel makes, without a word.
#[test]
fn what_the_panel_makes_the_frame_takes() {
    for tool in TOOLS {
        for state in tool.states {
            let typed = fields(state.link);
            let all = chosen(tool, &typed, &store::Fields::new(), &Settings::default());
            let locked: Vec<&str> = keys(&all);
            let kept = [(OfTool::Locked.stored(tool.id), Typed::plain(locked.join(",")))];
            let placed = chosen(tool, &typed, &kept.into_iter().collect(), &Settings::default()).placed;
            let route::Route::Embed { id, fields, options } = route::parse(&placed.hash()) else {
                panic!("{} is no frame", placed.hash());
            };
            let asked = crate::page::embed::Asked { id, fields, options };
            let (options, faults) = crate::page::embed::options(&asked);
            assert_eq!(
                (options, faults),
                (placed.options, Vec::new()),
                "{}, {}",
                tool.id,
                state.name
            );
        }
    }
}

/// Every key that is stored or linked, of all tools and of this panel.
const KEYS: &str = include_str!("../../../tool/keys.txt");

/// What is stored and linked opens for ever, so a line of the file may be added and never changed or taken away.
#[test]
fn every_key_of_the_panel_is_the_one_that_was_stored() {
    let keys = frame_keys();
    assert!(KEYS.ends_with(&keys), "the keys are now:\n{keys}");
}

/// What is chosen for a tool inside another page, and how the address of its frame names it.
fn frame_keys() -> String {
    let mut keys = String::new();
    for setting in Setting::ALL {
        let options = match setting {
            Setting::Light => options_of::<frame::Light>(),
            Setting::Units => options_of::<frame::Units>(),
            Setting::Language => options_of::<Language>(),
            Setting::Buttons => options_of::<Buttons>(),
            Setting::Accent | Setting::Width | Setting::Address => String::new(),
        };
        keys += &format!("{SHEET} {}{options}\n", setting.key());
    }
    for of_tool in OfTool::ALL {
        keys += &format!("{SHEET} {}\n", of_tool.stored("<tool>"));
    }
    for name in frame::Name::ALL {
        keys += &format!("link {}{}\n", frame::PREFIX, name.key());
    }
    keys
}

fn options_of<C: Choice>() -> String {
    let mark = |choice: &C| if *choice == C::START { "*" } else { "" };
    let option = |choice: &C| format!("{:?}{}", choice.key(), mark(choice));
    let options: Vec<String> = C::ALL.iter().map(option).collect();
    format!(" = {}", options.join(" | "))
}
