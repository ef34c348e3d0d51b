import { decidedBy } from '../joining/runs-taken.js';
import { oncePerAll } from '../once-per.js';
import { type Path, pathOf } from '../path/path.js';
import { requireWhole, requireWholePiece } from '../pattern/require-whole.js';
import type { Pattern, Piece } from '../pattern/types.js';
import { signedArea } from '../region/area.js';
import { isSamePoint } from '../same-point.js';
import type { Finding } from '../telling.js';
import { distance, type Point } from '../vector.js';
import { closedUp, type SnipMark } from './assemble.js';
import { beyondFolds } from './beyond-fold.js';
import { type Boundaries, type Boundary, boundariesOf, isWithin, type Shortcut } from './boundaries.js';
import { narrowFindings, notSimple } from './findings.js';
import { hemFindings } from './hem.js';
import { chainsBetweenMouths, overMouths } from './mouths.js';
import { isRun } from './node.js';
import { nodesOf, plannedJoints } from './ring.js';
import type { Run } from './run.js';
import { seamsOf } from './runs-on.js';
import { pathOfStrands, type Strand, type Stretch, stretchesOf } from './strand.js';
import { withBareBends } from './tight-bends.js';

/** Where a piece is cut: the stitching line moved out by each edge's allowance, its corners and darts shaped to sew. */
export interface CuttingLine {
  /** Closed, clockwise, simple. */
  readonly path: Path;
  /** The same line part by part, in order from its start: what each part is and which edge or dart it belongs to. */
  readonly stretches: readonly Stretch[];
  /** From the cutting line to each inner corner of the stitching line: where the maker snips. */
  readonly snips: readonly Path[];
  /** Where cloth is folded: the stitching lines of turned-up hems, and the folds of darts' intakes. */
  readonly foldLines: readonly Path[];
  readonly findings: readonly Finding[];
}

/**
 * The cutting line of a piece by the rules of the trade: per-edge allowances, corners mitred, pressed open, turned up
 * or snipped, folds without allowance, each dart's mouth in the shape its folded intake needs.
 *
 * Away from corners it lies on the true parallels within `fitTolerance` (mm), and nowhere nearer to an edge than its
 * allowance, but for the mirrored ends and folds. Where an allowance is wider than a bend or slot lets it lie, the
 * line is trimmed to what can be cut, with a finding. With no allowance it is the stitching line itself, bit for bit.
 *
 * @param pattern whose seams say which neighbours run on across a seam, for corners that are pressed open by default;
 *   without it those corners are mitred
 * @throws PatternError what `requireWhole` throws
 */
export function cuttingLine(piece: Piece, pattern?: Pattern): CuttingLine {
  requireWholePiece(piece);
  if (pattern === undefined) return cut(piece);
  requireWhole(pattern);
  return cutInPattern(piece, pattern);
}

/**
 * Checking, measuring and drawing a pattern all ask for it. Of the pattern only the seams matter, and the pieces that
 * the piece is sewn to: what a step did to others leaves it as it is.
 */
const cutInPattern = /* @__PURE__ */ oncePerAll(
  (piece: Piece, pattern: Pattern) => [
    pattern.seams,
    piece,
    ...seamsOf(pattern, piece).flatMap(seam => decidedBy(pattern, seam)),
  ],
  (piece, pattern): CuttingLine => cut(piece, pattern),
);

function cut(piece: Piece, pattern?: Pattern): CuttingLine {
  const findings: Finding[] = [];
  const ring = nodesOf(piece, findings);
  const runs = ring.filter(isRun);
  const joints = plannedJoints(ring, piece, pattern, findings);
  const bare = withBareBends(ring, joints);
  const chains = chainsBetweenMouths(bare.ring, bare.joints);
  const closed = overMouths(bare.ring, chains, piece, findings);
  const raw = closedUp(closed.strands);
  const cleared = { runs, bends: bare.bends, raw, snips: closed.snips };
  const found = boundariesOf(raw, 0, { halves: beyondFolds(runs, raw), covers: bare.covers });
  const outer = outermost(found, raw, piece, findings);
  const { shortcuts } = outer,
    strands = closedUp(outer.strands);
  findings.push(...narrowFindings(piece, cleared, { strands, shortcuts }), ...hemFindings(piece, runs));
  return {
    path: pathOfStrands(strands),
    stretches: stretchesOf(strands),
    snips: closed.snips.flatMap(mark => snipOf(mark, raw, shortcuts)),
    foldLines: [
      ...closed.folds,
      ...runs.filter(r => r.edge?.kind === 'hem' && r.allowance > 0).map(foldOfHem),
    ],
    findings,
  };
}

/** Of the boundaries between cut and uncut cloth the one about all others; the whole chain, with a finding, where none closes. */
function outermost(found: Boundaries, raw: readonly Strand[], piece: Piece, findings: Finding[]): Boundary {
  const uncut: Boundary = { strands: raw, shortcuts: [] };
  if ('openAt' in found) {
    findings.push(notSimple(piece, found.openAt));
    return uncut;
  }
  const sizes = found.map(({ strands }) => signedArea(pathOfStrands(strands)));
  return found[sizes.indexOf(Math.max(...sizes))] ?? uncut;
}

function snipOf(mark: SnipMark, raw: readonly Strand[], shortcuts: readonly Shortcut[]): readonly Path[] {
  const cut = shortcuts.find(c => isWithin(mark.index, c, raw.length));
  const away = (p: Point): number => distance(p, mark.to);
  // Where a fold lies between, it is along the fold that cloth is snipped, from where the line comes to it.
  const from = cut
    ? cut.by.reduce((p, q) => (away(q) > away(p) ? q : p))
    : raw[mark.index % raw.length]!.segment[0];
  return isSamePoint(from, mark.to) ? [] : [pathOf([from, mark.to])];
}

const foldOfHem = (run: Run): Path => ({ segments: run.stitching });
