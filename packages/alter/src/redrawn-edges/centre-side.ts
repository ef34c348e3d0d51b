import type { Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { isCentreEdge } from '@paperhinge/geometry/pattern';
import type { Item, Run } from '../moved-edges/composed.js';
import type { EdgeInRing } from './corner-moved.js';
import { refusal } from './tellings.js';

/** On which side of a neck the centre lies: before it or after it; on the other there is an edge. */
export type CentreSide = 1 | -1;

/** @throws PatternError `neck-not-between` where the neck does not run from a centre edge to another edge */
export function sideOfCentre({ piece, items, index, run }: EdgeInRing): CentreSide {
  const beside = (step: CentreSide) => items[(index + step + items.length) % items.length]!;
  const isCentre = (item: Item) =>
    item.type === 'run' && (item.edge.kind === 'fold' || isCentreEdge(item.edge));
  const [before, after] = [beside(-1), beside(1)];
  const edge = { piece: piece.name, edge: run.edge.name };
  if (isCentre(before) === isCentre(after) || before.type !== 'run' || after.type !== 'run')
    throw refusal('neck-not-between', { edge }, edge);
  return isCentre(before) ? -1 : 1;
}

/** The far end of the centre edge. */
export const centreFoot = ({ path }: Run, step: CentreSide): Point =>
  step === -1 ? pathStart(path) : pathEnd(path);
