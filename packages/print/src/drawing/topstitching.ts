import { edgeNames, edgePath } from '@paperhinge/geometry';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { besideEdge, wholeEdge } from './beside-edge.js';
import type { DrawnFact } from './drawn-fact.js';

import type { PieceSetting } from './piece-setting.js';
import { stroke } from './shapes.js';

/** The lines inside edges that are topstitched, and where interfacing along an edge ends; the edge's own words give the figures. */
export const topstitchFacts = ({ piece }: PieceSetting): readonly DrawnFact[] =>
  edgeNames(piece).flatMap(name => {
    const { topstitch, interfacing } = partsOfEdge(piece, name)[0]!;
    const path = edgePath(piece, name);
    const beside = (inset: number) => besideEdge(path, inset, wholeEdge(path));
    return [
      ...(topstitch ? [{ role: 'topstitch', along: beside(topstitch) } as const] : []),
      ...(interfacing ? [{ role: 'placement', along: beside(interfacing) } as const] : []),
    ].map(({ role, along }) => ({ inks: [stroke(role, along)], words: [], along, off: 0 }));
  });
