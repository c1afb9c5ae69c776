//! Which room of the app may know which: no ring among them, so that each can be read without those above it.

use super::{
    Finding,
    code::{code_only, line_of, without_tests},
};

/// Where the app's rooms stand.
const APP: &str = "crates/loopwright-app/src/";

/// The rooms of the app, each with the rooms below it that it may know. The words know the maths only. What is in no row
/// here, such as the start of the app, stands on top and may know all.
const ROOMS: [(&str, &[&str]); 12] = [
    ("words", &[]),
    ("store", &[]),
    ("desk", &["store"]),
    ("frame", &["words"]),
    ("route", &["frame", "store"]),
    ("form", &["store", "words"]),
    ("part", &["desk", "form", "frame", "route", "store", "words"]),
    ("drawing", &["part", "words"]),
    (
        "tool",
        &["desk", "drawing", "form", "frame", "part", "route", "store", "words"],
    ),
    ("project", &["desk", "form", "store", "tool", "words"]),
    ("knit", &["desk", "form", "project", "route", "store", "tool", "words"]),
    (
        "page",
        &[
            "backup", "desk", "drawing", "form", "frame", "knit", "one_file", "part", "project", "route", "store",
            "tool", "words",
        ],
    ),
];

/// Every place where a room of the app names one that it may not know.
pub fn check(path: &str, text: &str) -> Vec<Finding> {
    let Some(inside) = path.strip_prefix(APP) else {
        return Vec::new();
    };
    let room = inside.split(['/', '.']).next().unwrap_or_default();
    let Some((_, below)) = ROOMS.iter().find(|(name, _)| *name == room) else {
        return Vec::new();
    };
    let code = without_tests(&code_only(text));
    let named = code.match_indices("crate::").map(|(at, word)| {
        let rest = &code[at + word.len()..];
        let end = rest.find(|letter: char| !letter.is_alphanumeric() && letter != '_');
        (at, &rest[..end.unwrap_or(rest.len())])
    });
    // What begins with a large letter, or is a macro of the crate's root, is no room.
    let unknown = named.filter(|(_, name)| *name != room && !below.contains(name) && is_room(name));
    unknown
        .map(|(at, name)| Finding {
            place: format!("{path}:{}", line_of(&code, at)),
            broken: format!("`{room}` does not know `{name}`"),
        })
        .collect()
}

fn is_room(name: &str) -> bool {
    ROOMS.iter().any(|(room, _)| *room == name) || ["app", "backup", "offline", "one_file"].contains(&name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_room_that_knows_one_above_it_is_found() {
        let text = "//! x\nuse crate::words::page;\nuse crate::tool::find;\n#[cfg(test)]\nmod t { use crate::tool; }";
        let found = check("crates/loopwright-app/src/part/a.rs", text);
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].place, "crates/loopwright-app/src/part/a.rs:3");
        assert!(check("crates/loopwright-app/src/tool/a.rs", text).is_empty());
        assert!(check("crates/loopwright-app/src/app.rs", text).is_empty());
        assert!(check("crates/loopwright/src/part/a.rs", text).is_empty());
    }

    /// Were there a ring in the table itself, the rule would allow it.
    #[test]
    fn the_rooms_stand_in_an_order() {
        for (place, (_, below)) in ROOMS.iter().enumerate() {
            for known in *below {
                let at = ROOMS.iter().position(|(room, _)| room == known);
                assert!(at.is_none_or(|at| at < place), "{known}");
            }
        }
    }
}
