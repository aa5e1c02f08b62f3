//! What the server answers from: one finished plan and the printer of its sheets.

use planning::{LiftPlan, Plan};
use std::sync::Arc;

/// A plan being served. Nothing here computes: every answer is read from the plan.
pub struct Served {
    plan: Plan,
    printer: report::Printer,
}

/// The plan as shared by all requests.
pub(crate) type Shared = Arc<Served>;

impl Served {
    /// Serves `plan`.
    pub fn new(plan: Plan) -> Self {
        Self { plan, printer: report::Printer::new() }
    }
    /// The plan.
    pub fn plan(&self) -> &Plan {
        &self.plan
    }
    /// The printer of plan sheets.
    pub(crate) fn printer(&self) -> &report::Printer {
        &self.printer
    }
    /// The lift of that id.
    pub(crate) fn lift(&self, id: &str) -> Option<&LiftPlan> {
        self.plan.lifts.iter().find(|l| l.id == id)
    }
}
