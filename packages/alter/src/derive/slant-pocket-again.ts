import {
  type Edge,
  type EdgeRun,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { nearestOnPath, pathEnd, pathStart, subpath, transformedPath } from '@paperhinge/geometry/paths';
import { distance, scale, translation } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { withEndMoved } from '../moved-edges/end-moved.js';
import {
  derivedPocket,
  type PocketCorner,
  type PocketEdge,
  pocketPieces,
  type SlantPocketMade,
  tail,
  withPocket,
} from './slant-pocket-pieces.js';
import { refusal, saying } from './tellings.js';

/**
 * Both pieces of a slant pocket drawn again for mouth, waist and side as they are now: the bag is traced along them
 * from the mouth's ends, the corner that closes them is the side piece's own, cut back or run on to those ends.
 * @throws PatternError `corner-not-there` where the mouth no longer lies between the two; `pocket-beyond-edge`
 */
export function slantPocketAgain(pattern: Pattern, made: SlantPocketMade): Alteration {
  const { laidBy, ...wish } = made;
  const source = pieceNamed(pattern, wish.piece);
  const side = pieceNamed(pattern, `${wish.name} side`);
  const back = translation(scale(laidBy, -1));
  const corner = cornerNow(source, made, edge => transformedPath(edgePath(side, edge), back));
  const pieces = pocketPieces(source, wish, corner);
  const mouth = (piece: string): readonly EdgeRun[] => [{ piece, edge: 'mouth', reversed: false }];
  const placed = withPocket(pattern, pieces, wish, {
    own: mouth(pieces.facing.name),
    partner: mouth(source.name),
    easeMm: 0,
  });
  const seams = placed.pattern.seams.map(seam => closedNow(seam, side.name, corner));
  return {
    pattern: { ...placed.pattern, seams },
    did: saying('drafted-slant-pocket', {
      piece: { piece: source.name },
      mouthMm: pathLength(corner.mouth),
      pieces: [{ piece: pieces.side.name }, { piece: pieces.facing.name }],
    }),
    findings: [],
    derived: [pieces.side, pieces.facing].map(derivedPocket),
  };
}

/** @param closingOf the side piece's line along one of the two edges, where it lay on the piece */
function cornerNow(source: Piece, wish: SlantPocketMade, closingOf: (edge: string) => Path): PocketCorner {
  const ring = source.outline.parts;
  const at = ring.findIndex(part => part.type === 'edge' && part.name === 'mouth');
  const beside = [ring[(at + ring.length - 1) % ring.length], ring[(at + 1) % ring.length]];
  const [before, mouth, after] = [beside[0], ring[at], beside[1]];
  const takes = { [wish.waist]: wish.depth, [wish.side]: wish.below };
  const isOne = (part: typeof before): part is Edge =>
    part?.type === 'edge' && takes[part.name] !== undefined;
  if (mouth?.type !== 'edge' || !isOne(before) || !isOne(after))
    throw refusal(
      'corner-not-there',
      { first: { piece: source.name, edge: wish.waist }, second: { piece: source.name, edge: wish.side } },
      { piece: source.name },
    );
  return {
    mouth: mouth.path,
    first: edgeNow(source, before, takes[before.name]!, closingOf, 'end'),
    second: edgeNow(source, after, takes[after.name]!, closingOf, 'start'),
  };
}

/** @param at the end of the edge that lies at the mouth */
function edgeNow(
  source: Piece,
  edge: Edge,
  bagMm: number,
  closingOf: (edge: string) => Path,
  at: 'start' | 'end',
): PocketEdge {
  const lengthMm = pathLength(edge.path);
  const where = { piece: source.name, edge: edge.name };
  if (bagMm >= lengthMm)
    throw refusal('pocket-beyond-edge', { edge: where, wantedMm: bagMm, lengthMm }, where);
  const point = at === 'end' ? pathEnd(edge.path) : pathStart(edge.path);
  const line = closingOf(edge.name);
  const { along } = nearestOnPath(line, point);
  const closing = at === 'end' ? subpath(line, along, pathLength(line)) : subpath(line, 0, along);
  const near = at === 'end' ? pathStart(closing) : pathEnd(closing);
  const isOff = distance(near, point) > tolerances.coincidenceTolerance;
  return {
    edge,
    bag: at === 'end' ? tail(edge.path, bagMm) : subpath(edge.path, 0, bagMm),
    closing: isOff ? withEndMoved(closing, at === 'end' ? 'start' : 'end', point) : closing,
  };
}

/** A seam that runs over the side piece's part of an edge, as long as that part is now. */
function closedNow(seam: Seam, sidePiece: string, { first, second }: PocketCorner): Seam {
  const now = (run: EdgeRun): EdgeRun => {
    if (run.piece !== sidePiece || !run.part) return run;
    if (run.edge === second.edge.name) return { ...run, part: { from: 0, to: pathLength(second.closing) } };
    if (run.edge !== first.edge.name) return run;
    const from = pathLength(first.bag);
    return { ...run, part: { from, to: from + pathLength(first.closing) } };
  };
  const isOver = [...seam.a, ...seam.b].some(run => run.piece === sidePiece && run.part);
  return isOver ? { ...seam, a: seam.a.map(now), b: seam.b.map(now) } : seam;
}
