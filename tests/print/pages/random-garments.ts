import { at, type Edge, line, type Path, type Pattern, type Piece, pathOf } from '@paperhinge/geometry';

/** Numbers from 0 to 1, the same for the same seed (Park and Miller, 1988). */
export function numbersFrom(seed: number): () => number {
  let state = (seed * 7919 + 1) % 2147483647 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** A panel with a shaped side, such as a gore, a sleeve or a bodice half. */
function panel(name: string, cloth: string, next: () => number): Piece {
  const [width, height] = [40 + next() * 460, 40 + next() * 900];
  const top = width * (0.2 + 0.8 * next());
  const allowance = [0, 6, 10, 15][Math.floor(next() * 4)]!;
  const edge = (edgeName: string, path: Path, kind: Edge['kind'] = allowance > 0 ? 'seam' : 'raw'): Edge => ({
    type: 'edge',
    name: edgeName,
    path,
    kind,
    allowance: kind === 'seam' || kind === 'hem' ? allowance : 0,
    corners: {},
  });
  const grain = pathOf(line(at(top / 3, height * 0.2), at(top / 3, height * 0.8)));
  return {
    name,
    title: name,
    outline: {
      parts: [
        edge('top', pathOf(line(at(0, 0), at(top, 0)))),
        edge(
          'side',
          pathOf([at(top, 0), at(top, height / 3), at(width, (2 * height) / 3), at(width, height)]),
        ),
        edge('hem', pathOf(line(at(width, height), at(0, height)))),
        edge('centre', pathOf(line(at(0, height), at(0, 0))), next() < 0.3 ? 'fold' : undefined),
      ],
    },
    notches: [],
    lines: next() < 0.8 ? [{ kind: 'grain', name: 'grain', path: grain }] : [],
    marks: [],
    cutting: { count: 1, mirrored: false, fabric: cloth },
  };
}

/** A garment of 1 to 40 pieces of up to three cloths; now and then all of them alike, as gores are. */
export function randomGarment(seed: number): Pattern {
  const next = numbersFrom(seed);
  const count = 1 + Math.floor(next() * 40);
  const cloths = ['main', 'lining', 'interfacing'].slice(0, 1 + Math.floor(next() * 3));
  const alike = next() < 0.3 ? Math.floor(next() * 1e6) : undefined;
  const pieces = Array.from({ length: count }, (_, i) =>
    panel(`piece ${i + 1}`, cloths[i % cloths.length]!, alike === undefined ? next : numbersFrom(alike)),
  );
  return {
    name: `Garment ${seed}`,
    unit: 'mm',
    pieces,
    seams: [],
    fabrics: cloths.map(name => ({ name, role: name === 'main' ? 'main' : 'lining' })),
  };
}
