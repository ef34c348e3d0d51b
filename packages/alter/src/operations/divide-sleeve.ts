import { edgePath, type Pattern, pathLength, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, resolvePosition } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { requireFreePieceName, requireFreeSeamName } from '../dividing/names-free.js';
import { inSteps, type Part } from '../fit/adjust/in-steps.js';
import { bottomOf } from '../fit/adjust/landmarks.js';
import { seamNamed, sideLength } from '../moved-edges/seam-place.js';
import { mostBend } from '../sleeves/elbow.js';
import { endsOfCap } from '../sleeves/ends-of-cap.js';
import { refusal, saying } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { addNotches } from './add-notches.js';
import { divide } from './divide.js';
import { joinPieces } from './join-pieces.js';
import { setSeam } from './set-seam.js';
import { spread } from './spread.js';

/** Divide a sleeve in one piece into an upper and an under sleeve. */
export interface DivideSleeve {
  readonly piece: string;
  /** What the under sleeve is called. */
  readonly name: string;
  /** mm from the underarm seam to the fore-arm seam: the same all the way, or at the cap and at the hem. */
  readonly front: number | readonly [number, number];
  /** The same for the hind-arm seam. */
  readonly back: number | readonly [number, number];
  /** mm that the upper sleeve opens at the elbow of the hind-arm seam, bent forward about the fore-arm seam; default 0. */
  readonly bend?: number;
}

/**
 * Makes a two-piece sleeve of a sleeve in one piece. On paper: the fore-arm and the hind-arm seam are drawn from the
 * cap down to the hem, so far from the underarm seam in front and at the back; both strips beyond them are cut off,
 * laid edge to edge along the underarm seam, and are the under sleeve. If asked, both sleeves are then slashed across
 * at the elbow from the hind-arm seam, hinged at the fore-arm seam, and opened by one angle, so that the sleeve hangs
 * forward; what the upper one is longer by at the hind-arm seam is eased in there. Rigid: the upper sleeve and both
 * strips, or their halves above and below the elbow. Unbent, both new seams are of equal lengths, since each was one
 * line. They are notched at the elbow: one in front, two at the back. Source: Aldrich, Metric Pattern Cutting (1976),
 * the two-piece sleeve [memory].
 *
 * @throws PatternError `no-cap`, `cap-not-sewn`, `underarm-not-sewn`, `strips-too-wide`, `bend-too-far`,
 *   `piece-name-taken`, `seam-name-taken`; what `divide`, `join pieces` (a bent underarm does not lie flat) and
 *   `spread` refuse; those of `perform`
 */
export const divideSleeve = (pattern: Pattern, parameters: DivideSleeve): Alteration =>
  perform(divideSleeveVerb, pattern, parameters);

export const divideSleeveForm = formOf<DivideSleeve>()({
  verb: 'divide sleeve',
  does: 'Makes a two-piece sleeve: an upper and an under sleeve, with a fore-arm and a hind-arm seam instead of the underarm seam, bent at the elbow if asked.',
  fields: {
    piece: field.piece(),
    name: field.newName(),
    front: field.lengths(),
    back: field.lengths(),
    bend: field.usually(field.length(), 0),
  },
  leaves: ({ piece, name }) => ({ pieces: [name], changed: [piece], seams: 'unknown' }),
  sentence:
    'Divide the {piece} into an upper and an under sleeve, the {name}, with the fore-arm seam {front} and the hind-arm seam {back} from the underarm[, open by {bend} at the elbow]',
  startsAt: { piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: {
      piece: 'sleeve',
      name: 'under sleeve',
      front: '25 mm',
      back: ['75 mm', '60 mm'],
      bend: '18 mm',
    },
  },
});
export const divideSleeveVerb = /* @__PURE__ */ verbFrom(divideSleeveForm, dividedSleeve);

/** What the two seams are called, and their edges. */
export const foreArm = 'fore-arm';
export const hindArm = 'hind-arm';

function dividedSleeve(
  pattern: Pattern,
  { piece: name, name: under, front, back, bend = 0 }: DivideSleeve,
): Alteration {
  const piece = pieceNamed(pattern, name);
  const ends = endsOfCap(pattern, piece);
  requireFreePieceName(pattern, under);
  for (const seam of [foreArm, hindArm]) requireFreeSeamName(pattern, seam);
  const underarm = underarmSeam(pattern, name, [ends.front, ends.back]);
  // Of two pieces that are joined the first of their seam keeps its name.
  const frontIsFirst = underarm.a[0]!.edge === ends.front;
  const strips = frontIsFirst ? ([under, `${under} 2`] as const) : ([`${under} 2`, under] as const);
  const pairs = [front, back].map(one => (typeof one === 'number' ? ([one, one] as const) : one));
  requireRoom(pattern, name, pairs);
  const cutOff =
    (strip: string, [atCap, atHem]: readonly [number, number], seam: string, edge: string): Part =>
    now =>
      divide(now, {
        piece: name,
        name: strip,
        from: { edge: ends.cap, at: { mm: atCap, from: edge } },
        to: { edge: bottomOf(pieceNamed(now, name)), at: { mm: atHem, from: edge } },
        seam,
      });
  const marked =
    (seam: string, style: 'single' | 'double'): Part =>
    now =>
      addNotches(now, { seam, at: { share: 0.5 }, style });
  const done = inSteps(
    pattern,
    [
      cutOff(strips[0], pairs[0]!, foreArm, ends.front),
      cutOff(strips[1], pairs[1]!, hindArm, ends.back),
      now => joinPieces(now, { seam: underarm.name }),
      ...(bend > 0 ? bentAtElbow([name, under], bend) : []),
      marked(foreArm, 'single'),
      marked(hindArm, 'double'),
    ],
    { what: '', byMm: 0 },
  );
  const long = (seam: string): number => sideLength(done.pattern, seamNamed(done.pattern, seam).b);
  const { ease } = seamNamed(done.pattern, hindArm);
  return {
    ...done,
    did: saying('divided-sleeve', {
      piece: { piece: name },
      under: { piece: under },
      foreArmMm: long(foreArm),
      hindArmMm: long(hindArm),
      easeMm: 'mm' in ease ? ease.mm : 0,
    }),
  };
}

/**
 * Both sleeves bent by one angle about the fore-arm seam, so that their edges there go on as one; the upper one, which is
 * wider, opens further, and what its hind-arm seam is longer by is eased in at the elbow.
 */
function bentAtElbow([upper, under]: readonly [string, string], bend: number): readonly Part[] {
  const placesOn = (pattern: Pattern, name: string) => {
    const piece = pieceNamed(pattern, name);
    // As far up from the hem on both, so that the slash runs level.
    const at = { mm: pathLength(edgePath(piece, foreArm)) / 2, from: bottomOf(piece) };
    const [from, to] = [hindArm, foreArm].map(edge =>
      pointAlong(edgePath(piece, edge), resolvePosition(piece, edge, at)),
    );
    return { at, reach: distance(from!, to!) };
  };
  const turned =
    (name: string): Part =>
    now => {
      const { at, reach } = placesOn(now, upper);
      const where = { piece: name };
      const mostMm = 2 * reach * Math.sin(mostBend / 2);
      if (bend > mostMm) throw refusal('bend-too-far', { piece: where, byMm: bend, mostMm }, where);
      const places = name === upper ? at : placesOn(now, name).at;
      const angle = 2 * Math.asin(bend / (2 * reach));
      return spread(now, {
        piece: name,
        from: { edge: hindArm, at: places },
        to: { edge: foreArm, at: places },
        angle,
      });
    };
  const eased: Part = now => {
    const { differenceMm } = walkSeam(now, seamNamed(now, hindArm));
    return setSeam(now, { seam: hindArm, ease: { mm: differenceMm }, takenUp: 'eased' });
  };
  // The under sleeve first: the angle is measured on the upper one while it is straight.
  return [turned(under), turned(upper), eased];
}

function underarmSeam(pattern: Pattern, piece: string, edges: readonly string[]) {
  const found = pattern.seams.find(
    ({ a, b }) =>
      a.length === 1 &&
      b.length === 1 &&
      [...a, ...b].every(run => run.piece === piece && edges.includes(run.edge)),
  );
  if (found) return found;
  throw refusal(
    'underarm-not-sewn',
    { first: { piece, edge: edges[0]! }, second: { piece, edge: edges[1]! } },
    { piece },
  );
}

/** Both strips together leave some of cap and hem for the upper sleeve. */
function requireRoom(pattern: Pattern, name: string, pairs: readonly (readonly [number, number])[]): void {
  const piece = pieceNamed(pattern, name);
  const [cap] = edgesOfRole(piece, 'cap');
  for (const [i, edge] of [cap!, bottomOf(piece)].entries()) {
    const roomMm = pathLength(edgePath(piece, edge));
    const takenMm = pairs.reduce((sum, pair) => sum + pair[i]!, 0);
    const where = { piece: name, edge };
    if (takenMm >= roomMm) throw refusal('strips-too-wide', { edge: where, takenMm, roomMm }, where);
  }
}
