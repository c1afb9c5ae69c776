//! The accent colour of a frame: hexadecimal digits and nothing else, so that no text of a stranger ever becomes a style;
//! and light or dark enough to be read on the paper of the page.
//!
//! Contrast is reckoned as the guidelines for web content do it (WCAG 2.2, relative luminance): 4.5 to 1 at least. No
//! colour has that on light paper and on dusk, so that a frame which is as its host takes an accent for the one light in
//! which it can be read, and the page's own in the other.

use super::Light;

/// A colour: how much red, green and blue.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Accent([u8; 3]);

/// Why a text is no accent.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoAccent {
    /// It is not three or six hexadecimal digits.
    NoColour(String),
    /// It cannot be read in the light that was chosen.
    Faint(Accent, Light),
}

/// The least contrast at which text can be read.
const LEAST_CONTRAST: f64 = 4.5;

/// The papers of the page by day: the page itself and what is raised on it. The colours stand in `styles.css` as well.
const DAY: [Accent; 2] = [Accent([0xfa, 0xf6, 0xee]), Accent([0xff, 0xfd, 0xf8])];
/// The papers at dusk.
const DUSK: [Accent; 2] = [Accent([0x27, 0x23, 0x2b]), Accent([0x2f, 0x2a, 0x34])];

impl Accent {
    /// The colour of a text: three or six hexadecimal digits, with or without the `#` that is written before them.
    ///
    /// # Errors
    /// It is none.
    pub fn parse(text: &str) -> Result<Self, NoAccent> {
        let digits = text.trim();
        let digits = digits.strip_prefix('#').unwrap_or(digits);
        let values: Option<Vec<u8>> = digits.chars().map(hexadecimal).collect();
        match values.as_deref() {
            Some(&[red, green, blue]) => Ok(Self([red, green, blue].map(|value| value * 17))),
            Some(&[a, b, c, d, e, f]) => Ok(Self([[a, b], [c, d], [e, f]].map(|[high, low]| high * 16 + low))),
            _ => Err(NoAccent::NoColour(text.to_owned())),
        }
    }

    /// Six digits.
    pub fn print(self) -> String {
        let Self([red, green, blue]) = self;
        format!("{red:02x}{green:02x}{blue:02x}")
    }

    /// The colour, if it can be read in at least one light that it is shown in.
    ///
    /// # Errors
    /// It is too faint.
    pub fn readable(self, light: Light) -> Result<Self, NoAccent> {
        let is_readable = match light {
            Light::Day => self.by_day(),
            Light::Dusk => self.at_dusk(),
            Light::Host => self.by_day() || self.at_dusk(),
        };
        if is_readable {
            Ok(self)
        } else {
            Err(NoAccent::Faint(self, light))
        }
    }

    /// Whether it can be read on light paper.
    pub fn by_day(self) -> bool {
        self.is_read_on(DAY)
    }

    /// Whether it can be read at dusk.
    pub fn at_dusk(self) -> bool {
        self.is_read_on(DUSK)
    }

    fn is_read_on(self, papers: [Self; 2]) -> bool {
        papers.iter().all(|paper| self.contrast(*paper) >= LEAST_CONTRAST)
    }

    fn contrast(self, other: Self) -> f64 {
        let (one, other) = (self.luminance() + 0.05, other.luminance() + 0.05);
        one.max(other) / one.min(other)
    }

    fn luminance(self) -> f64 {
        let [red, green, blue] = self.0.map(|value| linear(f64::from(value) / 255.0));
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    }
}

fn linear(value: f64) -> f64 {
    if value <= 0.04045 {
        value / 12.92
    } else {
        ((value + 0.055) / 1.055).powf(2.4)
    }
}

fn hexadecimal(digit: char) -> Option<u8> {
    digit.to_digit(16).and_then(|value| u8::try_from(value).ok())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn accent(text: &str) -> Accent {
        Accent::parse(text).unwrap()
    }

    #[test]
    fn three_digits_stand_for_six() {
        assert_eq!(accent("8a3324").print(), "8a3324");
        assert_eq!(accent("#A3F").print(), "aa33ff");
        assert_eq!(accent(" 000 "), accent("000000"));
    }

    #[test]
    fn what_is_not_digits_is_no_colour() {
        let hostile = [
            "",
            "#",
            "##000",
            "red",
            "12",
            "1234",
            "12345",
            "1234567",
            "00 000",
            "var(--x)",
            "000;background:url(x)",
            "url(javascript:alert(1))",
            "#000000/*",
            "𝟎𝟎𝟎",
            "\u{ff10}\u{ff10}\u{ff10}",
            "rgb(0,0,0)",
            "-00",
            "+00",
            "0x0",
        ];
        for text in hostile {
            assert_eq!(Accent::parse(text), Err(NoAccent::NoColour(text.to_owned())));
        }
    }

    #[test]
    fn the_contrast_is_that_of_the_guidelines() {
        assert!((accent("000").contrast(accent("fff")) - 21.0).abs() < 1e-9);
        // A grey whose contrast with white is published everywhere as the last one that passes, and the next.
        assert!(accent("767676").contrast(accent("fff")) >= LEAST_CONTRAST);
        assert!(accent("777777").contrast(accent("fff")) < LEAST_CONTRAST);
    }

    #[test]
    fn a_colour_is_refused_where_it_cannot_be_read() {
        let (madder, pale) = (accent("8a3324"), accent("eb9486"));
        assert!(madder.readable(Light::Day).is_ok() && madder.readable(Light::Host).is_ok());
        assert_eq!(madder.readable(Light::Dusk), Err(NoAccent::Faint(madder, Light::Dusk)));
        assert!(pale.readable(Light::Dusk).is_ok() && pale.readable(Light::Host).is_ok());
        assert!(pale.readable(Light::Day).is_err());
        // Neither here nor there.
        assert!(accent("808080").readable(Light::Host).is_err());
    }

    /// The papers are those of the styles.
    #[test]
    fn the_papers_are_those_that_the_page_has() {
        let styles = include_str!("../../../../web/styles.css");
        for (name, papers) in [("day", DAY), ("dusk", DUSK)] {
            for (variable, paper) in ["--paper", "--raised"].into_iter().zip(papers) {
                let written = format!("{variable}: #{};", paper.print());
                assert!(styles.contains(&written), "{name}: {written}");
            }
        }
    }

    proptest! {
        #[test]
        fn a_colour_comes_back_from_its_digits(values in any::<[u8; 3]>()) {
            prop_assert_eq!(Accent::parse(&Accent(values).print()), Ok(Accent(values)));
        }

        #[test]
        fn of_any_text_only_digits_are_left(text in "\\PC{0,9}") {
            if let Ok(accent) = Accent::parse(&text) {
                prop_assert!(accent.print().chars().all(|digit| digit.is_ascii_hexdigit()));
            }
        }

        #[test]
        fn no_colour_can_be_read_in_both_lights(values in any::<[u8; 3]>()) {
            prop_assert!(!(Accent(values).by_day() && Accent(values).at_dusk()));
        }
    }
}
