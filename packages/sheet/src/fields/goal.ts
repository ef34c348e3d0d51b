import type { Goal, Measure } from '@paperhinge/alter';
import type { Tree } from '../document.js';
import { signedLength } from './figures.js';
import { type At, type Kind, tell } from './kind.js';
import { measureForms, measureOf } from './measure.js';
import { byForm, mapping, needed, pairOf, turnedInto } from './shapes.js';
import { written } from './written.js';

/** An amount by what it is to bring about, or as a figure. */
export const orGoal = <T>(figure: Kind<T>): Kind<T | Goal> => ({
  // Told once in the schema: nearly every field of a verb may hold one.
  schema: { anyOf: [{ $ref: '#/$defs/goal' }, figure.schema] },
  read: (tree, at) => (isGoalTree(tree) ? goal : figure).read(tree, at),
});

const isGoalTree = (tree: Tree): boolean => tree.kind === 'mapping' && tree.entries.has('so that');

const measure: Kind<Measure> = {
  schema: { type: 'string', description: `What is measured: ${measureForms.join(', ')}.` },
  read: (tree, at) => {
    const text = written(tree);
    const read = typeof text === 'string' ? measureOf(text, at.reading.wearer ?? {}) : undefined;
    return read ?? tell(at, 'measure-not-understood', { forms: measureForms });
  },
};

const isList = (tree: Tree): boolean => tree.kind === 'list';
const oneOrRange = <T>(figure: Kind<T>): Kind<T | readonly [T, T]> => byForm(isList, twoOf(figure), figure);
const twoOf = <T>(figure: Kind<T>): Kind<readonly [T, T]> => ({
  schema: pairOf(figure).schema,
  read: (tree, at) =>
    tree.kind === 'list' && tree.items.length === 2
      ? pairOf(figure).read(tree, at)
      : tell(at, 'range-not-understood', {}),
});

/** mm² from `150 cm2`, `150 cm²`, `24 in²`, `15000 mm2`. */
const area: Kind<number> = {
  schema: { type: 'string', description: 'An area with its unit: 150 cm2, 24 in2.' },
  read: (tree, at) => {
    const [, figure, unit] =
      /^(\d+(?:\.\d+)?)\s*(mm|cm|in)[2²]$/.exec(String(written(tree) ?? '').trim()) ?? [];
    if (figure === undefined) return tell(at, 'area-not-understood', {});
    const side = { mm: 1, cm: 10, in: 25.4 }[unit as 'mm' | 'cm' | 'in'];
    return Number(figure) * side * side;
  },
};

const fields = { 'so that': needed(measure) };
const lengthGoal = mapping({ ...fields, is: needed(oneOrRange(signedLength)) });
const areaGoal = mapping({ ...fields, is: needed(oneOrRange(area)) });

/** `{ so that: sweep of skirt.hem, is: 1800 }`; of an area, `is` is one. */
const goal: Kind<Goal> = turnedInto(
  {
    schema: lengthGoal.schema,
    read: (tree: Tree, at: At) => (asksForArea(tree) ? areaGoal : lengthGoal).read(tree, at),
  },
  read => ({ soThat: read['so that'], is: read.is }),
);

function asksForArea(tree: Tree): boolean {
  const asked = tree.kind === 'mapping' ? tree.entries.get('so that')?.value : undefined;
  return asked !== undefined && /^\s*area of /.test(String(written(asked)));
}

/** What the schema says of a goal. */
export const goalSchema = {
  ...lengthGoal.schema,
  description: 'An amount by what it is to bring about: a measure, and what it is to be.',
};
