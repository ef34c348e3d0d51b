// A lined waistcoat for a lamplighter: chest 100 cm.
import {
  chain,
  curve,
  drawing,
  edge,
  fromFold,
  grain,
  lengthOf,
  level,
  line,
  piece,
  solve,
  squared,
  toFold,
  towards,
  up,
} from './pen.js';

const stand = 15;

function shell() {
  const shoulder = line([86, 0], [176, 44]),
    side = line([248, 262], [240, 500]);
  const slope = towards(shoulder.start, shoulder.end),
    down = towards(side.start, side.end);
  const into = squared([0, 0], up, shoulder.start, slope).segments[0][2];
  const neck = curve([-stand, 236], [18, 160], into, shoulder.start);
  const armhole = squared(shoulder.end, slope, side.start, down, [0.5, 0.4]);
  const corner = squared(side.end, down, [140, 530], [-30, -80], [0.3, 0.3]);
  const hem = chain(side.end, ['C', ...corner.segments[0].slice(1)], ['L', [60, 560]], ['L', [-stand, 520]]);
  const front = { neck, shoulder, armhole, side, hem };
  const reach = lengthOf(shoulder);
  const backShoulder = line([88, 0], [88 + reach * Math.cos(0.42), reach * Math.sin(0.42)]);
  const backSlope = towards(backShoulder.start, backShoulder.end);
  const backNeck = fromFold([0, 22], backShoulder.start, backSlope, [0.5, 0.25]);
  const backArmhole = squared(backShoulder.end, backSlope, [252, 250], down, [0.5, 0.35]);
  const low = solve(400, 560, y => lengthOf(line(backArmhole.end, [246, y])) - lengthOf(side));
  const backSide = line(backArmhole.end, [246, low]);
  const back = {
    neck: backNeck,
    shoulder: backShoulder,
    armhole: backArmhole,
    side: backSide,
    hem: toFold(backSide.end, towards(backSide.start, backSide.end), [0, low + 4]),
  };
  return { front, back };
}

function frontPiece(name, title, place, cloth, f, side = {}) {
  return piece(
    name,
    place,
    { title, cut: 2, ...cloth },
    edge('neck', f.neck),
    edge('shoulder', f.shoulder),
    edge('armhole', f.armhole),
    edge('side', f.side, side),
    edge('hem', f.hem, { role: 'hem' }),
    edge('front-edge', line(f.hem.end, f.neck.start), { role: 'opening' }),
    grain([110, 200], [110, 450]),
    level('chest', [-stand, 262], [248, 262]),
  );
}
function backPiece(name, title, place, cloth, b, side = {}) {
  return piece(
    name,
    place,
    { title, cut: 1, ...cloth },
    edge('neck', b.neck),
    edge('shoulder', b.shoulder),
    edge('armhole', b.armhole),
    edge('side', b.side, side),
    edge('hem', b.hem, { role: 'hem' }),
    edge('centre-back', line(b.hem.end, b.neck.start), { kind: 'fold' }),
    grain([110, 200], [110, 450]),
    level('chest', [0, 250], [252, 250]),
  );
}

export function waistcoat() {
  const { front, back } = shell();
  const main = { fabric: 'main', allowance: 12 },
    lining = { fabric: 'lining', allowance: 12, role: 'lining' };
  const both = edges => ({
    a: edges.map(([p, e, from]) => `${p} lining.${e} from ${from}`),
    b: edges.map(([p, e, from]) => `${p}.${e} from ${from}`),
  });
  return drawing({
    name: 'Lined waistcoat',
    about: 'A waistcoat lined to the edge; a gap in the side of its lining is left for turning.',
    size: [1500, 1400],
    facts: {
      seams: {
        shoulder: { a: 'front.shoulder from neck', b: 'back.shoulder from neck' },
        side: { a: 'front.side from armhole', b: 'back.side from armhole' },
        'lining shoulder': { a: 'front lining.shoulder from neck', b: 'back lining.shoulder from neck' },
        'lining side': { a: 'front lining.side from armhole', b: 'back lining.side from armhole' },
        'front edge': both([
          ['front', 'front-edge', 'hem'],
          ['front', 'neck', 'front-edge'],
          ['back', 'neck', 'shoulder'],
        ]),
        armhole: both([
          ['front', 'armhole', 'side'],
          ['back', 'armhole', 'shoulder'],
        ]),
        hem: both([
          ['front', 'hem', 'front-edge'],
          ['back', 'hem', 'side'],
        ]),
      },
      fabrics: { main: { width: '150 cm' }, lining: { width: '140 cm', role: 'lining' } },
      fastenings: {
        front: {
          kind: 'buttons',
          along: 'front.front-edge from neck',
          count: 5,
          size: '18 mm',
          overlap: '30 mm',
        },
      },
    },
    pieces: [
      frontPiece('front', 'Front', [60, 60], main, front),
      backPiece('back', 'Back', [440, 60], main, back),
      frontPiece('front lining', 'Front lining', [60, 740], lining, front, { opening: '150 mm' }),
      backPiece('back lining', 'Back lining', [440, 740], lining, back),
    ],
  });
}
