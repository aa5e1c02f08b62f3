//! Ids of what each key of job and machine files is, and where its value is found. `wording` has the words.

evidence::messages! {
    /// A machine for Counterpoise.
    SCHEMA_MACHINE_TITLE = "schema-machine-title" [];
    /// A job for Counterpoise.
    SCHEMA_JOB_TITLE = "schema-job-title" [];
    /// Found: ….
    SCHEMA_FOUND = "schema-found" [place];
    /// More than 0.
    SCHEMA_MORE_THAN_ZERO = "schema-more-than-zero" [];
    /// 0 or more.
    SCHEMA_NOT_NEGATIVE = "schema-not-negative" [];
    /// More than 0, at most ….
    SCHEMA_AT_MOST = "schema-at-most" [high];
    /// From 0 to ….
    SCHEMA_ZERO_TO = "schema-zero-to" [high];
    /// From … to ….
    SCHEMA_WITHIN = "schema-within" [low, high];
    /// At least … points.
    SCHEMA_POINTS = "schema-points" [least];
    /// A value with its unit, in quotes: ….
    SCHEMA_QUANTITY = "schema-quantity" [dimension];
    /// Still to be filled in: reads, and is never a go.
    SCHEMA_FILL_IN = "schema-fill-in" [];
    /// Without it nobody can match the file with the machine on site.
    WITHOUT_SERIAL = "without-serial" [];
    /// Without it the wind check is a condition.
    WITHOUT_WIND = "without-wind" [];
    /// Without it the wear of the blade is not known: cannot tell.
    WITHOUT_WEAR = "without-wear" [];
    /// Not looked at for cracks: cannot tell.
    WITHOUT_CRACK = "without-crack" [];
    /// Without it a gate cannot be told.
    WITHOUT_WIDTH = "without-width" [];
    /// How far the shank is off straight.
    FIELD_BLADE_SHANK_BENT = "field-blade-shank-bent" [];
    /// Length of the shank.
    FIELD_BLADE_SHANK_LENGTH = "field-blade-shank-length" [];
    /// Width of the tool itself.
    FIELD_TOOL_WIDTH = "field-tool-width" [];
    /// Density of loose material.
    FIELD_LIFT_BULK_DENSITY = "field-lift-bulk-density" [];
    /// Loose material by its id.
    FIELD_LIFT_BULK_MATERIAL = "field-lift-bulk-material" [];
    /// Without it nobody has looked at the blade: a condition.
    WITHOUT_MODIFIED = "without-modified" [];
    /// Without it a tall load cannot be compared with the test load.
    WITHOUT_CENTRE_HEIGHT = "without-centre-height" [];
    /// Without a chart there is no lift with this attachment.
    WITHOUT_CHART = "without-chart" [];
    /// Without it the pressure on the ground cannot be told.
    WITHOUT_PRESSURE = "without-pressure" [];
    /// Not known: taken as free, the worse case.
    WITHOUT_AXLE = "without-axle" [];
    /// At least one attachment must be there: forks, or another.
    WITHOUT_ATTACHMENT = "without-attachment" [];
    /// Not measured or not looked at: a condition.
    WITHOUT_BLADE = "without-blade" [];
    /// Without it what the clamp holds is a condition.
    WITHOUT_GRIP = "without-grip" [];
    /// Without it a quick coupling is taken.
    WITHOUT_COUPLING = "without-coupling" [];
    /// Where the values come from: plate, manual, measured, estimated.
    FIELD_SOURCE = "field-source" [];
    /// Kind and version of this file.
    FIELD_FORMAT = "field-format" [];
    /// Short name of the machine, of your own choice.
    FIELD_MACHINE_ID = "field-machine-id" [];
    /// Maker and type, as on the plate.
    FIELD_MACHINE_NAME = "field-machine-name" [];
    /// True for machines that do not exist.
    FIELD_MACHINE_INVENTED = "field-machine-invented" [];
    /// Serial number, as stamped.
    FIELD_MACHINE_SERIAL = "field-machine-serial" [];
    /// Size of the tyres, as marked on them.
    FIELD_MACHINE_TYRES = "field-machine-tyres" [];
    /// Counterweight, as marked on it.
    FIELD_MACHINE_COUNTERWEIGHT = "field-machine-counterweight" [];
    /// What is fitted besides and changes mass or charts.
    FIELD_MACHINE_OPTIONS = "field-machine-options" [];
    /// Number and revision of the charts the file was written from.
    FIELD_MACHINE_CHART_NUMBER = "field-machine-chart-number" [];
    /// Greatest rated capacity of the machine.
    FIELD_MACHINE_GREATEST_CAPACITY = "field-machine-greatest-capacity" [];
    /// What weighs, other than the boom: frame, front axle, rear axle.
    FIELD_MACHINE_BODY = "field-machine-body" [];
    /// What carries it: frame, front axle, rear axle or turning upper part.
    FIELD_BODY_KIND = "field-body-kind" [];
    /// What it is, in your own words.
    FIELD_BODY_NAME = "field-body-name" [];
    /// Mass of this part.
    FIELD_BODY_MASS = "field-body-mass" [];
    /// Centre of gravity: ahead of the front axle, left, up.
    FIELD_BODY_CENTRE = "field-body-centre" [];
    /// Front axle.
    FIELD_FRONT_AXLE = "field-front-axle" [];
    /// Track: middle to middle of the front tyres.
    FIELD_FRONT_TRACK = "field-front-track" [];
    /// Tyres of the front axle.
    FIELD_FRONT_TYRE = "field-front-tyre" [];
    /// Radius of the tyre, not loaded.
    FIELD_TYRE_RADIUS = "field-tyre-radius" [];
    /// Width of the tyre.
    FIELD_TYRE_WIDTH = "field-tyre-width" [];
    /// Tyre pressure, or “solid” or “unknown”.
    FIELD_TYRE_PRESSURE = "field-tyre-pressure" [];
    /// Rear axle.
    FIELD_REAR_AXLE = "field-rear-axle" [];
    /// Wheelbase: middle of front axle to middle of rear axle.
    FIELD_WHEELBASE = "field-wheelbase" [];
    /// Track: middle to middle of the rear tyres.
    FIELD_REAR_TRACK = "field-rear-track" [];
    /// Tyres of the rear axle.
    FIELD_REAR_TYRE = "field-rear-tyre" [];
    /// Height above ground of the pin the rear axle oscillates about.
    FIELD_PIN_HEIGHT = "field-pin-height" [];
    /// How far the rear axle oscillates to either side.
    FIELD_OSCILLATION = "field-oscillation" [];
    /// What locks the rear axle against oscillation.
    FIELD_AXLE_LOCK = "field-axle-lock" [];
    /// Stabilizers, where fitted.
    FIELD_STABILIZERS = "field-stabilizers" [];
    /// Middle of the pads ahead of the front axle.
    FIELD_STABILIZER_AHEAD = "field-stabilizer-ahead" [];
    /// Spread: middle to middle of the pads.
    FIELD_STABILIZER_SPREAD = "field-stabilizer-spread" [];
    /// Area of one pad on the ground.
    FIELD_PAD_AREA = "field-pad-area" [];
    /// Rear axle with the pads down: free, locked or unknown.
    FIELD_STABILIZER_REAR_AXLE = "field-stabilizer-rear-axle" [];
    /// Outriggers: four pads that take it off its tyres.
    FIELD_OUTRIGGERS = "field-outriggers" [];
    /// Front pads ahead of the front axle.
    FIELD_OUTRIGGERS_FRONT = "field-outriggers-front" [];
    /// Spread: middle to middle of the front pads.
    FIELD_OUTRIGGERS_FRONT_SPREAD = "field-outriggers-front-spread" [];
    /// Rear pads ahead of the front axle, behind it as negative.
    FIELD_OUTRIGGERS_REAR = "field-outriggers-rear" [];
    /// Spread: middle to middle of the rear pads.
    FIELD_OUTRIGGERS_REAR_SPREAD = "field-outriggers-rear-spread" [];
    /// Frame levelling.
    FIELD_LEVELLING = "field-levelling" [];
    /// Pin about which the frame is levelled.
    FIELD_LEVELLING_PIN = "field-levelling-pin" [];
    /// How far the frame can be levelled.
    FIELD_LEVELLING_RANGE = "field-levelling-range" [];
    /// Error of the level indicator.
    FIELD_LEVELLING_ERROR = "field-levelling-error" [];
    /// Upper part that turns with the boom.
    FIELD_SLEW = "field-slew" [];
    /// Axis it turns about, ahead of the front axle.
    FIELD_SLEW_AXIS = "field-slew-axis" [];
    /// How far it turns to either side.
    FIELD_SLEW_RANGE = "field-slew-range" [];
    /// Telescopic boom.
    FIELD_BOOM = "field-boom" [];
    /// Boom foot pin: ahead of the front axle, up.
    FIELD_BOOM_FOOT = "field-boom-foot" [];
    /// Lowest and highest boom angle.
    FIELD_BOOM_ANGLE = "field-boom-angle" [];
    /// Longest extension of the boom.
    FIELD_BOOM_EXTENSION = "field-boom-extension" [];
    /// Head pin along the boom from the foot pin, retracted.
    FIELD_HEAD_ALONG = "field-head-along" [];
    /// Head pin below the line of the boom.
    FIELD_HEAD_BELOW = "field-head-below" [];
    /// Mass of the carriage without attachment.
    FIELD_CARRIAGE_MASS = "field-carriage-mass" [];
    /// Centre of the carriage: ahead of the head pin, up.
    FIELD_CARRIAGE_CENTRE = "field-carriage-centre" [];
    /// Depth of the boom seen from the side.
    FIELD_BOOM_DEPTH = "field-boom-depth" [];
    /// How far the tip hangs lower or further under load.
    FIELD_BOOM_FLEX = "field-boom-flex" [];
    /// Boom sections, from the base outwards.
    FIELD_BOOM_SECTION = "field-boom-section" [];
    /// Mass of this boom section.
    FIELD_SECTION_MASS = "field-section-mass" [];
    /// Its centre along the boom from the foot pin, retracted.
    FIELD_SECTION_CENTRE = "field-section-centre" [];
    /// Share of the extension that this section takes.
    FIELD_SECTION_SHARE = "field-section-share" [];
    /// Limits that the maker sets.
    FIELD_LIMITS = "field-limits" [];
    /// Boom angle at most when driving.
    FIELD_CARRY_ANGLE = "field-carry-angle" [];
    /// Extension at most when driving.
    FIELD_CARRY_EXTENSION = "field-carry-extension" [];
    /// The maker’s wind limit.
    FIELD_WIND_LIMIT = "field-wind-limit" [];
    /// Wind at which work stops.
    FIELD_WIND_SPEED = "field-wind-speed" [];
    /// Whether that wind is a gust or a forecast mean.
    FIELD_WIND_MEASURE = "field-wind-measure" [];
    /// Outer dimensions.
    FIELD_OUTLINE = "field-outline" [];
    /// Foremost point ahead of the front axle, without attachment.
    FIELD_OUTLINE_FRONT = "field-outline-front" [];
    /// Rearmost point, behind the front axle as negative.
    FIELD_OUTLINE_REAR = "field-outline-rear" [];
    /// Overall width.
    FIELD_OUTLINE_WIDTH = "field-outline-width" [];
    /// Ground clearance under the frame.
    FIELD_GROUND_CLEARANCE = "field-ground-clearance" [];
    /// Top of the frame without cab.
    FIELD_FRAME_TOP = "field-frame-top" [];
    /// Cab from its rear to its front.
    FIELD_CAB_FROM_TO = "field-cab-from-to" [];
    /// Top of the cab.
    FIELD_CAB_TOP = "field-cab-top" [];
    /// Areas that the wind meets.
    FIELD_WIND_AREAS = "field-wind-areas" [];
    /// Frame, cab and wheels seen from the side.
    FIELD_WIND_SIDE = "field-wind-side" [];
    /// Frame, cab and wheels seen from the front.
    FIELD_WIND_FRONT = "field-wind-front" [];
    /// Height of the middle of those areas.
    FIELD_WIND_HEIGHT = "field-wind-height" [];
    /// Pallet forks.
    FIELD_FORKS = "field-forks" [];
    /// Jib with a hook.
    FIELD_JIB = "field-jib" [];
    /// Short name of the attachment for charts and lifts.
    FIELD_ATTACHMENT_ID = "field-attachment-id" [];
    /// Name of the attachment.
    FIELD_ATTACHMENT_NAME = "field-attachment-name" [];
    /// Mass of the attachment.
    FIELD_ATTACHMENT_MASS = "field-attachment-mass" [];
    /// Its centre of gravity: ahead of the head pin, up.
    FIELD_ATTACHMENT_CENTRE = "field-attachment-centre" [];
    /// Greatest load that the attachment’s plate allows.
    FIELD_ATTACHMENT_CAPACITY = "field-attachment-capacity" [];
    /// How the attachment is held: quick coupling, pinned or bolted fast.
    FIELD_ATTACHMENT_COUPLING = "field-attachment-coupling" [];
    /// Fork heel: ahead of the head pin, up, forks level.
    FIELD_FORK_HEEL = "field-fork-heel" [];
    /// Spread: middle to middle of the fork blades.
    FIELD_FORK_SPREAD = "field-fork-spread" [];
    /// Load centre that the forks are rated at.
    FIELD_FORK_LOAD_CENTRE = "field-fork-load-centre" [];
    /// Left fork blade.
    FIELD_FORK_LEFT = "field-fork-left" [];
    /// Right fork blade.
    FIELD_FORK_RIGHT = "field-fork-right" [];
    /// Capacity stamped on this blade.
    FIELD_BLADE_CAPACITY = "field-blade-capacity" [];
    /// Load centre stamped with it.
    FIELD_BLADE_LOAD_CENTRE = "field-blade-load-centre" [];
    /// Length of the blade.
    FIELD_BLADE_LENGTH = "field-blade-length" [];
    /// Thickness of the blade at the heel when new.
    FIELD_BLADE_NEW = "field-blade-new" [];
    /// Thickness of the blade at the heel today.
    FIELD_BLADE_NOW = "field-blade-now" [];
    /// Angle between blade and shank.
    FIELD_BLADE_ANGLE = "field-blade-angle" [];
    /// How far the blade is off straight.
    FIELD_BLADE_BENT = "field-blade-bent" [];
    /// Whether a crack was found.
    FIELD_BLADE_CRACK = "field-blade-crack" [];
    /// Whether the lock of the blade’s place works.
    FIELD_BLADE_LOCK = "field-blade-lock" [];
    /// Proof load of the blade, from its papers.
    FIELD_BLADE_PROOF_LOAD = "field-blade-proof-load" [];
    /// Whether the blade was welded, drilled or bent.
    FIELD_BLADE_MODIFIED = "field-blade-modified" [];
    /// What the carriage can do: fixed, side-shift, positioner, tilting, rotating.
    FIELD_FORK_CARRIAGE = "field-fork-carriage" [];
    /// Side shift of the carriage to either side.
    FIELD_FORK_SIDE_SHIFT = "field-fork-side-shift" [];
    /// Least and greatest spread of the positioner.
    FIELD_FORK_SPREAD_RANGE = "field-fork-spread-range" [];
    /// Sleeves pushed over the blades.
    FIELD_FORK_EXTENSIONS = "field-fork-extensions" [];
    /// Length of the sleeves from the fork face.
    FIELD_SLEEVE_LENGTH = "field-sleeve-length" [];
    /// Capacity of the pair of sleeves.
    FIELD_SLEEVE_CAPACITY = "field-sleeve-capacity" [];
    /// Greatest load centre on the plate of the sleeves.
    FIELD_SLEEVE_LOAD_CENTRE = "field-sleeve-load-centre" [];
    /// Share of the sleeve that the blade must fill.
    FIELD_SLEEVE_COVER = "field-sleeve-cover" [];
    /// Whose plate: maker and number of the sleeves.
    FIELD_SLEEVE_BY = "field-sleeve-by" [];
    /// How much higher one fork tip stands.
    FIELD_FORK_TIP_DIFFERENCE = "field-fork-tip-difference" [];
    /// Day of the last thorough check of the forks.
    FIELD_FORK_CHECKED = "field-fork-checked" [];
    /// Bucket.
    FIELD_BUCKET = "field-bucket" [];
    /// Back of its floor: ahead of the head pin, up.
    FIELD_BUCKET_HEEL = "field-bucket-heel" [];
    /// Volume of the bucket.
    FIELD_BUCKET_VOLUME = "field-bucket-volume" [];
    /// Width of its cutting edge.
    FIELD_BUCKET_EDGE = "field-bucket-edge" [];
    /// Load centre that it is rated at.
    FIELD_TOOL_LOAD_CENTRE = "field-tool-load-centre" [];
    /// Clamp for blocks.
    FIELD_CLAMP = "field-clamp" [];
    /// Root of the arms at their underside: ahead, up.
    FIELD_CLAMP_HEEL = "field-clamp-heel" [];
    /// Narrowest and widest load that it grips.
    FIELD_CLAMP_GRIP = "field-clamp-grip" [];
    /// Force of one arm on the load.
    FIELD_CLAMP_GRIP_FORCE = "field-clamp-grip-force" [];
    /// Friction of the pads on the load.
    FIELD_CLAMP_GRIP_FRICTION = "field-clamp-grip-friction" [];
    /// Another tool of the maker’s list.
    FIELD_OTHER_TOOL = "field-other-tool" [];
    /// Where the load stands against it: ahead, up.
    FIELD_OTHER_HEEL = "field-other-heel" [];
    /// Platform for people: every lift with it is a stop.
    FIELD_PLATFORM = "field-platform" [];
    /// Its floor: ahead of the head pin, up.
    FIELD_PLATFORM_FLOOR = "field-platform-floor" [];
    /// Hook: ahead of the head pin, up.
    FIELD_JIB_HOOK = "field-jib-hook" [];
    /// Load charts: one for each attachment, support and load centre.
    FIELD_CHART = "field-chart" [];
    /// Attachment that this chart is for.
    FIELD_CHART_ATTACHMENT = "field-chart-attachment" [];
    /// What the machine stands on: tyres, stabilizers or outriggers.
    FIELD_CHART_SUPPORT = "field-chart-support" [];
    /// Rated load centre from the fork face.
    FIELD_CHART_LOAD_CENTRE = "field-chart-load-centre" [];
    /// Height of the test load’s centre above the forks.
    FIELD_CHART_LOAD_CENTRE_HEIGHT = "field-chart-load-centre-height" [];
    /// Where the chart’s reach starts.
    FIELD_CHART_REACH_FROM = "field-chart-reach-from" [];
    /// What point the chart’s reach goes to.
    FIELD_CHART_REACH_TO = "field-chart-reach-to" [];
    /// What the chart’s height is measured to.
    FIELD_CHART_HEIGHT_TO = "field-chart-height-to" [];
    /// How far out of level sideways the chart still holds.
    FIELD_CHART_LEVEL_SIDEWAYS = "field-chart-level-sideways" [];
    /// How far out of level fore and aft the chart still holds.
    FIELD_CHART_LEVEL_FORE_AFT = "field-chart-level-fore-aft" [];
    /// Unit of the plain numbers in the outlines.
    FIELD_CHART_UNIT = "field-chart-unit" [];
    /// Areas that the chart declares as not permitted.
    FIELD_CHART_NOT_PERMITTED = "field-chart-not-permitted" [];
    /// Tyres that this chart is for, as marked on them.
    FIELD_CHART_TYRES = "field-chart-tyres" [];
    /// Start of the reach ahead of the front axle.
    FIELD_CHART_REACH_AHEAD = "field-chart-reach-ahead" [];
    /// Whether each load line encloses those of heavier loads.
    FIELD_CHART_NESTED = "field-chart-nested" [];
    /// Capacities printed as a table instead of zones.
    FIELD_CHART_TABLE = "field-chart-table" [];
    /// Boom angles of the rows.
    FIELD_TABLE_ANGLES = "field-table-angles" [];
    /// Extensions of the columns.
    FIELD_TABLE_EXTENSIONS = "field-table-extensions" [];
    /// Heights of the rows.
    FIELD_TABLE_HEIGHTS = "field-table-heights" [];
    /// Reaches of the columns.
    FIELD_TABLE_REACHES = "field-table-reaches" [];
    /// Capacity of each row and column, “-” where nothing.
    FIELD_TABLE_CAPACITY = "field-table-capacity" [];
    /// Unit of the plain numbers of the angles.
    FIELD_TABLE_ANGLE_UNIT = "field-table-angle-unit" [];
    /// Unit of the plain numbers of the capacities.
    FIELD_TABLE_CAPACITY_UNIT = "field-table-capacity-unit" [];
    /// The maker’s capacities for load centres beyond the rated one.
    FIELD_DERATING = "field-derating" [];
    /// Load centre of this row.
    FIELD_DERATING_LOAD_CENTRE = "field-derating-load-centre" [];
    /// Share of the chart’s capacity that counts there.
    FIELD_DERATING_SHARE = "field-derating-share" [];
    /// Capacity at most there.
    FIELD_DERATING_AT_MOST = "field-derating-at-most" [];
    /// Who compared a capacity that rises with the chart.
    FIELD_CHART_RISES = "field-chart-rises" [];
    /// Zones of the chart, each with its capacity.
    FIELD_CHART_ZONE = "field-chart-zone" [];
    /// Name of the zone.
    FIELD_ZONE_NAME = "field-zone-name" [];
    /// Capacity everywhere in the zone.
    FIELD_ZONE_CAPACITY = "field-zone-capacity" [];
    /// Corners of the zone as reach and height, in order.
    FIELD_ZONE_OUTLINE = "field-zone-outline" [];
    /// Name of the job.
    FIELD_JOB_NAME = "field-job-name" [];
    /// Name and address of the site.
    FIELD_JOB_SITE = "field-job-site" [];
    /// Day of the work.
    FIELD_JOB_DATE = "field-job-date" [];
    /// Who plans and answers for this file.
    FIELD_JOB_PLANNER = "field-job-planner" [];
    /// True for demonstrations.
    FIELD_JOB_INVENTED = "field-job-invented" [];
    /// Required reserves that differ from the usual ones.
    FIELD_POLICY = "field-policy" [];
    /// Who answers for values below the usual ones.
    FIELD_POLICY_BY = "field-policy-by" [];
    /// Tilt that must remain, fore and aft.
    FIELD_POLICY_TILT_FORE_AFT = "field-policy-tilt-fore-aft" [];
    /// Tilt that must remain, sideways.
    FIELD_POLICY_TILT_SIDEWAYS = "field-policy-tilt-sideways" [];
    /// Least load factor: tipping load over the load.
    FIELD_POLICY_LOAD_FACTOR = "field-policy-load-factor" [];
    /// How far the machine may stand from its planned place.
    FIELD_POLICY_STAND_ERROR = "field-policy-stand-error" [];
    /// Operator’s allowance on top of the legal distance to lines.
    FIELD_POLICY_LINE_ALLOWANCE = "field-policy-line-allowance" [];
    /// Distance to lines by site rule.
    FIELD_POLICY_LINE_SITE_RULE = "field-policy-line-site-rule" [];
    /// Survey files of the ground, in order of priority.
    FIELD_GROUND = "field-ground" [];
    /// Survey file in this folder.
    FIELD_GROUND_FILE = "field-ground-file" [];
    /// Tiles of one survey.
    FIELD_GROUND_FILES = "field-ground-files" [];
    /// Largest height error under a wheel.
    FIELD_GROUND_ACCURACY = "field-ground-accuracy" [];
    /// Day of the survey.
    FIELD_GROUND_DATE = "field-ground-date" [];
    /// Unit of the survey’s coordinates.
    FIELD_GROUND_UNITS = "field-ground-units" [];
    /// Unit of the survey’s heights.
    FIELD_GROUND_HEIGHT_UNITS = "field-ground-height-units" [];
    /// Coordinate system, only shown.
    FIELD_GROUND_CRS = "field-ground-crs" [];
    /// Longest gap between points that is bridged.
    FIELD_GROUND_LONGEST_EDGE = "field-ground-longest-edge" [];
    /// Surface of a LandXML file, by its name.
    FIELD_GROUND_SURFACE = "field-ground-surface" [];
    /// The survey points of a LandXML file are the ground.
    FIELD_GROUND_SURVEY_POINTS = "field-ground-survey-points" [];
    /// Part of a large survey that is used.
    FIELD_GROUND_WINDOW = "field-ground-window" [];
    /// South-west corner of the part.
    FIELD_WINDOW_FROM = "field-window-from" [];
    /// North-east corner of the part.
    FIELD_WINDOW_TO = "field-window-to" [];
    /// Columns of a level file, by name or place.
    FIELD_GROUND_COLUMNS = "field-ground-columns" [];
    /// Column of the point’s number.
    FIELD_COLUMN_POINT = "field-column-point" [];
    /// Column of the easting.
    FIELD_COLUMN_EAST = "field-column-east" [];
    /// Column of the northing.
    FIELD_COLUMN_NORTH = "field-column-north" [];
    /// Column of the height.
    FIELD_COLUMN_HEIGHT = "field-column-height" [];
    /// Overhead lines near the stands.
    FIELD_LINE = "field-line" [];
    /// Name of the line.
    FIELD_LINE_NAME = "field-line-name" [];
    /// Nominal voltage, or “unknown”.
    FIELD_LINE_VOLTAGE = "field-line-voltage" [];
    /// Unit of the plain numbers of the course.
    FIELD_LINE_UNIT = "field-line-unit" [];
    /// Points in plan, where heights are not known.
    FIELD_LINE_COURSE = "field-line-course" [];
    /// How far the conductor may lie from where measured.
    FIELD_LINE_SURVEY_ERROR = "field-line-survey-error" [];
    /// How far wind moves the conductor sideways.
    FIELD_LINE_SWING = "field-line-swing" [];
    /// Lowest conductor, from support to support.
    FIELD_LINE_SPAN = "field-line-span" [];
    /// Support at one end: east, north, height.
    FIELD_SPAN_FROM = "field-span-from" [];
    /// Support at the other end: east, north, height.
    FIELD_SPAN_TO = "field-span-to" [];
    /// Sag at the middle of the span.
    FIELD_SPAN_SAG = "field-span-sag" [];
    /// Confirmation that the line is switched off.
    FIELD_LINE_DEAD = "field-line-dead" [];
    /// The line owner’s person who confirms it.
    FIELD_DEAD_OWNER = "field-dead-owner" [];
    /// Number of the permit.
    FIELD_DEAD_PERMIT = "field-dead-permit" [];
    /// Whether it is visibly grounded at the work.
    FIELD_DEAD_GROUNDED = "field-dead-grounded" [];
    /// Statement that the line is covered.
    FIELD_LINE_INSULATED = "field-line-insulated" [];
    /// The line owner’s person who says so.
    FIELD_INSULATED_BY = "field-insulated-by" [];
    /// Number of the permit that it stands in.
    FIELD_INSULATED_PERMIT = "field-insulated-permit" [];
    /// Statement that there is no other line.
    FIELD_LINES_COMPLETE = "field-lines-complete" [];
    /// Who states that there is no other line.
    FIELD_LINES_COMPLETE_BY = "field-lines-complete-by" [];
    /// Places that receive the loads.
    FIELD_LANDING = "field-landing" [];
    /// Short name for lifts.
    FIELD_LANDING_ID = "field-landing-id" [];
    /// Name of the landing.
    FIELD_LANDING_NAME = "field-landing-name" [];
    /// Where the middle of the load comes to lie.
    FIELD_LANDING_AT = "field-landing-at" [];
    /// Height of the surface the load lies on.
    FIELD_LANDING_LEVEL = "field-landing-level" [];
    /// Size of the landing.
    FIELD_LANDING_SIZE = "field-landing-size" [];
    /// Along the approach.
    FIELD_LANDING_ALONG = "field-landing-along" [];
    /// Across the approach.
    FIELD_LANDING_ACROSS = "field-landing-across" [];
    /// Direction in which the machine points, or “any”.
    FIELD_LANDING_APPROACH = "field-landing-approach" [];
    /// Heading, clockwise from north.
    FIELD_APPROACH_HEADING = "field-approach-heading" [];
    /// Tolerance to either side.
    FIELD_APPROACH_TOLERANCE = "field-approach-tolerance" [];
    /// What the landing carries, and who says so.
    FIELD_LANDING_RATING = "field-landing-rating" [];
    /// Mass that it carries.
    FIELD_RATING_MASS = "field-rating-mass" [];
    /// Name and function of who rated it.
    FIELD_RATING_BY = "field-rating-by" [];
    /// Mass that already lies there.
    FIELD_LANDING_OCCUPIED = "field-landing-occupied" [];
    /// Edge, toe board or guard to lift over.
    FIELD_LANDING_UPSTAND = "field-landing-upstand" [];
    /// Mass of one pallet that it carries.
    FIELD_RATING_PALLET = "field-rating-pallet" [];
    /// Even load that it carries.
    FIELD_RATING_EVEN = "field-rating-even" [];
    /// Even load on a part of it.
    FIELD_RATING_PART = "field-rating-part" [];
    /// Area of that part.
    FIELD_RATING_PART_AREA = "field-rating-part-area" [];
    /// Load on a square.
    FIELD_RATING_POINT = "field-rating-point" [];
    /// Side of that square.
    FIELD_RATING_POINT_SIDE = "field-rating-point-side" [];
    /// Horizontal push that it takes.
    FIELD_RATING_PUSH = "field-rating-push" [];
    /// True: mass and pallet already allow for setting down.
    FIELD_RATING_SETTING_DOWN = "field-rating-setting-down" [];
    /// Duty class of the scaffold; says nothing of a pallet.
    FIELD_RATING_CLASS = "field-rating-class" [];
    /// What the landing stands on.
    FIELD_LANDING_STANDS = "field-landing-stands" [];
    /// People on it while the load comes.
    FIELD_LANDING_PEOPLE = "field-landing-people" [];
    /// Factor on the load while it is set down.
    FIELD_LANDING_SETTING_DOWN = "field-landing-setting-down" [];
    /// How the edge is closed that the load comes over.
    FIELD_LANDING_EDGE = "field-landing-edge" [];
    /// Which way joists or span run, seen along the approach.
    FIELD_LANDING_RUNS = "field-landing-runs" [];
    /// What already lies there.
    FIELD_LANDING_LYING = "field-landing-lying" [];
    /// What it is.
    FIELD_LYING_WHAT = "field-lying-what" [];
    /// Its mass.
    FIELD_LYING_MASS = "field-lying-mass" [];
    /// From the edge that the load comes over.
    FIELD_LYING_FROM_EDGE = "field-lying-from-edge" [];
    /// From the right side, looking the way the load comes in.
    FIELD_LYING_FROM_RIGHT = "field-lying-from-right" [];
    /// Its length along the approach.
    FIELD_LYING_ALONG = "field-lying-along" [];
    /// Its width across the approach.
    FIELD_LYING_ACROSS = "field-lying-across" [];
    /// Boards on joists that carry it.
    FIELD_LANDING_DECK = "field-landing-deck" [];
    /// Who answers for these numbers.
    FIELD_STRUCTURE_BY = "field-structure-by" [];
    /// Covered or in the weather.
    FIELD_DECK_MOISTURE = "field-deck-moisture" [];
    /// Width of a board.
    FIELD_BOARD_BREADTH = "field-board-breadth" [];
    /// Thickness of a board.
    FIELD_BOARD_DEPTH = "field-board-depth" [];
    /// Strength class of the boards.
    FIELD_BOARD_TIMBER = "field-board-timber" [];
    /// Spans that a board runs over.
    FIELD_BOARD_SPANS = "field-board-spans" [];
    /// Width of a joist.
    FIELD_JOIST_BREADTH = "field-joist-breadth" [];
    /// Depth of a joist.
    FIELD_JOIST_DEPTH = "field-joist-depth" [];
    /// Strength class of the joists.
    FIELD_JOIST_TIMBER = "field-joist-timber" [];
    /// Span of a joist.
    FIELD_JOIST_SPAN = "field-joist-span" [];
    /// Spans that a joist runs over.
    FIELD_JOIST_SPANS = "field-joist-spans" [];
    /// Joists from middle to middle.
    FIELD_JOIST_SPACING = "field-joist-spacing" [];
    /// True: the upper edges of the joists cannot go sideways.
    FIELD_JOISTS_HELD = "field-joists-held" [];
    /// Its own weight.
    FIELD_STRUCTURE_OWN = "field-structure-own" [];
    /// Even load beside the pallet.
    FIELD_STRUCTURE_BESIDE = "field-structure-beside" [];
    /// Slab that carries it, spanning one way.
    FIELD_LANDING_SLAB = "field-landing-slab" [];
    /// Span of the slab.
    FIELD_SLAB_SPAN = "field-slab-span" [];
    /// Spans of the slab.
    FIELD_SLAB_SPANS = "field-slab-spans" [];
    /// From the pressed face to the reinforcement.
    FIELD_SLAB_DEPTH = "field-slab-depth" [];
    /// Cylinder strength of the concrete at 28 days.
    FIELD_SLAB_CONCRETE = "field-slab-concrete" [];
    /// How fast the cement hardens.
    FIELD_SLAB_CEMENT = "field-slab-cement" [];
    /// Days since it was cast.
    FIELD_SLAB_AGE = "field-slab-age" [];
    /// Mean temperature since then, in °C.
    FIELD_SLAB_CELSIUS = "field-slab-celsius" [];
    /// Yield strength of the reinforcement.
    FIELD_SLAB_STEEL = "field-slab-steel" [];
    /// Reinforcement at the bottom along the span, a metre.
    FIELD_SLAB_BOTTOM = "field-slab-bottom" [];
    /// Reinforcement at the top along the span, a metre.
    FIELD_SLAB_TOP = "field-slab-top" [];
    /// Reinforcement at the bottom across the span, a metre.
    FIELD_SLAB_ACROSS = "field-slab-across" [];
    /// From the pallet to a free edge along the span.
    FIELD_SLAB_EDGE_ALONG = "field-slab-edge-along" [];
    /// From the pallet to a free edge across the span.
    FIELD_SLAB_EDGE_ACROSS = "field-slab-edge-across" [];
    /// Props that the slab stands on.
    FIELD_LANDING_PROPS = "field-landing-props" [];
    /// Engineer who designed the props.
    FIELD_PROPS_BY = "field-props-by" [];
    /// What this engineer allows on the slab in all.
    FIELD_PROPS_ALLOWS = "field-props-allows" [];
    /// What the load stands on.
    FIELD_LOAD_FEET = "field-load-feet" [];
    /// Feet along the forks.
    FIELD_FEET_ALONG = "field-feet-along" [];
    /// Feet across the forks.
    FIELD_FEET_ACROSS = "field-feet-across" [];
    /// Length of a foot along the forks.
    FIELD_FOOT_ALONG = "field-foot-along" [];
    /// Width of a foot across the forks.
    FIELD_FOOT_ACROSS = "field-foot-across" [];
    /// How the load shares itself between the feet.
    FIELD_FEET_SHARING = "field-feet-sharing" [];
    /// Who leads the load at its landing.
    FIELD_LIFT_SIGNALLER = "field-lift-signaller" [];
    /// Machines of the job and their state today.
    FIELD_JOB_MACHINE = "field-job-machine" [];
    /// Short name for lifts.
    FIELD_JOB_MACHINE_ID = "field-job-machine-id" [];
    /// Its machine file in this folder.
    FIELD_JOB_MACHINE_FILE = "field-job-machine-file" [];
    /// Who did the pre-use inspection and found it fit.
    FIELD_INSPECTED_BY = "field-inspected-by" [];
    /// Why the machine is out of service.
    FIELD_TAGGED_OUT = "field-tagged-out" [];
    /// How each hook latch was seen.
    FIELD_LATCHES = "field-latches" [];
    /// How the latch of this hook was seen.
    FIELD_LATCH_SEEN = "field-latch-seen" [];
    /// How seat belt, roll-over frame and cab door were seen.
    FIELD_CAB_SEEN = "field-cab-seen" [];
    /// Whose machine it is: own, rented or unknown.
    FIELD_KEPT = "field-kept" [];
    /// What somebody read on the machine itself.
    FIELD_MACHINE_SEEN = "field-machine-seen" [];
    /// Who read it.
    FIELD_SEEN_BY = "field-seen-by" [];
    /// Day it was read.
    FIELD_SEEN_DATE = "field-seen-date" [];
    /// Serial number, as stamped on the machine.
    FIELD_SEEN_SERIAL = "field-seen-serial" [];
    /// Size marked on the tyres.
    FIELD_SEEN_TYRES = "field-seen-tyres" [];
    /// Mark on the counterweight.
    FIELD_SEEN_COUNTERWEIGHT = "field-seen-counterweight" [];
    /// What is fitted besides; [] states none.
    FIELD_SEEN_OPTIONS = "field-seen-options" [];
    /// Whether the charts are in the cab.
    FIELD_SEEN_CHART_IN_CAB = "field-seen-chart-in-cab" [];
    /// Whether the manual is in the cab.
    FIELD_SEEN_MANUAL_IN_CAB = "field-seen-manual-in-cab" [];
    /// Number and revision of the charts in the cab.
    FIELD_SEEN_CHART = "field-seen-chart" [];
    /// Last thorough examination of the machine.
    FIELD_EXAMINED = "field-examined" [];
    /// Day of the examination.
    FIELD_EXAMINED_DATE = "field-examined-date" [];
    /// Day until which it holds.
    FIELD_EXAMINED_NEXT = "field-examined-next" [];
    /// Who examined it.
    FIELD_EXAMINED_BY = "field-examined-by" [];
    /// How each attachment’s lock was seen.
    FIELD_LOCKS = "field-locks" [];
    /// How the lock of this attachment was seen.
    FIELD_LOCK_SEEN = "field-lock-seen" [];
    /// Loads of the job.
    FIELD_LOAD = "field-load" [];
    /// Short name for lifts.
    FIELD_LOAD_ID = "field-load-id" [];
    /// Name of the load.
    FIELD_LOAD_NAME = "field-load-name" [];
    /// Size: depth along the forks, width, height.
    FIELD_LOAD_SIZE = "field-load-size" [];
    /// Depth along the forks.
    FIELD_SIZE_DEPTH = "field-size-depth" [];
    /// Width across the forks.
    FIELD_SIZE_WIDTH = "field-size-width" [];
    /// Height.
    FIELD_SIZE_HEIGHT = "field-size-height" [];
    /// Mass as it comes, with pallet and packing.
    FIELD_LOAD_MASS = "field-load-mass" [];
    /// Number of the delivery ticket.
    FIELD_LOAD_TICKET = "field-load-ticket" [];
    /// What the ticket leaves out: pallet, film, rain.
    FIELD_LOAD_LEFT_OUT = "field-load-left-out" [];
    /// Share by which the mass may be off.
    FIELD_LOAD_UNCERTAINTY = "field-load-uncertainty" [];
    /// Share by which it may be less.
    FIELD_UNCERTAINTY_BELOW = "field-uncertainty-below" [];
    /// Share by which it may be more.
    FIELD_UNCERTAINTY_ABOVE = "field-uncertainty-above" [];
    /// Centre of gravity: ahead of the fork face, left, up.
    FIELD_LOAD_CENTRE = "field-load-centre" [];
    /// How far the centre may lie from there.
    FIELD_LOAD_CENTRE_ERROR = "field-load-centre-error" [];
    /// Pallet, bands and film: sound, unsound or not seen.
    FIELD_LOAD_CONDITION = "field-load-condition" [];
    /// Shape factor for the wind.
    FIELD_LOAD_WIND_FACTOR = "field-load-wind-factor" [];
    /// Parts that the load is built up from.
    FIELD_LOAD_PART = "field-load-part" [];
    /// What this part is.
    FIELD_PART_NAME = "field-part-name" [];
    /// Its centre: ahead of the fork face, left, up.
    FIELD_PART_CENTRE = "field-part-centre" [];
    /// How many of them in one place.
    FIELD_PART_COUNT = "field-part-count" [];
    /// Mass of one.
    FIELD_PART_MASS = "field-part-mass" [];
    /// Density of the material.
    FIELD_PART_DENSITY = "field-part-density" [];
    /// Material, by its id in the list of materials.
    FIELD_PART_MATERIAL = "field-part-material" [];
    /// Share of the box that is material.
    FIELD_PART_PACKING = "field-part-packing" [];
    /// Share by which water may make it heavier.
    FIELD_PART_MOISTURE = "field-part-moisture" [];
    /// Water in it: dry, damp or soaked.
    FIELD_PART_STATE = "field-part-state" [];
    /// Mass of one piece.
    FIELD_PART_PIECE = "field-part-piece" [];
    /// Number of pieces.
    FIELD_PART_PIECES = "field-part-pieces" [];
    /// A pallet that is stacked in layers.
    FIELD_PALLET = "field-pallet" [];
    /// The pallet alone.
    FIELD_PALLET_BASE = "field-pallet-base" [];
    /// Mass of the pallet alone.
    FIELD_PALLET_BASE_MASS = "field-pallet-base-mass" [];
    /// Mass of film, bands and boards.
    FIELD_PALLET_WRAP = "field-pallet-wrap" [];
    /// Share by which layers may reach over the base.
    FIELD_PALLET_OVERHANG = "field-pallet-overhang" [];
    /// Layers from the base upward.
    FIELD_PALLET_LAYER = "field-pallet-layer" [];
    /// What this layer is.
    FIELD_LAYER_NAME = "field-layer-name" [];
    /// How many of these layers on each other.
    FIELD_LAYER_LAYERS = "field-layer-layers" [];
    /// Its middle ahead of the middle of the base.
    FIELD_LAYER_AHEAD = "field-layer-ahead" [];
    /// Its middle left of the middle of the base.
    FIELD_LAYER_LEFT = "field-layer-left" [];
    /// A tank with liquid in it.
    FIELD_LIQUID = "field-liquid" [];
    /// What liquid it is.
    FIELD_LIQUID_NAME = "field-liquid-name" [];
    /// Inside of the tank along the forks.
    FIELD_LIQUID_DEPTH = "field-liquid-depth" [];
    /// Inside of the tank across the forks.
    FIELD_LIQUID_WIDTH = "field-liquid-width" [];
    /// Inside height of the tank.
    FIELD_LIQUID_HEIGHT = "field-liquid-height" [];
    /// Height of the liquid when level.
    FIELD_LIQUID_FILL = "field-liquid-fill" [];
    /// Middle of the tank’s bottom: ahead, left, up.
    FIELD_LIQUID_AT = "field-liquid-at" [];
    /// Whether baffles break the surge.
    FIELD_LIQUID_BAFFLED = "field-liquid-baffled" [];
    /// Whether a lid holds the liquid.
    FIELD_LIQUID_CLOSED = "field-liquid-closed" [];
    /// Greatest tilt that is reckoned with.
    FIELD_LIQUID_TILT = "field-liquid-tilt" [];
    /// What was seen to be wrong with the load.
    FIELD_LOAD_DEFECTS = "field-load-defects" [];
    /// How far the ends hang below the underside.
    FIELD_LOAD_SAG = "field-load-sag" [];
    /// Gates and narrow places that loads pass.
    FIELD_GATE = "field-gate" [];
    /// Short name for lifts.
    FIELD_GATE_ID = "field-gate-id" [];
    /// Name of the gate.
    FIELD_GATE_NAME = "field-gate-name" [];
    /// Clear width.
    FIELD_GATE_WIDTH = "field-gate-width" [];
    /// Clear height, or “open”.
    FIELD_GATE_HEIGHT = "field-gate-height" [];
    /// Room that must stay on either side.
    FIELD_GATE_CLEARANCE = "field-gate-clearance" [];
    /// Room that must stay above.
    FIELD_GATE_CLEARANCE_ABOVE = "field-gate-clearance-above" [];
    /// Coordinate system of the file, as EPSG code.
    FIELD_GROUND_FILE_CRS = "field-ground-file-crs" [];
    /// Coordinate system of the site: a file in another is converted.
    FIELD_GROUND_SITE_CRS = "field-ground-site-crs" [];
    /// Layers of a drawing that are ground.
    FIELD_GROUND_LAYERS = "field-ground-layers" [];
    /// True to find the ground of an unclassified cloud by a filter.
    FIELD_GROUND_FILTER = "field-ground-filter" [];
    /// A stored site: its ground, things, lines and zones.
    FIELD_SITE_FROM = "field-site-from" [];
    /// Things that stand on the site and can be hit.
    FIELD_THING = "field-thing" [];
    /// Short name.
    FIELD_THING_ID = "field-thing-id" [];
    /// Name of the thing.
    FIELD_THING_NAME = "field-thing-name" [];
    /// What it is.
    FIELD_THING_KIND = "field-thing-kind" [];
    /// Corners in plan, in order.
    FIELD_SHAPE_OUTLINE = "field-shape-outline" [];
    /// Unit of its lists of plain numbers.
    FIELD_SHAPE_UNIT = "field-shape-unit" [];
    /// Middle line in plan.
    FIELD_SHAPE_COURSE = "field-shape-course" [];
    /// Whole width along its course.
    FIELD_SHAPE_WIDTH = "field-shape-width" [];
    /// Middle of the circle.
    FIELD_SHAPE_AT = "field-shape-at" [];
    /// Radius of the circle.
    FIELD_SHAPE_RADIUS = "field-shape-radius" [];
    /// Level of its underside; left out, it stands on the ground.
    FIELD_THING_BASE = "field-thing-base" [];
    /// Level of its top, or “unknown”.
    FIELD_THING_TOP = "field-thing-top" [];
    /// How far it may lie or reach beyond what is given.
    FIELD_THING_ACCURACY = "field-thing-accuracy" [];
    /// Openings in it: windows, doors, gaps.
    FIELD_OPENING = "field-opening" [];
    /// One jamb.
    FIELD_OPENING_FROM = "field-opening-from" [];
    /// The other jamb.
    FIELD_OPENING_TO = "field-opening-to" [];
    /// Level of the sill.
    FIELD_OPENING_SILL = "field-opening-sill" [];
    /// Level of the head.
    FIELD_OPENING_HEAD = "field-opening-head" [];
    /// Trenches, pits and other digs.
    FIELD_EXCAVATION = "field-excavation" [];
    /// Short name.
    FIELD_EXCAVATION_ID = "field-excavation-id" [];
    /// Name of the dig.
    FIELD_EXCAVATION_NAME = "field-excavation-name" [];
    /// Depth below the ground at its edge, or “unknown”.
    FIELD_EXCAVATION_DEPTH = "field-excavation-depth" [];
    /// How far that may be wrong either way.
    FIELD_GIVE_OR_TAKE = "field-give-or-take" [];
    /// Soil of its sides, as the competent person classed it.
    FIELD_EXCAVATION_SOIL = "field-excavation-soil" [];
    /// What holds its sides: “none”, “supported”, “unknown”, or who designed the support for loads beside it.
    FIELD_EXCAVATION_SUPPORT = "field-excavation-support" [];
    /// Who designed the support for loads beside it.
    FIELD_EXCAVATION_SUPPORT_BY = "field-excavation-support-by" [];
    /// Who saw or stated it.
    FIELD_EXCAVATION_BY = "field-excavation-by" [];
    /// What lies in the ground.
    FIELD_BURIED = "field-buried" [];
    /// Short name.
    FIELD_BURIED_ID = "field-buried-id" [];
    /// Name of what lies there.
    FIELD_BURIED_NAME = "field-buried-name" [];
    /// What it is.
    FIELD_BURIED_KIND = "field-buried-kind" [];
    /// Ground above its crown, or “unknown”.
    FIELD_BURIED_COVER = "field-buried-cover" [];
    /// Pressure at its crown that its owner allows.
    FIELD_BURIED_ALLOWED = "field-buried-allowed" [];
    /// How the wall of a pipe or culvert behaves: “rigid”, or what the deflection of a flexible one needs.
    FIELD_BURIED_WALL = "field-buried-wall" [];
    /// Mean diameter of the pipe.
    FIELD_WALL_DIAMETER = "field-wall-diameter" [];
    /// Ring stiffness as its maker declares it; or thickness and modulus.
    FIELD_WALL_RING = "field-wall-ring" [];
    /// Thickness of a plain wall.
    FIELD_WALL_THICKNESS = "field-wall-thickness" [];
    /// Modulus of elasticity of the wall.
    FIELD_WALL_MODULUS = "field-wall-modulus" [];
    /// Modulus of soil reaction beside it, E′.
    FIELD_WALL_SOIL = "field-wall-soil" [];
    /// Deflection that its owner allows, of the diameter; left out: not known.
    FIELD_WALL_DEFLECTION = "field-wall-deflection" [];
    /// Bedding factor; left out: 0.11.
    FIELD_WALL_BEDDING = "field-wall-bedding" [];
    /// Deflection lag factor on the soil above; left out: 1.5.
    FIELD_WALL_LAG = "field-wall-lag" [];
    /// What a named person says of the ground around it.
    FIELD_BURIED_AROUND = "field-buried-around" [];
    /// True where it was freshly filled.
    FIELD_AROUND_FILL = "field-around-fill" [];
    /// True where voids or washed-out soil are possible.
    FIELD_AROUND_VOIDS = "field-around-voids" [];
    /// Who says so.
    FIELD_AROUND_BY = "field-around-by" [];
    /// Who answers for what is known of it.
    FIELD_BURIED_BY = "field-buried-by" [];
    /// Parts of the site with a rule of their own.
    FIELD_SITE_ZONE = "field-site-zone" [];
    /// Short name.
    FIELD_SITE_ZONE_ID = "field-site-zone-id" [];
    /// Name of the zone.
    FIELD_SITE_ZONE_NAME = "field-site-zone-name" [];
    /// What applies there.
    FIELD_SITE_ZONE_RULE = "field-site-zone-rule" [];
    /// Direction of travel, clockwise from north.
    FIELD_SITE_ZONE_HEADING = "field-site-zone-heading" [];
    /// Greatest speed there.
    FIELD_SITE_ZONE_SPEED = "field-site-zone-speed" [];
    /// Steepest ground that is driven there.
    FIELD_SITE_ZONE_SLOPE = "field-site-zone-slope" [];
    /// When it applies; left out: always.
    FIELD_SITE_ZONE_TIMES = "field-site-zone-times" [];
    /// Who set it.
    FIELD_SITE_ZONE_BY = "field-site-zone-by" [];
    /// Gates it passes with the load; [] states none.
    FIELD_LIFT_GATES = "field-lift-gates" [];
    /// How the slings hold: vertical, choker or basket.
    FIELD_RIGGING_HITCH = "field-rigging-hitch" [];
    /// What the slings lie on: smooth, protected or bare.
    FIELD_RIGGING_EDGES = "field-rigging-edges" [];
    /// Shackles and beams between hook and load.
    FIELD_FITTINGS = "field-fittings" [];
    /// What fitting it is.
    FIELD_FITTING_NAME = "field-fitting-name" [];
    /// Its working load limit.
    FIELD_FITTING_LIMIT = "field-fitting-limit" [];
    /// Whether it takes one leg or the whole load.
    FIELD_FITTING_TAKES = "field-fitting-takes" [];
    /// How far out of plumb it may swing.
    FIELD_RIGGING_SWING = "field-rigging-swing" [];
    /// The same as a distance at its centre.
    FIELD_RIGGING_SWING_REACH = "field-rigging-swing-reach" [];
    /// Rigging of a load on a hook.
    FIELD_HANGING = "field-hanging" [];
    /// Mass of slings and shackles, added to the load.
    FIELD_RIGGING_MASS = "field-rigging-mass" [];
    /// From the hook down to the load.
    FIELD_RIGGING_DROP = "field-rigging-drop" [];
    /// Number of sling legs.
    FIELD_RIGGING_LEGS = "field-rigging-legs" [];
    /// Angle of a leg from the vertical.
    FIELD_RIGGING_LEG_ANGLE = "field-rigging-leg-angle" [];
    /// Working load limit of one leg.
    FIELD_RIGGING_LEG_LIMIT = "field-rigging-leg-limit" [];
    /// Number of tag lines.
    FIELD_TAG_LINES = "field-tag-lines" [];
    /// Lifts of the job.
    FIELD_LIFT = "field-lift" [];
    /// Short name of the lift.
    FIELD_LIFT_ID = "field-lift-id" [];
    /// What is lifted to where.
    FIELD_LIFT_NAME = "field-lift-name" [];
    /// Machine, by its id.
    FIELD_LIFT_MACHINE = "field-lift-machine" [];
    /// Attachment, by its id in the machine file.
    FIELD_LIFT_ATTACHMENT = "field-lift-attachment" [];
    /// What the machine stands on: tyres, stabilizers or outriggers.
    FIELD_LIFT_SUPPORT = "field-lift-support" [];
    /// Load, by its id.
    FIELD_LIFT_LOAD = "field-lift-load" [];
    /// Landing, by its id.
    FIELD_LIFT_LANDING = "field-lift-landing" [];
    /// Where the machine stands.
    FIELD_LIFT_STAND = "field-lift-stand" [];
    /// Middle of the front axle: east, north.
    FIELD_STAND_AT = "field-stand-at" [];
    /// Heading, clockwise from north.
    FIELD_STAND_HEADING = "field-stand-heading" [];
    /// Whether the load is set down or picked up there.
    FIELD_LIFT_TASK = "field-lift-task" [];
    /// Who saw the attachment’s lock closed for this lift.
    FIELD_LIFT_LOCK_SEEN = "field-lift-lock-seen" [];
    /// Name of who saw it closed.
    FIELD_LOCK_SEEN_BY = "field-lock-seen-by" [];
    /// How far the carriage is shifted, left is positive.
    FIELD_LIFT_SIDE_SHIFT = "field-lift-side-shift" [];
    /// Whether sleeves are pushed over the blades.
    FIELD_LIFT_EXTENSIONS = "field-lift-extensions" [];
    /// Loose material in a bucket.
    FIELD_LIFT_BULK_VOLUME = "field-lift-bulk-volume" [];
    /// Height at which the load is carried in over the landing.
    FIELD_LIFT_CLEAR = "field-lift-clear" [];
    /// Gust at which this lift stops.
    FIELD_LIFT_STOP_GUST = "field-lift-stop-gust" [];
    /// What would be an absolute stop; [] states none.
    FIELD_LIFT_STOPS = "field-lift-stops" [];
    /// What named persons answer for.
    FIELD_ACCEPT = "field-accept" [];
    /// What the statement is about.
    FIELD_ACCEPT_MATTER = "field-accept-matter" [];
    /// Name and function of who answers for it.
    FIELD_ACCEPT_BY = "field-accept-by" [];
    /// What was seen or tested, and when.
    FIELD_ACCEPT_STATEMENT = "field-accept-statement" [];
    /// What the ground carries under a wheel or pad.
    FIELD_ACCEPT_STRENGTH = "field-accept-strength" [];
    /// On the machine’s plate.
    WHERE_PLATE = "where-plate" [];
    /// Of your own choice.
    WHERE_OWN = "where-own" [];
    /// Manual, page with masses; else a weighbridge, axle by axle.
    WHERE_MASSES = "where-masses" [];
    /// The maker or dealer; else from axle loads on a weighbridge.
    WHERE_CENTRES = "where-centres" [];
    /// Manual, page with dimensions; else a tape on level ground.
    WHERE_DIMENSIONS = "where-dimensions" [];
    /// Size on the tyre’s side wall; else a tape, wheel off the ground.
    WHERE_TYRE = "where-tyre" [];
    /// Pressure gauge, tyre cold; the table on the machine has the rated one.
    WHERE_GAUGE = "where-gauge" [];
    /// Manual, page on axles; ask the maker or dealer.
    WHERE_AXLE = "where-axle" [];
    /// Tape, machine on level ground, boom down.
    WHERE_TAPE = "where-tape" [];
    /// Look at the machine.
    WHERE_LOOK = "where-look" [];
    /// Manual, page with dimensions; else tape and angle indicator.
    WHERE_BOOM = "where-boom" [];
    /// Ask the maker or dealer; seldom in the manual.
    WHERE_DEALER = "where-dealer" [];
    /// Manual, page on limits and care.
    WHERE_MANUAL = "where-manual" [];
    /// On the attachment’s own plate.
    WHERE_OWN_PLATE = "where-own-plate" [];
    /// Stamped on the side or top of the blade.
    WHERE_STAMP = "where-stamp" [];
    /// Caliper at the heel, on the blade itself.
    WHERE_CALIPER = "where-caliper" [];
    /// On the load chart in the cab, and the notes beside it.
    WHERE_CHART = "where-chart" [];
    /// Marked on the tyres’ side walls.
    WHERE_TYRE_MARKS = "where-tyre-marks" [];
    /// Square and straight edge on the blade.
    WHERE_GAUGE_TAPE = "where-gauge-tape" [];
    /// In the papers of its last check.
    WHERE_PAPERS = "where-papers" [];

    // Loads: what somebody answers for, lifting points.
    /// The value, where it is written as a table.
    FIELD_ANSWERED_VALUE = "field-answered-value" [];
    /// Who answers for a value below the usual one.
    FIELD_ANSWERED_BY = "field-answered-by" [];
    /// Distance of the two lifting points along the load.
    FIELD_RIGGING_PICKS = "field-rigging-picks" [];

    // Tyres, axle lock, and a machine as it is today.
    /// Mass of this part at least.
    FIELD_BODY_LEAST = "field-body-least" [];
    /// Diameter of the rim.
    FIELD_TYRE_RIM = "field-tyre-rim" [];
    /// Vertical stiffness of the tyre at its pressure.
    FIELD_TYRE_STIFFNESS = "field-tyre-stiffness" [];
    /// Boom angle above which the rear axle locks by itself, or “unknown”.
    FIELD_LOCK_ANGLE = "field-lock-angle" [];
    /// Who tried the rear axle’s lock today and found that it holds.
    FIELD_AXLE_LOCK_TRIED = "field-axle-lock-tried" [];
    /// Tyres found flat.
    FIELD_FLAT = "field-flat" [];
    /// Tyre pressures as measured today.
    FIELD_MEASURED_PRESSURES = "field-measured-pressures" [];
    /// Pressure of this tyre as measured today.
    FIELD_MEASURED_PRESSURE = "field-measured-pressure" [];
    /// Bodies of the machine file that are not on it today.
    FIELD_WITHOUT_BODIES = "field-without-bodies" [];
    /// What is on the machine besides its file.
    FIELD_ADDED = "field-added" [];
    /// Whether the frame is levelled before the boom goes up.
    FIELD_LIFT_LEVELLED = "field-lift-levelled" [];
    /// Whether the operator locks the rear axle before the boom goes up.
    FIELD_LIFT_AXLE_LOCKED = "field-lift-axle-locked" [];
    /// Front tyres with the stabilizers down: clear or touching.
    FIELD_LIFT_FRONT_TYRES = "field-lift-front-tyres" [];
    /// Partial factors of EN 1997-1 asked of the ground: one set for the whole job.
    FIELD_POLICY_GROUND_FACTORS = "field-policy-ground-factors" [];
    /// Layers of the ground under a part of the site.
    FIELD_SOIL = "field-soil" [];
    /// Short id of this ground.
    FIELD_SOIL_ID = "field-soil-id" [];
    /// Name of this ground for people.
    FIELD_SOIL_NAME = "field-soil-name" [];
    /// Depth of the water table below the surface; unknown counts at the surface.
    FIELD_SOIL_WATER = "field-soil-water" [];
    /// State of the ground against that in which it was tested.
    FIELD_SOIL_STATE = "field-soil-state" [];
    /// Who answers for the layers: trial pit, borehole, test.
    FIELD_SOIL_BY = "field-soil-by" [];
    /// Instead of layers: what a code presumes for this soil.
    FIELD_SOIL_PRESUMED = "field-soil-presumed" [];
    /// The code.
    FIELD_PRESUMED_CODE = "field-presumed-code" [];
    /// The soil, in that code's words.
    FIELD_PRESUMED_SOIL = "field-presumed-soil" [];
    /// Layers from the surface down.
    FIELD_SOIL_LAYER = "field-soil-layer" [];
    /// Thickness; left out of the last layer: it goes on.
    FIELD_LAYER_THICKNESS = "field-layer-thickness" [];
    /// Unit weight with the water in it.
    FIELD_LAYER_WEIGHT = "field-layer-weight" [];
    /// Undrained shear strength.
    FIELD_LAYER_UNDRAINED = "field-layer-undrained" [];
    /// California bearing ratio; its low end gives the undrained strength.
    FIELD_LAYER_CBR = "field-layer-cbr" [];
    /// Reading of a hand vane.
    FIELD_LAYER_VANE = "field-layer-vane" [];
    /// Plasticity index, for the vane.
    FIELD_LAYER_PLASTICITY = "field-layer-plasticity" [];
    /// Penetration of a dynamic cone for each blow.
    FIELD_LAYER_BLOW = "field-layer-blow" [];
    /// Cone index of a hand penetrometer.
    FIELD_LAYER_CONE = "field-layer-cone" [];
    /// A plate load test on top of this layer.
    FIELD_LAYER_PLATE = "field-layer-plate" [];
    /// Diameter of the plate.
    FIELD_PLATE_DIAMETER = "field-plate-diameter" [];
    /// Pressure that was reached.
    FIELD_PLATE_PRESSURE = "field-plate-pressure" [];
    /// Settlement under it.
    FIELD_PLATE_SETTLEMENT = "field-plate-settlement" [];
    /// Effective cohesion; left out: none.
    FIELD_LAYER_COHESION = "field-layer-cohesion" [];
    /// Effective angle of friction.
    FIELD_LAYER_FRICTION = "field-layer-friction" [];
    /// Modulus of elasticity, for settlement.
    FIELD_LAYER_MODULUS = "field-layer-modulus" [];
    /// Poisson's ratio; left out: 0.3.
    FIELD_LAYER_POISSON = "field-layer-poisson" [];
    /// Kinds of mats that lie ready.
    FIELD_MAT = "field-mat" [];
    /// Short id of the mat.
    FIELD_MAT_ID = "field-mat-id" [];
    /// Name of the mat for people.
    FIELD_MAT_NAME = "field-mat-name" [];
    /// Length along its planks, laid along the machine.
    FIELD_MAT_LENGTH = "field-mat-length" [];
    /// Width across its planks.
    FIELD_MAT_WIDTH = "field-mat-width" [];
    /// Thickness of the mat.
    FIELD_MAT_THICKNESS = "field-mat-thickness" [];
    /// Strength class of its timber (EN 338).
    FIELD_MAT_TIMBER = "field-mat-timber" [];
    /// Yield strength of a steel plate.
    FIELD_MAT_STEEL = "field-mat-steel" [];
    /// Design values that somebody declares.
    FIELD_MAT_DECLARED = "field-mat-declared" [];
    /// Design strength in bending.
    FIELD_MAT_BENDING = "field-mat-bending" [];
    /// Design strength in shear.
    FIELD_MAT_SHEAR = "field-mat-shear" [];
    /// Modulus of elasticity of the mat.
    FIELD_MAT_MODULUS = "field-mat-modulus" [];
    /// How it spreads a load: along its planks, or both ways.
    FIELD_MAT_SPREADS = "field-mat-spreads" [];
    /// Who declares the values.
    FIELD_MAT_BY = "field-mat-by" [];
    /// Level distance from toe to top edge; left out: upright.
    FIELD_EXCAVATION_BATTER = "field-excavation-batter" [];
    /// Another planning line than the usual, in the name of a competent person.
    FIELD_EXCAVATION_LINE = "field-excavation-line" [];
    /// Horizontal per vertical, from the toe.
    FIELD_EXCAVATION_LINE_SLOPE = "field-excavation-line-slope" [];
    /// The competent person who answers for it.
    FIELD_EXCAVATION_LINE_BY = "field-excavation-line-by" [];
    /// Hours since it was cut.
    FIELD_EXCAVATION_OPEN = "field-excavation-open" [];
    /// Hours for which undrained strength counts; left out: it does not.
    FIELD_EXCAVATION_UNDRAINED = "field-excavation-undrained" [];
    /// Rain, thaw or standing water since it was cut.
    FIELD_EXCAVATION_WETTED = "field-excavation-wetted" [];
    /// False where nobody may be in it; left out: people below.
    FIELD_EXCAVATION_PEOPLE = "field-excavation-people" [];
    /// Mats under its wheels or pads, by id; left out: none.
    FIELD_LIFT_MAT = "field-lift-mat" [];
    /// Steering and travel, as its maker states them.
    FIELD_STEERING = "field-steering" [];
    /// Turning radius over the outer front tyre, front wheels alone at full lock.
    FIELD_STEERING_TWO = "field-steering-two" [];
    /// The same with all four wheels at full lock.
    FIELD_STEERING_FOUR = "field-steering-four" [];
    /// True if all four wheels can steer the same way.
    FIELD_STEERING_CRAB = "field-steering-crab" [];
    /// Greatest speed with a load on.
    FIELD_TRAVEL_SPEED = "field-travel-speed" [];
    /// Working hours, from and to; left out: not stated.
    FIELD_HOURS = "field-hours" [];
    /// Places where loads wait to be fetched.
    FIELD_PICKUP = "field-pickup" [];
    /// Short name for lifts.
    FIELD_PICKUP_ID = "field-pickup-id" [];
    /// Name of the place.
    FIELD_PICKUP_NAME = "field-pickup-name" [];
    /// Where the middle of the load’s underside lies.
    FIELD_PICKUP_AT = "field-pickup-at" [];
    /// Direction in which the forks go in, clockwise from north; left out: any.
    FIELD_PICKUP_HEADING = "field-pickup-heading" [];
    /// Height of the surface that loads lie on; left out: the ground there.
    FIELD_PICKUP_LEVEL = "field-pickup-level" [];
    /// Inner face of one post, in plan.
    FIELD_GATE_FROM = "field-gate-from" [];
    /// Inner face of the other post, in plan.
    FIELD_GATE_TO = "field-gate-to" [];
    /// What the planner may choose; left out: nothing.
    FIELD_LIFT_CHOOSE = "field-lift-choose" [];
    /// Where the load waits, by its id.
    FIELD_LIFT_FROM = "field-lift-from" [];
    /// Not to begin before, to be done by.
    FIELD_LIFT_WINDOW = "field-lift-window" [];
    /// Lifts that must be done before it, by id.
    FIELD_LIFT_AFTER = "field-lift-after" [];
    /// 1 (first) to 9 (last); left out: 5.
    FIELD_LIFT_PRIORITY = "field-lift-priority" [];
    /// How long it takes; left out: estimated.
    FIELD_LIFT_MINUTES = "field-lift-minutes" [];
    /// Other machines whose reach crosses the airspace.
    FIELD_CRANE = "field-crane" [];
    /// Short name.
    FIELD_CRANE_ID = "field-crane-id" [];
    /// Name of the machine.
    FIELD_CRANE_NAME = "field-crane-name" [];
    /// The axis it turns about, in plan.
    FIELD_CRANE_AT = "field-crane-at" [];
    /// How far arm or load reach from its axis.
    FIELD_CRANE_RADIUS = "field-crane-radius" [];
    /// How far its tail swings; left out: nothing that matters.
    FIELD_CRANE_TAIL = "field-crane-tail" [];
    /// Lowest height of what swings, with the load.
    FIELD_CRANE_FROM_HEIGHT = "field-crane-from-height" [];
    /// Greatest height of what swings.
    FIELD_CRANE_TO_HEIGHT = "field-crane-to-height" [];
    /// When it works; left out: always.
    FIELD_CRANE_TIMES = "field-crane-times" [];
    /// Who has priority, in words.
    FIELD_CRANE_RULE = "field-crane-rule" [];
    /// Who set that rule.
    FIELD_CRANE_BY = "field-crane-by" [];
    /// A list of loads, one row a load and its lift.
    FIELD_LOADS_FROM = "field-loads-from" [];
    /// The list in the job folder.
    FIELD_LOADS_FROM_FILE = "field-loads-from-file" [];
    /// Condition of rows that state none.
    FIELD_LOADS_CONDITION = "field-loads-condition" [];
    /// Error of the centre of rows that state none.
    FIELD_LOADS_CENTRE_ERROR = "field-loads-centre-error" [];
    /// Wind shape factor of rows that state none.
    FIELD_LOADS_WIND_FACTOR = "field-loads-wind-factor" [];
    /// What tickets leave out, in rows that state nothing.
    FIELD_LOADS_LEFT_OUT = "field-loads-left-out" [];
    /// Height above the landing at which loads are carried in, in rows that state none.
    FIELD_LOADS_CLEAR = "field-loads-clear" [];
    /// Gust at which lifts stop, in rows that state none.
    FIELD_LOADS_STOP_GUST = "field-loads-stop-gust" [];
    /// What happens in these lifts that is forbidden; [] states nothing.
    FIELD_LOADS_STOPS = "field-loads-stops" [];
    /// A list of deliveries, one row a slot.
    FIELD_SLOTS_FROM = "field-slots-from" [];
    /// Deliveries and their slots.
    FIELD_DELIVERY = "field-delivery" [];
    /// Short name.
    FIELD_DELIVERY_ID = "field-delivery-id" [];
    /// Loads that come with it, by id.
    FIELD_DELIVERY_LOADS = "field-delivery-loads" [];
    /// When it may be unloaded, from and to.
    FIELD_DELIVERY_SLOT = "field-delivery-slot" [];
    /// Where it is unloaded, by the id of the pickup.
    FIELD_DELIVERY_PLACE = "field-delivery-place" [];
    /// Approved plans for families of lifts that are alike.
    FIELD_ROUTINE = "field-routine" [];
    /// Short name.
    FIELD_ROUTINE_ID = "field-routine-id" [];
    /// Name of the routine.
    FIELD_ROUTINE_NAME = "field-routine-name" [];
    /// Machine, by its id.
    FIELD_ROUTINE_MACHINE = "field-routine-machine" [];
    /// Attachment, by its id in the machine file.
    FIELD_ROUTINE_ATTACHMENT = "field-routine-attachment" [];
    /// On tyres, stabilizers or outriggers.
    FIELD_ROUTINE_SUPPORT = "field-routine-support" [];
    /// The heaviest and largest of the family, by its id.
    FIELD_ROUTINE_LOAD = "field-routine-load" [];
    /// Or a mass and a size that none exceeds.
    FIELD_ROUTINE_LOAD_UP_TO = "field-routine-load-up-to" [];
    /// Greatest mass, all ranges included.
    FIELD_ROUTINE_MASS = "field-routine-mass" [];
    /// Greatest depth along the forks.
    FIELD_ROUTINE_DEPTH = "field-routine-depth" [];
    /// Greatest width.
    FIELD_ROUTINE_WIDTH = "field-routine-width" [];
    /// Greatest height.
    FIELD_ROUTINE_HEIGHT = "field-routine-height" [];
    /// Landings, by id.
    FIELD_ROUTINE_LANDINGS = "field-routine-landings" [];
    /// Or the corners of an area: every landing in it.
    FIELD_ROUTINE_LANDING_AREA = "field-routine-landing-area" [];
    /// Corners of the area where the middle of its front axle stands.
    FIELD_ROUTINE_STANDS = "field-routine-stands" [];
    /// Gust at which it stops.
    FIELD_ROUTINE_STOP_GUST = "field-routine-stop-gust" [];
    /// Steepest ground that it stands on.
    FIELD_ROUTINE_GROUND = "field-routine-ground" [];
    /// Who approved it; left out: nobody, and it allows nothing.
    FIELD_ROUTINE_APPROVED = "field-routine-approved" [];
}
