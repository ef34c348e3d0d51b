import type { Pattern } from '@paperhinge/geometry';
import type { Reader } from '../words/reader.js';

/** What the cloths that pieces are cut from ask for, a sentence each: a nap, a stripe or print that repeats. */
export function clothNotes({ pieces, fabrics }: Pattern, reader: Reader): readonly string[] {
  const { cloth: say } = reader.words.report;
  const cuttings = pieces.flatMap(({ cutting, alsoCut = [] }) => [cutting, ...alsoCut]);
  return fabrics.flatMap(({ name, nap, repeat }) => {
    const count = cuttings.filter(c => c.fabric === name).reduce((sum, c) => sum + c.count, 0);
    if (count === 0) return [];
    const cloth = reader.words.piece.cloth(name);
    return [
      ...(nap ? [say.nap(cloth)] : []),
      ...(repeat ? [say.repeat(cloth, reader.length(repeat), count, reader.length(count * repeat))] : []),
    ];
  });
}
