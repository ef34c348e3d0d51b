import type { HelpConfiguration } from 'commander';
import type { UsageTexts } from './english.js';

/** How the help, and what is wrong with the arguments, is said in one language. */
export interface Usage {
  readonly texts: UsageTexts;
  /** The headings and remarks that commander sets; absent = as it sets them. */
  readonly help?: HelpConfiguration;
  /** What commander says is wrong, in this language. */
  readonly wrong: (code: string, message: string) => string;
}
