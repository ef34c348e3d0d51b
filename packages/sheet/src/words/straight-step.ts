import type { Thing } from '@paperhinge/geometry';
import type { Say } from './catalogue.js';
import { edgeText, stepText, typedLength } from './step-text.js';

/**
 * The step that draws an edge straight, as it is typed; square to its fold where it has one.
 * @param sideMm how far up the side its far end goes for that
 * @param offMm how far off a straight line it is
 */
export function straightStep(edge: Thing, sideMm: number | undefined, offMm: number, say: Say): string {
  const { piece = '', edge: name = '' } = edge;
  if (sideMm !== undefined)
    return stepText('shape hem', {
      piece,
      edge: name,
      side: typedLength(sideMm, say.unit),
      line: 'straight',
    });
  // Roomy: the line moves by as much as it is off.
  const within = typedLength(Math.ceil(offMm + 1), say.unit);
  return stepText('true', { edges: [edgeText(edge)], straight: 'yes', within });
}
