//! The stitches that are known by name: what each takes from the left needle and gives to the right one.
//!
//! The names are those of the trade body's list of abbreviations (Craft Yarn Council, the list that goes with its
//! Standards & Guidelines): **from memory**, edition not seen. Those marked [`Certainty::Practice`] are not on that list
//! as far as we remember, or are British: common practice, no source. What a stitch takes and gives follows from how it is
//! made.

use super::Certainty;
use crate::tables::{Source, Taken};

/// Where the names are from that the list has.
pub(crate) const LIST: Source = Taken::Abbreviations.from_memory();

/// The list has it.
const LISTED: Certainty = LIST.certainty();
/// The list does not have it, as far as we remember.
const PRACTICE: Certainty = Certainty::Practice;

/// A stitch, or a way to make one, as the trade writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Technique {
    /// Its abbreviation.
    pub written: &'static str,
    /// Other ways to write it, in small letters.
    pub also: &'static [&'static str],
    /// Stitches taken from the left needle.
    pub uses: u32,
    /// Stitches put on the right needle.
    pub gives: u32,
    /// Stitches on the right needle that are passed over, and so lost: 1 for psso.
    pub lifts: u32,
    /// What a number behind it counts.
    pub sort: Sort,
    /// How sure it is that the list has it.
    pub certainty: Certainty,
}

/// What a number behind a stitch counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Sort {
    /// Stitches: `k7`, `sl 2`.
    Plain,
    /// Nothing: it is said how many times, `k2tog 3 times`.
    Change,
}

const fn plain(written: &'static str, also: &'static [&'static str], certainty: Certainty) -> Technique {
    Technique {
        written,
        also,
        uses: 1,
        gives: 1,
        lifts: 0,
        sort: Sort::Plain,
        certainty,
    }
}

const fn change(
    written: &'static str,
    also: &'static [&'static str],
    [uses, gives]: [u32; 2],
    certainty: Certainty,
) -> Technique {
    Technique {
        written,
        also,
        uses,
        gives,
        lifts: 0,
        sort: Sort::Change,
        certainty,
    }
}

const fn over(written: &'static str, also: &'static [&'static str], lifts: u32) -> Technique {
    Technique {
        written,
        also,
        uses: 0,
        gives: 0,
        lifts,
        sort: Sort::Change,
        certainty: LISTED,
    }
}

/// All that are known by name. Decreases of any number (`k4tog`), cables (`2/2 RC`, `C4F`) and her own words are read
/// beside them.
pub const TECHNIQUES: &[Technique] = &[
    plain("k", &["knit"], LISTED),
    plain("p", &["purl"], LISTED),
    plain("sl", &["slip"], LISTED),
    plain("patt", &["pat", "pattern"], LISTED),
    plain("work", &["wk", "cont", "continue"], PRACTICE),
    plain("rib", &[], PRACTICE),
    plain("ktbl", &["k1tbl"], LISTED),
    plain("ptbl", &["p1tbl"], LISTED),
    change("sl1k", &[], [1, 1], LISTED),
    change("sl1p", &[], [1, 1], LISTED),
    change("k2tog", &[], [2, 1], LISTED),
    change("ssk", &["k2togtbl"], [2, 1], LISTED),
    change("skp", &["skpo", "s1kp", "s1k1psso"], [2, 1], LISTED),
    change("p2tog", &[], [2, 1], LISTED),
    change("ssp", &["p2togtbl"], [2, 1], LISTED),
    change("k3tog", &[], [3, 1], LISTED),
    change("p3tog", &[], [3, 1], LISTED),
    change("sssk", &["k3togtbl"], [3, 1], LISTED),
    change("sssp", &["p3togtbl"], [3, 1], LISTED),
    change("sk2p", &["sk2po", "sk2togp"], [3, 1], LISTED),
    change("s2kp", &["s2kp2", "s2k1p", "s2kpo", "s2kp2sso"], [3, 1], LISTED),
    change("cdd", &[], [3, 1], LISTED),
    change("cddp", &[], [3, 1], PRACTICE),
    change("m1", &["m1k"], [0, 1], LISTED),
    change("m1l", &[], [0, 1], LISTED),
    change("m1r", &[], [0, 1], LISTED),
    change("m1p", &[], [0, 1], LISTED),
    change("m1lp", &["m1pl"], [0, 1], LISTED),
    change("m1rp", &["m1pr"], [0, 1], LISTED),
    change("lli", &[], [0, 1], PRACTICE),
    change("rli", &[], [0, 1], PRACTICE),
    change("yo", &["yfwd", "yrn", "yon", "yfrn"], [0, 1], LISTED),
    change("kfb", &["k1f&b", "kf&b", "k1fb"], [1, 2], LISTED),
    change("pfb", &["p1f&b", "pf&b", "p1fb"], [1, 2], LISTED),
    change("kfbf", &[], [1, 3], PRACTICE),
    change("lt", &[], [2, 2], LISTED),
    change("rt", &[], [2, 2], LISTED),
    change("mb", &[], [1, 1], LISTED),
    change("ds", &["mds"], [1, 1], PRACTICE),
    over("psso", &["p1sso"], 1),
    over("p2sso", &[], 2),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::Stitch;

    #[test]
    fn no_two_are_written_alike() {
        let mut names: Vec<&str> = TECHNIQUES
            .iter()
            .flat_map(|one| one.also.iter().chain([&one.written]).copied())
            .collect();
        let all = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all);
    }

    /// Both modules say the same of a stitch that both know.
    #[test]
    fn they_count_as_the_stitches_of_a_row_do() {
        for stitch in Stitch::ALL {
            let name = stitch.abbreviation().trim().to_lowercase();
            let Some(technique) = TECHNIQUES.iter().find(|one| one.written == name) else {
                // Written in two words: p3tog with its manner, tbl.
                assert_eq!(stitch, Stitch::P3togTbl);
                continue;
            };
            assert_eq!(
                (technique.uses, technique.gives),
                (stitch.uses(), stitch.gives()),
                "{name}"
            );
        }
    }
}
