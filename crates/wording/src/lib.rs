//! Every text for people, rendered from ids in English and Spanish

pub mod ui;
