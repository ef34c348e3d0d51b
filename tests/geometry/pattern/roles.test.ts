import {
  at,
  definePattern,
  definePiece,
  type EdgeKind,
  type EdgeRole,
  edgeNamed,
  type Path,
  type Piece,
  pathOf,
  pieceRoleOf,
  polyline,
  readPattern,
  roleOf,
  writePattern,
} from '@paperhinge/geometry';
import {
  edgesOfRole,
  guessFindings,
  isCentreLine,
  lineRoleOf,
  markRoleOf,
} from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { toldFinding } from '../../support/told.js';

const curve = (...[a, b, c, d]: readonly [number, number][]): Path =>
  pathOf([at(...a!), at(...b!), at(...c!), at(...d!)]);
const straight = (...points: readonly [number, number][]): Path => polyline(...points.map(p => at(...p)));

/** A quarter bodice whose edges are called as one likes: neck, shoulder, armhole, side, hem, centre. */
const bodice = (
  names: readonly [string, string, string, string, string, string],
  kinds: readonly EdgeKind[] = [],
): Piece =>
  definePiece({
    name: 'x',
    outline: [
      { path: curve([0, 70], [50, 70], [70, 40], [75, 0]) },
      { path: straight([75, 0], [190, 40]) },
      { path: curve([190, 40], [180, 110], [170, 190], [240, 200]) },
      { path: straight([240, 200], [250, 600]) },
      { path: straight([250, 600], [0, 600]) },
      { path: straight([0, 600], [0, 70]) },
    ].map((edge, i) => ({ ...edge, name: names[i]!, kind: kinds[i] ?? 'seam' })),
  });

const quarter = (name: string): EdgeRole | undefined => {
  const piece = bodice([name, 'b', 'c', 'd', 'e', 'f']);
  return roleOf(edgeNamed(piece, name));
};

describe('what an edge is called', () => {
  test.each<[EdgeRole, readonly string[]]>([
    [
      'neck',
      [
        'neck',
        'front-neckline',
        'Halsloch',
        'vorderer Halsausschnitt',
        'encolure dos',
        'escote',
        'scollo',
        'halslijn',
      ],
    ],
    [
      'armhole',
      ['armhole', 'Armloch', 'Ärmelloch', 'Aermelloch', 'emmanchure', 'sisa', 'giromanica', 'armsgat'],
    ],
    ['cap', ['cap', 'sleeve cap', 'Ärmelkugel', 'tête de manche', 'mouwkop']],
    ['shoulder', ['shoulder', 'Schulternaht', 'épaule', 'hombro', 'spalla', 'schoudernaad']],
    ['side', ['side-upper', 'Seitennaht', 'côté', 'costado', 'fianco', 'zijnaad']],
    ['hem', ['hem', 'Rocksaum', 'ourlet', 'dobladillo', 'orlo', 'zoom']],
    ['waist', ['waist', 'Taillennaht', 'taille', 'cintura', 'vita']],
    ['crotch', ['crotch', 'Schrittnaht', 'fourche', 'tiro', 'cavallo', 'kruisnaad']],
    ['centre', ['centre-front', 'center back', 'vordereMitte', 'milieu devant', 'middenvoor']],
    ['opening', ['side-slit', 'Seitenschlitz', 'fente', 'rits']],
  ])('%s', (role, names) => {
    for (const name of names) expect([name, quarter(name)]).toEqual([name, role]);
  });

  test('a word within another word tells nothing', () => {
    for (const name of ['inside', 'outsider', 'capital', 'zoomed', 'colour', 'basis'])
      expect(quarter(name)).not.toBe('side');
    expect(['capital', 'zoomed', 'colour', 'basis'].map(quarter)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

test('the shape of a bodice tells neck, shoulder, armhole and side where its names tell nothing', () => {
  const names = ['k1', 'k2', 'k3', 'k4', 'k5', 'k6'] as const;
  const piece = bodice(names, ['seam', 'seam', 'seam', 'seam', 'hem', 'fold']);
  expect(names.map(name => roleOf(edgeNamed(piece, name)))).toEqual([
    'neck',
    'shoulder',
    'armhole',
    'side',
    'hem',
    'centre',
  ]);
  expect(pieceRoleOf(piece)).toBe('bodice');
});

test('without a hem or a centre a shape is not guessed at', () => {
  const piece = bodice(['k1', 'k2', 'k3', 'k4', 'k5', 'k6']);
  expect(edgesOfRole(piece, 'neck', 'shoulder', 'armhole', 'side')).toEqual([]);
});

test('what is sewn to an armhole is a cap, and the seam of a sleeve to itself its underarm', () => {
  const sleeve = definePiece({
    name: 'Manche',
    outline: [
      { name: 'a', path: curve([0, 100], [60, 0], [140, 0], [200, 100]) },
      { name: 'b', path: straight([200, 100], [180, 500]) },
      { name: 'c', path: straight([180, 500], [20, 500]), kind: 'hem' },
      { name: 'd', path: straight([20, 500], [0, 100]) },
    ],
  });
  const front = bodice(['neck', 'shoulder', 'armhole', 'side', 'hem', 'centre']);
  const run = (piece: string, edge: string) => ({ piece, edge, reversed: false });
  const { pieces } = definePattern({
    name: 'p',
    pieces: [front, sleeve],
    seams: [
      { name: 's', a: [run('Manche', 'a')], b: [run('x', 'armhole')], ease: { mm: 0 } },
      { name: 'u', a: [run('Manche', 'b')], b: [run('Manche', 'd')], ease: { mm: 0 } },
    ],
  });
  const [, told] = pieces as [Piece, Piece];
  expect(pieceRoleOf(told)).toBe('sleeve');
  expect(['a', 'b', 'c', 'd'].map(name => edgeNamed(told, name).role)).toEqual([
    'cap',
    'underarm',
    'hem',
    'underarm',
  ]);
});

test('a given role stays, is written and is read again; a guess is marked and not written', () => {
  const { outline } = bodice(['neck', 'b', 'c', 'd', 'e', 'f']);
  const piece = definePiece({
    name: 'ring',
    role: 'facing',
    outline: outline.parts.map(part =>
      part.type === 'edge' && part.name === 'b'
        ? { name: 'b', path: part.path, role: 'armhole' as const }
        : part,
    ),
  });
  expect(edgeNamed(piece, 'b')).toMatchObject({ role: 'armhole' });
  expect(edgeNamed(piece, 'b').roleGuessed).toBeUndefined();
  expect(edgeNamed(piece, 'neck')).toMatchObject({ role: 'neck', roleGuessed: true });
  const written = writePattern(definePattern({ name: 'p', pieces: [piece] }));
  expect(written).toContain('data-role="facing"');
  expect(written).toContain('data-role="armhole"');
  expect(written).not.toContain('data-role="neck"');
  const [again] = readPattern(written).pattern.pieces;
  expect(again).toMatchObject({ role: 'facing' });
  expect(again!.roleGuessed).toBeUndefined();
  expect(edgeNamed(again!, 'b').role).toBe('armhole');
});

test('a check that hangs on a guess can say so; the remedy ends it', () => {
  const piece = bodice(['Halsloch', 'b', 'c', 'd', 'e', 'f']);
  const [found] = guessFindings(piece, ['Halsloch']);
  expect(toldFinding(found!)).toMatchObject({
    severity: 'note',
    message: 'Going by its name and place, the Halsloch of the x was taken to be the neck.',
    remedy: 'Write data-role="neck" on it in the drawing, or what else it is.',
  });
  const written = writePattern(definePattern({ name: 'p', pieces: [piece] }));
  const given = readPattern(written.replace('data-edge="Halsloch"', 'data-edge="Halsloch" data-role="neck"'));
  expect(guessFindings(given.pattern.pieces[0]!, ['Halsloch'])).toEqual([]);
});

test('a word that is no role is told, and the role guessed', () => {
  const written = writePattern(
    definePattern({ name: 'p', pieces: [bodice(['neck', 'b', 'c', 'd', 'e', 'f'])] }),
  );
  const { pattern, findings } = readPattern(
    written.replace('data-edge="neck"', 'data-edge="neck" data-role="nek"'),
  );
  expect(findings).toContainEqual(expect.objectContaining({ code: 'role-not-known' }));
  expect(edgeNamed(pattern.pieces[0]!, 'neck')).toMatchObject({ role: 'neck', roleGuessed: true });
});

describe('what a piece is called', () => {
  test.each<[string, readonly string[]]>([
    ['facing', ['neck facing', 'Halsbeleg', 'parementure encolure', 'paramontura']],
    ['band', ['waistband', 'Halsbündchen', 'Bund', 'ceinture', 'tailleband']],
    ['cuff', ['sleeve cuff', 'Manschette', 'Ärmelbündchen', 'poignet', 'puño']],
    ['sleeve', ['sleeve', 'Ärmel', 'Aermel', 'manche', 'manga', 'manica', 'mouw']],
    ['lining', ['sleeve lining', 'Ärmelfutter', 'doublure', 'forro', 'fodera']],
    ['trouser', ['trouser front', 'Hose hinten', 'pantalon devant', 'broekspijp']],
    ['pocket', ['pocket bag', 'Seitentasche', 'poche', 'bolsillo']],
    ['collar', ['collar stand', 'Stehkragen', 'col', 'cuello', 'kraag']],
  ])('%s', (role, names) => {
    const { outline } = bodice(['a', 'b', 'c', 'd', 'e', 'f']);
    const edges = outline.parts.flatMap(part =>
      part.type === 'edge' ? [{ name: part.name, path: part.path }] : [],
    );
    for (const name of names)
      expect([name, definePiece({ name, outline: edges }).role]).toEqual([name, role]);
  });

  test('the cloth it is cut from tells a lining', () => {
    const { outline } = bodice(['a', 'b', 'c', 'd', 'e', 'f']);
    const piece = definePiece({
      name: 'front 2',
      outline: outline.parts.flatMap(part =>
        part.type === 'edge' ? [{ name: part.name, path: part.path }] : [],
      ),
      cutting: { fabric: 'pongee' },
    });
    const { pieces } = definePattern({
      name: 'p',
      pieces: [piece],
      fabrics: [{ name: 'pongee', role: 'lining' }],
    });
    expect(pieces[0]!.role).toBe('lining');
  });
});

test('levels and marks have roles in every language, too', () => {
  const { outline } = bodice(['neck', 'b', 'c', 'd', 'e', 'f']);
  const piece = definePiece({
    name: 'front',
    outline: outline.parts.flatMap(part =>
      part.type === 'edge' ? [{ name: part.name, path: part.path }] : [],
    ),
    lines: ['bust', 'Taille', 'hanches', 'Oberarm', 'vordere Mitte', 'gusset'].map(name => ({
      kind: 'level' as const,
      name,
      path: straight([10, 300], [200, 300]),
    })),
    marks: [
      { kind: 'point', name: 'Brustpunkt', at: at(90, 250) },
      { kind: 'Knopfloch', name: '1', at: at(20, 250) },
      { kind: 'drill', name: 'hole', at: at(30, 250) },
    ],
  });
  expect(piece.lines.map(lineRoleOf)).toEqual(['bust', 'waist', 'hip', 'upper arm', 'centre', undefined]);
  expect(piece.lines.map(isCentreLine)).toEqual([false, false, false, false, true, false]);
  expect(piece.marks.map(markRoleOf)).toEqual(['bust point', 'buttonhole', undefined]);
});

describe('a piece without a telling name is known by its edges', () => {
  const { outline } = bodice(['neck', 'shoulder', 'armhole', 'side', 'hem', 'centre']);
  const paths = outline.parts.flatMap(part => (part.type === 'edge' ? [part.path] : []));
  const roleWith = (...names: readonly string[]) =>
    definePiece({ name: 'back', outline: paths.map((path, i) => ({ name: names[i]!, path })) }).role;

  test.each<[string | undefined, readonly string[]]>([
    ['bodice', ['neck', 'shoulder', 'armhole', 'side', 'hem', 'centre']],
    ['bodice', ['yoke', 'a', 'armhole', 'side', 'hem', 'centre']],
    ['sleeve', ['cap', 'b', 'underarm', 'c', 'hem', 'd']],
    ['trouser', ['waist', 'b', 'crotch', 'inseam', 'hem', 'outseam']],
    ['skirt', ['waist', 'b', 'c', 'side', 'hem', 'centre']],
    ['skirt', ['yoke', 'b', 'c', 'side', 'hem', 'centre']],
    [undefined, ['a', 'b', 'c', 'd', 'e', 'f']],
  ])('%s', (role, names) => {
    expect(roleWith(...names)).toBe(role);
  });
});
