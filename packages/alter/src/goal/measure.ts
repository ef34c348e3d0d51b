import {
  type EdgeRef,
  edgePath,
  levelGirths,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Saying,
  walkSeam,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { hemSweep, lengthInGarment } from '@paperhinge/geometry/measure';
import { boundsOfPath, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { sameEdge } from '../edge-refs.js';
import { bodyGirthAt } from '../fit/level-role.js';
import { neckEdges } from '../fit/rings.js';
import type { Wearer } from '../fit/wearer.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import { refusal, saying } from './tellings.js';

/**
 * What can be measured of a pattern. Lengths in mm, areas in mm²; girths, sweeps and openings all round the garment,
 * or round one limb; edges, seams and pieces as drawn.
 */
export type Measure =
  | { readonly of: 'girth'; readonly level: string }
  /** The girth less the wearer's. */
  | { readonly of: 'ease'; readonly level: string; readonly wearer: Wearer }
  /** The first side. */
  | { readonly of: 'seam'; readonly seam: string }
  /** What the first side is longer than the second. */
  | { readonly of: 'seam-ease'; readonly seam: string }
  /** Added up. */
  | { readonly of: 'edges'; readonly edges: readonly EdgeRef[] }
  /** The hem that the edge is part of. */
  | { readonly of: 'sweep'; readonly edge: EdgeRef }
  | { readonly of: 'neck' }
  /** Along the grain, across it, and within the stitching line. */
  | { readonly of: 'height' | 'width' | 'area'; readonly piece: string };

/**
 * What a measure is on a pattern, in mm or mm².
 * @throws PatternError `unknown-piece`, `unknown-edge`, `unknown-seam`; `goal-level-unknown`, `goal-body-unknown`,
 *   `goal-hem-unknown`
 */
export function measured(pattern: Pattern, measure: Measure): number {
  requireWhole(pattern);
  switch (measure.of) {
    case 'girth':
      return girthAt(pattern, measure.level);
    case 'ease':
      return girthAt(pattern, measure.level) - bodyAt(pattern, measure.wearer, measure.level);
    case 'seam':
      return walkSeam(pattern, seamNamed(pattern, measure.seam)).aMm;
    case 'seam-ease':
      return walkSeam(pattern, seamNamed(pattern, measure.seam)).differenceMm;
    case 'edges':
      return sum(
        measure.edges.map(({ piece, edge }) => pathLength(edgePath(pieceNamed(pattern, piece), edge))),
      );
    case 'sweep':
      return sweepOf(pattern, measure.edge);
    case 'neck':
      return sum(neckEdges(pattern).map(ref => lengthInGarment(pattern, ref)));
    default:
      return extentOf(pieceNamed(pattern, measure.piece), measure.of);
  }
}

/** How near a measure comes to a goal to have reached it, in mm or mm². */
export const nearEnough = ({ of }: Measure): number =>
  of === 'area' ? tolerances.areaGoalTolerance : tolerances.goalTolerance;

/** A measure in words: "the girth at the bust". */
export function measureSaying(measure: Measure): Saying {
  switch (measure.of) {
    case 'girth':
      return saying('measure-girth', { level: measure.level });
    case 'ease':
      return saying('measure-ease', { level: measure.level });
    case 'seam':
      return saying('measure-seam', { seam: measure.seam });
    case 'seam-ease':
      return saying('measure-seam-ease', { seam: measure.seam });
    case 'edges':
      return saying('measure-edges', { edges: measure.edges.map(({ piece, edge }) => ({ piece, edge })) });
    case 'sweep':
      return saying('measure-sweep', { edge: { piece: measure.edge.piece, edge: measure.edge.edge } });
    case 'neck':
      return saying('measure-neck', {});
    default:
      return saying(`measure-${measure.of}`, { piece: measure.piece });
  }
}

function girthAt(pattern: Pattern, level: string): number {
  const girths = levelGirths(pattern);
  if (Object.hasOwn(girths, level)) return girths[level]!;
  throw refusal('goal-level-unknown', { level, levels: Object.keys(girths) });
}

function bodyAt(pattern: Pattern, wearer: Wearer, level: string): number {
  const body = bodyGirthAt(pattern, wearer, level);
  if (body !== undefined) return body;
  throw refusal('goal-body-unknown', { level, measurements: Object.keys(wearer) });
}

function sweepOf(pattern: Pattern, edge: EdgeRef): number {
  const hem = hemSweep(pattern).find(({ edges }) => edges.some(ref => sameEdge(ref, edge)));
  if (hem) return hem.sweepMm;
  throw refusal('goal-hem-unknown', { piece: edge.piece, edge: edge.edge }, edge);
}

function extentOf(piece: Piece, of: 'height' | 'width' | 'area'): number {
  const outline = outlinePath(piece.outline);
  if (of === 'area') return Math.abs(signedArea(outline));
  const { grain } = grainOrVertical(piece);
  // The grain upright, so that the box stands along it.
  const { x, y } = grain;
  const { min, max } = boundsOfPath(transformedPath(outline, { a: y, b: x, c: -x, d: y, e: 0, f: 0 }));
  return of === 'height' ? max.y - min.y : max.x - min.x;
}

const sum = (lengths: readonly number[]): number => lengths.reduce((total, mm) => total + mm, 0);
