//! A map from keys to small numbers: open addressing, no order, the same on every platform.

/// No number.
const NONE: u32 = u32::MAX;

/// Numbers by key.
#[derive(Debug, Clone)]
pub(crate) struct KeyMap {
    slots: Vec<(u64, u32)>,
    used: usize,
}

impl KeyMap {
    pub(crate) fn new() -> Self {
        Self { slots: vec![(0, NONE); 1 << 14], used: 0 }
    }

    /// The number of a key, and the number it had: `number` is kept if it had none.
    pub(crate) fn get_or_insert(&mut self, key: u64, number: u32) -> u32 {
        if self.used * 2 >= self.slots.len() {
            self.grow();
        }
        let slot = self.slot(key);
        if self.slots[slot].1 == NONE {
            self.slots[slot] = (key, number);
            self.used += 1;
        }
        self.slots[slot].1
    }

    /// The slot of a key, or the free one where it belongs.
    fn slot(&self, key: u64) -> usize {
        let mask = self.slots.len() - 1;
        // The multiplier of Fibonacci hashing, 2⁶⁴/φ (Knuth, The art of computer programming 3, 6.4).
        let mut at = (key.wrapping_mul(0x9E37_79B9_7F4A_7C15) >> 24) as usize & mask;
        while self.slots[at].1 != NONE && self.slots[at].0 != key {
            at = (at + 1) & mask;
        }
        at
    }

    fn grow(&mut self) {
        let larger = vec![(0, NONE); self.slots.len() * 4];
        let old = core::mem::replace(&mut self.slots, larger);
        for entry in old.into_iter().filter(|e| e.1 != NONE) {
            let slot = self.slot(entry.0);
            self.slots[slot] = entry;
        }
    }
}
