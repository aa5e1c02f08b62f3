//! Ids of what the calculations of stress, edges and buried things say. `wording` has the words.

evidence::messages! {
    /// Stress at a depth, both ways.
    STRESS_RESULT = "cli-stress-result" [depth, larger, elastic, spread];
    /// What it is worth.
    STRESS_NOTE = "cli-stress-note" [];
    /// The distance is kept.
    EDGE_KEPT = "cli-edge-kept" [];
    /// Too near.
    EDGE_TOO_NEAR = "cli-edge-too-near" [];
    /// The face fails by itself.
    EDGE_FACE_FAILS = "cli-edge-face-fails" [];
    /// The designer decides.
    EDGE_SUPPORTED = "cli-edge-supported" [];
    /// Cannot tell.
    EDGE_CANNOT_TELL = "cli-edge-cannot-tell" [];
    /// No soil.
    EDGE_NO_SOIL = "cli-edge-no-soil" [];
    /// No drained strength.
    EDGE_NO_DRAINED = "cli-edge-no-drained" [];
    /// No strength at all.
    EDGE_NO_UNDRAINED = "cli-edge-no-undrained" [];
    /// No water table.
    EDGE_NO_WATER = "cli-edge-no-water" [];
    /// Deeper than is dug without an engineer's design.
    EDGE_NO_ENGINEER = "cli-edge-no-engineer" [];
    /// Distance and what decides.
    EDGE_DISTANCE = "cli-edge-distance" [distance, governs, line, equilibrium, stands];
    /// Rule.
    EDGE_BY_RULE = "cli-edge-by-rule" [];
    /// Wedge.
    EDGE_BY_WEDGE = "cli-edge-by-wedge" [];
    /// Circle.
    EDGE_BY_CIRCLE = "cli-edge-by-circle" [];
    /// Factor there.
    EDGE_FACTOR = "cli-edge-factor" [factor, required, strength];
    /// Drained.
    EDGE_DRAINED = "cli-edge-drained" [];
    /// Undrained.
    EDGE_UNDRAINED = "cli-edge-undrained" [];
    /// When it ends.
    EDGE_ENDS = "cli-edge-ends" [hours];
    /// Force on the support.
    EDGE_SUPPORT = "cli-edge-support" [force, height];
    /// Heading of the slices.
    EDGE_SLICES = "cli-edge-slices" [];
    /// The same where the wheels may come nearest.
    EDGE_SLICES_AT = "cli-edge-slices-at" [distance];
    /// What it is worth.
    EDGE_NOTE = "cli-edge-note" [];
    /// Stress at the crown.
    BURIED_STRESS = "cli-buried-stress" [total, wheels, soil];
    /// Deflection.
    BURIED_DEFLECTION = "cli-buried-deflection" [share];
    /// Reserve.
    BURIED_LEFT = "cli-buried-left" [share];
    /// Beyond.
    BURIED_BEYOND = "cli-buried-beyond" [share];
    /// Kind unknown.
    BURIED_NO_KIND = "cli-buried-no-kind" [];
    /// Cover unknown.
    BURIED_NO_COVER = "cli-buried-no-cover" [];
    /// Allowable unknown.
    BURIED_NO_ALLOWABLE = "cli-buried-no-allowable" [];
    /// Deflection unknown.
    BURIED_NO_DEFLECTION = "cli-buried-no-deflection" [];
    /// Backfill.
    BURIED_BACKFILL = "cli-buried-backfill" [];
    /// Voids.
    BURIED_VOIDS = "cli-buried-voids" [];
    /// What it is worth.
    BURIED_NOTE = "cli-buried-note" [];
}
