//! Rows whose second half is the first in a mirror.

use super::*;

/// Where the changes sit among the stitches of the finished row. The change of a kfb is its bar, the second stitch.
fn places(row: &Row) -> Vec<(u64, Stitch)> {
    row.changes()
        .map(|c| (c.made + u64::from(c.stitch.gives()) - 1, c.stitch))
        .collect()
}

#[test]
fn a_mirrored_row_is_its_own_mirror_or_says_that_it_is_not_by_one() {
    for stitches in 2..=60 {
        for changes in 1..=stitches {
            for (ask, inc) in [
                (Ask::Decreases(changes), Increase::M1),
                (Ask::Increases(changes), Increase::M1),
                (Ask::Increases(changes), Increase::Kfb),
            ] {
                let knitting = Knitting::Flat { edge: Edge::Mirrored };
                let question = Question {
                    ask,
                    increase: inc,
                    knitting,
                    ..Question::about(stitches)
                };
                let Ok(answer) = answer(&question) else {
                    continue;
                };
                let out_by_one = u64::from(answer.notes.contains(&Note::MirroredButForOne));
                for way in &answer.ways {
                    let places = places(&way.row);
                    for (near, far) in places.iter().zip(places.iter().rev()) {
                        assert_eq!(
                            near.0 + far.0 + 1 + out_by_one,
                            u64::from(answer.after),
                            "{question:?} {}",
                            way.row
                        );
                        if near.0 != far.0 {
                            assert_eq!(near.1.mirror().lean(), far.1.lean(), "{}", way.row);
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn decreases_of_a_mirrored_row_lean_to_the_middle_from_either_side() {
    let knitting = Knitting::Flat { edge: Edge::Mirrored };
    let question = Question {
        ask: Ask::Lose(4),
        knitting,
        ..Question::about(40)
    };
    let text = |face| answer(&Question { face, ..question }).unwrap().ways[0].row.to_string();
    assert_eq!(text(Face::Knit), "K4, ssk, K8, ssk, (K8, k2tog) twice, K4");
    assert_eq!(text(Face::Purl), "P4, p2tog, P8, p2tog, (P8, ssp) twice, P4");
}

/// Three k2tog are no mirror of each other: the one in the middle has no partner. It is the stitch that was asked for, and
/// the one that is named.
#[test]
fn the_change_in_the_middle_is_the_one_that_is_named() {
    let mirrored = |decrease, face, changes| {
        let answer = answer(&Question {
            ask: Ask::Decreases(changes),
            decrease,
            face,
            knitting: Knitting::Flat { edge: Edge::Mirrored },
            ..Question::about(41)
        });
        let answer = answer.unwrap();
        let named = |note: &Note| matches!(note, Note::MiddleLeans { .. });
        let named = answer.notes.iter().copied().find(named);
        let changes: Vec<Stitch> = answer.ways[0].row.changes().map(|change| change.stitch).collect();
        (changes, named)
    };
    for (face, changes) in [
        (Face::Knit, [Stitch::Ssk, Stitch::K2tog, Stitch::K2tog]),
        (Face::Purl, [Stitch::P2tog, Stitch::P2tog, Stitch::Ssp]),
    ] {
        let change = changes[1];
        let named = Some(Note::MiddleLeans { change });
        assert_eq!(mirrored(Decrease::K2tog, face, 3), (changes.to_vec(), named));
    }
    // With an even number each has its partner, and one that leans neither way needs none.
    assert_eq!(mirrored(Decrease::K2tog, Face::Knit, 4).1, None);
    assert_eq!(mirrored(Decrease::Cdd, Face::Knit, 3), (vec![Stitch::Cdd; 3], None));
}
