import type { AnyVerbForm } from '@paperhinge/alter';
import { type Field, type Fields, inSheet } from '@paperhinge/alter/verb';
import { fieldKinds } from '../words/english/verb.js';

/** The fields of a verb as the rows of a table: what each takes, within which bounds, and what holds without it. */
export function fieldTable({ fields }: AnyVerbForm): string {
  const rows = rowsOf(fields, '').map(
    ({ name, takes, without }) => `| \`${name}\` | ${takes} | ${without} |`,
  );
  return ['| field | takes | left out |', '| --- | --- | --- |', ...rows].join('\n');
}

interface Row {
  readonly name: string;
  readonly takes: string;
  readonly without: string;
}

const rowsOf = (fields: Fields, path: string): readonly Row[] =>
  Object.entries(fields).flatMap(([key, field]): readonly Row[] => {
    const name = `${path}${inSheet(key)}`;
    if (field.kind === 'group') return rowsOf(field.fields!, `${name}.`);
    const each = field.kind === 'groups' ? rowsOf(field.fields!, `${name}: `) : [];
    return [{ name, takes: takes(field), without: without(field) }, ...each];
  });

function takes(field: Field): string {
  const { kind, words = [], of } = field;
  if (kind === 'choice') return words.map(word => `\`${word}\``).join(', ');
  const held = fieldKinds[kind] ?? 'a name';
  const owner =
    of === undefined || kind.startsWith('place') || kind === 'range' ? '' : ` of \`${inSheet(of)}\``;
  const or = words.length > 0 ? `, or ${words.map(word => `\`${word}\``).join(' or ')}` : '';
  return `${held}${owner}${or}${bounds(field)}`;
}

function bounds({ kind, least, most, over = false }: Field): string {
  if (!['length', 'lengths', 'share', 'count', 'groups'].includes(kind)) return '';
  const figure = (n: number): string => {
    if (kind === 'share') return `${Number((n * 100).toPrecision(6))} %`;
    if (kind === 'count' || kind === 'groups') return String(n);
    return Math.abs(n) >= 1000 ? `${n / 1000} m` : n === 0 ? '0' : `${n} mm`;
  };
  if (least === undefined || most === undefined) return '';
  return over ? `, over ${figure(least)} to ${figure(most)}` : `, ${figure(least)} to ${figure(most)}`;
}

function without({ giving, usual, kind }: Field): string {
  if (giving === 'needed') return 'must be given';
  if (usual === undefined) return 'decided by the verb';
  if (kind === 'share') return `${(usual as number) * 100} %`;
  if (kind === 'yes-or-no') return usual ? 'yes' : 'no';
  return kind === 'length' ? `${usual} mm` : `\`${usual}\``;
}
