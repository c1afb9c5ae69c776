//! What is done beside stitches: markers, binding off, casting on, holders, wraps.

use super::*;

impl Walk<'_> {
    pub(super) fn place_marker(&mut self, place: Place) {
        self.needle.begin();
        // The marker at the beginning of a round is there without being told.
        let is_beginning = self.needle.ahead() == 0 || self.needle.is_at_start();
        if self.working != Working::Round || !is_beginning {
            self.needle.place_marker();
            self.record(CellKind::Marker, 1, place);
        }
    }

    pub(super) fn marker(&mut self, place: Place, keep: bool) -> Result<(), Halt> {
        self.needle.begin();
        if self.needle.take_marker() {
            if keep {
                self.needle.place_marker();
                self.record(CellKind::Marker, 1, place);
            }
            return Ok(());
        }
        let is_beginning = self.needle.ahead() == 0 || self.needle.is_at_start();
        if self.working == Working::Round && is_beginning {
            return Ok(());
        }
        let ahead = self.needle.to_marker();
        Err(self.halt(Outcome::NoMarker { ahead }, place))
    }

    /// So many of what is ahead, if there are as many.
    fn share(&mut self, share: &Share, place: Place) -> Result<u64, Halt> {
        self.needle.begin();
        let ahead = self.needle.ahead();
        let wanted = match share {
            Share::Rest => ahead,
            Share::Of(amount) => amount.value(self.size),
        };
        if wanted > ahead {
            return Err(self.runs_out(1, wanted, true, place));
        }
        Ok(wanted)
    }

    pub(super) fn bind_off(&mut self, share: &Share, place: Place) -> Result<(), Halt> {
        let wanted = self.share(share, place)?;
        self.used = self.used.saturating_add(wanted);
        self.needle.work(wanted, 1, 0);
        self.record(CellKind::BoundOff, wanted, place);
        self.bridge = wanted > 0;
        Ok(())
    }

    pub(super) fn hold(&mut self, share: &Share, place: Place) -> Result<(), Halt> {
        let wanted = self.share(share, place)?;
        self.used = self.used.saturating_add(wanted);
        self.needle.work(wanted, 1, 0);
        self.record(CellKind::Held, wanted, place);
        self.needle.held = self.needle.held.saturating_add(wanted);
        Ok(())
    }

    pub(super) fn take_back(&mut self, place: Place) -> Result<(), Halt> {
        if self.needle.held == 0 {
            return Err(self.halt(Outcome::Nothing, place));
        }
        self.needle.begin();
        self.needle.take_back();
        Ok(())
    }

    /// New stitches come behind those that are done; at the start of a row they may be meant to be worked in it.
    pub(super) fn cast_on(&mut self, amount: &Amount, place: Place) {
        self.needle.begin();
        let many = amount.value(self.size);
        let is_in_doubt = self.used == 0 && self.needle.ahead() > 0;
        self.doubts[Doubt::CastOn as usize] |= is_in_doubt;
        if is_in_doubt && self.meant == Some(Doubt::CastOn) {
            self.needle.cast_on_ahead(many);
        } else {
            self.needle.work(1, 0, many);
            self.record(CellKind::CastOn, many, place);
        }
    }

    pub(super) fn wrap(&mut self, place: Place) -> Result<(), Halt> {
        self.needle.begin();
        if self.needle.ahead() == 0 {
            return Err(self.halt(Outcome::RunsOut { short: 1, time: 0 }, place));
        }
        self.needle.turn();
        self.record(CellKind::Turn, 1, place);
        Ok(())
    }
}
