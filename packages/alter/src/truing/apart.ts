import { nearestOnPath, type Path, pointAt } from '@paperhinge/geometry';

/** mm: the farthest that either of two lines lies from the other, seen at close steps along both. */
export const apartBetween = (a: Path, b: Path): number => Math.max(farthestFrom(a, b), farthestFrom(b, a));

const farthestFrom = (a: Path, b: Path): number => {
  const steps = Math.max(8, Math.ceil(160 / a.segments.length));
  let farthest = 0;
  for (const segment of a.segments)
    for (let i = 0; i <= steps; i++)
      farthest = Math.max(farthest, nearestOnPath(b, pointAt(segment, i / steps)).distance);
  return farthest;
};
