//! Items that are several rows: `knit 4 rows`, `BO 5 at beg of next 2 rows`.

use super::*;

impl Walk<'_> {
    /// Rows of one stitch, all the way.
    pub(super) fn rows(&mut self, name: &StitchName, rows: u64, place: Place) -> Result<(), Halt> {
        for row in 0..rows {
            self.step(place)?;
            if row > 0 {
                self.next_row(place);
            }
            self.run(name, self.needle.ahead() / name.uses().max(1), place)?;
        }
        Ok(())
    }

    /// Each of so many rows begins with the same, and goes on with what stands behind, or plainly to its end.
    pub(super) fn at_start_of_rows(&mut self, inner: &Item, rows: &Amount, rest: &[Item]) -> Result<(), Halt> {
        let is_work = |item: &Item| !matches!(item.doing, Doing::Said(_) | Doing::Turn);
        for row in 0..rows.value(self.size) {
            self.step(inner.place)?;
            if row > 0 {
                self.next_row(inner.place);
            }
            self.item(inner)?;
            if rest.iter().any(is_work) {
                self.items(rest)?;
            } else {
                let ahead = self.needle.ahead();
                self.used = self.used.saturating_add(ahead);
                self.needle.work(ahead, 1, 1);
                self.record(CellKind::Knit, ahead, inner.place);
            }
        }
        Ok(())
    }

    fn next_row(&mut self, place: Place) {
        self.record(CellKind::Turn, 1, place);
        self.needle.begin_row(self.working);
    }
}
