import { neighboursOf, pieceNamed } from '../pattern/outline.js';
import type { EdgeRun, Fabric, Pattern, Piece, Seam, SeamEase } from '../pattern/types.js';
import { toSvgNumber } from './path-text.js';

/** The JSON block of a drawing: seams with each run named from its neighbour of now, fabrics, and what was made for what. */
export function metadataOf(pattern: Pattern): ReadonlyMap<string, unknown> {
  const made = pattern.pieces.filter(piece => piece.madeFor !== undefined);
  const edges = (piece: Piece): readonly string[] => piece.madeFor!.map(ref => `${ref.piece}.${ref.edge}`);
  return new Map<string, unknown>([
    ['seams', new Map(pattern.seams.map(seam => [seam.name, seamJson(seam, pattern)]))],
    ['fabrics', new Map(pattern.fabrics.map(fabric => [fabric.name, fabricJson(fabric)]))],
    ...(made.length === 0
      ? []
      : [['madeFor', new Map(made.map(piece => [piece.name, edges(piece)]))] as const]),
  ]);
}

function seamJson({ a, b, ease }: Seam, pattern: Pattern): ReadonlyMap<string, unknown> {
  const side = (runs: readonly EdgeRun[]): unknown => {
    const texts = runs.map(run => runText(run, pattern));
    return texts.length === 1 ? texts[0] : texts;
  };
  return new Map<string, unknown>([
    ['a', side(a)],
    ['b', side(b)],
    ['ease', easeText(ease)],
  ]);
}

/** `piece.edge from X`: X is the neighbour where the run begins, or start/end where one neighbour touches both ends. */
function runText({ piece, edge, reversed }: EdgeRun, pattern: Pattern): string {
  const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
  const neighbour = reversed ? end : start;
  const from = start === end ? (reversed ? 'end' : 'start') : neighbour;
  return `${piece}.${edge} from ${from}`;
}

function easeText(ease: SeamEase): string | undefined {
  if ('percent' in ease) return `${toSvgNumber(ease.percent)} %`;
  return ease.mm === 0 ? undefined : `${toSvgNumber(ease.mm)} mm`;
}

function fabricJson({ width, stretch, recovery, nap, repeat, role }: Fabric): ReadonlyMap<string, unknown> {
  const length = (mm: number | undefined) => (mm === undefined ? undefined : `${toSvgNumber(mm)} mm`);
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
