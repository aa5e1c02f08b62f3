//! The plan sheet as a file: valid, complete, in the reader's words, whatever users typed.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

#[path = "../../drawing/tests/sample/mod.rs"]
mod sample;

use planning::Plan;
use quantity::UnitSystem;
use report::{PaperSize, Printed, Printer, plan_sheet};
use wording::{Language, Wording};

fn english() -> Wording {
    Wording::new(Language::English, UnitSystem::Si)
}

fn print(plan: &Plan, wording: Wording, paper: PaperSize) -> Printed {
    Printer::new().unwrap().plan_sheet_with_details(plan, &wording, paper).unwrap()
}

/// The text of all pages, without the places to break and with plain spaces.
fn text(printed: &Printed) -> String {
    let text = printed.text.join(" ").replace(['\u{200b}', '\u{2066}', '\u{2067}', '\u{2068}', '\u{2069}'], "");
    text.replace(['\u{a0}', '\u{202f}'], " ").split_whitespace().collect::<Vec<_>>().join(" ")
}

fn has(text: &str, part: &str) {
    let part = part.replace(['\u{a0}', '\u{202f}'], " ");
    assert!(text.contains(&part), "{part:?} is not in the document:\n{text}");
}

#[test]
fn the_sheet_says_verdict_reserve_and_what_governs() {
    let plan = sample::plan(vec![sample::bricks(), sample::hung()]);
    let printed = print(&plan, english(), PaperSize::A4);
    assert!(printed.pdf.starts_with(b"%PDF-"));
    assert!(printed.pages >= 4, "{} pages", printed.pages);
    assert_eq!(printed.pages, printed.text.len());
    let text = text(&printed);
    for part in ["NO-GO", "GO WITH CONDITIONS", "Facing bricks to scaffold lift 2"] {
        has(&text, part);
    }
    has(&text, &english().reserve(1.0 - 2035.0 / 2208.0));
    has(&text, &english().reserve(-0.21));
    has(&text, &english().text(wording::ui::INVENTED_DATA_NOTE));
    has(&text, &format!("Page 1 of {}", printed.pages));
    has(&text, &plan.digest);
    for message in plan.cautions.iter().chain(&plan.ends_when).chain(&plan.emergency).chain(&plan.lifts[0].steps) {
        has(&text, &english().render(message));
    }
    for finding in &plan.lifts[0].findings {
        has(&text, &english().render(&finding.message));
        for remedy in &finding.remedies {
            has(&text, &english().render(remedy));
        }
        for source in &finding.sources {
            has(&text, &english().source(source));
        }
    }
    has(&text, "(from memory, not looked up)");
    has(&text, "Planned by");
}

#[test]
fn the_working_shows_formula_values_result_and_source() {
    let plan = sample::plan(vec![sample::bricks()]);
    let text = text(&print(&plan, english(), PaperSize::A4));
    has(&text, "R = 1 − W / Q");
    has(&text, "W = 2,035 kg");
    has(&text, "R = 7.8351 %");
    has(&text, "mechanics");
}

#[test]
fn spanish_with_us_units_on_letter() {
    let wording = Wording::new(Language::Spanish, UnitSystem::Us);
    let plan = sample::plan(vec![sample::bricks()]);
    let printed = print(&plan, wording, PaperSize::UsLetter);
    let text = text(&printed);
    has(&text, &wording.verdict(plan.verdict));
    has(&text, &wording.quantity(quantity::kilograms(1850.0)));
    assert!(!text.contains("GO WITH CONDITIONS"));
    // 8.5 in × 11 in in points; A4 is 595.28 × 841.89.
    let page_box = |pdf: &[u8]| {
        let text = String::from_utf8_lossy(pdf);
        let at = text.find("/MediaBox").expect("a page has a box");
        text[at..].split(['[', ']']).nth(1).unwrap().trim().to_owned()
    };
    assert_eq!(page_box(&printed.pdf), "0 0 612 792");
    let a4 = page_box(&plan_sheet(&plan, &wording, PaperSize::A4).unwrap());
    assert!(a4.starts_with("0 0 595.2") && a4.contains(" 841.8"), "{a4}");
}

#[test]
fn no_text_id_is_without_words() {
    for language in [Language::English, Language::Spanish] {
        let wording = Wording::new(language, UnitSystem::Si);
        let text = text(&print(&sample::plan(vec![sample::bricks(), sample::hung()]), wording, PaperSize::A4));
        assert!(!text.contains('⟨'), "{}", text.split('⟨').nth(1).unwrap_or(""));
    }
}

#[test]
fn a_job_without_lifts_says_that_nothing_was_checked() {
    let plan = sample::plan(Vec::new());
    let printed = print(&plan, english(), PaperSize::A4);
    let text = text(&printed);
    has(&text, &english().text(wording::ui::NO_LIFTS));
    has(&text, "NO-GO");
    for message in plan.cautions.iter().chain(&plan.ends_when).chain(&plan.emergency) {
        has(&text, &english().render(message));
    }
}

#[test]
fn text_of_users_is_data_and_nothing_else() {
    let mut plan = sample::plan(vec![sample::bricks()]);
    let hostile = [
        "#import \"@preview/x:1.0.0\": *",
        "#panic(\"no\") $ x^2 $ *bold* _em_ `raw`",
        "\\ \" ' < > & { } [ ] = - + / @label <label> ~ -- ---",
        "שלום עולם مرحبا بالعالم 🧱🏗️ 日本",
        "\u{0} \u{7} \u{200b} \u{2066} \n\r\t",
        "",
        "../../etc/passwd",
    ];
    for text in hostile {
        plan.head.job = text.into();
        plan.head.planner = text.into();
        let lift = &mut plan.lifts[0];
        lift.name = text.into();
        lift.id = text.into();
        lift.landing = text.into();
        lift.load.name = text.into();
        lift.findings[0].message = planning::text::MACHINE_INSPECTED.with("machine", text).with("by", text);
        lift.elevation.as_mut().unwrap().lines[0].name = text.into();
        plan.inputs[0].value = text.into();
        let printed = print(&plan, english(), PaperSize::A4);
        assert!(printed.pdf.starts_with(b"%PDF-"), "{text:?}");
        // What can be printed at all is printed as typed.
        if text.starts_with(['#', '\\', '.']) {
            let seen = self::text(&printed).replace(' ', "");
            has(&seen, &text.replace(' ', ""));
        }
    }
}

#[test]
fn numbers_that_are_none_do_not_break_the_sheet() {
    let mut plan = sample::plan(vec![sample::bricks()]);
    let lift = &mut plan.lifts[0];
    lift.governing = 99;
    lift.findings[1].reserve = Some(f64::NAN);
    lift.findings[2].reserve = Some(f64::NEG_INFINITY);
    lift.findings[3].reserve = Some(-1e9);
    lift.findings[5].demand = Some(quantity::Quantity::ratio(f64::NAN));
    lift.elevation = None;
    lift.chart = None;
    lift.wheels.clear();
    lift.steps.clear();
    let text = text(&print(&plan, english(), PaperSize::A4));
    has(&text, "not known");
}

#[test]
fn same_plan_same_bytes() {
    let plan = sample::plan(vec![sample::bricks()]);
    let one = plan_sheet(&plan, &english(), PaperSize::A4).unwrap();
    let two = plan_sheet(&plan, &english(), PaperSize::A4).unwrap();
    assert!(one == two, "a second document differs from the first");
}

#[test]
fn the_faces_are_there_for_the_web_too() {
    let files = report::font_files();
    assert_eq!(files.len(), 4);
    for file in files {
        assert!(file.bytes.starts_with(&[0, 1, 0, 0]), "{} is TrueType", file.name);
    }
    assert!(drawing::FONT_FAMILY.starts_with(report::FAMILY));
}
