//! What a person sees: nothing set outside the paper, and nothing lost.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

#[path = "../../drawing/tests/sample/mod.rs"]
mod sample;

use crate::fonts::faces;
use crate::printer::{PaperSize, Printer};
use planning::Plan;
use quantity::UnitSystem;
use typst::layout::{Frame, FrameItem, Point};
use wording::{Language, Wording, ui};

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

/// The demonstration job beside the crates.
fn demo() -> Plan {
    struct Demo;
    impl jobfile::Folder for Demo {
        fn read(&self, path: &str) -> Option<Result<Vec<u8>, String>> {
            let root = std::path::Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples/demo-job"));
            std::fs::read(root.join(path)).ok().map(Ok)
        }
    }
    let (job, _) = jobfile::read_job(&Demo).expect("the demonstration job reads");
    planning::plan(&job)
}

fn readers() -> [(Language, UnitSystem, PaperSize); 3] {
    [
        (Language::English, UnitSystem::Si, PaperSize::A4),
        (Language::Spanish, UnitSystem::Us, PaperSize::UsLetter),
        (Language::English, UnitSystem::Us, PaperSize::UsLetter),
    ]
}

/// Texts of a frame that were set with a glyph that the font does not have.
fn boxes(frame: &Frame, out: &mut Vec<String>) {
    for (_, item) in frame.items() {
        match item {
            FrameItem::Text(text) if text.glyphs.iter().any(|g| g.id == 0) => out.push(text.text.to_string()),
            FrameItem::Group(group) => boxes(&group.frame, out),
            _ => {}
        }
    }
}

#[test]
fn every_character_has_a_glyph() {
    let printer = Printer::new().unwrap();
    let plan = demo();
    let formulas: String =
        plan.lifts.iter().flat_map(|l| &l.findings).filter_map(|f| f.working.as_ref()).flat_map(|w| &w.steps).fold(
            String::new(),
            |mut all, step| {
                all.push_str(&step.formula);
                all.push_str(&step.result.0);
                for (name, _) in &step.values {
                    all.push_str(name);
                }
                all
            },
        );
    for c in ['_', '·', '½', 'ĝ', 'θ', 'δ', 'ρ', 'Σ', '₀'] {
        assert!(formulas.contains(c), "the demonstration shows no formula with {c:?}");
    }
    for (language, units, paper) in readers() {
        let wording = Wording::new(language, units);
        let (document, _) = printer.set(&plan, wording, paper).unwrap();
        let mut missing = Vec::new();
        for page in document.pages() {
            boxes(&page.frame, &mut missing);
        }
        assert!(missing.is_empty(), "no glyph for something in {missing:?}");
        // Drawings are pictures of their own, set from the same faces.
        for lift in &plan.lifts {
            let style = drawing::Style::paper(680.0);
            let draw = [drawing::elevation, drawing::chart, drawing::stand_field, drawing::boom_strip];
            let ways = [drawing::WayDirection::In, drawing::WayDirection::Out];
            let ways = ways.iter().map(|way| drawing::way(lift, *way, &wording, &style));
            let all: String = draw.iter().map(|draw| draw(lift, &wording, &style)).chain(ways).collect();
            for c in all.chars().filter(|c| !c.is_control()) {
                assert!(faces()[..2].iter().all(|f| f.info().coverage.contains(c as u32)), "no glyph for {c:?}");
            }
        }
    }
    // Symbols that formulas of other jobs may use.
    for c in "ĝδθρ·√½Σ≤≥×−°²³πφαΔ→".chars() {
        assert!(faces()[0].info().coverage.contains(c as u32), "no glyph for {c:?}");
    }
}

/// Words on a page, in the order they were set.
fn page_text(frame: &Frame) -> String {
    let mut all = Vec::new();
    texts(frame, Point::zero(), &mut all);
    let text = all.into_iter().map(|t| t.3).collect::<Vec<_>>().join(" ");
    let text = text.replace(['\u{a0}', '\u{202f}'], " ").replace('\u{200b}', "");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn pages_are_few_and_none_is_nearly_empty() {
    let printer = Printer::new().unwrap();
    let plan = demo();
    for (language, units, paper) in readers() {
        let wording = Wording::new(language, units);
        let (document, _) = printer.set(&plan, wording, paper).unwrap();
        let pages = document.pages();
        if paper == PaperSize::A4 {
            // A lift's sheet; side view and movement; where to stand; the ways; findings with the chart on two; three and a half
            // of working and inputs.
            assert!(2 * pages.len() <= 19 * plan.lifts.len(), "{} pages for {} lifts", pages.len(), plan.lifts.len());
        }
        let text: Vec<String> = pages.iter().map(|p| page_text(&p.frame)).collect();
        for (i, page) in pages.iter().enumerate() {
            let height = page.frame.size().y.to_pt();
            let mut all = Vec::new();
            texts(&page.frame, Point::zero(), &mut all);
            // The footer begins 17 mm above the edge; pictures count by the text that they carry.
            let lowest = all.iter().map(|t| t.2).filter(|y| *y < height - 48.0).fold(0.0, f64::max);
            let pictures = count_pictures(&page.frame);
            let last = i + 1 == pages.len();
            // Who signs may stand alone before the first lift begins.
            let first_lift = wording.render(&ui::CONTENTS_LIFT.with("number", 1_usize).with("lifts", plan.lifts.len()));
            let front_ends = text.get(i + 1).is_some_and(|t| t.contains(&first_lift));
            assert!(
                last || front_ends || pictures > 0 || lowest > height * 0.3,
                "{language:?} {paper:?}: page {} ends at {lowest:.0} of {height:.0} pt",
                i + 1
            );
        }
        // Steps and emergency of a lift stand on one page.
        let say = |m: &evidence::Message| {
            let s = wording.render(m).replace(['\u{a0}', '\u{202f}'], " ");
            s.split_whitespace().collect::<Vec<_>>().join(" ")
        };
        for lift in plan.lifts.iter().filter(|l| !l.steps.is_empty()) {
            let together = lift.steps.iter().chain(&plan.emergency).map(say).collect::<Vec<_>>();
            // Hyphens at line ends may part a word, so the first words of each are enough.
            let begins = |s: &String| s.chars().take(24).collect::<String>();
            let name = lift.name.clone();
            assert!(
                text.iter().any(|t| t.contains(&name) && together.iter().all(|s| t.contains(&begins(s)))),
                "{language:?} {paper:?}: steps and emergency of {name} are parted"
            );
        }
        // Where to stand and how the boom goes: a picture each, and what would help a refused lift beside its verdict.
        let all_pictures: usize = pages.iter().map(|p| count_pictures(&p.frame)).sum();
        let there = |l: &planning::LiftPlan| {
            let ways = usize::from(l.way.is_some());
            2 + usize::from(l.field.is_some()) + usize::from(l.movement.is_some()) + ways
        };
        assert_eq!(all_pictures, plan.lifts.iter().map(there).sum::<usize>(), "{language:?} {paper:?}");
        for lift in &plan.lifts {
            for change in &lift.changes {
                let on = text.iter().position(|t| t.contains(&say(change))).expect("a change is not printed");
                assert!(
                    text[on].contains(&wording.verdict_means(lift.verdict)),
                    "{change:?} is not beside the verdict"
                );
            }
            for [name, said] in lift.stand_off_told() {
                let said: String = say(&said).chars().take(24).collect();
                assert!(text.iter().any(|t| t.contains(&said)), "{name:?}: {said} is missing");
            }
        }
        // What a person accepted is printed once.
        for statement in plan.lifts.iter().flat_map(|l| &l.findings).filter_map(|f| match f.sources.first() {
            Some(evidence::Source::Person { statement, .. }) if f.message.id == planning::text::MATTER_ACCEPTED.id => {
                Some(statement)
            }
            _ => None,
        }) {
            let start: String = statement.chars().take(20).collect();
            assert_eq!(text.iter().map(|t| t.matches(&start).count()).sum::<usize>(), 1, "{statement}");
        }
    }
}

fn count_pictures(frame: &Frame) -> usize {
    frame
        .items()
        .map(|(_, item)| match item {
            FrameItem::Image(..) => 1,
            FrameItem::Group(group) => count_pictures(&group.frame),
            _ => 0,
        })
        .sum()
}
