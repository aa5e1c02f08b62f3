//! What the server answers from: one finished plan.

use planning::{LiftPlan, Plan};
use std::sync::Arc;

/// A plan being served. Nothing here computes: every answer is read from the plan.
#[derive(Debug)]
pub struct Served {
    plan: Plan,
}

/// The plan as shared by all requests.
pub(crate) type Shared = Arc<Served>;

impl Served {
    /// Serves `plan`.
    pub fn new(plan: Plan) -> Self {
        Self { plan }
    }
    /// The plan.
    pub fn plan(&self) -> &Plan {
        &self.plan
    }
    /// The lift of that id.
    pub(crate) fn lift(&self, id: &str) -> Option<&LiftPlan> {
        self.plan.lifts.iter().find(|l| l.id == id)
    }
}
