/** Shorten (or, with a negative amount, lengthen) pieces at the hem or at a drawn line. Amount in mm. */
export interface Shorten {
  readonly pieces: readonly string[];
  /** `hem`, or the name of a line of each piece. */
  readonly at: string;
  readonly by: number;
}
