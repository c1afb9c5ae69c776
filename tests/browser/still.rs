//! The page holds still while she types: each tool is filled in key by key, and after each key every field stands where
//! it stood, on a phone and on a tablet. Where the browser tells of layout shifts, all that a key brings about are small
//! together, around the answer and inside of it. Only in a pattern's text that is not asked: a line that no longer comes
//! out is opened above all the others, which move down for it.

use crate::{
    browser::{Browser, words_of},
    stage::Stage,
    states::{self, PHONE, TABLET},
    steps::{Step::*, play},
};
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;
use serde_json::json;
use std::collections::BTreeMap;
use thirtyfour::{Key, TypingData};

/// The most that one key may shift what is on the screen, as the browser reckons it.
const LARGEST_SHIFT: f64 = 0.05;

/// On a phone nothing moves under her thumb.
pub async fn every_tool_holds_still_on_a_phone(stage: &mut Stage) -> Result<()> {
    every_tool_holds_still(stage, PHONE).await
}

/// On a tablet nothing moves beside the keyboard.
pub async fn every_tool_holds_still_on_a_tablet(stage: &mut Stage) -> Result<()> {
    every_tool_holds_still(stage, TABLET).await
}

/// A field and what stands in it.
#[derive(Clone, Debug, PartialEq)]
struct Field {
    id: String,
    chosen: bool,
    text: String,
}

/// The fields of the question that is open, in their order.
const FIELDS: &str = "return [...document.querySelectorAll('form.question :is(input, select, textarea)[id]')]
    .map((field) => [field.id, field.localName === 'select', field.value])";

/// Notes all layout shifts from here on, with or without a key before them.
const WATCH: &str = "window.shifts = [];
    window.watch = new PerformanceObserver((list) => shifts.push(...list.getEntries().map(({ value }) => value)));
    if (PerformanceObserver.supportedEntryTypes.includes('layout-shift')) watch.observe({ type: 'layout-shift' });";

/// Once the page is drawn: where every field stands in it (what lies in a closed fold stands nowhere), and how far things
/// were shifted since this was asked last.
const PLACES: &str = "const done = arguments[arguments.length - 1];
    const look = () => {
        const all = [...document.querySelectorAll('form.question :is(input, select, textarea, summary)')];
        const drawn = all.filter((field) => field.checkVisibility());
        const place = (field) => {
            const box = field.getBoundingClientRect();
            return [field.id || field.textContent, [box.left + scrollX, box.top + scrollY]];
        };
        done([Object.fromEntries(drawn.map(place)), shifts.splice(0)]);
    };
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(look)));";

/// Where every field stands, by its id: how far from the left and from the top, in pixels.
type Places = BTreeMap<String, [f64; 2]>;

/// Half a pixel more or less, as lines of text round it, is no movement that anybody sees.
const LEAST_MOVE: f64 = 1.0;

fn has_moved([left, top]: [f64; 2], [left_now, top_now]: [f64; 2]) -> bool {
    (left - left_now).abs() > LEAST_MOVE || (top - top_now).abs() > LEAST_MOVE
}

async fn every_tool_holds_still(stage: &Stage, view: View) -> Result<()> {
    stage.browser.look(view).await?;
    let mut found = Vec::new();
    for state in states::named(stage).await? {
        if state.name == "filled" {
            let told = || format!("{} at {}", state.tool, view.width);
            stage.looked_at(&state.page);
            found.extend(holds_still(stage, &state.tool).await.with_context(told)?);
        }
    }
    ensure!(found.is_empty(), "{}", found.join("\n"));
    Ok(())
}

/// Fills a tool in key by key, and says what moved.
async fn holds_still(stage: &Stage, tool: &str) -> Result<Vec<String>> {
    let browser = &stage.browser;
    let empty = fields(browser, &format!("#/gallery/{tool}/empty")).await?;
    let filled = fields(browser, &format!("#/gallery/{tool}/filled")).await?;
    let to_fill = filled.into_iter().filter(|field| !empty.contains(field));
    let (chosen, typed): (Vec<Field>, Vec<Field>) = to_fill.partition(|field| field.chosen);
    stage.open(&format!("#/{tool}")).await?;
    for field in &chosen {
        browser.choose(&field.css(), &field.text).await?;
    }
    browser.run(WATCH).await?;
    let mut hand = Hand::begin(browser).await?;
    for field in &typed {
        hand.types(field).await?;
    }
    browser
        .until("document.querySelector('.answers:not(.stale) .answer')")
        .await?;
    // A number is half a number again while it is mended.
    for field in &typed {
        hand.mends(field).await?;
    }
    Ok(hand.moved.into_iter().map(|moved| format!("{tool}: {moved}")).collect())
}

async fn fields(browser: &Browser, state: &str) -> Result<Vec<Field>> {
    browser.go(state).await?;
    browser.until("document.querySelector('form.question')").await?;
    let listed: Vec<(String, bool, String)> = serde_json::from_value(browser.run(FIELDS).await?)?;
    let field = |(id, chosen, text)| Field { id, chosen, text };
    Ok(listed.into_iter().map(field).collect())
}

impl Field {
    fn css(&self) -> String {
        format!("[id='{}']", self.id)
    }

    fn is_pattern(&self) -> bool {
        self.id.ends_with("-pattern_text")
    }
}

/// A hand that types, and what moved under it.
struct Hand<'a> {
    browser: &'a Browser,
    places: Places,
    moved: Vec<String>,
}

impl<'a> Hand<'a> {
    async fn begin(browser: &'a Browser) -> Result<Self> {
        let mut hand = Self {
            browser,
            places: Places::new(),
            moved: Vec::new(),
        };
        hand.places = hand.look().await?.0;
        Ok(hand)
    }

    /// Where everything stands now, and what was shifted.
    async fn look(&self) -> Result<(Places, Vec<f64>)> {
        let seen = self.browser.driver.execute_async(PLACES, []).await?;
        Ok(serde_json::from_value(seen.json().clone())?)
    }

    /// Taps a field, which may lie in a fold, and takes hold of what stands in it.
    async fn takes(&mut self, field: &Field) -> Result<()> {
        const TAKE: &str = "const field = document.querySelector(arguments[0]);
            field.closest('details')?.setAttribute('open', '');
            field.focus();
            // What stands there is written over; the end of a long text is gone on with.
            if (field.value.length > 40) field.setSelectionRange(field.value.length, field.value.length);
            else field.select();";
        self.browser.ask(TAKE, [json!(field.css())]).await?;
        self.places = self.look().await?.0;
        Ok(())
    }

    /// Types a text into a field, key by key. A long one is a pattern's: it is pasted, all but its end.
    async fn types(&mut self, field: &Field) -> Result<()> {
        const END: usize = 40;
        let pasted = field.text.chars().count().saturating_sub(END);
        let pasted = if pasted > END { pasted } else { 0 };
        if pasted > 0 {
            let text: String = field.text.chars().take(pasted).collect();
            self.browser.paste(&field.css(), &text).await?;
            self.browser.until("document.querySelector('.answer')").await?;
        }
        self.takes(field).await?;
        for (place, key) in field.text.char_indices().skip(pasted) {
            let typed = &field.text[..place + key.len_utf8()];
            self.presses(key.to_string(), &format!("\"{typed}\" in {}", field.id), field)
                .await?;
        }
        Ok(())
    }

    /// Takes the last letter of a field away and types it anew.
    async fn mends(&mut self, field: &Field) -> Result<()> {
        let Some(last) = field.text.chars().next_back() else {
            return Ok(());
        };
        self.takes(field).await?;
        self.presses(Key::End, &format!("the end of {}", field.id), field)
            .await?;
        self.presses(Key::Backspace, &format!("one letter less in {}", field.id), field)
            .await?;
        self.presses(last.to_string(), &format!("all of {}", field.id), field)
            .await
    }

    /// One key, and what moved by it.
    async fn presses(&mut self, key: impl Into<TypingData>, typed: &str, field: &Field) -> Result<()> {
        self.browser.keys(key).await?;
        let (places, shifts) = self.look().await?;
        for (name, before) in &self.places {
            if let Some(now) = places.get(name).filter(|now| has_moved(*before, **now)) {
                self.moved
                    .push(format!("at {typed}, {name} went from {before:?} to {now:?}"));
            }
        }
        let shift: f64 = shifts.into_iter().sum();
        if shift > LARGEST_SHIFT && !field.is_pattern() {
            self.moved.push(format!("at {typed}, a shift of {shift}"));
        }
        self.places = places;
        Ok(())
    }
}

/// Half a number does not take the answer away: it stays, and says which numbers it is for.
pub async fn half_a_number_leaves_the_answer(stage: &mut Stage) -> Result<()> {
    const ROW: &str = "K3, k2tog, (K7, k2tog) 3 times, (K6, k2tog) 12 times, K4";
    let steps = [
        Open("#/spacing?stitches=132&amount=16"),
        Reads(ROW),
        Is(".since", ""),
        Type("#spacing-stitches", "1"),
        Is(
            ".stale .since",
            "This is still the answer for Stitches on the needle 132.",
        ),
        Reads(ROW),
        Outcome("116"),
        Says("#spacing-stitches-problem", "Type 2 or more."),
        Type("#spacing-amount", " "),
        Is(".stale .since", "This is still the answer for 16 and 132."),
        Type("#spacing-stitches", "140"),
        Type("#spacing-amount", "14"),
        Shown(".answers:not(.stale) .answer"),
        Outcome("126"),
        Is(".since", ""),
        // Another question altogether has no answer to leave behind.
        Button(".doings", "Start afresh"),
        Hides(".answer", "the answer to a question that is gone"),
    ];
    play(stage, &steps).await
}

/// On a phone the answer's line is at the foot of the window until the answer itself is in sight.
pub async fn on_a_phone_the_answer_is_in_the_window(stage: &mut Stage) -> Result<()> {
    const IN_SIGHT: &str = "['.foot', '.answer'].some((name) => {
        const box = document.querySelector(name).getBoundingClientRect();
        return box.top >= 0 && box.top + 40 <= innerHeight;
    })";
    let browser = &stage.browser;
    browser.look(View { height: 600, ..PHONE }).await?;
    for state in states::named(stage).await? {
        if state.name == "filled" {
            browser.go(&state.page).await?;
            stage.looked_at(&state.page);
            browser.until("document.querySelector('.answer')").await?;
            let told = || format!("{}: neither the answer nor its line is in the window", state.tool);
            browser.until(IN_SIGHT).await.with_context(told)?;
        }
    }
    Ok(())
}

/// What is set in a closed fold is said beside it, and one tap clears it.
pub async fn a_fold_tells_what_is_set_in_it(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/rows?length=40&gauge=28&repeat=12&set_up=2"),
        Begins(".set", "Set here: Rows of one repeat 12,"),
        Button(".set", "Clear"),
        Hides(".set", "nothing is set any more"),
        Holds("#rows-repeat", "1"),
        Unfold,
        Type("#rows-repeat", "8"),
        Hides(".set", "it stands in sight"),
        Press("details.more summary"),
        Begins(".set", "Set here: Rows of one repeat 8."),
    ];
    play(stage, &steps).await
}

/// A link paints its values first: no frame shows its page with a field that is still empty.
pub async fn a_link_is_never_seen_empty(stage: &mut Stage) -> Result<()> {
    const FRAMES: &str = "window.empty = [];
        const look = () => {
            const field = document.querySelector('#spacing-stitches');
            if (field && field.value !== '132') empty.push(field.value);
        };
        new MutationObserver(look).observe(document.body, { childList: true, subtree: true });
        const frame = () => { look(); requestAnimationFrame(frame); };
        frame();";
    let browser = &stage.browser;
    stage.open("#/").await?;
    browser.run(FRAMES).await?;
    browser.go("#/spacing?stitches=132&amount=16").await?;
    browser
        .until(&format!("{}?.startsWith('K3')", words_of(".answer .row")))
        .await?;
    let empty = browser.run("return empty").await?;
    ensure!(empty == json!([]), "the page was seen with {empty} in its first field");
    Ok(())
}
