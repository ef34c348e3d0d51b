/** What is done, on which garment, by which steps, the last of which is meant; `VERB` alone: its own example. */
export type Row = readonly [what: string, on: string, ...steps: readonly string[]];
