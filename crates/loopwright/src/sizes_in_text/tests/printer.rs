//! Lists in every style of the printer of [`printed`](crate::units::printed), in running text.

use super::super::{Hers, List, find, plain_text};
use crate::units::printed::styles::{NAMES, Printed, numbers, styles};
use crate::units::printed::{TokenKind, tokens};
use proptest::prelude::*;

/// The numbers of a text as written.
fn written(text: &str) -> Vec<String> {
    let tokens = tokens(text);
    let numbers = tokens.iter().filter(|token| token.kind == TokenKind::Number);
    numbers.map(|token| token.text(text).to_owned()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, max_global_rejects: 100_000, ..ProptestConfig::default() })]
    #[test]
    fn every_style_is_found_in_running_text_and_read_again_for_one_size(
        style in styles(),
        numbers in numbers(),
        before in "(Cast on|Work|Rib|Now knit even until the piece measures) ",
        behind in "(\\. Purl back| in pattern|, then turn)",
    ) {
        let numbers: Vec<Printed> = style.printable(numbers);
        // A list down the lines of a text is a column of a table, and of two numbers without a bracket none is one for sure.
        prop_assume!(style.is_plain(&numbers) && style.is_in_one_line() && (numbers.len() > 2 || style.has_brackets()));
        let text = format!("{before}{}{behind}", style.print(&numbers));
        let names = &NAMES[..numbers.len()];
        let found = find(&text, names);
        let is_of_numbers = |list: &&List| list.style != super::super::Style::Names;
        prop_assert_eq!(found.lists.iter().filter(is_of_numbers).count(), 1, "{} {:?}", text, found.lists);
        prop_assert_eq!(found.doubts().count(), 0, "{} {:?}", text, found.lists);
        for (size, wanted) in style.written(&numbers).into_iter().enumerate() {
            let marked = plain_text(&text, &found, &Hers::one(size), &[]);
            prop_assert_eq!(written(&marked), wanted, "{} {}", text, marked);
        }
    }
}
