import { edgePath, type Piece, type Point, pathLength, type Saying } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, resolvePosition } from '@paperhinge/geometry/pattern';
import { apply, distance, rotation } from '@paperhinge/geometry/plane';
import { inTurn } from '../became/in-turn.js';
import { dartAngle } from '../hinge/assemble.js';
import type { Cut, CutEnd } from '../hinge/cut.js';
import { dartNamed } from '../hinge/dart-named.js';
import { grainCrossing } from '../hinge/grain-crossing.js';
import { holdingSection } from '../hinge/holding.js';
import { motionsAcross } from '../hinge/motions-across.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart, sectionAt } from '../hinge/sections.js';
import { type Swung, swing } from '../hinge/swing.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { withLegsTrued } from './legs-trued.js';
import { intakeOf, mouthOf } from './mouth.js';
import { pointBackFrom } from './point-back.js';
import { refusal, saying } from './tellings.js';

/** Where a part of a dart goes: into an edge or into another dart, one of them. */
export interface DartPart {
  readonly edge?: string;
  /** Where the slash begins on the edge; absent = where the grain line through the pivot meets it, else its middle. */
  readonly at?: EdgePosition;
  readonly dart?: string;
  /** 0 to 1 of the dart; absent = an even part of what the others leave. */
  readonly share?: number;
}

/** A part with its slash's outer end and its share. */
export interface SharedPart {
  readonly from: Exclude<CutEnd, { readonly pivot: Point }>;
  readonly share: number;
}

/**
 * Each part with the place of its slash and its share; those without one take what the others leave, evenly.
 * @throws PatternError `share-place-unclear`, `shares-over-whole`, `shares-leave-nothing`, `dart-into-itself`,
 *   `unknown-edge`, `unknown-dart`; those of `resolvePosition`
 */
export function sharedParts(
  piece: Piece,
  dart: string,
  among: readonly DartPart[],
  pivot: Point,
): readonly SharedPart[] {
  const named = { piece: piece.name, dart };
  const given = among.reduce((sum, { share = 0 }) => sum + share, 0);
  const open = among.filter(({ share }) => share === undefined).length;
  if (given > 1 + tolerances.coincidenceTolerance)
    throw refusal('shares-over-whole', { dart: named, sharePercent: given * 100 }, named);
  if (open > 0 && given > 1 - tolerances.coincidenceTolerance)
    throw refusal('shares-leave-nothing', { dart: named }, named);
  return among.map(({ edge, at, dart: other, share = (1 - given) / open }, i) => {
    if ((edge === undefined) === (other === undefined))
      throw refusal('share-place-unclear', { dart: named, part: i + 1 }, named);
    if (other === dart) throw refusal('dart-into-itself', { dart: named }, named);
    if (other !== undefined) return { from: { dart: dartNamed(piece, other).name }, share };
    const along = at
      ? resolvePosition(piece, edge!, at)
      : (grainCrossing(piece, pivot, edge!) ?? pathLength(edgePath(piece, edge!)) / 2);
    return { from: { edge: edge!, along }, share };
  });
}

/** A dart that is shared out, its legs drawn to the pivot already. */
export interface SharingOut {
  readonly dart: string;
  readonly parts: readonly SharedPart[];
  readonly pivot: Point;
  /** Nothing of the dart stays. */
  readonly isWhole: boolean;
  /** mm that each other dart's point lies back from the pivot. */
  readonly backMm: ReadonlyMap<string, number>;
}

/** The piece with the strips turned about the pivot, the other darts' legs drawn anew and trued. */
export function sharedOut(piece: Piece, sharing: SharingOut): Reshaped & { readonly swung: Swung } {
  const { dart, parts, pivot, isWhole, backMm } = sharing;
  const whole = dartAngle(dartNamed(piece, dart));
  const cuts: readonly Cut[] = parts.map(({ from }) => ({ from, to: { dart } }));
  const cutPiece = cutApart(piece, cuts);
  const holding = holdingSection(cutPiece);
  // To the left of a slash lies the outline that leads on to the dart's first leg, to the right that from its second.
  const motions = motionsAcross(
    cutPiece,
    holding,
    parts.map(({ share }) => rotation(share * whole, pivot)),
  );
  const redrawn = new Map<string, Point>();
  for (const [cut, { from }] of parts.entries()) {
    if (!('dart' in from)) continue;
    const [a, b] = mouthOf(dartNamed(piece, from.dart));
    const moved = (side: 'before' | 'after', point: Point) =>
      apply(motions[sectionAt(cutPiece, cut, 'from', side)]!, point);
    const mouth = [moved('before', a), moved('after', b)] as const;
    const named = { piece: piece.name, dart: from.dart };
    redrawn.set(from.dart, pointBackFrom(pivot, mouth, backMm.get(from.dart)!, named));
  }
  const swung = swing(cutPiece, motions, holding, { closing: isWhole ? [dart] : [], redrawn });
  let done: Reshaped = {
    piece: swung.piece,
    became: swung.became,
    findings: openingFindings(piece.name, swung),
  };
  for (const name of redrawn.keys()) {
    const trued = withLegsTrued(done.piece, dartNamed(done.piece, name));
    const became = inTurn(done.became, trued.became);
    done = { piece: trued.piece, became, findings: [...done.findings, ...trued.findings] };
  }
  return { ...done, swung };
}

/** What became of one part, in words. */
export function toldPart(
  { from, share }: SharedPart,
  cut: number,
  { before, after, swung }: { readonly before: Piece; readonly after: Piece; readonly swung: Swung },
): Saying {
  const sharePercent = share * 100;
  if ('dart' in from)
    return saying('shared-into-dart', {
      into: { dart: from.dart },
      sharePercent,
      formerMm: intakeOf(dartNamed(before, from.dart)),
      intakeMm: intakeOf(dartNamed(after, from.dart)),
    });
  return saying('shared-into-edge', {
    edge: { edge: from.edge },
    sharePercent,
    alongMm: from.along,
    openedMm: swung.openings.find(opening => opening.cut === cut)?.openedMm ?? 0,
  });
}

/** mm from a dart's point to the pivot. */
export const backOf = (piece: Piece, dart: string, pivot: Point): number =>
  distance(dartNamed(piece, dart).apex, pivot);
