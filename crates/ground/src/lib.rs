//! What wheels and pads put on the ground, and what it carries. Pure. SI; angles in radians.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//! - [`Profile`], [`Layer`], [`Stated`], [`Strength`]: soil as stated by somebody, with every fault at once
//! - [`Prandtl`] and the factors `N_γ` by author; Terzaghi's from two tables, the lower counts
//! - [`ultimate_bearing`], [`least_bearing`]: a pad or a tyre's patch by five authors, or the most cautious
//! - [`bearing_on_profile`]: a pad on layered ground with water, every strength and every layer in reach
//! - [`two_layer`]: load spread and punching through a stronger layer; [`platform`]: granular over clay
//! - [`rutting`]: ruts of wheels by shear strength, CBR or cone index
//! - [`presumed`]: presumed bearing values, for pads and mats, never for tyres
//! - [`FactorSet`]: partial factors of EN 1997-1 or one factor
//! - [`site_tests`]: strength as a range from plate, CBR, penetrometer, vane
//! - [`mats`]: mats by ground pressure, bending, shear and stiffness; the smallest that works
//! - [`BeamOnGround`]: a strip of mat on springs, closed form
//! - [`settlement`]: immediate settlement of pads, their tilt, and what the boom's head makes of it

mod beam_on_ground;
mod bearing;
mod bearing_en1997;
mod bearing_factors;
mod bearing_hansen;
mod bearing_meyerhof;
mod bearing_profile;
mod bearing_steps;
mod bearing_terzaghi;
mod bearing_vesic;
mod contact;
mod effective_area;
pub mod mat_material;
pub mod mats;
pub mod needed_mat;
pub mod partial_contact;
mod partial_factors;
pub mod platform;
pub mod presumed;
mod refusal;
pub mod rutting;
pub mod settlement;
pub mod site_tests;
mod soil;
mod soil_faults;
mod step_values;
pub mod terzaghi_tables;
pub mod text;
pub mod two_layer;

pub use beam_on_ground::BeamOnGround;
pub use bearing::{Bearing, BearingCase, Method, least_bearing, ultimate_bearing};
pub use bearing_factors::{Prandtl, TerzaghiFactors, n_gamma_en1997, n_gamma_hansen, n_gamma_meyerhof, n_gamma_vesic};
pub use bearing_profile::{PadOnProfile, REACH, TwoStrengths, bearing_on_profile};
pub use contact::Contact;
pub use effective_area::{Effective, Footprint, Load};
pub use partial_factors::{FactorSet, Loads};
pub use refusal::{Lacks, Refusal};
pub use soil::{GroundState, Layer, Profile, Stated, Stiffness, Strength, WATER, water_factors, weight_in_wedge};
