// Our convention on plain SVG: which attributes there are, and where each of them says something. How each is meant,
// with a drawn example, stands in `reference.ts`; the words of the model itself stand in `pattern/words.ts`.

export const yesNo = ['yes', 'no'] as const;
export const drawnLines = ['stitching', 'cutting'] as const;

/** The version of the convention that is written; a file that names none is of before there were versions. */
export const version = 2;

/** What an element stands for: the attribute that says so, strongest first. */
export const meanings = ['notch', 'dart', 'pleat', 'edge', 'line', 'mark', 'outline'] as const;
export type Meaning = (typeof meanings)[number];

/** Where an attribute says something: `any` where it is inherited or harmless. */
export type Place = Meaning | 'root' | 'piece' | 'any';

/** Every attribute of ours, without `data-`, and where it says something. */
const attributes = {
  paperhinge: ['root'],
  pattern: ['root'],
  unit: ['root'],
  tolerance: ['root'],
  size: ['any'],
  piece: ['piece'],
  title: ['piece'],
  cut: ['piece'],
  mirrored: ['piece'],
  layers: ['piece'],
  'right-side-up': ['piece'],
  'also-cut': ['piece'],
  fabric: ['piece'],
  'greatest-stretch': ['piece'],
  note: ['piece'],
  edge: ['edge'],
  role: ['piece', 'edge', 'line', 'mark'],
  kind: ['edge'],
  allowance: ['any'],
  'corner-start': ['edge'],
  'corner-end': ['edge'],
  opening: ['edge'],
  finish: ['edge'],
  topstitch: ['edge'],
  interfacing: ['edge'],
  'left-to-true': ['edge'],
  dart: ['dart'],
  pressed: ['dart'],
  pleat: ['pleat'],
  'pleat-kind': ['pleat'],
  towards: ['pleat'],
  stitched: ['pleat'],
  notch: ['notch'],
  on: ['notch'],
  line: ['line'],
  mark: ['mark'],
  name: ['any'],
  outline: ['outline'],
  'line-drawn': ['any'],
  'included-allowance': ['any'],
  derived: ['any'],
} as const satisfies Readonly<Record<string, readonly Place[]>>;

export type AttributeName = keyof typeof attributes;

/** Every attribute of ours, without `data-`. */
export const ourAttributes = Object.keys(attributes) as readonly AttributeName[];

/** Attributes that only our patterns carry; drawing programs write `data-name` and the like of their own. */
export const telling: readonly string[] = ['pattern', 'piece', ...meanings].map(name => `data-${name}`);

/** Where an attribute says something; nothing for one that is not ours. */
export const placesOf = (attribute: string): readonly Place[] =>
  Object.hasOwn(attributes, attribute) ? attributes[attribute as AttributeName] : [];

/** Keys of the JSON block in `metadata`, and of what stands in it. */
export const metadataKeys = ['seams', 'fabrics', 'fastenings', 'madeFor'] as const;
export const seamKeys = ['a', 'b', 'ease', 'takenUp', 'tolerance'] as const;
export const fabricKeys = ['width', 'stretch', 'recovery', 'nap', 'repeat', 'role'] as const;
export const fasteningKeys = [
  'kind',
  'along',
  'length',
  'count',
  'spacing',
  'size',
  'relaxed',
  'sort',
  'overlap',
  'underlap',
] as const;
