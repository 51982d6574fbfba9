//! A picture of a page, pixel by pixel.

/// Pixels of three bytes: red, green, blue.
pub(super) struct Picture {
    width: usize,
    pixels: Vec<u8>,
}

impl Picture {
    pub(super) fn read(bytes: &[u8]) -> Self {
        let mut decoder = png::Decoder::new(std::io::Cursor::new(bytes));
        decoder.set_transformations(png::Transformations::EXPAND);
        let mut reader = decoder.read_info().unwrap();
        let mut data = vec![0; reader.output_buffer_size().unwrap()];
        let frame = reader.next_frame(&mut data).unwrap();
        data.truncate(frame.buffer_size());
        let pixels = match frame.color_type {
            png::ColorType::Rgb => data,
            png::ColorType::Rgba => data
                .chunks_exact(4)
                .flat_map(|it| it[..3].to_vec())
                .collect(),
            other => panic!("a picture in {other:?}"),
        };
        Self {
            width: frame.width as usize,
            pixels,
        }
    }

    /// The first pixel that is not as it should be, as `x, y: #rrggbb`.
    pub(super) fn first_that(&self, is_wrong: impl Fn(&[u8]) -> bool) -> Option<String> {
        let at = self.pixels.chunks_exact(3).position(is_wrong)?;
        let pixel = &self.pixels[3 * at..3 * at + 3];
        let hex = data_encoding::HEXLOWER.encode(pixel);
        Some(format!("{}, {}: #{hex}", at % self.width, at / self.width))
    }

    /// How many pixels are so.
    pub(super) fn count(&self, is_so: impl Fn(&[u8]) -> bool) -> usize {
        self.pixels
            .chunks_exact(3)
            .filter(|&pixel| is_so(pixel))
            .count()
    }
}
