//! Where the engines differ, as far as the scenarios know: what one of them cannot show is shown otherwise, or the scenario
//! is not played there. Both are in `tests/README.md`, which a test holds to what stands here and in the list of scenarios.

use crate::{SCENARIOS, browser::Engine, snapshot::is_written};
use anyhow::{Context, Result};
use std::{
    fmt::Write,
    fs,
    path::{Path, PathBuf},
};

/// What an engine or its driver cannot do, so that a scenario looks otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Difference {
    /// What the browser writes into its console is not handed over.
    NoLog,
    /// Nothing tells how far things jump.
    NoShifts,
    /// No size can be given to the page.
    AboutThatSize,
    /// No frame of another site may take the cursor.
    NoCursorInFrames,
    /// `'self'` is no address in a frame that is kept apart.
    SelfIsNoAddress,
    /// Barriers are not looked for in every state.
    BarriersElsewhere,
    /// What has the focus may lie below the window in part.
    SeenInPart,
    /// It takes seconds to start.
    SlowToStart,
    /// A page cannot open a window beside its own under the driver.
    NoWindowBeside,
}

/// All of them, in the order they are told.
const ALL: [Difference; 9] = [
    Difference::NoLog,
    Difference::NoShifts,
    Difference::AboutThatSize,
    Difference::NoCursorInFrames,
    Difference::SelfIsNoAddress,
    Difference::BarriersElsewhere,
    Difference::SeenInPart,
    Difference::SlowToStart,
    Difference::NoWindowBeside,
];

impl Difference {
    /// Where it is so.
    const fn engines(self) -> &'static [Engine] {
        match self {
            Self::NoLog | Self::NoShifts | Self::BarriersElsewhere => &[Engine::Firefox, Engine::WebKit],
            Self::AboutThatSize | Self::NoCursorInFrames | Self::SelfIsNoAddress | Self::NoWindowBeside => {
                &[Engine::WebKit]
            }
            Self::SeenInPart | Self::SlowToStart => &[Engine::Firefox],
        }
    }

    /// What is so, and what is done about it.
    const fn told(self) -> &'static str {
        match self {
            Self::NoLog => {
                "The driver does not hand over the console. Errors, promises that fail and breaches of the policy are heard in \
                 the page, from the moment it is opened."
            }
            Self::NoShifts => {
                "The browser does not tell of layout shifts, so that what jumps while a lesson loads is not measured. Where \
                 every field stands is looked at after each key all the same."
            }
            Self::AboutThatSize => {
                "A page cannot be given a size: its window is about as large as asked for, and a phone is a frame that is 390 \
                 pixels wide."
            }
            Self::NoCursorInFrames => {
                "A frame of another site cannot have the cursor by itself, so that this is not asked."
            }
            Self::SelfIsNoAddress => {
                "Where a host says `'self'` in a header, a frame that is kept apart loads nothing, and the page has to say so."
            }
            Self::BarriersElsewhere => {
                "Barriers depend on the page and not on the browser, and are looked for in every state by Chromium; here in \
                 the lesson alone."
            }
            Self::SeenInPart => {
                "A page moves to what has the focus where nothing of it is in sight, so that a part of it is enough."
            }
            Self::SlowToStart => {
                "It takes seconds to start, so that the power is cut a quarter as often; and only once the page's files are put \
                 away, since one that is ended in the midst of that takes its storage for full until it is started again."
            }
            Self::NoWindowBeside => {
                "A page opens no window beside its own under the driver: one that waits for ever is shown in a frame."
            }
        }
    }
}

impl Engine {
    /// How often the power is cut where it is cut so often in Chromium.
    pub fn cuts(self, cuts: u32) -> u32 {
        if self.has(Difference::SlowToStart) {
            cuts / 4
        } else {
            cuts
        }
    }

    /// Whether this is so there.
    pub fn has(self, difference: Difference) -> bool {
        difference.engines().contains(&self)
    }
}

/// Scenarios that are played in the same engines.
pub struct Group {
    /// Why not in Firefox.
    pub firefox: Option<&'static str>,
    /// Why not in WebKit.
    pub webkit: Option<&'static str>,
    /// Their names, behind those of their modules.
    pub names: &'static [&'static str],
}

/// What is not played where, and why.
pub fn not_played() -> impl Iterator<Item = (Engine, &'static str, &'static str)> {
    SCENARIOS.iter().flat_map(|group| {
        let engines = [(Engine::Firefox, group.firefox), (Engine::WebKit, group.webkit)];
        let skipped = engines.into_iter().filter_map(|(engine, why)| Some((engine, why?)));
        skipped.flat_map(|(engine, why)| group.names.iter().map(move |name| (engine, *name, why)))
    })
}

/// Around what is written here.
const BEGIN: &str = "<!-- written by `cargo xtask snapshot` -->\n";
const END: &str = "<!-- as far as here -->\n";

fn printed() -> String {
    let mut text = "\n| played otherwise in | what differs |\n|---|---|\n".to_owned();
    for difference in ALL {
        let engines: Vec<String> = difference
            .engines()
            .iter()
            .map(|engine| format!("{engine:?}"))
            .collect();
        let _ = writeln!(text, "| {} | {} |", engines.join(", "), difference.told());
    }
    text.push_str("\n| not played in | scenarios | why |\n|---|---|---|\n");
    for group in SCENARIOS {
        let names: Vec<String> = group.names.iter().map(|name| format!("`{name}`")).collect();
        for (engine, why) in [(Engine::Firefox, group.firefox), (Engine::WebKit, group.webkit)] {
            if let Some(why) = why {
                let _ = writeln!(text, "| {engine:?} | {} | {why} |", names.join(", "));
            }
        }
    }
    text.push('\n');
    text
}

fn readme() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md")
}

/// What stands before the part that is written here, the part, and what stands behind it.
fn parts(text: &str) -> Result<(&str, &str, &str)> {
    let (before, rest) = text.split_once(BEGIN).context("the README has no place for this")?;
    let (written, after) = rest.split_once(END).context("the README has no end of this")?;
    Ok((before, written, after))
}

#[test]
fn the_readme_tells_all_differences() {
    let text = fs::read_to_string(readme()).expect("the README");
    let (before, written, after) = parts(&text).expect("its parts");
    if is_written() {
        let text = [before, BEGIN, &printed(), END, after].concat();
        fs::write(readme(), text).expect("a README that can be written");
        return;
    }
    assert_eq!(
        written,
        printed(),
        "run `cargo xtask snapshot` where the list of scenarios has changed on purpose"
    );
}
