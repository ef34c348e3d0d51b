import type { Pattern, Saying, Thing } from '@paperhinge/geometry';

const kinds = ['edge', 'dart', 'pleat', 'line', 'mark'] as const;

/** What a saying speaks of, as it lights up on the table: `front.hem`, `front.` for a whole piece, both sides of a seam. */
export function spokenOf(saying: Saying | string, pattern: Pattern): readonly string[] {
  if (typeof saying === 'string') return [];
  const found = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    const { piece, seam } = value as Thing;
    const part = kinds.map(kind => (value as Thing)[kind]).find(name => name !== undefined);
    if (typeof piece === 'string') found.add(`${piece}.${part ?? ''}`);
    const sewn = typeof seam === 'string' ? pattern.seams.find(s => s.name === seam) : undefined;
    for (const run of sewn ? [...sewn.a, ...sewn.b] : []) found.add(`${run.piece}.${run.edge}`);
    for (const inner of Object.values(value)) look(inner);
  };
  look(saying.facts);
  return [...found];
}
