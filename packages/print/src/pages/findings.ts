import type { Finding, Pattern } from '@paperhinge/geometry';
import type { Arrangement } from '../place/arrangement.js';
import { sliver } from '../place/slivers.js';
import { finding } from '../tellings.js';

/** What the pages cannot show as a maker needs it: a piece without a grain line, a sliver that no place avoids. */
export function pageFindings(pattern: Pattern, arrangement: Arrangement, paper: string): readonly Finding[] {
  return [...grainFindings(pattern), ...sliverFindings(pattern, arrangement, paper)];
}

/** None is invented: which way a piece lies on the cloth is the maker's to say. */
export const grainFindings = (pattern: Pattern): readonly Finding[] =>
  pattern.pieces
    .filter(piece => !piece.lines.some(l => l.kind === 'grain'))
    .map(piece => finding('warning', 'no-grain-printed', { piece: piece.name }, {}));

function sliverFindings(pattern: Pattern, { slivers }: Arrangement, paper: string): readonly Finding[] {
  // Blocks that are laid ahead of the pieces come first in the arrangement.
  const own = slivers.slice(slivers.length - pattern.pieces.length);
  return own.flatMap(({ length: pages }, i) => {
    const where = { piece: pattern.pieces[i]!.name };
    return pages > 0
      ? [finding('warning', 'sliver-on-page', where, { paper, pages, narrowestMm: sliver })]
      : [];
  });
}
