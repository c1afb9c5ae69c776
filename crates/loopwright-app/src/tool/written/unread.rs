//! What could not be read: each place with what is looked for there, her own words offered to be named, and the lines in which
//! nothing could be read as a row.

use crate::part::View;
use crate::part::plain::{button, element, folded, items, text_element};
use crate::store::Typed;
use crate::words::written as words;
use loopwright::written::{Answer, LineKind, Name, Question};
use std::collections::BTreeSet;
use yew::prelude::*;

/// Places that are pointed at.
const MOST_POINTED: usize = 30;

/// Lines that are quoted.
const MOST_QUOTED: usize = 40;

/// What is wrong in lines that would be rows.
pub fn faults(view: &View, question: &Question, answer: &Answer) -> Html {
    let lines = answer
        .lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.kind == LineKind::Unread);
    let mut named = BTreeSet::new();
    let mut said = Vec::new();
    for (at, line) in lines {
        let place = line.place.start..=line.place.end;
        for fault in answer.faults.iter().filter(|fault| place.contains(&fault.place.start)) {
            let sentence = words::fault_in(line, at, fault, &question.text);
            let word = fault.place.text(&question.text).to_owned();
            let offers = words::is_word(fault) && named.insert(word.to_lowercase());
            let offer = if offers { mine(view, word) } else { Html::default() };
            said.push(element("li", "", vec![text_element("span", "", sentence), offer]));
        }
    }
    if said.is_empty() {
        return Html::default();
    }
    let more = said.len().saturating_sub(MOST_POINTED);
    said.truncate(MOST_POINTED);
    if let Ok(more @ 1..) = u32::try_from(more) {
        said.push(text_element("li", "", words::more_unread(more)));
    }
    let heading = text_element("h3", "", words::NOT_READ);
    element("section", "notes", vec![heading, element("ul", "pointed", said)])
}

/// A tap that writes a word down as a stitch of hers, which uses one and gives one until she says otherwise.
fn mine(view: &View, word: String) -> Html {
    let path = Name::OwnStitches.into();
    if view.sheet.locks(path) {
        return Html::default();
    }
    let sheet = view.sheet.clone();
    let onclick = Callback::from(move |_| {
        let before = sheet.desk.text(sheet.id, Name::OwnStitches.key());
        let before = before.map_or_else(String::new, |typed| typed.text);
        let text = words::own_stitch_added(&before, &word);
        sheet
            .desk
            .write(sheet.id, Name::OwnStitches.key(), Some(Typed::plain(text)));
    });
    button(words::IT_IS_MINE.into(), onclick)
}

/// Lines in which nothing could be read as a row: headings, the sizes, sentences.
pub fn no_rows(question: &Question, answer: &Answer) -> Html {
    let is_none = |kind| matches!(kind, LineKind::Sentence | LineKind::Sizes | LineKind::Heading);
    let lines = answer.lines.iter().filter(|line| is_none(line.kind));
    let quoted: Vec<String> = lines
        .map(|line| words::no_row(line.place.text(&question.text)))
        .collect();
    if quoted.is_empty() {
        return Html::default();
    }
    let more = quoted.len().saturating_sub(MOST_QUOTED);
    let mut shown: Vec<String> = quoted.into_iter().take(MOST_QUOTED).collect();
    if let Ok(more @ 1..) = u32::try_from(more) {
        shown.push(words::more_no_rows(more));
    }
    folded("meanings", words::NO_ROWS, vec![items("ul", shown)])
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What a tap writes down is read.
    #[test]
    fn a_word_that_is_named_is_read() {
        let text = words::own_stitch_added("bobbly uses 1 gives 5", "wibble");
        let own = loopwright::written::read_own(&text).unwrap();
        assert_eq!(
            (own.len(), own[1].word.as_str(), own[1].uses, own[1].gives),
            (2, "wibble", 1, 1)
        );
    }
}
