//! What is worked, written down for a drawing where one is asked for.

use super::*;

impl Walk<'_> {
    /// Whether rounds of a bracket may be worked at once: not where each of them is looked at.
    pub(super) const fn may_hurry(&self) -> bool {
        self.watched.is_none() && self.recorder.is_none()
    }

    pub(super) fn record(&mut self, worked: CellKind, times: u64, place: Place) {
        if let Some(recorder) = &mut self.recorder {
            recorder.worked(worked, place, times);
        }
    }

    pub(super) fn record_bracket(&mut self, edge: fn(&mut Recorder)) {
        if let Some(recorder) = &mut self.recorder {
            edge(recorder);
        }
    }

    /// A round of a bracket, with where it begins and ends.
    pub(super) fn walk_body(&mut self, body: &[Item]) -> Result<(), Halt> {
        self.record_bracket(Recorder::opens);
        self.items(body)?;
        self.record_bracket(Recorder::closes);
        Ok(())
    }

    pub(super) fn record_stitches(&mut self, name: &StitchName, times: u64, place: Place) {
        if self.recorder.is_none() {
            return;
        }
        let worked = CellKind::of_name(name);
        // Those that cross are drawn one by one.
        let each = if worked == CellKind::Crossed { name.uses() } else { 1 };
        self.record(worked, times.saturating_mul(each), place);
    }

    /// As many as there is room for, before the row halts: a drawing shows them.
    pub(super) fn record_what_fits(&mut self, name: &StitchName, place: Place) {
        if self.recorder.is_some() {
            let uses = name.uses().max(1);
            let times = self.needle.ahead() / uses;
            self.needle.work(times, uses, name.gives());
            self.record_stitches(name, times, place);
        }
    }
}

impl CellKind {
    /// What takes so many and gives so many.
    pub(super) const fn of(uses: u64, gives: u64) -> Self {
        match (uses, gives) {
            _ if gives > uses => Self::Increase,
            _ if gives < uses => Self::Decrease,
            (0 | 1, _) => Self::Knit,
            _ => Self::Crossed,
        }
    }

    fn of_name(name: &StitchName) -> Self {
        match name {
            StitchName::Known(technique) => match technique.written {
                "p" | "ptbl" => Self::Purl,
                "sl" | "sl1k" | "sl1p" => Self::Slipped,
                _ if technique.lifts > 0 => Self::Decrease,
                _ => Self::of(name.uses(), name.gives()),
            },
            _ => Self::of(name.uses(), name.gives()),
        }
    }
}
