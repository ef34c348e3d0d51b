import {
  type Cutting,
  type CuttingLine,
  cuttingLine,
  edgeNames,
  edgePath,
  type Mark,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  polyline,
} from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgeParts, foldEdgeOf, partsOfEdge } from '@paperhinge/geometry/pattern';
import { cross, distance, dot, subtract } from '@paperhinge/geometry/plane';
import { drawPiece } from '../drawing/draw-piece.js';
import { frameOf } from '../drawing/frame.js';
import { garmentFacts } from '../drawing/garment-facts.js';
import { capShare, type Lettering, type TypeMeasure } from '../drawing/ink.js';
import { notchPlaces } from '../drawing/notches.js';
import { english } from '../words/english.js';
import { readerOf } from '../words/reader.js';
import { decimal, type Group, lineEntity, pointEntity, polylineEntity, textEntity } from './entities.js';
import { type DxfLayer, layerOf } from './layers.js';
import { sewLinesOf } from './sew-lines.js';
import { dxfText, sizeText } from './text.js';
import { chordError, drawnChordError, type Vertex, verticesOf } from './vertices.js';

/** What stands in a piece's block, and the box round its cutting line in the piece's own mm. */
export interface PieceBlock {
  readonly groups: readonly Group[];
  readonly box: Box;
}

/** A piece as the entities of its block, each on its layer. @throws PatternError what the cutting line refuses */
export function pieceBlock(piece: Piece, pattern: Pattern): PieceBlock {
  const cut = cuttingLine(piece, pattern);
  const boundary = flat(layerOf.boundary, cut.path, true);
  const sewn = sewLinesOf(piece).map(s => flat(layerOf.sewLines, s.path, s.closed));
  const drawn = piece.lines.filter(l => l.kind !== 'grain').map(flatLine);
  const pressed = foldsWithin(piece, cut).map(path => flat(layerOf.internalLines, path, false));
  const facts = factStrokes(piece, pattern).map(path => flat(layerOf.internalLines, path, false));
  const lines = [boundary, ...sewn, ...drawn, ...pressed, ...facts];
  const outline = boundary.vertices.map(v => v.at);
  const box = boxOf(outline);
  return {
    box,
    groups: [
      ...lines.flatMap(strokeGroups),
      ...pointGroups(lines),
      ...piece.notches
        .flatMap(notch => notchPlaces(piece, notch, outline))
        .flatMap(({ cut: at }) => pointEntity(layerOf.notches, at)),
      ...mirrorLines(piece, cut).flatMap(([from, to]) => lineEntity(layerOf.mirrorLine, from, to)),
      ...piece.lines.flatMap(grainGroups),
      ...piece.marks.flatMap(markGroups),
      ...labels(piece, pattern).flatMap(annotation),
      ...pieceText(piece, pattern, { x: box.min.x, y: box.max.y + 8 }),
    ],
  };
}

interface FlatLine {
  readonly layer: DxfLayer;
  readonly vertices: readonly Vertex[];
  readonly closed: boolean;
}

/** A path as the points that the file will tell apart. */
function flat(layer: DxfLayer, path: Path, closed: boolean): FlatLine {
  const vertices: Vertex[] = [];
  const error = layer === layerOf.boundary ? chordError : drawnChordError;
  for (const vertex of verticesOf(path, closed, error)) {
    const last = vertices.at(-1);
    if (!last || spot(last.at) !== spot(vertex.at)) vertices.push(vertex);
    else if (vertex.kind === 'turn') vertices[vertices.length - 1] = vertex;
  }
  if (closed && vertices.length > 1 && spot(vertices[0]!.at) === spot(vertices.at(-1)!.at)) vertices.pop();
  return { layer, vertices: withoutStraightJoints(vertices, closed), closed };
}

/** Where a line only runs straight on (an allowance's parallel into its corner), there is no point to give. */
function withoutStraightJoints(vertices: readonly Vertex[], closed: boolean): readonly Vertex[] {
  const kept: Vertex[] = [];
  for (const [i, vertex] of vertices.entries()) {
    const before = kept.at(-1) ?? (closed ? vertices.at(-1) : undefined);
    const after = vertices[i + 1] ?? (closed ? vertices[0] : undefined);
    if (!before || !after || !isBetween(vertex.at, before.at, after.at)) kept.push(vertex);
  }
  return kept;
}

function isBetween(p: Point, from: Point, to: Point): boolean {
  const u = subtract(p, from),
    v = subtract(to, p);
  const span = distance(from, to);
  return dot(u, v) > 0 && Math.abs(cross(u, v)) <= span * tolerances.coincidenceTolerance;
}

const spot = ({ x, y }: Point): string => `${decimal(x)} ${decimal(y)}`;

const strokeGroups = ({ layer, vertices, closed }: FlatLine): readonly Group[] =>
  polylineEntity(
    layer,
    vertices.map(v => v.at),
    closed,
  );

/**
 * A turn point where a line bends or ends, a curve point for each other point of the boundary; where lines share one,
 * it is given once.
 */
function pointGroups(lines: readonly FlatLine[]): readonly Group[] {
  const given = new Set<string>();
  return lines
    .flatMap(l => l.vertices.filter(v => v.kind === 'turn' || l.layer === layerOf.boundary))
    .flatMap(({ at, kind }) => {
      const layer = kind === 'turn' ? layerOf.turnPoints : layerOf.curvePoints;
      const key = `${layer} ${spot(at)}`;
      if (given.has(key)) return [];
      given.add(key);
      return pointEntity(layer, at);
    });
}

/** The stitching lines of a double-pointed dart are sewn; any other line within a piece is only drawn. */
function flatLine({ kind, path }: PieceLine): FlatLine {
  const closed =
    path.segments.length > 1 && distance(pathStart(path), pathEnd(path)) <= tolerances.coincidenceTolerance;
  return flat(kind === 'dart' ? layerOf.sewLines : layerOf.internalLines, path, closed);
}

/** Folds of darts, and snips into inner corners. A hem's fold is its stitching line, which is on its layer already. */
function foldsWithin(piece: Piece, cut: CuttingLine): readonly Path[] {
  const hems = edgeParts(piece).filter(e => e.kind === 'hem');
  const isHem = (fold: Path) =>
    hems.some(
      ({ path }) =>
        distance(pathStart(path), pathStart(fold)) <= tolerances.coincidenceTolerance &&
        distance(pathEnd(path), pathEnd(fold)) <= tolerances.coincidenceTolerance,
    );
  return [...cut.foldLines.filter(fold => !isHem(fold)), ...cut.snips];
}

/** The fold of each fold edge, from end to end of it on the cutting line. */
function mirrorLines(piece: Piece, cut: CuttingLine): readonly (readonly [Point, Point])[] {
  const folds = edgeNames(piece).filter(name => partsOfEdge(piece, name)[0]!.kind === 'fold');
  return folds.map(name => {
    const own = cut.stretches.filter(s => s.of === name).map(s => s.path);
    const edge = edgePath(piece, name);
    const ends = [...own, edge].flatMap(p => [pathStart(p), pathEnd(p)]);
    return farthestApart(ends, pathStart(edge), pathEnd(edge));
  });
}

/** The first and the last of some points in the direction from one point to another. */
function farthestApart(points: readonly Point[], from: Point, to: Point): readonly [Point, Point] {
  const along = (p: Point) => (p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y);
  const ordered = [...points].sort((p, q) => along(p) - along(q));
  return [ordered[0]!, ordered.at(-1)!];
}

const grainGroups = ({ kind, path }: PieceLine): readonly Group[] =>
  kind === 'grain' ? lineEntity(layerOf.grain, pathStart(path), pathEnd(path)) : [];

/** mm: half the width of the cross at a place that is marked but not drilled. */
const crossArm = 3;

/** Only what the maker calls a drill hole is one: a cutter goes through the cloth there. */
function markGroups({ kind, at: { x, y } }: Mark): readonly Group[] {
  if (kind === 'drill') return pointEntity(layerOf.drillHoles, { x, y });
  return [
    polyline({ x: x - crossArm, y }, { x: x + crossArm, y }),
    polyline({ x, y: y - crossArm }, { x, y: y + crossArm }),
  ].flatMap(path => lineEntity(layerOf.internalLines, pathStart(path), pathEnd(path)));
}

/** The plain stroke font of CAD programs is about as wide as its capitals are high. */
const strokeFont: TypeMeasure = { width: (text, size) => [...text].length * size * capShare };

/** The words on the piece where the drawing puts them. */
const labels = (piece: Piece, pattern: Pattern): readonly Lettering[] =>
  drawPiece(piece, pattern, strokeFont).drawing.inks.filter(ink => ink.kind === 'text');

const annotation = ({ text, at, size, direction }: Lettering): readonly Group[] =>
  textEntity(layerOf.annotation, dxfText(text), at, size * capShare, direction);

/** Pleats, fastenings and topstitching as lines within the piece. */
const factStrokes = (piece: Piece, pattern: Pattern): readonly Path[] =>
  garmentFacts({
    piece,
    pattern,
    frame: frameOf(piece),
    measure: strokeFont,
    reader: readerOf(pattern.unit),
  })
    .flatMap(fact => fact.inks)
    .flatMap(ink => (ink.kind === 'stroke' ? [ink.path] : []));

/** What the standard says of a piece, in the words it says it in [memory]. */
function pieceText(piece: Piece, pattern: Pattern, at: Point): readonly Group[] {
  const { piece: words } = english;
  const fold = foldEdgeOf(piece) !== undefined;
  const said = [
    words.cut(piece.cutting, fold),
    ...(piece.alsoCut ?? []).map(c => words.cutOf(c, fold)),
    [piece.cutting, ...(piece.alsoCut ?? [])].some(c => c.rightSideUp) ? words.rightSideUp : undefined,
    piece.cutting.note,
  ];
  return [
    `Piece Name: ${piece.title || piece.name}`,
    `Size: ${sizeText(pattern)}`,
    `Quantity: ${quantity(piece.cutting)}`,
    `Material: ${piece.cutting.fabric}`,
    `Annotation: ${said.filter(Boolean).join('; ')}`,
  ].flatMap((line, i) => textEntity(layerOf.boundary, dxfText(line), { x: at.x, y: at.y + 5 * i }, 3));
}

/** A pair as left and right: as drawn, then turned over. */
function quantity({ count, mirrored }: Cutting): string {
  const right = mirrored ? Math.floor(count / 2) : 0;
  return right > 0 ? `${count - right},${right}` : String(count);
}

const boxOf = (points: readonly Point[]): Box => ({
  min: { x: Math.min(...points.map(p => p.x)), y: Math.min(...points.map(p => p.y)) },
  max: { x: Math.max(...points.map(p => p.x)), y: Math.max(...points.map(p => p.y)) },
});
