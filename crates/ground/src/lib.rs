//! What wheels and pads put on the ground, what carries them, what lies beside and below, and what carries the load. Pure.
//! SI; angles in radians.
//!
//! Under wheels and pads:
//! - [`Contact`]: area and pressure under a tyre or a pad
//! - [`Profile`], [`Layer`], [`Stated`], [`Strength`]: soil as stated by somebody, with every fault at once
//! - [`Prandtl`] and the factors `N_γ` by author; Terzaghi's from two tables, the lower counts
//! - [`ultimate_bearing`], [`least_bearing`]: a pad or a tyre's patch by five authors, or the most cautious
//! - [`bearing_on_profile`]: a pad on layered ground with water, every strength and every layer; several pads as one: [`bearing_below_top`]
//! - [`two_layer`]: load spread and punching through a stronger layer; [`platform`]: granular over clay
//! - [`rutting`]: ruts of wheels by shear strength, CBR or cone index
//! - [`presumed`]: presumed bearing values, for pads and mats, never for tyres
//! - [`FactorSet`]: partial factors of EN 1997-1 or one factor
//! - [`site_tests`]: strength as a range from plate, CBR, penetrometer, vane
//! - [`mats`]: mats by ground pressure, bending, shear and stiffness; the smallest that works
//! - [`BeamOnGround`]: a strip of mat on springs, closed form
//! - [`settlement`]: immediate settlement of pads, their tilt, and what the boom's head makes of it
//!
//! Beside and below:
//! - [`stress`]: vertical stress under loads on the surface, Boussinesq and 2:1 spread
//! - [`buried`]: stress and deflection of buried things under wheels
//! - [`lateral`]: sideways pressure of loads on walls, for the wall's designer
//! - [`edge_rules`]: distance from an edge by rule
//! - [`slope_section`], [`wedge`], [`slip_circle`], [`slip_search`]: the cut through an edge, and how it may slip
//! - [`edge_strength`], [`wheel_row`]: which strength counts beside an edge, and wheels as strips of load
//! - [`set_back`], [`set_back_store`], [`set_back_map`]: how near to an edge wheels may stand: solved, solved once and kept, in plan
//! - [`input_fault`]: everything wrong with the numbers of these
//!
//! Landings:
//! - [`beam`]: continuous beams, exact; [`worst_place`]: a load that may stand anywhere on one
//! - [`section`], [`timber`], [`deck`], [`plank`]: boards and joists under a pallet on its feet ([`pallet_feet`])
//! - [`slab`], [`slab_check`], [`concrete_age`]: a slab's bending, shear and punching, also while it hardens
//! - [`bay`], [`duty_class`], [`forklift`]: a bay's own rating with what lies there, and what a rating is not
//! - [`landing_carries`]: rating and structure together under one load
//! - [`room`]: room for the load, the people and the way back of the forks
//! - [`carried`]: demand and limit of a part, what governs, the largest load that fits

pub mod bay;
pub mod beam;
mod beam_member;
mod beam_on_ground;
mod beam_piece;
mod bearing;
mod bearing_en1997;
mod bearing_factors;
mod bearing_hansen;
mod bearing_meyerhof;
mod bearing_profile;
mod bearing_steps;
mod bearing_terzaghi;
mod bearing_vesic;
pub mod buried;
mod buried_place;
pub mod carried;
pub mod concrete_age;
mod contact;
pub mod cover;
pub mod deck;
pub mod duty_class;
pub mod edge_rules;
pub mod edge_strength;
pub mod edge_text;
mod effective_area;
mod even_load;
pub mod forklift;
pub mod input_fault;
pub mod landing_carries;
mod landing_range;
pub mod lateral;
mod lateral_forms;
pub mod mat_material;
mod mat_steps;
pub mod mats;
pub mod needed_mat;
pub mod pallet_feet;
pub mod partial_contact;
mod partial_factors;
pub mod plank;
pub mod platform;
pub mod presumed;
mod refusal;
pub mod room;
pub mod rutting;
pub mod section;
pub mod set_back;
pub mod set_back_map;
pub mod set_back_store;
mod set_back_walk;
pub mod settlement;
pub mod site_tests;
pub mod slab;
pub mod slab_check;
mod slab_steps;
pub mod slip_circle;
pub mod slip_search;
pub mod slope_section;
mod soil;
mod soil_faults;
mod step_values;
pub mod stress;
pub mod terzaghi_tables;
pub mod text;
pub mod timber;
pub mod two_layer;
pub mod wedge;
pub mod wheel_row;
pub mod worst_place;

pub use beam_on_ground::BeamOnGround;
pub use bearing::{Bearing, BearingCase, Method, least_bearing, ultimate_bearing};
pub use bearing_factors::{Prandtl, TerzaghiFactors, n_gamma_en1997, n_gamma_hansen, n_gamma_meyerhof, n_gamma_vesic};
pub use bearing_profile::{PadOnProfile, REACH, TwoStrengths, bearing_below_top, bearing_on_profile};
pub use contact::Contact;
pub use effective_area::{Effective, Footprint, Load};
pub use partial_factors::{FactorSet, Loads};
pub use refusal::{Lacks, Refusal};
pub use soil::{GroundState, Layer, Profile, Stated, Stiffness, Strength, WATER, water_factors, weight_in_wedge};
