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

/// Each tool with the values of a link that has an answer, of those that were noted with an earlier release.
pub fn answered_links() -> Vec<(&'static str, &'static str)> {
    let mut links: Vec<(&str, &str)> = Vec::new();
    for noted in include_str!("fixtures/links.txt").split("\n\n") {
        let mut lines = noted.trim().lines();
        let link = lines.next().and_then(|line| line.strip_prefix("#/")?.split_once('?'));
        let is_answered = lines.any(|line| line.starts_with("= "));
        if let Some((tool, values)) =
            link.filter(|(tool, _)| is_answered && !tool.contains('/') && links.iter().all(|(known, _)| known != tool))
        {
            links.push((tool, values));
        }
    }
    links
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
