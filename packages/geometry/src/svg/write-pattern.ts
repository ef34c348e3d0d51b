import { type Box, boxAround } from '../curve/bounds.js';
import { cuttingLine } from '../cutting-line/cutting-line.js';
import { boundsOfPath } from '../path/bounds.js';
import type { Path } from '../path/path.js';
import {
  dartsOf,
  edgeNamed,
  edgeNames,
  foldEdgeOf,
  outlinePath,
  partsOfEdge,
  pleatsOf,
} from '../pattern/outline.js';
import { requireWhole } from '../pattern/require-whole.js';
import type { Dart, Pattern, Piece, PieceLine, Pleat } from '../pattern/types.js';
import { alsoCutText } from './also-cut-text.js';
import { leftToTrueText } from './left-to-true.js';
import { notchStrokes } from './notch-drawing.js';
import { toPathData, toSvgNumber } from './path-text.js';
import { titlePlace } from './title-place.js';
import { version } from './vocabulary.js';
import { metadataOf } from './write-metadata.js';
import { attribute, xmlJson, xmlText } from './xml-text.js';

/** mm of empty sheet right of and below the pieces. */
const margin = 20;
/** mm. */
const pointRadius = 3;

/**
 * A pattern as plain SVG in our convention, 1 unit = 1 mm, that any drawing program opens and that reads back as the
 * same pattern within 1e-6 mm. Each piece's derived cutting line is drawn in its group and marked `data-derived`, as
 * is its title; the reader passes over both.
 *
 * @throws PatternError those of `requireWhole` and `cuttingLine`; `name-not-writable` for names with control characters
 */
export const writePattern = (pattern: Pattern): string => written([pattern], pattern);

/**
 * Several sizes of one pattern in one drawing, each piece in a group of its size; seams, cloths and fastenings are those
 * of the first.
 * @throws PatternError as `writePattern`
 */
export function writeSizes(patterns: readonly Pattern[]): string {
  const [one] = patterns;
  requireWhole(one!);
  const { size: _, ...first } = one!;
  return written(patterns, first);
}

function written(patterns: readonly Pattern[], root: Pattern): string {
  for (const pattern of patterns) requireWhole(pattern);
  const drawn = patterns.flatMap(pattern =>
    pattern.pieces.map(piece => ({
      pattern,
      piece,
      cutting: cuttingLine(piece, pattern).path,
      ...(patterns.length > 1 && pattern.size !== undefined ? { size: pattern.size } : {}),
    })),
  );
  const box = drawn
    .map(({ piece, cutting }) => boxAround(boundsOfPath(cutting), boundsOfPath(outlinePath(piece.outline))))
    .reduce((a: Box | undefined, b) => (a ? boxAround(a, b) : b), undefined);
  // The viewBox begins at 0, so that coordinates in the file are the pattern's own, left of and above 0 too.
  const width = Math.max(1, Math.ceil((box?.max.x ?? 0) + margin)),
    height = Math.max(1, Math.ceil((box?.max.y ?? 0) + margin));
  const isOutside = box !== undefined && (box.min.x < 0 || box.min.y < 0);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"` +
      `${rootAttributes(root)}${isOutside ? ' overflow="visible"' : ''}>`,
    `  <title>${xmlText(root.name)}</title>`,
    `  <metadata>${xmlJson(metadataOf(root), '  ')}</metadata>`,
    ...drawn.flatMap(one => pieceLines(one)),
    '</svg>',
    '',
  ].join('\n');
}

const rootAttributes = ({ name, unit, size, tolerance }: Pattern): string =>
  attribute('data-paperhinge', version) +
  attribute('data-pattern', name) +
  attribute('data-unit', unit) +
  attribute('data-size', size) +
  attribute('data-tolerance', millimetres(tolerance));

const strokes = {
  cutting: ' stroke-width="0.7"',
  stitching: ' stroke-width="0.35" stroke-dasharray="3 1.5"',
  fold: ' stroke-width="0.5" stroke-dasharray="12 3 2 3"',
  inside: ' stroke-width="0.35"',
} as const;

/** A piece as it is drawn, with the pattern that it is of. */
interface DrawnPiece {
  readonly pattern: Pattern;
  readonly piece: Piece;
  readonly cutting: Path;
  readonly size?: string;
}

function pieceLines({ pattern, piece, cutting, size }: DrawnPiece): readonly string[] {
  return [
    `  <g${pieceAttributes(piece)}${attribute('data-size', size)} fill="none" stroke="#222222">`,
    `    <path data-derived="cutting-line"${strokes.cutting} d="${toPathData(cutting)}"/>`,
    ...edgeNames(piece).map(name => edgeLine(pattern, piece, name)),
    ...dartsOf(piece).map(dartLine),
    ...pleatsOf(piece).map(pleatLine),
    ...piece.lines.map(lineLine),
    ...piece.marks.map(
      mark =>
        `    <circle${attribute('data-mark', mark.kind)}${attribute('data-name', mark.name)}${role(mark)}${strokes.inside} cx="${toSvgNumber(mark.at.x)}" cy="${toSvgNumber(mark.at.y)}" r="${pointRadius}"/>`,
    ),
    ...piece.notches.map(
      notch =>
        `    <path${attribute('data-notch', notch.style)}${attribute('data-on', notch.edge)}${attribute('data-name', notch.name)}${strokes.inside} d="${notchStrokes(piece, notch).map(toPathData).join(' ')}"/>`,
    ),
    titleLine(piece),
    '  </g>',
  ];
}

function pieceAttributes(piece: Piece): string {
  const { cutting, alsoCut, greatestStretch } = piece;
  const hasFold = foldEdgeOf(piece) !== undefined;
  return (
    attribute('data-piece', piece.name) +
    attribute('data-title', piece.title) +
    role(piece) +
    attribute('data-cut', cutting.count) +
    attribute('data-mirrored', cutting.mirrored ? 'yes' : 'no') +
    attribute('data-layers', cutting.layers) +
    attribute('data-right-side-up', cutting.rightSideUp ? 'yes' : undefined) +
    attribute('data-fabric', cutting.fabric) +
    attribute('data-note', cutting.note) +
    attribute('data-also-cut', alsoCut?.length ? alsoCutText(alsoCut, hasFold) : undefined) +
    attribute('data-greatest-stretch', greatestStretch)
  );
}

function edgeLine(pattern: Pattern, piece: Piece, name: string): string {
  const edge = edgeNamed(piece, name);
  const { kind, allowance, corners } = edge;
  // One path for one edge: a stroke for each part, where darts interrupt it.
  const data = partsOfEdge(piece, name)
    .map(part => toPathData(part.path))
    .join(' ');
  const hasAllowance = kind === 'seam' || kind === 'hem';
  return (
    `    <path${attribute('data-edge', name)}${attribute('data-kind', kind === 'seam' ? undefined : kind)}${role(edge)}` +
    `${attribute('data-allowance', hasAllowance ? millimetres(allowance) : undefined)}` +
    `${attribute('data-corner-start', corners.start)}${attribute('data-corner-end', corners.end)}` +
    `${attribute('data-opening', millimetres(edge.opening))}${attribute('data-finish', edge.finish)}` +
    `${attribute('data-topstitch', millimetres(edge.topstitch))}` +
    `${attribute('data-interfacing', millimetres(edge.interfacing))}` +
    `${attribute('data-left-to-true', leftToTrueText(pattern, piece, name))}` +
    `${kind === 'fold' ? strokes.fold : strokes.stitching} d="${data}"/>`
  );
}

const millimetres = (mm: number | undefined): string | undefined =>
  mm === undefined ? undefined : `${toSvgNumber(mm)} mm`;

const dartLine = ({ name, legs, pressed }: Dart): string =>
  `    <path${attribute('data-dart', name)}${attribute('data-pressed', pressed)}${strokes.stitching} d="${toPathData({ segments: [...legs[0].segments, ...legs[1].segments] })}"/>`;

/** A role is written where it was given; a guess is made anew by whoever reads, and never hardens into a fact. */
const role = (thing: { readonly role?: string; readonly roleGuessed?: true }): string =>
  attribute('data-role', thing.roleGuessed ? undefined : thing.role);

const pleatLine = ({ name, kind, towards, stitched, mouth }: Pleat): string =>
  `    <path${attribute('data-pleat', name)}${attribute('data-pleat-kind', kind)}${attribute('data-towards', towards)}` +
  `${attribute('data-stitched', stitched > 0 ? millimetres(stitched) : undefined)}${strokes.inside} d="${toPathData(mouth)}"/>`;

const lineLine = (line: PieceLine): string => {
  const { kind, name, path } = line;
  return kind === 'dart'
    ? `    <path${attribute('data-dart', name)}${strokes.inside} d="${toPathData(path)}"/>`
    : `    <path${attribute('data-line', kind)}${attribute('data-name', name === kind ? undefined : name)}${role(line)}${strokes.inside} d="${toPathData(path)}"/>`;
};

function titleLine(piece: Piece): string {
  const { x, y, size } = titlePlace(piece);
  return `    <text data-derived="title" x="${x.toFixed(1)}" y="${y.toFixed(1)}" font-family="sans-serif" font-size="${size}" text-anchor="middle" fill="#222222" stroke="none">${xmlText(piece.title)}</text>`;
}
