import type { AnyVerbForm } from '@paperhinge/alter';

type Given = Readonly<Record<string, unknown>>;

/** What a verb says of a step, each value in emphasis: "Close the *bust* dart of the *front* into the *hem*." */
export function sentenceOf({ sentence }: AnyVerbForm, step: Given): string {
  const chosen = sentence.replace(/\[([^\]]*)\]/g, (_, part: string) =>
    fieldsIn(part).every(field => valueAt(step, field) !== undefined) ? part : '',
  );
  return `${chosen.replace(/\{([^}]*)\}/g, (_, field: string) => emphasised(valueAt(step, field)))}.`;
}

const fieldsIn = (part: string): readonly string[] => [...part.matchAll(/\{([^}]*)\}/g)].map(m => m[1]!);

function valueAt(step: Given, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Given)[key] : undefined),
      step,
    );
}

function emphasised(value: unknown): string {
  const words = [value].flat().map(one => `*${spoken(one)}*`);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** One of several things, each with its own fields: its values in their order. */
const spoken = (value: unknown): string =>
  typeof value === 'object' && value !== null ? Object.values(value).map(spoken).join(' ') : String(value);

/** A step as one line of a sheet. */
export const stepLine = (verb: string, step: Given): string => `- ${verb}: ${flow(step)}`;

function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  return `{ ${Object.entries(value)
    .map(([key, inner]) => `${key}: ${flow(inner)}`)
    .join(', ')} }`;
}
