//! Densities of building materials.
//!
//! Three lists: EN 1991-1-1:2002 annex A (unit weights in kN/m³, as kg/m³), a US residential design
//! guide (lb/ft³), and general handbook values. Which of them were read second hand and which come
//! from memory stands in every row, and is shown wherever a row is used.

use crate::material_names as name;
use Form::{Bulk, Compressed, Damp, Insulation, Solid, Timber, Unit};
use Origin::{En1991, General, UsList};
use Reading::{FromMemory, SecondHand};
use evidence::{Ranged, Reading, Source, TextId};

/// A material with its density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Material {
    /// Stable id, kebab-case English.
    pub id: &'static str,
    /// Name for people.
    pub name: TextId,
    /// Lowest density, kg/m³.
    pub low: f64,
    /// Highest density, kg/m³.
    pub high: f64,
    /// Which list it stands in.
    pub origin: Origin,
    /// How that list was read.
    pub reading: Reading,
    /// What the density is the density of.
    pub form: Form,
}

/// The list of a density.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// EN 1991-1-1:2002, annex A.
    En1991,
    /// A list in lb/ft³ of a US residential structural design guide.
    UsList,
    /// General handbook knowledge.
    General,
}

/// What a density is the density of: a pack of it may weigh more or less.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// Fills its volume, or is listed as it lies.
    Bulk,
    /// The piece itself; packs of pieces have few gaps.
    Unit,
    /// The solid material: packs of bars, pipes and profiles hold much air.
    Solid,
    /// Loose; a pack of it is pressed together and several times heavier.
    Compressed,
    /// Comes damp: then heavier by up to [`DAMP_SHARE`].
    Damp,
    /// Timber and boards of it: moist as delivered, heavier by up to [`DAMP_SHARE`].
    Timber,
    /// Insulation in boards: soaked, its volume fills with water.
    Insulation,
}

/// Share by which aerated blocks, timber and the like are heavier as delivered, at most (from memory).
pub const DAMP_SHARE: f64 = 0.30;

impl Material {
    /// Density, kg/m³: the middle of the list's range, and the range.
    pub fn density(&self) -> Ranged {
        Ranged { low: self.low, nominal: f64::midpoint(self.low, self.high), high: self.high }
    }

    /// The list, with how it was read.
    pub fn source(&self) -> Source {
        let citation = match self.origin {
            Origin::En1991 => "EN 1991-1-1:2002, annex A",
            Origin::UsList => "US residential structural design guide, densities in lb/ft³",
            Origin::General => "general handbook value",
        };
        match self.reading {
            Reading::FromMemory => Source::from_memory(citation),
            Reading::SecondHand => Source::second_hand(citation),
            Reading::InSource => Source::read(citation),
        }
    }

    /// True for what comes with water in it where nobody states any.
    pub fn comes_damp(&self) -> bool {
        matches!(self.form, Form::Damp | Form::Timber)
    }

    /// True for insulation: soaked, it holds water up to its whole volume (ours; the safe side).
    pub fn fills_with_water(&self) -> bool {
        matches!(self.form, Form::Compressed | Form::Insulation)
    }

    /// What to know before using the density for a pack.
    pub fn note(&self) -> Option<TextId> {
        match self.form {
            Form::Bulk | Form::Timber | Form::Insulation => None,
            Form::Unit => Some(name::NOTE_UNIT),
            Form::Solid => Some(name::NOTE_SOLID),
            Form::Compressed => Some(name::NOTE_COMPRESSED),
            Form::Damp => Some(name::NOTE_DAMP),
        }
    }
}

/// Every material, in the order of the lists.
pub fn materials() -> &'static [Material] {
    &MATERIALS
}

/// The material of that id.
pub fn material(id: &str) -> Option<&'static Material> {
    MATERIALS.iter().find(|m| m.id == id)
}

const fn row(
    id: &'static str,
    name: TextId,
    low: f64,
    high: f64,
    origin: Origin,
    reading: Reading,
    form: Form,
) -> Material {
    Material { id, name, low, high, origin, reading, form }
}

#[rustfmt::skip]
static MATERIALS: [Material; 111] = [
    row("concrete-normal-weight-hardened", name::MATERIAL_CONCRETE_NORMAL_WEIGHT_HARDENED, 2447.0, 2447.0, En1991, SecondHand, Bulk),
    row("concrete-reinforced-hardened", name::MATERIAL_CONCRETE_REINFORCED_HARDENED, 2549.0, 2549.0, En1991, SecondHand, Bulk),
    row("concrete-normal-weight-fresh-wet", name::MATERIAL_CONCRETE_NORMAL_WEIGHT_FRESH_WET, 2549.0, 2549.0, En1991, SecondHand, Bulk),
    row("cement-mortar", name::MATERIAL_CEMENT_MORTAR, 1937.0, 2345.0, En1991, SecondHand, Bulk),
    row("gypsum-mortar", name::MATERIAL_GYPSUM_MORTAR, 1224.0, 1835.0, En1991, SecondHand, Bulk),
    row("lime-cement-mortar", name::MATERIAL_LIME_CEMENT_MORTAR, 1835.0, 2039.0, En1991, SecondHand, Bulk),
    row("lime-mortar", name::MATERIAL_LIME_MORTAR, 1224.0, 1835.0, En1991, SecondHand, Bulk),
    row("granite-syenite-porphyry", name::MATERIAL_GRANITE_SYENITE_PORPHYRY, 2753.0, 3059.0, En1991, SecondHand, Bulk),
    row("basalt-diorite-gabbro", name::MATERIAL_BASALT_DIORITE_GABBRO, 2753.0, 3161.0, En1991, SecondHand, Bulk),
    row("sandstone-greywacke", name::MATERIAL_SANDSTONE_GREYWACKE, 2141.0, 2753.0, En1991, SecondHand, Bulk),
    row("limestone-dense", name::MATERIAL_LIMESTONE_DENSE, 2039.0, 2957.0, En1991, SecondHand, Bulk),
    row("limestone-other", name::MATERIAL_LIMESTONE_OTHER, 2039.0, 2039.0, En1991, SecondHand, Bulk),
    row("volcanic-tuff", name::MATERIAL_VOLCANIC_TUFF, 2039.0, 2039.0, En1991, SecondHand, Bulk),
    row("timber-c14", name::MATERIAL_TIMBER_C14, 357.0, 357.0, En1991, SecondHand, Timber),
    row("timber-c22", name::MATERIAL_TIMBER_C22, 418.0, 418.0, En1991, SecondHand, Timber),
    row("timber-c30", name::MATERIAL_TIMBER_C30, 469.0, 469.0, En1991, SecondHand, Timber),
    row("timber-d30", name::MATERIAL_TIMBER_D30, 653.0, 653.0, En1991, SecondHand, Timber),
    row("timber-d50", name::MATERIAL_TIMBER_D50, 795.0, 795.0, En1991, SecondHand, Timber),
    row("concrete-reinforced-fresh-wet", name::MATERIAL_CONCRETE_REINFORCED_FRESH_WET, 2651.0, 2651.0, En1991, FromMemory, Bulk),
    row("timber-c16", name::MATERIAL_TIMBER_C16, 377.0, 377.0, En1991, FromMemory, Timber),
    row("timber-c24", name::MATERIAL_TIMBER_C24, 428.0, 428.0, En1991, FromMemory, Timber),
    row("glued-laminated-timber-gl24h", name::MATERIAL_GLUED_LAMINATED_TIMBER_GL24H, 377.0, 377.0, En1991, FromMemory, Timber),
    row("glued-laminated-timber-gl28h", name::MATERIAL_GLUED_LAMINATED_TIMBER_GL28H, 408.0, 408.0, En1991, FromMemory, Timber),
    row("plywood-softwood", name::MATERIAL_PLYWOOD_SOFTWOOD, 510.0, 510.0, En1991, FromMemory, Timber),
    row("plywood-birch", name::MATERIAL_PLYWOOD_BIRCH, 612.0, 612.0, En1991, FromMemory, Timber),
    row("chipboard", name::MATERIAL_CHIPBOARD, 714.0, 816.0, En1991, FromMemory, Timber),
    row("cement-bonded-particle-board", name::MATERIAL_CEMENT_BONDED_PARTICLE_BOARD, 1224.0, 1224.0, En1991, FromMemory, Timber),
    row("osb", name::MATERIAL_OSB, 714.0, 714.0, En1991, FromMemory, Timber),
    row("hardboard", name::MATERIAL_HARDBOARD, 1020.0, 1020.0, En1991, FromMemory, Timber),
    row("mdf", name::MATERIAL_MDF, 816.0, 816.0, En1991, FromMemory, Timber),
    row("softboard-fibreboard", name::MATERIAL_SOFTBOARD_FIBREBOARD, 408.0, 408.0, En1991, FromMemory, Insulation),
    row("aluminium", name::MATERIAL_ALUMINIUM, 2753.0, 2753.0, En1991, FromMemory, Solid),
    row("steel", name::MATERIAL_STEEL, 7852.0, 8005.0, En1991, FromMemory, Solid),
    row("cast-iron", name::MATERIAL_CAST_IRON, 7240.0, 7393.0, En1991, FromMemory, Solid),
    row("copper", name::MATERIAL_COPPER, 8872.0, 9075.0, En1991, FromMemory, Solid),
    row("lead", name::MATERIAL_LEAD, 11_421.0, 11_625.0, En1991, FromMemory, Solid),
    row("zinc", name::MATERIAL_ZINC, 7240.0, 7342.0, En1991, FromMemory, Solid),
    row("glass-sheet", name::MATERIAL_GLASS_SHEET, 2549.0, 2549.0, En1991, FromMemory, Bulk),
    row("glass-broken", name::MATERIAL_GLASS_BROKEN, 2243.0, 2243.0, En1991, FromMemory, Bulk),
    row("acrylic-sheet", name::MATERIAL_ACRYLIC_SHEET, 1224.0, 1224.0, En1991, FromMemory, Bulk),
    row("foamed-glass", name::MATERIAL_FOAMED_GLASS, 143.0, 143.0, En1991, FromMemory, Insulation),
    row("slate", name::MATERIAL_SLATE, 2855.0, 2855.0, En1991, FromMemory, Bulk),
    row("gravel", name::MATERIAL_GRAVEL, 1530.0, 2039.0, En1991, FromMemory, Bulk),
    row("sand", name::MATERIAL_SAND, 1428.0, 1937.0, En1991, FromMemory, Bulk),
    row("aggregate-normal", name::MATERIAL_AGGREGATE_NORMAL, 2039.0, 3059.0, En1991, FromMemory, Bulk),
    row("aggregate-lightweight", name::MATERIAL_AGGREGATE_LIGHTWEIGHT, 918.0, 2039.0, En1991, FromMemory, Bulk),
    row("blast-furnace-slag-lumps", name::MATERIAL_BLAST_FURNACE_SLAG_LUMPS, 1734.0, 1734.0, En1991, FromMemory, Bulk),
    row("cement-bulk", name::MATERIAL_CEMENT_BULK, 1632.0, 1632.0, En1991, FromMemory, Bulk),
    row("cement-in-bags", name::MATERIAL_CEMENT_IN_BAGS, 1530.0, 1530.0, En1991, FromMemory, Bulk),
    row("fly-ash", name::MATERIAL_FLY_ASH, 1020.0, 1428.0, En1991, FromMemory, Bulk),
    row("gypsum-ground", name::MATERIAL_GYPSUM_GROUND, 1530.0, 1530.0, En1991, FromMemory, Bulk),
    row("lime", name::MATERIAL_LIME, 1326.0, 1326.0, En1991, FromMemory, Bulk),
    row("fresh-water", name::MATERIAL_FRESH_WATER, 1020.0, 1020.0, En1991, FromMemory, Bulk),
    row("aluminum", name::MATERIAL_ALUMINUM, 2723.0, 2723.0, UsList, SecondHand, Solid),
    row("copper-us-list", name::MATERIAL_COPPER_US_LIST, 8906.0, 8906.0, UsList, SecondHand, Solid),
    row("steel-us-list", name::MATERIAL_STEEL_US_LIST, 7881.0, 7881.0, UsList, SecondHand, Solid),
    row("concrete-normal-weight-light-reinforcement", name::MATERIAL_CONCRETE_NORMAL_WEIGHT_LIGHT_REINFORCEMENT, 2323.0, 2403.0, UsList, SecondHand, Bulk),
    row("masonry-grout", name::MATERIAL_MASONRY_GROUT, 2243.0, 2243.0, UsList, SecondHand, Bulk),
    row("brick-masonry", name::MATERIAL_BRICK_MASONRY, 1602.0, 2082.0, UsList, SecondHand, Bulk),
    row("concrete-masonry", name::MATERIAL_CONCRETE_MASONRY, 1362.0, 2162.0, UsList, SecondHand, Bulk),
    row("glass-us-list", name::MATERIAL_GLASS_US_LIST, 2563.0, 2563.0, UsList, SecondHand, Bulk),
    row("spruce-pine-fir-lumber", name::MATERIAL_SPRUCE_PINE_FIR_LUMBER, 465.0, 465.0, UsList, SecondHand, Timber),
    row("southern-yellow-pine-lumber", name::MATERIAL_SOUTHERN_YELLOW_PINE_LUMBER, 609.0, 609.0, UsList, SecondHand, Timber),
    row("douglas-fir-larch-lumber", name::MATERIAL_DOUGLAS_FIR_LARCH_LUMBER, 545.0, 545.0, UsList, SecondHand, Timber),
    row("hem-fir-lumber", name::MATERIAL_HEM_FIR_LUMBER, 481.0, 481.0, UsList, SecondHand, Timber),
    row("mixed-oak", name::MATERIAL_MIXED_OAK, 753.0, 753.0, UsList, SecondHand, Timber),
    row("water-us-list", name::MATERIAL_WATER_US_LIST, 1000.0, 1000.0, UsList, SecondHand, Bulk),
    row("plywood-us-list", name::MATERIAL_PLYWOOD_US_LIST, 577.0, 577.0, UsList, SecondHand, Timber),
    row("osb-us-list", name::MATERIAL_OSB_US_LIST, 577.0, 577.0, UsList, SecondHand, Timber),
    row("gypsum-board", name::MATERIAL_GYPSUM_BOARD, 769.0, 769.0, UsList, SecondHand, Bulk),
    row("sand-dry", name::MATERIAL_SAND_DRY, 1442.0, 1442.0, UsList, SecondHand, Bulk),
    row("gravel-dry", name::MATERIAL_GRAVEL_DRY, 1682.0, 1682.0, UsList, SecondHand, Bulk),
    row("clay-facing-brick-unit", name::MATERIAL_CLAY_FACING_BRICK_UNIT, 1500.0, 2000.0, General, FromMemory, Unit),
    row("engineering-brick-unit", name::MATERIAL_ENGINEERING_BRICK_UNIT, 2100.0, 2400.0, General, FromMemory, Unit),
    row("concrete-brick-unit", name::MATERIAL_CONCRETE_BRICK_UNIT, 1900.0, 2100.0, General, FromMemory, Unit),
    row("dense-aggregate-concrete-block", name::MATERIAL_DENSE_AGGREGATE_CONCRETE_BLOCK, 1800.0, 2100.0, General, FromMemory, Unit),
    row("medium-density-aggregate-block", name::MATERIAL_MEDIUM_DENSITY_AGGREGATE_BLOCK, 1300.0, 1500.0, General, FromMemory, Unit),
    row("lightweight-aggregate-block", name::MATERIAL_LIGHTWEIGHT_AGGREGATE_BLOCK, 650.0, 1150.0, General, FromMemory, Unit),
    row("aerated-autoclaved-concrete-block", name::MATERIAL_AERATED_AUTOCLAVED_CONCRETE_BLOCK, 450.0, 750.0, General, FromMemory, Damp),
    row("plasterboard-standard", name::MATERIAL_PLASTERBOARD_STANDARD, 640.0, 720.0, General, FromMemory, Bulk),
    row("plasterboard-dense-acoustic-or-fire", name::MATERIAL_PLASTERBOARD_DENSE_ACOUSTIC_OR_FIRE, 800.0, 1000.0, General, FromMemory, Bulk),
    row("sand-damp-loose-bulk", name::MATERIAL_SAND_DAMP_LOOSE_BULK, 1600.0, 1850.0, General, FromMemory, Bulk),
    row("sand-wet-saturated", name::MATERIAL_SAND_WET_SATURATED, 1900.0, 2050.0, General, FromMemory, Bulk),
    row("gravel-wet", name::MATERIAL_GRAVEL_WET, 1800.0, 2000.0, General, FromMemory, Bulk),
    row("crushed-stone-loose", name::MATERIAL_CRUSHED_STONE_LOOSE, 1400.0, 1700.0, General, FromMemory, Bulk),
    row("topsoil-loose-moist", name::MATERIAL_TOPSOIL_LOOSE_MOIST, 1100.0, 1500.0, General, FromMemory, Bulk),
    row("clay-excavated-moist", name::MATERIAL_CLAY_EXCAVATED_MOIST, 1600.0, 1900.0, General, FromMemory, Bulk),
    row("ready-mixed-mortar-wet", name::MATERIAL_READY_MIXED_MORTAR_WET, 1900.0, 2200.0, General, FromMemory, Bulk),
    row("sand-cement-screed", name::MATERIAL_SAND_CEMENT_SCREED, 2000.0, 2200.0, General, FromMemory, Bulk),
    row("roof-tile-concrete", name::MATERIAL_ROOF_TILE_CONCRETE, 2000.0, 2200.0, General, FromMemory, Unit),
    row("roof-tile-clay", name::MATERIAL_ROOF_TILE_CLAY, 1800.0, 2000.0, General, FromMemory, Unit),
    row("mineral-wool-roll", name::MATERIAL_MINERAL_WOOL_ROLL, 10.0, 25.0, General, FromMemory, Compressed),
    row("mineral-wool-slab", name::MATERIAL_MINERAL_WOOL_SLAB, 30.0, 200.0, General, FromMemory, Compressed),
    row("eps-board", name::MATERIAL_EPS_BOARD, 15.0, 30.0, General, FromMemory, Insulation),
    row("xps-board", name::MATERIAL_XPS_BOARD, 28.0, 45.0, General, FromMemory, Insulation),
    row("pir-or-pur-board", name::MATERIAL_PIR_OR_PUR_BOARD, 30.0, 35.0, General, FromMemory, Insulation),
    row("pvc-u-pipe-material", name::MATERIAL_PVC_U_PIPE_MATERIAL, 1380.0, 1420.0, General, FromMemory, Solid),
    row("hdpe-pipe-material", name::MATERIAL_HDPE_PIPE_MATERIAL, 940.0, 960.0, General, FromMemory, Solid),
    row("ductile-iron-pipe-material", name::MATERIAL_DUCTILE_IRON_PIPE_MATERIAL, 7050.0, 7100.0, General, FromMemory, Solid),
    row("vitrified-clay-pipe-material", name::MATERIAL_VITRIFIED_CLAY_PIPE_MATERIAL, 2100.0, 2300.0, General, FromMemory, Solid),
    row("concrete-pipe-material", name::MATERIAL_CONCRETE_PIPE_MATERIAL, 2350.0, 2450.0, General, FromMemory, Solid),
    row("copper-tube-material", name::MATERIAL_COPPER_TUBE_MATERIAL, 8900.0, 8960.0, General, FromMemory, Solid),
    row("asphalt-rolled", name::MATERIAL_ASPHALT_ROLLED, 2300.0, 2400.0, General, FromMemory, Bulk),
    row("bitumen", name::MATERIAL_BITUMEN, 1000.0, 1050.0, General, FromMemory, Bulk),
    row("ceramic-tile", name::MATERIAL_CERAMIC_TILE, 1900.0, 2400.0, General, FromMemory, Bulk),
    row("porcelain-tile", name::MATERIAL_PORCELAIN_TILE, 2300.0, 2450.0, General, FromMemory, Bulk),
    row("fibre-cement-sheet", name::MATERIAL_FIBRE_CEMENT_SHEET, 1300.0, 1800.0, General, FromMemory, Bulk),
    row("diesel-fuel", name::MATERIAL_DIESEL_FUEL, 820.0, 850.0, General, FromMemory, Bulk),
    row("rubble-mixed-demolition-loose", name::MATERIAL_RUBBLE_MIXED_DEMOLITION_LOOSE, 1100.0, 1600.0, General, FromMemory, Bulk),
    row("snow-settled", name::MATERIAL_SNOW_SETTLED, 200.0, 400.0, General, FromMemory, Bulk),
    row("ice", name::MATERIAL_ICE, 900.0, 920.0, General, FromMemory, Bulk),
];
