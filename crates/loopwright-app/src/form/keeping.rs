//! Which facts of a project a field stands for: what it is given, what it is offered, and under which name its value is kept.

use super::kept::Kept;
use super::{Field, Fields};

/// Which facts of the project a field stands for.
#[derive(Clone, Copy)]
pub enum Keeping {
    /// None.
    Nothing,
    /// This one.
    As(Kept),
    /// The first, and where the project does not know that, the second.
    Either(Kept, Kept),
    /// One that depends on the other fields.
    By(fn(&Fields) -> Kept),
    /// None by itself: this one is offered, and once she takes it the field follows it.
    Offered(Kept),
    /// None by itself: every count that has a name is offered, and once she takes one the field follows it.
    Counts,
}

impl Field {
    /// Its value is offered to be taken from and kept under a name that holds for all tools.
    pub const fn kept(self, name: Kept) -> Self {
        Self {
            kept: Keeping::As(name),
            ..self
        }
    }

    /// The same, where another fact is taken as long as the project does not know the first.
    pub const fn kept_or(self, name: Kept, otherwise: Kept) -> Self {
        Self {
            kept: Keeping::Either(name, otherwise),
            ..self
        }
    }

    /// The same, under a name that depends on the other fields.
    pub const fn kept_by(self, name: fn(&Fields) -> Kept) -> Self {
        Self {
            kept: Keeping::By(name),
            ..self
        }
    }

    /// A kept value is offered to be taken, and what stands in the field is not offered to be kept: it is several counts,
    /// or what is only hoped for.
    pub const fn taken(self, name: Kept) -> Self {
        Self {
            kept: Keeping::As(name),
            take_only: true,
            ..self
        }
    }

    /// A fact that is often meant here, and not always: it is offered, and given only once she takes it.
    pub const fn offering(self, name: Kept) -> Self {
        Self {
            kept: Keeping::Offered(name),
            ..self
        }
    }

    /// It asks for stitches, and which ones is for her to say: each count of the project is offered.
    pub const fn offering_counts(self) -> Self {
        Self {
            kept: Keeping::Counts,
            ..self
        }
    }

    /// The fact of the project that it stands for as the other fields stand, if for any.
    pub fn kept_name(&self, fields: &Fields) -> Option<Kept> {
        match self.kept {
            Keeping::Nothing | Keeping::Offered(_) | Keeping::Counts => None,
            Keeping::As(name) | Keeping::Either(name, _) => Some(name),
            Keeping::By(name) => Some(name(fields)),
        }
    }

    /// The facts that it asks for, in the order in which it does.
    pub fn asked_facts(&self, fields: &Fields) -> Vec<Kept> {
        let otherwise = match self.kept {
            Keeping::Either(_, otherwise) => Some(otherwise),
            Keeping::Nothing | Keeping::As(_) | Keeping::By(_) | Keeping::Offered(_) | Keeping::Counts => None,
        };
        self.kept_name(fields).into_iter().chain(otherwise).collect()
    }
}
