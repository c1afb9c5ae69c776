//! A link as a picture that a camera reads (a QR code): dark squares on white, with as much white around them as the
//! standard asks for. It is black on white in any light, because that is what a camera looks for.

use super::picture::picture;
use crate::part::plain::{element_with, path};
use qrcodegen::{QrCode, QrCodeEcc};
use yew::prelude::*;

/// The longest link, in bytes, whose squares a phone still tells apart on a screen: common practice, no source.
const MOST_BYTES: usize = 800;
/// The white around it, in squares.
const QUIET: i32 = 4;

/// The picture of a link; none where the link is too long to be scanned from a screen.
pub fn picture_of(link: &str, words: &str) -> Option<Html> {
    let code = code_of(link)?;
    let side = code.size() + 2 * QUIET;
    let side = u32::try_from(side).ok()?;
    let paper = [("class", "qr-paper"), ("width", "100%"), ("height", "100%")];
    let paper = element_with("rect", &paper, Vec::new());
    Some(picture(
        "qr",
        (side, side),
        words,
        vec![paper, path("qr-squares", &squares(&code))],
    ))
}

/// With as much correction as its size has room for.
fn code_of(link: &str) -> Option<QrCode> {
    let short = Some(link).filter(|link| link.len() <= MOST_BYTES)?;
    QrCode::encode_text(short, QrCodeEcc::Low).ok()
}

/// The dark squares as one path: a bar for each run of them in a row.
fn squares(code: &QrCode) -> String {
    let mut path = String::new();
    for row in 0..code.size() {
        let mut place = 0;
        while place < code.size() {
            let run = (place..code.size()).take_while(|place| code.get_module(*place, row));
            let run = i32::try_from(run.count()).unwrap_or_default();
            if run > 0 {
                path += &format!("M{} {}h{run}v1h-{run}z", place + QUIET, row + QUIET);
            }
            place += run + 1;
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The path filled in, eight dots a square.
    fn is_dark(path: &str, side: usize) -> Vec<bool> {
        let mut dark = vec![false; side * side];
        for bar in path.split('M').filter(|bar| !bar.is_empty()) {
            let (place, run) = bar.split_once('h').unwrap();
            let (x, y) = place.split_once(' ').unwrap();
            let run: usize = run.split_once('v').unwrap().0.parse().unwrap();
            let (x, y): (usize, usize) = (x.parse().unwrap(), y.parse().unwrap());
            dark[y * side + x..][..run].fill(true);
        }
        dark
    }

    /// What a camera reads from the drawing.
    fn scanned(link: &str) -> String {
        const DOTS: usize = 8;
        let code = code_of(link).unwrap();
        let side = usize::try_from(code.size() + 2 * QUIET).unwrap();
        let dark = is_dark(&squares(&code), side);
        let shade = |x: usize, y: usize| if dark[y / DOTS * side + x / DOTS] { 0 } else { 255 };
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side * DOTS, side * DOTS, shade);
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1);
        grids[0].decode().unwrap().1
    }

    #[test]
    fn a_camera_reads_the_very_link() {
        let long = format!("https://loops.example/#/p=1{}", "aB-_9".repeat(150));
        for link in ["#/", "https://loops.example/#/spacing?stitches=132&amount=16", &long] {
            assert_eq!(scanned(link), link);
        }
    }

    #[test]
    fn a_link_that_is_too_long_has_no_picture() {
        assert!(code_of(&"a".repeat(MOST_BYTES)).is_some());
        assert!(code_of(&"a".repeat(MOST_BYTES + 1)).is_none());
        assert!(code_of(&"é".repeat(MOST_BYTES / 2 + 1)).is_none());
    }
}
