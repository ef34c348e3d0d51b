/** The few words of the engine's own, beside what the catalogue says; one table a language. */
interface EngineWords {
  readonly cut: (count: number, how: 'fold' | 'mirrored' | 'alike') => string;
  readonly was: string;
  readonly turnedUp: string;
  readonly allowance: string;
  readonly onFold: string;
  readonly allRound: string;
  readonly line: string;
  readonly of: (some: number, all: number) => string;
  readonly sewTogether: string;
  readonly headPasses: string;
  readonly headLacks: string;
  readonly hemSweep: string;
  readonly faults: string;
  readonly notes: (toLookAt: number) => string;
}

const english: EngineWords = {
  cut: (count, how) =>
    `cut ${count}${how === 'fold' ? ' on the fold' : how === 'mirrored' ? ', mirrored' : ''}`,
  was: 'was',
  turnedUp: 'turned up',
  allowance: 'allowance',
  onFold: 'on the fold',
  allRound: 'all round',
  line: 'Line',
  of: (some, all) => `${some} of ${all}`,
  sewTogether: 'seams sew together',
  headPasses: 'to spare over the head',
  headLacks: 'missing for the head',
  hemSweep: 'hem sweep',
  faults: 'will not do',
  notes: toLookAt => (toLookAt > 0 ? `notes, ${toLookAt} to look at` : 'notes'),
};

const german: EngineWords = {
  cut: (count, how) =>
    `${count} × zuschneiden${how === 'fold' ? ' im Bruch' : how === 'mirrored' ? ', gegengleich' : ''}`,
  was: 'war',
  turnedUp: 'Saum',
  allowance: 'Zugabe',
  onFold: 'Bruch',
  allRound: 'rundum',
  line: 'Zeile',
  of: (some, all) => `${some} von ${all}`,
  sewTogether: 'Nähten passen',
  headPasses: 'Luft für den Kopf',
  headLacks: 'fehlen für den Kopf',
  hemSweep: 'Saumweite',
  faults: 'geht so nicht',
  notes: toLookAt => (toLookAt > 0 ? `Hinweise, ${toLookAt} anzusehen` : 'Hinweise'),
};

/** By the tag of the reader's language. */
export const engineWords = (language: string): EngineWords => (language === 'de' ? german : english);
