//! A text file that is opened, and the marked text that is copied. Both happen in the browser, and nothing is sent.

use crate::part::plain::{button, element, list, status, text};
use crate::part::{Copied, Label, Sheet, copied};
use crate::store::Typed;
use crate::words::sizes_in_text as words;
use loopwright::sizes_in_text::Name;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{File, HtmlInputElement};
use yew::prelude::*;

/// More than any pattern has.
const MOST_BYTES: f64 = 1_000_000.0;
/// The id of the field in which a file is chosen.
const FILE: &str = "pattern-file";

/// The field in which a text file is chosen; none where the text is locked.
pub fn opening(sheet: &Sheet) -> Html {
    if sheet.locks(Name::PatternText.into()) {
        return Html::default();
    }
    html! { <Opening sheet={sheet.clone()} /> }
}

#[derive(Properties, PartialEq)]
struct OpeningProps {
    sheet: Sheet,
}

#[component]
fn Opening(props: &OpeningProps) -> Html {
    let trouble = use_state_eq(|| "");
    let (sheet, set) = (props.sheet.clone(), trouble.setter());
    let onchange = move |event: Event| {
        let input: HtmlInputElement = event.target_unchecked_into();
        let file = input.files().and_then(|files| files.get(0));
        let Some(file) = file else { return };
        // The same file can be chosen once more.
        input.set_value("");
        let (sheet, set) = (sheet.clone(), set.clone());
        spawn_local(async move {
            match read(&file).await {
                Ok(text) => {
                    set.set("");
                    let text = text.replace("\r\n", "\n");
                    sheet
                        .desk
                        .write(sheet.id, Name::PatternText.key(), Some(Typed::plain(text)));
                }
                Err(why) => set.set(why),
            }
        });
    };
    let input = html! { <input type="file" id={FILE} accept=".txt,.md,text/plain" {onchange} /> };
    list(vec![
        element(
            "div",
            "quantity",
            vec![Label::Shown(words::OPEN_FILE).draw(FILE), input],
        ),
        status(text((*trouble).into())),
    ])
}

/// The text of a file; or why it has none for this page.
async fn read(file: &File) -> Result<String, &'static str> {
    if file.size() > MOST_BYTES {
        return Err(words::FILE_TOO_LONG);
    }
    let text = JsFuture::from(file.text()).await.ok();
    text.and_then(|text| text.as_string()).ok_or(words::FILE_UNREADABLE)
}

/// The button that copies her size as plain text.
pub fn copying(plain: String) -> Html {
    html! { <Copying {plain} /> }
}

#[derive(Properties, PartialEq)]
struct CopyingProps {
    plain: String,
}

#[component]
fn Copying(props: &CopyingProps) -> Html {
    let outcome = use_state_eq(|| "");
    let (plain, set) = (props.plain.clone(), outcome.setter());
    let copy = move |_| {
        let (plain, set) = (plain.clone(), set.clone());
        spawn_local(async move {
            set.set(match copied(&plain).await {
                Copied::Taken => words::COPIED,
                Copied::Refused | Copied::NoAnswer => words::NOT_COPIED,
            });
        });
    };
    let button = button(words::COPY.into(), Callback::from(copy));
    element("div", "line copying", vec![button, status(text((*outcome).into()))])
}
