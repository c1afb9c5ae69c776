//! Evening out what tablets and word processors type before it is read.
//!
//! A tablet turns `"` into a curly quote, a hyphen into a dash and a space into one that does not break; a copied page
//! brings characters that cannot be seen. All of them mean the plain character, and here they become it. What is kept
//! on the page is still what was typed.
//!
//! ```
//! use loopwright::bounds::Bounds;
//! use loopwright::units::parse::{Wanted, read};
//! use loopwright::units::{Length, LengthUnit};
//!
//! let any = Wanted { bounds: Bounds::new(Length::MIN, Length::MAX), unit: LengthUnit::Cm };
//! for typed in ["7 1/2\"", "7–1⁄2”", "\u{a0}７ 1/2\u{202f}″", "7\u{200b}½ in."] {
//!     assert_eq!(read(typed, &any).map(|read| read.value), Ok(Length::from_sixty_fourths(480)));
//! }
//! ```

/// The text in plain characters, with single spaces and none at the ends.
pub(crate) fn clean(text: &str) -> Vec<char> {
    let mut plain: Vec<char> = Vec::new();
    for character in text.chars().filter(|&character| !unseen(character)) {
        let character = plain_form(character);
        // A space at the start or after another space says nothing.
        if character != ' ' || plain.last().is_some_and(|&last| last != ' ') {
            plain.push(character);
        }
    }
    if plain.last() == Some(&' ') {
        plain.pop();
    }
    plain
}

/// Characters that take no room: soft hyphen, zero-width space and joiners, direction marks, byte-order mark, and the
/// mark that asks for a picture or a text form of the character before. Not the marks that turn the reading direction
/// around: with those the eye sees other digits than stand there, and no number is better than another one.
pub(crate) fn unseen(character: char) -> bool {
    matches!(character, '\u{ad}' | '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{2064}'
        | '\u{fe00}'..='\u{fe0f}' | '\u{feff}')
}

/// The plain character that this one stands for.
pub(crate) fn plain_form(character: char) -> char {
    match character {
        // The full-width forms follow ASCII in the same order.
        '\u{ff01}'..='\u{ff5e}' => plain_form(char::from_u32(character as u32 - 0xfee0).unwrap_or(character)),
        '\u{2010}'..='\u{2015}' | '\u{2212}' | '\u{fe58}' | '\u{fe63}' => '-',
        '\u{2044}' | '\u{2215}' => '/',
        '\u{201c}'..='\u{201f}' | '\u{2033}' | '\u{2036}' | '\u{2ba}' | '\u{2ee}' => '"',
        '\u{2018}'..='\u{201b}' | '\u{2032}' | '\u{2035}' | '\u{2b9}' | '\u{2bc}' | '\u{60}' | '\u{b4}' => '\'',
        // The old British point stands at mid-height.
        '\u{b7}' => '.',
        other if other.is_whitespace() => ' ',
        other => other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cleaned(text: &str) -> String {
        clean(text).into_iter().collect()
    }

    #[test]
    fn typographic_marks_become_plain() {
        assert_eq!(cleaned("7–1⁄2”"), "7-1/2\"");
        assert_eq!(cleaned("５．５　ｃｍ"), "5.5 cm");
        assert_eq!(cleaned("−3’’"), "-3''");
        assert_eq!(cleaned("  7 \t\u{a0} 1/2\n"), "7 1/2");
        assert_eq!(cleaned("\u{feff}12\u{200e}"), "12");
        assert_eq!(cleaned("\u{200b} \u{2009}"), "");
    }
}
