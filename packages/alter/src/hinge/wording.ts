/** "92.4 mm": for sentences; exact figures stand beside them. */
export const millimetres = (mm: number): string => `${mm.toFixed(1)} mm`;
/** "14.36°", from rad. */
export const degrees = (angle: number): string => `${((angle * 180) / Math.PI).toFixed(2)}°`;
export const inDegrees = (angle: number): number => (angle * 180) / Math.PI;
/** "50 %", from a share. */
export const percent = (share: number): string => `${Number((share * 100).toFixed(2))} %`;
