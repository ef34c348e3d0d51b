import { line, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import type { Item } from './composed.js';

/**
 * A ring whose gaps are closed: where an edge ends off what follows, it runs on straight to it; after a dart or pleat the
 * edge that follows begins where that ends.
 */
export function bridgedRing(items: readonly Item[]): readonly Item[] {
  return items.flatMap((item, i): readonly Item[] => {
    const next = items[(i + 1) % items.length]!;
    const from = pathEnd(pathsOf(item).at(-1)!),
      to = pathStart(pathsOf(next)[0]!);
    const beside = item.type === 'run' ? item : next;
    if (beside.type !== 'run' || distance(from, to) <= tolerances.joiningGap) return [item];
    return [item, { type: 'run', edge: beside.edge, path: pathOf(line(from, to)) }];
  });
}

const pathsOf = (item: Item) => (item.type === 'run' ? [item.path] : pathsOfPart(item));
