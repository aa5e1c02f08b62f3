//! A site in one file: compact, versioned, opened at once. `docs/site-files.md` has the form.
//!
//! ```text
//! 8 bytes   89 'CPSITE' 0A
//! u32       version, little-endian (all numbers are)
//! u32       length of the head in bytes
//! head      JSON: everything but the long lists
//! blocks    each: u32 length, u32 CRC-32 of the packed bytes, packed bytes (deflate)
//! ```
//!
//! Long lists (heights of grids, points and triangles, tops of columns) are differences of whole
//! numbers as variable-length bytes. Heights and tops are kept to the millimetre, places of triangles'
//! corners to a tenth of it; triangles thinner than that are left out.

mod form;
mod pack;
mod read;
mod surfaces;
mod write;

pub use form::{SourceRecord, Used};
pub use read::read_stored;
pub use write::{StoreError, write_stored};

/// A site with the record of what it was made from.
#[derive(Debug, Clone, Default)]
pub struct StoredSite {
    /// The site.
    pub site: site::Site,
    /// The files that were brought in, in order.
    pub records: Vec<SourceRecord>,
    /// Things that wait for ground.
    pub waiting: Vec<crate::Waiting>,
}

/// The version that this program writes, and the only one that it reads.
pub(crate) const VERSION: u32 = 1;
