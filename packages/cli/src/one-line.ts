import type { PatternError, ToldFinding, Where } from '@paperhinge/geometry';
import { commandSaying, type Told, type Words } from '@paperhinge/sheet/words';

/**
 * `file:line:column: what (where): remedy`, always one line whatever the file and its names hold. An error of a whole
 * file points to its beginning; one of no file is of the command itself.
 */
export function errorLine(error: PatternError, words: Words): string {
  const { message, remedy, where } = named(error, words);
  const { file, line = 1, column = 1 } = where;
  const place = file === undefined ? 'paperhinge' : `${file}:${line}:${column}`;
  return oneLine(`${place}: ${unstopped(message)}${inBrackets(where, words)}: ${remedy}`);
}

/** What an error says, its names cut as in a line: a file is told by its names alone, and by no more of them than that. */
export function named(error: PatternError, words: Words): ToldError {
  const { code, where } = error;
  const { message, remedy } = words.error(error);
  const { piece, edge } = where;
  const short = {
    ...(piece === undefined ? {} : { piece: shortened(piece) }),
    ...(edge === undefined ? {} : { edge: shortened(edge) }),
  };
  return {
    code,
    where: { ...where, ...short },
    message: namesShortened(message),
    remedy: namesShortened(remedy),
  };
}
type ToldError = Pick<PatternError, 'code' | 'where'> & Told;

/** `fault: what (where). Remedy`: a finding as one line. */
export function findingLine({ severity, message, where, remedy }: ToldFinding, words?: Words): string {
  const weight = words ? words.sentence(commandSaying('severity', { severity })) : severity;
  return oneLine(`${weight}: ${unstopped(message)}${inBrackets(where, words)}. ${remedy}`);
}

/** ` (step 3, piece front, edge hem)`, as far as it is known. */
function inBrackets({ step, piece, edge }: Where, words: Words | undefined): string {
  if (!words || (step === undefined && piece === undefined && edge === undefined)) return '';
  const known = {
    ...(step === undefined ? {} : { step }),
    ...(piece === undefined ? {} : { piece }),
    ...(edge === undefined ? {} : { edge }),
  };
  return ` (${words.sentence(commandSaying('in-brackets', known))})`;
}

const unstopped = (sentence: string) => sentence.replace(/\.$/, '');
const shortened = (name: string) => (name.length > longestName ? `${name.slice(0, longestName - 1)}…` : name);
/**
 * What stands in quotation marks is a name, or after an option what is to be typed, in which several may stand. Marks are
 * taken in pairs: what stands between two names is none.
 */
const namesShortened = (sentence: string) =>
  sentence.replace(/(--[a-z-]+ )?"([^"]*)"/g, (_, option: string | undefined, quoted: string) =>
    option === undefined
      ? `"${shortened(quoted)}"`
      : `${option}"${quoted.split(', ').map(shortened).join(', ')}"`,
  );
const longestName = 40;

/** Control characters and line breaks would break the line, or the terminal. */
export const oneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ');
