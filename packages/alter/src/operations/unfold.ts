export interface Unfold {
  readonly piece: string;
}
