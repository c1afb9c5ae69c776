//! Finds tools by the words that knitters use: every word that is typed has to be among a tool's words, whatever its
//! ending; the last may be only begun. A tool whose name or phrase is what was typed comes first, then one that has the
//! words side by side, then the others, each in the order of the menu. Where nothing is found, a word of five letters
//! or more may have one wrong letter.

use crate::tool::{Entry, TOOLS};
use crate::words::search as words;

/// How well a tool answers to what was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Rank {
    /// One of its phrases is what was typed.
    Whole,
    /// One of its phrases has all of the words.
    Phrase,
    /// The words are in several of its phrases.
    Spread,
}

/// The tools that answer to a text, the best first; none where nothing was typed to look for.
pub fn find(text: &str) -> Option<Vec<&'static Entry>> {
    let wanted = wanted(text);
    if wanted.is_empty() {
        return None;
    }
    let found = found(&wanted, is_met);
    // Only what would find nothing is taken for a slip of the finger.
    Some(if found.is_empty() {
        self::found(&wanted, is_misspelt)
    } else {
        found
    })
}

/// Whether a word is the one that was typed; `true` beside the last that was.
type IsMet = fn(&str, &str, bool) -> bool;

/// The tools that have all of the words, the best first.
fn found(wanted: &[String], is_met: IsMet) -> Vec<&'static Entry> {
    let ranked: Vec<_> = TOOLS.iter().map(|tool| (rank(tool, wanted, is_met), tool)).collect();
    let mut found = Vec::new();
    for rank in [Rank::Whole, Rank::Phrase, Rank::Spread] {
        let equal = ranked.iter().filter(|(of_tool, _)| *of_tool == Some(rank));
        found.extend(equal.map(|(_, tool)| *tool));
    }
    found
}

/// The words that say what is looked for; all of them, where none does.
fn wanted(text: &str) -> Vec<String> {
    let all = read(text);
    let telling: Vec<String> = all
        .iter()
        .filter(|word| !words::ASIDE.contains(&word.as_str()))
        .cloned()
        .collect();
    if telling.is_empty() { all } else { telling }
}

fn rank(tool: &Entry, wanted: &[String], is_met: IsMet) -> Option<Rank> {
    let phrases = words::words_for(tool.id).chain([tool.title.name]);
    let phrases: Vec<Vec<String>> = phrases.map(read).collect();
    let is_whole = |phrase: &Vec<String>| phrase.len() == wanted.len() && has_all(phrase, wanted, is_met);
    if phrases.iter().any(is_whole) {
        return Some(Rank::Whole);
    }
    if phrases.iter().any(|phrase| has_all(phrase, wanted, is_met)) {
        return Some(Rank::Phrase);
    }
    // What a tool asks is a whole sentence, in which words stand side by side that do not belong together.
    let spread = [phrases.concat(), read(tool.title.asks)].concat();
    has_all(&spread, wanted, is_met).then_some(Rank::Spread)
}

fn has_all(known: &[String], wanted: &[String], is_met: IsMet) -> bool {
    let last = wanted.len().saturating_sub(1);
    let is_known = |(place, word): (usize, &String)| known.iter().any(|known| is_met(known, word, place == last));
    wanted.iter().enumerate().all(is_known)
}

/// Whether a word is the one that was typed, but for its ending, or begins with it. The last word may be of one letter
/// yet; of others that would say too little.
fn is_met(known: &str, typed: &str, is_last: bool) -> bool {
    const TELLING: usize = 3;
    let may_be_begun = is_last || typed.len() >= TELLING;
    let begins = may_be_begun && (known.starts_with(typed) || is_begun_as_another(known, typed));
    words::stem(known) == words::stem(typed) || begins
}

/// Whether a word is the one that was typed but for one wrong letter; short words are too like each other for that.
fn is_misspelt(known: &str, typed: &str, is_last: bool) -> bool {
    const ENOUGH: usize = 5;
    let is_as_long = known.len() >= ENOUGH && known.len() == typed.len();
    let wrong = known.bytes().zip(typed.bytes()).filter(|(one, other)| one != other);
    is_met(known, typed, is_last) || is_as_long && wrong.count() == 1
}

/// Whether a word that is begun may become one that is read as the known one: "tens" on the way to "tension".
fn is_begun_as_another(known: &str, typed: &str) -> bool {
    let becomes = |others: &[&str]| matches!(others, [other] if other.starts_with(typed));
    let mut same = words::SAME.iter();
    same.any(|(others, one)| becomes(others) && one.contains(&known))
}

/// The words of a text in small letters, those that mean the same read as one.
fn read(text: &str) -> Vec<String> {
    let mut read = Vec::new();
    for word in text.split(words::parts) {
        parted(word, &mut read);
    }
    for (others, one) in words::SAME {
        replace(&mut read, others, one);
    }
    read
}

/// Long-tail is two words; i-cord and v-neck are one each.
fn parted(word: &str, read: &mut Vec<String>) {
    let parts = || word.split('-').filter(|part| !part.is_empty());
    if parts().any(|part| part.len() == 1) {
        read.push(words::small(&parts().collect::<String>()));
    } else {
        read.extend(parts().map(words::small));
    }
}

/// Puts some words in the place of others wherever those stand side by side.
fn replace(read: &mut Vec<String>, others: &[&str], with: &[&str]) {
    let mut place = 0;
    while place + others.len() <= read.len() {
        if read[place..place + others.len()] == *others {
            read.splice(place..place + others.len(), with.iter().map(|word| (*word).to_owned()));
            place += with.len();
        } else {
            place += 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What is typed, and the tools that come first; more may follow.
    const TYPED: &[(&str, &[&str])] = &[
        ("ease", &["sizing"]),
        ("negative ease", &["sizing"]),
        ("Which size should I knit?", &["sizing"]),
        ("increase evenly", &["spacing"]),
        ("increasing evenly", &["spacing"]),
        ("decrease evenly", &["spacing"]),
        ("decreases evenly", &["spacing"]),
        ("inc evenly", &["spacing"]),
        ("dec evenly across", &["spacing"]),
        ("evenly spaced", &["spacing"]),
        ("k2tog", &["spacing"]),
        ("long tail", &["tail"]),
        ("long-tail cast-on", &["tail"]),
        ("tail", &["tail"]),
        ("how much yarn", &["yarn"]),
        ("how much yarn do I need", &["yarn"]),
        ("yardage", &["yarn"]),
        ("metreage", &["yarn"]),
        ("how many skeins", &["yarn"]),
        ("tension", &["gauge", "swatch"]),
        ("tension square", &["swatch"]),
        ("row tension", &["gauge", "rows"]),
        ("cast off", &["stairs"]),
        ("bind-off", &["stairs"]),
        ("cast on", &["cast_on"]),
        ("CO", &["cast_on"]),
        ("how many stitches to cast on", &["cast_on"]),
        ("circular needle", &["cords"]),
        ("circulars", &["cords"]),
        ("cord", &["cords"]),
        ("magic loop", &["cords"]),
        ("DPNs", &["cords"]),
        ("i-cord", &["yarn"]),
        ("icord", &["yarn"]),
        ("i cord", &["yarn"]),
        ("needle sizes", &["needles"]),
        ("US needle size", &["needles"]),
        ("short rows", &["stairs"]),
        ("shoulder", &["stairs"]),
        ("neckline", &["stairs"]),
        ("sleeve decreases", &["shaping"]),
        ("decrease every 6th row", &["shaping"]),
        ("how many rows", &["rows"]),
        ("garter ridge", &["rows"]),
        ("different gauge", &["regauge"]),
        ("convert pattern", &["regauge"]),
        ("adapt a pattern to another yarn", &["regauge"]),
        ("swatch", &["swatch"]),
        ("circular yoke", &["yoke"]),
        ("colourwork yoke", &["yoke"]),
        ("raglan", &["raglan"]),
        ("top-down jumper", &["raglan"]),
        ("skirt", &["flare"]),
        ("ruffles", &["flare"]),
        ("poncho", &["sizing", "flare"]),
        ("pick up stitches", &["spacing"]),
        ("knit 2 together", &["spacing", "shaping"]),
        ("raglen", &["raglan"]),
        ("shoulter slope", &["stairs"]),
        ("hat", &["cast_on"]),
        ("markers", &["cast_on"]),
        ("eas", &["sizing"]),
        ("sho", &["stairs"]),
        ("ragl", &["raglan"]),
        ("tens", &["gauge"]),
        ("how many ske", &["yarn"]),
    ];

    fn ids(text: &str) -> Vec<&'static str> {
        find(text).unwrap_or_default().iter().map(|tool| tool.id).collect()
    }

    #[test]
    fn a_tool_is_found_by_the_words_knitters_use() {
        let others = TYPED.iter().filter(|(text, first)| !ids(text).starts_with(first));
        let others: Vec<_> = others.map(|(text, _)| (text, ids(text))).collect();
        assert!(others.is_empty(), "{others:#?}");
    }

    #[test]
    fn an_i_cord_is_no_cord_of_a_needle() {
        for text in ["i-cord", "I-cord", "icord", "i cord", "i-cords"] {
            assert!(!ids(text).contains(&"cords"), "{text}: {:?}", ids(text));
        }
    }

    #[test]
    fn every_tool_is_found_by_its_name_and_by_each_of_its_words() {
        for tool in TOOLS {
            assert!(ids(tool.title.name).contains(&tool.id), "{}", tool.id);
            assert!(words::words_for(tool.id).count() > 5, "{}", tool.id);
            for line in words::words_for(tool.id) {
                assert!(ids(line).contains(&tool.id), "{}: {line}", tool.id);
            }
        }
    }

    #[test]
    fn what_no_tool_does_is_not_found() {
        for text in [
            "buttonhole",
            "sock heel",
            "crochet",
            "xyz",
            "pick up stitches along a thumb gusset",
        ] {
            assert_eq!(ids(text), [""; 0], "{text}");
        }
    }

    #[test]
    fn nothing_is_looked_for_before_anything_is_typed() {
        for text in ["", "  ", "?!", "-"] {
            assert!(find(text).is_none(), "{text:?}");
        }
        // Words that say little are looked for where there are no others.
        assert!(find("how").is_some());
    }
}
