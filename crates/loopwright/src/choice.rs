//! Names as types: one of a few things to choose, and the fields by which a question is asked.
//!
//! Each name has a *key*: the word that stands for it in what is stored and in links. A key is a promise: what was kept
//! or linked with it opens for ever, so it is written once, here beside the type, and never derived from an order. The
//! macros write the list of all names and the exhaustive `match` behind [`Key::key`]; a name that is missing from
//! either does not compile. A key that has changed leaves its old one behind, which is read and never written again.
//!
//! ```
//! use loopwright::choice::{Choice, Key};
//! use loopwright::spacing::Decrease;
//!
//! assert_eq!(Decrease::START, Decrease::K2tog);
//! assert_eq!(Decrease::Sk2p.key(), "sk2p");
//! assert_eq!(Decrease::from_key("ssk"), Some(Decrease::Ssk));
//! assert_eq!(Decrease::from_key("SSK"), None);
//! ```

/// A name with the key that it is stored and linked under.
pub trait Key: Copy + Eq + 'static {
    /// All of them. Nothing depends on their order but the order in which they are shown.
    const ALL: &'static [Self];

    /// The word for it in what is stored and linked.
    fn key(self) -> &'static str;

    /// Words that it had before its key was another; they are read and never written.
    fn old_keys(self) -> &'static [&'static str] {
        &[]
    }

    /// What a stored or linked word stands for, if anything.
    fn from_key(key: &str) -> Option<Self> {
        let is_meant = |name: &Self| name.key() == key || name.old_keys().contains(&key);
        Self::ALL.iter().copied().find(is_meant)
    }
}

/// One of a few things to choose from.
pub trait Choice: Key {
    /// What holds before anything is chosen: the same as in the tool's `Question::about`.
    const START: Self;
}

/// The name of a field by which a question is asked, or of one thing that every member of a repeated group has.
pub trait FieldName: Key {
    /// The repeated group it belongs to, such as the sections of a piece.
    const GROUP: Option<&'static GroupName> = None;
}

/// A group of fields that is there several times.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct GroupName {
    /// What it is called in a question: `sections`.
    pub name: &'static str,
    /// What stands before the number of a member in what is stored and linked: the `s` of `s1_stitches`.
    pub stored: &'static str,
}

/// Writes [`Key`] for an enum: `keys!(Side { Right = "right", Wrong = "wrong" });`. Keys that a name had before stand
/// behind the present one: `BackwardLoop = "backward-loop" | "backward loop"`.
#[macro_export]
macro_rules! keys {
    ($name:ident { $($variant:ident = $key:literal $(| $old:literal)*),+ $(,)? }) => {
        impl $name {
            /// The word for it in what is stored and linked.
            pub const fn key(self) -> &'static str {
                match self {
                    $(Self::$variant => $key,)+
                }
            }
        }

        impl $crate::choice::Key for $name {
            const ALL: &'static [Self] = &[$(Self::$variant),+];

            fn key(self) -> &'static str {
                $name::key(self)
            }

            fn old_keys(self) -> &'static [&'static str] {
                match self {
                    $(Self::$variant => &[$($old),*],)+
                }
            }
        }
    };
}

/// Makes an enum a [`Choice`], with what holds before anything is chosen:
/// `choice!(Side starts Right { Right = "right", Wrong = "wrong" });`
#[macro_export]
macro_rules! choice {
    ($name:ident starts $start:ident { $($keys:tt)+ }) => {
        $crate::keys!($name { $($keys)+ });

        impl $crate::choice::Choice for $name {
            const START: Self = Self::$start;
        }
    };
}

/// Makes an enum the names of a question's fields: `field_names!(Name { Stitches = "stitches" });`, or of the fields of
/// a repeated group: `field_names!(SectionName in "sections" stored "s" { Stitches = "stitches" });`
#[macro_export]
macro_rules! field_names {
    ($name:ident { $($keys:tt)+ }) => {
        $crate::keys!($name { $($keys)+ });

        impl $crate::choice::FieldName for $name {}
    };
    ($name:ident in $group:literal stored $stored:literal { $($keys:tt)+ }) => {
        $crate::keys!($name { $($keys)+ });

        impl $crate::choice::FieldName for $name {
            const GROUP: Option<&'static $crate::choice::GroupName> = Some(&$crate::choice::GroupName {
                name: $group,
                stored: $stored,
            });
        }

        impl $name {
            /// This field of one member of the group, counted from nought.
            pub const fn at(self, index: usize) -> $crate::problem::FieldPath {
                $crate::problem::FieldPath::in_group(
                    &$crate::choice::GroupName { name: $group, stored: $stored },
                    index,
                    self.key(),
                )
            }
        }
    };
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::problem::FieldPath;

    #[derive(Clone, Copy, Debug, PartialEq, Eq)]
    enum Ball {
        Small,
        Large,
    }
    choice!(Ball starts Large { Small = "small" | "rather small" | "tiny", Large = "large" });

    #[derive(Clone, Copy, Debug, PartialEq, Eq)]
    enum Name {
        Stitches,
    }
    field_names!(Name { Stitches = "stitches" });

    #[derive(Clone, Copy, Debug, PartialEq, Eq)]
    enum SectionName {
        Stitches,
    }
    field_names!(SectionName in "sections" stored "s" { Stitches = "stitches" });

    #[test]
    fn every_key_stands_for_its_own_name() {
        for ball in Ball::ALL {
            assert_eq!(Ball::from_key(ball.key()), Some(*ball));
        }
        assert_eq!(Ball::START, Ball::Large);
    }

    #[test]
    fn an_old_key_is_read_and_never_written() {
        for old in ["rather small", "tiny"] {
            assert_eq!(Ball::from_key(old).map(Ball::key), Some("small"));
        }
        assert_eq!(Ball::from_key("rather large"), None);
        assert_eq!(Ball::ALL.len(), 2);
    }

    #[test]
    fn a_field_of_a_group_is_another_one_for_each_member() {
        let (first, third) = (SectionName::Stitches.at(0), SectionName::Stitches.at(2));
        assert_ne!(first, third);
        assert_ne!(first, FieldPath::from(Name::Stitches));
        assert_eq!(third.to_string(), "sections[2].stitches");
        assert_eq!(third.stored(), "s3_stitches");
        assert_eq!(third.name::<SectionName>(), Some(SectionName::Stitches));
        assert_eq!((third.name::<Name>(), third.index()), (None, Some(2)));
        assert_eq!(FieldPath::from(Name::Stitches).to_string(), "stitches");
    }
}
