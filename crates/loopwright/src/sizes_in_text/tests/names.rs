//! The lines in which a pattern names its sizes.

use super::super::*;

/// The names of the line that says it best.
fn best(text: &str) -> String {
    named(text)
        .first()
        .map_or_else(String::new, |line| line.names.join("|"))
}

#[test]
fn a_line_of_sizes_is_found_in_every_style() {
    for (text, wanted) in [
        ("Sizes: S (M, L, XL)", "S|M|L|XL"),
        ("SIZES: S [M: L: XL]", "S|M|L|XL"),
        ("Size S, M, L and XL.", "S|M|L|XL"),
        ("Sizes: S (M, L, XL) to fit bust 81 (86, 91, 97) cm", "S|M|L|XL"),
        ("Sizes: 1 (2) [3] {4}", "1|2|3|4"),
        ("To fit: 1 (2) [3] {4}", "1|2|3|4"),
        ("To fit bust 81 (86, 91) cm", "81|86|91"),
        ("To fit chest: 34-36 (38-40, 42-44)\"", "34-36|38-40|42-44"),
        ("XS/S/M", "XS|S|M"),
        ("XS-S-M", "XS|S|M"),
        ("S M L XL", "S|M|L|XL"),
        ("S (M, L)", "S|M|L"),
        ("Sizes: S/M (L/XL, 2X/3X)", "S/M|L/XL|2X/3X"),
        (
            "Sizes: Small (Medium, Large, Extra Large)",
            "Small|Medium|Large|Extra Large",
        ),
        ("Sizes: X-Small (Small, Medium)", "X-Small|Small|Medium"),
        ("Sizes: 2-4 (6-8, 10-12) years", "2-4|6-8|10-12"),
        ("Sizes available: XS (S, M) [L, XL] {2X, 3X}", "XS|S|M|L|XL|2X|3X"),
        ("Size: A (B, C)", "A|B|C"),
        ("Knit.\n\nSizes: XS (S, M,\nL, XL)\nCast on.", "XS|S|M|L|XL"),
        ("Size needed: 4 mm", ""),
        ("Sizes are given below.", ""),
        ("Knit 4 (6, 8) rows.", ""),
        ("96 (108, 120)", ""),
        ("", ""),
    ] {
        assert_eq!(best(text), wanted, "{text}");
    }
}

#[test]
fn the_line_that_says_so_comes_first_and_says_where_its_names_stand() {
    let text = "To fit bust 81 (86, 91) cm\nSizes: S (M, L)";
    let lines = named(text);
    let says: Vec<Says> = lines.iter().map(|line| line.says).collect();
    assert_eq!(says, [Says::Sizes, Says::ToFit]);
    assert_eq!(lines[0].line, 1);
    let written: Vec<&str> = lines[0].ranges.iter().map(|range| &text[range.clone()]).collect();
    assert_eq!(written, ["S", "M", "L"]);
}

#[test]
fn words_that_speak_to_some_of_the_sizes_are_pointed_at() {
    let sizes = ["S", "M", "L", "XL"];
    let told = |text: &str| {
        let found = find(text, &sizes);
        let places = for_some(text, &found, &sizes).into_iter();
        let told = places.map(|place| (text[place.range].to_owned(), place.sizes));
        told.collect::<Vec<_>>()
    };
    for (text, words, sizes) in [
        ("Sizes M and L only: knit.", "Sizes M and L only", vec![1, 2]),
        ("Work as for size XL.", "size XL", vec![3]),
        ("Sizes M (L, XL) only: knit.", "Sizes M (L, XL) only", vec![1, 2, 3]),
        ("Sizes M-XL: knit.", "Sizes M-XL", vec![1, 2, 3]),
        ("Sizes S to L: knit.", "Sizes S to L", vec![0, 1, 2]),
        ("1st size: knit.", "1st size", vec![0]),
        ("2nd, 3rd and 4th sizes: knit.", "2nd, 3rd and 4th sizes", vec![1, 2, 3]),
        ("Knit (M and L only).", "M and L only", vec![1, 2]),
    ] {
        assert_eq!(told(text), [(words.to_owned(), sizes)], "{text}");
    }
    for text in [
        "Sizes: S (M, L, XL)",
        "Sizes S, M, L and XL",
        "Size needed: 4 mm",
        "Every 2nd row",
        "All sizes: knit.",
    ] {
        assert_eq!(told(text), [], "{text}");
    }
}
