//! The ids of every sentence a plan may say. `wording` has the words.

evidence::messages! {
    /// Name of the check: is the machine fit for work today.
    CHECK_MACHINE = "check-machine" [];
    /// Name of the check: turning upper part of a slewing machine.
    CHECK_SLEWING = "check-slewing" [];
    /// Name of the check: absolute stops.
    CHECK_STOPS = "check-stops" [];
    /// Name of the check: the load itself, its condition and rigging.
    CHECK_LOAD = "check-load" [];
    /// Name of the check: attachment.
    CHECK_ATTACHMENT = "check-attachment" [];
    /// Name of the check: fork blades.
    CHECK_FORKS = "check-forks" [];
    /// Name of the check: slings and hook.
    CHECK_RIGGING = "check-rigging" [];
    /// Name of the check: out of level.
    CHECK_LEVEL = "check-level" [];
    /// Name of the check: load chart.
    CHECK_CHART = "check-chart" [];
    /// Name of the check: load factor against tipping.
    CHECK_LOAD_FACTOR = "check-load-factor" [];
    /// Name of the check: tilt that remains.
    CHECK_TILT = "check-tilt" [];
    /// Name of the check: wind.
    CHECK_WIND = "check-wind" [];
    /// Name of the check: overhead lines.
    CHECK_LINE = "check-line" [];
    /// Name of the check: ground under wheels and pads.
    CHECK_GROUND = "check-ground" [];
    /// Name of the check: settlement under wheels and pads.
    CHECK_SETTLEMENT = "check-settlement" [];
    /// Name of the check: ruts under tyres.
    CHECK_RUTTING = "check-rutting" [];
    /// Name of the check: strength of the landing.
    CHECK_LANDING = "check-landing" [];
    /// Name of the check: how the landing's edge is closed.
    CHECK_LANDING_EDGE = "check-landing-edge" [];
    /// Name of the check: room for load and people on the landing.
    CHECK_LANDING_ROOM = "check-landing-room" [];
    /// Name of the check: whether the operator sees the landing.
    CHECK_SIGHT = "check-sight" [];
    /// Name of the check: does the boom point at the landing, from an allowed side.
    CHECK_APPROACH = "check-approach" [];
    /// Name of the check: edges, excavations, drops.
    CHECK_EDGES = "check-edges" [];
    /// Name of the check: buried things.
    CHECK_BURIED = "check-buried" [];
    /// Name of the check: obstacles.
    CHECK_OBSTACLES = "check-obstacles" [];
    /// Name of the check: people.
    CHECK_PEOPLE = "check-people" [];
    /// Name of the check: way in and out.
    CHECK_ROUTE = "check-route" [];

    /// `by` inspected `machine` before use and found it fit.
    MACHINE_INSPECTED = "machine-inspected" [machine, by];
    /// Nobody inspected `machine` before use.
    MACHINE_NOT_INSPECTED = "machine-not-inspected" [machine];
    /// `machine` is tagged out: `reason`.
    MACHINE_TAGGED_OUT = "machine-tagged-out" [machine, reason];
    /// `body` of the description is not on the machine.
    FITTED_WITHOUT = "fitted-without" [body, mass];
    /// `body` is on the machine beside its description.
    FITTED_ADDED = "fitted-added" [body, mass];
    /// Do: put it on again.
    DO_FIT_AGAIN = "do-fit-again" [];
    /// Do: ask the maker, or take it off.
    DO_ASK_ADDED = "do-ask-added" [];

    /// Name of the check: tyres as found today.
    CHECK_TYRES = "check-tyres" [];
    /// `wheel` has a flat tyre.
    TYRE_FLAT = "tyre-flat" [wheel];
    /// Pressure below the one asked.
    TYRE_SOFT = "tyre-soft" [wheel, measured, asked];
    /// Pressure above the one asked.
    TYRE_HARD = "tyre-hard" [wheel, measured, asked];
    /// Stabilizers down, front tyres touch the ground.
    FRONT_TYRES_TOUCH = "front-tyres-touch" [];
    /// Stabilizers down, nobody saw the front tyres.
    FRONT_TYRES_NOT_SEEN = "front-tyres-not-seen" [];
    /// Do: mend the tyre before anything is lifted.
    DO_MEND_TYRE = "do-mend-tyre" [];
    /// Do: bring it to the pressure asked.
    DO_INFLATE = "do-inflate" [asked];
    /// Do: let air out by the manual.
    DO_LET_OUT = "do-let-out" [asked];
    /// Do: lower the stabilizers until the front tyres are clear.
    DO_LIFT_FRONT_TYRES = "do-lift-front-tyres" [];
    /// Do: look, and say so in the lift.
    DO_SEE_FRONT_TYRES = "do-see-front-tyres" [];

    /// Name of the check: lock of the rear axle.
    CHECK_AXLE = "check-axle" [];
    /// Counted as locked by the operator.
    AXLE_LOCKED = "axle-locked" [by];
    /// Counted as locked by itself above a boom angle.
    AXLE_LOCKS_ITSELF = "axle-locks-itself" [by, trigger];
    /// Counted as locked by the stabilizers.
    AXLE_LOCKED_BY_PADS = "axle-locked-by-pads" [by];
    /// Tried, but not known when it locks or which of two locks it was.
    AXLE_NOT_COUNTED = "axle-not-counted" [];
    /// To be locked, but nobody tried the lock.
    AXLE_NOT_TRIED = "axle-not-tried" [];
    /// Do: try it today.
    DO_TRY_LOCK = "do-try-lock" [];
    /// Do: inspect first and put the name in the job.
    DO_INSPECT = "do-inspect" [];
    /// Do: another machine, or repair and release in writing.
    DO_REPAIR = "do-repair" [];

    /// No absolute stop applies.
    STOP_NONE = "stop-none" [];
    /// People would be raised.
    STOP_PEOPLE = "stop-people" [];
    /// The load is shared with another machine.
    STOP_SHARED = "stop-shared" [];
    /// Pushing, pulling or dragging with the boom.
    STOP_DRAG = "stop-drag" [];
    /// Driving or levelling with the boom up.
    STOP_BOOM_UP = "stop-boom-up" [];
    /// Someone steadies the load by hand.
    STOP_HAND = "stop-hand" [];
    /// Seat left with the load raised.
    STOP_SEAT = "stop-seat" [];
    /// Do: people go up by a machine made for people.
    DO_NO_PEOPLE = "do-no-people" [];
    /// Do: one machine carries the whole load.
    DO_ONE_MACHINE = "do-one-machine" [];
    /// Do: lift clear, never drag.
    DO_LIFT_CLEAR = "do-lift-clear" [];
    /// Do: boom down and retracted before driving or levelling.
    DO_BOOM_DOWN = "do-boom-down" [];
    /// Do: tag lines, hands off.
    DO_TAG_LINES = "do-tag-lines" [];
    /// Do: load down before leaving the seat.
    DO_STAY_SEATED = "do-stay-seated" [];

    /// Condition of the load seen and sound.
    LOAD_SOUND = "load-sound" [];
    /// Nobody looked at pallet, bands, wrap yet.
    LOAD_NOT_SEEN = "load-not-seen" [];
    /// Pallet, bands or wrap are not sound.
    LOAD_UNSOUND = "load-unsound" [];
    /// Hung load with a fork attachment, or the other way round.
    LOAD_WRONG_TOOL = "load-wrong-tool" [attachment];
    /// Do: look at it before lifting.
    DO_LOOK_AT_LOAD = "do-look-at-load" [];
    /// Do: repack.
    DO_REPACK = "do-repack" [];
    /// Do: take the attachment that fits.
    DO_FITTING_TOOL = "do-fitting-tool" [];

    /// The attachment is the maker's, was seen locked, and carries the load.
    ATTACHMENT_FIT = "attachment-fit" [attachment, mass, capacity];
    /// Unknown to this machine: not authorised. `known`: those that are.
    ATTACHMENT_UNKNOWN = "attachment-unknown" [attachment, machine, known];
    /// Lock seen open.
    ATTACHMENT_OPEN = "attachment-open" [attachment];
    /// Lock not seen yet.
    ATTACHMENT_NOT_SEEN = "attachment-not-seen" [attachment];
    /// Load above the attachment's own capacity.
    ATTACHMENT_OVERLOADED = "attachment-overloaded" [attachment, mass, capacity];
    /// Do: look at the lock.
    DO_SEE_LOCK = "do-see-lock" [];
    /// Do: at most `mass` in one go, by ticket or scales (its uncertainty is counted on top).
    DO_LIGHTEN = "do-lighten" [mass];
    /// Do: an attachment of the maker's list.
    DO_LISTED_ATTACHMENT = "do-listed-attachment" [];

    /// Blades carry the load; the pair's limit at this load centre.
    FORKS_WITHIN = "forks-within" [mass, capacity, centre];
    /// Blades overloaded.
    FORKS_OVERLOADED = "forks-overloaded" [mass, capacity, centre];
    /// A blade is worn 10 % or more.
    FORKS_WORN = "forks-worn" [side, wear];
    /// A blade was modified.
    FORKS_MODIFIED = "forks-modified" [side];
    /// Do: look at and measure what is listed, and put it into the machine file.
    DO_LOOK_AT_FORKS = "do-look-at-forks" [];
    /// Load deeper than the blades are long: more than a third would hang over.
    FORKS_SHORT = "forks-short" [depth, length];
    /// Centre of the load not between the blades.
    FORKS_OFF_CENTRE = "forks-off-centre" [offset, spread];
    /// Do: take the forks out of service.
    DO_NEW_FORKS = "do-new-forks" [];
    /// Do: longer blades, or turn the load.
    DO_LONGER_FORKS = "do-longer-forks" [];
    /// Do: centre the load between the blades.
    DO_CENTRE_LOAD = "do-centre-load" [];
    /// Left.
    SIDE_LEFT = "side-left" [];
    /// Right.
    SIDE_RIGHT = "side-right" [];
    /// Front.
    SIDE_FRONT = "side-front" [];
    /// Rear.
    SIDE_REAR = "side-rear" [];

    /// Slings carry the load.
    RIGGING_WITHIN = "rigging-within" [force, limit, angle, flat];
    /// Slings overloaded.
    RIGGING_OVERLOADED = "rigging-overloaded" [force, limit, angle, flat];
    /// No rigging stated for a hung load.
    RIGGING_NONE = "rigging-none" [];
    /// Sling legs more than 60° from the vertical.
    RIGGING_ANGLE = "rigging-angle" [angle, limit];
    /// No tag lines.
    RIGGING_NO_TAG_LINES = "rigging-no-tag-lines" [];
    /// Do: stronger slings or a smaller angle.
    DO_STRONGER_SLINGS = "do-stronger-slings" [];
    /// Do: state the rigging.
    DO_STATE_RIGGING = "do-state-rigging" [];

    /// Level enough for the chart: worst side and fore-aft angle with accuracy, and the tolerances.
    LEVEL_WITHIN = "level-within" [across, along, tolerance_across, tolerance_along];
    /// Levelled frame within the chart's tolerance.
    LEVEL_FRAME = "level-frame" [ground, range, across, along, tolerance_across, tolerance_along];
    /// Levelled frame still out of level.
    LEVEL_FRAME_STILL = "level-frame-still" [ground, range, across, tolerance];
    /// Do: level the frame, boom down, and say so in the lift.
    DO_LEVEL_FRAME = "do-level-frame" [];
    /// Sideways beyond.
    LEVEL_SIDEWAYS = "level-sideways" [across, tolerance];
    /// Fore-aft beyond.
    LEVEL_FORE_AFT = "level-fore-aft" [along, tolerance];
    /// Rear axle would reach its stop.
    LEVEL_TWIST = "level-twist" [twist, limit];
    /// No ground height known under a wheel.
    LEVEL_NO_GROUND = "level-no-ground" [wheel];
    /// Do: a stand that is level; levelling is not credited.
    DO_LEVEL_STAND = "do-level-stand" [];
    /// Do: survey this stand or level it by tape.
    DO_SURVEY = "do-survey" [];

    /// Within the chart.
    CHART_WITHIN = "chart-within" [mass, capacity, zone, reach, height];
    /// Too heavy there.
    CHART_EXCEEDED = "chart-exceeded" [mass, capacity, zone, reach, height];
    /// Too heavy on the way, with the boom in or lower: carried, raised, or level.
    CHART_EXCEEDED_ON_THE_WAY = "chart-exceeded-on-the-way" [mass, capacity, zone, reach, height];
    /// The chart shows nothing at a position on the way.
    CHART_OUTSIDE_ON_THE_WAY = "chart-outside-on-the-way" [reach, height];
    /// The chart shows nothing there.
    CHART_OUTSIDE = "chart-outside" [reach, height];
    /// No chart for this attachment and support state.
    CHART_NONE = "chart-none" [attachment, support];
    /// The boom does not get there.
    CHART_OUT_OF_REACH = "chart-out-of-reach" [reach, height];
    /// Chart not read; `why` says why.
    CHART_NOT_READ = "chart-not-read" [why];
    /// Level not judged: no chart, so no tolerance to hold it against.
    LEVEL_NO_TOLERANCE = "level-no-tolerance" [];
    /// The job has no such machine, load or landing.
    LIFT_UNRESOLVED = "lift-unresolved" [];
    /// Within, but the load's centre is higher than the chart's test load: not covered by the chart.
    CHART_HIGH_LOAD = "chart-high-load" [height, tested];
    /// Do: stand nearer by about `distance`.
    DO_NEARER = "do-nearer" [distance];
    /// Do: a machine or support state with a chart for it.
    DO_OTHER_MACHINE = "do-other-machine" [];
    /// Do: maker or hirer confirms the chart for this load height in writing, or repack lower.
    DO_ASK_MAKER_HEIGHT = "do-ask-maker-height" [];
    /// On tyres.
    SUPPORT_TYRES = "support-tyres" [];
    /// On stabilizers.
    SUPPORT_STABILIZERS = "support-stabilizers" [];
    /// On outriggers.
    SUPPORT_OUTRIGGERS = "support-outriggers" [];

    /// Working: axles under the frame, rear axle free.
    WORKING_STANDS_FREE = "working-stands-free" [];
    /// Working: axles under the frame, rear axle locked.
    WORKING_STANDS_LOCKED = "working-stands-locked" [];
    /// Working: the worst corner of the uncertain inputs, with the load: boom angle θ, extension e, gravity ĝ in the machine frame, total mass.
    WORKING_CORNER_LOADED = "working-corner-loaded" [];
    /// Working: the worst corner, with the load taken away and the boom still up (without load for the load factor).
    WORKING_CORNER_UNLADEN = "working-corner-unladen" [];
    /// Working: tilt that remains where tyres give, by the stiffness of one front and one rear tyre or pad.
    WORKING_TILT_ON_TYRES = "working-tilt-on-tyres" [];
    /// Working: load factor where tyres give.
    WORKING_FACTOR_ON_TYRES = "working-factor-on-tyres" [];
    /// Load at which it would start to tip is `factor` times the load.
    LOAD_FACTOR_ENOUGH = "load-factor-enough" [factor, required, tipping];
    /// Less than required.
    LOAD_FACTOR_SHORT = "load-factor-short" [factor, required, tipping];
    /// No load tips it in this pose.
    LOAD_FACTOR_NEVER = "load-factor-never" [required];
    /// Tipping not computed; `why` says why.
    STATICS_NOT_DONE = "statics-not-done" [why];
    /// Why not: no ground height known under every wheel.
    WHY_NO_GROUND = "why-no-ground" [];
    /// Why not: the boom does not get to the landing from this stand.
    WHY_NO_REACH = "why-no-reach" [];
    /// Why not: the attachment is not known to this machine.
    WHY_NO_ATTACHMENT = "why-no-attachment" [];
    /// Do: less load, less reach.
    DO_LESS_REACH = "do-less-reach" [];

    /// Tilt that remains to the side that is worst.
    TILT_ENOUGH = "tilt-enough" [tilt, required, side];
    /// Less than required.
    TILT_SHORT = "tilt-short" [tilt, required, side];
    /// It tips as planned.
    TILT_TIPS = "tilt-tips" [side];

    /// Stop wind below the maker's limit.
    WIND_WITHIN = "wind-within" [gust, limit];
    /// Stop wind above the maker's limit.
    WIND_ABOVE = "wind-above" [gust, limit];
    /// Nobody stated a wind at which to stop.
    WIND_NOT_STATED = "wind-not-stated" [];
    /// Maker gives no wind limit.
    WIND_NO_LIMIT = "wind-no-limit" [gust];
    /// Do: stop at the maker's limit.
    DO_LOWER_WIND = "do-lower-wind" [limit];
    /// Do: state the gust at which to stop.
    DO_STATE_WIND = "do-state-wind" [];
    /// Do: ask the maker for the wind limit; measure at the boom.
    DO_ASK_WIND = "do-ask-wind" [];

    /// Working: legal distance by voltage.
    WORKING_LINE_LEGAL = "working-line-legal" [];
    /// Working: distance required: the legal one d_0 (or the site's own rule d_s), plus survey error e, conductor swing w, boom flex f, lean of the tip by the survey's error under the wheels and their settlement l, operator's allowance a, stand error p.
    WORKING_LINE_REQUIRED = "working-line-required" [];
    /// Working: nearest distance of any part of machine, boom and load over the whole movement.
    WORKING_LINE_NEAREST = "working-line-nearest" [];
    /// No line within reach, stated by name.
    LINE_NONE = "line-none" [by];
    /// Nobody stated that there is no (other) line.
    LINE_NOT_STATED = "line-not-stated" [];
    /// Clear by the required distance.
    LINE_CLEAR = "line-clear" [line, distance, required];
    /// Too near.
    LINE_NEAR = "line-near" [line, distance, required];
    /// Voltage not known.
    LINE_NO_VOLTAGE = "line-no-voltage" [line];
    /// Heights not known.
    LINE_NO_HEIGHT = "line-no-height" [line];
    /// Above the voltages of the table: owner or engineer must state the distance.
    LINE_VOLTAGE_ABOVE_TABLE = "line-voltage-above-table" [line, voltage];
    /// Farther than any rule asks, whatever the voltage up to 1,000 kV.
    LINE_FAR = "line-far" [line, distance];
    /// Said to be dead, but not visibly grounded: counts as live. Follows the finding as what to do.
    DO_GROUND_LINE = "do-ground-line" [];
    /// Distance to `line` not checked; `why` says why.
    LINE_NOT_CHECKED = "line-not-checked" [line, why];
    /// Dead and grounded by permit.
    LINE_DEAD = "line-dead" [line, owner, permit];
    /// Covered, as somebody says under a permit; it counts as bare.
    LINE_INSULATED = "line-insulated" [line, by, permit];
    /// Hung load within the planning zone: the actions of the crane rule.
    LINE_PLANNING_ZONE = "line-planning-zone" [line, distance, required, zone];
    /// Do: move away or have it switched off and grounded.
    DO_LINE_AWAY = "do-line-away" [distance];
    /// Do: ask the owner for voltage.
    DO_ASK_VOLTAGE = "do-ask-voltage" [];
    /// Do: have the heights measured by a means that needs no nearness.
    DO_MEASURE_LINE = "do-measure-line" [];
    /// Do: look up along the whole way and state it by name.
    DO_LOOK_UP = "do-look-up" [];
    /// Do: spotter, barricade, non-conductive tag lines, meeting, owner told.
    DO_PLANNING_ZONE = "do-planning-zone" [];

    /// Strength of the ground not known; force and pressure of the worst wheel.
    GROUND_UNKNOWN = "ground-unknown" [wheel, force, pressure];
    /// Stated strength is enough.
    GROUND_CARRIES = "ground-carries" [wheel, pressure, strength, by];
    /// Stated strength is not enough.
    GROUND_WEAK = "ground-weak" [wheel, pressure, strength, by];
    /// Accepted, but the patch pressure is not known.
    GROUND_NO_PATCH = "ground-no-patch" [wheel, force];
    /// Accepted without a strength.
    GROUND_NO_STRENGTH = "ground-no-strength" [by];
    /// Wheel forces not computed; `why` says why.
    GROUND_NOT_CHECKED = "ground-not-checked" [why];
    /// Do: have a named competent person state the strength.
    DO_STATE_GROUND = "do-state-ground" [pressure];
    /// Do: mats or another stand.
    DO_MATS = "do-mats" [];
    /// Do: give tyre pressure or pad size.
    DO_TYRE_PRESSURE = "do-tyre-pressure" [];
    /// Front left wheel.
    WHEEL_FRONT_LEFT = "wheel-front-left" [];
    /// Front right wheel.
    WHEEL_FRONT_RIGHT = "wheel-front-right" [];
    /// Rear left wheel.
    WHEEL_REAR_LEFT = "wheel-rear-left" [];
    /// Rear right wheel.
    WHEEL_REAR_RIGHT = "wheel-rear-right" [];
    /// Left stabilizer pad.
    PAD_LEFT = "pad-left" [];
    /// Right stabilizer pad.
    PAD_RIGHT = "pad-right" [];
    /// Left rear outrigger pad.
    PAD_REAR_LEFT = "pad-rear-left" [];
    /// Right rear outrigger pad.
    PAD_REAR_RIGHT = "pad-rear-right" [];
    /// A machine whose upper part turns is not computed by this version.
    SLEWING_NOT_COMPUTED = "slewing-not-computed" [machine];
    /// Have the lift planned by the maker's own chart and a competent person.
    DO_SLEWING = "do-slewing" [];
    /// Step: outriggers down.
    STEP_OUTRIGGERS = "step-outriggers" [];

    /// Landing carries what comes and what lies there.
    LANDING_CARRIES = "landing-carries" [landing, mass, rating, by];
    /// Landing overloaded.
    LANDING_OVERLOADED = "landing-overloaded" [landing, mass, rating, by];
    /// No rating known.
    LANDING_NO_RATING = "landing-no-rating" [landing, mass];
    /// The load is picked up there: the place carries it already and is relieved.
    LANDING_RELIEVED = "landing-relieved" [landing];
    /// A part of the landing's rating or structure carries: `part`.
    LANDING_PART_FITS = "landing-part-fits" [landing, part, demand, limit, by];
    /// A part of it does not.
    LANDING_PART_TOO_MUCH = "landing-part-too-much" [landing, part, demand, limit, by];
    /// What a part of it bears nobody knows.
    LANDING_PART_UNKNOWN = "landing-part-unknown" [landing, part, demand];
    /// Only a duty class is stated.
    LANDING_CLASS_ONLY = "landing-class-only" [landing];
    /// What the load stands on is not stated, and a foot decides.
    LANDING_NO_FEET = "landing-no-feet" [landing];
    /// Its numbers cannot be used: `why`.
    LANDING_NOT_JUDGED = "landing-not-judged" [landing, why];
    /// The push of the forks is within what it is rated for.
    LANDING_PUSH_FITS = "landing-push-fits" [landing, push, limit, by];
    /// It is more.
    LANDING_PUSH_TOO_MUCH = "landing-push-too-much" [landing, push, limit, by];
    /// Nobody states what push it takes.
    LANDING_PUSH_UNKNOWN = "landing-push-unknown" [landing, push];
    /// Do: clear what lies there, or have the structure reckoned with more.
    DO_CLEAR_BESIDE = "do-clear-beside" [];
    /// Do: mend the numbers of landing or load.
    DO_CHECK_LANDING_NUMBERS = "do-check-landing-numbers" [];
    /// Do: state feet.
    DO_STATE_FEET = "do-state-feet" [];
    /// Do: bring at most `mass`.
    DO_LESS_ON_LANDING = "do-less-on-landing" [mass];
    /// Do: half the load.
    DO_HALF_LOAD = "do-half-load" [];
    /// Do: another landing.
    DO_OTHER_LANDING = "do-other-landing" [];
    /// Do: ask whether it takes the push.
    DO_ASK_PUSH = "do-ask-push" [push];
    /// The edge is closed also while the load comes.
    LANDING_EDGE_CLOSED = "landing-edge-closed" [landing];
    /// There is no drop.
    LANDING_EDGE_NO_DROP = "landing-edge-no-drop" [landing];
    /// The edge is opened for the load.
    LANDING_EDGE_OPENED = "landing-edge-opened" [landing];
    /// The edge is open and people are there.
    LANDING_EDGE_OPEN = "landing-edge-open" [landing];
    /// The edge is open, nobody is there.
    LANDING_EDGE_OPEN_EMPTY = "landing-edge-open-empty" [landing];
    /// Nobody says how the edge is closed.
    LANDING_EDGE_NOT_STATED = "landing-edge-not-stated" [landing];
    /// Do: tie those at the opened edge.
    DO_TIE_AT_EDGE = "do-tie-at-edge" [];
    /// Do: guard the edge.
    DO_GUARD_EDGE = "do-guard-edge" [];
    /// Do: nobody on the landing while the load comes.
    DO_NOBODY_ON_LANDING = "do-nobody-on-landing" [];
    /// Do: state how the edge is closed.
    DO_STATE_EDGE = "do-state-edge" [];
    /// The load has its place.
    LANDING_ROOM = "landing-room" [landing];
    /// The load has its place, and so many people have theirs.
    LANDING_ROOM_PEOPLE = "landing-room-people" [landing, people];
    /// `what` lies where the load comes down.
    LANDING_TAKEN = "landing-taken" [landing, what];
    /// `what` lies where the forks come in.
    LANDING_IN_THE_WAY = "landing-in-the-way" [landing, what];
    /// `what` lies there, nobody says where.
    LANDING_SOMEWHERE = "landing-somewhere" [landing, what];
    /// So many people have no room beside the load.
    LANDING_NO_ROOM = "landing-no-room" [landing, people, space];
    /// So much lies there, nobody says where.
    LANDING_OCCUPIED_SOMEWHERE = "landing-occupied-somewhere" [landing, mass];
    /// Do: clear the place.
    DO_CLEAR_PLACE = "do-clear-place" [];
    /// Do: see that the place is clear.
    DO_SEE_PLACE_CLEAR = "do-see-place-clear" [];
    /// The landing lies above the cab's roof, and `name` leads the load there.
    SIGHT_SIGNALLER = "sight-signaller" [landing, height, name];
    /// The landing lies above the cab's roof.
    SIGHT_HIDDEN = "sight-hidden" [landing, height];
    /// Do: name a signaller.
    DO_NAME_SIGNALLER = "do-name-signaller" [];
    /// Do: ask its designer.
    DO_ASK_RATING = "do-ask-rating" [];
    /// Do: clear it or bring less.
    DO_CLEAR_LANDING = "do-clear-landing" [mass];

    /// Points at the landing, from the allowed side.
    APPROACH_SQUARE = "approach-square" [offset];
    /// Points past the landing.
    APPROACH_PAST = "approach-past" [offset, allowed];
    /// The load does not fit on the landing: `width` across and `depth` along, landing `across` and `along`.
    APPROACH_TOO_SMALL = "approach-too-small" [width, depth, across, along];
    /// The machine would stand in the landing, or with only `room` to it where `asked` must stay.
    APPROACH_INTO = "approach-into" [room, asked];
    /// Do: stand farther from the landing by about `distance`.
    DO_STAND_CLEAR = "do-stand-clear" [distance];
    /// Forks cannot be pulled straight out by the boom alone: it has `room`, they lie `length` under the load.
    APPROACH_NO_WITHDRAWAL = "approach-no-withdrawal" [room, length];
    /// Do: stand farther back by about `distance`, so that the boom alone can pull the forks out; never back away with the boom up.
    DO_FARTHER = "do-farther" [distance];
    /// Do: a larger landing, or turn the load.
    DO_LARGER_LANDING = "do-larger-landing" [];
    /// From a direction not allowed.
    APPROACH_WRONG_SIDE = "approach-wrong-side" [angle, tolerance];
    /// No direction given: any is taken.
    APPROACH_ANY = "approach-any" [offset];
    /// Approach not checked; `why` says why.
    APPROACH_NOT_CHECKED = "approach-not-checked" [why];
    /// Landing behind the machine.
    APPROACH_BEHIND = "approach-behind" [];
    /// Do: turn to heading.
    DO_TURN = "do-turn" [heading];
    /// Do: state the approach.
    DO_STATE_APPROACH = "do-state-approach" [];

    /// `by` answers for it: `statement`.
    MATTER_ACCEPTED = "matter-accepted" [matter, by, statement];
    /// Nobody answers for it yet; this version does not compute it.
    MATTER_OPEN = "matter-open" [matter];
    /// Do: a named competent person looks and states it.
    DO_STATE_MATTER = "do-state-matter" [];

    /// Step: seat belt, boom down, drive in.
    STEP_DRIVE_IN = "step-drive-in" [heading];
    /// Step: level indicator before raising: at most the chart's tolerances to either side and fore and aft.
    STEP_READ_LEVEL = "step-read-level" [across, along];
    /// Step: stabilizers down.
    STEP_STABILIZERS = "step-stabilizers" [];
    /// Step: level the frame, boom down.
    STEP_LEVEL_FRAME = "step-level-frame" [];
    /// Step: unlock the axle before driving off.
    STEP_UNLOCK = "step-unlock" [];
    /// Step: lock the rear axle.
    STEP_LOCK_AXLE = "step-lock-axle" [];
    /// Step: trial lift.
    STEP_TRIAL_LIFT = "step-trial-lift" [];
    /// Step: raise retracted to angle.
    STEP_RAISE = "step-raise" [angle];
    /// Step: extend to mark.
    STEP_EXTEND = "step-extend" [extension];
    /// Step: forks in level and fully under the load, mast of the carriage against it, then lift just clear.
    STEP_ENTER_FORKS = "step-enter-forks" [];
    /// Step: hook: sling, take up slack, everyone clear.
    STEP_HOOK_ON = "step-hook-on" [];
    /// Step: lift clear by `height`, retract until the load is off the deck or stack, lower to carry before driving; if it does not clear, set it down again where it was.
    STEP_TAKE_AWAY = "step-take-away" [height];
    /// Step: lower the load straight down by about `height`: boom down and in together, to `angle` and `extension`; set it down.
    STEP_SET_DOWN = "step-set-down" [height, angle, extension];
    /// Step: withdraw straight, then retract, lower, only then back away.
    STEP_WITHDRAW = "step-withdraw" [];
    /// Step: unhook only when the slings are slack and the load stands by itself; then retract, lower, only then drive.
    STEP_UNHOOK = "step-unhook" [];
    /// Step: hung load: hook plumb over the load, tag lines manned from aside, nobody under or between.
    STEP_HANG_PLUMB = "step-hang-plumb" [];
    /// Step: stop when gusts reach `gust`, the machine leans, the ground gives, a person comes near, sight is lost.
    STEP_STOP_WHEN = "step-stop-when" [gust];

    /// Caution: maker's manual and chart in the cab govern.
    CAUTION_MANUAL = "caution-manual" [];
    /// Caution: law, competent person, engineers decide.
    CAUTION_COMPETENT = "caution-competent" [];
    /// Caution: results rest on inputs.
    CAUTION_INPUTS = "caution-inputs" [];
    /// Caution: never people on forks; never a lift the chart does not show; never level or drive boom up.
    CAUTION_NEVER = "caution-never" [];
    /// Caution: what is not computed: soft tyres, braking, swinging and sudden stops, settling ground, levelling.
    CAUTION_NOT_COMPUTED = "caution-not-computed" [];
    /// Caution: trial lift.
    CAUTION_TRIAL = "caution-trial" [];
    /// Emergency: tips: stay belted, hold on, lean away.
    EMERGENCY_TIP = "emergency-tip" [];
    /// Emergency: touches a line.
    EMERGENCY_LINE = "emergency-line" [];

    /// Datum of the chart, from front tyre face to load centre.
    DATUM_TYRE_LOAD_CENTRE = "datum-tyre-load-centre" [];
    /// From front tyre face to fork heel.
    DATUM_TYRE_HEEL = "datum-tyre-heel" [];
    /// From front tyre face to hook.
    DATUM_TYRE_HOOK = "datum-tyre-hook" [];
    /// From front axle to load centre.
    DATUM_AXLE_LOAD_CENTRE = "datum-axle-load-centre" [];
    /// From front axle to fork heel.
    DATUM_AXLE_HEEL = "datum-axle-heel" [];
    /// From front axle to hook.
    DATUM_AXLE_HOOK = "datum-axle-hook" [];

    /// A warning about an input with its place: `what` (a whole sentence without full stop), `place` (file and line).
    WARN_AT = "warn-at" [what, place];
    /// Warning: a machine of the job is invented.
    WARN_INVENTED = "warn-invented" [name];
    /// Warning: the heavier side of the load is not against the carriage.
    WARN_HEAVY_OUTSIDE = "warn-heavy-outside" [load];

    // Attachments, identity of the machine, absolute stops, what ends a plan.
    /// Name of the check: is it the machine of the file, and examined.
    CHECK_IDENTITY = "check-identity" [];
    /// Several things: `first`, and `rest`, which may be several again.
    LIST_AND_MORE = "list-and-more" [first, rest];
    /// An empty list.
    LIST_NOTHING = "list-nothing" [];

    /// `by` read on `date` on `machine` what its file says, and it agrees.
    IDENTITY_AGREES = "identity-agrees" [machine, by, date];
    /// Not known or not compared of `machine`: `open` (a list of ITEM_… texts).
    IDENTITY_OPEN = "identity-open" [machine, open];
    /// `what` (an ITEM_… text) is `file` in the file and `seen` on the machine.
    IDENTITY_DIFFERS = "identity-differs" [what, file, seen];
    /// `what` (an ITEM_… text) is not so: chart or manual missing in the cab.
    IDENTITY_NOT_IN_CAB = "identity-not-in-cab" [what];
    /// The thorough examination held until `next`, before the work on `date`.
    IDENTITY_OVERDUE = "identity-overdue" [next, date];
    /// Item: whose machine it is.
    ITEM_KEPT = "item-kept" [];
    /// Item: the machine itself, nobody read its plate.
    ITEM_SEEN = "item-seen" [];
    /// Item: serial number.
    ITEM_SERIAL = "item-serial" [];
    /// Item: tyres.
    ITEM_TYRES = "item-tyres" [];
    /// Item: counterweight.
    ITEM_COUNTERWEIGHT = "item-counterweight" [];
    /// Item: options fitted.
    ITEM_OPTIONS = "item-options" [];
    /// Item: number of the charts.
    ITEM_CHART = "item-chart" [];
    /// Item: charts in the cab.
    ITEM_CHART_IN_CAB = "item-chart-in-cab" [];
    /// Item: manual in the cab.
    ITEM_MANUAL_IN_CAB = "item-manual-in-cab" [];
    /// Item: thorough examination.
    ITEM_EXAMINED = "item-examined" [];
    /// Do: read plate, tyres, counterweight, options and charts on the machine, and put it into the job.
    DO_SEE_MACHINE = "do-see-machine" [];
    /// Do: say whose machine it is.
    DO_STATE_KEPT = "do-state-kept" [];
    /// Do: find out which is right; plan with the file and charts of this machine.
    DO_RIGHT_MACHINE = "do-right-machine" [];
    /// Do: charts and manual of this machine into the cab.
    DO_INTO_CAB = "do-into-cab" [];
    /// Do: have it examined, or take another machine.
    DO_EXAMINE = "do-examine" [];

    /// Seat belt, roll-over frame and door of `machine` not looked at.
    CAB_NOT_SEEN = "cab-not-seen" [machine];
    /// One of them missing or faulty.
    CAB_FAULTY = "cab-faulty" [machine];
    /// Do: look at belt, frame and door.
    DO_LOOK_AT_CAB = "do-look-at-cab" [];

    /// Somebody would ride on machine, forks or load.
    STOP_RIDERS = "stop-riders" [];
    /// Somebody would be under load or boom.
    STOP_UNDER_LOAD = "stop-under-load" [];
    /// The operator would work without the belt.
    STOP_BELT = "stop-belt" [];
    /// Work would go on in a thunderstorm.
    STOP_THUNDER = "stop-thunder" [];
    /// The attachment is a basket, cage or platform for people.
    STOP_PLATFORM = "stop-platform" [];
    /// There is no chart for this attachment and support state.
    STOP_NO_CHART = "stop-no-chart" [];
    /// Do: nobody rides; people walk.
    DO_NO_RIDERS = "do-no-riders" [];
    /// Do: barriers; wait until the place below is clear.
    DO_KEEP_OUT = "do-keep-out" [];
    /// Do: belt on before the engine starts.
    DO_BELT = "do-belt" [];
    /// Do: load down, boom down, wait until the storm is gone.
    DO_WAIT_STORM = "do-wait-storm" [];

    /// Lock seen closed this morning, but `attachment` was put on after that, or may have been.
    ATTACHMENT_CHANGED = "attachment-changed" [attachment];
    /// The side shift stated, `shift`, is more than `attachment` has, `range`.
    SHIFT_TOO_FAR = "shift-too-far" [attachment, shift, range];
    /// Do: shift less, or stand so that none is needed.
    DO_LESS_SHIFT = "do-less-shift" [];
    /// Load shifted by `shift` to `side`: counted in tipping, lines and approach.
    SHIFT_STATED = "shift-stated" [shift, side];
    /// Do: carry centred, shift slowly at the landing, and see that the chart allows it.
    DO_SHIFT_AT_LANDING = "do-shift-at-landing" [];
    /// Not stated what the carriage of `attachment` can do.
    CARRIAGE_UNKNOWN = "carriage-unknown" [attachment];
    /// Do: state `carriage`.
    DO_STATE_CARRIAGE = "do-state-carriage" [];
    /// The carriage of `attachment` tilts or turns.
    CARRIAGE_LEAVES_LEVEL = "carriage-leaves-level" [attachment];
    /// Do: lock it level before taking a pallet.
    DO_LOCK_LEVEL = "do-lock-level" [];
    /// Hook latch of `attachment` missing, bent or open.
    LATCH_FAULTY = "latch-faulty" [attachment];
    /// Hook latch of `attachment` not looked at.
    LATCH_NOT_SEEN = "latch-not-seen" [attachment];
    /// Do: new latch before the hook is used.
    DO_NEW_LATCH = "do-new-latch" [];
    /// Do: see that the latch closes by itself.
    DO_SEE_LATCH = "do-see-latch" [];
    /// Loose material on `attachment`, which is no bucket.
    BULK_NO_BUCKET = "bulk-no-bucket" [attachment];
    /// How much loose material is in `attachment` is not stated; it holds `volume`.
    BULK_NOT_STATED = "bulk-not-stated" [attachment, volume];
    /// `bulk` of loose material in `attachment`, which holds `volume`.
    BULK_WITHIN = "bulk-within" [attachment, bulk, volume];
    /// More loose material, `bulk`, than `attachment` holds, `volume`.
    BULK_TOO_MUCH = "bulk-too-much" [attachment, bulk, volume];
    /// Do: a bucket, or pack it.
    DO_BUCKET = "do-bucket" [];
    /// Do: state `bulk_volume`.
    DO_STATE_BULK = "do-state-bulk" [];
    /// Do: fill level, go more often.
    DO_LESS_BULK = "do-less-bulk" [];
    /// `width` of the load is outside the grip of `attachment`, `low` to `high`.
    GRIP_MISSES = "grip-misses" [attachment, width, low, high];
    /// Do: another clamp, or turn the load.
    DO_OTHER_GRIP = "do-other-grip" [];
    /// Friction holds `held`; the load is `mass`.
    GRIP_HOLDS = "grip-holds" [mass, held];
    /// Friction does not hold `mass`, only `held`.
    GRIP_SLIPS = "grip-slips" [mass, held];
    /// Force or friction of `attachment` not known.
    GRIP_UNKNOWN = "grip-unknown" [attachment];
    /// Do: state force and friction from its manual, or try just above the ground.
    DO_STATE_GRIP = "do-state-grip" [];
    /// `attachment` holds only what both arms grip whole and sound.
    GRIP_SOUND = "grip-sound" [attachment];
    /// Do: both arms on sound material, no layer loose, nobody beside.
    DO_GRIP_SOUND = "do-grip-sound" [];

    /// The blade on `side` is cracked.
    FORKS_CRACKED = "forks-cracked" [side];
    /// The blade on `side` has opened to `angle`; out of service beyond `limit`.
    FORKS_OPENED = "forks-opened" [side, angle, limit];
    /// The blade on `side` is off straight by `bent` of its length.
    FORKS_BENT = "forks-bent" [side, bent];
    /// The tips differ in height by `apart` of the length.
    FORKS_TIPS = "forks-tips" [apart];
    /// The lock that holds the blade on `side` in its place does not work.
    FORKS_LOCK_FAILS = "forks-lock-fails" [side];
    /// Proof load of the blade on `side` is `proof`; its stamp asks for `needed`.
    FORKS_PROOF_SHORT = "forks-proof-short" [side, proof, needed];
    /// No stamp on the blade on `side`.
    FORKS_NO_STAMP = "forks-no-stamp" [side];
    /// Blades with different stamps: the lower counts.
    FORKS_STAMPS_DIFFER = "forks-stamps-differ" [left, right, left_centre, right_centre];
    /// Not looked at or not measured on the blades: `looks` (a list of LOOK_… texts).
    FORKS_NOT_LOOKED_AT = "forks-not-looked-at" [looks];
    /// Last thorough check of the blades on `date`: more than 12 months ago, or not yet made.
    FORKS_OVERDUE = "forks-overdue" [date];
    /// Look: thickness at the heel.
    LOOK_WEAR = "look-wear" [];
    /// Look: welds, holes, changes.
    LOOK_MODIFIED = "look-modified" [];
    /// Look: cracks.
    LOOK_CRACKS = "look-cracks" [];
    /// Look: angle of blade and shank.
    LOOK_ANGLE = "look-angle" [];
    /// Look: straightness.
    LOOK_STRAIGHT = "look-straight" [];
    /// Look: height of the tips.
    LOOK_TIPS = "look-tips" [];
    /// Look: lock of the place on the carriage.
    LOOK_LOCK = "look-lock" [];
    /// Look: day of the last thorough check.
    LOOK_CHECKED = "look-checked" [];
    /// Do: blades stamped by their maker.
    DO_STAMPED_FORKS = "do-stamped-forks" [];
    /// Do: a matched pair.
    DO_MATCHED_FORKS = "do-matched-forks" [];
    /// Do: have the blades checked by a competent person.
    DO_CHECK_FORKS = "do-check-forks" [];
    /// Sleeves are on the blades that the machine file does not declare.
    SLEEVES_UNDECLARED = "sleeves-undeclared" [];
    /// Blade of `blade` fills too little of a sleeve of `sleeve`.
    SLEEVES_LONG = "sleeves-long" [blade, sleeve];
    /// Load centre at `centre`, beyond the `limit` on the sleeves' plate by `by`.
    SLEEVES_CENTRE = "sleeves-centre" [centre, limit, by];
    /// Do: sleeves off, or declared with their own plate and chart.
    DO_DECLARE_SLEEVES = "do-declare-sleeves" [];
    /// Do: shorter sleeves or longer blades.
    DO_SHORTER_SLEEVES = "do-shorter-sleeves" [];

    /// Step: tip the bucket out slowly, nobody below; level it, retract, lower, only then drive.
    STEP_TIP_OUT = "step-tip-out" [];
    /// Step: fill the bucket level, by the manual, with the boom down.
    STEP_FILL_BUCKET = "step-fill-bucket" [];
    /// Step: open the clamp when the load stands by itself; retract, lower, only then drive.
    STEP_OPEN_CLAMP = "step-open-clamp" [];
    /// Step: both arms on sound material, close, lift just clear and look.
    STEP_CLOSE_CLAMP = "step-close-clamp" [];
    /// Step: let go as the tool's manual says; retract, lower, only then drive.
    STEP_TOOL_OFF = "step-tool-off" [];
    /// Step: take the load as the tool's manual says.
    STEP_TOOL_ON = "step-tool-on" [];

    /// Ends the plan: rain.
    ENDS_RAIN = "ends-rain" [];
    /// Ends the plan: frost or thaw.
    ENDS_FROST = "ends-frost" [];
    /// Ends the plan: new digging or backfill.
    ENDS_DIGGING = "ends-digging" [];
    /// Ends the plan: scaffold altered.
    ENDS_SCAFFOLD = "ends-scaffold" [];
    /// Ends the plan: a defect.
    ENDS_DEFECT = "ends-defect" [];
    /// Ends the plan: end of shift.
    ENDS_SHIFT = "ends-shift" [];
    /// Ends the plan: any value outside what is stated.
    ENDS_VALUES = "ends-values" [];
    // Things, zones, digs, what is buried.
    /// Every part stays clear of the thing.
    THING_CLEAR = "thing-clear" [thing, distance, required];
    /// A part comes too near the thing.
    THING_NEAR = "thing-near" [thing, distance, required];
    /// How high the thing is, is not known, and something comes over or near it.
    THING_HEIGHT_UNKNOWN = "thing-height-unknown" [thing, distance, required];
    /// The distance to the thing was not checked.
    THING_NOT_CHECKED = "thing-not-checked" [thing, why];
    /// So many things are out of reach.
    THINGS_FAR = "things-far" [count];
    /// Stand farther from it by so much, or have it moved.
    DO_THING_AWAY = "do-thing-away" [distance];
    /// Measure how high it is.
    DO_MEASURE_THING = "do-measure-thing" [];
    /// Working: distance required to a thing.
    WORKING_THING_REQUIRED = "working-thing-required" [];
    /// Working: nearest distance to a thing.
    WORKING_THING_NEAREST = "working-thing-nearest" [];
    /// Machine, boom or load comes into a zone that is closed.
    ZONE_NO_GO = "zone-no-go" [zone, by];
    /// The same, at some times of the day.
    ZONE_NO_GO_TIMES = "zone-no-go-times" [zone, by, times];
    /// Machine, boom or load comes over a place where people are.
    ZONE_PEOPLE = "zone-people" [zone, by];
    /// The same, at some times of the day.
    ZONE_PEOPLE_TIMES = "zone-people-times" [zone, by, times];
    /// A wheel or pad stands on soft ground.
    ZONE_SOFT = "zone-soft" [zone, by];
    /// A wheel or pad stands inside an excavation.
    STANDS_IN_EXCAVATION = "stands-in-excavation" [name];
    /// A wheel or pad comes nearer to an excavation than the planning line.
    NEAR_EXCAVATION = "near-excavation" [name, distance, required];
    /// The same beside one whose sides somebody designed to hold.
    NEAR_SUPPORTED_EXCAVATION = "near-supported-excavation" [name, distance, required];
    /// The same beside one of unknown depth.
    NEAR_EXCAVATION_UNKNOWN = "near-excavation-unknown" [name, distance, required];
    /// A wheel or pad nearer to an excavation than its soil holds.
    NEAR_EXCAVATION_SLIPS = "near-excavation-slips" [name, distance, required];
    /// A wheel or pad stands over something in the ground.
    STANDS_OVER_BURIED = "stands-over-buried" [name, by];
    /// Find a stand outside it.
    DO_LEAVE_ZONE = "do-leave-zone" [];
    /// Lift at another time.
    DO_WAIT_FOR_ZONE = "do-wait-for-zone" [];
    /// Find another stand.
    DO_OTHER_STAND = "do-other-stand" [];
    /// Have its owner or an engineer state what it carries.
    DO_CLEAR_BURIED = "do-clear-buried" [];

    // Loads, rigging, gates.
    /// Name of the check: gates and narrow places.
    CHECK_GATE = "check-gate" [];
    /// A layer of the pallet reaches over its base by more than it may.
    LOAD_LAYER_OVERHANGS = "load-layer-overhangs" [layer, distance, allowed];
    /// The middle of a layer is not over the base at all.
    LOAD_LAYER_UNSUPPORTED = "load-layer-unsupported" [layer, distance, allowed];
    /// Do: restack so that every layer lies on the base.
    DO_RESTACK = "do-restack" [];
    /// Defect of the load (no-go).
    DEFECT_BROKEN_PALLET = "defect-broken-pallet" [];
    /// Defect of the load (no-go).
    DEFECT_LOOSE_BANDS = "defect-loose-bands" [];
    /// Defect of the load (condition).
    DEFECT_TORN_WRAP = "defect-torn-wrap" [];
    /// Defect of the load (no-go).
    DEFECT_DOUBLE_STACKED = "defect-double-stacked" [];
    /// Defect of the load (no-go).
    DEFECT_LEANING = "defect-leaning" [];
    /// Defect of the load (condition).
    DEFECT_OVERHANGING = "defect-overhanging" [];
    /// Defect of the load (no-go).
    DEFECT_LOOSE_PIECES = "defect-loose-pieces" [];
    /// Defect of the load (condition).
    DEFECT_FROZEN = "defect-frozen" [];
    /// Defect of the load (condition).
    DEFECT_WET = "defect-wet" [];
    /// Defect of the load (condition).
    DEFECT_ICE_OR_SNOW = "defect-ice-or-snow" [];
    /// Defect of the load (cannot tell).
    DEFECT_UNKNOWN_CONTENTS = "defect-unknown-contents" [];
    /// Defect of the load (no-go).
    DEFECT_LEAKING = "defect-leaking" [];
    /// Defect of the load (no-go).
    DEFECT_BULGING = "defect-bulging" [];
    /// Do: wrap it again, or take off what is loose.
    DO_REWRAP = "do-rewrap" [];
    /// Do: take the packs one at a time.
    DO_ONE_PACK = "do-one-pack" [];
    /// Do: keep the overhang clear of edges; signaller at the landing.
    DO_MIND_OVERHANG = "do-mind-overhang" [];
    /// Do: free it by hand tools before lifting; never tear it loose with the boom.
    DO_BREAK_FREE = "do-break-free" [];
    /// Do: count the water in the mass, or weigh it; wipe the forks.
    DO_COUNT_WATER = "do-count-water" [];
    /// Do: clear ice and snow off load and forks.
    DO_CLEAR_ICE = "do-clear-ice" [];
    /// Do: find out what is in it, weigh it, find its centre.
    DO_OPEN_OR_WEIGH = "do-open-or-weigh" [];
    /// Do: stop the leak and reckon anew.
    DO_STOP_LEAK = "do-stop-leak" [];
    /// Advice: take the load up with another face against the carriage.
    DO_TURN_LOAD = "do-turn-load" [face, centre, distance];
    /// The face now away from the machine.
    FACE_FAR = "face-far" [];
    /// The left face.
    FACE_LEFT = "face-left" [];
    /// The right face.
    FACE_RIGHT = "face-right" [];
    /// Advice: take it up so that its centre is in the middle of the blades.
    DO_SHIFT_LOAD = "do-shift-load" [distance, side];
    /// A long load, and nobody stated the sag of its ends.
    LOAD_LONG_NO_SAG = "load-long-no-sag" [length];
    /// Do: lift it a hand above the ground, measure how far the ends hang, and state it.
    DO_STATE_SAG = "do-state-sag" [];
    /// Working: height c over the upstand that sagging ends need: sag s, room u under them.
    WORKING_SAG = "working-sag" [];
    /// Sagging ends clear the upstand.
    LOAD_SAG_CLEARS = "load-sag-clears" [sag, needed, clear];
    /// Sagging ends would strike the upstand.
    LOAD_SAG_STRIKES = "load-sag-strikes" [sag, needed, clear];
    /// Do: carry it in by at least `clear`.
    DO_CARRY_HIGHER = "do-carry-higher" [clear];
    /// The ends of a long load swing wide when the machine turns.
    LOAD_ENDS_SWING = "load-ends-swing" [radius, beside];
    /// Do: a signaller who sees both ends; nobody within that circle.
    DO_SIGNALLER_AT_ENDS = "do-signaller-at-ends" [];
    /// Working: how far the surface of a liquid rises at the lowest corner: diagonal b, tilt θ.
    WORKING_RISE = "working-rise" [];
    /// An open tank with room enough above the liquid.
    LOAD_OPEN_TANK = "load-open-tank" [rise, room, tilt];
    /// An open tank would spill.
    LOAD_SPILLS = "load-spills" [rise, room, tilt];
    /// Do: keep it level, forks not tilted back, at creep.
    DO_KEEP_LEVEL_TANK = "do-keep-level-tank" [];
    /// Do: draw liquid off, or close the tank.
    DO_DRAW_OFF = "do-draw-off" [];
    /// A tank partly full without baffles surges.
    LOAD_SURGES = "load-surges" [share];
    /// Do: creep, no braking, or fill or empty it.
    DO_CREEP_TANK = "do-creep-tank" [];
    /// A fitting carries the load.
    RIGGING_FITTING_WITHIN = "rigging-fitting-within" [fitting, force, limit];
    /// A fitting is overloaded.
    RIGGING_FITTING_OVERLOADED = "rigging-fitting-overloaded" [fitting, force, limit];
    /// Nobody stated how the slings hold the load.
    RIGGING_NO_HITCH = "rigging-no-hitch" [factor];
    /// Do: state the hitch.
    DO_STATE_HITCH = "do-state-hitch" [];
    /// Slings on bare edges.
    RIGGING_EDGES_BARE = "rigging-edges-bare" [];
    /// Nobody stated what the slings lie on.
    RIGGING_EDGES_NOT_STATED = "rigging-edges-not-stated" [];
    /// Do: protectors between edges and slings.
    DO_PROTECT_EDGES = "do-protect-edges" [];
    /// Fewer tag lines than a long load needs.
    RIGGING_FEW_TAG_LINES = "rigging-few-tag-lines" [there, needed, length];
    /// A swinging load is farther out than the chart was read for.
    RIGGING_SWINGS = "rigging-swings" [distance];
    /// Do: slow boom movements, hook plumb, stop while it swings.
    DO_KEEP_PLUMB = "do-keep-plumb" [];
    /// The job has gates, and nobody stated which the lift passes.
    GATE_NOT_STATED = "gate-not-stated" [];
    /// Do: list the gates passed, or an empty list.
    DO_STATE_GATES = "do-state-gates" [];
    /// Working: width B that passes: machine or load b, room c on either side.
    WORKING_GATE_WIDTH = "working-gate-width" [];
    /// Working: height H that passes: highest part in carry h, room c above.
    WORKING_GATE_HEIGHT = "working-gate-height" [];
    /// The gate is wide enough.
    GATE_WIDE_ENOUGH = "gate-wide-enough" [gate, needed, width];
    /// The gate is too narrow.
    GATE_NARROW = "gate-narrow" [gate, needed, width];
    /// The gate is high enough.
    GATE_HIGH_ENOUGH = "gate-high-enough" [gate, needed, height];
    /// The gate is too low.
    GATE_LOW = "gate-low" [gate, needed, height];
    /// How high a hung load is carried is not known.
    GATE_HEIGHT_UNKNOWN = "gate-height-unknown" [gate];
    /// Do: another way, or split or turn the load.
    DO_OTHER_GATE = "do-other-gate" [];
    // Charts in every form.
    /// `what` is said, and the capacity in it comes from the row of the maker's derating table for `centre`.
    CHART_DERATED = "chart-derated" [what, centre];
    /// The load centre `centre` lies beyond the last row `last` of the maker's derating table.
    CHART_BEYOND_TABLE = "chart-beyond-table" [centre, last];
    /// Do: repack so that the load's centre lies nearer to the fork face.
    DO_CENTRE_NEARER = "do-centre-nearer" [];
    /// The only chart for the attachment is for other tyres: `tyres`.
    CHART_OTHER_TYRES = "chart-other-tyres" [attachment, tyres];
    /// Do: get the chart for the tyres that are on the machine.
    DO_CHART_FOR_TYRES = "do-chart-for-tyres" [];
    /// Datum: reach `from` … `to`, for pairs that have no text of their own.
    DATUM_FROM_TO = "datum-from-to" [from, to];
    /// Datum: `reach` (a datum), and height measured to `to`.
    DATUM_HEIGHT_TO = "datum-height-to" [reach, to];
    /// Datum: from the front face of the front tyres.
    DATUM_FROM_TYRE_FACE = "datum-from-tyre-face" [];
    /// Datum: from the front axle.
    DATUM_FROM_AXLE = "datum-from-axle" [];
    /// Datum: from the front of the frame.
    DATUM_FROM_FRAME_FRONT = "datum-from-frame-front" [];
    /// Datum: from the middle of the stabilizer pads.
    DATUM_FROM_PADS = "datum-from-pads" [];
    /// Datum: from the boom's foot pin.
    DATUM_FROM_BOOM_FOOT = "datum-from-boom-foot" [];
    /// Datum: from the axis of the turning upper part.
    DATUM_FROM_TURNTABLE = "datum-from-turntable" [];
    /// Datum: from a point `distance` ahead of the front axle.
    DATUM_FROM_AHEAD_OF_AXLE = "datum-from-ahead-of-axle" [distance];
    /// Datum: from a point `distance` behind the front axle.
    DATUM_FROM_BEHIND_AXLE = "datum-from-behind-axle" [distance];
    /// Datum: to the load centre.
    DATUM_TO_LOAD_CENTRE = "datum-to-load-centre" [];
    /// Datum: to the heel of the forks.
    DATUM_TO_HEEL = "datum-to-heel" [];
    /// Datum: to the tips of the forks.
    DATUM_TO_TIP = "datum-to-tip" [];
    /// Datum: to the hook.
    DATUM_TO_HOOK = "datum-to-hook" [];
    /// Datum: to the pin at the boom's head.
    DATUM_TO_HEAD_PIN = "datum-to-head-pin" [];

    // Loads that lie, hang and run as they do.
    /// A layer reaches over the layer below by more than it may.
    LOAD_LAYER_OVER_LAYER = "load-layer-over-layer" [layer, below, distance, allowed];
    /// The middle of a layer is not over the layer below.
    LOAD_LAYER_NOT_ON_LAYER = "load-layer-not-on-layer" [layer, below, distance, allowed];
    /// The load is wet, and its mass is that of dry parts or papers.
    DEFECT_WET_NOT_COUNTED = "defect-wet-not-counted" [];
    /// Do: weigh it as it is, or state the water of every part.
    DO_WEIGH_WET = "do-weigh-wet" [];
    /// The stand tilts a tank farther than its liquid was reckoned with.
    LOAD_TILTS = "load-tilts" [stands, tilt];
    /// Do: state a greater tilt, or level the stand.
    DO_STATE_TILT = "do-state-tilt" [tilt];
    /// The centre lies beyond the lifting points: the load tips over.
    RIGGING_TIPS = "rigging-tips" [off, half];
    /// By the leg angle the centre is not between the lifting points.
    RIGGING_PICKS_UNKNOWN = "rigging-picks-unknown" [off, half];
    /// Do: hook over the centre.
    DO_HOOK_OVER_CENTRE = "do-hook-over-centre" [];
    /// Do: measure and state the lifting points.
    DO_STATE_PICKS = "do-state-picks" [];
    /// Choked slings: the factor holds from this angle of the choke.
    RIGGING_CHOKED = "rigging-choked" [angle, factor];
    /// Do: look at choke angle and tag.
    DO_CHECK_CHOKE = "do-check-choke" [];
    // What stands on the blades, what a bucket holds, when a record counts.
    /// The machine file's forks are with sleeves, and the lift is made without.
    SLEEVES_OFF = "sleeves-off" [];
    /// Nobody stated whether the declared sleeves are on.
    SLEEVES_NOT_STATED = "sleeves-not-stated" [];
    /// Do: an entry of the forks without sleeves, with its own chart; or put them on.
    DO_ENTRY_WITHOUT_SLEEVES = "do-entry-without-sleeves" [];
    /// Do: look whether the sleeves are on, and state it.
    DO_STATE_SLEEVES = "do-state-sleeves" [];
    /// What stands on the blades is `width` wide and does not reach over both: `needed`.
    FORKS_LOAD_NARROW = "forks-load-narrow" [width, needed];
    /// Do: bring the blades together, or put it on a wider pallet.
    DO_NARROWER_FORKS = "do-narrower-forks" [];
    /// Working: width b over both blades: spread s, breadth t of a blade.
    WORKING_OVER_BOTH = "working-over-both" [];
    /// The load's centre lies far out on the blades.
    FORKS_CENTRE_FAR = "forks-centre-far" [centre, length, limit];
    /// The load's centre lies at the tips of the blades.
    FORKS_CENTRE_AT_TIPS = "forks-centre-at-tips" [centre, length, limit];
    /// Do: see that the load stands against the fork face and is held from tipping off.
    DO_CHECK_SEATED = "do-check-seated" [];
    /// Working: farthest centre c on a length l, share k.
    WORKING_CENTRE_LIMIT = "working-centre-limit" [];
    /// What the loose material weighs is not stated.
    BULK_UNWEIGHED = "bulk-unweighed" [bulk];
    /// Do: state the material or its density, wet as it comes.
    DO_STATE_BULK_DENSITY = "do-state-bulk-density" [];
    /// The load's mass covers what its volume weighs.
    BULK_MASS_COVERS = "bulk-mass-covers" [bulk, mass, stated];
    /// The load's mass is less than what its volume weighs.
    BULK_MASS_SHORT = "bulk-mass-short" [bulk, mass, stated];
    /// Do: state at least `mass` for the load, or load less.
    DO_BULK_MASS = "do-bulk-mass" [mass];
    /// Working: mass m of a volume V of density ρ.
    WORKING_BULK_MASS = "working-bulk-mass" [];
    /// How the tool holds the load, its inspection and its own limits are not known here.
    OTHER_ASKS = "other-asks" [attachment];
    /// Do: the tool's manual and a competent person.
    DO_OTHER_MANUAL = "do-other-manual" [];
    /// How wide the attachment is was not stated; everything else needs `needed`.
    GATE_TOOL_UNKNOWN = "gate-tool-unknown" [gate, needed, width];
    /// Do: measure the attachment's width and put it into the machine file.
    DO_STATE_TOOL_WIDTH = "do-state-tool-width" [];
    /// A blade is closed beyond the limit.
    FORKS_CLOSED = "forks-closed" [side, angle, limit];
    /// A shank is off straight.
    FORKS_SHANK_BENT = "forks-shank-bent" [side, bent];
    /// Wear or cracks are not known: `looks` (a list of LOOK_… texts).
    FORKS_WEAR_UNKNOWN = "forks-wear-unknown" [looks];
    /// Straightness of the shank.
    LOOK_SHANK = "look-shank" [];
    /// Read on the day `seen`, too long before the work on `date`.
    IDENTITY_SEEN_LONG_AGO = "identity-seen-long-ago" [seen, date];
    /// Read on the day `seen`, after the work on `date`.
    IDENTITY_SEEN_AHEAD = "identity-seen-ahead" [seen, date];

    /// Descent: straight ahead.
    DESCENT_AHEAD = "descent-ahead" [];
    /// Descent: ahead to the left.
    DESCENT_AHEAD_LEFT = "descent-ahead-left" [];
    /// Descent: to the left.
    DESCENT_LEFT = "descent-left" [];
    /// Descent: behind to the left.
    DESCENT_BEHIND_LEFT = "descent-behind-left" [];
    /// Descent: straight behind.
    DESCENT_BEHIND = "descent-behind" [];
    /// Descent: behind to the right.
    DESCENT_BEHIND_RIGHT = "descent-behind-right" [];
    /// Descent: to the right.
    DESCENT_RIGHT = "descent-right" [];
    /// Descent: ahead to the right.
    DESCENT_AHEAD_RIGHT = "descent-ahead-right" [];
    /// `what` is said of the wind, and the gust and the forecast mean up to which place and weight hold.
    WIND_TURNS = "wind-turns" [what, gust, mean];

    /// Name of the check: force on each wheel or pad, and moments.
    CHECK_CONTACTS = "check-contacts" [];
    /// Name of the check: weight on the axle that steers.
    CHECK_STEERING = "check-steering" [];
    /// Name of the check: what happens all at once with the boom up.
    CHECK_SUDDEN = "check-sudden" [];
    /// Every wheel or pad keeps weight: least under `wheel`, `share` of what it carries level.
    CONTACTS_PRESSED = "contacts-pressed" [wheel, force, share];
    /// `wheel` may be light: `share` of what it carries level.
    CONTACTS_LIGHT = "contacts-light" [wheel, force, share];
    /// `wheel` may come off the ground.
    CONTACTS_LIFTED = "contacts-lifted" [wheel];
    /// A force or a moment is no number.
    CONTACTS_NO_NUMBER = "contacts-no-number" [];
    /// `what` is said of the contacts, and the least moment ratio with its side.
    CONTACTS_RATIO = "contacts-ratio" [what, ratio, side];
    /// Do: what a light `wheel` means, and when to go on.
    DO_MIND_LIGHT = "do-mind-light" [wheel];
    /// Step: moments that hold against those that overturn, to one side.
    WORKING_SIDE_MOMENTS = "working-side-moments" [side];
    /// Step: least force on a contact against what it carries level.
    WORKING_LEAST_FORCE = "working-least-force" [wheel];
    /// Enough weight on the rear axle to steer, load in carry position.
    STEERING_ENOUGH = "steering-enough" [share, required];
    /// Too little weight on the rear axle to steer well.
    STEERING_LIGHT = "steering-light" [share, required];
    /// The weight on the rear axle is no number.
    STEERING_CANNOT_TELL = "steering-cannot-tell" [];
    /// Do: drive slowly, or carry less.
    DO_STEER_CAREFULLY = "do-steer-carefully" [];
    /// Step: share of the weight on the rear axle.
    WORKING_STEERING = "working-steering" [];
    /// Lowering stopped, and the load gone, all at once are borne.
    SUDDEN_BORNE = "sudden-borne" [];
    /// Lowering stopped all at once tips it to the `side`; `factor` times the weight is borne.
    SUDDEN_STOP_TIPS = "sudden-stop-tips" [factor, side, speed];
    /// What a sudden event leaves is no number.
    SUDDEN_CANNOT_TELL = "sudden-cannot-tell" [];
    /// The load gone all at once tips it to the `side`; a drop of `share` of it is borne.
    SUDDEN_DROP_TIPS = "sudden-drop-tips" [share, side];
    /// Do: lower slowly.
    DO_LOWER_SLOWLY = "do-lower-slowly" [];
    /// Do: set it down softly, never let it go.
    DO_SET_DOWN_SOFTLY = "do-set-down-softly" [];
    /// Step: what is left as lowering is stopped.
    WORKING_SUDDEN_STOP = "working-sudden-stop" [];
    /// Step: what is left as the load goes.
    WORKING_SUDDEN_DROP = "working-sudden-drop" [];
    /// What grows: the load.
    TOLERANCE_LOAD_MASS = "tolerance-load-mass" [];
    /// What grows: how far the load centre is off to a side.
    TOLERANCE_LOAD_ASIDE = "tolerance-load-aside" [];
    /// What grows: the slope of the ground.
    TOLERANCE_SLOPE = "tolerance-slope" [];
    /// What grows: the gust.
    TOLERANCE_GUST = "tolerance-gust" [];
    /// What grows: how much lower one wheel or pad is.
    TOLERANCE_WHEEL = "tolerance-wheel" [];
    /// What grows: all five, by so much each.
    TOLERANCE_TOGETHER = "tolerance-together" [share, aside, slope, gust, wheel];
    /// How much of load is borne.
    TOLERANCE_OF_MASS = "tolerance-of-mass" [amount, share];
    /// How much of gust is borne, and as forecast mean.
    TOLERANCE_OF_GUST = "tolerance-of-gust" [amount, mean];
    /// How much is borne.
    TOLERANCE_PLAIN = "tolerance-plain" [amount];
    /// How much of the steps is borne.
    TOLERANCE_STEPS = "tolerance-steps" [amount];
    /// Nothing turns up to `amount`.
    TOLERANCE_NOT_BEFORE = "tolerance-not-before" [amount];
    /// What turns, and in which way.
    TOLERANCE_WAY = "tolerance-way" [check, way];
    /// What turns.
    TOLERANCE_NO_WAY = "tolerance-no-way" [check];
    /// How much is borne: alone, at the worst corner, and what turns there.
    TOLERANCE_FACT = "tolerance-fact" [alone, at_worst, turns];
    /// The same where it is not asked alone.
    TOLERANCE_FACT_AT_WORST = "tolerance-fact-at-worst" [at_worst, turns];
    /// Nothing turns, or nothing is asked.
    TOLERANCE_NOTHING = "tolerance-nothing" [];
    /// Wheel `wheel` on `soil`: its design force against the design resistance.
    SOIL_CARRIES = "soil-carries" [wheel, soil, by, force, limit, factors];
    /// The same, too weak.
    SOIL_WEAK = "soil-weak" [wheel, soil, by, force, limit, factors];
    /// Several contacts as one rectangle, its force off the middle.
    WORKING_GROUP = "working-group" [];
    /// What presses deep ground as one.
    GROUP_FRONT = "group-front" [];
    /// What presses deep ground as one.
    GROUP_REAR = "group-rear" [];
    /// What presses deep ground as one.
    GROUP_ALL = "group-all" [];
    /// Pad or mat on described ground: its force against what a code presumes there.
    SOIL_PRESUMED = "soil-presumed" [wheel, soil, by, force, limit, factors];
    /// The same, too much.
    SOIL_PRESUMED_WEAK = "soil-presumed-weak" [wheel, soil, by, force, limit, factors];
    /// The code that presumes.
    PRESUMED_BY = "presumed-by" [code];
    /// No capacity can be given for the wheel on that soil.
    SOIL_CANNOT_TELL = "soil-cannot-tell" [wheel, soil, why];
    /// Name of a factor set.
    FACTORS_DA1_1 = "factors-da1-1" [];
    /// Name of a factor set.
    FACTORS_DA1_2 = "factors-da1-2" [];
    /// Name of a factor set.
    FACTORS_DA2 = "factors-da2" [];
    /// Name of a factor set.
    FACTORS_DA3 = "factors-da3" [];
    /// Name of a factor set.
    FACTORS_ONE = "factors-one" [factor];
    /// Do: have the ground explored.
    DO_EXPLORE = "do-explore" [];
    /// Do: spread the load over a square of that side.
    DO_MAT_AREA = "do-mat-area" [side];
    /// Do: other ground; no mat of a size that is laid out helps.
    DO_BETTER_GROUND = "do-better-ground" [];
    /// The contact that settles most, how far the machine leans by differences, how far the boom's head moves, all of it
    /// with how the stand lies against what is allowed.
    SETTLEMENT_WITHIN = "settlement-within" [wheel, settles, difference, tilt, moves, total, tolerance];
    /// The same, too much.
    SETTLEMENT_TOO_MUCH = "settlement-too-much" [wheel, settles, difference, tilt, moves, total, tolerance];
    /// The contact settles; no chart says how level the machine must stand.
    SETTLEMENT_NO_TOLERANCE = "settlement-no-tolerance" [wheel, settles];
    /// How far the contact settles is not known.
    SETTLEMENT_NOT_KNOWN = "settlement-not-known" [wheel, why];
    /// Why: no soil is stated there.
    SETTLEMENT_NO_SOIL = "settlement-no-soil" [];
    /// Why: no stiffness is stated.
    SETTLEMENT_NO_STIFFNESS = "settlement-soil-no-stiffness" [soil];
    /// Do: read the level twice; set down beyond that angle.
    DO_WATCH_LEVEL = "do-watch-level" [angle];
    /// Do: mats of that side at least under all contacts.
    DO_MATS_SETTLE = "do-mats-settle" [side];
    /// Working: attitude with what it settles.
    WORKING_SETTLED_LEVEL = "working-settled-level" [];
    /// Working: stiffness of the contact with the ground below it.
    WORKING_GROUND_GIVES = "working-ground-gives" [wheel];
    /// Ruts stay under `depth`.
    RUTS_SMALL = "ruts-small" [wheel, soil, pressure, strength, depth];
    /// Ruts of about `depth` in fewer than 100 passes; under one side they lean the machine so far.
    RUTS_DEEP = "ruts-deep" [wheel, soil, pressure, strength, depth, lean];
    /// Ruts become deeper than `depth`, and with every pass.
    RUTS_DEEPEN = "ruts-deepen" [wheel, soil, pressure, strength, depth];
    /// The wheel sinks.
    RUTS_SINKS = "ruts-sinks" [wheel, soil, pressure, strength];
    /// The stated strength does not count in this state of the ground, or the pressure is not known.
    RUTS_NOT_KNOWN = "ruts-not-known" [wheel, soil];
    /// Do: drive in once, look at the ruts, read the level.
    DO_WATCH_RUTS = "do-watch-ruts" [depth];
    /// Do: mats under the wheels, or ground of that strength.
    DO_MATS_AGAINST_RUTS = "do-mats-against-ruts" [strength];
    /// Working: lean by a rut under one side.
    WORKING_RUT_LEANS = "working-rut-leans" [];
    /// The excavation's edge is far enough by the line.
    EDGE_FAR_ENOUGH = "edge-far-enough" [name, distance, required];
    /// Deeper than is dug without an engineer's design.
    EDGE_NEEDS_ENGINEER = "edge-needs-engineer" [name, distance, required, depth];
    /// Do: have an engineer design it, and name the engineer.
    DO_NAME_ENGINEER = "do-name-engineer" [];
    /// The same, by equilibrium too.
    EDGE_STANDS = "edge-stands" [name, distance, required];
    /// The face does not stand by itself.
    FACE_FAILS = "face-fails" [name, factor, required];
    /// Beside the excavation something is not known.
    EDGE_NOT_KNOWN = "edge-not-known" [name, distance, required, what];
    /// What is not known: soil.
    UNKNOWN_SOIL = "unknown-soil" [];
    /// What is not known: a strength that counts.
    UNKNOWN_STRENGTH = "unknown-strength" [];
    /// What is not known: the water table.
    UNKNOWN_WATER = "unknown-water" [];
    /// The surveyed ground falls away beside a wheel.
    GROUND_FALLS = "ground-falls" [by];
    /// Do: keep the edge marked and watched.
    DO_WATCH_EDGE = "do-watch-edge" [];
    /// Do: move back by so much.
    DO_MOVE_BACK = "do-move-back" [by];
    /// Do: find out how deep it is.
    DO_MEASURE_EXCAVATION = "do-measure-excavation" [];
    /// Do: support the face, or flatten it.
    DO_SUPPORT_FACE = "do-support-face" [];
    /// Do: hand the loads to the designer of the support.
    DO_HAND_LOADS = "do-hand-loads" [];
    /// Stress at the crown against what the owner allows.
    BURIED_BEARS = "buried-bears" [name, by, stress, allowed];
    /// The same, too much.
    BURIED_OVERLOADED = "buried-overloaded" [name, by, stress, allowed];
    /// Stress at the crown; nobody has said what it bears.
    BURIED_PRESSED = "buried-pressed" [name, by, stress];
    /// Deflection of a flexible pipe against what its owner allows, shares of its diameter.
    BURIED_FLATTENS = "buried-flattens" [name, by, share, allowed];
    /// The same, too much.
    BURIED_FLATTENED = "buried-flattened" [name, by, share, allowed];
    /// Do: spread the load, more cover, other stand.
    DO_SPREAD_OVER_BURIED = "do-spread-over-buried" [];
    /// Do: have this cleared in somebody's name.
    DO_CLEAR_CONDITION = "do-clear-condition" [name, what];
    /// What is to be cleared: kind.
    BURIED_KIND = "buried-open-kind" [];
    /// What is to be cleared: how a pipe's wall behaves.
    BURIED_WALL = "buried-open-wall" [];
    /// What is to be cleared: cover.
    BURIED_COVER = "buried-open-cover" [];
    /// What is to be cleared: the owner's figure.
    BURIED_ALLOWABLE = "buried-open-allowable" [];
    /// What is to be cleared: the owner's deflection.
    BURIED_DEFLECTION = "buried-open-deflection" [];
    /// What is to be cleared: recent backfill.
    BURIED_BACKFILL = "buried-open-backfill" [];
    /// What is to be cleared: voids.
    BURIED_VOIDS = "buried-open-voids" [];
    /// Way of a machine: ahead.
    WAY_AHEAD = "way-ahead" [];
    /// Way of a machine: back.
    WAY_BACK = "way-back" [];
    /// Way of a machine: to the left.
    WAY_LEFT = "way-left" [];
    /// Way of a machine: to the right.
    WAY_RIGHT = "way-right" [];
    /// State of a piece of ground: not looked at.
    FIELD_OUTSIDE = "field-outside" [];
    /// State of a piece of ground: not yet known.
    FIELD_NOT_YET = "field-not-yet" [];
    /// State of a piece of ground: a stand there is go.
    FIELD_GO = "field-go" [];
    /// State of a piece of ground: a stand there is go with conditions.
    FIELD_CONDITION = "field-condition" [];
    /// State of a piece of ground: it cannot be told.
    FIELD_CANNOT_TELL = "field-cannot-tell" [];
    /// State of a piece of ground: a stand there is no-go.
    FIELD_NO_GO = "field-no-go" [];
    /// Name of the check: how far off the stand may be.
    CHECK_STAND = "check-stand" [];
    /// The stand may be off by `disc` in any direction, pointed at the landing again, or its heading by `turn`.
    STAND_BY_EYE = "stand-by-eye" [disc, turn];
    /// The stand may be off by less than is found by eye: `disc`, or `turn` of its heading; `asked` and `asked_turn` would do.
    STAND_BY_TAPE = "stand-by-tape" [disc, turn, asked, asked_turn];
    /// Do: set the stand out by tape, with a signaller.
    DO_SET_OUT = "do-set-out" [];
    /// No stand is stated, and none was looked for.
    STAND_NONE_STATED = "stand-none-stated" [];
    /// No place within `radius` of the landing is allowed; most of the ground in reach is refused by `reason`.
    STAND_NOWHERE = "stand-nowhere" [radius, reason];
    /// No place was looked for, as `reason` refuses any.
    STAND_NOT_SOUGHT = "stand-not-sought" [reason];
    /// What would make it work: half the load at a time.
    CHANGE_HALF_LOAD = "change-half-load" [mass];
    /// What would make it work: this machine so equipped.
    CHANGE_EQUIPMENT = "change-equipment" [machine, attachment, support];
    /// What would make it work: loads taken from any side.
    CHANGE_ANY_SIDE = "change-any-side" [];
    /// What would make it work: a line dead and visibly grounded.
    CHANGE_LINE_DEAD = "change-line-dead" [line];
    /// What would make it work: a mat under each wheel or pad.
    CHANGE_MAT = "change-mat" [mat];
    /// A way was found `from` to the stand: `length`, `time`, `changes` of gear, and `back` in `back_time`.
    WAY_FOUND = "way-found" [from, length, time, changes, back, back_time];
    /// No way `from` to the stand and back: `what`, because of `why`.
    WAY_NONE = "way-none" [from, what, why];
    /// A lift's way cannot be looked for.
    WAY_LACKING = "way-lacking" [from, why];
    /// Do: a hung load is not driven without the maker's limits.
    DO_NOT_DRIVE_HUNG = "do-not-drive-hung" [];
    /// It cannot be told whether there is a way `from`.
    WAY_UNKNOWN = "way-unknown" [from];
    /// Nothing is named that is in the way.
    WAY_NO_REASON = "way-no-reason" [];
    /// Why not there: the ground is not surveyed.
    REASON_SURVEY = "reason-survey" [];
    /// Why not there: the boom cannot point at the landing from the allowed side.
    REASON_APPROACH = "reason-approach" [];
    /// Why not there: the boom does not get there.
    REASON_REACH = "reason-reach" [];
    /// Why not there: another check that goes with the stand.
    REASON_OTHER = "reason-other" [];
    /// Why not there: what no stand can mend.
    REASON_EVERYWHERE = "reason-everywhere" [];
    /// Left out: not checked.
    ORDER_NOT_CHECKED = "order-not-checked" [];
    /// Left out: no-go.
    ORDER_NO_GO = "order-no-go" [];
    /// Left out: no stand.
    ORDER_NO_STAND = "order-no-stand" [];
    /// Left out: something is not known.
    ORDER_NOT_KNOWN = "order-not-known" [];
    /// Left out: more lifts than one order takes.
    ORDER_TOO_MANY = "order-too-many" [most];
    /// Left out: no time in common.
    ORDER_WINDOW_EMPTY = "order-window-empty" [from, to];
    /// Left out: longer than its window.
    ORDER_WINDOW_SHORT = "order-window-short" [needs, has];
    /// Left out: window missed.
    ORDER_WINDOW_MISSED = "order-window-missed" [until, by];
    /// Left out: landing over its limit.
    ORDER_LANDING_OVER = "order-landing-over" [landing, by, may, lifts];
    /// Left out: landing over its limit by what lay there.
    ORDER_LANDING_FULL = "order-landing-full" [landing, by, may];
    /// Left out: landing never carries it.
    ORDER_LANDING_NEVER = "order-landing-never" [landing];
    /// Left out: the load is not there.
    ORDER_NOT_THERE = "order-not-there" [landing];
    /// Left out: a ring of waiting lifts.
    ORDER_CYCLE = "order-cycle" [lifts];
    /// Left out: waits for one that is left out.
    ORDER_WAITS = "order-waits" [lift];
    /// Condition of a lift in the order.
    ORDER_HAS_CONDITIONS = "order-has-conditions" [];
    /// Condition: a zone at other times.
    ORDER_ZONE_TIMES = "order-zone-times" [zone, by];
    /// Remedy: state the times of a crane.
    ORDER_DO_CRANE_TIMES = "order-do-crane-times" [];
    /// Left out: a crane without times.
    ORDER_CRANE_ALWAYS = "order-crane-always" [crane, rule, by];
    /// Condition: a crane at other times.
    ORDER_CRANE_TIMES = "order-crane-times" [crane, rule, by];
    /// Note: working hours assumed.
    ORDER_HOURS_TAKEN = "order-hours-taken" [from, to];
    /// Note: times are estimates.
    ORDER_TIMES_USUAL = "order-times-usual" [];
    /// Note: times with stated values.
    ORDER_TIMES_STATED = "order-times-stated" [by];
    /// Note: places on a landing are open.
    ORDER_PLACES_OPEN = "order-places-open" [landing];
    /// Do: see the findings.
    ORDER_DO_SEE_FINDINGS = "order-do-see-findings" [];
    /// Do: choose a stand.
    ORDER_DO_CHOOSE_STAND = "order-do-choose-stand" [];
    /// Do: another window.
    ORDER_DO_WINDOW = "order-do-window" [until];
    /// Do: leave another out.
    ORDER_DO_LEAVE = "order-do-leave" [lift];
    /// Do: take a load away first.
    ORDER_DO_TAKE_AWAY = "order-do-take-away" [lift];
    /// Do: half the load.
    ORDER_DO_HALF = "order-do-half" [];
    /// Do: another landing.
    ORDER_DO_OTHER_LANDING = "order-do-other-landing" [landings];
    /// Do: drop an after.
    ORDER_DO_DROP_AFTER = "order-do-drop-after" [lift];
    /// Name of the check: the boom's movement.
    CHECK_MOVEMENT = "check-movement" [];
    /// The plain movement is refused; another one passes.
    MOVEMENT_OTHER = "movement-other" [what];
    /// What refuses the plain movement: a thing, line or zone.
    MOVEMENT_PAST = "movement-past" [thing];
    /// What refuses the plain movement: chart or tipping on the way.
    MOVEMENT_CHART = "movement-chart" [];
    /// Do: move the boom in the order of the steps.
    DO_MOVE_IN_ORDER = "do-move-in-order" [];
    /// No movement passes: so much room is missing at `thing` on the best of them.
    MOVEMENT_NONE = "movement-none" [thing, missing];
    /// No movement passes without touching `thing`.
    MOVEMENT_NONE_TOUCHES = "movement-none-touches" [thing];
    /// The best opening in `thing` is too low by so much.
    MOVEMENT_NONE_LOW = "movement-none-low" [thing, missing, height];
    /// The best opening in `thing` is too narrow by so much.
    MOVEMENT_NONE_NARROW = "movement-none-narrow" [thing, missing, width];
    /// Ways that are free leave the chart or tip the machine.
    MOVEMENT_NONE_CHART = "movement-none-chart" [];
    /// Something stands too near to frame or cab, where they stand.
    MOVEMENT_FRAME = "movement-frame" [thing, missing];
    /// The same to boom or load down in carry.
    MOVEMENT_CARRY = "movement-carry" [thing, missing];
    /// The same to boom or load at the landing.
    MOVEMENT_LANDING = "movement-landing" [thing, missing];
    /// Without load the boom does not get back.
    MOVEMENT_NONE_BACK = "movement-none-back" [what];
    /// Do: clear the way, or hand the load in elsewhere.
    DO_CLEAR_WAY = "do-clear-way" [];
    /// Do: stand so much farther back; tried.
    DO_STAND_BACK = "do-stand-back" [distance];
    /// Do: stand so much nearer; tried.
    DO_STAND_NEARER = "do-stand-nearer" [distance];
    /// Step: raise the boom.
    STEP_WAY_RAISE = "step-way-raise" [angle];
    /// Step: lower the boom.
    STEP_WAY_LOWER = "step-way-lower" [angle];
    /// Step: extend.
    STEP_WAY_EXTEND = "step-way-extend" [extension];
    /// Step: retract.
    STEP_WAY_RETRACT = "step-way-retract" [extension];
    /// Step: raise or lower and extend or retract evenly together.
    STEP_WAY_TOGETHER = "step-way-together" [angle, extension];
    /// Step: level straight in, by both together.
    STEP_WAY_STRAIGHT_IN = "step-way-straight-in" [angle, extension];
    /// Step: level straight back.
    STEP_WAY_STRAIGHT_OUT = "step-way-straight-out" [angle, extension];
    /// Step: straight up.
    STEP_WAY_STRAIGHT_UP = "step-way-straight-up" [angle, extension];
    /// Step: straight down.
    STEP_WAY_STRAIGHT_DOWN = "step-way-straight-down" [angle, extension];
    /// A step with what to watch.
    STEP_WAY_WATCH = "step-way-watch" [what, thing, distance];
    /// Step: the movement has an order of its own.
    STEP_WAY_ORDER = "step-way-order" [];
    /// Step: draw the forks out; then back by the next steps.
    STEP_WAY_WITHDRAW = "step-way-withdraw" [];
    /// Step: let go of the load by any other tool; then back by the next steps.
    STEP_WAY_LET_GO = "step-way-let-go" [];
    /// Where the movement begins: in carry, retracted.
    STEP_WAY_START = "step-way-start" [angle];
    /// Step: the boom is back in carry.
    STEP_WAY_CARRY = "step-way-carry" [];
    /// Name of what bars a drive: beyond the area that was looked at.
    DRIVE_OUTSIDE = "drive-outside" [];
    /// The same: ground that is not known.
    DRIVE_UNKNOWN_GROUND = "drive-unknown-ground" [];
    /// The same: an excavation's set-back.
    DRIVE_EXCAVATION = "drive-excavation" [name];
    /// The same: an excavation of unknown depth.
    DRIVE_UNKNOWN_DEPTH = "drive-unknown-depth" [name];
    /// The same: a thing.
    DRIVE_THING = "drive-thing" [name];
    /// The same: a line within its distance.
    DRIVE_LINE = "drive-line" [name];
    /// The same: a line of unknown voltage or height.
    DRIVE_UNKNOWN_LINE = "drive-unknown-line" [name];
    /// The same: a closed zone or one for people.
    DRIVE_ZONE = "drive-zone" [name, by];
    /// The same: a one-way zone.
    DRIVE_ONE_WAY = "drive-one-way" [name, by];
    /// The same: soft ground.
    DRIVE_SOFT = "drive-soft" [name, by];
    /// The same: steeper than a zone allows.
    DRIVE_ZONE_SLOPE = "drive-zone-slope" [name, by];
    /// The same: slope along.
    DRIVE_ALONG = "drive-along" [];
    /// The same: slope across.
    DRIVE_ACROSS = "drive-across" [];
    /// The same: more twist than the rear axle takes.
    DRIVE_TWIST = "drive-twist" [];
    /// The same: turning on ground that falls across.
    DRIVE_TURNING_ACROSS = "drive-turning-across" [];
    /// The same: load downhill.
    DRIVE_LOAD_DOWNHILL = "drive-load-downhill" [];
    /// The same: tilt that remains.
    DRIVE_TILT = "drive-tilt" [over];
    /// Which way: forward.
    DRIVE_OVER_FRONT = "drive-over-front" [];
    /// Which way: backward.
    DRIVE_OVER_REAR = "drive-over-rear" [];
    /// Which way: sideways.
    DRIVE_OVER_SIDE = "drive-over-side" [];
    /// No route: inputs are missing.
    DRIVE_MISSING = "drive-missing" [];
    /// Missing: the machine.
    DRIVE_NO_MACHINE = "drive-no-machine" [];
    /// Missing: the load.
    DRIVE_NO_LOAD = "drive-no-load" [];
    /// A hung load travels only within its maker's limits, and none are known.
    DRIVE_HUNG = "drive-hung" [];
    /// A tyre is flat.
    DRIVE_FLAT = "drive-flat" [];
    /// How a slewing machine travels is not known.
    DRIVE_SLEWING = "drive-slewing" [];
    /// Missing: the attachment's width.
    DRIVE_NO_WIDTH = "drive-no-width" [];
    /// Missing: how tightly it turns.
    DRIVE_NO_TURNING = "drive-no-turning" [];
    /// Missing: the ground.
    DRIVE_NO_GROUND = "drive-no-ground" [];
    /// A rule of driving is no number, or asks for nothing.
    DRIVE_RULES = "drive-rules" [];
    /// Missing: where a line runs.
    DRIVE_NO_LINE_PLACE = "drive-no-line-place" [name];
    /// Missing: that no other line is there.
    DRIVE_LINES_OPEN = "drive-lines-open" [];
    /// Missing: start or target.
    DRIVE_NO_PLACE = "drive-no-place" [];
    /// No route: something at the start.
    DRIVE_START_BARRED = "drive-start-barred" [];
    /// No route: something at the target.
    DRIVE_TARGET_BARRED = "drive-target-barred" [];
    /// No route: too narrow.
    DRIVE_NARROW = "drive-narrow" [width, needed, lacking];
    /// No route: walled in.
    DRIVE_WALLED_IN = "drive-walled-in" [short];
    /// No route found within the poses looked at.
    DRIVE_GAVE_UP = "drive-gave-up" [short];
    /// No route: a pose of the way found is barred.
    DRIVE_SPOILT = "drive-spoilt" [];
    /// The search was ended.
    DRIVE_STOPPED = "drive-stopped" [];
    /// Do: state what is missing.
    DO_DRIVE_STATE = "do-drive-state" [];
    /// Do: start elsewhere.
    DO_DRIVE_START = "do-drive-start" [];
    /// Do: another stand.
    DO_DRIVE_TARGET = "do-drive-target" [];
    /// Do: clear the way, or another one.
    DO_DRIVE_CLEAR = "do-drive-clear" [];
    /// Do: give a place in between.
    DO_DRIVE_BETWEEN = "do-drive-between" [];
    /// Do: ask again.
    DO_DRIVE_AGAIN = "do-drive-again" [];
    /// Note: how the boom is carried.
    DRIVE_NOTE_CARRY = "drive-note-carry" [angle];
    /// Note: rules of driving.
    DRIVE_NOTE_RULES = "drive-note-rules" [pace, along, across, turning];
    /// Note: load uphill.
    DRIVE_NOTE_UPHILL = "drive-note-uphill" [grade, clause];
    /// Note: forks downhill when empty.
    DRIVE_NOTE_EMPTY = "drive-note-empty" [];
    /// Note: what is not looked at.
    DRIVE_NOTE_NOT_LOOKED_AT = "drive-note-not-looked-at" [];

    // Routines: one plan for a family of alike lifts.
    /// It holds everywhere in its area.
    ROUTINE_EVERYWHERE = "routine-everywhere" [area];
    /// It holds in a part of its area.
    ROUTINE_IN_PART = "routine-in-part" [holds, area, reason];
    /// It holds nowhere in its area.
    ROUTINE_NOWHERE = "routine-nowhere" [area, reason];
    /// No place of its area can be asked for.
    ROUTINE_NO_AREA = "routine-no-area" [];
    /// It names no landing, load or machine that the job has.
    ROUTINE_NOT_KNOWN = "routine-not-known" [];
    /// Nobody has approved it: it allows nothing.
    ROUTINE_NOT_APPROVED = "routine-not-approved" [];
    /// Who approved it.
    ROUTINE_APPROVED = "routine-approved" [by];
    /// The loads that it was checked with.
    ROUTINE_LOADS = "routine-loads" [empty, lightest, heaviest];
    /// What stays to be done wherever it holds.
    ROUTINE_CONDITIONS = "routine-conditions" [check];
    /// Outside: nobody approved it.
    ROUTINE_OFF_NOT_APPROVED = "routine-off-not-approved" [];
    /// Outside: another machine.
    ROUTINE_OFF_MACHINE = "routine-off-machine" [machine];
    /// Outside: another attachment.
    ROUTINE_OFF_ATTACHMENT = "routine-off-attachment" [attachment];
    /// Outside: another support.
    ROUTINE_OFF_SUPPORT = "routine-off-support" [support];
    /// Outside: it takes a load away.
    ROUTINE_OFF_TASK = "routine-off-task" [];
    /// Outside: heavier.
    ROUTINE_OFF_MASS = "routine-off-mass" [mass, most];
    /// Outside: larger, in depth, width or height.
    ROUTINE_OFF_SIZE = "routine-off-size" [side, size, most];
    /// A side of a load: depth.
    ROUTINE_DEPTH = "routine-depth" [];
    /// A side of a load: width.
    ROUTINE_WIDTH = "routine-width" [];
    /// A side of a load: height.
    ROUTINE_HEIGHT = "routine-height" [];
    /// Outside: the centre lies farther out.
    ROUTINE_OFF_CENTRE = "routine-off-centre" [way, centre, most];
    /// A way of a centre: ahead.
    ROUTINE_AHEAD = "routine-ahead" [];
    /// A way of a centre: to a side.
    ROUTINE_ASIDE = "routine-aside" [];
    /// A way of a centre: up.
    ROUTINE_UP = "routine-up" [];
    /// Outside: the wind shape factor is greater.
    ROUTINE_OFF_WIND_FACTOR = "routine-off-wind-factor" [factor, most];
    /// Outside: it hangs, or lies on forks, otherwise than the routine's.
    ROUTINE_OFF_HANGING = "routine-off-hanging" [];
    /// Outside: hung otherwise: longer, heavier rigging, fewer legs.
    ROUTINE_OFF_RIGGING = "routine-off-rigging" [];
    /// Outside: a landing that is not of the routine.
    ROUTINE_OFF_LANDING = "routine-off-landing" [landing];
    /// Outside: no stop gust is stated.
    ROUTINE_OFF_NO_GUST = "routine-off-no-gust" [];
    /// Outside: it stops at more wind.
    ROUTINE_OFF_GUST = "routine-off-gust" [gust, most];
    /// Outside: no stand.
    ROUTINE_OFF_NO_STAND = "routine-off-no-stand" [];
    /// Outside: it stands beyond the area.
    ROUTINE_OFF_STAND = "routine-off-stand" [distance];
    /// Outside: it stands where the routine does not hold.
    ROUTINE_OFF_HELD = "routine-off-held" [reason];
    /// Outside: the boom does not point at the landing.
    ROUTINE_OFF_TURNED = "routine-off-turned" [turn, most];
    /// Outside: the ground is steeper.
    ROUTINE_OFF_GROUND = "routine-off-ground" [slope, most];
    /// Outside: the ground under it is not known.
    ROUTINE_OFF_NO_GROUND = "routine-off-no-ground" [];
    /// Outside: something of the lift is not as the routine was checked.
    ROUTINE_OFF_OTHERWISE = "routine-off-otherwise" [what];
    /// Something otherwise: mats.
    ROUTINE_MATS = "routine-mats" [];
    /// Something otherwise: shifted sideways.
    ROUTINE_SHIFTED = "routine-shifted" [];
    /// Something otherwise: levelled or axle locked.
    ROUTINE_LEVELLED = "routine-levelled" [];
    /// Something otherwise: how high it is carried in.
    ROUTINE_CLEAR = "routine-clear" [clear];
    /// Something otherwise: fork extensions.
    ROUTINE_SLEEVES = "routine-sleeves" [];
    /// Something otherwise: loose material.
    ROUTINE_BULK = "routine-bulk" [];
    /// Outside: a check of the lift that goes with no stand refuses.
    ROUTINE_OFF_CHECK = "routine-off-check" [check];
    /// Outside: the routine holds nowhere for that landing.
    ROUTINE_OFF_NOWHERE = "routine-off-nowhere" [reason];

    // What every shell tells of stand and way.

    /// The job states the stand.
    STAND_FROM_STATED = "stand-from-stated" [];
    /// The stand was looked for and found.
    STAND_FROM_FOUND = "stand-from-found" [];
    /// It was found for another lift, and serves this one too.
    STAND_FROM_SHARED = "stand-from-shared" [lift];
    /// It was looked for, and none was found.
    STAND_FROM_NOWHERE = "stand-from-nowhere" [];
    /// Name: how far off its place.
    OFF_PLACE_NAME = "off-place-name" [];
    /// Off its place, as far as was tried.
    OFF_PLACE = "off-place" [disc];
    /// Off its place, and what refuses beyond.
    OFF_PLACE_BY = "off-place-by" [disc, reason];
    /// Off its place, and what refuses beyond, which way first.
    OFF_PLACE_WAY = "off-place-way" [disc, reason, way];
    /// Name: how far off its heading.
    OFF_HEADING_NAME = "off-heading-name" [];
    /// Off its heading, as far as was tried.
    OFF_HEADING = "off-heading" [turn];
    /// Off its heading, and what refuses beyond.
    OFF_HEADING_BY = "off-heading-by" [turn, reason];
    /// Name: way in.
    WAY_IN_NAME = "way-in-name" [];
    /// Name: way out.
    WAY_OUT_NAME = "way-out-name" [];
    /// The way in: how far, how long.
    WAY_IN_TOLD = "way-in-told" [from, length, time];
    /// The way out: how far, how long.
    WAY_OUT_TOLD = "way-out-told" [from, length, time];
    /// Name: gears of the way in.
    WAY_IN_RUNS = "way-in-runs" [];
    /// Name: gears of the way out.
    WAY_OUT_RUNS = "way-out-runs" [];
    /// How often the gear changes, and how far each way is driven.
    WAY_RUNS = "way-runs" [changes, runs];
    /// Driven boom first.
    WAY_FORWARD = "way-forward" [length];
    /// Driven tail first.
    WAY_BACKWARD = "way-backward" [length];
    /// One after the other.
    WAY_THEN = "way-then" [first, next];
    /// Name: what comes nearest.
    WAY_NEAREST_NAME = "way-nearest-name" [];
    /// What comes nearest, and how much is left before it.
    WAY_NEAREST = "way-nearest" [of, left];
    /// There is no way: why.
    WAY_REFUSED = "way-refused" [what, why];
    /// The other way has none either.
    WAY_NOT_THERE = "way-not-there" [];

    // End of stand and way.
}

/// What ends a plan, in the order in which it is listed.
pub const ENDS: [evidence::TextId; 7] =
    [ENDS_RAIN, ENDS_FROST, ENDS_DIGGING, ENDS_SCAFFOLD, ENDS_DEFECT, ENDS_SHIFT, ENDS_VALUES];
