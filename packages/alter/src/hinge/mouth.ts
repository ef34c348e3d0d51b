import { type OutlinePart, type Pleat, type Point, pathOf } from '@paperhinge/geometry';

/** Which end of which cut, by its index. */
export interface CutAt {
  readonly cut: number;
  readonly end: 'from' | 'to';
}

/** An opening that becomes a dart or a pleat instead of being bridged. */
export interface Mouth extends CutAt {
  /** What stands between its two sides once all has moved. */
  readonly part: (from: Point, to: Point) => OutlinePart;
}

/** An opening that becomes a dart; `apex` where it lies once all has moved. */
export interface NewDart extends CutAt {
  readonly name: string;
  readonly apex: Point;
}

/** The mouth of a new dart. */
export const dartMouth = ({ cut, end, name, apex }: NewDart): Mouth => ({
  cut,
  end,
  part: (from, to) => ({ type: 'dart', name, legs: [pathOf([from, apex]), pathOf([apex, to])], apex }),
});

/** An opening that is folded into a pleat or tuck. */
export interface NewPleat extends CutAt, Omit<Pleat, 'type' | 'mouth'> {}

/** The mouth of a new pleat. */
export const pleatMouth = ({ cut, end, name, kind, towards, stitched }: NewPleat): Mouth => ({
  cut,
  end,
  part: (from, to) => ({ type: 'pleat', name, kind, mouth: pathOf([from, to]), towards, stitched }),
});
