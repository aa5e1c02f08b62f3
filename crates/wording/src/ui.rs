//! Ids of the words that documents, drawings and screens use around the findings:
//! verdict and status words, headings, axis names, labels. Kept in groups, in reading order.

evidence::messages! {
    // Verdict, status, severity, certainty, source.

    /// The verdict word for go.
    VERDICT_GO = "ui-verdict-go" [];
    /// The verdict word for go with conditions.
    VERDICT_CONDITIONS = "ui-verdict-conditions" [];
    /// The verdict word for no-go.
    VERDICT_NO_GO = "ui-verdict-no-go" [];
    /// One line under the verdict word for go.
    VERDICT_GO_MEANS = "ui-verdict-go-means" [];
    /// One line under the verdict word for go with conditions.
    VERDICT_CONDITIONS_MEANS = "ui-verdict-conditions-means" [];
    /// One line under the verdict word for no-go.
    VERDICT_NO_GO_MEANS = "ui-verdict-no-go-means" [];
    /// Status of a check: within its limit.
    STATUS_GO = "ui-status-go" [];
    /// Status of a check: allowed on a condition.
    STATUS_CONDITION = "ui-status-condition" [];
    /// Status of a check: an input is missing.
    STATUS_CANNOT_TELL = "ui-status-cannot-tell" [];
    /// Status of a check: beyond its limit.
    STATUS_NO_GO = "ui-status-no-go" [];
    /// Status of a check: absolute stop.
    STATUS_STOP = "ui-status-stop" [];
    /// A fault that makes an input unusable.
    SEVERITY_ERROR = "ui-severity-error" [];
    /// A fault to be looked at.
    SEVERITY_WARNING = "ui-severity-warning" [];
    /// Signal word (ANSI Z535, ISO 3864): death or serious injury follows.
    SIGNAL_DANGER = "ui-signal-danger" [];
    /// Signal word: death or serious injury may follow.
    SIGNAL_WARNING = "ui-signal-warning" [];
    /// Signal word: injury may follow.
    SIGNAL_CAUTION = "ui-signal-caution" [];
    /// Signal word: damage may follow.
    SIGNAL_NOTICE = "ui-signal-notice" [];
    /// How sure a value is: from the plate.
    CERTAINTY_PLATE = "ui-certainty-plate" [];
    /// How sure: from the maker's manual.
    CERTAINTY_MANUAL = "ui-certainty-manual" [];
    /// How sure: from the chart in the cab.
    CERTAINTY_CHART = "ui-certainty-chart" [];
    /// How sure: weighed.
    CERTAINTY_WEIGHED = "ui-certainty-weighed" [];
    /// How sure: from a delivery ticket.
    CERTAINTY_TICKET = "ui-certainty-ticket" [];
    /// How sure: measured on site.
    CERTAINTY_MEASURED = "ui-certainty-measured" [];
    /// How sure: built up from parts and densities.
    CERTAINTY_BUILT_UP = "ui-certainty-built-up" [];
    /// How sure: estimated.
    CERTAINTY_ESTIMATED = "ui-certainty-estimated" [];
    /// How sure: stated by a named person.
    CERTAINTY_STATED = "ui-certainty-stated" [];
    /// How sure: invented for a demonstration or test.
    CERTAINTY_INVENTED = "ui-certainty-invented" [];
    /// A published source that was read.
    SOURCE_PUBLISHED = "ui-source-published" [citation];
    /// A citation whose value was read in somebody else's restatement.
    SOURCE_SECOND_HAND = "ui-source-second-hand" [citation];
    /// A published source whose value was not read in the source.
    SOURCE_FROM_MEMORY = "ui-source-from-memory" [citation];
    /// A citation that is a sentence: contact area of a tyre.
    CITATION_TYRE_PATCH = "ui-citation-tyre-patch" [];
    /// A citation that is a sentence: required tilt, after the standard's kind of test.
    CITATION_TILT_TESTS = "ui-citation-tilt-tests" [];
    /// Source: common practice of the trade.
    SOURCE_COMMON_PRACTICE = "ui-source-common-practice" [];
    /// Source: mechanics.
    SOURCE_MECHANICS = "ui-source-mechanics" [];
    /// Source: the user's file and how sure it is.
    SOURCE_INPUT = "ui-source-input" [place, certainty];
    /// Source: a named person's statement.
    SOURCE_PERSON = "ui-source-person" [name, statement];
    /// Source: a named person, without words of theirs.
    SOURCE_PERSON_ONLY = "ui-source-person-only" [name];

    // Places in input files.

    /// A place: file only.
    PLACE_FILE = "ui-place-file" [file];
    /// A place: file and line.
    PLACE_LINE = "ui-place-line" [file, line];
    /// A place: file, line and column.
    PLACE_COLUMN = "ui-place-column" [file, line, column];
    /// A place as above, with the key in the file.
    PLACE_KEY = "ui-place-key" [place, key];

    // Words for missing and doubtful values.

    /// A value that nobody gave.
    NOT_KNOWN = "ui-not-known" [];
    /// A value that was assumed.
    ASSUMED = "ui-assumed" [];
    /// Demo and test data.
    INVENTED_DATA = "ui-invented-data" [];
    /// A line that says that this job's data are invented and no lift may be made from them.
    INVENTED_DATA_NOTE = "ui-invented-data-note" [];
    /// None of something.
    NONE = "ui-none" [];
    /// Yes.
    YES = "ui-yes" [];
    /// No.
    NO = "ui-no" [];

    // Headings.

    /// Heading: what governs.
    GOVERNS = "ui-governs" [];
    /// Heading: all findings.
    FINDINGS = "ui-findings" [];
    /// Heading: the check of a finding.
    CHECK = "ui-check" [];
    /// Heading: what a check found.
    RESULT = "ui-result" [];
    /// Heading: what is asked of the machine or ground.
    DEMAND = "ui-demand" [];
    /// Heading: what it may be.
    LIMIT = "ui-limit" [];
    /// Heading: reserve.
    RESERVE = "ui-reserve" [];
    /// Reserve as a share, in a sentence.
    RESERVE_OF = "ui-reserve-of" [share];
    /// Over the limit by a share.
    RESERVE_OVER = "ui-reserve-over" [share];
    /// Heading: what to do.
    WHAT_TO_DO = "ui-what-to-do" [];
    /// Heading: working.
    WORKING = "ui-working" [];
    /// Heading of a working's formula column.
    FORMULA = "ui-formula" [];
    /// Heading of a working's values column.
    VALUES = "ui-values" [];
    /// Heading: source.
    SOURCE = "ui-source" [];
    /// Heading: inputs.
    INPUTS = "ui-inputs" [];
    /// Heading: values that were assumed.
    ASSUMED_INPUTS = "ui-assumed-inputs" [];
    /// Heading: cautions.
    CAUTIONS = "ui-cautions" [];
    /// Heading: in an emergency.
    EMERGENCY = "ui-emergency" [];
    /// Heading: steps.
    STEPS = "ui-steps" [];
    /// Heading: conditions to be met.
    CONDITIONS = "ui-conditions" [];
    /// Heading: what ends this plan.
    ENDS = "ui-ends" [];
    /// Heading: load chart.
    LOAD_CHART = "ui-load-chart" [];
    /// Heading: side view.
    SIDE_VIEW = "ui-side-view" [];
    /// Heading: plan view, seen from above.
    PLAN_VIEW = "ui-plan-view" [];
    /// Heading: profile of the ground.
    GROUND_PROFILE = "ui-ground-profile" [];
    /// Heading: stand field.
    STAND_FIELD = "ui-stand-field" [];
    /// Name of the document for the supervisor.
    PLAN_SHEET = "ui-plan-sheet" [];
    /// Name of the document for the cab.
    CAB_CARD = "ui-cab-card" [];
    /// Heading: job.
    JOB = "ui-job" [];
    /// Heading: site.
    SITE = "ui-site" [];
    /// Heading: lift.
    LIFT = "ui-lift" [];
    /// Heading: lifts.
    LIFTS = "ui-lifts" [];
    /// Heading: verdict.
    VERDICT = "ui-verdict" [];
    /// Heading: machine.
    MACHINE = "ui-machine" [];
    /// Heading: attachment.
    ATTACHMENT = "ui-attachment" [];
    /// Heading: support state.
    SUPPORT = "ui-support" [];
    /// Heading: load.
    LOAD = "ui-load" [];
    /// Heading: stand.
    STAND = "ui-stand" [];
    /// Heading: stands.
    STANDS = "ui-stands" [];
    /// Heading: the best stands found.
    BEST_STANDS = "ui-best-stands" [];
    /// Heading: landing.
    LANDING = "ui-landing" [];
    /// Heading: pick-up.
    PICK_UP = "ui-pick-up" [];
    /// Heading: boom movement.
    BOOM_MOVEMENT = "ui-boom-movement" [];
    /// Heading: wheel forces.
    WHEEL_FORCES = "ui-wheel-forces" [];
    /// Heading: how far off one may be.
    TOLERANCE = "ui-tolerance" [];
    /// Heading: how much more of one thing a lift bears.
    TOLERANCES = "ui-tolerances" [];
    /// Heading: the one thing.
    TOLERANCE_WHAT = "ui-tolerance-what" [];
    /// Heading: how much, all else as planned.
    TOLERANCE_ALONE = "ui-tolerance-alone" [];
    /// Heading: how much, all else at its worst.
    TOLERANCE_AT_WORST = "ui-tolerance-at-worst" [];
    /// Heading: which check turns.
    TOLERANCE_TURNS = "ui-tolerance-turns" [];
    /// What these numbers are for.
    TOLERANCE_NOTE = "ui-tolerance-note" [];
    /// The stand holds within a disc and a heading error.
    TOLERANCE_SENTENCE = "ui-tolerance-sentence" [radius, angle];
    /// Heading: date.
    DATE = "ui-date" [];
    /// Heading: prepared by.
    PREPARED_BY = "ui-prepared-by" [];
    /// Heading: approved by.
    APPROVED_BY = "ui-approved-by" [];
    /// Heading: briefed.
    BRIEFED = "ui-briefed" [];
    /// Heading: operator.
    OPERATOR = "ui-operator" [];
    /// Heading: signaller.
    SIGNALLER = "ui-signaller" [];
    /// Heading: supervisor.
    SUPERVISOR = "ui-supervisor" [];
    /// Heading: signature.
    SIGNATURE = "ui-signature" [];
    /// Heading: name.
    NAME = "ui-name" [];
    /// Heading: remarks.
    REMARKS = "ui-remarks" [];

    // Names of measured things.

    /// Reach.
    REACH = "ui-reach" [];
    /// Lift height.
    LIFT_HEIGHT = "ui-lift-height" [];
    /// Boom angle.
    BOOM_ANGLE = "ui-boom-angle" [];
    /// Boom extension.
    EXTENSION = "ui-extension" [];
    /// Slope along the machine.
    SLOPE_ALONG = "ui-slope-along" [];
    /// Slope across the machine.
    SLOPE_ACROSS = "ui-slope-across" [];
    /// Heading of the machine, clockwise from north.
    HEADING = "ui-heading" [];
    /// Mass.
    MASS = "ui-mass" [];
    /// Capacity.
    CAPACITY = "ui-capacity" [];
    /// Load centre.
    LOAD_CENTRE = "ui-load-centre" [];
    /// Centre of gravity.
    CENTRE_OF_GRAVITY = "ui-centre-of-gravity" [];
    /// Tipping line.
    TIPPING_LINE = "ui-tipping-line" [];
    /// Distance.
    DISTANCE = "ui-distance" [];
    /// Height.
    HEIGHT = "ui-height" [];
    /// Width.
    WIDTH = "ui-width" [];
    /// Length.
    LENGTH = "ui-length" [];
    /// Depth.
    DEPTH = "ui-depth" [];
    /// Slope.
    SLOPE = "ui-slope" [];
    /// Force.
    FORCE = "ui-force" [];
    /// Bearing pressure.
    BEARING_PRESSURE = "ui-bearing-pressure" [];
    /// Gust at which to stop.
    STOP_GUST = "ui-stop-gust" [];
    /// Voltage.
    VOLTAGE = "ui-voltage" [];
    /// Clearance.
    CLEARANCE = "ui-clearance" [];
    /// Accuracy of the ground survey.
    GROUND_ACCURACY = "ui-ground-accuracy" [];

    // Drawings.

    /// A zone of a chart and its capacity.
    ZONE_CAPACITY = "ui-zone-capacity" [zone, capacity];
    /// A zone of a chart.
    ZONE = "ui-zone" [zone];
    /// Region where the chart permits nothing.
    NOT_PERMITTED = "ui-not-permitted" [];
    /// The point of this lift in the chart.
    THIS_LIFT = "ui-this-lift" [];
    /// Box that holds the point with error and flex.
    POINT_BOX = "ui-point-box" [];
    /// North.
    NORTH = "ui-north" [];
    /// The scale of a drawing.
    SCALE = "ui-scale" [scale];
    /// Key to the marks of a drawing.
    LEGEND = "ui-legend" [];
    /// Overhead line.
    OVERHEAD_LINE = "ui-overhead-line" [];
    /// Required distance to a line.
    REQUIRED_DISTANCE = "ui-required-distance" [];
    /// Ground line.
    GROUND = "ui-ground" [];
    /// Exclusion zone.
    EXCLUSION_ZONE = "ui-exclusion-zone" [];
    /// Text alternative of a side view.
    SIDE_VIEW_ALT = "ui-side-view-alt" [lift, reach, height];
    /// Text alternative of a chart drawing.
    LOAD_CHART_ALT = "ui-load-chart-alt" [lift, reach, height, capacity];
    /// Text alternative of a plan view.
    PLAN_VIEW_ALT = "ui-plan-view-alt" [lift];

    // Pages, files, commands.

    /// Page `page` of `pages`.
    PAGE_OF = "ui-page-of" [page, pages];
    /// What made this document, and the digest of the plan.
    MADE_BY = "ui-made-by" [version, digest];
    /// How many lifts, and how many of each verdict.
    LIFTS_SUMMARY = "ui-lifts-summary" [lifts, go, conditions, no_go];
    /// How many faults in how many files.
    FAULTS_SUMMARY = "ui-faults-summary" [errors, warnings];
    /// Prefix of a hint.
    HINT = "ui-hint" [hint];
    /// Language chooser.
    LANGUAGE = "ui-language" [];
    /// Unit chooser.
    UNITS = "ui-units" [];
    /// SI units.
    UNITS_SI = "ui-units-si" [];
    /// US customary units.
    UNITS_US = "ui-units-us" [];
    /// Print.
    PRINT = "ui-print" [];
    /// Download the PDF.
    DOWNLOAD_PDF = "ui-download-pdf" [];
    /// Show the working.
    SHOW_WORKING = "ui-show-working" [];
    /// Hide the working.
    HIDE_WORKING = "ui-hide-working" [];
    /// Back.
    BACK = "ui-back" [];
    /// Something is being computed.
    COMPUTING = "ui-computing" [];
    /// The server does not answer.
    NO_CONNECTION = "ui-no-connection" [];
    /// Check again with changed values.
    CHECK_AGAIN = "ui-check-again" [];
    /// Values were changed from the job's.
    CHANGED_VALUES = "ui-changed-values" [];

    // Labels in drawings, and the plan sheet.

    /// In place of a side view that could not be drawn.
    NOT_POSED = "ui-not-posed" [];
    /// In place of a chart drawing where there is no chart.
    NO_CHART = "ui-no-chart" [];
    /// An overhead line in a drawing, by number.
    LINE_NUMBER = "ui-line-number" [number];
    /// The distance to keep from a line.
    LINE_KEEP = "ui-line-keep" [distance];
    /// No required distance, because the voltage is not known.
    LINE_NO_REQUIRED = "ui-line-no-required" [];
    /// Beside a line without voltage.
    VOLTAGE_NOT_KNOWN = "ui-voltage-not-known" [];
    /// Nearest distance found to a line.
    LINE_NEAREST = "ui-line-nearest" [distance];
    /// How far to the side of the picture's plane a line passes.
    LINE_ASIDE = "ui-line-aside" [distance];
    /// A line that is not in the picture.
    OUTSIDE_PICTURE = "ui-outside-picture" [];
    /// A stretch of ground without heights.
    GROUND_NOT_KNOWN = "ui-ground-not-known" [];
    /// Slope of the stand without heights.
    SLOPE_NOT_KNOWN = "ui-slope-not-known" [];
    /// From where a side view is seen.
    SEEN_FROM_RIGHT = "ui-seen-from-right" [];
    /// Slope along the machine, front higher.
    NOSE_UP = "ui-nose-up" [slope];
    /// Slope along the machine, front lower.
    NOSE_DOWN = "ui-nose-down" [slope];
    /// Slope across the machine, left lower.
    LEFT_LOW = "ui-left-low" [slope];
    /// Slope across the machine, right lower.
    RIGHT_LOW = "ui-right-low" [slope];
    /// Key: centre of gravity of the load.
    LOAD_GRAVITY = "ui-load-gravity" [];
    /// Key: point read on the chart.
    CHART_POINT = "ui-chart-point" [];
    /// Load against capacity.
    LOAD_OF_CAPACITY = "ui-load-of-capacity" [load, capacity];
    /// Name of the upper value of the load's mass.
    LOAD_UP_TO = "ui-load-up-to" [];
    /// The point lies in no zone.
    NO_ZONE = "ui-no-zone" [];
    /// Rated load centre of the chart.
    RATED_LOAD_CENTRE = "ui-rated-load-centre" [distance];
    /// Capacities were reduced.
    CAPACITY_CAP = "ui-capacity-cap" [capacity];
    /// Key: zones that carry this load.
    ZONE_CARRIES = "ui-zone-carries" [];
    /// A required distance and what is there.
    NEEDS_HAS = "ui-needs-has" [required, there];
    /// What is asked and what is allowed.
    ASKS_MAY = "ui-asks-may" [demand, limit];
    /// Heading: figures of a check.
    FIGURES = "ui-figures" [];
    /// Mass by ticket or scales, and the mass that the checks counted.
    MASS_COUNTED = "ui-mass-counted" [mass, counted];
    /// Dimension from the nearest part to a line.
    TO_LINE = "ui-to-line" [number, distance];
    /// Heading: the machine from behind.
    REAR_VIEW = "ui-rear-view" [];
    /// Note at the machine from behind: what is drawn true.
    REAR_SKETCH = "ui-rear-sketch" [];
    /// Heading: statements accepted by name.
    ACCEPTED = "ui-accepted" [];
    /// In a lift's findings: the statement stands under that number.
    ACCEPTED_SEE = "ui-accepted-see" [number];
    /// A working step that stands under another check of the lift.
    WORKING_AS = "ui-working-as" [check];
    /// Lean of the machine to the left.
    LEANS_LEFT = "ui-leans-left" [angle, most];
    /// Lean of the machine to the right.
    LEANS_RIGHT = "ui-leans-right" [angle, most];
    /// Key: zones that do not carry this load.
    ZONE_TOO_HEAVY = "ui-zone-too-heavy" [];
    /// Key: outside of every zone.
    OUTSIDE_ZONES = "ui-outside-zones" [];
    /// Share of the capacity that is left.
    SHARE_LEFT = "ui-share-left" [share];
    /// In a zone that does not carry the load.
    TOO_HEAVY_SHORT = "ui-too-heavy" [];
    /// Sign-off: who planned.
    PLANNED_BY = "ui-planned-by" [];
    /// Sign-off: who checked.
    CHECKED_BY = "ui-checked-by" [];
    /// Sign-off: the operator was briefed.
    BRIEFED_OPERATOR = "ui-briefed-operator" [];
    /// Heading: sign-off.
    SIGN_OFF = "ui-sign-off" [];
    /// What a signature under a plan means.
    SIGN_OFF_NOTE = "ui-sign-off-note" [];
    /// A job without lifts.
    NO_LIFTS = "ui-no-lifts" [];
    /// Heading: how sure a value is.
    CERTAINTY = "ui-certainty" [];
    /// Heading: file and key of a value.
    PLACE = "ui-place" [];
    /// Heading: value.
    VALUE = "ui-value" [];
    /// Heading: warnings about the inputs.
    WARNINGS = "ui-warnings" [];
    /// What the working is.
    WORKING_NOTE = "ui-working-note" [];
    /// Word beside a reserve below zero.
    OVER_LIMIT = "ui-over-limit" [];
    /// Word beside a reserve.
    IN_RESERVE = "ui-in-reserve" [];
    /// In the place of a reserve: this finding has no figure.
    NO_NUMBER = "ui-no-number" [];
    /// Heading: area of a patch.
    AREA = "ui-area" [];
    /// Heading: wheel or pad.
    WHEEL = "ui-wheel" [];
    /// Heading: position of the stand on site.
    POSITION = "ui-position" [];
    /// Position east and north.
    EAST_NORTH = "ui-east-north" [east, north];
    /// Heading: size of the load.
    SIZE = "ui-size" [];
    /// A value with its bounds.
    FROM_TO = "ui-from-to" [value, low, high];
    /// How many checks are met.
    CHECKS_OF = "ui-checks-of" [met, checks];
    /// Version of the engine.
    ENGINE_VERSION = "ui-engine-version" [version];
    /// Heading: digest of the plan.
    DIGEST = "ui-digest" [];
    /// Lift `number` of `lifts`.
    CONTENTS_LIFT = "ui-lift-of" [number, lifts];
    /// Heading: file that gave the ground heights.
    GROUND_FILE = "ui-ground-file" [];
    /// Heading: ground heights under the wheels.
    WHEEL_HEIGHTS = "ui-wheel-heights" [];
    /// Heading: date of printing.
    PRINTED = "ui-printed" [];

    // The screen.

    /// Screen: back to the list.
    ALL_LIFTS = "ui-all-lifts" [];
    /// Screen: chooser of a light or dark screen.
    LIGHT_CHOICE = "ui-light-choice" [];
    /// Screen as the device has it.
    LIGHT_AUTO = "ui-light-auto" [];
    /// Light screen.
    LIGHT_DAY = "ui-light-day" [];
    /// Dark screen.
    LIGHT_NIGHT = "ui-light-night" [];
    /// Screen: opens the choice of language, units and light.
    READING_CHOICES = "ui-reading-choices" [];
    /// Screen: the plan is on its way.
    LOADING = "ui-loading" [];
    /// Screen: ask the server again.
    TRY_AGAIN = "ui-try-again" [];
    /// Screen: the server does not answer.
    SERVER_GONE = "ui-server-gone" [];
    /// Screen: what is shown is old; it goes on asking.
    SERVER_GONE_OLD = "ui-server-gone-old" [];
    /// Screen: before the time of the last answer.
    LAST_ANSWER = "ui-last-answer" [];
    /// Screen: mark on what is shown while the server is silent.
    OLD = "ui-old" [];
    /// Screen: the server came back with another plan.
    PLAN_CHANGED = "ui-plan-changed" [];
    /// Screen: this lift has no drawing.
    NO_DRAWING = "ui-no-drawing" [];
    /// Screen: makes a drawing larger than the screen.
    DRAWING_LARGER = "ui-drawing-larger" [];
    /// Screen: makes a drawing fit the screen.
    DRAWING_FIT = "ui-drawing-fit" [];
    /// Screen: name of the part with the drawings.
    DRAWINGS = "ui-drawings" [];
    /// Heading: where the machine stands.
    WHERE = "ui-where" [];
    /// Heading: findings that stand against a lift.
    AGAINST = "ui-against" [];
    /// Heading: findings within their limits.
    WITHIN = "ui-within" [];
    /// Screen: nothing was calculated for this finding.
    NO_WORKING = "ui-no-working" [];
    /// Screen: no steps are given, because the lift may not be made as planned.
    NO_STEPS = "ui-no-steps" [];
    /// Paper of 210 × 297 mm.
    PAPER_A4 = "ui-paper-a4" [];
    /// Paper of 8.5 × 11 in.
    PAPER_LETTER = "ui-paper-letter" [];
    /// Screen: the plan as one page without scripts.
    PLAIN_PAGE = "ui-plain-page" [];
    /// Screen: skips to the content.
    TO_CONTENT = "ui-to-content" [];
    /// Screen: the plan has no lift of that id.
    LIFT_UNKNOWN = "ui-lift-unknown" [];
    /// In which pose a side view shows the machine.
    SHOWN_CLEAR = "ui-shown-clear" [];
    /// Label: what is required at least, where a finding compares "at least".
    NEEDS = "ui-needs" [];
    /// Label: what is there, beside [`NEEDS`].
    HAS = "ui-has" [];
    /// Label: the load is set down on the landing that follows.
    TASK_SET_DOWN = "ui-task-set-down" [];
    /// Label: the load is picked up from the landing that follows.
    TASK_PICK_UP = "ui-task-pick-up" [];
    /// Label: where the front tyres stop.
    FRONT_TYRES = "ui-front-tyres" [];
    /// Front face of the front tyres before the near edge of the landing.
    FROM_LANDING = "ui-from-landing" [distance];
    /// Front face of the front tyres beyond the near edge of the landing.
    PAST_LANDING = "ui-past-landing" [distance];
    /// Label: at what the boom is aimed.
    AIM = "ui-aim" [];
    /// The boom's line goes over the middle of the landing.
    AIM_MIDDLE = "ui-aim-middle" [];
    /// The boom's line passes left of the middle of the landing.
    AIM_LEFT = "ui-aim-left" [distance];
    /// The boom's line passes right of the middle of the landing.
    AIM_RIGHT = "ui-aim-right" [distance];
    /// A heading in degrees with its compass word.
    HEADING_COMPASS = "ui-heading-compass" [heading, compass];
    /// Compass word.
    COMPASS_NORTH = "ui-compass-north" [];
    /// Compass word.
    COMPASS_NORTH_EAST = "ui-compass-north-east" [];
    /// Compass word.
    COMPASS_EAST = "ui-compass-east" [];
    /// Compass word.
    COMPASS_SOUTH_EAST = "ui-compass-south-east" [];
    /// Compass word.
    COMPASS_SOUTH = "ui-compass-south" [];
    /// Compass word.
    COMPASS_SOUTH_WEST = "ui-compass-south-west" [];
    /// Compass word.
    COMPASS_WEST = "ui-compass-west" [];
    /// Compass word.
    COMPASS_NORTH_WEST = "ui-compass-north-west" [];
    /// Screen: button that shows what to do in an emergency.
    EMERGENCY_BUTTON = "ui-emergency-button" [];
    /// Screen: state of a document that was asked for and is not there yet.
    BEING_MADE = "ui-being-made" [];
    /// Screen: state of a document that is there.
    MADE = "ui-made" [];
    /// Screen: a document could not be made.
    NOT_MADE = "ui-not-made" [];
    /// Screen: a drawing that is wider than the screen goes on to the side.
    GOES_ON_ASIDE = "ui-goes-on-aside" [];
    /// Screen: shows the left part of a wide drawing.
    TO_THE_LEFT = "ui-to-the-left" [];
    /// Screen: shows the right part of a wide drawing.
    TO_THE_RIGHT = "ui-to-the-right" [];

    // Drawings of a machine.

    /// Side view with dimensions.
    MACHINE_SIDE = "ui-machine-side" [];
    /// Front view with dimensions.
    MACHINE_FRONT = "ui-machine-front" [];
    /// Wheelbase.
    MACHINE_DIM_WHEELBASE = "ui-machine-dim-wheelbase" [];
    /// Track, front axle.
    MACHINE_DIM_FRONT_TRACK = "ui-machine-dim-front-track" [];
    /// Track, rear axle.
    MACHINE_DIM_REAR_TRACK = "ui-machine-dim-rear-track" [];
    /// Overall width.
    MACHINE_DIM_WIDTH = "ui-machine-dim-width" [];
    /// Length without attachment.
    MACHINE_DIM_LENGTH = "ui-machine-dim-length" [];
    /// Front of the tyres to the tip of the attachment.
    MACHINE_DIM_LENGTH_TOOL = "ui-machine-dim-length-tool" [];
    /// Ground clearance.
    MACHINE_DIM_CLEARANCE = "ui-machine-dim-clearance" [];
    /// Top of the frame.
    MACHINE_DIM_FRAME_TOP = "ui-machine-dim-frame-top" [];
    /// Top of the cab.
    MACHINE_DIM_CAB_TOP = "ui-machine-dim-cab-top" [];
    /// Radius of the front tyres, not loaded.
    MACHINE_DIM_FRONT_RADIUS = "ui-machine-dim-front-radius" [];
    /// Radius of the rear tyres, not loaded.
    MACHINE_DIM_REAR_RADIUS = "ui-machine-dim-rear-radius" [];
    /// Pin of the rear axle above the ground.
    MACHINE_DIM_PIN = "ui-machine-dim-pin" [];
    /// Boom foot pin above the ground.
    MACHINE_DIM_FOOT = "ui-machine-dim-foot" [];
    /// Boom foot pin behind the front axle.
    MACHINE_DIM_FOOT_BEHIND = "ui-machine-dim-foot-behind" [];
    /// Rear of the machine behind the rear axle.
    MACHINE_DIM_REAR = "ui-machine-dim-rear" [];
    /// Spread of the stabilizers.
    MACHINE_DIM_PADS = "ui-machine-dim-pads" [];
    /// Stabilizers ahead of the front axle.
    MACHINE_DIM_PADS_AHEAD = "ui-machine-dim-pads-ahead" [];
    /// Outriggers, rear pads to front pads.
    MACHINE_DIM_OUTRIGGERS_ALONG = "ui-machine-dim-outriggers-along" [];
    /// Spread of the front outriggers.
    MACHINE_DIM_OUTRIGGERS_FRONT = "ui-machine-dim-outriggers-front" [];
    /// Spread of the rear outriggers.
    MACHINE_DIM_OUTRIGGERS_REAR = "ui-machine-dim-outriggers-rear" [];
    /// Width of a front tyre.
    MACHINE_DIM_TYRE = "ui-machine-dim-tyre" [];
    /// Drawn with `attachment`, boom at `angle` and retracted, forks level.
    MACHINE_POSE = "ui-machine-pose" [attachment, angle];
    /// Of the cab only the height is in the file; it is drawn over the whole width.
    MACHINE_CAB_ACROSS = "ui-machine-cab-across" [];
    /// Drawing of `machine` to scale with `count` dimensions.
    MACHINE_ALT = "ui-machine-alt" [machine, count];
    /// Load chart of `machine` with `attachment`, `support`: `count` zones.
    MACHINE_CHART_ALT = "ui-machine-chart-alt" [machine, attachment, support, count];
    /// A zone of the chart with its capacity.
    MACHINE_CHART_ZONE = "ui-machine-chart-zone" [];
    /// Drawn from the machine file; the chart in the cab governs.
    MACHINE_DRAWN_FROM = "ui-machine-drawn-from" [];

    // End of drawings of a machine.

    // A site from above, and a cut through it.

    /// A site from above.
    SITE_PLAN = "ui-site-plan" [];
    /// Text alternative of a site from above.
    SITE_PLAN_ALT = "ui-site-plan-alt" [site, things, excavations, buried, zones, lines];
    /// Nothing can be drawn.
    SITE_NO_EXTENT = "ui-site-no-extent" [];
    /// No ground surface is given.
    SITE_NO_GROUND = "ui-site-no-ground" [];
    /// How far apart heights were read.
    SITE_READ_EVERY = "ui-site-read-every" [cell];
    /// Contours and their step.
    SITE_CONTOURS = "ui-site-contours" [step];
    /// Slopes between two limits.
    SITE_SLOPE_BETWEEN = "ui-site-slope-between" [low, high];
    /// Slopes above a limit.
    SITE_SLOPE_OVER = "ui-site-slope-over" [limit];
    /// Kind of thing.
    SITE_BUILDING = "ui-site-building" [];
    /// Kind of thing.
    SITE_WALL = "ui-site-wall" [];
    /// Kind of thing.
    SITE_FENCE = "ui-site-fence" [];
    /// Kind of thing.
    SITE_SCAFFOLD = "ui-site-scaffold" [];
    /// Kind of thing.
    SITE_FLOOR = "ui-site-floor" [];
    /// Kind of thing.
    SITE_BRIDGE = "ui-site-bridge" [];
    /// Kind of thing.
    SITE_TREE = "ui-site-tree" [];
    /// Kind of thing.
    SITE_MAST = "ui-site-mast" [];
    /// Kind of thing.
    SITE_PLANT = "ui-site-plant" [];
    /// Kind of thing.
    SITE_STORE = "ui-site-store" [];
    /// Kind of thing.
    SITE_FUEL = "ui-site-fuel" [];
    /// Kind of thing.
    SITE_TRUCK_BAY = "ui-site-truck-bay" [];
    /// Kind of thing.
    SITE_UNNAMED = "ui-site-unnamed" [];
    /// Opening in a wall.
    SITE_OPENING = "ui-site-opening" [];
    /// Level of a thing's top.
    SITE_TOP = "ui-site-top" [level];
    /// Height of a thing's top above the ground in its middle.
    SITE_ABOVE_GROUND = "ui-site-above-ground" [height];
    /// A height that is not known.
    SITE_HEIGHT_NOT_KNOWN = "ui-site-height-not-known" [];
    /// Excavation.
    SITE_EXCAVATION = "ui-site-excavation" [];
    /// Depth of an excavation, the most it may be.
    SITE_DEPTH = "ui-site-depth" [depth];
    /// A depth that is not known.
    SITE_DEPTH_NOT_KNOWN = "ui-site-depth-not-known" [];
    /// Set-back of an excavation by its planning line.
    SITE_SET_BACK = "ui-site-set-back" [distance];
    /// Set-back that the wheels of a stand ask of the stated soil.
    SITE_SET_BACK_FOR = "ui-site-set-back-for" [stand, distance];
    /// A face that does not stand: nothing near it.
    SITE_SET_BACK_FACE = "ui-site-set-back-face" [distance];
    /// Key: set-back by the planning line.
    SITE_SET_BACK_LINE = "ui-site-set-back-line" [];
    /// Key: set-back of wheels by equilibrium.
    SITE_SET_BACK_WHEELS = "ui-site-set-back-wheels" [];
    /// Something in the ground.
    SITE_BURIED = "ui-site-buried" [];
    /// Ground above a buried thing, the least it may be.
    SITE_COVER = "ui-site-cover" [cover];
    /// A cover that is not known.
    SITE_COVER_NOT_KNOWN = "ui-site-cover-not-known" [];
    /// A zone with a rule.
    SITE_ZONE = "ui-site-zone" [];
    /// Rule of a zone.
    SITE_ZONE_NO_GO = "ui-site-zone-no-go" [];
    /// Rule of a zone.
    SITE_ZONE_PEOPLE = "ui-site-zone-people" [];
    /// Rule of a zone, with a compass point.
    SITE_ZONE_ONE_WAY = "ui-site-zone-one-way" [direction];
    /// Rule of a zone.
    SITE_ZONE_SPEED = "ui-site-zone-speed" [speed];
    /// Rule of a zone.
    SITE_ZONE_SOFT = "ui-site-zone-soft" [];
    /// Rule of a zone.
    SITE_ZONE_SLOPE = "ui-site-zone-slope" [slope];
    /// A line that does not cross the drawing.
    SITE_LINE_OUTSIDE = "ui-site-line-outside" [line, voltage];
    /// A stand of a machine.
    SITE_STAND = "ui-site-stand" [];
    /// A stand without a heading.
    SITE_HEADING_NOT_GIVEN = "ui-site-heading-not-given" [];
    /// Level of a landing.
    SITE_LEVEL = "ui-site-level" [level];
    /// What a landing may carry.
    SITE_CARRIES = "ui-site-carries" [mass];
    /// A landing that its designer rated otherwise than by a mass.
    SITE_RATED_BY = "ui-site-rated-by" [by];
    /// Nobody stated what a landing may carry.
    SITE_CARRIES_NOT_KNOWN = "ui-site-carries-not-known" [];
    /// Names that found no room.
    SITE_NAMES_LEFT_OUT = "ui-site-names-left-out" [count];
    /// A gate, which has no place in plan.
    SITE_GATE = "ui-site-gate" [name, width, height];
    /// A gate that is open above.
    SITE_GATE_OPEN = "ui-site-gate-open" [name, width];
    /// A ground surface, its date and accuracy.
    SITE_SOURCE = "ui-site-source" [name, date, accuracy];
    /// A survey without a date.
    SITE_DATE_NOT_KNOWN = "ui-site-date-not-known" [];
    /// Extent of a site.
    SITE_EXTENT = "ui-site-extent" [width, height];
    /// Corners of a site in its frame, m.
    SITE_CORNERS = "ui-site-corners" [west, south, east, north];
    /// Frame of a site by its EPSG code.
    SITE_EPSG = "ui-site-epsg" [code];
    /// Frame of a site that has no code.
    SITE_EPSG_NONE = "ui-site-epsg-none" [];
    /// A cut through a site.
    SITE_CUT = "ui-site-cut" [];
    /// Text alternative of a cut.
    SITE_CUT_ALT = "ui-site-cut-alt" [length, low, high];
    /// A cut without anything to draw.
    SITE_CUT_EMPTY = "ui-site-cut-empty" [];
    /// Heights drawn true.
    SITE_CUT_TRUE = "ui-site-cut-true" [];
    /// Heights drawn larger.
    SITE_CUT_FACTOR = "ui-site-cut-factor" [factor];
    /// Axis of a cut.
    SITE_CUT_ALONG = "ui-site-cut-along" [];
    /// Ground of a cut with its accuracy.
    SITE_CUT_GROUND = "ui-site-cut-ground" [accuracy];
    /// Where a cut passes a thing.
    SITE_CUT_AT = "ui-site-cut-at" [from, to];

    // End of the site.

    // Routines.
    /// Heading of a routine.
    ROUTINE = "ui-routine" [];
    /// Lifts that fall within it.
    ROUTINE_LIFTS = "ui-routine-lifts" [lifts];
    /// No lift falls within it.
    ROUTINE_NO_LIFTS = "ui-routine-no-lifts" [];
    /// A lift outside it, and why.
    ROUTINE_OUTSIDE = "ui-routine-outside" [lift, reasons];

    // End of routines.

    // Where to stand, and the boom's way.

    /// In place of a stand field that was not looked at.
    FIELD_NOT_LOOKED = "ui-field-not-looked" [];
    /// Text alternative of a stand field.
    STAND_FIELD_ALT = "ui-stand-field-alt" [lift, go, condition, others];
    /// Key: an area of the field.
    FIELD_AREA = "ui-field-area" [state, area];
    /// Key: an area of the field with what refuses there.
    FIELD_AREA_BY = "ui-field-area-by" [state, reason, area];
    /// Key: checks that refuse any stand.
    FIELD_EVERYWHERE = "ui-field-everywhere" [checks];
    /// Key: the stand that the job states.
    FIELD_STAND_STATED = "ui-field-stand-stated" [east, north, heading];
    /// Key: the stand that was found.
    FIELD_STAND_FOUND = "ui-field-stand-found" [east, north, heading];
    /// Key: a stand that does not do.
    FIELD_STAND_REFUSED = "ui-field-stand-refused" [east, north, heading];
    /// Another stand: where, and what it gives.
    FIELD_OTHER = "ui-field-other" [east, north, heading, verdict];
    /// Key: the way loads come in to a landing.
    FIELD_APPROACH = "ui-field-approach" [heading, tolerance];
    /// Key: how far off the stand may be.
    FIELD_DISC = "ui-field-disc" [distance];
    /// Key: the ground is judged with the plain movement, the stand with another.
    FIELD_PLAIN = "ui-field-plain" [];
    /// Key: the grid.
    FIELD_GRID = "ui-field-grid" [step];
    /// In place of a boom movement.
    STRIP_NONE = "ui-strip-none" [];
    /// Text alternative of a boom movement.
    STRIP_ALT = "ui-strip-alt" [lift, steps];
    /// What angle indicator and extension marks read.
    STRIP_READS = "ui-strip-reads" [angle, extension];
    /// Where on the way the least is left.
    STRIP_LEAST = "ui-strip-least" [check, reserve, step];
    /// What is drawn how in a boom movement.
    STRIP_NOTE = "ui-strip-note" [];
    // The picture of a way.

    /// Heading: the way to the stand.
    WAY_IN = "ui-way-in" [];
    /// Heading: the way back from the stand.
    WAY_OUT = "ui-way-out" [];
    /// In place of a way that was not looked for.
    WAY_NOT_LOOKED = "ui-way-not-looked" [];
    /// Text alternative of a way.
    WAY_ALT = "ui-way-alt" [lift, length, reverse, changes];
    /// Nothing is carried.
    WAY_EMPTY = "ui-way-empty" [];
    /// Key: the whole way.
    WAY_SUM = "ui-way-sum" [length, time, changes];
    /// Key: where the least room is left.
    WAY_LEAST_ROOM = "ui-way-least-room" [left, of, along];
    /// Key: where the least of slope or tilt is left.
    WAY_LEAST_GROUND = "ui-way-least-ground" [left, of, along];
    /// Key: where the way begins.
    WAY_BEGINS = "ui-way-begins" [place];
    /// Key: where the way ends.
    WAY_ENDS = "ui-way-ends" [place];
    /// Key: the gear changes.
    WAY_ON_FORWARD = "ui-way-on-forward" [along];
    /// Key: the gear changes.
    WAY_ON_REVERSE = "ui-way-on-reverse" [along];
    /// Key: the steering mode changes.
    WAY_ON_STEERING = "ui-way-on-steering" [along, steering];
    /// Steering mode.
    WAY_STEER_TWO = "ui-way-steer-two" [];
    /// Steering mode.
    WAY_STEER_FOUR = "ui-way-steer-four" [];
    /// Steering mode.
    WAY_STEER_CRAB = "ui-way-steer-crab" [];
    /// Key: driven forward.
    WAY_FORWARD = "ui-way-forward" [length];
    /// Key: driven in reverse.
    WAY_REVERSE = "ui-way-reverse" [length];
    /// Key: the machine.
    WAY_MACHINE = "ui-way-machine" [];
    /// Key: ground passed over.
    WAY_SWEPT = "ui-way-swept" [];
    /// Key: slope along.
    WAY_ALONG = "ui-way-along" [];
    /// Key: slope across.
    WAY_ACROSS = "ui-way-across" [];
    /// Where a load that is picked up at the landing is taken.
    WAY_LOAD_GOES = "ui-way-load-goes" [];
    /// Key: steep ground.
    WAY_STEEP = "ui-way-steep" [grade];
    /// In the profile.
    WAY_LOAD_UPHILL = "ui-way-load-uphill" [];
    /// In the profile.
    WAY_LOAD_DOWNHILL = "ui-way-load-downhill" [];
    /// In the profile.
    WAY_BOOM_UPHILL = "ui-way-boom-uphill" [];
    /// In the profile.
    WAY_BOOM_DOWNHILL = "ui-way-boom-downhill" [];
    /// Title of a panel.
    WAY_GROUND = "ui-way-ground" [times];
    /// Title of a panel.
    WAY_SLOPES = "ui-way-slopes" [];
    /// Title of a panel.
    WAY_SPEED = "ui-way-speed" [];
    /// Below the axis.
    WAY_DRIVEN = "ui-way-driven" [unit];
    /// Key: gate.
    WAY_GATE = "ui-way-gate" [];
    /// Key: where the way ends.
    WAY_BLOCKED = "ui-way-blocked" [];

    // Stands and changes.

    /// Heading: other stands that work.
    OTHER_STANDS = "ui-other-stands" [];
    /// Heading: changes that would make a lift work.
    CHANGES = "ui-changes" [];
    /// Heading: how far off a stand may be.
    STAND_OFF = "ui-stand-off" [];
    /// How far off a stand may be.
    STAND_OFF_BY = "ui-stand-off-by" [disc, turn];
    /// Heading: east.
    EAST = "ui-east" [];
    /// Heading: north, as a coordinate.
    NORTH_COORDINATE = "ui-north-coordinate" [];
    /// Note beside other stands.
    OTHER_STANDS_NOTE = "ui-other-stands-note" [];
    /// Note beside changes.
    CHANGES_NOTE = "ui-changes-note" [];

    /// Name: whether a stand was stated or found.
    STAND_FROM = "ui-stand-from" [];
    /// Where another stand is, and how the machine heads there.
    OTHER_AT = "ui-other-at" [east, north, heading];
    /// What governs at another stand.
    OTHER_GOVERNS = "ui-other-governs" [check];
    /// The same with the least that is left of what goes with the place.
    OTHER_GOVERNS_LEFT = "ui-other-governs-left" [check, reserve];
    /// Heading: way in and out.
    WAY = "ui-way" [];

    // End of where to stand.
}
