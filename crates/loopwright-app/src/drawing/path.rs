//! A path of straight lines, written as SVG writes it.

/// A point, in the units of the drawing.
pub type Point = (f64, f64);

/// A path in the making.
#[derive(Default)]
pub struct Path(String);

impl Path {
    /// A line from point to point.
    pub fn line(&mut self, points: &[Point]) {
        for (place, (x, y)) in points.iter().enumerate() {
            let command = if place == 0 { 'M' } else { 'L' };
            self.0 += &format!("{command}{} {}", tenths(*x), tenths(*y));
        }
    }

    /// Back to where the last line began.
    pub fn close(&mut self) {
        self.0.push('Z');
    }

    /// As SVG writes it.
    pub fn written(self) -> String {
        self.0
    }
}

/// A coordinate to one decimal, written from whole tenths.
pub fn tenths(value: f64) -> String {
    let tenths = (value * 10.0).round() as i32;
    let sign = if tenths < 0 { "-" } else { "" };
    format!("{sign}{}.{}", tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_are_written_to_a_tenth() {
        let mut path = Path::default();
        path.line(&[(0.0, 1.0), (2.25, -3.0)]);
        path.line(&[(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)]);
        path.close();
        assert_eq!(path.written(), "M0.0 1.0L2.3 -3.0M0.0 0.0L1.0 0.0L0.0 1.0Z");
    }
}
