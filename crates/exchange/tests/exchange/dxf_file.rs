//! DXF, read back.

use crate::read_dxf::{Drawing, Entity, read};
use crate::sample;
use exchange::{About, site_dxf};
use geometry::DVec2;
use site::{Grid, Site, Terrain};

fn sample_drawing() -> Drawing {
    read(&site_dxf(&sample::site(), &sample::about()).unwrap())
}

fn header(drawing: &Drawing, name: &str) -> Vec<String> {
    let at = drawing.header.iter().position(|p| *p == (9, name.to_owned())).unwrap();
    drawing.header[at + 1..].iter().take_while(|p| p.0 != 9).map(|p| p.1.clone()).collect()
}

#[test]
fn it_says_metres_and_where_it_lies() {
    let drawing = sample_drawing();
    assert_eq!(header(&drawing, "$INSUNITS"), ["6"]);
    assert_eq!(header(&drawing, "$ACADVER"), ["AC1015"]);
    let low: Vec<f64> = header(&drawing, "$EXTMIN").iter().map(|v| v.parse().unwrap()).collect();
    // The far fence, reaching half its width past its end; and the notes below all.
    assert!((low[0] - (sample::CORNER.x - 40.05)).abs() < 1e-3, "{low:?}");
    let seed = u32::from_str_radix(&header(&drawing, "$HANDSEED")[0], 16).unwrap();
    let last = drawing.entities.last().unwrap().text(5).unwrap().to_owned();
    assert!(seed > u32::from_str_radix(&last, 16).unwrap());
}

#[test]
fn layers_are_listed_and_used() {
    let drawing = sample_drawing();
    let used: std::collections::BTreeSet<&str> = drawing.entities.iter().map(Entity::layer).collect();
    let listed: std::collections::BTreeSet<&str> =
        drawing.layers.iter().map(String::as_str).filter(|l| *l != "0").collect();
    assert_eq!(used, listed);
    assert_eq!(listed.len(), 28, "{listed:?}");
}

#[test]
fn outlines_are_closed_with_level_thickness_and_area() {
    let drawing = sample_drawing();
    let block = drawing.of("LWPOLYLINE", "Thing-building");
    assert_eq!(block.len(), 2);
    assert!(block.iter().all(|e| e.is_closed()));
    let areas: Vec<f64> = block.iter().map(|e| e.area()).collect();
    assert!((areas[0] - 120.0).abs() < 1e-6 && (areas[1] - 16.0).abs() < 1e-6, "{areas:?}");
    let slab = drawing.of("LWPOLYLINE", "Thing-floor")[0];
    assert_eq!((slab.number(38), slab.number(39)), (Some(253.0), Some(0.2)));
    let silo = drawing.of("CIRCLE", "Thing-mast")[0];
    assert_eq!((silo.number(40), silo.number(39), silo.number(30)), (Some(1.25), Some(7.6), Some(250.4)));
    let wall = drawing.of("LWPOLYLINE", "Thing-wall")[0];
    assert_eq!((wall.number(43), wall.is_closed(), wall.all(10).len()), (Some(0.3), false, 3));
    assert_eq!(drawing.of("LWPOLYLINE", "Thing-unnamed").len(), 9, "columns");
}

#[test]
fn ground_is_faces_with_its_hole() {
    let drawing = sample_drawing();
    // 50 × 60 cells but the 4 × 5 that touch the hole; 40 triangles of the levels, none long-edged.
    assert_eq!(drawing.of("3DFACE", "Ground").len(), (50 * 60 - 20) * 2 + 40);
}

#[test]
fn conductors_have_their_sag_and_names_say_what_is_not_known() {
    let drawing = sample_drawing();
    let lines = drawing.of("POLYLINE", "Overhead-line");
    assert_eq!((lines.len(), drawing.of("VERTEX", "Overhead-line").len()), (3, 25 + 25 + 2));
    let texts: Vec<&str> = drawing.entities.iter().filter(|e| e.kind == "MTEXT").filter_map(|e| e.text(1)).collect();
    for said in [
        "oak (invented) (height not known)",
        "Line nobody has measured (voltage not known) (height not known)",
        "Trench B (depth not known)",
        "Landing any way (direction not known)",
        "Invented data, for demonstration or test.",
        "Line somewhere: where it lies is not known, so it is not drawn.",
    ] {
        assert!(texts.contains(&said), "{said}");
    }
    assert!(
        texts.contains(&"Ger\\U+00FCst \"S\\U+00FCd\" \\U+5854 (U+1F3D7) zwei\\U+2216U+0041 50%\\U+FF05d ^ J <b>&")
    );
    let oak = drawing.of("CIRCLE", "Thing-tree")[0];
    assert_eq!((oak.number(39), oak.tag("top_m")), (Some(exchange::DRAWN_HEIGHT), Some("not known")));
}

#[test]
fn an_empty_site_is_a_drawing_with_notes() {
    let drawing = read(&site_dxf(&sample::empty(), &About::default()).unwrap());
    assert!(drawing.entities.iter().all(|e| e.kind == "MTEXT" && e.layer() == "Notes"));
    assert!(drawing.entities.len() >= 4);
}

fn wide(rows: usize, cols: usize) -> Site {
    let mut site = sample::empty();
    let heights = vec![100.0; rows * cols];
    let grid = Grid { north_west: DVec2::new(5e5, 5e6), cell: DVec2::splat(0.5), rows, cols, heights };
    site.ground.surfaces = vec![sample::surface(Terrain::Grid(grid), "wide.tif", None)];
    site
}

#[test]
fn ground_with_too_many_faces_is_thinned_and_the_drawing_says_so() {
    let drawing = read(&site_dxf(&wide(601, 501), &About::default()).unwrap());
    assert_eq!(drawing.count("3DFACE"), 300 * 250 * 2);
    let said = "Of ground wide.tif only one row and column in 2 is drawn, and the last ones.";
    assert!(drawing.entities.iter().any(|e| e.text(1) == Some(said)));
}
