/** What is used of bidi-js, which brings no types of its own: the Unicode Bidirectional Algorithm (UAX #9). */
declare module 'bidi-js' {
  export interface Levels {
    /** Per UTF-16 unit: even reads from left to right, odd from right to left. */
    readonly levels: Uint8Array;
  }
  export interface Bidi {
    getEmbeddingLevels(text: string): Levels;
    /** Places in the text in the order they stand from left to right. */
    getReorderedIndices(text: string, levels: Levels): readonly number[];
    getMirroredCharactersMap(text: string, levels: Uint8Array): ReadonlyMap<number, string>;
  }
  export default function bidiFactory(): Bidi;
}
