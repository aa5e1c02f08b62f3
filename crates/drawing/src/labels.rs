//! Text that does not overlap: widths, wrapping, and a place for each label.

use crate::hatch::clip_segment;
use crate::svg::Px;

/// A rectangle in the picture: left, top, width, height, px.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Rect {
    pub x: f64,
    pub y: f64,
    pub w: f64,
    pub h: f64,
}

impl Rect {
    pub(crate) fn around(c: Px, w: f64, h: f64) -> Self {
        Self { x: c.0 - w / 2.0, y: c.1 - h / 2.0, w, h }
    }
    pub(crate) fn of(points: &[Px]) -> Option<Self> {
        let first = points.first()?;
        let (mut low, mut high) = (*first, *first);
        for p in points {
            low = (low.0.min(p.0), low.1.min(p.1));
            high = (high.0.max(p.0), high.1.max(p.1));
        }
        Some(Self { x: low.0, y: low.1, w: high.0 - low.0, h: high.1 - low.1 })
    }
    pub(crate) fn grown(self, by: f64) -> Self {
        Self { x: self.x - by, y: self.y - by, w: self.w + 2.0 * by, h: self.h + 2.0 * by }
    }
    pub(crate) fn right(self) -> f64 {
        self.x + self.w
    }
    pub(crate) fn bottom(self) -> f64 {
        self.y + self.h
    }
    /// Shared area, px².
    pub(crate) fn overlap(self, o: Self) -> f64 {
        let w = self.right().min(o.right()) - self.x.max(o.x);
        let h = self.bottom().min(o.bottom()) - self.y.max(o.y);
        if w > 0.0 && h > 0.0 { w * h } else { 0.0 }
    }
    /// The point of it nearest to `p`.
    pub(crate) fn nearest(self, p: Px) -> Px {
        (p.0.clamp(self.x, self.right()), p.1.clamp(self.y, self.bottom()))
    }
}

/// Height of a line of text of that size.
pub(crate) fn line_height(size: f64) -> f64 {
    (size * 1.3).round()
}

/// Width of a text in the documents' font, px; a little wide for other fonts.
pub(crate) fn text_width(text: &str, size: f64, bold: bool) -> f64 {
    let table = if bold { &BOLD } else { &REGULAR };
    let thousandths: f64 = text
        .chars()
        .map(|c| match c {
            ' '..='~' => f64::from(table[c as usize - 32]),
            'á' | 'é' | 'ó' | 'ú' | 'ñ' | 'ü' | 'à' | 'è' | 'ö' | 'ä' => 620.0,
            'í' | '·' | '\u{a0}' | '\u{202f}' | '°' | '²' | '³' => 430.0,
            '\u{200b}' | '\u{2066}'..='\u{2069}' | '\u{200e}' | '\u{200f}' | '\u{0300}'..='\u{036f}' => 0.0,
            c if c as u32 >= 0x1100 => 1050.0,
            _ => 700.0,
        })
        .sum();
    thousandths * size / 1000.0 * 1.02
}

/// Breaks a text into at most `max_lines` lines of `width` px; what does not fit ends in "…".
pub(crate) fn wrap(text: &str, size: f64, bold: bool, width: f64, max_lines: usize) -> Vec<String> {
    let fits = |s: &str| text_width(s, size, bold) <= width;
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    // A number and its unit stay together: their space is none to break at.
    let breaks = |c: char| c.is_whitespace() && !matches!(c, '\u{a0}' | '\u{202f}');
    for word in text.split(breaks).filter(|w| !w.is_empty()) {
        let joined = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
        if fits(&joined) {
            line = joined;
            continue;
        }
        if !line.is_empty() {
            lines.push(std::mem::take(&mut line));
        }
        // A word longer than a line is cut where it must be.
        for c in word.chars() {
            line.push(c);
            if !fits(&line) && line.chars().count() > 1 {
                line.pop();
                lines.push(std::mem::take(&mut line));
                line.push(c);
            }
        }
    }
    if !line.is_empty() {
        lines.push(line);
    }
    let max_lines = max_lines.max(1);
    if lines.len() > max_lines {
        lines.truncate(max_lines);
        if let Some(last) = lines.last_mut() {
            while !last.is_empty() && !fits(&format!("{last}…")) {
                last.pop();
            }
            last.push('…');
        }
    }
    lines
}

/// Cost above which a label that the key can stand in for is left out: a tenth of a usual label over
/// the machine, or a few lines through it.
const CROWDED: f64 = 130.0;
/// Distance from its anchor beyond which such a label is left out, px.
const TOO_FAR: f64 = 50.0;

/// What labels must keep clear of, and the labels placed so far.
pub(crate) struct Placer {
    frame: Rect,
    /// Never covered.
    texts: Vec<Rect>,
    /// Covered only when there is no room elsewhere.
    solids: Vec<Rect>,
    lines: Vec<(Px, Px)>,
}

/// Where a label went.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Placed {
    /// The label's box.
    pub rect: Rect,
    /// How far it had to go beyond the usual gap, px.
    pub away: f64,
    /// True if it is so far from its anchor that a leader is needed.
    pub far: bool,
}

impl Placer {
    pub(crate) fn new(frame: Rect) -> Self {
        Self { frame, texts: Vec::new(), solids: Vec::new(), lines: Vec::new() }
    }
    /// Reserves the place of a text that is already fixed.
    pub(crate) fn text(&mut self, rect: Rect) {
        self.texts.push(rect);
    }
    /// Things better not covered.
    pub(crate) fn solid(&mut self, rect: Rect) {
        self.solids.push(rect);
    }
    /// Lines better not crossed.
    pub(crate) fn line(&mut self, a: Px, b: Px) {
        self.lines.push((a, b));
    }
    /// A thick line as a chain of solid boxes.
    pub(crate) fn beam(&mut self, a: Px, b: Px, depth: f64) {
        let length = libm::hypot(b.0 - a.0, b.1 - a.1);
        let steps = (length / depth.max(6.0)).ceil().clamp(1.0, 200.0);
        for i in 0..=steps as usize {
            let t = i as f64 / steps;
            self.solid(Rect::around((a.0 + (b.0 - a.0) * t, a.1 + (b.1 - a.1) * t), depth, depth));
        }
    }
    /// The same as [`Self::place`], or nothing where even the best place would cover other texts or
    /// much of the picture: better no label than one that hides what it names.
    pub(crate) fn place_if_clear(&mut self, anchor: Px, w: f64, h: f64, gap: f64, prefer: f64) -> Option<Placed> {
        let (cost, placed) = self.best(anchor, w, h, gap, prefer);
        (cost <= CROWDED && placed.away <= TOO_FAR).then(|| {
            self.texts.push(placed.rect);
            placed
        })
    }
    /// Finds the best place for a label of `w` × `h` about `anchor`, starting `gap` px away and
    /// at `prefer` degrees (0 right, 90 up), and reserves it.
    pub(crate) fn place(&mut self, anchor: Px, w: f64, h: f64, gap: f64, prefer: f64) -> Placed {
        let (_, placed) = self.best(anchor, w, h, gap, prefer);
        self.texts.push(placed.rect);
        placed
    }
    fn best(&self, anchor: Px, w: f64, h: f64, gap: f64, prefer: f64) -> (f64, Placed) {
        let mut best = (f64::INFINITY, Rect::around(anchor, w, h), 0.0);
        for ring in [0.0, 12.0, 26.0, 44.0, 66.0, 94.0, 130.0] {
            for turn in [0.0, 30.0, -30.0, 60.0, -60.0, 90.0, -90.0, 125.0, -125.0, 160.0, -160.0, 180.0_f64] {
                let angle = (prefer + turn).to_radians();
                let (cos, sin) = (libm::cos(angle), -libm::sin(angle));
                // The box's nearest side lies `gap + ring` from the anchor.
                let c = (anchor.0 + cos * (gap + ring + w / 2.0), anchor.1 + sin * (gap + ring + h / 2.0));
                let rect = Rect::around(c, w, h);
                let cost = self.cost(rect) + ring * 1.5 + turn.abs() * 0.06;
                if cost < best.0 {
                    best = (cost, rect, ring);
                }
            }
        }
        (best.0, Placed { rect: best.1, away: best.2, far: best.2 > 12.0 })
    }
    fn cost(&self, rect: Rect) -> f64 {
        let room = rect.grown(2.0);
        let outside = rect.w * rect.h - rect.overlap(self.frame);
        let texts: f64 = self.texts.iter().map(|t| t.overlap(room)).sum();
        let solids: f64 = self.solids.iter().map(|t| t.overlap(rect)).sum();
        let lines = self.lines.iter().filter(|(a, b)| clip_segment(*a, *b, room).is_some()).count();
        outside.max(0.0) * 40.0 + texts * 40.0 + solids * 0.5 + lines as f64 * 18.0
    }
    /// True if a box lies wholly in the frame.
    pub(crate) fn inside(&self, rect: Rect) -> bool {
        rect.w * rect.h - rect.overlap(self.frame) < 0.5
    }
    /// Area shared with texts placed so far, px².
    pub(crate) fn clash(&self, rect: Rect) -> f64 {
        self.texts.iter().map(|t| t.overlap(rect)).sum()
    }
    /// Area shared with texts and things better not covered, px².
    pub(crate) fn crowding(&self, rect: Rect) -> f64 {
        self.clash(rect) + self.solids.iter().map(|t| t.overlap(rect)).sum::<f64>()
    }
    /// Pairs of texts that overlap, for tests.
    #[cfg(test)]
    pub(crate) fn overlaps(&self) -> usize {
        (0..self.texts.len())
            .flat_map(|i| (0..i).map(move |j| (i, j)))
            .filter(|&(i, j)| self.texts[i].overlap(self.texts[j]) > 1.0)
            .count()
    }
}

/// Advance widths of ' ' to '~' in Noto Sans Regular, thousandths of the size.
#[rustfmt::skip]
const REGULAR: [u16; 95] = [
    260, 269, 408, 646, 572, 831, 732, 225, 300, 300, 551, 572, 268, 322, 268, 372, 572, 572, 572, 572, 572, 572, 572, 572,
    572, 572, 268, 268, 572, 572, 572, 434, 899, 639, 650, 632, 730, 556, 519, 728, 741, 339, 273, 619, 524, 907, 760, 781,
    605, 781, 622, 549, 556, 731, 600, 930, 586, 566, 572, 329, 372, 329, 572, 444, 580, 561, 615, 480, 615, 564, 344, 615,
    618, 258, 258, 534, 258, 935, 618, 605, 615, 615, 413, 479, 361, 618, 508, 786, 529, 510, 470, 380, 551, 380, 572,
];
/// The same in Noto Sans Bold.
#[rustfmt::skip]
const BOLD: [u16; 95] = [
    260, 286, 472, 646, 572, 901, 750, 266, 339, 339, 545, 572, 285, 322, 285, 413, 572, 572, 572, 572, 572, 572, 572, 572,
    572, 572, 285, 285, 572, 572, 572, 477, 897, 690, 672, 637, 740, 560, 549, 724, 765, 389, 331, 664, 565, 943, 813, 796,
    628, 796, 660, 551, 579, 756, 650, 967, 667, 624, 579, 331, 413, 331, 572, 411, 607, 604, 633, 514, 633, 591, 387, 633,
    657, 305, 305, 620, 305, 982, 657, 619, 633, 633, 454, 497, 434, 657, 569, 856, 578, 569, 488, 394, 551, 394, 572,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_words_and_long_texts_keep_to_their_lines() {
        let text = "A name withoutanyplacewhereitcouldbebrokenexceptbyforce and then some more";
        let lines = wrap(text, 12.0, false, 120.0, 3);
        assert_eq!(lines.len(), 3);
        assert!(lines.iter().all(|l| text_width(l, 12.0, false) <= 120.0), "{lines:?}");
        assert!(lines[2].ends_with('…'));
    }

    #[test]
    fn a_number_keeps_its_unit() {
        for width in [60.0, 75.0, 90.0, 120.0] {
            let lines = wrap("keep 4.05\u{a0}m away, found 12.60\u{a0}m", 12.0, false, width, 9);
            assert!(lines.iter().all(|l| !l.starts_with('m') && !l.ends_with("4.05")), "{lines:?}");
        }
    }

    #[test]
    fn many_labels_at_one_point_do_not_overlap() {
        let mut placer = Placer::new(Rect { x: 0.0, y: 0.0, w: 600.0, h: 400.0 });
        for _ in 0..8 {
            placer.place((300.0, 200.0), 80.0, 30.0, 6.0, 0.0);
        }
        assert_eq!(placer.overlaps(), 0);
    }
}
