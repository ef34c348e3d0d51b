/** Degrees from rad. */
export const inDegrees = (angle: number): number => (angle * 180) / Math.PI;
