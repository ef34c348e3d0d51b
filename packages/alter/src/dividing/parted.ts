import {
  type Dart,
  type Edge,
  type Mark,
  type OutlinePart,
  type Path,
  type Piece,
  type PieceLine,
  pathLength,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, subpath } from '@paperhinge/geometry/paths';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import type { SpanBecame, ThingBecame } from '../became/became.js';
import { thingsOn } from '../became/by-names.js';
import { bridged } from '../hinge/bridged.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { linePartsOf, sectionHolding } from '../hinge/line-parts.js';
import { composed, type Item, type Run } from '../moved-edges/composed.js';
import { cutAlong, type DartCut, dartsCut } from './darts-cut.js';

/** One side of a cut, as a piece of its own. */
export interface Part {
  readonly piece: Piece;
  readonly spans: readonly SpanBecame[];
  readonly things: readonly ThingBecame[];
}

/**
 * One side of a piece cut once from outline to outline: its part of the ring closed by the cut, with the lines and marks
 * that lie on it. The legs of a dart that the cut ends at belong to the new edge.
 *
 * @param name what the part is called
 * @param fresh what the new edge is called and how it is treated
 */
export function partOf(cutPiece: CutPiece, section: number, name: string, fresh: Edge): Part {
  const { piece } = cutPiece;
  const title = name === piece.name ? piece.title : `${name[0]!.toUpperCase()}${name.slice(1)}`;
  const template: Piece = { ...piece, name, title };
  const opened = dartsCut(cutPiece, section).map(cut => ({ ...cut, name: freeName(piece, cut, fresh) }));
  const { parts, spans } = composed(template, itemsOf(cutPiece, section, fresh, opened));
  const lines = linesOn(cutPiece, section).filter(line => !opened.some(cut => cut.line.name === line.name));
  const marks = piece.marks.filter(mark => sectionOf(cutPiece, mark) === section);
  const drawn: Piece = { ...template, outline: { parts }, lines, marks, notches: [] };
  const there = thingsOn(drawn);
  const things = thingsOn(piece).flatMap((was): readonly ThingBecame[] => {
    const now = { ...was, piece: name };
    return there.some(thing => JSON.stringify(thing) === JSON.stringify(now)) ? [{ was, now }] : [];
  });
  const darts = opened.map(({ line, name: dart }) => ({
    was: { piece: piece.name, line: line.name },
    now: { piece: name, dart },
  }));
  return { piece: cutSingly(piece, drawn), spans, things: [...things, ...darts] };
}

/** A dart of the new edge, by its name. */
type Opened = DartCut & { readonly name: string };

/** Edges, darts and pleats of a piece share one list of names; lines have their own. */
const freeName = ({ outline }: Piece, { line: { name } }: DartCut, fresh: Edge): string =>
  [fresh, ...outline.parts].some(part => part.name === name) ? `${name} dart` : name;

/** Half a piece without its fold is cut twice, as a pair. */
function cutSingly(before: Piece, part: Piece): Piece {
  if (!foldEdgeOf(before) || foldEdgeOf(part)) return part;
  const { cutting, alsoCut } = part;
  const paired = <C extends Piece['cutting']>(one: C): C => ({
    ...one,
    count: 2 * one.count,
    mirrored: true,
  });
  return { ...part, cutting: paired(cutting), ...(alsoCut ? { alsoCut: alsoCut.map(paired) } : {}) };
}

/** The ring of a section: its stretches in order, then the cut from where they end to where they begin. */
function itemsOf(
  cutPiece: CutPiece,
  section: number,
  fresh: Edge,
  opened: readonly Opened[],
): readonly Item[] {
  const { sections, stretches, piece } = cutPiece;
  const own = sections[section]!.stretches;
  const isOwn = (part: OutlinePart): boolean =>
    own.filter(i => stretches[i]!.type !== 'edge' && partAt(cutPiece, i) === part).length === 2;
  const items = own.flatMap((i): readonly Item[] => {
    const stretch = stretches[i]!;
    if (stretch.type === 'mouth') return [stretch.pleat];
    if (stretch.type === 'edge') {
      const { edge, path, from, to } = stretch;
      return [{ type: 'run', edge, path, was: { piece: piece.name, edge: edge.name, from, to } }];
    }
    if (!isOwn(stretch.dart)) return [{ type: 'run', edge: fresh, path: stretch.path }];
    return stretch.leg === 0 ? [stretch.dart as Dart] : [];
  });
  return [...items, ...cutItems(cutAlong(cutPiece, section), fresh, opened)];
}

/** The cut, with the darts that open in it. */
function cutItems(along: Path, fresh: Edge, opened: readonly Opened[]): readonly Item[] {
  const run = (from: number, to: number): Run => ({
    type: 'run',
    edge: fresh,
    path: opened.length === 0 ? along : subpath(along, from, to),
  });
  const ends = [0, ...opened.map(({ to }) => to)];
  return [
    ...opened.flatMap(({ name, legs, from }, i): readonly Item[] => [
      run(ends[i]!, from),
      { type: 'dart', name, legs, apex: pathEnd(legs[0]) },
    ]),
    run(ends.at(-1)!, pathLength(along)),
  ];
}

function partAt({ stretches }: CutPiece, i: number): OutlinePart | undefined {
  const stretch = stretches[i]!;
  return stretch.type === 'leg' ? stretch.dart : undefined;
}

/** Lines as far as they lie on the section; what a dart or the cut parted is joined straight across. */
function linesOn(cutPiece: CutPiece, section: number): readonly PieceLine[] {
  return cutPiece.piece.lines.flatMap((line): readonly PieceLine[] => {
    const parts = linePartsOf(cutPiece, line.path, section);
    const known = parts.filter(p => p.section !== undefined);
    if (known.length === 0) return lineOff(cutPiece, line) === section ? [line] : [];
    const own = known.filter(p => p.section === section).map(p => p.path);
    if (own.length === 0) return [];
    if (own.length === known.length) return [line];
    return [{ ...line, path: own.reduce(bridged) }];
  });
}

const sectionOf = (cutPiece: CutPiece, { at }: Mark): number =>
  sectionHolding(cutPiece, at) ?? nearestTo(cutPiece, at);

const lineOff = (cutPiece: CutPiece, { path }: PieceLine): number =>
  nearestTo(cutPiece, path.segments[0]![0]);

const nearestTo = ({ sections }: CutPiece, point: Mark['at']): number =>
  sections
    .map((s, i) => ({ i, away: nearestOnPath(s.border, point).distance }))
    .reduce((a, b) => (b.away < a.away ? b : a)).i;
