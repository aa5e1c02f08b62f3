//! Arguments, with help that teaches.

use clap::{Args, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

const ABOUT: &str = "Plans and checks lifts with telehandlers (rough-terrain variable-reach trucks): load chart, \
level, tipping, forks, overhead lines and ground, on the real ground of the site.";

const AFTER: &str = "\
Start here:
  counterpoise new my-job           write a commented starter job
  counterpoise plan my-job          verdict of every lift, and why
  counterpoise stands my-job        where to stand, and why not elsewhere
  counterpoise order my-job         which lift when, by which machine
  counterpoise survey my-cloud.laz  see what a survey file holds
  counterpoise serve my-job         look at it in a browser
  counterpoise check --help         one quick look into a load chart

Exit codes: 0 go (or done), 4 go with conditions, 3 no-go, 1 fault of input, 2 usage.

The maker's manual and the chart in the cab govern; a result never overrides them.";

/// The command line.
#[derive(Debug, Parser)]
#[command(name = "counterpoise", version, about = ABOUT, after_help = AFTER, arg_required_else_help = true)]
pub(crate) struct Cli {
    #[command(subcommand)]
    pub(crate) command: Command,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Plan every lift of a job: verdict, what governs, what to do
    Plan(PlanArgs),
    /// Look for stands: the best for each lift, where it passes, and why not elsewhere
    Stands(StandsArgs),
    /// Order the lifts of a job: what when, by which machine, what then lies on each landing
    Order(OrderArgs),
    /// Look once into a load chart: inside or outside. Never says go
    Check(CheckArgs),
    /// Run one calculation alone, from a TOML or JSON file
    Calc(CalcArgs),
    /// Bring survey files and drawings into a site: what was read, what is not known, a picture
    Survey(Box<SurveyArgs>),
    /// Explain a machine file, compare two, draw one, or say what is missing
    Machine(MachineArgs),
    /// List the materials that loads may be built from, with their densities
    Materials(MaterialsArgs),
    /// Write a commented starter job
    New(NewArgs),
    /// Show a job in the browser, on this computer only
    Serve(ServeArgs),
    /// Print the JSON Schema of an output, or of a machine or job file
    Schema(SchemaArgs),
    /// Print shell completions
    #[command(after_help = "Example: counterpoise completions bash > /etc/bash_completion.d/counterpoise")]
    Completions {
        /// Shell to complete for
        shell: clap_complete::Shell,
    },
}

/// How results are said.
#[derive(Debug, Clone, Copy, Args)]
pub(crate) struct Said {
    /// Text for people or JSON for programs
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(crate) format: Format,
    /// Units shown (JSON is always SI)
    #[arg(long, value_enum, default_value_t = Units::Si)]
    pub(crate) units: Units,
    /// Language of texts
    #[arg(long, value_enum, default_value_t = Lang::En)]
    pub(crate) lang: Lang,
}

impl Said {
    pub(crate) fn wording(self) -> wording::Wording {
        let units = match self.units {
            Units::Si => quantity::UnitSystem::Si,
            Units::Us => quantity::UnitSystem::Us,
        };
        let language = match self.lang {
            Lang::En => wording::Language::English,
            Lang::Es => wording::Language::Spanish,
        };
        wording::Wording::new(language, units)
    }
    pub(crate) fn json(self) -> bool {
        self.format == Format::Json
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Format {
    Text,
    Json,
}
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Units {
    /// Metres, kilograms
    Si,
    /// Feet, pounds
    Us,
}
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Lang {
    /// English
    En,
    /// Spanish
    Es,
}
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Paper {
    A4,
    Letter,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Without --out the verdict of every lift is printed. With --out DIR the plan sheet (PDF), the drawings (SVG) \
and the plan (JSON) are written there too; DIR appears only when everything in it is complete.

Exit codes: 0 every lift go, 4 go with conditions, 3 at least one no-go, 1 fault of input.")]
pub(crate) struct PlanArgs {
    /// Job folder (with job.toml in it), or the job.toml itself
    pub(crate) job: PathBuf,
    /// Folder to write plan sheet, drawings and plan to
    #[arg(long, value_name = "DIR")]
    pub(crate) out: Option<PathBuf>,
    /// Paper of the plan sheet
    #[arg(long, value_enum, default_value_t = Paper::A4)]
    pub(crate) paper: Paper,
    /// Site and lifts for other programs: FILE.geojson, FILE.dxf or FILE.glb
    #[arg(long, value_name = "FILE")]
    pub(crate) export: Option<PathBuf>,
    /// Print every finding of every lift, not only what governs
    #[arg(long)]
    pub(crate) findings: bool,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  counterpoise stands my-job --lift 1                               the best stands of one lift
  counterpoise stands my-job --lift 1 --at \"30.0 m, 28.4 m\"         what a stand there gives, and why
  counterpoise stands my-job --lift 1 --at \"30.0 m, 28.4 m\" --heading \"10°\"

Every cell around the landing is checked as a plan checks its stand, the boom pointed at the landing. Without \
--heading so is the place asked for. What is listed as best was checked whole, with how far off it may be.

Exit codes: 0 every lift has a stand that is go, 4 go with conditions, 3 at least one has none; with --at those of \
the places asked for; 1 fault of input.")]
pub(crate) struct StandsArgs {
    /// Job folder (with job.toml in it), or the job.toml itself
    pub(crate) job: PathBuf,
    /// Only this lift, by its id; may be given again
    #[arg(long, value_name = "ID")]
    pub(crate) lift: Vec<String>,
    /// How far from the landing to look
    #[arg(long, value_name = "LENGTH", default_value = "15 m")]
    pub(crate) radius: String,
    /// Side of a cell
    #[arg(long, value_name = "LENGTH", default_value = "0.2 m")]
    pub(crate) cell: String,
    /// Stands listed for each lift
    #[arg(long, default_value_t = 3, value_parser = clap::value_parser!(u8).range(1..=20))]
    pub(crate) best: u8,
    /// What a stand there gives: middle of the front axle; may be given again
    #[arg(long, value_name = "EAST,NORTH", allow_hyphen_values = true)]
    pub(crate) at: Vec<String>,
    /// Heading of the machine there, clockwise from north, such as "30°"; left out: boom at the landing
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true, requires = "at")]
    pub(crate) heading: Option<String>,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  counterpoise order my-job
  counterpoise order my-job --priority 7=1 --csv order.csv

Lifts are planned first: a no-go has no place in the order. Nothing begins before the latest end of what it waits \
for, and no landing is stacked over what its own check allows.

Exit codes: 0 every lift has its place, 4 with conditions, 3 at least one has none, 1 fault of input.")]
pub(crate) struct OrderArgs {
    /// Job folder (with job.toml in it), or the job.toml itself
    pub(crate) job: PathBuf,
    /// Order as if a lift had another priority, from 1 (first) to 9 (last); may be given again
    #[arg(long, value_name = "ID=PRIORITY")]
    pub(crate) priority: Vec<String>,
    /// Write the order as a list too, one row a lift
    #[arg(long, value_name = "FILE")]
    pub(crate) csv: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum SupportArg {
    #[value(alias = "tires")]
    Tyres,
    Stabilizers,
    Outriggers,
}
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum FromArg {
    FrontTyreFace,
    FrontAxle,
}
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum ToArg {
    ForkHeel,
    LoadCentre,
    Hook,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Example:
  counterpoise check examples/demo-job/machines/demo-7.toml --attachment forks --support tyres \\
      --load \"1200 kg\" --load-centre \"24 in\" --height \"4.5 m\" \\
      --distance \"2.1 m\" --from front-tyre-face --to load-centre

It answers only inside or outside the chart, what governs there, and how much further, higher or heavier would \
still be inside. It lists the checks it did not make, and it never says go: plan the lift for that.

Exit codes: 0 inside, 3 outside, 1 fault of input. Inside is not go.")]
pub(crate) struct CheckArgs {
    /// Machine file
    pub(crate) machine: PathBuf,
    /// Attachment, by its id in the machine file
    #[arg(long)]
    pub(crate) attachment: String,
    /// What the machine stands on
    #[arg(long, value_enum)]
    pub(crate) support: SupportArg,
    /// Mass of the load with pallet and rigging, such as "1200 kg" or "2600 lb"
    #[arg(long)]
    pub(crate) load: String,
    /// From the fork face to the centre of the load, such as "24 in"; needed with forks, not with a hook
    #[arg(long)]
    pub(crate) load_centre: Option<String>,
    /// Distance as measured, such as "4.2 m"
    #[arg(long)]
    pub(crate) distance: String,
    /// From where the distance was measured (no default: people measure differently)
    #[arg(long, value_enum)]
    pub(crate) from: FromArg,
    /// To where it was measured
    #[arg(long, value_enum)]
    pub(crate) to: ToArg,
    /// Height of the fork top or hook above the ground under the front tyres
    #[arg(long)]
    pub(crate) height: String,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Calculation {
    /// Capacity of a load chart at a reach and height
    Chart,
    /// Force on each wheel or pad as the machine stands, on uneven ground too
    Reactions,
    /// Tipping load and tilt at onset for a boom position
    Stability,
    /// What braking, turning, a kerb or a rut leave when driving, and whether it slides
    TravelStability,
    /// Force of a gust from its worst direction, and the gust at which it is too much
    Wind,
    /// Bounds of the tipping load of a machine of which only part is known
    Fit,
    /// Slope at which a machine tips on a tilting platform
    Platform,
    /// What layered ground carries under a pad or a tyre
    Bearing,
    /// A mat under a pad: what of it works, or the smallest that carries
    Mat,
    /// How far pads settle at once, what they tilt, and what that moves above
    Settlement,
    /// A pad or mat against what a code presumes for a soil that is only described
    Presumed,
    /// Whether the ruts of a tyre stay small, deepen, or the wheel sinks
    Rut,
    /// A granular platform over clay: what it carries, or how thick it has to be
    WorkingPlatform,
    /// Stress in the ground under wheels and pads
    Stress,
    /// How near to an edge wheels may stand
    Edge,
    /// What wheels put on a buried pipe, tank or slab
    Buried,
    /// What a loading bay, deck or slab carries of a pallet, and the largest load that fits
    Landing,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Without FILE the input is read from the terminal's input (TOML, or JSON when it starts with a brace); \
--example prints a commented input to start from.

Example:
  counterpoise calc stability --example > tip.toml
  counterpoise calc stability tip.toml")]
pub(crate) struct CalcArgs {
    /// Which calculation
    #[arg(value_enum)]
    pub(crate) name: Calculation,
    /// Input file, TOML or JSON; paths in it are relative to it
    pub(crate) file: Option<PathBuf>,
    /// Print a commented example input
    #[arg(long)]
    pub(crate) example: bool,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  counterpoise machine missing machines/my-machine.toml    what to look up, and where
  counterpoise machine explain machines/my-machine.toml    what the file says, in words
  counterpoise machine draw machines/my-machine.toml --out drawings")]
pub(crate) struct MachineArgs {
    #[command(subcommand)]
    pub(crate) command: MachineCommand,
}

#[derive(Debug, Subcommand)]
pub(crate) enum MachineCommand {
    /// What the file says, in plain words, with everything that is wrong in it
    Explain(MachineFileArgs),
    /// Two machines side by side, and which lifts more where
    Compare(CompareArgs),
    /// Dimensioned drawings of the machine and of each load chart (SVG)
    Draw(DrawArgs),
    /// Which checks the file is enough for, what is missing, and where to find it
    Missing(MachineFileArgs),
    /// Each load chart against the machine's own statics: what tips it there, and what is left
    Reserve(ReserveArgs),
}

#[derive(Debug, Args)]
#[command(after_help = "\
The file may be incomplete or faulty: what can be read is used.

Exit codes: 0 the file can be planned with, 1 something is wrong or missing.")]
pub(crate) struct MachineFileArgs {
    /// Machine file
    pub(crate) file: PathBuf,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Example:
  counterpoise machine compare machines/a.toml machines/b.toml --at \"4 m,6 m\" --at \"8 ft,20 ft\"

Both are read with forks, from the front face of the front tyres to the load's centre.

Exit codes: 0 compared, 1 fault of an input.")]
pub(crate) struct CompareArgs {
    /// First machine file
    pub(crate) a: PathBuf,
    /// Second machine file
    pub(crate) b: PathBuf,
    /// Reach and height to compare at, such as "4 m,6 m"; may be given again
    #[arg(long, value_name = "REACH,HEIGHT")]
    pub(crate) at: Vec<String>,
    /// From the fork face to the load's centre; left out: the larger rated one of the two charts
    #[arg(long)]
    pub(crate) load_centre: Option<String>,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "Exit codes: 0 drawn, 1 fault of input.")]
pub(crate) struct DrawArgs {
    /// Machine file
    pub(crate) file: PathBuf,
    /// Folder to write the drawings to: new, empty, or with earlier drawings of a machine
    #[arg(long, value_name = "DIR")]
    pub(crate) out: PathBuf,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Example:
  counterpoise machine reserve machines/my-machine.toml --attachment forks --support tyres

The machine stands level, boom straight ahead, on rigid contacts. Without --margin nothing is judged but what is \
impossible: a charted capacity that tips the machine.

Exit codes: 0 nothing against it, 3 a capacity tips the machine or keeps less than the margin, 1 fault of input.")]
pub(crate) struct ReserveArgs {
    /// Machine file
    pub(crate) file: PathBuf,
    /// Only charts of this attachment, by its id in the machine file
    #[arg(long)]
    pub(crate) attachment: Option<String>,
    /// Only charts for this support
    #[arg(long, value_enum)]
    pub(crate) support: Option<SupportArg>,
    /// How many times the charted capacity may not tip the level machine forward, as you state it, such as 1.33
    #[arg(long)]
    pub(crate) margin: Option<f64>,
    /// The rear axle is locked against oscillation; left out: free, the worse
    #[arg(long)]
    pub(crate) rear_locked: bool,
    /// Cells along reach and along height
    #[arg(long, default_value_t = 40, value_parser = clap::value_parser!(u16).range(1..=400))]
    pub(crate) cells: u16,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Example:
  counterpoise materials brick

The id goes into the job file: material = \"…\". The supplier's sheet or a scale is better than any list.

Exit codes: 0 listed, 1 no material has all of the words.")]
pub(crate) struct MaterialsArgs {
    /// Only materials with these words in their id or name
    pub(crate) words: Vec<String>,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
pub(crate) struct NewArgs {
    /// Folder to make; must not exist or be empty
    pub(crate) job: PathBuf,
}

#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  counterpoise survey drone.laz --accuracy \"5 cm\" --into plot.site --picture plan.svg
  counterpoise survey architect.dxf --file-units mm --layer \"A-WALL=wall,height=6 m\" --into plot.site
  counterpoise survey plot.site --export plot.glb

Without --into nothing is kept. A job takes the site with: site_from = \"plot.site\"

Exit codes: 0 done, 1 fault of input.")]
pub(crate) struct SurveyArgs {
    /// LAS, LAZ, GeoTIFF, LandXML, CSV levels, DXF, GeoJSON, Shapefile (all its parts), or a stored site
    #[arg(required = true)]
    pub(crate) files: Vec<PathBuf>,
    /// Stored site to bring the files into; made where it does not exist
    #[arg(long, value_name = "FILE")]
    pub(crate) into: Option<PathBuf>,
    /// Name of the site for people
    #[arg(long, value_name = "NAME")]
    pub(crate) name: Option<String>,
    /// Largest height error to reckon with at a wheel, such as "3 cm"
    #[arg(long, value_name = "LENGTH")]
    pub(crate) accuracy: Option<String>,
    /// How far shapes of plans may be off; left out: 10 cm
    #[arg(long, value_name = "LENGTH")]
    pub(crate) plan_accuracy: Option<String>,
    /// Day of the survey, year-month-day
    #[arg(long, value_name = "DAY")]
    pub(crate) date: Option<String>,
    /// Unit of the files: m, ft, "US ft"; drawings also mm, cm, in
    #[arg(long, value_name = "UNIT")]
    pub(crate) file_units: Option<String>,
    /// Unit of the heights, where it is another
    #[arg(long, value_name = "UNIT")]
    pub(crate) file_height_units: Option<String>,
    /// Coordinate system of the files, such as EPSG:28992; counts more than what they say
    #[arg(long, value_name = "EPSG")]
    pub(crate) file_crs: Option<String>,
    /// Coordinate system of the site; files in another are converted
    #[arg(long, value_name = "EPSG")]
    pub(crate) site_crs: Option<String>,
    /// Added to the files' east and north, such as "84800 m, 447400 m"
    #[arg(long, value_name = "EAST,NORTH", allow_hyphen_values = true)]
    pub(crate) shift: Option<String>,
    /// Turn of the files about their origin before the shift, counter-clockwise, such as "12.5°"
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true)]
    pub(crate) turn: Option<String>,
    /// What a layer of a plan is: NAME=KIND, then behind commas where=, height=, level=, attribute= or width=
    #[arg(long, value_name = "RULE")]
    pub(crate) layer: Vec<String>,
    /// Layer of a drawing that is ground
    #[arg(long, value_name = "NAME")]
    pub(crate) ground_layer: Vec<String>,
    /// Take drawings and LandXML as ground
    #[arg(long)]
    pub(crate) as_ground: bool,
    /// Surface of a LandXML file that holds several
    #[arg(long, value_name = "NAME")]
    pub(crate) surface: Option<String>,
    /// Take the survey points of LandXML as ground
    #[arg(long)]
    pub(crate) survey_points: bool,
    /// Columns of a list, by name or place: "east=2,north=3,height=4"
    #[arg(long, value_name = "COLUMNS")]
    pub(crate) columns: Option<String>,
    /// Longest triangle edge; longer ones are holes
    #[arg(long, value_name = "LENGTH")]
    pub(crate) longest_edge: Option<String>,
    /// Only this part: "west m, south m, east m, north m"
    #[arg(long, value_name = "WINDOW", allow_hyphen_values = true)]
    pub(crate) window: Option<String>,
    /// Find the ground of unclassified clouds by a filter
    #[arg(long)]
    pub(crate) filter_ground: bool,
    /// Take what stands above the ground in the clouds as things, and suggest likely conductors
    #[arg(long)]
    pub(crate) above: bool,
    /// Say what the ground is like under a footprint there: heights, slopes, roughness; may stand several times
    #[arg(long, value_name = "EAST,NORTH", allow_hyphen_values = true, requires_all = ["heading", "footprint"])]
    pub(crate) at: Vec<String>,
    /// Heading of the footprint, clockwise from north, such as "30°"
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true, requires = "at")]
    pub(crate) heading: Option<String>,
    /// Length along the heading and width of the footprint, such as "4 m x 2 m"
    #[arg(long, value_name = "LENGTHxWIDTH", requires = "at")]
    pub(crate) footprint: Option<String>,
    /// Picture of the site from above (SVG)
    #[arg(long, value_name = "FILE")]
    pub(crate) picture: Option<PathBuf>,
    /// Width of the picture in pixels: 360 for a phone, more for more names
    #[arg(long, value_name = "PIXELS", default_value_t = 960, value_parser = clap::value_parser!(u16).range(320..=4000))]
    pub(crate) picture_width: u16,
    /// Site for other programs: FILE.geojson, FILE.dxf or FILE.glb
    #[arg(long, value_name = "FILE")]
    pub(crate) export: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) said: Said,
}

#[derive(Debug, Args)]
pub(crate) struct ServeArgs {
    /// Job folder
    pub(crate) job: PathBuf,
    /// Port on this computer; 0 takes any free one
    #[arg(long, default_value_t = 7575)]
    pub(crate) port: u16,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Form {
    /// The plan that `plan --format json` prints
    Plan,
    /// The answer that `stands --format json` prints
    Stands,
    /// The answer that `order --format json` prints
    Order,
    /// The answer that `check --format json` prints
    Check,
    /// The answer that `calc chart --format json` prints
    CalcChart,
    /// The answer that `calc reactions --format json` prints
    CalcReactions,
    /// The answer that `calc stability --format json` prints
    CalcStability,
    /// The answer that `calc travel-stability --format json` prints
    CalcTravelStability,
    /// The answer that `calc wind --format json` prints
    CalcWind,
    /// The answer that `calc fit --format json` prints
    CalcFit,
    /// The answer that `calc platform --format json` prints
    CalcPlatform,
    /// The answer that `calc bearing --format json` prints
    CalcBearing,
    /// The answer that `calc mat --format json` prints
    CalcMat,
    /// The answer that `calc settlement --format json` prints
    CalcSettlement,
    /// The answer that `calc presumed --format json` prints
    CalcPresumed,
    /// The answer that `calc rut --format json` prints
    CalcRut,
    /// The answer that `calc working-platform --format json` prints
    CalcWorkingPlatform,
    /// The answer that `calc stress --format json` prints
    CalcStress,
    /// The answer that `calc edge --format json` prints
    CalcEdge,
    /// The answer that `calc buried --format json` prints
    CalcBuried,
    /// The answer that `calc landing --format json` prints
    CalcLanding,
    /// Faults of an input, as printed with `--format json`
    Faults,
    /// The answer that `machine explain --format json` prints
    MachineExplain,
    /// The answer that `machine compare --format json` prints
    MachineCompare,
    /// The answer that `machine missing --format json` prints
    MachineMissing,
    /// The answer that `machine reserve --format json` prints
    MachineReserve,
    /// A machine file, for editors
    MachineFile,
    /// A job file, for editors
    JobFile,
}

#[derive(Debug, Args)]
pub(crate) struct SchemaArgs {
    /// Which output or file
    #[arg(value_enum)]
    pub(crate) form: Form,
}
