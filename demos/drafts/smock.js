// A child's painting smock with a yoke and gathers, size 104: head 51 cm.
import {
  drawing,
  edge,
  fromFold,
  grain,
  lengthOf,
  level,
  line,
  mark,
  mirrored,
  piece,
  solve,
  squared,
  toFold,
  towards,
  up,
} from './pen.js';

const shoulder = line([60, 0], [112, 22]);

/** A yoke whose neck is `depth` deep at the centre. */
function yoke(depth, armholeX) {
  const slope = towards(shoulder.start, shoulder.end);
  const neck = fromFold([0, depth], shoulder.start, slope, depth > 30 ? [0.5, 0.5] : [0.5, 0.2]);
  const armhole = squared(shoulder.end, slope, [armholeX, 96], [-1, 0]);
  return { neck, armhole, lower: line(armhole.end, [0, 96]) };
}

/** A gathered panel: its top is `fullness` times the yoke's. */
function panel(yokeWidth, fullness, sideX) {
  const top = line([0, 0], [yokeWidth * fullness, 0]);
  const side = line([sideX, 52], [sideX + 34, 400]);
  const down = towards(side.start, side.end);
  const armhole = squared(top.end, [1, 0], side.start, down, [0.5, 0.5]);
  const hem = toFold(side.end, down, [0, 414]);
  return { top, armhole, side, hem };
}

/** A sleeve whose cap is as long as the armhole and `ease` more. */
function sleeve(armhole, ease) {
  const width = 138;
  const down = [-14, 90];
  const cap = height => {
    const right = squared([0, -height], up, [width, 0], down, [0.4, 0.45]);
    return { segments: [...mirrored(right).segments, ...right.segments] };
  };
  const height = solve(20, 140, h => lengthOf(cap(h)) - armhole - ease);
  const under = 90;
  return {
    cap: cap(height),
    right: line([width, 0], [width - 14, under]),
    hem: squared([width - 14, under], down, [14 - width, under], [-14, -90], [0.1, 0.1]),
    left: line([14 - width, under], [-width, 0]),
  };
}

export function smock() {
  const front = yoke(54, 98),
    back = yoke(16, 100);
  const frontPanel = panel(98, 1.6, 196),
    backPanel = panel(100, 1.6, 196);
  const armhole = lengthOf(front.armhole, back.armhole, frontPanel.armhole, backPanel.armhole);
  const arm = sleeve(armhole, 8);
  const cloth = { fabric: 'main', allowance: 10 };
  return drawing({
    name: 'Painting smock',
    about: "A child's smock: a yoke that buttons at the back, gathered panels and short sleeves.",
    size: [1500, 700],
    facts: {
      seams: {
        shoulder: { a: 'front yoke.shoulder from neck', b: 'back yoke.shoulder from neck' },
        'front yoke': {
          a: 'front.top from centre-front',
          b: 'front yoke.lower from centre-front',
          ease: '60 %',
          takenUp: 'gathered',
        },
        'back yoke': {
          a: 'back.top from centre-back',
          b: 'back yoke.lower from centre-back',
          ease: '60 %',
          takenUp: 'gathered',
        },
        side: { a: 'front.side from armhole', b: 'back.side from armhole' },
        underarm: { a: 'sleeve.underarm-front from cap', b: 'sleeve.underarm-back from cap' },
        armhole: {
          a: 'sleeve.cap from underarm-front',
          b: [
            'front.armhole from side',
            'front yoke.armhole from lower',
            'back yoke.armhole from shoulder',
            'back.armhole from top',
          ],
          ease: '8 mm',
        },
        'centre back': { a: 'back.centre-back from hem', b: 'back.centre-back from hem' },
      },
      fabrics: { main: { width: '140 cm' } },
      fastenings: {
        buttons: {
          kind: 'buttons',
          along: 'back yoke.centre-back from neck',
          count: 2,
          size: '15 mm',
          overlap: '15 mm',
        },
      },
    },
    pieces: [
      piece(
        'front yoke',
        [60, 60],
        { title: 'Front yoke', cut: 1, ...cloth },
        edge('neck', front.neck),
        edge('shoulder', shoulder),
        edge('armhole', front.armhole),
        edge('lower', front.lower, { role: 'yoke' }),
        edge('centre-front', line(front.lower.end, front.neck.start), { kind: 'fold' }),
        grain([70, 30], [70, 88]),
      ),
      piece(
        'back yoke',
        [300, 60],
        { title: 'Back yoke', cut: 2, ...cloth },
        edge('neck', back.neck),
        edge('shoulder', shoulder),
        edge('armhole', back.armhole),
        edge('lower', back.lower, { role: 'yoke' }),
        edge('centre-back', line(back.lower.end, back.neck.start), { allowance: 15 }),
        grain([70, 30], [70, 88]),
        mark('buttonhole', 'button 1', [0, 28]),
        mark('buttonhole', 'button 2', [0, 72]),
      ),
      piece(
        'front',
        [60, 220],
        { title: 'Front', cut: 1, ...cloth },
        edge('top', frontPanel.top, { role: 'yoke' }),
        edge('armhole', frontPanel.armhole),
        edge('side', frontPanel.side),
        edge('hem', frontPanel.hem, { kind: 'hem', allowance: 40, finish: 'turned twice' }),
        edge('centre-front', line(frontPanel.hem.end, frontPanel.top.start), { kind: 'fold' }),
        grain([90, 60], [90, 360]),
        level('chest', [0, 52], [196, 52]),
      ),
      piece(
        'back',
        [400, 220],
        { title: 'Back', cut: 2, ...cloth },
        edge('top', backPanel.top, { role: 'yoke' }),
        edge('armhole', backPanel.armhole),
        edge('side', backPanel.side),
        edge('hem', backPanel.hem, { kind: 'hem', allowance: 40, finish: 'turned twice' }),
        edge('centre-back', line(backPanel.hem.end, backPanel.top.start), { opening: '120 mm' }),
        grain([90, 60], [90, 360]),
        level('chest', [0, 52], [196, 52]),
      ),
      piece(
        'sleeve',
        [960, 260],
        { title: 'Sleeve', cut: 2, ...cloth },
        edge('cap', arm.cap),
        edge('underarm-back', arm.right, { role: 'underarm' }),
        edge('hem', arm.hem, { kind: 'hem', allowance: 25 }),
        edge('underarm-front', arm.left, { role: 'underarm' }),
        grain([0, -20], [0, 80]),
      ),
    ],
  });
}
