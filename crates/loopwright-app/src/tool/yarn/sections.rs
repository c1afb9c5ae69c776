//! Which sections a piece has. That follows from what is stored: each has a number, the first is there from the start,
//! and one that is taken out keeps what was typed, so that it can be brought back.

use crate::form::Fields;
use loopwright::yarn::{Presence, SECTIONS, SectionName};

/// The sections that are in the piece, counted from nought; the first if none is.
pub fn sections(fields: &Fields) -> Vec<usize> {
    let mut stored = fields.typed_members::<SectionName>();
    stored.insert(0);
    let is_in = |index: &usize| match fields.member(*index).choice(SectionName::On) {
        Presence::In => true,
        Presence::Out => false,
    };
    let sections: Vec<usize> = stored.into_iter().filter(is_in).collect();
    if sections.is_empty() { vec![0] } else { sections }
}

/// Whether a piece has several sections, so that they may be of several yarns.
pub fn are_several(fields: &Fields) -> bool {
    sections(fields).len() > 1
}

/// Whether the section that these fields are of is the first of the piece; one after it goes on from live stitches.
pub fn is_first(fields: &Fields) -> bool {
    sections(fields).first().copied() == fields.index()
}

/// Whether a section is in the piece before anything is said of it.
pub fn usual_presence(fields: &Fields) -> String {
    let presence = match fields.index() {
        None | Some(0) => Presence::In,
        Some(_) => Presence::Out,
    };
    presence.key().into()
}

/// The section that is added next: the first that is neither in the piece nor was taken out of it; none where there are
/// as many as there may be.
pub fn fresh(fields: &Fields) -> Option<usize> {
    let sections = sections(fields);
    if sections.len() >= SECTIONS.most as usize {
        return None;
    }
    (0..).find(|index| !sections.contains(index) && !has_figures(fields, *index))
}

/// A section that was taken out with figures in it.
pub fn taken_out(fields: &Fields) -> Option<usize> {
    let sections = sections(fields);
    let stored = fields.typed_members::<SectionName>().into_iter();
    let mut out = stored.filter(|index| !sections.contains(index));
    out.find(|index| has_figures(fields, *index))
}

fn has_figures(fields: &Fields, index: usize) -> bool {
    let section = fields.member(index);
    section.is_typed(SectionName::Stitches) || section.is_typed(SectionName::Width)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::route;
    use crate::tool::Tool;

    fn fields(link: &str) -> Fields {
        let typed = route::to_fields(&route::parse_query(link));
        Fields::new(super::super::Yarn::FIELDS, typed, Settings::default())
    }

    #[test]
    fn the_first_section_is_there_from_the_start() {
        for link in ["", "s1_rows=4", "s1_on=", "s1_on=no", "s2_stitches=9"] {
            assert_eq!(sections(&fields(link)), [0], "{link}");
        }
        assert_eq!(sections(&fields("s1_on=no&s2_on=yes")), [1]);
    }

    #[test]
    fn there_may_be_as_many_as_the_maths_takes() {
        let all = fields("s2_on=yes&s7_on=yes&s7_stitches=9&s12_on=yes&s130_on=yes&s0_on=yes");
        assert_eq!(sections(&all), [0, 1, 6, 11, 129]);
        assert!(is_first(&all.member(0)) && !is_first(&all.member(6)));
        let mut link = String::new();
        for number in 2..=200 {
            link += &format!("&s{number}_on=yes");
        }
        assert_eq!(sections(&fields(&link)).len(), 200);
        assert_eq!(fresh(&fields(&link)), None);
    }

    #[test]
    fn one_that_was_taken_out_is_brought_back_and_never_written_over() {
        assert_eq!((fresh(&fields("")), taken_out(&fields(""))), (Some(1), None));
        let out = fields("s2_on=no&s2_stitches=90&s3_on=no&s3_rows=8");
        assert_eq!((fresh(&out), taken_out(&out)), (Some(2), Some(1)));
        // A link that has figures for a section without saying that it is there.
        let hidden = fields("s4_width=20");
        assert_eq!((fresh(&hidden), taken_out(&hidden)), (Some(1), Some(3)));
    }
}
