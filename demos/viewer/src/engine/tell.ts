/** Told how far long work has come: what is being done, in words, and how much of it is done, from 0 to 1. */
export type Tell = (text: string, share?: number) => void;
