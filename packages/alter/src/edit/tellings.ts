import { sayingsOf, type Thing } from '@paperhinge/geometry';

/** What is told of moving edges, and of the seams they are sewn in. */
export interface EditTellings {
  'unknown-seam': { readonly name: string; readonly names: readonly string[] };
  'position-off-seam': { readonly seam: Thing; readonly alongMm: number; readonly lengthMm: number };
  'seam-end-ambiguous': { readonly seam: Thing; readonly from: string };
  'seam-end-unknown': { readonly seam: Thing; readonly from: string; readonly neighbours: readonly string[] };
}

export const { refusal, finding } = sayingsOf<EditTellings>();
