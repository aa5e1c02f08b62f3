//! Ids of the step titles said here. `wording` has the words.

evidence::messages! {
    /// Working: total mass that counts for the tipping line and its centre of gravity; `axis` names the coordinate (x, y, z).
    STEP_CENTRE_OF_GRAVITY = "working-centre-of-gravity" [axis];
    /// Working: mass that counts for the tipping line (without the rear axle where it hangs free).
    STEP_COUNTED_MASS = "working-counted-mass" [];
    /// Working: restoring moment about the tipping line by weight.
    STEP_RESTORING = "working-restoring" [];
    /// Working: overturning moment of the wind about the tipping line.
    STEP_WIND_MOMENT = "working-wind-moment" [];
    /// Working: wind pressure q = ½ρv².
    STEP_WIND_PRESSURE = "working-wind-pressure" [];
    /// Working: wind force on one part, named by `part`, of wind along and across the machine.
    STEP_WIND_FORCE = "working-wind-force" [part];
    /// Working: distance of the centre of gravity from the tipping line.
    STEP_ARM = "working-arm" [];
    /// Working: what reaches the frame through the pin of a free rear axle, the front wheels holding the machine along its length.
    STEP_THROUGH_PIN = "working-through-pin" [];
    /// Working: the same where the rear wheels hold the machine along its length.
    STEP_HELD_BY_REAR = "working-held-by-rear" [];
    /// Working: tilt that remains until the moment about the line is zero, in the worst direction.
    STEP_TILT = "working-tilt" [];
    /// Working: load at which tipping starts.
    STEP_TIPPING_LOAD = "working-tipping-load" [];
    /// Working: load factor = tipping load / upper load.
    STEP_LOAD_FACTOR = "working-load-factor" [];
    /// Working: moment of all parts that hold, about the tipping line.
    STEP_HOLDS = "working-holds" [];
    /// Working: moment of all parts that overturn, about the tipping line.
    STEP_OVERTURNS = "working-overturns" [];
    /// Working: restoring over overturning moment.
    STEP_MOMENT_RATIO = "working-moment-ratio" [];
    /// Working: weight of machine and load.
    STEP_WEIGHT = "working-weight" [];
    /// Working: where the weight meets the ground's plane; `axis` names the coordinate.
    STEP_SEEN_CENTRE = "working-seen-centre" [axis];
    /// Working: force on a contact.
    STEP_CONTACT_FORCE = "working-contact-force" [contact];
    /// Name of a contact: front left.
    CONTACT_FRONT_LEFT = "contact-front-left" [];
    /// Name of a contact: front right.
    CONTACT_FRONT_RIGHT = "contact-front-right" [];
    /// Name of a contact: rear left.
    CONTACT_REAR_LEFT = "contact-rear-left" [];
    /// Name of a contact: rear right.
    CONTACT_REAR_RIGHT = "contact-rear-right" [];
    /// Working: acceleration towards the middle of a turn.
    STEP_TURNING = "working-turning" [];
    /// Working: what is counted of an acceleration that may begin suddenly.
    STEP_SUDDEN = "working-sudden" [];
    /// Working: the pull that a moving machine feels.
    STEP_APPARENT = "working-apparent" [];
    /// Working: tilt that remains on contacts that give.
    STEP_TILT_SOFT = "working-tilt-soft" [];
    /// Working: energy that tips it.
    STEP_ENERGY = "working-energy" [];
    /// Working: speed below which nothing that stops it dead tips it.
    STEP_TRIP = "working-trip" [];
    /// Working: tilt left when wheels drop.
    STEP_DROP = "working-drop" [];
    /// Working: energy left when wheels drop.
    STEP_DROP_ENERGY = "working-drop-energy" [];
    /// Working: stopping distance.
    STEP_STOPPING = "working-stopping" [];
    /// Name of a part: the load.
    PART_LOAD = "part-load" [];
    /// Name of a part: the boom.
    PART_BOOM = "part-boom" [];
    /// Name of a part: frame with wheels, without cab.
    PART_FRAME = "part-frame" [];
    /// Name of a part: the cab.
    PART_CAB = "part-cab" [];
    /// Name of a part: carriage with attachment.
    PART_CARRIAGE = "part-carriage" [];
    /// Name of a coordinate: x, forward of the front axle.
    AXIS_X = "axis-x" [];
    /// Name of a coordinate: y, left of the middle.
    AXIS_Y = "axis-y" [];
    /// Name of a coordinate: z, above the ground.
    AXIS_Z = "axis-z" [];
}
