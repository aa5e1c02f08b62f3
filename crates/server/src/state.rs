//! What the server answers from: one finished plan, and the sheets made of it so far.

use crate::sheet::Sheets;
use planning::{LiftPlan, Plan};
use std::sync::Arc;

/// A plan being served. Nothing here computes: every answer is read from the plan.
#[derive(Debug)]
pub struct Served {
    plan: Plan,
    sheets: Sheets,
}

/// The plan as shared by all requests.
pub(crate) type Shared = Arc<Served>;

impl Served {
    /// Serves `plan`.
    pub fn new(plan: Plan) -> Self {
        Self { plan, sheets: Sheets::default() }
    }
    /// The plan.
    pub fn plan(&self) -> &Plan {
        &self.plan
    }
    /// The sheets made so far.
    pub(crate) fn sheets(&self) -> &Sheets {
        &self.sheets
    }
    /// Index of the lift of that id.
    pub(crate) fn position(&self, id: &str) -> Option<usize> {
        self.plan.lifts.iter().position(|l| l.id == id)
    }
    /// The lift of that id.
    pub(crate) fn lift(&self, id: &str) -> Option<&LiftPlan> {
        self.position(id).and_then(|at| self.plan.lifts.get(at))
    }
}
