import type { Measure, Wearer } from '@paperhinge/alter';
import type { EdgeRef } from '@paperhinge/geometry';
import { edgeRefOf } from './names.js';

/** What a sheet can ask to be measured, as it is written; what stands in capitals is a name. */
export const measureForms = [
  'girth at LEVEL',
  'ease at LEVEL',
  'length of PIECE.EDGE',
  'length of PIECE.EDGE + PIECE.EDGE',
  'length of SEAM',
  'ease of SEAM',
  'sweep of PIECE.EDGE',
  'neck opening',
  'height of PIECE',
  'width of PIECE',
  'area of PIECE',
] as const;

/** A measure as a sheet writes it; undefined if it is none. */
export function measureOf(text: string, wearer: Wearer): Measure | undefined {
  const words = text.trim().replace(/\s+/g, ' ');
  if (words === 'neck opening') return { of: 'neck' };
  const [, what = '', join = '', name = ''] =
    /^(girth|ease|length|sweep|height|width|area) (at|of) (.+)$/.exec(words) ?? [];
  if (name === '') return undefined;
  if (join === 'at') {
    if (what === 'girth') return { of: 'girth', level: name };
    return what === 'ease' ? { of: 'ease', level: name, wearer } : undefined;
  }
  const edges = edgesIn(name);
  switch (what) {
    case 'ease':
      return edges ? undefined : { of: 'seam-ease', seam: name };
    case 'length':
      return edges ? { of: 'edges', edges } : { of: 'seam', seam: name };
    case 'sweep':
      return edges?.length === 1 ? { of: 'sweep', edge: edges[0]! } : undefined;
    case 'height':
    case 'width':
    case 'area':
      return { of: what, piece: name };
    default:
      return undefined;
  }
}

/** A measure as a sheet writes it. */
export function measureText(measure: Measure): string {
  switch (measure.of) {
    case 'girth':
    case 'ease':
      return `${measure.of} at ${measure.level}`;
    case 'seam':
      return `length of ${measure.seam}`;
    case 'seam-ease':
      return `ease of ${measure.seam}`;
    case 'edges':
      return `length of ${measure.edges.map(edgeText).join(' + ')}`;
    case 'sweep':
      return `sweep of ${edgeText(measure.edge)}`;
    case 'neck':
      return 'neck opening';
    default:
      return `${measure.of} of ${measure.piece}`;
  }
}

const edgeText = ({ piece, edge }: EdgeRef): string => `${piece}.${edge}`;

/** `front.neck + back.neck`; undefined if a full stop is missing anywhere. */
function edgesIn(text: string): readonly EdgeRef[] | undefined {
  const edges = text.split(' + ').map(edgeRefOf);
  return edges.every(edge => edge !== undefined) ? edges : undefined;
}
