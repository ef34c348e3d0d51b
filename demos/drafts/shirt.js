// A shirt with yoke, collar on a stand and cuffs, for a violin maker: chest 96 cm, wrist 17 cm.
import {
  chain,
  curve,
  drawing,
  edge,
  foldLine,
  fromFold,
  grain,
  lengthOf,
  level,
  line,
  mirrored,
  piece,
  pleat,
  solve,
  squared,
  towards,
  up,
} from './pen.js';

const stand = 18,
  box = 30,
  fold = 36;

function bodies() {
  const shoulder = line([72, 4], [166, 44]),
    side = line([246, 246], [240, 650]);
  const slope = towards(shoulder.start, shoulder.end),
    down = towards(side.start, side.end);
  const neck = squared([-stand, 86], up, shoulder.start, slope, [0.6, 0.4]);
  const armhole = squared(shoulder.end, slope, side.start, down, [0.45, 0.4]);
  const tail = [70, 742];
  const hem = chain(
    side.end,
    ['C', squared(side.end, down, tail, up).segments[0][1], [150, 742], tail],
    ['L', [-stand, 742]],
  );
  const front = { neck, shoulder, armhole, side, hem };

  const reach = lengthOf(shoulder);
  const yokeShoulder = line([76, 0], [76 + reach * Math.cos(0.4), reach * Math.sin(0.4)]);
  const yokeSlope = towards(yokeShoulder.start, yokeShoulder.end);
  const yokeNeck = fromFold([0, 16], yokeShoulder.start, yokeSlope, [0.5, 0.2]);
  const yokeArmhole = squared(yokeShoulder.end, yokeSlope, [158, 118], [-1, 0]);
  const yoke = {
    neck: yokeNeck,
    shoulder: yokeShoulder,
    armhole: yokeArmhole,
    lower: line(yokeArmhole.end, [0, 118]),
  };

  const at = 96,
    topX = 158 + box;
  const backArmhole = squared([topX, 0], [1, 0], [topX + 70, 150], down, [0.5, 0.4]);
  const long = solve(300, 600, y => lengthOf(line(backArmhole.end, [topX + 64, y])) - lengthOf(side));
  const sideBack = line(backArmhole.end, [topX + 64, long]);
  const backTail = [80, long + 92];
  const out = squared(sideBack.end, towards(sideBack.start, sideBack.end), backTail, up).segments[0][1];
  const backHem = chain(sideBack.end, ['C', out, [160, long + 92], backTail], ['L', [0, long + 92]]);
  const back = {
    top: [line([0, 0], [at, 0]), line([at + box, 0], [topX, 0])],
    pleat: [
      [at, 0],
      [at + box, 0],
    ],
    armhole: backArmhole,
    side: sideBack,
    hem: backHem,
  };
  return { front, yoke, back };
}

/** Back at the left, front at the right, as it is sewn to the armhole. */
function sleeveOf(armhole) {
  const width = 205;
  const down = [-55, 410];
  const cap = height => {
    const right = squared([0, -height], up, [width, 0], down, [0.4, 0.4]);
    return { segments: [...mirrored(right).segments, ...right.segments] };
  };
  const height = solve(40, 220, h => lengthOf(cap(h)) - armhole - 12);
  const wrist = 150;
  const low = 410;
  const hem = [line([wrist, low], [-20, low]), line([-20 - fold, low], [-wrist, low])];
  return {
    cap: cap(height),
    right: line([width, 0], [wrist, low]),
    wrist: hem,
    pleat: [
      [-20, low],
      [-20 - fold, low],
    ],
    left: line([-wrist, low], [-width, 0]),
  };
}

export function shirt() {
  const { front, yoke, back } = bodies();
  const armhole = lengthOf(front.armhole, yoke.armhole, back.armhole);
  const sleeve = sleeveOf(armhole);
  const neck = lengthOf(front.neck, yoke.neck);
  // The stand is as long as the neck, the collar ends at the centre front, a button stand before its end.
  const standUpper = curve([neck - 4, 0], [neck - 90, 14], [120, 2], [0, 2]);
  const standLower = y => curve([0, 34], [120, 34], [neck - 90, y + 14], [neck - 2, y]);
  const standY = solve(0, 33, y => lengthOf(standLower(y)) - neck);
  const lower = standLower(standY);
  const collarLength = lengthOf(standUpper) - stand;
  const cuff = lengthOf(...sleeve.wrist) + 20;
  const cloth = { fabric: 'main', allowance: 12 };
  return drawing({
    name: 'Workshop shirt',
    about: 'A shirt with a yoke, a collar on a stand, pleats at back and wrist, and cuffs.',
    size: [2000, 1150],
    facts: {
      seams: {
        shoulder: { a: 'front.shoulder from neck', b: 'yoke.shoulder from neck' },
        'back yoke': { a: 'back.top from centre-back', b: 'yoke.lower from centre-back' },
        side: { a: 'front.side from armhole', b: 'back.side from armhole' },
        underarm: { a: 'sleeve.underarm-front from cap', b: 'sleeve.underarm-back from cap' },
        armhole: {
          a: 'sleeve.cap from underarm-front',
          b: ['front.armhole from side', 'yoke.armhole from shoulder', 'back.armhole from top'],
          ease: '12 mm',
        },
        stand: {
          a: 'stand.lower from centre-back',
          b: ['yoke.neck from centre-back', 'front.neck from shoulder'],
        },
        collar: {
          a: 'collar.lower from centre-back',
          b: `stand.upper from centre-back, 0 mm to ${collarLength.toFixed(3)} mm`,
        },
        cuff: { a: 'cuff.upper from left, 20 mm to end', b: 'sleeve.wrist from underarm-back' },
      },
      fabrics: { main: { width: '150 cm' }, interfacing: { width: '90 cm', role: 'interfacing' } },
      fastenings: {
        front: {
          kind: 'buttons',
          along: 'front.front-edge from neck',
          count: 6,
          size: '11 mm',
          overlap: '36 mm',
        },
        'cuff buttons': {
          kind: 'buttons',
          along: 'cuff.left from upper',
          count: 1,
          size: '11 mm',
          overlap: '20 mm',
        },
      },
    },
    pieces: [
      piece(
        'front',
        [80, 60],
        { title: 'Front', cut: 2, ...cloth },
        edge('neck', front.neck),
        edge('shoulder', front.shoulder),
        edge('armhole', front.armhole),
        edge('side', front.side),
        edge('hem', front.hem, { kind: 'hem', allowance: 12, finish: 'turned twice' }),
        edge('front-edge', line(front.hem.end, front.neck.start), {
          kind: 'hem',
          allowance: 36,
          role: 'opening',
        }),
        foldLine('centre front', [0, 740], [0, 92]),
        grain([120, 300], [120, 650]),
        level('chest', [-stand, 246], [246, 246]),
      ),
      piece(
        'yoke',
        [460, 60],
        { title: 'Yoke', cut: 2, layers: 2, fabric: 'main', allowance: 12 },
        edge('neck', yoke.neck),
        edge('shoulder', yoke.shoulder),
        edge('armhole', yoke.armhole),
        edge('lower', yoke.lower, { role: 'yoke' }),
        edge('centre-back', line(yoke.lower.end, yoke.neck.start), { kind: 'fold' }),
        grain([80, 40], [80, 110]),
      ),
      piece(
        'back',
        [460, 240],
        { title: 'Back', cut: 1, ...cloth },
        edge('top', back.top, { role: 'yoke' }),
        pleat('back', ...back.pleat, { 'pleat-kind': 'knife', towards: 'end' }),
        edge('armhole', back.armhole),
        edge('side', back.side),
        edge('hem', back.hem, { kind: 'hem', allowance: 12, finish: 'turned twice' }),
        edge('centre-back', line(back.hem.end, [0, 0]), { kind: 'fold' }),
        grain([60, 200], [60, 560]),
        level('chest', [0, 150], [back.side.start[0], 150]),
      ),
      piece(
        'sleeve',
        [1060, 300],
        { title: 'Sleeve', cut: 2, ...cloth },
        edge('cap', sleeve.cap),
        edge('underarm-back', sleeve.right, { role: 'underarm' }),
        edge('wrist', sleeve.wrist, { role: 'wrist' }),
        pleat('cuff', ...sleeve.pleat, { 'pleat-kind': 'knife', towards: 'start', stitched: '30 mm' }),
        edge('underarm-front', sleeve.left, { role: 'underarm' }),
        grain([0, -40], [0, 380]),
      ),
      piece(
        'cuff',
        [1400, 200],
        { title: 'Cuff', cut: 4, layers: 2, ...cloth, 'also-cut': '2 interfacing' },
        edge('upper', line([0, 0], [cuff, 0])),
        edge('right', line([cuff, 0], [cuff, 65])),
        edge('lower', line([cuff, 65], [0, 65])),
        edge('left', line([0, 65], [0, 0])),
        grain([60, 32], [cuff - 60, 32]),
      ),
      piece(
        'stand',
        [1400, 360],
        { title: 'Collar stand', cut: 2, layers: 2, ...cloth, 'also-cut': '1 interfacing', role: 'collar' },
        edge('upper', { segments: standUpper.segments.map(s => [...s].reverse()).reverse() }),
        edge('front', line([neck - 4, 0], lower.end)),
        edge('lower', { segments: lower.segments.map(s => [...s].reverse()).reverse() }),
        edge('centre-back', line([0, 34], [0, 2]), { kind: 'fold' }),
        grain([40, 18], [120, 18]),
      ),
      piece(
        'collar',
        [1400, 460],
        { title: 'Collar', cut: 2, layers: 2, ...cloth, 'also-cut': '1 interfacing', role: 'collar' },
        edge('outer', line([0, 0], [collarLength + 14, -6])),
        edge('front', line([collarLength + 14, -6], [collarLength, 48])),
        edge('lower', line([collarLength, 48], [0, 48])),
        edge('centre-back', line([0, 48], [0, 0]), { kind: 'fold' }),
        grain([40, 24], [120, 24]),
      ),
    ],
  });
}
