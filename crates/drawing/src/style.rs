//! How a drawing looks: size, theme and the few inks it is made of.

/// Size, theme and font of a drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Style {
    /// Width of the view box in CSS pixels; at least 320 is used. Text keeps its size in these
    /// pixels, so ask for the width at which the drawing will be shown.
    pub width_px: f64,
    /// Screen or paper.
    pub theme: Theme,
    /// Value of `font-family`.
    pub font_family: String,
}

/// What the drawing is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Theme {
    /// Colours are CSS custom properties (`--drawing-ink`, …) with fallbacks for a light page.
    Screen,
    /// Fixed colours, black on white.
    Paper,
}

impl Style {
    /// For a screen of that width in CSS pixels.
    pub fn screen(width_px: f64) -> Self {
        Self { width_px, theme: Theme::Screen, font_family: FONT_FAMILY.to_owned() }
    }
    /// For a printed page: `width_px` at 96 pixels an inch.
    pub fn paper(width_px: f64) -> Self {
        Self { width_px, theme: Theme::Paper, font_family: FONT_FAMILY.to_owned() }
    }
    pub(crate) fn width(&self) -> f64 {
        if self.width_px.is_finite() { self.width_px.clamp(320.0, 4000.0) } else { 640.0 }
    }
}

/// The family all drawings and documents use, with what a browser may take instead.
pub const FONT_FAMILY: &str = "Noto Sans, sans-serif";

/// Black and white of shaded relief, the same in every theme.
const SHADE: &str = "#000000";
const LIGHT: &str = "#ffffff";

/// The inks. Meaning never rests on them alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Ink {
    /// Lines and text.
    Main,
    /// Dimension lines, axes, notes.
    Soft,
    /// Grid lines.
    Faint,
    /// The sheet itself.
    Sheet,
    /// Ground below its surface.
    Ground,
    /// Machine body.
    Body,
    /// Glass of the cab, inside of wheels.
    Glass,
    /// Load.
    Load,
    /// Dangers: line, not permitted.
    Danger,
    /// Background of zones that carry the load.
    Carries,
    /// Ground where a stand would do.
    Passes,
    /// Ground where a stand would do on conditions.
    OnCondition,
    /// Ground where a stand is refused.
    Refused,
    /// Relief turned from the light, laid thinly over the sheet; seen on a light sheet.
    Shade,
    /// Relief turned to the light; seen on a dark sheet.
    Light,
}

impl Ink {
    /// The value of a paint attribute.
    pub(crate) fn paint(self, theme: Theme) -> &'static str {
        match theme {
            Theme::Paper => match self {
                Self::Main => "#111111",
                Self::Soft => "#444444",
                Self::Faint => "#c4c4c4",
                Self::Sheet => "#ffffff",
                Self::Ground => "#e6e2da",
                Self::Body => "#d9dde0",
                Self::Glass => "#f4f6f7",
                Self::Load => "#c9b48f",
                Self::Danger => "#8f1414",
                Self::Carries => "#e9f1ee",
                Self::Passes => "#d9ede2",
                Self::OnCondition => "#f6ebc8",
                Self::Refused => "#f1e4e0",
                Self::Shade => SHADE,
                Self::Light => LIGHT,
            },
            Theme::Screen => match self {
                Self::Main => "var(--drawing-ink, #16191c)",
                Self::Soft => "var(--drawing-soft, #4a5258)",
                Self::Faint => "var(--drawing-faint, #c9ced2)",
                Self::Sheet => "var(--drawing-sheet, #ffffff)",
                Self::Ground => "var(--drawing-ground, #e6e2da)",
                Self::Body => "var(--drawing-body, #d5dade)",
                Self::Glass => "var(--drawing-glass, #f4f6f7)",
                Self::Load => "var(--drawing-load, #c9b48f)",
                Self::Danger => "var(--drawing-danger, #9c1c1c)",
                Self::Carries => "var(--drawing-enough, #e6f0ec)",
                Self::Passes => "var(--drawing-passes, #d3ebdd)",
                Self::OnCondition => "var(--drawing-condition, #f6e9c0)",
                Self::Refused => "var(--drawing-refused, #f1e2de)",
                Self::Shade => SHADE,
                Self::Light => LIGHT,
            },
        }
    }
}
