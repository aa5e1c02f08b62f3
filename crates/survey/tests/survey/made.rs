//! Small files made in memory with the format crates.

use las::point::{Classification, Format};
use las::{Builder, Point, Vlr, Writer};
use std::io::Cursor;
use tiff::encoder::{TiffEncoder, colortype};
use tiff::tags::Tag;

/// A cloud: `side` × `side` points a metre apart from (1000, 2000), height 10 + east / 10.
pub(crate) struct Cloud {
    pub(crate) side: u32,
    pub(crate) format: u8,
    pub(crate) compressed: bool,
    /// Class of every point.
    pub(crate) class: u8,
    /// GeoTIFF keys: (key, value).
    pub(crate) keys: Vec<(u16, u16)>,
    /// Well-known text.
    pub(crate) text: Option<&'static str>,
    /// First easting.
    pub(crate) east: f64,
    /// Every third point is withheld and 100 m too high.
    pub(crate) withheld: bool,
}

impl Default for Cloud {
    fn default() -> Self {
        Self {
            side: 12,
            format: 1,
            compressed: false,
            class: 2,
            keys: vec![(1024, 1), (3076, 9001)],
            text: None,
            east: 1000.0,
            withheld: false,
        }
    }
}

impl Cloud {
    pub(crate) fn bytes(&self) -> Vec<u8> {
        let mut builder = Builder::from((1, if self.format >= 6 { 4 } else { 2 }));
        builder.point_format = Format::new(self.format).unwrap();
        builder.point_format.is_compressed = self.compressed;
        let t = las::Transform { scale: 0.001, offset: 0.0 };
        builder.transforms = las::Vector { x: t, y: t, z: t };
        if !self.keys.is_empty() {
            let mut directory = vec![1, 1, 0, self.keys.len() as u16];
            directory.extend(self.keys.iter().flat_map(|&(key, value)| [key, 0, 1, value]));
            let data = directory.iter().flat_map(|v| v.to_le_bytes()).collect();
            builder.vlrs.push(projection(34735, data));
        }
        if let Some(text) = self.text {
            builder.vlrs.push(projection(2112, text.as_bytes().to_vec()));
            builder.has_wkt_crs = self.format >= 6;
        }
        let mut writer = Writer::new(Cursor::new(Vec::new()), builder.into_header().unwrap()).unwrap();
        for i in 0..self.side * self.side {
            let (col, row) = (f64::from(i % self.side), f64::from(i / self.side));
            let withheld = self.withheld && i % 3 == 1;
            let format = writer.header().point_format();
            let point = Point {
                x: self.east + col,
                y: 2000.0 + row,
                z: 10.0 + col / 10.0 + if withheld { 100.0 } else { 0.0 },
                classification: Classification::new(self.class).unwrap(),
                is_withheld: withheld,
                gps_time: format.has_gps_time.then_some(f64::from(i)),
                color: format.has_color.then(las::Color::default),
                nir: format.has_nir.then_some(0),
                return_number: 1,
                number_of_returns: 1,
                ..Point::default()
            };
            writer.write_point(point).unwrap();
        }
        writer.into_inner().unwrap().into_inner()
    }
}

fn projection(record_id: u16, data: Vec<u8>) -> Vlr {
    Vlr { user_id: "LASF_Projection".to_owned(), record_id, description: String::new(), data }
}

/// A grid: `cols` × `rows` cells of 1 m, corner at (1000, 2000) in the north-west, height
/// 100 + column + row / 4.
pub(crate) struct Raster {
    pub(crate) cols: u32,
    pub(crate) rows: u32,
    pub(crate) keys: Vec<u16>,
    /// Heights instead of the usual ones.
    pub(crate) heights: Option<Vec<f32>>,
    pub(crate) nodata: Option<&'static str>,
    /// Tag 42112.
    pub(crate) metadata: Option<&'static str>,
    /// Tags 33550 and 33922, or 34264.
    pub(crate) matrix: Option<[f64; 16]>,
    pub(crate) placed: bool,
    pub(crate) compression: tiff::encoder::Compression,
}

impl Default for Raster {
    fn default() -> Self {
        Self {
            cols: 9,
            rows: 7,
            keys: vec![1, 1, 0, 3, 1024, 0, 1, 1, 1025, 0, 1, 1, 3076, 0, 1, 9001],
            heights: None,
            nodata: None,
            metadata: None,
            matrix: None,
            placed: true,
            compression: tiff::encoder::Compression::Uncompressed,
        }
    }
}

impl Raster {
    pub(crate) fn bytes(&self) -> Vec<u8> {
        let usual = || {
            (0..self.rows)
                .flat_map(|r| (0..self.cols).map(move |c| 100.25 + c as f32 + r as f32 / 4.0))
                .collect::<Vec<f32>>()
        };
        let heights = self.heights.clone().unwrap_or_else(usual);
        let mut out = Cursor::new(Vec::new());
        let mut encoder = TiffEncoder::new(&mut out).unwrap().with_compression(self.compression);
        let mut image = encoder.new_image::<colortype::Gray32Float>(self.cols, self.rows).unwrap();
        let tags = image.encoder();
        if let Some(matrix) = &self.matrix {
            tags.write_tag(Tag::Unknown(34264), &matrix[..]).unwrap();
        } else if self.placed {
            tags.write_tag(Tag::Unknown(33550), &[1.0, 1.0, 0.0][..]).unwrap();
            tags.write_tag(Tag::Unknown(33922), &[0.0, 0.0, 0.0, 1000.0, 2000.0, 0.0][..]).unwrap();
        }
        if !self.keys.is_empty() {
            tags.write_tag(Tag::Unknown(34735), &self.keys[..]).unwrap();
        }
        for (tag, text) in [(42113, self.nodata), (42112, self.metadata)] {
            if let Some(text) = text {
                tags.write_tag(Tag::Unknown(tag), text).unwrap();
            }
        }
        image.write_data(&heights).unwrap();
        out.into_inner()
    }
}

/// Numbers that look random and are always the same (xorshift*, Vigna 2016).
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    pub(crate) fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }
    pub(crate) fn below(&mut self, n: usize) -> usize {
        (self.next() % n as u64) as usize
    }
}
