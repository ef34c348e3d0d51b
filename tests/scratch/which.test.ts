// @ts-nocheck
// Random sequences of all verbs on random pieces: whatever is asked, the pattern stays sound, nothing is lost without a
// word, and what cannot be done is refused with a remedy and leaves the pattern as it was. 300 sequences; more with
// PAPERHINGE_SEQUENCES=10000.
import { readFileSync } from 'node:fs';
import { type Alteration, type AnyVerb, follow, perform, verbs } from '@paperhinge/alter';
import type { Field, Fields } from '@paperhinge/alter/verb';
import {
  edgeNames,
  type Notch,
  type Pattern,
  PatternError,
  type Piece,
  readPattern,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { dartsOf, pleatsOf } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyBodice, patternOf } from '../alter/hinge/pieces.js';
import { told, toldDid, toldFinding } from '../support/told.js';

const sequences = Number(process.env.PAPERHINGE_SEQUENCES ?? 300);

const demo = (name: string): Pattern =>
  readPattern(readFileSync(new URL(`../../demos/patterns/${name}.svg`, import.meta.url)), { file: name })
    .pattern;
const demos = ['darted-dress', 'woven-shift', 'yoke-skirt', 'trousers', 'shirt', 'smock'].map(demo);
const anyPattern: fc.Arbitrary<Pattern> = fc.oneof(
  fc.constantFrom(...demos),
  anyBodice.map(piece => patternOf(piece)),
);

/** A step before the pattern it is done to is known: which verb, and what each of its choices is decided by. */
const anyStep = fc.record({
  verb: fc.nat({ max: verbs.length - 1 }).map(i => verbs[i]!.verb),
  draws: fc.array(fc.nat({ max: 999 }), { minLength: 48, maxLength: 48 }),
});

/** Draws one after the other, the last again and again. */
function drawer(draws: readonly number[]) {
  let i = 0;
  const next = (): number => draws[Math.min(i++, draws.length - 1)]! / 1000;
  return { next, pick: <T>(list: readonly T[]): T | undefined => list[Math.floor(next() * list.length)] };
}
type Drawer = ReturnType<typeof drawer>;

/** Parameters of a verb that the pattern could have; nothing where it lacks a thing that the verb needs. */
function parametersFor(pattern: Pattern, verb: AnyVerb, draw: Drawer): Record<string, unknown> {
  const chosen = (verb.oneOf ?? []).map(list => draw.pick(list)!);
  const excluded = (verb.oneOf ?? []).flat().filter(name => !chosen.includes(name));
  const given = fieldsFor(pattern, verb.fields, draw, {}, name =>
    chosen.includes(name) ? true : excluded.includes(name) ? false : undefined,
  );
  const lacking = verb.lacks?.(given as never);
  if (lacking !== undefined && given[lacking] === undefined)
    given[lacking] = valueFor(pattern, verb.fields[lacking]!, given, draw);
  return given;
}

function fieldsFor(
  pattern: Pattern,
  fields: Fields,
  draw: Drawer,
  outer: Record<string, unknown>,
  wanted: (name: string) => boolean | undefined = () => undefined,
): Record<string, unknown> {
  const given: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields)) {
    const isGiven = wanted(name) ?? (field.giving === 'needed' || draw.next() < 0.4);
    if (!isGiven) continue;
    const value = valueFor(pattern, field, { ...outer, ...given }, draw);
    if (value !== undefined) given[name] = value;
  }
  return given;
}

function valueFor(pattern: Pattern, field: Field, so: Record<string, unknown>, draw: Drawer): unknown {
  const piece = (): Piece =>
    pattern.pieces.find(p => p.name === so[field.of ?? 'piece']) ?? draw.pick(pattern.pieces)!;
  const anyEdge = () => {
    const owner = draw.pick(pattern.pieces)!;
    return { piece: owner.name, edge: draw.pick(edgeNames(owner))! };
  };
  const { least = 0, most = 1 } = field;
  const place = () => (draw.next() < 0.7 ? { share: draw.next() } : { mm: draw.next() * 300 });
  const named = (list: readonly { readonly name: string }[]) => draw.pick(list)?.name;
  switch (field.kind) {
    case 'piece':
      return named(pattern.pieces);
    case 'pieces':
      return [named(pattern.pieces)];
    case 'edge':
      return draw.pick(edgeNames(piece()));
    case 'edge-of-piece':
      return anyEdge();
    case 'edges-of-pieces':
      return field.words && draw.next() < 0.3
        ? field.words[0]
        : [anyEdge(), anyEdge()].slice(0, draw.next() < 0.6 ? 1 : 2);
    case 'dart':
      return named(dartsOf(piece()));
    case 'pleat':
      return named(pleatsOf(piece()));
    case 'line':
      return field.words && draw.next() < 0.5 ? field.words[0] : named(piece().lines);
    case 'mark':
      return named(piece().marks.filter(m => m.kind === 'point'));
    case 'notch':
      return undefined;
    case 'seam':
      return named(pattern.seams);
    case 'place':
      return place();
    case 'places':
      return draw.next() < 0.5 ? place() : [place(), place()];
    case 'range':
      return [place(), place()];
    case 'length': {
      // Mostly what a maker would ask for, now and then far too much.
      const size = Math.round(draw.next() ** 2 * (draw.next() < 0.9 ? 800 : 9000)) / 10;
      return Math.min(Math.max(least < 0 && draw.next() < 0.4 ? -size : size, least), most) || 5;
    }
    case 'lengths':
      return draw.next() < 0.5
        ? Math.round(draw.next() * 40)
        : [Math.round(draw.next() * 40), Math.round(draw.next() * 40)];
    case 'ease':
      return { mm: (draw.next() - 0.5) * 40 };
    case 'angle':
      return (draw.next() - 0.3) * 0.5;
    case 'share':
      return Math.max(least, Math.min(most, least + draw.next() * Math.min(most - least, 1.5))) || 0.5;
    case 'count':
      return 1 + Math.floor(draw.next() * Math.min(4, most));
    case 'choice':
      return draw.pick(field.words!);
    case 'yes-or-no':
      return draw.next() < 0.5;
    case 'cloth':
      return pattern.fabrics[0]?.name ?? 'main';
    case 'new-name':
      return `new ${Math.floor(draw.next() * 1000)}`;
    case 'group':
      return fieldsFor(pattern, field.fields!, draw, so);
    default:
      return 'text';
  }
}

/** What validation refuses, the step itself should have. */
const validated = [
  'open-outline',
  'outline-open',
  'self-crossing',
  'outline-anticlockwise',
  'outline-without-area',
  'duplicate-edge',
  'duplicate-piece',
  'duplicate-seam',
  'edge-in-parts',
  'edge-without-length',
  'notch-off-edge',
  'dart-legs-differ',
  'empty-seam',
];

const none = /NaN|undefined|Infinity|\[object/;

import { edgePath, pathLength, pieceNamed } from '@paperhinge/geometry';
import { segmentLength, tangentAt } from '@paperhinge/geometry/curves';
import { edgeTruing } from '@paperhinge/geometry/measure';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { sharpCorners } from '../../packages/alter/src/became/sharp-corners.js';

const turnAt = (piece, { edge, at }) => {
  let along = 0;
  for (const part of partsOfEdge(piece, edge)) {
    const l = part.path.segments;
    for (let i = 0; i < l.length; i++) {
      along += segmentLength(l[i]);
      if (Math.abs(along - at) < 0.2) {
        const n = l[i + 1];
        if (!n) return 'END';
        const a = tangentAt(l[i], 1),
          b = tangentAt(n, 0);
        return ((Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y) * 180) / Math.PI).toFixed(0);
      }
    }
  }
  return '?';
};
test('which', () => {
  const per = new Map();
  fc.assert(
    fc.property(anyPattern, anyStep, (start, { verb: name, draws }) => {
      const verb = verbs.find(v => v.verb === name)!;
      const parameters = parametersFor(start, verb, drawer(draws));
      try {
        const step = perform(verb, start, parameters);
        const rec = per.get(name) ?? { n: 0, marks: 0, ex: [] };
        per.set(name, rec);
        rec.n++;
        const left = (step.pattern.leftToTrue ?? []).map(l => {
          const t = turnAt(pieceNamed(step.pattern, l.piece), l);
          return { ...l, t };
        });
        const inner = left.filter(l => l.t !== 'END');
        rec.marks += inner.length;
        rec.ends = (rec.ends ?? 0) + left.length - inner.length;
        if (left.length && rec.ex.length < 4)
          rec.ex.push(
            start.name +
              ' ' +
              JSON.stringify(parameters) +
              ' => ' +
              left.map(l => `${l.piece}.${l.edge}@${l.at.toFixed(0)}:${l.t}`).join(' '),
          );
      } catch (e) {
        if (!(e instanceof PatternError)) throw e;
      }
    }),
    { numRuns: +(process.env.N ?? 3000) },
  );
  console.log(
    [...per]
      .sort()
      .map(
        ([n, r]) =>
          `${n}: ${r.n} done, ${r.marks} inner, ${r.ends} ends\n` + r.ex.map(e => '    ' + e).join('\n'),
      )
      .join('\n'),
  );
});
