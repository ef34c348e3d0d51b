import { type DrawingScale, type LevelShare, PatternError, parseLength } from '@paperhinge/geometry';
import type { Tree } from './document.js';
import { percent } from './fields/figures.js';
import { type Kind, tell } from './fields/kind.js';
import { digitsToo, name } from './fields/names.js';
import { byForm, mapping, named, needed, optional, pairOf, turnedInto } from './fields/shapes.js';

/** A size of the pattern, or a place between two of its sizes: everywhere alike, or level by level. */
export type SheetSize =
  | string
  | { readonly between: readonly [string, string]; readonly share: number | readonly LevelShare[] };

/** Sizes are often figures. */
const sizeName = digitsToo(name);

const between = mapping({
  between: needed(pairOf(sizeName)),
  share: optional(percent(0, 100)),
  at: optional(named(percent(0, 100))),
});

export const sizeKind: Kind<SheetSize> = byForm(
  (tree: Tree) => tree.kind === 'mapping',
  turnedInto(between, ({ between: sizes, share, at: levels }, at): SheetSize | undefined => {
    const shares = Object.entries(levels ?? {}).map(([level, s]): LevelShare => ({ level, share: s }));
    if (share !== undefined && shares.length > 0)
      return tell(at, 'fields-conflict', { fields: ['share', 'at'] });
    if (share === undefined && shares.length === 0)
      return tell(at, 'missing-field', { fields: ['share', 'at'] });
    return { between: sizes, share: share ?? shares };
  }),
  sizeName,
);

/**
 * How large the drawing is meant: `1/4` or `25 %` for one drawn at a quarter, or what one unit of it is: `1 mm`,
 * `0.5 in`.
 */
export const scaleKind: Kind<DrawingScale> = {
  schema: {
    type: ['string', 'number'],
    description: '1/4 or 25 % for a drawing at a quarter; 1 mm: what its unit is.',
  },
  read: (tree, at) => {
    const text = tree.kind === 'scalar' ? String(tree.value).trim() : '';
    const share = shareIn(text);
    if (share !== undefined && share > 0) return { factor: 1 / share };
    const unitMm = /[a-z"″]\.?$/i.test(text) ? lengthIn(text) : undefined;
    return unitMm !== undefined && unitMm > 0 ? { unitMm } : tell(at, 'scale-not-understood', {});
  },
};

/** The share that a drawing is of the garment. */
function shareIn(text: string): number | undefined {
  const [, over, under, percentage] = /^(?:(\d+)\s*[/:]\s*(\d+)|(\d+(?:\.\d+)?)\s*%)$/.exec(text) ?? [];
  if (percentage !== undefined) return Number(percentage) / 100;
  return over === undefined || under === undefined || Number(under) === 0
    ? undefined
    : Number(over) / Number(under);
}

function lengthIn(text: string): number | undefined {
  try {
    return parseLength(text, 'mm');
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}
