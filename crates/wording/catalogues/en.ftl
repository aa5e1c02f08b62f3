### English. Plain words for people on site. Arguments arrive as ready text, in the reader's units.

## Verdict, status, severity, certainty, source

ui-verdict-go = GO
ui-verdict-conditions = GO WITH CONDITIONS
ui-verdict-no-go = NO-GO
ui-verdict-go-means = Every check is within its limit, with the required reserve.
ui-verdict-conditions-means = Allowed only if every condition below is met.
ui-verdict-no-go-means = Do not make this lift. See what governs and what to do.
ui-status-go = Go
ui-status-condition = Condition
ui-status-cannot-tell = Cannot tell
ui-status-no-go = No-go
ui-status-stop = Stop
ui-severity-error = Error
ui-severity-warning = Warning
ui-signal-danger = DANGER
ui-signal-warning = WARNING
ui-signal-caution = CAUTION
ui-signal-notice = NOTICE
ui-certainty-plate = from the plate
ui-certainty-manual = from the maker's manual
ui-certainty-chart = from the chart in the cab
ui-certainty-weighed = weighed
ui-certainty-ticket = from the delivery ticket
ui-certainty-measured = measured
ui-certainty-built-up = built up from parts
ui-certainty-estimated = estimated
ui-certainty-stated = stated by a named person
ui-certainty-invented = invented
ui-source-published = { $citation }
ui-source-second-hand = { $citation } (read second hand)
ui-source-from-memory = { $citation } (clause not checked)
ui-source-common-practice = common practice
ui-source-mechanics = mechanics
ui-source-input = { $place }, { $certainty }
ui-source-person = { $name } states: { $statement }
ui-source-person-only = stated by { $name }

## Citations that are sentences (the source text in the code maps to them)

ui-citation-tyre-patch = tyre patch = wheel force / inflation pressure, handbook practice
ui-citation-tilt-tests = ISO 22915-14, after its kind of test

## Places in input files

ui-place-file = { $file }
ui-place-line = { $file }, line { $line }
ui-place-column = { $file }, line { $line }, column { $column }
ui-place-key = { $place }, at { $key }

## Missing and doubtful values

ui-not-known = not known
ui-assumed = assumed
ui-invented-data = invented data
ui-invented-data-note = Machine, people and site in this job are invented. No lift may be made from it.
ui-none = none
ui-yes = Yes
ui-no = No

## Headings

ui-governs = What governs
ui-findings = Findings
ui-check = Check
ui-result = Result
ui-demand = Demand
ui-limit = Limit
ui-reserve = Reserve
ui-reserve-of = { $share } in reserve
ui-reserve-over = { $share } beyond the limit
ui-what-to-do = What to do
ui-working = Working
ui-formula = Formula
ui-values = Values
ui-source = Source
ui-inputs = Inputs
ui-assumed-inputs = Assumed, not measured
ui-cautions = Cautions
ui-emergency = In an emergency
ui-steps = Steps
ui-conditions = Conditions
ui-ends = This plan ends when
ui-load-chart = Load chart
ui-side-view = Side view
ui-plan-view = View from above
ui-ground-profile = Ground profile
ui-stand-field = Stand field
ui-plan-sheet = Plan sheet
ui-cab-card = Cab card
ui-job = Job
ui-site = Site
ui-lift = Lift
ui-lifts = Lifts
ui-verdict = Verdict
ui-machine = Machine
ui-attachment = Attachment
ui-support = Support
ui-load = Load
ui-stand = Stand
ui-stands = Stands
ui-best-stands = Best stands
ui-landing = Landing
ui-pick-up = Pick-up
ui-boom-movement = Boom movement
ui-wheel-forces = Wheel forces
ui-tolerance = How far off it may be
ui-tolerance-sentence = The verdict holds if the machine stands within { $radius } of the mark and within { $angle } of the heading.
ui-date = Date
ui-prepared-by = Prepared by
ui-approved-by = Approved by
ui-briefed = Briefed
ui-operator = Operator
ui-signaller = Signaller
ui-supervisor = Lift supervisor
ui-signature = Signature
ui-name = Name
ui-remarks = Remarks

## Names of measured things

ui-reach = Reach
ui-lift-height = Lift height
ui-boom-angle = Boom angle
ui-extension = Extension
ui-slope-along = Slope along
ui-slope-across = Slope across
ui-heading = Heading
ui-mass = Mass
ui-capacity = Capacity
ui-load-centre = Load centre
ui-centre-of-gravity = Centre of gravity
ui-tipping-line = Tipping line
ui-distance = Distance
ui-height = Height
ui-width = Width
ui-length = Length
ui-depth = Depth
ui-slope = Slope
ui-force = Force
ui-bearing-pressure = Bearing pressure
ui-stop-gust = Stop at a gust of
ui-voltage = Voltage
ui-clearance = Clearance
ui-ground-accuracy = Accuracy of the ground heights

## Drawings

ui-zone-capacity = { $zone }: { $capacity }
ui-zone = Zone { $zone }
ui-not-permitted = Not permitted
ui-this-lift = This lift
ui-point-box = Where the point may lie
ui-north = North
ui-scale = Scale { $scale }
ui-legend = Key
ui-overhead-line = Overhead line
ui-required-distance = Required distance
ui-ground = Ground
ui-exclusion-zone = Exclusion zone
ui-side-view-alt = Side view of lift { $lift }: the load at reach { $reach } and height { $height }.
ui-load-chart-alt = Load chart of lift { $lift }: { $capacity } at reach { $reach } and height { $height }.
ui-plan-view-alt = Lift { $lift } seen from above, with stand, landing, lines and obstacles.

## Pages, files, commands

ui-page-of = Page { $page } of { $pages }
ui-made-by = Counterpoise { $version }, plan { $digest }
ui-lifts-summary = { $lifts ->
    [one] { $lifts } lift
   *[other] { $lifts } lifts
}: { $go } go, { $conditions } go with conditions, { $no_go } no-go
ui-faults-summary = { $errors ->
    [one] { $errors } error
   *[other] { $errors } errors
}, { $warnings ->
    [one] { $warnings } warning
   *[other] { $warnings } warnings
}
ui-hint = Hint: { $hint }
ui-language = Language
ui-units = Units
ui-units-si = Metric (SI)
ui-units-us = US customary
ui-print = Print
ui-download-pdf = Download PDF
ui-show-working = Show the working
ui-hide-working = Hide the working
ui-back = Back
ui-computing = Computing…
ui-no-connection = No connection. What you see is the last answer, not a new one.
ui-check-again = Check again
ui-changed-values = Changed from the job file

## What is wrong with a typed quantity (wording::entry)

entry-empty = nothing is written here
entry-no-number = “{ $part }” is not a number
entry-bad-number = “{ $part }” does not read as one number
entry-not-finite = “{ $part }” is not a number that can be measured
entry-ambiguous-separator = “{ $part }” can be read in two ways
entry-missing-unit = “{ $part }” has no unit; { $wanted } is wanted
entry-unknown-unit = the unit “{ $unit }” is not known; { $wanted } is wanted
entry-ambiguous-unit = “{ $unit }” means different things to different people
entry-wrong-dimension = “{ $unit }” measures { $found }; { $wanted } is wanted
entry-ambiguous-ratio = “{ $part }” may be rise to run or run to rise
entry-too-steep = “{ $part }” is as steep as a wall
entry-bad-parts = “{ $part }” does not fit after the part before it
entry-trailing = “{ $part }” is too much here
entry-negative = “{ $part }” is below zero, which cannot be
entry-zero = “{ $part }” must be more than zero
entry-hint-number-first = Write the number first, then the unit.
entry-hint-plain-digits = Write digits with at most one decimal point or comma.
entry-hint-either = Write { $first } or { $second }, whichever is meant.
entry-hint-nearest = Did you mean { $nearest }?
entry-hint-units = Possible: { $units }.
entry-hint-ratio = Write 1:n for rise to run, or a percentage, or mark both parts: 1V:2H.
entry-hint-parts = Write from large to small, each less than one of the unit before: 5 ft 6 in.
entry-hint-remove = Take it away, or write it as a value of its own.
entry-dimension-length = a length
entry-dimension-area = an area
entry-dimension-volume = a volume
entry-dimension-mass = a mass
entry-dimension-angle = an angle
entry-dimension-slope = a slope
entry-dimension-ratio = a share
entry-dimension-number = a plain number
entry-dimension-force = a force
entry-dimension-moment = a moment
entry-dimension-pressure = a pressure
entry-dimension-speed = a speed
entry-dimension-voltage = a voltage
entry-dimension-density = a density
entry-dimension-stiffness = a stiffness

## Labels in drawings, and the plan sheet

ui-not-posed = Not drawn: the machine could not be placed at this stand. See the findings.
ui-no-chart = Not drawn: there is no load chart for this machine, attachment and support state.
ui-line-number = Line { $number }
ui-line-keep = keep { $distance } away
ui-line-no-required = voltage not known, so the required distance is not known
ui-voltage-not-known = voltage not known
ui-line-nearest = nearest distance found { $distance }
ui-line-aside = { $distance } to the side of this view
ui-outside-picture = outside this picture
ui-ground-not-known = ground not known
ui-slope-not-known = Slope of the ground not known.
ui-seen-from-right = Seen from the right-hand side of the machine.
ui-nose-up = Ground along the machine { $slope }, front higher
ui-nose-down = Ground along the machine { $slope }, front lower
ui-left-low = across { $slope }, left side lower
ui-right-low = across { $slope }, right side lower
ui-load-gravity = Centre of gravity of the load
ui-chart-point = Point read on the load chart
ui-load-of-capacity = { $load } of { $capacity }
ui-load-up-to = Load, at most
ui-no-zone = The chart shows nothing here: not permitted
ui-rated-load-centre = Rated load centre { $distance }
ui-capacity-cap = No zone counts for more than { $capacity }: the load centre is beyond the rated one
ui-shown-clear = Shown with the load held clear, not yet set down or just taken up.
ui-zone-carries = Carries this load, with the share left as written in the zone
ui-needs-has = needs { $required }, has { $there }
ui-asks-may = { $demand }, allowed { $limit }
ui-figures = Figures
ui-mass-counted = { $mass }, counted { $counted }
ui-to-line = to line { $number }: { $distance }
ui-rear-view = Seen from behind
ui-leans-left = leans { $angle } to the left, counted { $most }
ui-leans-right = leans { $angle } to the right, counted { $most }
ui-rear-sketch = The lean is drawn true, the machine as a sketch.
ui-accepted = Accepted by name
ui-accepted-see = Accepted by name: statement { $number }
ui-working-as = as under “{ $check }”
ui-zone-too-heavy = Load too heavy here
ui-outside-zones = Outside every zone: not permitted
ui-share-left = { $share } left
ui-too-heavy = too heavy
ui-planned-by = Planned by
ui-checked-by = Checked by
ui-briefed-operator = Operator, briefed
ui-sign-off = Sign-off
ui-sign-off-note = Signed only after the inputs were compared with the machine, the load and the ground on site.
ui-no-lifts = This job has no lifts. Nothing was checked, so nothing is released.
ui-certainty = How sure
ui-place = Where it stands
ui-value = Value
ui-warnings = Warnings about the inputs
ui-working-note = Every step with its formula, the values put in and the source, as computed. SI units inside; shown in the reader's units.
ui-over-limit = beyond the limit
ui-in-reserve = in reserve
ui-no-number = no figure
ui-area = Area
ui-wheel = Wheel or pad
ui-position = Position
ui-east-north = { $east } east, { $north } north
ui-size = Size (depth × width × height)
ui-from-to = { $value } ({ $low } to { $high })
ui-checks-of = { $met } of { $checks } checks met
ui-engine-version = Counterpoise { $version }
ui-digest = Digest
ui-lift-of = Lift { $number } of { $lifts }
ui-ground-file = Ground heights from
ui-wheel-heights = Ground under the wheels
ui-printed = Printed

## The screen

ui-all-lifts = All lifts
ui-light-choice = Screen
ui-light-auto = As the device
ui-light-day = Light, for daylight
ui-light-night = Dark, for the night
ui-reading-choices = Language, units, screen
ui-loading = Fetching the plan…
ui-try-again = Ask again
ui-server-gone = The server does not answer.
ui-server-gone-old = What you see is old and may no longer hold. It is asked again every two seconds.
ui-last-answer = Last answer at
ui-old = Old
ui-plan-changed = The plan has changed. This is the new one: read it again.
ui-no-drawing = No drawing: see the findings for what is missing.
ui-drawing-larger = Larger
ui-drawing-fit = Fit to the screen
ui-drawings = Drawings
ui-where = Where
ui-against = What stands against it
ui-within = Within their limits
ui-no-working = Nothing was calculated here.
ui-no-steps = No steps: this lift must not be made as planned.
ui-paper-a4 = A4
ui-paper-letter = US letter
ui-plain-page = Plain page
ui-to-content = To the content
ui-lift-unknown = There is no such lift in this plan.
ui-needs = Needs
ui-has = Has
ui-task-set-down = Set down on
ui-task-pick-up = Pick up from
ui-front-tyres = Front tyres
ui-from-landing = { $distance } from the landing's edge
ui-past-landing = { $distance } past the landing's edge
ui-aim = Aim
ui-aim-middle = at its middle
ui-aim-left = { $distance } left of its middle
ui-aim-right = { $distance } right of its middle
ui-heading-compass = { $heading } ({ $compass })
ui-compass-north = north
ui-compass-north-east = north-east
ui-compass-east = east
ui-compass-south-east = south-east
ui-compass-south = south
ui-compass-south-west = south-west
ui-compass-west = west
ui-compass-north-west = north-west
ui-emergency-button = Emergency
ui-being-made = being made…
ui-made = made, open it
ui-not-made = could not be made, ask again
ui-goes-on-aside = The drawing goes on to the side.
ui-to-the-left = To the left
ui-to-the-right = To the right

## Names of checks (planning)

check-machine = Machine fit for work
check-stops = Forbidden outright
check-load = Load
check-attachment = Attachment
check-forks = Fork blades
check-rigging = Slings and hook
check-level = Level
check-chart = Load chart
check-load-factor = Tipping: load factor
check-tilt = Tipping: how far it can still lean
check-wind = Wind
check-line = Overhead lines
check-ground = Ground under wheels and pads
check-landing = Strength of the landing
check-approach = Approach to the landing
check-edges = Edges, excavations and drops
check-buried = Buried services and voids
check-obstacles = Obstacles
check-people = People
check-route = Way in and out

## A lift that is not whole

lift-unresolved = This lift names a machine, load or landing that the job does not have.

## Machine

machine-inspected = { $machine } was inspected before use and found fit, by { $by }.
machine-not-inspected = Nobody has inspected { $machine } before use yet.
machine-tagged-out = { $machine } is tagged out: { $reason }. It does not work until it is released in writing.
do-inspect = Make the pre-use inspection and put the inspector's name in the job.
do-repair = Take another machine, or have this one repaired and released in writing.

## Forbidden outright

stop-none = Nothing in this lift is forbidden outright.
stop-people = People would be raised. That is never planned here, on forks or on anything the forks carry.
stop-shared = The load would be shared with another machine.
stop-drag = The boom would push, pull or drag.
stop-boom-up = The machine would drive or level its frame with the boom up.
stop-hand = Someone would steady the load by hand.
stop-seat = The operator would leave the seat with the load raised.
do-no-people = Raise people only with a machine that its maker made for people.
do-one-machine = Have one machine carry the whole load.
do-lift-clear = Lift the load clear before it moves. Never push, pull or drag with the boom.
do-boom-down = Lower and retract the boom before driving or levelling.
do-tag-lines = Guide the load with tag lines and keep hands off it.
do-stay-seated = Set the load down before leaving the seat.

## Load

load-sound = The load was looked at before lifting and is sound: pallet, bands and wrap, or slings and lifting points.
load-not-seen = Nobody has looked at the pallet, bands and wrap yet.
load-unsound = The pallet, bands or wrap are not sound.
load-wrong-tool = { $attachment } does not fit this kind of load: hung loads go on a hook, standing loads on forks.
do-look-at-load = Look at the pallet, bands and wrap before lifting.
do-repack = Have the load repacked before it is lifted.
do-fitting-tool = Take the attachment that fits this load.

## Attachment

attachment-fit = { $attachment }: listed for this machine, lock seen closed, carries { $mass } of the { $capacity } it may carry.
attachment-unknown = { $attachment } is not listed for { $machine }. Listed: { $known }.
attachment-open = The lock of { $attachment } was seen open.
attachment-not-seen = Nobody has looked at the lock of { $attachment } yet.
attachment-overloaded = { $mass } is more than { $attachment } may carry: { $capacity }.
do-see-lock = Close the lock and look at it from the ground before lifting.
do-lighten = Lift at most { $mass } in one go, by ticket or scales.
do-listed-attachment = Take an attachment that the maker lists for this machine.

## Fork blades

forks-within = The blades carry { $capacity } with the load centre at { $centre }; the load is { $mass }.
forks-overloaded = { $mass } is more than the blades carry with the load centre at { $centre }: { $capacity }.
forks-worn = The { $side } blade is worn by { $wear }. At 10 % it goes out of service.
forks-modified = The { $side } blade was modified.
forks-short = The load is { $depth } deep and the blades are { $length } long: more than a third of the load would hang over.
forks-off-centre = The centre of the load is { $offset } off the middle, so it is not between the blades, which stand { $spread } apart.
do-new-forks = Take the blades out of service and fit sound ones.
do-look-at-forks = Have the blades looked at and measured, and put the results into the machine file.
do-longer-forks = Take longer blades, or turn the load.
do-centre-load = Centre the load between the blades.
side-left = left
side-right = right
side-front = front
side-rear = rear

## Slings and hook

rigging-within = The worst sling leg takes { $force }; it may take { $limit }.
rigging-overloaded = The worst sling leg would take { $force }, more than it may: { $limit }.
rigging-angle = Sling legs lean { $angle } from the vertical; at most { $limit } is allowed.
rigging-none = The load hangs, and nobody has stated its slings.
rigging-no-tag-lines = No tag lines are planned for the hung load.
do-stronger-slings = Take stronger or longer slings, so that the legs hang steeper.
do-state-rigging = State the number of legs, their angle and their working load limit.

## Level

level-within = Level enough: { $across } across (allowed { $tolerance_across }) and { $along } along (allowed { $tolerance_along }), survey accuracy included.
level-sideways = Too far out of level sideways: { $across }, allowed { $tolerance }.
level-fore-aft = Too far out of level along the machine: { $along }, allowed { $tolerance }.
level-twist = The ground is twisted by { $twist }; the rear axle reaches its stop at { $limit }.
level-no-ground = The height of the ground is not known here: { $wheel }.
level-no-tolerance = Whether it is level enough cannot be told: without a load chart there is no tolerance to hold it against.
do-level-stand = Take a stand that is level. Levelling the frame is not counted.
do-survey = Survey this stand, or measure its levels by tape and level.

## Load chart

chart-within = { $mass } is within the chart: { $capacity } in zone { $zone } at reach { $reach } and height { $height }.
chart-exceeded = { $mass } here is more than the chart allows: { $capacity } in zone { $zone } at reach { $reach } and height { $height }.
chart-exceeded-on-the-way = { $mass } is more than the chart allows on the way there: { $capacity } in zone { $zone }, with the boom at reach { $reach } and height { $height }.
chart-outside = The chart shows nothing at reach { $reach } and height { $height }: a lift there is not permitted.
chart-outside-on-the-way = On the way there the boom passes reach { $reach } and height { $height }, where the chart shows nothing.
chart-none = There is no load chart for { $attachment } { $support }.
chart-out-of-reach = The boom does not get to reach { $reach } and height { $height }.
chart-not-read = The load chart was not read: { $why }.
chart-high-load = The centre of this load is { $height } above the forks, higher than the { $tested } that the chart was tested with. Tipping was computed for this height, the chart itself does not show it.
do-ask-maker-height = Have the maker or hirer confirm in writing that the chart holds for this load height, or repack the load lower.
do-nearer = Stand { $distance } nearer. Chart, level, tipping and approach pass there; look at everything else again.
do-other-machine = Take a machine, attachment or support state that has a load chart for this.
support-tyres = on tyres
support-stabilizers = on stabilizers
support-outriggers = on outriggers

## Tipping

load-factor-enough = It would start to tip at { $tipping }, { $factor } times the load; at least { $required } times is required.
load-factor-short = It would start to tip at { $tipping }, { $factor } times the load; at least { $required } times is required.
load-factor-never = No load tips it in this position; at least { $required } times the load is required.
statics-not-done = Tipping was not computed: { $why }.
do-less-reach = Take less load or less reach.
tilt-enough = It can lean another { $tilt } to the { $side } before it tips; at least { $required } is required.
tilt-short = It can lean only another { $tilt } to the { $side } before it tips; at least { $required } is required.
tilt-tips = As planned, it tips to the { $side }.
why-no-ground = no ground height is known under every wheel
why-no-reach = the boom does not get to the landing from this stand
why-no-attachment = the machine does not know this attachment

## Wind

wind-within = Work stops at gusts of { $gust }, within the maker's limit of { $limit }.
wind-above = Work would stop only at gusts of { $gust }, above the maker's limit of { $limit }.
wind-not-stated = Nobody has stated the wind at which work stops.
wind-no-limit = Work stops at gusts of { $gust }, but the maker's wind limit is not known.
do-lower-wind = Stop work at gusts of { $limit } at the latest.
do-state-wind = State the gust at which work stops.
do-ask-wind = Ask the maker for the wind limit, and measure the wind at boom height.

## Overhead lines

line-none = Every overhead line within reach is in this plan, as stated by { $by }.
line-not-stated = Nobody has stated yet that every overhead line within reach is in this plan.
line-clear = { $line } stays at least { $distance } away over the whole movement, required { $required }.
line-near = Too near to { $line }: { $distance }, required { $required }.
line-no-voltage = The voltage of { $line } is not known.
line-no-height = The height of { $line } is not known.
line-voltage-above-table = { $line } carries { $voltage }, more than the table of distances covers. Its owner or a licensed engineer must state the distance.
line-far = { $line } is { $distance } away, farther than any rule asks at up to 1,000 kV.
line-not-checked = The distance to { $line } was not checked: { $why }.
line-dead = { $line } is switched off and visibly grounded at the work, as confirmed under permit { $permit } by { $owner }.
line-planning-zone = { $line } is { $distance } from the hung load, beyond the required { $required } but within { $zone }: the extra precautions for hung loads near lines apply.
do-line-away = Move the work { $distance } farther from the line, or have its owner switch it off, ground it where it can be seen and confirm in writing.
do-ground-line = A line that is not visibly grounded at the work counts as live. Have its owner ground it and confirm in writing.
do-ask-voltage = Ask the owner of the line for its voltage.
do-measure-line = Have the heights measured by a means that does not come near the line.
do-look-up = Walk the whole way, look up, and have someone state by name what lines there are.
do-planning-zone = Hold a meeting on the line, tell its owner, mark the limit on the ground, post a spotter, and use tag lines that do not conduct.

## Ground

ground-unknown = Nobody knows what this ground carries. { $wheel } presses with { $force }: { $pressure }.
ground-carries = { $wheel } presses with { $pressure }; the ground carries { $strength }, as stated by { $by }.
ground-weak = { $wheel } presses with { $pressure }, more than the ground carries: { $strength }, as stated by { $by }.
ground-no-patch = { $wheel } presses with { $force }, but its area is not known, so the pressure cannot be told.
ground-no-strength = The ground was accepted without stating a strength, by { $by }.
ground-not-checked = The wheel forces were not computed: { $why }.
do-state-ground = Have a named competent person state the strength of the ground; it must carry { $pressure }.
do-mats = Lay mats, or take another stand.
do-tyre-pressure = Give the tyre pressure or the size of the pads.
wheel-front-left = Front left wheel
wheel-front-right = Front right wheel
wheel-rear-left = Rear left wheel
wheel-rear-right = Rear right wheel
pad-left = Left stabilizer pad
pad-right = Right stabilizer pad
pad-rear-left = Left rear outrigger pad
pad-rear-right = Right rear outrigger pad

## Landing and approach

landing-carries = { $landing }: carries { $rating }, as stated by { $by }. With this load { $mass } will lie there.
landing-overloaded = { $landing }: with this load { $mass } would lie there, more than it carries: { $rating }, as stated by { $by }.
landing-no-rating = { $landing }: nobody knows what it carries. With this load { $mass } will lie there.
landing-relieved = { $landing }: carries this load already and is relieved of it.
do-ask-rating = Ask the designer of the landing what it carries, and put the name in the job.
do-clear-landing = Clear { $mass } from the landing first, or bring less.
approach-square = The boom points at the landing from the allowed side, at most { $offset } off its middle with the stand error.
approach-past = The boom points up to { $offset } past the middle of the landing, the stand error counted; { $allowed } is allowed.
approach-too-small = The load does not fit on the landing: it is { $width } across and { $depth } along, the landing { $across } across and { $along } along.
approach-no-withdrawal = The boom alone can pull the forks straight out by { $room }, but they lie { $length } under the load.
approach-wrong-side = The approach is { $angle } off the allowed direction; { $tolerance } is allowed.
approach-any = The boom points at the landing, at most { $offset } off its middle with the stand error. No direction of approach is given, so any was taken.
approach-not-checked = Whether the boom points at the landing was not checked: { $why }.
approach-behind = The landing lies behind the machine.
do-turn = Turn the machine to heading { $heading }.
do-farther = Stand about { $distance } farther back, so that the boom alone can pull the forks out. Never back away with the boom up.
do-larger-landing = Use a larger landing, or turn the load.
do-state-approach = State from which direction the landing takes loads.

## Matters that a person must answer for

matter-accepted = { $by } answers for “{ $matter }”: { $statement }
matter-open = Nobody answers for “{ $matter }” yet, and Counterpoise does not compute it.
do-state-matter = Have a named competent person look at it on site and state the result.

## Steps for the operator

step-drive-in = Seat belt on, boom down and retracted. Drive in and stop at heading { $heading }. Parking brake on, transmission in neutral.
step-read-level = Before raising, read the level indicator in the cab: at most { $across } to either side and { $along } fore and aft. It overrules this plan: if it shows more, do not raise.
step-stabilizers = Lower the stabilizers until they carry, as the manual says, with the boom still down.
step-outriggers = Lower all outriggers until no tyre carries, level the machine on them as the manual says, boom still down.
step-hang-plumb = Lift only with the hook plumb over the load. Tag lines held from aside, nobody under the load or between it and a structure.
step-trial-lift = Trial lift: raise the load { $system ->
    [us] 4 to 8 in
   *[other] 0.1 to 0.2 m
}. Watch level, tyres and load. If anything is not as expected, set it down.
step-raise = Raise the boom, still retracted, to { $angle } on the angle indicator.
step-extend = Extend the boom to { $extension }.
step-enter-forks = Bring the forks in level, fully under the load, carriage against it. Nobody on the deck or stack, nobody on the far side.
step-hook-on = Have the load slung and hooked on, take up the slack, and wait until everyone is clear.
step-take-away = Lift clear by { $height }. If it does not come clear, set it down again where it was. Retract until the load is off the deck or stack, lower it for carrying, and only then drive.
step-set-down = Lower the load straight down by about { $height }: boom down and in together, to { $angle } and { $extension }. Set it down slowly.
step-withdraw = Retract the boom to draw the forks straight out, level and free of the load, without driving. Once they are out: retract fully, lower, and only then drive.
step-unhook = Have it unhooked only when the load stands by itself and the slings are slack. When everyone is clear: retract, lower, and only then drive.
step-stop-when = At any moment: stop if gusts reach { $gust }, the machine leans, the ground gives, a person comes near, or you lose sight of the load or the signaller.

## Cautions and emergency

caution-manual = The maker's manual and the chart in the cab govern. A result of Counterpoise never overrides them and never makes a lift legal.
caution-competent = Local law, the site's competent person and licensed engineers decide.
caution-inputs = Results rest on the inputs. Look at which of them were assumed.
caution-never = Never people on forks. Never a lift that the chart does not show. Never drive or level the frame with the boom up.
caution-not-computed = Not computed here: soft or flat tyres, braking, swinging and sudden stops, settling ground. The required reserves are there for them; use them up for nothing else.
caution-trial = Test every load first: raise it { $system ->
    [us] 4 to 8 in
   *[other] 0.1 to 0.2 m
}, stop, and look.
emergency-tip = If it tips: stay belted in the seat, hold on, lean away from the fall. Do not jump.
emergency-line = If it touches a line or sparks to it: stay in the cab, call the owner of the line, and keep everyone at least { $system ->
    [us] 33 ft
   *[other] 10 m
} away until the owner confirms that the line is off. Only if there is a fire: jump clear with feet together, never touching machine and ground at the same time, and move away in small steps with feet together.

## Datum of a chart

datum-tyre-load-centre = from the front face of the front tyres to the load centre
datum-tyre-heel = from the front face of the front tyres to the heel of the forks
datum-tyre-hook = from the front face of the front tyres to the hook
datum-axle-load-centre = from the front axle to the load centre
datum-axle-heel = from the front axle to the heel of the forks
datum-axle-hook = from the front axle to the hook

## Warnings

warn-invented = { $name } is invented. No lift may be made from it.
warn-heavy-outside = { $load }: the heavier side does not lie against the carriage.

## Working: chart, forks, slings, load (machine)

working-reach = Reach and height of the point to read
working-box = Box that holds the point, with position error and boom flex
working-excess-reach = Excess of the load centre, added to the reach
working-capacity = Capacity read in the box, zone { $zone }
working-moment-cap = Capacity by moment on carriage and forks
working-reserve = Reserve
working-blade-pair = What the pair carries: twice the weaker blade
working-blade-moment = What the pair carries at this load centre
working-blade-share = Share of the more loaded blade
working-blade-wear = Wear of the blade
working-sling = Load on one sling leg

## Working: tipping and wind (stability)

working-centre-of-gravity = Centre of gravity, { $axis }
working-counted-mass = Mass that counts for this tipping line
working-restoring = Moment that holds it, about the tipping line
working-wind-moment = Moment of the wind about the tipping line
working-wind-pressure = Wind pressure
working-wind-force = Wind force: { $part }
working-arm = Distance of the centre of gravity from the tipping line
working-tilt = How far it can still lean before it tips, in the worst direction
working-tipping-load = Load at which it starts to tip
working-load-factor = Load factor
working-corner-loaded = Worst corner of the uncertain inputs, with load: boom, gravity in the machine's axes, total mass
working-corner-unladen = Worst corner of the uncertain inputs, load off and boom still up: boom, gravity in the machine's axes, total mass
part-load = load
part-boom = boom
part-frame = frame and cab
axis-x = forward of the front axle
axis-y = left of the middle
axis-z = above the ground

## Faults in job and machine files (jobfile)

jobfile-syntax = the file cannot be read: { $detail }
jobfile-duplicate-key = this key stands twice in the same table
jobfile-not-text = the file is not UTF-8 text
jobfile-too-large = the file is larger than { $limit } bytes
jobfile-missing-file = there is no file { $file } in the job folder
jobfile-unreadable-file = the file { $file } could not be read: { $reason }
jobfile-bad-path = the path { $path } leads out of the job folder
jobfile-hint-path = Put the file into the job folder and give its path from there, with forward slashes.
jobfile-format-missing = the file does not say its format
jobfile-format-unknown = the format “{ $format }” is not one that this version reads
jobfile-hint-format = Begin the file with: format = "{ $known }"
jobfile-unknown-key = the key { $key } means nothing here
jobfile-hint-nearest = Did you mean { $nearest }?
jobfile-hint-known = Possible here: { $known }.
jobfile-missing-key = the key { $key } is missing
jobfile-hint-example = Write, for example: { $example }
jobfile-wrong-type = { $key } should be { $expected } and is { $found }
jobfile-type-text = text in quotes
jobfile-type-number = a number
jobfile-type-whole = a whole number
jobfile-type-bool = true or false
jobfile-type-list = a list in square brackets
jobfile-type-table = a table
jobfile-type-date = a date without quotes
jobfile-type-nothing = nothing
jobfile-type-quantity = a value with its unit, in quotes
jobfile-type-text-or-table = text, or a table
jobfile-empty-text = { $key } is empty
jobfile-hint-list-unit = Plain numbers in a list take the unit that the same table states, for example unit = "m".
jobfile-dimension-length = a length
jobfile-dimension-area = an area
jobfile-dimension-volume = a volume
jobfile-dimension-mass = a mass
jobfile-dimension-angle = an angle
jobfile-dimension-slope = a slope
jobfile-dimension-ratio = a share
jobfile-dimension-number = a plain number
jobfile-dimension-force = a force
jobfile-dimension-moment = a moment
jobfile-dimension-pressure = a pressure
jobfile-dimension-speed = a speed
jobfile-dimension-voltage = a voltage
jobfile-dimension-density = a density
jobfile-dimension-stiffness = a stiffness
jobfile-negative = { $key } is { $value }, and it cannot be below zero
jobfile-not-positive = { $key } is { $value }, and it must be more than zero
jobfile-out-of-range = { $key } is { $value }; possible is { $low } to { $high }
jobfile-too-much = { $key } is { $value }, and nothing of the kind has more than { $high }
jobfile-hint-unit-slip = Check the number and its unit.
jobfile-policy-below-usual = { $key } is less strict than the usual { $usual }, and nobody answers for it
jobfile-bad-choice = “{ $value }” is none of the words possible for { $key }
jobfile-list-length = { $key } has { $found ->
    [one] { $found } entry
   *[other] { $found } entries
}; { $expected } are needed
jobfile-list-too-short = { $key } has { $found } entries; at least { $least } are needed
jobfile-placeholder = { $key } is still to be filled in
jobfile-hint-fill-in = Fill it in; until then it counts as not given.
jobfile-hint-fill-in-job = Fill it in; until then nothing that persons state in this job counts, and no lift is a go.
jobfile-hint-fill-in-machine = Fill it in; until then the machine counts as not inspected, and no lift with it is a go.
jobfile-ground-left-out = { $file } is left out: it is not a survey of this site yet
jobfile-no-source = nothing says where { $key } comes from
jobfile-hint-source = Put source = "…" into this table or one around it. Possible: { $known }.
jobfile-duplicate-id = the id “{ $id }” was given before, in line { $line }
jobfile-unknown-reference = there is no { $kind } with the id “{ $id }” in this job
jobfile-kind-machine = machine
jobfile-kind-load = load
jobfile-kind-landing = landing
jobfile-kind-attachment = attachment
jobfile-either-or = only one of { $first } and { $second } may stand here
jobfile-one-of = one of { $first } and { $second } must stand here
jobfile-pin-too-high = the pin of the oscillating axle at { $pin } is not below half the rear track, { $half_track }: the axle could not hold the frame upright
jobfile-centre-outside-wheelbase = with the boom down and retracted, the machine's own centre of gravity lies { $centre } ahead of the front axle, which is not between the axles (wheelbase { $wheelbase }): it would tip standing still
jobfile-hint-centres = Check the masses and centres: ahead of the front axle is positive, behind it is negative.
jobfile-centre-outside-track = the machine's own centre of gravity lies { $left } left of the middle, outside half the track, { $half_track }
jobfile-angle-order = the first angle, { $low }, is not below the second, { $high }
jobfile-boom-too-long = the boom with its whole extension is { $length } long, and no such boom has more than { $high }
jobfile-section-shares = one boom section must take the whole extension (share 1), and none may take more than one after it
jobfile-no-body = the machine has no body of the kind { $kind }
jobfile-order = the low value of { $key }, { $low }, is not below the high one, { $high }
jobfile-no-attachment = the machine has no attachment
jobfile-blade-grew = the blade is { $now } thick now and was { $new } when new
jobfile-datum-mismatch = the datum “{ $datum }” does not fit { $attachment }: hooks are measured to the hook, forks to heel, tip or load centre, both also to the head pin
jobfile-chart-no-such-support = the chart is for work { $support }, and the machine has nothing for it
jobfile-chart-twice = there are two charts for { $attachment } { $support }, and nothing tells them apart
jobfile-no-charts = { $machine } has no load chart, so no lift with it can be approved
jobfile-line-nowhere = not even the course of { $line } is known: its spans are missing
jobfile-span-no-length = both ends of this span are the same point
jobfile-sag-too-large = the sag { $sag } is more than half the length of the span, { $length }
jobfile-centre-outside-load = the centre of the load { $axis } is { $centre }, outside the load; possible is { $low } to { $high }
jobfile-axis-ahead = ahead of the fork face
jobfile-axis-left = left of the middle
jobfile-axis-up = above its underside
jobfile-no-uncertainty = a mass that is “{ $certainty }” has no usual uncertainty; it must be stated
jobfile-ticket-incomplete = a load from a ticket needs { $key }: the number of the ticket, and what the ticket leaves out
jobfile-landing-far = the stand at { $east } east, { $north } north lies { $distance } from its landing { $landing } at { $landing_east } east, { $landing_north } north
jobfile-line-far = the line { $line } lies { $distance } from every stand: it is no matter of this job, or its coordinates are of another system
jobfile-hint-one-system = Give stands, landings, lines and ground in one system of coordinates.
jobfile-hint-either = Write "{ $first }" or "{ $second }", whichever is meant.
jobfile-stop-gust-zero = with a stop gust of zero, work never starts
jobfile-strength-misplaced = a strength can only be stated for the matter ground-strength
jobfile-wind-factor-assumed = wind_factor, how strongly the wind takes hold of { $load }, is not given; { $factor } is assumed, as for flat sheets (clause not checked)
jobfile-no-ground = there is no ground file, so the slope is not known at any stand
jobfile-bad-date = “{ $date }” is not a date written as year-month-day
jobfile-value-empty = nothing is written here; { $dimension } is wanted
jobfile-value-no-number = “{ $value }” does not begin with a number; { $dimension } is wanted
jobfile-value-bad-number = “{ $value }” does not read as one number
jobfile-value-not-finite = “{ $value }” is not a number that can be measured
jobfile-value-ambiguous-separator = “{ $value }” can be read in two ways: { $first } or { $second }
jobfile-value-missing-unit = “{ $value }” has no unit; { $dimension } is wanted
jobfile-value-unknown-unit = the unit “{ $unit }” is not known; { $dimension } is wanted
jobfile-value-ambiguous-unit = “{ $unit }” means different things to different people; write one of { $choices }
jobfile-value-wrong-dimension = “{ $value }” is { $found }; { $expected } is wanted
jobfile-value-ambiguous-ratio = “{ $value }” may be rise to run or run to rise
jobfile-value-too-steep = “{ $value }” is as steep as a wall
jobfile-value-bad-parts = the parts of “{ $value }” do not go from large to small
jobfile-value-trailing = “{ $rest }” is too much after the value in “{ $value }”
jobfile-chart-bad-outline = the outline of zone { $zone } has no area, or crosses itself
jobfile-chart-overlap = the zones { $zone } and { $other } have different capacities and share { $area }, around reach { $reach } and height { $height }
jobfile-hint-overlap = Take the shared area away from the zone to which it does not belong on the chart.
jobfile-chart-above-plate = zone { $zone } says { $capacity }, more than the { $most } that the machine or its attachment carries at most
jobfile-hint-above-plate = Compare the chart with the plates of machine and attachment.
jobfile-chart-hole = the zones leave a hole of { $area } around reach { $reach } and height { $height } that is not declared “not permitted”
jobfile-hint-not-permitted = Outline the hole in not_permitted, or give it to a zone.
jobfile-chart-pieces = the zones do not join: they make { $count } pieces
jobfile-chart-out-of-reach = the boom gets nowhere into zone { $zone }: its datum, its unit or its outline cannot be right

## Working: pressure on the ground (ground)

working-tyre-patch = Contact area of the tyre, from force and inflation pressure
working-tyre-pressure = Contact pressure of the tyre, taken as its inflation pressure
working-pad-pressure = Pressure under the pad

## Working: overhead lines (planning)

working-line-legal = Legal distance for the voltage
working-line-required = Distance required: the legal distance or the site's own, plus survey error, swing, boom flex, lean of the tip by the survey's error under the wheels, operator's allowance and stand error
working-line-nearest = Nearest distance of machine, boom and load over the whole movement, at least (proven)

## Faults in survey files (survey)

survey-empty = the file is empty
survey-not-the-kind = the name ends in { $extension }, but the content is of another kind
survey-kind-unknown = the file is of no kind that is read here (LAS, LAZ, GeoTIFF, CSV levels)
survey-not-a-cloud = a point cloud (LAS or LAZ) is needed here, and this file is none
survey-tiles-of-grids = several grids cannot be joined into one surface
survey-header-cut = the file ends inside its header
survey-truncated = the file is cut short: it should have at least { $needed } bytes and has { $found }
survey-too-few-bytes = the file declares { $points } points or cells, more than its { $bytes } bytes can hold: it is cut short, or its header is wrong
survey-header-absurd = the header holds values that cannot be
survey-record-count-absurd = the header declares { $declared } descriptive records, but there is room for only { $room } bytes of them
survey-records-missing = the header declares { $declared } descriptive records and { $found } are there; the points were read all the same, but a coordinate system may be missing
survey-point-format = point format { $format } with { $length } bytes a point is none of the formats 0 to 10
survey-compression-unknown = how the points are compressed is not described, or in a way that is not known here
survey-no-chunk-table = the compressed points have no table of their chunks: an old compressor wrote them, or the writing was interrupted
survey-chunks-wrong = the table of compressed chunks does not agree with the file
survey-chunk-points-wrong = the header declares { $declared } points, the compressed chunks { $found }
survey-decode-failed = the content cannot be decoded: { $detail }
survey-bounds-differ = points lie { $by } outside the box that the header declares: the content is damaged, or the header is wrong
survey-not-on-earth = coordinates such as { $east }, { $north } lie on no map of the earth
survey-no-points = the file holds no points
survey-too-many-points = { $points } points are more than the { $most } that are taken at once
survey-too-few-points = { $points ->
    [one] { $points } point, or all of them in one line: a surface needs three that are not
   *[other] { $points } points, or all of them in one line: a surface needs three that are not
}
survey-unclassified = none of the { $points } points is classed as ground (class 2); classes found: { $classes }
survey-window-empty = there is no ground in the window; the file covers east { $west } to { $east } and north { $south } to { $north }
survey-cloud-thin = there are only { $density } ground points per square metre; between them nothing is known, so much of the ground stays unknown
survey-heights-implausible = { $count ->
    [one] { $count } ground point has a height that no ground can have, and was left out
   *[other] { $count } ground points have heights that no ground can have, and were left out
}
survey-units-unknown = neither the file nor the job says in which length unit the numbers are
survey-units-unknown-crs = the file names the coordinate system { $crs } but not its length unit, and the job states none
survey-units-contradict = the file contradicts itself about its length unit: { $found }
survey-units-differ = the file gives eastings and northings in { $plan } and heights in { $heights }; often one of the two is wrong
survey-unit-not-known = the length unit { $found } is neither metre, foot nor US survey foot
survey-units-overridden = the file says that its eastings and northings are in { $found }; they were taken as { $stated }, as the job states
survey-height-units-overridden = the file says that its heights are in { $found }; they were taken as { $stated }, as the job states
survey-height-units-assumed = the file does not say in which unit its heights are; they were taken as { $unit }, like its eastings
survey-degrees = the coordinates are longitude and latitude ({ $crs }, stated in { $place }), not lengths
survey-looks-like-degrees = nothing names a coordinate system, and numbers such as { $east }, { $north } are longitude and latitude, not lengths
survey-crs-impossible = the file says ({ $crs }, in { $place }) that its numbers are longitude and latitude, but they reach { $east }, { $north }, which cannot be
survey-rotated = the grid is turned or skewed against north
survey-mirrored = the columns of the grid run west: it is mirrored
survey-tie-points-only = the grid is placed by loose control points only
survey-no-georeference = the picture does not say where on the ground it lies
survey-not-heights = the file holds colours or several bands, not one band of heights
survey-no-heights = no cell has a height that ground can have
survey-cells-implausible = { $count } cells hold heights that no ground can have, such as { $value }, and the file does not declare them as “no data”; they were taken as unknown
survey-cells-coarse = cells of { $cell } are too coarse for the ground under four wheels: bumps and edges between them are not in it
survey-heights-whole = all heights are whole numbers, so slopes come in steps
survey-text-utf16 = the text is in UTF-16
survey-column-missing = there is no column for { $column }; the first line has: { $found }
survey-column-twice = two columns may mean the same, or one is used twice: { $first } and { $second }
survey-column-unit = the column { $column } is in { $unit }, which is neither metre, foot nor US survey foot
survey-columns-unknown = there is no header line, and there are too few columns to know which is easting, northing and height
survey-order-assumed = there is no header line; the columns were read as point, northing, easting, elevation. The other order would mirror the site
survey-column-east = easting
survey-column-north = northing
survey-column-height = height
survey-row-field-empty = the { $column } (column { $place }) is missing in this row
survey-row-not-a-number = the { $column } “{ $value }” is not a number
survey-row-implausible = a point here, or with the height { $height }, cannot be ground
survey-more-bad-rows = { $count ->
    [one] { $count } more row is bad
   *[other] { $count } more rows are bad
}
survey-name-twice = the point name { $name } stands in line { $first } already
survey-two-heights = there are two heights at one place: { $one } in line { $first }, { $other } here
survey-rows-repeated = { $count ->
    [one] { $count } row repeats a point and was left out
   *[other] { $count } rows repeat a point and were left out
}
survey-do-copy-again = Copy or download the file again; it is damaged or incomplete.
survey-do-export-again = Export the file again from the survey program.
survey-do-export-plain = Export it as plain LAS, or compress it again with a current program.
survey-do-compress-again = Decompress it to LAS and compress it again with a current program.
survey-do-give-known-kind = Give LAS, LAZ, GeoTIFF or CSV levels.
survey-do-give-grids-apart = List each grid as a ground source of its own.
survey-do-give-heights = Give the heights themselves (one band), not a coloured picture or an aerial photo.
survey-do-check-crs = Check where the coordinate system of the file is stated; export it again if it is missing.
survey-do-cut-out = Cut the file down to the site in the survey program.
survey-do-state-window = State a window (a rectangle around the site) for this file in the job.
survey-do-check-window = Check the window against the coordinates of the file; another coordinate system or unit is the usual reason.
survey-do-state-units = State the units of this file in the job (metre, foot or US survey foot), after asking who made it.
survey-do-state-both-units = State the units of plan and heights in the job, after asking who made the file.
survey-do-check-units = Make sure of the units: measure a known length and a known height in the result.
survey-do-state-crs-and-units = State the coordinate system and units of this file in the job, after asking who made it; what the file says is wrong.
survey-do-export-metres = Export it in metres.
survey-do-reproject = Project it to a plane coordinate system in metres first (UTM or the national grid).
survey-do-classify = Have the ground classified (class 2) in the survey program, or give levels or a terrain grid.
survey-do-check-heights = Check the heights: units, “no data” numbers, wrong points.
survey-do-declare-nodata = Declare this number as “no data” when exporting, and check that no true height was lost.
survey-do-denser = Survey the stands and ways more densely, or measure levels there.
survey-do-finer = Get a finer terrain model, or measure levels where the machine stands and drives.
survey-do-more-points = Give at least three points that do not lie in one line.
survey-do-warp = Resample the grid to rows and columns along east and north.
survey-do-georeference = Export it with its georeference (GeoTIFF tags); a separate world file is not read.
survey-do-save-utf8 = Save the text as UTF-8.
survey-do-state-columns = Add a header line (point, easting, northing, elevation), or state the columns in the job.
survey-do-mend-row = Mend or delete the row.

## Sentences of the command line (cli)

cli-check-inside = INSIDE THE CHART
cli-check-outside = OUTSIDE THE CHART
cli-check-governs = The chart allows { $capacity } in zone { $zone }, at reach { $reach } as the chart measures it and height { $height }.
cli-check-nothing = The chart shows nothing at reach { $reach } and height { $height }: a lift there is not permitted.
cli-check-room = Still inside the chart would be: { $further } further, or { $higher } higher, or { $heavier } heavier.
cli-check-over = The load is { $over } too heavy there.
cli-check-excess = The load centre is { $excess } beyond the rated one. That much was added to the reach.
cli-check-not-made = NOT CHECKED HERE
cli-check-not-go = This is not a go. It is one look into the chart; only a plan makes all the checks.
cli-no-attachment = the machine has no attachment “{ $attachment }”; it has: { $known }
cli-no-chart = there is no load chart for “{ $attachment }” in this support state, so this lift is not permitted
cli-wrong-point = the distance goes to a point that this attachment does not have
cli-hint-wrong-point = Forks: measure to the fork heel or the load centre. Hook: measure to the hook.
cli-no-job = there is no job file { $file }
cli-hint-new = Make a job with: counterpoise new FOLDER
cli-cannot-read = { $file } cannot be read: { $reason }
cli-cannot-write = { $file } cannot be written: { $reason }
cli-out-not-ours = the folder { $folder } holds something other than an earlier plan, so nothing was written there
cli-hint-out = Name another folder, or empty this one.
cli-new-written = A new job was written to { $folder }. Fill it in, then plan it with: counterpoise plan { $folder }
cli-new-not-empty = the folder { $folder } is not empty
cli-written = Written to { $folder }.
cli-serving = The plan is at { $address } until you press Ctrl+C.
cli-cannot-serve = the page cannot be served: { $reason }
cli-no-sheet = the plan sheet could not be made: { $reason }
cli-stability-tipping-load = On level ground it starts to tip forward with { $mass }.
cli-stability-no-tipping-load = On level ground no load there tips it forward.
cli-stability-onset = It starts to tip to the { $side } at a tilt of { $tilt }.
cli-stability-no-onset = It does not tip before 90° in that direction.
cli-stability-tipped = On level ground, with this load, it tips to the { $side }.
cli-stability-at = Load centre at reach { $reach } from the front face of the tyres, lift height { $height }.
cli-boom-range = { $what } is { $value }; the boom goes from { $low } to { $high }
cli-no-such-support = the machine cannot stand { $support }
cli-chart-capacity = The chart allows { $capacity } in zone { $zone }.
cli-chart-outside = The chart shows nothing at reach { $reach } and height { $height }: a lift there is not permitted.
cli-chart-reserve = With { $mass } the reserve is { $share }.
cli-no-load-centre = --load-centre is missing: with forks the distance from the fork face to the centre of the load is needed
cli-hint-load-centre = For an even pack it is half its depth, such as --load-centre "0.60 m".
warn-at = At { $place }: { $what }

## Attachments, identity of the machine, absolute stops, what ends a plan

check-identity = Machine is the one planned with
list-and-more = { $first }; { $rest }
list-nothing = nothing
identity-agrees = { $machine }: serial number, tyres, counterweight, options and charts on the machine are those of its file, read by { $by } on { $date }.
identity-open = { $machine }: not known or not compared yet: { $open }.
identity-differs = Not the machine of the file, or not its charts: { $what } is “{ $seen }” on the machine and “{ $file }” in the file.
identity-not-in-cab = Missing on the machine: { $what }.
identity-overdue = The thorough examination of the machine held until { $next }. The work is on { $date }.
item-kept = whose machine it is
item-seen = the machine itself (nobody has read its plate, tyres and charts)
item-serial = serial number
item-tyres = tyres
item-counterweight = counterweight
item-options = options fitted
item-chart = number of the load charts
item-chart-in-cab = load charts in the cab
item-manual-in-cab = maker's manual in the cab
item-examined = thorough examination
do-see-machine = Read plate, tyres, counterweight, options and charts on the machine itself, and put what you read into the job.
do-state-kept = State in the job whether the machine is your own or rented.
do-right-machine = Find out which of the two is right. Plan with the file and the charts of this very machine.
do-into-cab = Get it from the maker or hirer for this very machine, and keep it in the cab.
do-examine = Have the machine examined by a competent person, or take another one.
cab-not-seen = { $machine }: nobody has looked at seat belt, roll-over frame and cab door yet.
cab-faulty = { $machine }: seat belt, roll-over frame or cab door is missing or faulty.
do-look-at-cab = Look at belt, roll-over frame and door before driving; close the door and put the belt on.
stop-riders = Someone would ride on the machine, the forks or the load.
stop-under-load = Someone would be under the load or the boom.
stop-belt = The operator would work without the seat belt.
stop-thunder = Work would go on in a thunderstorm.
stop-platform = The attachment is a basket, cage or platform for people. No lift is ever planned with it.
stop-no-chart = The maker gives no load chart for this attachment and support state, so the lift is not allowed.
do-no-riders = Let people walk. Only the operator is on the machine, in the seat.
do-keep-out = Put up barriers and lift only when nobody is under load or boom, nor where they could fall.
do-belt = Put the belt on before the engine runs, and keep it on until the load is down.
do-wait-storm = Set the load down, lower and retract the boom, and wait until the storm has passed.
attachment-changed = { $attachment }: the lock was seen closed this morning, but not since it was put on for this lift.
shift-too-far = The load would be shifted sideways by { $shift }; the carriage of { $attachment } shifts { $range }.
do-less-shift = Shift less, or stand so that the boom points at the landing.
shift-stated = The load is shifted by { $shift } to the { $side }. Tipping, lines and approach count it; the load chart may not.
do-shift-at-landing = See that the chart allows a side shift. Carry and raise with the carriage in the middle, and shift slowly at the landing.
carriage-unknown = { $attachment }: nobody has stated whether the carriage shifts, spreads, tilts or turns.
do-state-carriage = Look at the carriage and state in the machine file what it can do.
carriage-leaves-level = The carriage of { $attachment } tilts or turns sideways.
do-lock-level = Lock the carriage level before it takes a pallet, and leave it so.
latch-faulty = The hook latch of { $attachment } is missing, bent or does not close.
latch-not-seen = { $attachment }: nobody has seen the hook latch close yet.
do-new-latch = Have the latch replaced before the hook is used.
do-see-latch = See that the latch closes by itself over the sling.
bulk-no-bucket = Loose material on { $attachment }, which is no bucket.
bulk-not-stated = { $attachment } holds { $volume }; how much is in it is not stated.
bulk-within = { $bulk } of loose material in { $attachment }, which holds { $volume }.
bulk-too-much = { $bulk } of loose material is more than { $attachment } holds: { $volume }.
do-bucket = Take a bucket with its own chart, or have the material packed.
do-state-bulk = State the volume of material in the bucket, and reckon its mass wet.
do-less-bulk = Fill the bucket level at most, and go more often.
grip-misses = The load is { $width } wide; { $attachment } grips from { $low } to { $high }.
do-other-grip = Take a clamp for this width, turn the load, or lift it on a pallet with forks.
grip-holds = Friction holds { $held } with half in reserve; the load is { $mass }.
grip-slips = { $mass } would slip: friction holds { $held } with half in reserve.
grip-unknown = { $attachment }: gripping force or friction is not known, so what it holds is not computed.
do-state-grip = State force and friction from its manual, and try the grip just above the ground.
grip-sound = { $attachment } holds only what both arms grip whole.
do-grip-sound = Grip with both arms on sound material, never with a layer loose, and keep everyone away from beside and below.
forks-cracked = The { $side } blade is cracked.
forks-opened = The { $side } blade stands at { $angle } to its shank. Beyond { $limit } it goes out of service.
forks-bent = The { $side } blade is off straight by { $bent } of its length. Beyond 0.5 % it goes out of service.
forks-tips = The tips of the blades differ in height by { $apart } of their length. Beyond 3 % they go out of service.
forks-lock-fails = The lock that keeps the { $side } blade in its place on the carriage does not work.
forks-proof-short = The { $side } blade was proof tested with { $proof }; its stamp asks for { $needed }.
forks-no-stamp = The { $side } blade has no capacity stamp that can be read.
forks-stamps-differ = The blades carry different stamps, so they are no pair: { $left } at { $left_centre } left, { $right } at { $right_centre } right. The lower counts.
forks-not-looked-at = Not looked at or not measured on the fork blades yet: { $looks }.
forks-overdue = The last thorough check of the fork blades is of { $date }. It holds for 12 months.
look-wear = thickness at the heel
look-modified = welds, holes and other changes
look-cracks = cracks at heel and hooks
look-angle = angle of blade and shank
look-straight = straightness
look-tips = height of the tips
look-lock = locks of the blades on the carriage
look-checked = day of the last thorough check
do-stamped-forks = Fit blades that their maker stamped with capacity and load centre.
do-matched-forks = Fit a matched pair, or have a competent person confirm that these two may work together.
do-check-forks = Have the blades checked by a competent person, and put the day into the machine file.
sleeves-undeclared = Fork extensions are used that the machine file does not declare: the forks are modified.
sleeves-long = The blades fill { $blade } of extensions that are { $sleeve } long: too little.
sleeves-centre = The load centre lies at { $centre }; the plate of the extensions ({ $by }) allows { $limit }.
do-declare-sleeves = Take the extensions off, or use forks whose file and load chart include them.
do-shorter-sleeves = Take shorter extensions or longer blades.
step-tip-out = With nobody below or beside, tip the bucket out slowly. Level it, retract the boom fully, lower it, and only then drive.
step-fill-bucket = Fill the bucket level at most, as its manual says, never with the boom as a ram. Nobody near it.
step-open-clamp = Open the clamp only when the load stands by itself. Retract the boom fully, lower it, and only then drive.
step-close-clamp = Both arms on sound material: close the clamp, lift the load just clear and look whether it slips. Nobody beside or beyond it.
step-tool-off = Let go of the load as the tool's manual says, once it stands by itself. Retract the boom fully, lower it, and only then drive.
step-tool-on = Take the load as the tool's manual says, then lift it just clear. Nobody beside or beyond it.
ends-rain = Rain ends this plan: ground and edges must be judged again.
ends-frost = Frost or thaw ends this plan: ground, routes and frozen loads must be judged again.
ends-digging = New digging or backfill near stand or route ends this plan.
ends-scaffold = A scaffold or landing that was altered ends this plan until its designer rates it again.
ends-defect = A defect of machine, attachment or slings ends this plan. Set the load down and have it repaired.
ends-shift = The end of the shift ends this plan: inspect and look again before the next one.
ends-values = Any value outside what is stated here ends this plan.
working-sleeves = What the extensions let through
working-yield-left = Safety on yield that the worn blade keeps
working-clamp-hold = Mass that both arms hold by friction
jobfile-examined-order = the examination of { $date } cannot be due again before that day: { $next }
## Loads, materials, rigging, gates

check-gate = Gates
load-layer-overhangs = { $layer } reaches { $distance } over the pallet; { $allowed } is allowed.
load-layer-unsupported = The middle of { $layer } is not over the pallet: it reaches { $distance } over it, and { $allowed } is allowed.
do-restack = Restack it so that every layer lies on the pallet.
defect-broken-pallet = The pallet is broken: the forks may come through it.
defect-loose-bands = Bands are slack, cut or missing: the layers can shift.
defect-torn-wrap = The wrap is torn: what it held may fall.
defect-double-stacked = Two packs lie on each other and are not tied to one: the upper one can slide off.
defect-leaning = The stack leans, so its centre is not where it was reckoned.
defect-overhanging = Pieces reach over the edge of the pallet: they can catch on edges and toe boards.
defect-loose-pieces = Single pieces lie loose on the load: they would fall from height.
defect-frozen = The load may be frozen to the ground, or its pieces to each other.
defect-wet = The load is soaked: heavier than its papers say, and slippery on the forks.
defect-ice-or-snow = Ice or snow lies on the load: it weighs, and it slides off.
defect-unknown-contents = Nobody knows what is in it, so neither weight nor centre is known.
defect-leaking = The load is leaking: weight and centre change, and the ground gets slippery.
defect-bulging = The sides bulge: the pack is giving way.
do-rewrap = Wrap it again, or take off everything that is not held.
do-one-pack = Take the packs one at a time.
do-mind-overhang = Keep the overhanging pieces clear of every edge, with a signaller at the landing.
do-break-free = Free it before lifting. Never tear it loose with the boom.
do-count-water = Count the water in the weight, or weigh the load, and wipe the forks dry.
do-clear-ice = Clear ice and snow off the load and the forks.
do-open-or-weigh = Find out what is in it, weigh it and find its centre before lifting.
do-stop-leak = Stop the leak, clean the ground and weigh the load anew.
do-turn-load = Take the load up with { $face } against the carriage: its centre is then { $centre } from it, { $distance } nearer.
face-far = the face that is now away from the machine
face-left = its left face
face-right = its right face
do-shift-load = Take the load up { $distance } farther to the { $side }, so that its centre lies midway between the blades.
load-long-no-sag = The load is { $length } long, and nobody has stated how far its ends sag.
do-state-sag = Raise it just off the ground, measure how far the ends hang below its middle, and state it.
working-sag = Height over the upstand that sagging ends need
load-sag-clears = The ends sag { $sag } and need { $needed } over the edge; the load is carried in { $clear } over it.
load-sag-strikes = The ends sag { $sag } and need { $needed } over the edge, but the load would be carried in only { $clear } over it.
do-carry-higher = Carry it in at least { $clear } over the edge.
load-ends-swing = When the machine turns, the ends of the load swing { $radius } from the middle of the front axle, and stand { $beside } out beside the machine.
do-signaller-at-ends = Have a signaller who sees both ends, and keep everyone out of that circle.
working-rise = How far the surface rises at the lowest corner
load-open-tank = The tank is open. Tilted by { $tilt } the surface rises { $rise }; there is { $room } of room.
load-spills = The open tank would spill: tilted by { $tilt } the surface rises { $rise }, and there is only { $room } of room.
do-keep-level-tank = Keep it level: forks not tilted back, at creep speed.
do-draw-off = Draw liquid off, or put a lid on that holds.
load-surges = The tank is { $share } full and has no baffles: the liquid surges when the machine starts, brakes or turns. The shift at rest is in the load centre, the surge is not.
do-creep-tank = Move at creep speed, without braking or jerks; better, fill the tank or empty it.
rigging-fitting-within = { $fitting } takes { $force }; it may take { $limit }.
rigging-fitting-overloaded = { $fitting } would take { $force }, more than it may: { $limit }.
rigging-no-hitch = Nobody has stated how the slings hold the load; their limit was taken times { $factor }, as if choked.
do-state-hitch = State whether the slings hang straight, choked or as a basket.
rigging-edges-bare = The slings lie on bare edges, which cut them under load.
rigging-edges-not-stated = Nobody has stated what the slings lie on.
do-protect-edges = Put protectors between the slings and every edge, and state it.
rigging-few-tag-lines = A load { $length } long needs { $needed } tag lines, one at either end; stated: { $there }.
rigging-swings = Swinging, the centre of the load comes { $distance } farther out than plumb under the hook; load chart and tipping are reckoned with it.
do-keep-plumb = Move the boom slowly, keep the hook plumb over the load, and stop while it swings.
gate-not-stated = The site has gates, and nobody has stated which of them this load passes.
do-state-gates = List the gates that the load passes, or an empty list if it passes none.
working-gate-width = Width that passes, with room on either side
working-gate-height = Height that passes, with room above
gate-wide-enough = { $gate }: { $needed } is needed with room on either side; it is { $width } wide.
gate-narrow = { $gate } is too narrow: { $needed } is needed with room on either side, and it is { $width } wide.
gate-high-enough = { $gate }: { $needed } of height is needed in the carry position; it is { $height } high.
gate-low = { $gate } is too low: { $needed } is needed in the carry position, and it is { $height } high.
gate-height-unknown = { $gate }: how high this load is carried is not known.
do-other-gate = Take another way, or split or turn the load.
jobfile-unknown-material = there is no material “{ $material }”
jobfile-hint-materials = Take an id from the list of materials in docs/job-files.md, or state mass or density.
jobfile-no-packing = packing is missing: a pack of this does not weigh what the material alone would ({ $material })
jobfile-moisture-assumed = { $material }: no moisture stated; up to { $share } more is reckoned with
jobfile-pallet-larger = the pallet as stacked measures { $stacked } { $axis }, more than the size stated for the load: { $stated }
jobfile-fill-too-high = the liquid stands { $fill } high in a tank of { $height }
jobfile-liquid-heavier = the liquid alone weighs { $liquid }, more than the whole load: { $mass }
jobfile-kind-gate = gate
working-part-volume = Weight of { $part } by volume
working-part-pieces = Weight of { $part } by pieces
working-centre-ahead = Centre of all parts ahead of the carriage
working-centre-left = Centre of all parts left of the middle
working-centre-up = Centre of all parts above the underside
working-liquid-ahead = How far the liquid runs ahead or back
working-liquid-left = How far the liquid runs to a side
working-choker = Limit of a choked sling
working-swing = How far the load swings out
material-note-solid = This is the density of the solid material; bundles of bars, pipes and profiles hold air. State packing, the share of the pack that is material, such as packing = "35 %".
material-note-compressed = This is the density loose; on a pallet it is pressed together and several times heavier. State packing, such as packing = "300 %", or the mass on the label.
material-note-damp = It is often delivered damp, and then 20 to 30 % heavier.
material-note-unit = This is the density of the piece, without gaps between pieces.

material-concrete-normal-weight-hardened = concrete, normal weight, hardened
material-concrete-reinforced-hardened = concrete, reinforced, hardened
material-concrete-normal-weight-fresh-wet = concrete, normal weight, fresh (wet)
material-cement-mortar = cement mortar
material-gypsum-mortar = gypsum mortar
material-lime-cement-mortar = lime-cement mortar
material-lime-mortar = lime mortar
material-granite-syenite-porphyry = granite, syenite, porphyry
material-basalt-diorite-gabbro = basalt, diorite, gabbro
material-sandstone-greywacke = sandstone, greywacke
material-limestone-dense = limestone, dense
material-limestone-other = limestone, other
material-volcanic-tuff = volcanic tuff
material-timber-c14 = timber C14
material-timber-c22 = timber C22
material-timber-c30 = timber C30
material-timber-d30 = timber D30
material-timber-d50 = timber D50
material-concrete-reinforced-fresh-wet = concrete, reinforced, fresh (wet)
material-timber-c16 = timber C16
material-timber-c24 = timber C24
material-glued-laminated-timber-gl24h = glued laminated timber GL24h
material-glued-laminated-timber-gl28h = glued laminated timber GL28h
material-plywood-softwood = plywood, softwood
material-plywood-birch = plywood, birch
material-chipboard = chipboard
material-cement-bonded-particle-board = cement-bonded particle board
material-osb = OSB board
material-hardboard = hardboard
material-mdf = MDF board
material-softboard-fibreboard = softboard fibreboard
material-aluminium = aluminium
material-steel = steel, reinforcing bars too
material-cast-iron = cast iron
material-copper = copper
material-lead = lead
material-zinc = zinc
material-glass-sheet = glass, sheet
material-glass-broken = glass, broken
material-acrylic-sheet = acrylic sheet
material-foamed-glass = foamed glass
material-slate = slate
material-gravel = gravel
material-sand = sand
material-aggregate-normal = aggregate, normal
material-aggregate-lightweight = aggregate, lightweight
material-blast-furnace-slag-lumps = blast furnace slag, lumps
material-cement-bulk = cement, bulk
material-cement-in-bags = cement, in bags
material-fly-ash = fly ash
material-gypsum-ground = gypsum, ground
material-lime = lime
material-fresh-water = fresh water
material-aluminum = aluminum
material-copper-us-list = copper (US list)
material-steel-us-list = steel (US list)
material-concrete-normal-weight-light-reinforcement = concrete, normal weight, light reinforcement
material-masonry-grout = masonry grout
material-brick-masonry = brick masonry
material-concrete-masonry = concrete masonry
material-glass-us-list = glass (US list)
material-spruce-pine-fir-lumber = spruce-pine-fir lumber
material-southern-yellow-pine-lumber = southern yellow pine lumber
material-douglas-fir-larch-lumber = Douglas fir-larch lumber
material-hem-fir-lumber = hem-fir lumber
material-mixed-oak = mixed oak
material-water-us-list = water (US list)
material-plywood-us-list = plywood (US list)
material-osb-us-list = OSB (US list)
material-gypsum-board = gypsum board
material-sand-dry = sand, dry
material-gravel-dry = gravel, dry
material-clay-facing-brick-unit = clay facing brick, unit
material-engineering-brick-unit = engineering brick, unit
material-concrete-brick-unit = concrete brick, unit
material-dense-aggregate-concrete-block = dense aggregate concrete block
material-medium-density-aggregate-block = medium-density aggregate block
material-lightweight-aggregate-block = lightweight aggregate block
material-aerated-autoclaved-concrete-block = aerated (autoclaved) concrete block
material-plasterboard-standard = plasterboard, standard
material-plasterboard-dense-acoustic-or-fire = plasterboard, dense acoustic or fire
material-sand-damp-loose-bulk = sand, damp, loose bulk
material-sand-wet-saturated = sand, wet (saturated)
material-gravel-wet = gravel, wet
material-crushed-stone-loose = crushed stone, loose
material-topsoil-loose-moist = topsoil, loose moist
material-clay-excavated-moist = clay, excavated moist
material-ready-mixed-mortar-wet = ready-mixed mortar, wet
material-sand-cement-screed = sand-cement screed
material-roof-tile-concrete = roof tile, concrete
material-roof-tile-clay = roof tile, clay
material-mineral-wool-roll = mineral wool, roll
material-mineral-wool-slab = mineral wool, slab
material-eps-board = EPS board
material-xps-board = XPS board
material-pir-or-pur-board = PIR or PUR board
material-pvc-u-pipe-material = PVC-U pipe material
material-hdpe-pipe-material = HDPE pipe material
material-ductile-iron-pipe-material = ductile iron pipe material
material-vitrified-clay-pipe-material = vitrified clay pipe material
material-concrete-pipe-material = concrete pipe material
material-copper-tube-material = copper tube material
material-asphalt-rolled = asphalt, rolled
material-bitumen = bitumen
material-ceramic-tile = ceramic tile
material-porcelain-tile = porcelain tile
material-fibre-cement-sheet = fibre-cement sheet
material-diesel-fuel = diesel fuel
material-rubble-mixed-demolition-loose = rubble, mixed demolition, loose
material-snow-settled = snow, settled
material-ice = ice
# Slewing machines
check-slewing = Turning upper part
slewing-not-computed = { $machine } turns its upper part: how it stands while it turns is not computed here, so nothing can be told
do-slewing = Plan this lift with the maker's own chart and a competent person.
jobfile-upper-without-slew = a body is of the kind “upper”, and the machine has no part that turns

# Charts in every form
chart-derated = { $what } That is by the maker's derating table, row for a load centre of { $centre }.
chart-beyond-table = The load's centre lies { $centre } from the fork face; the maker's derating table ends at { $last }. A lift with it is not permitted.
do-centre-nearer = Repack or turn the load so that its centre lies nearer to the fork face, or take forks and a chart for this load centre.
chart-other-tyres = The load chart for { $attachment } is for other tyres ({ $tyres }) than this machine stands on, so it does not hold.
do-chart-for-tyres = Get the maker's chart for the tyres that are on the machine, or have the tyres fitted that the chart is for.
datum-from-to = measured { $from } { $to }
datum-height-to = { $reach }; height { $to }
datum-from-tyre-face = from the front face of the front tyres
datum-from-axle = from the front axle
datum-from-frame-front = from the front of the frame
datum-from-pads = from the middle of the stabilizer pads
datum-from-boom-foot = from the foot pin of the boom
datum-from-turntable = from the axis of the turntable
datum-from-ahead-of-axle = from a point { $distance } ahead of the front axle
datum-from-behind-axle = from a point { $distance } behind the front axle
datum-to-load-centre = to the load centre
datum-to-heel = to the heel of the forks
datum-to-tip = to the tips of the forks
datum-to-hook = to the hook
datum-to-head-pin = to the pin at the boom's head
working-derating = Capacity by the maker's derating table, row for a load centre of { $centre }
jobfile-chart-levels-cross = of two charts for { $attachment } { $support } each holds farther out of level than the other in one direction, so neither is the stricter one
jobfile-hint-tell-apart = Charts are told apart by attachment, support state, load centre, tyres, and how far out of level they hold.
jobfile-chart-height-unknown = height is measured to the load centre, and the chart does not state how high above the forks that is (load_centre_height)
jobfile-chart-no-pads = reach is measured from stabilizer pads, and the machine has none
jobfile-chart-no-turntable = the chart is measured from the turntable, and the machine has none
jobfile-chart-line-leaves = the load line { $zone } has more capacity than { $lower } and leaves it by { $area }, around reach { $reach } and height { $height }
jobfile-hint-line-leaves = A line of higher capacity lies inside the lower ones. Compare the corners and the capacities with the chart.
jobfile-chart-uncut = what lies between the load line { $zone } and the lines inside it cannot be cut into plain outlines; draw it as zones side by side
jobfile-table-order = { $key } must rise or fall from entry to entry, and no two may be the same (0.02 m or 0.3° apart at least)
jobfile-table-empty = no four neighbouring entries of the table all have a capacity, so nothing is permitted
jobfile-table-beyond-boom = the table goes to an extension of { $extension }; the boom extends by { $most }
jobfile-list-too-long = { $key } has { $found } entries; at most { $most } are read
jobfile-derating-order = the load centre { $centre } does not lie beyond { $before }, the rated one or that of the row before
jobfile-derating-rises = the row for a load centre of { $centre } gives more than the row before it
jobfile-chart-other-tyres = this chart is for the tyres { $tyres }; the file describes { $fitted }. The chart is kept and never used
jobfile-chart-tyres-unsaid = this chart is for the tyres { $tyres }, and the file does not say which the machine stands on. The chart is kept and never used
jobfile-chart-tips = zone { $zone } says { $capacity }; by the masses and centres in this file { $tipping } tips the machine at reach { $reach } and height { $height }
jobfile-hint-tips-pounds = The same figure in pounds would not tip it. Look whether the chart is in lb.
jobfile-hint-tips = Compare the capacity, the outline and the datum with the chart, and the machine's masses and centres with its plate.
jobfile-chart-perhaps-pounds = zone { $zone } does not go with its neighbours: read as { $capacity }; the same figure in pounds would be { $other }, and would go with them
jobfile-chart-perhaps-kilograms = zone { $zone } does not go with its neighbours: read as { $capacity }; the same figure in kilograms would be { $other }, and would go with them
jobfile-chart-rises-reach = the capacity rises with reach: zone { $zone } with { $capacity } lies behind { $other } with { $less }, from reach { $reach } at height { $height }
jobfile-chart-rises-height = the capacity rises with height: zone { $zone } with { $capacity } lies above { $other } with { $less }, at reach { $reach } from height { $height }
jobfile-hint-rises = Compare with the chart. If it is so there, say rises = "who confirmed it, against what".
