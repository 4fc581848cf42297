//! A stretch of moments over which a reading does not move by more than so much.

use crate::words::Quantity;
use std::collections::VecDeque;

/// The moments up to the newest over which a value stays within a spread. It keeps the values
/// that can still be its highest or lowest, so that each moment costs little.
#[derive(Debug, Clone)]
pub(super) struct Window {
    most: f64,
    first: usize,
    falling: VecDeque<(usize, f64)>,
    rising: VecDeque<(usize, f64)>,
}

impl Window {
    /// A window with no moment in it; `most` is how far its value may move, SI.
    pub(super) const fn of(most: f64) -> Self {
        Self {
            most,
            first: 0,
            falling: VecDeque::new(),
            rising: VecDeque::new(),
        }
    }

    /// Takes moment `i` in, and lets go of the oldest until the spread fits. Where no number is
    /// shown there is nothing to take: `false`.
    pub(super) fn take(&mut self, i: usize, value: Option<Quantity>) -> bool {
        let Some(Quantity { si, .. }) = value else {
            return false;
        };
        if self.falling.is_empty() {
            self.first = i;
        }
        while self.falling.back().is_some_and(|&(_, v)| v <= si) {
            self.falling.pop_back();
        }
        while self.rising.back().is_some_and(|&(_, v)| v >= si) {
            self.rising.pop_back();
        }
        self.falling.push_back((i, si));
        self.rising.push_back((i, si));
        while let (Some(&(a, highest)), Some(&(b, lowest))) =
            (self.falling.front(), self.rising.front())
            && highest - lowest > self.most
            && self.first < i
        {
            // The older of the two extremes must go, and all before it.
            self.first = a.min(b) + 1;
            if a < b {
                self.falling.pop_front();
            } else {
                self.rising.pop_front();
            }
        }
        true
    }

    /// Lets go of everything.
    pub(super) fn clear(&mut self) {
        self.falling.clear();
        self.rising.clear();
    }

    /// The oldest moment in it.
    pub(super) const fn first(&self) -> usize {
        self.first
    }
}
