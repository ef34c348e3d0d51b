import { apply } from '../../affine.js';
import { lerp, type Point } from '../../vector.js';
import type { SheetPlace } from './first-pose.js';
import type { FloorMap } from './floor-map.js';
import type { FloorKnown } from './ground.js';
import { cellsIn } from './polygon-cells.js';
import type { SeenSheet } from './seen-sheets.js';
import { paperCorners } from './target-sheet.js';
import { mapOf } from './unknowns.js';

/** A sheet that was seen, and where it lies. */
export interface PlacedSheet extends SeenSheet {
  readonly at: SheetPlace;
}

/** What a cell is known to be: paper of a sheet, paper with something on it, or the soft rim of a sheet; 0 otherwise. */
export const paper = 1,
  covered = 2,
  rim = 3;

/** mm inside and outside a sheet's edge where the picture is soft, and paper not cut to a hair. */
export const rimWidths = ({ cell }: FloorMap): readonly [number, number] => [0.5 + cell, 0.8 + 1.5 * cell];
/** mm beyond a sheet's edge where the ground is looked for. */
const besideSheet = [4, 7, 11];
/** mm from one place beside a sheet to the next. */
const besideStep = 6;

/** Where paper is, where it is white, and where ground may be looked for. */
export function floorOfSheets(map: FloorMap, sheets: readonly PlacedSheet[]): FloorKnown {
  const codes = new Uint8Array(map.width * map.height);
  const [inward, outward] = rimWidths(map);
  for (const [beyond, code] of [
    [outward, rim],
    [-inward, paper],
  ] as const)
    for (const { sheet, at } of sheets)
      cellsIn(map, paperCorners(sheet.paper, mapOf(at), beyond), cell => {
        codes[cell] = code;
      });
  return {
    codes,
    white: sheets.flatMap(whiteOf),
    beside: sheets.map(sheet => besideOf(map, sheet, codes)),
  };
}

/** mm outside a target where its sheet is white. */
const outside = 3;

/** Places on the floor where a sheet is white: beside each of its targets that were seen. */
export const whiteOf = ({ at, targets }: PlacedSheet): readonly Point[] =>
  targets.flatMap(({ on }) => {
    const middle = lerp(on[0], on[2], 1 / 2);
    return on.map((p, i) => {
      const m = lerp(p, on[(i + 1) % 4]!, 1 / 2);
      const d = { x: Math.sign(Math.round(m.x - middle.x)), y: Math.sign(Math.round(m.y - middle.y)) };
      return apply(mapOf(at), { x: m.x + outside * d.x, y: m.y + outside * d.y });
    });
  });

function besideOf(map: FloorMap, { sheet, at }: PlacedSheet, codes: Uint8Array): readonly Point[] {
  return besideSheet.flatMap(beyond => {
    const corners = paperCorners(sheet.paper, mapOf(at), beyond);
    return corners.flatMap((p, i) => {
      const q = corners[(i + 1) % 4]!;
      const count = Math.round(Math.hypot(q.x - p.x, q.y - p.y) / besideStep);
      return Array.from({ length: count }, (_, k) => lerp(p, q, k / count)).filter(({ x, y }) => {
        const cell =
          Math.floor((y - map.origin.y) / map.cell) * map.width + Math.floor((x - map.origin.x) / map.cell);
        return codes[cell] === 0;
      });
    });
  });
}
