/** What an example of the reference changes in a plain piece, a quarter of a skirt. */
export interface Drawn {
  /** Attributes of the drawing. */
  readonly root?: string;
  /** Attributes of the piece. */
  readonly piece?: string;
  /** Attributes of its edges. */
  readonly edges?: Partial<Record<'waist' | 'side' | 'hem' | 'centre', string>>;
  /** The line of the waist, where something interrupts it. */
  readonly waist?: string;
  /** What lies in the piece besides. */
  readonly inside?: string;
  /** All that the piece holds, instead. */
  readonly content?: string;
  /** The JSON block. */
  readonly metadata?: string;
}

/** The drawing of an example: a whole file, 120 by 80 mm, that a reader reads and a browser shows. */
export function exampleDrawing(title: string, example: Drawn): string {
  const { root, piece, edges = {}, waist, inside, content, metadata } = example;
  const edge = (name: keyof typeof edges, otherwise: string, d: string): string =>
    `    <path data-edge="${name}"${attributesOf(edges[name] ?? otherwise)} d="${d}"/>`;
  const size = 'width="120mm" height="80mm" viewBox="0 0 120 80"';
  const version = root?.includes('data-paperhinge') ? '' : ' data-paperhinge="2"';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size}${version}${attributesOf(root)}>`,
    `  <title>${title}</title>`,
    ...(metadata === undefined ? [] : [`  <metadata>${metadata}</metadata>`]),
    `  <g data-piece="front"${attributesOf(piece)} data-allowance="5mm" fill="none" stroke="#222222" stroke-width="0.5">`,
    ...(content === undefined
      ? [
          edge('waist', '', waist ?? 'M40 10 H85'),
          edge('side', '', 'M85 10 L100 70'),
          edge('hem', '', 'M100 70 H40'),
          edge('centre', 'data-kind="fold" stroke-dasharray="6 2 1 2"', 'M40 70 V10'),
        ]
      : [`    ${content}`]),
    ...(inside === undefined ? [] : [`    ${inside}`]),
    '  </g>',
    '</svg>',
    '',
  ].join('\n');
}

const attributesOf = (text: string | undefined): string => (text ? ` ${text}` : '');
