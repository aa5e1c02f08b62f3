//! Layers, by what lies on them.

use site::{BuriedKind, ThingKind, ZoneRule};

/// A layer: the same name in every format.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Layer {
    /// Name: letters, digits and hyphens, so that every CAD version takes it.
    pub(crate) name: &'static str,
    /// Colour on screen.
    pub(crate) rgb: [u8; 3],
    /// The nearest of the numbered colours of DXF.
    pub(crate) number: u8,
}

const fn layer(name: &'static str, rgb: [u8; 3], number: u8) -> Layer {
    Layer { name, rgb, number }
}

pub(crate) const GROUND: Layer = layer("Ground", [150, 140, 110], 33);
pub(crate) const LINE: Layer = layer("Overhead-line", [200, 30, 30], 1);
pub(crate) const LANDING: Layer = layer("Landing", [30, 120, 60], 3);
pub(crate) const GATE: Layer = layer("Gate", [90, 90, 90], 8);
pub(crate) const EXCAVATION: Layer = layer("Excavation", [120, 70, 30], 34);
/// Openings in drawings, where a wall is a line with a thickness that nothing can be cut out of.
pub(crate) const OPENING: Layer = layer("Opening", [20, 130, 200], 4);
pub(crate) const STAND: Layer = layer("Stand", [20, 70, 160], 5);
pub(crate) const MACHINE: Layer = layer("Machine", [230, 160, 20], 40);
pub(crate) const WAY: Layer = layer("Load-way", [20, 140, 160], 4);
pub(crate) const NOTES: Layer = layer("Notes", [60, 60, 60], 7);

pub(crate) fn of_thing(kind: ThingKind) -> Layer {
    match kind {
        ThingKind::Building => layer("Thing-building", [170, 160, 150], 9),
        ThingKind::Wall => layer("Thing-wall", [150, 120, 100], 32),
        ThingKind::Fence => layer("Thing-fence", [120, 120, 120], 8),
        ThingKind::Scaffold => layer("Thing-scaffold", [110, 130, 160], 153),
        ThingKind::Floor => layer("Thing-floor", [190, 190, 190], 9),
        ThingKind::Bridge => layer("Thing-bridge", [130, 130, 150], 8),
        ThingKind::Tree => layer("Thing-tree", [70, 130, 50], 94),
        ThingKind::Mast => layer("Thing-mast", [160, 60, 120], 6),
        ThingKind::Plant => layer("Thing-plant", [210, 170, 40], 42),
        ThingKind::Store => layer("Thing-store", [180, 130, 80], 32),
        ThingKind::Fuel => layer("Thing-fuel", [210, 60, 20], 20),
        ThingKind::TruckBay => layer("Thing-truck-bay", [100, 110, 120], 8),
        ThingKind::Unnamed => layer("Thing-unnamed", [200, 100, 160], 6),
    }
}

pub(crate) fn of_buried(kind: BuriedKind) -> Layer {
    match kind {
        BuriedKind::Pipe => layer("Buried-pipe", [40, 90, 180], 5),
        BuriedKind::Cable => layer("Buried-cable", [200, 40, 40], 1),
        BuriedKind::Culvert => layer("Buried-culvert", [60, 110, 140], 144),
        BuriedKind::Tank => layer("Buried-tank", [80, 80, 140], 154),
        BuriedKind::Basement => layer("Buried-basement", [120, 100, 120], 8),
        BuriedKind::Backfill => layer("Buried-backfill", [150, 120, 70], 34),
        BuriedKind::Void => layer("Buried-void", [60, 60, 60], 250),
    }
}

pub(crate) fn of_zone(rule: ZoneRule) -> Layer {
    match rule {
        ZoneRule::NoGo => layer("Zone-no-go", [200, 20, 20], 1),
        ZoneRule::People => layer("Zone-people", [230, 120, 20], 30),
        ZoneRule::OneWay { .. } => layer("Zone-one-way", [40, 100, 200], 5),
        ZoneRule::Speed { .. } => layer("Zone-speed", [120, 60, 180], 200),
        ZoneRule::Soft => layer("Zone-soft", [120, 100, 40], 52),
        ZoneRule::SlopeLimit { .. } => layer("Zone-slope", [180, 140, 20], 42),
    }
}
