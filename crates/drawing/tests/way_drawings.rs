//! A lift's way: to scale, in the plan's own numbers, readable without colour.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

mod sample;

use drawing::{Style, WayDirection, way};
use planning::LiftPlan;
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
fn points(node: Node<'_, '_>) -> Vec<(f64, f64)> {
    let all = node.attribute("points").unwrap().split(' ');
    all.map(|p| p.split_once(',').map(|(x, y)| (x.parse().unwrap(), y.parse().unwrap())).unwrap()).collect()
}
fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).unwrap().parse().unwrap()
}
/// The line of a stretch: its second polyline, the first being its rim.
fn stretch(doc: &Document<'_>, name: &str) -> (Vec<(f64, f64)>, Option<String>) {
    let lines: Vec<_> = part(doc, name).children().filter(|n| n.tag_name().name() == "polyline").collect();
    (points(lines[1]), lines[1].attribute("stroke-dasharray").map(str::to_owned))
}

#[test]
fn the_way_is_to_scale_and_its_gears_differ_in_line_and_arrow() {
    let lift = sample::bricks();
    let there = lift.way.as_ref().unwrap().way_in.clone().unwrap();
    for width in [360.0, 900.0] {
        let svg = way(&lift, WayDirection::In, &english(), &Style::screen(width));
        let doc = Document::parse(&svg).unwrap();
        let scale = data(&doc, "data-px-per-m");
        let px = |p: [f64; 2]| {
            let x = data(&doc, "data-x0") + (p[0] - data(&doc, "data-east0")) * scale;
            (x, data(&doc, "data-y0") - (p[1] - data(&doc, "data-north0")) * scale)
        };
        let near = |a: (f64, f64), b: (f64, f64)| (a.0 - b.0).abs() < 0.02 && (a.1 - b.1).abs() < 0.02;
        let (forward, dash) = stretch(&doc, "forward");
        assert!(dash.is_none());
        assert!(near(forward[0], px(there.profile[0].at)) && near(forward[36], px(there.profile[36].at)));
        let (reverse, dash) = stretch(&doc, "reverse");
        assert!(dash.is_some(), "another line");
        assert!(near(reverse[0], forward[36]), "it goes on where the other ended");
        assert!(near(*reverse.last().unwrap(), px(there.profile[48].at)));
        // Filled heads forward; open ones with bars in reverse.
        let bars = |name: &str| part(&doc, name).children().filter(|n| n.tag_name().name() == "path").count();
        assert!(bars("forward") == 0 && bars("reverse") > 0);
        // The machine stands where it begins, its body as long as the plan says.
        let body = part(&doc, "machine-1").children().find(|n| n.tag_name().name() == "polygon").unwrap();
        let ring = points(body);
        assert!((libm::hypot(ring[1].0 - ring[0].0, ring[1].1 - ring[0].1) - 4.6 * scale).abs() < 0.05);
        assert!(near(ring[0], px([there.profile[0].at[0] - 4.0, there.profile[0].at[1] - 1.2])), "{ring:?}");
    }
}

#[test]
fn each_change_has_its_number_in_view_profile_and_key() {
    let lift = sample::bricks();
    let svg = way(&lift, WayDirection::In, &english(), &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    assert_eq!(texts(part(&doc, "numbers")), "1 2 3");
    assert_eq!(texts(part(&doc, "flags")), "1 B A 2 3", "in the order of the way");
    let key = texts(part(&doc, "key"));
    for said in ["Begins: East gate (invented)", "After 18.00\u{a0}m: stop, on in reverse", "Ends: Stand"] {
        assert!(key.contains(said), "{said}: {key}");
    }
    assert!(key.contains("24.00\u{a0}m in about 1 min. Changes of gear: 1."), "{key}");
    // Steering that changes alone is a change too.
    let mut steered = lift;
    let there = steered.way.as_mut().unwrap().way_in.as_mut().unwrap();
    there.legs.insert(1, planning::route::RouteLeg { length_m: 8.0, ..there.legs[0] });
    there.legs[0].length_m = 10.0;
    there.legs[1].steering = planning::route::Steering::TwoWheel;
    let svg = way(&steered, WayDirection::In, &english(), &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    assert_eq!(texts(part(&doc, "numbers")), "1 2 3 4");
    assert!(texts(part(&doc, "key")).contains("After 10.00\u{a0}m: stop, steer with the front wheels"));
}

#[test]
fn the_least_is_marked_where_it_is_and_a_length_is_not_compared_with_a_slope() {
    let lift = sample::bricks();
    let wording = english();
    let svg = way(&lift, WayDirection::In, &wording, &Style::paper(900.0));
    let doc = Document::parse(&svg).unwrap();
    let marks = part(&doc, "least");
    assert!(texts(marks).contains("A 0.42\u{a0}m B 3.0\u{a0}%"), "{}", texts(marks));
    let scale = data(&doc, "data-px-per-m");
    let at = lift.way.as_ref().unwrap().way_in.as_ref().unwrap().margins[1].at;
    let dot = marks.children().find(|n| n.tag_name().name() == "circle").unwrap();
    assert!((number(dot, "cx") - data(&doc, "data-x0") - (at[0] - data(&doc, "data-east0")) * scale).abs() < 0.02);
    let key = texts(part(&doc, "key"));
    assert!(key.contains("Least room beyond what must stay: 0.42\u{a0}m, after 16.00\u{a0}m"), "{key}");
    let mut none = lift;
    none.way.as_mut().unwrap().way_in.as_mut().unwrap().margins.clear();
    let svg = way(&none, WayDirection::In, &wording, &Style::paper(900.0));
    assert_eq!(texts(part(&Document::parse(&svg).unwrap(), "least")), "");
}

#[test]
fn the_profile_shows_height_slope_and_speed_over_the_way() {
    let lift = sample::bricks();
    let svg = way(&lift, WayDirection::In, &english(), &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    let line = |name: &str| {
        let lines: Vec<_> = part(&doc, name).children().filter(|n| n.tag_name().name() == "polyline").collect();
        points(*lines.last().unwrap())
    };
    let (ground, along, speed) = (line("ground"), line("along"), line("speed"));
    assert_eq!((ground.len(), along.len(), speed.len()), (49, 49, 49));
    // The same place stands at the same distance in every panel, and distances are true.
    for (a, b) in ground.iter().zip(&along).chain(ground.iter().zip(&speed)) {
        assert!((a.0 - b.0).abs() < 1e-9);
    }
    let step = ground[1].0 - ground[0].0;
    assert!(ground.windows(2).all(|w| (w[1].0 - w[0].0 - step).abs() < 0.02), "{ground:?}");
    // Up the bank and level after it; the slope stands above its zero there; in reverse it is slower.
    assert!(ground[24].1 < ground[12].1 - 20.0 && (ground[48].1 - ground[24].1).abs() < 1e-9);
    assert!(along[18].1 < along[0].1 - 10.0);
    assert!(speed[48].1 > speed[0].1 + 5.0);
    // The bank is marked from where it is steep, and said.
    let steep = part(&doc, "boom-uphill");
    let strokes = steep.children().find(|n| n.tag_name().name() == "path").unwrap().attribute("d").unwrap();
    let xs: Vec<f64> = strokes
        .split(['M', 'L'])
        .filter(|p| !p.is_empty())
        .map(|p| p.split(' ').next().unwrap().parse().unwrap())
        .collect();
    let (low, high) = (xs.iter().copied().fold(f64::INFINITY, f64::min), xs.iter().copied().fold(0.0, f64::max));
    assert!(low >= ground[12].0 - 0.1 && high <= ground[24].0 + 0.1, "{low} {high}");
    assert!(texts(part(&doc, "ground")).contains("load uphill"));
    let mut empty = lift;
    empty.way.as_mut().unwrap().way_in.as_mut().unwrap().load = None;
    let svg = way(&empty, WayDirection::In, &english(), &Style::paper(680.0));
    let doc = Document::parse(&svg).unwrap();
    assert!(texts(part(&doc, "ground")).contains("boom uphill") && texts(part(&doc, "title")).contains("without load"));
}

#[test]
fn where_there_is_no_way_it_says_why_and_shows_how_far_one_leads() {
    let mut lift = sample::bricks();
    for wording in [english(), Wording::new(Language::Spanish, UnitSystem::Us)] {
        let svg = way(&lift, WayDirection::Out, &wording, &Style::screen(360.0));
        let doc = Document::parse(&svg).unwrap();
        let refused = lift.way.as_ref().unwrap().refused.clone().unwrap();
        let key = texts(part(&doc, "key")).replace('\n', " ");
        let start: String = wording.render(&refused.message).chars().take(16).collect();
        assert!(key.contains(&start), "{start}: {key}");
        part(&doc, "blocked");
        assert!(!svg.contains("data-part=\"profile\"") && !svg.contains("data-part=\"way\""));
    }
    lift.way = None;
    let svg = way(&lift, WayDirection::In, &english(), &Style::screen(360.0));
    let said: String = english().text(ui::WAY_NOT_LOOKED).chars().take(24).collect();
    assert!(svg.contains(&said));
}

/// Boxes of texts by the font's widths, on the safe side of what a reader sees.
fn boxes(node: Node<'_, '_>) -> Vec<(f64, f64, f64, f64, String)> {
    let texts = node.descendants().filter(|n| n.tag_name().name() == "text");
    texts
        .map(|n| {
            let text = n.text().unwrap_or("").to_owned();
            let size = number(n, "font-size");
            let w = text.chars().count() as f64 * size * 0.48;
            let (x, y) = (number(n, "x"), number(n, "y"));
            let left = match n.attribute("text-anchor") {
                Some("middle") => x - w / 2.0,
                Some("end") => x - w,
                _ => x,
            };
            (left, y - size * 0.72, left + w, y, text)
        })
        .collect()
}

#[test]
fn texts_of_the_picture_keep_off_each_other() {
    let lift = sample::bricks();
    let check = |lift: &LiftPlan, direction, wording: &Wording, width: f64| {
        let svg = way(lift, direction, wording, &Style::screen(width));
        let doc = Document::parse(&svg).unwrap();
        let all: Vec<_> = boxes(doc.root_element());
        assert!(all.len() > 10);
        for (i, a) in all.iter().enumerate() {
            for b in &all[i + 1..] {
                let apart = a.2 <= b.0 + 1.0 || b.2 <= a.0 + 1.0 || a.3 <= b.1 + 1.0 || b.3 <= a.1 + 1.0;
                assert!(apart, "{width} {direction:?}: {:?} over {:?}", a, b);
            }
        }
    };
    for wording in [english(), Wording::new(Language::Spanish, UnitSystem::Us)] {
        for width in [360.0, 680.0, 960.0] {
            check(&lift, WayDirection::In, &wording, width);
            check(&lift, WayDirection::Out, &wording, width);
        }
    }
}
