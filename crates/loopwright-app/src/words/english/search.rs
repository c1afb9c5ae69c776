//! The words by which knitters look for a tool, beside its name and what it asks, and how English words are told apart.
//!
//! Each tool has a list of its own here, and one without does not compile. A line is what somebody would type: a word, or
//! a few that belong together. Plurals and endings need no lines of their own, and neither do the words of [`SAME`].

/// A word or two that mean the same as another, and what they are read as.
pub const SAME: &[(&[&str], &[&str])] = &[
    (&["i", "cord"], &["icord"]),
    (&["cast", "off"], &["bind", "off"]),
    (&["bo"], &["bind", "off"]),
    (&["co"], &["cast", "on"]),
    (&["tension"], &["gauge"]),
    (&["jumper"], &["sweater"]),
    (&["pullover"], &["sweater"]),
    (&["stocking", "stitch"], &["stockinette"]),
    (&["st"], &["stitch"]),
    (&["sts"], &["stitches"]),
    (&["rnd"], &["round"]),
    (&["rnds"], &["rounds"]),
    (&["skein"], &["ball"]),
    (&["skeins"], &["balls"]),
    (&["hank"], &["ball"]),
    (&["hanks"], &["balls"]),
    (&["colour"], &["color"]),
    (&["colourwork"], &["colorwork"]),
    (&["metreage"], &["yardage"]),
    (&["meterage"], &["yardage"]),
    (&["dpn"], &["double", "pointed"]),
    (&["dpns"], &["double", "pointed"]),
    (&["w&t"], &["wrap", "turn"]),
];

/// Words that say nothing of what is looked for.
pub const ASIDE: &[&str] = &[
    "a", "an", "and", "any", "are", "at", "by", "can", "do", "does", "for", "from", "get", "how", "i", "in", "into",
    "is", "it", "its", "knit", "knitting", "many", "me", "much", "my", "need", "of", "or", "should", "some", "that",
    "the", "this", "to", "want", "what", "when", "where", "which", "with", "you", "your",
];

/// Whether a mark parts two words.
pub const fn parts(mark: char) -> bool {
    !(mark.is_ascii_alphanumeric() || matches!(mark, '-' | '&' | '\'' | '’'))
}

/// A word in small letters, and without a mark that belongs into it.
pub fn small(word: &str) -> String {
    let letters = word.chars().filter(|mark| !matches!(mark, '\'' | '’'));
    letters.map(|mark| mark.to_ascii_lowercase()).collect()
}

/// A word without its ending, so that increase, increases and increasing are one.
pub fn stem(word: &str) -> &str {
    const ENDINGS: [&str; 6] = ["ing", "ed", "ly", "es", "s", "e"];
    let bare = |ending: &&str| word.strip_suffix(*ending).filter(|bare| bare.len() >= 3);
    let bare = ENDINGS.iter().find_map(bare).unwrap_or(word);
    undoubled(bare)
}

/// Ribbing without its ending is rib.
fn undoubled(word: &str) -> &str {
    let mut letters = word.chars().rev();
    match (letters.next(), letters.next()) {
        (Some(last), Some(before)) if last == before && word.len() > 3 => word.strip_suffix(last).unwrap_or(word),
        _ => word,
    }
}

/// What is looked for, by the tool that has it, parted by commas.
mod looked_for {
    pub const fn gauge() -> &'static str {
        "gauge, gauge is off, wrong gauge, row gauge, stitches per inch, stitches over 10 cm, \
         stitches over 4 inches, measure a swatch, go up a needle, go down a needle, change needle size, \
         too tight, too loose, washed and unwashed, blocked, blocking"
    }

    pub const fn swatch() -> &'static str {
        "swatch, gauge swatch, gauge square, how big a swatch, test piece, sample, swatch in the round, \
         blocking a swatch, wash a swatch"
    }

    pub const fn sizing() -> &'static str {
        "ease, size, which size, between sizes, positive ease, negative ease, fit, bust, chest, \
         finished measurements, body measurements, schematic, standard sizes, sweater size, oversized, \
         too big, too small, upper arm, head, poncho"
    }

    pub const fn regauge() -> &'static str {
        "another gauge, different gauge, convert a pattern, adapt a pattern, resize a pattern, \
         rescale a pattern, pattern in another yarn, different yarn weight, substitute yarn gauge, \
         change stitch counts, pattern numbers, my own gauge, cannot get gauge, recalculate"
    }

    pub const fn needles() -> &'static str {
        "needle size, needle conversion, convert needles, needle chart, us size, uk size, old uk size, \
         canadian size, japanese size, metric size, millimetres, millimeters, mm"
    }

    pub const fn cords() -> &'static str {
        "cord, cord length, circular needle, circulars, circular length, needle length, needle cable, \
         cable length, longer needle, shorter needle, magic loop, double pointed, two circulars, \
         interchangeable, tips, stitches do not fit, stretched on the needle"
    }

    pub const fn yarn() -> &'static str {
        "yarn, how much yarn, yarn needed, yardage, yards, metres, meters, balls, how many balls, grams, \
         ounces, enough yarn, run out of yarn, running out, leftover yarn, substitute yarn, yarn estimate, \
         buy yarn, scarf, blanket, shawl, icord bind off yarn, bind off yarn, weigh the yarn, ply, wool"
    }

    pub const fn cast_on() -> &'static str {
        "cast on, casting on, how many stitches, how many stitches to cast on, stitch count, \
         number of stitches, width, girth, place markers, stitch markers, marker, multiple, multiple of, \
         pattern repeat, stitch repeat, edge stitches, selvedge, selvage, join in the round, hat, cowl, \
         scarf width, blanket width"
    }

    pub const fn tail() -> &'static str {
        "long tail, tail, cast on tail, yarn for casting on, how long a tail, tail too short, \
         run out of tail, running out, slip knot, thumb, slingshot, backward loop, knitted cast on"
    }

    pub const fn spacing() -> &'static str {
        "evenly, increase evenly, decrease evenly, increase evenly across, decrease evenly across, \
         evenly spaced, space evenly, spread evenly, distribute, add stitches, gain stitches, lose stitches, \
         increase in one row, decrease in one row, increase round, decrease round, k2tog, ssk, m1, make one, \
         kfb, yarn over, knit 2 together, knit two together, pick up stitches, pick up evenly, \
         after ribbing, rib to stockinette, gather, crown"
    }

    pub const fn rows() -> &'static str {
        "rows, length, how many rows, how many rounds, rows to inches, rows to cm, rows in a length, \
         how long, row gauge, row count, until piece measures, garter ridges, ridges, ahead or behind, \
         on course, too long, too short, work even"
    }

    pub const fn shaping() -> &'static str {
        "shaping, decrease every, increase every, every other row, every 6th row, every row, \
         increase over rows, decrease over rows, evenly over rows, sleeve, sleeve shaping, taper, waist, \
         waist shaping, armhole, v-neck, each end, both ends, at the same time, cuff, triangle, \
         knit 2 together, knit two together"
    }

    pub const fn stairs() -> &'static str {
        "short rows, german short rows, wrap turn, shoulder, shoulder slope, slope, steps, stepped, \
         bind off, bind off in steps, sloped bind off, neckline, neck, back neck, crew neck, neck shaping, \
         each neck edge"
    }

    pub const fn flare() -> &'static str {
        "flare, flared, hem, skirt, circle skirt, peplum, ruffle, frill, cape, capelet, poncho, \
         circular shawl, flat circle, circle, pi shawl, bell sleeve, a-line, lie flat, drape"
    }

    pub const fn yoke() -> &'static str {
        "yoke, circular yoke, round yoke, colorwork yoke, yoke decreases, yoke increases, yoke depth, \
         seamless sweater, neck, underarm, divide for sleeves, bottom up, top down"
    }

    pub const fn raglan() -> &'static str {
        "raglan, raglan increases, raglan lines, top down, top down sweater, seamless sweater, \
         increase body and sleeves, underarm, divide for sleeves, sleeve stitches"
    }

    pub const fn sizes_in_text() -> &'static str {
        "mark a size, mark my size, highlight my size, highlighter, circle my size, which number, numbers in brackets, \
         pattern text, paste a pattern, printed pattern, sizes in brackets, multiple sizes, graded pattern, cross out"
    }

    pub const fn written() -> &'static str {
        "pattern, check a pattern, pattern error, errata, test knit, tech edit, does the row come out, \
         stitch count wrong, stitches left over, one stitch short, lines, sizes, repeat, lace row, marker, \
         abbreviations, proofread"
    }
}

/// A tool without its list does not compile.
macro_rules! lists {
    ($($tool:ident in $group:ident,)*) => {
        /// What knitters type who look for this tool.
        pub fn words_for(tool: &str) -> impl Iterator<Item = &'static str> {
            let list = match tool {
                $(stringify!($tool) => looked_for::$tool(),)*
                _ => "",
            };
            list.split(", ").filter(|line| !line.is_empty())
        }
    };
}
loopwright::each_tool!(lists);

#[cfg(test)]
mod tests {
    use super::stem;

    #[test]
    fn a_word_is_the_same_with_and_without_its_ending() {
        let rows = [
            ["increase", "increases", "increasing", "increased"],
            ["stitch", "stitches", "stitching", "stitched"],
            ["ridge", "ridges", "ridge", "ridged"],
            ["rib", "ribs", "ribbing", "ribbed"],
            ["even", "evenly", "even", "even"],
            ["size", "sizes", "sizing", "sized"],
        ];
        for [first, others @ ..] in rows {
            for other in others {
                assert_eq!(stem(first), stem(other), "{first}, {other}");
            }
        }
        for short in ["us", "ssk", "bed", "row"] {
            assert_eq!(stem(short), short);
        }
    }
}
