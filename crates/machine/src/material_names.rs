//! Ids of the materials' names and of the notes beside them. `wording` has the words.

evidence::messages! {
    /// Note: density of the solid material. Bundles of bars, pipes and profiles hold air: `packing` says how much.
    NOTE_SOLID = "material-note-solid" [];
    /// Note: pressed together on the pallet, several times heavier than loose.
    NOTE_COMPRESSED = "material-note-compressed" [];
    /// Note: comes damp, then 20 to 30 % heavier.
    NOTE_DAMP = "material-note-damp" [];
    /// Note: density of the piece, without gaps and mortar.
    NOTE_UNIT = "material-note-unit" [];
    /// concrete, normal weight, hardened.
    MATERIAL_CONCRETE_NORMAL_WEIGHT_HARDENED = "material-concrete-normal-weight-hardened" [];
    /// concrete, reinforced, hardened.
    MATERIAL_CONCRETE_REINFORCED_HARDENED = "material-concrete-reinforced-hardened" [];
    /// concrete, normal weight, fresh (wet).
    MATERIAL_CONCRETE_NORMAL_WEIGHT_FRESH_WET = "material-concrete-normal-weight-fresh-wet" [];
    /// cement mortar.
    MATERIAL_CEMENT_MORTAR = "material-cement-mortar" [];
    /// gypsum mortar.
    MATERIAL_GYPSUM_MORTAR = "material-gypsum-mortar" [];
    /// lime-cement mortar.
    MATERIAL_LIME_CEMENT_MORTAR = "material-lime-cement-mortar" [];
    /// lime mortar.
    MATERIAL_LIME_MORTAR = "material-lime-mortar" [];
    /// granite, syenite, porphyry.
    MATERIAL_GRANITE_SYENITE_PORPHYRY = "material-granite-syenite-porphyry" [];
    /// basalt, diorite, gabbro.
    MATERIAL_BASALT_DIORITE_GABBRO = "material-basalt-diorite-gabbro" [];
    /// sandstone, greywacke.
    MATERIAL_SANDSTONE_GREYWACKE = "material-sandstone-greywacke" [];
    /// limestone, dense.
    MATERIAL_LIMESTONE_DENSE = "material-limestone-dense" [];
    /// limestone, other.
    MATERIAL_LIMESTONE_OTHER = "material-limestone-other" [];
    /// volcanic tuff.
    MATERIAL_VOLCANIC_TUFF = "material-volcanic-tuff" [];
    /// timber C14.
    MATERIAL_TIMBER_C14 = "material-timber-c14" [];
    /// timber C22.
    MATERIAL_TIMBER_C22 = "material-timber-c22" [];
    /// timber C30.
    MATERIAL_TIMBER_C30 = "material-timber-c30" [];
    /// timber D30.
    MATERIAL_TIMBER_D30 = "material-timber-d30" [];
    /// timber D50.
    MATERIAL_TIMBER_D50 = "material-timber-d50" [];
    /// concrete, reinforced, fresh (wet).
    MATERIAL_CONCRETE_REINFORCED_FRESH_WET = "material-concrete-reinforced-fresh-wet" [];
    /// timber C16.
    MATERIAL_TIMBER_C16 = "material-timber-c16" [];
    /// timber C24.
    MATERIAL_TIMBER_C24 = "material-timber-c24" [];
    /// glued laminated timber GL24h.
    MATERIAL_GLUED_LAMINATED_TIMBER_GL24H = "material-glued-laminated-timber-gl24h" [];
    /// glued laminated timber GL28h.
    MATERIAL_GLUED_LAMINATED_TIMBER_GL28H = "material-glued-laminated-timber-gl28h" [];
    /// plywood, softwood.
    MATERIAL_PLYWOOD_SOFTWOOD = "material-plywood-softwood" [];
    /// plywood, birch.
    MATERIAL_PLYWOOD_BIRCH = "material-plywood-birch" [];
    /// chipboard.
    MATERIAL_CHIPBOARD = "material-chipboard" [];
    /// cement-bonded particle board.
    MATERIAL_CEMENT_BONDED_PARTICLE_BOARD = "material-cement-bonded-particle-board" [];
    /// OSB board.
    MATERIAL_OSB = "material-osb" [];
    /// hardboard.
    MATERIAL_HARDBOARD = "material-hardboard" [];
    /// MDF board.
    MATERIAL_MDF = "material-mdf" [];
    /// softboard fibreboard.
    MATERIAL_SOFTBOARD_FIBREBOARD = "material-softboard-fibreboard" [];
    /// aluminium.
    MATERIAL_ALUMINIUM = "material-aluminium" [];
    /// steel, reinforcing bars too.
    MATERIAL_STEEL = "material-steel" [];
    /// cast iron.
    MATERIAL_CAST_IRON = "material-cast-iron" [];
    /// copper.
    MATERIAL_COPPER = "material-copper" [];
    /// lead.
    MATERIAL_LEAD = "material-lead" [];
    /// zinc.
    MATERIAL_ZINC = "material-zinc" [];
    /// glass, sheet.
    MATERIAL_GLASS_SHEET = "material-glass-sheet" [];
    /// glass, broken.
    MATERIAL_GLASS_BROKEN = "material-glass-broken" [];
    /// acrylic sheet.
    MATERIAL_ACRYLIC_SHEET = "material-acrylic-sheet" [];
    /// foamed glass.
    MATERIAL_FOAMED_GLASS = "material-foamed-glass" [];
    /// slate.
    MATERIAL_SLATE = "material-slate" [];
    /// gravel.
    MATERIAL_GRAVEL = "material-gravel" [];
    /// sand.
    MATERIAL_SAND = "material-sand" [];
    /// aggregate, normal.
    MATERIAL_AGGREGATE_NORMAL = "material-aggregate-normal" [];
    /// aggregate, lightweight.
    MATERIAL_AGGREGATE_LIGHTWEIGHT = "material-aggregate-lightweight" [];
    /// blast furnace slag, lumps.
    MATERIAL_BLAST_FURNACE_SLAG_LUMPS = "material-blast-furnace-slag-lumps" [];
    /// cement, bulk.
    MATERIAL_CEMENT_BULK = "material-cement-bulk" [];
    /// cement, in bags.
    MATERIAL_CEMENT_IN_BAGS = "material-cement-in-bags" [];
    /// fly ash.
    MATERIAL_FLY_ASH = "material-fly-ash" [];
    /// gypsum, ground.
    MATERIAL_GYPSUM_GROUND = "material-gypsum-ground" [];
    /// lime.
    MATERIAL_LIME = "material-lime" [];
    /// fresh water.
    MATERIAL_FRESH_WATER = "material-fresh-water" [];
    /// aluminum.
    MATERIAL_ALUMINUM = "material-aluminum" [];
    /// copper (US list).
    MATERIAL_COPPER_US_LIST = "material-copper-us-list" [];
    /// steel (US list).
    MATERIAL_STEEL_US_LIST = "material-steel-us-list" [];
    /// concrete, normal weight, light reinforcement.
    MATERIAL_CONCRETE_NORMAL_WEIGHT_LIGHT_REINFORCEMENT = "material-concrete-normal-weight-light-reinforcement" [];
    /// masonry grout.
    MATERIAL_MASONRY_GROUT = "material-masonry-grout" [];
    /// brick masonry.
    MATERIAL_BRICK_MASONRY = "material-brick-masonry" [];
    /// concrete masonry.
    MATERIAL_CONCRETE_MASONRY = "material-concrete-masonry" [];
    /// glass (US list).
    MATERIAL_GLASS_US_LIST = "material-glass-us-list" [];
    /// spruce-pine-fir lumber.
    MATERIAL_SPRUCE_PINE_FIR_LUMBER = "material-spruce-pine-fir-lumber" [];
    /// southern yellow pine lumber.
    MATERIAL_SOUTHERN_YELLOW_PINE_LUMBER = "material-southern-yellow-pine-lumber" [];
    /// Douglas fir-larch lumber.
    MATERIAL_DOUGLAS_FIR_LARCH_LUMBER = "material-douglas-fir-larch-lumber" [];
    /// hem-fir lumber.
    MATERIAL_HEM_FIR_LUMBER = "material-hem-fir-lumber" [];
    /// mixed oak.
    MATERIAL_MIXED_OAK = "material-mixed-oak" [];
    /// water (US list).
    MATERIAL_WATER_US_LIST = "material-water-us-list" [];
    /// plywood (US list).
    MATERIAL_PLYWOOD_US_LIST = "material-plywood-us-list" [];
    /// OSB (US list).
    MATERIAL_OSB_US_LIST = "material-osb-us-list" [];
    /// gypsum board.
    MATERIAL_GYPSUM_BOARD = "material-gypsum-board" [];
    /// sand, dry.
    MATERIAL_SAND_DRY = "material-sand-dry" [];
    /// gravel, dry.
    MATERIAL_GRAVEL_DRY = "material-gravel-dry" [];
    /// clay facing brick, unit.
    MATERIAL_CLAY_FACING_BRICK_UNIT = "material-clay-facing-brick-unit" [];
    /// engineering brick, unit.
    MATERIAL_ENGINEERING_BRICK_UNIT = "material-engineering-brick-unit" [];
    /// concrete brick, unit.
    MATERIAL_CONCRETE_BRICK_UNIT = "material-concrete-brick-unit" [];
    /// dense aggregate concrete block.
    MATERIAL_DENSE_AGGREGATE_CONCRETE_BLOCK = "material-dense-aggregate-concrete-block" [];
    /// medium-density aggregate block.
    MATERIAL_MEDIUM_DENSITY_AGGREGATE_BLOCK = "material-medium-density-aggregate-block" [];
    /// lightweight aggregate block.
    MATERIAL_LIGHTWEIGHT_AGGREGATE_BLOCK = "material-lightweight-aggregate-block" [];
    /// aerated (autoclaved) concrete block.
    MATERIAL_AERATED_AUTOCLAVED_CONCRETE_BLOCK = "material-aerated-autoclaved-concrete-block" [];
    /// plasterboard, standard.
    MATERIAL_PLASTERBOARD_STANDARD = "material-plasterboard-standard" [];
    /// plasterboard, dense acoustic or fire.
    MATERIAL_PLASTERBOARD_DENSE_ACOUSTIC_OR_FIRE = "material-plasterboard-dense-acoustic-or-fire" [];
    /// sand, damp, loose bulk.
    MATERIAL_SAND_DAMP_LOOSE_BULK = "material-sand-damp-loose-bulk" [];
    /// sand, wet (saturated).
    MATERIAL_SAND_WET_SATURATED = "material-sand-wet-saturated" [];
    /// gravel, wet.
    MATERIAL_GRAVEL_WET = "material-gravel-wet" [];
    /// crushed stone, loose.
    MATERIAL_CRUSHED_STONE_LOOSE = "material-crushed-stone-loose" [];
    /// topsoil, loose moist.
    MATERIAL_TOPSOIL_LOOSE_MOIST = "material-topsoil-loose-moist" [];
    /// clay, excavated moist.
    MATERIAL_CLAY_EXCAVATED_MOIST = "material-clay-excavated-moist" [];
    /// ready-mixed mortar, wet.
    MATERIAL_READY_MIXED_MORTAR_WET = "material-ready-mixed-mortar-wet" [];
    /// sand-cement screed.
    MATERIAL_SAND_CEMENT_SCREED = "material-sand-cement-screed" [];
    /// roof tile, concrete.
    MATERIAL_ROOF_TILE_CONCRETE = "material-roof-tile-concrete" [];
    /// roof tile, clay.
    MATERIAL_ROOF_TILE_CLAY = "material-roof-tile-clay" [];
    /// mineral wool, roll.
    MATERIAL_MINERAL_WOOL_ROLL = "material-mineral-wool-roll" [];
    /// mineral wool, slab.
    MATERIAL_MINERAL_WOOL_SLAB = "material-mineral-wool-slab" [];
    /// EPS board.
    MATERIAL_EPS_BOARD = "material-eps-board" [];
    /// XPS board.
    MATERIAL_XPS_BOARD = "material-xps-board" [];
    /// PIR or PUR board.
    MATERIAL_PIR_OR_PUR_BOARD = "material-pir-or-pur-board" [];
    /// PVC-U pipe material.
    MATERIAL_PVC_U_PIPE_MATERIAL = "material-pvc-u-pipe-material" [];
    /// HDPE pipe material.
    MATERIAL_HDPE_PIPE_MATERIAL = "material-hdpe-pipe-material" [];
    /// ductile iron pipe material.
    MATERIAL_DUCTILE_IRON_PIPE_MATERIAL = "material-ductile-iron-pipe-material" [];
    /// vitrified clay pipe material.
    MATERIAL_VITRIFIED_CLAY_PIPE_MATERIAL = "material-vitrified-clay-pipe-material" [];
    /// concrete pipe material.
    MATERIAL_CONCRETE_PIPE_MATERIAL = "material-concrete-pipe-material" [];
    /// copper tube material.
    MATERIAL_COPPER_TUBE_MATERIAL = "material-copper-tube-material" [];
    /// asphalt, rolled.
    MATERIAL_ASPHALT_ROLLED = "material-asphalt-rolled" [];
    /// bitumen.
    MATERIAL_BITUMEN = "material-bitumen" [];
    /// ceramic tile.
    MATERIAL_CERAMIC_TILE = "material-ceramic-tile" [];
    /// porcelain tile.
    MATERIAL_PORCELAIN_TILE = "material-porcelain-tile" [];
    /// fibre-cement sheet.
    MATERIAL_FIBRE_CEMENT_SHEET = "material-fibre-cement-sheet" [];
    /// diesel fuel.
    MATERIAL_DIESEL_FUEL = "material-diesel-fuel" [];
    /// rubble, mixed demolition, loose.
    MATERIAL_RUBBLE_MIXED_DEMOLITION_LOOSE = "material-rubble-mixed-demolition-loose" [];
    /// snow, settled.
    MATERIAL_SNOW_SETTLED = "material-snow-settled" [];
    /// ice.
    MATERIAL_ICE = "material-ice" [];
}
