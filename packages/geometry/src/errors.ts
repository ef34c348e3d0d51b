/** The place a fault or finding speaks of; each part is given where it is known. */
export interface Where {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly piece?: string;
  readonly edge?: string;
  readonly step?: number;
}

/** What went wrong and what to do about it, in sentences a maker understands. */
export interface Fault {
  readonly message: string;
  readonly remedy: string;
  readonly where?: Where;
}

/**
 * Input that cannot be used. `code` is stable and meant for programs; `message` and `remedy` are for people.
 * Inner geometry throws without `where`; the caller that knows the place adds it with {@link locating}.
 */
export class PatternError extends Error {
  readonly code: string;
  readonly where: Where;
  readonly remedy: string;

  constructor(code: string, { message, remedy, where = {} }: Fault) {
    super(message);
    this.name = 'PatternError';
    this.code = code;
    this.where = where;
    this.remedy = remedy;
  }
}

/**
 * Runs `work`; a `PatternError` that passes gets the parts of `where` it does not have yet.
 * @throws whatever `work` throws
 */
export function locating<T>(where: Where, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const { code, message, remedy } = error;
    throw new PatternError(code, { message, remedy, where: { ...where, ...error.where } });
  }
}

/** How a finding weighs: to know, to look at, or it will not sew or fit. */
export type Severity = 'note' | 'warning' | 'fault';

/** Something a maker can live with or must decide about: data, not an exception. A `fault` will not sew or fit. */
export interface Finding {
  readonly severity: Severity;
  /** Stable, lower case with hyphens, for programs. */
  readonly code: string;
  readonly where: Where;
  readonly message: string;
  /** Named figures behind the message, in mm, degrees or percent as the name says (`differenceMm`, `angleDeg`). */
  readonly figures?: Readonly<Record<string, number>>;
  readonly remedy: string;
}
