import type { Piece } from '@paperhinge/geometry';
import { lengthOf, type XY } from '../twenty-drafts.js';
import { bend, ring, suited } from './ring.js';
import { type Unnamed, unnamed } from './unnamed.js';

// Dungarees for a child of four: a bib on a band in front, the back cut up to the straps and faced.

const bandWide = 38,
  bibEnd = 30;

function bibAndBand(waist: number): readonly [bib: Piece, waistband: Piece] {
  const bib = ring(
    'bib',
    [0, 0],
    {
      top: [[84, 0]],
      side: bend([84, 0], [88, 76], [104, 134], [waist, 134]),
      end: [[waist, 134 + bibEnd]],
      lower: [[0, 134 + bibEnd]],
      centre: [],
    },
    { fold: 'centre', cut: 2 },
  );
  const waistband = ring(
    'waistband',
    [0, 0],
    { upper: [[waist, 0]], end: [[waist, bandWide]], lower: [[0, bandWide]], centre: [] },
    { fold: 'centre', cut: 2 },
  );
  return [bib, waistband];
}

const tall: XY = [40, -236],
  tip: XY = [94, -236];

function legs(): readonly [front: Piece, back: Piece] {
  const front = ring(
    'front',
    [0, 0],
    {
      waist: bend([0, 0], [56, 0], [116, -2], [170, -6], 4),
      side: [...bend([170, -6], [180, 56], [184, 110], [184, 180]), [172, 640]],
      hem: [[32, 640]],
      inseam: bend([32, 640], [26, 420], [2, 310], [-36, 212]),
      crotch: [...bend([-36, 212], [-10, 200], [0, 180], [0, 140], 5)],
    },
    { cut: 2 },
  );
  const back = suited(
    (y, armpit) =>
      ring(
        'back',
        tall,
        {
          top: [tip],
          armhole: bend(tip, [98, -150], [126, armpit!], [212, armpit!]),
          side: [...bend([212, armpit!], [213, 40], [216, 110], [214, 180]), [200, 640]],
          hem: [[22, 640]],
          inseam: bend([22, 640], [14, 420], [-34, y! + 100], [-76, y!]),
          centre: bend([-76, y!], [-38, y! - 14], [2, 190], [9, 110]),
        },
        { cut: 2 },
      ),
    { edges: ['inseam'], mm: lengthOf(front, 'inseam') - 3, between: [190, 260] },
    { edges: ['side'], mm: lengthOf(front, 'side') + bandWide + bibEnd, between: [-130, -30] },
  );
  return [front, back];
}

/** The back's upper part down to where its side meets the band in front. */
function backFacing(back: Piece): Piece {
  const foot = suited(
    (armpit, low) =>
      ring(
        'back facing',
        tall,
        {
          top: [tip],
          armhole: bend(tip, [98, -150], [126, armpit!], [212, armpit!]),
          side: [[212.6, low!]],
          lower: [[21, -24]],
          centre: [],
        },
        { cut: 2 },
      ),
    { edges: ['armhole'], mm: lengthOf(back, 'armhole'), between: [-130, -30] },
    { edges: ['side'], mm: bandWide + bibEnd, between: [-40, 40] },
  );
  return foot;
}

/** Straps lined with themselves, closed with buttons on the bib; a pocket on it and two behind. */
export function dungarees(): Unnamed {
  const [front, back] = legs();
  const [bib, waistband] = bibAndBand(lengthOf(front, 'waist'));
  const strap = ring(
    'strap',
    [0, 0],
    {
      left: bend([0, 0], [160, 3], [300, 8], [440, 8], 4),
      tip: bend([440, 8], [466, 10], [466, 44], [440, 46], 4),
      right: bend([440, 46], [300, 46], [160, 51], [0, 54], 4),
      lower: [],
    },
    { cut: 4 },
  );
  const pocket = ring('pocket', [0, 0], {
    opening: [[112, 0]],
    right: [[112, 84]],
    foot: [
      [94, 106],
      [18, 106],
      [0, 84],
    ],
    left: [],
  });
  return unnamed({
    title: "child's dungarees",
    pieces: [
      strap,
      front,
      bib,
      back,
      { ...pocket, cutting: { ...pocket.cutting, count: 3 } },
      waistband,
      backFacing(back),
    ],
    over: ['front', 'bib'],
    seams: [
      'front.inseam = back.inseam, 3 mm',
      'back.side = front.side + waistband.end + bib.end',
      'front.crotch = front.crotch',
      'back.centre = back.centre',
      'waistband.lower = front.waist',
      'bib.lower = waistband.upper',
      'bib.top = bib.top',
      'bib.side = bib.side',
      'strap.lower = back.top',
      'strap.left = strap.left',
      'strap.right = strap.right',
      'strap.tip = strap.tip',
      'back facing.top = back.top',
      'back facing.armhole = back.armhole',
      'back facing.side = waistband.end + bib.end',
      'back facing.centre = back facing.centre',
    ],
    notches: [
      ['single', ['front.inseam from hem', 210], ['back.inseam from hem', 209]],
      ['single', ['front.side from hem', 250], ['back.side from hem', 250]],
      ['single', ['back.side from armhole', bandWide + bibEnd]],
      ['single', ['front.crotch from inseam', 70]],
      ['double', ['back.centre from inseam', 110]],
      ['single', ['front.waist from side', 80], ['waistband.lower from end', 80]],
      ['single', ['waistband.upper from end', 80], ['bib.lower from end', 80]],
      ['single', ['back.armhole from side', 70], ['back facing.armhole from side', 70]],
      ['single', ['bib.side from top', 90]],
    ],
  });
}
