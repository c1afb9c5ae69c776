//! Printed lists, typed by somebody with a bust of 96.5 cm: the size that is picked is not one of half a list.

use super::*;

#[test]
fn no_number_of_a_printed_list_is_passed_over_when_a_size_is_picked() {
    let (cm, inch) = (LengthUnit::Cm, LengthUnit::Inch);
    let (body, garment) = (Listed::Body, Listed::Garment);
    for (typed, unit, listed, wanted) in [
        ("81[86:91:97:102:107]", cm, garment, "102"),
        ("81 [86:91:97:102:107]", cm, body, "97"),
        ("81 [86: 91: 97: 102]", cm, body, "97"),
        ("81:86:91:97:102", cm, body, "97"),
        ("36[38:40:42]", inch, garment, "40"),
        ("36[38:40:42] in", cm, garment, "40"),
        ("96(104:112:120)cm", cm, garment, "104"),
        ("82-90-98-106", cm, body, "98"),
        ("82–90–98–106", cm, body, "98"),
        ("S-M-L: 96-104-112", cm, garment, "M"),
        ("81 (86-91-97)", cm, body, "97"),
        ("34\"-36\" (38\"-40\", 42\"-44\")", cm, body, "38-40"),
        ("34-36 (38-40, 42-44)", inch, body, "38-40"),
    ] {
        let sizes = read_sizes(typed, unit).unwrap_or_else(|unread| panic!("{typed}: {unread:?}"));
        let question = Question {
            listed: Some(listed),
            ..Question::about(mm(965), sizes)
        };
        let picked = &question.sizes[found(&question).pick];
        assert_eq!(picked.label, wanted, "{typed}");
    }
}
