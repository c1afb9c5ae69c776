//! A tool inside another page: the question, the answer and a way to the tool itself, without the shell. It stands on a desk
//! of its own that keeps nothing, wherever it is opened. What the address asks of it and cannot be had is said below it.

use super::channel::use_channel;
use super::light::Light;
use crate::desk::{Desk, use_desk};
use crate::form::{Fields, Measures, Place, SETTINGS, Settings};
use crate::frame::{self, Fault, NoAccent, Options, Units};
use crate::part::plain::{element, list, text_element};
use crate::part::{Frame, InFrame};
use crate::route::Pairs;
use crate::store::{self, Typed};
use crate::tool::{self, Entry};
use crate::words::{frame as words, page};
use gloo_utils::{document, document_element};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{FocusOptions, HtmlElement};
use yew::prelude::*;

/// What the address of a framed tool says.
#[derive(Clone, Debug, Properties, PartialEq)]
pub struct Asked {
    /// The tool's id.
    pub id: String,
    /// What is filled in.
    pub fields: Pairs,
    /// How it is shown.
    pub options: Pairs,
}

/// A tool inside another page.
#[component]
pub fn Embedded(asked: &Asked) -> Html {
    let desk = use_desk(&Some(Vec::new()));
    let Understood { options, preset, told } = use_memo(asked.clone(), understood).as_ref().clone();
    use_accent(&options);
    use_cursor(asked, &options, desk.is_some());
    let desk = use_preset(desk, asked, &options, &preset);
    use_channel(&desk, &asked.id);
    let Some(desk) = desk else {
        return Html::default();
    };
    let Some(tool) = tool::find(&asked.id) else {
        return element("main", "embedded", vec![text_element("p", "", page::LOST)]);
    };
    let frame = Rc::new(Frame { options, preset });
    html! {
        <main class="embedded">
            <ContextProvider<InFrame> context={InFrame}>{ tool.framed(&desk, frame) }</ContextProvider<InFrame>>
            { list(told.into_iter().map(|sentence| text_element("p", "quiet", sentence)).collect()) }
        </main>
    }
}

/// What an address means, and what of it is said to mean nothing.
#[derive(Clone, Debug, PartialEq)]
struct Understood {
    options: Options,
    preset: store::Fields,
    told: Vec<String>,
}

fn understood(asked: &Asked) -> Understood {
    let (options, faults) = options(asked);
    let taken = tool::find(&asked.id)
        .map(|tool| tool.take(&asked.fields))
        .unwrap_or_default();
    let told = told(&faults).into_iter().chain(taken.left_out.of_a_link());
    Understood {
        options,
        preset: taken.fields,
        told: told.collect(),
    }
}

/// How light a frame is, as the page has it.
pub fn light(options: &Pairs) -> Light {
    match frame::parse(options).0.light {
        frame::Light::Host => Light::System,
        frame::Light::Day => Light::Day,
        frame::Light::Dusk => Light::Dusk,
    }
}

/// What can be done of what is asked, and what cannot: fields are only locked where there are such fields, and something
/// stands in them.
pub fn options(asked: &Asked) -> (Options, Vec<Fault>) {
    let (mut options, mut faults) = frame::parse(&asked.options);
    let Some(tool) = tool::find(&asked.id) else {
        return (options, faults);
    };
    let fields = Fields::new(tool.fields, tool.take(&asked.fields).fields, settings(&options));
    options.locked.retain(|key| match lockable(&fields, key) {
        Ok(()) => true,
        Err(fault) => {
            faults.push(fault);
            false
        }
    });
    if let Some(key) = options.cursor.take_if(|key| fields.stored_as(key).is_none()) {
        faults.push(Fault::NoField(key));
    }
    (options, faults)
}

fn lockable(fields: &Fields, key: &str) -> Result<(), Fault> {
    let found = fields.stored_as(key).filter(|(_, field)| field.place != Place::Answer);
    let (fields, field) = found.ok_or_else(|| Fault::NoField(key.to_owned()))?;
    match fields.standing(field) {
        Some(_) => Ok(()),
        None => Err(Fault::LockedEmpty(field.label_in(&fields))),
    }
}

/// The units as the settings of the page have them.
fn settings(options: &Options) -> Settings {
    Settings::new(measures(options).into_iter().collect())
}

fn measures(options: &Options) -> Option<(String, Typed)> {
    let measures = match options.units? {
        Units::Centimetres => Measures::Metric,
        Units::Inches => Measures::Inches,
    };
    Some((Measures::SETTING.to_owned(), Typed::plain(measures.key())))
}

/// The desk with what the address fills in on it. That is laid there once for each address, and before the page is drawn.
#[hook]
fn use_preset(desk: Option<Desk>, asked: &Asked, options: &Options, preset: &store::Fields) -> Option<Desk> {
    let laid = use_mut_ref(|| None::<Asked>);
    let desk = desk?;
    if laid.borrow().as_ref() == Some(asked) {
        return Some(desk);
    }
    *laid.borrow_mut() = Some(asked.clone());
    if let Some(tool) = tool::find(&asked.id) {
        lay(&desk, tool, preset, options);
    }
    Some(desk.as_it_lies())
}

fn lay(desk: &Desk, tool: &Entry, preset: &store::Fields, options: &Options) {
    desk.open_link(tool.id, preset);
    let chosen = measures(options).map(|(_, typed)| typed);
    desk.write(SETTINGS, Measures::SETTING, chosen);
}

/// The accent colour, in the lights in which it can be read. It is a value of a property of the styles and never a piece of
/// one: digits only.
#[hook]
fn use_accent(options: &Options) {
    use_effect_with(options.accent, |accent| {
        set_colour("--accent-day", accent.filter(|accent| accent.by_day()));
        set_colour("--accent-dusk", accent.filter(|accent| accent.at_dusk()));
        || {
            set_colour("--accent-day", None);
            set_colour("--accent-dusk", None);
        }
    });
}

fn set_colour(property: &str, accent: Option<frame::Accent>) {
    let Some(root) = document_element().dyn_ref::<HtmlElement>().map(HtmlElement::style) else {
        return;
    };
    // A browser that does not take it shows the colour of the page.
    let _ = match accent {
        Some(accent) => root.set_property(property, &["#", &accent.print()].concat()),
        None => root.remove_property(property).map(drop),
    };
}

/// Puts the cursor into the field that is asked for, once, and without a jump of the page around. Some browsers let no frame
/// of another site take it.
#[hook]
fn use_cursor(asked: &Asked, options: &Options, is_drawn: bool) {
    let element = options.cursor.as_ref().map(|key| [&asked.id, "-", key].concat());
    use_effect_with((element, is_drawn), |(element, _)| {
        let element = element.as_ref().and_then(|id| document().get_element_by_id(id));
        if let Some(field) = element.and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
            let still = FocusOptions::new();
            still.set_prevent_scroll(true);
            let _ = field.focus_with_options(&still);
        }
    });
}

/// The most sentences about an address: whoever asks for more finds the others once these are mended.
const MOST_TOLD: usize = 5;

/// What cannot be done, each in a sentence; of many the first, and how many more there are.
fn told(faults: &[Fault]) -> Vec<String> {
    let more = faults.len().saturating_sub(MOST_TOLD);
    let mut told: Vec<String> = faults.iter().take(MOST_TOLD).map(sentence).collect();
    told.extend((more > 0).then(|| words::more_faults(more)));
    told
}

/// What cannot be done.
fn sentence(fault: &Fault) -> String {
    match fault {
        Fault::NoOption(name) => words::no_option(name),
        Fault::NoValue(name, value) => words::no_value(&[frame::PREFIX, name.key()].concat(), value),
        Fault::Accent(why) => no_accent(why),
        Fault::NoField(key) => words::no_field(key),
        Fault::LockedEmpty(label) => words::locked_empty(label),
    }
}

/// Why a text is no accent.
pub fn no_accent(why: &NoAccent) -> String {
    match why {
        NoAccent::NoColour(text) => words::no_colour(text),
        NoAccent::Faint(accent, light) => {
            let colour = accent.print();
            match light {
                frame::Light::Day => words::faint_by_day(&colour),
                frame::Light::Dusk => words::faint_at_dusk(&colour),
                frame::Light::Host => words::faint_anywhere(&colour),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route;

    fn asked(query: &str) -> (Options, Vec<Fault>) {
        let route = route::parse(&["#/embed/spacing?", query].concat());
        let route::Route::Embed {
            id,
            fields,
            options: pairs,
        } = route
        else {
            panic!("{query} is no frame's");
        };
        options(&Asked {
            id,
            fields,
            options: pairs,
        })
    }

    #[test]
    fn a_field_is_locked_where_something_stands_in_it() {
        let (options, faults) = asked("stitches=132&frame.locked=stitches,knitting");
        // Working in the round is what it starts with.
        assert_eq!(options.locked, ["stitches", "knitting"]);
        assert_eq!(faults, []);
    }

    #[test]
    fn what_cannot_be_locked_or_have_the_cursor_is_said() {
        let (options, faults) = asked("frame.locked=stitches,needle,order&frame.cursor=s1_rows");
        assert_eq!((options.locked, options.cursor), (Vec::new(), None));
        let no_field = |key: &str| Fault::NoField(key.to_owned());
        let stitches = Fault::LockedEmpty("Stitches on the needle");
        assert_eq!(
            faults,
            [stitches, no_field("needle"), no_field("order"), no_field("s1_rows")]
        );
        for fault in faults {
            assert!(sentence(&fault).ends_with('.'), "{fault:?}");
        }
    }

    #[test]
    fn the_units_are_those_of_the_frame() {
        let (options, _) = asked("frame.units=inches");
        assert_eq!(settings(&options).measures(), Measures::Inches);
        assert_eq!(settings(&Options::default()).measures_chosen(), None);
    }
}
