import {
  edgeNamed,
  edgeNames,
  edgePath,
  type Finding,
  formatLength,
  type Pattern,
  PatternError,
  type Piece,
  pathLength,
  pieceNamed,
  tolerances,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { withoutLostRuns } from '../edit/seam-runs.js';
import { requireSimple, tidied } from '../edit/tidy.js';
import { cutToDrawnLine } from '../neckline/drawn.js';
import { neckFrames } from '../neckline/frame.js';
import { neckOf } from '../neckline/neck-edge.js';
import { reassembled } from '../neckline/reassemble.js';
import { recutHalf } from '../neckline/shapes.js';

/** Draw a new neckline of a shape, by depth and half width in mm. */
export interface RecutNeckline {
  readonly piece: string;
  readonly shape: 'inset V' | 'V' | 'round' | 'square' | 'drawn';
  /** mm; not needed for `drawn`. */
  readonly depth?: number;
  /** mm; for V, round, square absent = at the present neck end. */
  readonly halfWidth?: number;
  /** Name of the piece's line for `drawn`. */
  readonly line?: string;
}

/**
 * Cuts a new neckline. Depth is measured down the centre line from where the present neck meets it, half width
 * square to it; the centre line is the fold edge, else an edge or line named `centre ...`, else the grain through
 * the neck's middle. An inset V becomes the edge `inset` beside what is left of `neck`; every other shape replaces
 * the neck under its name and cuts the shoulder. New edges take kind and allowance of the neck.
 *
 * @throws PatternError `no-neck`, `no-centre-line`, `neck-not-at-centre`, `dart-in-neck`; `neckline-too-deep`,
 *   `neckline-too-shallow`, `half-width-off-neck`, `half-width-beyond-shoulder`, `neckline-leaves-piece`;
 *   `depth-missing`, `half-width-missing`, `name-taken`; for a drawn line `unknown-line`, `line-ends-off-outline`
 */
export function recutNeckline(pattern: Pattern, parameters: RecutNeckline): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const neck = neckOf(piece);
  const say = (mm: number): string => formatLength(mm, pattern.unit);
  requireFigures(parameters);
  const drawn = parameters.shape === 'drawn';
  const cut = drawn
    ? cutToDrawnLine(piece, neck, parameters.line!)
    : reassembled(
        piece,
        neck,
        neckFrames(piece, neck, parameters.depth!).map(frame => recutHalf(piece, frame, parameters)),
      );
  const done = tidied(piece, cut);
  const message = `The new neckline of "${piece.name}" would run outside the piece.`;
  requireSimple(done.piece, 'neckline-leaves-piece', message, 'Make it narrower, or less deep.');
  const { pattern: altered, findings: lost } = withoutLostRuns(withPiece(pattern, done.piece));
  const size = drawn
    ? `along its line "${parameters.line}"`
    : `${say(parameters.depth!)} deep${parameters.halfWidth === undefined ? '' : `, ${say(parameters.halfWidth)} at each side`}`;
  return {
    pattern: altered,
    did: `recut the neckline of ${piece.name} (${parameters.shape}) ${size}`,
    findings: [...done.findings, ...lost, ...shoulderFindings(pattern, altered, piece.name)],
    ...(parameters.shape === 'inset V' ? { making: [insetNote(piece.name)] } : {}),
  };
}

const insetNote = (piece: string) => ({
  job: `inset ${piece}.inset`,
  text: `Finish the V inset of ${piece} to its point.`,
  after: [],
});

function requireFigures({ shape, depth, halfWidth, line, piece }: RecutNeckline): void {
  const missing =
    shape === 'drawn'
      ? line === undefined && 'line'
      : depth === undefined
        ? 'depth'
        : shape === 'inset V' && halfWidth === undefined && 'half width';
  if (missing)
    throw new PatternError(`${missing.replace(' ', '-')}-missing`, {
      message: `A neckline of shape "${shape}" needs its ${missing}.`,
      remedy: `Give ${missing}.`,
      where: { piece },
    });
  const negative = [depth, halfWidth].find(n => n !== undefined && !(n >= 0));
  if (negative === undefined && halfWidth !== 0 && !(shape === 'inset V' && depth === 0)) return;
  throw new PatternError('neckline-size', {
    message: `A neckline cannot be ${(negative ?? 0).toFixed(1)} mm deep or wide.`,
    remedy: 'Give lengths over 0.',
    where: { piece },
  });
}

/** A shoulder that was cut no longer matches its partner: said here, where the maker can still recut that too. */
function shoulderFindings(before: Pattern, after: Pattern, name: string): readonly Finding[] {
  return cutEdges(pieceNamed(before, name), pieceNamed(after, name)).flatMap(({ edge, byMm }) =>
    after.seams.flatMap(seam => {
      const own = (runs: typeof seam.a) => runs.some(r => r.piece === name && r.edge === edge);
      const partner = own(seam.a) ? seam.b : own(seam.b) ? seam.a : [];
      const others = partner.filter(r => r.piece !== name);
      if (others.length === 0) return [];
      const which = others.map(r => `${r.piece}.${r.edge}`).join(', ');
      return [
        {
          severity: 'warning' as const,
          code: 'shoulder-cut',
          where: { piece: name, edge },
          message: `${name}.${edge} is ${Math.abs(byMm).toFixed(1)} mm ${byMm < 0 ? 'shorter' : 'longer'} than before and is sewn to ${which}.`,
          figures: { changeMm: byMm },
          remedy: `Recut the neckline of ${[...new Set(others.map(r => r.piece))].join(', ')} to the same half width.`,
        },
      ];
    }),
  );
}

function cutEdges(before: Piece, after: Piece): readonly { readonly edge: string; readonly byMm: number }[] {
  const there = new Set(edgeNames(after));
  return edgeNames(before)
    .filter(
      edge => there.has(edge) && edgeNamed(before, edge).kind === 'seam' && edge !== neckOf(before).name,
    )
    .map(edge => ({ edge, byMm: pathLength(edgePath(after, edge)) - pathLength(edgePath(before, edge)) }))
    .filter(({ byMm }) => Math.abs(byMm) > tolerances.seamTolerance);
}
