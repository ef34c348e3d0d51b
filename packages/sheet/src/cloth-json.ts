import type { ClothNeeded, ClothWay } from '@paperhinge/print/cloth';

/** What there is to buy of a cloth, in `record.json`. Lengths in mm. */
export interface ClothJson {
  readonly cloth: string;
  readonly widthMm: number;
  /** Laid one way and the other, the one that takes least first; none where a piece is wider than the cloth. */
  readonly lays: readonly { readonly laid: ClothWay; readonly lengthMm: number; readonly buyMm: number }[];
}

export const clothJson = ({ cloth, widthMm, lays }: ClothNeeded): ClothJson => ({
  cloth,
  widthMm,
  lays: lays.map(({ way, lengthMm, buyMm }) => ({
    laid: way,
    lengthMm: Math.round(lengthMm),
    buyMm: round(buyMm),
  })),
});

const round = (mm: number): number => Math.round(mm * 10) / 10;
