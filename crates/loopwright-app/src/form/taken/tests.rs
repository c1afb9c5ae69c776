//! What is left out is counted in one sentence, and however much it is, it is looked at once.

use super::*;

fn left_out(names: &[(&str, Why)]) -> LeftOut {
    let mut left_out = LeftOut::default();
    for (name, why) in names {
        left_out.note(name, *why);
    }
    left_out
}

#[test]
fn what_is_left_out_is_counted_in_one_sentence() {
    assert_eq!(left_out(&[]).of_a_link(), None);
    let unknown = [("f0", Why::Unknown), ("f1", Why::Unknown), ("f2", Why::Unknown)];
    assert_eq!(
        left_out(&unknown).of_a_link().unwrap(),
        "3 parts of the link are not known to this tool and were left out: f0, f1, f2."
    );
    assert_eq!(
        left_out(&[("sizes", Why::TooLong)]).of_a_link().unwrap(),
        "1 part of the link is longer than 4 kB and was left out: sizes."
    );
    assert_eq!(
        left_out(&[("stitches", Why::Repeated), ("f", Why::Unknown)])
            .of_a_copy()
            .unwrap(),
        "2 parts of the copy are not known here or there more than once and were left out: stitches, f."
    );
}

#[test]
fn of_many_names_the_first_are_told_and_none_at_its_length() {
    let long = "x".repeat(300_000);
    let mut many = left_out(&[(&long, Why::Unknown)]);
    for number in 0..50_000 {
        many.note(&number.to_string(), Why::Unknown);
    }
    let said = many.of_a_link().unwrap();
    assert!(
        said.starts_with("50001 parts") && said.ends_with("and 49996 more."),
        "{said}"
    );
    assert!(said.len() < 300, "{}", said.len());
}
