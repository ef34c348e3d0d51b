import { type Finding, PatternError, type Severity, type Where } from '../errors.js';
import { mostFindingsOfAKind } from './limits.js';
import { type Attribute, offsetWithin, type XmlDocument } from './xml.js';

export interface Said {
  readonly message: string;
  readonly remedy: string;
  readonly piece?: string | undefined;
  readonly edge?: string | undefined;
  readonly figures?: Readonly<Record<string, number>>;
}

/** Gathers what is to be said of one file; every finding and error gets its place there. */
export interface Report {
  add(severity: Severity, code: string, at: number, said: Said): void;
  addAt(severity: Severity, code: string, where: Where, said: Said): void;
  /** A finding made elsewhere, its place in the file already known. */
  take(finding: Finding): void;
  /** An error to throw, placed in the file. */
  error(code: string, at: number, said: Said): PatternError;
  where(at: number): Where;
  /** Where a character of an attribute's value stands in the file's text. */
  within(attribute: Attribute, index: number): number;
  /** Every finding so far; of a kind that came in masses the first ones and a count. */
  findings(): readonly Finding[];
}

export function reportOn(document: XmlDocument, file: string | undefined): Report {
  const found: Finding[] = [...document.findings];
  const counts = new Map<string, number>();
  const where = (at: number): Where => ({ ...(file === undefined ? {} : { file }), ...document.place(at) });
  const placed = (at: number, { piece, edge }: Said): Where => ({
    ...where(at),
    ...(piece === undefined ? {} : { piece }),
    ...(edge === undefined ? {} : { edge }),
  });
  const take = (finding: Finding): void => {
    const count = (counts.get(finding.code) ?? 0) + 1;
    counts.set(finding.code, count);
    if (count <= mostFindingsOfAKind) found.push(finding);
  };
  const addAt: Report['addAt'] = (severity, code, place, { message, remedy, figures }) =>
    take({ severity, code, where: place, message, remedy, ...(figures ? { figures } : {}) });
  return {
    add: (severity, code, at, said) => addAt(severity, code, placed(at, said), said),
    addAt,
    take,
    error: (code, at, said) =>
      new PatternError(code, { message: said.message, remedy: said.remedy, where: placed(at, said) }),
    where,
    within: (attribute, index) => offsetWithin(document.text, attribute, index),
    findings: () => [
      ...found,
      ...[...counts].flatMap(([code, count]): Finding[] =>
        count <= mostFindingsOfAKind
          ? []
          : [
              {
                severity: 'note',
                code,
                where: file === undefined ? {} : { file },
                message: `There are ${count - mostFindingsOfAKind} more findings of this kind.`,
                figures: { count },
                remedy: 'Mend the first ones; the others are like them.',
              },
            ],
      ),
    ],
  };
}
