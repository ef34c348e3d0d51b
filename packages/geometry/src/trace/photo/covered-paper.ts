import { apply } from '../../affine.js';
import { lerp, type Point } from '../../vector.js';
import type { Colour } from './evened-floor.js';
import { cellAt, type FloorMap } from './floor-map.js';
import { covered, paper as isPaper, type PlacedSheet, rim, rimWidths, whiteOf } from './floor-of-sheets.js';
import type { Unlikeness } from './ground.js';
import { cellsIn } from './polygon-cells.js';
import { paperCorners, printedAt, targetCell } from './target-sheet.js';
import { mapOf } from './unknowns.js';

/** In logarithms: what lies farther from the paper's white, or from its ink's black, is something on the paper. */
const notWhite = 0.3,
  notBlack = 0.55;
/** mm, and cells, from an edge of the print within which white and black run into each other. */
const printSoft = 0.6,
  cellsSoft = 1.3;

/**
 * Marks the cells of sheets that something lies on, as `covered` in `codes` and as 1 in `marked`: where the print is
 * not what it should be. Between covered paper and what was marked outside, the sheet's soft rim is marked too.
 */
export function markCovered(
  map: FloorMap,
  sheets: readonly PlacedSheet[],
  unlike: Unlikeness,
  codes: Uint8Array,
  marked: Uint8Array,
): void {
  for (const sheet of sheets) {
    const colours = inkAndPaper(map, sheet, unlike);
    if (!colours) continue;
    const states = statesOf(map, sheet, unlike, codes, colours);
    byHue(states, unlike, colours.white);
    for (const [cell, state] of settled(states, map.width))
      if (state === something) {
        codes[cell] = covered;
        marked[cell] = 1;
      }
  }
  for (const sheet of sheets) markRim(map, sheet, codes, marked);
}

const something = 1,
  nothing = 2,
  unsure = 3;

interface Printed {
  readonly white: Colour;
  readonly black: Colour;
}

/** What white and black look like on this sheet, light evened. */
function inkAndPaper(map: FloorMap, sheet: PlacedSheet, { colour }: Unlikeness): Printed | undefined {
  const middle = (points: readonly Point[]): Colour | undefined => {
    const seen = points.map(p => cellAt(map, p)).filter(cell => cell >= 0 && map.from[cell] !== 0);
    if (seen.length < 4) return undefined;
    const colours = seen.map(colour);
    return [0, 1, 2].map(
      c => colours.map(v => v[c]!).sort((a, b) => a - b)[colours.length >> 1]!,
    ) as unknown as Colour;
  };
  const black = middle(
    sheet.targets.flatMap(({ on }) =>
      on.map((p, i) => {
        const m = lerp(p, on[(i + 1) % 4]!, 1 / 2),
          c = lerp(on[0], on[2], 1 / 2);
        return apply(mapOf(sheet.at), lerp(m, c, targetCell / 2 / Math.hypot(m.x - c.x, m.y - c.y)));
      }),
    ),
  );
  const white = middle(whiteOf(sheet));
  return black && white && { black, white };
}

function statesOf(
  map: FloorMap,
  { sheet, at }: PlacedSheet,
  { colour }: Unlikeness,
  codes: Uint8Array,
  { white, black }: Printed,
): Map<number, number> {
  const cos = Math.cos(at.angle),
    sin = Math.sin(at.angle);
  const soft = printSoft + cellsSoft * map.cell;
  const states = new Map<number, number>();
  cellsIn(map, paperCorners(sheet.paper, mapOf(at)), cell => {
    if (codes[cell] !== isPaper || map.from[cell] === 0) return;
    const row = Math.floor(cell / map.width);
    const dx = map.origin.x + (cell - row * map.width + 0.5) * map.cell - at.x,
      dy = map.origin.y + (row + 0.5) * map.cell - at.y;
    const print = printedAt(sheet, cos * dx + sin * dy, cos * dy - sin * dx, soft);
    if (print === undefined) states.set(cell, unsure);
    else {
      const c = colour(cell),
        wanted = print ? white : black;
      const off = Math.hypot(c[0] - wanted[0], c[1] - wanted[1], c[2] - wanted[2]);
      states.set(cell, off > (print ? notWhite : notBlack) ? something : nothing);
    }
  });
  return states;
}

/** In logarithms: a hue farther from the paper's than this tells what lies on it, dot by dot. */
const ownHue = 0.3;

/** Where white and black meet there is still no hue: something with a hue is told there by it. */
function byHue(states: Map<number, number>, { colour }: Unlikeness, white: Colour): void {
  const hue = (c: Colour) => [c[0] - c[1], c[2] - c[1]] as const;
  const plain = hue(white);
  const far = (h: readonly [number, number]) => Math.hypot(h[0] - plain[0], h[1] - plain[1]);
  const some = [...states].filter(([, state]) => state === something).map(([cell]) => hue(colour(cell)));
  if (some.length < leastSome) return;
  const typical = [0, 1].map(c => some.map(h => h[c]!).sort((a, b) => a - b)[some.length >> 1]!);
  const own = [typical[0]!, typical[1]!] as const;
  if (far(own) < ownHue) return;
  for (const [cell, state] of states) {
    if (state !== unsure) continue;
    const h = hue(colour(cell));
    states.set(cell, Math.hypot(h[0] - own[0], h[1] - own[1]) < far(h) ? something : nothing);
  }
}

/** Cells that tell what a thing on the paper looks like. */
const leastSome = 40;

/** Cells whose print is not sure take what most of their neighbours are, from outside in. */
function settled(states: ReadonlyMap<number, number>, width: number): ReadonlyMap<number, number> {
  const out = new Map(states);
  for (let round = 0; round < 8; round++) {
    const changes: [number, number][] = [];
    for (const [cell, state] of out) {
      if (state !== unsure) continue;
      let some = 0,
        none = 0;
      for (const next of [1, -1, width, -width, width + 1, width - 1, -width + 1, -width - 1]) {
        const s = out.get(cell + next);
        if (s === something) some++;
        else if (s === nothing) none++;
      }
      if (some + none > 0) changes.push([cell, some > none ? something : nothing]);
    }
    if (changes.length === 0) break;
    for (const [cell, state] of changes) out.set(cell, state);
  }
  return out;
}

/** A rim cell is marked where both the ground outside it and the paper inside it are. */
function markRim(map: FloorMap, { sheet, at }: PlacedSheet, codes: Uint8Array, marked: Uint8Array): void {
  const place = mapOf(at);
  const corners = paperCorners(sheet.paper, place);
  const [inward, outward] = rimWidths(map);
  const beyond = 0.8 * map.cell;
  cellsIn(map, paperCorners(sheet.paper, place, outward), cell => {
    if (codes[cell] !== rim) return;
    const row = Math.floor(cell / map.width);
    const p = {
      x: map.origin.x + (cell - row * map.width + 0.5) * map.cell,
      y: map.origin.y + (row + 0.5) * map.cell,
    };
    const { off, out } = nearestSide(corners, p);
    const there = (far: number) => {
      const k = cellAt(map, { x: p.x + out.x * (far - off), y: p.y + out.y * (far - off) });
      return k >= 0 && marked[k] === 1 && codes[k] !== rim;
    };
    if (there(outward + beyond) && there(-inward - beyond)) marked[cell] = 1;
  });
}

/** How far outside the nearest side of a clockwise polygon a point lies, and the unit vector out of it. */
function nearestSide(corners: readonly Point[], p: Point): { readonly off: number; readonly out: Point } {
  let best = { off: Number.NEGATIVE_INFINITY, out: { x: 0, y: 0 } };
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const out = { x: (b.y - a.y) / length, y: -(b.x - a.x) / length };
    const off = (p.x - a.x) * out.x + (p.y - a.y) * out.y;
    if (off > best.off) best = { off, out };
  });
  return best;
}
