//! What one stitch does to the count: how many it uses from the left needle and how many it gives to the right.
//!
//! Knit uses one and gives one; k2tog uses two and gives one; M1 lifts the bar between two stitches, so it uses none
//! and gives one; kfb uses one and gives two. Everything else about counting follows from these two numbers.
//! Source: the definitions of the stitches themselves (common practice, no source).
//!
//! ```
//! use loopwright::row::Stitch;
//! assert_eq!((Stitch::K2tog.uses(), Stitch::K2tog.gives()), (2, 1));
//! assert_eq!(Stitch::K2tog.mirror(), Stitch::Ssk);
//! assert_eq!(Stitch::K2tog.on_purl_side(), Stitch::P2tog);
//! ```

/// A stitch as the trade writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Stitch {
    /// Knit one.
    Knit,
    /// Purl one.
    Purl,
    /// Work one in the rib as it is set.
    Rib,
    /// Knit two together: one stitch fewer, leaning right.
    K2tog,
    /// Slip, slip, knit the two together: one stitch fewer, leaning left.
    Ssk,
    /// Purl two together: k2tog from the purl side.
    P2tog,
    /// Slip, slip, purl the two together through the back: ssk from the purl side.
    Ssp,
    /// Slip one, k2tog, pass the slipped stitch over: two stitches fewer, leaning left.
    Sk2p,
    /// Knit three together: two stitches fewer, leaning right.
    K3tog,
    /// Purl three together: k3tog from the purl side.
    P3tog,
    /// Purl three together through the back: sk2p from the purl side.
    P3togTbl,
    /// Centred double decrease: two stitches fewer, leaning neither way.
    Cdd,
    /// Centred double decrease from the purl side.
    Cddp,
    /// Make one from the bar between two stitches.
    M1,
    /// Make one, leaning left.
    M1L,
    /// Make one, leaning right.
    M1R,
    /// Make one purlwise.
    M1p,
    /// Make one purlwise, leaning left.
    M1Lp,
    /// Make one purlwise, leaning right.
    M1Rp,
    /// Yarn over.
    Yo,
    /// Knit into the front and the back of one stitch.
    Kfb,
    /// Purl into the front and the back of one stitch.
    Pfb,
}

/// Which way a change leans for a right-handed knitter, seen from the knit side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Lean {
    /// To the left.
    Left,
    /// To the right.
    Right,
    /// Neither way.
    Upright,
}

impl Stitch {
    /// Every stitch that can be written, in the order of this file.
    pub const ALL: [Self; 22] = [
        Self::Knit,
        Self::Purl,
        Self::Rib,
        Self::K2tog,
        Self::Ssk,
        Self::P2tog,
        Self::Ssp,
        Self::Sk2p,
        Self::K3tog,
        Self::P3tog,
        Self::P3togTbl,
        Self::Cdd,
        Self::Cddp,
        Self::M1,
        Self::M1L,
        Self::M1R,
        Self::M1p,
        Self::M1Lp,
        Self::M1Rp,
        Self::Yo,
        Self::Kfb,
        Self::Pfb,
    ];

    /// Stitches taken from the left needle.
    pub const fn uses(self) -> u32 {
        match self {
            Self::Knit | Self::Purl | Self::Rib | Self::Kfb | Self::Pfb => 1,
            Self::K2tog | Self::Ssk | Self::P2tog | Self::Ssp => 2,
            Self::Sk2p | Self::K3tog | Self::P3tog | Self::P3togTbl | Self::Cdd | Self::Cddp => 3,
            Self::M1 | Self::M1L | Self::M1R | Self::M1p | Self::M1Lp | Self::M1Rp | Self::Yo => 0,
        }
    }

    /// Stitches put on the right needle.
    pub const fn gives(self) -> u32 {
        match self {
            Self::Kfb | Self::Pfb => 2,
            _ => 1,
        }
    }

    /// Whether the stitch leaves the count as it is.
    pub const fn is_plain(self) -> bool {
        self.uses() == self.gives()
    }

    /// Whether the stitch is made in the gap between two stitches, and so needs a stitch on either side of it.
    pub const fn is_in_gap(self) -> bool {
        self.uses() == 0
    }

    /// Which way it leans.
    pub const fn lean(self) -> Lean {
        match self {
            Self::K2tog | Self::P2tog | Self::K3tog | Self::P3tog | Self::M1R | Self::M1Rp => Lean::Right,
            Self::Ssk | Self::Ssp | Self::Sk2p | Self::P3togTbl | Self::M1L | Self::M1Lp => Lean::Left,
            _ => Lean::Upright,
        }
    }

    /// The stitch that stands for this one on the other half of a mirrored row.
    ///
    /// M1 has no lean of its own until it is paired, so its mirror is taken as for M1L. A yarn over, a centred
    /// decrease and kfb are their own mirrors (where the bar of a kfb sits is the affair of the row).
    pub const fn mirror(self) -> Self {
        match self {
            Self::K2tog => Self::Ssk,
            Self::Ssk => Self::K2tog,
            Self::P2tog => Self::Ssp,
            Self::Ssp => Self::P2tog,
            Self::Sk2p => Self::K3tog,
            Self::K3tog => Self::Sk2p,
            Self::P3tog => Self::P3togTbl,
            Self::P3togTbl => Self::P3tog,
            Self::M1 | Self::M1L => Self::M1R,
            Self::M1R => Self::M1L,
            Self::M1p | Self::M1Lp => Self::M1Rp,
            Self::M1Rp => Self::M1Lp,
            other => other,
        }
    }

    /// What is worked on a purl row or round to make the same thing on the knit side of the fabric.
    pub const fn on_purl_side(self) -> Self {
        match self {
            Self::Knit => Self::Purl,
            Self::K2tog => Self::P2tog,
            Self::Ssk => Self::Ssp,
            Self::Sk2p => Self::P3togTbl,
            Self::K3tog => Self::P3tog,
            Self::Cdd => Self::Cddp,
            Self::M1 => Self::M1p,
            Self::M1L => Self::M1Lp,
            Self::M1R => Self::M1Rp,
            Self::Kfb => Self::Pfb,
            other => other,
        }
    }

    /// The trade's abbreviation. Plain stitches take their count straight after it (`K7`).
    pub const fn abbreviation(self) -> &'static str {
        match self {
            Self::Knit => "K",
            Self::Purl => "P",
            Self::Rib => "rib ",
            Self::K2tog => "k2tog",
            Self::Ssk => "ssk",
            Self::P2tog => "p2tog",
            Self::Ssp => "ssp",
            Self::Sk2p => "sk2p",
            Self::K3tog => "k3tog",
            Self::P3tog => "p3tog",
            Self::P3togTbl => "p3tog tbl",
            Self::Cdd => "cdd",
            Self::Cddp => "cddp",
            Self::M1 => "M1",
            Self::M1L => "M1L",
            Self::M1R => "M1R",
            Self::M1p => "M1p",
            Self::M1Lp => "M1Lp",
            Self::M1Rp => "M1Rp",
            Self::Yo => "yo",
            Self::Kfb => "kfb",
            Self::Pfb => "pfb",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mirror_of_a_leaning_stitch_leans_the_other_way_and_counts_the_same() {
        for stitch in Stitch::ALL {
            let mirror = stitch.mirror();
            assert_eq!((stitch.uses(), stitch.gives()), (mirror.uses(), mirror.gives()));
            match stitch.lean() {
                Lean::Left => assert_eq!(mirror.lean(), Lean::Right, "{stitch:?}"),
                Lean::Right => assert_eq!(mirror.lean(), Lean::Left, "{stitch:?}"),
                Lean::Upright => {}
            }
        }
    }

    #[test]
    fn the_purl_side_keeps_count_and_lean() {
        for stitch in Stitch::ALL {
            let purl = stitch.on_purl_side();
            assert_eq!(
                (stitch.uses(), stitch.gives(), stitch.lean()),
                (purl.uses(), purl.gives(), purl.lean())
            );
        }
    }

    #[test]
    fn no_two_stitches_are_written_alike() {
        let mut seen: Vec<_> = Stitch::ALL.iter().map(|s| s.abbreviation().to_lowercase()).collect();
        seen.sort();
        seen.dedup();
        assert_eq!(seen.len(), Stitch::ALL.len());
    }
}
