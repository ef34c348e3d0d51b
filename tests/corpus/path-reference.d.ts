export type Curve = (t: number) => readonly [number, number];
export function curvesOf(d: string, matrix?: readonly number[]): readonly Curve[];
export function measureCurves(
  curves: readonly Curve[],
  steps?: number,
): { readonly length: number; readonly box: readonly [number, number, number, number] };
