//! What is good to know of a pattern at another gauge.

use super::super::intl::fill_pattern;
use loopwright::regauge::Note;

/// One note.
pub fn note(note: Note) -> String {
    match note {
        Note::PlusDropped { plus } => fill_pattern(
            "A round has no edges, so the # {stitch|stitches} beside the repeats {is|are} dropped.",
            &[plus],
        ),
        Note::Outside => "Edges and the join are in the counts, not in their measures.".into(),
        Note::SpansDiffer => "The spans differ, and are compared so: 4 in are longer than 10 cm.".into(),
        Note::SameRow { repeat } => fill_pattern(
            "Rows end in the same row of the repeat of # as in the pattern, wherever in it that is. Stitches go to whole repeats.",
            &[repeat],
        ),
        Note::SameSide => "Back and forth, an even number of rows stays even and an odd one odd: the last is on the same side.".into(),
        Note::SharedOut => {
            "Both ends and the rows are converted, and the shaping is shared out anew: “every 6th row” is no rate at another gauge."
                .into()
        },
        Note::RowOneIsRightSide => "Row 1 of the shaping is taken to be a right-side row.".into(),
    }
}
