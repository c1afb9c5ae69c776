//! The named states that the gallery lists, and the windows they are looked at in.

use crate::stage::Stage;
use anyhow::{Context, Result, ensure};
use loopwright_tests::chromium::View;

/// An upright phone by day.
pub const PHONE: View = View {
    width: 390,
    height: 844,
    dark: false,
};

/// An upright tablet by day.
pub const TABLET: View = View {
    width: 820,
    height: 1180,
    dark: false,
};

/// One state.
pub struct State {
    /// The tool's id.
    pub tool: String,
    /// The state's name.
    pub name: String,
    /// Its address inside the page.
    pub page: String,
    /// The fields that bring it about, as a link has them.
    pub link: String,
}

/// Opens the gallery and reads which states it lists.
pub async fn named(stage: &Stage) -> Result<Vec<State>> {
    const STATES: &str = "return [...document.querySelectorAll('a[data-state]')]
        .map((link) => [link.dataset.state, link.getAttribute('href'), link.dataset.link])";
    stage.open("#/gallery").await?;
    let listed: Vec<(String, String, String)> = serde_json::from_value(stage.browser.run(STATES).await?)?;
    ensure!(listed.len() > 100, "the gallery lists only {listed:?}");
    let state = |(name, page, link): (String, String, String)| {
        let (tool, name) = name
            .split_once('/')
            .with_context(|| format!("{name} is no state's name"))?;
        Ok(State {
            tool: tool.to_owned(),
            name: name.to_owned(),
            page,
            link,
        })
    };
    listed.into_iter().map(state).collect()
}
