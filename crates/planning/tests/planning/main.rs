//! Plans against the outside: demo charts from statics, line distances, verdicts, real ground.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::print_stderr,
    clippy::panic,
    clippy::type_complexity,
    clippy::disallowed_methods,
    reason = "tests"
)]

mod attachments;
mod boom_distances;
mod boom_rig;
mod boom_ways;
mod carried;
mod charts;
mod contacts;
mod corners;
mod identity;
mod incident_site;
mod incident_table;
mod incidents;
mod incidents_more;
mod landings;
mod lines;
mod loads;
mod machine_charts;
mod never_pass;
mod order_of_jobs;
mod ordering;
mod real_ground;
mod routes;
mod routines;
mod sampled;
mod samples;
mod set_backs;
mod settling;
mod slewing;
mod stand_field;
mod standing;
mod stops;
mod surroundings;
mod tolerances;
mod under_mats;
mod units;
mod workspace;
