//! Texts that are read, texts that are not and where they are pointed at, and what is written read back.

use super::*;
use proptest::prelude::*;

#[test]
fn letters_brackets_and_spaces_are_free() {
    let plain = read("(K7, k2tog) 4 times, rib 3, ssk twice, P1").unwrap();
    let free = read(" [k 7 ,K2TOG]4 times; RIB3,  Ssk  twice , p").unwrap();
    assert_eq!(plain, free);
}

#[test]
fn a_lost_reader_says_where_and_what_for() {
    for (text, at, kind) in [
        ("", 0, Misreading::Stitch),
        ("K7, blob", 4, Misreading::Stitch),
        ("(K7, k2tog", 10, Misreading::Closing),
        ("(K7, k2tog]", 10, Misreading::Closing),
        ("(K7)", 4, Misreading::Times),
        ("(K7) 3", 5, Misreading::Times),
        ("K99999999999", 10, Misreading::Number),
        ("K7) 3 times", 2, Misreading::Stitch),
        ("(K1, M1) 9 times, but k2tog the 3rd time", 22, Misreading::Stitch),
        ("(K1, M1) 9 times, but K2 the 10th time", 29, Misreading::Time),
        ("(K1, M1) 9 times, but K2 the 5th, 5th time", 34, Misreading::Time),
        ("(K1, M1) 9 times, but K2 the 5th", 32, Misreading::Times),
        ("((K1) twice, M1) 9 times, but K2 the 5th time", 29, Misreading::Simple),
    ] {
        assert_eq!(read(text), Err(Misread { at, kind }), "{text}");
    }
    assert_eq!(read(&"(".repeat(100_000)).map_err(|m| m.kind), Err(Misreading::TooDeep));
}

/// The whole word is what cannot be read, not what is left of it behind the stitch it begins with.
#[test]
fn a_word_that_is_no_stitch_is_pointed_at_whole() {
    for (text, at) in [
        ("k2togg", 0),
        ("k2togs", 0),
        ("K7, k2togg, K3", 4),
        ("K7b", 0),
        ("K3, P2x", 4),
    ] {
        let kind = Misreading::Stitch;
        assert_eq!(read(text), Err(Misread { at, kind }), "{text}");
    }
    assert!(read("k2tog, k 2, K2").is_ok());
}

fn any_run() -> impl Strategy<Value = Run> {
    (0..Stitch::ALL.len(), 1_u32..200).prop_map(|(which, count)| Run::new(Stitch::ALL[which], count))
}

fn any_varied() -> impl Strategy<Value = Item> {
    let at = prop::collection::btree_set(1_u32..60, 1..9);
    (prop::collection::vec(any_run(), 1..4), 60_u32..90, 1_u32..200, at).prop_map(|(body, times, count, at)| {
        let instead = Run::new(body[body.len() - 1].stitch, count);
        let at = at.into_iter().collect();
        Item::Varied(Varied {
            body,
            times,
            instead,
            at,
        })
    })
}

fn any_row() -> impl Strategy<Value = Vec<Item>> {
    let one = prop_oneof![3 => any_run().prop_map(Item::Run), 1 => any_varied()];
    one.prop_recursive(3, 24, 4, |inner| {
        (prop::collection::vec(inner, 1..4), 1_u32..50).prop_map(|(body, times)| Item::Repeat { body, times })
    })
    .prop_map(|item| vec![item])
}

proptest! {
    #[test]
    fn what_is_written_reads_back_the_same(items in any_row()) {
        let row = Row { items };
        prop_assert_eq!(read(&row.to_string()), Ok(row));
    }

    #[test]
    fn no_text_makes_the_reader_panic(text in "\\PC*") {
        let _ = read(&text);
    }
}
