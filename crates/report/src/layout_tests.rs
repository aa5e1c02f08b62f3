//! What a person sees: nothing set outside the paper, and nothing lost.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

#[path = "../../drawing/tests/sample/mod.rs"]
mod sample;

use crate::printer::{PaperSize, Printer};
use planning::Plan;
use quantity::UnitSystem;
use typst::layout::{Frame, FrameItem, Point};
use wording::{Language, Wording};

/// Left, right and lowest edge of every text of a frame, pt, with the text.
fn texts(frame: &Frame, at: Point, out: &mut Vec<(f64, f64, f64, String)>) {
    for (pos, item) in frame.items() {
        let at = at + *pos;
        match item {
            FrameItem::Text(text) => {
                out.push((at.x.to_pt(), (at.x + text.width()).to_pt(), at.y.to_pt(), text.text.to_string()));
            }
            FrameItem::Group(group) => texts(&group.frame, at, out),
            _ => {}
        }
    }
}

/// A plan in which every text of users is longer than any sane one.
fn long_names() -> Plan {
    let mut plan = sample::plan(vec![sample::bricks()]);
    let words = "Extraordinarily long names of things that nobody would write but somebody will ".repeat(6);
    let one = "Unbreakable".repeat(40);
    plan.head.job.clone_from(&words);
    plan.head.site.clone_from(&one);
    plan.head.planner = one.clone();
    let lift = &mut plan.lifts[0];
    lift.name.clone_from(&one);
    lift.id = "L".repeat(60);
    lift.machine.clone_from(&words);
    lift.attachment.clone_from(&one);
    lift.landing.clone_from(&one);
    lift.load.name.clone_from(&one);
    lift.findings[0].message =
        planning::text::MACHINE_INSPECTED.with("machine", one.as_str()).with("by", words.as_str());
    lift.findings[7].message = planning::text::MATTER_ACCEPTED
        .with("matter", planning::text::CHECK_PEOPLE)
        .with("by", one.as_str())
        .with("statement", words.repeat(12));
    plan.inputs[0].name.clone_from(&one);
    plan.inputs[0].value.clone_from(&words);
    plan.inputs[0].place = one;
    plan
}

#[test]
fn no_text_leaves_the_margins_of_the_page() {
    let printer = Printer::new().unwrap();
    let plans = [sample::plan(vec![sample::bricks(), sample::hung()]), sample::plan(Vec::new()), long_names()];
    for plan in &plans {
        for (language, units, paper) in [
            (Language::English, UnitSystem::Si, PaperSize::A4),
            (Language::Spanish, UnitSystem::Us, PaperSize::UsLetter),
        ] {
            let (document, warnings) = printer.set(plan, Wording::new(language, units), paper).unwrap();
            assert!(warnings.is_empty(), "{warnings:?}");
            for (number, page) in document.pages().iter().enumerate() {
                let size = page.frame.size();
                let mut all = Vec::new();
                texts(&page.frame, Point::zero(), &mut all);
                assert!(!all.is_empty(), "page {} is empty", number + 1);
                for (left, right, y, text) in all {
                    // 15 mm margins are 42.5 pt; a hair for glyphs that hang over.
                    let inside =
                        left >= 42.0 && right <= size.x.to_pt() - 41.0 && y > 0.0 && y <= size.y.to_pt() - 20.0;
                    assert!(inside, "page {}: {text:?} from {left:.1} to {right:.1} at {y:.1} of {size:?}", number + 1);
                }
            }
        }
    }
}
