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
    /// Working: design bending strength of timber.
    STEP_TIMBER_BENDING = "working-timber-bending" [];
    /// Working: bending moment that a member bears.
    STEP_MEMBER_MOMENT = "working-member-moment" [];
    /// Working: shear that a member bears.
    STEP_MEMBER_SHEAR = "working-member-shear" [];
    /// Working: what one board gets of the pallet.
    STEP_BOARD_SHARE = "working-board-share" [];
    /// Working: what one joist gets of the pallet.
    STEP_JOIST_SHARE = "working-joist-share" [];
    /// Working: age of concrete that counts at its temperature.
    STEP_CONCRETE_AGE = "working-concrete-age" [];
    /// Working: share of the 28 day strength.
    STEP_CONCRETE_BETA = "working-concrete-beta" [];
    /// Working: characteristic strength at that age.
    STEP_CONCRETE_STRENGTH = "working-concrete-strength" [];
    /// Working: depth of the pressed zone of a slab.
    STEP_SLAB_BLOCK = "working-slab-block" [];
    /// Working: bending moment that a slab bears, a metre.
    STEP_SLAB_MOMENT = "working-slab-moment" [];
    /// Working: shear stress that a slab bears.
    STEP_SLAB_SHEAR = "working-slab-shear" [];
    /// Working: punching stress round a foot.
    STEP_SLAB_PUNCHING = "working-slab-punching" [];
    /// Working: all that lies on a bay, with the load while it is set down.
    STEP_BAY_TOTAL = "working-bay-total" [];
    /// Landing: a rating that nobody answers for.
    LANDING_RATING_NEEDS_NAME = "landing-rating-needs-name" [];
    /// Landing: props that nobody answers for.
    LANDING_PROPS_NEED_NAME = "landing-props-need-name" [];
    /// Landing: something that lies beside it.
    LANDING_NOT_ON_IT = "landing-not-on-it" [];
    /// Part of a landing: bending of a board.
    PART_BOARD_MOMENT = "landing-part-board-moment" [];
    /// Part of a landing: shear of a board.
    PART_BOARD_SHEAR = "landing-part-board-shear" [];
    /// Part of a landing: sag of a board.
    PART_BOARD_SAG = "landing-part-board-sag" [];
    /// Part of a landing: bending of a joist.
    PART_JOIST_MOMENT = "landing-part-joist-moment" [];
    /// Part of a landing: shear of a joist.
    PART_JOIST_SHEAR = "landing-part-joist-shear" [];
    /// Part of a landing: sag of a joist.
    PART_JOIST_SAG = "landing-part-joist-sag" [];
    /// Part of a landing: bending of the slab between supports, a metre.
    PART_SLAB_SAGGING = "landing-part-slab-sagging" [];
    /// Part of a landing: bending of the slab over supports, a metre.
    PART_SLAB_HOGGING = "landing-part-slab-hogging" [];
    /// Part of a landing: shear of the slab beside a support, a metre.
    PART_SLAB_SHEAR = "landing-part-slab-shear" [];
    /// Part of a landing: a foot of the pallet punching through the slab.
    PART_FOOT_PUNCHING = "landing-part-foot-punching" [];
    /// Part of a landing: the whole pallet punching through the slab.
    PART_PALLET_PUNCHING = "landing-part-pallet-punching" [];
    /// Part of a landing: concrete at the edge of a foot.
    PART_FOOT_CRUSHING = "landing-part-foot-crushing" [];
    /// Part of a landing: rated total, with what lies there and people.
    PART_RATED_TOTAL = "landing-part-rated-total" [];
    /// Part of a landing: rated load of one pallet.
    PART_RATED_PALLET = "landing-part-rated-pallet" [];
    /// Part of a landing: rated even load, under the pallet.
    PART_RATED_EVEN = "landing-part-rated-even" [];
    /// Part of a landing: rated even load, over the whole bay.
    PART_RATED_EVEN_TOTAL = "landing-part-rated-even-total" [];
    /// Part of a landing: rated point load, under a foot.
    PART_RATED_POINT = "landing-part-rated-point" [];
    /// Part of a landing: push of the forks.
    PART_RATED_PUSH = "landing-part-rated-push" [];
    /// Part of a landing: load that the engineer of the props allows.
    PART_PROPPED = "landing-part-propped" [];
}
