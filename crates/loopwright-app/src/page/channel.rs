//! What a framed tool says to the page around it. `boot.js` has the channel; the app hands it plain objects of figures and
//! text by one event on the window, and hears that page's questions by another.

use crate::desk::Desk;
use crate::part::{Amount, Figure, Summary};
use crate::route::{self, Pairs};
use crate::store::json::{get, object};
use crate::tool::{self, Reply};
use gloo_events::EventListener;
use gloo_utils::window;
use js_sys::Array;
use loopwright::units::Gauge;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CustomEvent, CustomEventInit, Event};
use yew::prelude::*;

const TELL: &str = "loopwright:tell";
const ASK: &str = "loopwright:ask";

/// Tells the page around this one each new answer of a tool, and answers its questions.
#[hook]
pub fn use_channel(desk: &Option<Desk>, tool: &str) {
    let tool = tool::find(tool).map(|tool| tool.id);
    use_effect_with((desk.clone(), tool), |(desk, tool)| {
        let listener = desk.clone().zip(*tool).map(|(desk, tool)| {
            let first = message(&reply(&desk, tool, Pairs::new()), None);
            // What was asked before is passed on as soon as something is told, so that by then somebody listens.
            let listener = EventListener::new(&window(), ASK, move |event| hear(&desk, tool, event));
            tell(first);
            listener
        });
        move || drop(listener)
    });
}

/// What a tool says to the fields as they stand, with these in the place of some of them.
fn reply(desk: &Desk, tool: &str, instead: Pairs) -> Option<Reply> {
    let tool = tool::find(tool)?;
    Some((tool.reply)(desk, &route::to_fields(&instead)))
}

/// A question has a number, by which the page that asks knows the reply.
fn hear(desk: &Desk, tool: &str, event: &Event) {
    let Some(asked) = event.dyn_ref::<CustomEvent>().map(CustomEvent::detail) else {
        return;
    };
    let Some(number) = get(&asked, "ask") else { return };
    let values = get(&asked, "values").and_then(|values| values.as_string());
    let instead = route::parse_query(&values.unwrap_or_default());
    tell(message(&reply(desk, tool, instead), Some(number)));
}

fn tell(message: Option<JsValue>) {
    let Some(message) = message else { return };
    let options = CustomEventInit::new();
    options.set_detail(&message);
    if let Ok(event) = CustomEvent::new_with_event_init_dict(TELL, &options) {
        let _ = window().dispatch_event(&event);
    }
}

fn message(reply: &Option<Reply>, number: Option<JsValue>) -> Option<JsValue> {
    let mut message = vec![("answer", answer(reply.as_ref()?)?)];
    message.extend(number.map(|number| ("reply", number)));
    object(&message)
}

fn answer(reply: &Reply) -> Option<JsValue> {
    let texts: Vec<_> = reply
        .question
        .iter()
        .map(|(name, text)| (&**name, text.into()))
        .collect();
    let mut answer = vec![("tool", reply.tool.into()), ("question", object(&texts)?)];
    match &reply.answer {
        Ok(summary) => {
            answer.push(("sentence", summary.sentence().into()));
            answer.push(("figures", figures(summary)?));
        }
        Err(problems) => answer.push(("problems", listed(problems.iter().map(problem))?)),
    }
    object(&answer)
}

fn problem((field, sentence): &(String, String)) -> Option<JsValue> {
    object(&[("field", field.into()), ("sentence", sentence.into())])
}

fn figures(summary: &Summary) -> Option<JsValue> {
    listed(summary.figures.iter().map(figure))
}

/// Lengths are told in millimetres, weights in grams, which JavaScript's numbers hold without loss, and gauges over 10 cm.
fn figure(figure: &Figure) -> Option<JsValue> {
    const MILLION: f64 = 1e6;
    const THOUSAND_MILLION: f64 = 1e9;
    let (value, unit) = match figure.amount {
        Amount::Count(count) => (f64::from(count), None),
        Amount::Length(length) => (length.to_nm() as f64 / MILLION, Some("mm")),
        Amount::Gauge(gauge) => {
            let per_span = gauge.count() / gauge.span().to_nm() as f64;
            (per_span * Gauge::TEN_CM.to_nm() as f64, Some("per_10_cm"))
        }
        Amount::Mass(mass) => (mass.to_ng() as f64 / THOUSAND_MILLION, Some("g")),
    };
    let mut pairs = vec![("name", figure.name.into()), ("value", value.into())];
    pairs.extend(unit.map(|unit| ("unit", unit.into())));
    object(&pairs)
}

fn listed(items: impl Iterator<Item = Option<JsValue>>) -> Option<JsValue> {
    let list = Array::new();
    for item in items {
        list.push(&item?);
    }
    Some(list.into())
}
