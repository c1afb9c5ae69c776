//! What a knitter should know beside the count. Data only: the page makes the sentences.

use super::{Count, Knitting, Question};

/// One thing to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Note {
    /// `plus` stitches were dropped, since a round has no edges.
    PlusDropped {
        /// How many were asked for.
        plus: u32,
    },
    /// Join by working the first and the last stitch together; so many are left.
    JoinTogether {
        /// Stitches in the round from then on.
        after: u32,
    },
    /// The seams take in so many, and they are outside the width. One an edge is common practice, no source.
    SeamsTakeIn {
        /// Stitches, both edges together.
        stitches: u32,
    },
    /// Edge stitches stay to be seen, and make the piece wider than was asked.
    EdgesWiden {
        /// Stitches, both edges together.
        stitches: u32,
    },
}

pub(super) fn notes(question: &Question, pick: &Count) -> Vec<Note> {
    let mut notes = Vec::new();
    match question.knitting {
        Knitting::Round { extra } => {
            if question.multiple.plus > 0 {
                let plus = question.multiple.plus;
                notes.push(Note::PlusDropped { plus });
            }
            if extra {
                let after = pick.worked;
                notes.push(Note::JoinTogether { after });
            }
        }
        Knitting::Flat { edge, seam } => {
            if seam > 0 {
                let stitches = 2 * seam;
                notes.push(Note::SeamsTakeIn { stitches });
            }
            if edge > 0 {
                let stitches = 2 * edge;
                notes.push(Note::EdgesWiden { stitches });
            }
        }
    }
    notes
}
