// Straight trousers for a stilt walker who wants them longer and wider below the knee: waist 76 cm, hip 100 cm.
import {
  chain,
  curve,
  dart,
  drawing,
  edge,
  foldLine,
  grain,
  lengthOf,
  level,
  line,
  piece,
  placement,
  solve,
} from './pen.js';

const hemY = 1030,
  kneeY = 570,
  hipY = 195;

/** A waist that meets the side square, so that front and back run on into each other. */
function waistTo(from, end, handle) {
  const [x, y] = [handle[0] - end[0], handle[1] - end[1]];
  const reach = (0.3 * Math.hypot(end[0] - from[0], end[1] - from[1])) / Math.hypot(x, y);
  return curve(
    from,
    [from[0] + (end[0] - from[0]) * 0.3, from[1]],
    [end[0] - y * reach, end[1] + x * reach],
    end,
  );
}

/** Centre front at the left, side at the right. */
function front() {
  const waist = waistTo([12, 0], [207, -14], [219, 60]);
  const out = chain(
    waist.end,
    ['C', [219, 60], [243, 130], [246, hipY]],
    ['C', [250, 300], [232, 450], [226, kneeY]],
    ['C', [220, 720], [214, 880], [212, hemY]],
  );
  const hem = line(out.end, [32, hemY]);
  const fork = [-46, 268];
  const inseam = chain(hem.end, ['C', [30, 880], [24, 720], [20, kneeY]], ['C', [12, 450], [-16, 330], fork]);
  const crotch = curve(fork, [-14, 262], [2, 200], [12, 0]);
  return { waist, out, hem, inseam, crotch };
}

/** Centre back at the left, side at the right; its seams are as long as those of the front. */
function back(f) {
  const waistFrom = [58, -22];
  const out = sideY =>
    chain(
      [272, sideY],
      ['C', [282, 60], [286, 130], [284, hipY]],
      ['C', [280, 310], [252, 450], [246, kneeY]],
      ['C', [240, 720], [234, 880], [232, hemY]],
    );
  const sideY = solve(-60, 40, y => lengthOf(out(y)) - lengthOf(f.out));
  const hem = line([232, hemY], [22, hemY]);
  const inseam = forkY =>
    chain(hem.end, ['C', [20, 880], [8, 720], [0, kneeY]], ['C', [-8, 450], [-62, 340], [-96, forkY]]);
  const forkY = solve(200, 340, y => lengthOf(inseam(y)) - lengthOf(f.inseam));
  const crotch = curve([-96, forkY], [-30, forkY + 6], [24, 190], waistFrom);
  // A dart of 24 mm in the middle of the waist, square to it.
  const end = [272, sideY];
  const on = share => [
    waistFrom[0] + (end[0] - waistFrom[0]) * share,
    waistFrom[1] + (end[1] - waistFrom[1]) * share,
  ];
  const whole = Math.hypot(end[0] - waistFrom[0], end[1] - waistFrom[1]);
  const half = 12 / whole;
  const middle = on(0.5);
  const sideHandle = [282, 60];
  const down = [-(end[1] - waistFrom[1]) / whole, (end[0] - waistFrom[0]) / whole];
  const apex = [middle[0] + down[0] * 118, middle[1] + down[1] * 118];
  // The mouth's two ends lie on a circle about the point, and each waist half is square to its leg.
  const legs = [on(0.5 - half), on(0.5 + half)];
  const square = leg => [leg[1] - apex[1], apex[0] - leg[0]];
  const towards = (leg, by) => {
    const [x, y] = square(leg);
    const size = Math.hypot(x, y);
    return [leg[0] + (x / size) * by, leg[1] + (y / size) * by];
  };
  const second = waistTo(legs[1], end, sideHandle).segments[0];
  const waist = [
    curve(waistFrom, [waistFrom[0] + 30, waistFrom[1]], towards(legs[0], 30), legs[0]),
    curve(legs[1], towards(legs[1], -30), second[2], end),
  ];
  return { waist, apex, out: out(sideY), hem, inseam: inseam(forkY), crotch };
}

export function trousers() {
  const f = front(),
    b = back(f);
  const round = 2 * (lengthOf(f.waist) + lengthOf(...b.waist));
  const band = round + 30;
  const allowance = { cut: 2, fabric: 'main', allowance: 15 };
  return drawing({
    name: 'Straight trousers',
    about: 'Straight trousers with a fly, a back dart, a waistband with an underlap and a patch pocket.',
    size: [1900, 1240],
    facts: {
      seams: {
        outseam: { a: 'front.outseam from waist', b: 'back.outseam from waist' },
        inseam: { a: 'front.inseam from hem', b: 'back.inseam from hem' },
        'front crotch': { a: 'front.crotch from waist', b: 'front.crotch from waist' },
        'back crotch': { a: 'back.crotch from waist', b: 'back.crotch from waist' },
        waist: {
          a: 'waistband.lower from end-right, 30 mm to end',
          b: [
            'front.waist from crotch',
            'back.waist from outseam',
            'back.waist from crotch',
            'front.waist from outseam',
          ],
        },
      },
      fabrics: { main: { width: '150 cm' } },
      fastenings: { fly: { kind: 'zip', along: 'front.crotch from waist', length: '170 mm' } },
    },
    pieces: [
      piece(
        'front',
        [120, 80],
        { title: 'Front', ...allowance },
        edge('waist', f.waist, { role: 'waist' }),
        edge('outseam', f.out, { role: 'outseam' }),
        edge('hem', f.hem, { kind: 'hem', allowance: 40 }),
        edge('inseam', f.inseam, { role: 'inseam' }),
        edge('crotch', f.crotch, { role: 'crotch', opening: '170 mm' }),
        grain([110, 300], [110, 900]),
        level('hip', [2, hipY], [246, hipY]),
        level('thigh', [-46, 268], [247, 268]),
      ),
      piece(
        'back',
        [620, 80],
        { title: 'Back', ...allowance },
        edge('waist', b.waist, { role: 'waist' }),
        dart('back', b.waist[0].end, b.apex, b.waist[1].start),
        edge('outseam', b.out, { role: 'outseam' }),
        edge('hem', b.hem, { kind: 'hem', allowance: 40 }),
        edge('inseam', b.inseam, { role: 'inseam' }),
        edge('crotch', b.crotch, { role: 'crotch' }),
        grain([120, 300], [120, 900]),
        level('hip', [26, hipY], [284, hipY]),
        level('thigh', b.inseam.end, [283, b.inseam.end[1]]),
        placement(
          'pocket',
          chain([110, 150], ['L', [230, 150]], ['L', [230, 290]], ['L', [110, 290]], ['L', [110, 150]]),
        ),
      ),
      piece(
        'waistband',
        [120, 1150],
        {
          title: 'Waistband',
          cut: 1,
          fabric: 'main',
          allowance: 15,
          'also-cut': '1 interfacing',
          role: 'band',
        },
        edge('upper', line([0, 0], [band, 0])),
        edge('end-right', line([band, 0], [band, 80])),
        edge('lower', line([band, 80], [0, 80])),
        edge('end-left', line([0, 80], [0, 0])),
        foldLine('middle', [0, 40], [band, 40]),
        grain([40, 20], [band - 40, 20]),
      ),
      piece(
        'pocket',
        [1300, 80],
        { title: 'Back pocket', cut: 2, fabric: 'main', allowance: 10, role: 'pocket' },
        edge('mouth', line([0, 0], [120, 0]), { kind: 'hem', allowance: 25 }),
        edge('round', chain([120, 0], ['L', [120, 120]], ['L', [60, 145]], ['L', [0, 120]], ['L', [0, 0]])),
        grain([60, 20], [60, 120]),
      ),
    ],
  });
}
