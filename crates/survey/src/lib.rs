//! Readers of survey files from bytes: LAS/LAZ, GeoTIFF, CSV levels
