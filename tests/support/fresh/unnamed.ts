import {
  at,
  type Edge,
  edgeNames,
  type Notch,
  type NotchStyle,
  type OutlinePart,
  type Path,
  type Piece,
} from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { mirror } from '@paperhinge/geometry/plane';
import { type Draft, draft, type KnownSeam, lengthOf } from '../twenty-drafts.js';

// Garments as they come off a sheet of paper: drawn with words for whoever writes them, and then without any, their pieces
// numbered as they lie on the sheet and their edges lettered, notched as pattern houses notch (common practice, no source).

/** A garment without words, what each edge was called, and what each seam's two sides measure beside one another. */
export interface Unnamed extends Draft {
  /** `3.b` as it was written: `sleeve.hem`. */
  readonly words: Readonly<Record<string, string>>;
  readonly walks: readonly Walk[];
}

/** a = times × b + mm, by the lengths of a seam's sides as drawn. */
export interface Walk {
  readonly seam: KnownSeam;
  readonly times: number;
  readonly mm: number;
}

/** A garment in words. Seams are written `sleeve.cap = front.armhole + back.armhole, 22 mm` or `skirt.top = bodice.waist, 1.8 x`. */
export interface Worded {
  readonly title: string;
  /** In the order in which they lie on the sheet. */
  readonly pieces: readonly Piece[];
  readonly seams: readonly string[];
  readonly notches: readonly NotchLine[];
  /** Pieces that lie with their right on the left. */
  readonly over?: readonly string[];
}

/** A style and the places that meet, each `piece.edge from its neighbour` and mm from there. */
export type NotchLine = readonly [style: NotchStyle, ...places: readonly (readonly [string, number])[]];

/** The same garment as it lies on a sheet. */
export function unnamed({ title, pieces, seams, notches, over = [] }: Worded): Unnamed {
  const marked = pieces.map(piece => notched(piece, notches));
  const laid = marked.map(piece => (over.includes(piece.name) ? turnedOver(piece) : piece));
  const called = new Map(
    laid.flatMap((piece, i) =>
      edgeNames(piece).map((edge, k) => [`${piece.name}.${edge}`, `${i + 1}.${letter(k)}`] as const),
    ),
  );
  const walks = seams.map(text => walkOf(text, called));
  const plain = laid.map((piece, i) => withoutWords(piece, `${i + 1}`));
  return {
    ...draft(
      title,
      plain,
      walks.map(({ seam }) => seam),
    ),
    words: Object.fromEntries([...called].map(([word, plainly]) => [plainly, word])),
    walks,
  };
}

const letter = (k: number): string => String.fromCharCode(97 + k);

function walkOf(text: string, called: ReadonlyMap<string, string>): Walk {
  const [sides, ...than] = text.split(', ');
  const [a, b] = sides!.split(' = ').map(side =>
    side.split(' + ').map(word => {
      const plainly = called.get(word);
      if (plainly === undefined) throw new Error(`no edge ${word}`);
      return plainly;
    }),
  );
  const figure = (unit: string): number | undefined => {
    const told = than.find(one => one.endsWith(unit));
    return told === undefined ? undefined : Number(told.slice(0, -unit.length));
  };
  return { seam: [a!, b!], times: figure(' x') ?? 1, mm: figure(' mm') ?? 0 };
}

function notched(piece: Piece, lines: readonly NotchLine[]): Piece {
  const notches = lines.flatMap(([style, ...places]) =>
    places.flatMap(([place, mm]): readonly Notch[] => {
      const [, name, edge, from] = /^(.+)\.(.+) from (.+)$/.exec(place)!;
      return name === piece.name ? [{ edge: edge!, at: along(piece, edge!, from!, mm), style }] : [];
    }),
  );
  return { ...piece, notches: [...piece.notches, ...notches] };
}

/** mm from where an edge begins, told from where it meets a neighbour. */
function along(piece: Piece, edge: string, from: string, mm: number): number {
  if (from === 'its start' || from === 'its end')
    return from === 'its start' ? mm : lengthOf(piece, edge) - mm;
  const names = edgeNames(piece);
  const i = names.indexOf(edge);
  const [before, after] = [names.at(i - 1)!, names[(i + 1) % names.length]!];
  if (i < 0 || (from !== before && from !== after))
    throw new Error(`${piece.name}.${edge} does not meet ${from}`);
  return from === before ? mm : lengthOf(piece, edge) - mm;
}

function withoutWords(piece: Piece, name: string): Piece {
  const names = edgeNames(piece);
  const plain = (word: string): string => letter(names.indexOf(word));
  let darts = 0;
  const parts = piece.outline.parts.map((part): OutlinePart => {
    if (part.type === 'edge') return { ...part, name: plain(part.name) };
    darts += 1;
    return { ...part, name: `dart ${darts}` };
  });
  const notches = piece.notches.map(notch => ({ ...notch, edge: plain(notch.edge) }));
  return { ...piece, name, title: name, outline: { parts }, notches };
}

function turnedOver(piece: Piece): Piece {
  const map = mirror(at(0, 0), at(0, 1));
  const path = (line: Path): Path => reversedPath(transformedPath(line, map));
  const parts = piece.outline.parts.map((part): OutlinePart => {
    if (part.type === 'edge') return { ...part, path: path(part.path) } satisfies Edge;
    if (part.type !== 'dart') return part;
    const [a, b] = part.legs;
    return { ...part, legs: [path(b), path(a)], apex: at(-part.apex.x, part.apex.y) };
  });
  const notches = piece.notches.map(notch => ({ ...notch, at: lengthOf(piece, notch.edge) - notch.at }));
  return { ...piece, outline: { parts: parts.reverse() }, notches };
}
