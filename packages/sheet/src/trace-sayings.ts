import type { NoFacts } from '@paperhinge/geometry/sayings';

/** What a file given as a picture is instead. */
export type NotPicture = 'heic' | 'tiff' | 'webp' | 'pdf' | 'other';

/** What is told of the pictures and arguments of tracing, and of printing a photo frame. */
export interface TraceTellings {
  'not-a-picture': { readonly looksLike: NotPicture };
  'picture-damaged': NoFacts;
  'picture-too-large': { readonly mostMillions: number };
  'traced-line-unknown': NoFacts;
  'length-without-places': NoFacts;
  'several-scales': NoFacts;
  'several-scans': NoFacts;
  'square-out-of-range': NoFacts;
  'dpi-out-of-range': { readonly least: number; readonly most: number };
  'known-length-out-of-range': NoFacts;
  'places-not-understood': NoFacts;
  'options-of-pictures': NoFacts;
  'gap-out-of-range': { readonly mostMm: number };
  'unit-unknown': NoFacts;
  'pen-not-understood': { readonly colours: readonly string[] };
  'sizes-of-picture-not-understood': { readonly colours: readonly string[] };
  'pdf-locked': NoFacts;
  'pdf-damaged': NoFacts;
  'pdf-too-long': { readonly most: number };
  'columns-out-of-range': NoFacts;
  'page-overlap-out-of-range': { readonly mostMm: number };
  'overlap-without-columns': NoFacts;
  'layer-beside-sizes': NoFacts;
  'size-not-told': { readonly name: string; readonly names: readonly string[] };
  /** An option of the command that is for other kinds of files. */
  'option-not-for-this': {
    readonly option: string;
    readonly kinds: readonly ('picture' | 'sheet' | 'svg' | 'dxf' | 'pdf')[];
  };
}

/** What is said while pictures are traced and when they are. */
export interface TraceSentences {
  'reading-pictures': NoFacts;
  'reading-pages': NoFacts;
  'laying-pages': NoFacts;
  'looking-for-sheets': NoFacts;
  'measuring-floor': NoFacts;
  'flattening-picture': NoFacts;
  'tracing-pieces': NoFacts;
  'pieces-traced': { readonly pieces: number; readonly sheets: number; readonly residualMm?: number };
  'frame-printed': { readonly sheets: number; readonly paper: string };
}
