//! The key directory that GeoTIFF files, and LAS files after them, describe coordinates with
//! (OGC 19-008r4, requirements class "GeoKeyDirectoryTag").

/// Keys with their parameters.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct GeoKeys {
    directory: Vec<u16>,
    doubles: Vec<f64>,
    ascii: Vec<u8>,
}

impl GeoKeys {
    /// `directory`: tag 34735 with its header of four; `doubles`: tag 34736; `ascii`: tag 34737.
    pub(crate) fn new(directory: Vec<u16>, doubles: Vec<f64>, ascii: Vec<u8>) -> Self {
        Self { directory, doubles, ascii }
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.directory.len() < 8
    }

    /// The entry of a key: where its value is (0: in the entry), how many, value or offset.
    fn entry(&self, key: u16) -> Option<(u16, usize, u16)> {
        let entry = self.directory.get(4..)?.chunks_exact(4).find(|e| e[0] == key)?;
        Some((entry[1], usize::from(entry[2]), entry[3]))
    }

    /// A value that stands in the directory itself.
    pub(crate) fn short(&self, key: u16) -> Option<u16> {
        self.entry(key).filter(|e| e.0 == 0).map(|e| e.2)
    }

    /// The first double of a key.
    pub(crate) fn double(&self, key: u16) -> Option<f64> {
        let (place, _, offset) = self.entry(key)?;
        if place == 34736 { self.doubles.get(usize::from(offset)).copied() } else { None }
    }

    /// A text of a key, without its closing bar.
    pub(crate) fn text(&self, key: u16) -> Option<String> {
        let (place, count, offset) = self.entry(key)?;
        let start = usize::from(offset);
        let bytes = self.ascii.get(start..start.checked_add(count)?).filter(|_| place == 34737)?;
        let text = String::from_utf8_lossy(bytes);
        let text = text.trim_matches(['|', '\0', ' ']).to_owned();
        (!text.is_empty()).then_some(text)
    }
}

/// Little-endian shorts of a record; an odd byte at the end is left out.
pub(crate) fn shorts_from_le(bytes: &[u8]) -> Vec<u16> {
    bytes.chunks_exact(2).map(|b| u16::from_le_bytes([b[0], b[1]])).collect()
}

/// Little-endian doubles of a record.
pub(crate) fn doubles_from_le(bytes: &[u8]) -> Vec<f64> {
    bytes.chunks_exact(8).map(|b| f64::from_le_bytes([b[0], b[1], b[2], b[3], b[4], b[5], b[6], b[7]])).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_stand_in_the_entry_or_beside_it() {
        let keys = GeoKeys::new(
            vec![1, 1, 0, 3, 3076, 0, 1, 9003, 3077, 34736, 1, 1, 1026, 34737, 5, 2],
            vec![7.0, 0.3],
            b"..Lund|".to_vec(),
        );
        assert_eq!(keys.short(3076), Some(9003));
        assert_eq!(keys.double(3077), Some(0.3));
        assert_eq!(keys.text(1026).as_deref(), Some("Lund"));
        assert_eq!(keys.short(3072), None);
    }

    #[test]
    fn offsets_beyond_the_end_are_no_value() {
        let keys = GeoKeys::new(vec![1, 1, 0, 2, 3077, 34736, 1, 9, 1026, 34737, 60000, 60000], vec![1.0], vec![b'a']);
        assert_eq!(keys.double(3077), None);
        assert_eq!(keys.text(1026), None);
    }
}
