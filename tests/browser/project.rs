//! Projects: what is known once flows through every tool, steps stand on one another, and what moved is said until it is
//! seen.

use crate::{
    stage::Stage,
    steps::{Step, Step::*, play},
};
use anyhow::{Result, ensure};
use std::time::Duration;

/// Her own gauge, on the page of the project.
const OWN_GAUGE: &str = "#known-gauge_stitches";
const OPEN_EXAMPLE: Step = Button(".example", "Look at an example");

/// The invented pullover: another gauge moves the whole chain, each with was and is; the old one leaves nothing marked.
pub async fn the_example_moves_with_her_gauge(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open(""),
        OPEN_EXAMPLE,
        Shown(".project .steps li"),
        Hides(".changes", "nothing has moved yet"),
        Type(OWN_GAUGE, "20"),
        Says(".changes", "Size"),
        Says(".changes", "Neck, cast on"),
        Says(".changes", "Was For the round: Cast on 96."),
        Says(".changes", "Is For the round: Cast on 88."),
        Says(".changes", "Tail for the neck"),
        Says(".changes", "Yoke"),
        Says(".changes", "Cords through the yoke"),
        Says(".changes", "Yarn for all of it"),
        Type(OWN_GAUGE, "22"),
        Hides(".changes", "all is as it was"),
        Type(OWN_GAUGE, "20"),
        Button(".changes", "I have seen it"),
        Hides(".changes", "she has seen it"),
        Says(".steps", "Cast on 88."),
        Kept,
        Reload,
        Says(".steps", "Cast on 88."),
    ];
    play(stage, &steps).await
}

/// From an empty project to body stitches, tail and yarn, with nothing typed twice.
pub async fn a_chain_is_made_in_a_few_taps(stage: &mut Stage) -> Result<()> {
    let steps = [
        Enter("cast_on"),
        Type("#cast_on-width", "102"),
        Type("#cast_on-gauge", "22"),
        Button(".question", "Keep 22 over 10 cm for the project"),
        Says(".known", "from the project"),
        Button(".keep", "Keep in the project"),
        Says(".back", "Cast-on"),
        Press(".next a[href='#/tail']"),
        Holds("#tail-stitches", "224"),
        Holds("#tail-gauge", "22"),
        Choose("#tail-yarn", "light"),
        Button(".keep", "Keep in the project"),
        Says(".back", "Tail"),
        Press(".top a[href='#/project']"),
        Press(".steps a[href='#/project/1']"),
        Says(".back", "Cast-on"),
        Press(".next a[href='#/yarn']"),
        Holds("#yarn-s1_stitches", "224"),
        Holds("#yarn-swatch_stitches", "22"),
        Type("#yarn-swatch_rows", "30"),
        Type("#yarn-s1_rows", "108"),
        Type("#yarn-ball_length", "125"),
        Shown(".answer"),
        Button(".keep", "Keep in the project"),
        Press(".top a[href='#/project']"),
        Says(".totals", "224 stitches on the needle at the widest."),
        Says(".totals", "balls of yarn"),
    ];
    let is_tap = |step: &&Step| matches!(step, Enter(_) | Press(_) | Button(..) | Choose(..));
    let taps = steps.iter().filter(is_tap).count();
    println!("{taps} taps from an empty project to stitches, tail and yarn");
    ensure!(taps < 12, "{taps} taps");
    play(stage, &steps).await
}

/// A field that follows the project says so; what is typed over it is only tried until she makes it the project's.
pub async fn a_field_follows_the_project_until_something_is_tried(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on"),
        Type("#cast_on-gauge", "22"),
        Button(".question", "Keep 22 over 10 cm for the project"),
        Go("#/flare"),
        Holds("#flare-gauge", "22"),
        Says(".known", "from the project"),
        Type("#flare-gauge", "20"),
        Says(".known", "Only tried here: the project has 22 over 10 cm."),
        Button(".question", "Back to the project\u{2019}s"),
        Holds("#flare-gauge", "22"),
        Type("#flare-gauge", "21"),
        Button(".question", "Make this the project\u{2019}s"),
        Says(".known", "from the project"),
        Kept,
        Reload,
        Holds("#flare-gauge", "21"),
        Go("#/cast_on"),
        Holds("#cast_on-gauge", "21"),
    ];
    play(stage, &steps).await
}

/// A link has the answer of whoever sent it: the project's gauge does not slip into it, and is a tap away.
pub async fn a_link_is_answered_as_it_was_sent(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/project"),
        Type(OWN_GAUGE, "22"),
        Kept,
        Open("#/tail?stitches=120&yarn=medium"),
        Unfold,
        Holds("#tail-gauge", ""),
        Says(".question", "Left empty here: the project has 22 over 10 cm."),
        Button(".question", "Back to the project\u{2019}s"),
        Holds("#tail-gauge", "22"),
        // What an answer hands on is no link from elsewhere: there the project fills what is empty.
        Go("#/rows?length=40&gauge=28"),
        Shown(".answer"),
        Go("#/sizing?bust=91&sizes=86 (97, 107)&listed=garment"),
        Press(".next a[href^='#/cast_on']"),
        Holds("#cast_on-gauge", "22"),
    ];
    play(stage, &steps).await
}

/// A step that is taken out leaves its text where others stood on it, marked; and can be had back.
pub async fn a_step_taken_out_leaves_its_text_and_comes_back(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on?width=50&gauge=22"),
        Button(".keep", "Keep in the project"),
        Press(".next a[href='#/tail']"),
        Choose("#tail-yarn", "light"),
        Button(".keep", "Keep in the project"),
        Says(".known", "from \u{201c}Cast-on\u{201d}"),
        Go("#/project"),
        Press(".steps button[aria-label='Take out: Cast-on']"),
        Hides(".steps a[href='#/project/1']", "it was taken out"),
        Go("#/project/2"),
        Holds("#tail-stitches", "110"),
        Says(".known", "came from \u{201c}Cast-on\u{201d}, which was taken out"),
        Go("#/project"),
        Button(".steps", "Undo: took out \u{201c}Cast-on\u{201d}"),
        Shown(".steps a[href='#/project/1']"),
        Go("#/project/2"),
        Says(".known", "\u{21b3} from \u{201c}Cast-on\u{201d}"),
    ];
    play(stage, &steps).await
}

/// Several projects: each has its own facts, one is open, and a deleted one can be had back.
pub async fn each_project_has_its_own_facts(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/project"),
        Type("#project-name", "Grey pullover"),
        Type(OWN_GAUGE, "22"),
        Button(".projects", "Copy"),
        Holds("#project-name", "Grey pullover, copy"),
        Holds(OWN_GAUGE, "22"),
        Type(OWN_GAUGE, "20"),
        Button(".projects", "Start another project"),
        Holds("#project-name", ""),
        Holds(OWN_GAUGE, ""),
        Go("#/cast_on"),
        Holds("#cast_on-gauge", ""),
        Choose("#open-project", "1"),
        Holds("#cast_on-gauge", "22"),
        Choose("#open-project", "2"),
        Holds("#cast_on-gauge", "20"),
        Go("#/project"),
        Press(".projects li:nth-child(2) .doings button:nth-child(3)"),
        Says(".projects", "deleted"),
        Holds("#project-name", "Grey pullover"),
        Button(".projects", "Have it back"),
        Holds("#project-name", "Grey pullover, copy"),
        Holds(OWN_GAUGE, "20"),
        Kept,
        Reload,
        Holds(OWN_GAUGE, "20"),
    ];
    play(stage, &steps).await
}

/// One garment has several counts of stitches: each is known by its name, and a field that asks for stitches offers them.
pub async fn counts_are_known_by_name(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on?width=94&gauge=22"),
        Button(".answers", "Keep 207 as the cast-on"),
        Says(".answers", "207 is in the project as the cast-on."),
        Press(".keep-count summary"),
        Button(".keep-count", "Keep 207 as the body"),
        Says(".keep-count", "207 is in the project as the body."),
        Go("#/spacing"),
        Button(".question .taken", "body 207"),
        Holds("#spacing-stitches", "207"),
        Says(".known", "from the project: body"),
        // It follows the body from now on, whatever the cast-on does.
        Go("#/project"),
        Unfold,
        Type("#known-body", "212"),
        Go("#/spacing"),
        Holds("#spacing-stitches", "212"),
        Type("#spacing-stitches", "200"),
        Says(".known", "Only tried here: the project has 212."),
        Button(".question", "Make this the project\u{2019}s"),
        Says(".known", "from the project: body"),
        Kept,
        Reload,
        Holds("#spacing-stitches", "200"),
        // The yoke asks for the neck, and for what was cast on as long as there is none.
        Go("#/yoke"),
        Holds("#yoke-from", "207"),
        Says(".known", "from the project: cast-on"),
        Type("#yoke-from", "96"),
        Button(".question", "Make this the project\u{2019}s"),
        Says(".known", "from the project: neck"),
        Go("#/tail"),
        Holds("#tail-stitches", "207"),
    ];
    play(stage, &steps).await
}

/// A count by a name of her own: kept under an answer, named letter by letter, offered by that name, and taken away again.
pub async fn a_count_has_a_name_of_her_own(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/cast_on?width=40&gauge=20"),
        Press(".keep-count summary"),
        Button(".keep-count", "Keep 80 under a name of your own"),
        Says(".keep-count", "Give it a name"),
        Type("#known-count_1_name", "hood"),
        NeverSays(".keep-count", "Give it a name"),
        Kept,
        Go("#/spacing"),
        Button(".question .taken", "hood 80"),
        Holds("#spacing-stitches", "80"),
        Says(".known", "from the project: hood"),
        Go("#/project"),
        Holds("#known-count_1_name", "hood"),
        Type("#known-count_1_name", "Neck"),
        Says(".own-counts", "called the same"),
        Type("#known-count_1_name", "<b>&amp;</b>"),
        Type("#known-count_1", "eighty"),
        Says(".own-counts", "Type a number in figures"),
        Type("#known-count_1", "84"),
        Kept,
        Reload,
        Holds("#known-count_1_name", "<b>&amp;</b>"),
        Go("#/spacing"),
        Holds("#spacing-stitches", "84"),
        Says(".known", "from the project: <b>&amp;</b>"),
        Go("#/project"),
        Button(".own-counts", "Take away"),
        Hides("#known-count_1", "it was taken away"),
        Go("#/spacing"),
        Holds("#spacing-stitches", ""),
        Says(".known", "does not know it any more"),
        Go("#/project"),
        Button(".own-counts", "Undo: took away \u{201c}<b>&amp;</b>\u{201d}"),
        Holds("#known-count_1", "84"),
    ];
    play(stage, &steps).await
}

/// A fact that cannot be read is pointed at where it stands, and where a field would only stand empty because of it.
pub async fn a_fact_that_cannot_be_read_is_said(stage: &mut Stage) -> Result<()> {
    let steps = [
        Open("#/project"),
        Type("#known-bust", "wide"),
        Press("details:has(#known-sizes) summary"),
        Type("#known-sizes", "86, ninety, 94"),
        Says("details:has(#known-sizes) .problem", "ninety"),
        Go("#/sizing"),
        Says(
            ".question",
            "In the project, \u{201c}Bust\u{201d} cannot be read: \u{201c}wide\u{201d}.",
        ),
        Press(".question a[href='#/project']"),
        Holds("#known-bust", "wide"),
    ];
    play(stage, &steps).await
}

/// Keeps a window from reading the log only because it is looked at.
const NEVER_LOOKED_AT: &str =
    "window.addEventListener('visibilitychange', (event) => event.stopImmediatePropagation(), true)";

/// Two windows show one truth, without either being looked at again.
pub async fn two_windows_hear_of_each_other(stage: &mut Stage) -> Result<()> {
    let driver = &stage.browser.driver;
    stage.open("#/project").await?;
    let first = driver.window().await?;
    let second = driver.new_tab().await?;
    driver.switch_to_window(second.clone()).await?;
    stage.open("#/project").await?;
    stage.browser.run(NEVER_LOOKED_AT).await?;
    driver.switch_to_window(first.clone()).await?;
    stage.browser.run(NEVER_LOOKED_AT).await?;
    stage.browser.type_into(OWN_GAUGE, "22").await?;
    stage.until_kept().await?;
    driver.switch_to_window(second).await?;
    play(stage, &[Holds(OWN_GAUGE, "22"), Type(OWN_GAUGE, "20.5"), Kept]).await?;
    driver.close_window().await?;
    driver.switch_to_window(first).await?;
    play(stage, &[Holds(OWN_GAUGE, "20.5")]).await
}

/// How often the power is cut in Chromium.
const CUTS: u32 = 40;

/// The browser is ended by force at all kinds of moments while a project is edited: what the page called kept is there.
pub async fn power_cuts_lose_nothing_of_a_project_that_was_kept(stage: &mut Stage) -> Result<()> {
    let (mut known, mut unsaid) = (String::new(), 0);
    let cuts = stage.engine.cuts(CUTS);
    for cut in 0..cuts {
        stage.open("#/project").await?;
        let found = stage.browser.value(OWN_GAUGE).await?;
        // What was typed after the last word may have been kept as well, as far as its keys had come, and nothing else.
        let typed = typed_at(cut.saturating_sub(1));
        ensure!(
            found == known || typed.starts_with(&found),
            "cut {cut}: kept {known:?}, found {found:?}"
        );
        stage.browser.type_into(OWN_GAUGE, &typed_at(cut)).await?;
        if waits(cut) {
            stage.until_kept().await?;
            known = typed_at(cut);
        } else {
            unsaid += 1;
            known = found;
            tokio::time::sleep(Duration::from_millis(u64::from(cut * 7 % 40))).await;
        }
        stage.lose_power().await?;
    }
    println!(
        "{cuts} cuts, {unsaid} of them before the page had said that all is kept: nothing that it had said is lost"
    );
    Ok(())
}

/// A gauge of its own for each cut.
fn typed_at(cut: u32) -> String {
    format!("{}.{}", 20 + cut / 10, cut % 10)
}

/// Whether the power is cut only after the page has said that all is kept.
const fn waits(cut: u32) -> bool {
    !cut.is_multiple_of(3)
}
