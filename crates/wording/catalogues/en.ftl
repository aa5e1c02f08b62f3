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
ui-source-from-memory = { $citation } (from memory, not looked up)
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
entry-dimension-unit-weight = a unit weight
entry-dimension-second-moment = a second moment of area

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
check-tyres = Tyres
check-axle = Rear axle
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
fitted-without = Not on the machine today: { $body }, { $mass }. The load chart presumes it.
fitted-added = On the machine beside its description: { $body }, { $mass }. The load chart does not know it; tipping is reckoned with it and without it, wind on it is not.
do-fit-again = Put it on again before anything is lifted.
do-ask-added = Ask the machine's maker whether the charts hold with it, or take it off.
tyre-flat = { $wheel }: the tyre is flat.
tyre-soft = { $wheel }: { $measured } measured, { $asked } asked. A soft tyre lets the machine lean.
tyre-hard = { $wheel }: { $measured } measured, { $asked } asked. A hard tyre presses more on the ground and may burst.
front-tyres-touch = The front tyres touch the ground with the stabilizers down: the chart for stabilizers does not hold.
front-tyres-not-seen = Nobody has seen whether the front tyres are off the ground with the stabilizers down.
do-mend-tyre = Mend or change the tyre before anything is lifted.
do-inflate = Bring the tyre to { $asked } before anything is lifted.
do-let-out = Keep people away from it and have it brought to { $asked } as the manual says before anything is lifted.
do-lift-front-tyres = Lower the stabilizers as the manual says until both front tyres are clear of the ground.
do-see-front-tyres = Look at both front tyres before the boom goes up, and note it in the lift (front_tyres).
axle-locked = Counted as locked before the boom goes up; { $by } tried the lock today.
axle-locked-by-pads = Counted as locked with the stabilizers down; { $by } tried the lock today.
axle-not-counted = The lock was tried, but not known is at which boom angle it locks, or whether it was the one that counts here: free and locked are both reckoned, the worse counts.
axle-locks-itself = Counted as locked above { $trigger } of boom angle, as free below; { $by } tried the lock today.
axle-not-tried = The rear axle is to be locked, but nobody tried the lock today: free and locked are both reckoned, the worse counts.
do-try-lock = Try the lock as the manual says and note who did (axle_lock_tried).
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

rigging-within = The worst sling leg takes { $force }, leaning { $angle } from the vertical ({ $flat } from the horizontal); it may take { $limit }.
rigging-overloaded = The worst sling leg would take { $force }, leaning { $angle } from the vertical ({ $flat } from the horizontal), more than it may: { $limit }.
rigging-angle = Sling legs lean { $angle } from the vertical; at most { $limit } is allowed.
rigging-none = The load hangs, and nobody has stated its slings.
rigging-no-tag-lines = No tag lines are planned for the hung load.
do-stronger-slings = Take stronger or longer slings, so that the legs hang steeper.
do-state-rigging = State the number of legs, their angle and their working load limit.

## Level

level-within = Level enough: { $across } across (allowed { $tolerance_across }) and { $along } along (allowed { $tolerance_along }), survey accuracy included.
level-sideways = Too far out of level sideways: { $across }, allowed { $tolerance }.
level-frame = Level enough once the frame is levelled: the ground falls up to { $ground } to one side, levelling takes { $range }, up to { $across } may stay (allowed { $tolerance_across }); { $along } along (allowed { $tolerance_along }), survey accuracy and the indicator's error included.
level-frame-still = Levelled and still out of level: the ground falls up to { $ground } to one side, levelling ends at { $range }, so { $across } may stay, allowed { $tolerance }.
do-level-frame = Level the frame before the boom goes up and plan the lift that way (levelled = true), or take a stand that is level.
level-fore-aft = Too far out of level along the machine: { $along }, allowed { $tolerance }.
level-twist = The ground is twisted by { $twist }; the rear axle reaches its stop at { $limit }.
level-no-ground = The height of the ground is not known here: { $wheel }.
level-no-tolerance = Whether it is level enough cannot be told: without a load chart there is no tolerance to hold it against.
do-level-stand = Take a stand that is level.
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
line-insulated = { $line } is covered, as { $by } states under permit { $permit }. It counts as bare: the cover makes no distance shorter.
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
step-level-frame = Boom down and retracted: level the frame until the level indicator reads upright. Never level with the boom up.
step-lock-axle = Lock the rear axle and see that it has locked, before the boom goes up.
step-unlock = Before driving off, boom down: unlock the rear axle and bring the frame back as the manual says. What was locked or levelled elsewhere does not hold here.
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
caution-not-computed = Not computed here: tyre pressures nobody measured, braking and turning, settling ground. The required reserves are there for them; use them up for nothing else.
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
working-through-pin = What the rear axle passes to the frame through its pin
working-held-by-rear = What the rear axle passes to the frame through its pin, where the rear wheels alone hold the machine along its length
working-restoring = Moment that holds it, about the tipping line
working-wind-moment = Moment of the wind about the tipping line
working-wind-pressure = Wind pressure
working-wind-force = Wind force: { $part }
working-arm = Distance of the centre of gravity from the tipping line
working-tilt = How far it can still lean before it tips, in the worst direction
working-tipping-load = Load at which it starts to tip
working-load-factor = Load factor
working-corner-loaded = Worst corner of the uncertain inputs, with load: boom, gravity in the machine's axes, total mass
working-stands-free = Roll of front and rear axle under the frame, rear axle free
working-stands-locked = Roll of front and rear axle under the frame, rear axle locked at that angle
working-corner-unladen = Worst corner of the uncertain inputs, load off and boom still up: boom, gravity in the machine's axes, total mass
part-load = load
part-boom = boom
part-frame = frame with wheels
part-cab = cab
part-carriage = carriage with attachment
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
jobfile-dimension-unit-weight = a unit weight
jobfile-dimension-second-moment = a second moment of area
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
jobfile-wind-factor-assumed = wind_factor, how strongly the wind takes hold of { $load }, is not given; { $factor } is assumed, as for flat sheets (from memory, not looked up)
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
survey-kind-unknown = the file is of no kind that is read here (LAS, LAZ, GeoTIFF, LandXML, CSV levels)
survey-model = this is a building model or a drawing in a format that is not read here (IFC, glTF, DWG)
survey-picture = this is a picture: nothing in it says where on the ground it lies
survey-no-ground-in-plan = the file holds shapes in plan and no ground heights
survey-nothing-known = no place in the file has a height that is known
survey-replaces-another = a file called { $file } was on the site already, with other content: it was replaced, with what was found over it
survey-site-system-unknown = what is on the site already names no coordinate system, so it cannot be called { $site }
survey-systems-differ = what is on the site is in { $first }, this is in { $second }
survey-do-other-name = If both are wanted, give them different names and bring both in again.
survey-do-bring-in-together = State --site-crs with the first files that are brought in: the others are then converted.
survey-accuracy-not-stated = nobody has said how accurate these heights are
survey-stored-site = this is a stored site, with ground, things and lines together
survey-not-a-site = the file is no stored site
survey-site-version = the site was stored in form { $found }; this program reads form { $known }
survey-site-cut = the stored site ends too early
survey-site-damaged = the stored site is not as it was written
survey-not-a-cloud = a point cloud (LAS or LAZ) is needed here, and this file is none
survey-tiles-of-grids = several grids or LandXML surfaces cannot be joined into one
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
survey-cloud-thin = there are only { $density } ground points per square metre; between them nothing is known, so much of the ground stays unknown, and a thin thing above it may be missing: too thin for a check of clearances
survey-ground-filtered = nobody classified this ground: a filter took { $ground } of { $points } points for it ({ $share } %); low walls, stacks and dense shrubs may be among them, and steep ground may be missing
survey-filter-absurd = a parameter of the ground filter is no number or outside its range
survey-ground-doubtful = { $points ->
    [one] { $points } ground point
   *[other] at least { $points } ground points
 } near east { $east }, north { $north } at heights { $low } to { $high } (about { $area } m²) { $points ->
    [one] stands
   *[other] stand
 } above everything around by a cliff, as a roof, a stack or a vehicle does; no ground is taken as known there
survey-ground-doubtful-more = { $count ->
    [one] { $count } more patch
   *[other] { $count } more patches
 } of ground points { $count ->
    [one] stands
   *[other] stand
 } above everything around; no ground is taken as known there
survey-too-many-cells = cells of { $cell } over { $east } by { $north } make { $cells } cells, more than the { $most } that are made at once
survey-cell-size = a cell of { $cell } m cannot be made
survey-no-ground-under = the ground that was given has no height anywhere near these points
survey-lone-points = { $count ->
    [one] { $count } point stands
   *[other] { $count } points stand
 } alone above the ground and belong to nothing; left out
survey-conductors-likely = { $count ->
    [one] in { $count } place points hang
   *[other] in { $count } places points hang
 } like a conductor of an overhead line; this is a suggestion, and a line that is not suggested may be there all the same
survey-option-absurd = an option is no number or outside its range
survey-outline-absurd = the outline has fewer than three corners, or a corner that is no number
survey-heights-implausible = { $count ->
    [one] { $count } ground point has a height that no ground can have, and was left out
   *[other] { $count } ground points have heights that no ground can have, and were left out
}
survey-units-unknown = neither the file nor the job says in which length unit the numbers are
survey-units-unknown-crs = the file names the coordinate system { $crs } but not its length unit, and the job states none
survey-units-contradict = the file contradicts itself about its length unit: { $found }
survey-units-differ = the file gives eastings and northings in { $plan } and heights in { $heights }; often one of the two is wrong
survey-unit-not-known = the length unit { $found } is none that is read: metre, centimetre, millimetre, foot, US survey foot, inch
survey-units-overridden = the file says that its eastings and northings are in { $found }; they were taken as { $stated }, as the job states
survey-height-units-overridden = the file says that its heights are in { $found }; they were taken as { $stated }, as the job states
survey-height-units-assumed = the file does not say in which unit its heights are; they were taken as { $unit }, like its eastings
survey-degrees = the coordinates are longitude and latitude ({ $crs }, stated in { $place }), not lengths
survey-looks-like-degrees = nothing names a coordinate system, and numbers such as { $east }, { $north } are longitude and latitude, not lengths
survey-crs-impossible = the file says ({ $crs }, in { $place }) that its numbers are longitude and latitude, but they reach { $east }, { $north }, which cannot be
survey-crs-replaced = the file says it is in { $found }; it was taken as { $stated }, as the job states
survey-site-crs-unknown = the job says this file is in { $crs }, but not which coordinate system the site is in
survey-file-crs-unknown = the site is in { $site }, and neither the file nor the job says which coordinate system the file is in
survey-file-crs-not-known = the site is in { $site }; the file calls its coordinate system “{ $crs }”, and which one that is cannot be told for certain
survey-crs-contradicts = the file names two coordinate systems: { $first } and { $second }
survey-site-in-degrees = the site cannot be in { $crs }: longitude and latitude are not lengths
survey-crs-not-converted = { $crs } is none of the coordinate systems that can be converted here
survey-no-datum-shift = { $from } and { $to } lie on different datums, and no shift between them is known without a grid file
survey-no-conversion = { $from } cannot be converted to { $to }
survey-datums-differ = the datums differ ({ $from }, { $to }): the plan was moved by published shifts that are good to about { $accuracy }, and heights were not transformed
survey-datums-differ-unknown = the datums differ ({ $from }, { $to }): the plan was moved by published shifts, how good they are is not known, and heights were not transformed
survey-datums-taken-as-one = the datums have two names ({ $from }, { $to }) and the same published shift: nothing was moved from one to the other, which is good to about { $accuracy }, and heights were not transformed
survey-datums-taken-as-one-unknown = the datums have two names ({ $from }, { $to }) and the same published shift: nothing was moved from one to the other, how good that is is not known, and heights were not transformed
survey-latitude-second = in { $crs } longitude stands first and latitude second, but { $first }, { $second } look like latitude and longitude
survey-not-degrees = the file is in { $crs }, but its numbers reach { $first }, { $second }, which are no longitude and latitude
survey-axes-swapped = { $first }, { $second } lie outside the area of { $file } or { $site }, and inside when swapped: north stands before east
survey-outside-area = { $first }, { $second } lie far outside the area in which { $file } or { $site } is used
survey-height-units-unknown = neither the file nor the job says which unit the heights are in; longitude and latitude give no hint
survey-local-grid = the turn, scale or shift of the site grid is not a usable number
survey-tiles-differ = the tiles are in different coordinate systems: { $first } and { $second }
survey-points-without-place = { $count } points have no place in the coordinate system of the site and were left out
survey-grid-to-triangles = the grid is in another coordinate system: the middles of its cells became points joined to triangles; nothing was resampled
survey-do-state-site-crs = State the coordinate system of the site in the job (an EPSG code), or none for the file.
survey-do-state-file-crs = State the coordinate system of this file in the job (an EPSG code), after asking who made it.
survey-do-plane-site-crs = State a plane system for the site, such as UTM or the national grid.
survey-do-convert-outside = Have the file converted in a survey program, and check a known point in the result.
survey-do-check-datum = Check a known point in the result; where decimetres count, have the file converted with the grid file of the country.
survey-do-east-first = Export it with east (longitude) first and north (latitude) second.
survey-do-check-systems = Check the coordinate systems of file and site, and the units.
survey-do-local-grid = Work the site grid out again from known points.
survey-do-one-site-crs = State the coordinate system of the site in the job, so that all tiles are brought into it.
survey-shape-without-place = shape { $place }: a corner has no place in the coordinate system of the site
survey-shape-unreadable = shape { $place }: it is of no known kind, or its coordinates are not numbers
survey-line-without-length = shape { $place }: a line without length; it was left out
survey-ring-too-short = shape { $place }: an outline of fewer than three corners; it was left out
survey-hole-too-short = shape { $place }: a hole of fewer than three corners; it was left out
survey-area-of-nothing = shape { $place }: an outline that encloses nothing; it was left out
survey-area-crosses-itself = shape { $place }: the outline crosses or touches itself; everything that it encloses was taken
survey-points-repeated = { $count } points stood twice in a row and were taken once
survey-rings-unclosed = { $count } outlines were not closed; they were closed from the last corner to the first
survey-more-bad-shapes = { $count } more shapes were mended, left out or unreadable
survey-without-shape = { $count } features have no shape at all and were left out
survey-multipatch-left-out = { $count } surfaces in space (MultiPatch) were left out; they are not read
survey-no-shapes = there is no usable shape in the file
survey-too-many-bytes = { $found } bytes are more than the { $most } that are taken
survey-json-broken = the text is not JSON ({ $detail })
survey-not-geojson = this is JSON, but neither features nor a geometry
survey-not-a-plan = shapes in plan are needed here, and this file holds none
survey-record-absurd = record { $place } declares { $length } bytes, and { $room } are left
survey-table-missing = there is no table (.dbf) beside the shapes, so names and attributes are missing
survey-table-differs = there are { $shapes } shapes, but { $rows } rows in the table; which belongs to which is not known
survey-table-cut = the table (.dbf) ends inside its header
survey-table-absurd = the header of the table (.dbf) holds sizes that cannot be
survey-table-words = { $count } texts of the table hold letters of an unknown code page; those letters are marked
survey-shp-missing = there is no .shp among the files of the Shapefile
survey-parts-mixed = there are two .{ $ending } files, or one that belongs to another Shapefile
survey-do-mend-shape = Look at the shape in the program that drew it, and mend it there.
survey-do-give-plan = Give GeoJSON, a Shapefile or DXF.
survey-do-give-parts = Give .shp, .dbf, .prj and .cpg of one and the same export together.
survey-do-give-code-page = Export it in UTF-8, with a .cpg file beside it.
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
survey-column-unit = the column { $column } is in { $unit }, which is none that is read
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
survey-do-state-accuracy = State the largest height error to reckon with at a wheel, as the surveyor says: --accuracy "3 cm".
survey-do-site-from = Take it whole: site_from = "plot.site" at the top of the job.
survey-do-give-site = Give a site stored by “counterpoise survey”.
survey-do-bring-in-again = Bring the survey files in again with this version.
survey-do-outline-model = Export the outline of the building as DXF or GeoJSON with its height, or type its corners into the job.
survey-do-give-ground = Give it as a plan of things, and the ground as LAS, LAZ, GeoTIFF, LandXML or CSV levels.
survey-do-give-known-kind = Give LAS, LAZ, GeoTIFF, LandXML or CSV levels.
survey-do-give-grids-apart = List each file as a ground source of its own.
survey-do-give-heights = Give the heights themselves (one band), not a coloured picture or an aerial photo.
survey-do-check-crs = Check where the coordinate system of the file is stated; export it again if it is missing.
survey-do-cut-out = Cut the file down to the site in the survey program.
survey-do-state-window = State a window (a rectangle around the site) for this file in the job.
survey-do-check-window = Check the window against the coordinates of the file; another coordinate system or unit is the usual reason.
survey-do-state-units = State the units of this file in the job (metre, centimetre, millimetre, foot, US survey foot or inch), after asking who made it. On the command line: --file-units.
survey-do-state-both-units = State the units of plan and heights in the job, after asking who made the file.
survey-do-check-units = Make sure of the units: measure a known length and a known height in the result.
survey-do-state-crs-and-units = State the coordinate system and units of this file in the job, after asking who made it; what the file says is wrong.
survey-do-export-metres = Export it in metres.
survey-do-reproject = State the coordinate system of the site, so that it is converted (a plane one such as EPSG:25832; on the command line: --site-crs), or project it first.
survey-do-classify = Have the ground classified (class 2) in the survey program, or give levels or a terrain grid. Where neither can be had, ask for the ground filter; it is never used unasked.
survey-do-check-filtered = Compare this ground with the site before anything stands on it: levels at the stands and ways. Better, have the ground classified.
survey-do-filter = Cells 0.1 to 10 m, slope 0 to 5, smallest step 0.01 to 10 m and no larger than the largest (up to 100 m), widest thing one cell to 500 m, thickness 0 to 2 m.
survey-do-look-there = Look there. If it is ground that a machine can reach, measure levels there.
survey-do-window-or-cell = State a window around the site, or larger cells.
survey-do-state-cell = State a cell of 0.01 to 1000 m.
survey-do-give-ground-there = Give the ground of the same place, in the same coordinate system.
survey-do-confirm-line = Look up on site, and confirm or refuse each with the owner of the line.
survey-do-state-option = State options in the ranges of their description.
survey-do-give-outline = Give at least three corners, in order around the building.
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
survey-xml-encoding-unknown = the file says that its text is encoded as { $encoding }, which is not known here
survey-xml-encoding-wrong = the bytes of the file are not text in { $encoding }, as it says or as is usual
survey-xml-broken = the file is not well-formed XML: { $detail }
survey-xml-root = the file should hold one element { $expected }; here stands { $found }
survey-xml-cut = the file ends inside the element { $element }
survey-xml-entity = the file uses something that it defines itself ({ $name }); such entities can swell without limit and are not read
survey-xml-deep = elements stand inside each other more than { $most } deep
survey-xml-attributes = an element has more than { $most } attributes
survey-numbers-wrong = { $element } needs { $needed } numbers for each point (north, east, height); found: { $found }
survey-face-wrong = a face needs the ids of three or four points; found: { $found }
survey-face-point-missing = the face names point { $id }, which is not in the surface
survey-point-id-twice = the point id { $id } stands in line { $first } already, for another place
survey-reference-unknown = there is no survey point named { $name }
survey-reference-unclear = several survey points at different places are named { $name }
survey-more-problems = { $count ->
    [one] { $count } more fault like these
   *[other] { $count } more faults like these
}
survey-no-surface = the file holds no surface with points
survey-no-surface-but-points = { $points ->
    [one] the file holds no surface, only { $points } survey point
   *[other] the file holds no surface, only { $points } survey points
}
survey-surfaces-several = the file holds { $count } surfaces, and the job does not say which of them is the ground
survey-surface-not-there = the file has no surface named “{ $name }”
survey-surface-name-twice = { $count } surfaces of the file are named “{ $name }”
survey-surface-offered = surface to choose: “{ $name }”, { $points } points, heights from { $low } to { $high }, { $area } in plan
survey-surface-empty = the { $points } points and the faces of surface “{ $name }” cover no ground
survey-surfaces-apart = the surfaces “{ $first }” and “{ $second }” lie over each other, and their heights are at least { $gap } apart: one of them cannot be right
survey-plan-area-differs = the file states an area in plan of { $declared }, and its triangles cover { $computed }
survey-surface-area-differs = the file states a surface of { $declared }, and its triangles measure { $computed }
survey-faces-invisible = { $count ->
    [one] { $count } face is marked as invisible and was left out; the ground there is not known
   *[other] { $count } faces are marked as invisible and were left out; the ground there is not known
}
survey-faces-upright = { $count ->
    [one] { $count } face stands upright or has no area, and was left out
   *[other] { $count } faces stand upright or have no area, and were left out
}
survey-faces-repeated = { $count ->
    [one] { $count } face repeats another, and was left out
   *[other] { $count } faces repeat others, and were left out
}
survey-faces-overlap = { $count ->
    [one] { $count } face lies over another; where the two disagree by more than 1 cm, the ground is not known
   *[other] { $count } faces lie over others; where they disagree by more than 1 cm, the ground is not known
}
survey-faces-overlap-uncounted = so many faces crowd in one place that those over each other were not all counted
survey-breaklines-cross = { $count ->
    [one] { $count } piece of a breakline crosses an earlier one and was left out; its end points were kept
   *[other] { $count } pieces of breaklines cross earlier ones and were left out; their end points were kept
}
survey-lines-without-height = { $count ->
    [one] { $count } line or list of points without heights of its own was left out
   *[other] { $count } lines or lists of points without heights of their own were left out
}
survey-zero-heights = { $count ->
    [one] { $count } survey point has the height 0, far from every other height of the file; it was taken as without height
   *[other] { $count } survey points have the height 0, far from every other height of the file; they were taken as without height
}
survey-do-name-surface = Name the surface that is the ground of today in the job (surface = "…"). On the command line: --surface.
survey-do-use-survey-points = Export the surface too; or, if every point was measured on the ground, say so in the job (survey_points = true).
survey-do-export-surface = Export the surface with its points and faces.
survey-do-mend-at-source = Mend it in the program that wrote the file, and export it again.
survey-do-check-holes = Make sure that no stand and no way lies in such a hole.
survey-do-check-surface = Look at the surface in the program that made it, at stands and ways above all.
survey-not-a-drawing = this is no drawing in DXF: no section begins in it
survey-drawing-cut = the drawing ends before its entities do
survey-drawing-garbled = in { $count } lines there is no group code where one should stand: too many to read on
survey-lines-skipped = { $count } lines, the first of them here, hold no group code where one should stand; they were skipped
survey-drawing-no-end = the drawing has no end mark, though its entities are closed
survey-drawing-empty = the drawing has no section of entities
survey-drawing-no-shapes = nothing in the drawing could be read; it holds: { $left_out }
survey-too-many-shapes = the drawing draws far more than its size allows: blocks that insert blocks, very large arrays, or far too many curves
survey-entity-number = a coordinate of this { $kind } is not a number
survey-entity-unusable = this { $kind } on layer { $layer } has no size, or something of it is missing; it was left out
survey-more-entities = { $count } more entities were left out or changed
survey-block-missing = this { $kind } on layer { $layer } inserts a block that the file does not hold; it was left out
survey-external-drawing = this { $kind } shows another drawing, { $layer }, that is not in the file; it was left out
survey-blocks-deep = this { $kind } on layer { $layer } lies too deep in blocks of blocks, or its block inserts itself; it was left out
survey-scale-zero = this { $kind } on layer { $layer } has a scale of zero in plan; it was left out
survey-scale-zero-height = this { $kind } on layer { $layer } has a scale of zero for heights; its block was read flat
survey-outline-split = the outline of this { $kind } on layer { $layer } crosses itself; it was cut into several areas there
survey-joined-split = the outline that single lines make here crosses itself; it was cut into several areas there
survey-outline-crosses = the outline of this { $kind } on layer { $layer } crosses itself many times; only its line was taken, not its area
survey-outline-unchecked = this { $kind } on layer { $layer } has too many corners to see whether its outline crosses itself; only its line was taken, not its area
survey-outline-flat = the outline of this { $kind } on layer { $layer } encloses nothing; only its line was taken
survey-left-out = the drawing holds more than was read; left out: { $left_out }
survey-layers-hidden = layers that are switched off or frozen in the drawing were read all the same: { $layers }
survey-corners-repeated = { $count } corners repeat the one before them and were taken once
survey-lines-joined = { $count } outlines drawn as single lines and arcs were joined to areas
survey-drawing-units-unknown = neither the drawing nor the job says in which unit it is drawn; its larger side would be { $mm } in millimetres, { $cm } in centimetres, { $m } in metres, { $in } in inches, { $ft } in feet
survey-drawing-size = in { $unit } the larger side of the drawing is { $size }, which no site and no building is; it would be { $mm } in millimetres, { $cm } in centimetres, { $m } in metres, { $in } in inches, { $ft } in feet
survey-drawing-place = the drawing says that its point ({ $east }, { $north }), in its own unit, lies at ({ $site_east }, { $site_north }) of { $crs }; this was not applied
survey-drawing-place-unreadable = the drawing says where it lies on the earth, in a way that could not be read; this was not applied
survey-ground-layers = the job does not name the layers that are ground; the drawing has these, each with its number of shapes and its heights: { $layers }
survey-layers-missing = the drawing has no layer { $missing }; it has these, each with its number of shapes and its heights: { $layers }
survey-layers-flat = nothing on the named layers has a height that ground can have; the drawing has these layers: { $layers }
survey-heights-zero = { $count } heights are exactly 0 and others are not: often nobody gave them
survey-edges-not-followed = { $lines } pieces of lines or faces cross others: the surface passes through their corners, but does not follow them
survey-no-plan = the file holds no shapes in plan
survey-do-export-dxf = Export the drawing again as DXF.
survey-do-check-drawing = Look at the place in the drawing, and compare it with the result.
survey-do-check-left-out = Look whether anything that matters is among what was left out; if so, draw it as lines and export again.
survey-do-bind-drawings = Bind the other drawings into this one before exporting, or give them as files of their own.
survey-do-state-drawing-units = Measure a known length in the drawing, then state its unit in the job (mm, cm, m, in or ft).
survey-do-state-shift = If the drawing is not in the coordinates of the survey, state its shift in the job.
survey-do-name-layers = Name the layers that are ground in the job.

## Exported files (exchange)

exchange-height-not-known = (height not known)
exchange-ground-not-known = (ground level not known)
exchange-depth-not-known = (depth not known)
exchange-direction-not-known = (direction not known)
exchange-voltage-not-known = (voltage not known)
exchange-note-not-setting-out = For planning lifts and for looking at. Not for setting out construction.
exchange-note-invented = Invented data, for demonstration or test.
exchange-note-written-by = Written by Counterpoise { $version }.
exchange-note-epsg = Coordinates of EPSG:{ $code }, in metres; heights in metres.
exchange-note-site-grid = Coordinates of the site's own grid, metres east and north; heights in metres. No coordinate system is stated.
exchange-note-origin = All coordinates count from { $east } east, { $north } north, { $height } high; x is east, y up, z south.
exchange-note-not-known = What is not known stays empty. What must be drawn all the same says in its name that its height, depth, ground, direction or voltage is not known; a height that is not known is drawn as { $height }.
exchange-note-ground = Ground { $name }: accuracy { $accuracy }, surveyed: { $date }.
exchange-note-thinned = Of ground { $name } only one row and column in { $step } is drawn, and the last ones.
exchange-note-no-place = { $name }: where it lies is not known, so it is not drawn.
exchange-note-attribution = Data: { $text }
exchange-note-plan = Plan of { $job }, { $date }: { $verdict }. Digest { $digest }.
exchange-stand-of = Stand: { $lift }
exchange-machine-of = { $machine }: { $lift }
exchange-way-of = Load to landing: { $lift }
exchange-not-finite = { $name } has a coordinate or size that is not a number, or lies farther away than any site
exchange-not-finite-hint = Correct that coordinate or size, or remove the entry.
exchange-no-extent = { $name } has no extent in plan
exchange-no-extent-hint = An outline needs three corners that are not in one line, a strip two points and a width, a circle a radius.
exchange-columns-wrong = { $name } has { $found } tops of columns and should have { $wanted }
exchange-too-much = with { $name } there are { $found } pieces, more than the { $most } that such a file should hold
exchange-too-much-hint = Keep a smaller window of the survey, or take another format.
exchange-not-its-plan = the plan has { $plan } lifts and the job { $job }: they do not belong together

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

## Keys of job and machine files, and where their values are found (jobfile)

field-source = Where the values come from: plate, manual, measured, estimated
field-format = Kind and version of this file
field-machine-id = Short name of the machine, of your own choice
field-machine-name = Maker and type, as on the plate
field-machine-invented = True for machines that do not exist
field-machine-serial = Serial number, as stamped
field-machine-tyres = Size of the tyres, as marked on them
field-machine-counterweight = Counterweight, as marked on it
field-machine-options = What is fitted besides and changes mass or charts
field-machine-chart-number = Number and revision of the charts the file was written from
field-machine-greatest-capacity = Greatest rated capacity of the machine
field-machine-body = What weighs, other than the boom: frame, front axle, rear axle
field-body-kind = What carries it: frame, front axle, rear axle or turning upper part
field-body-name = What it is, in your own words
field-body-mass = Mass of this part
field-body-centre = Centre of gravity: ahead of the front axle, left, up
field-front-axle = Front axle
field-front-track = Track: middle to middle of the front tyres
field-front-tyre = Tyres of the front axle
field-tyre-radius = Radius of the tyre, not loaded
field-tyre-width = Width of the tyre
field-tyre-pressure = Tyre pressure, or “solid” or “unknown”
field-rear-axle = Rear axle
field-wheelbase = Wheelbase: middle of front axle to middle of rear axle
field-rear-track = Track: middle to middle of the rear tyres
field-rear-tyre = Tyres of the rear axle
field-pin-height = Height above ground of the pin the rear axle oscillates about
field-oscillation = How far the rear axle oscillates to either side
field-axle-lock = What locks the rear axle against oscillation
field-stabilizers = Stabilizers, where fitted
field-stabilizer-ahead = Middle of the pads ahead of the front axle
field-stabilizer-spread = Spread: middle to middle of the pads
field-pad-area = Area of one pad on the ground
field-stabilizer-rear-axle = Rear axle with the pads down: free, locked or unknown
field-outriggers = Outriggers: four pads that take it off its tyres
field-outriggers-front = Front pads ahead of the front axle
field-outriggers-front-spread = Spread: middle to middle of the front pads
field-outriggers-rear = Rear pads ahead of the front axle, behind it as negative
field-outriggers-rear-spread = Spread: middle to middle of the rear pads
field-slew = Upper part that turns with the boom
field-slew-axis = Axis it turns about, ahead of the front axle
field-slew-range = How far it turns to either side
field-boom = Telescopic boom
field-boom-foot = Boom foot pin: ahead of the front axle, up
field-boom-angle = Lowest and highest boom angle
field-boom-extension = Longest extension of the boom
field-head-along = Head pin along the boom from the foot pin, retracted
field-head-below = Head pin below the line of the boom
field-carriage-mass = Mass of the carriage without attachment
field-carriage-centre = Centre of the carriage: ahead of the head pin, up
field-boom-depth = Depth of the boom seen from the side
field-boom-flex = How far the tip hangs lower or further under load
field-boom-section = Boom sections, from the base outwards
field-section-mass = Mass of this boom section
field-section-centre = Its centre along the boom from the foot pin, retracted
field-section-share = Share of the extension that this section takes
field-limits = Limits that the maker sets
field-carry-angle = Boom angle at most when driving
field-carry-extension = Extension at most when driving
field-wind-limit = The maker’s wind limit
field-wind-speed = Wind at which work stops
field-wind-measure = Whether that wind is a gust or a forecast mean
field-outline = Outer dimensions
field-outline-front = Foremost point ahead of the front axle, without attachment
field-outline-rear = Rearmost point, behind the front axle as negative
field-outline-width = Overall width
field-ground-clearance = Ground clearance under the frame
field-frame-top = Top of the frame without cab
field-cab-from-to = Cab from its rear to its front
field-cab-top = Top of the cab
field-wind-areas = Areas that the wind meets
field-wind-side = Frame, cab and wheels seen from the side
field-wind-front = Frame, cab and wheels seen from the front
field-wind-height = Height of the middle of those areas
field-forks = Pallet forks
field-jib = Jib with a hook
field-attachment-id = Short name of the attachment for charts and lifts
field-attachment-name = Name of the attachment
field-attachment-mass = Mass of the attachment
field-attachment-centre = Its centre of gravity: ahead of the head pin, up
field-attachment-capacity = Greatest load that the attachment’s plate allows
field-attachment-coupling = How the attachment is held: quick coupling, pinned or bolted fast
field-fork-heel = Fork heel: ahead of the head pin, up, forks level
field-fork-spread = Spread: middle to middle of the fork blades
field-fork-load-centre = Load centre that the forks are rated at
field-fork-left = Left fork blade
field-fork-right = Right fork blade
field-blade-capacity = Capacity stamped on this blade
field-blade-load-centre = Load centre stamped with it
field-blade-length = Length of the blade
field-blade-new = Thickness of the blade at the heel when new
field-blade-now = Thickness of the blade at the heel today
field-blade-angle = Angle between blade and shank
field-blade-bent = How far the blade, without its shank, is off straight
field-blade-crack = Whether a crack was found
field-blade-lock = Whether the lock of the blade’s place works
field-blade-proof-load = Proof load of the blade, from its papers
field-blade-modified = Whether the blade was welded, drilled or bent
field-fork-carriage = What the carriage can do: fixed, side-shift, positioner, tilting, rotating
field-fork-side-shift = Side shift of the carriage to either side
field-fork-spread-range = Least and greatest spread of the positioner
field-fork-extensions = Sleeves pushed over the blades
field-sleeve-length = Length of the sleeves from the fork face
field-sleeve-capacity = Capacity of the pair of sleeves
field-sleeve-load-centre = Greatest load centre on the plate of the sleeves
field-sleeve-cover = Share of the sleeve that the blade must fill
field-sleeve-by = Whose plate: maker and number of the sleeves
field-fork-tip-difference = How much higher one fork tip stands
field-fork-checked = Day of the last thorough check of the forks
field-bucket = Bucket
field-bucket-heel = Back of its floor: ahead of the head pin, up
field-bucket-volume = Volume of the bucket
field-bucket-edge = Width of its cutting edge
field-tool-load-centre = Load centre that it is rated at
field-clamp = Clamp for blocks
field-clamp-heel = Root of the arms at their underside: ahead, up
field-clamp-grip = Narrowest and widest load that it grips
field-clamp-grip-force = Force of one arm on the load
field-clamp-grip-friction = Friction of the pads on the load
field-other-tool = Another tool of the maker’s list
field-other-heel = Where the load stands against it: ahead, up
field-platform = Platform for people: every lift with it is a stop
field-platform-floor = Its floor: ahead of the head pin, up
field-jib-hook = Hook: ahead of the head pin, up
field-chart = Load charts: one for each attachment, support and load centre
field-chart-attachment = Attachment that this chart is for
field-chart-support = What the machine stands on: tyres, stabilizers or outriggers
field-chart-load-centre = Rated load centre from the fork face
field-chart-load-centre-height = Height of the test load’s centre above the forks
field-chart-reach-from = Where the chart’s reach starts
field-chart-reach-to = What point the chart’s reach goes to
field-chart-height-to = What the chart’s height is measured to
field-chart-level-sideways = How far out of level sideways the chart still holds
field-chart-level-fore-aft = How far out of level fore and aft the chart still holds
field-chart-unit = Unit of the plain numbers in the outlines
field-chart-not-permitted = Areas that the chart declares as not permitted
field-chart-tyres = Tyres that this chart is for, as marked on them
field-chart-reach-ahead = Start of the reach ahead of the front axle
field-chart-nested = Whether each load line encloses those of heavier loads
field-chart-table = Capacities printed as a table instead of zones
field-table-angles = Boom angles of the rows
field-table-extensions = Extensions of the columns
field-table-heights = Heights of the rows
field-table-reaches = Reaches of the columns
field-table-capacity = Capacity of each row and column, “-” where nothing
field-table-angle-unit = Unit of the plain numbers of the angles
field-table-capacity-unit = Unit of the plain numbers of the capacities
field-derating = The maker’s capacities for load centres beyond the rated one
field-derating-load-centre = Load centre of this row
field-derating-share = Share of the chart’s capacity that counts there
field-derating-at-most = Capacity at most there
field-chart-rises = Who compared a capacity that rises with the chart
field-chart-zone = Zones of the chart, each with its capacity
field-zone-name = Name of the zone
field-zone-capacity = Capacity everywhere in the zone
field-zone-outline = Corners of the zone as reach and height, in order
field-job-name = Name of the job
field-job-site = Name and address of the site
field-job-date = Day of the work
field-job-planner = Who plans and answers for this file
field-job-invented = True for demonstrations
field-policy = Required reserves that differ from the usual ones
field-policy-by = Who answers for values below the usual ones
field-policy-tilt-fore-aft = Tilt that must remain, fore and aft
field-policy-tilt-sideways = Tilt that must remain, sideways
field-policy-load-factor = Least load factor: tipping load over the load
field-policy-stand-error = How far the machine may stand from its planned place
field-policy-line-allowance = Operator’s allowance on top of the legal distance to lines
field-policy-line-site-rule = Distance to lines by site rule
field-ground = Survey files of the ground, in order of priority
field-ground-file = Survey file in this folder
field-ground-files = Tiles of one survey
field-ground-accuracy = Largest height error under a wheel
field-ground-date = Day of the survey
field-ground-units = Unit of the survey’s coordinates
field-ground-height-units = Unit of the survey’s heights
field-ground-crs = Coordinate system, only shown
field-ground-longest-edge = Longest gap between points that is bridged
field-ground-surface = Surface of a LandXML file that is the ground, by its name
field-ground-survey-points = True: the survey points of a LandXML file are the ground
field-ground-window = Part of a large survey that is used
field-window-from = South-west corner of the part
field-window-to = North-east corner of the part
field-ground-columns = Columns of a level file, by name or place
field-column-point = Column of the point’s number
field-column-east = Column of the easting
field-column-north = Column of the northing
field-column-height = Column of the height
field-line = Overhead lines near the stands
field-line-name = Name of the line
field-line-voltage = Nominal voltage, or “unknown”
field-line-unit = Unit of the plain numbers of the course
field-line-course = Points in plan, where heights are not known
field-line-survey-error = How far the conductor may lie from where measured
field-line-swing = How far wind moves the conductor sideways
field-line-span = Lowest conductor, from support to support
field-span-from = Support at one end: east, north, height
field-span-to = Support at the other end: east, north, height
field-span-sag = Sag at the middle of the span
field-line-dead = Confirmation that the line is switched off
field-dead-owner = The line owner’s person who confirms it
field-dead-permit = Number of the permit
field-dead-grounded = Whether it is visibly grounded at the work
field-line-insulated = Statement that the line is covered; it counts as bare all the same
field-insulated-by = The line owner’s person who states it
field-insulated-permit = Number of the permit that it stands in
field-lines-complete = Statement that there is no other line
field-lines-complete-by = Who states that there is no other line
field-landing = Places that receive the loads
field-landing-id = Short name for lifts
field-landing-name = Name of the landing
field-landing-at = Where the middle of the load comes to lie
field-landing-level = Height of the surface the load lies on
field-landing-size = Size of the landing
field-landing-along = Along the approach
field-landing-across = Across the approach
field-landing-approach = Direction in which the machine points, or “any”
field-approach-heading = Heading, clockwise from north
field-approach-tolerance = Tolerance to either side
field-landing-rating = What the landing carries, and who says so
field-rating-mass = Mass that it carries
field-rating-by = Name and function of who rated it
field-landing-occupied = Mass that already lies there
field-landing-upstand = Edge, toe board or guard to lift over
field-job-machine = Machines of the job and their state today
field-job-machine-id = Short name for lifts
field-job-machine-file = Its machine file in this folder
field-inspected-by = Who did the pre-use inspection and found it fit
field-tagged-out = Why the machine is out of service
field-latches = How each hook latch was seen
field-latch-seen = How the latch of this hook was seen
field-cab-seen = How seat belt, roll-over frame and cab door were seen
field-kept = Whose machine it is: own, rented or unknown
field-machine-seen = What somebody read on the machine itself
field-seen-by = Who read it
field-seen-date = Day it was read
field-seen-serial = Serial number, as stamped on the machine
field-seen-tyres = Size marked on the tyres
field-seen-counterweight = Mark on the counterweight
field-seen-options = What is fitted besides; [] states none
field-seen-chart-in-cab = Whether the charts are in the cab
field-seen-manual-in-cab = Whether the manual is in the cab
field-seen-chart = Number and revision of the charts in the cab
field-examined = Last thorough examination of the machine
field-examined-date = Day of the examination
field-examined-next = Day until which it holds
field-examined-by = Who examined it
field-locks = How each attachment’s lock was seen
field-lock-seen = How the lock of this attachment was seen
field-load = Loads of the job
field-load-id = Short name for lifts
field-load-name = Name of the load
field-load-size = Size: depth along the forks, width, height
field-size-depth = Depth along the forks
field-size-width = Width across the forks
field-size-height = Height
field-load-mass = Mass as it comes, with pallet and packing
field-load-ticket = Number of the delivery ticket
field-load-left-out = What the ticket leaves out: pallet, film, rain
field-load-uncertainty = Share by which the mass may be off
field-uncertainty-below = Share by which it may be less
field-uncertainty-above = Share by which it may be more
field-load-centre = Centre of gravity: ahead of the fork face, left, up
field-load-centre-error = How far the centre may lie from there
field-load-condition = Pallet, bands and film: sound, unsound or not seen
field-load-wind-factor = Shape factor for the wind
field-load-part = Parts that the load is built up from
field-part-name = What this part is
field-part-centre = Its centre: ahead of the fork face, left, up
field-part-count = How many of them in one place
field-part-mass = Mass of one
field-part-density = Density of the material
field-part-material = Material, by its id in the list of materials
field-part-packing = Share of the box that is material
field-part-moisture = Share by which water may make it heavier
field-part-state = Water in it: dry, damp or soaked
field-part-piece = Mass of one piece
field-part-pieces = Number of pieces
field-pallet = A pallet that is stacked in layers
field-pallet-base = The pallet alone
field-pallet-base-mass = Mass of the pallet alone
field-pallet-wrap = Mass of film, bands and boards
field-pallet-overhang = Share by which layers may reach over the base
field-pallet-layer = Layers from the base upward
field-layer-name = What this layer is
field-layer-layers = How many of these layers on each other
field-layer-ahead = Its middle ahead of the middle of the base
field-layer-left = Its middle left of the middle of the base
field-liquid = A tank with liquid in it
field-liquid-name = What liquid it is
field-liquid-depth = Inside of the tank along the forks
field-liquid-width = Inside of the tank across the forks
field-liquid-height = Inside height of the tank
field-liquid-fill = Height of the liquid when level
field-liquid-at = Middle of the tank’s bottom: ahead, left, up
field-liquid-baffled = Whether baffles break the surge
field-liquid-closed = Whether a lid holds the liquid
field-liquid-tilt = Greatest tilt that is reckoned with
field-load-defects = What was seen to be wrong with the load
field-load-sag = How far the ends hang below the underside
field-gate = Gates and narrow places that loads pass
field-gate-id = Short name for lifts
field-gate-name = Name of the gate
field-gate-width = Clear width
field-gate-height = Clear height, or “open”
field-gate-clearance = Room that must stay on either side
field-gate-clearance-above = Room that must stay above
field-ground-file-crs = Coordinate system of the file, as EPSG code
field-ground-site-crs = Coordinate system of the site: a file in another is converted
field-ground-layers = Layers of a drawing that are ground
field-ground-filter = True to find the ground of an unclassified cloud by a filter
field-site-from = A stored site: its ground, things, lines and zones
field-thing = Things that stand on the site and can be hit
field-thing-id = Short name
field-thing-name = Name of the thing
field-thing-kind = What it is
field-shape-outline = Corners in plan, in order
field-shape-unit = Unit of its lists of plain numbers
field-shape-course = Middle line in plan
field-shape-width = Whole width along its course
field-shape-at = Middle of the circle
field-shape-radius = Radius of the circle
field-thing-base = Level of its underside; left out, it stands on the ground
field-thing-top = Level of its top, or “unknown”
field-thing-accuracy = How far it may lie or reach beyond what is given
field-opening = Openings in it: windows, doors, gaps
field-opening-from = One jamb
field-opening-to = The other jamb
field-opening-sill = Level of the sill
field-opening-head = Level of the head
field-excavation = Trenches, pits and other digs
field-excavation-id = Short name
field-excavation-name = Name of the dig
field-excavation-depth = Depth below the ground at its edge, or “unknown”
field-give-or-take = How far that may be wrong either way
field-excavation-soil = Soil of its sides, as the competent person classed it
field-excavation-support = What holds its sides: “none”, “supported”, “unknown”, or who designed the support for loads beside it
field-excavation-support-by = Who designed the support for loads beside it
field-excavation-by = Who saw or stated it
field-buried = What lies in the ground
field-buried-id = Short name
field-buried-name = Name of what lies there
field-buried-kind = What it is
field-buried-cover = Ground above its crown, or “unknown”
field-buried-allowed = Pressure at its crown that its owner allows
field-buried-by = Who answers for what is known of it
field-site-zone = Parts of the site with a rule of their own
field-site-zone-id = Short name
field-site-zone-name = Name of the zone
field-site-zone-rule = What applies there
field-site-zone-heading = Direction of travel, clockwise from north
field-site-zone-speed = Greatest speed there
field-site-zone-slope = Steepest ground that is driven there
field-site-zone-times = When it applies; left out: always
field-site-zone-by = Who set it
field-lift-gates = Gates it passes with the load; [] states none
field-rigging-hitch = How the slings hold: vertical, choker or basket
field-rigging-edges = What the slings lie on: smooth, protected or bare
field-fittings = Shackles and beams between hook and load
field-fitting-name = What fitting it is
field-fitting-limit = Its working load limit
field-fitting-takes = Whether it takes one leg or the whole load
field-rigging-swing = How far out of plumb it may swing
field-rigging-swing-reach = The same as a distance at its centre
field-hanging = Rigging of a load on a hook
field-rigging-mass = Mass of slings and shackles, added to the load
field-rigging-drop = From the hook down to the load
field-rigging-legs = Number of sling legs
field-rigging-leg-angle = Angle of a leg from the vertical
field-rigging-leg-limit = Working load limit of one leg
field-tag-lines = Number of tag lines
field-lift = Lifts of the job
field-lift-id = Short name of the lift
field-lift-name = What is lifted to where
field-lift-machine = Machine, by its id
field-lift-attachment = Attachment, by its id in the machine file
field-lift-support = What the machine stands on: tyres, stabilizers or outriggers
field-lift-load = Load, by its id
field-lift-landing = Landing, by its id
field-lift-stand = Where the machine stands
field-stand-at = Middle of the front axle: east, north
field-stand-heading = Heading, clockwise from north
field-lift-task = Whether the load is set down or picked up there
field-lift-lock-seen = Who saw the attachment’s lock closed for this lift
field-lock-seen-by = Name of who saw it closed
field-lift-side-shift = How far the carriage is shifted, left is positive
field-lift-extensions = Whether sleeves are pushed over the blades
field-lift-bulk-volume = Loose material in a bucket
field-lift-clear = Height at which the load is carried in over the landing
field-lift-stop-gust = Gust at which this lift stops
field-lift-stops = What would be an absolute stop; [] states none
field-accept = What named persons answer for
field-accept-matter = What the statement is about
field-accept-by = Name and function of who answers for it
field-accept-statement = What was seen or tested, and when
field-accept-strength = What the ground carries under a wheel or pad
where-plate = On the machine’s plate
where-own = Of your own choice
where-masses = Manual, page with masses; else a weighbridge, axle by axle
where-centres = The maker or dealer; else from axle loads on a weighbridge
where-dimensions = Manual, page with dimensions; else a tape on level ground
where-tyre = Size on the tyre’s side wall; else a tape, wheel off the ground
where-gauge = Pressure gauge, tyre cold; the table on the machine has the rated one
where-axle = Manual, page on axles; ask the maker or dealer
where-tape = Tape, machine on level ground, boom down
where-look = Look at the machine
where-boom = Manual, page with dimensions; else tape and angle indicator
where-dealer = Ask the maker or dealer; seldom in the manual
where-manual = Manual, page on limits and care
where-own-plate = On the attachment’s own plate
where-stamp = Stamped on the side or top of the blade
where-caliper = Caliper at the heel, on the blade itself
where-chart = On the load chart in the cab, and the notes beside it
where-tyre-marks = Marked on the tyres’ side walls
where-gauge-tape = Square and straight edge on the blade
where-papers = In the papers of its last check
schema-machine-title = A machine for Counterpoise
schema-job-title = A job for Counterpoise
schema-found = Found: { $place }
schema-more-than-zero = More than 0
schema-not-negative = 0 or more
schema-at-most = More than 0, at most { $high }
schema-zero-to = From 0 to { $high }
schema-within = From { $low } to { $high }
schema-points = At least { $least } points
schema-quantity = A value with its unit, in quotes: { $dimension }
schema-fill-in = Still to be filled in: reads, and is never a go
without-serial = Without it nobody can match the file with the machine on site
without-wind = Without it the wind check is a condition
without-wear = Without it the wear of the blade is not known: cannot tell
without-modified = Without it nobody has looked at the blade: a condition
without-centre-height = Without it a tall load cannot be compared with the test load
without-chart = Without a chart there is no lift with this attachment
without-pressure = Without it the pressure on the ground cannot be told
without-axle = Not known: taken as free, the worse case
without-attachment = At least one attachment must be there: forks, or another
without-blade = Not measured or not looked at: a condition
without-grip = Without it what the clamp holds is a condition
without-coupling = Without it a quick coupling is taken

## End of keys

## Machine commands and drawings of a machine (cli, ui)

cli-explain-unnamed = Machine file { $file }
cli-explain-broken = This file cannot be used yet. What could be read of it is explained here; what is wrong stands below.
cli-explain-identity = Identity
cli-explain-empty = Standing empty, computed
cli-explain-empty-line = With { $attachment }, boom at { $angle } and retracted: { $mass } in all, { $front } on the front axle and { $rear } on the rear axle.
cli-explain-empty-side = Its centre is { $offset } to the { $side } of the middle.
cli-explain-weighbridge = Compare these with a weighbridge: they follow from every mass and centre in the file.
cli-explain-each = Each: { $what }.
cli-explain-charts = Load charts
cli-explain-datum = Reach { $reach }; height { $height }.
cli-explain-height-forks = from the ground to the top of the forks
cli-explain-height-hook = from the ground to the hook
cli-explain-height-centre = from the ground to the load centre
cli-explain-height-pin = from the ground to the head pin
cli-explain-rated = Rated load centre { $centre } from the fork face.
cli-explain-level = Holds out of level up to { $sideways } sideways and { $fore_aft } fore and aft.
cli-explain-greatest = Zones: { $count }. Greatest capacity { $capacity }: zone { $zone }, reach { $reach_low } to { $reach_high }, height { $height_low } to { $height_high }.
cli-explain-least = Least capacity { $capacity }: zone { $zone }, reach { $reach_low } to { $reach_high }, height { $height_low } to { $height_high }.
cli-explain-not-permitted = Areas declared as not permitted: { $count }.
cli-explain-no-charts = The file has no load chart: no lift.
cli-explain-faults = What is wrong
cli-explain-warnings = To be looked at
cli-explain-do = Do: { $what }
cli-explain-missing = What is missing
cli-explain-missing-counts = Must be there: { $mandatory }. For a check: { $for_check }. Still to be filled in: { $fill_in }. Useful: { $useful }.
cli-explain-nothing-missing = Nothing is missing.
cli-explain-more = Where to find each says:
cli-explain-governs = The maker’s manual and the chart in the cab govern; this file never overrides them.
cli-word-frame = on the frame
cli-word-front-axle = on the front axle
cli-word-rear-axle = on the rear axle
cli-word-upper = on the upper part that turns
cli-word-never = nothing locks it
cli-word-operator = the operator locks it
cli-word-above-boom-angle = it locks above a boom angle
cli-word-unknown = not known
cli-word-solid = solid tyres
cli-word-free = free
cli-word-locked = locked
cli-word-gust = gust at the height of load and boom
cli-word-mean = mean of ten minutes as forecast, at 10 m
cli-word-quick = quick coupling
cli-word-pinned = pinned
cli-word-fixed = bolted fast
cli-word-carriage-fixed = fixed
cli-word-side-shift = side shift
cli-word-positioner = fork positioner
cli-word-tilting = tilts sideways
cli-word-rotating = rotates
cli-missing-title = { $file }: what is there and what is missing
cli-missing-checks = What the file is enough for
cli-missing-checks-note = A lift asks more than the machine file: load, ground, lines, people. This list is about the machine file alone.
cli-missing-ready = enough
cli-missing-partly = enough, better with { $numbers }
cli-missing-not-yet = not yet, needs { $numbers }
cli-missing-faulty = not yet: a fault stands in the way
cli-missing-faulty-needs = not yet: a fault stands in the way; needs { $numbers }
cli-missing-mandatory = Must be there
cli-missing-for-check = A check waits for it
cli-missing-fill-in = Still to be filled in
cli-missing-useful = Useful, may be left out
cli-compare-title = { $a } and { $b }
cli-compare-dimensions = Dimensions and masses
cli-compare-empty = Mass, standing empty
cli-compare-front = of it on the front axle
cli-compare-longest = Boom: head pin from the foot pin, extended
cli-compare-highest = Highest boom angle
cli-compare-capacities = Capacities on the plates
cli-compare-no-attachment = none
cli-compare-at = Greatest load
cli-compare-place = { $reach } out, { $height } up
cli-compare-grid = Which lifts more
cli-compare-datum = Reach from the front face of the front tyres to the load’s centre, { $centre } from the fork face; height to the top of the forks. Boom flex is counted outwards, as in a plan.
cli-compare-key = A { $a } · B { $b } · = alike · + there only A or B, as the letter says · . neither
cli-compare-other-centre = Not measured alike: the chart of A is for a load centre of { $a }, that of B for { $b }. Both were read for { $centre }, where the excess counts as reach.
cli-compare-other-level = Not measured alike: the chart of A holds out of level up to { $a } sideways, that of B up to { $b }.
cli-compare-other-level-along = Not measured alike: the chart of A holds out of level up to { $a } fore and aft, that of B up to { $b }.
cli-compare-no-chart = { $machine } has no chart for forks { $support }: nothing to compare there.
cli-compare-no-forks = { $machine } has no forks: nothing to compare.
cli-compare-not-go = A comparison of charts is not a go for any lift.
cli-compare-bad-at = a place is two lengths, reach and height: “4 m,6 m”; found “{ $found }”
cli-draw-not-ours = the folder { $folder } holds something other than earlier drawings of a machine, so nothing was written there
cli-draw-written = Drawings written to { $folder }: { $count }
cli-materials-none = no material has “{ $words }” in its id or name
cli-materials-hint = counterpoise materials, without words, lists all of them.
cli-materials-from-to = { $low } to { $high }
cli-materials-better = The supplier’s sheet or a scale is better than any list.
ui-machine-side = Side view with dimensions
ui-machine-front = Front view with dimensions
ui-machine-dim-wheelbase = Wheelbase
ui-machine-dim-front-track = Track, front axle
ui-machine-dim-rear-track = Track, rear axle
ui-machine-dim-width = Overall width
ui-machine-dim-length = Length without attachment
ui-machine-dim-length-tool = Front of the tyres to the tip of the attachment
ui-machine-dim-clearance = Ground clearance
ui-machine-dim-frame-top = Top of the frame
ui-machine-dim-cab-top = Top of the cab
ui-machine-dim-front-radius = Radius of the front tyres, not loaded
ui-machine-dim-rear-radius = Radius of the rear tyres, not loaded
ui-machine-dim-pin = Pin of the rear axle above the ground
ui-machine-dim-foot = Boom foot pin above the ground
ui-machine-dim-foot-behind = Boom foot pin behind the front axle
ui-machine-dim-rear = Rear of the machine behind the rear axle
ui-machine-dim-pads = Spread of the stabilizers
ui-machine-dim-pads-ahead = Stabilizers ahead of the front axle
ui-machine-dim-outriggers-along = Outriggers, rear pads to front pads
ui-machine-dim-outriggers-front = Spread of the front outriggers
ui-machine-dim-outriggers-rear = Spread of the rear outriggers
ui-machine-dim-tyre = Width of a front tyre
ui-machine-pose = Drawn with { $attachment }, boom at { $angle } and retracted, forks level.
ui-machine-cab-across = Of the cab only the height is in the file; it is drawn over the whole width.
ui-machine-alt = Drawing of { $machine } to scale with { $count } dimensions.
ui-machine-chart-alt = Load chart of { $machine } with { $attachment }, { $support }: { $count } zones.
ui-machine-chart-zone = A zone of the chart with its capacity
ui-machine-drawn-from = Drawn from the machine file; the chart in the cab governs.

## End of machine commands

## Site from above, and a cut through it

ui-site-plan = Site from above
ui-site-plan-alt = Site { $site } from above, north up: { $things } things that stand, { $excavations } excavations, { $buried } buried things, { $zones } zones, { $lines } overhead lines.
ui-site-no-extent = Nothing on this site has a place yet: give a ground surface, a thing, a zone or a landing.
ui-site-no-ground = No ground surface is given: no height on this site is known.
ui-site-read-every = Ground is read every { $cell } for this drawing; what is smaller is not seen in it.
ui-site-contours = Line of equal height, every { $step }
ui-site-slope-between = Slope over { $low }, up to { $high }
ui-site-slope-over = Slope over { $limit }
ui-site-building = Building
ui-site-wall = Wall or parapet
ui-site-fence = Fence, hoarding or guard rail
ui-site-scaffold = Scaffold
ui-site-floor = Floor or roof deck
ui-site-bridge = Bridge or beam overhead
ui-site-tree = Tree or hedge
ui-site-mast = Mast, pole or tower
ui-site-plant = Parked plant or vehicle
ui-site-store = Stack or store
ui-site-fuel = Store of fuel or gas
ui-site-truck-bay = Truck bay
ui-site-unnamed = From a survey, not named yet
ui-site-opening = Opening
ui-site-top = top at { $level }
ui-site-above-ground = { $height } above ground
ui-site-height-not-known = height not known
ui-site-excavation = Excavation
ui-site-depth = up to { $depth } deep
ui-site-depth-not-known = depth not known
ui-site-buried = In the ground
ui-site-cover = at least { $cover } of cover
ui-site-cover-not-known = cover not known
ui-site-zone = Zone with a rule of its own
ui-site-zone-no-go = no machine, no load
ui-site-zone-people = people walk or work here
ui-site-zone-one-way = one way, to the { $direction }
ui-site-zone-speed = no faster than { $speed }
ui-site-zone-soft = soft ground
ui-site-zone-slope = not driven where steeper than { $slope }
ui-site-line-outside = Overhead line { $line } ({ $voltage }) lies outside this drawing or has no place.
ui-site-stand = Stand of the machine
ui-site-heading-not-given = heading not given
ui-site-level = level { $level }
ui-site-carries = carries { $mass }
ui-site-carries-not-known = what it carries not known
ui-site-names-left-out = Names left out for lack of room: { $count }. A wider drawing has room for more (--picture-width).
ui-site-gate = Gate { $name }: { $width } wide, { $height } high
ui-site-gate-open = Gate { $name }: { $width } wide, open above
ui-site-source = Ground: { $name }, { $date }, heights within { $accuracy }
ui-site-date-not-known = date not known
ui-site-extent = Extent { $width } east to west, { $height } north to south
ui-site-corners = East { $west } to { $east }, north { $south } to { $north }, in metres of the site's frame
ui-site-epsg = Frame: EPSG { $code }
ui-site-epsg-none = Frame: the site's own, or not known
ui-site-cut = Cut through the site
ui-site-cut-alt = Cut of { $length } through the site, heights from { $low } to { $high }.
ui-site-cut-empty = This cut has no length or meets no known height.
ui-site-cut-true = Heights and lengths to one scale
ui-site-cut-factor = Heights drawn { $factor } times as large as lengths
ui-site-cut-along = Distance along the cut
ui-site-cut-ground = Ground, heights within { $accuracy }
ui-site-cut-at = { $from } to { $to } along

## End of the site

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
look-straight = straightness of the blade
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
do-restack = Restack it so that every layer lies on the pallet and on the layer below.
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
rigging-swings = Swinging, the centre of the load comes { $distance } farther out than plumb under the hook; load chart, tipping and distance to lines are reckoned with it.
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
jobfile-outline-crosses = the outline crosses itself, or has fewer than three corners
jobfile-hint-corners-in-order = Give the corners in order, one way round.
jobfile-bad-epsg = “{ $value }” is no code of a coordinate system
jobfile-site-far = no stand lies on or near the ground of the stored site: it covers east { $west } to { $east }, north { $south } to { $north }
jobfile-bad-time = “{ $time }” is no part of a day
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
jobfile-hint-tips-pounds = The same figure in pounds would not tip it. Look whether the chart is in lb, and whether a mass of the machine is missing or too small in this file.
jobfile-hint-tips = Compare the capacity, the outline and the datum with the chart, and the machine's masses and centres with its plate.
jobfile-chart-perhaps-pounds = zone { $zone } does not go with its neighbours: read as { $capacity }; the same figure in pounds would be { $other }, and would go with them
jobfile-chart-perhaps-kilograms = zone { $zone } does not go with its neighbours: read as { $capacity }; the same figure in kilograms would be { $other }, and would go with them
jobfile-chart-rises-reach = the capacity rises with reach: zone { $zone } with { $capacity } lies behind { $other } with { $less }, from reach { $reach } at height { $height }
jobfile-chart-rises-height = the capacity rises with height: zone { $zone } with { $capacity } lies above { $other } with { $less }, at reach { $reach } from height { $height }
jobfile-hint-rises = Compare with the chart. If it is so there, say rises = "who confirmed it, against what".

# What stands on the blades, what a bucket holds, when a record counts
sleeves-off = The forks' entry in the machine file and its chart are with extensions, and this lift is made without them.
sleeves-not-stated = The machine file declares extensions on these forks, and nobody has stated whether they are on.
do-entry-without-sleeves = Give the forks an entry of their own without extensions, with its own masses and chart, or put the extensions on.
do-state-sleeves = Look whether the extensions are on, and state it in the lift.
forks-load-narrow = What stands on the blades is { $width } wide; to reach over both it must be { $needed } wide, blades of 10 cm reckoned with.
do-narrower-forks = Bring the blades nearer together, or put the load on a pallet that reaches over both.
working-over-both = Width over both blades
forks-centre-far = The load's centre may lie { $centre } out on a length of { $length }: near the limit of { $limit }.
forks-centre-at-tips = The load's centre may lie { $centre } out on a length of { $length }: beyond { $limit } it is too near the tips.
do-check-seated = See that the load stands against the fork face and is held, forks tilted back.
working-centre-limit = Farthest centre on blades or extensions
bulk-unweighed = What the { $bulk } of loose material weighs is not stated.
do-state-bulk-density = State the material in the bucket, or its density, as wet as it comes.
bulk-mass-covers = { $bulk } of loose material weighs up to { $mass }; the load is taken as { $stated }.
bulk-mass-short = { $bulk } of loose material weighs up to { $mass }; the load is stated as at most { $stated }, which is too little.
do-bulk-mass = State at least { $mass } for the load, or load less.
working-bulk-mass = Mass of the loose material
other-asks = How { $attachment } holds the load, when it was inspected and what limits it has of its own is not known here.
do-other-manual = Follow the manual of this tool, and have a competent person look at it and answer for how it holds the load.
gate-tool-unknown = { $gate }: how wide the attachment is was not stated; without it { $needed } is needed and { $width } is there.
do-state-tool-width = Measure the width of the attachment, and put it into the machine file.
forks-closed = The { $side } blade stands at { $angle } to its shank. Below { $limit } it goes out of service.
forks-shank-bent = The shank of the { $side } blade is off straight by { $bent } of its length. Beyond 0.5 % it goes out of service.
forks-wear-unknown = Nobody knows whether the fork blades are sound: not measured or not looked at: { $looks }.
look-shank = straightness of the shank
identity-seen-long-ago = The machine was read on { $seen }, more than 7 days before the work on { $date }.
identity-seen-ahead = The machine is said to have been read on { $seen }, after the work on { $date }.
without-crack = Not looked at for cracks: cannot tell
without-width = Without it a gate cannot be told, and lines are kept as far as from a tool of 3 m
field-blade-shank-bent = How far the shank is off straight
field-blade-shank-length = Length of the shank that was measured
field-tool-width = Width of the tool itself, arms open
field-lift-bulk-density = Density of the loose material, as wet as it comes
field-lift-bulk-material = Loose material in the bucket, by its id
## Charts that forbid or contradict each other, and the quick look
jobfile-chart-bad-area = an outline that is declared not permitted has no area, or crosses itself
jobfile-chart-level-more = of two charts that differ only in how far out of level they hold, the one for rougher ground allows more: { $capacity } in zone { $zone }, where the one for more level ground allows { $less }, around reach { $reach } and height { $height }
jobfile-chart-level-nowhere = of two charts that differ only in how far out of level they hold, the one for rougher ground allows more: { $capacity } in zone { $zone }, where the one for more level ground shows nothing, around reach { $reach } and height { $height }
jobfile-hint-level-more = A machine carries no more out of level than on level ground. Compare tolerances, capacities and outlines with both charts; draw a border that both share with the same corners.
cli-no-people = this is a basket, cage or platform for people: no lift with it is planned here, and no chart is read for it
cli-hint-no-people = Raising people needs a machine approved for it, its maker's manual and a competent person.
## Loads that lie, hang and run as they do; values somebody answers for
load-layer-over-layer = { $layer } reaches { $distance } over { $below } under it; { $allowed } is allowed.
load-layer-not-on-layer = The middle of { $layer } is not over { $below } under it: it reaches { $distance } over it, and { $allowed } is allowed.
defect-wet-not-counted = The load is soaked, and its weight is that of dry parts or of papers: what the water weighs is not known.
do-weigh-wet = Weigh it as it is, or state the moisture of every part.
load-tilts = The stand tilts the tank by up to { $stands }; its liquid was reckoned with { $tilt } only.
do-state-tilt = State a tilt of at least { $tilt } for the liquid, or level the stand.
rigging-tips = The centre of the load may lie { $off } from the middle, the lifting points { $half }: the load tips in its slings.
rigging-picks-unknown = The centre of the load may lie { $off } from the middle; by drop and leg angle the lifting points lie { $half } from it, and nobody stated them.
do-hook-over-centre = Hook over the centre of the load, or take lifting points that have the centre between them.
do-state-picks = Measure the distance of the lifting points along the load and state it.
rigging-choked = The slings are choked; { $factor } of their limit holds only where the angle of the choke is at least { $angle }.
do-check-choke = Look at the angle of the choke; below that angle, and wherever the sling’s own tag says less, the tag’s limit governs.
working-lever = Share of the weight on the nearer sling
jobfile-below-usual = { $key } is less than the usual { $usual }, and nobody answers for it
field-answered-value = The value, where somebody answers for it
field-answered-by = Name and function of who answers for less than the usual
field-rigging-picks = Distance of the two lifting points along the load
# Outline
jobfile-narrower-than-tyres = the overall width is { $width }, and over the tyres it is { $tyres }
jobfile-hint-over-tyres = Track is measured from the middle of one tyre to the middle of the other, the overall width over everything.

# Frame levelling
field-levelling = Frame levelling: the frame rolls on the front axle
field-levelling-pin = Height of the pin about which the frame is levelled
field-levelling-range = How far the frame can be levelled to either side
field-levelling-error = How far the level indicator in the cab may be off
cli-no-levelling = the machine has no frame levelling
cli-levelled-over = the frame can be levelled by { $range } at most
jobfile-shorter-than-tyres = the front of the machine is { $front } ahead of the front axle, and its front tyres reach { $tyres }
jobfile-hint-radius = Is the tyre’s diameter typed as its radius? The front is that of frame and wheels, without attachment.

cli-both-stiffnesses = { $other } is missing beside it
cli-stability-on-springs = On contacts that give, in the worst direction, it starts to tip at { $tilt }.
cli-stability-forces = Standing level the contacts carry, front left, front right, rear left, rear right: { $forces }.
cli-stability-not-on-springs = On contacts that give so much it does not stand level, or nothing can be told.

# Wind and driving, alone
cli-wind-named = stated part: { $name }
cli-wind-force = A gust of { $gust } presses with { $pressure }: { $force } at most, whichever way it blows.
cli-wind-line = Over the { $side }: { $moment } from wind that pushes { $towards } away from straight ahead, left counted positive. Tilt that remains { $tilt }, asked for { $required }.
cli-wind-limit = There it is just enough at gusts of { $gust } at a height of { $height }, which is a forecast mean of { $mean } (10 minutes, 10 m up, open country; after EN 1991-1-4, from memory).
cli-wind-limit-high = There it is just enough at gusts of { $gust }. No forecast mean is given for it: the wind profile goes up to { $height }.
cli-wind-short-calm = Over the { $side } the tilt asked for is not there even without wind.
cli-wind-no-limit = No wind overturns it that way.
cli-wind-not-a-limit = Reckoned on tyres and pads that give, by their size and pressure. The maker’s wind limit comes first. Gusts around buildings are stronger than the profile says.
cli-calc-governs = The { $side } governs.
cli-case-at-rest = At rest
cli-case-braking = Braking
cli-case-starting = Starting as hard as it brakes
cli-case-turning-left = Turning left
cli-case-turning-right = Turning right
cli-case-braking-left = Braking in a turn to the left
cli-case-braking-right = Braking in a turn to the right
cli-case-kerb = Stopped dead by a kerb
cli-case-wheel-drop = Wheels drop into a rut
cli-travel-line = { $case }, over the { $side }: { $tilt } of tilt remains, { $share } of what is there at rest.
cli-travel-energy = { $case }, over the { $side }: { $share } of the energy that tips it is left.
cli-travel-governs = Least is left here: { $case }, over the { $side }.
cli-travel-tips = Nothing is left, it may go over: { $case }, over the { $side }.
cli-travel-kerb-speed = Below { $speed } it does not tip when something stops it dead, on tyres that give.
cli-travel-rear = The steering rear axle carries { $rest } of the weight at rest, { $least } at least.
cli-travel-rear-lifts = The steering rear axle carries { $rest } of the weight at rest; it lifts, and nothing steers.
cli-travel-stops = It stops in { $distance }, with { $time } s until the brake takes hold and no more grip than wet ground gives.
cli-travel-never-stops = It does not stop: the grade pulls as much as can be held without sliding, tipping or losing the load.
cli-travel-slides = The tyres slide: they need a friction of { $needed }, and { $friction } is stated. Whatever stops a sliding machine can tip it.
cli-travel-slides-first = The tyres hold: they need a friction of { $needed }, and { $friction } is stated. They would slide before it tips; whatever stops a sliding machine can tip it.
cli-travel-tips-first = The tyres hold: they need a friction of { $needed }, and { $friction } is stated. It would tip before they slide.
cli-travel-load-slides = The load slides on the forks: it needs a friction of { $needed }, and { $friction } is stated. Tilt it back, tie it, or go slower.
cli-travel-load-stays = The load stays on the forks: it needs a friction of { $needed }, and { $friction } is stated.
cli-travel-load-off = Nothing presses the load on the forks: it falls off.
cli-travel-cannot-tell = masses or places of the machine give no number: nothing can be told
cli-travel-carry = Braking, starting and turning on tyres that give, a third more counted as they may begin suddenly; kerb and rut on tyres that give too. The maker’s carry position, speeds and slopes come first.
# Fit of a machine, tilting platform, reserve of charts
cli-fit-nothing = nothing is stated of the machine: no axle load, no mass, no tipping test, no charted point
cli-hint-fit-nothing = Begin with the axle loads from a weighbridge, boom in, and once more with the boom out.
cli-fit-no-ask = no place is asked for
cli-fit-no-part = the machine has no such part
cli-fit-bad-range = the range ends before it begins, or a value in it is not possible
cli-fit-impossible-mass = a mass must be above zero and below 200 t
cli-fit-impossible-centre = the centre is stated between { $low } and { $high }; it can lie only between { $least } and { $most }
cli-fit-boom = the boom goes from { $low } to { $high } and out by { $longest } at most
cli-fit-load-holds = this load lies behind the front tipping line and tips nothing forward
cli-fit-bad-pitch = the machine can be weighed up to 45° nose up or nose down, and needs a wheelbase above zero
cli-fit-contradiction = no machine is like this; these statements contradict each other, and without any one of them the rest does not: { $names }
cli-hint-fit-contradiction = Check each of them: boom position, attachment, fuel and ballast at the weighing, the unit, the uncertainty, the chart’s datum.
cli-fit-cannot-tell = the computation came to no end: nothing can be told
cli-fit-side-needs = for the tilt sideways { $key } is needed too
cli-fit-zone = chart for { $attachment }, zone { $zone }
cli-fit-unnamed = { $what } { $number }
cli-fit-part-range = { $name }: { $what }
cli-fit-what-axles = axle loads
cli-fit-what-total = mass of the machine
cli-fit-what-tipping = tipping test
cli-fit-what-charted = charted point
cli-fit-what-part = part
cli-fit-what-ask = place
cli-fit-word-mass = mass
cli-fit-word-ahead = centre ahead
cli-fit-word-left = centre to the left
cli-fit-word-up = height of the centre
cli-fit-word-front = front axle
cli-fit-word-rear = rear axle
cli-fit-word-whole = whole machine
cli-fit-word-tipping = tipping load
cli-fit-word-other = other
cli-fit-residuals = In the machine that fits best:
cli-fit-residual = { $name }, { $of }: stated { $stated }, fits with { $fitted }; { $share } of its uncertainty
cli-fit-asked = { $name }: load centre at reach { $reach } from the front face of the tyres, lift height { $height }.
cli-fit-between = On level ground it starts to tip forward with no less than { $lower } and no more than { $upper }; half way { $middle }, which is an estimate and no limit.
cli-fit-at-least = On level ground it starts to tip forward with no less than { $lower }; nothing stated says how much more.
cli-fit-no-lower = Nothing stated keeps it from tipping forward there without a load.
cli-fit-not-forward = A load there is not ahead of the front tipping line and does not tip it forward.
cli-fit-side = With { $mass } it starts to tip to a side at a tilt between { $least } and { $most }, in the worst direction.
cli-fit-no-height = Tilt sideways: not identifiable. Level weighings are the same for a high and a low centre of gravity. Weigh it with one axle raised, or state a range of the chassis’ height.
cli-fit-no-sideways = Tilt sideways: not identifiable. Nothing is stated of how far the chassis’ centre lies to one side.
cli-fit-next = Measure next; what it would leave between the bounds:
cli-fit-next-axles = both axle loads, empty, boom at { $angle } and out by { $extension }: about { $width }
cli-fit-next-tipping = a tipping test at { $angle }, out by { $extension }, only by the maker or under a competent person: about { $width }
cli-fit-next-attachment = the attachment alone: about { $width }
cli-fit-note = The bounds are as good as what was stated, for rigid contacts and level ground. They replace no load chart: the maker’s manual and the chart in the cab govern.
cli-platform-unladen = this test is made without load
cli-platform-laden = this test is made with a load
cli-platform-boom-up = this test is made with the boom above the carry position
cli-platform-boom-down = this test is made with the boom in the carry position
cli-platform-nose-down = Nose downhill
cli-platform-tail-down = Tail downhill
cli-platform-left-edge = Left tilting edge across the fall
cli-platform-right-edge = Right tilting edge across the fall
cli-platform-tips = { $turned }: it tips to the { $side } at a slope of { $slope }.
cli-platform-never = { $turned }: it does not tip before the platform stands upright.
cli-platform-worst = Turned the worst way it tips to the { $side } at a slope of { $slope }; downhill is then { $azimuth } to the left of straight ahead.
cli-platform-more = That is at least what test { $number } asks for, { $low } to { $high }.
cli-platform-less = That is less than what test { $number } asks for, { $low } to { $high }.
cli-platform-between = Whether that is enough for test { $number } cannot be told: it asks for { $low } to { $high }.
cli-platform-note = The slopes asked for by { $standard } are from memory and of low confidence: obtain the standard before use. Reckoned on tyres and pads that give, by their size and pressure; a computation replaces no test.
cli-reserve-no-chart = no chart for what was asked; the machine has: { $known }
cli-reserve-title = { $attachment }, { $support }, load centre { $centre }: { $count } of { $cells } cells are charted and reached.
cli-reserve-nothing = The boom gets to no part of this chart.
cli-reserve-ratio = Least ratio { $ratio }: charted { $charted }, it tips forward with { $tipping }, at reach { $reach }, height { $height }.
cli-reserve-fore-aft = Least tilt left fore and aft with the charted load: { $tilt }, with { $charted } at reach { $reach }, height { $height }.
cli-reserve-sideways = Least tilt left sideways: { $tilt }, with { $charted } at reach { $reach }, height { $height }.
cli-reserve-tips = Impossible in { $count } cells: the charted capacity tips the level machine. The chart or the machine’s masses and centres are typed wrong; do not use them.
cli-reserve-below = Less than { $margin } times the charted capacity tips it forward in { $count } cells.
cli-reserve-keeps = Every cell keeps { $margin } times the charted capacity.
cli-reserve-not-judged = No margin was stated: the numbers are shown, not judged.
cli-reserve-ahead-only = The machine turns its upper part; this is for the boom straight ahead only.
cli-reserve-note = Level machine, rigid contacts, no wind, forks level. The maker’s manual and the chart in the cab govern; this is no go for any lift.
cli-reserve-bad-margin = a margin is a number from 1 to 10

working-tilt-on-tyres = Tilt that remains on tyres that give
working-factor-on-tyres = Load factor on tyres that give: the load that uses up the tilt

cli-travel-boom-up = Stop: never drive with the boom above the maker’s carry position.
cli-travel-hung = A hung load swings, and that is not reckoned: it cannot be told. Only within the maker’s own limits for driving with a hung load.
cli-travel-none-left = { $case }, over the { $side }: nothing is left, it may go over.
cli-travel-short = Too little: { $case }, over the { $side }, leaves { $tilt } of tilt; { $required } is asked for.
cli-travel-straight = No radius is stated: turning is not reckoned.

check-contacts = Wheels and moments
check-steering = Weight on the steering
check-sudden = Sudden stop or drop
wind-turns = { $what } Place and weight bear { $gust } at height (forecast mean at 10 m: { $mean }).
contacts-pressed = Every wheel or pad stays pressed on; least { $wheel }: { $force }, { $share } of level.
contacts-light = { $wheel } may go light: { $force }, { $share } of level.
contacts-lifted = { $wheel } may come off the ground.
contacts-no-number = The forces under the wheels come to no number; nothing can be told from them.
contacts-ratio = { $what } What holds is { $ratio } times what overturns to the { $side }.
do-mind-light = { $wheel }: a wheel or pad that goes light is the first that is seen of tipping. Have it watched from a safe place, and go on only while it stays pressed on; if it lifts, lower and retract slowly, and find out why.
working-side-moments = Moments to the { $side }: what holds against weight and wind that overturn
working-least-force = { $wheel }: least force against what it carries level, boom carried, no load
steering-enough = { $share } of the weight is on the rear axle, which steers, in carry position; { $required } is usual.
steering-light = Only { $share } of the weight is on the rear axle, which steers, in carry position; { $required } is usual.
steering-cannot-tell = The weight on the rear axle comes to no number.
do-steer-carefully = Drive at walking pace, brake and start softly, and do not count on sharp turns; or carry less.
working-steering = Share of the weight on the rear axle: level, at rest, boom carried, load heaviest and farthest
sudden-borne = Neither a sudden stop of lowering nor a sudden loss of the load tips it.
sudden-stop-tips = Lowering stopped all at once may press with twice the weight of boom and load. Borne to the { $side }: { $factor } times, a stop in half a second from { $speed }.
sudden-cannot-tell = What a sudden stop or drop leaves comes to no number.
sudden-drop-tips = The load gone all at once may tip it to the { $side } as the boom springs back; no more than { $share } of the load may come off at once.
do-lower-slowly = Lower slowly and stop softly, never all at once.
do-set-down-softly = Set it down softly until the forks or hook are free; never let it slide off or drop.
working-sudden-stop = Lowering stopped at once: tilt that is left with twice the weight of boom, attachment and load, and the multiple that is borne
working-sudden-drop = Load gone at once: tilt at twice the change, and energy, against what there is without the load
descent-ahead = down ahead
descent-ahead-left = down ahead to the left
descent-left = down to the left
descent-behind-left = down behind to the left
descent-behind = down behind
descent-behind-right = down behind to the right
descent-right = down to the right
descent-ahead-right = down ahead to the right
tolerance-load-mass = Heavier load
tolerance-load-aside = Load centre to a side
tolerance-slope = Steeper ground
tolerance-gust = Stronger gust
tolerance-wheel = One wheel or pad lower
tolerance-together = All at once, in steps of { $share } load, { $aside }, { $slope }, { $gust }, { $wheel }
tolerance-of-mass = { $amount } ({ $share })
tolerance-of-gust = up to { $amount } (mean { $mean })
tolerance-plain = { $amount }
tolerance-steps = { $amount } of a step
tolerance-not-before = not before { $amount }
tolerance-way = { $check }: { $way }
tolerance-no-way = { $check }
tolerance-nothing = –
ui-tolerances = How much more it bears
ui-tolerance-what = One thing more
ui-tolerance-alone = Rest as planned
ui-tolerance-at-worst = Rest at worst
ui-tolerance-turns = What turns it
ui-tolerance-note = For the planner: how far a figure may be out. No leave to go beyond the plan; the maker’s wind limit stays.
## Tyres, axle lock, and a machine as it is today
jobfile-least-above-mass = least, { $least }, is more than mass, { $mass }
jobfile-hint-least = mass is the most that this part may weigh, least the least.
jobfile-rim-too-large = a rim of { $rim } does not go into a tyre of { $diameter }
jobfile-hint-rim = The diameter of the rim is the last number of the size on the side wall, mostly in inches; radius is half the diameter of the whole tyre.
jobfile-stiffness-of-no-pressure = a stiffness of { $stiffness } holds for one pressure, and the pressure is unknown
jobfile-hint-stiffness = Measure the pressure and compare it with that of the stiffness, or leave stiffness out.
jobfile-lock-angle-misplaced = lock_angle is for an axle that locks above a boom angle, and the lock of this one is “{ $lock }”
jobfile-hint-lock-angle = Leave lock_angle out, or write lock = "above-boom-angle" if the manual says so.
jobfile-lock-angle-outside-boom = the axle locks above a boom angle of { $angle }, and the boom goes from { $low } to { $high }
jobfile-axle-never-locks = somebody tried the lock of the rear axle, and nothing locks that of { $machine }: lock = "never" in its file
jobfile-hint-axle-never-locks = Leave axle_lock_tried out, or correct lock in the machine file after the manual.
jobfile-listed-twice = “{ $word }” stands twice in { $key }
jobfile-hint-listed-twice = Leave one out, or was another one meant?
jobfile-no-air = the tyre { $wheel } has no pressure: it is flat
jobfile-no-body-of-that-name = the file of { $machine } has no body with the name “{ $name }”
jobfile-bodies-of-one-name = { $count } bodies of the machine have the name “{ $name }”, and it is not clear which is not on it
jobfile-hint-bodies-of-one-name = Give each a name of its own in the machine file.
jobfile-no-body-left = without that the machine has no body of the kind { $kind } left
jobfile-hint-no-body-left = List what is there in its place as [[machine.added]]; if a body stands for the whole part, split it in the machine file.
jobfile-no-levelling = the frame cannot be levelled: { $machine } has no frame levelling
jobfile-hint-no-levelling = Leave levelled out, or describe [levelling] in the machine file if it is fitted.
jobfile-levelled-on-pads = the frame is levelled against the front axle, with the tyres down, and this lift stands { $support }
jobfile-hint-levelled-on-pads = There the pads level the frame: leave levelled out.
jobfile-axle-not-operators = the operator cannot lock the rear axle of { $machine }: its lock is “{ $lock }”
jobfile-hint-axle-not-operators = Leave axle_locked out, or write lock = "operator" in the machine file if the manual says so.
jobfile-front-tyres-misplaced = front_tyres says how the front tyres are with the stabilizers down, and this lift does not stand on stabilizers
jobfile-hint-front-tyres = Leave front_tyres out, or write support = "stabilizers".
field-body-least = Mass of this part at least, where it is not always the same
field-tyre-rim = Diameter of the rim
field-tyre-stiffness = Vertical stiffness of the tyre at its pressure
field-lock-angle = Boom angle above which the rear axle locks by itself, or “unknown”
field-axle-lock-tried = Who tried the rear axle’s lock today and found that it holds
field-flat = Tyres found flat
field-measured-pressures = Tyre pressures as measured today
field-measured-pressure = Pressure of this tyre as measured today
field-without-bodies = Bodies of the machine file that are not on it today
field-added = What is on the machine today besides its file
field-lift-levelled = Whether the frame is levelled before the boom goes up
field-lift-axle-locked = Whether the operator locks the rear axle before the boom goes up
field-lift-front-tyres = Front tyres with the stabilizers down: clear or touching
# Forces on the contacts
cli-rear-roll-free = a rear axle that may oscillate follows the ground: an angle is stated for a locked one only
cli-rear-roll-over = the rear axle turns by { $range } at most
cli-roll-on-pads = an axle that does not carry the machine holds no angle: that is for a machine on its tyres
cli-reactions-weight = Machine and load weigh { $weight }.
cli-reactions-rigid = On rigid contacts:
cli-reactions-soft = On tyres and pads that give:
cli-reactions-contact = { $contact }: { $force }, { $share } of the weight
cli-reactions-light = { $contact }: { $force }, { $share } of the weight. Light: less than { $limit }
cli-reactions-in-the-air = { $contact }: in the air, carries nothing
cli-reactions-attitude = Body against level: { $roll }, { $pitch }
cli-roll-left = left side { $angle } down
cli-roll-right = right side { $angle } down
cli-pitch-down = nose { $angle } down
cli-pitch-up = nose { $angle } up
cli-reactions-turn-left = Rear axle against the frame: left end { $turn } down
cli-reactions-turn-right = Rear axle against the frame: right end { $turn } down
cli-reactions-stop = The rear axle lies against its stop at { $range }: that holds nothing that could be relied on
cli-reactions-steers = The steered rear axle carries { $share } of the weight
cli-reactions-tips = It tips: no position holds it
cli-reactions-cannot-tell = Cannot tell: the search found no position and no fall
cli-reactions-line = Over the { $side }: what holds is { $ratio } times what overturns.
cli-reactions-line-none = Over the { $side }: nothing to speak of overturns.
cli-reactions-line-tips = Over the { $side } it tips: what holds is only { $ratio } times what overturns.
cli-reactions-stands = As described it stands.
cli-reactions-not-stands = It does not stand, or that cannot be told.
cli-reactions-note = Forces at rest, without wind. That it stands is no margin: the maker’s manual and the chart in the cab govern.
working-holds = Moment of all parts that hold, about the tipping line
working-overturns = Moment of all parts that overturn, about the same line
working-moment-ratio = What holds over what overturns
working-weight = Weight of machine and load
working-seen-centre = Where the weight meets the ground’s plane, { $axis }
working-contact-force = Force on the contact: { $contact }
contact-front-left = front left
contact-front-right = front right
contact-rear-left = rear left
contact-rear-right = rear right
cli-travel-wind-without-gust = what the wind sees of the load counts with a gust only
cli-travel-bad-time = { $found } is no time until the brake takes hold: write seconds from 0 to 10, as in "3 s"
cli-travel-no-wind = No gust is stated: wind is not reckoned.
working-turning = Pull towards the middle of the turn, over gravity
working-sudden = A third more, as it may begin suddenly
working-apparent = Pull that the machine feels, over gravity
working-tilt-soft = Tilt that remains on contacts that give
working-energy = Energy that turns it over the line, at least
working-trip = Speed below which nothing that stops it dead turns it over
working-drop = Tilt left when wheels drop: turned by twice what the lowered contacts ask for
working-drop-energy = Energy left when wheels drop
working-stopping = Distance to a stop
jobfile-tips-forward-empty = empty, with { $attachment } on and the boom as carried, the machine’s centre of gravity lies { $by } ahead of the front axle: the rear axle would lift, and it would fall over
jobfile-tips-back-empty = empty, with { $attachment } on and the boom as carried, the machine’s centre of gravity lies { $by } behind the rear axle: the front axle would lift, and it would fall over
tolerance-fact = { $alone }, all else as planned; { $at_worst }, all else at its worst ({ $turns })
tolerance-fact-at-worst = { $at_worst }, all else at its worst ({ $turns })

## Things, zones, digs, what is buried

thing-clear = { $thing }: every part stays { $distance } clear or more; { $required } is needed.
thing-near = { $thing } is in the way: machine, boom or load comes within { $distance }; { $required } is needed.
thing-height-unknown = { $thing }: how high it is, is not known, and in plan machine, boom or load comes within { $distance } ({ $required } is needed).
thing-not-checked = { $thing }: the distance was not checked: { $why }
things-far = Out of reach, whatever the boom does: { $count ->
        [one] one thing
       *[other] { $count } things
    }.
do-thing-away = Stand at least { $distance } farther off, or have it moved.
do-measure-thing = Measure how high it is, and state it in the job.
working-thing-required = Distance required: room, accuracy of the thing, boom flex, lean of the tip by the survey’s error under the wheels, position of the stand
working-thing-nearest = Nearest distance of any part, over the whole movement
zone-no-go = { $zone } is closed to machines and loads ({ $by }), and machine, boom or load comes into it.
zone-no-go-times = { $zone } is closed to machines and loads at { $times } ({ $by }), and machine, boom or load comes into it.
zone-people = People walk or work in { $zone } ({ $by }), and machine, boom or load comes over it.
zone-people-times = People walk or work in { $zone } at { $times } ({ $by }), and machine, boom or load comes over it.
zone-soft = A wheel or pad stands in { $zone }, which is soft ground ({ $by }).
stands-in-excavation = A wheel or pad stands inside { $name }.
near-excavation = A wheel or pad comes within { $distance } of { $name }; { $required } is needed: one and a half times its depth, at least 1 m.
near-supported-excavation = A wheel or pad comes within { $distance } of { $name } (free of concern from { $required }): ask who designed its support whether it takes this machine.
near-excavation-unknown = A wheel or pad comes within { $distance } of { $name }, and nobody knows how deep it is; without its depth { $required } is needed.
stands-over-buried = A wheel or pad stands over { $name }; what it carries has not been checked (known from: { $by }).
do-leave-zone = Find a stand from which nothing comes into it, or have the zone moved by who set it.
do-wait-for-zone = Lift outside these times, and have the zone watched.
do-other-stand = Find another stand.
do-clear-buried = Stand beside it, or have its owner or an engineer state in writing what may stand over it.

## The command survey

cli-survey-read-file = { $file } ({ $kind })
cli-survey-holds = holds { $count ->
        [one] one point or shape
       *[other] { $count } points, cells or shapes
    }
cli-survey-extent = { $width } by { $depth }, from east { $east }, north { $north }
cli-survey-heights = heights from { $low } to { $high }
cli-survey-unit = unit of the file: { $unit }
cli-survey-system = coordinate system: { $crs }
cli-survey-system-not-known = coordinate system: not known
cli-survey-system-rejected = not taken as its coordinate system: { $why }
cli-survey-site-system = coordinate system of the site: { $crs }
cli-survey-site-system-not-stated = coordinate system of the site: not stated (--site-crs)
cli-survey-settled = Brought in before the ground, and reckoned from it now: the tops of { $count } things.
cli-survey-settled-from-cloud = Brought in before the cloud, and taken from the highest point that it shows inside: the tops of { $count } things.
cli-survey-settled-below = Brought in before the ground, and now found to end in it (another datum or unit?): the tops of { $count } things, taken as not known.
cli-survey-waiting = things with no known ground at their outline: { $count }; they are reckoned or checked when ground is brought in there
cli-survey-by-kind = by class or layer: { $list }
cli-survey-left-out = left out: { $list }
cli-survey-doubts = doubtful when it was brought in: { $count ->
        [one] one warning
       *[other] { $count } warnings
    }; a job that takes the site repeats them
cli-survey-placed = placed on the site: { $count }
cli-survey-guessed = “{ $layer }” was taken as “{ $kind }”, by its name
cli-survey-unnamed = left out, since nothing says what they are: { $list }
cli-survey-hint-unnamed = Say it: --layer "{ $layer }=building,height=9 m", or =nothing to leave it out.
cli-survey-site = On the site { $name }:
cli-survey-surface = ground: { $name }, to ±{ $accuracy }, of { $date }
cli-survey-things = things that stand: { $count }
cli-survey-things-unknown = of these the height is not known of { $count }: nothing passes over them until it is
cli-survey-lines = overhead lines: { $count }; heights not known of { $heights }, voltage of { $voltages }: no clearance to those can be told
cli-survey-others = excavations: { $digs }, buried: { $buried }, zones: { $zones }
cli-survey-no-ground = no ground yet
cli-survey-no-lines = no overhead line is known here; look up, and ask the network’s owner
cli-survey-likely-line = likely conductor { $number }: { $length } long, lowest { $low }, sag { $sag }, from east { $east }, north { $north }
cli-survey-hint-likely = These are suggestions: look at each on site, ask its owner for the voltage, and type it into the job as a line.
cli-survey-kept = Kept in { $file } ({ $size }). A job in that folder takes it with: site_from = "{ $name }"
cli-survey-not-kept = Nothing was kept: add --into plot.site.
cli-survey-wrote = Written: { $file }
cli-survey-under = Ground under { $length } × { $width } at east { $east }, north { $north }, heading { $heading }:
cli-survey-under-no-ground = no ground known here
cli-survey-under-holes = no ground known at { $holes } of { $places } places, such as east { $east }, north { $north }; what follows is of the rest only
cli-survey-under-lowest = lowest: { $nominal } ({ $low } to { $high })
cli-survey-under-highest = highest: { $nominal } ({ $low } to { $high })
cli-survey-under-along = slope along the heading: { $nominal } ({ $low } to { $high }); positive is uphill ahead
cli-survey-under-across = cross-slope: { $nominal } ({ $low } to { $high }); positive is uphill to the left
cli-survey-under-slope = steepest slope: { $nominal } ({ $low } to { $high }); it falls towards { $direction } from north
cli-survey-under-level = steepest slope: { $nominal } ({ $low } to { $high })
cli-survey-under-roughness = roughness about that plane, root mean square: { $nominal } ({ $low } to { $high })
cli-survey-under-above = highest above the plane: { $nominal } ({ $low } to { $high })
cli-survey-under-below = deepest below the plane: { $nominal } ({ $low } to { $high })
cli-survey-under-no-plane = too little ground is known here for a slope
cli-survey-under-read = Read every { $step } from { $surfaces }. The ranges hold if every height is within its survey’s accuracy; what is smaller than that, or has changed since, is not in them.
cli-survey-hint-under = Write it as --at "12 m, 8 m" --heading "30°" --footprint "4 m x 2 m": east and north, clockwise from north, length along the heading (5 cm to 100 m) and width.
cli-survey-bad-argument = { $argument } is not understood: { $value }
cli-survey-hint-layer = Write it as NAME=KIND, with where=type=fence (only where an attribute says so), height=9 m, level=112 m, attribute=HEIGHT, height=shape or width=30 cm behind commas. Kinds: { $kinds }.
cli-survey-hint-shift = Write it as --shift "84800 m, 447400 m" and --turn "12°".
cli-survey-hint-window = Write it as --window "0 m, 0 m, 60 m, 50 m": west, south, east, north.
cli-survey-hint-length = Give a length with its unit, such as "3 cm".
cli-survey-hint-epsg = Give its EPSG code, such as EPSG:25832.
cli-survey-hint-units = Give m, ft, "US ft", and for drawings also mm, cm or in.
cli-survey-hint-columns = Write it as --columns "east=2,north=3,height=4", by name or by place from 1.
cli-survey-bad-format = the ending of { $file } names no format that is written: .geojson, .dxf or .glb
cli-survey-not-stored = the site cannot be kept: a number in it is not finite
cli-survey-caution = A survey shows the ground of its day. Excavations, fill, ruts, stacks and parked plant since then are not in it: walk the ground, and let the competent person on site decide.
cli-survey-above = { $file }: { $count } things stand above the ground
cli-survey-why-not-ground = points that are not ground:
cli-survey-why-unknown-cells = cells without a height:
cli-survey-why-withheld = points marked as withheld:
cli-survey-why-lone = points that stand alone:
cli-survey-why-stated = as you said:
cli-survey-why-no-size = points without a size (state width):
cli-survey-why-text = texts:
cli-survey-why-no-course = lines that are none in plan:
cli-survey-why-far = lines far from the site:
cli-survey-why-no-outline = excavations without an outline:
cli-survey-from-cloud = height taken from the highest point that the cloud shows inside: { $count }
cli-survey-surface-undated = ground: { $name }, to ±{ $accuracy }; the day of the survey is not stated
cli-survey-why-support = supports of lines (say =mast,width=1 m):
cli-survey-why-voltage = voltages that cannot be in volts, taken as not known:
cli-survey-why-below = tops below the ground, taken as not known (another datum or unit?):
cli-survey-why-outside = outside the window:
cli-survey-without-ground = no ground is known at the outline of { $count } of them: bring in ground that reaches there and their heights are reckoned then, or check that plan and ground lie at one place
cli-survey-idle-rule = nothing in it is “{ $layer }”: that --layer did nothing
cli-survey-known = its height is known on { $area }
cli-survey-site-unnamed = On the site:
cli-survey-hint-accuracy = Give the largest height error to reckon with, more than 0 and up to 10 m, such as "3 cm".
cli-survey-hint-date = Give a day as year-month-day, such as 2027-04-12.
