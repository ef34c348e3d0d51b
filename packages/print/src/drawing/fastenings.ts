import type { Fastening, Path, Piece, Point } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { add, scale } from '@paperhinge/geometry/plane';
import { besideEdge, type EdgeSpan, placeOnEdge, spanOf } from './beside-edge.js';
import type { DrawnFact } from './drawn-fact.js';

import type { Ink } from './ink.js';
import { buttonInks, hookInks } from './piece-lines.js';
import type { PieceSetting } from './piece-setting.js';
import { straight, stroke } from './shapes.js';

/** mm inside the edge at which a zip, elastic or cord is drawn. */
const tapeInset = 4;
/** mm: a button whose size is not given; it lies half of it and 6 mm inside the edge (trade-notes §7). */
const usualButton = 12;
const standBeyondButton = 6;

/** What closes or draws in an edge of the piece: a tape along it, or its buttons, hooks and snaps each in its place. */
export function fasteningFacts({ piece, pattern, reader }: PieceSetting): readonly DrawnFact[] {
  return (pattern.fastenings ?? []).flatMap(fastening => {
    const found = fastening.along.piece === piece.name ? spanOf(piece, fastening.along) : undefined;
    if (!found) return [];
    const { path } = found;
    const span = spanWithin(fastening, found.span);
    const name = reader.words.piece.fastening[fastening.kind](fastening.sort ?? '');
    const figures = figuresOf(fastening, span).map(mm => reader.length(mm));
    const counted = fastening.count ? `${fastening.count} × ${name}` : name;
    const said = [counted, ...figures].join(' ');
    const inset = isTape(fastening) ? tapeInset : insetOf(fastening);
    const inks = isTape(fastening)
      ? tapeInks(path, span)
      : isMarked(fastening, piece)
        ? []
        : spotInks(fastening, path, span);
    return [{ inks, words: [said, counted], along: besideEdge(path, inset, span), off: 2.2 }];
  });
}

const isTape = ({ kind }: Fastening): boolean => kind === 'zip' || kind === 'elastic' || kind === 'drawcord';

/** Whether the maker has marked each button already: then her marks hold. */
const isMarked = ({ kind }: Fastening, { marks }: Piece): boolean =>
  kind === 'buttons' &&
  marks.some(m => m.kind === 'button' || m.role === 'button' || m.role === 'buttonhole');

/** The length that it closes, from where its run begins. */
function spanWithin({ along, length }: Fastening, { from, to }: EdgeSpan): EdgeSpan {
  if (length === undefined || length >= to - from) return { from, to };
  return along.reversed ? { from: to - length, to } : { from, to: from + length };
}

/** The figure that the maker needs: how long a zip is, an elastic before it is stretched, how far buttons lie apart. */
function figuresOf(fastening: Fastening, { from, to }: EdgeSpan): readonly number[] {
  if (fastening.kind === 'zip') return [to - from];
  if (fastening.relaxed !== undefined) return [fastening.relaxed];
  return fastening.size === undefined ? [] : [fastening.size];
}

const insetOf = ({ overlap, size = usualButton }: Fastening): number =>
  overlap === undefined ? size / 2 + standBeyondButton : overlap / 2;

/** A dotted line with a bar at each end. */
function tapeInks(path: Path, span: EdgeSpan): readonly Ink[] {
  const bars = [span.from, span.to].map(at => {
    const { at: point, inwards } = placeOnEdge(path, at);
    return straight('mark', point, add(point, scale(inwards, 2 * tapeInset)));
  });
  return [stroke('placement', besideEdge(path, tapeInset, span)), ...bars];
}

/** Places from one end to the other, a button's width from either: so many, or so far apart; else one at each end. */
function spotInks(fastening: Fastening, path: Path, whole: EdgeSpan): readonly Ink[] {
  const off = Math.min(fastening.size ?? usualButton, (whole.to - whole.from) / 4);
  const [from, to] = [whole.from + off, whole.to - off];
  const length = to - from;
  const spacing = fastening.spacing ?? length / Math.max((fastening.count ?? 2) - 1, 1);
  const count = fastening.count ?? Math.floor(length / spacing + tolerances.rowRounding) + 1;
  const inset = insetOf(fastening);
  return Array.from({ length: count }, (_, i) => i * spacing)
    .filter(d => d <= length + tolerances.rowRounding)
    .flatMap(d => {
      const { at, inwards } = placeOnEdge(path, fastening.along.reversed ? to - d : from + d);
      const spot: Point = add(at, scale(inwards, inset));
      return fastening.kind === 'buttons' ? buttonInks(spot) : hookInks(spot);
    });
}
