import { endOf, startOf } from '../curve/segment.js';
import { locating, PatternError } from '../errors.js';
import { quoted, suggestion } from '../naming.js';
import { oncePer } from '../once-per.js';
import { pathLength } from '../path/length.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import { signedArea } from '../region/area.js';
import { coincidenceTolerance, dartLegTolerance, largestAllowance, largestCoordinate } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { dartsOf, edgeNames, edgeParts, edgePath, interrupts, outlinePath, partsOfEdge } from './outline.js';
import { refuseSelfCrossing } from './self-crossing.js';
import type { Dart, Edge, Pattern, Piece, Seam } from './types.js';

/**
 * Refuses a pattern that cannot be a pattern. What is only doubtful (seams that do not match, allowances not given)
 * is left to `checkPattern`.
 *
 * @throws PatternError naming piece and edge: `name-missing`, `duplicate-piece`, `duplicate-edge`, `duplicate-seam`,
 *   `duplicate-fabric`, `unknown-piece`, `unknown-edge`, `empty-seam`, and those of {@link validatePiece}
 */
export function validatePattern(pattern: Pattern): void {
  validateTogether(pattern);
  for (const piece of pattern.pieces) validatePiece(piece);
}

/** Names and seams: all that {@link validatePattern} asks of pieces that are each known to be sound. */
export function validateTogether(pattern: Pattern): void {
  const named = (things: readonly { readonly name: string }[]): readonly string[] => things.map(t => t.name);
  refuseDuplicates('piece', named(pattern.pieces));
  refuseDuplicates('seam', named(pattern.seams));
  refuseDuplicates('fabric', named(pattern.fabrics));
  for (const seam of pattern.seams) validateSeam(seam, pattern);
}

/**
 * @throws PatternError `open-outline` with the gap, `self-crossing` with the place, `outline-anticlockwise`,
 *   `outline-without-area`, `duplicate-edge`, `edge-in-parts`, `edge-without-length`, `dart-legs-differ`,
 *   `allowance-out-of-range`, `allowance-on-fold`, `notch-off-edge`, `opening-out-of-range`, `cut-count`,
 *   `coordinate-out-of-range`
 */
export const validatePiece: (piece: Piece) => void = oncePer((piece: Piece): void => {
  locating({ piece: piece.name }, () => {
    const { parts } = piece.outline;
    if (parts.length === 0) throw withoutEdges();
    for (const part of parts) {
      const paths = part.type === 'edge' ? [part.path] : part.legs;
      locating({ edge: part.name }, () => paths.forEach(refuseBadPath));
    }
    refuseGaps(piece);
    refuseNames(piece);
    for (const edge of edgeParts(piece)) locating({ edge: edge.name }, () => refuseBadEdge(edge));
    for (const dart of dartsOf(piece)) locating({ edge: dart.name }, () => refuseUnlikeLegs(dart));
    refuseBadArea(outlinePath(piece.outline));
    refuseSelfCrossing(piece);
    refuseBadNotches(piece);
    if (
      !(
        Number.isInteger(piece.cutting.count) &&
        piece.cutting.count >= 1 &&
        piece.cutting.count <= mostCopies
      )
    )
      throw new PatternError('cut-count', {
        message: 'How often a piece is cut must be a whole number from 1 to 1000.',
        remedy: 'Write 1, or 2 for a pair.',
      });
  });
});
const mostCopies = 1000;

function refuseDuplicates(what: 'piece' | 'seam' | 'fabric', names: readonly string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (name.trim() === '')
      throw new PatternError('name-missing', {
        message: `A ${what} has no name.`,
        remedy: `Give every ${what} a name.`,
      });
    if (seen.has(name))
      throw new PatternError(`duplicate-${what}`, {
        message: `There are two ${what}s called ${quoted(name)}.`,
        remedy: 'Give each a name of its own.',
        where: what === 'piece' ? { piece: name } : {},
      });
    seen.add(name);
  }
}

const withoutEdges = (): PatternError =>
  new PatternError('piece-without-outline', {
    message: 'A piece has no edges.',
    remedy: 'Mark its edges with data-edge, or one closed path with data-outline.',
  });

function refuseBadPath(path: Path): void {
  const inRange = ({ x, y }: Point): boolean =>
    Math.abs(x) <= largestCoordinate && Math.abs(y) <= largestCoordinate;
  if (!path.segments.every(s => s.every(inRange)))
    throw new PatternError('coordinate-out-of-range', {
      message: 'A point is not a number, or lies more than 100 m away.',
      remedy: 'Check the unit the drawing was saved in.',
    });
  if (path.segments.length === 0 || pathLength(path) <= coincidenceTolerance)
    throw new PatternError('edge-without-length', {
      message: 'An edge or dart leg has no length.',
      remedy: 'Remove it, or draw it.',
    });
  path.segments.forEach((segment, i) => {
    const next = path.segments[i + 1];
    if (next) refuseGap(endOf(segment), startOf(next));
  });
}

function refuseGaps(piece: Piece): void {
  const { parts } = piece.outline;
  parts.forEach((part, i) => {
    const next = parts[(i + 1) % parts.length]!;
    if (part.type === 'dart') refuseGap(pathEnd(part.legs[0]), pathStart(part.legs[1]), part.name);
    const end = part.type === 'edge' ? pathEnd(part.path) : pathEnd(part.legs[1]);
    const start = next.type === 'edge' ? pathStart(next.path) : pathStart(next.legs[0]);
    refuseGap(end, start, part.name, next.name);
  });
}

function refuseGap(end: Point, start: Point, edge?: string, next?: string): void {
  const gap = distance(end, start);
  if (gap <= coincidenceTolerance) return;
  const between =
    edge === undefined || next === undefined ? '' : ` between ${quoted(edge)} and ${quoted(next)}`;
  throw new PatternError('open-outline', {
    message: `The outline is open${between}: a gap of ${gap.toFixed(2)} mm.`,
    remedy: 'Let each edge start where the last one ends.',
    ...(edge === undefined ? {} : { where: { edge } }),
  });
}

/** An edge stands once, or in parts with darts (or one edge, as an inset in a neck) between each and the next. */
function refuseNames(piece: Piece): void {
  const { parts } = piece.outline;
  const names = [...edgeNames(piece), ...dartsOf(piece).map(d => d.name)];
  if (names.some(name => name.trim() === ''))
    throw new PatternError('name-missing', {
      message: 'An edge has no name.',
      remedy: 'Give every edge and dart a name.',
    });
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined)
    throw new PatternError('duplicate-edge', {
      message: `Two edges or darts are called ${quoted(twice)}.`,
      remedy: 'Give each a name of its own.',
      where: { edge: twice },
    });
  for (const name of edgeNames(piece)) {
    const own = partsOfEdge(piece, name);
    for (let i = 1; i < own.length; i++) {
      const from = parts.indexOf(own[i - 1]!) + 1;
      const count = (parts.indexOf(own[i]!) - from + parts.length) % parts.length;
      const between = Array.from({ length: count }, (_, k) => parts[(from + k) % parts.length]!);
      if (!interrupts(between))
        throw new PatternError('edge-in-parts', {
          message: `The edge ${quoted(name)} lies in separate places.`,
          remedy: 'Give each part a name of its own; only darts or one other edge may interrupt an edge.',
          where: { edge: name },
        });
    }
  }
}

function refuseBadEdge(edge: Edge): void {
  const { allowance, kind, opening } = edge;
  if (!(allowance >= 0 && allowance <= largestAllowance))
    throw new PatternError('allowance-out-of-range', {
      message: `An allowance must be from 0 to ${largestAllowance} mm.`,
      remedy: 'Check its sign and its unit.',
    });
  if (allowance > 0 && (kind === 'fold' || kind === 'raw'))
    throw new PatternError('allowance-on-fold', {
      message: 'A fold or raw edge has no allowance.',
      remedy: 'Set its allowance to 0, or make it a seam.',
    });
  if (opening !== undefined && !(opening > 0 && opening <= largestCoordinate))
    throw new PatternError('opening-out-of-range', {
      message: 'An opening must be longer than 0.',
      remedy: 'Give its length, or leave it out.',
    });
}

function refuseUnlikeLegs({ legs }: Dart): void {
  const [a, b] = legs.map(pathLength) as [number, number];
  if (Math.abs(a - b) <= dartLegTolerance) return;
  throw new PatternError('dart-legs-differ', {
    message: `The legs of the dart differ by ${Math.abs(a - b).toFixed(1)} mm (${a.toFixed(1)} and ${b.toFixed(1)} mm).`,
    remedy: `Draw them equally long, within ${dartLegTolerance} mm.`,
  });
}

function refuseBadArea(outline: Path): void {
  const area = signedArea(outline);
  if (Math.abs(area) <= coincidenceTolerance)
    throw new PatternError('outline-without-area', {
      message: 'The outline encloses nothing.',
      remedy: 'Check that its edges are not drawn on top of each other.',
    });
  if (area < 0)
    throw new PatternError('outline-anticlockwise', {
      message: 'The outline runs anticlockwise.',
      remedy: 'List its edges clockwise as seen on the page.',
    });
}

function refuseBadNotches(piece: Piece): void {
  const names = edgeNames(piece);
  for (const notch of piece.notches) {
    if (!names.includes(notch.edge)) throw unknownEdge(piece.name, notch.edge, names, 'A notch');
    const length = pathLength(edgePath(piece, notch.edge));
    if (!(notch.at >= -coincidenceTolerance && notch.at <= length + coincidenceTolerance))
      throw new PatternError('notch-off-edge', {
        message: `A notch lies ${notch.at.toFixed(1)} mm along an edge that is ${length.toFixed(1)} mm long.`,
        remedy: 'Move it onto the edge.',
        where: { edge: notch.edge },
      });
  }
}

function validateSeam(seam: Seam, pattern: Pattern): void {
  for (const side of [seam.a, seam.b]) {
    if (side.length === 0)
      throw new PatternError('empty-seam', {
        message: `One side of the seam ${quoted(seam.name)} has no edge.`,
        remedy: 'Give both sides, a and b.',
      });
    for (const run of side) {
      const piece = pattern.pieces.find(p => p.name === run.piece);
      if (!piece)
        throw new PatternError('unknown-piece', {
          message: `The seam ${quoted(seam.name)} names the piece ${quoted(run.piece)}, which is not there.`,
          remedy: suggestion(
            run.piece,
            pattern.pieces.map(p => p.name),
            'pieces',
          ),
          where: { piece: run.piece },
        });
      if (!edgeNames(piece).includes(run.edge))
        throw unknownEdge(piece.name, run.edge, edgeNames(piece), `The seam ${quoted(seam.name)}`);
    }
  }
}

const unknownEdge = (piece: string, edge: string, names: readonly string[], what: string): PatternError =>
  new PatternError('unknown-edge', {
    message: `${what} names the edge ${quoted(edge)}, which the piece ${quoted(piece)} does not have.`,
    remedy: suggestion(edge, names, 'edges'),
    where: { piece, edge },
  });
