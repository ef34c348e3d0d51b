import { plainWords } from './name-words.js';

/** Words for the fold of the cloth, in the languages that names are read in. */
const foldWords = [
  'fold',
  'stoffbruch',
  'bruch',
  'umbruch',
  'pli',
  'pliure',
  'doblez',
  'piega',
  'ripiegatura',
  'vouw',
  'stofvouw',
  'vikning',
  'dobra',
];

/** Whether something written beside an edge says that it lies on the fold. */
export function isFoldWord(text: string): boolean {
  const words = plainWords(text).split(' ');
  return foldWords.some(word => words.includes(plainWords(word)));
}
