//! The one list of tools.
//!
//! A row is the tool's module and the time its question comes up. The maths, the app and the JavaScript crate all
//! expand this list, so that a tool without its maths, its view, its words or its binding does not compile; menu,
//! routes, titles, links, embedding and the gallery follow from it.

/// When a question comes up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// Before casting on.
    Before,
    /// While it is begun.
    Starting,
    /// While the knitting is on the needles.
    Needles,
    /// With a pattern on the table.
    Text,
}

impl Group {
    /// All of them, in the order of a piece of knitting.
    pub const ALL: [Self; 4] = [Self::Before, Self::Starting, Self::Needles, Self::Text];
}

/// Hands the list of tools to another macro, as `tool in Group,` rows in the order of the menu.
#[macro_export]
macro_rules! each_tool {
    ($then:ident) => {
        $then! {
            swatch in Before,
            gauge in Before,
            sizing in Before,
            regauge in Before,
            needles in Before,
            cords in Before,
            yarn in Before,
            cast_on in Starting,
            tail in Starting,
            spacing in Needles,
            rows in Needles,
            shaping in Needles,
            stairs in Needles,
            flare in Needles,
            yoke in Needles,
            raglan in Needles,
            sizes_in_text in Text,
            written in Text,
        }
    };
}
