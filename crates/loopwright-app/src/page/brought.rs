//! A project that a link or a file brings, looked at before anything of it is kept. Keeping it makes a project of its own,
//! so that nothing is ever written over. One that cannot be read gets a sentence, and changes nothing. Of one that a later
//! version made, what this one understands is shown, and what it does not is counted and named before it can be kept.

use super::project::{named_facts, own_named};
use super::understood::understood;
use crate::desk::Desk;
use crate::part::plain::{button, element, link, list, text, text_element};
use crate::project;
use crate::route::{self, Route};
use crate::tool;
use crate::words::{brought as words, page};
use loopwright_project::file::{FileError, MadeBy, Reading};
use loopwright_project::{OwnCount, Project, Typed, own_counts};
use std::cell::RefCell;
use yew::prelude::*;

/// In the place of a link: the file that was opened last. A link begins with the digit of its version.
const FILE: &str = "file";
/// The most that are listed of anything: who brings more can look at it once it is kept.
const LISTED: usize = 100;

thread_local! {
    /// The file that was opened last in this visit. It is too long for an address.
    static OPENED: RefCell<File> = const { RefCell::new(File::Closed) };
}

/// A file, as far as it was opened.
#[derive(Clone, Debug, PartialEq)]
pub enum File {
    /// None, or none in this visit.
    Closed,
    /// The browser could not read it.
    Unreadable,
    /// What it holds, or why it is no project.
    Read(Result<Reading, FileError>),
}

/// Goes to the page that shows a file.
pub fn open_file(file: File) {
    OPENED.set(file);
    route::go(&Route::Brought(FILE.into()));
}

/// The page of a project that is brought.
pub fn brought(desk: &Desk, brought: &str) -> Html {
    html! { <Brought key={brought} desk={desk.clone()} brought={brought.to_owned()} /> }
}

#[derive(Properties, PartialEq)]
struct Props {
    desk: Desk,
    brought: String,
}

#[component]
fn Brought(props: &Props) -> Html {
    let read = use_memo(props.brought.clone(), |brought| read(brought));
    let content = match &*read {
        Ok(reading) => holds(&props.desk, reading),
        Err(sentence) => list(vec![
            text_element("h1", "", words::NOT_OPENED),
            text_element("p", "refused", sentence.clone()),
            text_element("p", "quiet", words::NOTHING_CHANGED),
            link(route::print(&Route::Home), vec![text(page::HOME.into())]),
        ]),
    };
    element("article", "brought", vec![content])
}

/// What is brought, or the sentence that says why it is no project.
fn read(brought: &str) -> Result<Reading, String> {
    let reading = match brought {
        FILE => match OPENED.with_borrow(File::clone) {
            File::Closed => Err(words::NO_FILE.to_owned()),
            File::Unreadable => Err(words::UNREADABLE.to_owned()),
            File::Read(read) => read.map_err(|why| words::no_file(&why)),
        },
        link => loopwright_project::link::read(link).map_err(|why| words::no_link(&why)),
    };
    reading.map(understood)
}

fn holds(desk: &Desk, reading: &Reading) -> Html {
    let project = &reading.project;
    let is_later = reading.made_by == MadeBy::LaterVersion;
    let name = match project.name.trim() {
        "" => words::UNNAMED,
        name => name,
    };
    let mut content = vec![
        text_element("p", "quiet", words::TITLE),
        text_element("h1", "", name.to_owned()),
    ];
    if is_later {
        content.push(text_element("p", "later", words::LATER));
    }
    content.extend([
        text_element("p", "", words::holds(number_of_facts(project), project.steps.len())),
        facts(project),
        steps(project),
        drafts(project),
    ]);
    let is_empty = project.facts.is_empty() && project.steps.is_empty() && project.drafts.is_empty();
    if is_empty {
        content.push(text_element("p", "", empty(is_later)));
    }
    content.push(left_out(reading));
    content.push(text_element("p", "quiet", words::NOT_YET));
    content.push(ways(desk, reading, is_empty));
    list(content)
}

/// What is said where there is nothing but a name.
const fn empty(is_later: bool) -> &'static str {
    if is_later { words::EMPTY_LATER } else { words::EMPTY }
}

/// What would be left out, counted and named.
fn left_out(reading: &Reading) -> Html {
    let passed_over = &reading.passed_over;
    if passed_over.is_empty() {
        return Html::default();
    }
    let places = listed(passed_over.iter().map(ToString::to_string));
    text_element("p", "left-out", words::left_out(passed_over.len(), &places.join(", ")))
}

/// Two ways, and nothing else is pressed here.
fn ways(desk: &Desk, reading: &Reading, is_empty: bool) -> Html {
    let keep = {
        let (desk, project) = (desk.clone(), reading.project.clone());
        move |_| {
            project::bringing::bring_in(&desk, &project);
            route::replace(&Route::Project);
        }
    };
    let leave = |_| route::replace(&Route::Home);
    let keep = match reading.made_by {
        MadeBy::ThisVersion => button(words::KEEP.into(), Callback::from(keep)),
        // Of a later version's project there may be nothing that could be kept.
        MadeBy::LaterVersion if is_empty => Html::default(),
        MadeBy::LaterVersion => button(words::KEEP_SHOWN.into(), Callback::from(keep)),
    };
    element(
        "div",
        "line",
        vec![keep, button(words::LEAVE.into(), Callback::from(leave))],
    )
}

fn facts(project: &Project) -> Html {
    let others = project.facts.iter().filter(|(key, _)| OwnCount::of_key(key).is_none());
    let mut facts: Vec<String> = others.map(|(key, typed)| fact(key, typed)).collect();
    let own = own_named(&project.facts).into_iter();
    facts.extend(own.map(|(name, number)| words::fact(&name, &number)));
    under(words::FACTS, "ul", listed(facts.into_iter()))
}

/// How many facts there are: a count of hers and its name are one.
fn number_of_facts(project: &Project) -> usize {
    let others = project.facts.keys().filter(|key| OwnCount::of_key(key).is_none());
    others.count() + own_counts(&project.facts).len()
}

/// A fact as it stands in a sentence; one that this version does not know as it was typed.
fn fact(key: &str, typed: &Typed) -> String {
    let unit = typed.unit.as_deref().unwrap_or_default();
    match named_facts().find(|(_, known, _)| *known == key) {
        Some((label, _, print)) => words::fact(label, &print(typed)),
        None => words::fact(&key.replace('_', " "), &[&*typed.text, unit].join(" ")),
    }
}

fn steps(project: &Project) -> Html {
    let steps = project.steps.iter().map(|step| {
        let name = [step.name.as_str(), title(&step.tool)]
            .into_iter()
            .find(|name| !name.is_empty());
        words::step(name.unwrap_or_default(), &step.section)
    });
    under(words::STEPS, "ol", listed(steps))
}

fn drafts(project: &Project) -> Html {
    let drafts = project.drafts.keys().map(|tool| title(tool).to_owned());
    under(words::DRAFTS, "ul", listed(drafts))
}

/// What a tool is called; its id where this version has none of it.
fn title(id: &str) -> &str {
    tool::find(id).map_or(id, |tool| tool.title.name)
}

/// The first of many, and how many more there are.
fn listed(all: impl ExactSizeIterator<Item = String>) -> Vec<String> {
    let more = all.len().saturating_sub(LISTED);
    let mut listed: Vec<String> = all.take(LISTED).collect();
    if more > 0 {
        listed.push(words::more(more));
    }
    listed
}

fn under(title: &'static str, tag: &'static str, sentences: Vec<String>) -> Html {
    if sentences.is_empty() {
        return Html::default();
    }
    list(vec![
        text_element("h2", "", title),
        crate::part::plain::items(tag, sentences),
    ])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright_project::{Draft, file, link};

    fn yoke() -> Project {
        let mut project = Project {
            name: "Yoke".into(),
            ..Project::default()
        };
        project.drafts.insert("tail".into(), Draft::default());
        project
    }

    #[test]
    fn a_link_is_read_and_a_hostile_one_gets_its_sentence() {
        let reading = read(&link::print(&yoke())).unwrap();
        assert_eq!(reading.project, yoke());
        assert_eq!(read("2AAAA").unwrap_err(), words::no_link(&FileError::Newer));
        assert_eq!(read("").unwrap_err(), words::no_link(&FileError::NotOurs));
    }

    #[test]
    fn a_file_is_opened_once_it_was_chosen() {
        assert_eq!(read(FILE), Err(words::NO_FILE.to_owned()));
        OPENED.set(File::Read(file::read(&file::print(&yoke()))));
        assert_eq!(read(FILE).unwrap().project, yoke());
    }

    #[test]
    fn of_many_the_first_are_listed_and_the_rest_counted() {
        let many = listed((0..LISTED + 5).map(|number| number.to_string()));
        assert_eq!(many.len(), LISTED + 1);
        assert_eq!(many.last().unwrap(), "and 5 more");
    }
}
