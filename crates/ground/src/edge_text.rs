//! Ids of what is said about edges, walls beside loads, and buried things. `wording` has the words.

evidence::messages! {
    /// Working: elastic stress of all patches.
    STEP_STRESS_ELASTIC = "working-stress-elastic" [];
    /// Working: stress of all patches by 2:1 spread.
    STEP_STRESS_SPREAD = "working-stress-spread" [];
    /// Working: sideways force on a wall.
    STEP_LATERAL_RESULTANT = "working-lateral-resultant" [];
    /// Working: where that force acts.
    STEP_LATERAL_HEIGHT = "working-lateral-height" [];
    /// Working: distance by rule.
    STEP_PLANNING_LINE = "working-planning-line" [];
    /// Working: the worst plane wedge.
    STEP_WEDGE = "working-wedge" [];
    /// Working: the worst slip circle.
    STEP_SLIP_CIRCLE = "working-slip-circle" [];
    /// A value is no number.
    FAULT_NO_NUMBER = "ground-fault-no-number" [what];
    /// A value is out of range.
    FAULT_RANGE = "ground-fault-range" [what, got, least, most];
    /// A unit weight in another unit.
    FAULT_UNIT_WEIGHT = "ground-fault-unit-weight" [got, meant];
    /// Two values in the wrong order.
    FAULT_ORDER = "ground-fault-order" [lesser, greater];
    /// A value that is missing.
    FAULT_MISSING = "ground-fault-missing" [what];
    /// A value that needs a name.
    FAULT_NO_NAME = "ground-fault-no-name" [what];
    /// Depth of a drop.
    NAME_EDGE_DEPTH = "ground-name-edge-depth" [];
    /// Half the depth of a drop.
    NAME_HALF_DEPTH = "ground-name-half-depth" [];
    /// Level distance from toe to crest.
    NAME_EDGE_BATTER = "ground-name-edge-batter" [];
    /// Slope of the planning line.
    NAME_EDGE_RATIO = "ground-name-edge-ratio" [];
    /// A soil layer.
    NAME_LAYER = "ground-name-layer" [];
    /// Top of a layer.
    NAME_LAYER_TOP = "ground-name-layer-top" [];
    /// Underside of a layer.
    NAME_LAYER_BOTTOM = "ground-name-layer-bottom" [];
    /// Unit weight.
    NAME_UNIT_WEIGHT = "ground-name-unit-weight" [];
    /// Cohesion.
    NAME_COHESION = "ground-name-cohesion" [];
    /// Angle of friction.
    NAME_FRICTION = "ground-name-friction" [];
    /// Depth of the firm base.
    NAME_FIRM_BASE = "ground-name-firm-base" [];
    /// Depth of the crack.
    NAME_CRACK = "ground-name-crack" [];
    /// Water in the crack.
    NAME_CRACK_WATER = "ground-name-crack-water" [];
    /// Pore pressure ratio.
    NAME_PORE_RATIO = "ground-name-pore-ratio" [];
    /// Water table.
    NAME_WATER_TABLE = "ground-name-water-table" [];
    /// Ground surface.
    NAME_GROUND_SURFACE = "ground-name-ground-surface" [];
    /// Place of a load.
    NAME_LOAD_PLACE = "ground-name-load-place" [];
    /// Nearer edge of a load.
    NAME_LOAD_NEAR = "ground-name-load-near" [];
    /// Farther edge of a load.
    NAME_LOAD_FAR = "ground-name-load-far" [];
    /// Pressure of a load.
    NAME_LOAD_PRESSURE = "ground-name-load-pressure" [];
    /// Size of a contact.
    NAME_CONTACT_SIZE = "ground-name-contact-size" [];
    /// Force of a contact.
    NAME_CONTACT_FORCE = "ground-name-contact-force" [];
    /// Hours.
    NAME_HOURS = "ground-name-hours" [];
    /// Working: distance by rule and by equilibrium.
    STEP_SET_BACK = "working-set-back" [];
    /// Corner of an outline.
    NAME_OUTLINE_CORNER = "ground-name-outline-corner" [];
    /// Edge of a side of an outline.
    NAME_OUTLINE_EDGE = "ground-name-outline-edge" [];
    /// Place of a crown.
    NAME_CROWN = "ground-name-crown" [];
    /// Half the breadth of a buried thing.
    NAME_HALF_BREADTH = "ground-name-half-breadth" [];
    /// Cover.
    NAME_COVER = "ground-name-cover" [];
    /// Allowable stress.
    NAME_ALLOWABLE = "ground-name-allowable" [];
    /// Radius of a pipe.
    NAME_PIPE_RADIUS = "ground-name-pipe-radius" [];
    /// Stiffness of a pipe's wall.
    NAME_PIPE_WALL = "ground-name-pipe-wall" [];
    /// Modulus of soil reaction.
    NAME_SOIL_MODULUS = "ground-name-soil-modulus" [];
    /// Bedding factor.
    NAME_BEDDING = "ground-name-bedding" [];
    /// Deflection lag factor.
    NAME_LAG = "ground-name-lag" [];
    /// Allowable deflection.
    NAME_DEFLECTION = "ground-name-deflection" [];
    /// Direction of a contact.
    NAME_HEADING = "ground-name-heading" [];
    /// Working: impact by cover.
    STEP_IMPACT = "working-impact-cover" [];
    /// Working: stress at a crown.
    STEP_CROWN = "working-crown-stress" [];
    /// Working: deflection of a flexible pipe.
    STEP_IOWA = "working-iowa" [];
}
