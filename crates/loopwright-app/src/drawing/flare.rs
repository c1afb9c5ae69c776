//! A flare from the side and from above, to one scale: the hem solid, the neck thin, and broken the hem of a flat piece
//! where that lies farther out. From above a thin ring for each increase round as long as they are not too many. The edge
//! of a ruffle waves, and its line is as much longer than the circle as the maths said.

use super::path::{Path, tenths};
use super::picture::{label, picture};
use crate::part::plain::{self, element, element_with};
use crate::words::flare::{Labels, MOST_RINGS};
use loopwright::flare::{Answer, Hang, Shape};
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
/// A neck with less room than this has no count in it.
const ROOM: f64 = 18.0;

/// The lengths of a flare in the picture.
struct Scaled {
    neck: f64,
    hem: f64,
    drop: f64,
    fullness: f64,
    hang: Hang,
}

impl Scaled {
    fn of(shape: &Shape, hang: Hang) -> Self {
        let nm = |length: Length| length.to_nm() as f64;
        let scale = OUT / nm(shape.flat_radius).max(1.0);
        Self {
            neck: scale * nm(shape.neck_radius),
            hem: scale * nm(shape.radius),
            drop: match hang {
                Hang::Tube | Hang::Cone => scale * nm(shape.drop),
                Hang::Flat | Hang::Ruffle => 0.0,
            },
            fullness: f64::from(shape.fullness) / 1_000.0,
            hang,
        }
    }

    /// From the side, then from above.
    fn drawn(&self) -> Vec<Html> {
        let bottom = TOP + self.drop;
        let [mut body, mut edge]: [Path; 2] = Default::default();
        body.line(&[
            (SIDE - self.hem, bottom),
            (SIDE - self.neck, TOP),
            (SIDE + self.neck, TOP),
            (SIDE + self.hem, bottom),
        ]);
        edge.line(&waves(self.hem, bottom, self.fullness));
        let mut content = vec![
            plain::path("groups", &body.written()),
            plain::path("yarn", &edge.written()),
        ];
        // On a piece that lies flat it would lie under the hem.
        match self.hang {
            Hang::Tube | Hang::Cone => content.push(circle("groups open", OUT)),
            Hang::Flat | Hang::Ruffle => {}
        }
        content.extend([circle("groups", self.neck), circle("yarn", self.hem)]);
        content
    }

    /// From above, a ring where each increase round lies along the fabric.
    fn rings(&self, answer: &Answer) -> Vec<Html> {
        let wide = self.hem - self.neck;
        if answer.increase_rounds > MOST_RINGS {
            return Vec::new();
        }
        let part = |row: u32| f64::from(row) / f64::from(answer.rounds.max(1));
        let rows = answer.schedule.rows();
        rows.map(|shaped| circle("arms", self.neck + wide * part(shaped.row)))
            .collect()
    }

    /// The counts at neck and hem from the side, the depth along it, and the count of the neck from above.
    fn labels(&self, words: &Labels) -> Html {
        let bottom = TOP + self.drop;
        // A hem that lies beside the neck has its count at its end.
        let hem = match self.hang {
            Hang::Tube | Hang::Cone => (SIDE, bottom + 22.0),
            Hang::Flat => (SIDE + self.hem - ROOM, bottom + 22.0),
            Hang::Ruffle => (SIDE + self.hem - ROOM, bottom + 22.0 + HIGHEST / 2.0),
        };
        let above = match self.hang {
            Hang::Tube | Hang::Cone | Hang::Flat => TOP - 8.0,
            Hang::Ruffle => TOP - 8.0 - HIGHEST / 2.0,
        };
        let mut labels = vec![label((SIDE, above), words.neck.clone()), label(hem, words.hem.clone())];
        if self.drop > 2.0 * ROOM && self.neck + self.hem > 4.5 * ROOM {
            labels.push(label((SIDE, TOP + self.drop / 2.0 + 5.0), words.slant.clone()));
        }
        if self.neck > ROOM {
            labels.push(label((ABOVE.0, ABOVE.1 + 5.0), words.neck.clone()));
        }
        element("g", "caption", labels)
    }
}

/// The middle of the picture from above.
const ABOVE: (f64, f64) = (270.0, 88.0);

/// The drawing, and what it shows for those who cannot see it.
pub fn flare(answer: &Answer, words: &Labels) -> Html {
    let scaled = Scaled::of(&answer.shape, answer.hang);
    let mut content = scaled.rings(answer);
    content.extend(scaled.drawn());
    content.push(scaled.labels(words));
    picture("comb", (360, 176), &words.words, content)
}

/// The small picture of such a shape.
pub fn sign(shape: &Shape, hang: Hang) -> Html {
    picture("comb", (360, 176), "", Scaled::of(shape, hang).drawn())
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
    let [x, y] = [ABOVE.0, ABOVE.1].map(tenths);
    let attributes = [("class", class), ("cx", &*x), ("cy", &*y), ("r", &tenths(radius))];
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
