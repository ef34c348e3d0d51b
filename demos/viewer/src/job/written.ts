import { type Document, isMap, isScalar, isSeq, LineCounter, parseDocument, type YAMLMap } from 'yaml';

// The sheet is one text. Every change of a field is a change of that text by its document, so that comments, order and
// what the maker wrote elsewhere stay as they are.

/** A step as it is written. */
export interface WrittenStep {
  readonly verb: string;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly off: boolean;
}
/** A way to a value: `['steps', 2, 'close dart', 'share']`. */
export type Way = readonly (string | number)[];

const parsed = (text: string): Document => parseDocument(text, { version: '1.2', schema: 'core' });

let last: { readonly text: string; readonly document: Document } | undefined;

/** The document of a text, to be read and not changed: what is written in it is found there again with the next change. */
function readAs(text: string): Document {
  if (last?.text !== text) last = { text, document: parsed(text) };
  return last.document;
}
const writtenOut = (document: Document): string =>
  document.toString({ lineWidth: 0, flowCollectionPadding: true });

/** What the sheet says as plain values; undefined where the text is no sheet at the moment. */
export function valuesOf(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const document = readAs(text);
    const value: unknown = document.errors.length > 0 ? undefined : document.toJS();
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

/** The steps as they are written, in order. */
export function stepsOf({ steps }: Readonly<Record<string, unknown>>): readonly WrittenStep[] {
  if (!Array.isArray(steps)) return [];
  return steps.map((step: unknown) => {
    const { off, ...rest } = (step ?? {}) as Record<string, unknown>;
    const [verb = '', fields] = Object.entries(rest)[0] ?? [];
    return {
      verb,
      fields: typeof fields === 'object' && fields !== null ? (fields as Record<string, unknown>) : {},
      off: off === true || off === 'yes',
    };
  });
}

/** The step that a line of the text belongs to, if it does. */
export function stepAtLine(text: string, line: number): number | undefined {
  const lineCounter = new LineCounter();
  const steps = parseDocument(text, { version: '1.2', schema: 'core', lineCounter }).get('steps', true);
  if (!isSeq(steps)) return undefined;
  const lines = steps.items.map(item => lineCounter.linePos((item as YAMLMap).range?.[0] ?? 0).line);
  const index = lines.findLastIndex(first => first <= line);
  const end = lineCounter.linePos(steps.range?.[1] ?? 0).line;
  return index < 0 || line > end ? undefined : index;
}

/** The text with one value set, or taken out where it is undefined. */
export function withValue(text: string, way: Way, value: unknown): string {
  const inPlace = withFigureInPlace(text, way, value);
  if (inPlace !== undefined) return inPlace;
  const document = parsed(text);
  if (value === undefined) document.deleteIn(way);
  else {
    const there = document.getIn(way, true);
    // A scalar keeps its comment and place.
    if (isScalar(there) && (typeof value !== 'object' || value === null)) there.value = value;
    else document.setIn(way, flow(document, value));
  }
  return writtenOut(document);
}

/** A figure, or words that mean the same with nothing round them wherever they stand: `12`, `80 %`, `3/8 in`. */
const isBare = /^-?\d[\d.]*(?: ?(?:%|mm|cm|in|°)|\/\d+ in)?$/;

/**
 * The text with one bare figure in another's place and nothing else touched: what a drag and a key do, many times a
 * second. Undefined where the document must be asked.
 */
function withFigureInPlace(text: string, way: Way, value: unknown): string | undefined {
  const written = String(value);
  if ((typeof value !== 'number' && typeof value !== 'string') || !isBare.test(written)) return undefined;
  const document = readAs(text);
  const there = document.errors.length === 0 ? document.getIn(way, true) : undefined;
  if (!isScalar(there) || there.anchor !== undefined || !there.range) return undefined;
  const [from, to] = there.range;
  // A text that a number would be read as, or the other way about, is not the same.
  const isSame = typeof parsed(written).toJS() === typeof value;
  return isSame && isBare.test(text.slice(from, to))
    ? text.slice(0, from) + written + text.slice(to)
    : undefined;
}

/** Lists and mappings within a step are written on one line. */
function flow(document: Document, value: unknown) {
  const node = document.createNode(value);
  if (isMap(node) || isSeq(node)) node.flow = true;
  return node;
}

/** The text with a step more; at the end, or before the step of a number. */
export function withStep(
  text: string,
  verb: string,
  fields: Readonly<Record<string, unknown>>,
  at?: number,
): string {
  const document = parsed(text);
  const step = document.createNode({ [verb]: fields }) as YAMLMap;
  for (const { value } of step.items as { value: unknown }[]) if (isMap(value)) value.flow = true;
  const steps = document.get('steps', true);
  if (!isSeq(steps)) document.set('steps', document.createNode([step]));
  else {
    steps.flow = false;
    steps.items.splice(at ?? steps.items.length, 0, step);
  }
  return writtenOut(document);
}

export function withoutStep(text: string, index: number): string {
  const document = parsed(text);
  document.deleteIn(['steps', index]);
  return writtenOut(document);
}

/** A step moved to another place in the order. */
export function withStepMoved(text: string, from: number, to: number): string {
  const document = parsed(text);
  const steps = document.get('steps', true);
  if (!isSeq(steps)) return text;
  const [step] = steps.items.splice(from, 1);
  if (step) steps.items.splice(to, 0, step);
  return writtenOut(document);
}

export const withStepSwitched = (text: string, index: number, off: boolean): string =>
  withValue(text, ['steps', index, 'off'], off ? 'yes' : undefined);
