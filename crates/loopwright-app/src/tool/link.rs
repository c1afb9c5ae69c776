//! What a tool takes of a link that somebody wrote.

use super::Entry;
use crate::form::taken::{LeftOut, Why, take};
use crate::route::{InVain, read_fields};
use crate::store;

/// What a tool takes of a link.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Taken {
    /// The fields that the tool has.
    pub fields: store::Fields,
    /// What it has not.
    pub left_out: LeftOut,
}

impl Entry {
    /// What of a link's fields is this tool's.
    pub fn take(&self, pairs: &[(String, String)]) -> Taken {
        let (fields, in_vain) = read_fields(pairs);
        let mut left_out = LeftOut::default();
        let fields = take(self.fields, fields, &mut left_out);
        for said in in_vain {
            match said {
                InVain::Repeated(name) => left_out.note(&name, Why::Repeated),
                InVain::Alone(name) => left_out.note(&name, Why::Unknown),
            }
        }
        Taken { fields, left_out }
    }
}

#[cfg(test)]
mod tests;
