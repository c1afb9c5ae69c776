//! The shell around every page: the way home, the page itself, and what may be said about the storage.

use crate::desk::{Announcement, Desk, Keeping, use_desk};
use crate::form::SETTINGS;
use crate::offline::{self, Offline, use_offline};
use crate::one_file;
use crate::page::embed::{self, Embedded};
use crate::page::knit::{Knit, Which};
use crate::page::{self, light, light::Light};
use crate::part::plain::{button, element, element_with, list, text, text_element};
use crate::route::{self, Route, use_route};
use crate::tool;
use crate::words::{brought, knit as knit_words, links, page as words, project};
use gloo_utils::{document, document_element};
use loopwright::choice::{Choice, Key};
use yew::prelude::*;

/// The whole app.
#[component]
pub fn App() -> Html {
    let (desk, route, offline) = (use_desk(&None), use_route(), use_offline());
    let (desk, left_out) = use_link(desk, &route);
    one_file::use_question_before_closing(desk.as_ref());
    page::use_folds_open_on_paper();
    use_effect_with((light(&desk, &route), title(&route)), |(light, title)| {
        set_light(*light);
        document().set_title(title);
    });
    match (desk, &route) {
        (_, Route::Embed { id, fields, options }) => {
            html! { <Embedded id={id.clone()} fields={fields.clone()} options={options.clone()} /> }
        }
        (None, _) => Html::default(),
        (Some(desk), _) => shell(&desk, &route, offline, left_out),
    }
}

/// Light or dusk: inside another page as that says, else as is chosen.
fn light(desk: &Option<Desk>, route: &Route) -> Light {
    if let Route::Embed { options, .. } = route {
        return embed::light(options);
    }
    let chosen = desk.as_ref().and_then(|desk| desk.text(SETTINGS, light::SETTING));
    let chosen = chosen.and_then(|typed| Light::from_key(&typed.text));
    chosen.unwrap_or(Light::START)
}

fn shell(desk: &Desk, route: &Route, offline: Offline, left_out: Option<String>) -> Html {
    let skip = [("class", "skip"), ("href", "#page")];
    let mark = [("class", "mark"), ("href", &route::print(&Route::Home))];
    let place = [("id", "page"), ("tabindex", "-1")];
    let ways = vec![
        element_with("a", &mark, vec![text(words::NAME.into())]),
        nav_link(route, &Route::Home, words::HOME),
        nav_link(route, &Route::About, words::ABOUT),
        element(
            "span",
            "open",
            vec![
                nav_link(route, &Route::Project, project::TITLE),
                page::project::choosing(desk),
            ],
        ),
    ];
    list(vec![
        element_with("a", &skip, vec![text(words::SKIP.into())]),
        element("header", "top", vec![element("nav", "", ways)]),
        update(desk, offline),
        element_with("main", &place, vec![said_of_link(left_out), page(desk, route, offline)]),
        page::footer(desk),
    ])
}

/// What of a link was left out stands above the tool that it opened, for as long as that is open.
fn said_of_link(left_out: Option<String>) -> Html {
    let attributes = [("class", "left-out"), ("role", "status")];
    left_out.map_or_else(Html::default, |sentence| {
        element_with("p", &attributes, vec![text(sentence.into())])
    })
}

fn nav_link(here: &Route, there: &Route, name: &'static str) -> Html {
    let attributes = [("href", &*route::print(there)), ("aria-current", "page")];
    let shown = if here == there {
        &attributes[..]
    } else {
        &attributes[..1]
    };
    element_with("a", shown, vec![text(name.into())])
}

fn page(desk: &Desk, route: &Route, offline: Offline) -> Html {
    match route {
        Route::Home => page::home(desk),
        Route::About => page::about(desk, offline.ready),
        Route::Links => page::links(),
        Route::Project => page::project::project(desk),
        Route::Step(step) => page::project::step(desk, *step),
        Route::Knit(tool) => knit(desk, Which::Tool(tool.clone())),
        Route::KnitStep(step) => knit(desk, Which::Step(*step)),
        Route::Brought(project) => page::brought(desk, project),
        Route::Gallery => page::gallery(),
        Route::GalleryState { tool, state } => page::gallery_state(tool, state),
        Route::Tool { id, .. } | Route::Embed { id, .. } => list(vec![
            tool_view(desk, id),
            page::scan(desk, id),
            page::panel::panel(desk, id),
        ]),
        Route::Unknown(_) => lost(),
    }
}

fn knit(desk: &Desk, which: Which) -> Html {
    let is_kept = desk.status().keeping == Keeping::Kept;
    html! { <Knit desk={desk.clone()} {which} {is_kept} /> }
}

fn tool_view(desk: &Desk, id: &str) -> Html {
    tool::find(id).map_or_else(lost, |tool| tool.page(desk))
}

fn lost() -> Html {
    text_element("p", "", words::LOST)
}

/// A new version waits and asks.
fn update(desk: &Desk, offline: Offline) -> Html {
    if !offline.update_waiting {
        return Html::default();
    }
    let desk = desk.clone();
    let accept = button(
        words::UPDATE_NOW.into(),
        Callback::from(move |_| offline::accept(&desk)),
    );
    let attributes = [("class", "update"), ("role", "status")];
    element_with("aside", &attributes, vec![text_element("p", "", words::UPDATE), accept])
}

/// A link that was laid on the desk.
#[derive(Default)]
struct Laid {
    /// The page that it is.
    route: Option<Route>,
    /// What is said of it as long as that page is open.
    left_out: Option<String>,
}

/// The desk with what a link brings on it, and what was left out of that. It is laid there once, and before the page is
/// drawn: no empty form is seen first, and the page is not drawn twice.
#[hook]
fn use_link(desk: Option<Desk>, route: &Route) -> (Option<Desk>, Option<String>) {
    let laid = use_mut_ref(Laid::default);
    let Some(desk) = desk else {
        return (None, None);
    };
    if laid.borrow().route.as_ref() == Some(route) {
        return (Some(desk), laid.borrow().left_out.clone());
    }
    let now = lay(&desk, route);
    let left_out = now.left_out.clone();
    *laid.borrow_mut() = now;
    (Some(desk.as_it_lies()), left_out)
}

fn lay(desk: &Desk, route: &Route) -> Laid {
    // What was said about a tap belongs to the page it was said on.
    desk.announce(Announcement::Nothing);
    let as_it_is = Laid {
        route: Some(route.clone()),
        left_out: None,
    };
    let Route::Tool { id, fields } = route else {
        return as_it_is;
    };
    let Some(tool) = tool::find(id).filter(|_| !fields.is_empty()) else {
        return as_it_is;
    };
    let taken = tool.take(fields);
    // A link of which nothing is taken takes nothing away either.
    if !taken.fields.is_empty() {
        tool.open_link(desk, taken.fields);
    }
    // A reload must not lay the link over what is typed from here on.
    let without_fields = Route::Tool {
        id: id.clone(),
        fields: Vec::new(),
    };
    route::replace(&without_fields);
    Laid {
        route: Some(without_fields),
        left_out: taken.left_out.of_a_link(),
    }
}

/// Light, dusk, or as the device is set.
fn set_light(light: Light) {
    let root = document_element();
    // An attribute that cannot be set leaves the device's own light, which is no harm.
    let _ = match light {
        Light::Day | Light::Dusk => root.set_attribute("data-light", light.key()),
        Light::System => root.remove_attribute("data-light"),
    };
}

/// The title of the window follows the page.
fn title(route: &Route) -> String {
    let title = match route {
        Route::Tool { id, .. } | Route::Embed { id, .. } => tool::find(id).map(|tool| tool.title.name),
        Route::About => Some(words::ABOUT),
        Route::Links => Some(links::TITLE),
        Route::Project | Route::Step(_) => Some(project::TITLE),
        Route::Knit(_) | Route::KnitStep(_) => Some(knit_words::TITLE),
        Route::Brought(_) => Some(brought::TITLE),
        _ => None,
    };
    title.map_or_else(|| words::NAME.into(), |title| format!("{title} · {}", words::NAME))
}
