export interface RecutNeckline {
  readonly piece: string;
  readonly shape: 'inset V' | 'V' | 'round' | 'square' | 'drawn';
  /** mm; not needed for `drawn`. */
  readonly depth?: number;
  /** mm; for V, round, square absent = at the present neck end. */
  readonly halfWidth?: number;
  /** Name of the piece's line for `drawn`. */
  readonly line?: string;
}
