//! Routes under `/api`, with their OpenAPI description.

use crate::preference::{Asked, DrawingChoice, LanguageChoice, Paper, Preference, SheetChoice};
use crate::problem::{Problem, ProblemBody};
use crate::render;
use crate::sheet::sheet;
use crate::state::Shared;
use crate::wire::{AliveView, JobView, LiftView, TextsView};
use crate::{drawings, fonts};
use axum::Json;
use axum::extract::{Path, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use utoipa::OpenApi;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;
use wording::ui;

#[derive(OpenApi)]
#[openapi(
    components(schemas(Paper)),
    info(
        title = "Counterpoise",
        description = "Reads one finished lift plan. Values come as text in the reader's language and units; \
                   numbers beside them are SI. The maker's manual and the chart in the cab govern."
    )
)]
struct Described;

/// Every described route.
pub(crate) fn routes() -> OpenApiRouter<Shared> {
    OpenApiRouter::with_openapi(Described::openapi())
        .routes(routes!(current_job))
        .routes(routes!(current_lift))
        .routes(routes!(elevation))
        .routes(routes!(chart))
        .routes(routes!(stands))
        .routes(routes!(movement))
        .routes(routes!(way_in))
        .routes(routes!(way_out))
        .routes(routes!(plan_json))
        .routes(routes!(plan_sheet))
        .routes(routes!(texts))
        .routes(routes!(alive))
        .routes(routes!(fonts::sheet))
        .routes(routes!(fonts::file))
}

/// The plan in short: lifts, verdicts and what governs each.
#[utoipa::path(get, path = "/api/jobs/current", params(Preference), responses(
    (status = OK, body = JobView),
    (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
))]
async fn current_job(State(served): State<Shared>, Asked(asked): Asked<Preference>) -> Json<JobView> {
    Json(render::job(served.plan(), asked))
}

/// One lift: every finding with its working, the steps, the figures.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}",
    params(("id" = String, Path, description = "Id of the lift"), Preference),
    responses(
        (status = OK, body = LiftView),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn current_lift(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<Preference>,
) -> Result<Json<LiftView>, Problem> {
    let lift = served.lift(&id).ok_or_else(|| unknown(&served, id))?;
    Ok(Json(render::lift(served.plan(), lift, asked)))
}

/// Side view of a lift, to scale.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/elevation.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn elevation(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "side view" };
    drawn(served, at, asked, drawings::elevation).await?.map(svg).ok_or(absent)
}

/// Load chart of a lift with the point it uses.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/chart.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn chart(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "load chart" };
    drawn(served, at, asked, drawings::chart).await?.map(svg).ok_or(absent)
}

/// Ground around the landing of a lift, by what a stand there would give.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/stands.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn stands(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "stand field" };
    drawn(served, at, asked, drawings::stands).await?.map(svg).ok_or(absent)
}

/// Movement of the boom of a lift, a picture a step.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/movement.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn movement(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "boom movement" };
    drawn(served, at, asked, drawings::movement).await?.map(svg).ok_or(absent)
}

/// Way to the stand of a lift, from above and as a profile.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/way-in.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn way_in(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "way in" };
    drawn(served, at, asked, drawings::way_in).await?.map(svg).ok_or(absent)
}

/// Way back from the stand of a lift, from above and as a profile.
#[utoipa::path(get, path = "/api/jobs/current/lifts/{id}/way-out.svg",
    params(("id" = String, Path, description = "Id of the lift"), DrawingChoice),
    responses(
        (status = OK, body = String, content_type = "image/svg+xml"),
        (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
        (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
    ))]
async fn way_out(
    State(served): State<Shared>,
    Path(id): Path<String>,
    Asked(asked): Asked<DrawingChoice>,
) -> Result<Response, Problem> {
    let Some(at) = served.position(&id) else { return Err(unknown(&served, id)) };
    let absent = Problem::DrawingAbsent { id, drawing: "way out" };
    drawn(served, at, asked, drawings::way_out).await?.map(svg).ok_or(absent)
}

/// The plan itself, as the engine made it: ids, SI values, sources, working.
#[utoipa::path(get, path = "/api/jobs/current/plan.json", responses(
    (status = OK, body = serde_json::Value, content_type = "application/json"),
))]
async fn plan_json(State(served): State<Shared>) -> Response {
    Json(served.plan()).into_response()
}

/// The plan sheet for the supervisor.
#[utoipa::path(get, path = "/api/jobs/current/plan-sheet.pdf", params(SheetChoice), responses(
    (status = OK, body = Vec<u8>, content_type = "application/pdf"),
    (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
    (status = INTERNAL_SERVER_ERROR, body = ProblemBody, content_type = "application/problem+json"),
))]
async fn plan_sheet(State(served): State<Shared>, Asked(asked): Asked<SheetChoice>) -> Result<Response, Problem> {
    let pdf = sheet(&served, asked).await?;
    let headers = [
        (header::CONTENT_TYPE, "application/pdf"),
        (header::CONTENT_DISPOSITION, "inline; filename=\"plan-sheet.pdf\""),
    ];
    Ok((headers, pdf).into_response())
}

/// Words of the client's own buttons and headings.
#[utoipa::path(get, path = "/api/texts", params(LanguageChoice), responses(
    (status = OK, body = TextsView),
    (status = BAD_REQUEST, body = ProblemBody, content_type = "application/problem+json"),
))]
async fn texts(Asked(asked): Asked<LanguageChoice>) -> Json<TextsView> {
    let w = Preference { lang: asked.lang, ..Preference::default() }.wording();
    let plain = ui::ALL.iter().filter(|id| id.args.is_empty());
    let texts = plain.map(|id| (id.id.to_owned(), w.text(*id))).collect();
    Json(TextsView { language: asked.lang, texts })
}

/// A sign of life, with the digest of the plan now served.
#[utoipa::path(get, path = "/api/alive", responses((status = OK, body = AliveView)))]
async fn alive(State(served): State<Shared>) -> Json<AliveView> {
    Json(AliveView { version: env!("CARGO_PKG_VERSION").to_owned(), digest: served.plan().digest.clone() })
}

/// Draws on a thread of its own, so that a large drawing does not hold up other answers.
async fn drawn(
    served: Shared,
    at: usize,
    asked: DrawingChoice,
    draw: fn(&planning::LiftPlan, DrawingChoice) -> Option<String>,
) -> Result<Option<String>, Problem> {
    let drawing = move || served.plan().lifts.get(at).and_then(|lift| draw(lift, asked));
    tokio::task::spawn_blocking(drawing).await.map_err(|_| Problem::DocumentFailed)
}

fn unknown(served: &Shared, id: String) -> Problem {
    Problem::LiftUnknown { id, known: served.plan().lifts.iter().map(|l| l.id.clone()).collect() }
}

fn svg(drawing: String) -> Response {
    ([(header::CONTENT_TYPE, "image/svg+xml; charset=utf-8")], drawing).into_response()
}
