/** Move a seam into one of its two pieces: what that one loses the other gains. */
export interface MoveSeam {
  readonly seam: string;
  /** The piece that the seam moves into, and that becomes smaller. */
  readonly into: string;
  /** mm square to the seam: along all of it, or at its beginning and at its end. */
  readonly by: number | readonly [number, number];
  /** The seams that go on from it too, such as a skirt's side from a bodice's. */
  readonly matching?: boolean;
}
