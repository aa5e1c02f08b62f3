//! Ids of the step titles said here. `wording` has the words.

evidence::messages! {
    /// Working: area of the tyre's contact patch from force and inflation pressure.
    STEP_TYRE_PATCH = "working-tyre-patch" [];
    /// Working: contact pressure of a tyre, equal to the inflation pressure as a first estimate.
    STEP_TYRE_PRESSURE = "working-tyre-pressure" [];
    /// Working: pressure under a stabilizer pad from force and area.
    STEP_PAD_PRESSURE = "working-pad-pressure" [];
}
