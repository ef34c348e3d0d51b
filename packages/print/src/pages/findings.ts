import type { Finding, Pattern } from '@paperhinge/geometry';
import type { Arrangement } from '../place/arrangement.js';
import { sliver } from '../place/slivers.js';

/** What the pages cannot show as a maker needs it: a piece without a grain line, a sliver that no place avoids. */
export function pageFindings(pattern: Pattern, arrangement: Arrangement, paper: string): readonly Finding[] {
  return [...grainFindings(pattern), ...sliverFindings(pattern, arrangement, paper)];
}

/** None is invented: which way a piece lies on the cloth is the maker's to say. */
const grainFindings = (pattern: Pattern): readonly Finding[] =>
  pattern.pieces
    .filter(piece => !piece.lines.some(l => l.kind === 'grain'))
    .map(piece => ({
      severity: 'warning',
      code: 'no-grain-line',
      where: { piece: piece.name },
      message: 'The piece has no grain line, so none is printed on it.',
      remedy: 'Draw a line with data-line="grain" in the piece, along the lengthwise threads.',
    }));

function sliverFindings(pattern: Pattern, { slivers }: Arrangement, paper: string): readonly Finding[] {
  // Blocks that are laid ahead of the pieces come first in the arrangement.
  const own = slivers.slice(slivers.length - pattern.pieces.length);
  return own.flatMap((pages, i): readonly Finding[] =>
    pages.length === 0
      ? []
      : [
          {
            severity: 'warning',
            code: 'sliver-on-page',
            where: { piece: pattern.pieces[i]!.name },
            figures: { pages: pages.length },
            message: `On ${paper} the piece reaches less than ${sliver} mm onto ${pages.length === 1 ? 'a page' : `${pages.length} pages`} wherever it is laid.`,
            remedy: 'Take care not to lose that strip, or print on a larger paper or the other way up.',
          },
        ],
  );
}
