//! Tests of what a reader sees.

#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

use crate::{Language, RenderedFault, Wording, entry, number, ui};
use evidence::{Arg, Certainty, Fault, Message, Place, Severity, Source, Status, Verdict, Working};
use proptest::prelude::*;
use quantity::{Dimension, Quantity, UnitSystem, degrees, kilograms, kilovolts, metres, newtons, parse, pascals};

const ENGLISH: (Language, UnitSystem) = (Language::English, UnitSystem::Si);
const SPANISH: (Language, UnitSystem) = (Language::Spanish, UnitSystem::Si);
const AMERICAN: (Language, UnitSystem) = (Language::English, UnitSystem::Us);

fn words((language, units): (Language, UnitSystem)) -> Wording {
    Wording::new(language, units)
}

/// The text with no-break spaces shown as plain ones.
fn plain(text: &str) -> String {
    text.replace(['\u{a0}', '\u{202f}'], " ")
}

#[track_caller]
fn shows(quantity: impl Into<Quantity>, english: &str, spanish: &str, american: &str) {
    let quantity = quantity.into();
    let got = [ENGLISH, SPANISH, AMERICAN].map(|reader| plain(&words(reader).quantity(quantity)));
    assert_eq!(got, [english, spanish, american]);
}

#[test]
fn quantities_in_the_readers_units_and_marks() {
    shows(kilograms(1850.0), "1,850 kg", "1850 kg", "4,079 lb");
    shows(kilograms(12_345.0), "12,345 kg", "12 345 kg", "27,216 lb");
    shows(metres(6.2), "6.20 m", "6,20 m", "20.34 ft");
    shows(metres(0.035), "0.035 m", "0,035 m", "1.4 in");
    shows(degrees(-2.25), "−2.2°", "−2,2°", "−2.2°");
    shows(newtons(42_500.0), "42.5 kN", "42,5 kN", "9,554 lbf");
    shows(pascals(150_000.0), "150 kPa", "150 kPa", "3,130 psf");
    shows(kilovolts(11.0), "11 kV", "11 kV", "11 kV");
    shows(Quantity::slope(0.07), "7.0 %", "7,0 %", "7.0 %");
    shows(Quantity::ratio(0.33), "33 %", "33 %", "33 %");
    shows(Quantity::number(1.333), "1.33", "1,33", "1.33");
    shows(Quantity::number(-0.000_000_1), "0.0000", "0,0000", "0.0000");
}

#[test]
fn what_is_no_number_is_never_printed_as_one() {
    for si in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        for dimension in [Dimension::Length, Dimension::Mass, Dimension::Number, Dimension::Slope] {
            shows(Quantity::new(si, dimension), "not known", "no se conoce", "not known");
        }
    }
}

#[test]
fn a_sentence_says_what_is_and_the_limit() {
    let message = planning::text::CHART_EXCEEDED
        .with("mass", kilograms(1850.0))
        .with("capacity", kilograms(1600.0))
        .with("zone", "B")
        .with("reach", metres(6.2))
        .with("height", metres(7.4));
    assert_eq!(
        plain(&words(ENGLISH).render(&message)),
        "1,850 kg here is more than the chart allows: 1,600 kg in zone B at reach 6.20 m and height 7.40 m."
    );
    assert_eq!(
        plain(&words(SPANISH).render(&message)),
        "1850 kg aquí es más de lo que admite la tabla: 1600 kg en la zona B, con alcance 6,20 m y altura 7,40 m."
    );
    assert_eq!(
        plain(&words(AMERICAN).render(&message)),
        "4,079 lb here is more than the chart allows: 3,527 lb in zone B at reach 20.34 ft and height 24.28 ft."
    );
}

#[test]
fn lengths_of_one_sentence_have_one_unit() {
    let message = planning::text::APPROACH_PAST.with("offset", metres(1.32)).with("allowed", metres(0.0076));
    assert_eq!(
        plain(&words(AMERICAN).render(&message)),
        "The boom points up to 4.33 ft past the middle of the landing, the stand error counted; 0.025 ft is allowed."
    );
    let short = planning::text::APPROACH_PAST.with("offset", metres(0.6)).with("allowed", metres(0.0076));
    assert_eq!(
        plain(&words(AMERICAN).render(&short)),
        "The boom points up to 23.6 in past the middle of the landing, the stand error counted; 0.3 in is allowed."
    );
    let row = [metres(1.32).into(), metres(f64::NAN).into(), metres(0.6).into(), kilograms(5.0).into()];
    assert_eq!(
        words(AMERICAN).alike(&row).iter().map(|t| plain(t)).collect::<Vec<_>>(),
        ["4.33 ft", "not known", "1.97 ft", "11 lb"]
    );
}

#[test]
fn messages_within_messages_are_in_the_same_language() {
    let message = planning::text::TILT_TIPS.with("side", planning::text::SIDE_LEFT);
    assert_eq!(words(ENGLISH).render(&message), "As planned, it tips to the left.");
    assert_eq!(words(SPANISH).render(&message), "Tal como está previsto, vuelca hacia la izquierda.");
}

#[test]
fn counts_agree_with_their_nouns() {
    let message = |errors: i64, warnings: i64| ui::FAULTS_SUMMARY.with("errors", errors).with("warnings", warnings);
    assert_eq!(words(ENGLISH).render(&message(1, 2)), "1 error, 2 warnings");
    assert_eq!(words(ENGLISH).render(&message(0, 1)), "0 errors, 1 warning");
    assert_eq!(words(SPANISH).render(&message(2, 1)), "2 errores, 1 aviso");
    assert_eq!(words(SPANISH).render(&message(1, 12_345)), "1 error, 12\u{202f}345 avisos");
    assert_eq!(words(ENGLISH).render(&message(12_345, 0)), "12,345 errors, 0 warnings");
}

#[test]
fn what_is_missing_stays_visible() {
    let unknown = Message { id: "no-such-text".into(), args: Vec::new() };
    assert_eq!(words(ENGLISH).render(&unknown), "⟨no-such-text⟩");
    let half = ui::PAGE_OF.with("page", 2_i64);
    assert_eq!(words(ENGLISH).render(&half), "Page 2 of ⟨pages⟩");
    assert_eq!(words(SPANISH).render(&half), "Página 2 de ⟨pages⟩");
    let nested = ui::HINT.with("hint", unknown);
    assert_eq!(words(ENGLISH).render(&nested), "Hint: ⟨no-such-text⟩");
    assert_eq!(
        words(ENGLISH).render(&ui::LIFTS_SUMMARY.message()),
        "⟨lifts⟩ lifts: ⟨go⟩ go, ⟨conditions⟩ go with conditions, ⟨no_go⟩ no-go"
    );
    assert_eq!(words(ENGLISH).check("no-such-check"), "⟨check-no-such-check⟩");
}

#[test]
fn figures_that_a_text_states_itself_are_in_the_readers_units() {
    let caution = planning::text::CAUTION_TRIAL;
    assert_eq!(words(ENGLISH).text(caution), "Test every load first: raise it 0.1 to 0.2 m, stop, and look.");
    assert_eq!(words(AMERICAN).text(caution), "Test every load first: raise it 4 to 8 in, stop, and look.");
    assert_eq!(words(SPANISH).text(caution), "Pruebe antes cada carga: levántela de 0,1 a 0,2 m, pare y mire.");
}

#[test]
fn readers_of_us_units_get_us_spelling_but_their_own_words_stay() {
    let message = planning::text::WARN_HEAVY_OUTSIDE.with("load", "tyres for the town centre");
    assert_eq!(
        words(AMERICAN).render(&message),
        "tyres for the town centre: the heavier side does not lie against the carriage."
    );
    assert_eq!(words(AMERICAN).text(planning::text::SUPPORT_TYRES), "on tires");
    assert_eq!(words(AMERICAN).text(ui::LOAD_CENTRE), "Load center");
    assert_eq!(words(ENGLISH).text(ui::LOAD_CENTRE), "Load centre");
}

#[test]
fn bottomless_messages_end() {
    let mut message = ui::HINT.with("hint", "x");
    for _ in 0..10_000 {
        message = ui::HINT.with("hint", message);
    }
    let text = words(ENGLISH).render(&message);
    assert!(text.ends_with("⟨ui-hint⟩"), "{text}");
    // Taken apart by hand: dropping ten thousand boxes one within the other would need ten thousand frames.
    while let Some((_, Arg::Message(inner))) = message.args.pop() {
        message = *inner;
    }
}

#[test]
fn words_of_users_stay_as_they_are() {
    for text in ["{ $x }", "-brand", "a\nb", "«»“”", "{", "}", "\u{202e}"] {
        let message = ui::SOURCE_PERSON.with("name", text).with("statement", text);
        assert_eq!(words(ENGLISH).render(&message), format!("{text} states: {text}"));
    }
}

#[test]
fn sources_say_what_was_not_read_in_the_source() {
    let read = Source::read("29 CFR 1926.600(a)(6)");
    let memory = Source::from_memory("EN 1991-1-4");
    let input = Source::Input { place: "job.toml, load[1]".into(), certainty: Certainty::Estimated };
    let person = Source::Person { name: "A. Invented".into(), statement: "150 kPa".into() };
    let english = [&read, &memory, &Source::CommonPractice, &Source::Mechanics, &input, &person]
        .map(|s| words(ENGLISH).source(s));
    assert_eq!(
        english,
        [
            "29 CFR 1926.600(a)(6)",
            "EN 1991-1-4 (from memory, not looked up)",
            "common practice",
            "mechanics",
            "job.toml, load[1], estimated",
            "A. Invented states: 150 kPa",
        ]
    );
    let silent = Source::Person { name: "A. Invented".into(), statement: String::new() };
    assert_eq!(words(ENGLISH).source(&silent), "stated by A. Invented");
    assert_eq!(words(SPANISH).source(&memory), "EN 1991-1-4 (de memoria, sin consultar)");
}

#[test]
fn citations_that_are_sentences_are_in_the_readers_language() {
    let mut working = Working::default();
    ground::Contact::Tyre { inflation: 4e5 }.traced_pressure(4e4, &mut working);
    for step in &working.steps {
        let (english, spanish) = (words(ENGLISH).source(&step.source), words(SPANISH).source(&step.source));
        assert!(english.starts_with("tyre patch = wheel force / inflation pressure"), "{english}");
        assert!(spanish.starts_with("huella del neumático") && !spanish.contains("tyre"), "{spanish}");
        assert!(words(AMERICAN).source(&step.source).starts_with("tire patch"));
    }
    assert!(!working.steps.is_empty());
    let tilt = Source::from_memory("ISO 22915-14 (kind of test; low confidence)");
    assert_eq!(words(SPANISH).source(&tilt), "ISO 22915-14, según su tipo de ensayo (de memoria, sin consultar)");
}

#[test]
fn verdicts_statuses_and_certainties_are_told_apart() {
    for reader in [ENGLISH, SPANISH] {
        let w = words(reader);
        let verdicts = [Verdict::Go, Verdict::GoWithConditions, Verdict::NoGo].map(|v| w.verdict(v)).to_vec();
        let means = [Verdict::Go, Verdict::GoWithConditions, Verdict::NoGo].map(|v| w.verdict_means(v)).to_vec();
        let statuses = [Status::Go, Status::Condition, Status::CannotTell, Status::NoGo, Status::Stop]
            .map(|s| w.status(s))
            .to_vec();
        let certainties = [
            Certainty::Plate,
            Certainty::Manual,
            Certainty::Chart,
            Certainty::Weighed,
            Certainty::Ticket,
            Certainty::Measured,
            Certainty::BuiltUp,
            Certainty::Estimated,
            Certainty::Stated,
            Certainty::Invented,
        ]
        .map(|c| w.certainty(c))
        .to_vec();
        let severities = [Severity::Warning, Severity::Error].map(|s| w.severity(s)).to_vec();
        for words in [verdicts, means, statuses, certainties, severities] {
            let distinct: std::collections::BTreeSet<&String> = words.iter().collect();
            assert_eq!(distinct.len(), words.len(), "{words:?}");
        }
    }
    assert_eq!(words(ENGLISH).verdict(Verdict::NoGo), "NO-GO");
    assert_eq!(words(SPANISH).verdict(Verdict::GoWithConditions), "APTO CON CONDICIONES");
}

#[test]
fn reserves_in_words() {
    assert_eq!(plain(&words(ENGLISH).reserve(0.136)), "14 % in reserve");
    assert_eq!(plain(&words(ENGLISH).reserve(-0.08)), "8.0 % beyond the limit");
    assert_eq!(plain(&words(SPANISH).reserve(-0.08)), "8,0 % más allá del límite");
    assert_eq!(words(ENGLISH).reserve(f64::NAN), "not known in reserve");
}

#[test]
fn every_check_of_a_plan_has_its_name() {
    for id in planning::text::ALL.iter().filter(|id| id.id.starts_with("check-")) {
        let check = id.id.trim_start_matches("check-");
        assert!(!words(ENGLISH).check(check).contains('⟨'), "{check}");
    }
    assert_eq!(words(ENGLISH).check("chart"), "Load chart");
    assert_eq!(words(SPANISH).check("chart"), "Tabla de cargas");
}

#[test]
fn faults_name_their_place() {
    let mut fault = Fault {
        code: "quantity::missing-unit".into(),
        severity: Severity::Error,
        place: Place {
            file: "job.toml".into(),
            key: Some("lift[2].stand.heading".into()),
            line: Some(1214),
            column: Some(7),
            span: None,
        },
        message: entry::MISSING_UNIT.with("part", "45").with("wanted", entry::DIMENSION_ANGLE),
        hint: Some(entry::HINT_UNITS.with("units", "deg, rad")),
    };
    assert_eq!(
        words(ENGLISH).fault(&fault),
        RenderedFault {
            title: "“45” has no unit; an angle is wanted".into(),
            place: "job.toml, line 1214, column 7, at lift[2].stand.heading".into(),
            hint: Some("Possible: deg, rad.".into()),
        }
    );
    assert_eq!(words(SPANISH).fault(&fault).title, "«45» no lleva unidad; se necesita un ángulo");
    fault.place = Place::file("job.toml");
    assert_eq!(words(ENGLISH).fault(&fault).place, "job.toml");
    fault.place = Place { line: Some(3), ..Place::file("job.toml") };
    assert_eq!(words(SPANISH).fault(&fault).place, "job.toml, línea 3");
    fault.place = Place { key: Some("wind".into()), ..Place::default() };
    assert_eq!(words(ENGLISH).fault(&fault).place, "wind");
    fault.place = Place::default();
    assert_eq!(words(ENGLISH).fault(&fault).place, "");
}

#[test]
fn every_parse_error_has_its_words() {
    let cases = [
        ("", Dimension::Length),
        ("long", Dimension::Length),
        ("1,23,4 m", Dimension::Length),
        ("inf m", Dimension::Length),
        ("1,200 kg", Dimension::Mass),
        ("5", Dimension::Length),
        ("5 smoots", Dimension::Length),
        ("5 metrs", Dimension::Length),
        ("5 ton", Dimension::Mass),
        ("5 kg", Dimension::Length),
        ("2:1", Dimension::Slope),
        ("90°", Dimension::Slope),
        ("5 in 6 ft", Dimension::Length),
        ("5 m too far", Dimension::Length),
        ("5 apples", Dimension::Number),
    ];
    for (text, dimension) in cases {
        let (message, hint) = entry::explain(&parse(text, dimension).unwrap_err(), text);
        for reader in [ENGLISH, SPANISH] {
            let shown = format!(
                "{} {}",
                words(reader).render(&message),
                hint.as_ref().map_or(String::new(), |h| words(reader).render(h))
            );
            assert!(!shown.contains(['⟨', '{']), "{text:?}: {shown}");
        }
    }
    for error in [
        quantity::parse_non_negative("-5 kg", Dimension::Mass).unwrap_err(),
        quantity::parse_positive("0 kg", Dimension::Mass).unwrap_err(),
    ] {
        assert!(!words(ENGLISH).render(&entry::explain(&error, "x").0).contains('⟨'));
    }
}

#[test]
fn languages_by_code() {
    for language in Language::ALL {
        assert_eq!(language.code().parse(), Ok(language));
        assert_eq!(language.to_string(), language.code());
    }
    assert_eq!("es-MX".parse(), Ok(Language::Spanish));
    assert_eq!(" EN_us ".parse(), Ok(Language::English));
    assert_eq!("fr".parse::<Language>().unwrap_err().code, "fr");
    assert_ne!(Language::English.own_name(), Language::Spanish.own_name());
}

proptest! {
    /// What a form shows in a reader's words reads back, once the English groups, which `parse` may refuse, are out.
    #[test]
    fn shown_quantities_read_back(power in -3.0..6.0_f64, spanish in any::<bool>(), us in any::<bool>()) {
        let si = libm::exp10(power);
        let reader = Wording::new(
            if spanish { Language::Spanish } else { Language::English },
            if us { UnitSystem::Us } else { UnitSystem::Si },
        );
        for dimension in [Dimension::Length, Dimension::Mass, Dimension::Pressure, Dimension::Force, Dimension::Slope] {
            let text = reader.quantity(Quantity::new(si, dimension));
            let text = if spanish { text } else { text.replace(',', "") };
            match parse(&text, dimension) {
                Ok(back) => prop_assert!((back.si - si).abs() <= 0.06 * si.max(100.0), "{text}: {}", back.si),
                Err(quantity::ParseError::AmbiguousSeparator { .. }) => prop_assert!(spanish, "{text}"),
                Err(error) => prop_assert!(false, "{text}: {error:?}"),
            }
        }
    }

    #[test]
    fn groups_of_three_from_the_right(whole in 0_u64..u64::MAX, part in 0_u32..1000) {
        let digits = format!("{whole}.{part:03}");
        for (language, mark) in [(Language::English, '.'), (Language::Spanish, ',')] {
            let shown = number::localise(&digits, language);
            let (left, right) = shown.split_once(mark).unwrap();
            let (left, right) = if language == Language::English { (left, right) } else { shown.rsplit_once(',').unwrap() };
            prop_assert_eq!(right, format!("{:03}", part));
            let bare: String = left.chars().filter(char::is_ascii_digit).collect();
            prop_assert_eq!(bare, whole.to_string());
            let groups: Vec<&str> = left.split([',', '\u{202f}']).collect();
            prop_assert!(groups.len() == 1 || groups[1..].iter().all(|g| g.len() == 3), "{}", left);
        }
    }
}

/// A working's figures can be put back into its formula: q = ½ρv² = 0.0625 kPa times 1.8 times 6.4 m² is 0.72 kN.
#[test]
fn figures_of_a_working_keep_five_digits() {
    use quantity::Dimension as D;
    let w = words(ENGLISH);
    let text = |si: f64, d: D| plain(&w.worked(Quantity::new(si, d)));
    assert_eq!(text(62.5, D::Pressure), "0.0625 kPa");
    assert_eq!(text(720.0, D::Force), "0.72 kN");
    assert_eq!(text(10_839.6, D::Mass), "10,840 kg");
    assert_eq!(text(0.5108, D::Angle), "29.267°");
    assert_eq!(text(-0.004_166_6, D::Number), "−0.0041666");
    assert_eq!(text(3.0, D::Length), "3 m");
    assert_eq!(text(0.0, D::Moment), "0 kN·m");
    assert_eq!(text(0.3048 * 2.5, D::Length), "0.762 m");
    let us = words(AMERICAN);
    assert_eq!(plain(&us.worked(Quantity::new(0.3048 * 2.5, D::Length))), "2.5 ft", "no inches within a working");
    assert_eq!(plain(&w.worked(Quantity::new(f64::NAN, D::Length))), w.text(ui::NOT_KNOWN));
}
