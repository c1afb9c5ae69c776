//! How high each tool is inside another page, by the width of its column: as the build measured it. `cargo xtask heights`
//! writes the table anew, and a browser test holds the page to it.

/// A line for each tool and width: `spacing 360 1830`, all in pixels, the widths of a tool rising.
const TABLE: &str = include_str!("../../../../../web/heights.txt");

/// The widths that are measured.
pub const WIDTHS: [u32; 5] = [300, 360, 480, 640, 820];

/// Where nothing was measured, since the tool is newer than the table.
const UNMEASURED: u32 = 1_600;

/// How high a tool is in a column of this width; in one that was not measured as in the next narrower one, where it is
/// higher, so that nothing is cut off.
pub fn height(tool: &str, width: u32) -> u32 {
    let measured = TABLE.lines().filter_map(read).filter(|line| line.0 == tool);
    let mut fitting = measured.filter(|line| line.1 <= width.max(WIDTHS[0]));
    fitting.next_back().map_or(UNMEASURED, |line| line.2)
}

fn read(line: &str) -> Option<(&str, u32, u32)> {
    let mut words = line.split(' ');
    let (tool, width, height) = (words.next()?, words.next()?, words.next()?);
    Some((tool, width.parse().ok()?, height.parse().ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::TOOLS;

    #[test]
    fn every_tool_is_measured_at_every_width() {
        let mut lines = TABLE.lines();
        for tool in TOOLS {
            for width in WIDTHS {
                let line = lines.next().and_then(read);
                let is_here = line.is_some_and(|line| (line.0, line.1) == (tool.id, width));
                assert!(is_here, "{} at {width}: run `cargo xtask heights`", tool.id);
                assert!((200..10_000).contains(&height(tool.id, width)), "{}", tool.id);
            }
        }
        assert_eq!(lines.next(), None);
    }

    #[test]
    fn between_two_widths_it_is_as_high_as_in_the_narrower() {
        for tool in TOOLS {
            assert_eq!(height(tool.id, 479), height(tool.id, 360));
            assert_eq!(height(tool.id, 2_000), height(tool.id, 820));
            assert_eq!(height(tool.id, 120), height(tool.id, 300));
        }
        assert_eq!(height("none", 360), UNMEASURED);
    }
}
