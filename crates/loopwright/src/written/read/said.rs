//! What the pattern says there is: `96 sts`, `96 (108) sts rem`, `8 sts inc'd`.

use super::super::line::Said;
use super::super::vocabulary::Key;
use super::Reader;

impl Reader<'_> {
    /// A count of stitches that is told, not worked.
    pub(super) fn said(&mut self) -> Option<Said> {
        let amount = self.amount()?;
        self.take(Key::Stitches).then_some(())?;
        if self.take(Key::Increased) {
            return Some(Said::Gained(amount));
        }
        if self.take(Key::Decreased) {
            return Some(Said::Lost(amount));
        }
        self.skip(&[Key::Rest, Key::Now, Key::Total]);
        self.attempt(|reader| {
            reader.take(Key::On).then_some(())?;
            reader.skip(&[Key::The]);
            reader.take(Key::Needle).then_some(())
        });
        Some(Said::Total(amount))
    }
}
