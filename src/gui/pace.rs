//! The clock driver: it decides how many ticks of the job run in a frame. It is the only place
//! where the time on the wall meets the time of the job: where a person watches, so many ticks
//! for each second; where a person would only wait, as many as a frame has room for.

use crate::job::TICKS_PER_SECOND;
use std::time::{Duration, Instant};

/// How fast the job runs against the wall clock.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rate {
    /// It stands still.
    Paused,
    /// So many times as fast.
    Times(u32),
}

/// The speeds offered, times as fast as the clock on the wall.
pub const SPEEDS: [u32; 4] = [1, 4, 15, 60];

/// The driver with what is left over from the last frame.
#[derive(Debug)]
pub struct Pace {
    /// The rate in force.
    pub rate: Rate,
    /// The speed at which it goes on after a stop.
    speed: u32,
    owed: f64,
}

/// A frame that took longer than this, s, does not make the job jump.
const LONGEST_FRAME: f64 = 0.25;

/// No frame runs more ticks than this, so that the window answers however dear a tick is.
const MOST_TICKS: u64 = 150;

impl Pace {
    /// Standing still.
    pub const fn paused() -> Self {
        Self {
            rate: Rate::Paused,
            speed: 1,
            owed: 0.0,
        }
    }

    /// Stops the clock, or lets it go on as fast as before.
    pub const fn start_or_stop(&mut self) {
        self.rate = match self.rate {
            Rate::Paused => Rate::Times(self.speed),
            Rate::Times(_) => Rate::Paused,
        };
    }

    /// Lets the clock run at a speed.
    pub const fn run_at(&mut self, times: u32) {
        self.speed = times;
        self.rate = Rate::Times(times);
    }

    /// No faster than the clock on the wall.
    pub const fn slow_down(&mut self) {
        if let Rate::Times(_) = self.rate {
            self.rate = Rate::Times(1);
        }
    }

    /// The ticks to run for a frame that took `elapsed` seconds.
    pub fn ticks(&mut self, elapsed: f64) -> u64 {
        let Rate::Times(times) = self.rate else {
            self.owed = 0.0;
            return 0;
        };
        let elapsed = elapsed.clamp(0.0, LONGEST_FRAME);
        self.owed += elapsed * f64::from(times) * TICKS_PER_SECOND as f64;
        let whole = (self.owed.floor() as u64).min(MOST_TICKS);
        // What is over the cap is dropped: the job then runs slower than asked, never in bursts.
        self.owed = (self.owed - whole as f64).min(1.0);
        whole
    }

    /// When the window must be painted again; `None` while nothing moves.
    pub const fn next_frame(&self) -> Option<Duration> {
        match self.rate {
            Rate::Paused => None,
            Rate::Times(1) => Some(Duration::from_millis(100)),
            Rate::Times(_) => Some(Duration::from_millis(50)),
        }
    }
}

/// What a frame spends on ticks while the job runs as fast as the machine can: the window then
/// still answers about thirty times a second.
pub const FRAME: Duration = Duration::from_millis(30);

/// What is done at once: nobody needs to be told of so short a time.
pub const AT_ONCE: Duration = Duration::from_millis(200);

/// By what a stretch of work is measured that goes as fast as the machine can.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Stint {
    /// By the time on the wall, so that the window goes on answering.
    #[default]
    Wall,
    /// By a count of ticks, however long they take: for who must know beforehand how far a frame
    /// gets.
    Ticks(u64),
}

/// What is left of a stretch of work.
#[derive(Debug)]
pub enum Budget {
    /// Until then on the wall.
    Until(Instant),
    /// So many ticks.
    Ticks(u64),
}

impl Budget {
    /// Ticks between two looks at the wall clock: far less than a frame's worth.
    pub const TICKS: u64 = 10;

    /// A stretch that takes so long on the wall, or the ticks of the stint.
    #[expect(
        clippy::disallowed_methods,
        reason = "it decides how many ticks run, and never what a tick does"
    )]
    pub fn of(stint: Stint, limit: Duration) -> Self {
        match stint {
            Stint::Wall => Self::Until(Instant::now() + limit),
            Stint::Ticks(ticks) => Self::Ticks(ticks),
        }
    }

    /// The ticks to run before the next look; 0 when nothing is left.
    #[expect(
        clippy::disallowed_methods,
        reason = "it decides how many ticks run, and never what a tick does"
    )]
    pub fn next_ticks(&mut self) -> u64 {
        match self {
            Self::Until(end) if Instant::now() < *end => Self::TICKS,
            Self::Until(_) => 0,
            Self::Ticks(left) => {
                let next = (*left).min(Self::TICKS);
                *left -= next;
                next
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{AT_ONCE, Budget, MOST_TICKS, Pace, Rate, Stint};

    #[test]
    fn a_second_at_four_times_is_forty_ticks_however_it_is_cut_into_frames() {
        for frames in [10, 30, 50] {
            let mut pace = Pace::paused();
            pace.rate = Rate::Times(4);
            let ticks: u64 = (0..frames)
                .map(|_| pace.ticks(1.0 / f64::from(frames)))
                .sum();
            assert!((39..=40).contains(&ticks), "{frames} frames: {ticks}");
        }
    }

    #[test]
    fn a_paused_job_stands_still_and_a_long_frame_is_cut() {
        let mut pace = Pace::paused();
        assert_eq!(pace.ticks(10.0), 0);
        assert_eq!(pace.next_frame(), None);
        pace.rate = Rate::Times(60);
        assert_eq!(pace.ticks(1e9), MOST_TICKS);
        assert!(pace.ticks(0.0) <= 1);
    }

    #[test]
    fn a_stint_of_ticks_gives_each_of_them_once() {
        let mut budget = Budget::of(Stint::Ticks(25), AT_ONCE);
        let given: Vec<u64> = std::iter::from_fn(|| Some(budget.next_ticks()))
            .take_while(|&ticks| ticks > 0)
            .collect();
        assert_eq!(given, [10, 10, 5]);
    }
}
