import { complete, type Entry, metadataSays, reference } from './reference.js';
import { type Drawn, exampleDrawing } from './reference-drawing.js';
import {
  type AttributeName,
  fabricKeys,
  fasteningKeys,
  metadataKeys,
  ourAttributes,
  seamKeys,
} from './vocabulary.js';

/** A whole garment's block of seams, cloths and fastenings, as the reference shows it. */
export const metadataExample: Drawn = {
  edges: { side: 'data-opening="30 mm"', hem: 'data-kind="hem"' },
  inside: '<path data-line="grain" d="M60 60 V25"/>',
  metadata: `{
    "seams": {
      "centre": { "a": "front.side from waist, 30 mm to end", "b": "front.side from hem", "ease": "5 mm", "takenUp": "gathered", "tolerance": "2 mm" }
    },
    "fabrics": { "main": { "width": "150 cm", "stretch": { "across": "35 %", "along": "20 %" }, "recovery": "90 %", "nap": true, "repeat": "4 cm", "role": "main" } },
    "fastenings": {
      "zip": { "kind": "zip", "sort": "invisible", "along": "front.side from waist, start to 30 mm", "length": "30 mm" },
      "elastic": { "kind": "elastic", "along": "front.waist from side", "size": "2 cm", "relaxed": "35 mm" },
      "buttons": { "kind": "buttons", "along": "front.side from waist", "count": 3, "spacing": "2 cm", "size": "11 mm", "overlap": "2 cm", "underlap": "2 cm" }
    },
    "madeFor": { "front": ["front.waist"] }
  }`,
};

/** The file of an attribute's drawn example, beside the reference. */
export const exampleFile = (name: string): string => `pattern-svg/${name}.svg`;

/** Every example as [name, drawing]. */
export const examples = (): readonly (readonly [string, string])[] => [
  ...ourAttributes.map(name => [name, exampleDrawing(`data-${name}`, complete[name].example)] as const),
  ['metadata', exampleDrawing('metadata', metadataExample)],
];

/** `pattern-svg.md`: what every attribute and key says, each with its example. */
export function referenceText(): string {
  return [
    '# Pattern SVG',
    '',
    'A pattern is a plain SVG drawing that any vector program opens. What its lines mean is said by `data-` attributes and one block of JSON in `<metadata>`; all else is ordinary SVG: any unit, transform, group or shape. Coordinates are lengths of the drawing, so it says how large it is (`width="600mm" height="800mm" viewBox="0 0 600 800"`).',
    '',
    "The stitching line is drawn; the cutting line follows from it. `readPattern` and `writePattern` of `@paperhinge/geometry/svg` read and write it. This page is written from the reader's own list of attributes, and each example is read by a test.",
    '',
    codeOf(exampleDrawing('Skirt', { piece: 'data-title="Skirt front"' })),
    ...reference.flatMap(({ heading, entries }) => [
      `## ${heading}`,
      '',
      ...Object.entries(entries).map(([name, entry]) => entryText(name as AttributeName, entry)),
    ]),
    metadataText(),
  ].join('\n');
}

function entryText(name: AttributeName, { value, says, example }: Entry): string {
  return [
    `### data-${name}`,
    '',
    says,
    '',
    `Value: ${value}.`,
    '',
    `![data-${name}, drawn](${exampleFile(name)})`,
    '',
    codeOf(linesWith(`data-${name}=`, exampleDrawing(name, example))),
  ].join('\n');
}

/** The lines of a drawing that hold a text, set to the left: enough of an example to see where an attribute stands. */
function linesWith(text: string, drawing: string): string {
  const lines = drawing.split('\n').filter(line => line.includes(text));
  const indent = Math.min(...lines.map(line => line.search(/\S/)));
  return lines.map(line => line.slice(indent)).join('\n');
}

const codeOf = (drawing: string): string => ['```svg', drawing.trimEnd(), '```', ''].join('\n');

function metadataText(): string {
  const keys = (title: string, names: readonly (keyof typeof metadataSays)[]): readonly string[] => [
    title,
    '',
    ...names.map(name => `- \`${name}\`: ${metadataSays[name]}`),
    '',
  ];
  return [
    '## Seams, cloths and fastenings',
    '',
    'One JSON object within a `<metadata>` element of the drawing. A sheet may say the same (`seams:`, `fabrics:`, `fastenings:`), so that nobody has to edit JSON in a drawing.',
    '',
    ...keys('The block:', metadataKeys),
    ...keys('A seam:', seamKeys),
    ...keys('A cloth:', fabricKeys),
    ...keys('A fastening; lengths unless it says otherwise:', fasteningKeys),
    codeOf(exampleDrawing('metadata', metadataExample)),
  ].join('\n');
}
