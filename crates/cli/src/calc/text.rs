//! Ids of what single calculations say: fit and tilting platform. `wording` has the words.

evidence::messages! {
    /// Nothing is stated of the machine.
    FIT_NOTHING = "cli-fit-nothing" [];
    /// Hint: axle loads first.
    HINT_FIT_NOTHING = "cli-hint-fit-nothing" [];
    /// No pose is asked for.
    FIT_NO_ASK = "cli-fit-no-ask" [];
    /// A part that the machine does not have.
    FIT_NO_PART = "cli-fit-no-part" [];
    /// Range ends before it begins, or value out of what is possible.
    FIT_BAD_RANGE = "cli-fit-bad-range" [];
    /// Mass impossible for a part or the whole.
    FIT_IMPOSSIBLE_MASS = "cli-fit-impossible-mass" [];
    /// Centre outside of where the part can lie.
    FIT_IMPOSSIBLE_CENTRE = "cli-fit-impossible-centre" [low, high, least, most];
    /// Boom does not get there.
    FIT_BOOM = "cli-fit-boom" [low, high, longest];
    /// The load of a tipping test lies behind the front line.
    FIT_LOAD_HOLDS = "cli-fit-load-holds" [];
    /// Pitch too large, or axles that coincide.
    FIT_BAD_PITCH = "cli-fit-bad-pitch" [];
    /// Statements contradict each other: `names`.
    FIT_CONTRADICTION = "cli-fit-contradiction" [names];
    /// Hint: look at each of them.
    HINT_FIT_CONTRADICTION = "cli-hint-fit-contradiction" [];
    /// The search did not end.
    FIT_CANNOT_TELL = "cli-fit-cannot-tell" [];
    /// A load asked about sideways needs `key` too.
    FIT_SIDE_NEEDS = "cli-fit-side-needs" [key];
    /// Name of a zone of a chart as a statement.
    FIT_ZONE = "cli-fit-zone" [attachment, zone];
    /// Name of a statement that has none: `what`, number `number`.
    FIT_UNNAMED = "cli-fit-unnamed" [what, number];
    /// What a range of a part is called.
    FIT_PART_RANGE = "cli-fit-part-range" [name, what];
    /// Axle loads.
    FIT_WHAT_AXLES = "cli-fit-what-axles" [];
    /// Mass of the machine.
    FIT_WHAT_TOTAL = "cli-fit-what-total" [];
    /// Tipping test.
    FIT_WHAT_TIPPING = "cli-fit-what-tipping" [];
    /// Charted point.
    FIT_WHAT_CHARTED = "cli-fit-what-charted" [];
    /// Part.
    FIT_WHAT_PART = "cli-fit-what-part" [];
    /// Asked place.
    FIT_WHAT_ASK = "cli-fit-what-ask" [];
    /// Mass.
    FIT_WORD_MASS = "cli-fit-word-mass" [];
    /// Centre ahead.
    FIT_WORD_AHEAD = "cli-fit-word-ahead" [];
    /// Centre to the left.
    FIT_WORD_LEFT = "cli-fit-word-left" [];
    /// Height of the centre.
    FIT_WORD_UP = "cli-fit-word-up" [];
    /// Front axle.
    FIT_WORD_FRONT = "cli-fit-word-front" [];
    /// Rear axle.
    FIT_WORD_REAR = "cli-fit-word-rear" [];
    /// Whole machine.
    FIT_WORD_WHOLE = "cli-fit-word-whole" [];
    /// Tipping load.
    FIT_WORD_TIPPING = "cli-fit-word-tipping" [];
    /// Other.
    FIT_WORD_OTHER = "cli-fit-word-other" [];
    /// Heading: how the measured values fit.
    FIT_RESIDUALS = "cli-fit-residuals" [];
    /// A measured value: stated and as in the machine that fits best.
    FIT_RESIDUAL = "cli-fit-residual" [name, of, stated, fitted, share];
    /// The place asked for.
    FIT_ASKED = "cli-fit-asked" [name, reach, height];
    /// Both bounds.
    FIT_BETWEEN = "cli-fit-between" [lower, upper, middle];
    /// Lower bound only.
    FIT_AT_LEAST = "cli-fit-at-least" [lower];
    /// Nothing is known: it may tip without load.
    FIT_NO_LOWER = "cli-fit-no-lower" [];
    /// A load there does not tip it forward.
    FIT_NOT_FORWARD = "cli-fit-not-forward" [];
    /// Tilt sideways with a load.
    FIT_SIDE = "cli-fit-side" [mass, least, most];
    /// Height not identifiable.
    FIT_NO_HEIGHT = "cli-fit-no-height" [];
    /// Sideways not identifiable.
    FIT_NO_SIDEWAYS = "cli-fit-no-sideways" [];
    /// Heading: what to measure next.
    FIT_NEXT = "cli-fit-next" [];
    /// Axle loads with the boom so.
    FIT_NEXT_AXLES = "cli-fit-next-axles" [angle, extension, width];
    /// Tipping test with the boom so.
    FIT_NEXT_TIPPING = "cli-fit-next-tipping" [angle, extension, width];
    /// Weighing the attachment.
    FIT_NEXT_ATTACHMENT = "cli-fit-next-attachment" [width];
    /// What the bounds are worth.
    FIT_NOTE = "cli-fit-note" [];

    // Tilting platform.
    /// The test is made without load.
    PLATFORM_UNLADEN = "cli-platform-unladen" [];
    /// The test is made with load.
    PLATFORM_LADEN = "cli-platform-laden" [];
    /// The test is made with the boom raised.
    PLATFORM_BOOM_UP = "cli-platform-boom-up" [];
    /// The test is made with the boom as carried.
    PLATFORM_BOOM_DOWN = "cli-platform-boom-down" [];
    /// Turned nose down.
    PLATFORM_NOSE_DOWN = "cli-platform-nose-down" [];
    /// Turned tail down.
    PLATFORM_TAIL_DOWN = "cli-platform-tail-down" [];
    /// Left edge across the fall.
    PLATFORM_LEFT_EDGE = "cli-platform-left-edge" [];
    /// Right edge across the fall.
    PLATFORM_RIGHT_EDGE = "cli-platform-right-edge" [];
    /// Tips at a slope.
    PLATFORM_TIPS = "cli-platform-tips" [turned, slope, side];
    /// Does not tip before it stands upright.
    PLATFORM_NEVER = "cli-platform-never" [turned];
    /// The worst orientation.
    PLATFORM_WORST = "cli-platform-worst" [slope, azimuth, side];
    /// More than the test asks for.
    PLATFORM_MORE = "cli-platform-more" [number, low, high];
    /// Less than the test asks for.
    PLATFORM_LESS = "cli-platform-less" [number, low, high];
    /// Cannot tell: between what is remembered.
    PLATFORM_BETWEEN = "cli-platform-between" [number, low, high];
    /// The slopes are from memory.
    PLATFORM_NOTE = "cli-platform-note" [standard];

    // How a machine stands.
    /// A roll of the rear axle with a free one.
    REAR_ROLL_FREE = "cli-rear-roll-free" [];
    /// The rear axle turned by more than it can.
    REAR_ROLL_OVER = "cli-rear-roll-over" [range];
    /// An axle rolled that does not carry.
    ROLL_ON_PADS = "cli-roll-on-pads" [];

    // Forces on the contacts.
    /// Weight of machine and load.
    REACTIONS_WEIGHT = "cli-reactions-weight" [weight];
    /// Heading: rigid contacts.
    REACTIONS_RIGID = "cli-reactions-rigid" [];
    /// Heading: tyres and pads that give.
    REACTIONS_SOFT = "cli-reactions-soft" [];
    /// Force on a contact and its share.
    REACTIONS_CONTACT = "cli-reactions-contact" [contact, force, share];
    /// The same where it is light.
    REACTIONS_LIGHT = "cli-reactions-light" [contact, force, share, limit];
    /// A contact in the air.
    REACTIONS_IN_THE_AIR = "cli-reactions-in-the-air" [contact];
    /// Roll and pitch of the body against level.
    REACTIONS_ATTITUDE = "cli-reactions-attitude" [roll, pitch];
    /// Left side down.
    ROLL_LEFT = "cli-roll-left" [angle];
    /// Right side down.
    ROLL_RIGHT = "cli-roll-right" [angle];
    /// Nose down.
    PITCH_DOWN = "cli-pitch-down" [angle];
    /// Nose up.
    PITCH_UP = "cli-pitch-up" [angle];
    /// The rear axle's left end is down against the frame.
    REACTIONS_TURN_LEFT = "cli-reactions-turn-left" [turn];
    /// Its right end is.
    REACTIONS_TURN_RIGHT = "cli-reactions-turn-right" [turn];
    /// It lies against its stop.
    REACTIONS_STOP = "cli-reactions-stop" [range];
    /// Share on the rear axle.
    REACTIONS_STEERS = "cli-reactions-steers" [share];
    /// It tips.
    REACTIONS_TIPS = "cli-reactions-tips" [];
    /// Nothing can be told.
    REACTIONS_CANNOT_TELL = "cli-reactions-cannot-tell" [];
    /// Restoring over overturning moment over a line.
    REACTIONS_LINE = "cli-reactions-line" [side, ratio];
    /// Nothing overturns over a line.
    REACTIONS_LINE_NONE = "cli-reactions-line-none" [side];
    /// What overturns is more.
    REACTIONS_LINE_TIPS = "cli-reactions-line-tips" [side, ratio];
    /// It stands.
    REACTIONS_STANDS = "cli-reactions-stands" [];
    /// It does not, or that cannot be told.
    REACTIONS_NOT_STANDS = "cli-reactions-not-stands" [];
    /// What it is worth.
    REACTIONS_NOTE = "cli-reactions-note" [];

    // Driving.
    /// What the wind sees of the load, without a gust.
    TRAVEL_WIND_WITHOUT_GUST = "cli-travel-wind-without-gust" [];
    /// No time as can be read.
    TRAVEL_BAD_TIME = "cli-travel-bad-time" [found];
    /// No gust stated.
    TRAVEL_NO_WIND = "cli-travel-no-wind" [];

    // Reserve of a chart.
    /// No chart for what was asked; `known` are there.
    RESERVE_NO_CHART = "cli-reserve-no-chart" [known];
    /// Which chart, and how many cells are known.
    RESERVE_TITLE = "cli-reserve-title" [attachment, support, centre, count, cells];
    /// Nothing of the chart can be reached.
    RESERVE_NOTHING = "cli-reserve-nothing" [];
    /// Least tipping load over charted capacity.
    RESERVE_RATIO = "cli-reserve-ratio" [ratio, charted, tipping, reach, height];
    /// Least tilt fore and aft.
    RESERVE_FORE_AFT = "cli-reserve-fore-aft" [tilt, charted, reach, height];
    /// Least tilt sideways.
    RESERVE_SIDEWAYS = "cli-reserve-sideways" [tilt, charted, reach, height];
    /// Cells whose capacity tips the machine.
    RESERVE_TIPS = "cli-reserve-tips" [count];
    /// Cells below the margin.
    RESERVE_BELOW = "cli-reserve-below" [count, margin];
    /// All keep the margin.
    RESERVE_KEEPS = "cli-reserve-keeps" [margin];
    /// No margin stated: shown, not judged.
    RESERVE_NOT_JUDGED = "cli-reserve-not-judged" [];
    /// The machine turns its upper part: straight ahead only.
    RESERVE_AHEAD_ONLY = "cli-reserve-ahead-only" [];
    /// What it is worth.
    RESERVE_NOTE = "cli-reserve-note" [];
    /// The margin is a number from 1 to 10.
    RESERVE_BAD_MARGIN = "cli-reserve-bad-margin" [];
    /// Neither permanent nor variable force.
    NO_FORCE = "cli-no-force" [];
    /// More than one base is given.
    ONE_BASE = "cli-one-base" [];
    /// The ground carries.
    BEARING_CARRIES = "cli-bearing-carries" [resistance, force, used];
    /// The ground does not carry.
    BEARING_TOO_MUCH = "cli-bearing-too-much" [resistance, force, used];
    /// Pressure under the base, and at failure.
    BEARING_PRESSURES = "cli-bearing-pressures" [pressure, ultimate];
    /// Strength before water leaves.
    BEARING_UNDRAINED = "cli-bearing-undrained" [];
    /// Strength after water has left.
    BEARING_DRAINED = "cli-bearing-drained" [];
    /// A lower layer governs.
    BEARING_LOWER_GOVERNS = "cli-bearing-lower" [layer, strength];
    /// The layer under the base governs.
    BEARING_UPPER_GOVERNS = "cli-bearing-upper" [strength];
    /// What the answer does not cover.
    BEARING_NOTE = "cli-bearing-note" [];
    /// Mat and ground carry.
    MAT_CARRIES = "cli-mat-carries" [along, across, pressure, carries];
    /// Mat or ground does not carry.
    MAT_TOO_MUCH = "cli-mat-too-much" [along, across, pressure, carries];
    /// The part that works and what ends it.
    MAT_WORKS = "cli-mat-works" [along, across, limit];
    /// Its edge.
    MAT_TO_EDGE = "cli-mat-to-edge" [];
    /// Bending.
    MAT_TO_BENDING = "cli-mat-to-bending" [];
    /// Shear.
    MAT_TO_SHEAR = "cli-mat-to-shear" [];
    /// Stiffness.
    MAT_TO_STIFFNESS = "cli-mat-to-stiffness" [];
    /// The smallest mat lies under the middle.
    MAT_CENTRED = "cli-mat-centred" [];

    // Landing.
    /// Nothing is stated of the landing.
    LANDING_NOTHING = "cli-landing-nothing" [];
    /// What lies there is larger than the landing.
    LANDING_LYING_LARGER = "cli-landing-lying-larger" [];
    /// One part within its limit.
    LANDING_CARRIES = "cli-landing-carries" [part, demand, limit, share];
    /// One part beyond its limit.
    LANDING_TOO_MUCH = "cli-landing-too-much" [part, demand, limit, share];
    /// One part without a limit.
    LANDING_NOT_KNOWN = "cli-landing-not-known" [part, demand];
    /// What governs.
    LANDING_GOVERNS = "cli-landing-governs" [part];
    /// Largest load that fits.
    LANDING_FITS = "cli-landing-fits" [mass];
    /// Half the pallet fits.
    LANDING_HALF_FITS = "cli-landing-half-fits" [mass];
    /// Half the pallet does not fit.
    LANDING_HALF_DOES_NOT = "cli-landing-half-does-not" [mass];
    /// What is not known must be asked.
    LANDING_ASK = "cli-landing-ask" [];
    /// A joist must be held down.
    LANDING_HOLD_DOWN = "cli-landing-hold-down" [force];
    /// What the answer is worth.
    LANDING_NOTE = "cli-landing-note" [];
}
