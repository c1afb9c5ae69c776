//! A row as it stands on the page, from its data: `K4, (k2tog, K7) 3 times, k2tog, K3`.
//!
//! A plain run carries its count (`K7`), a change worked more than once in a row says so (`k2tog 3 times`), a bracket says
//! how often it is worked in all, never how often it is repeated after the first. The reader of the maths reads it back.

use super::stitch::abbreviation;
use loopwright::row::{Item, Row, Run};

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
    }
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
