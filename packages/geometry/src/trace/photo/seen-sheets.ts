import { distance, lerp, type Point } from '../../vector.js';
import { carried, homographyFrom } from './homography.js';
import type { Quad } from './quad.js';
import type { SeenTarget } from './read-target.js';
import { type FrameSheet, targetAt, targetCorners } from './target-sheet.js';

/** A target of a sheet as a picture shows it. */
export interface SheetTarget extends SeenTarget {
  readonly place: number;
  /** Its corners on the sheet as printed, mm from the middle. */
  readonly on: Quad;
}

/** Printed mm for a mm of the sheet, across and down: 1 unless the printer did not keep the scale. */
export interface PrintedStretch {
  readonly across: number;
  readonly down: number;
}

/** A sheet by its print: the same sheet may have been printed, and laid, more than once. */
export interface LaidSheet extends FrameSheet {
  /** 0, or the how manieth print it is in the picture. */
  readonly copy: number;
}

/** Whether two are the same sheet of paper. */
export const sameSheet = (a: LaidSheet, b: LaidSheet): boolean =>
  a.paper === b.paper && a.number === b.number && a.copy === b.copy;

/** A sheet as a picture shows it: those of its targets that were read. */
export interface SeenSheet {
  readonly sheet: LaidSheet;
  readonly targets: readonly SheetTarget[];
}

/** Of a target's size as seen: how far the others of its sheet may lie from where one of them has them. */
const astray = 0.8;

/**
 * Targets by sheet, largest first. Those that do not lie where the others of their sheet have them were misread, or
 * belong to a second print of the sheet, which becomes a sheet of its own. A lone target counts only if it was read
 * without a fault.
 */
export function seenSheets(
  targets: readonly SeenTarget[],
  { across, down }: PrintedStretch = { across: 1, down: 1 },
): readonly SeenSheet[] {
  const byNumber = new Map<string, { sheet: FrameSheet; targets: SheetTarget[] }>();
  for (const target of targets) {
    const { sheet, place } = targetAt(target.index);
    const key = `${sheet.paper} ${sheet.number}`;
    const entry = byNumber.get(key) ?? { sheet, targets: [] };
    const on = targetCorners(place).map(({ x, y }) => ({ x: x * across, y: y * down })) as unknown as Quad;
    entry.targets.push({ ...target, place, on });
    byNumber.set(key, entry);
  }
  return [...byNumber.values()]
    .flatMap(({ sheet, targets: all }) => {
      const groups: SeenSheet[] = [];
      let left: readonly SheetTarget[] = all;
      while (left.length > 0) {
        const group = largestAgreeing(left);
        groups.push({ sheet: { ...sheet, copy: groups.length }, targets: group });
        left = left.filter(t => !group.includes(t));
      }
      return groups;
    })
    .filter(({ targets: [first, ...others] }) => others.length > 0 || first!.wrong === 0)
    .sort((a, b) => b.targets.length - a.targets.length);
}

function largestAgreeing(targets: readonly SheetTarget[]): readonly SheetTarget[] {
  let best: readonly SheetTarget[] = [targets[0]!];
  for (const seed of targets) {
    const map = homographyFrom(seed.on, seed.corners);
    if (!map) continue;
    const agreeing = targets.filter(other => {
      if (other === seed) return true;
      if (other.place === seed.place) return false;
      const [a, , c] = other.on;
      const expected = carried(map, lerp(a, c, 1 / 2));
      const size = distance(other.corners[0], other.corners[2]) / Math.SQRT2;
      return distance(expected, middleOf(other)) < astray * size;
    });
    if (agreeing.length > best.length) best = agreeing;
  }
  return best;
}

const middleOf = ({ corners: [a, , c] }: SeenTarget): Point => lerp(a, c, 1 / 2);
