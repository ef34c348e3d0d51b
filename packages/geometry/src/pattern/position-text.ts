import { PatternError } from '../errors.js';
import { type LengthUnit, numberOfText, parseLength } from '../units.js';
import type { EdgePosition } from './position.js';
import { type PatternTellings, refusal } from './tellings.js';

/**
 * A place on an edge as a sheet writes it: `1/3`, `40 %`, `60 mm`, each alone or with `from EDGE`. A fraction
 * without a unit is a share of the edge; a bare number over 1 is a length in `unit`.
 *
 * @throws PatternError `position-not-understood`: also a bare number over 0 up to 1, which could be a share or a
 *   length; `position-off-edge`: a share over 100 %, or a negative length
 */
export function parsePosition(text: string | number, unit: LengthUnit): EdgePosition {
  if (typeof text === 'number') return placeOfText(String(text), text, unit);
  if (typeof text !== 'string') throw notUnderstood('any');
  const split = /^(.*?)\s+from\s+(.*)$/su.exec(text.trim());
  if (!split) return placeOfText(text.trim(), text, unit);
  const from = split[2]!.trim();
  if (from === '') throw notUnderstood('from-nothing');
  return { ...placeOfText(split[1]!.trim(), split[1]!, unit), from };
}

function placeOfText(
  text: string,
  length: string | number,
  unit: LengthUnit,
): { share: number } | { mm: number } {
  const share = shareOfText(text);
  if (share !== undefined) {
    if (share >= 0 && share <= 1) return { share };
    throw refusal('position-off-edge', {});
  }
  const bare = Number(text);
  if (text !== '' && bare > 0 && bare <= 1) throw notUnderstood('share-or-length');
  const mm = lengthOr(length, unit);
  if (mm < 0) throw refusal('position-off-edge', {});
  return { mm };
}

function lengthOr(text: string | number, unit: LengthUnit): number {
  try {
    return parseLength(text, unit);
  } catch (error) {
    if (error instanceof PatternError && error.code === 'length-not-understood') throw notUnderstood('any');
    throw error;
  }
}

const notUnderstood = (form: PatternTellings['position-not-understood']['form']): PatternError =>
  refusal('position-not-understood', { form });

/** `1/3` or `40 %`; anything else may still be a length. */
function shareOfText(text: string): number | undefined {
  const percent = percentOfText(text);
  if (percent !== undefined) return percent;
  return /^\d+\s*[/⁄]\s*\d+$|^[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]$/u.test(text) ? numberOfText(text) : undefined;
}

function percentOfText(text: string): number | undefined {
  const match = text.length <= 40 ? /^([+\-−]?)(.+?)\s*%$/u.exec(text) : null;
  const size = match ? numberOfText(match[2]!.trim()) : undefined;
  if (size === undefined) return undefined;
  return (match![1] === '-' || match![1] === '−' ? -size : size) / 100;
}

/**
 * A percentage as a share: `80 %` is 0.8. The sign is required, so that 80 and 0.8 cannot be mistaken.
 * @throws PatternError `percent-not-understood`: the remedy writes a bare number as it should be
 */
export function parsePercent(text: string | number): number {
  const share = typeof text === 'string' ? percentOfText(text.trim()) : undefined;
  if (share !== undefined) return share;
  const bare =
    typeof text === 'number'
      ? text
      : typeof text === 'string'
        ? numberOfText(text.trim().slice(0, 40))
        : undefined;
  if (bare === undefined || !Number.isFinite(bare))
    throw refusal('percent-not-understood', { lacksSign: bare !== undefined });
  // 0.8 is a share that lacks its sign: what is meant by it is 80 %.
  const meant = bare > 0 && bare <= 1 ? bare * 100 : bare;
  throw refusal('percent-not-understood', { lacksSign: true, write: `${Number(meant.toPrecision(6))} %` });
}
