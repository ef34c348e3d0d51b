import type { Point } from '../../vector.js';
import type { FloorMap } from './floor-map.js';

/** Calls `mark` for each cell of a map whose middle lies in a polygon, row by row. */
export function cellsIn(map: FloorMap, polygon: readonly Point[], mark: (cell: number) => void): void {
  const at = polygon.map(p => ({ x: (p.x - map.origin.x) / map.cell, y: (p.y - map.origin.y) / map.cell }));
  const top = Math.max(0, Math.floor(Math.min(...at.map(p => p.y)))),
    bottom = Math.min(map.height - 1, Math.ceil(Math.max(...at.map(p => p.y))));
  for (let j = top; j <= bottom; j++) {
    const level = j + 0.5;
    const crossings = at
      .flatMap((p, i) => {
        const q = at[(i + 1) % at.length]!;
        if (p.y <= level === q.y <= level) return [];
        return [p.x + ((level - p.y) / (q.y - p.y)) * (q.x - p.x)];
      })
      .sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const end = Math.min(map.width - 1, Math.ceil(crossings[k + 1]! - 0.5) - 1);
      for (let i = Math.max(0, Math.ceil(crossings[k]! - 0.5)); i <= end; i++) mark(j * map.width + i);
    }
  }
}
