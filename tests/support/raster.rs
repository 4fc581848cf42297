//! Paints the window on the processor: no graphics driver, no display.
//!
//! Triangles with exact integer edges, so that neighbours neither overlap nor leave a seam;
//! premultiplied colours blended in gamma space, as the toolkit's own painters do.

use eframe::egui::epaint::textures::TextureFilter;
use eframe::egui::epaint::{ClippedPrimitive, ImageData, Primitive, Vertex};
use eframe::egui::{Color32, Context, FullOutput, TextureId, TexturesDelta};
use std::collections::BTreeMap;

/// A colour as four numbers from 0 to 255, premultiplied.
type Colour = [f32; 4];

struct Texture {
    width: usize,
    height: usize,
    pixels: Vec<Color32>,
    nearest: bool,
}

impl Texture {
    fn at(&self, x: i32, y: i32) -> Colour {
        let clamp = |v: i32, n: usize| v.clamp(0, n as i32 - 1) as usize;
        let index = clamp(y, self.height) * self.width + clamp(x, self.width);
        self.pixels[index].to_array().map(f32::from)
    }

    fn sample(&self, [u, v]: [f32; 2]) -> Colour {
        let (x, y) = (u * self.width as f32, v * self.height as f32);
        if self.nearest {
            return self.at(x.floor() as i32, y.floor() as i32);
        }
        let (x, y) = (x - 0.5, y - 0.5);
        let (left, top) = (x.floor(), y.floor());
        let (fx, fy) = (x - left, y - top);
        let (left, top) = (left as i32, top as i32);
        let upper = mix(self.at(left, top), self.at(left + 1, top), fx);
        let lower = mix(self.at(left, top + 1), self.at(left + 1, top + 1), fx);
        mix(upper, lower, fy)
    }
}

fn mix(a: Colour, b: Colour, share: f32) -> Colour {
    std::array::from_fn(|i| a[i] + (b[i] - a[i]) * share)
}

/// The painter with its textures.
#[derive(Default)]
pub struct Raster {
    textures: BTreeMap<TextureId, Texture>,
}

/// A picture: width, height, RGBA.
pub struct Picture {
    /// Pixels across.
    pub width: usize,
    /// Pixels down.
    pub height: usize,
    /// Row by row.
    pub pixels: Vec<[u8; 4]>,
}

impl Raster {
    /// Takes the textures that a frame brought. Old ones are kept: a test has few.
    pub fn take(&mut self, delta: &mut TexturesDelta) {
        delta.free.clear();
        let mut brought: Vec<_> = delta.set.drain().collect();
        brought.sort_by_key(|(id, _)| *id);
        for (id, parts) in brought {
            for part in parts {
                let ImageData::Color(image) = &part.image;
                let [width, height] = image.size;
                let Some([x, y]) = part.pos else {
                    let texture = Texture {
                        width,
                        height,
                        pixels: image.pixels.clone(),
                        nearest: part.options.magnification == TextureFilter::Nearest,
                    };
                    self.textures.insert(id, texture);
                    continue;
                };
                let texture = self
                    .textures
                    .get_mut(&id)
                    .expect("a part of a known texture");
                for row in 0..height {
                    let to = (y + row) * texture.width + x;
                    let from = row * width;
                    texture.pixels[to..to + width]
                        .copy_from_slice(&image.pixels[from..from + width]);
                }
            }
        }
    }

    /// Paints a frame.
    pub fn paint(&self, ctx: &Context, output: &FullOutput) -> Picture {
        let density = ctx.pixels_per_point();
        let size = ctx.content_rect().size() * density;
        let (width, height) = (size.x.round() as usize, size.y.round() as usize);
        let mut picture = Picture {
            width,
            height,
            pixels: vec![[0, 0, 0, 255]; width * height],
        };
        for primitive in ctx.tessellate(output.shapes.clone(), density) {
            self.primitive(&primitive, density, &mut picture);
        }
        picture
    }

    fn primitive(&self, what: &ClippedPrimitive, density: f32, picture: &mut Picture) {
        let pixel = |v: f32, most: usize| ((v * density).round() as i64).clamp(0, most as i64);
        let clip = Clip {
            left: pixel(what.clip_rect.min.x, picture.width),
            top: pixel(what.clip_rect.min.y, picture.height),
            right: pixel(what.clip_rect.max.x, picture.width),
            bottom: pixel(what.clip_rect.max.y, picture.height),
        };
        let Primitive::Mesh(mesh) = &what.primitive else {
            return;
        };
        let Some(texture) = self.textures.get(&mesh.texture_id) else {
            return;
        };
        for corners in mesh.indices.as_chunks::<3>().0 {
            let corners = corners.map(|i| &mesh.vertices[i as usize]);
            if let Some(triangle) = Triangle::new(corners, density) {
                triangle.paint(texture, &clip, picture);
            }
        }
    }
}

/// What may be painted, pixels; right and bottom excluded.
struct Clip {
    left: i64,
    top: i64,
    right: i64,
    bottom: i64,
}

/// Sub-pixels in a pixel.
const SUB: i64 = 256;

/// A triangle with its edges as `a x + b y + c >= 0` inside, in sub-pixels.
struct Triangle<'a> {
    corners: [&'a Vertex; 3],
    edges: [[i64; 3]; 3],
    area: i64,
    top: i64,
    bottom: i64,
}

impl<'a> Triangle<'a> {
    fn new(mut corners: [&'a Vertex; 3], density: f32) -> Option<Self> {
        let fixed = |v: f32| (v * density * SUB as f32).round() as i64;
        let mut p = corners.map(|v| [fixed(v.pos.x), fixed(v.pos.y)]);
        let mut area =
            (p[1][0] - p[0][0]) * (p[2][1] - p[0][1]) - (p[1][1] - p[0][1]) * (p[2][0] - p[0][0]);
        if area < 0 {
            p.swap(1, 2);
            corners.swap(1, 2);
            area = -area;
        }
        let edges = std::array::from_fn(|i| {
            let (from, to) = (p[(i + 1) % 3], p[(i + 2) % 3]);
            let (a, b) = (from[1] - to[1], to[0] - from[0]);
            let owns_its_edge = a > 0 || (a == 0 && b > 0);
            let c = -(a * from[0] + b * from[1]) - i64::from(!owns_its_edge);
            [a, b, c]
        });
        let heights = p.map(|q| q[1]);
        let top = heights.into_iter().min()? / SUB - 1;
        let bottom = heights.into_iter().max()? / SUB + 1;
        (area != 0).then_some(Self {
            corners,
            edges,
            area,
            top,
            bottom,
        })
    }

    fn paint(&self, texture: &Texture, clip: &Clip, picture: &mut Picture) {
        let texel = self.texel(texture);
        let flat = texel.and_then(|texel| self.flat(texel));
        if flat.is_some_and(|colour| !shows(colour)) {
            return;
        }
        let opaque = flat.filter(|colour| colour[3] >= 255.0);
        for y in self.top.max(clip.top)..=self.bottom.min(clip.bottom - 1) {
            let (left, right) = self.span(y, clip);
            if left > right {
                continue;
            }
            let row = y as usize * picture.width;
            let pixels = &mut picture.pixels[row + left as usize..=row + right as usize];
            if let Some(colour) = opaque {
                pixels.fill(colour.map(|channel| (channel + 0.5) as u8));
                continue;
            }
            for (x, pixel) in (left..).zip(pixels) {
                let colour = flat.unwrap_or_else(|| self.colour(texture, texel, x, y));
                if shows(colour) {
                    blend(pixel, colour);
                }
            }
        }
    }

    /// The texel of a triangle that lies on one, as all do but text and pictures.
    fn texel(&self, texture: &Texture) -> Option<Colour> {
        let uv = self.corners[0].uv;
        let same = self.corners.iter().all(|v| v.uv == uv);
        same.then(|| texture.sample([uv.x, uv.y]))
    }

    /// The colour of a triangle on one texel that has one colour all over, as most have.
    fn flat(&self, texel: Colour) -> Option<Colour> {
        let colour = self.corners[0].color;
        let same = self.corners.iter().all(|v| v.color == colour);
        let channels = colour.to_array().map(f32::from);
        same.then(|| std::array::from_fn(|i| channels[i] * texel[i] / 255.0))
    }

    /// The pixels of a row whose middles lie inside; left past right when there are none.
    fn span(&self, y: i64, clip: &Clip) -> (i64, i64) {
        let middle = y * SUB + SUB / 2;
        let (mut left, mut right) = (clip.left, clip.right - 1);
        for [a, b, c] in self.edges {
            let k = b * middle + c + a * (SUB / 2);
            let a = a * SUB;
            if a > 0 {
                left = left.max((-k).div_euclid(a) + i64::from((-k).rem_euclid(a) != 0));
            } else if a < 0 {
                right = right.min(k.div_euclid(-a));
            } else if k < 0 {
                right = left - 1;
            }
        }
        (left, right)
    }

    fn colour(&self, texture: &Texture, texel: Option<Colour>, x: i64, y: i64) -> Colour {
        let (px, py) = (x * SUB + SUB / 2, y * SUB + SUB / 2);
        let weights = self
            .edges
            .map(|[a, b, c]| (a * px + b * py + c) as f32 / self.area as f32);
        let weigh =
            |values: [f32; 3]| -> f32 { values.iter().zip(weights).map(|(v, w)| v * w).sum() };
        let texel = texel.unwrap_or_else(|| {
            texture.sample([
                weigh(self.corners.map(|v| v.uv.x)),
                weigh(self.corners.map(|v| v.uv.y)),
            ])
        });
        let colours = self.corners.map(|v| v.color.to_array().map(f32::from));
        std::array::from_fn(|i| {
            let channel = weigh([colours[0][i], colours[1][i], colours[2][i]]);
            (channel * texel[i] / 255.0).clamp(0.0, 255.0)
        })
    }
}

/// Whether a colour leaves a trace; premultiplied, it may shine without covering.
fn shows(colour: Colour) -> bool {
    colour[3] > 0.0 || colour[0] > 0.0
}

fn blend(under: &mut [u8; 4], over: Colour) {
    let shine = 1.0 - over[3] / 255.0;
    for (below, above) in under.iter_mut().zip(over) {
        *below = (above + f32::from(*below) * shine + 0.5) as u8;
    }
}
