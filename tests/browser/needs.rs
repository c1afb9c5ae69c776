//! What some scenarios need of their browser. The others are played in Chromium's headless shell, where there is one (the
//! same engine, without windows and menus, which starts in a third of the time), and in a Firefox that has played others.

use loopwright_tests::chromium::Extent;

/// How much of a browser a scenario needs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Needs {
    /// The engine; which profile it runs on is all the same.
    Engine,
    /// The engine on a profile of its own, on which it goes on after its power was cut.
    OwnProfile,
    /// All of the browser, on a profile of its own.
    Whole,
}

/// Scenarios, by how their names begin, and why the engine will not do.
const MORE: [(&str, Needs, &str); 8] = [
    ("embed::", Needs::Whole, FRAMES),
    ("keep::a_killed_browser", Needs::OwnProfile, ENDED),
    ("knit::five_thousand_taps", Needs::OwnProfile, ENDED),
    ("knit::ten_thousand_taps", Needs::OwnProfile, ENDED),
    ("project::power_cuts", Needs::OwnProfile, ENDED),
    ("project::two_windows_hear", Needs::Whole, BEHIND),
    ("windows::twenty_power_cuts", Needs::OwnProfile, ENDED),
    ("windows::forty_power_cuts", Needs::OwnProfile, ENDED),
];

/// It complains of messages that a page sends to a frame before the frame has its own address.
const FRAMES: &str = "Chromium's shell has a page and a frame of another address in one process";

/// A window that lies behind another draws nothing there.
const BEHIND: &str = "in Chromium's shell only the window in front draws";

/// One that others wait for is not ended.
const ENDED: &str = "it ends its browser and looks at what is left";

impl Needs {
    /// What this scenario needs.
    pub fn of(scenario: &str) -> Self {
        let more = MORE.iter().find(|(begins, _, _)| scenario.starts_with(begins));
        more.map_or(Self::Engine, |(_, needs, _)| *needs)
    }

    /// How much of Chromium that is.
    pub const fn extent(self) -> Extent {
        match self {
            Self::Engine | Self::OwnProfile => Extent::Engine,
            Self::Whole => Extent::Whole,
        }
    }
}

/// Every line speaks of scenarios that there are.
#[test]
fn what_is_needed_is_said_of_scenarios_that_there_are() {
    let all: Vec<&str> = crate::SCENARIOS.iter().flat_map(|group| group.names).copied().collect();
    for (begins, _, why) in MORE {
        let is_there = all.iter().any(|name| name.starts_with(begins));
        assert!(
            is_there,
            "no scenario begins with {begins}, of which is said that {why}"
        );
    }
}
