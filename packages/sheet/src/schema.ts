import type { LengthUnit, SheetPiece } from '@paperhinge/geometry';
import { z } from 'zod';
import * as field from './fields.js';
import { largestBody, mostSteps, smallestBody } from './limits.js';
import { oncePerUnit } from './once-per-unit.js';
import { printFields, usualPrint } from './print-wishes.js';
import { type MeasurementName, measurementNames } from './wearer-names.js';

const { code, mapping } = field;
export const lengthUnits = ['mm', 'cm', 'in'] as const satisfies readonly LengthUnit[];
/** Every field of a sheet but what its steps hold, which is read verb by verb. */
export const sheetSchema = oncePerUnit(unit => {
  const body = field.length(unit, { least: smallestBody, most: largestBody }).exactOptional();
  return mapping({
    pattern: field.filePath,
    title: field.name.exactOptional(),
    unit: z.enum(lengthUnits).default('mm'),
    wearer: mapping(
      Object.fromEntries(measurementNames.map(n => [n, body])) as Record<MeasurementName, typeof body>,
    ).default({}),
    fabrics: field.named(fabric(unit)).default({}),
    pieces: field.named(foreignPiece(unit)).default({}),
    opening: field.named(field.size(unit)).default({}),
    steps: z
      .array(z.unknown(), { error: code('list-expected') })
      .max(mostSteps, { error: code('too-many-steps') })
      .nullable()
      .transform(steps => steps ?? [])
      .default([]),
    print: printFields(unit).default({ ...usualPrint }),
  });
});

function fabric(unit: LengthUnit) {
  const percent = field.percent(0, 300).transform(inPerCent);
  const bothWays = mapping({ across: percent, along: percent.exactOptional() });
  return mapping({
    width: field.size(unit).exactOptional(),
    stretch: field
      .byForm(
        value => typeof value === 'object',
        bothWays,
        percent.transform(across => ({ across })),
        {
          anyOf: [
            { type: 'string', description: '40 %' },
            {
              type: 'object',
              properties: { across: { type: 'string' }, along: { type: 'string' } },
              required: ['across'],
              additionalProperties: false,
            },
          ],
        },
      )
      .exactOptional(),
    recovery: field.percent(0, 100).transform(inPerCent).exactOptional(),
    nap: field.yesOrNo.exactOptional(),
    repeat: field.length(unit).exactOptional(),
    role: z.enum(['main', 'contrast', 'lining', 'interfacing', 'stabiliser']).exactOptional(),
  });
}

/** Fabrics are kept in per cent; rounded, since 7 % read as 0.07 comes back an ulp off. */
const inPerCent = (share: number) => Number((share * 100).toPrecision(12));

/** How a foreign drawing is read as this piece: design §4, "Other forms of piece". */
function foreignPiece(unit: LengthUnit) {
  return mapping({
    outline: field.name,
    edges: field.names.exactOptional(),
    kinds: field.named(z.enum(['seam', 'hem', 'fold', 'raw'])).exactOptional(),
    allowance: field.allowance(unit).exactOptional(),
    title: field.name.exactOptional(),
    fabric: field.name.exactOptional(),
    cut: field.count.exactOptional(),
    mirrored: field.yesOrNo.exactOptional(),
    'line drawn': z.enum(['stitching', 'cutting']).exactOptional(),
    'included allowance': field.allowance(unit).exactOptional(),
  }).transform(
    ({ 'line drawn': lineDrawn, 'included allowance': includedAllowance, ...rest }): SheetPiece => ({
      ...rest,
      ...(lineDrawn === undefined ? {} : { lineDrawn }),
      ...(includedAllowance === undefined ? {} : { includedAllowance }),
    }),
  );
}
