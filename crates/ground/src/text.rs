//! Ids of the step titles said here. `wording` has the words.

evidence::messages! {
    /// Working: area of the tyre's contact patch from force and inflation pressure.
    STEP_TYRE_PATCH = "working-tyre-patch" [];
    /// Working: contact pressure of a tyre, equal to the inflation pressure as a first estimate.
    STEP_TYRE_PRESSURE = "working-tyre-pressure" [];
    /// Working: pressure under a stabilizer pad from force and area.
    STEP_PAD_PRESSURE = "working-pad-pressure" [];
    /// Soil: name of a value.
    SOIL_UNIT_WEIGHT = "soil-unit-weight" [];
    /// Soil: name of a value.
    SOIL_FRICTION = "soil-friction" [];
    /// Soil: name of a value.
    SOIL_COHESION = "soil-cohesion" [];
    /// Soil: name of a value.
    SOIL_UNDRAINED = "soil-undrained" [];
    /// Soil: name of a value.
    SOIL_MODULUS = "soil-modulus" [];
    /// Soil: name of a value.
    SOIL_POISSON = "soil-poisson" [];
    /// Soil: name of a value.
    SOIL_THICKNESS = "soil-thickness" [];
    /// Soil: name of a value.
    SOIL_WATER_DEPTH = "soil-water-depth" [];
    /// Soil: no layer is given.
    SOIL_NO_LAYERS = "soil-no-layers" [];
    /// Soil: a layer does not begin where the one above ends.
    SOIL_OUT_OF_ORDER = "soil-out-of-order" [given, expected];
    /// Soil: what to do about layers out of order.
    SOIL_ORDER_HINT = "soil-order-hint" [];
    /// Soil: a value that no soil has.
    SOIL_OUT_OF_RANGE = "soil-out-of-range" [what, given, low, high];
    /// Soil: a unit weight in another unit.
    SOIL_WEIGHT_HINT = "soil-weight-hint" [];
    /// Bearing: a value is missing or cannot be.
    BEARING_NO_NUMBER = "bearing-no-number" [];
    /// Bearing: no factor for a leaning force.
    BEARING_LACKS_INCLINATION = "bearing-lacks-inclination" [author];
    /// Bearing: no factor for sloping ground.
    BEARING_LACKS_SLOPE = "bearing-lacks-slope" [author];
    /// Bearing: friction beyond the table.
    BEARING_LACKS_FRICTION = "bearing-lacks-friction" [author];
    /// Bearing: the base slides.
    BEARING_SLIDES = "bearing-slides" [push, held];
    /// Bearing: the force falls off the base.
    BEARING_OFF_BASE = "bearing-off-base" [];
    /// Bearing: the ground slopes more than it can.
    BEARING_SLOPE_BEYOND = "bearing-slope-beyond" [slope, friction];
    /// Bearing: no strength counts.
    BEARING_NO_STRENGTH = "bearing-no-strength" [];
    /// Bearing: layers end too high.
    BEARING_NOT_EXPLORED = "bearing-not-explored" [known, needed];
    /// Bearing: outside what the method was made for.
    BEARING_OUTSIDE_METHOD = "bearing-outside-method" [];
    /// A layer in reach states no modulus.
    SETTLEMENT_NO_STIFFNESS = "settlement-no-stiffness" [];
    /// Presumed values are not for tyres.
    PRESUMED_UNDER_TYRE = "presumed-under-tyre" [];
    /// Nothing is presumed for that soil.
    PRESUMED_NOTHING = "presumed-nothing" [];
    /// Presumed value holds for wider bases.
    PRESUMED_TOO_NARROW = "presumed-too-narrow" [least];
    /// The load is not on the mat.
    MAT_OFF = "mat-off" [];
    /// No mat is large enough.
    MAT_NONE = "mat-none" [side];
    /// Working: effective area of a base.
    STEP_BEARING_AREA = "working-bearing-area" [];
    /// Working: bearing capacity factor.
    STEP_BEARING_FACTOR = "working-bearing-factor" [];
    /// Working: shape factor.
    STEP_BEARING_SHAPE = "working-bearing-shape" [];
    /// Working: depth factor.
    STEP_BEARING_DEPTH = "working-bearing-depth" [];
    /// Working: inclination factor.
    STEP_BEARING_INCLINATION = "working-bearing-inclination" [];
    /// Working: ground slope factor.
    STEP_BEARING_GROUND = "working-bearing-ground" [];
    /// Working: ultimate bearing pressure.
    STEP_BEARING_ULTIMATE = "working-bearing-ultimate" [];
    /// Working: force at which the ground fails.
    STEP_BEARING_RESISTANCE = "working-bearing-resistance" [];
    /// Working: least of the authors.
    STEP_BEARING_LEAST = "working-bearing-least" [author];
    /// Size of the base on the lower layer.
    STEP_SPREAD_SIZE = "working-spread-size" [];
    /// Working: load spread through a layer.
    STEP_SPREAD = "working-spread" [];
    /// Working: punching through a layer.
    STEP_PUNCHING = "working-punching" [];
    /// Working: the least of the ways in which two layers fail.
    STEP_TWO_LAYERS = "working-two-layers" [];
    /// Bearing of a platform's own material.
    STEP_PLATFORM_OWN = "working-platform-own" [];
    /// Working: granular platform over clay.
    STEP_PLATFORM = "working-platform" [];
    /// Working: thickness of a granular platform.
    STEP_PLATFORM_THICKNESS = "working-platform-thickness" [];
    /// Working: pressure that a code presumes.
    STEP_PRESUMED = "working-presumed" [];
    /// Working: pressure that leaves no more than a depth of rut.
    STEP_RUT_PRESSURE = "working-rut-pressure" [];
    /// Working: wheel mobility number.
    STEP_RUT_NUMBER = "working-rut-number" [];
    /// Working: depth of rut of one pass.
    STEP_RUT_DEPTH = "working-rut-depth" [];
    /// Working: strength from a test on site; the low end counts.
    STEP_SITE_TEST = "working-site-test" [];
    /// Working: design value of the force.
    STEP_DESIGN_ACTION = "working-design-action" [];
    /// Working: design value of the resistance.
    STEP_DESIGN_RESISTANCE = "working-design-resistance" [];
    /// Strength of a mat in bending, with its factors.
    STEP_MAT_STRENGTH = "working-mat-strength" [];
    /// Strength of a mat in shear, with its factors.
    STEP_MAT_SHEAR_STRENGTH = "working-mat-shear-strength" [];
    /// Working: pressure under the effective part of a mat.
    STEP_MAT_PRESSURE = "working-mat-pressure" [];
    /// Working: bending stress of a mat.
    STEP_MAT_BENDING = "working-mat-bending" [];
    /// Working: shear stress of a mat.
    STEP_MAT_SHEAR = "working-mat-shear" [];
    /// Working: reach of a mat limited by its stiffness.
    STEP_MAT_STIFF = "working-mat-stiff" [];
    /// Working: smallest square mat that works.
    STEP_MAT_SIDE = "working-mat-side" [];
    /// What one layer adds to the settlement of a pad.
    STEP_SETTLEMENT_LAYER = "working-settlement-layer" [];
    /// Working: immediate settlement of a pad.
    STEP_SETTLEMENT = "working-settlement" [];
    /// Working: tilt from the difference of settlement.
    STEP_SETTLEMENT_TILT = "working-settlement-tilt" [];
    /// Working: what the tilt makes at boom height.
    STEP_SETTLEMENT_HEAD = "working-settlement-head" [];
    /// Landing: a number outside its range.
    LANDING_OUT_OF_RANGE = "landing-out-of-range" [key, got, low, high];
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
    /// What lies on a deck or slab and people, as even load.
    STEP_BESIDE = "working-beside" [];
    /// Bending of the slab with the pallet at its worst place.
    STEP_SLAB_SAGGING = "working-slab-sagging" [];
    /// The same over supports.
    STEP_SLAB_HOGGING = "working-slab-hogging" [];
    /// Shear of the slab beside a support.
    STEP_SLAB_WIDE_SHEAR = "working-slab-wide-shear" [];
    /// The whole pallet punching.
    STEP_PALLET_PUNCHING = "working-pallet-punching" [];
    /// Concrete at the edge of a foot.
    STEP_FOOT_CRUSHING = "working-foot-crushing" [];
    /// Bending of a board with the load at its worst place.
    STEP_BOARD_MOMENT = "working-board-moment" [];
    /// Shear of a board.
    STEP_BOARD_SHEAR = "working-board-shear" [];
    /// Bending of a joist.
    STEP_JOIST_MOMENT = "working-joist-moment" [];
    /// Shear of a joist.
    STEP_JOIST_SHEAR = "working-joist-shear" [];
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
    /// What one foot presses.
    PART_FEET = "landing-part-feet" [];
    /// The even load counted beside the pallet.
    PART_BESIDE = "landing-part-beside" [];
}
