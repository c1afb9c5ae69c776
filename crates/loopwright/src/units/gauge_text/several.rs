//! Several counts of one gauge in one text, as they were counted in several spots.

use super::read;
use crate::gauge::Direction;
use crate::units::parse::Unreadable;
use crate::units::{Gauge, Length};

/// Reads several counts in one direction: `21, 20 1/2, 21`, parted by commas, semicolons, lines, spaces or `and`. A text
/// that is one gauge as it is printed is one. A comma without a space behind it parts decimals where 5, 25, 50 or 75
/// follows, as in `20,5`; otherwise counts.
///
/// # Errors
/// As [`read`], for the first that is none.
pub fn read_several(text: &str, span: Length, direction: Direction) -> Result<Vec<Gauge>, Unreadable> {
    if text.trim().is_empty() {
        return Err(Unreadable::Empty);
    }
    let pieces = parted(text);
    if let (Ok(label), true) = (read(text, span), pieces.len() > 1)
        && label.other(direction).is_some()
    {
        return Ok(vec![label.gauge(direction)?]);
    }
    let mut gauges = Vec::new();
    for piece in pieces {
        if is_spaced(piece) {
            for count in piece.split_whitespace() {
                gauges.push(read(count, span)?.gauge(direction)?);
            }
        } else {
            gauges.push(read(piece, span)?.gauge(direction)?);
        }
    }
    Ok(gauges)
}

/// The pieces between the marks that part counts.
fn parted(text: &str) -> Vec<&str> {
    let (mut pieces, mut from) = (Vec::new(), 0);
    for (place, mark) in text.char_indices() {
        let behind = text.get(place + mark.len_utf8()..).unwrap_or_default();
        let parting = match mark {
            ';' | '\n' => mark.len_utf8(),
            ',' if !parts_decimals(behind) => mark.len_utf8(),
            ' ' if behind.starts_with("and ") => " and ".len(),
            _ => continue,
        };
        pieces.push(text.get(from..place).unwrap_or_default());
        from = place + parting;
    }
    pieces.push(text.get(from..).unwrap_or_default());
    pieces.retain(|piece| !piece.trim().is_empty());
    pieces
}

/// Whether nothing but spaces stands between several counts.
fn is_spaced(text: &str) -> bool {
    let plain = |mark: char| mark.is_ascii_digit() || mark.is_whitespace() || matches!(mark, '.' | ',');
    text.chars().all(plain) && text.split_whitespace().nth(1).is_some()
}

/// Whether the comma before this parts decimals: a half or a quarter follows, as gauges are counted.
fn parts_decimals(behind: &str) -> bool {
    let digits = behind.bytes().take_while(u8::is_ascii_digit).count();
    matches!(behind.get(..digits), Some("5" | "25" | "50" | "75"))
}
