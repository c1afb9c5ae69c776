//! One record of the log, read from its text. Reading is total: what is not as this version writes it is a line that stays
//! what it was.
//!
//! Not by the browser's own JSON: a log may be very long, and there each name and text would be asked for one by one.

use super::entry::VERSION;
use super::{Entry, Line, Typed};
use serde_json::{Map, Value};

/// The line that a text is.
pub fn line(text: &str) -> Line {
    match serde_json::from_str(text).ok().and_then(entry) {
        Some(entry) => Line::Known(entry),
        None => Line::Foreign(text.to_owned()),
    }
}

fn entry(record: Value) -> Option<Entry> {
    let Value::Object(mut record) = record else {
        return None;
    };
    if record.get("v")?.as_f64()? != f64::from(VERSION) {
        return None;
    }
    let typed = match taken(&mut record, "typed") {
        Some(typed) => Some(read_typed(typed)?),
        None => None,
    };
    let sheet = text(taken(&mut record, "sheet")?)?;
    let field = text(taken(&mut record, "field")?)?;
    Some(Entry::new(sheet, field, typed))
}

fn read_typed(typed: Value) -> Option<Typed> {
    let Value::Object(mut typed) = typed else {
        return None;
    };
    let unit = match taken(&mut typed, "unit") {
        Some(unit) => Some(text(unit)?),
        None => None,
    };
    let text = text(taken(&mut typed, "text")?)?;
    Some(Typed { text, unit })
}

/// A value of an object; `null` is none.
fn taken(object: &mut Map<String, Value>, name: &str) -> Option<Value> {
    object.remove(name).filter(|value| !value.is_null())
}

fn text(value: Value) -> Option<String> {
    match value {
        Value::String(text) => Some(text),
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::Array(_) | Value::Object(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{compact, fold, foreign_lines};
    use proptest::prelude::*;
    use serde_json::json;
    use std::time::Instant;

    fn record(sheet: &str, field: &str, typed: &Typed) -> String {
        let mut kept = json!({ "text": typed.text });
        if let Some(unit) = &typed.unit {
            kept["unit"] = json!(unit);
        }
        json!({ "v": 1, "sheet": sheet, "field": field, "typed": kept }).to_string()
    }

    #[test]
    fn what_no_version_wrote_stays_what_it_is() {
        let strange = [
            "",
            "undefined",
            "null",
            "5",
            "[]",
            "{}",
            "\"text\"",
            r#"{"v":2,"sheet":"spacing","field":"stitches"}"#,
            r#"{"v":1,"sheet":"spacing"}"#,
            r#"{"v":1,"sheet":7,"field":"stitches"}"#,
            r#"{"v":1,"sheet":"spacing","field":null}"#,
            r#"{"v":1,"sheet":"spacing","field":"stitches","typed":5}"#,
            r#"{"v":1,"sheet":"spacing","field":"stitches","typed":{"text":5}}"#,
            r#"{"v":1,"sheet":"spacing","field":"stitches","typed":{"text":"5","unit":7}}"#,
            r#"{"v":"1","sheet":"spacing","field":"stitches"}"#,
            r#"{"v":1e999,"sheet":"spacing","field":"stitches"}"#,
        ];
        for text in strange {
            assert_eq!(line(text), Line::Foreign(text.into()), "{text}");
        }
        let deep = "[".repeat(1_000_000);
        assert_eq!(line(&deep), Line::Foreign(deep.clone()));
    }

    #[test]
    fn what_older_versions_wrote_is_read() {
        let removal = Line::Known(Entry::new("spacing", "stitches", None));
        for text in [
            r#"{"v":1,"sheet":"spacing","field":"stitches"}"#,
            r#"{"v":1,"sheet":"spacing","field":"stitches","typed":null}"#,
            r#"{"v":1.0,"more":[1],"field":"stitches","sheet":"spacing"}"#,
        ] {
            assert_eq!(line(text), removal, "{text}");
        }
    }

    proptest! {
        #[test]
        fn any_entry_comes_back(sheet in ".*", field in ".*", text in ".*", unit in proptest::option::of(".*")) {
            let typed = Typed { text, unit };
            let read = line(&record(&sheet, &field, &typed));
            prop_assert_eq!(read, Line::Known(Entry::new(sheet, field, Some(typed))));
        }

        #[test]
        fn reading_is_total(text in ".*|[{}\\[\\]\":,0-9a-z]*") {
            let _ = line(&text);
        }
    }

    /// The aim is one second in a browser; the time is told, and decides nothing.
    #[test]
    fn two_hundred_thousand_records_are_read() {
        const MANY: usize = 200_000;
        let of_one_sheet = |n: usize| record("spacing", "stitches", &Typed::plain(n.to_string()));
        let of_many_sheets = |n: usize| record(&format!("sheet{n}"), &format!("field{n}"), &Typed::plain("1"));
        let strange = |n: usize| format!("{{\"v\":7,\"n\":{n}}}");
        let kinds = [
            ("of one field", (0..MANY).map(of_one_sheet).collect(), 1),
            ("of as many sheets", (0..MANY).map(of_many_sheets).collect(), MANY),
            ("that no version wrote", (0..MANY).map(strange).collect(), 0),
        ];
        for (kind, records, sheets) in kinds {
            let records: Vec<String> = records;
            let begun = Instant::now();
            let log: Vec<Line> = records.iter().map(|text| line(text)).collect();
            let folded = fold(&log);
            let read = begun.elapsed();
            let short = compact(log);
            println!(
                "{MANY} records {kind}: read in {read:?}, shortened after {:?}",
                begun.elapsed()
            );
            assert_eq!(folded.iter().count(), sheets);
            assert_eq!(short.len(), sheets + foreign_lines(&short));
        }
    }
}
