//! Facts that a field asks for and that it cannot read: without a word about them it would only stand empty, or hold what it
//! starts with.

use super::Kept;
use crate::form::{Field, Fields, Kind};
use crate::store::{self, Typed};

impl Fields {
    /// The fact that a field asks for and cannot read, as typed. Where something of her own stands in the field, what the
    /// project has is not asked for; and a list is given as it stands, since its tool says itself what is wrong with it.
    pub fn unread_fact(&self, field: &'static Field, known: &store::Fields) -> Option<(Kept, Typed)> {
        if self.is_typed_at(self.path_of(field)) || matches!(field.kind, Kind::List(_)) {
            return None;
        }
        let facts = field.asked_facts(self).into_iter();
        let mut known = facts.filter_map(|kept| Some((kept, known.get(kept.key())?)));
        let (kept, typed) = known.find(|(_, typed)| !typed.text.trim().is_empty())?;
        let typed = kept.renewed(typed.clone());
        (!field.takes(&typed)).then_some((kept, typed))
    }

    /// All of them, of the fields that are asked.
    pub fn unread_facts(&self, known: &store::Fields) -> Vec<(Kept, Typed)> {
        let asked = self.table(None).filter(|field| (field.asked)(self));
        asked.filter_map(|field| self.unread_fact(field, known)).collect()
    }
}
