import { pathLength } from '../path/length.js';
import { edgePath, neighboursOf, pieceNamed } from '../pattern/outline.js';
import type { EdgeRun, Fabric, Fastening, Pattern, Piece, Seam, SeamEase } from '../pattern/types.js';
import { toSvgNumber } from './path-text.js';

/**
 * The JSON block of a drawing: seams with each run named from its neighbour of now, fabrics, fastenings, and what was
 * made for what.
 */
export function metadataOf(pattern: Pattern): ReadonlyMap<string, unknown> {
  const made = pattern.pieces.filter(piece => piece.madeFor !== undefined);
  const edges = (piece: Piece): readonly string[] => piece.madeFor!.map(ref => `${ref.piece}.${ref.edge}`);
  return new Map<string, unknown>([
    ['seams', new Map(pattern.seams.map(seam => [seam.name, seamJson(seam, pattern)]))],
    ['fabrics', new Map(pattern.fabrics.map(fabric => [fabric.name, fabricJson(fabric)]))],
    ...(pattern.fastenings && pattern.fastenings.length > 0
      ? [['fastenings', new Map(pattern.fastenings.map(f => [f.name, fasteningJson(f, pattern)]))] as const]
      : []),
    ...(made.length === 0
      ? []
      : [['madeFor', new Map(made.map(piece => [piece.name, edges(piece)]))] as const]),
  ]);
}

function seamJson({ a, b, ease, takenUp, tolerance }: Seam, pattern: Pattern): ReadonlyMap<string, unknown> {
  const side = (runs: readonly EdgeRun[]): unknown => {
    const texts = runs.map(run => runText(run, pattern));
    return texts.length === 1 ? texts[0] : texts;
  };
  return new Map<string, unknown>([
    ['a', side(a)],
    ['b', side(b)],
    ['ease', easeText(ease)],
    ['takenUp', takenUp],
    ['tolerance', length(tolerance)],
  ]);
}

function fasteningJson(
  { kind, along, sort, count, ...lengths }: Fastening,
  pattern: Pattern,
): ReadonlyMap<string, unknown> {
  return new Map<string, unknown>([
    ['kind', kind],
    ['sort', sort],
    ['along', runText(along, pattern)],
    ['count', count],
    ...(['length', 'spacing', 'size', 'relaxed', 'overlap', 'underlap'] as const).map(
      key => [key, length(lengths[key])] as const,
    ),
  ]);
}

const length = (mm: number | undefined): string | undefined =>
  mm === undefined ? undefined : `${toSvgNumber(mm)} mm`;

/** `piece.edge from X`: X is the neighbour where the run begins, or start/end where one neighbour touches both ends. */
function runText({ piece, edge, reversed, part }: EdgeRun, pattern: Pattern): string {
  const drawn = pieceNamed(pattern, piece);
  const { start, end } = neighboursOf(drawn, edge);
  const neighbour = reversed ? end : start;
  const from = start === end ? (reversed ? 'end' : 'start') : neighbour;
  const whole = `${piece}.${edge} from ${from}`;
  if (!part) return whole;
  const edgeMm = pathLength(edgePath(drawn, edge));
  const [first, last] = reversed ? [edgeMm - part.to, edgeMm - part.from] : [part.from, part.to];
  return `${whole}, ${length(Math.max(0, first))} to ${length(last)}`;
}

function easeText(ease: SeamEase): string | undefined {
  if ('percent' in ease) return `${toSvgNumber(ease.percent)} %`;
  return ease.mm === 0 ? undefined : `${toSvgNumber(ease.mm)} mm`;
}

function fabricJson({ width, stretch, recovery, nap, repeat, role }: Fabric): ReadonlyMap<string, unknown> {
  const percent = (n: number | undefined) => (n === undefined ? undefined : `${toSvgNumber(n)} %`);
  const both = (across: number, along: number) =>
    new Map([
      ['across', percent(across)],
      ['along', percent(along)],
    ]);
  return new Map<string, unknown>([
    ['role', role],
    ['width', length(width)],
    [
      'stretch',
      stretch?.along === undefined ? percent(stretch?.across) : both(stretch.across, stretch.along),
    ],
    ['recovery', percent(recovery)],
    ['nap', nap],
    ['repeat', length(repeat)],
  ]);
}
