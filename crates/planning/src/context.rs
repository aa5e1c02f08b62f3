//! What one lift refers to, looked up once.

use crate::boom_path::turns::Turns;
use crate::landing_strength::NOTHING_STATED;
use crate::{Acceptance, Job, JobMachine, LandingStrength, Lift, Matter, Policy, Stand};
use evidence::Status;
use ground::pallet_feet::Feet;
use machine::{Attachment, Load, Machine};
use quantity::Si;
use site::Landing;

/// A lift with everything it refers to.
#[derive(Clone, Copy)]
pub(crate) struct Context<'a> {
    pub(crate) job: &'a Job,
    pub(crate) lift: &'a Lift,
    /// Where the machine stands: as the lift states it, or another place that is tried.
    pub(crate) stand: Stand,
    pub(crate) unit: &'a JobMachine,
    pub(crate) machine: &'a Machine,
    /// `None`: the machine's maker does not list it.
    pub(crate) attachment: Option<&'a Attachment>,
    pub(crate) load: &'a Load,
    pub(crate) landing: &'a Landing,
    pub(crate) policy: &'a Policy,
    /// The landing's status for a load of that mass (kg), where it is dear to find.
    pub(crate) landing_known: Option<(f64, Status)>,
    /// How much lower than surveyed the ground counts under each contact, m: a flat tyre, a wheel that
    /// sinks in.
    pub(crate) lowered: [f64; 4],
    /// True where the ground counts as exactly as surveyed.
    pub(crate) exact_ground: bool,
    /// What the ground gives under one front and one rear contact, m/N; 0 where no soil with a stiffness is stated.
    pub(crate) gives: [f64; 2],
    /// How far the contacts' settlement leans the machine at most, rad.
    pub(crate) leans: f64,
    /// Turning points of the boom's movement; `None`: the plain movement.
    pub(crate) turns: Option<Turns>,
}

impl<'a> Context<'a> {
    /// `None` if an index of the lift points nowhere (a job that was not read by `jobfile`).
    pub(crate) fn new(job: &'a Job, lift: &'a Lift) -> Option<Self> {
        let unit = job.machines.get(lift.machine)?;
        let load = job.loads.get(lift.load)?;
        let ctx = Self {
            job,
            lift,
            stand: lift.stand,
            unit,
            machine: &unit.machine,
            attachment: unit.machine.attachment(&lift.attachment),
            load,
            landing: job.landings.get(lift.landing)?,
            policy: &job.policy,
            landing_known: None,
            lowered: [0.0; 4],
            exact_ground: false,
            gives: [0.0; 2],
            leans: 0.0,
            turns: None,
        };
        Some(ctx.with_load(load))
    }

    /// The same with another load.
    pub(crate) fn with_load(mut self, load: &'a Load) -> Self {
        self.load = load;
        self.landing_known = None;
        self.lowered = crate::checks::tyres::lowered(&self);
        self.landing_known = crate::checks::landing::known(&self);
        self
    }

    /// What is known of the landing's strength.
    pub(crate) fn strength(&self) -> &'a LandingStrength {
        self.job.strengths.get(self.lift.landing).unwrap_or(&NOTHING_STATED)
    }

    /// What the load stands on; `None`: not stated, or it hangs.
    pub(crate) fn feet(&self) -> Option<&'a Feet> {
        self.job.feet.get(self.lift.load).and_then(Option::as_ref)
    }

    /// What a named person accepted: the lift's own statement, where the machine stands at its own place, before the job's.
    pub(crate) fn accepted(&self, matter: Matter) -> Option<&'a Acceptance> {
        let own = self.lift.acceptances.iter().filter(|_| self.lift.own_place(self.stand));
        own.chain(&self.job.acceptances).find(|a| a.matter == matter)
    }

    /// Height above the landing's surface at which the load is carried in or out, m.
    pub(crate) fn clear(&self) -> f64 {
        self.lift.clear.si() + self.landing.upstand
    }

    /// True if the load hangs, whatever the attachment is called.
    pub(crate) fn hung(&self) -> bool {
        self.load.hanging.is_some() || self.attachment.is_some_and(Attachment::hangs)
    }
}
