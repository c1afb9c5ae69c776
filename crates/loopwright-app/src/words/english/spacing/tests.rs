//! What is said of a change in the middle, of stitches that are dropped, of orders and of edges that are too wide.

use super::*;

/// k2tog leans right, and no pair of them is a mirror.
#[test]
fn the_middle_is_said_to_lean_as_it_does() {
    let written = |change| note(&Note::MiddleLeans { change });
    assert!(written(Stitch::K2tog).starts_with("The k2tog in the middle leans right;"));
    assert!(written(Stitch::Ssk).starts_with("The ssk in the middle leans left;"));
    let dropped = note(&Note::PlusDropped { plus: 3 });
    assert!(
        dropped.contains("the 3 stitches beside the repeats are dropped"),
        "{dropped}"
    );
}

#[test]
fn an_order_is_told_with_what_it_costs() {
    assert_eq!(
        order(Order::TwoBlocks, Fraction::new(16, 5)),
        "two blocks (up to 3 stitches off)"
    );
    assert_eq!(
        order(Order::BlocksInTurn, Fraction::new(1, 1)),
        "blocks in turn (up to 1 stitch off)"
    );
    assert_eq!(
        order(Order::MostEven, Fraction::new(4, 5)),
        "most even (within a stitch)"
    );
}

/// The edges are what has to change, to the number that leaves room for one decrease.
#[test]
fn edges_that_are_too_wide_are_told_how_wide_they_may_be() {
    use loopwright::spacing::{Edge, Knitting, answer};
    let question = Question {
        knitting: Knitting::Flat {
            edge: Edge::AtLeast(60),
        },
        ..Question::about(100)
    };
    let problems = answer(&question).unwrap_err();
    assert_eq!(
        problem(Some(&question), &problems[0]),
        "On 100 stitches, edges as wide as that leave no room for a change. Type 49 or fewer."
    );
}
