import { z } from 'zod';
import * as field from './fields.js';
import { oncePerUnit } from './once-per-unit.js';

const { code, mapping, tell } = field;

/**
 * The verbs of a sheet and the fields of each, as design §5 names them. Each schema reads a step's fields into the
 * parameters of the operation, lengths in mm, shares from 0 to 1, angles in rad. Bare numbers are in `unit`.
 */
export const verbSchemas = oncePerUnit(unit => {
  const length = field.length(unit),
    size = field.size(unit),
    position = field.position(unit);
  const { name, names, edgeRef, edgeRefs } = field;
  const fabric = name.exactOptional();
  const share = field.percent(0, 100);

  const amount = (otherVerb: string) =>
    field.length(unit, { remedy: `Give 0 or more, or use "${otherVerb}".` });
  const shortened = (otherVerb: string) => mapping({ pieces: names, at: name, by: amount(otherVerb) });
  const seam = (otherVerb: string) =>
    mapping({
      seam: name,
      by: amount(otherVerb),
      from: position.exactOptional(),
      to: position.exactOptional(),
    });
  const piece = mapping({ piece: name });
  const onEdge = mapping({ name, along: edgeRefs, width: size, join: length.default(0), fabric });
  const range = z.tuple([position, position], { error: code('position-not-understood') });
  const place = { type: ['string', 'number'] };
  const spreadEnd = mapping({
    edge: name,
    at: field
      .byForm(Array.isArray, range, position, {
        anyOf: [place, { type: 'array', items: place, minItems: 2, maxItems: 2 }],
        description: 'One place (one slash), or a range [a, b] (several).',
      })
      .exactOptional(),
  });

  return {
    shorten: shortened('lengthen'),
    lengthen: shortened('shorten'),
    'close dart': mapping({
      piece: name,
      dart: name,
      into: name,
      at: position.exactOptional(),
      share: share.default(1),
    }),
    'move dart': mapping({
      piece: name,
      dart: name,
      to: mapping({ edge: name, at: position.exactOptional() }),
      pivot: name.exactOptional(),
      'point back': length.default(0),
    }).transform(({ 'point back': pointBack, ...rest }) => ({ ...rest, pointBack })),
    spread: mapping({
      piece: name,
      from: spreadEnd,
      to: spreadEnd,
      by: field.signedLength(unit).exactOptional(),
      angle: field.angle.exactOptional(),
      hinge: z.enum(['from', 'to', 'none']).default('to'),
      slashes: field.count.default(1),
    }).transform(({ by, angle, ...rest }, context) => {
      if (by !== undefined && angle !== undefined)
        return tell(context, 'fields-conflict', {
          what: 'has both "by" and "angle"',
          remedy: 'Keep one of the two.',
        });
      if (by !== undefined) return { ...rest, by };
      if (angle !== undefined) return { ...rest, angle };
      return tell(context, 'missing-field', {
        what: 'says not how far',
        remedy: 'Add "by" (a length) or "angle".',
      });
    }),
    'take in': seam('let out'),
    'let out': seam('take in'),
    'recut neckline': mapping({
      piece: name,
      shape: z.enum(['inset V', 'V', 'round', 'square', 'drawn']),
      depth: length.exactOptional(),
      'half width': size.exactOptional(),
      line: name.exactOptional(),
    }).transform(({ 'half width': halfWidth, ...rest }, context) => {
      const { shape, depth, line } = rest;
      const needs = (missing: string) =>
        tell(context, 'missing-field', {
          what: `lacks "${missing}"`,
          remedy: `Add "${missing}", which the shape ${shape} needs.`,
        });
      if (shape === 'drawn' && line === undefined) return needs('line');
      if (shape !== 'drawn' && depth === undefined) return needs('depth');
      if (shape === 'inset V' && halfWidth === undefined) return needs('half width');
      return { ...rest, ...(halfWidth === undefined ? {} : { halfWidth }) };
    }),
    'set allowance': mapping({
      edges: field.byForm(
        value => typeof value === 'string' && !value.includes('.'),
        z.enum(['all seams', 'all hems']),
        edgeRefs,
        {
          anyOf: [
            { type: 'string', description: 'all seams, all hems, or PIECE.EDGE.' },
            { type: 'array', items: { type: 'string' }, minItems: 1 },
          ],
        },
      ),
      to: field.allowance(unit),
    }),
    true: mapping({ edges: edgeRefs, within: length.default(usualTruing) }),
    unfold: piece,
    'remove piece': piece,
    'draft band': mapping({
      name,
      along: edgeRefs,
      gap: edgeRef.exactOptional(),
      ratio: field.percent(0, 200, true),
      width: size,
      join: length.default(0),
      'stretched part': z.enum(['whole', 'sewn']).default('whole'),
      fabric,
    }).transform(({ 'stretched part': stretchedPart, ...rest }) => ({ ...rest, stretchedPart })),
    'draft strip': onEdge,
    'draft binding': onEdge,
    'draft facing': onEdge,
    'draft stay': onEdge,
  };
});

/** mm. Design §5, `true`. */
const usualTruing = 2;

/** A trade verb that a step of a sheet begins with. */
export type Verb = keyof ReturnType<typeof verbSchemas>;
export const verbs = Object.keys(verbSchemas('mm')) as Verb[];
/** What each verb's operation is given. */
export type ParametersOf<V extends Verb> = z.output<ReturnType<typeof verbSchemas>[V]>;
