/** A pocket whose mouth is cut slanting from waist to side. Lengths in mm. */
export interface DraftSlantPocket {
  readonly name: string;
  readonly piece: string;
  readonly waist: string;
  readonly side: string;
  /** Where the mouth begins, along the waist from the side; default 40. */
  readonly in?: number;
  /** Where it ends, down the side from the waist; default 160. */
  readonly down?: number;
  /** How far the bag reaches beyond the mouth, along the waist and down the side; default 90, and 100. */
  readonly depth?: number;
  readonly below?: number;
  /** Default 10. */
  readonly allowance?: number;
  readonly fabric?: string;
}

/** A slant pocket with its usual measures. */
export type WholeSlantPocket = DraftSlantPocket &
  Required<Pick<DraftSlantPocket, 'in' | 'down' | 'depth' | 'below' | 'allowance'>>;
