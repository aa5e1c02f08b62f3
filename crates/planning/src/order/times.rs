//! How long lifts take. Nobody measured it: every time is a range, and what the order keeps is its upper end.

use evidence::Ranged;
use site::DayTime;

/// What lifts and the ways between them are reckoned with. The usual values are common practice (ours, from memory).
#[derive(Debug, Clone, PartialEq)]
pub struct OrderTimes {
    /// Speed on site with and without a load, m/s. A machine that drives no faster by its own file counts with that.
    pub speed: Ranged,
    /// How much longer the way is than the straight line, where nobody has driven or planned it.
    pub detour: f64,
    /// Taking a load up where it waits, min.
    pub pick_up: Ranged,
    /// Boom up, out and back again, min.
    pub boom: Ranged,
    /// Setting down and pulling out, or going in and lifting off, min.
    pub set_down: Ranged,
    /// Stabilizers or outriggers down and up, min.
    pub support: Ranged,
    /// Another attachment, its lock looked at, min.
    pub change: Ranged,
    /// What must stay between two machines' swept circles, m.
    pub apart: f64,
    /// Working hours.
    pub hours: DayTime,
    /// Who states these values; `None`: common practice.
    pub by: Option<String>,
}

impl Default for OrderTimes {
    fn default() -> Self {
        let minutes = |low, nominal, high| Ranged { low, nominal, high };
        Self {
            speed: minutes(1.0, 1.7, 2.8),
            detour: 1.4,
            pick_up: minutes(0.5, 1.0, 3.0),
            boom: minutes(1.0, 2.0, 4.0),
            set_down: minutes(0.5, 1.5, 4.0),
            support: minutes(1.0, 2.0, 4.0),
            change: minutes(3.0, 8.0, 15.0),
            apart: 2.0,
            hours: DayTime { from: 420, to: 1020 },
            by: None,
        }
    }
}

impl OrderTimes {
    /// Minutes for a way of that length, m, of a machine whose file states a greatest speed, m/s, or none.
    pub fn driving(&self, metres: f64, most: Option<f64>) -> Ranged {
        let top = most.unwrap_or(f64::INFINITY);
        // What is no number stays none: it never becomes a short way.
        let at = |speed: f64| if metres <= 0.0 { 0.0 } else { metres / speed.min(top) / 60.0 };
        Ranged { low: at(self.speed.high), nominal: at(self.speed.nominal), high: at(self.speed.low) }
    }
}
