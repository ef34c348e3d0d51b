import {
  angleBetween,
  type CuttingLine,
  cuttingLine,
  dartsOf,
  distance,
  edgeParts,
  edgePath,
  foldEdgeOf,
  isLine,
  joined,
  nearestOnPath,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathEnd,
  pathStart,
  pointAlong,
  tangentAt,
  tolerances,
} from '@paperhinge/geometry';
import { cutWords } from '../drawing/cutting-words.js';
import { flattened } from '../drawing/flatten.js';
import { plainLine } from '../drawing/lettering.js';

/**
 * The layers of the garment trade's interchange, by what lies on them. Source: ASTM D6673 [memory, agreed with a
 * secondary description: check-values §12].
 */
export const dxfLayers = {
  boundary: 1,
  turn: 2,
  curve: 3,
  notch: 4,
  mirror: 6,
  grain: 7,
  internal: 8,
  drill: 13,
  sew: 14,
  annotation: 15,
} as const;

/** mm: chords of curves in a cutter's file stay this near, well under what a blade keeps to. */
const chordError = 0.03;

/**
 * A pattern as DXF for cutters and other pattern programs: a block a piece, its cutting line, stitching lines, notches,
 * grain and internal lines each on its own layer, in millimetres with y up.
 * @throws PatternError whatever a piece's cutting line refuses
 */
export function patternDxf(pattern: Pattern): string {
  const names = blockNames(pattern.pieces);
  const blocks = pattern.pieces.flatMap((piece, i) => block(piece, pattern, names[i]!));
  const inserts = names.flatMap(name => [
    ...group(0, 'INSERT'),
    ...group(8, 1),
    ...group(2, name),
    ...at({ x: 0, y: 0 }),
  ]);
  return [
    ...section('HEADER', [
      ...group(9, '$ACADVER'),
      ...group(1, 'AC1009'),
      ...group(9, '$INSUNITS'),
      ...group(70, 4),
    ]),
    ...section('BLOCKS', blocks),
    ...section('ENTITIES', [
      ...inserts,
      ...text(`Style Name: ${pattern.name}`, 0),
      ...text('Units: METRIC', 1),
    ]),
    ...group(0, 'EOF'),
    '',
  ].join('\n');
}

type Lines = readonly string[];

const group = (code: number, value: string | number): Lines => [String(code), String(value)];
const section = (name: string, content: Lines): Lines => [
  ...group(0, 'SECTION'),
  ...group(2, name),
  ...content,
  ...group(0, 'ENDSEC'),
];
const figure = (value: number): string => {
  const rounded = value.toFixed(4);
  return Number(rounded) === 0 ? '0.0' : rounded;
};
const at = ({ x, y }: Point): Lines => [...group(10, figure(x)), ...group(20, figure(-y))];

function block(piece: Piece, pattern: Pattern, name: string): Lines {
  const cut = cuttingLine(piece, pattern);
  const fold = foldEdgeOf(piece);
  const { boundary, mirror, sew, internal, grain, drill } = dxfLayers;
  const said = [
    `Piece Name: ${piece.title || piece.name}`,
    `Quantity: ${piece.cutting.count}`,
    `Material: ${piece.cutting.fabric}`,
    `Annotation: ${cutWords(piece)}`,
  ];
  return [
    ...[...group(0, 'BLOCK'), ...group(8, 1), ...group(2, name), ...group(70, 0), ...at({ x: 0, y: 0 })],
    ...polyline(cut.path, boundary, true),
    ...cornerPoints(cut.path),
    ...edgeParts(piece)
      .filter(e => e.allowance > 0)
      .flatMap(e => polyline(e.path, sew)),
    ...dartsOf(piece).flatMap(d => polyline(joined(...d.legs), internal)),
    ...(fold ? lineEntity(pathStart(fold.path), pathEnd(fold.path), mirror) : []),
    ...piece.notches.flatMap(n =>
      point(onCut(pointAlong(edgePath(piece, n.edge), n.at), cut), dxfLayers.notch),
    ),
    ...piece.lines.flatMap(l =>
      l.kind === 'grain' ? lineEntity(pathStart(l.path), pathEnd(l.path), grain) : polyline(l.path, internal),
    ),
    ...piece.marks.flatMap(m => point(m.at, drill)),
    ...said.flatMap((words, i) => text(words, i)),
    ...[...group(0, 'ENDBLK'), ...group(8, 1)],
  ];
}

function polyline(path: Path, layer: number, closed = false): Lines {
  const points = flattened(path, chordError);
  const own =
    closed && distance(points[0]!, points.at(-1)!) < tolerances.coincidenceTolerance
      ? points.slice(0, -1)
      : points;
  return [
    ...[...group(0, 'POLYLINE'), ...group(8, layer), ...group(66, 1), ...group(70, closed ? 1 : 0)],
    ...own.flatMap(p => [...group(0, 'VERTEX'), ...group(8, layer), ...at(p)]),
    ...[...group(0, 'SEQEND'), ...group(8, layer)],
  ];
}

const lineEntity = (from: Point, to: Point, layer: number): Lines => [
  ...[...group(0, 'LINE'), ...group(8, layer), ...at(from)],
  ...[...group(11, figure(to.x)), ...group(21, figure(-to.y))],
];
const point = (p: Point, layer: number): Lines => [...group(0, 'POINT'), ...group(8, layer), ...at(p)];

/** Corners of the boundary as turn points, joints where it runs on smoothly as curve points. */
function cornerPoints({ segments }: Path): Lines {
  return segments.flatMap((segment, i) => {
    const last = segments[(i + segments.length - 1) % segments.length]!;
    const turn = Math.abs(angleBetween(tangentAt(last, 1), tangentAt(segment, 0)));
    const curved = !isLine(segment) || !isLine(last);
    if (turn > tolerances.joinedCorner) return point(segment[0], dxfLayers.turn);
    return curved ? point(segment[0], dxfLayers.curve) : [];
  });
}

/** The place on the cutting line nearest to a stitching point: where a cutter nicks the edge. */
function onCut(sewn: Point, cut: CuttingLine): Point {
  return nearestOnPath(cut.path, sewn).point;
}

const text = (words: string, line: number): Lines => [
  ...[...group(0, 'TEXT'), ...group(8, line === 0 ? 1 : dxfLayers.annotation), ...at({ x: 0, y: 12 * line })],
  ...[...group(40, 8), ...group(1, ascii(plainLine(words)))],
];

/** Characters beyond ASCII as \U+XXXX, as the format of that time writes them. */
const ascii = (words: string): string =>
  [...words]
    .flatMap(c => Array.from({ length: c.length }, (_, i) => c.charCodeAt(i)))
    .map(code =>
      code < 127 ? String.fromCharCode(code) : `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`,
    )
    .join('');

/** Block names of letters, digits, - and _, each once. */
function blockNames(pieces: readonly Piece[]): readonly string[] {
  const taken = new Set<string>();
  return pieces.map((piece, i) => {
    const plain =
      piece.name
        .replace(/[^A-Za-z0-9_-]+/g, '_')
        .slice(0, 25)
        .toUpperCase() || 'PIECE';
    const name = taken.has(plain) ? `${plain}_${i + 1}` : plain;
    taken.add(name);
    return name;
  });
}
