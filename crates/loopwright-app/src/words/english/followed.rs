//! What happens in a row that is followed, where several tools say the same.

use super::intl::fill_pattern_with;
use super::row::line;
use super::schedule::noun;
use loopwright::row::Row;
use loopwright::shaping::Knitting;
use loopwright::spacing::Spaced;

/// A row of more terms is not read at arm's length: it says how many changes it has, and is written out beside that.
const MOST_TERMS: usize = 12;

/// Whether a row is told stitch by stitch where it is followed.
pub fn is_told(row: &Row) -> bool {
    row.terms() <= MOST_TERMS
}

/// A row with evenly spaced changes: "Increase round: K1, M1, (K2, M1) 55 times, K1."; "Increase 56 evenly in this round."
pub fn spaced(knitting: Knitting, spaced: Spaced, written: Option<&Row>) -> String {
    let (verb, noun) = (verb(spaced.gains()), noun(knitting));
    match written.filter(|row| is_told(row)) {
        Some(row) => fill_pattern_with("@ @: @.", &[], &[verb, noun, &line(row)]),
        None => fill_pattern_with("@ # evenly in this @.", &[spaced.changes], &[verb, noun]),
    }
}

/// What is done to the count.
pub const fn verb(gain: bool) -> &'static str {
    match gain {
        true => "Increase",
        false => "Decrease",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::row::{Stitch, read};

    #[test]
    fn a_short_row_is_told_stitch_by_stitch_and_a_long_one_by_its_number() {
        let of = |change| Spaced { change, changes: 12 };
        let row = read("K4, k2tog, (K9, k2tog) 11 times, K5").unwrap();
        let told = |row| spaced(Knitting::Round, of(Stitch::K2tog), row);
        assert_eq!(told(Some(&row)), "Decrease round: K4, k2tog, (K9, k2tog) 11 times, K5.");
        let long = read("K1, M1, K2, M1, K1, M1, K2, M1, K1, M1, K2, M1, K1").unwrap();
        let flat = Knitting::Flat {
            next: loopwright::terms::Side::Right,
        };
        assert_eq!(
            spaced(flat, of(Stitch::M1), Some(&long)),
            "Increase 12 evenly in this row."
        );
        assert_eq!(told(None), "Decrease 12 evenly in this round.");
    }
}
