import {
  type EdgeRun,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { stretchOf } from '../moved-edges/seam-place.js';

/**
 * A pattern whose seam is sewn over a mouth that an earlier draft of these bags left open in it, so that it can be left
 * open anew; the pattern itself where there is none.
 *
 * @param bags the pieces sewn to the mouth: on side a of the seam, and on side b
 */
export function withMouthClosed(pattern: Pattern, seam: string, bags: readonly [string, string]): Pattern {
  const open = pattern.seams.find(({ name }) => name === seam);
  const mouths = bags.map(bag => mouthOf(pattern, bag));
  if (!open || mouths.some(mouth => mouth === undefined)) return pattern;
  const whole: Seam = {
    ...open,
    a: closed(pattern, open.a, mouths[0]!),
    b: closed(pattern, open.b, mouths[1]!),
  };
  return { ...pattern, seams: pattern.seams.map(one => (one === open ? whole : one)) };
}

/** What of the garment a bag is sewn to. */
function mouthOf({ seams }: Pattern, bag: string): readonly EdgeRun[] | undefined {
  const isBag = (run: EdgeRun): boolean => run.piece === bag && run.edge === 'mouth';
  const found = seams.find(({ a, b }) => a.some(isBag) || b.some(isBag));
  return found && (found.a.some(isBag) ? found.b : found.a);
}

/** A side of a seam with the runs of the mouth put in where they touch its own, and touching runs of an edge made one. */
function closed(pattern: Pattern, side: readonly EdgeRun[], mouth: readonly EdgeRun[]): readonly EdgeRun[] {
  const first = mouth[0]!;
  const before = side.findIndex(run => touches(pattern, run, first));
  const at =
    before >= 0
      ? before + 1
      : Math.max(
          0,
          side.findIndex(run => touches(pattern, mouth.at(-1)!, run)),
        );
  const runs: EdgeRun[] = [];
  for (const run of [...side.slice(0, at), ...mouth, ...side.slice(at)]) {
    const last = runs.at(-1);
    if (last && touches(pattern, last, run)) runs[runs.length - 1] = together(pattern, last, run);
    else runs.push(run);
  }
  return runs;
}

/** Whether one stretch of an edge ends where the next begins, as they are walked. */
function touches(pattern: Pattern, one: EdgeRun, next: EdgeRun): boolean {
  if (one.piece !== next.piece || one.edge !== next.edge || one.reversed !== next.reversed) return false;
  const [a, b] = [stretchOf(pattern, one), stretchOf(pattern, next)];
  const gap = one.reversed ? a[0] - b[1] : b[0] - a[1];
  return Math.abs(gap) <= tolerances.joiningGap;
}

function together(pattern: Pattern, one: EdgeRun, next: EdgeRun): EdgeRun {
  const ends = [...stretchOf(pattern, one), ...stretchOf(pattern, next)];
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  const { part: _, ...whole } = one;
  const length = pathLength(edgePath(pieceNamed(pattern, one.piece), one.edge));
  const isWhole = from <= tolerances.coincidenceTolerance && to >= length - tolerances.joiningGap;
  return isWhole ? whole : { ...whole, part: { from, to } };
}
