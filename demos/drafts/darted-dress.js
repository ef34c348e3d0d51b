// A dress with a waist seam, darted to the figure, for a night nurse: bust 92 cm, waist 72 cm, hip 98 cm. The block that
// dart work, yokes, panels and skirts begin from.
import {
  between,
  curve,
  dart,
  drawing,
  edge,
  fromFold,
  grain,
  lengthOf,
  level,
  line,
  mark,
  notch,
  piece,
  solve,
  squared,
  towards,
  up,
} from './pen.js';

const armpit = 215;

/** A dart whose mouth is `intake` wide about the middle of a straight line, its point `deep` from it to the right. */
function dartIn(from, to, share, intake, deep) {
  const whole = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const half = intake / 2 / whole;
  const [x, y] = between(from, to, share);
  const inwards = [-(to[1] - from[1]) / whole, (to[0] - from[0]) / whole];
  return {
    a: between(from, to, share - half),
    apex: [x + inwards[0] * deep, y + inwards[1] * deep],
    b: between(from, to, share + half),
  };
}

/** An edge on either side of a dart, square to its legs, so that it runs on when the dart is sewn. */
const roundDart = (start, arriving, { a, apex, b }, end, leaving) => [
  squared(start, arriving, a, towards(a, apex)),
  squared(b, towards(apex, b), end, leaving),
];
/** What an edge must come from, or go on to, so that a line square to it has this direction. */
const before = ([x, y]) => [y, -x];
const after = ([x, y]) => [-y, x];

const frontShoulder = line([72, 0], [182, 40]);

function front() {
  const neck = fromFold([0, 78], [72, 0], towards(...frontShoulder.segments[0]));
  const underarm = [246, armpit];
  const waistSide = [232, 412];
  const along = towards(underarm, waistSide);
  const bust = dartIn(underarm, waistSide, 0.33, 30, 112);
  const side = roundDart(underarm, before(along), bust, waistSide, after(along));
  const armhole = squared(
    frontShoulder.end,
    towards(...frontShoulder.segments[0]),
    underarm,
    along,
    [0.3, 0.4],
  );
  const waistEnd = [0, 420];
  const dartAt = dartIn(waistSide, waistEnd, 0.6, 34, 112);
  const waist = roundDart(waistSide, along, dartAt, waistEnd, up);
  return { neck, armhole, underarm, bust, side, dartAt, waist, waistEnd };
}

function back(f) {
  const goal = lengthOf(...f.side);
  const shoulder = solve(
    120,
    140,
    x => lengthOf(line([74, 0], [74 + x, 0.36 * x])) - lengthOf(frontShoulder) - 12,
  );
  const shoulderLine = line([74, 0], [74 + shoulder, 0.36 * shoulder]);
  const slope = towards(...shoulderLine.segments[0]);
  const blade = dartIn(shoulderLine.start, shoulderLine.end, 0.45, 12, 80);
  const underarm = [240, armpit + 8];
  const waistX = 212;
  const waistSide = [waistX, solve(360, 460, y => lengthOf(line(underarm, [waistX, y])) - goal)];
  const along = towards(underarm, waistSide);
  const neck = fromFold([0, 22], [74, 0], slope, [0.4, 0.3]);
  const waistEnd = [0, 405];
  const dartAt = dartIn(waistSide, waistEnd, 0.56, 28, 150);
  return {
    neck,
    shoulder: roundDart(shoulderLine.start, before(slope), blade, shoulderLine.end, after(slope)),
    blade,
    armhole: squared(shoulderLine.end, slope, underarm, along, [0.3, 0.4]),
    underarm,
    side: [line(underarm, waistSide)],
    dartAt,
    waist: roundDart(waistSide, along, dartAt, waistEnd, up),
    waistEnd,
  };
}

/** A straight skirt half whose waist, its dart closed, is as long as the bodice's, and its side as long as wanted. */
function skirt(bodiceWaist, hip, share, intake, deep, sideLength) {
  const centre = [0, 12];
  const drawnTo = (width, hipY) => {
    const waistSide = [width, 0];
    const side = curve(waistSide, [width + 14, 70], [hip, 130], [hip, hipY]);
    const dartAt = dartIn(centre, waistSide, share, intake, deep);
    const waist = roundDart(centre, up, dartAt, waistSide, towards([width, 0], [width + 14, 70]));
    return { centre, dartAt, waist, waistSide, side, hip };
  };
  const width = solve(150, 260, x => lengthOf(...drawnTo(x, 200).waist) - bodiceWaist);
  const hipY = sideLength
    ? solve(150, 260, y => lengthOf(drawnTo(width, y).side, line([hip, y], [hip, 640])) - sideLength)
    : 200;
  return drawnTo(width, hipY);
}

const allowance = { cut: 1, fabric: 'main', allowance: 15 };

function bodicePiece([name, title, waistDart], place, half, shoulder, bust, more) {
  const { dartAt } = half;
  return piece(
    name,
    place,
    { title, ...allowance },
    edge('neck', half.neck),
    ...shoulder,
    edge('armhole', half.armhole),
    edge('side', half.side, { role: 'side' }),
    ...bust,
    edge('waist', half.waist, { role: 'waist' }),
    dart(waistDart, dartAt.a, dartAt.apex, dartAt.b),
    edge('centre', line(half.waistEnd, half.neck.start), { kind: 'fold' }),
    grain([30, 150], [30, 380]),
    level('bust', [0, armpit], [half.underarm[0], armpit]),
    ...more,
  );
}

function skirtPiece(name, title, place, half) {
  const { dartAt } = half;
  const hem = line([half.hip, 640], [0, 640]);
  const side = { segments: [...half.side.segments, ...line(half.side.end, hem.start).segments] };
  return piece(
    name,
    place,
    { title, ...allowance },
    edge('waist', half.waist, { role: 'waist' }),
    dart('hip', dartAt.a, dartAt.apex, dartAt.b),
    edge('side', side, { role: 'side' }),
    edge('hem', hem, { kind: 'hem', allowance: 40 }),
    edge('centre', line(hem.end, half.centre), { kind: 'fold' }),
    grain([40, 200], [40, 600]),
    level('hip', [0, 200], [half.hip, 200]),
    notch('single', [half.hip, 420]),
  );
}

export function dartedDress() {
  const f = front(),
    b = back(f);
  const skirtFront = skirt(lengthOf(...f.waist), 250, 0.42, 20, 95);
  const sideLength = lengthOf(skirtFront.side) + 640 - 200;
  const skirtBack = skirt(lengthOf(...b.waist), 246, 0.45, 30, 130, sideLength);
  return drawing({
    name: 'Darted dress',
    about: 'A dress with a waist seam, darted at bust, waist and shoulder.',
    size: [740, 1260],
    facts: {
      seams: {
        shoulder: { a: 'front.shoulder from neck', b: 'back.shoulder from neck' },
        side: { a: 'front.side from armhole', b: 'back.side from armhole' },
        'skirt side': { a: 'skirt front.side from waist', b: 'skirt back.side from waist' },
        'front waist': { a: 'front.waist from centre', b: 'skirt front.waist from centre' },
        'back waist': { a: 'back.waist from centre', b: 'skirt back.waist from centre' },
      },
      fabrics: { main: { width: '140 cm' } },
    },
    pieces: [
      bodicePiece(
        ['front', 'Front', 'under-bust'],
        [60, 60],
        f,
        [edge('shoulder', frontShoulder)],
        [dart('bust', f.bust.a, f.bust.apex, f.bust.b)],
        [mark('point', 'bust point', [98, 275])],
      ),
      bodicePiece(
        ['back', 'Back', 'back-waist'],
        [420, 60],
        b,
        [edge('shoulder', b.shoulder), dart('shoulder-blade', b.blade.a, b.blade.apex, b.blade.b)],
        [],
        [],
      ),
      skirtPiece('skirt front', 'Skirt front', [60, 560], skirtFront),
      skirtPiece('skirt back', 'Skirt back', [420, 560], skirtBack),
    ],
  });
}
