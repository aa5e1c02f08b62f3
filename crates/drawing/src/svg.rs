//! Writes SVG: the few elements that the drawings use, escaped, with short finite numbers.

use crate::style::{Ink, Theme};
use std::fmt::Write as _;

/// A point in the picture, pixels, y down.
pub(crate) type Px = (f64, f64);

/// How a line is drawn.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Pen {
    pub ink: Ink,
    pub width: f64,
    /// Dash array, "" for a full line.
    pub dash: &'static str,
}

impl Pen {
    pub(crate) fn new(ink: Ink, width: f64) -> Self {
        Self { ink, width, dash: "" }
    }
    pub(crate) fn dashed(ink: Ink, width: f64, dash: &'static str) -> Self {
        Self { ink, width, dash }
    }
}

/// Where a text's anchor lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Anchor {
    Start,
    Middle,
    End,
}

/// How a text is set.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Type {
    pub size: f64,
    pub bold: bool,
    pub ink: Ink,
    pub anchor: Anchor,
    /// True for text over lines: a rim in the sheet's colour keeps it readable.
    pub halo: bool,
}

impl Type {
    pub(crate) fn plain(size: f64) -> Self {
        Self { size, bold: false, ink: Ink::Main, anchor: Anchor::Start, halo: false }
    }
    pub(crate) fn bold(self) -> Self {
        Self { bold: true, ..self }
    }
    pub(crate) fn soft(self) -> Self {
        Self { ink: Ink::Soft, ..self }
    }
    pub(crate) fn ink(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }
    pub(crate) fn at(self, anchor: Anchor) -> Self {
        Self { anchor, ..self }
    }
    pub(crate) fn halo(self) -> Self {
        Self { halo: true, ..self }
    }
}

/// The body of a drawing while it is written.
pub(crate) struct Svg {
    out: String,
    theme: Theme,
}

impl Svg {
    pub(crate) fn new(theme: Theme) -> Self {
        Self { out: String::with_capacity(16 * 1024), theme }
    }

    /// Opens a group that carries a name for tests and for the web client.
    pub(crate) fn open(&mut self, part: &str) {
        let _ = write!(self.out, "<g data-part=\"{}\">", escape(part));
    }
    pub(crate) fn close(&mut self) {
        self.out.push_str("</g>");
    }

    pub(crate) fn line(&mut self, a: Px, b: Px, pen: Pen) {
        let _ = write!(self.out, "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"", n(a.0), n(a.1), n(b.0), n(b.1));
        self.stroke(pen);
        self.out.push_str("/>");
    }

    /// Many separate lines as one element.
    pub(crate) fn lines(&mut self, segments: &[(Px, Px)], pen: Pen) {
        if segments.is_empty() {
            return;
        }
        self.out.push_str("<path d=\"");
        for (a, b) in segments {
            let _ = write!(self.out, "M{} {}L{} {}", n(a.0), n(a.1), n(b.0), n(b.1));
        }
        self.out.push_str("\" fill=\"none\"");
        self.stroke(pen);
        self.out.push_str("/>");
    }

    pub(crate) fn polyline(&mut self, points: &[Px], pen: Pen) {
        if points.len() < 2 {
            return;
        }
        self.out.push_str("<polyline points=\"");
        self.points(points);
        self.out.push_str("\" fill=\"none\" stroke-linejoin=\"round\"");
        self.stroke(pen);
        self.out.push_str("/>");
    }

    pub(crate) fn polygon(&mut self, points: &[Px], fill: Option<Ink>, pen: Option<Pen>) {
        if points.len() < 3 {
            return;
        }
        self.out.push_str("<polygon points=\"");
        self.points(points);
        self.out.push('"');
        self.fill(fill);
        if let Some(pen) = pen {
            self.out.push_str(" stroke-linejoin=\"round\"");
            self.stroke(pen);
        }
        self.out.push_str("/>");
    }

    pub(crate) fn rect(&mut self, rect: crate::labels::Rect, fill: Option<Ink>, pen: Option<Pen>) {
        let crate::labels::Rect { x, y, w, h } = rect;
        self.polygon(&[(x, y), (x + w, y), (x + w, y + h), (x, y + h)], fill, pen);
    }

    pub(crate) fn circle(&mut self, c: Px, r: f64, fill: Option<Ink>, pen: Option<Pen>) {
        let _ = write!(self.out, "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"", n(c.0), n(c.1), n(r.max(0.0)));
        self.fill(fill);
        if let Some(pen) = pen {
            self.stroke(pen);
        }
        self.out.push_str("/>");
    }

    /// An outline with holes (even-odd rule).
    pub(crate) fn rings(&mut self, rings: &[Vec<Px>], fill: Option<Ink>, pen: Option<Pen>) {
        if rings.iter().all(|ring| ring.len() < 3) {
            return;
        }
        self.out.push_str("<path fill-rule=\"evenodd\" d=\"");
        for ring in rings.iter().filter(|ring| ring.len() > 2) {
            for (i, p) in ring.iter().enumerate() {
                let _ = write!(self.out, "{}{} {}", if i == 0 { 'M' } else { 'L' }, n(p.0), n(p.1));
            }
            self.out.push('Z');
        }
        self.out.push('"');
        self.fill(fill);
        if let Some(pen) = pen {
            self.out.push_str(" stroke-linejoin=\"round\"");
            self.stroke(pen);
        }
        self.out.push_str("/>");
    }

    /// Level strokes from x over a length, at the middle height y, laid over the sheet with an
    /// opacity: areas of a raster, row by row.
    pub(crate) fn runs(&mut self, runs: &[(f64, f64, f64)], height: f64, ink: Ink, opacity: f64) {
        if runs.is_empty() {
            return;
        }
        self.out.push_str("<path d=\"");
        for (x, y, length) in runs {
            let _ = write!(self.out, "M{} {}h{}", n(*x), n(*y), n(*length));
        }
        let _ = write!(self.out, "\" fill=\"none\" stroke-opacity=\"{}\"", n(opacity));
        self.stroke(Pen::new(ink, height));
        self.out.push_str("/>");
    }

    /// A path of straight lines and arcs given ready; numbers in it must come from [`n`].
    pub(crate) fn path(&mut self, d: &str, fill: Option<Ink>, pen: Option<Pen>) {
        let _ = write!(self.out, "<path d=\"{d}\"");
        self.fill(fill);
        if let Some(pen) = pen {
            self.stroke(pen);
        }
        self.out.push_str("/>");
    }

    /// One line of text; `at` is on the baseline.
    pub(crate) fn text(&mut self, at: Px, text: &str, kind: Type) {
        let anchor = match kind.anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let _ = write!(
            self.out,
            "<text x=\"{}\" y=\"{}\" font-size=\"{}\" text-anchor=\"{anchor}\" fill=\"{}\"",
            n(at.0),
            n(at.1),
            n(kind.size),
            kind.ink.paint(self.theme)
        );
        if kind.bold {
            self.out.push_str(" font-weight=\"700\"");
        }
        if kind.halo {
            let _ = write!(
                self.out,
                " stroke=\"{}\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\"",
                Ink::Sheet.paint(self.theme)
            );
        }
        let _ = write!(self.out, ">{}</text>", escape(text));
    }

    /// The whole document.
    pub(crate) fn finish(
        self,
        width: f64,
        height: f64,
        font: &str,
        title: &str,
        about: &str,
        data: &[(&str, f64)],
    ) -> String {
        let mut head = String::with_capacity(self.out.len() + 1024);
        let _ = write!(
            head,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {w} {h}\" width=\"{w}\" height=\"{h}\" role=\"img\" \
             aria-label=\"{label}\" font-family=\"{font}\"",
            w = n(width),
            h = n(height),
            label = escape(title),
            font = escape(font),
        );
        for (name, value) in data {
            let _ = write!(head, " data-{name}=\"{}\"", exact(*value));
        }
        let _ = write!(head, "><title>{}</title><desc>{}</desc>", escape(title), escape(about));
        let _ = write!(
            head,
            "<rect x=\"0\" y=\"0\" width=\"{}\" height=\"{}\" fill=\"{}\"/>",
            n(width),
            n(height),
            Ink::Sheet.paint(self.theme)
        );
        head.push_str(&self.out);
        head.push_str("</svg>");
        head
    }

    fn points(&mut self, points: &[Px]) {
        for (i, p) in points.iter().enumerate() {
            let _ = write!(self.out, "{}{},{}", if i == 0 { "" } else { " " }, n(p.0), n(p.1));
        }
    }
    fn fill(&mut self, fill: Option<Ink>) {
        let _ = write!(self.out, " fill=\"{}\"", fill.map_or("none", |f| f.paint(self.theme)));
    }
    fn stroke(&mut self, pen: Pen) {
        let _ = write!(self.out, " stroke=\"{}\" stroke-width=\"{}\"", pen.ink.paint(self.theme), n(pen.width));
        if !pen.dash.is_empty() {
            let _ = write!(self.out, " stroke-dasharray=\"{}\"", pen.dash);
        }
    }
}

/// A coordinate with two digits; 0 for what is not finite (such points are left out before).
pub(crate) fn n(value: f64) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let mut s = format!("{value:.2}");
    while s.contains('.') && (s.ends_with('0') || s.ends_with('.')) {
        s.pop();
    }
    if s == "-0" { "0".to_owned() } else { s }
}

/// A value for tests and overlays, with all its digits.
fn exact(value: f64) -> String {
    if value.is_finite() { format!("{value}") } else { "0".to_owned() }
}

/// Text for an XML attribute or element. Characters that XML 1.0 forbids become U+FFFD.
pub(crate) fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\t' | '\n' | '\r' => out.push(' '),
            c if c < ' ' || c == '\u{FFFE}' || c == '\u{FFFF}' => out.push('\u{FFFD}'),
            c => out.push(c),
        }
    }
    out
}
