//! Sets a plan and writes the PDF.

use crate::lift_view::{drawing_name, has_field, has_strip, has_way};
use crate::sheet::sheet;
use crate::world::{Desk, Shop};
use drawing::Style;
use planning::Plan;
use std::fmt;
use std::sync::Arc;
use typst::diag::SourceDiagnostic;
use typst::foundations::Smart;
use typst_layout::PagedDocument;
use typst_pdf::PdfOptions;
use wording::Wording;

/// Width of the drawings, CSS px: the width of text on A4 at 96 px an inch.
const DRAWING_PX: f64 = 680.0;
/// Documents after which Typst forgets what it remembered of one.
const REMEMBERED: usize = 4;

/// Sizes of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PaperSize {
    /// 210 mm × 297 mm.
    A4,
    /// 8.5 in × 11 in.
    UsLetter,
}

impl PaperSize {
    pub(crate) fn typst_name(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::UsLetter => "us-letter",
        }
    }
}

/// Why a document could not be made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ReportError {
    /// The template or the fonts that are compiled in could not be used.
    Template,
    /// The plan could not be put into the form that the template reads.
    Data(String),
    /// Typst refused to set the document.
    Setting(Vec<String>),
    /// Typst set the document but could not write it as PDF.
    Writing(Vec<String>),
}

impl fmt::Display for ReportError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Template => write!(f, "the template or fonts of the document could not be read"),
            Self::Data(why) => write!(f, "the plan could not be handed to the template: {why}"),
            Self::Setting(why) => write!(f, "the document could not be set: {}", why.join("; ")),
            Self::Writing(why) => write!(f, "the PDF could not be written: {}", why.join("; ")),
        }
    }
}

impl std::error::Error for ReportError {}

/// A document with what was noticed while it was set.
#[derive(Debug, Clone)]
pub struct Printed {
    /// The PDF.
    pub pdf: Vec<u8>,
    /// Number of pages.
    pub pages: usize,
    /// The text of each page, in reading order of the layout.
    pub text: Vec<String>,
    /// Warnings of the typesetter, such as a missing font.
    pub warnings: Vec<String>,
}

/// Makes documents. Holds library, template and fonts; making a second one costs nothing, and
/// documents after the first are faster, because Typst remembers what did not change.
#[derive(Clone)]
pub struct Printer {
    shop: Arc<Shop>,
}

impl fmt::Debug for Printer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Printer").finish_non_exhaustive()
    }
}

impl Printer {
    /// Prepares fonts, library and template.
    ///
    /// # Errors
    /// [`ReportError::Template`] if what is compiled in cannot be read.
    pub fn new() -> Result<Self, ReportError> {
        Shop::shared().map(|shop| Self { shop }).ok_or(ReportError::Template)
    }

    /// The plan sheet of a job as PDF.
    ///
    /// # Errors
    /// See [`ReportError`]. No plan should cause one; all text of users is data to the template.
    pub fn plan_sheet(&self, plan: &Plan, wording: &Wording, paper: PaperSize) -> Result<Vec<u8>, ReportError> {
        let (document, _) = self.set(plan, *wording, paper)?;
        write_pdf(&document, plan)
    }

    /// The same with page count, texts and warnings, for tests and previews.
    ///
    /// # Errors
    /// As [`Self::plan_sheet`].
    pub fn plan_sheet_with_details(
        &self,
        plan: &Plan,
        wording: &Wording,
        paper: PaperSize,
    ) -> Result<Printed, ReportError> {
        let (document, warnings) = self.set(plan, *wording, paper)?;
        let text = document.pages().iter().map(|page| frame_text(&page.frame)).collect();
        Ok(Printed { pdf: write_pdf(&document, plan)?, pages: document.pages().len(), text, warnings })
    }

    pub(crate) fn set(
        &self,
        plan: &Plan,
        wording: Wording,
        paper: PaperSize,
    ) -> Result<(PagedDocument, Vec<String>), ReportError> {
        let mut desk = Desk::new(Arc::clone(&self.shop));
        let data = serde_json::to_vec(&sheet(plan, wording, paper)).map_err(|e| ReportError::Data(e.to_string()))?;
        let mut put = |name: &str, bytes: Vec<u8>| desk.put(name, bytes).ok_or(ReportError::Template);
        put("data.json", data)?;
        let style = Style::paper(DRAWING_PX);
        for (i, lift) in plan.lifts.iter().enumerate() {
            put(&drawing_name(i, "side-view"), drawing::elevation(lift, &wording, &style).into_bytes())?;
            put(&drawing_name(i, "chart"), drawing::chart(lift, &wording, &style).into_bytes())?;
            if has_field(lift) {
                put(&drawing_name(i, "stand-field"), drawing::stand_field(lift, &wording, &style).into_bytes())?;
            }
            if has_strip(lift) {
                put(&drawing_name(i, "boom-movement"), drawing::boom_strip(lift, &wording, &style).into_bytes())?;
            }
            if has_way(lift) {
                let way = drawing::way(lift, drawing::WayDirection::In, &wording, &style);
                put(&drawing_name(i, "way-in"), way.into_bytes())?;
            }
        }
        let set = typst::compile::<PagedDocument>(&desk);
        typst::comemo::evict(REMEMBERED);
        let warnings = messages(&set.warnings);
        let document = set.output.map_err(|errors| ReportError::Setting(messages(&errors)))?;
        Ok((document, warnings))
    }
}

/// The plan sheet of a job as PDF, with the shared printer.
///
/// # Errors
/// See [`Printer::plan_sheet`].
pub fn plan_sheet(plan: &Plan, wording: &Wording, paper: PaperSize) -> Result<Vec<u8>, ReportError> {
    Printer::new()?.plan_sheet(plan, wording, paper)
}

fn write_pdf(document: &PagedDocument, plan: &Plan) -> Result<Vec<u8>, ReportError> {
    let options = PdfOptions {
        ident: Smart::Custom(format!("counterpoise plan sheet {}", plan.digest)),
        creator: Smart::Custom(Some(format!("Counterpoise {}", plan.engine))),
        ..PdfOptions::default()
    };
    typst_pdf::pdf(document, &options).map_err(|errors| ReportError::Writing(messages(&errors)))
}

fn messages(list: &[SourceDiagnostic]) -> Vec<String> {
    list.iter()
        .map(|d| {
            let hints: Vec<&str> = d.hints.iter().map(|h| h.v.as_str()).collect();
            if hints.is_empty() { d.message.to_string() } else { format!("{} ({})", d.message, hints.join("; ")) }
        })
        .collect()
}

/// The text of a frame, in the order it was set.
fn frame_text(frame: &typst::layout::Frame) -> String {
    use typst::layout::FrameItem;
    let mut out = String::new();
    for (_, item) in frame.items() {
        match item {
            FrameItem::Text(text) => {
                out.push_str(&text.text);
                out.push(' ');
            }
            FrameItem::Group(group) => out.push_str(&frame_text(&group.frame)),
            _ => {}
        }
    }
    out
}
