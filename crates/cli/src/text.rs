//! Ids of the sentences that only the command line says. `wording` has the words.

evidence::messages! {
    /// Heading of `check`: inside the chart.
    CHECK_INSIDE = "cli-check-inside" [];
    /// Heading of `check`: outside the chart.
    CHECK_OUTSIDE = "cli-check-outside" [];
    /// What governs: `capacity` in zone `zone` at `reach` by the chart's own datum and `height`.
    CHECK_GOVERNS = "cli-check-governs" [capacity, zone, reach, height];
    /// The chart shows nothing at `reach` and `height`.
    CHECK_NOTHING = "cli-check-nothing" [reach, height];
    /// How much further, higher, heavier would still be inside.
    CHECK_ROOM = "cli-check-room" [further, higher, heavier];
    /// The load is `over` too heavy there.
    CHECK_OVER = "cli-check-over" [over];
    /// The load centre is beyond the rated one by `excess`: added to the reach.
    CHECK_EXCESS = "cli-check-excess" [excess];
    /// Forks need the load's centre: `--load-centre` is missing.
    NO_LOAD_CENTRE = "cli-no-load-centre" [];
    /// Hint: measure from the fork face to the middle of the load; half its depth for an even pack.
    HINT_LOAD_CENTRE = "cli-hint-load-centre" [];
    /// Heading over the list of checks that this look did not make.
    CHECK_NOT_MADE = "cli-check-not-made" [];
    /// This is not a go: only a plan can say that.
    CHECK_NOT_GO = "cli-check-not-go" [];
    /// The machine has no attachment `attachment`; it has `known`.
    NO_ATTACHMENT = "cli-no-attachment" [attachment, known];
    /// No chart for this attachment and support state.
    NO_CHART = "cli-no-chart" [attachment];
    /// Distance to a hook with forks, or to forks with a hook.
    WRONG_POINT = "cli-wrong-point" [];
    /// Hint: measure to the point this attachment has.
    HINT_WRONG_POINT = "cli-hint-wrong-point" [];
    /// The job folder has no job file; `file` is the name looked for.
    NO_JOB = "cli-no-job" [file];
    /// Hint: `counterpoise new` makes a job.
    HINT_NEW = "cli-hint-new" [];
    /// File cannot be read; `reason` in the system's words.
    CANNOT_READ = "cli-cannot-read" [file, reason];
    /// File or folder cannot be written.
    CANNOT_WRITE = "cli-cannot-write" [file, reason];
    /// Folder exists and holds something that is not an earlier plan: left alone.
    OUT_NOT_OURS = "cli-out-not-ours" [folder];
    /// Hint: name another folder or empty this one.
    HINT_OUT = "cli-hint-out" [];
    /// New job written to `folder`; next: fill it in, plan it.
    NEW_WRITTEN = "cli-new-written" [folder];
    /// Folder for a new job is not empty.
    NEW_NOT_EMPTY = "cli-new-not-empty" [folder];
    /// Written to `folder`.
    WRITTEN = "cli-written" [folder];
    /// The page is at `address`; end with Ctrl+C.
    SERVING = "cli-serving" [address];
    /// The page cannot be served: `reason`.
    CANNOT_SERVE = "cli-cannot-serve" [reason];
    /// The plan sheet could not be made: `reason`.
    NO_SHEET = "cli-no-sheet" [reason];
    /// Level tipping load line: over the front line.
    STABILITY_TIPPING_LOAD = "cli-stability-tipping-load" [mass];
    /// No load there tips it forward on level ground.
    STABILITY_NO_TIPPING_LOAD = "cli-stability-no-tipping-load" [];
    /// Tilt at onset and the side it goes over.
    STABILITY_ONSET = "cli-stability-onset" [tilt, side];
    /// It does not tip before 90° in that direction.
    STABILITY_NO_ONSET = "cli-stability-no-onset" [];
    /// Level machine tips already with that load.
    STABILITY_TIPPED = "cli-stability-tipped" [side];
    /// Reach from the front face of the tyres to the load centre, and lift height.
    STABILITY_AT = "cli-stability-at" [reach, height];
    /// Extension or angle beyond the boom's range.
    BOOM_RANGE = "cli-boom-range" [what, value, low, high];
    /// Stabilizers asked for, machine has none.
    NO_SUCH_SUPPORT = "cli-no-such-support" [support];
    /// One stiffness without the other.
    BOTH_STIFFNESSES = "cli-both-stiffnesses" [other];
    /// Tilt at the onset on contacts that give, in the worst direction.
    STABILITY_ON_SPRINGS = "cli-stability-on-springs" [tilt];
    /// Forces on contacts that give, standing level.
    STABILITY_FORCES = "cli-stability-forces" [forces];
    /// On contacts that give it does not stand level, or nothing can be told.
    STABILITY_NOT_ON_SPRINGS = "cli-stability-not-on-springs" [];
    /// Levelled, on a machine that cannot.
    NO_LEVELLING = "cli-no-levelling" [];
    /// Levelled by more than the machine can.
    LEVELLED_OVER = "cli-levelled-over" [range];
    /// Chart calculation: capacity and the zone that governs.
    CHART_CAPACITY = "cli-chart-capacity" [capacity, zone];
    /// Chart calculation: nothing shown there.
    CHART_OUTSIDE_HERE = "cli-chart-outside" [reach, height];
    /// Chart calculation: load against capacity: share left.
    CHART_RESERVE = "cli-chart-reserve" [mass, share];

    // The quick look and people.
    /// The attachment is a platform for people: no look-up.
    NO_PEOPLE = "cli-no-people" [];
    /// Hint: who may plan that.
    HINT_NO_PEOPLE = "cli-hint-no-people" [];

    // Wind and driving, alone.
    /// A part that the wind sees, by the name stated.
    WIND_NAMED = "cli-wind-named" [name];
    /// Pressure and greatest force of a gust.
    WIND_FORCE = "cli-wind-force" [gust, pressure, force];
    /// What a gust does over a line: moment, direction it pushes to, tilt left and asked for.
    WIND_LINE = "cli-wind-line" [side, moment, towards, tilt, required];
    /// Gust at which the tilt asked for is just left, and its forecast mean.
    WIND_LIMIT = "cli-wind-limit" [gust, height, mean];
    /// The same where it is higher than the wind profile goes.
    WIND_LIMIT_HIGH = "cli-wind-limit-high" [gust, height];
    /// The tilt asked for is not there without any wind.
    WIND_SHORT_CALM = "cli-wind-short-calm" [side];
    /// No wind overturns it that way.
    WIND_NO_LIMIT = "cli-wind-no-limit" [];
    /// The maker's limit comes first.
    WIND_NOT_A_LIMIT = "cli-wind-not-a-limit" [];
    /// Which line governs.
    CALC_GOVERNS = "cli-calc-governs" [side];
    /// Case: at rest.
    CASE_AT_REST = "cli-case-at-rest" [];
    /// Case: braking.
    CASE_BRAKING = "cli-case-braking" [];
    /// Case: starting as hard as it brakes.
    CASE_STARTING = "cli-case-starting" [];
    /// Case: turning left.
    CASE_TURNING_LEFT = "cli-case-turning-left" [];
    /// Case: turning right.
    CASE_TURNING_RIGHT = "cli-case-turning-right" [];
    /// Case: braking in a turn to the left.
    CASE_BRAKING_LEFT = "cli-case-braking-left" [];
    /// Case: braking in a turn to the right.
    CASE_BRAKING_RIGHT = "cli-case-braking-right" [];
    /// Case: stopped dead by a kerb.
    CASE_KERB = "cli-case-kerb" [];
    /// Case: wheels drop into a rut.
    CASE_WHEEL_DROP = "cli-case-wheel-drop" [];
    /// What a case leaves: tilt, and share of what is there at rest.
    TRAVEL_LINE = "cli-travel-line" [case, side, tilt, share];
    /// What a case leaves by energy.
    TRAVEL_ENERGY = "cli-travel-energy" [case, side, share];
    /// Which case governs.
    TRAVEL_GOVERNS = "cli-travel-governs" [case, side];
    /// The case in which it tips.
    TRAVEL_TIPS = "cli-travel-tips" [case, side];
    /// Speed below which no kerb tips it.
    TRAVEL_KERB_SPEED = "cli-travel-kerb-speed" [speed];
    /// Share on the steering rear axle at rest and least.
    TRAVEL_REAR = "cli-travel-rear" [rest, least];
    /// The same where the rear axle lifts: nothing steers.
    TRAVEL_REAR_LIFTS = "cli-travel-rear-lifts" [rest];
    /// Stopping distance.
    TRAVEL_STOPS = "cli-travel-stops" [distance, time];
    /// It does not stop on that grade.
    TRAVEL_NEVER_STOPS = "cli-travel-never-stops" [];
    /// Tyres slide.
    TRAVEL_SLIDES = "cli-travel-slides" [needed, friction];
    /// Tyres hold, and would slide before it tips.
    TRAVEL_SLIDES_FIRST = "cli-travel-slides-first" [needed, friction];
    /// Tyres hold, and it would tip before they slide.
    TRAVEL_TIPS_FIRST = "cli-travel-tips-first" [needed, friction];
    /// The load slides on the forks.
    TRAVEL_LOAD_SLIDES = "cli-travel-load-slides" [needed, friction];
    /// The load stays on the forks.
    TRAVEL_LOAD_STAYS = "cli-travel-load-stays" [needed, friction];
    /// Nothing presses the load on the forks.
    TRAVEL_LOAD_OFF = "cli-travel-load-off" [];
    /// Nothing can be told.
    TRAVEL_CANNOT_TELL = "cli-travel-cannot-tell" [];
    /// The boom is above the carry position.
    TRAVEL_BOOM_UP = "cli-travel-boom-up" [];
    /// A hung load swings.
    TRAVEL_HUNG = "cli-travel-hung" [];
    /// A case leaves nothing.
    TRAVEL_NONE_LEFT = "cli-travel-none-left" [case, side];
    /// A case leaves less tilt than is asked for.
    TRAVEL_SHORT = "cli-travel-short" [case, side, tilt, required];
    /// No radius stated.
    TRAVEL_STRAIGHT = "cli-travel-straight" [];
    /// What the maker allows when driving comes first.
    TRAVEL_CARRY = "cli-travel-carry" [];

    // Lifts by their id.
    /// The job has no lift of that id.
    NO_LIFT = "cli-no-lift" [lift];
    /// Hint: the ids that there are.
    HINT_NO_LIFT = "cli-hint-no-lift" [known];
}
