//! Every route under `/api`.

use crate::asking::{ask, get};
use crate::handmade;
use axum::http::StatusCode;

#[tokio::test]
async fn the_overview_has_every_lift_with_what_governs() {
    let answer = get("/api/jobs/current").await;
    assert_eq!(answer.status, StatusCode::OK);
    let job = answer.json();
    assert_eq!(job["job"], "Three pallets");
    assert_eq!(job["invented"], true);
    assert_eq!(job["verdict"]["code"], "no-go");
    let verdicts: Vec<_> = job["lifts"].as_array().unwrap().iter().map(|l| l["verdict"]["code"].clone()).collect();
    assert_eq!(verdicts, ["no-go", "go", "go-with-conditions"]);
    let governing = &job["lifts"][0]["governing"];
    assert_eq!(governing["status"]["code"], "no-go");
    assert_eq!(governing["reserve"]["share"], -0.283);
    let sentence = governing["sentence"].as_str().unwrap();
    assert!(sentence.contains("1,925") && sentence.contains("kg"), "{sentence}");
    assert_eq!(job["lifts"][0]["place"], "Landing: Bay 2, second floor");
    assert!(job["cautions"].as_array().unwrap().len() >= 4);
    assert!(!answer.text().contains('⟨'), "a text or an argument of it is missing");
}

#[tokio::test]
async fn language_and_units_change_the_texts_and_not_the_values() {
    let si = get("/api/jobs/current/lifts/L1?lang=en&units=si").await.json();
    let us = get("/api/jobs/current/lifts/L1?lang=es&units=us").await.json();
    let (chart_si, chart_us) = (&si["findings"][1], &us["findings"][1]);
    assert_ne!(chart_si["sentence"], chart_us["sentence"]);
    assert_eq!(chart_si["demand"]["si"], chart_us["demand"]["si"]);
    assert_eq!(chart_si["demand"]["si_unit"], "kg");
    assert!(chart_us["demand"]["text"].as_str().unwrap().contains("lb"));
    assert_eq!(chart_us["reserve"]["share"], -0.283);
    assert_ne!(si["verdict"]["word"], us["verdict"]["word"]);
    assert_eq!(us["language"], "es");
}

#[tokio::test]
async fn a_lift_opens_to_working_and_source() {
    let lift = get("/api/jobs/current/lifts/L1").await.json();
    assert_eq!(lift["governing_index"], 1);
    let finding = &lift["findings"][1];
    assert_eq!(finding["id"], "chart");
    assert_eq!(finding["remedies"].as_array().unwrap().len(), 2);
    assert!(finding["sources"][0].as_str().unwrap().contains("machines/test-7.toml"));
    let step = &finding["working"][0];
    let pieces = |pieces: &serde_json::Value| -> String {
        let mark = |p: &serde_json::Value| {
            let text = p["text"].as_str().unwrap();
            if p["lowered"] == true { format!("<{text}>") } else { text.to_owned() }
        };
        pieces.as_array().unwrap().iter().map(mark).collect()
    };
    assert_eq!(pieces(&step["formula"]), "b = x<T> ⊕ c<0> < by hand");
    assert_eq!(pieces(&step["values"][1]["symbol"]), "c<0>");
    assert_eq!(pieces(&step["result"]["symbol"]), "b<max>");
    assert_eq!(step["values"][1]["value"]["si"], 1500.0);
    assert_eq!(step["result"]["value"]["si"], -0.283);
    assert_eq!(step["source"], "test source, clause 1");
    assert_eq!(lift["steps"].as_array().unwrap().len(), 4);
    let pose = lift["pose"].as_array().unwrap();
    let across = pose.iter().find(|f| f["name"] == "Slope across").unwrap();
    assert_eq!(across["text"], "not known", "what is missing is said, never left out");
}

#[tokio::test]
async fn where_to_stop_is_told_as_seen_from_the_cab() {
    let lift = get("/api/jobs/current/lifts/L1").await.json();
    let approach = lift["approach"].as_array().unwrap();
    let said: Vec<(&str, &str)> =
        approach.iter().map(|f| (f["name"].as_str().unwrap(), f["text"].as_str().unwrap())).collect();
    assert_eq!(said[0], ("Set down on", "Bay 2, second floor"));
    assert_eq!(said[1].0, "Front tyres");
    assert!(said[1].1.starts_with("5.88") && said[1].1.ends_with("from the landing's edge"), "{said:?}");
    assert!(said[2].1.starts_with("0.07") && said[2].1.ends_with("right of its middle"), "{said:?}");
    assert!(said[3].1.starts_with("92") && said[3].1.ends_with("(east)"), "{said:?}");
    assert!(lift["position"]["text"].as_str().unwrap().contains("12.4"));
}

#[tokio::test]
async fn what_must_be_at_least_there_is_told_from_what_may_be_at_most() {
    let tilt = &get("/api/jobs/current/lifts/L2").await.json()["findings"][1];
    assert_eq!(tilt["comparison"], "at-least");
    let chart = &get("/api/jobs/current/lifts/L1").await.json()["findings"][1];
    assert_eq!(chart["comparison"], "at-most");
    let wind = &get("/api/jobs/current/lifts/L3").await.json()["findings"][2];
    assert_eq!(wind["comparison"], serde_json::Value::Null);
}

#[tokio::test]
async fn a_load_that_is_picked_up_is_said_to_be() {
    let picked = || {
        let mut plan = handmade::plan();
        plan.lifts[1].task = planning::Task::PickUp;
        plan
    };
    let request = |path| axum::http::Request::get(path).header("host", "localhost");
    let job = ask(picked(), request("/api/jobs/current")).await.json();
    assert_eq!(job["lifts"][1]["place"], "Pick-up: Bay 2, second floor");
    let lift = ask(picked(), request("/api/jobs/current/lifts/L2")).await.json();
    assert_eq!(lift["approach"][0]["name"], "Pick up from");
}

#[tokio::test]
async fn an_unknown_lift_is_a_problem_that_names_those_that_exist() {
    for rest in ["", "/elevation.svg", "/chart.svg", "/stands.svg", "/movement.svg"] {
        let answer = get(&format!("/api/jobs/current/lifts/L9{rest}")).await;
        assert_eq!(answer.status, StatusCode::NOT_FOUND);
        assert_eq!(answer.problem(), "lift-unknown");
        assert!(answer.json()["detail"].as_str().unwrap().contains("L1, L2, L3"));
    }
}

#[tokio::test]
async fn drawings_are_svg_or_said_to_be_absent() {
    for drawing in ["elevation.svg", "chart.svg", "stands.svg", "movement.svg"] {
        let answer = get(&format!("/api/jobs/current/lifts/L2/{drawing}?lang=es&units=us&width=360")).await;
        assert_eq!(answer.status, StatusCode::OK, "{drawing}");
        assert_eq!(answer.header("content-type"), "image/svg+xml; charset=utf-8");
        let svg = answer.text();
        assert!(svg.starts_with("<svg ") && svg.contains("<title>"), "{drawing}");
        let absent = get(&format!("/api/jobs/current/lifts/L3/{drawing}")).await;
        assert_eq!(absent.status, StatusCode::NOT_FOUND);
        assert_eq!(absent.problem(), "drawing-absent");
    }
}

#[tokio::test]
async fn each_drawing_is_its_own() {
    for (drawing, title) in
        [("elevation", "Side view"), ("chart", "Load chart"), ("stands", "Stand field"), ("movement", "Boom movement")]
    {
        let svg = get(&format!("/api/jobs/current/lifts/L2/{drawing}.svg")).await.text();
        assert!(svg.contains(&format!("<title>{title}")), "{drawing}: {}", &svg[..400]);
    }
}

#[tokio::test]
async fn where_else_to_stand_and_the_way_there_are_told() {
    let lift = get("/api/jobs/current/lifts/L2").await.json();
    assert_eq!((&lift["has_stands"], &lift["has_movement"]), (&true.into(), &true.into()));
    let facts = |key: &str| {
        let all = lift[key].as_array().unwrap().iter();
        all.map(|f| format!("{}: {}", f["name"].as_str().unwrap(), f["text"].as_str().unwrap()).replace('\u{a0}', " "))
            .collect::<Vec<_>>()
    };
    let told = facts("stand_told");
    assert_eq!(told.len(), 3);
    assert!(told[0].contains("the best that was found"), "{told:?}");
    assert!(told[1].contains("0.40 m") && told[1].contains("to the left") && told[1].contains("Edges"), "{told:?}");
    assert!(told[2].contains("3.0°") && !told[2].contains("beyond"), "{told:?}");
    let other = &lift["other_stands"][0];
    assert_eq!(other["verdict"]["code"], "go-with-conditions");
    let said = |key: &str| other[key].as_str().unwrap().replace('\u{a0}', " ");
    assert_eq!(said("at"), "14.20 m east, 9.30 m north, heading 180.0° (south)");
    assert!(said("governs").contains("Load chart") && said("governs").contains("17 %"), "{}", said("governs"));
    assert!(said("off").contains("0.25 m") && said("off").contains("3.0°"), "{}", said("off"));
    // The way in is told stretch by stretch, the way out by what is in it.
    let way = facts("way");
    assert_eq!(way.len(), 4, "{way:?}");
    assert!(way[0].contains("Gate by the lane") && way[0].contains("25.00 m") && way[0].contains("2 min"), "{way:?}");
    assert!(way[1].contains("1 change: forward 20.00 m, then backward 5.00 m"), "{way:?}");
    assert!(way[2].contains("0.35 m"), "{way:?}");
    assert!(way[3].starts_with("Way out") && way[3].contains("Reason:"), "{way:?}");
    assert_eq!(lift["way_notes"].as_array().unwrap().len(), 2);

    let refused = get("/api/jobs/current/lifts/L1").await.json();
    assert_eq!(refused["changes"].as_array().unwrap().len(), 1);
    assert!(refused["changes"][0].as_str().unwrap().contains("875"), "{refused}");
    assert_eq!((&refused["has_stands"], &refused["has_movement"]), (&false.into(), &false.into()));
    assert_eq!(refused["way"].as_array().unwrap().len(), 0);
}

#[tokio::test]
async fn the_raw_plan_reads_back_as_the_same_plan() {
    let answer = get("/api/jobs/current/plan.json").await;
    let read: planning::Plan = serde_json::from_slice(&answer.body).unwrap();
    assert_eq!(read, handmade::plan());
}

#[tokio::test]
async fn the_plan_sheet_is_a_pdf_on_either_paper() {
    let a4 = get("/api/jobs/current/plan-sheet.pdf?paper=a4").await;
    let letter = get("/api/jobs/current/plan-sheet.pdf?lang=es&units=us&paper=letter").await;
    for answer in [&a4, &letter] {
        assert_eq!(answer.status, StatusCode::OK);
        assert_eq!(answer.header("content-type"), "application/pdf");
        assert_eq!(&answer.body[..5], b"%PDF-");
    }
    assert_ne!(a4.body, letter.body);
    assert_eq!(
        get("/api/jobs/current/plan-sheet.pdf").await.body,
        a4.body,
        "A4, English and SI are what is not asked for"
    );
}

#[tokio::test]
async fn a_parameter_that_is_not_understood_is_a_problem_and_not_a_default() {
    for path in [
        "/api/jobs/current?lang=de",
        "/api/jobs/current?units=metric",
        "/api/jobs/current/lifts/L1?units=",
        "/api/jobs/current/lifts/L1/chart.svg?width=wide",
        "/api/jobs/current/plan-sheet.pdf?paper=a3",
        "/api/texts?lang=xx",
        "/plain?lang=de",
    ] {
        let answer = get(path).await;
        assert_eq!(answer.status, StatusCode::BAD_REQUEST, "{path}");
        assert_eq!(answer.problem(), "query", "{path}");
    }
}

#[tokio::test]
async fn a_sign_of_life_names_the_plan() {
    let alive = get("/api/alive").await.json();
    assert_eq!(alive["digest"], handmade::plan().digest);
}

#[tokio::test]
async fn the_text_face_is_served_as_declared() {
    let css = get("/api/fonts.css").await;
    assert_eq!(css.header("content-type"), "text/css; charset=utf-8");
    let css = css.text();
    let files: Vec<&str> = css.split("url(\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    assert!(files.len() >= 2, "regular and bold at least: {css}");
    for file in files {
        let font = get(file).await;
        assert_eq!(font.status, StatusCode::OK, "{file}");
        assert!(font.header("content-type").starts_with("font/"), "{file}");
        assert!(font.body.len() > 10_000, "{file}");
    }
    assert_eq!(get("/api/fonts/none.ttf").await.problem(), "not-found");
    assert!(css.contains(drawing::FONT_FAMILY.split(',').next().unwrap()), "drawings ask for another face: {css}");
}

#[tokio::test]
async fn the_description_is_openapi_3_1_and_names_every_route() {
    let description = get("/api/openapi.json").await.json();
    assert_eq!(description["openapi"], "3.1.0");
    let paths = description["paths"].as_object().unwrap();
    for path in [
        "/api/jobs/current",
        "/api/jobs/current/lifts/{id}",
        "/api/jobs/current/lifts/{id}/elevation.svg",
        "/api/jobs/current/lifts/{id}/chart.svg",
        "/api/jobs/current/lifts/{id}/stands.svg",
        "/api/jobs/current/lifts/{id}/movement.svg",
        "/api/jobs/current/lifts/{id}/way-in.svg",
        "/api/jobs/current/lifts/{id}/way-out.svg",
        "/api/jobs/current/plan.json",
        "/api/jobs/current/plan-sheet.pdf",
        "/api/texts",
        "/api/alive",
        "/api/fonts.css",
        "/api/fonts/{file}",
    ] {
        assert!(paths.contains_key(path), "{path}");
    }
    assert_eq!(paths.len(), 14, "a described route without a test");
    let printed: serde_json::Value = serde_json::from_str(&server::openapi().unwrap()).unwrap();
    assert_eq!(printed, description);
}

#[tokio::test]
async fn what_is_not_there_is_a_problem() {
    for path in ["/nothing", "/assets/none.js", "/../Cargo.toml", "/api/none"] {
        assert_eq!(get(path).await.problem(), "not-found", "{path}");
    }
}
