//! Her word about a list, and where it holds: in the line with these words, for the how-manyth list of it. It outlives
//! what is changed in other lines; where the line itself is changed it is asked anew.

use super::{Found, LinePlace, List};

/// A list, named by its line.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ListPlace {
    /// Its line.
    pub line: LinePlace,
    /// How many lists stand before it in the line, those in doubt included.
    pub nth: usize,
}

/// What she says of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Verdict {
    /// It has one number for each size, as it stands.
    List,
    /// It is none: all of it is for every size.
    ForAll,
    /// Of this size it is this entry, whatever else is wrong with it.
    Number {
        /// The size, counted from nought.
        size: usize,
        /// The entry, counted from nought.
        entry: usize,
    },
}

/// Her word about one list.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Decision {
    /// About which list.
    pub list: ListPlace,
    /// What she says.
    pub verdict: Verdict,
}

impl Found {
    /// The name of a list, of the text in which it was found.
    pub fn place(&self, text: &str, list: &List) -> Option<ListPlace> {
        let line = self.lines.place(text, list.line)?;
        Some(ListPlace { line, nth: list.nth })
    }

    /// Which list is called so, if there still is one.
    pub fn at_place(&self, text: &str, place: &ListPlace) -> Option<usize> {
        let line = self.lines.line(text, &place.line)?;
        self.lists
            .iter()
            .position(|list| list.line == line && list.nth == place.nth)
    }

    /// What is said of each list. A later word counts more than an earlier one about the same size.
    pub(super) fn verdicts(&self, text: &str, decisions: &[Decision]) -> Vec<Vec<Verdict>> {
        let mut verdicts = vec![Vec::new(); self.lists.len()];
        for decision in decisions {
            let at = self.at_place(text, &decision.list);
            if let Some(said) = at.and_then(|at| verdicts.get_mut(at)) {
                said.push(decision.verdict);
            }
        }
        verdicts
    }
}

/// What a list is for a size, by her word where there is one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Taken {
    /// Text like any other.
    Plain,
    /// This entry is hers.
    Entry(usize),
    /// It has to be asked.
    InDoubt,
}

/// What a list is for a size.
pub(super) fn taken(list: &List, sizes: usize, size: usize, said: &[Verdict]) -> Taken {
    let is_whole = list.entries.len() == sizes;
    for verdict in said.iter().rev() {
        match *verdict {
            Verdict::ForAll => return Taken::Plain,
            Verdict::List if is_whole => return entry(list, size),
            Verdict::Number { size: of, entry: at } if of == size => return entry(list, at),
            Verdict::List | Verdict::Number { .. } => {}
        }
    }
    if list.doubt.is_some() {
        Taken::InDoubt
    } else {
        entry(list, size)
    }
}

/// This entry, where there is one.
fn entry(list: &List, at: usize) -> Taken {
    if at < list.entries.len() {
        Taken::Entry(at)
    } else {
        Taken::InDoubt
    }
}
