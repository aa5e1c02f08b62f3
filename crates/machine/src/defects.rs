//! What may be wrong with a load, and what that means for lifting it.
//!
//! Each rule is common practice of the trade: no single source. A defect that may let the load fall
//! apart or slide off is no-go until it is repacked; one that a person can allow for on the spot is
//! a condition with its own text; contents nobody knows cannot be told.

use evidence::Status;

/// A defect as seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Defect {
    /// Pallet with broken boards, stringers or blocks: the forks may come through.
    BrokenPallet,
    /// Bands slack, cut or missing: layers shift when tilted back.
    LooseBands,
    /// Film torn or open: what it held may fall from height.
    TornWrap,
    /// Two packs on each other, not tied to one unit: the upper one slides.
    DoubleStacked,
    /// Stack out of plumb: its centre is not where it is reckoned.
    Leaning,
    /// Pieces reach over the pallet's edge: they catch on edges and toe boards.
    Overhanging,
    /// Single pieces lie loose on it: they fall.
    LoosePieces,
    /// Frozen to the ground or to each other: breaks loose with a jerk, or not at all.
    Frozen,
    /// Soaked: heavier than its papers, and slippery on the forks.
    Wet,
    /// Ice or snow on it: weight that slides off.
    IceOrSnow,
    /// Nobody knows what is in it.
    UnknownContents,
    /// Something runs out: weight and centre change, the ground gets slippery.
    Leaking,
    /// Sides bulge: the pack is giving way.
    Bulging,
}

impl Defect {
    /// Every defect with its word, in the order of the manual.
    pub const ALL: [(&'static str, Self); 13] = [
        ("broken-pallet", Self::BrokenPallet),
        ("loose-bands", Self::LooseBands),
        ("torn-wrap", Self::TornWrap),
        ("double-stacked", Self::DoubleStacked),
        ("leaning", Self::Leaning),
        ("overhanging", Self::Overhanging),
        ("loose-pieces", Self::LoosePieces),
        ("frozen", Self::Frozen),
        ("wet", Self::Wet),
        ("ice-or-snow", Self::IceOrSnow),
        ("unknown-contents", Self::UnknownContents),
        ("leaking", Self::Leaking),
        ("bulging", Self::Bulging),
    ];

    /// What a lift of a load with it is (common practice).
    pub fn status(self) -> Status {
        match self {
            Self::BrokenPallet
            | Self::LooseBands
            | Self::DoubleStacked
            | Self::Leaning
            | Self::LoosePieces
            | Self::Leaking
            | Self::Bulging => Status::NoGo,
            Self::TornWrap | Self::Overhanging | Self::Frozen | Self::Wet | Self::IceOrSnow => Status::Condition,
            Self::UnknownContents => Status::CannotTell,
        }
    }
}
