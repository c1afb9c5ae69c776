//! A row as it stands on the page, from its data: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! A plain run carries its count (`K7`), a change worked more than once in a row says so (`k2tog 3 times`), a bracket says
//! how often it is worked in all, never how often it is repeated after the first; and where it is not the same every time,
//! which times differ. The reader of the maths reads it back.

use super::stitch::abbreviation;
use loopwright::row::{Item, Row, Run, Varied};

/// The terms of a row, one by one.
pub fn terms(row: &Row) -> Vec<String> {
    row.items.iter().map(term).collect()
}

fn term(item: &Item) -> String {
    match item {
        Item::Run(run) => written_run(*run),
        Item::Repeat { body, times } => {
            let body: Vec<String> = body.iter().map(term).collect();
            format!("({}) {}", body.join(", "), so_often(*times))
        }
        Item::Varied(varied) => with_exceptions(varied),
    }
}

/// `(K1, M1) 40 times, but K2 the 5th, 10th and 15th time`.
fn with_exceptions(varied: &Varied) -> String {
    let body: Vec<String> = varied.body.iter().copied().map(written_run).collect();
    let times: Vec<String> = varied.at.iter().copied().map(ordinal).collect();
    let times = match times.split_last() {
        Some((last, before)) if !before.is_empty() => format!("{} and {last}", before.join(", ")),
        _ => times.concat(),
    };
    let (body, instead) = (body.join(", "), written_run(varied.instead));
    format!("({body}) {}, but {instead} the {times} time", so_often(varied.times))
}

/// `5th`, `21st`.
pub fn ordinal(number: u32) -> String {
    let ending = match (number % 10, number % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    };
    format!("{number}{ending}")
}

/// A row in one line, as it stands in a list of rounds.
pub fn line(row: &Row) -> String {
    terms(row).join(", ")
}

fn written_run(run: Run) -> String {
    let stitch = abbreviation(run.stitch);
    match run.count {
        count if run.stitch.is_plain() => format!("{stitch}{count}"),
        1 => stitch.into(),
        count => format!("{stitch} {}", so_often(count)),
    }
}

fn so_often(times: u32) -> String {
    match times {
        1 => "once".into(),
        2 => "twice".into(),
        _ => format!("{times} times"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::row::{self, Stitch};

    /// What stands on the page is what the maths reads and works on its needle.
    #[test]
    fn a_row_on_the_page_is_read_back_as_it_was() {
        let texts = [
            "K4, k2tog, (K9, k2tog) 11 times, K5",
            "rib 7, k2tog twice, ((K1, yo) 3 times, ssk) twice, p3tog tbl",
            "(K1, M1) 40 times, but K2 the 1st, 2nd, 3rd, 11th, 21st and 22nd time, K1",
            "(K6, k2tog) twice, but K7 the 2nd time",
        ];
        for text in texts {
            let row = row::read(text).unwrap();
            assert_eq!(terms(&row).join(", "), text);
            assert_eq!(terms(&row).join(", "), row.to_string());
        }
        for stitch in Stitch::ALL {
            assert_eq!(abbreviation(stitch), stitch.abbreviation(), "{stitch:?}");
        }
    }
}
