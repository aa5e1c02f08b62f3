//! The ids of every sentence in exported files and about them. `wording` has the words.

evidence::messages! {
    /// Stands after the name of what is drawn to a stated height because its own is not known.
    HEIGHT_NOT_KNOWN = "exchange-height-not-known" [];
    /// After the name of what stands on ground whose level is not known there.
    GROUND_NOT_KNOWN = "exchange-ground-not-known" [];
    /// After the name of what is dug or buried to a depth that is not known.
    DEPTH_NOT_KNOWN = "exchange-depth-not-known" [];
    /// After the name of a landing whose direction is not known: drawn as a cross.
    DIRECTION_NOT_KNOWN = "exchange-direction-not-known" [];
    /// After the name of an overhead line whose voltage is not known.
    VOLTAGE_NOT_KNOWN = "exchange-voltage-not-known" [];

    /// Note: not for setting out.
    NOTE_NOT_SETTING_OUT = "exchange-note-not-setting-out" [];
    /// Note: the data are invented.
    NOTE_INVENTED = "exchange-note-invented" [];
    /// Note: written by which version.
    NOTE_WRITTEN_BY = "exchange-note-written-by" [version];
    /// Note: coordinates in the system of that EPSG code, in metres.
    NOTE_EPSG = "exchange-note-epsg" [code];
    /// Note: coordinates in a grid of the site's own, in metres.
    NOTE_SITE_GRID = "exchange-note-site-grid" [];
    /// Note: where f32 coordinates count from.
    NOTE_ORIGIN = "exchange-note-origin" [east, north, height];
    /// Note: what stands for things that are not known, drawn `height` high.
    NOTE_NOT_KNOWN = "exchange-note-not-known" [height];
    /// Note: a ground surface with its accuracy and date.
    NOTE_GROUND = "exchange-note-ground" [name, accuracy, date];
    /// Note: only every `step`-th row and column of a ground surface is drawn.
    NOTE_THINNED = "exchange-note-thinned" [name, step];
    /// Note: the place of something is not known, so that it is not drawn.
    NOTE_NO_PLACE = "exchange-note-no-place" [name];
    /// Note: whose data these are, in their own words.
    NOTE_ATTRIBUTION = "exchange-note-attribution" [text];
    /// Note: the plan that this belongs to.
    NOTE_PLAN = "exchange-note-plan" [job, date, verdict, digest];
    /// Name of a stand of a lift.
    STAND_OF = "exchange-stand-of" [lift];
    /// Name of a machine's outline in a lift.
    MACHINE_OF = "exchange-machine-of" [machine, lift];
    /// Name of the straight line from a stand to its landing.
    WAY_OF = "exchange-way-of" [lift];

    /// Something has a coordinate or a size that is not a number, or none that a site can have.
    NOT_FINITE = "exchange-not-finite" [name];
    /// Hint: correct or remove it.
    NOT_FINITE_HINT = "exchange-not-finite-hint" [];
    /// Something has no extent in plan: too few corners, no width, no radius.
    NO_EXTENT = "exchange-no-extent" [name];
    /// Hint: how many corners and what sizes are needed.
    NO_EXTENT_HINT = "exchange-no-extent-hint" [];
    /// Columns whose number does not agree with their rows.
    COLUMNS_WRONG = "exchange-columns-wrong" [name, found, wanted];
    /// More pieces than such a file should hold.
    TOO_MUCH = "exchange-too-much" [name, found, most];
    /// Hint: cut a window out of the survey, or take another format.
    TOO_MUCH_HINT = "exchange-too-much-hint" [];
    /// Plan and job do not belong together: one has `plan` lifts, the other `job`.
    NOT_ITS_PLAN = "exchange-not-its-plan" [plan, job];
}
