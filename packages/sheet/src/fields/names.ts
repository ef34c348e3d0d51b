import type { EdgeRef } from '@paperhinge/geometry';
import { type EdgePosition, parsePosition } from '@paperhinge/geometry/pattern';
import { isSum, valueOfSum } from '../values/value.js';
import { type At, type Kind, tell } from './kind.js';
import { namedFigure } from './named-figure.js';
import { attempt, numberOrText, written } from './written.js';

// Names, places and choices, each read from what the maker wrote.

/** A name of the maker's. */
export const name: Kind<string> = {
  schema: { type: 'string' },
  read: ({ kind, ...tree }, at) => {
    const text = 'value' in tree && typeof tree.value === 'string' ? tree.value : undefined;
    if (kind !== 'scalar' || text === undefined || text.trim() === '')
      return tell(at, 'name-not-understood', {});
    return isPrintable(text) ? text : tell(at, 'name-not-printable', {});
  },
};
/** {@link name}, told apart where a list of them is given. @param instead the verb that takes several */
export const oneName = (instead: string): Kind<string> => ({
  ...name,
  read: (tree, at) => {
    if (tree.kind !== 'list') return name.read(tree, at);
    const given = tree.items.flatMap(item => (item.kind === 'scalar' ? [String(item.value)] : []));
    return tell(at, 'one-name-expected', { given, instead });
  },
});
/** A name that may be made of digits alone, as YAML reads a number: 14 is "14". */
export const digitsToo = (kind: Kind<string>): Kind<string> => ({
  schema: { type: ['string', 'number'] },
  read: (tree, at) =>
    kind.read(
      tree.kind === 'scalar' && typeof tree.value === 'number'
        ? { ...tree, value: String(tree.value) }
        : tree,
      at,
    ),
});
const longestName = 100;
export const isPrintable = (text: string): boolean =>
  text.length <= longestName && !/[\p{C}\p{Zl}\p{Zp}]/u.test(text);

/** Where a file lies. */
export const filePath: Kind<string> = {
  schema: { type: 'string' },
  read: (tree, at) => {
    const text = written(tree);
    return typeof text === 'string' && text.trim() !== '' && !text.includes('\0')
      ? text
      : tell(at, 'name-not-understood', {});
  },
};

/** `piece.edge`; the piece's name ends at the first full stop. */
export const edgeRef: Kind<EdgeRef> = {
  schema: { type: 'string', description: 'PIECE.EDGE, such as front.neck.' },
  read: (tree, at) => {
    const text = name.read(tree, at);
    return text === undefined ? undefined : (edgeRefOf(text) ?? tell(at, 'edge-not-understood', {}));
  },
};

/** The piece and the edge of `front.neck`; undefined if it is not written so. */
export function edgeRefOf(text: string): EdgeRef | undefined {
  const stop = text.indexOf('.');
  const piece = text.slice(0, Math.max(stop, 0)).trim(),
    edge = text.slice(stop + 1).trim();
  return piece !== '' && edge !== '' ? { piece, edge } : undefined;
}

/** A place on an edge. */
export const position: Kind<EdgePosition> = {
  schema: {
    ...numberOrText,
    description: 'A place on an edge: 1/3, 40 %, 1/3 from EDGE, 60 mm from EDGE, start, end.',
  },
  read: (tree, at) => {
    const given = written(tree);
    if (given === undefined) return tell(at, 'position-not-understood', { form: 'any' });
    if (given === 'start' || given === 'end') return { share: given === 'start' ? 0 : 1 };
    const named = namedPlace(given, at);
    if (named !== 'none') return named;
    return attempt(
      () => parsePosition(given, at.reading.unit),
      ({ code, facts }) =>
        code === 'position-off-edge'
          ? tell(at, 'position-off-edge', {})
          : tell(at, 'position-not-understood', {
              form: (facts.form ?? 'any') as 'any',
              ...(typeof given === 'string' && aloneAsName.test(given) ? { name: given } : {}),
            }),
    );
  },
};

/** `armhole`: the name of an edge where a place on one is wanted. */
const aloneAsName = /^\p{L}[\p{L}\p{N} _-]{0,39}$/u;

/** `hem drop from side`: a place whose figure is kept under a name, or a sum. */
function namedPlace(given: string | number, at: At): EdgePosition | 'none' | undefined {
  const { values, unit } = at.reading;
  const [, figure = '', from] = /^(.*?)(?:\s+from\s+(.*))?$/su.exec(String(given).trim()) ?? [];
  if (!values || !isSum(figure, values, unit)) return 'none';
  const value = valueOfSum(figure, name => values.get(name), unit);
  const wanted = 'fault' in value || value.kind !== 'share' ? 'length' : 'share';
  const amount = namedFigure({ kind: 'scalar', place: at.place, value: figure }, at, wanted);
  if (typeof amount !== 'number') return undefined;
  if (amount < 0 || (wanted === 'share' && amount > 1)) return tell(at, 'position-off-edge', {});
  return {
    ...(wanted === 'share' ? { share: amount } : { mm: amount }),
    ...(from === undefined ? {} : { from }),
  };
}

export const yesOrNo: Kind<boolean> = {
  schema: { anyOf: [{ type: 'boolean' }, { enum: ['yes', 'no'] }] },
  read: (tree, at) => {
    const given = tree.kind === 'scalar' ? tree.value : undefined;
    if (given === true || given === 'yes') return true;
    if (given === false || given === 'no') return false;
    return tell(at, 'choice-not-understood', { given: String(given ?? ''), words: ['yes', 'no'] });
  },
};

/** One of these words. */
export const choice = <const W extends string>(words: readonly W[]): Kind<W> => ({
  schema: { type: 'string', enum: words },
  read: (tree, at) => {
    const given = tree.kind === 'scalar' ? tree.value : undefined;
    const word = words.find(w => w === given);
    return word ?? tell(at, 'choice-not-understood', { given: String(given ?? ''), words });
  },
});

/** Words that stand beside another kind of value. */
export const orWords = <T, const W extends string>(words: readonly W[], kind: Kind<T>): Kind<T | W> => ({
  schema: { anyOf: [{ type: 'string', enum: words }, kind.schema] },
  read: (tree, at: At) => words.find(w => tree.kind === 'scalar' && w === tree.value) ?? kind.read(tree, at),
});
