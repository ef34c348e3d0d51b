export interface RemovePiece {
  readonly piece: string;
}
