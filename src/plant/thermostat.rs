//! A room thermostat with its differential.

/// The room as the thermostat feels it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thermostat {
    /// What it is set to, K. `None`: turned all the way down, so that it always calls.
    setpoint: Option<f64>,
    /// From where it stops calling to where it calls again, K.
    differential: f64,
    calls: bool,
}

impl Thermostat {
    /// Set to a temperature, K, with a differential, K, in a room of `room`, K.
    pub fn set_to(setpoint: Option<f64>, differential: f64, room: f64) -> Self {
        Self {
            setpoint,
            differential,
            calls: setpoint.is_none_or(|setpoint| room > setpoint),
        }
    }

    /// Sets it anew, K; `None` turns it all the way down.
    pub fn set(&mut self, setpoint: Option<f64>, room: f64) {
        *self = Self::set_to(setpoint, self.differential, room);
    }

    /// What it is set to, K; `None` where it is turned all the way down.
    pub const fn setpoint(&self) -> Option<f64> {
        self.setpoint
    }

    /// Whether the room is too warm for it.
    pub const fn calls(&self) -> bool {
        self.calls
    }

    /// Feels the room, K.
    pub fn feel(&mut self, room: f64) {
        let Some(setpoint) = self.setpoint else {
            return;
        };
        let half = 0.5 * self.differential;
        if room > setpoint + half {
            self.calls = true;
        } else if room < setpoint - half {
            self.calls = false;
        }
    }

    /// Every number of the state, for digests; one that always calls has none.
    pub fn visit_state(&self, visit: &mut dyn FnMut(f64)) {
        if let Some(setpoint) = self.setpoint {
            visit(setpoint);
            visit(f64::from(u8::from(self.calls)));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no source: a thermostat calls half its differential above the setpoint
    /// and rests half of it below.
    #[test]
    fn it_calls_above_and_rests_below_its_differential() {
        let mut thermostat = Thermostat::set_to(Some(297.0), 0.6, 297.2);
        assert!(thermostat.calls());
        for (room, calls) in [(296.8, true), (296.6, false), (297.2, false), (297.4, true)] {
            thermostat.feel(room);
            assert_eq!(thermostat.calls(), calls, "{room}");
        }
    }

    #[test]
    fn turned_all_the_way_down_it_always_calls() {
        let mut thermostat = Thermostat::set_to(None, 0.6, 250.0);
        thermostat.feel(200.0);
        assert!(thermostat.calls());
    }
}
