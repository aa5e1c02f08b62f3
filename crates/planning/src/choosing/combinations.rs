//! Ways to equip a lift: machine, attachment, support state.

use crate::{Job, Lift};
use machine::SupportState;
use quantity::Si;

/// Every way that the lift leaves to the planner, the stated one first. One that no stand can make work is left out: a
/// machine without what the support state needs, an attachment of the wrong kind for the load, a load beyond the greatest
/// capacity that any chart of it prints.
pub(super) fn combinations(job: &Job, lift: &Lift) -> Vec<Lift> {
    let mut out = vec![lift.clone()];
    let choose = lift.choose;
    let hung = job.loads.get(lift.load).is_some_and(|l| l.hanging.is_some());
    for (i, unit) in job.machines.iter().enumerate() {
        if !choose.machine && i != lift.machine {
            continue;
        }
        for attachment in &unit.machine.attachments {
            // Whoever leaves the machine to the planner leaves what is on it too.
            let other = attachment.id != lift.attachment;
            if (other && !choose.attachment && !choose.machine) || attachment.hangs() != hung {
                continue;
            }
            for (_, support) in SupportState::WORDS {
                let asked = support == lift.support || choose.support;
                let way = Lift {
                    machine: i,
                    attachment: attachment.id.clone(),
                    support,
                    ..not_seen(lift, i, &attachment.id)
                };
                if asked && unit.machine.has(support) && !same(&way, lift) && could_lift(job, &way) {
                    out.push(way);
                }
            }
        }
    }
    out
}

/// The lift without what somebody saw or stated of other equipment: its lock, its tyres on stabilizers, sleeves on its
/// blades, what its bucket holds.
fn not_seen(lift: &Lift, machine: usize, attachment: &str) -> Lift {
    let mut lift = lift.clone();
    let other_machine = machine != lift.machine;
    if other_machine {
        (lift.front_tyres, lift.axle_locked, lift.levelled) = (None, false, false);
    }
    if other_machine || attachment != lift.attachment {
        lift.lock_seen = None;
        (lift.extensions, lift.bulk_volume, lift.side_shift) = (None, None, 0.0);
    }
    lift
}

fn same(a: &Lift, b: &Lift) -> bool {
    (a.machine, &a.attachment, a.support) == (b.machine, &b.attachment, b.support)
}

/// True unless every chart of it prints less than the load weighs: derating only takes away.
fn could_lift(job: &Job, lift: &Lift) -> bool {
    let (Some(unit), Some(load)) = (job.machines.get(lift.machine), job.loads.get(lift.load)) else { return false };
    let of_it = |c: &&machine::Chart| c.attachment == lift.attachment && c.support == lift.support;
    let greatest = unit
        .machine
        .charts
        .iter()
        .filter(of_it)
        .flat_map(|c| c.zones.iter().map(|z| z.capacity.si()))
        .fold(f64::NEG_INFINITY, f64::max);
    greatest >= load.mass_kg.high
}
