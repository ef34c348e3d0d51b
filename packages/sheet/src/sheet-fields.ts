import type { FabricRole, LengthUnit, SheetPiece } from '@paperhinge/geometry';
import type { Tree } from './document.js';
import type { Kind } from './fields/kind.js';
import { byForm, mapping, named, needed, oneOrMore, optional, turnedInto, usually } from './fields/shapes.js';
import {
  allowance,
  choice,
  count,
  filePath,
  length,
  name,
  perCent,
  percent,
  size,
  yesOrNo,
} from './fields/values.js';
import { largestBody, mostCopies, smallestBody } from './limits.js';
import { printKind, usualPrint } from './print-wishes.js';
import { measurementNames } from './wearer-names.js';
import { languages } from './words/languages.js';

export const lengthUnits = ['mm', 'cm', 'in'] as const satisfies readonly LengthUnit[];

/** Kept in per cent, as fabrics have them. */
const inPerCent = (most: number): Kind<number> => turnedInto(percent(0, most), perCent);

const isMapping = (tree: Tree): boolean => tree.kind === 'mapping';
const stretch = byForm(
  isMapping,
  mapping({ across: needed(inPerCent(300)), along: optional(inPerCent(300)) }),
  turnedInto(inPerCent(300), across => ({ across })),
);

const fabricRoles = [
  'main',
  'contrast',
  'lining',
  'interfacing',
  'stabiliser',
] as const satisfies readonly FabricRole[];
const fabric = mapping({
  width: optional(size),
  stretch: optional(stretch),
  recovery: optional(inPerCent(100)),
  nap: optional(yesOrNo),
  repeat: optional(length()),
  role: optional(choice(fabricRoles)),
});

/** How a foreign drawing is read as this piece: design §4, "Other forms of piece". */
const foreignPiece: Kind<SheetPiece> = turnedInto(
  mapping({
    outline: needed(name),
    edges: optional(oneOrMore(name)),
    kinds: optional(named(choice(['seam', 'hem', 'fold', 'raw']))),
    allowance: optional(allowance),
    title: optional(name),
    fabric: optional(name),
    cut: optional(count(mostCopies)),
    mirrored: optional(yesOrNo),
    'line drawn': optional(choice(['stitching', 'cutting'])),
    'included allowance': optional(allowance),
  }),
  ({ 'line drawn': lineDrawn, 'included allowance': includedAllowance, ...rest }): SheetPiece => ({
    ...rest,
    ...(lineDrawn === undefined ? {} : { lineDrawn }),
    ...(includedAllowance === undefined ? {} : { includedAllowance }),
  }),
);

const body = optional(length({ least: smallestBody, most: largestBody }));
const wearer = mapping(Object.fromEntries(measurementNames.map(n => [n, body])));

/** Steps are read verb by verb; here it only matters that they are a list. */
const anything: Kind<Tree> = { schema: {}, read: tree => tree, mayBeEmpty: true };

/** Every field of a sheet but what its steps hold. */
export const sheetKind = mapping({
  pattern: needed(filePath),
  title: optional(name),
  unit: usually(choice(lengthUnits), 'mm'),
  language: usually(choice(languages), 'en'),
  wearer: usually(wearer, {}),
  fabrics: usually(named(fabric), {}),
  pieces: usually(named(foreignPiece), {}),
  opening: usually(named(size), {}),
  steps: optional(anything),
  print: usually(printKind, usualPrint),
});
