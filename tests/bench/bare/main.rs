//! A counter and nothing else: what a page costs that is made with Yew at all.

use yew::prelude::*;

#[component]
fn Counter() -> Html {
    let count = use_state(|| 0_u32);
    let more = {
        let count = count.clone();
        Callback::from(move |_| count.set(count.saturating_add(1)))
    };
    html! {
        <main>
            <p id="count">{ *count }</p>
            <button type="button" onclick={more}>{ "One more" }</button>
        </main>
    }
}

fn main() {
    yew::Renderer::<Counter>::new().render();
}
