import { fabricRoles, lengthUnits } from '@paperhinge/geometry/pattern';
import type { Tree } from './document.js';
import { length, perCent, percent, size } from './fields/figures.js';
import { type Kind, tell } from './fields/kind.js';
import { choice, filePath, name, yesOrNo } from './fields/names.js';
import { byForm, mapping, named, needed, optional, turnedInto, usually } from './fields/shapes.js';
import { numberOrText, written } from './fields/written.js';
import { largestBody, largestTolerance, smallestBody } from './limits.js';
import { pieceKind } from './piece-fields.js';
import { printKind, usualPrint } from './print-wishes.js';
import { fasteningKind, seamKind } from './seam-fields.js';
import { scaleKind, sizeKind } from './size-fields.js';
import { measurementNames } from './wearer-names.js';
import { languages } from './words/languages.js';

/** Kept in per cent, as fabrics have them. */
const inPerCent = (most: number): Kind<number> => turnedInto(percent(0, most), perCent);

const isMapping = (tree: Tree): boolean => tree.kind === 'mapping';
const stretch = byForm(
  isMapping,
  mapping({ across: needed(inPerCent(300)), along: optional(inPerCent(300)) }),
  turnedInto(inPerCent(300), across => ({ across })),
);

const fabric = mapping({
  width: optional(size),
  stretch: optional(stretch),
  recovery: optional(inPerCent(100)),
  nap: optional(yesOrNo),
  repeat: optional(length()),
  role: optional(choice(fabricRoles)),
});

const body = optional(length({ least: smallestBody, most: largestBody }));
const figures = {
  ...Object.fromEntries(measurementNames.map(n => [n, body] as const)),
  unit: optional(choice(lengthUnits)),
};

/** A figure or a sum of some; worked out before all else, so that here only its form matters. */
const keptFigure: Kind<string | number> = {
  schema: {
    ...numberOrText,
    description: 'A figure, or a sum of figures and names: 210, 3/8 in, 80 %, hem drop / 2 + 1 cm.',
  },
  read: (tree, at) => written(tree) ?? tell(at, 'sum-not-understood', {}),
};

/** The wearer's figures; a unit beside them holds for them alone. */
export const wearerKind: Kind<Readonly<Record<string, number>>> = {
  schema: mapping(figures).schema,
  read: (tree, at) => {
    const unit = wordAt(tree, 'unit', lengthUnits) ?? at.reading.unit;
    const read = mapping(figures).read(tree, { ...at, reading: { ...at.reading, unit } });
    const entries: readonly (readonly [string, unknown])[] = Object.entries(read ?? {});
    return (
      read &&
      Object.fromEntries(entries.flatMap(([key, mm]) => (typeof mm === 'number' ? [[key, mm] as const] : [])))
    );
  },
};

/** A word that decides how the rest is read, looked at before it. */
export function wordAt<W extends string>(tree: Tree, key: string, words: readonly W[]): W | undefined {
  const written = tree.kind === 'mapping' ? tree.entries.get(key)?.value : undefined;
  return words.find(word => written?.kind === 'scalar' && word === written.value);
}

/** Steps are read verb by verb; here it only matters that they are a list. */
const anything: Kind<Tree> = { schema: {}, read: tree => tree, mayBeEmpty: true };

/** Every field of a sheet but what its steps hold. */
export const sheetKind = mapping({
  pattern: optional(filePath),
  title: optional(name),
  unit: usually(choice(lengthUnits), 'mm'),
  language: usually(choice(languages), 'en'),
  wearer: usually(wearerKind, {}),
  fabrics: usually(named(fabric), {}),
  let: usually(named(keptFigure), {}),
  pieces: usually(named(pieceKind), {}),
  seams: usually(named(seamKind), {}),
  fastenings: usually(named(fasteningKind), {}),
  opening: usually(named(size), {}),
  tolerance: optional(length({ over: true, most: largestTolerance })),
  scale: optional(scaleKind),
  size: optional(sizeKind),
  steps: optional(anything),
  print: usually(printKind, usualPrint),
});
