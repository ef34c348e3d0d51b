import type { AnyVerb } from '@paperhinge/alter';
import { inSheet } from '@paperhinge/alter/verb';
import { measureForms } from '../fields/measure.js';
import { fieldTable } from './field-table.js';
import { sentenceOf, stepLine } from './sentence.js';
import { measuredExample, sheetExample } from './sheet-example.js';

/** A verb with what its worked example came to. */
export interface Worked {
  readonly verb: AnyVerb;
  /** What the step says it did. */
  readonly did: string;
  /** The picture of before and after, relative to the page. */
  readonly picture: string;
}

/** The reference of all verbs as Markdown. */
export const verbsPage = (worked: readonly Worked[]): string =>
  `# The verbs of an alteration sheet

Written from the declarations of the verbs; the examples are done to the patterns in [demos/patterns](../../demos/patterns). Dashes: before. Full lines: after.

A length is written \`12\`, \`12 mm\`, \`1.2 cm\`, \`3/8 in\` or \`2 7/8"\`; a bare number is in the sheet's \`unit\`. A place on an edge is \`1/3\`, \`40 %\` or \`60 mm\` from the edge's start (clockwise), or \`1/3 from EDGE\`, \`60 mm from EDGE\`. A percentage needs its sign. One name may stand for a list of one. An amount (a length, an angle or a percentage) may instead be what it is to bring about, \`{ so that: sweep of skirt.hem, is: 180 cm }\`, exactly or between two figures, \`is: [58 cm, 60 cm]\`; the smallest amount that does it is found on the pattern itself and told. What can be measured: ${measureForms.map(form => `\`${form}\``).join(', ')}; of an area, \`is\` has its unit, \`150 cm2\`. One step may hold two of them.

A step with \`off: yes\` beside its verb stands in the sheet and is not done.

Editors complete and check a sheet whose first line names the schema:

\`\`\`yaml
# yaml-language-server: $schema=node_modules/@paperhinge/sheet/sheet.schema.json
\`\`\`

${worked.map(({ verb }) => `[${verb.verb}](#${anchor(verb)})`).join(' · ')} · [what else a sheet says](#what-else-a-sheet-says) · [pieces measured on paper](#pieces-measured-on-paper)

${worked.map(section).join('\n')}
## Names, sums and other sheets

Figures kept under \`let:\` stand wherever a figure does, alone or in a sum with spaces round its signs: \`by: hem drop / 2 + 1 cm\`. The wearer's figures are there under their own names: \`by: hip girth / 8\`.

The steps of another sheet stand in the place of one step, with other figures and for another pattern's names:

\`\`\`yaml
- include:
    sheet: shift-to-top.yaml          # from this sheet's folder
    let: { hem drop: 18 cm }
    names: { pieces: { front: bodice }, edges: { front.hem: lower edge }, seams: { side: side seam } }
\`\`\`

\`names\` has \`pieces\`, \`edges\`, \`darts\`, \`lines\`, \`marks\`, \`seams\` and \`fabrics\`; what lies on a piece is named with it, as the other sheet has them. \`paperhinge sheet record.json -o FILE\` turns the record of an alteration back into a sheet.

## What else a sheet says

Every other field, none of which must be there but \`pattern\`, which may be left out where all pieces are measured:

\`\`\`yaml
${sheetExample}
\`\`\`

## Pieces measured on paper

A piece may be given as it is read off paper with ruler, square and tape. A dart of three points opens into the edge that names its two outer ones one after the other, \`darts: { bust: [P, R, Q] }\`; one of four lies within the piece. \`paperhinge trace SHEET -o PATTERN.svg\` writes such pieces as a pattern.

\`\`\`yaml
${measuredExample}
\`\`\`
`;

const anchor = ({ verb }: AnyVerb): string => verb.replaceAll(' ', '-');

function section({ verb, did, picture }: Worked): string {
  const { step, pattern, after = [] } = verb.example;
  const either = (verb.oneOf ?? []).map(
    names => `Exactly one of ${names.map(name => `\`${inSheet(name)}\``).join(', ')} is given.\n\n`,
  );
  return `## ${verb.verb}

${verb.does}

${fieldTable(verb)}

${either.join('')}On \`${pattern}\`:

\`\`\`yaml
${[...after.flatMap(Object.entries), [verb.verb, step] as const].map(([name, given]) => stepLine(name, given)).join('\n')}
\`\`\`

${sentenceOf(verb, step)} → ${did}

![${verb.verb}: before and after](${picture})
`;
}
