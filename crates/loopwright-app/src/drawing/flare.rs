//! A flare from the side and from above, to one scale: the hem solid, the hem of a flat piece dashed, the neck thin. The
//! edge of a ruffle waves, and its line is as much longer than the circle as the maths said.

use super::path::{Path, tenths};
use super::picture::picture;
use crate::part::plain::{self, element_with};
use loopwright::flare::{Hang, Shape};
use loopwright::units::Length;
use yew::prelude::*;

/// The middle of the picture from the side, and the height of its neck.
const SIDE: f64 = 90.0;
const TOP: f64 = 44.0;
/// How far out the flat hem lies.
const OUT: f64 = 82.0;
/// Waves of a ruffle from one side to the other, each up and down.
const WAVES: u32 = 12;
/// How high a wave may be: a ruffle of more than four times its circle is drawn no fuller.
const HIGHEST: f64 = 30.0;

/// The drawing, and what it shows for those who cannot see it; a sign has no words.
pub fn flare(shape: &Shape, hang: Hang, words: &str) -> Html {
    let nm = |length: Length| length.to_nm() as f64;
    let scale = OUT / nm(shape.flat_radius).max(1.0);
    let [neck, hem] = [shape.neck_radius, shape.radius].map(|length| scale * nm(length));
    let drop = match hang {
        Hang::Tube | Hang::Cone => scale * nm(shape.drop),
        Hang::Flat | Hang::Ruffle => 0.0,
    };
    let bottom = TOP + drop;
    let [mut body, mut edge]: [Path; 2] = Default::default();
    body.line(&[
        (SIDE - hem, bottom),
        (SIDE - neck, TOP),
        (SIDE + neck, TOP),
        (SIDE + hem, bottom),
    ]);
    edge.line(&waves(hem, bottom, f64::from(shape.fullness) / 1_000.0));
    let content = vec![
        plain::path("groups", &body.written()),
        plain::path("yarn", &edge.written()),
        circle("groups open", OUT),
        circle("groups", neck),
        circle("yarn", hem),
    ];
    picture("comb", (360, 176), words, content)
}

/// The hem from the side: a line, or one so many times as long.
fn waves(hem: f64, bottom: f64, fullness: f64) -> Vec<(f64, f64)> {
    let run = hem / f64::from(WAVES);
    let high = (run * (fullness * fullness - 1.0).max(0.0).sqrt()).min(HIGHEST);
    let mut points = Vec::new();
    for step in 0..=2 * WAVES {
        let up = if step % 2 == 0 { 0.5 } else { -0.5 };
        points.push((SIDE - hem + run * f64::from(step), bottom + up * high));
    }
    points
}

/// A circle of the picture from above.
fn circle(class: &str, radius: f64) -> Html {
    let attributes = [("class", class), ("cx", "270"), ("cy", "88"), ("r", &tenths(radius))];
    element_with("circle", &attributes, Vec::new())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wave_is_as_much_longer_as_it_is_said() {
        for fullness in [1.0, 1.2, 1.5] {
            let points = waves(80.0, 44.0, fullness);
            let long = |pair: &[(f64, f64)]| (pair[1].0 - pair[0].0).hypot(pair[1].1 - pair[0].1);
            let length: f64 = points.windows(2).map(long).sum();
            assert!((length - 160.0 * fullness).abs() < 0.1, "{length}");
        }
    }
}
