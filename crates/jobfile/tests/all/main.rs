//! Files as users write them: what is read, and what is said of what cannot be read.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "tests")]

mod attachments;
mod broken;
mod charts;
mod deleted_keys;
mod documented;
mod examples;
mod faults_ground;
mod faults_job;
mod faults_machine;
mod folder;
mod job_plan_keys;
mod loads_listed;
mod loads_read;
mod mats_read;
mod needs;
mod robust;
mod schema_files;
mod shown;
mod site_from;
mod starter;
mod today;
