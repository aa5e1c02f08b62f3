//! Ids of what the calculations of settlement, ruts, presumed values and working platforms say. `wording` has the words.

evidence::messages! {
    /// Immediate settlement of the base.
    SETTLES = "cli-settles" [settlement];
    /// It is not told, and why.
    SETTLES_NOT_TOLD = "cli-settles-not-told" [why];
    /// A layer states no modulus.
    NOT_TOLD_MODULUS = "cli-not-told-modulus" [];
    /// The layers end too high.
    NOT_TOLD_DEPTH = "cli-not-told-depth" [];
    /// Only pads and mats on the surface.
    NOT_TOLD_BASE = "cli-not-told-base" [];
    /// A value is no number.
    NOT_TOLD_NUMBER = "cli-not-told-number" [];
    /// One pad of several.
    PAD_SETTLES = "cli-pad-settles" [pad, settlement, pressure];
    /// The steepest pair.
    PADS_TILT = "cli-pads-tilt" [one, other, difference, tilt];
    /// What the tilt moves.
    TILT_MOVES = "cli-tilt-moves" [moves];
    /// What it is worth.
    SETTLEMENT_NOTE = "cli-settlement-note" [];
    /// Two pads have the same middle.
    PADS_IN_ONE_PLACE = "cli-pads-in-one-place" [];
    /// Ruts stay as asked.
    RUT_STAYS = "cli-rut-stays" [pressure, stays, sinks];
    /// Ruts deepen.
    RUT_DEEPENS = "cli-rut-deepens" [pressure, stays, sinks];
    /// The wheel sinks.
    RUT_SINKS = "cli-rut-sinks" [pressure, stays, sinks];
    /// Depth after one pass.
    RUT_DEPTH = "cli-rut-depth" [low, high];
    /// What it is worth.
    RUT_NOTE = "cli-rut-note" [];
    /// The sizes of the tyre count beside a cone index only.
    RUT_NEEDS_CONE = "cli-rut-needs-cone" [];
    /// The tyre is pressed in by its whole section.
    RUT_DEFLECTION = "cli-rut-deflection" [];
    /// Not more than presumed.
    PRESUMED_CARRIES = "cli-presumed-carries" [pressure, allowable, code, used];
    /// More than presumed.
    PRESUMED_TOO_MUCH = "cli-presumed-too-much" [pressure, allowable, code, used];
    /// What it is worth.
    PRESUMED_NOTE = "cli-presumed-note" [];
    /// The platform carries.
    GRANULAR_CARRIES = "cli-granular-carries" [thickness, fails, demand];
    /// It does not.
    GRANULAR_TOO_THIN = "cli-granular-too-thin" [thickness, fails, demand];
    /// Thickness that is needed.
    GRANULAR_NEEDED = "cli-granular-needed" [thickness, demand];
    /// No platform is needed.
    GRANULAR_CLAY_ALONE = "cli-granular-clay-alone" [demand];
    /// What it is worth.
    GRANULAR_NOTE = "cli-granular-note" [];
}
