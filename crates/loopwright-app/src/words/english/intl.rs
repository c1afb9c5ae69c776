//! Numbers and plurals, by the browser's own tables.
//!
//! Native tests have no browser; there a plain number and the English rule stand in.

/// The language of these words.
pub const LANGUAGE: &str = "en";

pub const DECIMAL_MARK: &str = ".";

/// A whole number as it is written here.
pub fn number(value: u32) -> String {
    written(f64::from(value))
}

/// A number with at most one decimal.
pub fn tenths(value: f64) -> String {
    written((value * 10.0).round() / 10.0)
}

/// A number with at most two decimals.
pub fn hundredths(value: f64) -> String {
    written((value * 100.0).round() / 100.0)
}

/// A number with as many decimals as it has, at most three.
pub fn decimal(value: f64) -> String {
    written((value * 1_000.0).round() / 1_000.0)
}

// The browser reads its tables of a language each time a formatter is made, so that each is made once.
#[cfg(target_arch = "wasm32")]
thread_local! {
    static WRITTEN: js_sys::Function = js_sys::Intl::NumberFormat::new(&languages(), &js_sys::Object::new()).format();
    static PLURALS: js_sys::Intl::PluralRules = js_sys::Intl::PluralRules::new(&languages(), &js_sys::Object::new());
}

#[cfg(target_arch = "wasm32")]
fn written(value: f64) -> String {
    let text = WRITTEN.with(|written| written.call1(&wasm_bindgen::JsValue::UNDEFINED, &value.into()));
    // A formatter does not refuse a number.
    let text = text.ok().and_then(|text| text.as_string());
    text.unwrap_or_else(|| js_sys::Number::from(value).to_locale_string(LANGUAGE).into())
}

#[cfg(not(target_arch = "wasm32"))]
fn written(value: f64) -> String {
    value.to_string()
}

/// A sentence with these numbers in it: each `#` of the pattern is the next one, and of `{stitch|stitches}` the word
/// that goes with the number before it.
pub fn fill_pattern(pattern: &str, numbers: &[u32]) -> String {
    fill_pattern_with(pattern, numbers, &[])
}

/// A sentence with these numbers and words in it; each `@` is the next word.
pub fn fill_pattern_with(pattern: &str, numbers: &[u32], words: &[&str]) -> String {
    let (mut numbers, mut words) = (numbers.iter(), words.iter());
    let (mut said, mut last, mut silent) = (String::new(), 0, false);
    for mark in pattern.chars() {
        match mark {
            '#' => {
                last = numbers.next().copied().unwrap_or(last);
                said.push_str(&number(last));
            }
            '@' => said.push_str(words.next().unwrap_or(&"")),
            '{' => silent = !is_one(last),
            '|' => silent = !silent,
            '}' => silent = false,
            _ if silent => {}
            _ => said.push(mark),
        }
    }
    said
}

/// The time of day of a moment, given in milliseconds since 1970, as a clock beside her says it.
#[cfg(target_arch = "wasm32")]
pub fn time_of_day(millis: u64) -> String {
    let moment = js_sys::Date::new(&wasm_bindgen::JsValue::from_f64(millis as f64));
    moment.to_locale_time_string(LANGUAGE).into()
}

/// The same without a browser: hours and minutes of the world's time.
#[cfg(not(target_arch = "wasm32"))]
pub fn time_of_day(millis: u64) -> String {
    let minutes = millis / 60_000;
    format!("{:02}:{:02}", minutes / 60 % 24, minutes % 60)
}

/// A sentence with words made for it: a sum whose lines are many is smaller this way.
pub fn fill_pattern_with_strings(pattern: &str, numbers: &[u32], words: Vec<String>) -> String {
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    fill_pattern_with(pattern, numbers, &words)
}

#[cfg(target_arch = "wasm32")]
fn languages() -> js_sys::Array {
    js_sys::Array::of1(&LANGUAGE.into())
}

#[cfg(target_arch = "wasm32")]
fn is_one(count: u32) -> bool {
    PLURALS.with(|rules| rules.select(f64::from(count)) == "one")
}

#[cfg(not(target_arch = "wasm32"))]
fn is_one(count: u32) -> bool {
    count == 1
}

/// `132 stitches`.
pub fn stitches(count: u32) -> String {
    fill_pattern("# {stitch|stitches}", &[count])
}

/// `8 times`, `twice`, `once`.
pub fn times(count: u32) -> String {
    match count {
        1 => "once".into(),
        2 => "twice".into(),
        _ => fill_pattern("# times", &[count]),
    }
}

/// `7 or 8`; `7`.
pub fn either(numbers: &[u32]) -> String {
    fill_pattern(if numbers.len() == 1 { "#" } else { "# or #" }, numbers)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pattern_takes_numbers_words_and_plurals() {
        assert_eq!(stitches(1), "1 stitch");
        assert_eq!(stitches(0), "0 stitches");
        let pattern = "# {run|runs} of #, # {is|are} @.";
        assert_eq!(
            fill_pattern_with(pattern, &[1, 5, 2], &["k2tog#"]),
            "1 run of 5, 2 are k2tog#."
        );
    }
}
