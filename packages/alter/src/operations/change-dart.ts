import {
  type Dart,
  type Finding,
  line,
  type Pattern,
  type Piece,
  type PieceLine,
  type Pleat,
  type PleatKind,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Redrawn } from '../alteration.js';
import { followed } from '../became/followed.js';
import { type BesideDart, besideDart, replacedRound } from '../darts/beside.js';
import { contourDart, widthOf } from '../darts/contour.js';
import { intakeOf, mouthOf } from '../darts/mouth.js';
import { finding, refusal, saying } from '../darts/tellings.js';
import { dartNamed } from '../hinge/dart-named.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Item, recomposed } from '../moved-edges/composed.js';
import { hemOf } from '../moved-edges/move-hem.js';
import { seamsTakingMore } from '../moved-edges/seams-taking-more.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';
import { closeDart } from './close-dart.js';

const folds = {
  'knife pleat': 'knife',
  'box pleat': 'box',
  'inverted pleat': 'inverted',
  tuck: 'tuck',
} as const;
type Fold = keyof typeof folds;

/** Take up by other means what a dart takes in. */
export interface ChangeDart {
  readonly piece: string;
  readonly dart: string;
  readonly into: 'ease' | 'gathers' | Fold | 'flare';
  /** mm down from the edge that a pleat or tuck is stitched; default 0, laid only. */
  readonly stitched?: number;
}

/**
 * Changes a dart into ease, gathers, a pleat or a tuck; nothing turns and the edge is sewn as long as before. For ease
 * and gathers the edge runs straight across the old mouth, notched at its two ends, and the seam takes so much more
 * ease. A pleat or tuck stands where the mouth was, laid as the dart was pressed. Into flare the dart is closed into
 * the hem, see `close dart`. A double-pointed dart is left unsewn as ease, and can be nothing else. Source: Armstrong,
 * Patternmaking for Fashion Design (1987), dart equivalents [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `dart-within-piece`, `dart-beside-nothing`, `dart-leaves-piece`;
 *   into flare `no-hem`, `several-hems` and those of `close dart`; those of `perform`
 */
export const changeDart = (pattern: Pattern, parameters: ChangeDart): Alteration =>
  performSaid(changeDartVerb, pattern, parameters);

export const changeDartForm = formOf<ChangeDart>()({
  verb: 'change dart',
  does: 'Takes up by ease, gathers, a pleat or a tuck what a dart took in, the edge sewn as long as before; or lets it out as flare at the hem.',
  fields: {
    piece: field.piece(),
    dart: field.dart(),
    into: field.choice('ease', 'gathers', 'knife pleat', 'box pleat', 'inverted pleat', 'tuck', 'flare'),
    stitched: field.usually(field.length(), 0),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Change the {dart} dart of the {piece} into {into}[, stitched down {stitched}]',
  startsAt: { dart: ['piece', 'dart'] },
  example: { pattern: 'darted-dress', step: { piece: 'front', dart: 'under-bust', into: 'gathers' } },
});
export const changeDartVerb = /* @__PURE__ */ verbFrom(changeDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const { into, stitched } = parameters;
    const within = contourDart(piece, parameters.dart);
    if (within && into === 'ease') return leftUnsewn(pattern, piece, within);
    const dart = dartNamed(piece, parameters.dart);
    if (into === 'flare') return closedIntoHem(pattern, piece, dart);
    const beside = besideDart(piece, dart);
    const softened = into === 'ease' || into === 'gathers';
    const done = softened
      ? withMouthBridged(beside, pattern)
      : withFold(beside, pattern, folds[into], stitched);
    const named = { ...where, dart: dart.name };
    requireSimple(done.piece, () => refusal('dart-leaves-piece', { dart: named }, where));
    const { became } = done;
    const altered = followed({ before: pattern, after: withPiece(pattern, done.piece), became });
    const edge = { piece: piece.name, edge: beside.before.edge.name };
    const eased = softened
      ? seamsTakingMore(pattern, altered, edge, into === 'ease' ? 'eased' : 'gathered')
      : { pattern: altered, seams: [] };
    const unsewn: readonly Finding[] =
      softened && eased.seams.length === 0
        ? [finding('warning', 'dart-edges-unsewn', edge, { dart: named, edge })]
        : [];
    return {
      pattern: eased.pattern,
      became,
      did: saying('changed-dart', {
        dart: named,
        into,
        edge: { edge: edge.edge },
        intakeMm: intakeOf(dart),
        seams: eased.seams.map(({ name }) => ({ seam: name })),
      }),
      findings: [...done.findings, ...unsewn],
    };
  });
});

/** Closed into the hem, which flares by as much. */
function closedIntoHem(pattern: Pattern, piece: Piece, { name: dart }: Dart): Redrawn {
  const { derived: _, became, ...done } = closeDart(pattern, { piece: piece.name, dart, into: hemOf(piece) });
  return { ...done, became: became! };
}

/** A double-pointed dart that is not sewn: its line goes. */
function leftUnsewn(pattern: Pattern, piece: Piece, dart: PieceLine): Redrawn {
  const where = { piece: piece.name };
  return {
    pattern: withPiece(pattern, { ...piece, lines: piece.lines.filter(one => one !== dart) }),
    // Nothing was cut away: where it lay there is cloth of the piece.
    became: { edges: [], things: [{ was: { ...where, line: dart.name }, now: where }] },
    did: saying('left-dart-unsewn', {
      dart: { ...where, dart: dart.name },
      intakeMm: widthOf(dart.path),
    }),
    findings: [],
  };
}

/** The edge before the dart runs on straight across its mouth, between two notches. */
function withMouthBridged(beside: BesideDart, pattern: Pattern): Reshaped {
  const { before, after, dart } = beside;
  const [a, b] = mouthOf(dart);
  const across: Item = { type: 'run', edge: before.edge, path: pathOf(line(a, b)) };
  const done = recomposed(pieceNamed(pattern, beside.name), replacedRound(beside, [before, across, after]));
  const span = done.became.edges.find(({ was }) => was === before.was)!.now!;
  const ends = [span.to, span.to + pathLength(across.path)];
  const notches = ends.map(at => ({ edge: before.edge.name, at, style: 'single' as const }));
  return { ...done, piece: { ...done.piece, notches: [...done.piece.notches, ...notches] } };
}

function withFold(beside: BesideDart, pattern: Pattern, kind: PleatKind, stitched: number): Reshaped {
  const { before, after, dart } = beside;
  const pleat: Pleat = {
    type: 'pleat',
    name: dart.name,
    kind,
    mouth: pathOf(line(...mouthOf(dart))),
    towards: laidTowards(dart),
    stitched,
  };
  const done = recomposed(pieceNamed(pattern, beside.name), replacedRound(beside, [before, pleat, after]));
  const was = { piece: beside.name, dart: dart.name },
    now = { piece: beside.name, pleat: dart.name };
  const others = done.became.things.filter(thing => thing.was.dart !== dart.name);
  return { ...done, became: { ...done.became, things: [...others, { was, now }] } };
}

const laidTowards = ({ pressed }: Dart): 'start' | 'end' => (pressed === 'start' ? 'start' : 'end');
