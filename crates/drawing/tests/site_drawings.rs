//! Sites from above and cuts through them: valid XML, finite numbers, what is not known said, names
//! that do not cover one another, and a bounded size.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::disallowed_methods, reason = "tests")]

mod made_site;

use drawing::{SiteStand, Style, site_cut, site_plan};
use geometry::DVec2;
use made_site::{bare, broken, busy, crowded, far_off, lines_only, long_names, one_point, only_holes, yard};
use planning::{LineOf, SetBackLine};
use quantity::UnitSystem;
use roxmltree::Document;
use site::{Cut, Site, profile};
use wording::{Language, Wording};

fn wordings() -> [Wording; 3] {
    [
        Wording::new(Language::English, UnitSystem::Si),
        Wording::new(Language::English, UnitSystem::Us),
        Wording::new(Language::Spanish, UnitSystem::Si),
    ]
}

fn sites() -> Vec<(&'static str, Site)> {
    vec![
        ("busy", busy(60.0)),
        ("five metres", busy(5.0)),
        ("five kilometres", busy(5000.0)),
        ("bare", bare()),
        ("ground only", yard(40.0)),
        ("one point", one_point()),
        ("only holes", only_holes()),
        ("crowded", crowded(500)),
        ("long names", long_names()),
        ("broken", broken()),
        ("lines only", lines_only()),
        ("far off", far_off()),
    ]
}

fn stands(site: &Site) -> Vec<SiteStand> {
    let place = site.landings.first().map_or(DVec2::new(3.0, 3.0), |l| l.at + DVec2::new(1.0, -2.0));
    let line = |excavation, distance, of| SetBackLine { excavation, distance, of };
    let wheels = vec![line(0, 6.4, LineOf::Wheels), line(1, 8.0, LineOf::Face)];
    let broken = vec![line(0, f64::NAN, LineOf::Wheels), line(99, 2.0, LineOf::Wheels)];
    vec![
        SiteStand { name: "Stand 1".into(), at: place, heading: Some(1.2), set_backs: wheels },
        SiteStand { name: "Stand 2".into(), at: place + DVec2::new(2.0, 2.0), heading: None, set_backs: vec![] },
        SiteStand { name: "Broken".into(), at: DVec2::NAN, heading: Some(f64::NAN), set_backs: broken },
    ]
}

fn check(svg: &str, what: &str) -> String {
    let document = Document::parse(svg).unwrap_or_else(|e| panic!("{what}: {e}"));
    let root = document.root_element();
    for name in ["title", "desc"] {
        let node = root.children().find(|n| n.has_tag_name(name)).unwrap_or_else(|| panic!("{what}: no {name}"));
        assert!(node.text().is_some_and(|t| !t.trim().is_empty()), "{what}: empty {name}");
    }
    assert!(!svg.contains("NaN") && !svg.contains("inf"), "{what}: a number that is none");
    assert!(!svg.contains('⟨'), "{what}: a text without words");
    assert!(!svg.contains("<script") && !svg.contains("href"), "{what}");
    assert!(svg.len() < 1_000_000, "{what}: {} bytes", svg.len());
    let text: Vec<&str> = root.descendants().filter(|n| n.has_tag_name("text")).filter_map(|n| n.text()).collect();
    text.join("\n")
}

#[test]
fn every_site_is_drawn_whole_in_every_size_and_language() {
    for (name, site) in sites() {
        for wording in wordings() {
            for style in [Style::screen(360.0), Style::screen(1200.0), Style::paper(680.0), Style::paper(f64::NAN)] {
                let what = format!("{name} {:?} {:?}", wording.language(), style.width_px);
                check(&site_plan(&site, &stands(&site), &wording, &style), &what);
                check(&site_plan(&site, &[], &wording, &style), &what);
                let (a, b) = (DVec2::new(-5.0, 2.0), DVec2::new(80.0, 30.0));
                for course in [vec![a, b], vec![a], vec![a, a], vec![]] {
                    let cut = profile(&site.ground, &site.surroundings.things, &course, 0.5);
                    check(&site_cut(&cut, &site.surroundings.things, &wording, &style), &what);
                }
            }
        }
    }
}

#[test]
fn what_is_not_known_is_said() {
    let [english, ..] = wordings();
    let text = check(&site_plan(&busy(60.0), &[], &english, &Style::screen(1200.0)), "busy").replace('\u{a0}', " ");
    for expected in [
        "height not known",
        "voltage not known",
        "depth not known",
        "cover not known",
        "ground not known",
        "what it carries not known",
        "top at 108.00 m",
        "up to 2.60 m deep",
        "at least 0.80 m of cover",
        "North",
        "Invented terrain, 2026-05-04, heights within 0.050 m",
        "Gate North gate: 4.00 m wide, open above",
        "EPSG 2154",
    ] {
        let flat = text.replace('\n', " ");
        assert!(flat.contains(expected), "{expected} is missing in\n{text}");
    }
    let nothing = check(&site_plan(&bare(), &[], &english, &Style::screen(360.0)), "bare");
    assert!(nothing.contains("Nothing on this site"), "{nothing}");
    let holes = check(&site_plan(&only_holes(), &[], &english, &Style::screen(360.0)), "holes");
    assert!(holes.contains("ground not known") && !holes.contains("Line of equal height"), "{holes}");
}

#[test]
fn the_key_names_only_what_occurs() {
    let [english, ..] = wordings();
    let text = check(&site_plan(&yard(40.0), &[], &english, &Style::screen(900.0)), "yard");
    for absent in ["Building", "Excavation", "In the ground", "Overhead line", "Stand of", "Landing"] {
        assert!(!text.contains(absent), "{absent}");
    }
    assert!(text.contains("Line of equal height"), "{text}");
}

#[test]
fn names_left_out_are_counted_and_lines_never_left_out() {
    let [english, ..] = wordings();
    let site = crowded(500);
    for width in [360.0, 1200.0] {
        let text = check(&site_plan(&site, &[], &english, &Style::screen(width)), "crowded").replace('\n', " ");
        let count: usize = text.split("lack of room: ").nth(1).unwrap().split('.').next().unwrap().parse().unwrap();
        let shown = (0..500).filter(|i| text.contains(&format!("Stack {i:03}"))).count();
        assert_eq!(shown + count, 500);
        assert!(text.contains("Feeder") && text.contains("voltage not known"));
    }
}

#[test]
fn names_do_not_cover_one_another() {
    let [english, ..] = wordings();
    for (name, site) in sites() {
        for width in [360.0, 1200.0] {
            let svg = site_plan(&site, &stands(&site), &english, &Style::screen(width));
            let document = Document::parse(&svg).unwrap();
            let labels = document.descendants().find(|n| n.attribute("data-part") == Some("labels"));
            let Some(labels) = labels else { continue };
            // Lines of text at 11.5 px: a line of a block lies 15 px below the one before.
            let boxes: Vec<(f64, f64, f64, &str)> = labels
                .descendants()
                .filter(|n| n.has_tag_name("text"))
                .map(|n| {
                    let number = |a: &str| n.attribute(a).unwrap().parse::<f64>().unwrap();
                    let text = n.text().unwrap();
                    // A narrow estimate: half an em a letter.
                    (number("x"), number("y"), text.chars().count() as f64 * 11.5 * 0.42, text)
                })
                .collect();
            for (i, a) in boxes.iter().enumerate() {
                for b in &boxes[..i] {
                    let apart = (a.0 - b.0).abs() >= f64::midpoint(a.2, b.2) || (a.1 - b.1).abs() >= 10.0;
                    assert!(apart, "{name} at {width}: {} lies on {}", a.3, b.3);
                }
            }
        }
    }
}

/// Every place of a line lies at its distance from the outline, outside it, in metres by the root's scale.
#[test]
fn set_back_lines_keep_their_distance_and_are_told() {
    let [english, _, spanish] = wordings();
    let site = busy(60.0);
    let svg = site_plan(&site, &stands(&site), &english, &Style::screen(1200.0));
    let document = Document::parse(&svg).unwrap();
    let root = document.root_element();
    let number = |name: &str| root.attribute(name).unwrap().parse::<f64>().unwrap();
    let (scale, x0, y0) = (number("data-px-per-m"), number("data-x0"), number("data-y0"));
    let metres =
        |x: f64, y: f64| DVec2::new(number("data-east0") + (x - x0) / scale, number("data-north0") + (y0 - y) / scale);
    let part = document.descendants().find(|n| n.attribute("data-part") == Some("set-backs")).unwrap();
    let outlines: Vec<_> = site.surroundings.excavations.iter().map(|e| &e.outline).collect();
    // 2.6 m of soft soil at 2 to 1; what the wheels ask; the face that does not stand.
    let asked = [(0, 5.2), (0, 6.4), (1, 8.0)];
    let mut met = [0; 3];
    for line in part.descendants().filter(|n| n.has_tag_name("polyline")) {
        let places = line.attribute("points").unwrap().split_whitespace().map(|p| {
            let (x, y) = p.split_once(',').unwrap();
            metres(x.parse().unwrap(), y.parse().unwrap())
        });
        let places: Vec<DVec2> = places.collect();
        let of = |(dig, distance): &(usize, f64)| {
            places.iter().all(|p| (outlines[*dig].distance_to_point(*p) - distance).abs() < 0.2 / scale)
        };
        let which = asked.iter().position(of).expect("a line at a distance that nobody asked");
        assert!(places.iter().all(|p| !outlines[asked[which].0].contains(*p)));
        met[which] += places.len();
    }
    assert!(met.iter().all(|n| *n > 40), "{met:?}");
    let text = check(&svg, "busy").replace(['\u{a0}', '\n'], " ");
    for expected in
        ["set-back 5.20 m", "Stand 1: set-back 6.40 m", "nothing within 8.00 m", "Set-back by the planning line"]
    {
        assert!(text.contains(expected), "{expected} is missing in\n{text}");
    }
    let only_site = check(&site_plan(&site, &[], &english, &Style::screen(1200.0)), "busy").replace('\u{a0}', " ");
    assert!(only_site.contains("set-back 5.20 m") && !only_site.contains("6.40 m"), "{only_site}");
    let text = check(&site_plan(&site, &[], &spanish, &Style::screen(1200.0)), "busy").replace(['\u{a0}', '\n'], " ");
    assert!(text.contains("distancia al borde 5,20 m"), "{text}");
}

#[test]
fn the_root_says_where_places_lie() {
    let [english, ..] = wordings();
    let svg = site_plan(&yard(40.0), &[], &english, &Style::screen(900.0));
    let document = Document::parse(&svg).unwrap();
    let number = |name: &str| document.root_element().attribute(name).unwrap().parse::<f64>().unwrap();
    let (scale, x0, y0) = (number("data-px-per-m"), number("data-x0"), number("data-y0"));
    // The yard has 3 % of its side free to the left of it.
    let x = x0 + (0.0 - number("data-east0")) * scale;
    assert!((x - 10.0 - 40.0 * 0.03 * scale).abs() < 1.0, "{x}");
    assert!(y0 - (20.0 - number("data-north0")) * scale < y0);
}

#[test]
fn a_cut_states_its_scale_and_its_holes() {
    let [english, ..] = wordings();
    let site = busy(60.0);
    let course = [DVec2::new(0.0, 30.0), DVec2::new(60.0, 30.0)];
    let cut = profile(&site.ground, &site.surroundings.things, &course, 0.25);
    let text = check(&site_cut(&cut, &site.surroundings.things, &english, &Style::screen(1200.0)), "cut");
    let text = text.replace(['\u{a0}', '\n'], " ");
    assert!(text.contains("Heights and lengths to one scale") && text.contains("ground not known"), "{text}");
    assert!(text.contains("heights within 0.050 m") && text.contains("top at 108.00 m"), "{text}");
    let flat = yard(200.0);
    let long = profile(&flat.ground, &[], &[DVec2::new(0.0, 30.0), DVec2::new(200.0, 30.0)], 1.0);
    let text = check(&site_cut(&long, &[], &english, &Style::screen(360.0)), "long cut");
    assert!(text.contains("times as large as lengths"), "{text}");
    // A thing that the caller does not have is left out, not guessed.
    check(&site_cut(&cut, &[], &english, &Style::screen(360.0)), "no things");
    let text = check(&site_cut(&Cut { stations: Vec::new() }, &[], &english, &Style::screen(360.0)), "no stations");
    assert!(text.contains("has no length"), "{text}");
}

/// Real terrain from the reference data folder beside the project, `../shared`; left out where it is
/// absent, except where every change is checked.
#[test]
fn real_ground_is_drawn_with_its_contours() {
    let data = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data");
    if !data.is_dir() {
        assert!(std::env::var_os("CI").is_none(), "the reference data folder ../shared is absent");
        return;
    }
    let [english, ..] = wordings();
    for path in ["terrain/montpellier_tile_77055_627760_dtm_50cm.tif", "terrain/slovenia_dtm_1m.tif"] {
        let bytes = std::fs::read(data.join(path)).unwrap();
        let terrain = survey::read_ground(path, &bytes, &survey::GroundOptions::default()).unwrap().terrain;
        let (low, high) = terrain.bounds().unwrap();
        let mut site = Site { name: path.into(), ..Site::default() };
        let source = site::GroundSource { name: path.into(), terrain, accuracy: 0.1, date: None };
        site.ground.surfaces.push(source);
        let cut = profile(&site.ground, &[], &[low, high], 1.0);
        for width in [360.0, 1200.0] {
            let text = check(&site_plan(&site, &[], &english, &Style::screen(width)), path);
            assert!(text.contains("Line of equal height") && text.contains("Slope over"), "{path}: {text}");
            assert!(text.contains("date not known"), "{path}: {text}");
            check(&site_cut(&cut, &[], &english, &Style::screen(width)), path);
        }
    }
}

#[test]
fn regress_a_small_site() {
    let [english, ..] = wordings();
    let svg = site_plan(&one_point(), &[], &english, &Style::paper(360.0));
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/made_site/one_point.svg");
    if std::env::var_os("UPDATE_SNAPSHOTS").is_some() {
        std::fs::write(path, format!("{svg}\n")).unwrap();
    }
    assert_eq!(svg, std::fs::read_to_string(path).unwrap().trim_end(), "set UPDATE_SNAPSHOTS=1 where this is meant");
}
