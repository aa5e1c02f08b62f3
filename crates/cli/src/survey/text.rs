//! Ids of the sentences that `counterpoise survey` says. `wording` has the words.

evidence::messages! {
    /// Heading of what was read from `file`, a file of kind `kind`.
    READ_FILE = "cli-survey-read-file" [file, kind];
    /// What stands above the ground in a cloud.
    ABOVE = "cli-survey-above" [file, count];
    /// Why something was left out: no ground point.
    WHY_NOT_GROUND = "cli-survey-why-not-ground" [];
    /// Why: cells without a height.
    WHY_UNKNOWN_CELLS = "cli-survey-why-unknown-cells" [];
    /// Why: marked as withheld.
    WHY_WITHHELD = "cli-survey-why-withheld" [];
    /// Why: points that stand alone.
    WHY_LONE = "cli-survey-why-lone" [];
    /// Why: the user said so.
    WHY_STATED = "cli-survey-why-stated" [];
    /// Why: a point whose size nobody stated.
    WHY_NO_SIZE = "cli-survey-why-no-size" [];
    /// Why: a text.
    WHY_TEXT = "cli-survey-why-text" [];
    /// Why: an overhead line that is no line in plan.
    WHY_NO_COURSE = "cli-survey-why-no-course" [];
    /// Why: a line far from the site.
    WHY_FAR = "cli-survey-why-far" [];
    /// Why: an excavation that encloses nothing.
    WHY_NO_OUTLINE = "cli-survey-why-no-outline" [];
    /// Why: a support of an overhead line, whose size nobody stated.
    WHY_SUPPORT = "cli-survey-why-support" [];
    /// A voltage that cannot be one in volts.
    WHY_VOLTAGE = "cli-survey-why-voltage" [];
    /// A top in the ground.
    WHY_BELOW = "cli-survey-why-below" [];
    /// Why: outside the window.
    WHY_OUTSIDE = "cli-survey-why-outside" [];
    /// Things with no known ground at their outline.
    WITHOUT_GROUND = "cli-survey-without-ground" [count];
    /// A rule spoke of no layer.
    IDLE_RULE = "cli-survey-idle-rule" [layer];
    /// Ground of which the height is known.
    KNOWN = "cli-survey-known" [area];
    /// Heading of what is on the site now, without a name.
    SITE_UNNAMED = "cli-survey-site-unnamed" [];
    /// Accuracy as it may be.
    HINT_ACCURACY = "cli-survey-hint-accuracy" [];
    /// A day as it is written.
    HINT_DATE = "cli-survey-hint-date" [];
    /// Tops taken from a cloud.
    FROM_CLOUD = "cli-survey-from-cloud" [count];
    /// A surface of unknown day.
    SURFACE_UNDATED = "cli-survey-surface-undated" [name, accuracy];
    /// It holds so many points, rows, cells or shapes.
    HOLDS = "cli-survey-holds" [count];
    /// Size in plan and where its south-west corner lies.
    EXTENT = "cli-survey-extent" [width, depth, east, north];
    /// Lowest and highest height.
    HEIGHTS = "cli-survey-heights" [low, high];
    /// Unit and coordinate system.
    UNIT = "cli-survey-unit" [unit];
    /// Coordinate system.
    SYSTEM = "cli-survey-system" [crs];
    /// No coordinate system is known of a file that states one.
    SYSTEM_NOT_KNOWN = "cli-survey-system-not-known" [];
    /// What a file says of its coordinate system and was not taken, with the warning that says why.
    SYSTEM_REJECTED = "cli-survey-system-rejected" [why];
    /// Coordinate system of the site.
    SITE_SYSTEM = "cli-survey-site-system" [crs];
    /// Nobody stated the coordinate system of the site.
    SITE_SYSTEM_NOT_STATED = "cli-survey-site-system-not-stated" [];
    /// Things of earlier plans whose height is known now, from new ground.
    SETTLED = "cli-survey-settled" [count];
    /// The same, from what a new cloud shows.
    SETTLED_FROM_CLOUD = "cli-survey-settled-from-cloud" [count];
    /// Things of earlier plans whose top lies in the new ground.
    SETTLED_BELOW = "cli-survey-settled-below" [count];
    /// Things that wait for ground.
    WAITING = "cli-survey-waiting" [count];
    /// What it holds by class or layer.
    BY_KIND = "cli-survey-by-kind" [list];
    /// What was left out.
    LEFT_OUT = "cli-survey-left-out" [list];
    /// Doubtful things said when it was brought in.
    DOUBTS = "cli-survey-doubts" [count];
    /// Shapes placed on the site.
    PLACED = "cli-survey-placed" [count];
    /// A layer's meaning was guessed from its name.
    GUESSED = "cli-survey-guessed" [layer, kind];
    /// Layers that nothing speaks of.
    UNNAMED = "cli-survey-unnamed" [list];
    /// Hint for those: name them.
    HINT_UNNAMED = "cli-survey-hint-unnamed" [layer];
    /// Heading of what is on the site now.
    SITE = "cli-survey-site" [name];
    /// A ground surface with its accuracy and date.
    SURFACE = "cli-survey-surface" [name, accuracy, date];
    /// Things on the site.
    THINGS = "cli-survey-things" [count];
    /// Things of unknown height.
    THINGS_UNKNOWN = "cli-survey-things-unknown" [count];
    /// Overhead lines; of so many the height is not known, of so many the voltage.
    LINES = "cli-survey-lines" [count, heights, voltages];
    /// Excavations, buried things, zones.
    OTHERS = "cli-survey-others" [digs, buried, zones];
    /// No ground yet.
    NO_GROUND = "cli-survey-no-ground" [];
    /// No line is known; that is not the same as none there.
    NO_LINES = "cli-survey-no-lines" [];
    /// A likely conductor in the cloud, to be confirmed.
    LIKELY_LINE = "cli-survey-likely-line" [number, length, low, sag, east, north];
    /// What to do about those.
    HINT_LIKELY = "cli-survey-hint-likely" [];
    /// Kept in `file`.
    KEPT = "cli-survey-kept" [file, size, name];
    /// Nothing was kept.
    NOT_KEPT = "cli-survey-not-kept" [];
    /// Picture or export written.
    WROTE = "cli-survey-wrote" [file];
    /// Heading of what the ground under a footprint is like.
    UNDER = "cli-survey-under" [length, width, east, north, heading];
    /// No ground is known under it.
    UNDER_NO_GROUND = "cli-survey-under-no-ground" [];
    /// Holes under it, and where the first is.
    UNDER_HOLES = "cli-survey-under-holes" [holes, places, east, north];
    /// The lowest place under it.
    UNDER_LOWEST = "cli-survey-under-lowest" [nominal, low, high];
    /// The highest.
    UNDER_HIGHEST = "cli-survey-under-highest" [nominal, low, high];
    /// Slope along its heading.
    UNDER_ALONG = "cli-survey-under-along" [nominal, low, high];
    /// Slope across its heading.
    UNDER_ACROSS = "cli-survey-under-across" [nominal, low, high];
    /// Steepest slope, and the direction in which it falls.
    UNDER_SLOPE = "cli-survey-under-slope" [nominal, low, high, direction];
    /// The same where it is level.
    UNDER_LEVEL = "cli-survey-under-level" [nominal, low, high];
    /// Roughness.
    UNDER_ROUGHNESS = "cli-survey-under-roughness" [nominal, low, high];
    /// Highest above the plane.
    UNDER_ABOVE = "cli-survey-under-above" [nominal, low, high];
    /// Deepest below the plane.
    UNDER_BELOW = "cli-survey-under-below" [nominal, low, high];
    /// Too little ground for a plane.
    UNDER_NO_PLANE = "cli-survey-under-no-plane" [];
    /// How it was read, and from which surfaces.
    UNDER_READ = "cli-survey-under-read" [step, surfaces];
    /// A footprint as it is written.
    HINT_UNDER = "cli-survey-hint-under" [];
    /// What is not read in an argument.
    BAD_ARGUMENT = "cli-survey-bad-argument" [argument, value];
    /// A layer rule as it is written.
    HINT_LAYER = "cli-survey-hint-layer" [kinds];
    /// A shift as it is written.
    HINT_SHIFT = "cli-survey-hint-shift" [];
    /// A window as it is written.
    HINT_WINDOW = "cli-survey-hint-window" [];
    /// A length as it is written.
    HINT_LENGTH = "cli-survey-hint-length" [];
    /// A coordinate system as it is written.
    HINT_EPSG = "cli-survey-hint-epsg" [];
    /// Units as they are written.
    HINT_UNITS = "cli-survey-hint-units" [];
    /// Columns as they are written.
    HINT_COLUMNS = "cli-survey-hint-columns" [];
    /// The ending names no format.
    BAD_FORMAT = "cli-survey-bad-format" [file];
    /// The site cannot be stored: a number in it is not one.
    NOT_STORED = "cli-survey-not-stored" [];
    /// Caution: the survey shows the ground of its day.
    CAUTION = "cli-survey-caution" [];
}
