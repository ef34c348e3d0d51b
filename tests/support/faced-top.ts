// A sleeveless top with neck facings of its maker's own drawing: front and back on the fold, straight lines throughout.
import { at, type Edge, type OutlinePart, type Pattern, type Piece, polyline } from '@paperhinge/geometry';
import { type Corner, patternOf, pieceOf, seam, side } from './polygon-piece.js';

const roles: Readonly<Record<string, Edge['role']>> = {
  neck: 'neck',
  shoulder: 'shoulder',
  armhole: 'armhole',
  side: 'side',
  hem: 'hem',
  centre: 'centre',
};
const kinds: Readonly<Record<string, Edge['kind']>> = { hem: 'hem', centre: 'fold' };

/** A piece on the fold through corners, an edge a pair of them; edges have the roles that their names say. */
export function onFold(
  name: string,
  edges: readonly (readonly [string, Corner, Corner])[],
  role: Piece['role'],
): Piece {
  const parts = edges.map(([edge, from, to]): OutlinePart => {
    const drawn = side(edge, [from, to], { kind: kinds[edge] ?? 'seam' });
    return roles[edge] === undefined ? drawn : { ...drawn, role: roles[edge] };
  });
  const lines = [{ kind: 'grain' as const, name: 'grain', path: polyline(at(30, 60), at(30, 20)) }];
  return { ...pieceOf(name, parts, { lines }), ...(role === undefined ? {} : { role }) };
}

export const front = onFold(
  'front',
  [
    ['neck', [0, 100], [80, 0]],
    ['shoulder', [80, 0], [160, 30]],
    ['armhole', [160, 30], [230, 220]],
    ['side', [230, 220], [220, 560]],
    ['hem', [220, 560], [0, 560]],
    ['centre', [0, 560], [0, 100]],
  ],
  'bodice',
);
export const back = onFold(
  'back',
  [
    ['neck', [0, 30], [80, 0]],
    ['shoulder', [80, 0], [160, 30]],
    ['armhole', [160, 30], [230, 220]],
    ['side', [230, 220], [220, 560]],
    ['hem', [220, 560], [0, 560]],
    ['centre', [0, 560], [0, 30]],
  ],
  'bodice',
);
/** Its inner line is parallel to the neck. */
export const frontFacing = onFold(
  'front facing',
  [
    ['neck', [0, 100], [80, 0]],
    ['shoulder', [80, 0], [130, 18.75]],
    ['inner', [130, 18.75], [0, 181.25]],
    ['centre', [0, 181.25], [0, 100]],
  ],
  'facing',
);
export const backFacing = onFold(
  'back facing',
  [
    ['neck', [0, 30], [80, 0]],
    ['shoulder', [80, 0], [130, 18.75]],
    ['inner', [130, 18.75], [0, 67.5]],
    ['centre', [0, 67.5], [0, 30]],
  ],
  'facing',
);
export const bodySeams = [
  seam('shoulder', ['front.shoulder'], ['back.shoulder']),
  seam('side', ['front.side'], ['back.side']),
];
export const facingSeam = seam('facing shoulder', ['front facing.shoulder'], ['back facing.shoulder']);
export const neckSeam = seam(
  'neck',
  ['front facing.neck', '-back facing.neck'],
  ['front.neck', '-back.neck'],
);

export const facedTop = (seams: Pattern['seams'] = [...bodySeams, facingSeam, neckSeam]): Pattern =>
  patternOf([front, back, frontFacing, backFacing], seams);
