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
    /// Working: row of the maker's derating table for the load centre `centre`.
    STEP_DERATING = "working-derating" [centre];
}
