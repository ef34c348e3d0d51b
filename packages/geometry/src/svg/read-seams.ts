import { PatternError } from '../errors.js';
import { pathLength } from '../path/length.js';
import { edgeNames, edgePath, neighboursOf } from '../pattern/outline.js';
import { parsePosition } from '../pattern/position-text.js';
import type { EdgeRun, Piece, Seam, SeamEase } from '../pattern/types.js';
import { takenUpWays } from '../pattern/words.js';
import type { Thing } from '../telling.js';

import { joiningGap, shareRounding } from '../tolerance.js';
import { continued } from './continue-runs.js';
import type { Json, JsonEntry } from './json.js';
import {
  entriesOf,
  lengthAt,
  lengthIn,
  type MetadataContext,
  notUnderstood,
  percentIn,
  placedAt,
  tellUnread,
  wordAt,
} from './metadata-values.js';
import type { OpenRun, OpenSeam } from './open-seam.js';
import { findRun, type RunText } from './run-text.js';
import { seamKeys } from './vocabulary.js';

/**
 * The seams of the metadata, each run resolved to an edge and a direction. A run says its direction by `from X`, or
 * continues the run before it in its list; else it is taken from the edge's start, with a finding. A part of an edge
 * is given by two places from where the run begins: `skirt.waist from side, 60 mm to 220 mm`.
 *
 * @param others seams that are known already and help to continue
 * @throws PatternError `metadata-not-understood`, `empty-seam`, `unknown-piece`, `unknown-edge`, `not-a-neighbour`,
 *   `ambiguous-end`, `position-off-edge`, each with the line
 */
export function readSeams(
  list: readonly (readonly [string, JsonEntry])[],
  context: MetadataContext,
  others: readonly Seam[] = [],
): readonly Seam[] {
  const open = list.map(([name, { keyAt, value }]) => openSeam(name, keyAt, value, context));
  const known = continued([...others.map(asOpen), ...open], context.pieces).slice(others.length);
  return known.map(({ name, a, b, ease, takenUp, tolerance }) => ({
    name,
    a: a.map(run => settled(run, { seam: name }, context)),
    b: b.map(run => settled(run, { seam: name }, context)),
    ease,
    ...(takenUp === undefined ? {} : { takenUp }),
    ...(tolerance === undefined ? {} : { tolerance }),
  }));
}

const asOpen = ({ name, a, b, ease }: Seam): OpenSeam => {
  const open = ({ piece, edge, reversed }: EdgeRun): OpenRun => ({
    piece,
    edge,
    reversed,
    part: undefined,
    json: { kind: 'null', at: 0 },
  });
  return { name, a: a.map(open), b: b.map(open), ease, takenUp: undefined, tolerance: undefined };
};

/** A run that stands by itself, as a fastening's does. */
export const readRun = (json: Json, of: Thing, context: MetadataContext): EdgeRun =>
  settled(openRun(json, of, context), of, context);

function openSeam(name: string, keyAt: number, json: Json, context: MetadataContext): OpenSeam {
  const of: Thing = { seam: name };
  const entries = entriesOf(json, { of }, context);
  tellUnread(entries, seamKeys, of, context);
  const side = (key: 'a' | 'b'): readonly OpenRun[] => {
    const value = entries.get(key)?.value;
    const items = value === undefined ? [] : value.kind === 'array' ? value.items : [value];
    if (items.length === 0)
      throw context.report.refuse('empty-seam', context.offset(value?.at ?? keyAt), { name });
    return items.map(item => openRun(item, of, context));
  };
  return {
    name,
    a: side('a'),
    b: side('b'),
    ease: easeOf(entries.get('ease')?.value, of, context),
    takenUp: wordAt(entries, 'takenUp', takenUpWays, of, context),
    tolerance: lengthAt(entries, 'tolerance', of, context),
  };
}

function openRun(json: Json, of: Thing, context: MetadataContext): OpenRun {
  const found = json.kind === 'string' ? findRun(json.value, context.pieces) : undefined;
  if (!found) throw notUnderstood(json, 'run', { of }, context);
  const { piece: name, edge, from, part } = found;
  const at = context.offset(json.at);
  const seam = of.seam ?? of.fastening!;
  const piece = context.pieces.find(p => p.name === name);
  if (!piece)
    throw context.report.refuse(
      'unknown-piece',
      at,
      { name, names: context.pieces.map(p => p.name), seam },
      { piece: name },
    );
  if (!found.known)
    throw context.report.refuse(
      'unknown-edge',
      at,
      { piece: name, name: edge, names: edgeNames(piece), seam },
      { piece: name, edge },
    );
  const reversed = from === undefined ? undefined : startsAtEnd(piece, { ...found, from }, at, context);
  return { piece: name, edge, reversed, part, json };
}

/** Whether a run that begins at `from` begins at the edge's end (clockwise), and so runs against the outline. */
function startsAtEnd(
  piece: Piece,
  { edge, from }: RunText & { readonly from: string },
  at: number,
  { report }: MetadataContext,
): boolean {
  const { start, end } = neighboursOf(piece, edge);
  const owner = { piece: piece.name, edge };
  if (start === from && end === from) throw report.refuse('ambiguous-end', at, { edge: owner, from }, owner);
  if (start === from) return false;
  if (end === from) return true;
  if (from === 'start') return false;
  if (from === 'end') return true;
  throw report.refuse('not-a-neighbour', at, { edge: owner, from, neighbours: [start, end] }, owner);
}

function settled(run: OpenRun, of: Thing, context: MetadataContext): EdgeRun {
  const { piece: name, edge, json } = run;
  const owner = { piece: name, edge };
  const piece = context.pieces.find(p => p.name === name)!;
  if (run.reversed === undefined) {
    const { start, end } = neighboursOf(piece, edge);
    context.report.add(
      'note',
      'run-direction-not-given',
      context.offset(json.at),
      { seam: of, edge: owner, ends: start === end ? ['start', 'end'] : [start, end] },
      owner,
    );
  }
  const reversed = run.reversed ?? false;
  const part = run.part && partOf(run.part, reversed, piece, run, context);
  return { piece: name, edge, reversed, ...(part ? { part } : {}) };
}

/** The part of an edge that two places from a run's beginning bound, in mm from the edge's start (clockwise). */
function partOf(
  [first, second]: readonly [string, string],
  reversed: boolean,
  piece: Piece,
  { edge, json }: OpenRun,
  context: MetadataContext,
): NonNullable<EdgeRun['part']> {
  const owner = { piece: piece.name, edge };
  const edgeMm = pathLength(edgePath(piece, edge));
  const along = (text: string): number => {
    if (text === 'start') return 0;
    if (text === 'end') return edgeMm;
    const place = placedAt(json, context, () => parsePosition(text, context.unit));
    return 'share' in place ? place.share * edgeMm : place.mm;
  };
  // What ends a hair before the corner ends at it, and goes on doing so when the corner moves.
  const atCorner = (mm: number): number =>
    Math.abs(mm) <= joiningGap ? 0 : Math.abs(mm - edgeMm) <= joiningGap ? edgeMm : mm;
  const from = atCorner(along(first)),
    to = atCorner(along(second));
  const limit = edgeMm * (1 + shareRounding);
  if (!(from >= 0 && from < to && to <= limit))
    throw context.report.refuse(
      'position-off-edge',
      context.offset(json.at),
      { edge: owner, alongMm: Math.max(from, to), edgeMm },
      owner,
    );
  const end = Math.min(to, edgeMm);
  return reversed ? { from: edgeMm - end, to: edgeMm - from } : { from, to: end };
}

function easeOf(json: Json | undefined, of: Thing, context: MetadataContext): SeamEase {
  if (!json) return { mm: 0 };
  if (json.kind !== 'string' && json.kind !== 'number') throw notUnderstood(json, 'ease', { of }, context);
  try {
    return json.kind === 'string' && json.value.includes('%')
      ? { percent: percentIn(json, { of }, context) }
      : { mm: lengthIn(json, { of }, context) };
  } catch (error) {
    if (error instanceof PatternError) throw notUnderstood(json, 'ease', { of }, context);
    throw error;
  }
}
