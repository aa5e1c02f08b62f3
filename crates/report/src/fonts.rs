//! The one font family of documents, drawings and web: Noto Sans, SIL Open Font License 1.1.

use std::sync::LazyLock;
use typst::foundations::Bytes;
use typst::text::Font;

/// The family's name in CSS, SVG and Typst.
pub const FAMILY: &str = "Noto Sans";

/// A face of the family.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FontFile {
    /// File name under which a server may offer it.
    pub name: &'static str,
    /// Weight as in CSS `font-weight`.
    pub weight: u16,
    /// True for the italic face.
    pub italic: bool,
    /// The TrueType file.
    pub bytes: &'static [u8],
}

/// Every face, so that screen, drawing and paper share one.
pub fn font_files() -> &'static [FontFile] {
    &[
        FontFile { name: "noto-sans-regular.ttf", weight: 400, italic: false, bytes: notosans::REGULAR_TTF },
        FontFile { name: "noto-sans-bold.ttf", weight: 700, italic: false, bytes: notosans::BOLD_TTF },
        FontFile { name: "noto-sans-italic.ttf", weight: 400, italic: true, bytes: notosans::ITALIC_TTF },
        FontFile { name: "noto-sans-bold-italic.ttf", weight: 700, italic: true, bytes: notosans::BOLD_ITALIC_TTF },
    ]
}

/// The faces as Typst reads them; parsed once a process.
pub(crate) fn faces() -> &'static [Font] {
    static FACES: LazyLock<Vec<Font>> =
        LazyLock::new(|| font_files().iter().flat_map(|f| Font::iter(Bytes::new(f.bytes))).collect());
    &FACES
}
