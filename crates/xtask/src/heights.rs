//! How high each tool is inside another page: a table that the browser tests measure on the built page, at some widths. It
//! stands in git, the app reads it for the lines of a plain frame, and the build writes it into the element's script, so
//! that a page reserves the room before anything is loaded.

use crate::{
    files::Files,
    finish::{EMBED, text},
    house,
};
use anyhow::{Context, Result};
use std::{collections::BTreeMap, fs, path::PathBuf};

/// What stands in the script as long as nothing is written into it.
const BLANK: &str = "const HEIGHTS = {};";

/// The widths that are measured, in pixels.
pub const WIDTHS: [u32; 5] = [300, 360, 480, 640, 820];

/// A height, in pixels, of a tool at a width.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Height {
    /// The tool's id.
    pub tool: String,
    /// How wide the frame is.
    pub width: u32,
    /// How high.
    pub height: u32,
}

/// Where the table stands.
pub fn path() -> PathBuf {
    house::root().join("web/heights.txt")
}

/// The table as it stands in git.
pub fn table() -> Result<Vec<Height>> {
    let path = path();
    let text = fs::read_to_string(&path).with_context(|| format!("cannot read {}", path.display()))?;
    read(&text)
}

/// The heights of a table's text: `spacing 360 1830` in each line.
pub fn read(text: &str) -> Result<Vec<Height>> {
    let line = |line: &str| {
        let words: Vec<&str> = line.split(' ').collect();
        let [tool, width, height] = words[..] else {
            anyhow::bail!("`{line}` is no tool with a width and a height");
        };
        Ok(Height {
            tool: tool.to_owned(),
            width: width.parse()?,
            height: height.parse()?,
        })
    };
    text.lines().map(line).collect()
}

/// The text of a table.
pub fn print(table: &[Height]) -> String {
    let line = |Height { tool, width, height }: &Height| format!("{tool} {width} {height}\n");
    table.iter().map(line).collect()
}

/// Writes the table into the element's script, where there is one and it is not in it yet.
pub fn fill(files: &mut Files) -> Result<()> {
    if !files.contains_key(EMBED) {
        return Ok(());
    }
    let script = text(files, EMBED)?;
    let filled = script.replace(BLANK, &format!("const HEIGHTS = {};", object(&table()?)?));
    files.insert(EMBED.to_owned(), filled.into_bytes());
    Ok(())
}

/// The table as the script reads it: of each tool `[width, height]` at each width.
fn object(table: &[Height]) -> Result<String> {
    let mut tools: BTreeMap<&str, Vec<[u32; 2]>> = BTreeMap::new();
    for Height { tool, width, height } in table {
        tools.entry(tool).or_default().push([*width, *height]);
    }
    Ok(serde_json::to_string(&tools)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sizes;

    #[test]
    fn a_table_comes_back_from_its_text() {
        let text = "spacing 300 2035\nspacing 360 1830\n";
        let table = read(text).unwrap();
        assert_eq!((print(&table), table.len()), (text.to_owned(), 2));
        assert_eq!(object(&table).unwrap(), "{\"spacing\":[[300,2035],[360,1830]]}");
        assert!(read("spacing 300").is_err() && read("spacing wide 3").is_err());
    }

    #[test]
    fn the_table_in_git_has_every_tool_at_every_width() {
        let source = fs::read_to_string(house::root().join("crates/loopwright/src/tools.rs")).unwrap();
        let tools = sizes::tools(&source).into_iter();
        let wanted = tools.flat_map(|tool| WIDTHS.map(|width| (tool.clone(), width)));
        let found = table().unwrap().into_iter().map(|line| (line.tool, line.width));
        assert!(found.eq(wanted), "run `cargo xtask heights`");
    }

    #[test]
    fn the_script_is_filled_once() {
        let script = format!("// x\n{BLANK}\n");
        let mut files = Files::from([(EMBED.to_owned(), script.into_bytes())]);
        fill(&mut files).unwrap();
        let filled = files.clone();
        assert!(!text(&filled, EMBED).unwrap().contains(BLANK));
        fill(&mut files).unwrap();
        assert_eq!(files, filled);
        fill(&mut Files::new()).unwrap();
    }
}
