//! Where to stand and the boom's way: to scale, in the plan's own numbers, readable without colour.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

mod sample;

use drawing::{Style, boom_strip, stand_field};
use evidence::Verdict;
use quantity::UnitSystem;
use roxmltree::{Document, Node};
use wording::{Language, Wording, ui};

fn english() -> Wording {
    Wording::new(Language::English, UnitSystem::Si)
}
fn data(doc: &Document<'_>, name: &str) -> f64 {
    doc.root_element().attribute(name).unwrap().parse().unwrap()
}
fn part<'a>(doc: &'a Document<'_>, name: &str) -> Node<'a, 'a> {
    doc.descendants().find(|n| n.attribute("data-part") == Some(name)).unwrap_or_else(|| panic!("no part {name}"))
}
fn texts(node: Node<'_, '_>) -> String {
    node.descendants().filter(Node::is_text).map(|n| n.text().unwrap_or("")).collect::<Vec<_>>().join(" ")
}
fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).unwrap().parse().unwrap()
}

#[test]
fn the_stand_field_is_to_scale() {
    let lift = sample::bricks();
    for width in [360.0, 900.0] {
        let svg = stand_field(&lift, &english(), &Style::screen(width));
        let doc = Document::parse(&svg).unwrap();
        let scale = data(&doc, "data-px-per-m");
        let x = |east: f64| data(&doc, "data-x0") + (east - data(&doc, "data-east0")) * scale;
        let y = |north: f64| data(&doc, "data-y0") - (north - data(&doc, "data-north0")) * scale;
        // The disc lies at the stand, as large as the plan says.
        let disc = part(&doc, "tolerance").children().rfind(|n| n.tag_name().name() == "circle").unwrap();
        assert!((number(disc, "cx") - x(lift.stand.east_m)).abs() < 0.02);
        assert!((number(disc, "cy") - y(lift.stand.north_m)).abs() < 0.02);
        assert!((number(disc, "r") - 0.35 * scale).abs() < 0.01);
        // The landing lies where it is on site.
        let landing = part(&doc, "landing").children().find(|n| n.tag_name().name() == "polygon").unwrap();
        let first = landing.attribute("points").unwrap().split(' ').next().unwrap();
        let corner: Vec<f64> = first.split(',').map(|v| v.parse().unwrap()).collect();
        let at = lift.plan_view.as_ref().unwrap().landing[0];
        assert!((corner[0] - x(at.0)).abs() < 0.02 && (corner[1] - y(at.1)).abs() < 0.02);
        // From the tyres to the landing as long as it says.
        let face = part(&doc, "face-to-landing");
        assert!(texts(face).contains("3.26\u{a0}m"), "{}", texts(face));
        let line = face.children().find(|n| n.tag_name().name() == "line").unwrap();
        let long = libm::hypot(number(line, "x2") - number(line, "x1"), number(line, "y2") - number(line, "y1"));
        assert!((long - 3.26 * scale).abs() < 0.05, "{long}");
    }
}

#[test]
fn the_machine_heads_where_the_plan_says() {
    // North, east, south, west: from the arrow's tail to its end.
    for (heading, way) in [(0.0, (0.0, -1.0)), (90.0, (1.0, 0.0)), (180.0, (0.0, 1.0)), (270.0, (-1.0, 0.0))] {
        let mut lift = sample::bricks();
        lift.stand.heading_deg = heading;
        let svg = stand_field(&lift, &english(), &Style::paper(680.0));
        let doc = Document::parse(&svg).unwrap();
        let line = part(&doc, "heading").children().find(|n| n.tag_name().name() == "line").unwrap();
        let d = (number(line, "x2") - number(line, "x1"), number(line, "y2") - number(line, "y1"));
        let long = libm::hypot(d.0, d.1);
        assert!((d.0 / long - way.0).abs() < 1e-3 && (d.1 / long - way.1).abs() < 1e-3, "{heading}: {d:?}");
    }
}

#[test]
fn every_kind_of_ground_has_its_row_and_its_own_hatching() {
    let lift = sample::bricks();
    let wording = english();
    let svg = stand_field(&lift, &wording, &Style::paper(900.0));
    let doc = Document::parse(&svg).unwrap();
    let key = texts(part(&doc, "key"));
    for kind in lift.field.as_ref().unwrap().kinds.iter().filter(|k| k.state != planning::FieldState::Outside) {
        let state = wording.text(kind.state.name());
        assert!(key.contains(&state), "{state} is missing in {key}");
        if let Some(reason) = kind.by {
            assert!(key.contains(&wording.text(reason.name())), "{reason:?} is missing in {key}");
        }
        let area = wording.quantity(quantity::Quantity::new(kind.area_m2, quantity::Dimension::Area));
        assert!(key.contains(&area), "{area} is missing in {key}");
    }
    // Without colour: go is plain with a strong edge, conditions dotted, a line cross-hatched.
    let dashes = part(&doc, "areas").children().filter_map(|n| n.attribute("stroke-dasharray")).collect::<Vec<_>>();
    assert!(dashes.contains(&"1.6 8"), "{dashes:?}");
    let strong = part(&doc, "areas").children().filter(|n| n.attribute("stroke-width") == Some("2.2")).count();
    assert_eq!(strong, 2, "go and conditions have a strong edge, nothing else");
}

#[test]
fn a_refused_stand_is_told_from_one_that_does() {
    let mut lift = sample::bricks();
    lift.verdict = Verdict::NoGo;
    lift.stand_tolerance = None;
    let wording = english();
    let svg = stand_field(&lift, &wording, &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    assert!(texts(part(&doc, "stand-name")).contains(&wording.verdict(Verdict::NoGo)));
    assert!(texts(part(&doc, "key")).contains("Not here"));
    let body = part(&doc, "machine").children().find(|n| n.attribute("stroke-width") == Some("2.6")).unwrap();
    assert!(body.attribute("stroke-dasharray").is_some());
    assert!(!svg.contains("data-part=\"tolerance\""));
}

#[test]
fn other_stands_carry_their_number_in_picture_and_key() {
    let lift = sample::bricks();
    let svg = stand_field(&lift, &english(), &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    assert_eq!(texts(part(&doc, "other-stands")), "1");
    assert!(texts(part(&doc, "key")).contains("heading 58.0°"), "{}", texts(part(&doc, "key")));
}

#[test]
fn ground_not_looked_at_and_no_movement_are_said() {
    let mut lift = sample::bricks();
    lift.field = None;
    lift.movement = None;
    let wording = english();
    assert!(stand_field(&lift, &wording, &Style::paper(680.0)).contains(&wording.text(ui::FIELD_NOT_LOOKED)));
    assert!(boom_strip(&lift, &wording, &Style::paper(680.0)).contains(&wording.text(ui::STRIP_NONE)));
}

#[test]
fn the_strip_has_a_picture_for_every_step_in_order() {
    let lift = sample::bricks();
    let movement = lift.movement.as_ref().unwrap();
    for wording in [english(), Wording::new(Language::Spanish, UnitSystem::Us)] {
        for width in [360.0, 680.0, 960.0] {
            let svg = boom_strip(&lift, &wording, &Style::screen(width));
            let doc = Document::parse(&svg).unwrap();
            let steps: Vec<String> =
                doc.descendants().filter(|n| n.attribute("data-part") == Some("step")).map(texts).collect();
            assert_eq!(steps.len(), movement.steps.len());
            for (i, (said, step)) in steps.iter().zip(&movement.steps).enumerate() {
                assert!(said.starts_with(&(i + 1).to_string()), "{said}");
                assert!(said.contains(&wording.quantity(quantity::radians(step.angle_rad))), "{said}");
                assert!(said.contains(&wording.quantity(quantity::metres(step.extension_m))), "{said}");
                // The instruction is whole, however narrow the picture.
                let whole = wording.render(&step.what).split_whitespace().collect::<Vec<_>>().join(" ");
                let got = said.split_whitespace().collect::<Vec<_>>().join(" ");
                assert!(got.ends_with(&whole), "{width}: {got} lacks {whole}");
            }
        }
    }
}

#[test]
fn the_least_reserve_is_marked_where_it_is() {
    let lift = sample::bricks();
    let wording = english();
    let svg = boom_strip(&lift, &wording, &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    let step = part(&doc, "least").parent().unwrap();
    assert!(texts(step).starts_with('3'), "{}", texts(step));
    assert!(svg.contains(&wording.reserve(0.06)));
    let mut none = lift;
    none.movement.as_mut().unwrap().smallest = None;
    assert!(!boom_strip(&none, &wording, &Style::paper(680.0)).contains("data-part=\"least\""));
}
