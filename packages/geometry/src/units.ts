export type LengthUnit = 'mm' | 'cm' | 'in';
/** Millimetres in one of each unit; all exact. */
export const millimetresPer: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: 25.4 };
