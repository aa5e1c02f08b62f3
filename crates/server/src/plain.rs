//! The plan as one plain page: verdict table, findings, drawings, working. For browsers without
//! scripts, for builds without the client, and for paper.

use crate::drawings;
use crate::html::{Escaped, Formula};
use crate::preference::{Asked, DrawingChoice, Preference, Units};
use crate::problem::Problem;
use crate::render;
use crate::state::{Served, Shared};
use crate::wire::{ComparisonCode, FactView, FindingView, JobView, LiftView, StepView};
use axum::extract::{RawQuery, State};
use axum::http::{Uri, header};
use axum::response::{Html, IntoResponse, Response};
use evidence::TextId;
use std::fmt::Write as _;
use wording::{Wording, ui};

/// `/plain`.
pub(crate) async fn page(State(served): State<Shared>, RawQuery(query): RawQuery) -> Result<Html<String>, Problem> {
    answer(served, query.as_deref()).await
}

/// `/plain.css`.
pub(crate) async fn style() -> Response {
    ([(header::CONTENT_TYPE, "text/css; charset=utf-8")], include_str!("plain.css")).into_response()
}

/// The page in the language and units of `query`.
pub(crate) async fn answer(served: Shared, query: Option<&str>) -> Result<Html<String>, Problem> {
    let uri = Uri::builder().path_and_query(format!("/?{}", query.unwrap_or_default())).build();
    let uri = uri.map_err(|e| Problem::Query { detail: e.to_string() })?;
    let Asked(asked) = Asked::<Preference>::from_uri(&uri)?;
    let written = tokio::task::spawn_blocking(move || Page::new(asked).whole(&served)).await;
    written.map(Html).map_err(|_| Problem::DocumentFailed)
}

/// The page while it is written.
struct Page {
    asked: Preference,
    wording: Wording,
    out: String,
}

impl Page {
    fn new(asked: Preference) -> Self {
        Self { asked, wording: asked.wording(), out: String::with_capacity(64 * 1024) }
    }

    fn word(&self, id: TextId) -> String {
        Escaped(&self.wording.text(id)).to_string()
    }

    fn whole(mut self, served: &Served) -> String {
        let job = render::job(served.plan(), self.asked);
        self.head(&job);
        self.table(&job);
        for lift in &served.plan().lifts {
            let view = render::lift(served.plan(), lift, self.asked);
            self.lift(&view);
            let choice = DrawingChoice { lang: self.asked.lang, units: self.asked.units, width: None };
            self.drawing(ui::SIDE_VIEW, drawings::elevation(lift, choice));
            self.drawing(ui::LOAD_CHART, drawings::chart(lift, choice));
            self.drawing(ui::STAND_FIELD, drawings::stands(lift, choice));
            self.elsewhere(&view);
            self.drawing(ui::BOOM_MOVEMENT, drawings::movement(lift, choice));
            self.drawing(ui::WAY_IN, drawings::way_in(lift, choice));
            self.drawing(ui::WAY_OUT, drawings::way_out(lift, choice));
            self.findings(&view);
            self.facts(&view);
            self.out.push_str("</section>");
        }
        self.inputs(&job);
        self.foot(&job);
        self.out
    }

    fn head(&mut self, job: &JobView) {
        let (lang, units) = (self.asked.lang, self.asked.units);
        let other_units = match units {
            Units::Si => self.word(ui::UNITS_US),
            Units::Us => self.word(ui::UNITS_SI),
        };
        let emergency = self.word(ui::EMERGENCY_BUTTON);
        let (sheet, pdf) = (self.word(ui::PLAN_SHEET), self.word(ui::DOWNLOAD_PDF));
        let _ = write!(
            self.out,
            "<!doctype html><html lang=\"{lang}\"><head><meta charset=\"utf-8\">\
             <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\
             <title>{job} · Counterpoise</title><link rel=\"stylesheet\" href=\"/api/fonts.css\">\
             <link rel=\"stylesheet\" href=\"/plain.css\"></head><body>\
             <nav><a href=\"#emergency\"><strong>{emergency}</strong></a> \
             <a href=\"/plain?lang={ol}&amp;units={u}\" lang=\"{ol}\" hreflang=\"{ol}\">{on}</a> \
             <a href=\"/plain?lang={lang}&amp;units={ou}\">{other_units}</a> \
             <a href=\"/api/jobs/current/plan-sheet.pdf?lang={lang}&amp;units={u}\">{pdf}: {sheet}</a></nav><main>\
             <h1>{job}</h1><p>{site} · {date} · {planner}</p>",
            lang = lang.spoken().code(),
            ol = lang.other().spoken().code(),
            on = lang.other().spoken().own_name(),
            u = units.tag(),
            ou = units.other().tag(),
            job = Escaped(&job.job),
            site = Escaped(&job.site),
            date = Escaped(&job.date),
            planner = Escaped(&job.planner),
        );
        if job.invented {
            let (mark, note) = (self.word(ui::INVENTED_DATA), self.word(ui::INVENTED_DATA_NOTE));
            let _ = write!(self.out, "<p class=\"note\"><strong>{mark}</strong> {note}</p>");
        }
        self.list(None, "ul", &job.warnings);
    }

    /// The verdict table, with the cautions that belong beside a verdict.
    fn table(&mut self, job: &JobView) {
        let _ = write!(
            self.out,
            "<table><caption>{}</caption><thead><tr><th scope=\"col\">{}</th><th scope=\"col\">{}</th>\
             <th scope=\"col\">{}</th><th scope=\"col\">{}</th></tr></thead><tbody>",
            self.word(ui::LIFTS),
            self.word(ui::LIFT),
            self.word(ui::VERDICT),
            self.word(ui::GOVERNS),
            self.word(ui::RESERVE),
        );
        for lift in &job.lifts {
            let governs = lift.governing.as_ref();
            let sentence = governs.map(|g| format!("{}: {}", g.check, g.sentence)).unwrap_or_default();
            let reserve = governs.and_then(|g| g.reserve.as_ref()).map(|r| r.text.clone()).unwrap_or_default();
            let _ = write!(
                self.out,
                "<tr><th scope=\"row\"><a href=\"#lift-{anchor}\">{id} {name}</a></th>\
                 <td><strong>{verdict}</strong></td><td>{sentence}</td><td>{reserve}</td></tr>",
                anchor = Escaped(&lift.id),
                id = Escaped(&lift.id),
                name = Escaped(&lift.name),
                verdict = Escaped(&lift.verdict.word),
                sentence = Escaped(&sentence),
                reserve = Escaped(&reserve),
            );
        }
        self.out.push_str("</tbody></table>");
        self.list(Some(ui::CAUTIONS), "ul", &job.cautions);
        self.out.push_str("<div id=\"emergency\">");
        self.list(Some(ui::EMERGENCY), "ul", &job.emergency);
        self.out.push_str("</div>");
    }

    /// Opens the section of a lift: verdict, what governs, steps.
    fn lift(&mut self, lift: &LiftView) {
        let _ = write!(
            self.out,
            "<section id=\"lift-{id}\"><h2>{id} {name}</h2><p class=\"verdict\">{word}</p><p>{means}</p>",
            id = Escaped(&lift.id),
            name = Escaped(&lift.name),
            word = Escaped(&lift.verdict.word),
            means = Escaped(&lift.verdict.means),
        );
        if let Some(g) = &lift.governing {
            let heading = self.word(ui::GOVERNS);
            let (check, sentence) = (Escaped(&g.check), Escaped(&g.sentence));
            let _ = write!(self.out, "<p class=\"governs\">{heading}: <strong>{check}.</strong> {sentence}</p>");
        }
        self.fact_list(ui::WHERE, lift.approach.iter());
        self.list(Some(ui::STEPS), "ol", &lift.steps);
        self.list(Some(ui::EMERGENCY), "ul", &lift.emergency);
    }

    /// Other stands, what would help, the way in and out.
    fn elsewhere(&mut self, lift: &LiftView) {
        if !lift.other_stands.is_empty() {
            let _ = write!(self.out, "<h3>{}</h3><ol>", self.word(ui::OTHER_STANDS));
            for stand in &lift.other_stands {
                let _ = write!(
                    self.out,
                    "<li><strong>{verdict}</strong>: {at}; {governs}; {off}</li>",
                    verdict = Escaped(&stand.verdict.word),
                    at = Escaped(&stand.at),
                    governs = Escaped(&stand.governs),
                    off = Escaped(&stand.off),
                );
            }
            let _ = write!(self.out, "</ol><p>{}</p>", self.word(ui::OTHER_STANDS_NOTE));
        }
        self.list(Some(ui::CHANGES), "ul", &lift.changes);
        if !lift.changes.is_empty() {
            let _ = write!(self.out, "<p>{}</p>", self.word(ui::CHANGES_NOTE));
        }
        if !lift.way.is_empty() {
            self.fact_list(ui::WAY, lift.way.iter());
            self.list(None, "ul", &lift.way_notes);
        }
    }

    /// A drawing comes from `drawing` as finished, escaped SVG.
    fn drawing(&mut self, name: TextId, svg: Option<String>) {
        if let Some(svg) = svg {
            let name = self.word(name);
            let _ = write!(self.out, "<figure><figcaption>{name}</figcaption>{svg}</figure>");
        }
    }

    fn findings(&mut self, lift: &LiftView) {
        let heading = self.word(ui::FINDINGS);
        let _ = write!(self.out, "<h3>{heading}</h3>");
        for finding in &lift.findings {
            self.finding(finding);
        }
    }

    fn finding(&mut self, f: &FindingView) {
        let _ = write!(
            self.out,
            "<article><h4>{check}: {status}</h4><p>{sentence}</p>",
            check = Escaped(&f.check),
            status = Escaped(&f.status.word),
            sentence = Escaped(&f.sentence),
        );
        let (demand, limit) = match f.comparison {
            Some(ComparisonCode::AtLeast) => (ui::NEEDS, ui::HAS),
            Some(ComparisonCode::AtMost) | None => (ui::DEMAND, ui::LIMIT),
        };
        let measured = [
            (demand, f.demand.as_ref().map(|m| &m.text)),
            (limit, f.limit.as_ref().map(|m| &m.text)),
            (ui::RESERVE, f.reserve.as_ref().map(|r| &r.text)),
        ];
        let said = measured.iter().filter_map(|(id, text)| text.map(|t| (self.word(*id), t)));
        let line: Vec<String> = said.map(|(name, t)| format!("{name}: {}", Escaped(t))).collect();
        if !line.is_empty() {
            let _ = write!(self.out, "<p>{}</p>", line.join(" · "));
        }
        self.list(Some(ui::WHAT_TO_DO), "ul", &f.remedies);
        self.list(Some(ui::SOURCE), "ul", &f.sources);
        if !f.working.is_empty() {
            let heading = self.word(ui::WORKING);
            let _ = write!(self.out, "<details><summary>{heading}</summary><ol>");
            for step in &f.working {
                self.step(step);
            }
            self.out.push_str("</ol></details>");
        }
        self.out.push_str("</article>");
    }

    fn step(&mut self, step: &StepView) {
        let said = |s: &crate::wire::SymbolView| format!("{} = {}", Formula(&s.symbol), Escaped(&s.value.text));
        let values: Vec<String> = step.values.iter().map(said).collect();
        let _ = write!(
            self.out,
            "<li>{title}<br><code>{formula}</code><br>{values}<br><strong>{result}</strong><br><small>{source}</small></li>",
            title = Escaped(&step.title),
            formula = Formula(&step.formula),
            values = values.join(", "),
            result = said(&step.result),
            source = Escaped(&step.source),
        );
    }

    fn facts(&mut self, lift: &LiftView) {
        let boom = lift.pose.iter();
        let told = lift.stand_told.iter();
        self.fact_list(ui::STAND, std::iter::once(&lift.position).chain(told).chain(boom));
        self.fact_list(ui::LOAD, lift.carried.iter());
        if !lift.wheels.is_empty() {
            self.fact_list(ui::WHEEL_FORCES, lift.wheels.iter());
        }
        if !lift.tolerances.is_empty() {
            self.fact_list(ui::TOLERANCES, lift.tolerances.iter());
        }
    }

    fn fact_list<'a>(&mut self, heading: TextId, facts: impl Iterator<Item = &'a FactView>) {
        let heading = self.word(heading);
        let _ = write!(self.out, "<h3>{heading}</h3><dl>");
        for fact in facts {
            let certainty = fact.certainty.as_ref().map(|c| format!(" ({})", Escaped(c))).unwrap_or_default();
            let (name, text) = (Escaped(&fact.name), Escaped(&fact.text));
            let _ = write!(self.out, "<dt>{name}</dt><dd>{text}{certainty}</dd>");
        }
        self.out.push_str("</dl>");
    }

    fn inputs(&mut self, job: &JobView) {
        let lines: Vec<String> =
            job.inputs.iter().map(|i| format!("{}: {} ({}, {})", i.name, i.value, i.certainty, i.place)).collect();
        self.list(Some(ui::INPUTS), "ul", &lines);
    }

    fn foot(&mut self, job: &JobView) {
        let _ = write!(self.out, "<footer><p>{}</p></footer></main></body></html>", Escaped(&job.made_by));
    }

    /// A list under a heading; nothing for an empty list.
    fn list(&mut self, heading: Option<TextId>, element: &str, lines: &[String]) {
        if lines.is_empty() {
            return;
        }
        if let Some(heading) = heading {
            let heading = self.word(heading);
            let _ = write!(self.out, "<p class=\"heading\">{heading}</p>");
        }
        let _ = write!(self.out, "<{element}>");
        for line in lines {
            let _ = write!(self.out, "<li>{}</li>", Escaped(line));
        }
        let _ = write!(self.out, "</{element}>");
    }
}
