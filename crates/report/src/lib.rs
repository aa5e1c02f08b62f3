//! PDF plan sheet from a plan and its drawings
