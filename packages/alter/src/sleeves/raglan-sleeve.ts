import {
  type Dart,
  edgePath,
  type Notch,
  type Pattern,
  type Piece,
  pathLength,
  type Seam,
} from '@paperhinge/geometry';
import { tangentAlong } from '@paperhinge/geometry/paths';
import { angleBetween, scale } from '@paperhinge/geometry/plane';
import type { Said } from '../alteration.js';
import { type Became, together } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { carriedNotches } from '../became/parts.js';
import { carriedThings } from '../dividing/carried-things.js';
import { freeName, laidRing } from '../dividing/joined-ring.js';
import { isBack } from '../fit/front-and-back.js';
import { inDegrees } from '../hinge/degrees.js';
import { endingAt, startingAt } from '../hinge/ends.js';
import { composed, type Item, itemsOf, partOfRun, type Run } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { type CutBody, type LaidUppers, laidUppers, raglanEdge } from './raglan.js';
import type { SetIn } from './set-in.js';
import { refusal, saying } from './tellings.js';

/**
 * The pattern with both upper parts on the sleeve, their seams and what became of all.
 * @throws PatternError `cap-too-flat` where they do not meet over the cap, or would lie on one another
 */
export function raglanOf(
  pattern: Pattern,
  sleeve: SetIn,
  uppers: readonly [CutBody, CutBody],
  names: RaglanNames,
): Said {
  const laid = laidUppers(sleeve, uppers);
  const joined = joinedSleeve(sleeve, uppers, laid, names);
  requireSimple(joined.piece, () =>
    refusal('cap-too-flat', { piece: { piece: sleeve.sleeve.name } }, { piece: sleeve.sleeve.name }),
  );
  const became = inTurn(together(uppers[0].became, uppers[1].became), joined.became);
  const kept = uppers.map(upper => marked(pattern, upper, upper.kept, raglanEdge));
  const drawn = uppers.reduce(
    (piece, upper, i) => marked(pattern, upper, piece, names.raglan[i]!),
    joined.piece,
  );
  const now = (piece: Piece): Piece => {
    if (piece === sleeve.sleeve) return drawn;
    const i = sleeve.bodies.findIndex(body => body.piece === piece);
    return kept[i] ?? piece;
  };
  const gone = [sleeve.seam, sleeve.shoulder];
  const seams = uppers.map((upper, i) => raglanSeam(pattern, sleeve, upper, { ...names, i }));
  return {
    pattern: {
      ...pattern,
      pieces: pattern.pieces.map(now),
      seams: [...pattern.seams.filter(seam => !gone.includes(seam)), ...seams],
    },
    became: {
      ...became,
      things: [
        ...became.things,
        // Where the shoulders were sewn there is cloth now, as far as the dart.
        ...sleeve.bodies.map(({ piece, shoulder: edge }) => ({
          was: { piece: piece.name, edge },
          now: { piece: sleeve.sleeve.name },
        })),
        ...gone.map(({ name }) => ({ was: { seam: name } })),
      ],
    },
    did: saying('cut-raglan', {
      piece: { piece: sleeve.sleeve.name },
      bodies: sleeve.bodies.map(({ piece }) => ({ piece: piece.name })),
      seamsMm: uppers.map(({ lineMm, upMm }) => lineMm + upMm),
      dartDeg: inDegrees(joined.angle),
      easeMm: sleeve.capMm - sleeve.bodies.reduce((sum, { armholeMm }) => sum + armholeMm, 0),
      liftMm: laid.liftMm,
    }),
    findings: [],
    notchedAnew: [sleeve.cap, ...sleeve.bodies.map(({ run }) => run)],
  };
}

/** What edges and dart of a raglan sleeve are called. */
export interface RaglanNames {
  /** The two edges of the sleeve along the raglan lines, those left of its cap, in the order of the bodies; its dart. */
  readonly raglan: readonly string[];
  readonly cap: readonly string[];
  readonly dart: string;
  /** The neck over the shoulder is one edge, on either side of the dart. */
  readonly neck: string;
}

/** Names that are free on the sleeve. */
export function raglanNames({ sleeve, cap, bodies, shoulder }: SetIn): RaglanNames {
  const taken = new Set(sleeve.outline.parts.map(part => part.name));
  const of = (what: string) => bodies.map(({ piece }) => freeName(`${what} ${piece.name}`, taken));
  return {
    raglan: of(raglanEdge),
    cap: of(cap.edge),
    dart: freeName(shoulder.name, taken),
    neck: freeName(bodies[0].neck, taken),
  };
}

/** The sleeve with both upper parts in the place of its upper cap. */
function joinedSleeve(
  { sleeve, cap, bodies }: SetIn,
  uppers: readonly [CutBody, CutBody],
  { motions, tip, feet }: LaidUppers,
  names: RaglanNames,
): { readonly piece: Piece; readonly became: Became; readonly angle: number } {
  const items = itemsOf(sleeve);
  const index = items.findIndex(item => item.type === 'run' && item.edge.name === cap.edge);
  const whole = items[index] as Run;
  const called = (run: Run, name: string): Run => ({ ...run, edge: { ...run.edge, name } });
  const order = cap.reversed ? ([1, 0] as const) : ([0, 1] as const);
  const rings = order.map(i =>
    upperRing(uppers[i], motions[i]!, { raglan: names.raglan[i]!, neck: names.neck }),
  );
  const [first, second] = rings as [UpperRing, UpperRing];
  const dart: Dart = {
    type: 'dart',
    name: names.dart,
    legs: [endingAt(first.shoulder.path, tip), startingAt(second.shoulder.path, tip)],
    apex: tip,
  };
  const fresh: readonly Item[] = [
    called(partOfRun(whole, 0, feet[order[0]]), names.cap[order[0]]!),
    first.raglan,
    first.neck,
    dart,
    second.neck,
    second.raglan,
    called(partOfRun(whole, feet[order[1]], Number.POSITIVE_INFINITY), names.cap[order[1]]!),
  ];
  const { parts, spans } = composed(sleeve, [...items.slice(0, index), ...fresh, ...items.slice(index + 1)]);
  let drawn: Piece = { ...sleeve, outline: { parts } };
  const things: Became['things'][number][] = [];
  for (const [i, { off }] of uppers.entries()) {
    const carried = carriedThings(drawn, off, motions[i]!);
    drawn = { ...drawn, lines: carried.lines, marks: carried.marks };
    things.push(...carried.things);
  }
  const gone = uppers.flatMap(({ off, body }) =>
    [body.shoulder, body.run.edge].map(edge => ({
      was: { piece: off.name, edge, from: 0, to: pathLength(edgePath(off, edge)) },
    })),
  );
  const became = { edges: [...spans, ...gone], things };
  const notches = [sleeve, ...bodies.map((_, i) => uppers[i]!.off)].flatMap(piece =>
    carriedNotches(piece, became),
  );
  const [a, b] = dart.legs;
  const angle = angleBetween(scale(tangentAlong(a, pathLength(a)), -1), tangentAlong(b, 0));
  return { piece: { ...drawn, notches }, became, angle: Math.abs(angle) };
}

interface UpperRing {
  readonly raglan: Run;
  readonly neck: Run;
  readonly shoulder: Run;
}

function upperRing(
  { off, body }: CutBody,
  motion: LaidUppers['motions'][number],
  called: { readonly raglan: string; readonly neck: string },
): UpperRing {
  const ring = laidRing(off, body.run.edge, motion) as readonly Run[];
  const named = (edge: string): Run => ring.find(item => item.edge.name === edge)!;
  const raglan = named(raglanEdge);
  const neck = named(body.neck);
  return {
    raglan: { ...raglan, edge: { ...raglan.edge, name: called.raglan, role: 'cap' } },
    neck: { ...neck, edge: { ...neck.edge, name: called.neck } },
    shoulder: named(body.shoulder),
  };
}

/** A piece with a notch in the middle of a raglan line: one in front, two at the back. */
function marked(pattern: Pattern, { body, lineMm }: CutBody, piece: Piece, edge: string): Piece {
  const style = isBack(pattern, body.piece) ? 'double' : 'single';
  const notch: Notch = { edge, at: lineMm / 2, style };
  return { ...piece, notches: [...piece.notches, notch] };
}

/** From the underarm along what is left of cap and armhole, and up the raglan line to the neck. */
function raglanSeam(
  pattern: Pattern,
  { sleeve, cap }: SetIn,
  { body }: CutBody,
  { raglan, cap: caps, i }: RaglanNames & { readonly i: number },
): Seam {
  const taken = new Set(pattern.seams.map(seam => seam.name));
  const onSleeve = { piece: sleeve.name, reversed: cap.reversed !== !body.up };
  const onBody = { piece: body.piece.name, reversed: body.run.reversed !== !body.up };
  return {
    name: freeName(raglan[i]!, taken),
    a: [
      { ...onSleeve, edge: caps[i]! },
      { ...onSleeve, edge: raglan[i]! },
    ],
    b: [
      { ...onBody, edge: body.run.edge },
      { ...onBody, edge: raglanEdge },
    ],
    ease: { mm: 0 },
  };
}
