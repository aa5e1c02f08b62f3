//! What every drawing keeps: valid XML, finite numbers, true scale, the plan's own numbers in the
//! text, no script and nothing from outside.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

mod sample;

use drawing::{Style, WayDirection, boom_strip, chart, elevation, stand_field, way};
use planning::LiftPlan;
use quantity::UnitSystem;
use roxmltree::{Document, Node};
use std::sync::LazyLock;
use wording::{Language, Wording};

fn wordings() -> [Wording; 3] {
    [
        Wording::new(Language::English, UnitSystem::Si),
        Wording::new(Language::English, UnitSystem::Us),
        Wording::new(Language::Spanish, UnitSystem::Us),
    ]
}

fn styles() -> [Style; 4] {
    [Style::screen(360.0), Style::screen(900.0), Style::paper(680.0), Style::paper(f64::NAN)]
}

/// The lifts of the sample, and scenes with things missing, odd or broken.
fn lifts() -> Vec<(&'static str, LiftPlan)> {
    let mut out = vec![("bricks", sample::bricks()), ("hung", sample::hung())];
    let mut bare = sample::bricks();
    let scene = bare.elevation.as_mut().unwrap();
    scene.ground.clear();
    scene.lines.clear();
    scene.machine.clear();
    scene.wheels.clear();
    scene.boom.clear();
    out.push(("bare", bare));
    let mut broken = sample::bricks();
    let scene = broken.elevation.as_mut().unwrap();
    scene.load[0].0 = f64::NAN;
    scene.ground[3].1 = Some(f64::INFINITY);
    scene.lines[0].required_m = Some(f64::NAN);
    scene.boom[1].2 = f64::NEG_INFINITY;
    scene.landing.2 = f64::NAN;
    let chart = broken.chart.as_mut().unwrap();
    chart.zones[1].outline[2].1 = f64::NAN;
    chart.at.0 = f64::NAN;
    chart.zone = Some(99);
    broken.stand.east_m = f64::NAN;
    let view = broken.plan_view.as_mut().unwrap();
    view.landing[1].0 = f64::NAN;
    view.approach = Some((f64::NAN, 1.0));
    broken.field.as_mut().unwrap().runs.push((99, 7));
    let movement = broken.movement.as_mut().unwrap();
    movement.steps[1].tool.0 = f64::NAN;
    movement.steps[2].boom[1].1 = f64::INFINITY;
    movement.smallest.as_mut().unwrap().tool.1 = f64::NAN;
    let way = broken.way.as_mut().unwrap();
    way.begins[0][1] = f64::NAN;
    way.around[0].outlines[0][2][0] = f64::INFINITY;
    way.around[1].set_back_m = Some(f64::NAN);
    way.around[2].outlines[0].truncate(1);
    way.refused.as_mut().unwrap().at = Some([f64::NAN, 1.0]);
    let there = way.way_in.as_mut().unwrap();
    there.profile[3].at[0] = f64::NAN;
    there.profile[5].height_m = f64::NEG_INFINITY;
    there.profile[7].slope_along.high = f64::NAN;
    there.profile[9].along_m = -1e300;
    there.profile[11].speed_m_s = f64::INFINITY;
    there.margins[1].left.si = f64::NAN;
    there.legs[0].length_m = f64::NAN;
    there.outline[0][1][1] = f64::NAN;
    there.swept[0][0][0] = f64::INFINITY;
    there.time_s = f64::NAN;
    out.push(("broken", broken));
    let mut nothing = sample::bricks();
    nothing.elevation = None;
    nothing.chart = None;
    nothing.field = None;
    nothing.movement = None;
    nothing.way = None;
    out.push(("nothing", nothing));
    let mut no_zones = sample::bricks();
    let chart = no_zones.chart.as_mut().unwrap();
    chart.zones.clear();
    chart.not_permitted.clear();
    chart.zone = None;
    out.push(("no zones", no_zones));
    let mut hostile = sample::bricks();
    hostile.name = "<script>alert(1)</script> & \"quotes\" ' \u{1} שלום مرحبا 🧱 ".repeat(4);
    hostile.landing = "]]>&amp;<g onload='x'>".into();
    hostile.load.name = "x".repeat(300);
    let way = hostile.way.as_mut().unwrap();
    way.from = "&<g>\u{7}".repeat(40);
    way.around[0].name = "\"/><image href='http://example.invalid/y'/>".into();
    hostile.elevation.as_mut().unwrap().lines[0].name = "\"/><image href='http://example.invalid/x'/>".into();
    hostile.chart.as_mut().unwrap().zones[0].name = "<&>".into();
    out.push(("hostile", hostile));
    out
}

/// A drawing with what it is of.
struct Drawn {
    label: String,
    screen: bool,
    svg: String,
}

/// Every lift in every language, unit system and style; drawn once for all tests.
fn each(check: impl Fn(&str, &Drawn)) {
    static DRAWN: LazyLock<Vec<Drawn>> = LazyLock::new(|| {
        let mut drawn = Vec::new();
        for (name, lift) in lifts() {
            for wording in wordings() {
                for style in styles() {
                    for (kind, svg) in [
                        ("elevation", elevation(&lift, &wording, &style)),
                        ("chart", chart(&lift, &wording, &style)),
                        ("stand field", stand_field(&lift, &wording, &style)),
                        ("boom strip", boom_strip(&lift, &wording, &style)),
                        ("way in", way(&lift, WayDirection::In, &wording, &style)),
                        ("way out", way(&lift, WayDirection::Out, &wording, &style)),
                    ] {
                        let label = format!("{kind} of {name}, {wording:?}, {style:?}");
                        drawn.push(Drawn { label, screen: style.theme == drawing::Theme::Screen, svg });
                    }
                }
            }
        }
        drawn
    });
    assert_eq!(DRAWN.len(), 7 * 3 * 4 * 6, "a case went missing");
    for drawn in DRAWN.iter() {
        check(&drawn.label, drawn);
    }
}

#[test]
fn every_drawing_is_valid_and_finite_and_inside_its_box() {
    each(|label, drawn| {
        let svg = &drawn.svg;
        let doc = Document::parse(svg).unwrap_or_else(|e| panic!("{label}: {e}"));
        let root = doc.root_element();
        assert_eq!(root.attribute("role"), Some("img"), "{label}");
        let part = |tag| root.children().find(|n: &Node<'_, '_>| n.has_tag_name(("http://www.w3.org/2000/svg", tag)));
        assert!(part("title").is_some_and(|t| !t.text().unwrap_or("").is_empty()), "{label}");
        assert!(part("desc").is_some_and(|t| !t.text().unwrap_or("").is_empty()), "{label}");
        let view: Vec<f64> = root.attribute("viewBox").unwrap().split(' ').map(|v| v.parse().unwrap()).collect();
        for node in doc.descendants().filter(Node::is_element) {
            for a in node.attributes() {
                let numbers: Vec<f64> = match a.name() {
                    "x" | "y" | "x1" | "y1" | "x2" | "y2" | "cx" | "cy" | "r" | "width" | "height" | "font-size"
                    | "stroke-width" => {
                        vec![a.value().parse().unwrap_or_else(|_| panic!("{label}: {a:?}"))]
                    }
                    "points" => a.value().split([' ', ',']).map(|v| v.parse().unwrap()).collect(),
                    _ => continue,
                };
                assert!(numbers.iter().all(|v| v.is_finite()), "{label}: {a:?}");
            }
            if node.has_tag_name(("http://www.w3.org/2000/svg", "text")) {
                let at = |n| node.attribute(n).unwrap().parse::<f64>().unwrap();
                assert!(at("x") >= 0.0 && at("x") <= view[2], "{label}: {:?} at {}", node.text(), at("x"));
                assert!(at("y") >= 0.0 && at("y") <= view[3], "{label}: {:?} at {}", node.text(), at("y"));
                assert!(at("font-size") >= 12.0, "{label}: small text {:?}", node.text());
            }
        }
    });
}

#[test]
fn nothing_runs_and_nothing_comes_from_outside() {
    each(|label, drawn| {
        let svg = &drawn.svg;
        let doc = Document::parse(svg).unwrap();
        for node in doc.descendants().filter(Node::is_element) {
            let tag = node.tag_name().name();
            assert!(
                ["svg", "title", "desc", "g", "rect", "line", "path", "polyline", "polygon", "circle", "text"]
                    .contains(&tag),
                "{label}: <{tag}>"
            );
            for a in node.attributes() {
                assert!(!a.name().starts_with("on") && a.name() != "href" && a.name() != "style", "{label}: {a:?}");
                assert!(!a.value().contains("url("), "{label}: {a:?}");
            }
        }
    });
}

#[test]
fn paper_has_fixed_colours() {
    each(|label, drawn| assert_eq!(drawn.svg.contains("var(--drawing-ink,"), drawn.screen, "{label}"));
}

#[test]
fn every_text_is_worded() {
    each(|label, drawn| assert!(!drawn.svg.contains("⟨ui-"), "{label}: a text id has no words"));
}

/// Attribute of the root as a number.
fn data(doc: &Document<'_>, name: &str) -> f64 {
    doc.root_element().attribute(name).unwrap().parse().unwrap()
}
/// The group of that name.
fn part<'a>(doc: &'a Document<'_>, name: &str) -> Node<'a, 'a> {
    doc.descendants().find(|n| n.attribute("data-part") == Some(name)).unwrap_or_else(|| panic!("no part {name}"))
}
fn texts(node: Node<'_, '_>) -> String {
    node.descendants().filter(Node::is_text).map(|n| n.text().unwrap_or("")).collect::<Vec<_>>().join(" ")
}

#[test]
fn the_elevation_is_to_scale() {
    let lift = sample::bricks();
    let scene = lift.elevation.clone().unwrap();
    for style in styles() {
        let svg = elevation(&lift, &wordings()[0], &style);
        let doc = Document::parse(&svg).unwrap();
        let scale = data(&doc, "data-px-per-m");
        // Two hubs of the machine: what the picture shows between them is what the scene has.
        let hubs: Vec<(f64, f64, f64)> = part(&doc, "machine")
            .children()
            .filter(|n| n.has_tag_name(("http://www.w3.org/2000/svg", "circle")))
            .map(|n| ["cx", "cy", "r"].map(|a| n.attribute(a).unwrap().parse::<f64>().unwrap()).into())
            .filter(|c: &(f64, f64, f64)| c.2 > 0.55 * scale)
            .collect();
        assert_eq!(hubs.len(), 2);
        let px = libm::hypot(hubs[1].0 - hubs[0].0, hubs[1].1 - hubs[0].1);
        let m = libm::hypot(scene.wheels[1].0 - scene.wheels[0].0, scene.wheels[1].1 - scene.wheels[0].1);
        // Coordinates have two digits.
        assert!((px - m * scale).abs() < 0.03, "{px} px for {m} m at {scale} px/m");
        assert!((hubs[0].2 - scene.wheels[0].2 * scale).abs() < 0.01);
        // The centre of gravity lies where the origin and the scale say.
        let centre = part(&doc, "load-centre").first_element_child().unwrap();
        let cx: f64 = centre.attribute("cx").unwrap().parse().unwrap();
        let cy: f64 = centre.attribute("cy").unwrap().parse().unwrap();
        assert!((cx - (data(&doc, "data-x0") + scene.load_centre.0 * scale)).abs() < 0.01);
        assert!((cy - (data(&doc, "data-y0") - scene.load_centre.1 * scale)).abs() < 0.01);
    }
}

#[test]
fn dimensions_say_the_plans_numbers() {
    let lift = sample::bricks();
    for wording in wordings() {
        let svg = elevation(&lift, &wording, &Style::paper(700.0));
        let doc = Document::parse(&svg).unwrap();
        let m = |v: f64| wording.quantity(quantity::metres(v));
        assert!(texts(part(&doc, "reach")).contains(&m(lift.stand.reach_m.unwrap())));
        assert!(texts(part(&doc, "height")).contains(&m(lift.stand.height_m.unwrap())));
        assert!(texts(part(&doc, "extension")).contains(&m(lift.stand.extension_m.unwrap())));
        let angle = wording.quantity(quantity::radians(lift.stand.boom_angle_rad.unwrap()));
        assert!(texts(part(&doc, "boom-angle")).contains(&angle));
        // The dimension line is as long as the reach that it names.
        let scale = data(&doc, "data-px-per-m");
        let line = part(&doc, "reach").children().find(|n| n.tag_name().name() == "line").unwrap();
        let x = |n| line.attribute(n).unwrap().parse::<f64>().unwrap();
        assert!((x("x2") - x("x1") - lift.stand.reach_m.unwrap() * scale).abs() < 0.03);
    }
}

#[test]
fn a_line_without_voltage_says_so_beside_it() {
    let wording = wordings()[0];
    let svg = elevation(&sample::hung(), &wording, &Style::screen(900.0));
    let doc = Document::parse(&svg).unwrap();
    let labels = texts(part(&doc, "labels"));
    assert!(labels.contains(&wording.text(wording::ui::VOLTAGE_NOT_KNOWN)), "{labels}");
    let key = texts(part(&doc, "key"));
    assert!(key.contains(&wording.text(wording::ui::OUTSIDE_PICTURE)), "a far line stays in the key: {key}");
    assert!(key.contains(&wording.text(wording::ui::GROUND_NOT_KNOWN)), "{key}");
}

#[test]
fn the_chart_reads_the_plans_point_and_classes() {
    let lift = sample::bricks();
    let scene = lift.chart.clone().unwrap();
    let wording = wordings()[0];
    let svg = chart(&lift, &wording, &Style::paper(800.0));
    let doc = Document::parse(&svg).unwrap();
    let scale = data(&doc, "data-px-per-m");
    let dot = part(&doc, "here").children().find(|n| n.tag_name().name() == "circle").unwrap();
    let at = |n| dot.attribute(n).unwrap().parse::<f64>().unwrap();
    assert!((at("cx") - data(&doc, "data-x0") - scene.at.0 * scale).abs() < 0.01);
    assert!((data(&doc, "data-y0") - at("cy") - scene.at.1 * scale).abs() < 0.01);
    assert!(texts(part(&doc, "here")).contains("2,035\u{a0}kg of 2,208\u{a0}kg"));
    // A, B and C carry it (plain), D and E do not (hatched).
    let hatched: Vec<bool> = doc
        .descendants()
        .filter(|n| n.attribute("data-part") == Some("zone"))
        .map(|n| n.children().any(|c| c.tag_name().name() == "path"))
        .collect();
    assert_eq!(hatched, [false, false, false, true, true]);
    let names = texts(part(&doc, "zone-names"));
    for zone in &scene.zones {
        assert!(names.contains(&wording.quantity(quantity::kilograms(zone.capacity_kg))), "{names}");
    }
}

#[test]
fn a_load_centre_beyond_the_rated_one_caps_every_zone() {
    let mut lift = sample::bricks();
    let scene = lift.chart.as_mut().unwrap();
    // The plan says what counts: A, B and C 2,000 kg, D and E their own.
    scene.cap_kg = Some(2000.0);
    for zone in &mut scene.zones {
        zone.counted_kg = zone.capacity_kg.min(2000.0);
        zone.reserve = 1.0 - scene.load_kg / zone.counted_kg;
    }
    assert_eq!(drawing::chart_capacity_kg(scene), Some(2000.0));
    let svg = chart(&lift, &wordings()[0], &Style::paper(800.0));
    let doc = Document::parse(&svg).unwrap();
    let key = texts(part(&doc, "key"));
    assert!(key.contains("No zone counts for more than 2,000\u{a0}kg"), "{key}");
    let names = texts(part(&doc, "zone-names"));
    assert!(names.contains("1,800\u{a0}kg") && !names.contains("4,000\u{a0}kg"), "{names}");
}

#[test]
fn a_line_far_to_the_side_is_in_the_key_only() {
    let mut lift = sample::bricks();
    lift.elevation.as_mut().unwrap().lines[0].aside_m = -24.5;
    let svg = elevation(&lift, &wordings()[0], &Style::screen(900.0));
    let doc = Document::parse(&svg).unwrap();
    assert_eq!(part(&doc, "lines").children().count(), 0);
    assert_eq!(part(&doc, "required-distance").children().count(), 0);
    let key = texts(part(&doc, "key"));
    assert!(key.contains("24.50\u{a0}m to the side") && key.contains("outside this picture"), "{key}");
}

#[test]
fn the_distance_to_a_line_is_dimensioned_to_scale() {
    let lift = sample::bricks();
    let wording = wordings()[0];
    for style in styles() {
        let svg = elevation(&lift, &wording, &style);
        let doc = Document::parse(&svg).unwrap();
        let nearest = part(&doc, "nearest");
        assert!(texts(nearest).contains("to line 1: 4.60\u{a0}m"), "{}", texts(nearest));
        let line = nearest.children().find(|n| n.tag_name().name() == "line").unwrap();
        let at = |n| line.attribute(n).unwrap().parse::<f64>().unwrap();
        let px = libm::hypot(at("x2") - at("x1"), at("y2") - at("y1"));
        assert!((px - 4.6 * data(&doc, "data-px-per-m")).abs() < 0.03, "{px} px");
    }
    // A line well to the side of the picture gets none: it would look longer or shorter than it is.
    let mut aside = sample::bricks();
    aside.elevation.as_mut().unwrap().lines[0].aside_m = 2.0;
    let svg = elevation(&aside, &wording, &Style::screen(900.0));
    assert_eq!(part(&Document::parse(&svg).unwrap(), "nearest").children().count(), 0);
}

#[test]
fn a_machine_that_leans_is_shown_from_behind() {
    let wording = wordings()[0];
    let rear = |across: f64| {
        let mut lift = sample::bricks();
        lift.stand.slope_across = Some(evidence::Ranged::plus_minus(across, 0.01));
        elevation(&lift, &wording, &Style::screen(900.0))
    };
    let level = rear(0.009);
    assert!(!level.contains("rear-view"));
    let (left, right) = (rear(0.1), rear(-0.1));
    let said = |svg: &str| texts(part(&Document::parse(svg).unwrap(), "rear-view"));
    // atan 0.1 and atan 0.11.
    assert!(said(&left).contains("leans 5.7° to the left") && said(&left).contains("6.3°"), "{}", said(&left));
    assert!(said(&right).contains("leans 5.7° to the"), "{}", said(&right));
    // The ground line falls to the side named.
    let fall = |svg: &str| {
        let doc = Document::parse(svg).unwrap();
        let line = part(&doc, "rear-view").children().find(|n| n.tag_name().name() == "line").unwrap();
        let at = |n| line.attribute(n).unwrap().parse::<f64>().unwrap();
        (at("y2") - at("y1")) / (at("x2") - at("x1"))
    };
    assert!((fall(&left) + 0.1).abs() < 1e-3 && (fall(&right) - 0.1).abs() < 1e-3, "{} {}", fall(&left), fall(&right));
}

#[test]
fn no_text_lies_over_the_load() {
    let lift = sample::bricks();
    for width in [320.0, 360.0, 480.0, 960.0] {
        let svg = elevation(&lift, &wordings()[0], &Style::screen(width));
        let doc = Document::parse(&svg).unwrap();
        let outline = part(&doc, "load").children().find(|n| n.tag_name().name() == "polygon").unwrap();
        let numbers: Vec<f64> =
            outline.attribute("points").unwrap().split([' ', ',']).map(|v| v.parse().unwrap()).collect();
        let (xs, ys): (Vec<f64>, Vec<f64>) = numbers.chunks(2).map(|p| (p[0], p[1])).unzip();
        let low = |v: &[f64]| v.iter().copied().fold(f64::INFINITY, f64::min);
        let high = |v: &[f64]| v.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        for text in part(&doc, "labels").children().filter(|n| n.tag_name().name() == "text") {
            let at = |n| text.attribute(n).unwrap().parse::<f64>().unwrap();
            // Labels are centred; the middle of a text is the last place to lie in the load.
            let inside = at("x") > low(&xs) && at("x") < high(&xs) && at("y") > low(&ys) + 3.0 && at("y") < high(&ys);
            assert!(!inside, "{width} px: {:?} over the load", text.text());
        }
    }
}

#[test]
fn outside_the_chart_reads_not_permitted() {
    let wording = wordings()[0];
    let svg = chart(&sample::hung(), &wording, &Style::paper(800.0));
    let doc = Document::parse(&svg).unwrap();
    assert!(texts(part(&doc, "here")).contains(&wording.text(wording::ui::NOT_PERMITTED)));
}

#[test]
fn a_drawing_is_the_same_twice() {
    for (_, lift) in lifts() {
        let style = Style::paper(700.0);
        assert_eq!(elevation(&lift, &wordings()[0], &style), elevation(&lift, &wordings()[0], &style));
        assert_eq!(chart(&lift, &wordings()[0], &style), chart(&lift, &wordings()[0], &style));
    }
}
