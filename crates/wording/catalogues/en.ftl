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
ui-source-from-memory = { $citation } (from memory)
ui-source-common-practice = common practice
ui-source-mechanics = mechanics
ui-source-input = { $place }, { $certainty }
ui-source-person = { $name } states: { $statement }

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
ui-reserve-over = { $share } over the limit
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

ui-not-posed = Not drawn: the machine could not be posed at this stand. See the findings.
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
ui-capacity-factor = Capacities multiplied by { $factor }: the load centre is beyond the rated one
ui-zone-enough = Carries this load with { $share } or more left
ui-zone-little = Carries this load with less than { $share } left
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
ui-over-limit = over the limit
ui-in-reserve = in reserve
ui-no-number = no number
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
