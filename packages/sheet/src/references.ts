import type { EdgePosition, EdgeRef } from '@paperhinge/geometry';
import type { SheetStep } from './sheet.js';

/** A name that a step uses and that the pattern must have at that step. */
export interface Reference {
  readonly kind: 'piece' | 'edge' | 'dart' | 'neighbour' | 'line' | 'mark' | 'seam' | 'fabric';
  readonly name: string;
  /** The piece that an edge, dart, neighbour (either of the two), line or mark belongs to. */
  readonly piece?: string;
  /** The field that names it, by its dotted path in the step. */
  readonly field: string;
}

/** Every name a step uses, in the order of its fields. */
export function referencesOf(step: SheetStep): readonly Reference[] {
  switch (step.verb) {
    case 'shorten':
    case 'lengthen':
      return step.parameters.pieces.flatMap((piece, i): Reference[] => [
        { kind: 'piece', name: piece, field: item('pieces', i, step) },
        ...(step.parameters.at === 'hem'
          ? []
          : [{ kind: 'line', name: step.parameters.at, piece, field: 'at' } as const]),
      ]);
    case 'close dart': {
      const { piece, dart, into, at } = step.parameters;
      return [
        onPiece(piece),
        { kind: 'dart', name: dart, piece, field: 'dart' },
        edge(piece, into, 'into'),
        ...near(piece, at, 'at'),
      ];
    }
    case 'move dart': {
      const { piece, dart, to, pivot } = step.parameters;
      return [
        onPiece(piece),
        { kind: 'dart', name: dart, piece, field: 'dart' },
        edge(piece, to.edge, 'to.edge'),
        ...near(piece, to.at, 'to.at'),
        ...(pivot === undefined ? [] : [{ kind: 'mark', name: pivot, piece, field: 'pivot' } as const]),
      ];
    }
    case 'spread': {
      const { piece, from, to } = step.parameters;
      return [onPiece(piece), edge(piece, from.edge, 'from.edge'), edge(piece, to.edge, 'to.edge')];
    }
    case 'take in':
    case 'let out':
      return [{ kind: 'seam', name: step.parameters.seam, field: 'seam' }];
    case 'recut neckline': {
      const { piece, line } = step.parameters;
      return [
        onPiece(piece),
        ...(line === undefined ? [] : [{ kind: 'line', name: line, piece, field: 'line' } as const]),
      ];
    }
    case 'set allowance':
      return typeof step.parameters.edges === 'string' ? [] : edges(step.parameters.edges, 'edges', step);
    case 'true':
      return edges(step.parameters.edges, 'edges', step);
    case 'unfold':
    case 'remove piece':
      return [onPiece(step.parameters.piece)];
    case 'draft band':
      return [
        ...edges(step.parameters.along, 'along', step),
        ...(step.parameters.gap ? edges([step.parameters.gap], 'gap', step) : []),
        ...cloth(step.parameters.fabric),
      ];
    case 'draft strip':
    case 'draft binding':
    case 'draft facing':
    case 'draft stay':
      return [...edges(step.parameters.along, 'along', step), ...cloth(step.parameters.fabric)];
  }
}

const onPiece = (name: string): Reference => ({ kind: 'piece', name, field: 'piece' });
const edge = (piece: string, name: string, field: string): Reference => ({
  kind: 'edge',
  name,
  piece,
  field,
});
const cloth = (name: string | undefined): readonly Reference[] =>
  name === undefined ? [] : [{ kind: 'fabric', name, field: 'fabric' }];

/** The neighbour that a place is counted from: an edge or a dart; `start` and `end` are always there. */
const near = (piece: string, position: EdgePosition | undefined, field: string): readonly Reference[] =>
  position?.from === undefined || position.from === 'start' || position.from === 'end'
    ? []
    : [{ kind: 'neighbour', name: position.from, piece, field }];

const edges = (refs: readonly EdgeRef[], field: string, step: SheetStep): readonly Reference[] =>
  refs.flatMap((ref, i): Reference[] => {
    const at = item(field, i, step);
    return [
      { kind: 'piece', name: ref.piece, field: at },
      { kind: 'edge', name: ref.edge, piece: ref.piece, field: at },
    ];
  });

/** The path of an item of a list, or of the one value that stands for a list of one. */
const item = (field: string, index: number, { places }: SheetStep): string =>
  `${field}.${index}` in places ? `${field}.${index}` : field;
