// A flared skirt with a hip yoke and patch pockets, for a beekeeper who kneels: waist 72 cm, hip 98 cm.
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
  placement,
  solve,
} from './pen.js';

/** A yoke on the fold: its waist is `drop` lower at the centre, its side comes down to `low`. */
function yoke(waistX, drop, sideX) {
  const waist = fromFold([0, drop], [waistX, -16], [12, 36]);
  const side = curve(waist.end, [waistX + 12, 20], [sideX - 6, 70], [sideX, 108]);
  const lower = curve(side.end, [sideX - 66, 120], [80, 128], [0, 128]);
  return { waist, side, lower };
}

/** A flared panel on the fold whose top is as long as the yoke's lower edge. */
function panel(topLength, flare) {
  const top = x => curve([0, 20], [80, 20], [x - 66, 12], [x, 0]);
  const width = solve(topLength * 0.8, topLength, x => lengthOf(top(x)) - topLength);
  const side = line([width, 0], [width + flare, 560]);
  const hem = curve(side.end, [width + flare - 110, 582], [120, 592], [0, 592]);
  return { top: top(width), side, hem, width };
}

const yokePiece = (name, title, place, { waist, side, lower }) =>
  piece(
    name,
    place,
    { title, cut: 1, fabric: 'main', allowance: 15, 'also-cut': '1 interfacing' },
    edge('waist', waist, { role: 'waist' }),
    edge('side', side, { role: 'side', ...(name === 'front yoke' ? { opening: '120 mm' } : {}) }),
    edge('lower', lower, { role: 'yoke' }),
    edge('centre', line(lower.end, waist.start), { kind: 'fold' }),
    grain([90, 30], [90, 105]),
  );

const panelPiece = (name, title, place, { top, side, hem, width }, ...more) =>
  piece(
    name,
    place,
    { title, cut: 1, fabric: 'main', allowance: 15 },
    edge('top', top, { role: 'yoke' }),
    edge('side', side, { role: 'side' }),
    edge('hem', hem, { kind: 'hem', allowance: 30 }),
    edge('centre', line(hem.end, top.start), { kind: 'fold' }),
    grain([100, 100], [100, 500]),
    level(
      'hip',
      [0, 80],
      [width + side.end[0] - width > 0 ? width + (80 / 560) * (side.end[0] - width) : width, 80],
    ),
    ...more,
  );

export function yokeSkirt() {
  const front = yoke(182, 0, 214),
    back = yoke(180, 12, 222);
  const sideDifference = lengthOf(front.side) - lengthOf(back.side);
  if (Math.abs(sideDifference) > 8) throw new Error('The yokes are too unlike.');
  // The back yoke's side is drawn as long as the front's.
  const low = solve(
    90,
    130,
    y => lengthOf(curve(back.waist.end, [192, 20], [216, 70], [222, y])) - lengthOf(front.side),
  );
  back.side = curve(back.waist.end, [192, 20], [216, 70], [222, low]);
  back.lower = curve(back.side.end, [156, low + 12], [80, 128], [0, 128]);
  const frontPanel = panel(lengthOf(front.lower), 120),
    backPanel = panel(lengthOf(back.lower), 120);
  return drawing({
    name: 'Yoke skirt',
    about: 'A flared skirt with a hip yoke, a side zip and patch pockets.',
    size: [1500, 1000],
    facts: {
      seams: {
        'yoke side': { a: 'front yoke.side from waist', b: 'back yoke.side from waist' },
        side: { a: 'front.side from top', b: 'back.side from top' },
        'front yoke': { a: 'front.top from centre', b: 'front yoke.lower from centre' },
        'back yoke': { a: 'back.top from centre', b: 'back yoke.lower from centre' },
      },
      fabrics: { main: { width: '140 cm' } },
      fastenings: { 'side zip': { kind: 'zip', along: 'front yoke.side from waist', length: '120 mm' } },
    },
    pieces: [
      yokePiece('front yoke', 'Front yoke', [40, 60], front),
      yokePiece('back yoke', 'Back yoke', [340, 60], back),
      panelPiece(
        'front',
        'Front',
        [40, 260],
        frontPanel,
        placement(
          'pocket',
          chain([90, 90], ['L', [220, 90]], ['L', [220, 250]], ['L', [90, 250]], ['L', [90, 90]]),
        ),
      ),
      panelPiece('back', 'Back', [540, 260], backPanel),
      piece(
        'pocket',
        [1100, 300],
        { title: 'Patch pocket', cut: 2, fabric: 'main', allowance: 10, role: 'pocket' },
        edge('mouth', line([0, 0], [130, 0]), { kind: 'hem', allowance: 25 }),
        edge('round', chain([130, 0], ['L', [130, 160]], ['L', [0, 160]], ['L', [0, 0]])),
        grain([65, 30], [65, 130]),
      ),
    ],
  });
}
