//! Ids of what a fault in a job or machine file says. `wording` has the words.
//!
//! The code of a fault is its text's id with the first hyphen as `::`: `jobfile-unknown-key` is
//! `jobfile::unknown-key`.

evidence::messages! {
    /// The file breaks the grammar of TOML or JSON; `detail`: what the parser met, in its own words.
    SYNTAX = "jobfile-syntax" [detail];
    /// The same key stands twice in one table.
    DUPLICATE_KEY = "jobfile-duplicate-key" [];
    /// The file's bytes are not UTF-8 text.
    NOT_TEXT = "jobfile-not-text" [];
    /// The file is larger than this reader takes; `limit` in bytes.
    TOO_LARGE = "jobfile-too-large" [limit];
    /// `file` does not exist in the job folder.
    MISSING_FILE = "jobfile-missing-file" [file];
    /// `file` exists but could not be read; `reason` in the system's words.
    UNREADABLE_FILE = "jobfile-unreadable-file" [file, reason];
    /// `path` leaves the job folder or is absolute; only paths inside the folder are read.
    BAD_PATH = "jobfile-bad-path" [path];
    /// Hint: put the file into the job folder and give its path from there, with forward slashes.
    HINT_PATH = "jobfile-hint-path" [];
    /// The file does not say its format.
    FORMAT_MISSING = "jobfile-format-missing" [];
    /// `format` is not one this version reads.
    FORMAT_UNKNOWN = "jobfile-format-unknown" [format];
    /// Hint: first line must be `format = "known"`; `known` is the one this version reads.
    HINT_FORMAT = "jobfile-hint-format" [known];
    /// `key` means nothing here.
    UNKNOWN_KEY = "jobfile-unknown-key" [key];
    /// Hint: probably `nearest` was meant.
    HINT_NEAREST = "jobfile-hint-nearest" [nearest];
    /// Hint: possible here are `known` (a list).
    HINT_KNOWN = "jobfile-hint-known" [known];
    /// `key` is missing.
    MISSING_KEY = "jobfile-missing-key" [key];
    /// Hint: write, for example, `example` (a line of the file).
    HINT_EXAMPLE = "jobfile-hint-example" [example];
    /// `key` has the wrong kind of value: `expected` was wanted, `found` stands there (both are type-… texts).
    WRONG_TYPE = "jobfile-wrong-type" [key, expected, found];
    /// Kind of value: text in quotes.
    TYPE_TEXT = "jobfile-type-text" [];
    /// Kind of value: a number.
    TYPE_NUMBER = "jobfile-type-number" [];
    /// Kind of value: a whole number.
    TYPE_WHOLE = "jobfile-type-whole" [];
    /// Kind of value: true or false.
    TYPE_BOOL = "jobfile-type-bool" [];
    /// Kind of value: a list in square brackets.
    TYPE_LIST = "jobfile-type-list" [];
    /// Kind of value: a table, or braces with keys.
    TYPE_TABLE = "jobfile-type-table" [];
    /// Kind of value: a date or time without quotes.
    TYPE_DATE = "jobfile-type-date" [];
    /// Kind of value: nothing (JSON null).
    TYPE_NOTHING = "jobfile-type-nothing" [];
    /// Kind of value: a value with its unit, in quotes.
    TYPE_QUANTITY = "jobfile-type-quantity" [];
    /// Kind of value: text, or braces with keys.
    TYPE_TEXT_OR_TABLE = "jobfile-type-text-or-table" [];
    /// `key` is empty text.
    EMPTY_TEXT = "jobfile-empty-text" [key];
    /// A value in quotes is empty; `dimension` (a dimension-… text) is wanted.
    VALUE_EMPTY = "jobfile-value-empty" [dimension];
    /// `value` has no number at its start; `dimension` is wanted.
    VALUE_NO_NUMBER = "jobfile-value-no-number" [value, dimension];
    /// The digits and separators of `value` make no number.
    VALUE_BAD_NUMBER = "jobfile-value-bad-number" [value];
    /// `value` is not a finite number.
    VALUE_NOT_FINITE = "jobfile-value-not-finite" [value];
    /// `value` may be read in two ways: `first` or `second`.
    VALUE_AMBIGUOUS_SEPARATOR = "jobfile-value-ambiguous-separator" [value, first, second];
    /// `value` has no unit; `dimension` is wanted.
    VALUE_MISSING_UNIT = "jobfile-value-missing-unit" [value, dimension];
    /// `unit` is not a unit known here; `dimension` is wanted.
    VALUE_UNKNOWN_UNIT = "jobfile-value-unknown-unit" [unit, dimension];
    /// `unit` means different things to different people; `choices` say which is meant (a list).
    VALUE_AMBIGUOUS_UNIT = "jobfile-value-ambiguous-unit" [unit, choices];
    /// `value` measures `found` (a dimension-… text) where `expected` is wanted.
    VALUE_WRONG_DIMENSION = "jobfile-value-wrong-dimension" [value, found, expected];
    /// The ratio `value` may be rise to run or run to rise.
    VALUE_AMBIGUOUS_RATIO = "jobfile-value-ambiguous-ratio" [value];
    /// The slope `value` is 90° or steeper.
    VALUE_TOO_STEEP = "jobfile-value-too-steep" [value];
    /// The parts of `value` do not go from large to small.
    VALUE_BAD_PARTS = "jobfile-value-bad-parts" [value];
    /// Behind the quantity in `value` stands more text: `rest`.
    VALUE_TRAILING = "jobfile-value-trailing" [value, rest];
    /// Hint: plain numbers in a list take the unit that `unit = "m"` in the same table states.
    HINT_LIST_UNIT = "jobfile-hint-list-unit" [];
    /// Dimension: a length.
    DIMENSION_LENGTH = "jobfile-dimension-length" [];
    /// Dimension: an area.
    DIMENSION_AREA = "jobfile-dimension-area" [];
    /// Dimension: a volume.
    DIMENSION_VOLUME = "jobfile-dimension-volume" [];
    /// Dimension: a mass.
    DIMENSION_MASS = "jobfile-dimension-mass" [];
    /// Dimension: an angle.
    DIMENSION_ANGLE = "jobfile-dimension-angle" [];
    /// Dimension: a slope.
    DIMENSION_SLOPE = "jobfile-dimension-slope" [];
    /// Dimension: a share.
    DIMENSION_RATIO = "jobfile-dimension-ratio" [];
    /// Dimension: a plain number.
    DIMENSION_NUMBER = "jobfile-dimension-number" [];
    /// Dimension: a force.
    DIMENSION_FORCE = "jobfile-dimension-force" [];
    /// Dimension: a moment.
    DIMENSION_MOMENT = "jobfile-dimension-moment" [];
    /// Dimension: a pressure.
    DIMENSION_PRESSURE = "jobfile-dimension-pressure" [];
    /// Dimension: a speed.
    DIMENSION_SPEED = "jobfile-dimension-speed" [];
    /// Dimension: a voltage.
    DIMENSION_VOLTAGE = "jobfile-dimension-voltage" [];
    /// Dimension: a density.
    DIMENSION_DENSITY = "jobfile-dimension-density" [];
    /// Dimension: a stiffness.
    DIMENSION_STIFFNESS = "jobfile-dimension-stiffness" [];
    /// Name of the dimension, with its article.
    DIMENSION_UNIT_WEIGHT = "jobfile-dimension-unit-weight" [];
    /// Name of the dimension, with its article.
    DIMENSION_SECOND_MOMENT = "jobfile-dimension-second-moment" [];
    /// `key` is negative: `value`.
    NEGATIVE = "jobfile-negative" [key, value];
    /// `key` must be greater than zero and is `value`.
    NOT_POSITIVE = "jobfile-not-positive" [key, value];
    /// `key` is `value`; possible is from `low` to `high`.
    OUT_OF_RANGE = "jobfile-out-of-range" [key, value, low, high];
    /// `key` is `value`, more than the `high` that anything of the kind has.
    TOO_MUCH = "jobfile-too-much" [key, value, high];
    /// Hint: check the number and its unit.
    HINT_UNIT_SLIP = "jobfile-hint-unit-slip" [];
    /// `key` of the policy is below the `usual` value, and nobody answers for it with `by`.
    POLICY_BELOW_USUAL = "jobfile-policy-below-usual" [key, usual];
    /// `value` is none of the words possible for `key`.
    BAD_CHOICE = "jobfile-bad-choice" [key, value];
    /// `key` needs `expected` entries and has `found`.
    LIST_LENGTH = "jobfile-list-length" [key, expected, found];
    /// `key` needs at least `least` entries and has `found`.
    LIST_TOO_SHORT = "jobfile-list-too-short" [key, least, found];
    /// `key` is still a placeholder of the starter job (a warning in jobs and machine files).
    PLACEHOLDER = "jobfile-placeholder" [key];
    /// Hint: fill it in; until then it counts as not given.
    HINT_FILL_IN = "jobfile-hint-fill-in" [];
    /// Hint: fill it in; until then nothing that persons state in this job counts.
    HINT_FILL_IN_JOB = "jobfile-hint-fill-in-job" [];
    /// Hint: fill it in; until then the machine counts as not inspected.
    HINT_FILL_IN_MACHINE = "jobfile-hint-fill-in-machine" [];
    /// Warning: the ground file `file` is left out, because it is still the starter's made-up one.
    GROUND_LEFT_OUT = "jobfile-ground-left-out" [file];
    /// `key`: nothing in the table or any table around it says where the value comes from.
    NO_SOURCE = "jobfile-no-source" [key];
    /// Hint: put `source = "…"` into this table or one around it; possible are `known`.
    HINT_SOURCE = "jobfile-hint-source" [known];
    /// The id `id` was given before, in line `line`.
    DUPLICATE_ID = "jobfile-duplicate-id" [id, line];
    /// There is no `kind` (a kind-… text) with the id `id` in this job.
    UNKNOWN_REFERENCE = "jobfile-unknown-reference" [kind, id];
    /// Kind: machine.
    KIND_MACHINE = "jobfile-kind-machine" [];
    /// Kind: load.
    KIND_LOAD = "jobfile-kind-load" [];
    /// Kind: landing.
    KIND_LANDING = "jobfile-kind-landing" [];
    /// Kind: attachment.
    KIND_ATTACHMENT = "jobfile-kind-attachment" [];
    /// Only one of the keys `first` and `second` may stand here.
    EITHER_OR = "jobfile-either-or" [first, second];
    /// One of the keys `first` and `second` must stand here.
    ONE_OF = "jobfile-one-of" [first, second];

    /// The pin height `pin` is not below half the rear track `half_track`: the axle could not carry the frame upright.
    PIN_TOO_HIGH = "jobfile-pin-too-high" [pin, half_track];
    /// With the boom down and retracted the machine's own centre of gravity lies `centre` ahead of the front
    /// axle, which is not between the axles (wheelbase `wheelbase`): it would tip standing.
    CENTRE_OUTSIDE_WHEELBASE = "jobfile-centre-outside-wheelbase" [centre, wheelbase];
    /// Hint: check the bodies' masses and centres: ahead of the front axle is positive, behind is negative.
    HINT_CENTRES = "jobfile-hint-centres" [];
    /// Boom as carried, empty with `attachment` on, its centre lies `by` ahead of the front axle: the rear axle lifts.
    TIPS_FORWARD_EMPTY = "jobfile-tips-forward-empty" [attachment, by];
    /// The same `by` behind the rear axle: the front axle lifts.
    TIPS_BACK_EMPTY = "jobfile-tips-back-empty" [attachment, by];
    /// The centre of gravity lies `left` to the left, outside half the track `half_track`.
    CENTRE_OUTSIDE_TRACK = "jobfile-centre-outside-track" [left, half_track];
    /// The first of the two angles, `low`, is not below the second, `high`.
    ANGLE_ORDER = "jobfile-angle-order" [low, high];
    /// The boom with its whole extension is `length`, more than the `high` that any such boom has.
    BOOM_TOO_LONG = "jobfile-boom-too-long" [length, high];
    /// No section takes the whole extension (share 1), or one before takes more than one after it.
    SECTION_SHARES = "jobfile-section-shares" [];
    /// No body of that kind: `kind` is the word used in the file.
    NO_BODY = "jobfile-no-body" [kind];
    /// The low value `low` of `key` is not below the high one, `high`.
    ORDER = "jobfile-order" [key, low, high];
    /// The machine has no attachment at all.
    NO_ATTACHMENT = "jobfile-no-attachment" [];
    /// The blade is thicker now (`now`) than new (`new`).
    BLADE_GREW = "jobfile-blade-grew" [now, new];
    /// A chart for a hook cannot have this datum, or one for forks that: `datum` is the word in the file.
    DATUM_MISMATCH = "jobfile-datum-mismatch" [datum, attachment];
    /// The overall width is less than that over the tyres.
    NARROWER_THAN_TYRES = "jobfile-narrower-than-tyres" [width, tyres];
    /// The machine's foremost point lies behind the front of its front tyres.
    SHORTER_THAN_TYRES = "jobfile-shorter-than-tyres" [front, tyres];
    /// Radius is half the diameter; the front is that of everything but the attachment.
    HINT_RADIUS = "jobfile-hint-radius" [];
    /// Measure the width over the tyres; track is middle to middle.
    HINT_OVER_TYRES = "jobfile-hint-over-tyres" [];
    /// A body of the upper part, and no upper part that turns.
    UPPER_WITHOUT_SLEW = "jobfile-upper-without-slew" [];
    /// A chart for a support state that the machine does not have.
    CHART_NO_SUCH_SUPPORT = "jobfile-chart-no-such-support" [support];
    /// A second chart for the same attachment, support state, load centre, tyres and level condition.
    CHART_TWICE = "jobfile-chart-twice" [attachment, support];
    /// The outline of zone `zone` has no area or crosses itself.
    CHART_BAD_OUTLINE = "jobfile-chart-bad-outline" [zone];
    /// Zones `zone` and `other` have different capacities and share `area`, around (`reach`, `height`).
    CHART_OVERLAP = "jobfile-chart-overlap" [zone, other, area, reach, height];
    /// Zones leave a hole of `area` around (`reach`, `height`) that is not declared "not permitted".
    CHART_HOLE = "jobfile-chart-hole" [area, reach, height];
    /// Hint: outline the hole in `not_permitted`, or give it to a zone.
    HINT_NOT_PERMITTED = "jobfile-hint-not-permitted" [];
    /// The zones do not join: they make `count` pieces.
    CHART_PIECES = "jobfile-chart-pieces" [count];
    /// The boom gets nowhere into zone `zone`: its datum, unit or outline cannot be right.
    CHART_OUT_OF_REACH = "jobfile-chart-out-of-reach" [zone];
    /// Hint: of the area that two zones share, take it away from one; or give both one capacity.
    HINT_OVERLAP = "jobfile-hint-overlap" [];
    /// Zone `zone` says `capacity`, more than the `most` of the whole machine or of its attachment.
    CHART_ABOVE_PLATE = "jobfile-chart-above-plate" [zone, capacity, most];
    /// Hint: compare chart, plate and attachment; the least of them governs.
    HINT_ABOVE_PLATE = "jobfile-hint-above-plate" [];
    /// Warning: the machine has no chart at all, so no lift of it can be approved.
    NO_CHARTS = "jobfile-no-charts" [machine];

    /// The spans or the course of a line are missing: not even its course is known.
    LINE_NOWHERE = "jobfile-line-nowhere" [line];
    /// The two ends of a span are the same point in plan.
    SPAN_NO_LENGTH = "jobfile-span-no-length" [];
    /// The sag `sag` is more than half the span's length in plan, `length`: a slip of the pen.
    SAG_TOO_LARGE = "jobfile-sag-too-large" [sag, length];
    /// The load's centre lies outside its size along `axis` (an axis-… text): `centre`, possible `low` to `high`.
    CENTRE_OUTSIDE_LOAD = "jobfile-centre-outside-load" [axis, centre, low, high];
    /// Axis: ahead.
    AXIS_AHEAD = "jobfile-axis-ahead" [];
    /// Axis: left.
    AXIS_LEFT = "jobfile-axis-left" [];
    /// Axis: up.
    AXIS_UP = "jobfile-axis-up" [];
    /// The source `certainty` has no usual uncertainty of a mass: it must be stated.
    NO_UNCERTAINTY = "jobfile-no-uncertainty" [certainty];
    /// A load from a ticket must say its ticket's number and what the ticket leaves out.
    TICKET_INCOMPLETE = "jobfile-ticket-incomplete" [key];
    /// The stand at (`east`, `north`) lies `distance` from the lift's landing `landing` at (`landing_east`,
    /// `landing_north`), further than any machine reaches.
    LANDING_FAR = "jobfile-landing-far" [east, north, distance, landing, landing_east, landing_north];
    /// The line `line` lies `distance` from every stand: no matter of this job, or in other coordinates.
    LINE_FAR = "jobfile-line-far" [line, distance];
    /// Hint: stands, landings, lines and ground must be in one system of coordinates.
    HINT_ONE_SYSTEM = "jobfile-hint-one-system" [];
    /// Hint: write `first` or `second`, whichever is meant.
    HINT_EITHER = "jobfile-hint-either" [first, second];
    /// The stop gust is zero: work would never start.
    STOP_GUST_ZERO = "jobfile-stop-gust-zero" [];
    /// The ground strength belongs only to the matter ground-strength.
    STRENGTH_MISPLACED = "jobfile-strength-misplaced" [];
    /// Warning: the shape factor for wind of load `load` was not given and is taken as `factor` (sheets, from memory).
    WIND_FACTOR_ASSUMED = "jobfile-wind-factor-assumed" [load, factor];
    /// Warning: no ground file: no stand has a known slope.
    NO_GROUND = "jobfile-no-ground" [];
    /// `date` is not a date as year-month-day.
    BAD_DATE = "jobfile-bad-date" [date];

    // Attachments and identity.
    /// The next examination `next` would be before the one that was made, `date`.
    EXAMINED_ORDER = "jobfile-examined-order" [date, next];
    // Loads and gates.
    /// No material has the id `material`.
    UNKNOWN_MATERIAL = "jobfile-unknown-material" [material];
    /// Hint: the ids of all materials stand in docs/job-files.md.
    HINT_MATERIALS = "jobfile-hint-materials" [];
    /// A pack of `material` (a material's name) has another density than the material: `packing` is missing.
    NO_PACKING = "jobfile-no-packing" [material];
    /// Warning: `material` comes damp; nobody stated `moisture`, so `share` more is reckoned with at most.
    MOISTURE_ASSUMED = "jobfile-moisture-assumed" [material, share];
    /// The pallet as stacked is larger along `axis` (an axis-… text) than stated: `stacked`, `stated`.
    PALLET_LARGER = "jobfile-pallet-larger" [axis, stacked, stated];
    /// The liquid stands higher (`fill`) than its tank is (`height`).
    FILL_TOO_HIGH = "jobfile-fill-too-high" [fill, height];
    /// The liquid alone is heavier (`liquid`) than the whole load (`mass`).
    LIQUID_HEAVIER = "jobfile-liquid-heavier" [liquid, mass];
    /// The outline crosses itself, or has fewer than three corners.
    OUTLINE_CROSSES = "jobfile-outline-crosses" [];
    /// Give the corners in order.
    HINT_CORNERS_IN_ORDER = "jobfile-hint-corners-in-order" [];
    /// `value` is no code of a coordinate system.
    BAD_EPSG = "jobfile-bad-epsg" [value];
    /// No stand lies on or near the ground of the stored site.
    SITE_FAR = "jobfile-site-far" [west, east, south, north];
    /// `time` is no part of a day.
    BAD_TIME = "jobfile-bad-time" [time];
    /// A gate.
    KIND_GATE = "jobfile-kind-gate" [];
    // Charts in every form.
    /// Two charts for the same, of which each holds farther out of level than the other in one direction.
    CHART_LEVELS_CROSS = "jobfile-chart-levels-cross" [attachment, support];
    /// Hint: charts are told apart by attachment, support, load centre, tyres, level condition.
    HINT_TELL_APART = "jobfile-hint-tell-apart" [];
    /// Height is measured to the load centre, and the chart does not state how high that is.
    CHART_HEIGHT_UNKNOWN = "jobfile-chart-height-unknown" [];
    /// Reach is measured from stabilizer pads that the machine does not have.
    CHART_NO_PADS = "jobfile-chart-no-pads" [];
    /// A chart measured from a turntable that the machine does not have.
    CHART_NO_TURNTABLE = "jobfile-chart-no-turntable" [];
    /// The load line `zone` has more capacity than `lower` and leaves it by `area` around (`reach`, `height`).
    CHART_LINE_LEAVES = "jobfile-chart-line-leaves" [zone, lower, area, reach, height];
    /// Hint: lines of higher capacity lie inside the lower ones; compare capacities and corners.
    HINT_LINE_LEAVES = "jobfile-hint-line-leaves" [];
    /// What lies between the line `zone` and those inside it cannot be cut into plain outlines.
    CHART_UNCUT = "jobfile-chart-uncut" [zone];
    /// The lines of a table under `key` neither rise nor fall, or two are the same.
    TABLE_ORDER = "jobfile-table-order" [key];
    /// No cell of a table has all four entries: nothing is permitted.
    TABLE_EMPTY = "jobfile-table-empty" [];
    /// The table goes to `extension`, and the boom to `most`.
    TABLE_BEYOND_BOOM = "jobfile-table-beyond-boom" [extension, most];
    /// `key` has `found` entries, more than the `most` that are read.
    LIST_TOO_LONG = "jobfile-list-too-long" [key, most, found];
    /// The load centre `centre` of a derating row does not lie beyond `before`, the rated one or that of the row before.
    DERATING_ORDER = "jobfile-derating-order" [centre, before];
    /// The derating row for `centre` gives more than the row before.
    DERATING_RISES = "jobfile-derating-rises" [centre];
    /// Warning: the chart is for the tyres `tyres`, the machine stands on `fitted`: never chosen.
    CHART_OTHER_TYRES = "jobfile-chart-other-tyres" [tyres, fitted];
    /// Warning: the chart is for the tyres `tyres`, and the file does not say which the machine stands on.
    CHART_TYRES_UNSAID = "jobfile-chart-tyres-unsaid" [tyres];
    /// Zone `zone` says `capacity`; by the masses of this file `tipping` at (`reach`, `height`) tips the machine.
    CHART_TIPS = "jobfile-chart-tips" [zone, capacity, tipping, reach, height];
    /// Hint: the figure in pounds would fit: check the unit.
    HINT_TIPS_POUNDS = "jobfile-hint-tips-pounds" [];
    /// Hint: compare the capacity, the outline and datum, and the machine's masses and centres.
    HINT_TIPS = "jobfile-hint-tips" [];
    /// Warning: zone `zone` read as `capacity` does not go with the others; the same figure in pounds, `other`, would.
    CHART_PERHAPS_POUNDS = "jobfile-chart-perhaps-pounds" [zone, capacity, other];
    /// Warning: zone `zone` read as `capacity` does not go with the others; the same figure in kilograms, `other`, would.
    CHART_PERHAPS_KILOGRAMS = "jobfile-chart-perhaps-kilograms" [zone, capacity, other];
    /// Warning: capacity rises with reach: zone `zone` with `capacity` lies behind `other` with `less`, from (`reach`, `height`).
    CHART_RISES_REACH = "jobfile-chart-rises-reach" [zone, capacity, other, less, reach, height];
    /// Warning: capacity rises with height: zone `zone` with `capacity` lies above `other` with `less`, from (`reach`, `height`).
    CHART_RISES_HEIGHT = "jobfile-chart-rises-height" [zone, capacity, other, less, reach, height];
    /// Hint: compare with the chart; if it is right, say so with `rises = "who confirmed it, against what"`.
    HINT_RISES = "jobfile-hint-rises" [];

    // Charts that forbid, and charts that contradict each other.
    /// An outline declared not permitted has no area or crosses itself.
    CHART_BAD_AREA = "jobfile-chart-bad-area" [];
    /// Zone `zone` of the chart for rougher ground has `capacity`; that for more level ground has `less` at (`reach`, `height`).
    CHART_LEVEL_MORE = "jobfile-chart-level-more" [zone, capacity, less, reach, height];
    /// Zone `zone` of the chart for rougher ground has `capacity`; that for more level ground shows nothing at (`reach`, `height`).
    CHART_LEVEL_NOWHERE = "jobfile-chart-level-nowhere" [zone, capacity, reach, height];
    /// Hint: a machine carries no more out of level; compare tolerances, capacities, outlines.
    HINT_LEVEL_MORE = "jobfile-hint-level-more" [];
    // Values below the usual ones.
    /// Less than the usual, and nobody answers for it.
    BELOW_USUAL = "jobfile-below-usual" [key, usual];
    // Tyres, axle lock, and a machine as it is today.
    /// A body's mass at least, `least`, is more than its mass, `mass`.
    LEAST_ABOVE_MASS = "jobfile-least-above-mass" [least, mass];
    /// Hint: `mass` is the most that it may weigh, `least` the least.
    HINT_LEAST = "jobfile-hint-least" [];
    /// The rim is `rim` across, the whole tyre only `diameter`.
    RIM_TOO_LARGE = "jobfile-rim-too-large" [rim, diameter];
    /// Hint: the rim's diameter stands last in the tyre's size, mostly in inches.
    HINT_RIM = "jobfile-hint-rim" [];
    /// A stiffness is stated, and the pressure that it holds for is not known.
    STIFFNESS_OF_NO_PRESSURE = "jobfile-stiffness-of-no-pressure" [stiffness];
    /// Hint: state the pressure, or leave the stiffness out.
    HINT_STIFFNESS = "jobfile-hint-stiffness" [];
    /// `lock_angle` where the axle has another lock: `lock` is its word in the file.
    LOCK_ANGLE_MISPLACED = "jobfile-lock-angle-misplaced" [lock];
    /// Hint: lock_angle goes with `lock = "above-boom-angle"`.
    HINT_LOCK_ANGLE = "jobfile-hint-lock-angle" [];
    /// The axle locks above `angle`, and the boom goes from `low` to `high`.
    LOCK_ANGLE_OUTSIDE_BOOM = "jobfile-lock-angle-outside-boom" [angle, low, high];
    /// Somebody tried the lock of a rear axle that nothing locks.
    AXLE_NEVER_LOCKS = "jobfile-axle-never-locks" [machine];
    /// Hint: leave the key out, or correct `lock` in the machine file.
    HINT_AXLE_NEVER_LOCKS = "jobfile-hint-axle-never-locks" [];
    /// `word` stands twice in the list `key`.
    LISTED_TWICE = "jobfile-listed-twice" [key, word];
    /// Hint: was another one meant?
    HINT_LISTED_TWICE = "jobfile-hint-listed-twice" [];
    /// The tyre `wheel` (its word in the file) has no pressure at all.
    NO_AIR = "jobfile-no-air" [wheel];
    /// The description of `machine` has no body called `name`.
    NO_BODY_OF_THAT_NAME = "jobfile-no-body-of-that-name" [name, machine];
    /// `count` bodies of the description are called `name`.
    BODIES_OF_ONE_NAME = "jobfile-bodies-of-one-name" [name, count];
    /// Hint: give each a name of its own in the machine file.
    HINT_BODIES_OF_ONE_NAME = "jobfile-hint-bodies-of-one-name" [];
    /// What is taken off leaves no body of that kind: `kind` is the word used in the file.
    NO_BODY_LEFT = "jobfile-no-body-left" [kind];
    /// Hint: list what is there in its place under `[[machine.added]]`.
    HINT_NO_BODY_LEFT = "jobfile-hint-no-body-left" [];
    /// A lift is levelled, and `machine` has no frame levelling.
    NO_LEVELLING = "jobfile-no-levelling" [machine];
    /// Hint: leave levelled out, or describe `[levelling]` in the machine file.
    HINT_NO_LEVELLING = "jobfile-hint-no-levelling" [];
    /// Levelling on pads: `support` says which.
    LEVELLED_ON_PADS = "jobfile-levelled-on-pads" [support];
    /// Hint: level the machine with its pads, and leave levelled out.
    HINT_LEVELLED_ON_PADS = "jobfile-hint-levelled-on-pads" [];
    /// The operator of `machine` cannot lock its rear axle: `lock` is the word in its file.
    AXLE_NOT_OPERATORS = "jobfile-axle-not-operators" [machine, lock];
    /// Hint: leave axle_locked out, or correct `lock` in the machine file.
    HINT_AXLE_NOT_OPERATORS = "jobfile-hint-axle-not-operators" [];
    /// `front_tyres` without stabilizers.
    FRONT_TYRES_MISPLACED = "jobfile-front-tyres-misplaced" [];
    /// Hint: front_tyres goes with `support = "stabilizers"`.
    HINT_FRONT_TYRES = "jobfile-hint-front-tyres" [];
    /// A `[[soil]]` without layers.
    SOIL_WITHOUT_LAYER = "jobfile-soil-without-layer" [];
    /// Cohesion without an angle of friction.
    COHESION_ALONE = "jobfile-cohesion-alone" [];
    /// Of two keys that belong together only one is there: `other` is missing.
    RATING_BOTH = "jobfile-rating-both" [other];
    /// A rating without a load.
    RATING_OF_NOTHING = "jobfile-rating-of-nothing" [];
    /// Something ends beyond the landing it lies on.
    LYING_BESIDE = "jobfile-lying-beside" [end, size];
    /// Where something lies, stated by half.
    LYING_BY_HALF = "jobfile-lying-by-half" [missing];
    /// `key` means nothing without `other`.
    COUNTS_BESIDE = "jobfile-counts-beside" [key, other];
    /// A layer goes deeper than a plate load test tells of: `depth` below its top.
    PLATE_TOO_SMALL = "jobfile-plate-too-small" [depth];
    /// A soil that the table of `code` does not have.
    SOIL_OF_ANOTHER_CODE = "jobfile-soil-of-another-code" [code];
    /// A wall of what is no pipe and no culvert.
    WALL_OF_WHAT = "jobfile-wall-of-what" [];
    /// Mats on each other: none, or too many.
    MATS_COUNT = "jobfile-mats-count" [most];
    /// A mat without a material.
    MAT_OF_WHAT = "jobfile-mat-of-what" [];
    /// Factors below the usual without a name.
    GROUND_FACTORS_UNANSWERED = "jobfile-ground-factors-unanswered" [];
    /// Kind of thing: mat.
    KIND_MAT = "jobfile-kind-mat" [];
    /// Kind of thing: place where loads wait.
    KIND_PICKUP = "jobfile-kind-pickup" [];
    /// Kind of thing: lift.
    KIND_LIFT = "jobfile-kind-lift" [];
    /// A lift that waits for itself.
    AFTER_ITSELF = "jobfile-after-itself" [id];
    /// The posts of a gate are farther apart or nearer than its width.
    POSTS_APART = "jobfile-posts-apart" [apart, width];
    /// A turning radius that no machine with that wheelbase runs on.
    TURNS_TOO_TIGHT = "jobfile-turns-too-tight" [key, radius];
    /// Hint: the radius is that over the outer front tyre.
    HINT_OVER_THE_TYRES = "jobfile-hint-over-the-tyres" [];
    /// A quote in a list that nothing closes.
    LIST_QUOTE = "jobfile-list-quote" [];
    /// Hint: close it, or double a quote that belongs to the text.
    HINT_LIST_QUOTE = "jobfile-hint-list-quote" [];
    /// A list without rows.
    LIST_EMPTY = "jobfile-list-empty" [];
    /// A row with more or fewer cells than the header.
    LIST_ROW_CELLS = "jobfile-list-row-cells" [found, expected];
    /// Hint: decimal commas need another separator or quotes.
    HINT_LIST_ROW_CELLS = "jobfile-hint-list-row-cells" [];
    /// A column that means nothing.
    LIST_COLUMN_UNKNOWN = "jobfile-list-column-unknown" [column];
    /// A column that is there twice.
    LIST_COLUMN_TWICE = "jobfile-list-column-twice" [column];
    /// A row without a value that it needs.
    LIST_CELL_MISSING = "jobfile-list-cell-missing" [column];
    /// Hint: fill the cell, or state the value for all rows in the job file.
    HINT_LIST_CELL_MISSING = "jobfile-hint-list-cell-missing" [];
}
