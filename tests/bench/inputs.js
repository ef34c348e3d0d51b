// The curves the kernel is measured on: ours, drawn by a fixed sequence, of the kinds garments and files have.

/** A fixed sequence of numbers in [0, 1): the same inputs in every run (Numerical Recipes' linear congruence). */
export function sequence(seed) {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const at = (x, y) => ({ x, y });

/** 240 cubics of about 300 mm: necklines, armholes, caps, crotch curves, hems. */
export function garmentCubics(count = 240) {
  const r = sequence(7);
  return Array.from({ length: count }, () => {
    const x = 150 + 150 * r(),
      y = 100 + 150 * r();
    return [
      at(0, 0),
      at(x * (0.2 + 0.3 * r()), y * 0.1 * r()),
      at(x * (0.8 + 0.2 * r()), y * (0.4 + 0.3 * r())),
      at(x, y),
    ];
  });
}

/** Twelve cubics that break fixed rules: cusps, near-cusps, loops, hairpins, turn-backs, rests. */
export const nastyCubics = [
  [at(0, 0), at(300, 300), at(0, 300), at(300, 0)],
  [at(0, 0), at(300, 300.01), at(0, 300), at(300, 0)],
  [at(0, 0), at(300, 290), at(0, 300), at(300, 0)],
  [at(0, 0), at(300, 0), at(-100, 0), at(200, 0)],
  [at(0, 0), at(300, 0), at(-100, 0), at(200, 1e-3)],
  [at(0, 0), at(400, 10), at(-100, 10), at(300, 0)],
  [at(0, 0), at(0, 0), at(100, 0), at(300, 300)],
  [at(0, 0), at(600, 300), at(-300, 300), at(300, 0)],
  [at(0, 0), at(1e-6, 0), at(300, 1e-6), at(300, 300)],
  [at(0, 0), at(0, 0), at(300, 100), at(300, 100)],
  [at(0, 0), at(500, 1), at(500, -1), at(0, 0)],
  [at(0, 0), at(310, 300), at(-10, 300), at(300, 0)],
];

/** 300 pairs that cross as garment lines do, 200 wild ones. */
export function pairs() {
  const r = sequence(11);
  const garment = garmentCubics(600);
  const turned = (curve, angle, dx, dy) =>
    curve.map(p =>
      at(
        Math.cos(angle) * (p.x - 100) - Math.sin(angle) * (p.y - 60) + 100 + dx,
        Math.sin(angle) * (p.x - 100) + Math.cos(angle) * (p.y - 60) + 60 + dy,
      ),
    );
  const wild = () => Array.from({ length: 4 }, () => at(300 * r(), 300 * r()));
  return [
    ...Array.from({ length: 300 }, (_, i) => [
      garment[2 * i],
      turned(garment[2 * i + 1], 0.6 + 2 * r(), 40 * r() - 20, 40 * r() - 20),
    ]),
    ...Array.from({ length: 200 }, () => [wild(), wild()]),
  ];
}

/** 200 single cubics, most of them with a loop. */
export function loops() {
  const r = sequence(13);
  return Array.from({ length: 200 }, (_, i) =>
    i % 16 === 0
      ? [at(0, 0), at(100 * r(), 100), at(100 + 100 * r(), 100), at(200, 0)]
      : [
          at(0, 0),
          at(300 + 300 * r(), 300 * r() + 50),
          at(-300 * r() - 50, 300 * r() + 50),
          at(250, 50 * r()),
        ],
  );
}

/** Closed outlines, clockwise as seen, as rings of segments. */
export function outlines() {
  const L = (...p) => p.slice(1).map((q, i) => [at(...p[i]), at(...q)]);
  const C = (a, b, c, d) => [at(...a), at(...b), at(...c), at(...d)];
  return {
    bodice: [
      C([60, 0], [70, 50], [40, 75], [0, 80]),
      ...L([0, 80], [0, 400], [230, 400], [220, 250]),
      C([220, 250], [150, 240], [170, 120], [180, 40]),
      ...L([180, 40], [60, 0]),
    ]
      .map(reversed)
      .reverse(),
    cap: [
      C([0, 150], [70, 140], [90, 10], [180, 0]),
      C([180, 0], [270, 10], [290, 140], [360, 150]),
      ...L([360, 150], [300, 500], [60, 500], [0, 150]),
    ],
    crotch: [
      ...L([0, 0], [250, 0]),
      C([250, 0], [250, 180], [260, 240], [320, 260]),
      ...L([320, 260], [260, 900], [40, 900], [0, 0]),
    ],
    facing: [
      C([0, 80], [30, 80], [60, 50], [60, 0]),
      ...L([60, 0], [120, 0]),
      C([120, 0], [120, 90], [70, 140], [0, 140]),
      ...L([0, 140], [0, 80]),
    ],
    notch: L([0, 0], [140, 0], [150, 75], [160, 0], [300, 0], [300, 200], [0, 200], [0, 0]),
    nearCusp: [C([0, 0], [200, 120], [100, 120], [300, 0]), ...L([300, 0], [300, 250], [0, 250], [0, 0])],
    scallops: [
      ...[0, 1, 2, 3].map(i => C([60 * i, 0], [60 * i + 10, -40], [60 * i + 50, -40], [60 * i + 60, 0])),
      ...L([240, 0], [240, 150], [0, 150], [0, 0]),
    ],
    hourglass: [
      ...L([0, 0], [200, 0]),
      C([200, 0], [190, 120], [130, 130], [150, 200]),
      C([150, 200], [170, 270], [200, 300], [210, 400]),
      ...L([210, 400], [-10, 400]),
      C([-10, 400], [0, 300], [30, 270], [50, 200]),
      C([50, 200], [70, 130], [10, 120], [0, 0]),
    ],
    disc: [
      C([200, 100], [200, 155.228], [155.228, 200], [100, 200]),
      C([100, 200], [44.772, 200], [0, 155.228], [0, 100]),
      C([0, 100], [0, 44.772], [44.772, 0], [100, 0]),
      C([100, 0], [155.228, 0], [200, 44.772], [200, 100]),
    ],
    flare: [
      C([80, 0], [120, 25], [180, 25], [220, 0]),
      ...L([220, 0], [320, 600]),
      C([320, 600], [250, 640], [50, 640], [-20, 600]),
      ...L([-20, 600], [80, 0]),
    ],
    drop: [C([0, 0], [140, 40], [140, 260], [0, 260]), C([0, 260], [-140, 260], [-140, 40], [0, 0])],
    wave: [
      C([0, 0], [80, 90], [120, -90], [200, 0]),
      C([200, 0], [280, 90], [320, -90], [400, 0]),
      ...L([400, 0], [400, 160], [0, 160], [0, 0]),
    ],
  };
}

function reversed(segment) {
  return [...segment].reverse();
}
