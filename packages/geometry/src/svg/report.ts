import type { PatternError } from '../errors.js';
import type { Finding, Severity, Where } from '../telling.js';
import { mostFindingsOfAKind } from './limits.js';
import { finding, type ReadingTellings, refusal } from './tellings.js';
import { type Attribute, offsetWithin, type XmlDocument } from './xml.js';

/** The piece and edge that something in a file speaks of. */
export interface Owner {
  readonly piece?: string | undefined;
  readonly edge?: string | undefined;
}

type Code = keyof ReadingTellings & string;

/** Gathers what is to be said of one file; every finding and error gets its place there. */
export interface Report {
  add<C extends Code>(
    severity: Severity,
    code: C,
    at: number,
    facts: ReadingTellings[C],
    owner?: Owner,
  ): void;
  /** A finding made elsewhere, its place in the file already known. */
  take(finding: Finding): void;
  /** An error to throw, placed in the file. */
  refuse<C extends Code>(code: C, at: number, facts: ReadingTellings[C], owner?: Owner): PatternError;
  where(at: number, owner?: Owner): Where;
  /** Where a character of an attribute's value stands in the file's text. */
  within(attribute: Attribute, index: number): number;
  /** Every finding so far; of a kind that came in masses the first ones and a count. */
  findings(): readonly Finding[];
}

export function reportOn(document: XmlDocument, file: string | undefined): Report {
  const found: Finding[] = [...document.findings];
  const counts = new Map<string, number>();
  const named = file === undefined ? {} : { file };
  const where = (at: number, { piece, edge }: Owner = {}): Where => ({
    ...named,
    ...document.place(at),
    ...(piece === undefined ? {} : { piece }),
    ...(edge === undefined ? {} : { edge }),
  });
  const take = (one: Finding): void => {
    const count = (counts.get(one.code) ?? 0) + 1;
    counts.set(one.code, count);
    if (count <= mostFindingsOfAKind) found.push(one);
  };
  return {
    add: (severity, code, at, facts, owner) => take(finding(severity, code, where(at, owner), facts)),
    take,
    refuse: (code, at, facts, owner) => refusal(code, facts, where(at, owner)),
    where,
    within: (attribute, index) => offsetWithin(document.text, attribute, index),
    findings: () => [
      ...found,
      ...[...counts].flatMap(([kind, count]): Finding[] =>
        count <= mostFindingsOfAKind
          ? []
          : [finding('note', 'more-of-a-kind', named, { more: count - mostFindingsOfAKind, kind })],
      ),
    ],
  };
}
