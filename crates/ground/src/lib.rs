//! What the wheels put on the ground and what it carries
