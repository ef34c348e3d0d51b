import { refusal } from '../tellings.js';

/** One group of a DXF file: its code and its value as written. */
export interface Group {
  readonly code: number;
  readonly value: string;
}

/** An entity or the like: what begins with a group 0, and the groups up to the next. */
export interface Entity {
  readonly type: string;
  readonly groups: readonly Group[];
}

/** More groups than any pattern has: about 100 MB. */
const mostGroups = 8_000_000;

/**
 * A DXF file in ASCII as its entities, in order. Sections, tables and blocks are entities like others here: `SECTION`,
 * `BLOCK`, `ENDBLK` and so on.
 * @throws PatternError `not-dxf` where it is binary, or no line of it is a group code
 */
export function entitiesIn(text: string): readonly Entity[] {
  if (text.startsWith('AutoCAD Binary DXF')) throw refusal('not-dxf', { binary: true });
  const lines = text.split(/\r\n|\r|\n/);
  const entities: { type: string; groups: Group[] }[] = [];
  for (let i = 0; i + 1 < lines.length && i < 2 * mostGroups; i += 2) {
    const code = Number(lines[i]!.trim());
    if (!Number.isInteger(code)) {
      if (entities.length === 0) throw refusal('not-dxf', { binary: false });
      break;
    }
    const value = lines[i + 1]!;
    if (code === 0) entities.push({ type: value.trim().toUpperCase(), groups: [] });
    else entities.at(-1)?.groups.push({ code, value });
  }
  if (!entities.some(({ type }) => type === 'SECTION')) throw refusal('not-dxf', { binary: false });
  return entities;
}

/** The first value of a code, trimmed; undefined where there is none. */
export const textOf = ({ groups }: Entity, code: number): string | undefined =>
  groups.find(group => group.code === code)?.value.trim();

/** The first value of a code as a number; `usual` where there is none, or none that is one. */
export function numberOf(entity: Entity, code: number, usual = 0): number {
  const value = Number(textOf(entity, code) ?? Number.NaN);
  return Number.isFinite(value) ? value : usual;
}

/** All values of a code as numbers, in order. */
export const numbersOf = ({ groups }: Entity, code: number): readonly number[] =>
  groups.flatMap(group => {
    const value = Number(group.value);
    return group.code === code && Number.isFinite(value) ? [value] : [];
  });
