//! Where a field gets its text from, if nothing was typed into it.
//!
//! A reference is kept as a short text: `fact gauge_stitches`, `step 3 after`, `gone Yoke`.

use crate::project::StepId;
use std::fmt;

/// Where a text comes from.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Reference {
    /// A fact of the project, by its key.
    Fact(String),
    /// What a step hands on.
    Step {
        /// The step.
        step: StepId,
        /// The key of what it hands on.
        gift: String,
    },
    /// A step that was taken out, by the name it had. The text that it last gave stands in the field, as if typed.
    Gone(String),
}

impl Reference {
    /// The reference that a kept text means; none where it means nothing to this version.
    pub fn parse(text: &str) -> Option<Self> {
        let (kind, rest) = text.split_once(' ')?;
        match kind {
            "fact" => Some(Self::Fact(rest.to_owned())),
            "step" => {
                let (step, gift) = rest.split_once(' ')?;
                let (step, gift) = (StepId::parse(step)?, gift.to_owned());
                Some(Self::Step { step, gift })
            }
            "gone" => Some(Self::Gone(rest.to_owned())),
            _ => None,
        }
    }
}

impl fmt::Display for Reference {
    fn fmt(&self, text: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Fact(key) => write!(text, "fact {key}"),
            Self::Step { step, gift } => write!(text, "step {step} {gift}"),
            Self::Gone(name) => write!(text, "gone {name}"),
        }
    }
}
