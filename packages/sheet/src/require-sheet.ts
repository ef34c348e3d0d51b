import type { Pattern } from '@paperhinge/geometry';
import { faultIn, type Kind, requireWhole } from '@paperhinge/geometry/internal';
import { refusal as patternRefusal } from './pattern-refusal.js';
import type { Sheet, Step } from './sheet.js';
import type { State } from './state.js';
import { refusal } from './tellings.js';

// What plain JavaScript hands over as a sheet, as steps, or as what stands before them.

const sheetForm: Kind = {
  file: 'string',
  unit: 'string',
  language: 'string',
  wearer: {},
  fabrics: [{ name: 'string' }],
  pieces: {},
  names: {},
  measured: [{ name: 'string' }],
  facts: {},
  seams: [{ name: 'string' }],
  fastenings: [{ name: 'string' }],
  openings: [{ piece: 'string', edge: 'string', length: 'number' }],
  given: {},
  print: {},
  places: {},
  stepPlaces: [{}],
};

/** @throws PatternError `not-a-sheet`: what a reader of sheets would not have read */
export function requireSheet(sheet: Sheet): void {
  // Of what the steps hold their verbs tell more.
  const { steps, ...rest } = isObject(sheet) ? sheet : ({} as Sheet);
  const papers: unknown = rest.print?.paper;
  if (faultIn(rest, sheetForm) !== undefined || !Array.isArray(papers)) throw refusal('not-a-sheet', {});
  requireSteps(steps);
}

/** @throws PatternError `not-a-sheet`: what is no list of verbs with their fields */
export function requireSteps(steps: readonly Step[]): void {
  const isStep = (step: unknown): boolean =>
    isObject(step) && typeof step.verb === 'string' && isObject(step.parameters);
  if (!Array.isArray(steps) || !steps.every(isStep)) throw refusal('not-a-sheet', {});
}

/** @throws PatternError `pattern-not-usable` with the place of the fault, and others of what is no pattern */
export function requireState(state: State): void {
  if (!isObject(state)) throw patternRefusal('pattern-not-usable', { at: 'state' });
  for (const list of ['derived', 'making', 'made', 'standing']) {
    const given = Object.getOwnPropertyDescriptor(state, list);
    // What is worked out once it is asked for is ours, and is not asked for here.
    if (given?.get === undefined && !Array.isArray(given?.value))
      throw patternRefusal('pattern-not-usable', { at: `state.${list}` });
  }
  requireWhole(state.pattern as Pattern);
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
