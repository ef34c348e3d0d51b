import { PatternError, quoted, suggestion, type Where } from '@paperhinge/geometry';
import type { z } from 'zod';
import { keyPlaceAt, type Place, placeAt, type Tree, treeAt } from './document.js';
import { knownFields } from './fields.js';
import { type WordingCode, type Words, wording } from './wording.js';

/** What the fields read by a schema belong to: a step's verb. */
export interface Owner {
  readonly name: string;
  readonly place: Place;
}

/**
 * What a schema found, as faults with a place, a sentence and a remedy.
 *
 * @param tree what the schema read, with the place of each value
 * @param where the file, and the step if these are its fields
 * @param owner absent: the fields are the sheet's own
 */
export function faultsOf(
  issues: readonly z.core.$ZodIssue[],
  tree: Tree,
  where: Where,
  owner?: Owner,
): readonly PatternError[] {
  const fault = (code: string, place: Place, message: string, remedy: string) =>
    new PatternError(code, { message, remedy, where: { ...where, ...place } });
  const ownerName = owner ? quoted(owner.name) : 'The sheet';
  const nameAt = (path: readonly PropertyKey[]) => fieldName(tree, path) ?? ownerName;
  const locate = (path: readonly PropertyKey[]) =>
    path.length === 0 && owner ? owner.place : placeAt(tree, path);

  return issues.flatMap((issue): readonly PatternError[] => {
    const missing = firstMissing(tree, issue.path);
    if (missing) {
      const parent = missing.slice(0, -1),
        field = fieldName(tree, missing)!;
      return [fault('missing-field', locate(parent), `${nameAt(parent)} lacks ${field}.`, `Add ${field}.`)];
    }
    const place = locate(issue.path),
      field = nameAt(issue.path);
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map(key =>
        fault(
          'unknown-field',
          keyPlaceAt(tree, issue.path, key),
          `${field} has no field ${quoted(key)}.`,
          suggestion(key, knownFields(issue.message), 'fields'),
        ),
      );
    if (issue.code === 'invalid_value') {
      const words = issue.values.map(String);
      const written = treeAt(tree, issue.path) ?? treeAt(tree, issue.path.slice(0, -1));
      const remedy = suggestion(written?.kind === 'scalar' ? String(written.value) : '', words, 'choices');
      return [fault('choice-not-understood', place, `${field} is none of its choices.`, remedy)];
    }
    if (issue.code === 'invalid_key') {
      const { what, remedy } = wording['name-not-printable'];
      return [
        fault('name-not-printable', place, `A name in ${nameAt(issue.path.slice(0, -1))} ${what}.`, remedy),
      ];
    }
    const code = (issue.message in wording ? issue.message : 'mapping-expected') as WordingCode;
    const own: Partial<Words> = issue.code === 'custom' ? (issue.params ?? {}) : {};
    const { what, remedy } = { ...wording[code], ...own };
    return [fault(code, place, `${field} ${what}.`, remedy)];
  });
}

/** `"pieces"`, or `"pieces", item 2,` where it is a list, or undefined for a path that names no field. */
function fieldName(tree: Tree, path: readonly PropertyKey[]): string | undefined {
  const last = path.findLastIndex(step => typeof step === 'string');
  if (last < 0) return undefined;
  const item = path[last + 1],
    field = quoted(String(path[last]));
  return typeof item === 'number' && treeAt(tree, path.slice(0, last + 2))
    ? `${field}, item ${item + 1},`
    : field;
}

/** The first part of a path that the sheet does not have, or left empty. One value stands for a list of one. */
function firstMissing(tree: Tree, path: readonly PropertyKey[]): readonly PropertyKey[] | undefined {
  for (let end = 1; end <= path.length; end++) {
    const part = path.slice(0, end);
    const found = treeAt(tree, part);
    if (found && !(found.kind === 'scalar' && found.value === null)) continue;
    if (typeof part.at(-1) === 'number') return undefined;
    return part;
  }
  return undefined;
}
