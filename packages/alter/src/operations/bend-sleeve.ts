import { edgePath, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import { intersectPaths, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { lineRoleOf, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  apply,
  distance,
  dot,
  identity,
  lerp,
  rotation,
  scale,
  subtract,
  unit,
} from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { inDegrees } from '../hinge/degrees.js';
import { dartMouth } from '../hinge/mouth.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import { mostBend } from '../sleeves/elbow.js';
import { endsOfCap } from '../sleeves/ends-of-cap.js';
import { refusal, saying } from '../sleeves/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { spread } from './spread.js';

/** Bend a straight sleeve forward at the elbow. */
export interface BendSleeve {
  readonly piece: string;
  /** mm that open at the back of the elbow. */
  readonly by: number;
  /** What takes up the opening: a dart, or ease between two notches; default a dart. */
  readonly into?: 'dart' | 'ease';
  /** mm from the underarm seam to the dart's point; default 70. */
  readonly depth?: number;
  /** What the dart is called; default `elbow`. */
  readonly name?: string;
}

/**
 * Bends a straight sleeve forward at the elbow, as an arm hangs. On paper: the sleeve is slashed across at the elbow from
 * the underarm seam at the back to that in front, leaving a hinge of paper there, and its lower part swung forward until
 * the slash is open by so much; the opening becomes a dart that points to the elbow, or is eased into the front seam.
 * The elbow is the level line of that role, else half way down. Rigid: both parts; with the dart sewn both underarm seams
 * are as long as they were. Redrawn: nothing; the front seam keeps a bend at the hinge, for `true`. Source: common
 * practice, no source.
 *
 * @throws PatternError `no-cap`, `cap-not-sewn`, `bend-too-far`, `elbow-dart-too-deep`, `edge-name-taken`; those of the slash, of `spread` where
 *   it is eased, and of `perform`
 */
export const bendSleeve = (pattern: Pattern, parameters: BendSleeve): Alteration =>
  perform(bendSleeveVerb, pattern, parameters);

export const bendSleeveForm = formOf<BendSleeve>()({
  verb: 'bend sleeve',
  does: 'Bends a straight sleeve forward at the elbow: slashed across there, hinged in front, opened at the back into an elbow dart or ease.',
  fields: {
    piece: field.piece(),
    by: field.size(),
    into: field.usually(field.choice('dart', 'ease'), 'dart'),
    depth: field.usually(field.size(), 70),
    name: field.usually(field.newName(), 'elbow'),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Bend the {piece} at the elbow, open by {by} at the back[, taken up in {into}][, {depth} deep][, called {name}]',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'sleeve', by: '25 mm' } },
});
export const bendSleeveVerb = /* @__PURE__ */ verbFrom(bendSleeveForm, (pattern, wish) => {
  const piece = pieceNamed(pattern, wish.piece);
  const places = elbowOf(pattern, piece);
  if (wish.into === 'ease') {
    const [from, to] = [places.back, places.front].map(({ edge, along }) => ({ edge, at: { mm: along } }));
    return spread(pattern, { piece: piece.name, from: from!, to: to!, by: wish.by, into: 'ease' });
  }
  return locating({ piece: piece.name }, () => withElbowDart(pattern, piece, places, wish));
});

interface Place {
  readonly edge: string;
  readonly along: number;
}
interface Elbow {
  readonly cap: string;
  readonly back: Place;
  readonly front: Place;
}

/** Where the elbow lies on both underarm seams: at its level line, else in the middle of each. */
function elbowOf(pattern: Pattern, piece: Piece): Elbow {
  const ends = endsOfCap(pattern, piece);
  const level = piece.lines.find(line => line.kind === 'level' && lineRoleOf(line) === 'elbow');
  const on = (edge: string): Place => {
    const path = edgePath(piece, edge);
    const met = level && intersectPaths(level.path, path)[0];
    return { edge, along: met?.alongB ?? pathLength(path) / 2 };
  };
  return { cap: ends.cap, back: on(ends.back), front: on(ends.front) };
}

function withElbowDart(
  pattern: Pattern,
  piece: Piece,
  { cap, back, front }: Elbow,
  { by, depth, name }: { readonly by: number; readonly depth: number; readonly name: string },
): Alteration {
  requireFreeEdgeName(piece, name);
  const outer = pointAlong(edgePath(piece, back.edge), back.along),
    hinge = pointAlong(edgePath(piece, front.edge), front.along);
  const reach = distance(outer, hinge);
  const mostMm = 2 * reach * Math.sin(mostBend / 2);
  const where = { piece: piece.name };
  if (by > mostMm) throw refusal('bend-too-far', { piece: where, byMm: by, mostMm }, where);
  if (depth >= reach)
    throw refusal('elbow-dart-too-deep', { piece: where, depthMm: depth, mostMm: reach }, where);
  const angle = 2 * Math.asin(by / (2 * reach));
  // Away from the cap, so that the slash opens and does not close.
  const top = pathStart(edgePath(piece, cap));
  const turn =
    dot(subtract(apply(rotation(angle, hinge), outer), outer), subtract(top, outer)) < 0 ? angle : -angle;
  const lower = rotation(turn, hinge);
  const cutPiece = cutApart(piece, [{ from: back, to: front }]);
  const holding =
    cutPiece.sectionOf[cutPiece.stretches.findIndex(s => s.type === 'edge' && s.edge.name === cap)]!;
  const mouth = lerp(outer, apply(lower, outer), 1 / 2);
  const apex = add(mouth, scale(unit(subtract(hinge, mouth)), depth));
  const swung = swing(
    cutPiece,
    cutPiece.sections.map((_, i): Affine => (i === holding ? identity : lower)),
    holding,
    { mouths: [dartMouth({ cut: 0, end: 'from', name, apex })] },
  );
  return {
    pattern: withPiece(pattern, swung.piece),
    became: swung.became,
    did: saying('bent-sleeve', {
      piece: where,
      byMm: by,
      bendDeg: inDegrees(angle),
      dart: { piece: piece.name, dart: name },
      depthMm: depth,
    }),
    findings: openingFindings(piece.name, swung),
  };
}
