//! The things of a site, with an index of their places that is never out of date.

use crate::{Thing, ThingIndex};
use std::ops::{Deref, DerefMut};
use std::sync::OnceLock;

/// A list of things that is indexed when something is first looked for near a place.
///
/// It is read and changed as the `Vec` that it holds. Whoever may change it takes the index with that:
/// the next question makes another one.
#[derive(Debug, Clone, Default)]
pub struct Things {
    list: Vec<Thing>,
    index: OnceLock<ThingIndex>,
}

impl Things {
    /// [`ThingIndex::within`] of these things.
    pub fn within(&self, at: geometry::DVec2, reach: f64) -> Vec<usize> {
        self.index.get_or_init(|| ThingIndex::new(&self.list)).within(at, reach)
    }
}

impl Deref for Things {
    type Target = Vec<Thing>;
    fn deref(&self) -> &Vec<Thing> {
        &self.list
    }
}

impl DerefMut for Things {
    fn deref_mut(&mut self) -> &mut Vec<Thing> {
        self.index.take();
        &mut self.list
    }
}

impl PartialEq for Things {
    fn eq(&self, other: &Self) -> bool {
        self.list == other.list
    }
}

impl From<Vec<Thing>> for Things {
    fn from(list: Vec<Thing>) -> Self {
        Self { list, index: OnceLock::new() }
    }
}

impl FromIterator<Thing> for Things {
    fn from_iter<I: IntoIterator<Item = Thing>>(things: I) -> Self {
        Vec::from_iter(things).into()
    }
}

impl IntoIterator for Things {
    type Item = Thing;
    type IntoIter = std::vec::IntoIter<Thing>;
    fn into_iter(self) -> Self::IntoIter {
        self.list.into_iter()
    }
}

impl<'a> IntoIterator for &'a Things {
    type Item = &'a Thing;
    type IntoIter = std::slice::Iter<'a, Thing>;
    fn into_iter(self) -> Self::IntoIter {
        self.list.iter()
    }
}

impl<'a> IntoIterator for &'a mut Things {
    type Item = &'a mut Thing;
    type IntoIter = std::slice::IterMut<'a, Thing>;
    fn into_iter(self) -> Self::IntoIter {
        self.deref_mut().iter_mut()
    }
}
