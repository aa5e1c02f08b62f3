//! The list of rooms, in the order in which arrows may run.

/// Rooms from the bottom up: each may depend on those before it. `true`: pure, that is no file,
/// clock, network, environment or randomness, and it builds for wasm32.
pub(crate) const ROOMS: [(&str, bool); 19] = [
    ("quantity", true),
    ("geometry", true),
    ("evidence", true),
    ("wording", true),
    ("machine", true),
    ("stability", true),
    ("ground", true),
    ("site", true),
    ("driving", true),
    ("planning", true),
    ("survey", true),
    ("jobfile", true),
    ("drawing", true),
    ("exchange", true),
    ("chart-tracing", true),
    ("report", false),
    ("records", false),
    ("server", false),
    ("cli", false),
];

/// Packages outside the rooms: no room may depend on them. With the folder each lies in.
pub(crate) const OUTSIDE: [(&str, &str); 2] = [("xtask", "xtask"), ("witness", "validation/witness")];

/// Folder of a package that is outside the rooms.
pub(crate) fn outside(room: &str) -> Option<&'static str> {
    OUTSIDE.iter().find(|(name, _)| *name == room).map(|(_, folder)| *folder)
}

/// Place of a room in the list.
pub(crate) fn place(room: &str) -> Option<usize> {
    ROOMS.iter().position(|(name, _)| *name == room)
}

/// True for a pure room.
pub(crate) fn is_pure(room: &str) -> bool {
    ROOMS.iter().any(|(name, pure)| *name == room && *pure)
}

/// The pure rooms that the workspace has.
pub(crate) fn pure_rooms(packages: &[crate::workspace::Package]) -> Vec<&str> {
    packages.iter().filter(|p| is_pure(&p.room)).map(|p| p.name.as_str()).collect()
}
