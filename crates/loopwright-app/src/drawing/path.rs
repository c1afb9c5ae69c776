//! A path of straight lines, written as SVG writes it.

/// A point, in the units of the drawing.
pub type Point = (f64, f64);

/// A path in the making.
#[derive(Default)]
pub struct Path(String);

impl Path {
    /// A line from point to point.
    pub fn line(&mut self, points: &[Point]) {
        let mut command = 'M';
        for (x, y) in points {
            self.0.push(command);
            push_tenths(&mut self.0, *x);
            self.0.push(' ');
            push_tenths(&mut self.0, *y);
            command = 'L';
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

/// A coordinate to one decimal.
pub fn tenths(value: f64) -> String {
    let mut written = String::new();
    push_tenths(&mut written, value);
    written
}

/// The same, behind what is there. Written from whole numbers, since printing an `f64` would bring the whole float printer
/// into the page for it.
fn push_tenths(path: &mut String, value: f64) {
    let tenths = (value * 10.0).round() as i32;
    let digit = char::from(b'0' + (tenths.unsigned_abs() % 10) as u8);
    path.push_str(if tenths < 0 { "-" } else { "" });
    path.push_str(&(tenths.unsigned_abs() / 10).to_string());
    path.push('.');
    path.push(digit);
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
