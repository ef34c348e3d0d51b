// A photograph of a floor, made by casting a ray through every part of every pixel. Shares no code with what is tested:
// no camera, no matrix, no target of ours; sheets come as pictures of their printed pages.

/** Dots to a mm of the painted floor, where a scene does not say. */
const usualFine = 8;

/**
 * @typedef {import('./photo-scene.d.ts').Scene} Scene
 */

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export function chance(seed) {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A closed outline of lines [p, q] and cubics [p, a, b, q] as points so near that no chord stands off 0.002 mm. */
export function flattened(outline) {
  return outline.flatMap(segment => {
    if (segment.length === 2) return [segment[0]];
    const [p, a, b, q] = segment;
    const n = 64;
    return Array.from({ length: n }, (_, i) => {
      const t = i / n,
        s = 1 - t;
      return [0, 1].map(
        k => s * s * s * p[k] + 3 * s * s * t * a[k] + 3 * s * t * t * b[k] + t * t * t * q[k],
      );
    });
  });
}

/** An outline turned by an angle (rad, clockwise as seen) about 0, 0 and moved to a place. */
export const laid = (outline, [x, y], angle) => {
  const c = Math.cos(angle),
    s = Math.sin(angle);
  return outline.map(segment => segment.map(([u, v]) => [x + c * u - s * v, y + s * u + c * v]));
};

/**
 * The floor as seen from straight above, one number a dot: 0 ground, 1.. the pieces in order, 100 to 255 the grey of a
 * sheet. Later pieces lie on earlier ones, all on the sheets, unless a sheet lies `onTop`.
 */
function paintedFloor({ width, height, origin, sheets, pieces, fine = usualFine }) {
  const w = width * fine,
    h = height * fine;
  const dots = new Uint8Array(w * h);
  for (const sheet of sheets.filter(s => !s.onTop)) paintSheet({ dots, w, h, origin, fine }, sheet);
  for (const [i, { outline }] of pieces.entries())
    fillPolygon({ dots, w, h, origin, fine }, flattened(outline), i + 1);
  for (const sheet of sheets.filter(s => s.onTop)) paintSheet({ dots, w, h, origin, fine }, sheet);
  return { dots, w, h, fine };
}

function paintSheet({ dots, w, h, origin, fine }, { page, at, angle, scale = [1, 1] }) {
  const { grey, width, height, perMm } = page;
  const c = Math.cos(angle),
    s = Math.sin(angle);
  const reach = Math.hypot(width, height) / perMm / 1.9;
  const [x0, y0] = [(at[0] - origin[0]) * fine, (at[1] - origin[1]) * fine];
  const r = reach * fine;
  for (let y = Math.max(0, Math.floor(y0 - r)); y < Math.min(h, y0 + r); y++)
    for (let x = Math.max(0, Math.floor(x0 - r)); x < Math.min(w, x0 + r); x++) {
      const dx = (x + 0.5 - x0) / fine,
        dy = (y + 0.5 - y0) / fine;
      const u = ((c * dx + s * dy) / scale[0]) * perMm + width / 2,
        v = ((-s * dx + c * dy) / scale[1]) * perMm + height / 2;
      const i = Math.floor(u),
        j = Math.floor(v);
      if (i < 0 || j < 0 || i >= width || j >= height) continue;
      dots[y * w + x] = 100 + Math.round((grey[j * width + i] / 255) * 155);
    }
}

function fillPolygon({ dots, w, h, origin, fine }, points, value) {
  const at = points.map(([x, y]) => [(x - origin[0]) * fine, (y - origin[1]) * fine]);
  for (let y = 0; y < h; y++) {
    const crossings = [];
    const level = y + 0.5;
    for (let i = 0; i < at.length; i++) {
      const [ax, ay] = at[i],
        [bx, by] = at[(i + 1) % at.length];
      if (ay <= level === by <= level) continue;
      crossings.push(ax + ((level - ay) / (by - ay)) * (bx - ax));
    }
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2)
      for (let x = Math.max(0, Math.ceil(crossings[i] - 0.5)); x < Math.min(w, crossings[i + 1] - 0.5); x++)
        dots[y * w + x] = value;
  }
}

/** Where the camera stands: over a point of the floor, at a distance along its axis, tilted from straight down. */
export function aim({ over, distance, tilt, towards, roll }) {
  // Axes of the camera in floor coordinates (x right, y down the page, z into the floor).
  const axis = [Math.sin(tilt) * Math.cos(towards), Math.sin(tilt) * Math.sin(towards), Math.cos(tilt)];
  const eye = [over[0] - distance * axis[0], over[1] - distance * axis[1], -distance * axis[2]];
  let right = [Math.cos(roll), Math.sin(roll), 0];
  const along = right[0] * axis[0] + right[1] * axis[1] + right[2] * axis[2];
  right = right.map((v, i) => v - along * axis[i]);
  const length = Math.hypot(...right);
  right = right.map(v => v / length);
  const down = [
    axis[1] * right[2] - axis[2] * right[1],
    axis[2] * right[0] - axis[0] * right[2],
    axis[0] * right[1] - axis[1] * right[0],
  ];
  return { eye, axis, right, down };
}

/** The floor point seen at a place of the picture; distorted radius = r (1 + k1 r² + k2 r⁴), r in focal lengths. */
export function seenAt(camera, px, py) {
  const { focal, centre, k1, k2, pose } = camera;
  const dx = (px - centre[0]) / focal,
    dy = (py - centre[1]) / focal;
  const rd = Math.hypot(dx, dy);
  let r = rd;
  for (let i = 0; i < 6; i++)
    r -= (r * (1 + k1 * r * r + k2 * r ** 4) - rd) / (1 + 3 * k1 * r * r + 5 * k2 * r ** 4);
  const k = rd > 0 ? r / rd : 1;
  const { eye, axis, right, down } = pose;
  const ray = [0, 1, 2].map(i => axis[i] + k * (dx * right[i] + dy * down[i]));
  const t = -eye[2] / ray[2];
  return [eye[0] + t * ray[0], eye[1] + t * ray[1]];
}

/** r / rd for rd² from 0 to `most`, so that the lens need not be undone for every ray. */
function straightening({ k1, k2 }, most) {
  const steps = 8192;
  const table = new Float64Array(steps + 2);
  for (let i = 0; i <= steps + 1; i++) {
    const rd = Math.sqrt((most * i) / steps);
    let r = rd;
    for (let n = 0; n < 30; n++)
      r -= (r * (1 + k1 * r * r + k2 * r ** 4) - rd) / (1 + 3 * k1 * r * r + 5 * k2 * r ** 4);
    table[i] = rd > 0 ? r / rd : 1;
  }
  return { table, scale: steps / most };
}

/** The picture as RGBA bytes. */
export function photograph(scene) {
  const { camera, ground, pieces, light, blur, noise, seed, gamma = 1, parts = 2 } = scene;
  const { width, height, focal, centre, pose } = camera;
  const { eye, axis, right, down } = pose;
  const { dots, w, h, fine } = paintedFloor(scene.floor);
  const [left, top] = scene.floor.origin;
  const farthest = Math.max(centre[0], width - centre[0]) ** 2 + Math.max(centre[1], height - centre[1]) ** 2;
  const { table, scale } = straightening(camera, (1.05 * farthest) / focal ** 2);
  const linear = v => (v / 255) ** gamma;
  // What each number of the painted floor looks like: ground, pieces, greys of paper.
  const colours = new Float64Array(3 * 256);
  for (let v = 0; v < 256; v++)
    for (let c = 0; c < 3; c++)
      colours[3 * v + c] = linear(
        v >= 100 ? 18 + ((v - 100) / 155) * 220 : ((v === 0 ? ground : pieces[v - 1]?.colour)?.[c] ?? 0),
      );
  const planes = [0, 1, 2].map(() => new Float32Array(width * height));
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      let r = 0,
        g = 0,
        b = 0;
      for (let part = 0; part < parts * parts; part++) {
        const dx = (x + ((part % parts) + 0.5) / parts - centre[0]) / focal,
          dy = (y + (Math.floor(part / parts) + 0.5) / parts - centre[1]) / focal;
        const place = (dx * dx + dy * dy) * scale,
          step = Math.floor(place);
        const k = table[step] + (table[step + 1] - table[step]) * (place - step);
        const t = -eye[2] / (axis[2] + k * (dx * right[2] + dy * down[2]));
        const u = Math.floor((eye[0] + t * (axis[0] + k * (dx * right[0] + dy * down[0])) - left) * fine),
          v = Math.floor((eye[1] + t * (axis[1] + k * (dx * right[1] + dy * down[1])) - top) * fine);
        const dot = 3 * (u < 0 || v < 0 || u >= w || v >= h ? 0 : dots[v * w + u]);
        r += colours[dot];
        g += colours[dot + 1];
        b += colours[dot + 2];
      }
      const sx = x / width - 0.5,
        sy = y / height - 0.5;
      const lamp = light.lamp * Math.exp(-((sx - light.at[0]) ** 2 + (sy - light.at[1]) ** 2) / 0.08);
      const shine = 1 + light.across * sx + light.down * sy - light.vignette * (sx * sx + sy * sy) + lamp;
      planes[0][at] = (r * shine) / parts ** 2;
      planes[1][at] = (g * shine) / parts ** 2;
      planes[2][at] = (b * shine) / parts ** 2;
    }
  const next = chance(seed);
  const bytes = new Uint8Array(width * height * 4).fill(255);
  for (const [channel, plane] of planes.entries()) {
    const soft = blurred(plane, width, height, blur);
    for (let i = 0; i < soft.length; i++) {
      const grain = Math.sqrt(-2 * Math.log(next() + 1e-12)) * Math.cos(2 * Math.PI * next());
      const value = 255 * (gamma === 1 ? soft[i] : Math.max(0, soft[i]) ** (1 / gamma)) + noise * grain;
      bytes[4 * i + channel] = Math.max(0, Math.min(255, Math.round(value)));
    }
  }
  return { width, height, rgba: bytes };
}

function blurred(plane, width, height, sigma) {
  if (sigma <= 0) return plane;
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = kernel.reduce((a, b) => a + b);
  const pass = (from, step, length, lines, lineStep) => {
    const to = new Float32Array(from.length);
    for (let line = 0; line < lines; line++)
      for (let i = 0; i < length; i++) {
        let total = 0;
        for (let k = -reach; k <= reach; k++) {
          const j = Math.min(length - 1, Math.max(0, i + k));
          total += kernel[k + reach] * from[line * lineStep + j * step];
        }
        to[line * lineStep + i * step] = total / sum;
      }
    return to;
  };
  return pass(pass(plane, 1, width, height, width), width, height, width, 1);
}
