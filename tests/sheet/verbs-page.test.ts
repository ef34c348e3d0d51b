import { readFileSync } from 'node:fs';
import { type AnyVerb, verbs } from '@paperhinge/alter';
import { readPattern } from '@paperhinge/geometry';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { sheetJsonSchema } from '../../packages/sheet/src/json-schema.js';
import { readSheet } from '../../packages/sheet/src/read-sheet.js';
import { picture } from '../../packages/sheet/src/reference/picture.js';
import { stepLine } from '../../packages/sheet/src/reference/sentence.js';
import { sheetExample } from '../../packages/sheet/src/reference/sheet-example.js';
import { verbsPage } from '../../packages/sheet/src/reference/verbs-page.js';
import { runSteps } from '../../packages/sheet/src/run-steps.js';
import { stateOf } from '../../packages/sheet/src/state.js';

const root = new URL('../../', import.meta.url);
const words = wordsOf(english, 'mm');

/** A verb's example, as a maker would write it, done to its pattern. */
function worked(verb: AnyVerb) {
  const file = `${verb.example.pattern}.svg`;
  const { pattern } = readPattern(readFileSync(new URL(`demos/patterns/${file}`, root)), { file });
  const lines: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
    ...(verb.example.after ?? []).flatMap(Object.entries),
    [verb.verb, verb.example.step],
  ];
  const { steps } = readSheet(
    `pattern: ${file}\nsteps:\n${lines.map(([name, step]) => `  ${stepLine(name, step)}\n`).join('')}`,
    { file: 'example' },
  );
  const done = runSteps(stateOf(pattern), steps);
  const before = done.at(-2)?.state.pattern ?? pattern;
  return { before, after: done.at(-1)!.state.pattern, did: words.sentence(done.at(-1)!.did!) };
}
const pictureFile = ({ verb }: AnyVerb) => `pictures/${verb.replaceAll(' ', '-')}.svg`;

// `vitest -u` writes page and pictures anew after a change of a declaration.
test('the reference page is that of the declarations', async () => {
  const page = verbsPage(verbs.map(verb => ({ verb, did: worked(verb).did, picture: pictureFile(verb) })));
  await expect(page).toMatchFileSnapshot('../../packages/sheet/verbs.md');
});

describe('the example of every verb', () => {
  test.each(verbs.map(verb => [verb.verb, verb] as const))('%s is done and drawn', async (name, verb) => {
    const { before, after, did } = worked(verb);
    expect(after).not.toBe(before);
    expect(did).not.toMatch(/undefined|NaN|[a-z]+Mm/);
    const svg = picture(before, after, `${name}: before and after`);
    await expect(svg).toMatchFileSnapshot(`../../packages/sheet/${pictureFile(verb)}`);
  });
});

test('the example of everything else is a sound sheet that leaves no field out', () => {
  const sheet = readSheet(sheetExample, { file: 'example.yaml' });
  const fields = Object.keys(sheetJsonSchema(verbs).properties as object);
  expect(
    fields.filter(field => !(field in sheet.places || new RegExp(`^${field}:`, 'm').test(sheetExample))),
  ).toEqual([]);
  expect(sheet.steps).toEqual([{ verb: 'unfold', parameters: { piece: 'front' }, off: true }]);
});

test('the README names every verb', () => {
  const readme = readFileSync(new URL('README.md', root), 'utf8');
  const list = /^The verbs: (.*?)\. /m.exec(readme)![1]!;
  expect([...list.matchAll(/`([^`]+)`/g)].map(m => m[1]).toSorted()).toEqual(
    verbs.map(v => v.verb).toSorted(),
  );
});
