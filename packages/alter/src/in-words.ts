import type { Saying } from '@paperhinge/geometry';

/** A sentence that is in words already, such as a maker's own note. */
export const inWords = (text: string): Saying => ({ code: 'said', facts: { text } });
