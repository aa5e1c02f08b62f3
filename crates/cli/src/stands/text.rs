//! Ids of the sentences that `counterpoise stands` says. `wording` has the words.

evidence::messages! {
    /// Area in which a stand passes, of how much that was looked at around `landing`.
    PASSES = "cli-stands-passes" [area, all, radius, landing, cell];
    /// It passes nowhere there.
    PASSES_NOWHERE = "cli-stands-passes-nowhere" [all, radius, landing, cell];
    /// What no stand can mend.
    EVERYWHERE = "cli-stands-everywhere" [checks];
    /// Heading over the best stands.
    BEST = "cli-stands-best" [];
    /// The check of the best stands found none that holds.
    NONE_WHOLE = "cli-stands-none-whole" [];
    /// A stand: place, heading, verdict.
    STAND = "cli-stands-stand" [east, north, heading, verdict];
    /// What governs there.
    GOVERNS = "cli-stands-governs" [check];
    /// The same with what is left.
    GOVERNS_LEFT = "cli-stands-governs-left" [check, reserve];
    /// How far off it may be.
    MAY_BE_OFF = "cli-stands-may-be-off" [disc, turn];
    /// How far off it may be, and what refuses beyond.
    MAY_BE_OFF_BY = "cli-stands-may-be-off-by" [disc, turn, reason];
    /// Heading over the areas that refuse, by reason.
    WHY_NOT = "cli-stands-why-not" [];
    /// Area and reason.
    AREA = "cli-stands-area" [area, reason];
    /// Heading over what would make a lift work that works nowhere.
    CHANGES = "cli-stands-changes" [];
    /// The place asked for: place, heading, verdict.
    AT = "cli-stands-at" [east, north, heading, verdict];
    /// The nearest place that passes, and how far that is.
    NEAREST = "cli-stands-nearest" [east, north, heading, distance];
    /// No place that was looked at passes.
    NO_NEAREST = "cli-stands-no-nearest" [];
    /// The ground around a landing cannot be looked at.
    CANNOT_LOOK = "cli-stands-cannot-look" [lift];
    /// An argument that cannot be read.
    BAD_ARGUMENT = "cli-stands-bad-argument" [argument, value];
    /// Hint: radius and cell.
    HINT_FIELD = "cli-stands-hint-field" [];
    /// Hint: how a place is written.
    HINT_PLACE = "cli-stands-hint-place" [];
    /// Hint: how a heading is written.
    HINT_HEADING = "cli-stands-hint-heading" [];
}
