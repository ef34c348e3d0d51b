import { inWords, perform, verbOf, verbs } from '@paperhinge/alter';
import * as field from '@paperhinge/alter/verb';
import { pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { readSheet, runSheet, sheetJsonSchema } from '@paperhinge/sheet';
import { expect, test } from 'vitest';
import { verbsPage } from '../../../packages/sheet/src/reference/verbs-page.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

// All that a new verb needs, in one file: its parameters, its fields, its words and what it does.
interface Retitle {
  readonly piece: string;
  readonly to: string;
  readonly style?: 'plain' | 'capitals';
}
const retitle = verbOf<Retitle>()({
  verb: 'retitle',
  does: 'Writes another title on a piece.',
  fields: {
    piece: field.piece(),
    to: field.newName(),
    style: field.usually(field.choice('plain', 'capitals'), 'plain'),
  },
  sentence: 'Call the {piece} {to}[ in {style}]',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'front', to: 'Vorderteil' } },
  alter: (pattern, { piece: name, to, style }) => {
    const title = style === 'capitals' ? to.toUpperCase() : to;
    return {
      pattern: withPiece(pattern, { ...pieceNamed(pattern, name), title }),
      did: inWords(`The ${name} is called ${title} now.`),
      findings: [],
    };
  },
});

test('a verb declared outside is done with its usual values, and says what it did', () => {
  const done = perform(retitle, shiftPattern(), { piece: 'front', to: 'Vorderteil' });
  expect(pieceNamed(done.pattern, 'front').title).toBe('Vorderteil');
  expect(toldDid(done)).toBe('The front is called Vorderteil now.');
});

test('its fields are checked as those of any verb', () => {
  const wrong = { piece: 'front', to: '', style: 'plain' } as const;
  expect(refusalOf(() => perform(retitle, shiftPattern(), wrong)).code).toBe('field-not-usable');
});

test('a sheet that is given the verb reads it and does it', () => {
  const text = 'pattern: shift.svg\nsteps:\n  - retitle: { piece: front, to: Vorderteil, style: capitals }';
  const own = { file: 'own.yaml', verbs: [...verbs, retitle] };
  const { altered, record } = runSheet(readSheet(text, own), shiftPattern(), own);
  expect(pieceNamed(altered, 'front').title).toBe('VORDERTEIL');
  expect(record.steps[0]!.did).toBe('The front is called VORDERTEIL now.');
});

test('the schema for editors has it, and a slip of its name or fields finds it', () => {
  const schema = JSON.stringify(sheetJsonSchema([...verbs, retitle]));
  expect(schema).toContain('Writes another title on a piece.');
  expect(schema).toContain('"capitals"');
  const own = { file: 'own.yaml', verbs: [...verbs, retitle] };
  const read = (step: string) => () => readSheet(`pattern: shift.svg\nsteps:\n  - ${step}`, own);
  expect(refusalOf(read('retitel: { piece: front, to: Vorderteil }')).remedy).toBe('Did you mean "retitle"?');
  expect(refusalOf(read('retitle: { piece: front, too: Vorderteil }')).remedy).toContain('"to"');
  expect(refusalOf(read('retitle: { piece: front, to: Vorderteil, style: loud }')).remedy).toContain(
    'capitals',
  );
});

test('the reference tells it as it tells any verb', () => {
  const page = verbsPage([{ verb: retitle, did: 'The front is called Vorderteil now.', picture: 'p.svg' }]);
  expect(page).toContain('Writes another title on a piece.');
  expect(page).toMatch(/Call the \*front\* \*Vorderteil\*\. → The front is called Vorderteil now\./);
});
