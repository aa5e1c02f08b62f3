//! The page without scripts.

use crate::asking::{ask, get};
use crate::handmade;
use axum::http::{Request, StatusCode};

#[tokio::test]
async fn it_holds_the_whole_plan() {
    let page = get("/plain?lang=en&units=si").await;
    assert_eq!(page.status, StatusCode::OK);
    assert_eq!(page.header("content-type"), "text/html; charset=utf-8");
    let html = page.text();
    assert!(html.starts_with("<!doctype html><html lang=\"en\">"));
    for said in [
        "NO-GO",
        "GO WITH CONDITIONS",
        "Bricks to the second floor",
        "b = x<sub>T</sub> ⊕ c<sub>0</sub> &lt; by hand",
        "test source, clause 1",
        "Needs: ",
        "from the landing&#39;s edge",
        "Stand field",
        "Boom movement",
        "<h3>Other stands</h3><ol><li><strong>GO WITH CONDITIONS</strong>: 14.20",
        "What would make it work",
        "Half of the load at a time",
        "<h3>Way in and out</h3>",
        "Clear or widen that place",
        "<a href=\"#emergency\">",
        "<div id=\"emergency\">",
    ] {
        assert!(html.contains(said), "{said}");
    }
    assert_eq!(html.matches("In an emergency").count(), 4, "once for the job and beside the steps of each lift");
    assert_eq!(html.matches("<svg").count(), 7, "every drawing of each lift that has it");
    assert!(html.contains("No lift may be made from it"), "invented data are marked");
    assert!(!html.contains("<script") && !html.contains(" style=\"") && !html.contains("<style"));
    assert!(!html.contains('⟨'), "a text is missing");
}

#[tokio::test]
async fn it_speaks_spanish_and_pounds() {
    let html = get("/plain?lang=es&units=us").await.text();
    assert!(html.starts_with("<!doctype html><html lang=\"es\">"));
    assert!(html.contains(" lb") || html.contains("\u{a0}lb"));
    assert!(html.contains("/plain?lang=en&amp;units=us") && html.contains("/plain?lang=es&amp;units=si"));
}

#[tokio::test]
async fn a_hostile_name_stays_text() {
    let attack = "<script>alert(1)</script>\"><img src=x onerror=alert(2)>";
    let mut plan = handmade::plan();
    attack.clone_into(&mut plan.head.job);
    attack.clone_into(&mut plan.head.site);
    attack.clone_into(&mut plan.head.planner);
    attack.clone_into(&mut plan.inputs[0].value);
    for lift in &mut plan.lifts {
        attack.clone_into(&mut lift.id);
        attack.clone_into(&mut lift.name);
        attack.clone_into(&mut lift.machine);
        attack.clone_into(&mut lift.landing);
        attack.clone_into(&mut lift.load.name);
        if let Some(way) = &mut lift.way {
            attack.clone_into(&mut way.from);
        }
        lift.findings[0].message = handmade::hostile();
        lift.governing = 0;
        if let Some(chart) = &mut lift.chart {
            attack.clone_into(&mut chart.zones[0].name);
        }
        if let Some(elevation) = &mut lift.elevation {
            attack.clone_into(&mut elevation.lines[0].name);
        }
    }
    let html = ask(plan, Request::get("/plain").header("host", "localhost")).await.text();
    assert!(html.contains("&lt;script&gt;alert(1)"));
    assert!(!html.contains("<script") && !html.contains("<img"));
}

#[tokio::test]
async fn the_start_page_is_the_client_or_the_plain_page() {
    let html = get("/").await.text();
    let client = html.contains("id=\"app\"") && html.contains("href=\"/plain?lang=en");
    let plain = html.contains("Bricks to the second floor");
    assert!(client != plain, "neither the client with its way to the plain page, nor the plain page:\n{html}");
}
