import { edgeNames } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';

/** What a run's text says: `piece.edge`, `piece.edge from X`; `known` where the piece has that edge. */
export interface RunText {
  readonly piece: string;
  readonly edge: string;
  readonly from?: string;
  /** The two places, as written, between which the edge is sewn. */
  readonly part?: readonly [string, string];
  readonly known: boolean;
}

const fromWord = ' from ';

/**
 * Takes a run's text apart. Names may hold dots, commas and the words "from" and "to"; of all ways to read it the one
 * that names an edge that exists is taken, else the plain one. `undefined` where there is no dot at all.
 */
export function findRun(text: string, pieces: readonly Piece[]): RunText | undefined {
  let plain: RunText | undefined;
  for (const [whole, part] of [[text.trim(), undefined] as const, ...parted(text.trim())])
    for (const [left, from] of splits(whole)) {
      for (let dot = left.indexOf('.'); dot >= 0; dot = left.indexOf('.', dot + 1)) {
        const [piece, edge] = [left.slice(0, dot).trim(), left.slice(dot + 1).trim()];
        const named = pieces.find(p => p.name === piece);
        const known = named !== undefined && edgeNames(named).includes(edge);
        const run: RunText = {
          piece,
          edge,
          known,
          ...(from === undefined ? {} : { from }),
          ...(part ? { part } : {}),
        };
        if (known && (part || isWhole(run, named))) return run;
        // A piece that exists with an edge that does not is a better guess at what was meant.
        if (!plain || (part && !plain.part) || (named && !pieces.some(p => p.name === plain!.piece)))
          plain = run;
      }
    }
  return plain;
}

/** Read without a part, the place a run begins from must not end in what looks like one, unless it is called so. */
const isWhole = ({ from }: RunText, piece: Piece): boolean =>
  from === undefined || parted(from).length === 0 || piece.outline.parts.some(part => part.name === from);

/** `text, 60 mm to 220 mm` as the text and its part. */
function parted(text: string): readonly (readonly [string, readonly [string, string]])[] {
  const match = /^(.*),\s*([^,]*\d[^,]*|start|[½⅓⅔¼¾⅛⅜⅝⅞])\s+to\s+([^,]*\d[^,]*|end|[½⅓⅔¼¾⅛⅜⅝⅞])$/su.exec(
    text,
  );
  return match ? [[match[1]!.trim(), [match[2]!.trim(), match[3]!.trim()]]] : [];
}

/** Whole text without "from" last: "a from b" means b as the neighbour unless no edge is called so. */
function splits(text: string): readonly (readonly [string, string | undefined])[] {
  const found: (readonly [string, string | undefined])[] = [];
  for (let at = text.indexOf(fromWord); at >= 0; at = text.indexOf(fromWord, at + 1))
    found.push([text.slice(0, at).trim(), text.slice(at + fromWord.length).trim()]);
  return [...found, [text, undefined]];
}
