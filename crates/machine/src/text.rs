//! Ids of the step titles and chart problems said here. `wording` has the words.

evidence::messages! {
    /// Working: reach and height of the point read.
    STEP_REACH = "working-reach" [];
    /// Working: box that holds the point, with position error and boom flex.
    STEP_BOX = "working-box" [];
    /// Working: excess of the load centre added to the reach.
    STEP_EXCESS_REACH = "working-excess-reach" [];
    /// Working: capacity read in the box, zone named.
    STEP_CAPACITY = "working-capacity" [zone];
    /// Working: cap by moment on carriage and forks.
    STEP_MOMENT_CAP = "working-moment-cap" [];
    /// Working: reserve = 1 − demand / limit.
    STEP_RESERVE = "working-reserve" [];
    /// Working: what the blades carry: pair = twice the lower blade.
    STEP_BLADE_PAIR = "working-blade-pair" [];
    /// Working: derated by moment beyond the blade's load centre.
    STEP_BLADE_MOMENT = "working-blade-moment" [];
    /// Working: share of the worse blade with offset.
    STEP_BLADE_SHARE = "working-blade-share" [];
    /// Working: worn section.
    STEP_BLADE_WEAR = "working-blade-wear" [];
    /// Working: load on one sling leg.
    STEP_SLING = "working-sling" [];

    // Attachments.
    /// Working: what sleeves over the blades let through.
    STEP_SLEEVES = "working-sleeves" [];
    /// Working: safety on yield that a worn blade keeps.
    STEP_YIELD_LEFT = "working-yield-left" [];
    /// Working: mass that the arms of a clamp hold by friction.
    STEP_CLAMP_HOLD = "working-clamp-hold" [];
    // Loads.
    /// Working: mass of `part`: density ρ (at most ρ_m), volume V, solid share p, number n, water at most w.
    STEP_PART_VOLUME = "working-part-volume" [part];
    /// Working: mass of `part` from pieces counted.
    STEP_PART_PIECES = "working-part-pieces" [part];
    /// Working: centre of all parts ahead of the face against the forks.
    STEP_CENTRE_AHEAD = "working-centre-ahead" [];
    /// Working: centre of all parts left of the middle.
    STEP_CENTRE_LEFT = "working-centre-left" [];
    /// Working: centre of all parts above the underside.
    STEP_CENTRE_UP = "working-centre-up" [];
    /// Working: how far the liquid's centre runs ahead or back: side b along, fill h, tank height H, tilt θ.
    STEP_LIQUID_AHEAD = "working-liquid-ahead" [];
    /// Working: how far the liquid's centre runs left or right: side b across.
    STEP_LIQUID_LEFT = "working-liquid-left" [];
    /// Working: limit of a choked sling.
    STEP_CHOKER = "working-choker" [];
    /// Working: how far a hung load's centre swings out: length l from the hook, angle φ out of plumb.
    STEP_SWING = "working-swing" [];
    /// Working: row of the maker's derating table for the load centre `centre`.
    STEP_DERATING = "working-derating" [centre];

    // Loads that lie as they lie.
    /// Working: share q of the weight that the nearer sling takes: centre x from the middle, lifting points s apart.
    STEP_LEVER = "working-lever" [];
}
