//! Makes a found way cheaper: detours that the lattice left are replaced by words.

use crate::search::{Search, legs};
use crate::{DriveMap, Leg, Motion, PlanPose, clear};

/// Poses between which words are tried, at most.
const PLACES: usize = 24;

/// Legs that cost no more than those given, from and to the same poses, free too. Each end of a replaced part
/// is one of the way's own poses.
pub(crate) fn shorten<M: DriveMap>(search: &Search<'_, M>, given: &[Leg]) -> Vec<Leg> {
    let Some(first) = given.first() else { return Vec::new() };
    let from = first.from;
    let mut pieces = cut(search, given);
    for _ in 0..2 {
        let mut out: Vec<Piece> = Vec::new();
        let mut at = 0;
        while at < pieces.len() {
            let Some((next, motions)) = replaced(search, &pieces, at, out.last().map(|p| p.motion)) else {
                out.push(pieces[at]);
                at += 1;
                continue;
            };
            let mut pose = pieces[at].from;
            for motion in motions {
                out.push(Piece { from: pose, motion, cost: cost(search, &pose, &motion) });
                pose = motion.end(search.vehicle, &pose);
            }
            at = next;
        }
        let motions: Vec<Motion> = out.iter().map(|p| p.motion).collect();
        pieces = cut(search, &legs(search.vehicle, from, &motions));
    }
    let motions: Vec<Motion> = pieces.iter().map(|p| p.motion).collect();
    legs(search.vehicle, from, &motions)
}

/// A part of a leg.
#[derive(Debug, Clone, Copy)]
struct Piece {
    from: PlanPose,
    motion: Motion,
    cost: f64,
}

/// Legs cut into pieces about as long as the way over [`PLACES`].
fn cut<M: DriveMap>(search: &Search<'_, M>, legs: &[Leg]) -> Vec<Piece> {
    let length: f64 = legs.iter().map(|l| l.motion.length.abs()).sum();
    let size = (length / PLACES as f64).max(search.settings.step);
    let mut out = Vec::new();
    for leg in legs {
        let parts = (leg.motion.length.abs() / size).ceil().max(1.0);
        let part = leg.motion.length / parts;
        for k in 0..parts as usize {
            let from = leg.motion.at(search.vehicle, &leg.from, part * k as f64);
            let motion = leg.motion.up_to(part);
            out.push(Piece { from, motion, cost: cost(search, &from, &motion) });
        }
    }
    out
}

/// Cost of a free motion; infinite where it may not be driven as stated.
fn cost<M: DriveMap>(search: &Search<'_, M>, from: &PlanPose, motion: &Motion) -> f64 {
    clear::cost(search.map, search.vehicle, from, motion).map_or(f64::INFINITY, |c| c * search.factor(motion))
}

/// Motions that replace the pieces from `at` on, and the piece where they end: the longest part that a
/// cheaper free word replaces.
fn replaced<M: DriveMap>(
    search: &Search<'_, M>,
    pieces: &[Piece],
    at: usize,
    before: Option<Motion>,
) -> Option<(usize, Vec<Motion>)> {
    // Costs with changes up to each later piece's begin.
    let mut upto = vec![0.0];
    let mut last = before;
    for piece in &pieces[at..] {
        let sum = upto[upto.len() - 1] + search.change(last.as_ref(), &piece.motion) + piece.cost;
        upto.push(sum);
        last = Some(piece.motion);
    }
    (2..upto.len()).rev().find_map(|count| {
        let next = pieces.get(at + count);
        let to = next.map_or_else(|| *search.field.target(), |p| p.from);
        let last = &pieces[at + count - 1].motion;
        // What follows must not cost more for what comes before it.
        let kept = next.map_or(0.0, |n| search.change(Some(last), &n.motion));
        let (cost, motions) = search.word_between(&pieces[at].from, &to, before.as_ref(), upto[count] + kept, 1)?;
        let then = next.map_or(0.0, |n| search.change(motions.last(), &n.motion));
        (cost + then + LEAST_GAIN < upto[count] + kept).then_some((at + count, motions))
    })
}

/// What a replacement must save to be worth it, m.
const LEAST_GAIN: f64 = 0.05;
