//! Ids of the sentences that `counterpoise order` says. `wording` has the words.

evidence::messages! {
    /// How many lifts have a place, of how many, and when the last is done at the latest.
    SUMMARY = "cli-order-summary" [placed, lifts, end];
    /// No lift has a place.
    NOTHING = "cli-order-nothing" [];
    /// No order of these lifts is better.
    EXACT = "cli-order-exact" [];
    /// A good order; there may be a better one.
    GOOD = "cli-order-good" [];
    /// What a row of the list says: start, likely end, latest end.
    ROWS = "cli-order-rows" [];
    /// A time of the next day.
    NEXT_DAY = "cli-order-next-day" [time];
    /// The way to this lift from the last stand, likely and at most.
    WAY = "cli-order-way" [likely, most];
    /// The machine stays where it stood.
    STAYS = "cli-order-stays" [];
    /// The time was stated.
    STATED = "cli-order-stated" [];
    /// Heading over what lies on the landings.
    LANDINGS = "cli-order-landings" [];
    /// What lies on a landing after a lift, and may lie there.
    LIES = "cli-order-lies" [lift, lies, may];
    /// The same after a load was taken away.
    LIES_LESS = "cli-order-lies-less" [lift, lies];
    /// Heading over the lifts that have no place.
    LEFT_OUT = "cli-order-left-out" [];
    /// A lift with the reason.
    LEFT_OUT_LIFT = "cli-order-left-out-lift" [lift, name, reason];
    /// The order holds for priorities that the job does not state.
    CHANGED = "cli-order-changed" [lift, priority];
    /// A priority that cannot be read.
    BAD_PRIORITY = "cli-order-bad-priority" [value];
    /// Hint: how a priority is written.
    HINT_PRIORITY = "cli-order-hint-priority" [];
}
