//! Ids of what the machine commands say. `wording` has the words.

evidence::messages! {
    /// Machine file `file`.
    EXPLAIN_UNNAMED = "cli-explain-unnamed" [file];
    /// This file cannot be used yet. What could be read of it is explained here; what is wrong stands below.
    EXPLAIN_BROKEN = "cli-explain-broken" [];
    /// Identity.
    EXPLAIN_IDENTITY = "cli-explain-identity" [];
    /// Standing empty, computed.
    EXPLAIN_EMPTY = "cli-explain-empty" [];
    /// With `attachment`, boom at `angle` and retracted: `mass` in all, `front` on the front axle and `rear` on the rear axle.
    EXPLAIN_EMPTY_LINE = "cli-explain-empty-line" [attachment, angle, mass, front, rear];
    /// Its centre is `offset` to the `side` of the middle.
    EXPLAIN_EMPTY_SIDE = "cli-explain-empty-side" [offset, side];
    /// Compare these with a weighbridge: they follow from every mass and centre in the file.
    EXPLAIN_WEIGHBRIDGE = "cli-explain-weighbridge" [];
    /// Each: `what`.
    EXPLAIN_EACH = "cli-explain-each" [what];
    /// Load charts.
    EXPLAIN_CHARTS = "cli-explain-charts" [];
    /// Reach `reach`; height `height`.
    EXPLAIN_DATUM = "cli-explain-datum" [reach, height];
    /// from the ground to the top of the forks.
    EXPLAIN_HEIGHT_FORKS = "cli-explain-height-forks" [];
    /// from the ground to the hook.
    EXPLAIN_HEIGHT_HOOK = "cli-explain-height-hook" [];
    /// from the ground to the load centre.
    EXPLAIN_HEIGHT_CENTRE = "cli-explain-height-centre" [];
    /// from the ground to the head pin.
    EXPLAIN_HEIGHT_PIN = "cli-explain-height-pin" [];
    /// Rated load centre `centre` from the fork face.
    EXPLAIN_RATED = "cli-explain-rated" [centre];
    /// Holds out of level up to `sideways` sideways and `fore_aft` fore and aft.
    EXPLAIN_LEVEL = "cli-explain-level" [sideways, fore_aft];
    /// Zones: `count`. Greatest capacity `capacity`: zone `zone`, reach `reach_low` to `reach_high`, height `height_low` to `height_high`.
    EXPLAIN_GREATEST = "cli-explain-greatest" [count, capacity, zone, reach_low, reach_high, height_low, height_high];
    /// Least capacity `capacity`: zone `zone`, reach `reach_low` to `reach_high`, height `height_low` to `height_high`.
    EXPLAIN_LEAST = "cli-explain-least" [capacity, zone, reach_low, reach_high, height_low, height_high];
    /// Areas declared as not permitted: `count`.
    EXPLAIN_NOT_PERMITTED = "cli-explain-not-permitted" [count];
    /// The file has no load chart: no lift.
    EXPLAIN_NO_CHARTS = "cli-explain-no-charts" [];
    /// What is wrong.
    EXPLAIN_FAULTS = "cli-explain-faults" [];
    /// To be looked at.
    EXPLAIN_WARNINGS = "cli-explain-warnings" [];
    /// Do: `what`.
    EXPLAIN_DO = "cli-explain-do" [what];
    /// What is missing.
    EXPLAIN_MISSING = "cli-explain-missing" [];
    /// Must be there: `mandatory`. For a check: `for_check`. Still to be filled in: `fill_in`. Useful: `useful`.
    EXPLAIN_MISSING_COUNTS = "cli-explain-missing-counts" [mandatory, for_check, fill_in, useful];
    /// Nothing is missing.
    EXPLAIN_NOTHING_MISSING = "cli-explain-nothing-missing" [];
    /// Where to find each says:.
    EXPLAIN_MORE = "cli-explain-more" [];
    /// The maker’s manual and the chart in the cab govern; this file never overrides them.
    EXPLAIN_GOVERNS = "cli-explain-governs" [];
    /// on the frame.
    WORD_FRAME = "cli-word-frame" [];
    /// on the front axle.
    WORD_FRONT_AXLE = "cli-word-front-axle" [];
    /// on the rear axle.
    WORD_REAR_AXLE = "cli-word-rear-axle" [];
    /// on the upper part that turns.
    WORD_UPPER = "cli-word-upper" [];
    /// nothing locks it.
    WORD_NEVER = "cli-word-never" [];
    /// the operator locks it.
    WORD_OPERATOR = "cli-word-operator" [];
    /// it locks above a boom angle.
    WORD_ABOVE_BOOM_ANGLE = "cli-word-above-boom-angle" [];
    /// not known.
    WORD_UNKNOWN = "cli-word-unknown" [];
    /// solid tyres.
    WORD_SOLID = "cli-word-solid" [];
    /// free.
    WORD_FREE = "cli-word-free" [];
    /// locked.
    WORD_LOCKED = "cli-word-locked" [];
    /// gust at the height of load and boom.
    WORD_GUST = "cli-word-gust" [];
    /// mean of ten minutes as forecast, at 10 m.
    WORD_MEAN = "cli-word-mean" [];
    /// quick coupling.
    WORD_QUICK = "cli-word-quick" [];
    /// pinned.
    WORD_PINNED = "cli-word-pinned" [];
    /// bolted fast.
    WORD_FIXED = "cli-word-fixed" [];
    /// fixed.
    WORD_CARRIAGE_FIXED = "cli-word-carriage-fixed" [];
    /// side shift.
    WORD_SIDE_SHIFT = "cli-word-side-shift" [];
    /// fork positioner.
    WORD_POSITIONER = "cli-word-positioner" [];
    /// tilts sideways.
    WORD_TILTING = "cli-word-tilting" [];
    /// rotates.
    WORD_ROTATING = "cli-word-rotating" [];
    /// `file`: what is there and what is missing.
    MISSING_TITLE = "cli-missing-title" [file];
    /// What the file is enough for.
    MISSING_CHECKS = "cli-missing-checks" [];
    /// A lift asks more than the machine file: load, ground, lines, people. This list is about the machine file alone.
    MISSING_CHECKS_NOTE = "cli-missing-checks-note" [];
    /// enough.
    MISSING_READY = "cli-missing-ready" [];
    /// enough, better with `numbers`.
    MISSING_PARTLY = "cli-missing-partly" [numbers];
    /// not yet, needs `numbers`.
    MISSING_NOT_YET = "cli-missing-not-yet" [numbers];
    /// not yet: a fault stands in the way.
    MISSING_FAULTY = "cli-missing-faulty" [];
    /// not yet: a fault stands in the way; needs `numbers`.
    MISSING_FAULTY_NEEDS = "cli-missing-faulty-needs" [numbers];
    /// Must be there.
    MISSING_MANDATORY = "cli-missing-mandatory" [];
    /// A check waits for it.
    MISSING_FOR_CHECK = "cli-missing-for-check" [];
    /// Still to be filled in.
    MISSING_FILL_IN = "cli-missing-fill-in" [];
    /// Useful, may be left out.
    MISSING_USEFUL = "cli-missing-useful" [];
    /// `a` and `b`.
    COMPARE_TITLE = "cli-compare-title" [a, b];
    /// Dimensions and masses.
    COMPARE_DIMENSIONS = "cli-compare-dimensions" [];
    /// Mass, standing empty.
    COMPARE_EMPTY = "cli-compare-empty" [];
    /// of it on the front axle.
    COMPARE_FRONT = "cli-compare-front" [];
    /// Boom: head pin from the foot pin, extended.
    COMPARE_LONGEST = "cli-compare-longest" [];
    /// Highest boom angle.
    COMPARE_HIGHEST = "cli-compare-highest" [];
    /// Capacities on the plates.
    COMPARE_CAPACITIES = "cli-compare-capacities" [];
    /// none.
    COMPARE_NO_ATTACHMENT = "cli-compare-no-attachment" [];
    /// Greatest load.
    COMPARE_AT = "cli-compare-at" [];
    /// `reach` out, `height` up.
    COMPARE_PLACE = "cli-compare-place" [reach, height];
    /// Which lifts more.
    COMPARE_GRID = "cli-compare-grid" [];
    /// Reach from the front face of the front tyres to the load’s centre, `centre` from the fork face; height to the top of the forks. Boom flex is counted outwards, as in a plan.
    COMPARE_DATUM = "cli-compare-datum" [centre];
    /// A `a` · B `b` · = alike · + there only A or B, as the letter says · . neither.
    COMPARE_KEY = "cli-compare-key" [a, b];
    /// Not measured alike: the chart of A is for a load centre of `a`, that of B for `b`. Both were read for `centre`, where the excess counts as reach.
    COMPARE_OTHER_CENTRE = "cli-compare-other-centre" [a, b, centre];
    /// Not measured alike: the chart of A holds out of level up to `a` sideways, that of B up to `b`.
    COMPARE_OTHER_LEVEL = "cli-compare-other-level" [a, b];
    /// Not measured alike: the chart of A holds out of level up to `a` fore and aft, that of B up to `b`.
    COMPARE_OTHER_LEVEL_ALONG = "cli-compare-other-level-along" [a, b];
    /// `machine` has no chart for forks `support`: nothing to compare there.
    COMPARE_NO_CHART = "cli-compare-no-chart" [machine, support];
    /// `machine` has no forks: nothing to compare.
    COMPARE_NO_FORKS = "cli-compare-no-forks" [machine];
    /// A comparison of charts is not a go for any lift.
    COMPARE_NOT_GO = "cli-compare-not-go" [];
    /// a place is two lengths, reach and height: “4 m,6 m”; found “`found`”.
    COMPARE_BAD_AT = "cli-compare-bad-at" [found];
    /// the folder `folder` holds something other than earlier drawings of a machine, so nothing was written there.
    DRAW_NOT_OURS = "cli-draw-not-ours" [folder];
    /// Drawings written to `folder`: `count`.
    DRAW_WRITTEN = "cli-draw-written" [folder, count];
    /// no material has “`words`” in its id or name.
    MATERIALS_NONE = "cli-materials-none" [words];
    /// counterpoise materials, without words, lists all of them.
    MATERIALS_HINT = "cli-materials-hint" [];
    /// `low` to `high`.
    MATERIALS_FROM_TO = "cli-materials-from-to" [low, high];
    /// The supplier’s sheet or a scale is better than any list.
    MATERIALS_BETTER = "cli-materials-better" [];
}
