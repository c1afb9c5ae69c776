//! Which scenarios are played in the whole of Chromium, and why. The others are played in its headless shell, where there
//! is one: the same engine, without windows and menus, which starts in a third of the time.

use loopwright_tests::chromium::Extent;

/// Scenarios, by how their names begin, and what the shell lacks for them.
const WHOLE: [(&str, &str); 2] = [("embed::", FRAMES), ("project::two_windows_hear", BEHIND)];

/// A window that lies behind another draws nothing there.
const BEHIND: &str = "in the shell only the window in front draws";

/// It complains of messages that a page sends to a frame before the frame has its own address.
const FRAMES: &str = "the shell has a page and a frame of another address in one process";

/// How much of Chromium a scenario needs.
pub fn extent(scenario: &str) -> Extent {
    match WHOLE.iter().find(|(begins, _)| scenario.starts_with(begins)) {
        Some(_) => Extent::Whole,
        None => Extent::Engine,
    }
}

/// Every line speaks of scenarios that there are.
#[test]
fn the_whole_browser_is_for_scenarios_that_there_are() {
    let all: Vec<&str> = crate::SCENARIOS.iter().flat_map(|group| group.names).copied().collect();
    for (begins, why) in WHOLE {
        let is_there = all.iter().any(|name| name.starts_with(begins));
        assert!(
            is_there,
            "no scenario begins with {begins}, of which is said that {why}"
        );
    }
}
