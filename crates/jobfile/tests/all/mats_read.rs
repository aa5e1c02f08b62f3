//! Declared mats as read: how they spread a load.

use crate::folder::{demo, text};
use crate::shown;
use ground::mat_material::Spreads;

/// The demo job with one declared mat, `more` among its values.
fn read(more: &str) -> Result<Spreads, String> {
    let mut folder = demo();
    let job = text(&folder, "job.toml")
        + "\n[[mat]]\nid = \"x\"\nname = \"X\"\nsource = \"stated\"\nlength = \"1.2 m\"\nwidth = \"1 m\"\nthickness = \"80 mm\"\n"
        + &format!(
            "declared = {{ bending = \"15 MPa\", shear = \"3 MPa\", modulus = \"1500 MPa\", {more}by = \"M. Mat\" }}\n"
        );
    folder.insert("job.toml".into(), job.clone().into_bytes());
    match jobfile::read_job(&folder) {
        Ok((job, _)) => Ok(job.mats.last().unwrap().mat.material.spreads),
        Err(faults) => Err(format!("{:#?}", shown::all(&faults, &job))),
    }
}

/// Nobody said that it is a plate: along its planks.
#[test]
fn a_declared_mat_is_a_plate_only_where_somebody_says_so() {
    assert_eq!(read(""), Ok(Spreads::AlongPlanks));
    assert_eq!(read("spreads = \"planks\", "), Ok(Spreads::AlongPlanks));
    assert_eq!(read("spreads = \"plate\", "), Ok(Spreads::BothWays));
    let wrong = read("spreads = \"plates\", ").unwrap_err();
    assert!(wrong.contains("bad-choice") && wrong.contains("plate"), "{wrong}");
}
