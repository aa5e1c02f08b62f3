//! Ids of the step titles said here. `wording` has the words.

evidence::messages! {
    /// Working: area of the tyre's contact patch from force and inflation pressure.
    STEP_TYRE_PATCH = "working-tyre-patch" [];
    /// Working: contact pressure of a tyre, equal to the inflation pressure as a first estimate.
    STEP_TYRE_PRESSURE = "working-tyre-pressure" [];
    /// Working: pressure under a stabilizer pad from force and area.
    STEP_PAD_PRESSURE = "working-pad-pressure" [];
    /// Landing: a number outside its range.
    LANDING_OUT_OF_RANGE = "landing-out-of-range" [got, low, high];
    /// Landing: what was probably meant, by a thousand or a million.
    LANDING_UNIT_SLIP = "landing-unit-slip" [meant];
    /// Landing: a stretch that ends before it begins.
    LANDING_ENDS_BEFORE_IT_BEGINS = "landing-ends-before-it-begins" [from, to];
    /// Landing: a beam with too few supports.
    LANDING_BEAM_TURNS_OVER = "landing-beam-turns-over" [];
    /// Landing: a support that the beam has not.
    LANDING_NO_SUCH_SUPPORT = "landing-no-such-support" [count];
}
