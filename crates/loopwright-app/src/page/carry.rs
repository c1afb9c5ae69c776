//! Taking a project along: as a file, as a link, and as a picture of the link; and opening a file that somebody else made.

use super::brought;
use super::scan::Scan;
use crate::backup::{self, BackupError};
use crate::desk::Desk;
use crate::desk::hers::handed_on;
use crate::part::plain::{button, element, list, status, text, text_element};
use crate::part::{ByHand, Copied, Label, copied};
use crate::route::{self, Route};
use crate::words::{carry as words, page};
use loopwright_project::{Project, file, link};
use wasm_bindgen_futures::spawn_local;
use web_sys::{File, HtmlInputElement};
use yew::prelude::*;

/// The id of the field in which a file is chosen.
const FILE: &str = "project-file";
/// Letters of a project's name that stand in the name of its file.
const NAMED: usize = 40;

/// The ways to take a project along.
pub fn carry(desk: &Desk, project: &Project) -> Html {
    html! { <Carry desk={desk.clone()} project={handed_on(project.clone())} /> }
}

#[derive(Properties, PartialEq)]
struct Props {
    desk: Desk,
    project: Project,
}

/// What came of the last tap.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Outcome {
    Nothing,
    Saved(String),
    NotSaved,
    Copied,
    /// The browser does not copy: the link, to be copied by hand.
    NotCopied(String),
}

#[component]
fn Carry(props: &Props) -> Html {
    let outcome = use_state_eq(|| Outcome::Nothing);
    let address = use_memo(props.project.clone(), address);
    let save = {
        let (set, project) = (outcome.setter(), props.project.clone());
        move |_| set.set(save(&project))
    };
    let ways = vec![
        button(words::SAVE.into(), Callback::from(save)),
        copying(&address, &outcome.setter()),
    ];
    let content = vec![
        text_element("h2", "", words::TITLE),
        text_element("p", "", words::TEXT),
        element("div", "line", ways),
        status(said(&outcome)),
        scanning(&address),
        opening(),
    ];
    element("section", "carry", content)
}

/// The link to a project, unless it is too long to be opened.
fn address(project: &Project) -> Option<String> {
    link::fits(project).then(|| route::link(&Route::Brought(link::print(project))))
}

fn save(project: &Project) -> Outcome {
    let name = file_name(&project.name);
    match backup::download(&file::print(project), &name) {
        Ok(()) => Outcome::Saved(name),
        Err(_) => Outcome::NotSaved,
    }
}

/// The button that copies the link, where there is one.
fn copying(address: &Option<String>, outcome: &UseStateSetter<Outcome>) -> Html {
    let Some(address) = address.clone() else {
        return Html::default();
    };
    let set = outcome.clone();
    let copy = move |_| {
        let (set, address) = (set.clone(), address.clone());
        spawn_local(async move {
            set.set(match copied(&address).await {
                Copied::Taken => Outcome::Copied,
                Copied::Refused | Copied::NoAnswer => Outcome::NotCopied(address),
            });
        });
    };
    button(words::COPY.into(), Callback::from(copy))
}

fn said(outcome: &Outcome) -> Html {
    match outcome {
        Outcome::Nothing => Html::default(),
        Outcome::Saved(name) => text(words::saved(name).into()),
        Outcome::NotSaved => text(words::NOT_SAVED.into()),
        Outcome::Copied => text(page::COPIED.into()),
        Outcome::NotCopied(link) => html! { <ByHand link={link.clone()} /> },
    }
}

fn scanning(address: &Option<String>) -> Html {
    match address.clone() {
        Some(link) => html! {
            <Scan {link} picture={words::PROJECT_PICTURE} about={words::SCAN_PROJECT} too_long={words::PROJECT_TOO_LONG} />
        },
        None => text_element("p", "quiet", words::NO_LINK),
    }
}

fn opening() -> Html {
    let onchange = Callback::from(|event: Event| {
        let input: HtmlInputElement = event.target_unchecked_into();
        let Some(file) = input.files().and_then(|files| files.get(0)) else {
            return;
        };
        spawn_local(async move {
            brought::open_file(read(&file).await);
            // The same file chosen again is a new choice.
            input.set_value("");
        });
    });
    list(vec![
        element(
            "div",
            "line",
            vec![
                Label::Shown(words::OPEN).draw(FILE),
                html! { <input id={FILE} type="file" accept="application/json,.json" {onchange} /> },
            ],
        ),
        text_element("p", "quiet", words::OPEN_TEXT),
    ])
}

async fn read(chosen: &File) -> brought::File {
    match backup::text_of(chosen, file::MOST_BYTES as f64).await {
        Ok(text) => brought::File::Read(file::read(&text)),
        Err(BackupError::TooLong) => brought::File::Read(Err(file::FileError::TooLong)),
        Err(BackupError::NotMade | BackupError::Unreadable | BackupError::NotOurs | BackupError::Newer) => {
            brought::File::Unreadable
        }
    }
}

/// What a project's file is called: letters and digits of its name, which every disk takes.
fn file_name(name: &str) -> String {
    let words = name.split(|letter: char| !letter.is_alphanumeric());
    let words: Vec<String> = words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect();
    let short: String = words.join("-").chars().take(NAMED).collect();
    let short = short.trim_end_matches('-');
    let short = if short.is_empty() { "project" } else { short };
    format!("loopwright-{short}.json")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_called_by_its_project() {
        let rows = [
            ("Sunday pullover", "loopwright-sunday-pullover.json"),
            ("../../etc/passwd", "loopwright-etc-passwd.json"),
            ("Pull Ö, 2. Versuch", "loopwright-pull-ö-2-versuch.json"),
            ("", "loopwright-project.json"),
            ("\u{202e}\0", "loopwright-project.json"),
        ];
        for (name, file) in rows {
            assert_eq!(file_name(name), file);
        }
        assert!(file_name(&"long ".repeat(1_000)).chars().count() < 60);
    }
}
