import {
  at,
  type Cutting,
  type Dart,
  type Edge,
  type EdgeKind,
  type EdgeRun,
  line,
  type Notch,
  type OutlinePart,
  type Pattern,
  type Piece,
  type PieceLine,
  pathOf,
  polyline,
  type Seam,
} from '@paperhinge/geometry';

export type Corner = readonly [number, number];

/** A straight-sided edge through the corners given, clockwise; allowance in mm. */
export const side = (
  name: string,
  corners: readonly Corner[],
  { kind = 'seam', allowance = kind === 'seam' || kind === 'hem' ? 10 : 0, opening }: EdgeOptions = {},
): Edge => ({
  type: 'edge',
  name,
  path: polyline(...corners.map(([x, y]) => at(x, y))),
  kind,
  allowance,
  corners: {},
  ...(opening === undefined ? {} : { opening }),
});
export interface EdgeOptions {
  readonly kind?: EdgeKind;
  readonly allowance?: number;
  readonly opening?: number;
}

export const dart = (name: string, a: Corner, apex: Corner, b: Corner): Dart => ({
  type: 'dart',
  name,
  legs: [pathOf(line(at(...a), at(...apex))), pathOf(line(at(...apex), at(...b)))],
  apex: at(...apex),
});

export interface PieceOptions {
  readonly notches?: readonly Notch[];
  readonly lines?: readonly PieceLine[];
  readonly cutting?: Partial<Cutting>;
  readonly madeFor?: Piece['madeFor'];
  readonly marks?: Piece['marks'];
}

export const pieceOf = (name: string, parts: readonly OutlinePart[], options: PieceOptions = {}): Piece => ({
  name,
  title: name,
  outline: { parts },
  notches: options.notches ?? [],
  lines: options.lines ?? [],
  marks: options.marks ?? [],
  cutting: { count: 1, mirrored: false, fabric: 'main', ...options.cutting },
  ...(options.madeFor ? { madeFor: options.madeFor } : {}),
});

/** A rectangle: `top`, `right`, `bottom`, `left` clockwise from its top left corner. */
export const rectangle = (name: string, width: number, height: number, options: PieceOptions = {}): Piece =>
  pieceOf(
    name,
    [
      side('top', [
        [0, 0],
        [width, 0],
      ]),
      side('right', [
        [width, 0],
        [width, height],
      ]),
      side('bottom', [
        [width, height],
        [0, height],
      ]),
      side('left', [
        [0, height],
        [0, 0],
      ]),
    ],
    options,
  );

export const level = (name: string, ...corners: readonly Corner[]): PieceLine => ({
  kind: 'level',
  name,
  path: polyline(...corners.map(([x, y]) => at(x, y))),
});

/** `front.side`, or `-front.side` for a run against the clock. */
export function run(text: string): EdgeRun {
  const [piece, edge] = text.replace(/^-/, '').split('.');
  return { piece: piece!, edge: edge!, reversed: text.startsWith('-') };
}

export const seam = (
  name: string,
  a: readonly string[],
  b: readonly string[],
  ease: Seam['ease'] = { mm: 0 },
): Seam => ({
  name,
  a: a.map(run),
  b: b.map(run),
  ease,
});

export const patternOf = (
  pieces: readonly Piece[],
  seams: readonly Seam[] = [],
  more: Partial<Pattern> = {},
): Pattern => ({
  name: 'test',
  unit: 'mm',
  pieces,
  seams,
  fabrics: [{ name: 'main', role: 'main' }],
  ...more,
});
