//! SVG drawings: side elevation and load chart
