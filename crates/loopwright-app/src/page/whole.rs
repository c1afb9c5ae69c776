//! Saving the whole workbox as one file, and what came of it.

use crate::backup::BackupError;
use crate::one_file;
use crate::part::plain::{button, list, status, text};
use crate::words::about as words;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

/// How far it is.
#[derive(Clone, PartialEq)]
enum Stage {
    /// Nobody asked.
    Idle,
    /// The file is being put together.
    Gathering,
    /// It was handed over, or could not be made.
    Done(Result<String, BackupError>),
}

/// The button, and below it the outcome.
#[component]
pub fn WholeWorkbox() -> Html {
    let stage = use_state_eq(|| Stage::Idle);
    let save = {
        let set = stage.setter();
        Callback::from(move |_| {
            let set = set.clone();
            set.set(Stage::Gathering);
            spawn_local(async move { set.set(Stage::Done(one_file::save().await)) });
        })
    };
    let outcome = match &*stage {
        Stage::Idle => String::new(),
        Stage::Gathering => words::GATHERING.into(),
        Stage::Done(Ok(name)) => words::whole_saved(name),
        Stage::Done(Err(_)) if one_file::is_opened() => words::WHOLE_NOT_MADE_IN_FILE.into(),
        Stage::Done(Err(_)) => words::WHOLE_NOT_MADE.into(),
    };
    list(vec![
        button(words::SAVE_WHOLE.into(), save),
        status(text(outcome.into())),
    ])
}
