//! Statics: centre of gravity, reactions, tipping, required reserve, wind
