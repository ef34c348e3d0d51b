import {
  type Edge,
  type EdgeRef,
  edgeNamed,
  edgeNames,
  type Fastening,
  type Pattern,
  type Piece,
  type PieceRole,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
} from '@paperhinge/geometry';
import { dartsOf, edgeParts, pleatsOf } from '@paperhinge/geometry/pattern';
import { holdsEdge, isSewn } from '../edge-refs.js';
import { asThing, asThings, edgeLabel, type Job, job } from './jobs.js';
import { takenBetween } from './layers.js';
import { isLining, laidOnPieces, type MadePiece } from './pieces.js';
import { isOpenWhole } from './seam-parts.js';
import { saying } from './sentences.js';
import { tieJobs } from './tie-jobs.js';

/** What is done while the pieces lie flat, before they are sewn to one another. */
export const flatJobs = (pattern: Pattern, made: readonly MadePiece[]): readonly Job[] => [
  ...made.filter(d => d.kind === 'stay').map(stayJob),
  ...made.filter(d => d.kind === 'interfacing').map(fusePieceJob),
  ...pattern.pieces.flatMap(piece => (isFused(pattern, piece) ? [fuseJob(piece)] : stripJobs(piece))),
  ...dartJobs(pattern),
  ...pattern.pieces.flatMap(pleatJobs),
  ...pattern.pieces.flatMap(insetJobs),
  ...pocketJobs(pattern),
  ...pattern.pieces.filter(piece => isLayered(pattern, piece)).map(piece => layersJob(pattern, piece)),
  ...tieJobs(pattern),
  ...openingJobs(pattern),
];

const stayJob = ({ name, along }: MadePiece): Job =>
  job(
    'stay',
    `stay ${name}`,
    {
      text: saying('job-stay', { piece: { piece: name }, edges: asThings(along) }),
      called: saying('called-of-piece', { what: 'piece', piece: { piece: name } }),
    },
    { edges: along },
  );

/** Cut from interfacing besides: that is fused on first. */
function isFused(pattern: Pattern, piece: Piece): boolean {
  const isInterfacing = (fabric: string) =>
    fabric === 'interfacing' || pattern.fabrics.some(f => f.name === fabric && f.role === 'interfacing');
  return (piece.alsoCut ?? []).some(cutting => isInterfacing(cutting.fabric));
}

/** Strips of interfacing along edges of a piece that is not fused all over. */
const stripJobs = (piece: Piece): readonly Job[] =>
  edgeNames(piece)
    .map(name => edgeNamed(piece, name))
    .filter(edge => (edge.interfacing ?? 0) > 0)
    .map(({ name, interfacing }) => {
      const edge = { piece: piece.name, edge: name };
      const text = saying('job-fuse-strip', { edge, widthMm: interfacing! });
      const called = saying('called-of-edges', { what: 'interfacing', edges: [edge] });
      return job(
        'fuse',
        `fuse ${edgeLabel(edge)}`,
        { text, called },
        { edges: [edge], pieces: [piece.name] },
      );
    });

const fuseJob = ({ name }: Piece): Job =>
  job(
    'fuse',
    `fuse ${name}`,
    {
      text: saying('job-fuse', { piece: { piece: name } }),
      called: saying('called-of-piece', { what: 'interfacing', piece: { piece: name } }),
    },
    { pieces: [name] },
  );

/** Interfacing that is a piece of its own. */
function fusePieceJob({ name, along }: MadePiece): Job {
  const on = along[0]!.piece;
  return job(
    'fuse',
    `fuse ${name}`,
    {
      text: saying('job-fuse-piece', { piece: { piece: name }, on: { piece: on } }),
      called: saying('called-of-piece', { what: 'interfacing', piece: { piece: on } }),
    },
    { pieces: [on, name], alsoCalled: [`fuse ${on}`] },
  );
}

function dartJobs(pattern: Pattern): readonly Job[] {
  const all = pattern.pieces.flatMap(piece => [
    ...dartsOf(piece).map(dart => ({ piece, name: dart.name, edges: edgesAtMouth(piece, dart.name) })),
    ...piece.lines.filter(l => l.kind === 'dart').map(({ name }) => ({ piece, name, edges: [] })),
  ]);
  return all.map(({ piece, name, edges }) => {
    const short = `dart ${name}`,
      long = `dart ${piece.name}.${name}`;
    const alone = all.filter(d => d.name === name).length === 1;
    const dart = { piece: piece.name, dart: name };
    return job(
      'dart',
      alone ? short : long,
      { text: saying('job-dart', { dart }), called: saying('called-dart', { dart }) },
      { alsoCalled: [alone ? long : short], edges },
    );
  });
}

const pleatJobs = (piece: Piece): readonly Job[] =>
  pleatsOf(piece).map(({ name, kind, mouth, stitched }) => {
    const pleat = { piece: piece.name, pleat: name };
    const text = saying('job-pleat', { pleat, kind, takenMm: pathLength(mouth), stitchedMm: stitched });
    return job(
      'pleat',
      `pleat ${piece.name}.${name}`,
      { text, called: saying('called-pleat', { pleat }) },
      { alsoCalled: [`pleat ${name}`], edges: edgesAtMouth(piece, name) },
    );
  });

/** The edges that meet at the mouth of a dart or pleat. */
function edgesAtMouth(piece: Piece, name: string): readonly EdgeRef[] {
  const ring = piece.outline.parts;
  const i = ring.findIndex(p => p.type !== 'edge' && p.name === name);
  return [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!]
    .filter(p => p.type === 'edge')
    .map(p => ({ piece: piece.name, edge: p.name }));
}

const insetJobs = (piece: Piece): readonly Job[] =>
  edgeNames(piece)
    .filter(name => roleOf(edgeNamed(piece, name)) === 'inset')
    .map(name => {
      const edge = { piece: piece.name, edge: name };
      const called = saying('called-of-edges', { what: 'edge', edges: [edge] });
      return job(
        'inset',
        `inset ${edgeLabel(edge)}`,
        { text: saying('job-inset', { edge }), called },
        { edges: [edge] },
      );
    });

/** Pockets that no seam holds are sewn on by themselves. */
const pocketJobs = (pattern: Pattern): readonly Job[] =>
  laidOnPieces(pattern)
    .filter(p => ['pocket', 'placket'].includes(pieceRoleOf(p.piece) ?? ''))
    .map(({ piece: { name }, on }) =>
      job(
        'pocket',
        `pocket ${name}`,
        {
          text: saying('job-pocket', { piece: { piece: name }, on: on.map(piece => ({ piece })) }),
          called: saying('called-of-piece', { what: 'piece', piece: { piece: name } }),
        },
        { pieces: [name, ...on] },
      ),
    );

/** A collar, a cuff, a waistband or a tab of two layers is sewn to itself and turned before it is sewn on. */
function isLayered(pattern: Pattern, piece: Piece): boolean {
  if ((piece.cutting.layers ?? 1) < 2) return false;
  const role = pieceRoleOf(piece);
  const hasFreeEdge = edgeParts(piece).some(
    e => e.kind !== 'fold' && !isSewn(pattern, { piece: piece.name, edge: e.name }),
  );
  // A neckband is a ring: its ends are joined before its layers are, and it is turned by folding.
  return hasFreeEdge && (turnedLayers.has(role) || (role === 'band' && isWaistband(pattern, piece.name)));
}

const turnedLayers: ReadonlySet<PieceRole | undefined> = new Set<PieceRole | undefined>([
  undefined,
  'collar',
  'cuff',
  'strip',
]);

const isWaistband = (pattern: Pattern, band: string): boolean =>
  pattern.seams.some(({ a, b }) => {
    const runs = [...a, ...b];
    return (
      runs.some(r => r.piece === band) &&
      runs.some(r => r.piece !== band && roleOf(edgeNamed(pieceNamed(pattern, r.piece), r.edge)) === 'waist')
    );
  });

function layersJob(pattern: Pattern, { name }: Piece): Job {
  const called = saying('called-of-piece', { what: 'piece', piece: { piece: name } });
  const made = job(
    'layers',
    `layers ${name}`,
    { text: saying('job-layers', { piece: { piece: name } }), called },
    { pieces: [name] },
  );
  const between = takenBetween(pattern, made).flatMap(({ a, b }) =>
    [...a, ...b].filter(run => run.piece !== name).map(({ piece }) => ({ piece })),
  );
  return between.length === 0
    ? made
    : { ...made, text: saying('job-layers', { piece: { piece: name }, between }) };
}

/** Plackets, zips and slits; one that both sides of a seam speak of is one job. */
function openingJobs(pattern: Pattern): readonly Job[] {
  const zips = (pattern.fastenings ?? []).filter(f => f.kind === 'zip');
  // What is left open in a lining is for turning it, and no job.
  const garment = pattern.pieces.filter(piece => !isLining(pattern, piece));
  const edges = garment.flatMap(piece =>
    edgeNames(piece)
      .filter(edge => (edgeNamed(piece, edge).opening ?? 0) > 0)
      .map(edge => ({ piece: piece.name, edge }))
      .filter(ref => !(isOpenWhole(pattern, ref) && isSewn(pattern, ref))),
  );
  const partners = (ref: EdgeRef) => pattern.seams.filter(s => holdsEdge([...s.a, ...s.b], ref));
  const alike = (one: EdgeRef, other: EdgeRef) =>
    edgeLabel(one) === edgeLabel(other) || partners(one).some(s => partners(other).includes(s));
  const slits = edges.filter(
    (ref, i) => !edges.slice(0, i).some(e => alike(e, ref)) && !zips.some(z => alike(z.along, ref)),
  );
  return [
    ...garment.flatMap(frontEdgeJobs),
    ...zips.map(zip => zipJob(pattern, zip)),
    ...slits.map(ref => slitJob(pattern, ref)),
  ];
}

/** A front edge with a turning of its own is turned while the front lies flat. */
const frontEdgeJobs = (piece: Piece): readonly Job[] =>
  edgeNames(piece)
    .map(name => edgeNamed(piece, name))
    .filter(isFrontTurning)
    .map(({ name, allowance, finish }) => {
      const edge = { piece: piece.name, edge: name };
      const text = saying('job-hem', {
        edges: [edge],
        ...(finish === undefined ? {} : { finish }),
        ...(allowance > 0 ? { depthMm: allowance } : {}),
      });
      const called = saying('called-of-edges', { what: 'edge', edges: [edge] });
      return job('opening', `front ${edgeLabel(edge)}`, { text, called }, { edges: [edge] });
    });

/** Whether an edge is turned like a hem but closes the garment instead of ending it. */
export const isFrontTurning = (edge: Edge): boolean =>
  edge.kind === 'hem' && ['opening', 'centre'].includes(roleOf(edge) ?? '');

function zipJob(pattern: Pattern, { name, along, length, sort }: Fastening): Job {
  const edge = asThing(along),
    fastening = { fastening: name };
  const piece = pieceNamed(pattern, along.piece);
  const whole = () =>
    edgeParts(piece)
      .filter(e => e.name === along.edge)
      .reduce((sum, e) => sum + pathLength(e.path), 0);
  const lengthMm = length ?? edgeNamed(piece, along.edge).opening ?? whole();
  return job(
    'opening',
    `zip ${name}`,
    {
      text: saying('job-zip', { fastening, edge, lengthMm, ...(sort === undefined ? {} : { sort }) }),
      called: saying('called-fastening', { fastening }),
    },
    { edges: [along], alsoCalled: [`opening ${edgeLabel(along)}`] },
  );
}

function slitJob(pattern: Pattern, ref: EdgeRef): Job {
  const lengthMm = edgeNamed(pieceNamed(pattern, ref.piece), ref.edge).opening!;
  const edge = asThing(ref);
  return job(
    'opening',
    `opening ${edgeLabel(ref)}`,
    {
      text: saying('job-opening', { edge, lengthMm }),
      called: saying('called-of-edges', { what: 'opening', edges: [edge] }),
    },
    { edges: [ref] },
  );
}
