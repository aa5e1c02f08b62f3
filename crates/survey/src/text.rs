//! The ids of every sentence about survey files. `wording` has the words.

evidence::messages! {
    /// The file has no bytes.
    EMPTY = "survey-empty" [];
    /// The name ends in `extension`, but the content is of another kind.
    NOT_THE_KIND = "survey-not-the-kind" [extension];
    /// The file is of no kind that is read: LAS, LAZ, GeoTIFF, LandXML, CSV levels.
    KIND_UNKNOWN = "survey-kind-unknown" [];
    /// A building model or a drawing in a closed format: not read.
    MODEL = "survey-model" [];
    /// A picture: nothing in it says where it lies.
    PICTURE = "survey-picture" [];
    /// The file holds shapes in plan, and no ground.
    NO_GROUND_IN_PLAN = "survey-no-ground-in-plan" [];
    /// No place has a height that is known.
    NOTHING_KNOWN = "survey-nothing-known" [];
    /// A file of that name was there already with other content.
    REPLACES_ANOTHER = "survey-replaces-another" [file];
    /// What is on the site names no system.
    SITE_SYSTEM_UNKNOWN = "survey-site-system-unknown" [site];
    /// Two systems on one site.
    SYSTEMS_DIFFER = "survey-systems-differ" [first, second];
    /// Give files of different content different names.
    DO_OTHER_NAME = "survey-do-other-name" [];
    /// State the system from the first file on.
    DO_BRING_IN_TOGETHER = "survey-do-bring-in-together" [];
    /// Nobody has said how accurate the ground is.
    ACCURACY_NOT_STATED = "survey-accuracy-not-stated" [];
    /// A stored site holds more than one surface.
    STORED_SITE = "survey-stored-site" [];
    /// The file is no stored site.
    NOT_A_SITE = "survey-not-a-site" [];
    /// The site was stored by another version of this program: form `found`; `known` is read.
    SITE_VERSION = "survey-site-version" [found, known];
    /// The stored site ends too early.
    SITE_CUT = "survey-site-cut" [];
    /// The stored site is not as it was written.
    SITE_DAMAGED = "survey-site-damaged" [];
    /// A point cloud (LAS or LAZ) is needed here, and this file is none.
    NOT_A_CLOUD = "survey-not-a-cloud" [];
    /// Several grids, or surfaces of triangles, cannot be joined into one surface.
    TILES_OF_GRIDS = "survey-tiles-of-grids" [];

    /// The file ends inside its header.
    HEADER_CUT = "survey-header-cut" [];
    /// The file is cut short: it should have at least `needed` bytes and has `found`.
    TRUNCATED = "survey-truncated" [needed, found];
    /// The file declares `points` points or cells, more than its `bytes` bytes can hold: cut short, or the header is wrong.
    TOO_FEW_BYTES = "survey-too-few-bytes" [points, bytes];
    /// The header holds values that cannot be: sizes, positions, scales or bounds.
    HEADER_ABSURD = "survey-header-absurd" [];
    /// The header declares `declared` descriptive records, but there is room for only `room` bytes of them.
    RECORD_COUNT_ABSURD = "survey-record-count-absurd" [declared, room];
    /// The header declares `declared` descriptive records, `found` are there; points were read all the same, but a coordinate system may be missing.
    RECORDS_MISSING = "survey-records-missing" [declared, found];
    /// Point format `format` with `length` bytes a point is none of the formats 0 to 10.
    POINT_FORMAT = "survey-point-format" [format, length];
    /// How the points are compressed is not described, or in a way that is not known.
    COMPRESSION_UNKNOWN = "survey-compression-unknown" [];
    /// Compressed points without the table that says where their chunks are (old compressor or interrupted writing).
    NO_CHUNK_TABLE = "survey-no-chunk-table" [];
    /// The table of compressed chunks does not agree with the file.
    CHUNKS_WRONG = "survey-chunks-wrong" [];
    /// The header declares `declared` points, the compressed chunks `found`.
    CHUNK_POINTS_WRONG = "survey-chunk-points-wrong" [declared, found];
    /// The content cannot be decoded: `detail` is the decoder's own remark, in English.
    DECODE_FAILED = "survey-decode-failed" [detail];
    /// Points lie `by` outside the box that the header declares, so the content is damaged or the header wrong.
    BOUNDS_DIFFER = "survey-bounds-differ" [by];
    /// Coordinates such as `east`, `north` lie on no plane of the earth.
    NOT_ON_EARTH = "survey-not-on-earth" [east, north];
    /// The file holds no points.
    NO_POINTS = "survey-no-points" [];
    /// `points` points are more than the `most` that are taken at once.
    TOO_MANY_POINTS = "survey-too-many-points" [points, most];
    /// Only `points` points, or all in one line: a surface needs three that are not.
    TOO_FEW_POINTS = "survey-too-few-points" [points];
    /// None of the `points` points is classed as ground (class 2); classes found: `classes`.
    UNCLASSIFIED = "survey-unclassified" [points, classes];
    /// No ground in the window; the file covers east `west` to `east`, north `south` to `north` (m).
    WINDOW_EMPTY = "survey-window-empty" [west, south, east, north];
    /// Only `density` ground points per square metre: much of the ground stays unknown, and the cloud is too thin for a check of clearances.
    CLOUD_THIN = "survey-cloud-thin" [density];
    /// Ground was found by the filter: `ground` of `points` points, `share` %.
    GROUND_FILTERED = "survey-ground-filtered" [ground, points, share];
    /// A parameter of the ground filter cannot be.
    FILTER_ABSURD = "survey-filter-absurd" [];
    /// Ground points (at least `points`) at `east`, `north` stand up by cliffs all around, heights `low` to `high` (m), on `area` m²: no ground is known there.
    GROUND_DOUBTFUL = "survey-ground-doubtful" [points, east, north, low, high, area];
    /// `count` more such patches.
    GROUND_DOUBTFUL_MORE = "survey-ground-doubtful-more" [count];
    /// Cells of `cell` over `east` by `north` make `cells` cells, more than `most`.
    TOO_MANY_CELLS = "survey-too-many-cells" [cell, east, north, cells, most];
    /// A cell of `cell` m cannot be.
    CELL_SIZE = "survey-cell-size" [cell];
    /// The ground that is given knows no height where the cloud lies.
    NO_GROUND_UNDER = "survey-no-ground-under" [];
    /// `count` points stand alone above the ground and were left out.
    LONE_POINTS = "survey-lone-points" [count];
    /// `count` places where points hang like a conductor: a suggestion.
    CONDUCTORS_LIKELY = "survey-conductors-likely" [count];
    /// An option is no number, or outside its range.
    OPTION_ABSURD = "survey-option-absurd" [];
    /// An outline with fewer than three corners, or with one that is no number.
    OUTLINE_ABSURD = "survey-outline-absurd" [];
    /// `count` ground points have heights no ground can have and were left out.
    HEIGHTS_IMPLAUSIBLE = "survey-heights-implausible" [count];

    /// Neither the file nor the job says which length unit the numbers are in.
    UNITS_UNKNOWN = "survey-units-unknown" [];
    /// The file names the coordinate system `crs`, but not its length unit, and the job states none.
    UNITS_UNKNOWN_CRS = "survey-units-unknown-crs" [crs];
    /// The file contradicts itself about its length unit: `found`.
    UNITS_CONTRADICT = "survey-units-contradict" [found];
    /// The file gives eastings and northings in `plan`, heights in `heights`: often one of the two is wrong.
    UNITS_DIFFER = "survey-units-differ" [plan, heights];
    /// The length unit `found` is none of those that are read.
    UNIT_NOT_KNOWN = "survey-unit-not-known" [found];
    /// The file says its eastings and northings are in `found`; taken as `stated`, as the job states.
    UNITS_OVERRIDDEN = "survey-units-overridden" [found, stated];
    /// The file says its heights are in `found`; taken as `stated`, as the job states.
    HEIGHT_UNITS_OVERRIDDEN = "survey-height-units-overridden" [found, stated];
    /// The file does not say which unit its heights are in; taken as `unit`, like its eastings.
    HEIGHT_UNITS_ASSUMED = "survey-height-units-assumed" [unit];
    /// The coordinates are longitude and latitude (`crs`, stated in `place`), not lengths.
    DEGREES = "survey-degrees" [crs, place];
    /// Nothing names a coordinate system, and numbers such as `east`, `north` are longitude and latitude, not lengths.
    LOOKS_LIKE_DEGREES = "survey-looks-like-degrees" [east, north];
    /// The file says (`crs`, in `place`) that its numbers are longitude and latitude, but they reach `east`, `north`, which cannot be.
    CRS_IMPOSSIBLE = "survey-crs-impossible" [crs, place, east, north];

    /// The file says it is in `found`; taken as `stated`, as the job states.
    CRS_REPLACED = "survey-crs-replaced" [found, stated];
    /// The job states the system `crs` for the file, but none for the site.
    SITE_CRS_UNKNOWN = "survey-site-crs-unknown" [crs];
    /// The site is in `site`, and nothing says which coordinate system the file is in.
    FILE_CRS_UNKNOWN = "survey-file-crs-unknown" [site];
    /// The site is in `site`; the file names its system `crs`, which cannot be told for certain.
    FILE_CRS_NOT_KNOWN = "survey-file-crs-not-known" [crs, site];
    /// The file names two coordinate systems: `first` and `second`.
    CRS_CONTRADICTS = "survey-crs-contradicts" [first, second];
    /// The site cannot be in `crs`: longitude and latitude are no lengths.
    SITE_IN_DEGREES = "survey-site-in-degrees" [crs];
    /// `crs` is none of the systems that are converted here.
    CRS_NOT_CONVERTED = "survey-crs-not-converted" [crs];
    /// `from` and `to` lie on different datums, and no shift between them is known without a grid file.
    NO_DATUM_SHIFT = "survey-no-datum-shift" [from, to];
    /// `from` cannot be converted to `to`.
    NO_CONVERSION = "survey-no-conversion" [from, to];
    /// The datums `from` and `to` differ: the plan was moved by published shifts, good to about `accuracy`; heights were not transformed.
    DATUMS_DIFFER = "survey-datums-differ" [from, to, accuracy];
    /// The same, where nobody says how good the shifts are.
    DATUMS_DIFFER_UNKNOWN = "survey-datums-differ-unknown" [from, to];
    /// Two datums with the same shift: the plan was not moved, and that is good to so much.
    DATUMS_TAKEN_AS_ONE = "survey-datums-taken-as-one" [from, to, accuracy];
    /// The same where nobody says how good that is.
    DATUMS_TAKEN_AS_ONE_UNKNOWN = "survey-datums-taken-as-one-unknown" [from, to];
    /// In `crs` (degrees) the second number is the latitude; `second` is none, while `first` could be one.
    LATITUDE_SECOND = "survey-latitude-second" [crs, first, second];
    /// The file is in `crs`, but `first`, `second` are no longitude and latitude.
    NOT_DEGREES = "survey-not-degrees" [crs, first, second];
    /// `first`, `second` lie outside the area of `file` or of `site`, and inside when they are swapped.
    AXES_SWAPPED = "survey-axes-swapped" [file, site, first, second];
    /// `first`, `second` lie far outside the area where `file` or `site` is used.
    OUTSIDE_AREA = "survey-outside-area" [file, site, first, second];
    /// Nothing says which unit the heights beside longitude and latitude are in.
    HEIGHT_UNITS_UNKNOWN = "survey-height-units-unknown" [];
    /// The site grid's turn, scale or shift is no usable number.
    LOCAL_GRID = "survey-local-grid" [];
    /// The tiles are in different coordinate systems: `first` and `second`.
    TILES_DIFFER = "survey-tiles-differ" [first, second];
    /// `count` points have no place in the site's system and were left out.
    POINTS_WITHOUT_PLACE = "survey-points-without-place" [count];
    /// The grid was converted to another system: its cell centres became points, joined to triangles; nothing was resampled.
    GRID_TO_TRIANGLES = "survey-grid-to-triangles" [];
    /// Do: state the coordinate system of the site in the job (an EPSG code), or none for the file.
    DO_STATE_SITE_CRS = "survey-do-state-site-crs" [];
    /// Do: state the coordinate system of this file in the job (an EPSG code), after asking who made it.
    DO_STATE_FILE_CRS = "survey-do-state-file-crs" [];
    /// Do: state a plane system for the site, such as UTM or the national grid.
    DO_PLANE_SITE_CRS = "survey-do-plane-site-crs" [];
    /// Do: convert the file in a survey program first, and check a known point in the result.
    DO_CONVERT_OUTSIDE = "survey-do-convert-outside" [];
    /// Do: check a known point; where decimetres count, have the file converted with the national grid file.
    DO_CHECK_DATUM = "survey-do-check-datum" [];
    /// Do: export with east (longitude) first and north (latitude) second.
    DO_EAST_FIRST = "survey-do-east-first" [];
    /// Do: check the systems of file and site, and their units.
    DO_CHECK_SYSTEMS = "survey-do-check-systems" [];
    /// Do: work the site grid out again from known points.
    DO_LOCAL_GRID = "survey-do-local-grid" [];
    /// Do: state one coordinate system for the site, so that all tiles are brought into it.
    DO_ONE_SITE_CRS = "survey-do-one-site-crs" [];

    /// Shape `place`: a corner lies nowhere in the site's system.
    SHAPE_WITHOUT_PLACE = "survey-shape-without-place" [place];
    /// Shape `place`: of no known kind, or its coordinates are no numbers.
    SHAPE_UNREADABLE = "survey-shape-unreadable" [place];
    /// Shape `place`: a line without length; left out.
    LINE_WITHOUT_LENGTH = "survey-line-without-length" [place];
    /// Shape `place`: an outline of fewer than three corners; left out.
    RING_TOO_SHORT = "survey-ring-too-short" [place];
    /// Shape `place`: a hole of fewer than three corners; left out.
    HOLE_TOO_SHORT = "survey-hole-too-short" [place];
    /// Shape `place`: an outline that encloses nothing; left out.
    AREA_OF_NOTHING = "survey-area-of-nothing" [place];
    /// Shape `place`: an outline that crosses or touches itself; everything it encloses was taken.
    AREA_CROSSES_ITSELF = "survey-area-crosses-itself" [place];
    /// `count` points stood twice in a row and were taken once.
    POINTS_REPEATED = "survey-points-repeated" [count];
    /// `count` outlines were not closed; closed from last corner to first.
    RINGS_UNCLOSED = "survey-rings-unclosed" [count];
    /// `count` more shapes were mended, left out or unreadable.
    MORE_BAD_SHAPES = "survey-more-bad-shapes" [count];
    /// `count` features have no shape at all.
    WITHOUT_SHAPE = "survey-without-shape" [count];
    /// `count` surfaces in space (MultiPatch) are not read.
    MULTIPATCH_LEFT_OUT = "survey-multipatch-left-out" [count];
    /// No shape in the file can be used.
    NO_SHAPES = "survey-no-shapes" [];
    /// `found` bytes are more than the `most` that are taken.
    TOO_MANY_BYTES = "survey-too-many-bytes" [found, most];
    /// The text is no JSON: `detail` is the decoder's own remark, in English.
    JSON_BROKEN = "survey-json-broken" [detail];
    /// JSON, but neither features nor a geometry.
    NOT_GEOJSON = "survey-not-geojson" [];
    /// Shapes in plan are needed here, and this file holds none.
    NOT_A_PLAN = "survey-not-a-plan" [];
    /// Record `place` declares `length` bytes where `room` are left.
    RECORD_ABSURD = "survey-record-absurd" [place, length, room];
    /// No table (.dbf) beside the shapes: names and attributes are missing.
    TABLE_MISSING = "survey-table-missing" [];
    /// `shapes` shapes, but `rows` rows in the table: which belongs to which is not known.
    TABLE_DIFFERS = "survey-table-differs" [shapes, rows];
    /// The table ends inside its header.
    TABLE_CUT = "survey-table-cut" [];
    /// The table's header holds sizes that cannot be.
    TABLE_ABSURD = "survey-table-absurd" [];
    /// `count` texts hold letters of a code page that is not known; those letters are marked.
    TABLE_WORDS = "survey-table-words" [count];
    /// No .shp among the files.
    SHP_MISSING = "survey-shp-missing" [];
    /// Two files with `ending`, or one of another Shapefile.
    PARTS_MIXED = "survey-parts-mixed" [ending];
    /// Do: look at the shape in the program that drew it, and mend it there.
    DO_MEND_SHAPE = "survey-do-mend-shape" [];
    /// Do: give GeoJSON, a Shapefile or DXF.
    DO_GIVE_PLAN = "survey-do-give-plan" [];
    /// Do: give .shp, .dbf, .prj and .cpg of one export together.
    DO_GIVE_PARTS = "survey-do-give-parts" [];
    /// Do: export in UTF-8, with a .cpg file.
    DO_GIVE_CODE_PAGE = "survey-do-give-code-page" [];

    /// The grid is turned or skewed against north.
    ROTATED = "survey-rotated" [];
    /// The grid's columns run west: it is mirrored.
    MIRRORED = "survey-mirrored" [];
    /// The grid is placed by loose control points only.
    TIE_POINTS_ONLY = "survey-tie-points-only" [];
    /// The picture does not say where on the ground it lies.
    NO_GEOREFERENCE = "survey-no-georeference" [];
    /// The file holds colours or several bands, not one band of heights.
    NOT_HEIGHTS = "survey-not-heights" [];
    /// No cell has a height that ground can have.
    NO_HEIGHTS = "survey-no-heights" [];
    /// `count` cells hold heights no ground can have, such as `value`, without the file declaring it as "no data"; taken as unknown.
    CELLS_IMPLAUSIBLE = "survey-cells-implausible" [count, value];
    /// Cells of `cell` are too coarse for the ground under four wheels: bumps and edges between them are not in it.
    CELLS_COARSE = "survey-cells-coarse" [cell];
    /// All heights are whole numbers, so slopes come in steps.
    HEIGHTS_WHOLE = "survey-heights-whole" [];

    /// The text is in UTF-16.
    TEXT_UTF16 = "survey-text-utf16" [];
    /// There is no column for `column`; the first line has: `found`.
    COLUMN_MISSING = "survey-column-missing" [column, found];
    /// Two columns may mean the same, or one is used twice: `first` and `second`.
    COLUMN_TWICE = "survey-column-twice" [first, second];
    /// Column `column` is in `unit`, which is none of those that are read.
    COLUMN_UNIT = "survey-column-unit" [column, unit];
    /// No header line, and too few columns to know which is easting, northing and height.
    COLUMNS_UNKNOWN = "survey-columns-unknown" [];
    /// No header line: read as point, northing, easting, elevation; the other order would mirror the site.
    ORDER_ASSUMED = "survey-order-assumed" [];
    /// Name of a column: easting.
    COLUMN_EAST = "survey-column-east" [];
    /// Name of a column: northing.
    COLUMN_NORTH = "survey-column-north" [];
    /// Name of a column: height.
    COLUMN_HEIGHT = "survey-column-height" [];
    /// The `column` (column number `place`) is missing in this row.
    ROW_FIELD_EMPTY = "survey-row-field-empty" [column, place];
    /// The `column` `value` is not a number.
    ROW_NOT_A_NUMBER = "survey-row-not-a-number" [column, value];
    /// A point at this place or with the height `height` cannot be ground.
    ROW_IMPLAUSIBLE = "survey-row-implausible" [height];
    /// `count` more rows are bad.
    MORE_BAD_ROWS = "survey-more-bad-rows" [count];
    /// Point name `name` stands in line `first` already.
    NAME_TWICE = "survey-name-twice" [name, first];
    /// Two heights at one place: `one` in line `first`, `other` here.
    TWO_HEIGHTS = "survey-two-heights" [first, one, other];
    /// `count` rows repeat a point and were left out.
    ROWS_REPEATED = "survey-rows-repeated" [count];

    /// Do: copy or download the file again, it is damaged or incomplete.
    DO_COPY_AGAIN = "survey-do-copy-again" [];
    /// Do: export the file again from the survey program.
    DO_EXPORT_AGAIN = "survey-do-export-again" [];
    /// Do: export as plain LAS, or compress again with a current program.
    DO_EXPORT_PLAIN = "survey-do-export-plain" [];
    /// Do: decompress to LAS and compress again with a current program.
    DO_COMPRESS_AGAIN = "survey-do-compress-again" [];
    /// Do: give LAS, LAZ, GeoTIFF or CSV levels.
    /// State the height accuracy.
    DO_STATE_ACCURACY = "survey-do-state-accuracy" [];
    /// Take it as the job's site.
    DO_SITE_FROM = "survey-do-site-from" [];
    /// Give a stored site.
    DO_GIVE_SITE = "survey-do-give-site" [];
    /// Bring the survey files in again.
    DO_BRING_IN_AGAIN = "survey-do-bring-in-again" [];
    /// Export its outline, or type its corners.
    DO_OUTLINE_MODEL = "survey-do-outline-model" [];
    /// Do: give this file as a plan of things, and the ground in a file of its own.
    DO_GIVE_GROUND = "survey-do-give-ground" [];
    /// Do: give a kind of file that is read.
    DO_GIVE_KNOWN_KIND = "survey-do-give-known-kind" [];
    /// Do: list each of the files as a ground source of its own.
    DO_GIVE_GRIDS_APART = "survey-do-give-grids-apart" [];
    /// Do: give the heights themselves (one band), not a coloured picture or an orthophoto.
    DO_GIVE_HEIGHTS = "survey-do-give-heights" [];
    /// Do: check where the file's coordinate system is stated; export again if it is missing.
    DO_CHECK_CRS = "survey-do-check-crs" [];
    /// Do: cut the file down to the site in the survey program.
    DO_CUT_OUT = "survey-do-cut-out" [];
    /// Do: state a window (a rectangle around the site) for this file in the job.
    DO_STATE_WINDOW = "survey-do-state-window" [];
    /// Do: check the window against the file's coordinates; another coordinate system or unit is the usual reason.
    DO_CHECK_WINDOW = "survey-do-check-window" [];
    /// Do: state the units of this file in the job after asking who made it.
    DO_STATE_UNITS = "survey-do-state-units" [];
    /// Do: state the units of plan and of heights in the job, after asking who made the file.
    DO_STATE_BOTH_UNITS = "survey-do-state-both-units" [];
    /// Do: make sure of the units: measure a known length and height in the result.
    DO_CHECK_UNITS = "survey-do-check-units" [];
    /// Do: state coordinate system and units of this file in the job, after asking who made it; the file's own statement is wrong.
    DO_STATE_CRS_AND_UNITS = "survey-do-state-crs-and-units" [];
    /// Do: export in metres.
    DO_EXPORT_METRES = "survey-do-export-metres" [];
    /// Do: project to a plane coordinate system in metres first (UTM or the national grid).
    DO_REPROJECT = "survey-do-reproject" [];
    /// Do: have the ground classified (class 2) in the survey program, or give levels or a terrain grid; or ask for the ground filter.
    DO_CLASSIFY = "survey-do-classify" [];
    /// Do: compare the filtered ground with the site before anything stands on it.
    DO_CHECK_FILTERED = "survey-do-check-filtered" [];
    /// Do: state parameters of the filter in their ranges.
    DO_FILTER = "survey-do-filter" [];
    /// Do: look there; if it is ground that a machine reaches, measure levels.
    DO_LOOK_THERE = "survey-do-look-there" [];
    /// Do: state a window around the site, or larger cells.
    DO_WINDOW_OR_CELL = "survey-do-window-or-cell" [];
    /// Do: state a cell of 0.01 to 1000 m.
    DO_STATE_CELL = "survey-do-state-cell" [];
    /// Do: give the ground of the same place, in the same coordinate system.
    DO_GIVE_GROUND_THERE = "survey-do-give-ground-there" [];
    /// Do: confirm or refuse each on site, with the line's owner.
    DO_CONFIRM_LINE = "survey-do-confirm-line" [];
    /// Do: state options in their ranges.
    DO_STATE_OPTION = "survey-do-state-option" [];
    /// Do: give an outline of at least three corners.
    DO_GIVE_OUTLINE = "survey-do-give-outline" [];
    /// Do: check the heights: units, "no data" numbers, wrong points.
    DO_CHECK_HEIGHTS = "survey-do-check-heights" [];
    /// Do: declare the number as "no data" when exporting, and check that no true height was lost.
    DO_DECLARE_NODATA = "survey-do-declare-nodata" [];
    /// Do: survey the stands and ways more densely, or measure levels there.
    DO_DENSER = "survey-do-denser" [];
    /// Do: get a finer terrain model, or measure levels where the machine stands and drives.
    DO_FINER = "survey-do-finer" [];
    /// Do: give at least three points that do not lie in one line.
    DO_MORE_POINTS = "survey-do-more-points" [];
    /// Do: resample the grid to rows and columns along east and north.
    DO_WARP = "survey-do-warp" [];
    /// Do: export with georeference (GeoTIFF tags); a separate world file is not read.
    DO_GEOREFERENCE = "survey-do-georeference" [];
    /// Do: save the text as UTF-8.
    DO_SAVE_UTF8 = "survey-do-save-utf8" [];
    /// Do: add a header line (point, easting, northing, elevation) or state the columns in the job.
    DO_STATE_COLUMNS = "survey-do-state-columns" [];
    /// Do: mend or delete the row.
    DO_MEND_ROW = "survey-do-mend-row" [];

    // LandXML.
    /// The file says that its text is in `encoding`, which is not known.
    XML_ENCODING_UNKNOWN = "survey-xml-encoding-unknown" [encoding];
    /// The bytes are not text in `encoding`.
    XML_ENCODING_WRONG = "survey-xml-encoding-wrong" [encoding];
    /// The file is not well-formed XML: `detail` is the parser's own remark, in English.
    XML_BROKEN = "survey-xml-broken" [detail];
    /// The file should hold one element `expected`, and here is `found`.
    XML_ROOT = "survey-xml-root" [expected, found];
    /// The file ends inside the element `element`.
    XML_CUT = "survey-xml-cut" [element];
    /// The file uses an entity of its own, `name`, which is not resolved.
    XML_ENTITY = "survey-xml-entity" [name];
    /// Elements stand inside each other more than `most` deep.
    XML_DEEP = "survey-xml-deep" [most];
    /// An element has more than `most` attributes.
    XML_ATTRIBUTES = "survey-xml-attributes" [most];
    /// The element `element` needs `needed` numbers a point, and holds `found`.
    NUMBERS_WRONG = "survey-numbers-wrong" [element, needed, found];
    /// A face needs three or four point ids, and holds `found`.
    FACE_WRONG = "survey-face-wrong" [found];
    /// The face names point `id`, which is not there.
    FACE_POINT_MISSING = "survey-face-point-missing" [id];
    /// The point id `id` stands in line `first` already, at another place.
    POINT_ID_TWICE = "survey-point-id-twice" [id, first];
    /// There is no survey point `name`.
    REFERENCE_UNKNOWN = "survey-reference-unknown" [name];
    /// Several survey points at different places are named `name`.
    REFERENCE_UNCLEAR = "survey-reference-unclear" [name];
    /// `count` more faults of this kind.
    MORE_PROBLEMS = "survey-more-problems" [count];
    /// The file holds no surface with points.
    NO_SURFACE = "survey-no-surface" [];
    /// The file holds no surface, but `points` survey points.
    NO_SURFACE_BUT_POINTS = "survey-no-surface-but-points" [points];
    /// The file holds `count` surfaces and the job names none of them.
    SURFACES_SEVERAL = "survey-surfaces-several" [count];
    /// The file has no surface `name`.
    SURFACE_NOT_THERE = "survey-surface-not-there" [name];
    /// `count` surfaces of the file are named `name`.
    SURFACE_NAME_TWICE = "survey-surface-name-twice" [name, count];
    /// Surface to choose: `name`, `points` points, heights `low` to `high`, `area` in plan.
    SURFACE_OFFERED = "survey-surface-offered" [name, points, low, high, area];
    /// The `points` points and the faces of surface `name` cover no ground.
    SURFACE_EMPTY = "survey-surface-empty" [name, points];
    /// Surfaces `first` and `second` lie over the same ground, their heights `gap` apart: one of them is wrong.
    SURFACES_APART = "survey-surfaces-apart" [first, second, gap];
    /// The file states `declared` in plan, its triangles cover `computed`.
    PLAN_AREA_DIFFERS = "survey-plan-area-differs" [declared, computed];
    /// The file states a surface of `declared`, its triangles measure `computed`.
    SURFACE_AREA_DIFFERS = "survey-surface-area-differs" [declared, computed];
    /// `count` faces are marked as invisible and were left out: holes.
    FACES_INVISIBLE = "survey-faces-invisible" [count];
    /// `count` faces stand upright or have no area and were left out.
    FACES_UPRIGHT = "survey-faces-upright" [count];
    /// `count` faces repeat another and were left out.
    FACES_REPEATED = "survey-faces-repeated" [count];
    /// `count` faces lie over others; where they disagree by more than 1 cm, the ground is not known.
    FACES_OVERLAP = "survey-faces-overlap" [count];
    /// So many faces crowd in one place that those over each other were not all counted.
    FACES_OVERLAP_UNCOUNTED = "survey-faces-overlap-uncounted" [];
    /// `count` pieces of breaklines cross an earlier one and were left out.
    BREAKLINES_CROSS = "survey-breaklines-cross" [count];
    /// `count` lists of points of the surface have no heights and were left out.
    LINES_WITHOUT_HEIGHT = "survey-lines-without-height" [count];
    /// `count` survey points have height 0, far from all others: taken as without height.
    ZERO_HEIGHTS = "survey-zero-heights" [count];
    /// Do: name the surface that is the ground in the job.
    DO_NAME_SURFACE = "survey-do-name-surface" [];
    /// Do: say that the survey points are the ground, or export a surface.
    DO_USE_SURVEY_POINTS = "survey-do-use-survey-points" [];
    /// Do: export the surface, with points and faces.
    DO_EXPORT_SURFACE = "survey-do-export-surface" [];
    /// Do: mend it in the program that wrote the file, and export again.
    DO_MEND_AT_SOURCE = "survey-do-mend-at-source" [];
    /// Do: make sure that no stand or way lies in such a hole.
    DO_CHECK_HOLES = "survey-do-check-holes" [];
    /// Do: look at the surface in the program that made it.
    DO_CHECK_SURFACE = "survey-do-check-surface" [];
    /// The file is no drawing in DXF: no section begins in it.
    NOT_A_DRAWING = "survey-not-a-drawing" [];
    /// The drawing ends before its entities do.
    DRAWING_CUT = "survey-drawing-cut" [];
    /// In `count` lines no group code stands where one should: too many to read on.
    DRAWING_GARBLED = "survey-drawing-garbled" [count];
    /// `count` lines, the first of them here, hold no group code where one should stand; they were skipped.
    LINES_SKIPPED = "survey-lines-skipped" [count];
    /// The drawing has no end mark, though its entities are closed.
    DRAWING_NO_END = "survey-drawing-no-end" [];
    /// The drawing has no section of entities.
    DRAWING_EMPTY = "survey-drawing-empty" [];
    /// Nothing in the drawing could be read; it holds `left_out`.
    DRAWING_NO_SHAPES = "survey-drawing-no-shapes" [left_out];
    /// The drawing draws more than its size allows: blocks that insert blocks, or very large arrays.
    TOO_MANY_SHAPES = "survey-too-many-shapes" [];
    /// A coordinate of this `kind` is no number.
    ENTITY_NUMBER = "survey-entity-number" [kind];
    /// This `kind` on layer `layer` has no size, or something is missing; left out.
    ENTITY_UNUSABLE = "survey-entity-unusable" [kind, layer];
    /// `count` more entities were left out or changed.
    MORE_ENTITIES = "survey-more-entities" [count];
    /// This `kind` on layer `layer` inserts a block that the file does not hold; left out.
    BLOCK_MISSING = "survey-block-missing" [kind, layer];
    /// The drawing shows another one, `layer`, that is not in the file; left out.
    EXTERNAL_DRAWING = "survey-external-drawing" [kind, layer];
    /// This `kind` on layer `layer` lies too deep in blocks of blocks, or its block inserts itself; left out.
    BLOCKS_DEEP = "survey-blocks-deep" [kind, layer];
    /// This `kind` on layer `layer` has a scale of zero in plan; left out.
    SCALE_ZERO = "survey-scale-zero" [kind, layer];
    /// This `kind` on layer `layer` has a scale of zero for heights: its block was read flat.
    SCALE_ZERO_HEIGHT = "survey-scale-zero-height" [kind, layer];
    /// The outline of this `kind` on layer `layer` crosses itself and was cut into areas there.
    OUTLINE_SPLIT = "survey-outline-split" [kind, layer];
    /// The outline joined from single lines, the first of them here, crosses itself and was cut into areas there.
    JOINED_SPLIT = "survey-joined-split" [];
    /// The outline of this `kind` on layer `layer` crosses itself often; only the line was taken, not the area.
    OUTLINE_CROSSES = "survey-outline-crosses" [kind, layer];
    /// This `kind` on layer `layer` has too many corners to see whether it crosses itself; only the line was taken.
    OUTLINE_UNCHECKED = "survey-outline-unchecked" [kind, layer];
    /// The outline of this `kind` on layer `layer` encloses nothing; only the line was taken.
    OUTLINE_FLAT = "survey-outline-flat" [kind, layer];
    /// Entities that were not read, by kind with their number: `left_out`.
    LEFT_OUT = "survey-left-out" [left_out];
    /// `layers` are switched off or frozen in the drawing; they were read all the same.
    LAYERS_HIDDEN = "survey-layers-hidden" [layers];
    /// `count` corners repeat the one before and were taken once.
    CORNERS_REPEATED = "survey-corners-repeated" [count];
    /// `count` outlines drawn as single lines and arcs were joined to areas.
    LINES_JOINED = "survey-lines-joined" [count];
    /// Neither drawing nor job says the unit; by unit, how large the drawing would be.
    DRAWING_UNITS_UNKNOWN = "survey-drawing-units-unknown" [mm, cm, m, in, ft];
    /// The drawing would be `size` large in `unit`, which no site or building is; by unit, how large it would be.
    DRAWING_SIZE = "survey-drawing-size" [mm, cm, m, in, ft, unit, size];
    /// The drawing says that its point (`east`, `north`) lies at (`site_east`, `site_north`) of `crs`; not applied.
    DRAWING_PLACE = "survey-drawing-place" [east, north, site_east, site_north, crs];
    /// The drawing says where it lies on the earth, but in a way that could not be read.
    DRAWING_PLACE_UNREADABLE = "survey-drawing-place-unreadable" [];
    /// The job does not name the layers of the ground; those of the drawing with number of shapes and heights: `layers`.
    GROUND_LAYERS = "survey-ground-layers" [layers];
    /// The drawing has no layer `missing`; it has `layers`.
    LAYERS_MISSING = "survey-layers-missing" [missing, layers];
    /// Nothing on the named layers has a height; the drawing has `layers`.
    LAYERS_FLAT = "survey-layers-flat" [layers];
    /// `count` heights are exactly 0, others are not.
    HEIGHTS_ZERO = "survey-heights-zero" [count];
    /// `lines` pieces of lines cross others, and the surface does not follow them.
    EDGES_NOT_FOLLOWED = "survey-edges-not-followed" [lines];
    /// The file holds no plan: no shapes, only ground.
    NO_PLAN = "survey-no-plan" [];

    /// Do: export the drawing again as DXF.
    DO_EXPORT_DXF = "survey-do-export-dxf" [];
    /// Do: look at the place in the drawing, and compare with the result.
    DO_CHECK_DRAWING = "survey-do-check-drawing" [];
    /// Do: look whether anything that matters is among what was left out; if so, draw it as lines.
    DO_CHECK_LEFT_OUT = "survey-do-check-left-out" [];
    /// Do: bind external drawings before exporting.
    DO_BIND_DRAWINGS = "survey-do-bind-drawings" [];
    /// Do: state the drawing's unit in the job (mm, cm, m, in, ft), after measuring a known length.
    DO_STATE_DRAWING_UNITS = "survey-do-state-drawing-units" [];
    /// Do: if the drawing is not in the survey's coordinates, state its shift in the job.
    DO_STATE_SHIFT = "survey-do-state-shift" [];
    /// Do: name the layers of the ground in the job.
    DO_NAME_LAYERS = "survey-do-name-layers" [];
}
