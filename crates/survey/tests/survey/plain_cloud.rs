//! Plain LAS 1.2 clouds, format 0, in metres, made in memory point by point.

use geometry::DVec3;
use std::io::Cursor;

/// A cloud of points (m) with their classes. Coordinates to a millimetre.
pub(crate) fn plain(points: &[(DVec3, u8)]) -> Vec<u8> {
    let low = points.iter().map(|p| p.0).reduce(DVec3::min).unwrap_or(DVec3::ZERO).floor();
    let records = points.iter().map(|(at, class)| {
        let stored = ((*at - low) * 1000.0).round();
        ([stored.x as i32, stored.y as i32, stored.z as i32], *class)
    });
    let bytes: Vec<_> = records.collect();
    file(&bytes, DVec3::splat(0.001), low)
}

/// The same points with every class 0, in a file that says metres.
pub(crate) fn without_classes(bytes: &[u8]) -> Vec<u8> {
    let mut reader = las::Reader::new(Cursor::new(bytes.to_vec())).unwrap();
    let t = *reader.header().transforms();
    let data = reader.read_all().unwrap();
    let records: Vec<_> = data.x_raw().zip(data.y_raw()).zip(data.z_raw()).map(|((x, y), z)| ([x, y, z], 0)).collect();
    file(&records, DVec3::new(t.x.scale, t.y.scale, t.z.scale), DVec3::new(t.x.offset, t.y.offset, t.z.offset))
}

fn file(records: &[([i32; 3], u8)], scale: DVec3, offset: DVec3) -> Vec<u8> {
    // One key: eastings in metres (GeoTIFF key 3076 = 9001).
    let directory: [u16; 12] = [1, 1, 0, 2, 1024, 0, 1, 1, 3076, 0, 1, 9001];
    let start = 227 + 54 + 24;
    let mut header = las::raw::Header {
        version: las::Version::new(1, 2),
        header_size: 227,
        offset_to_point_data: start,
        number_of_variable_length_records: 1,
        point_data_record_format: 0,
        point_data_record_length: 20,
        number_of_point_records: records.len() as u32,
        ..las::raw::Header::default()
    };
    (header.x_scale_factor, header.y_scale_factor, header.z_scale_factor) = scale.into();
    (header.x_offset, header.y_offset, header.z_offset) = offset.into();
    let corner = |pick: fn(i32, i32) -> i32| {
        let of = |axis: usize| f64::from(records.iter().map(|r| r.0[axis]).reduce(pick).unwrap_or(0));
        DVec3::new(of(0), of(1), of(2)) * scale + offset
    };
    (header.min_x, header.min_y, header.min_z) = corner(i32::min).into();
    (header.max_x, header.max_y, header.max_z) = corner(i32::max).into();
    let mut out = Vec::with_capacity(start as usize + 20 * records.len());
    header.write_to(&mut out).unwrap();
    out.extend_from_slice(&[0, 0]);
    let mut user = [0; 16];
    user[..15].copy_from_slice(b"LASF_Projection");
    out.extend_from_slice(&user);
    out.extend_from_slice(&34735_u16.to_le_bytes());
    out.extend_from_slice(&24_u16.to_le_bytes());
    out.extend_from_slice(&[0; 32]);
    out.extend(directory.iter().flat_map(|v| v.to_le_bytes()));
    assert_eq!(out.len(), start as usize);
    for (at, class) in records {
        out.extend(at.iter().flat_map(|v| v.to_le_bytes()));
        out.extend_from_slice(&[0, 0, 0x09, *class, 0, 0, 0, 0]);
    }
    out
}
