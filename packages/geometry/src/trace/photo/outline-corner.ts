import type { Point } from '../../vector.js';

/** A corner of an outline: which of its points it is nearest to, and where it lies, sharper than any lens shows it. */
export interface OutlineCorner {
  readonly index: number;
  readonly at: Point;
  /** mm about it in which the picture is soft. */
  readonly soft: number;
}
