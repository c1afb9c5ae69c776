//! Loopwright in the browser: mounts the app where `index.html` has its place for it.

mod app;
mod backup;
mod desk;
mod drawing;
mod form;
mod frame;
mod knit;
#[cfg(test)]
mod made_up;
mod offline;
mod one_file;
mod page;
mod part;
mod project;
mod route;
mod store;
mod tool;
mod words;

fn main() {
    // Without its place in the page the app takes the whole of it.
    match gloo_utils::document().get_element_by_id("app") {
        Some(place) => yew::Renderer::<app::App>::with_root(place).render(),
        None => yew::Renderer::<app::App>::new().render(),
    };
}
