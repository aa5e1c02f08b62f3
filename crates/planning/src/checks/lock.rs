//! The lock of the attachment: a look at it counts from when it was made until the next change.

use crate::Lift;
use crate::context::Context;
use machine::{Coupling, LockSeen};

/// What is known of the lock when the lift begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Lock {
    /// Seen closed, and nothing was changed since.
    Closed,
    /// Seen closed this morning; the attachment was put on since, or may have been.
    Changed,
    /// Nobody looked.
    NotSeen,
    /// Seen open.
    Open,
}

/// Lifts of a job run in order on each machine. A run is what one attachment does without another one
/// in between. A look at the lock (`lock_seen` of a lift) counts for the rest of its run. The
/// look of the morning counts only in the machine's first run, and there from its second lift on: the
/// first lift comes after putting the attachment on, unless it is bolted.
pub(crate) fn lock(ctx: &Context<'_>) -> Lock {
    let morning = ctx
        .unit
        .attachment_lock
        .iter()
        .find(|(id, _)| *id == ctx.lift.attachment)
        .map_or(LockSeen::NotSeen, |(_, seen)| *seen);
    if morning == LockSeen::Open {
        return Lock::Open;
    }
    let here = ctx.job.lifts.iter().position(|l| l.id == ctx.lift.id).unwrap_or(0);
    let before: Vec<&Lift> = ctx.job.lifts[..here].iter().filter(|l| l.machine == ctx.lift.machine).collect();
    let run = before.iter().rev().take_while(|l| l.attachment == ctx.lift.attachment).count();
    let run = &before[before.len() - run..];
    if ctx.lift.lock_seen.is_some() || run.iter().any(|l| l.lock_seen.is_some()) {
        return Lock::Closed;
    }
    let bolted = ctx.attachment.is_some_and(|a| a.coupling == Some(Coupling::Fixed));
    let first_run = run.len() == before.len();
    match morning {
        LockSeen::Locked if first_run && (bolted || !run.is_empty()) => Lock::Closed,
        LockSeen::Locked => Lock::Changed,
        LockSeen::NotSeen | LockSeen::Open => Lock::NotSeen,
    }
}
