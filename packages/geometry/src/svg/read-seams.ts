import { PatternError } from '../errors.js';
import { quoted, suggestion } from '../naming.js';
import { edgeNames, neighboursOf } from '../pattern/outline.js';
import { parsePercent } from '../pattern/position-text.js';
import type { EdgeRun, Piece, Seam, SeamEase } from '../pattern/types.js';
import { parseLength } from '../units.js';
import { continued } from './continue-runs.js';
import type { Json, JsonEntry } from './json.js';
import { entriesOf, type MetadataContext, notUnderstood } from './read-metadata.js';
import { findRun } from './run-text.js';

const keys = ['a', 'b', 'ease'];

/** A run whose direction may not be known yet. */
export interface OpenRun {
  readonly piece: string;
  readonly edge: string;
  readonly reversed: boolean | undefined;
  readonly json: Json;
}
export interface OpenSeam {
  readonly name: string;
  readonly a: readonly OpenRun[];
  readonly b: readonly OpenRun[];
  readonly ease: SeamEase;
}

/**
 * The seams of the metadata, each run resolved to an edge and a direction. A run says its direction by `from X`, or
 * continues the run before it in its list; else it is taken from the edge's start, with a finding.
 *
 * @throws PatternError `metadata-not-understood`, `empty-seam`, `unknown-piece`, `unknown-edge`, `not-a-neighbour`,
 *   `ambiguous-end`, each with the line
 */
export function readSeams(
  list: readonly (readonly [string, JsonEntry])[],
  context: MetadataContext,
): readonly Seam[] {
  const open = list.map(([name, { keyAt, value }]) => openSeam(name, keyAt, value, context));
  const known = continued(open, context.pieces);
  return known.map(({ name, a, b, ease }) => ({
    name,
    a: a.map(run => settled(run, name, context)),
    b: b.map(run => settled(run, name, context)),
    ease,
  }));
}

function openSeam(name: string, keyAt: number, json: Json, context: MetadataContext): OpenSeam {
  const entries = entriesOf(json, `The seam ${quoted(name)}`, context);
  for (const [key, entry] of entries)
    if (!keys.includes(key))
      context.report.add('warning', 'metadata-not-read', context.offset(entry.keyAt), {
        message: `The seam ${quoted(name)} has ${quoted(key)}, which is not read.`,
        remedy: suggestion(key, keys, 'keys'),
      });
  const side = (key: 'a' | 'b'): readonly OpenRun[] => {
    const value = entries.get(key)?.value;
    const items = value === undefined ? [] : value.kind === 'array' ? value.items : [value];
    if (items.length === 0)
      throw context.report.error('empty-seam', context.offset(value?.at ?? keyAt), {
        message: `The side ${key} of the seam ${quoted(name)} has no edge.`,
        remedy: 'Write "a" and "b", each "piece.edge from neighbour" or a list of them.',
      });
    return items.map(item => openRun(item, name, context));
  };
  return { name, a: side('a'), b: side('b'), ease: easeOf(entries.get('ease')?.value, name, context) };
}

function openRun(json: Json, seam: string, context: MetadataContext): OpenRun {
  const found = json.kind === 'string' ? findRun(json.value, context.pieces) : undefined;
  if (!found)
    throw notUnderstood(
      json,
      `A run of the seam ${quoted(seam)} was not understood.`,
      'Write it as "piece.edge from neighbour".',
      context,
    );
  const { piece: pieceName, edge, from } = found;
  const piece = context.pieces.find(p => p.name === pieceName);
  if (!piece)
    throw context.report.error('unknown-piece', context.offset(json.at), {
      message: `The seam ${quoted(seam)} names the piece ${quoted(pieceName)}, which is not there.`,
      remedy: suggestion(
        pieceName,
        context.pieces.map(p => p.name),
        'pieces',
      ),
      piece: pieceName,
    });
  if (!found.known)
    throw context.report.error('unknown-edge', context.offset(json.at), {
      message: `The seam ${quoted(seam)} names the edge ${quoted(edge)}, which the piece ${quoted(pieceName)} does not have.`,
      remedy: suggestion(edge, edgeNames(piece), 'edges'),
      piece: pieceName,
      edge,
    });
  const reversed = from === undefined ? undefined : startsAtEnd(piece, edge, from, json, seam, context);
  return { piece: pieceName, edge, reversed, json };
}

/** Whether a run that begins at `from` begins at the edge's end (clockwise), and so runs against the outline. */
function startsAtEnd(
  piece: Piece,
  edge: string,
  from: string,
  json: Json,
  seam: string,
  context: MetadataContext,
): boolean {
  const { start, end } = neighboursOf(piece, edge);
  const at = { piece: piece.name, edge };
  if (start === from && end === from)
    throw context.report.error('ambiguous-end', context.offset(json.at), {
      message: `In the seam ${quoted(seam)}, ${quoted(from)} touches both ends of ${quoted(edge)}.`,
      remedy: 'Say "from start" or "from end" (clockwise).',
      ...at,
    });
  if (start === from) return false;
  if (end === from) return true;
  if (from === 'start') return false;
  if (from === 'end') return true;
  throw context.report.error('not-a-neighbour', context.offset(json.at), {
    message: `In the seam ${quoted(seam)}, ${quoted(from)} shares no corner with ${quoted(edge)} of ${quoted(piece.name)}.`,
    remedy: `Say from ${quoted(start)} or from ${quoted(end)}.`,
    ...at,
  });
}

function settled({ piece, edge, reversed, json }: OpenRun, seam: string, context: MetadataContext): EdgeRun {
  if (reversed === undefined) {
    const { start, end } = neighboursOf(context.pieces.find(p => p.name === piece)!, edge);
    context.report.add('note', 'run-direction-not-given', context.offset(json.at), {
      message: `The seam ${quoted(seam)} does not say where its run along ${quoted(edge)} begins; its start was taken.`,
      remedy:
        start === end
          ? 'Write from start or from end.'
          : `Write from ${quoted(start)} or from ${quoted(end)}.`,
      piece,
      edge,
    });
  }
  return { piece, edge, reversed: reversed ?? false };
}

function easeOf(json: Json | undefined, seam: string, context: MetadataContext): SeamEase {
  if (!json) return { mm: 0 };
  if (json.kind !== 'string' && json.kind !== 'number')
    throw notUnderstood(
      json,
      `The ease of the seam ${quoted(seam)} was not understood.`,
      'Write it as "12 mm" or "-3 %".',
      context,
    );
  try {
    if (json.kind === 'string' && json.value.includes('%'))
      return { percent: Number((parsePercent(json.value) * 100).toPrecision(12)) };
    return { mm: parseLength(json.value, context.unit) };
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    throw context.report.error(error.code, context.offset(json.at), {
      message: `The ease of the seam ${quoted(seam)} was not understood.`,
      remedy: 'Write it as "12 mm" or "-3 %".',
    });
  }
}
