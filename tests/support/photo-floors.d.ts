import type { LaidPiece, LaidSheet, Outline, PagePicture, Scene } from './photo-scene.js';

export const shapes: Readonly<
  Record<'bodice' | 'sleeve' | 'skirt' | 'collar' | 'pocket' | 'band' | 'facing', Outline>
>;
export function strewn(
  number: number,
  pages: readonly PagePicture[],
  megapixels?: number,
): Scene & {
  readonly pieces: readonly (LaidPiece & { readonly name: string })[];
  readonly floor: { readonly sheets: readonly (LaidSheet & { readonly number: number })[] };
};
