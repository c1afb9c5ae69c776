//! How each stitch is abbreviated, and what the abbreviation means.

use loopwright::row::Stitch;
use loopwright::terms::Hand;

/// The trade's abbreviation. Plain stitches take their count straight after it (`K7`).
pub const fn abbreviation(stitch: Stitch) -> &'static str {
    match stitch {
        Stitch::Knit => "K",
        Stitch::Purl => "P",
        Stitch::Rib => "rib ",
        Stitch::K2tog => "k2tog",
        Stitch::Ssk => "ssk",
        Stitch::P2tog => "p2tog",
        Stitch::Ssp => "ssp",
        Stitch::Sk2p => "sk2p",
        Stitch::K3tog => "k3tog",
        Stitch::P3tog => "p3tog",
        Stitch::P3togTbl => "p3tog tbl",
        Stitch::Cdd => "cdd",
        Stitch::Cddp => "cddp",
        Stitch::M1 => "M1",
        Stitch::M1L => "M1L",
        Stitch::M1R => "M1R",
        Stitch::M1p => "M1p",
        Stitch::M1Lp => "M1Lp",
        Stitch::M1Rp => "M1Rp",
        Stitch::Yo => "yo",
        Stitch::Kfb => "kfb",
        Stitch::Pfb => "pfb",
    }
}

/// How the stitch is worked by a knitter of this hand, and which way it leans then.
pub fn meaning(stitch: Stitch, hand: Hand) -> &'static str {
    let left_handed = match hand {
        Hand::Right => None,
        Hand::Left => meaning_left_handed(stitch),
    };
    left_handed.unwrap_or_else(|| meaning_right_handed(stitch))
}

/// For a left-handed knitter, where it is not the same: what the hands do leans the other way, and what is named by its
/// lean is done the other way.
const fn meaning_left_handed(stitch: Stitch) -> Option<&'static str> {
    Some(match stitch {
        Stitch::K2tog => "knit two together; leans left",
        Stitch::Ssk => "slip two, one at a time as if to knit, then knit the two together; leans right",
        Stitch::P2tog => "purl two together; leans left on the knit side",
        Stitch::Ssp => {
            "slip two, one at a time as if to knit, then purl the two together through the back; leans right on the knit side"
        }
        Stitch::Sk2p => "slip one as if to knit, knit two together, pass the slipped stitch over; leans right",
        Stitch::K3tog => "knit three together; leans left",
        Stitch::P3tog => "purl three together; leans left on the knit side",
        Stitch::P3togTbl => "purl three together through the back; leans right on the knit side",
        Stitch::M1L => "make one: lift the bar from the back and knit it through the front; leans left",
        Stitch::M1R => "make one: lift the bar from the front and knit it through the back; leans right",
        Stitch::M1Lp => "make one purlwise: lift the bar from the back and purl it through the front",
        Stitch::M1Rp => "make one purlwise: lift the bar from the front and purl it through the back",
        _ => return None,
    })
}

fn meaning_right_handed(stitch: Stitch) -> &'static str {
    match stitch {
        Stitch::Knit => "knit",
        Stitch::Purl => "purl",
        Stitch::Rib => "work in the rib as it is set",
        Stitch::K2tog => "knit two together; leans right",
        Stitch::Ssk => "slip two, one at a time as if to knit, then knit the two together; leans left",
        Stitch::P2tog => "purl two together; leans right on the knit side",
        Stitch::Ssp => {
            "slip two, one at a time as if to knit, then purl the two together through the back; leans left on the knit side"
        }
        Stitch::Sk2p => "slip one as if to knit, knit two together, pass the slipped stitch over; leans left",
        Stitch::K3tog => "knit three together; leans right",
        Stitch::P3tog => "purl three together; leans right on the knit side",
        Stitch::P3togTbl => "purl three together through the back; leans left on the knit side",
        Stitch::Cdd => {
            "centred double decrease: slip two together as if to knit, knit one, pass the two slipped stitches over"
        }
        Stitch::Cddp => {
            "centred double decrease from the purl side: slip two one at a time as if to knit, slip them back together as if to purl through the back, then purl the three together through the back"
        }
        Stitch::M1 => "make one: lift the bar between two stitches and knit it through the back",
        Stitch::M1L => "make one: lift the bar from the front and knit it through the back; leans left",
        Stitch::M1R => "make one: lift the bar from the back and knit it through the front; leans right",
        Stitch::M1p => "make one purlwise: lift the bar between two stitches and purl it through the back",
        Stitch::M1Lp => "make one purlwise: lift the bar from the front and purl it through the back",
        Stitch::M1Rp => "make one purlwise: lift the bar from the back and purl it through the front",
        Stitch::Yo => "yarn over: bring the yarn over the needle; leaves a hole",
        Stitch::Kfb => "knit into the front and the back of one stitch",
        Stitch::Pfb => "purl into the front and the back of one stitch",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::row::Lean;

    /// Which way a stitch is said to lean is which way it leans, in either hand.
    #[test]
    fn a_stitch_is_said_to_lean_as_it_does() {
        for stitch in Stitch::ALL {
            for (hand, lean) in [(Hand::Right, stitch.lean()), (Hand::Left, stitch.lean_left_handed())] {
                let said = meaning(stitch, hand);
                let leans = [said.contains("leans left"), said.contains("leans right")];
                match (leans, lean) {
                    ([false, false], _) => {}
                    ([true, false], Lean::Left) | ([false, true], Lean::Right) => {}
                    _ => panic!("{stitch:?}, {hand:?}: {said}"),
                }
            }
        }
    }

    /// What the hands of one knitter do, the other does in the mirror, under the name that says what it looks like.
    #[test]
    fn a_left_handed_knitter_does_the_same_with_her_hands() {
        let done = |stitch, hand| meaning(stitch, hand).split(';').next().map(str::to_owned);
        for stitch in Stitch::ALL {
            assert_eq!(
                done(stitch.left_handed(), Hand::Left),
                done(stitch, Hand::Right),
                "{stitch:?}"
            );
        }
    }
}
