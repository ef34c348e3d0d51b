import type { LengthUnit } from '@paperhinge/geometry';
import type { Sheet } from '@paperhinge/sheet';
import type { Language } from '@paperhinge/sheet/words';
import { loadSheet } from './load.js';
import { spokenIn } from './told.js';

/** What every command about one pattern may be told. */
export interface PatternArguments {
  readonly json?: boolean;
  readonly sheet?: string;
  readonly language?: Language;
}

/** How a pattern is to be read, and what it is to be answered in. */
export interface Reading {
  readonly sheet: Sheet | undefined;
  readonly language: Language;
  /** The sheet's unit if it names one. */
  readonly unit: LengthUnit | undefined;
}

/** Reads the sheet if there is one, then does the work; what is refused is told in the language asked for. */
export async function asAsked<T>(
  { sheet: path, language: asked }: PatternArguments,
  work: (reading: Reading) => Promise<T>,
): Promise<T> {
  const sheet = path === undefined ? undefined : await loadSheet(path);
  const language = asked ?? sheet?.language ?? 'en';
  const unit = sheet?.places.unit ? sheet.unit : undefined;
  return spokenIn({ language, unit: unit ?? 'mm' }, () => work({ sheet, language, unit }));
}
