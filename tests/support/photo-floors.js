// Floors of 1.2 x 1.0 m strewn by chance with pieces and sheets, and cameras to look at them.
import { aim, chance, flattened, laid, seenAt } from './photo-scene.js';

const line = (p, q) => [p, q];
const curve = (p, a, b, q) => [p, a, b, q];

/** Outlines in mm with corners, hollow and round curves, a dart's wedge; clockwise. */
export const shapes = {
  bodice: [
    curve([80, 70], [125, 70], [160, 45], [168, 0]),
    line([168, 0], [275, 35]),
    curve([275, 35], [258, 110], [255, 200], [312, 240]),
    line([312, 240], [316, 336]),
    line([316, 336], [200, 362]),
    line([200, 362], [318, 360]),
    line([318, 360], [330, 480]),
    curve([330, 480], [250, 497], [150, 500], [80, 500]),
    line([80, 500], [80, 70]),
  ],
  sleeve: [
    curve([0, 150], [70, 150], [90, 0], [185, 0]),
    curve([185, 0], [280, 0], [300, 150], [380, 150]),
    line([380, 150], [340, 440]),
    line([340, 440], [40, 440]),
    line([40, 440], [0, 150]),
  ],
  skirt: [
    curve([0, 20], [60, 18], [120, 10], [190, 0]),
    curve([190, 0], [240, 90], [250, 150], [255, 230]),
    line([255, 230], [270, 520]),
    line([270, 520], [0, 520]),
    line([0, 520], [0, 20]),
  ],
  collar: [
    curve([0, 60], [90, 20], [220, 0], [330, 0]),
    line([330, 0], [345, 70]),
    curve([345, 70], [230, 75], [110, 95], [35, 125]),
    line([35, 125], [0, 60]),
  ],
  pocket: [
    line([0, 0], [150, 0]),
    line([150, 0], [150, 110]),
    curve([150, 110], [150, 150], [130, 170], [75, 170]),
    curve([75, 170], [20, 170], [0, 150], [0, 110]),
    line([0, 110], [0, 0]),
  ],
  band: [line([0, 0], [420, 0]), line([420, 0], [420, 60]), line([420, 60], [0, 60]), line([0, 60], [0, 0])],
  facing: [
    curve([0, 200], [0, 90], [90, 0], [200, 0]),
    line([200, 0], [200, 60]),
    curve([200, 60], [123, 60], [60, 123], [60, 200]),
    line([60, 200], [0, 200]),
  ],
};

const boxOf = points => {
  const xs = points.map(p => p[0]),
    ys = points.map(p => p[1]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};

const inside = (points, [x, y]) => {
  let odd = false;
  for (let i = 0; i < points.length; i++) {
    const [ax, ay] = points[i],
      [bx, by] = points[(i + 1) % points.length];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
  }
  return odd;
};

/** Whether two outlines come nearer than a gap, by their points. */
function near(a, b, gap) {
  const [p, q] = [boxOf(a), boxOf(b)];
  if (p[0] - gap > q[2] || q[0] - gap > p[2] || p[1] - gap > q[3] || q[1] - gap > p[3]) return false;
  return (
    a.some(v => inside(b, v)) ||
    b.some(v => inside(a, v)) ||
    a.some(([x, y]) => b.some(([u, v]) => Math.hypot(x - u, y - v) < gap))
  );
}

/** Points along an outline every few mm. */
function beaded(outline) {
  const points = flattened(outline);
  return points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length];
    const n = Math.max(1, Math.ceil(Math.hypot(q[0] - p[0], q[1] - p[1]) / 8));
    return Array.from({ length: n }, (_, k) => [
      p[0] + ((q[0] - p[0]) * k) / n,
      p[1] + ((q[1] - p[1]) * k) / n,
    ]);
  });
}

const rectangle = (w, h) => [
  [
    [-w / 2, -h / 2],
    [w / 2, -h / 2],
  ],
  [
    [w / 2, -h / 2],
    [w / 2, h / 2],
  ],
  [
    [w / 2, h / 2],
    [-w / 2, h / 2],
  ],
  [
    [-w / 2, h / 2],
    [-w / 2, -h / 2],
  ],
];

const grounds = [
  [128, 96, 64],
  [60, 64, 70],
  [205, 198, 188],
  [40, 80, 60],
  [150, 150, 155],
  [170, 60, 50],
  [25, 25, 28],
  [230, 228, 220],
  [90, 110, 160],
  [200, 170, 120],
  [75, 55, 45],
  [120, 130, 90],
];
const paints = [
  [245, 240, 225],
  [230, 200, 60],
  [40, 45, 55],
  [180, 40, 60],
  [90, 160, 210],
  [215, 180, 140],
  [250, 250, 250],
  [60, 120, 70],
  [240, 150, 160],
  [20, 20, 20],
  [200, 190, 170],
  [130, 70, 140],
];
const apart = (a, b) => Math.hypot(...a.map((v, i) => v - b[i]));

/**
 * One of the scenes, by number; the same number is the same scene.
 * @param pages pictures of the printed sheets
 */
export function strewn(number, pages, megapixels = 12) {
  const next = chance(7919 * (number + 1));
  const between = (a, b) => a + (b - a) * next();
  const W = 1200,
    H = 1000;
  const ground = grounds[number % grounds.length];
  const names = Object.keys(shapes);
  const pieces = [];
  const taken = [];
  const wanted = 2 + Math.floor(next() * 3);
  for (let tries = 0; tries < 400 && pieces.length < wanted; tries++) {
    const name = names[Math.floor(next() * names.length)];
    const [x0, y0, x1, y1] = boxOf(flattened(shapes[name]));
    const centred = laid(shapes[name], [-(x0 + x1) / 2, -(y0 + y1) / 2], 0);
    const outline = laid(centred, [between(150, W - 150), between(150, H - 150)], between(0, 2 * Math.PI));
    const beads = beaded(outline);
    if (beads.some(([x, y]) => x < 25 || y < 25 || x > W - 25 || y > H - 25)) continue;
    if (taken.some(other => near(beads, other, 12))) continue;
    const colours = paints.filter(c => apart(c, ground) > 60);
    pieces.push({ name, outline, colour: colours[Math.floor(next() * colours.length)] });
    taken.push(beads);
  }
  const sheets = [];
  const most = 4 + Math.floor(next() * 6);
  for (let tries = 0; tries < 6000 && sheets.length < most; tries++) {
    const page = pages[sheets.length];
    const at = [between(20, W - 20), between(20, H - 20)],
      angle = between(0, 2 * Math.PI);
    const beads = beaded(laid(rectangle(page.width / page.perMm, page.height / page.perMm), at, angle));
    // Partly beyond the frame is allowed, half is not.
    if (
      beads.filter(([x, y]) => x < 0 || y < 0 || x > W || y > H).length >
      beads.length * (tries > 3000 ? 0.5 : 0.3)
    )
      continue;
    if (taken.some(other => near(beads, other, 6))) continue;
    sheets.push({ number: sheets.length + 1, page, at, angle });
    taken.push(beads);
  }
  const camera = cameraOver(next, W, H, megapixels);
  return {
    camera,
    floor: { width: 2200, height: 2000, origin: [-500, -500], sheets, pieces },
    ground,
    pieces,
    light: {
      across: between(-0.35, 0.35),
      down: between(-0.35, 0.35),
      vignette: between(0, 0.5),
      lamp: between(0, 0.25),
      at: [between(-0.4, 0.4), between(-0.4, 0.4)],
    },
    blur: between(0.5, 1.5),
    noise: between(1.5, 5),
    seed: number + 1,
    gamma: number % 2 ? 1 : 2.2,
  };
}

/** A camera that has the whole floor in the picture, just. */
function cameraOver(next, W, H, megapixels) {
  const between = (a, b) => a + (b - a) * next();
  const width = Math.round(Math.sqrt((megapixels * 1e6 * 4) / 3)),
    height = Math.round((width * 3) / 4);
  const tilt = (between(0, 35) * Math.PI) / 180,
    towards = between(0, 2 * Math.PI),
    roll = between(-0.2, 0.2);
  const focal = width * between(0.7, 1.1);
  const camera = distance => ({
    width,
    height,
    focal,
    centre: [width / 2 + between(-0.01, 0.01) * 0, height / 2],
    k1,
    k2,
    pose: aim({ over: [W / 2, H / 2], distance, tilt, towards, roll }),
  });
  const k1 = between(-0.1, 0.1),
    k2 = between(-0.02, 0.02);
  // Backwards from the floor's corners is what a solver does: the distance is found by looking instead.
  const shows = c => {
    const [far, wide] = [seenAt(c, 0, 0), seenAt(c, width, height)];
    const [right, left] = [seenAt(c, width, 0), seenAt(c, 0, height)];
    const ring = [far, right, wide, left];
    return [
      [0, 0],
      [W, 0],
      [W, H],
      [0, H],
    ].every(p => inside(ring, p));
  };
  let distance = 800;
  while (!shows(camera(distance)) && distance < 4000) distance *= 1.02;
  return camera(distance);
}
