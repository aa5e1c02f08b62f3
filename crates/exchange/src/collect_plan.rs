//! A plan on the site of its job, as items.

use crate::about::About;
use crate::collect_site;
use crate::collect_things::word;
use crate::item::{Drawn, Item, Position, Properties, Shape};
use crate::scene::{Scene, Under, View, rings};
use crate::{layer, ring, text};
use geometry::{DVec2, heading_from_degrees};
use machine::Machine;
use planning::{Job, LiftPlan, Plan};
use site::{PlanArea, PlanShape};

/// The parts of a job that are its site. Its coordinate system is not stated.
pub(crate) fn site_of(job: &Job) -> View<'_> {
    View {
        name: &job.site,
        epsg: None,
        ground: &job.ground,
        lines: &job.lines,
        landings: &job.landings,
        gates: &job.gates,
        surroundings: &job.surroundings,
    }
}

/// The site, and for every lift its stand, the machine's outline on it and the straight line to the landing.
pub(crate) fn collect<'a>(job: &'a Job, plan: &Plan, about: &About) -> Scene<'a> {
    let view = site_of(job);
    let about = &About { invented: about.invented || plan.head.invented, ..about.clone() };
    let mut scene = collect_site::collect(&view, about);
    scene.name = format!("{} · {}", plan.head.site, plan.head.job);
    let said = text::NOTE_PLAN
        .with("job", plan.head.job.as_str())
        .with("date", plan.head.date.as_str())
        .with("verdict", about.wording.verdict(plan.verdict))
        .with("digest", plan.digest.as_str());
    scene.notes.push(about.wording.render(&said));
    scene.notes.extend(plan.cautions.iter().chain(&plan.ends_when).map(|m| about.wording.render(m)));
    let under = Under { ground: view.ground, floor: scene.floor };
    for (index, (planned, lift)) in plan.lifts.iter().zip(&job.lifts).enumerate() {
        let machine = job.machines.get(lift.machine).map(|m| &m.machine);
        let landing = job.landings.get(lift.landing).map(|l| l.at.extend(l.level));
        scene.items.extend(stand(index, planned, machine, landing, &under, about));
    }
    scene
}

fn stand(
    index: usize,
    lift: &LiftPlan,
    machine: Option<&Machine>,
    landing: Option<geometry::DVec3>,
    under: &Under<'_>,
    about: &About,
) -> Vec<Item> {
    let say = |message: evidence::Message| about.wording.render(&message);
    let at = DVec2::new(lift.stand.east_m, lift.stand.north_m);
    let wheels: Option<Vec<f64>> = lift.stand.wheel_heights_m.iter().copied().collect();
    // A level for drawing: the mean of the four wheels. The plan itself has the machine lean as the ground does.
    let level = wheels.map(|z| z.iter().sum::<f64>() * 0.25);
    let doubts = if level.is_none() { vec![text::GROUND_NOT_KNOWN] } else { Vec::new() };
    let drawn_at = level.unwrap_or(under.floor);
    let key = |kind: &str| collect_site::keyed(kind, index, &lift.id);
    let heading = heading_from_degrees(lift.stand.heading_deg);

    let mut out = vec![Item {
        layer: layer::STAND,
        key: key("stand"),
        name: say(text::STAND_OF.with("lift", lift.name.as_str())),
        doubts: doubts.clone(),
        properties: of_stand(lift, about),
        shape: Shape::Point(Position(at, level)),
        drawn: vec![Drawn::Cross { at: at.extend(drawn_at), size: 1.0 }],
    }];
    if let Some(machine) = machine {
        let o = &machine.outline;
        let area = PlanArea { outer: ring::rectangle(at, heading, (o.rear, o.front), o.half_width), holes: Vec::new() };
        let mut properties = Properties::default();
        properties.add("kind", "machine");
        properties.add("lift", lift.id.as_str());
        properties.add("machine", lift.machine.as_str());
        properties.number("frame_top_m", o.frame_top);
        properties.number("cab_top_m", o.cab_top);
        let flat = |ring: &[DVec2]| ring.iter().map(|p| Position(*p, level)).collect();
        let name = text::MACHINE_OF.with("machine", lift.machine.as_str()).with("lift", lift.name.as_str());
        out.push(Item {
            layer: layer::MACHINE,
            key: key("machine"),
            name: say(name),
            doubts,
            properties,
            shape: Shape::Area(rings(&area, flat)),
            drawn: vec![Drawn::Upright {
                shape: PlanShape::Area(area),
                base: drawn_at + o.ground_clearance,
                top: drawn_at + o.frame_top,
                openings: Vec::new(),
            }],
        });
    }
    if let Some(end) = landing {
        let mut properties = Properties::default();
        properties.add("kind", "load-way");
        properties.add("lift", lift.id.as_str());
        properties.add("load", lift.load.name.as_str());
        properties.number("length_in_plan_m", at.distance(end.truncate()));
        out.push(Item {
            layer: layer::WAY,
            key: key("load-way"),
            name: say(text::WAY_OF.with("lift", lift.name.as_str())),
            doubts: Vec::new(),
            properties,
            shape: Shape::Line(vec![Position(at, level), Position(end.truncate(), level.map(|_| end.z))]),
            drawn: vec![Drawn::Curve(vec![at.extend(drawn_at), end])],
        });
    }
    out
}

fn of_stand(lift: &LiftPlan, about: &About) -> Properties {
    let stand = &lift.stand;
    let mut p = Properties::default();
    p.add("kind", "stand");
    p.add("lift", lift.id.as_str());
    p.add("name", lift.name.as_str());
    p.add("verdict", word(lift.verdict));
    p.add("governed_by", lift.governing_finding().map(|f| about.wording.render(&f.message)));
    p.add("task", word(lift.task));
    p.add("machine", lift.machine.as_str());
    p.add("attachment", lift.attachment.as_str());
    p.add("support", word(lift.support));
    p.add("landing", lift.landing.as_str());
    p.add("load", lift.load.name.as_str());
    p.ranged(["load_kg", "load_low_kg", "load_high_kg"], Some(lift.load.mass_kg));
    p.add("load_certainty", word(lift.load.certainty));
    p.number("heading_deg", stand.heading_deg);
    for (name, height) in
        ["front_left_m", "front_right_m", "rear_left_m", "rear_right_m"].into_iter().zip(stand.wheel_heights_m)
    {
        p.number(name, height);
    }
    p.ranged(["slope_along", "slope_along_low", "slope_along_high"], stand.slope_along);
    p.ranged(["slope_across", "slope_across_low", "slope_across_high"], stand.slope_across);
    p.number("boom_angle_deg", stand.boom_angle_rad.map(f64::to_degrees));
    p.number("extension_m", stand.extension_m);
    p.number("reach_m", stand.reach_m);
    p.number("height_m", stand.height_m);
    p
}
