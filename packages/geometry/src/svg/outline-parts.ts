import { locating } from '../errors.js';
import { pathLength } from '../path/length.js';
import { joined } from '../path/path.js';
import type { Dart, Edge, OutlinePart, Pleat } from '../pattern/types.js';
import { ends, pleatKinds, pressings } from '../pattern/words.js';
import { coincidenceTolerance, dartLegTolerance, joiningGap } from '../tolerance.js';
import type { Strand } from '../trace/chain.js';
import { dartLegs } from '../trace/dart-legs.js';
import { positiveLength, wordOf } from './attribute-values.js';
import type { Item } from './gather.js';
import type { PieceContext } from './piece-context.js';
import type { EdgeReader } from './read-edge.js';

/** A stroke of an outline with the element that drew it; `edge` where it is an edge's, not a dart's or a pleat's. */
export interface DrawnStrand extends Strand {
  readonly item: Item;
  readonly edge?: EdgeReader;
}

/** Edges, darts and pleats of a ring; strokes of one edge that follow each other become one part. */
export function partsOf(ring: readonly DrawnStrand[], context: PieceContext): readonly OutlinePart[] {
  const merged: DrawnStrand[] = [];
  for (const strand of ring) {
    const last = merged.at(-1);
    if (last?.edge && last.item === strand.item && last.name === strand.name)
      merged[merged.length - 1] = { ...last, path: joined(last.path, strand.path) };
    else merged.push(strand);
  }
  const last = merged.at(-1)!,
    first = merged[0]!;
  if (merged.length > 1 && last.edge && last.item === first.item && last.name === first.name) {
    merged[0] = { ...first, path: joined(last.path, first.path) };
    merged.pop();
  }
  return fromTrueStart(
    merged.map(strand =>
      strand.edge
        ? edgePart(strand, strand.edge)
        : strand.item.meaning === 'pleat'
          ? pleatPart(strand, context)
          : dartPart(strand, context),
    ),
  );
}

/** The list begins with the first edge's own start, also where darts or pleats interrupt that edge. */
function fromTrueStart(parts: readonly OutlinePart[]): readonly OutlinePart[] {
  const name = parts[0]!.name;
  let start = 0;
  const takesUp = (i: number): boolean => parts[i]!.type !== 'edge';
  const previous = (i: number): number => (i + parts.length - 1) % parts.length;
  const before = (i: number): number => {
    let between = previous(i);
    while (takesUp(between) && takesUp(previous(between))) between = previous(between);
    return previous(between);
  };
  for (let i = before(0); parts.length > 3 && parts[i]!.name === name && i !== 0; i = before(i)) start = i;
  return [...parts.slice(start), ...parts.slice(0, start)];
}

const edgePart = ({ name, path }: DrawnStrand, { attributes }: EdgeReader): Edge => ({
  type: 'edge',
  name,
  path,
  ...attributes,
});

function dartPart({ name, path, item }: DrawnStrand, context: PieceContext): Dart {
  const owner = { ...context.owner, edge: name };
  const at = item.element.offset;
  const { legs, apex } = locating(context.report.where(at, owner), () => dartLegs(path));
  const [firstMm, secondMm] = legs.map(pathLength) as [number, number];
  const differenceMm = Math.abs(firstMm - secondMm);
  const dart = { ...context.owner, dart: name };
  const facts = { dart, firstMm, secondMm, limitMm: dartLegTolerance };
  if (differenceMm > dartLegTolerance) throw context.report.refuse('dart-legs-differ', at, facts, owner);
  if (differenceMm > joiningGap + coincidenceTolerance)
    context.report.add('note', 'dart-legs-differ', at, facts, owner);
  const pressed = wordOf(item.element, 'data-pressed', pressings, { ...context, owner });
  return { type: 'dart', name, legs, apex, ...(pressed ? { pressed } : {}) };
}

function pleatPart({ name, path, item }: DrawnStrand, context: PieceContext): Pleat {
  const place = { ...context, owner: { ...context.owner, edge: name } };
  const { element } = item;
  return {
    type: 'pleat',
    name,
    kind: wordOf(element, 'data-pleat-kind', pleatKinds, place) ?? 'knife',
    mouth: path,
    towards: wordOf(element, 'data-towards', ends, place) ?? 'end',
    stitched: positiveLength(element, 'data-stitched', place) ?? 0,
  };
}
