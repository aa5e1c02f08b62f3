//! Room on a landing for the load, for the people, and for pulling the forks out.
//!
//! Rectangles in the landing's frame: x from the edge that the load comes over inwards, y to the left, m.

use crate::landing_range::Ranges;
use crate::text;
use evidence::Faults;
use quantity::Dimension;

/// Space that one person needs to stand and work beside a load, m each way (EN 12811-1:2003 asks for a width of
/// 0.6 m, from memory).
pub const PERSON_SPACE: f64 = 0.6;

/// A rectangle along the axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Area {
    /// From and to along x, m.
    pub x: (f64, f64),
    /// From and to along y, m.
    pub y: (f64, f64),
}

impl Area {
    /// Whether both have more than an edge in common.
    pub fn meets(self, other: Self) -> bool {
        // A millionth of a metre: sums of typed lengths meet at their edges.
        let over = |a: (f64, f64), b: (f64, f64)| a.0 < b.1 - 1e-6 && b.0 < a.1 - 1e-6;
        over(self.x, other.x) && over(self.y, other.y)
    }

    /// m².
    pub fn size(self) -> f64 {
        (self.x.1 - self.x.0) * (self.y.1 - self.y.0)
    }

    fn inside(self, size: [f64; 2]) -> bool {
        let within = |a: (f64, f64), to: f64| a.0 >= -1e-6 && a.1 <= to + 1e-6;
        within(self.x, size[0]) && within(self.y, size[1])
    }
}

/// What is asked of a landing.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// Size of the landing along x and y, m.
    pub size: [f64; 2],
    /// What already lies there.
    pub taken: Vec<Area>,
    /// The load's footprint along x and y, m.
    pub load: [f64; 2],
    /// To be kept free round the load, m.
    pub clearance: f64,
    /// People who stay on the landing.
    pub people: usize,
    /// Width of the blades or the carriage that comes in with them, across, m.
    pub forks_width: f64,
    /// How far the blades reach over the landing's edge from the load's near face, if it has to be free behind
    /// them: the length that they are pulled back by, m.
    pub withdrawal: f64,
    /// Free way outside the landing's edge that the machine's boom can still pull back over, m.
    pub way_back: f64,
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoomFound {
    /// A place for the load with a free way for the forks and, if there are people, with room for them; the
    /// nearest to the edge.
    pub load: Option<Area>,
    /// Where the people stand then, if there are any.
    pub people: Option<Area>,
    /// There is a place for the load alone, without the people's.
    pub load_alone: bool,
    /// The way back is long enough for the blades to come out.
    pub comes_out: bool,
}

impl Room {
    /// Looks for places. Of all places of a rectangle among rectangles, if there is one, there is one that touches
    /// something to its near and to its right side: only those are tried.
    ///
    /// # Errors
    /// Every size out of its range; something that ends before it begins.
    pub fn find(&self) -> Result<RoomFound, Faults> {
        self.check()?;
        let c = self.clearance;
        let wanted = [self.load[0] + c, self.load[1] + 2.0 * c];
        let mut places = corners(self.size, &self.taken, wanted);
        places.sort_by(|a, b| a.x.0.total_cmp(&b.x.0).then(a.y.0.total_cmp(&b.y.0)));
        let mut found =
            RoomFound { load: None, people: None, load_alone: false, comes_out: self.way_back >= self.withdrawal };
        for place in places {
            let middle = f64::midpoint(place.y.0, place.y.1);
            let half = self.forks_width / 2.0;
            // Forks come in over the edge: nothing may stand in their way.
            let lane = Area { x: (0.0, place.x.0), y: (middle - half, middle + half) };
            if self.taken.iter().any(|t| t.meets(lane)) {
                continue;
            }
            let load = Area { x: (place.x.0, place.x.0 + self.load[0]), y: (place.y.0 + c, place.y.1 - c) };
            found.load_alone = true;
            if self.people == 0 {
                found.load = Some(load);
                return Ok(found);
            }
            let mut full = self.taken.clone();
            full.extend([place, lane]);
            if let Some(stand) = self.stand(&full) {
                found.load = Some(load);
                found.people = Some(stand);
                return Ok(found);
            }
        }
        Ok(found)
    }

    /// A place for the people in one row, either way, where `full` is taken.
    pub fn stand(&self, full: &[Area]) -> Option<Area> {
        let row = PERSON_SPACE * self.people as f64;
        [[row, PERSON_SPACE], [PERSON_SPACE, row]]
            .into_iter()
            .find_map(|wanted| corners(self.size, full, wanted).into_iter().next())
    }

    fn check(&self) -> Result<(), Faults> {
        let mut ranges = Ranges::default();
        let two = |ranges: &mut Ranges, key: &str, v: [f64; 2], high| {
            for (name, v) in ["along", "across"].into_iter().zip(v) {
                ranges.within(&format!("{key}.{name}"), v, Dimension::Length, 0.1, high);
            }
        };
        two(&mut ranges, "size", self.size, 200.0);
        two(&mut ranges, "load", self.load, 30.0);
        ranges.within("clearance", self.clearance, Dimension::Length, 0.0, 5.0);
        ranges.within("people", self.people as f64, Dimension::Number, 0.0, 100.0);
        ranges.within("forks_width", self.forks_width, Dimension::Length, 0.1, 10.0);
        ranges.within("withdrawal", self.withdrawal, Dimension::Length, 0.0, 10.0);
        ranges.within("way_back", self.way_back, Dimension::Length, 0.0, 50.0);
        for (i, t) in self.taken.iter().enumerate() {
            ranges.ordered(&format!("taken[{i}].x"), t.x.0, t.x.1);
            ranges.ordered(&format!("taken[{i}].y"), t.y.0, t.y.1);
            if !t.meets(Area { x: (0.0, self.size[0]), y: (0.0, self.size[1]) }) {
                ranges.wrong("landing::place", &format!("taken[{i}]"), text::LANDING_NOT_ON_IT.message());
            }
        }
        ranges.done(())
    }
}

/// Free places of a rectangle that touch the landing's edge or something taken on both their lower sides.
fn corners(size: [f64; 2], taken: &[Area], wanted: [f64; 2]) -> Vec<Area> {
    let xs: Vec<f64> = std::iter::once(0.0).chain(taken.iter().map(|t| t.x.1)).collect();
    let ys: Vec<f64> = std::iter::once(0.0).chain(taken.iter().map(|t| t.y.1)).collect();
    let at = |x: f64| ys.iter().map(move |y| Area { x: (x, x + wanted[0]), y: (*y, *y + wanted[1]) });
    xs.iter().flat_map(|x| at(*x)).filter(|a| a.inside(size) && taken.iter().all(|t| !t.meets(*a))).collect()
}
