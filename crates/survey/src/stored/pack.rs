//! Lists of whole numbers as bytes, and bytes as blocks.

/// Appends a number: seven bits a byte, the least first; small ones either side of zero are short.
pub(super) fn push(out: &mut Vec<u8>, value: i64) {
    let mut rest = ((value << 1) ^ (value >> 63)).cast_unsigned();
    while rest >= 0x80 {
        out.push((rest & 0x7F) as u8 | 0x80);
        rest >>= 7;
    }
    out.push(rest as u8);
}

/// Takes numbers off a block.
pub(super) struct Numbers<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl<'a> Numbers<'a> {
    pub(super) fn new(bytes: &'a [u8]) -> Self {
        Self { bytes, at: 0 }
    }

    /// The next number; `None` at the end or where the bytes are no number.
    pub(super) fn next(&mut self) -> Option<i64> {
        let mut value = 0_u64;
        for shift in (0..64).step_by(7) {
            let byte = *self.bytes.get(self.at)?;
            self.at += 1;
            let bits = u64::from(byte & 0x7F);
            if shift == 63 && bits > 1 {
                return None;
            }
            value |= bits << shift;
            if byte & 0x80 == 0 {
                return Some((value >> 1).cast_signed() ^ -(value & 1).cast_signed());
            }
        }
        None
    }

    /// True if nothing is left.
    pub(super) fn done(&self) -> bool {
        self.at == self.bytes.len()
    }
}

/// Appends a block: length, CRC-32, deflated bytes.
pub(super) fn push_block(out: &mut Vec<u8>, plain: &[u8]) -> Option<()> {
    let packed = miniz_oxide::deflate::compress_to_vec(plain, 6);
    out.extend(u32::try_from(packed.len()).ok()?.to_le_bytes());
    out.extend(crc32fast::hash(&packed).to_le_bytes());
    out.extend(packed);
    Some(())
}

/// Why a block is none.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum BadBlock {
    /// The file ends in it.
    Cut,
    /// Its bytes are not those that were written.
    Damaged,
}

/// Takes a block off the front. At most `most` bytes are unpacked.
pub(super) fn take_block(bytes: &mut &[u8], most: usize) -> Result<Vec<u8>, BadBlock> {
    let head = bytes.get(..8).ok_or(BadBlock::Cut)?;
    let word = |i: usize| u32::from_le_bytes([head[i], head[i + 1], head[i + 2], head[i + 3]]);
    let (length, sum) = (word(0) as usize, word(4));
    let packed = bytes.get(8..8_usize.saturating_add(length)).ok_or(BadBlock::Cut)?;
    if crc32fast::hash(packed) != sum {
        return Err(BadBlock::Damaged);
    }
    *bytes = &bytes[8 + length..];
    miniz_oxide::inflate::decompress_to_vec_with_limit(packed, most).map_err(|_| BadBlock::Damaged)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_come_back() {
        let all = [0, 1, -1, 63, 64, -64, -65, 1 << 40, -(1 << 40), i64::MAX, i64::MIN];
        let mut bytes = Vec::new();
        for n in all {
            push(&mut bytes, n);
        }
        let mut numbers = Numbers::new(&bytes);
        for n in all {
            assert_eq!(numbers.next(), Some(n));
        }
        assert!(numbers.done() && numbers.next().is_none());
        assert_eq!(Numbers::new(&[0xFF; 20]).next(), None, "no end");
    }

    #[test]
    fn a_block_that_unpacks_without_end_is_refused() {
        let mut bytes = Vec::new();
        push_block(&mut bytes, &vec![0; 10_000_000]);
        assert_eq!(take_block(&mut bytes.as_slice(), 1000), Err(BadBlock::Damaged));
        assert_eq!(take_block(&mut &bytes[..bytes.len() - 1], 10_000_000), Err(BadBlock::Cut));
        bytes[9] ^= 1;
        assert_eq!(take_block(&mut bytes.as_slice(), 10_000_000), Err(BadBlock::Damaged));
    }
}
