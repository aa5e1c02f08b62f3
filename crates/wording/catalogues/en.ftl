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
