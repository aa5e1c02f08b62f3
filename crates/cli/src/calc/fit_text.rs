//! The answer of `calc fit` in words.

use super::fit::{FitAsked, FitMeasure, FitResult, FitUnknown, FitValue};
use super::fit_input::Asked;
use super::text as words;
use crate::terminal;
use evidence::Message;
use quantity::{Dimension, Quantity};
use wording::Wording;

/// Measurements named in words.
const NAMED: usize = 3;

pub(super) fn print(r: &FitResult, asked: &[Asked], w: Wording) {
    let say = |m: &Message, first: &str| terminal::paragraph(&w.render(m), first, "    ");
    for (answer, asked) in r.asked.iter().zip(asked) {
        print_asked(answer, asked, w);
        terminal::line("");
    }
    if !r.residuals.is_empty() {
        say(&words::FIT_RESIDUALS.message(), "");
        for x in &r.residuals {
            let message = words::FIT_RESIDUAL
                .with("name", &x.statement)
                .with("of", value(x.of))
                .with("stated", kg(x.stated_kg))
                .with("fitted", kg(x.fitted_kg))
                .with("share", Quantity::ratio(x.share_of_uncertainty));
            say(&message, "  ");
        }
        terminal::line("");
    }
    say(&words::FIT_NOTE.message(), "");
}

fn print_asked(r: &FitAsked, asked: &Asked, w: Wording) {
    let say = |m: &Message| terminal::paragraph(&w.render(m), "  ", "    ");
    let length = |si: f64| Quantity::new(si, Dimension::Length);
    let angle = |degrees: f64| Quantity::new(degrees.to_radians(), Dimension::Angle);
    let title =
        words::FIT_ASKED.with("name", &r.name).with("reach", length(r.reach_m)).with("height", length(r.lift_height_m));
    terminal::paragraph(&w.render(&title), "", "  ");
    match (r.tips_forward, r.upper_kg, r.middle_kg) {
        (false, ..) => say(&words::FIT_NOT_FORWARD.message()),
        (true, Some(upper), Some(middle)) => say(&words::FIT_BETWEEN
            .with("lower", kg(r.lower_kg.floor()))
            .with("upper", kg(upper.ceil()))
            .with("middle", kg(middle))),
        _ if r.lower_kg > 0.0 => say(&words::FIT_AT_LEAST.with("lower", kg(r.lower_kg.floor()))),
        _ => say(&words::FIT_NO_LOWER.message()),
    }
    if let (Some([least, most]), Some(side)) = (r.side_tilt_deg, asked.side) {
        say(&words::FIT_SIDE
            .with("mass", kg(side.load.mass.high))
            .with("least", angle(least))
            .with("most", angle(most)));
    }
    for unknown in &r.not_identifiable {
        say(&match unknown {
            FitUnknown::Height => words::FIT_NO_HEIGHT,
            FitUnknown::Sideways => words::FIT_NO_SIDEWAYS,
        }
        .message());
    }
    let mut named =
        r.measure_next.iter().filter_map(|n| n.leaves_kg.map(|width| (n, kg(width)))).take(NAMED).peekable();
    if named.peek().is_some() {
        say(&words::FIT_NEXT.message());
    }
    for (n, width) in named {
        let (at, out) = (angle(n.boom_angle_deg.unwrap_or(0.0)), length(n.extension_m.unwrap_or(0.0)));
        let message = match n.measure {
            FitMeasure::AxleLoads => words::FIT_NEXT_AXLES.with("angle", at).with("extension", out),
            FitMeasure::TippingTest => words::FIT_NEXT_TIPPING.with("angle", at).with("extension", out),
            FitMeasure::Attachment => words::FIT_NEXT_ATTACHMENT.message(),
        };
        terminal::paragraph(&w.render(&message.with("width", width)), "    ", "      ");
    }
}

fn value(of: FitValue) -> evidence::TextId {
    match of {
        FitValue::FrontAxle => words::FIT_WORD_FRONT,
        FitValue::RearAxle => words::FIT_WORD_REAR,
        FitValue::TippingLoad => words::FIT_WORD_TIPPING,
        FitValue::Total => words::FIT_WORD_WHOLE,
        FitValue::Other => words::FIT_WORD_OTHER,
    }
}

fn kg(si: f64) -> Quantity {
    Quantity::new(si, Dimension::Mass)
}
