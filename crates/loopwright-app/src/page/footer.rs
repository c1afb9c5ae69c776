//! The foot of every page: what may be said about the storage, and beside a trouble what can be done about it. Whatever the
//! trouble is, what is on the page can be saved as a file.

use super::about::refused;
use super::storage::keeping;
use crate::backup;
use crate::desk::{Desk, Keeping};
use crate::one_file;
use crate::part::plain::{button, element, link, status, text, text_element};
use crate::route::{self, Route};
use crate::store::StoreError;
use crate::words::{carry, page as words};
use gloo_utils::window;
use yew::prelude::*;

/// The foot of the page.
pub fn footer(desk: &Desk) -> Html {
    // What may be said is no part of what makes desks differ, and is handed over beside the desk.
    let on_page_only = desk.has_unkept();
    html! { <Footer desk={desk.clone()} keeping={desk.status().keeping} is_empty={is_empty(desk)} {on_page_only} /> }
}

fn is_empty(desk: &Desk) -> bool {
    desk.newest().iter().next().is_none()
}

#[derive(Properties, PartialEq)]
struct Props {
    desk: Desk,
    keeping: Keeping,
    is_empty: bool,
    /// Whether the text of a pattern is on this page only.
    on_page_only: bool,
}

#[component]
fn Footer(props: &Props) -> Html {
    let outcome = use_state_eq(String::new);
    let said = match props.keeping {
        Keeping::Kept if props.on_page_only => words::KEPT_BUT_PATTERN.to_owned(),
        ref kept => keeping(kept),
    };
    let mut content = vec![status(text(said.into()))];
    content.extend(ways(props, &outcome.setter()));
    if one_file::is_opened() {
        let about = route::print(&Route::About);
        content.push(link(about, vec![text(words::BRING_BACK.into())]));
    }
    // Once nothing can be lost, what came of a tap before is of no interest any more.
    if !outcome.is_empty() && (one_file::is_opened() || may_be_lost(&props.keeping)) {
        content.push(text_element("p", "saved", (*outcome).clone()));
    }
    element("footer", "keeping", content)
}

/// What can be done. A page that is one file may be opened elsewhere next time, so there a copy is always offered.
fn ways(props: &Props, said: &UseStateSetter<String>) -> Vec<Html> {
    let Props {
        desk,
        keeping,
        is_empty,
        on_page_only: _,
    } = props;
    let save = |label| saving(desk, said, label);
    let mut ways = Vec::new();
    if one_file::is_opened() {
        ways.push(save(words::COPY_BEFORE_CLOSING));
    } else if may_be_lost(keeping) && !is_empty {
        ways.push(save(words::SAVE_COPY));
    }
    match keeping {
        Keeping::Superseded { .. } | Keeping::MemoryOnly(StoreError::Newer) => ways.push(reloading()),
        Keeping::Cleared(_) if !is_empty => ways.push(keeping_anew(desk)),
        Keeping::Cleared(_)
        | Keeping::Kept
        | Keeping::Writing
        | Keeping::KeptInDoubt
        | Keeping::Failed(_)
        | Keeping::MemoryOnly(_) => (),
    }
    ways
}

/// Whether what is on the page may be lost when it is closed. What a guest has is to be forgotten.
const fn may_be_lost(keeping: &Keeping) -> bool {
    match keeping {
        Keeping::Kept
        | Keeping::Writing
        | Keeping::Superseded { is_all_kept: true }
        | Keeping::MemoryOnly(StoreError::Guest) => false,
        Keeping::KeptInDoubt
        | Keeping::Superseded { is_all_kept: false }
        | Keeping::Cleared(_)
        | Keeping::Failed(_)
        | Keeping::MemoryOnly(_) => true,
    }
}

/// The button that saves a copy of all that is on the page. What came of it stands beside it.
fn saving(desk: &Desk, said: &UseStateSetter<String>, label: &'static str) -> Html {
    let (desk, said) = (desk.clone(), said.clone());
    let save = move |_| {
        said.set(match backup::save_copy(&desk) {
            Ok(()) => carry::saved(backup::FILE_NAME),
            Err(why) => refused(&why).into(),
        });
    };
    button(label.into(), Callback::from(save))
}

fn keeping_anew(desk: &Desk) -> Html {
    let desk = desk.clone();
    button(words::KEEP_ANEW.into(), Callback::from(move |_| desk.keep_anew()))
}

fn reloading() -> Html {
    let reload = |_| {
        // A browser that does not reload is reloaded by hand.
        let _ = window().location().reload();
    };
    button(words::RELOAD.into(), Callback::from(reload))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_copy_is_offered_wherever_something_may_be_lost() {
        let lost = [
            Keeping::KeptInDoubt,
            Keeping::Cleared(None),
            Keeping::Failed(StoreError::Full),
            Keeping::MemoryOnly(StoreError::Denied),
            Keeping::Superseded { is_all_kept: false },
        ];
        assert!(lost.iter().all(may_be_lost));
        let kept = [Keeping::Kept, Keeping::MemoryOnly(StoreError::Guest)];
        assert!(!kept.iter().any(may_be_lost));
    }
}
