import {
  type EdgeRef,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  walkSeam,
} from '@paperhinge/geometry';
import { edgesOfRole } from '@paperhinge/geometry/pattern';
import { dot } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { inSteps, type Part } from '../fit/adjust/in-steps.js';
import { bottomOf, directionOf } from '../fit/adjust/landmarks.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { refusal } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { changeCap } from './change-cap.js';
import { setSeam } from './set-seam.js';
import { lengthen, shorten } from './shorten.js';
import { spread } from './spread.js';

/** Give a plain sleeve fullness. */
export interface ShapeSleeve {
  readonly piece: string;
  readonly into: 'puff' | 'bell' | 'bishop' | 'flutter';
  /** mm of fullness on the sleeve: at the cap of a puff, at the hem of the others. */
  readonly by: number;
  /** mm that a puff's cap is raised, or a bishop lengthened to fall over its cuff; default 0. */
  readonly drop?: number;
  /** mm that are left of a flutter sleeve's underarm seam; default 25. */
  readonly underarm?: number;
  /** Default 5. */
  readonly slashes?: number;
}

/**
 * Gives a sleeve fullness by slashes from cap to hem. A puff hinges at the hem: its cap opens, is raised if asked, and
 * is gathered into the armhole between the slashes. A bell hinges at the cap and opens at the hem; a flutter sleeve is
 * a bell that is cut short first, a little below the underarm. A bishop opens at the hem likewise, is lengthened to
 * fall over its cuff, and is gathered into it. Rigid: the strips between the slashes, each with its grain. Source:
 * Armstrong, Patternmaking for Fashion Design (1987), sleeves [memory].
 *
 * @throws PatternError `no-cap`; `adjust-needs-edge`; what `spread`, `changeCap` and `lengthen` refuse; those of
 *   `perform`
 */
export const shapeSleeve = (pattern: Pattern, parameters: ShapeSleeve): Alteration =>
  perform(shapeSleeveVerb, pattern, parameters);

const mostSlashes = 40;

export const shapeSleeveForm = formOf<ShapeSleeve>()({
  verb: 'shape sleeve',
  does: 'Gives a sleeve fullness: a puff gathered at the cap, a bell wide at the hem, a bishop gathered into its cuff, a short flutter sleeve.',
  fields: {
    piece: field.piece(),
    into: field.choice('puff', 'bell', 'bishop', 'flutter'),
    by: field.size(),
    drop: field.usually(field.length(), 0),
    underarm: field.usually(field.size(), 25),
    slashes: field.usually(field.count(mostSlashes), 5),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Shape the {piece} into a {into}, fuller by {by}[, {drop} more in height][, {underarm} long at the underarm][, in {slashes} slashes]',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'sleeve', into: 'puff', by: 120, drop: '25 mm' } },
});
export const shapeSleeveVerb = /* @__PURE__ */ verbFrom(shapeSleeveForm, shaped);

/** A puff is gathered in the upper half of its cap, where an armhole takes ease. */
const gatheredPart = [{ share: 0.2 }, { share: 0.8 }] as const;

function shaped(
  pattern: Pattern,
  { piece: name, into, by, drop = 0, underarm = 25, slashes = 5 }: ShapeSleeve,
): Alteration {
  const piece = pieceNamed(pattern, name);
  const [cap] = edgesOfRole(piece, 'cap');
  if (cap === undefined) throw refusal('no-cap', { piece: { piece: name } }, { piece: name });
  const hem = bottomOf(piece);
  const sewn = pattern.seams.some(({ a, b }) =>
    [...a, ...b].some(run => run.piece === name && run.edge === hem),
  );
  const raise: Part = now => changeCap(now, { piece: name, by: drop, keep: 'width' });
  const longer: Part = now => lengthen(now, { pieces: [name], at: 'hem', by: drop });
  const open: Part = now =>
    spread(now, {
      piece: name,
      from: { edge: hem, ...(into === 'puff' ? { at: gatheredPart } : {}) },
      to: { edge: cap, ...(into === 'puff' ? { at: gatheredPart } : {}) },
      by,
      slashes,
      hinge: into === 'puff' ? 'from' : 'to',
      ...(into === 'puff' || (into === 'bishop' && sewn) ? { into: 'gathers' as const } : {}),
    });
  const short: readonly Part[] =
    into === 'flutter' ? [now => cutShort(now, pieceNamed(now, name), underarm)] : [];
  const heightened = drop > 0 ? [into === 'puff' ? raise : longer] : [];
  const gathers: readonly Part[] = into === 'puff' && drop > 0 ? [now => gathered(now, name, cap)] : [];
  return inSteps(pattern, [...short, ...heightened, open, ...gathers], { what: into, byMm: by });
}

/** A sleeve shortened until the shorter of its underarm edges is so long; as it was where neither is longer. */
function cutShort(pattern: Pattern, piece: Piece, wantedMm: number): Alteration {
  const by = tooLongFor(piece, wantedMm);
  const cut = (mm: number): Alteration => shorten(pattern, { pieces: [piece.name], at: 'hem', by: mm });
  if (by <= 0) return { pattern, did: '', findings: [], became: nothingBecame };
  // The hem is no straight line: what it misses by is cut off too.
  const left = tooLongFor(pieceNamed(cut(by).pattern, piece.name), wantedMm);
  return cut(by + left);
}

/** mm along the grain by which the shorter of a sleeve's underarm edges is longer than wanted; 0 where it has none. */
function tooLongFor(piece: Piece, wantedMm: number): number {
  const { grain } = grainOrVertical(piece);
  const over = edgesOfRole(piece, 'underarm').map(
    edge => (pathLength(edgePath(piece, edge)) - wantedMm) * Math.abs(dot(directionOf(piece, edge), grain)),
  );
  return over.length === 0 ? 0 : Math.min(...over);
}

/** The seam of a puff's cap gathers all that it is longer by, what the cap was raised by among it. */
function gathered(pattern: Pattern, piece: string, cap: string): Alteration {
  const isCap = (run: EdgeRef): boolean => run.piece === piece && run.edge === cap;
  const seam = pattern.seams.find(({ a, b }) => [...a, ...b].some(isCap));
  if (!seam) return { pattern, did: '', findings: [], became: nothingBecame };
  const { differenceMm } = walkSeam(pattern, seam);
  return setSeam(pattern, { seam: seam.name, ease: { mm: differenceMm }, takenUp: 'gathered' });
}
