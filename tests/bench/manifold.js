/** Names of the demo's pieces as the copy `k` of them has them; the first keeps its own. */
export const named = (name, k) => (k === 0 ? name : `${name} ${k + 1}`);

/** The pattern with its pieces and seams so often, each copy drawn beside the last. */
export function manifold({ pattern, findings }, times) {
  const copies = Array.from({ length: times }, (_, k) => k);
  const moved = (value, k) => {
    if (Array.isArray(value)) return value.map(v => moved(v, k));
    if (value === null || typeof value !== 'object') return value;
    if (typeof value.x === 'number') return { x: value.x + 1500 * k, y: value.y };
    return Object.fromEntries(Object.entries(value).map(([key, v]) => [key, moved(v, k)]));
  };
  const runs = (side, k) => side.map(r => ({ ...r, piece: named(r.piece, k) }));
  const pieces = copies.flatMap(k => pattern.pieces.map(p => ({ ...moved(p, k), name: named(p.name, k) })));
  const seams = copies.flatMap(k =>
    pattern.seams.map(s => ({ ...s, name: named(s.name, k), a: runs(s.a, k), b: runs(s.b, k) })),
  );
  return { pattern: { ...pattern, pieces, seams }, findings };
}
