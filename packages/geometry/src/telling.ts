/** The place a fault or finding speaks of; each part is given where it is known. */
export interface Where {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly piece?: string;
  readonly edge?: string;
  readonly dart?: string;
  readonly seam?: string;
  readonly step?: number;
}

/** A thing of a pattern that is spoken of, by its names. */
export interface Thing {
  readonly piece?: string;
  readonly edge?: string;
  readonly dart?: string;
  readonly pleat?: string;
  readonly line?: string;
  readonly mark?: string;
  readonly notch?: string;
  readonly seam?: string;
  readonly fabric?: string;
  readonly fastening?: string;
}

/**
 * A figure or a reference behind a saying. A number's name ends in its unit (`differenceMm`, `angleDeg`,
 * `ratioPercent`); one without is a count.
 */
export type Fact = number | string | boolean | Thing | Saying | readonly (number | string | Thing | Saying)[];

/** The facts of a saying, by name. */
export type Facts = Readonly<Record<string, Fact | undefined>>;

/** Something to be said, not yet in words: a stable code and the facts that its sentence is made of. */
export interface Saying {
  readonly code: string;
  readonly facts: Facts;
}

/** Something to be told of a place: words for it are found by its code. */
export interface Tellable extends Saying {
  readonly where: Where;
}

/** How a finding weighs: to know, to look at, or it will not sew or fit. */
export type Severity = 'note' | 'warning' | 'fault';

/** Something a maker can live with or must decide about: data, not an exception. A `fault` will not sew or fit. */
export interface Finding {
  readonly severity: Severity;
  /** Stable, lower case with hyphens, for programs. */
  readonly code: string;
  readonly where: Where;
  /** Named figures behind the finding, in mm, degrees or percent as the name says (`differenceMm`, `angleDeg`). */
  readonly figures?: Readonly<Record<string, number>>;
  /** What else its sentence speaks of: edges, seams, names. */
  readonly about?: Facts;
}
