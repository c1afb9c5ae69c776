//! The job: two numbers typed, a row read from the screen, and that row worked stitch by stitch on a needle.

use crate::{browser::Browser, stage::Stage, steps::unfold};
use anyhow::{Context, Result, ensure};
use loopwright::row;

/// The field of the stitches on the needle.
pub const STITCHES: &str = "#spacing-stitches";
/// The field of how many.
pub const AMOUNT: &str = "#spacing-amount";
/// The choice of what to do.
pub const ASK: &str = "#spacing-ask";
/// In the round or flat.
pub const KNITTING: &str = "#spacing-knitting";
/// The row as it is shown.
pub const ROW: &str = ".answer .row";

/// From the first page to the tool in one tap, 132 and 16 typed, and the row works out.
pub async fn she_types_two_numbers_and_knits_the_row_she_reads(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("").await?;
    browser.press("main a[href='#/spacing']").await?;
    browser.until("document.querySelector('#spacing-stitches')").await?;
    ensure!(!browser.shows(".answer").await?, "an answer before a question");
    fill(browser, "132", "16").await?;
    works_out(browser, 132, 116).await?;
    // The answer follows each keystroke.
    browser.find(AMOUNT).await?.send_keys("0").await?;
    ensure!(browser.value(AMOUNT).await? == "160", "a keystroke was lost");
    ensure!(!browser.shows(".answer").await?, "an old answer under a new question");
    browser.type_into(AMOUNT, "12").await?;
    works_out(browser, 132, 120).await
}

/// Flat, mirrored: as many leaning left as right, the one reading of the row forwards and backwards.
pub async fn a_flat_row_leans_both_ways(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "60", "6").await?;
    browser.choose(KNITTING, "flat").await?;
    unfold(browser).await?;
    browser.choose("#spacing-edge", "mirrored").await?;
    works_out(browser, 60, 54).await?;
    let text = browser.text(ROW).await?;
    ensure!(text.contains("k2tog") && text.contains("ssk"), "no pairs in {text}");
    browser.choose("#spacing-edge", "least").await?;
    browser.type_into("#spacing-edge_plain", "5").await?;
    works_out(browser, 60, 54).await?;
    let text = browser.text(ROW).await?;
    ensure!(text.starts_with('K'), "the edge is not plain in {text}");
    Ok(())
}

/// Increases, each kind.
pub async fn she_gains_stitches(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "96", "20").await?;
    browser.choose(ASK, "gain").await?;
    works_out(browser, 96, 116).await?;
    unfold(browser).await?;
    for kind in ["yo", "kfb", "m1"] {
        browser.choose("#spacing-increase", kind).await?;
        works_out(browser, 96, 116).await?;
        let text = browser.text(ROW).await?.to_lowercase();
        ensure!(text.contains(kind), "no {kind} in {text}");
    }
    browser.choose("#spacing-face", "purl").await?;
    works_out(browser, 96, 116).await?;
    let text = browser.text(ROW).await?;
    ensure!(text.contains("M1p"), "knit words on a purl round: {text}");
    Ok(())
}

/// A count that is a multiple: the nearest one, and the other a tap away.
pub async fn she_ends_on_a_multiple(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "131", "8").await?;
    browser.choose(ASK, "multiple").await?;
    works_out(browser, 131, 128).await?;
    browser.choose(KNITTING, "flat").await?;
    browser.type_into("#spacing-plus", "4").await?;
    works_out(browser, 131, 132).await?;
    // The ones either side, with the change each needs.
    browser.press(".answers .line button:first-of-type").await?;
    works_out(browser, 131, 124).await?;
    ensure!(browser.value(AMOUNT).await? == "124", "the tap went nowhere");
    Ok(())
}

/// The largest ask the page takes is answered, with places where the row is too long to write.
pub async fn a_hundred_thousand_stitches_are_no_trouble(stage: &mut Stage) -> Result<()> {
    let browser = &stage.browser;
    stage.open("#/spacing").await?;
    fill(browser, "100000", "31416").await?;
    until_outcome(browser, "68,584").await?;
    let two = browser.shows("#spacing-order").await?;
    ensure!(two, "no other order to choose");
    browser.choose("#spacing-order", "even").await?;
    // A row of thousands of terms gives way to blocks she can knit, and a table of where its changes fall.
    works_out(browser, 100_000, 68_584).await?;
    let row = browser.text(ROW).await?;
    ensure!(row.len() < 200, "a row of thousands of terms: {row}");
    browser
        .until("document.querySelectorAll('.places li').length > 100")
        .await?;
    browser.choose("#spacing-order", "two").await?;
    works_out(browser, 100_000, 68_584).await
}

/// Types the two numbers.
pub async fn fill(browser: &Browser, stitches: &str, amount: &str) -> Result<()> {
    browser.type_into(STITCHES, stitches).await?;
    browser.type_into(AMOUNT, amount).await
}

/// The row on the screen, worked on that many stitches, leaves this many; and the page says so.
pub async fn works_out(browser: &Browser, before: u32, after: u32) -> Result<()> {
    until_outcome(browser, &grouped(after)).await?;
    let text = browser.text(ROW).await?;
    let read = row::read(&text).map_err(|why| anyhow::anyhow!("{why} in \"{text}\""))?;
    ensure!(read.to_string() == text, "\"{text}\" is not how \"{read}\" is written");
    let worked = row::work(&read, before).with_context(|| format!("\"{text}\" on {before}"))?;
    ensure!(
        worked.on_needle == u64::from(after) && worked.left_over == 0,
        "\"{text}\" on {before} stitches gives {worked:?}, not {after}"
    );
    let outcome = browser.text(".answer .outcome").await?;
    ensure!(outcome.contains(&grouped(before)), "the page says: {outcome}");
    Ok(())
}

async fn until_outcome(browser: &Browser, after: &str) -> Result<()> {
    let outcome = "document.querySelector('.answer .outcome strong')?.innerText";
    browser.until(&format!("{outcome} === {after:?}")).await
}

/// A number as English writes it.
fn grouped(number: u32) -> String {
    match number {
        0..1_000 => number.to_string(),
        _ => format!("{},{:03}", number / 1_000, number % 1_000),
    }
}
