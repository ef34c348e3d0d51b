import {
  dartsOf,
  type EdgeRef,
  edgeNamed,
  edgeNames,
  edgeParts,
  hemSweep,
  lengthInGarment,
  levelAcross,
  levelNames,
  neighboursOf,
  type Pattern,
  type Piece,
  pieceNamed,
  runLabel,
  timesInGarment,
} from '@paperhinge/geometry';
import type { Derived } from '../alteration.js';
import { isBias } from './bias.js';
import { edgeLabel, holdsEdge, type Job, job } from './jobs.js';

/** A hem that is longer than its piece's widest level by more than this is flared (common practice, no source). */
const flaredHem = 1.2;

/** Every job that a pattern and the pieces derived for it call for, in the order a sewing room would list them. */
export const gatherJobs = (pattern: Pattern, derived: readonly Derived[]): readonly Job[] => {
  const seams = seamJobs(pattern, derived);
  return [
    ...derived.filter(d => d.kind === 'stay').map(stayJob),
    ...dartJobs(pattern),
    ...insetJobs(pattern),
    ...openingJobs(pattern),
    ...seams.filter(s => s.edges.some(e => isShoulder(e.edge))),
    ...seams.filter(s => !s.edges.some(e => isShoulder(e.edge))),
    ...derived.flatMap(d => derivedJobs(pattern, d)),
    ...hemJobs(pattern, derived),
    ...buttonJobs(pattern),
  ];
};

export const isShoulder = (edge: string): boolean => /^shoulder/i.test(edge);

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const stayJob = ({ name, along }: Derived): Job =>
  job('stay', `stay ${name}`, `Sew ${name} to ${listed(along.map(edgeLabel))}.`, { edges: along });

function dartJobs(pattern: Pattern): readonly Job[] {
  const all = pattern.pieces.flatMap(piece => [
    ...dartsOf(piece).map(dart => ({ piece, name: dart.name, edges: edgesAtMouth(piece, dart.name) })),
    ...piece.lines.filter(l => l.kind === 'dart').map(({ name }) => ({ piece, name, edges: [] })),
  ]);
  return all.map(({ piece, name, edges }) => {
    const short = `dart ${name}`,
      long = `dart ${piece.name}.${name}`;
    const alone = all.filter(d => d.name === name).length === 1;
    return job(
      'dart',
      alone ? short : long,
      `Sew and press the dart ${name} of ${piece.title || piece.name}.`,
      {
        alsoCalled: [alone ? long : short],
        edges,
      },
    );
  });
}

function edgesAtMouth(piece: Piece, dart: string): readonly EdgeRef[] {
  const ring = piece.outline.parts;
  const i = ring.findIndex(p => p.type === 'dart' && p.name === dart);
  return [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!]
    .filter(p => p.type === 'edge')
    .map(p => ({ piece: piece.name, edge: p.name }));
}

const insetJobs = (pattern: Pattern): readonly Job[] =>
  pattern.pieces.flatMap(piece =>
    edgeNames(piece)
      .filter(edge => /^(inset|slit|keyhole)/i.test(edge))
      .map(edge =>
        job('inset', `inset ${piece.name}.${edge}`, `Finish ${piece.name}.${edge}.`, {
          edges: [{ piece: piece.name, edge }],
        }),
      ),
  );

/** Plackets, zips and slits; one that both sides of a seam speak of is one job. */
function openingJobs(pattern: Pattern): readonly Job[] {
  const edges = pattern.pieces.flatMap(piece =>
    edgeNames(piece)
      .filter(edge => (edgeNamed(piece, edge).opening ?? 0) > 0)
      .map(edge => ({ piece: piece.name, edge })),
  );
  const partners = (ref: EdgeRef) => pattern.seams.filter(s => holdsEdge([...s.a, ...s.b], ref));
  return edges
    .filter((ref, i) => !edges.slice(0, i).some(e => partners(e).some(s => partners(ref).includes(s))))
    .map(ref => {
      const { opening } = edgeNamed(pieceNamed(pattern, ref.piece), ref.edge);
      const text = `Make the opening of ${opening!.toFixed(0)} mm in ${edgeLabel(ref)}.`;
      return job('opening', `opening ${edgeLabel(ref)}`, text, { edges: [ref] });
    });
}

/** Seams between the pieces of the garment; those of derived pieces belong to the derived piece's own job. */
const seamJobs = (pattern: Pattern, derived: readonly Derived[]): readonly Job[] =>
  pattern.seams
    .filter(({ a, b }) => ![...a, ...b].some(r => derived.some(d => d.name === r.piece)))
    .map(({ name, a, b }) => {
      const side = (runs: typeof a) => listed([...new Set(runs.map(runLabel))]);
      const edges = [...a, ...b].map(({ piece, edge }) => ({ piece, edge }));
      return job('seam', `seam ${name}`, `Sew ${side(a)} to ${side(b)}.`, { edges });
    });

function derivedJobs(pattern: Pattern, d: Derived): readonly Job[] {
  const { name, kind, along, figures } = d;
  if (kind === 'stay') return [];
  const own = (runs: Pattern['seams'][number]['a']) => runs.every(r => r.piece === name);
  const called = (found: Pattern['seams']) => found.map(s => `seam ${s.name}`);
  const alsoCalled = called(pattern.seams.filter(s => own(s.a) !== own(s.b)));
  const edges = listed(along.map(edgeLabel));
  const sewn = job(kind === 'facing' ? 'facing' : 'band', `${kind} ${name}`, `Sew ${name} to ${edges}.`, {
    edges: along,
    alsoCalled,
  });
  if (kind !== 'band' || !((figures.joinMm ?? 0) > 0)) return [sewn];
  const ring = job('ring', `ring ${name}`, `Join the ends of ${name} into a ring.`, {
    alsoCalled: called(pattern.seams.filter(s => own(s.a) && own(s.b))),
  });
  const last = {
    ...sewn,
    after: [{ job: ring.job, because: 'it is sewn on as a ring, its marks on the marks of the edge' }],
  };
  if (!((figures.gapMm ?? 0) > 0)) return [ring, last];
  const turn = job(
    'turn',
    `turn ${name}`,
    `Sew ${name} to itself over the gap of ${figures.gapMm!.toFixed(0)} mm and turn it.`,
  );
  const because = 'once it is a ring the part over the gap can no longer be turned';
  return [turn, { ...ring, after: [{ job: turn.job, because }] }, last];
}

function hemJobs(pattern: Pattern, derived: readonly Derived[]): readonly Job[] {
  const covered = derived.filter(d => d.kind !== 'stay').flatMap(d => d.along);
  return hemSweep(pattern)
    .map(({ edges }) => edges.filter(e => !holdsEdge(covered, e)))
    .filter(edges => edges.length > 0)
    .flatMap(edges => {
      const names = edges.map(edgeLabel);
      const hem = job('hem', `hem ${names.join(' + ')}`, `Turn up and sew ${listed(names)}.`, {
        alsoCalled: [...(names.length > 1 ? names.map(n => `hem ${n}`) : []), 'hem'],
        edges,
      });
      if (!edges.some(e => hangs(pattern, e))) return [hem];
      const hang = job(
        'hang',
        `hang ${names.join(' + ')}`,
        `Let ${listed(names)} hang for a day, then level it.`,
        { edges },
      );
      const because = 'flared and bias cloth drops, and not evenly; a hem sewn at once would dip';
      return [hang, { ...hem, after: [{ job: hang.job, because }] }];
    });
}

/** Whether a hem is flared, or its piece cut on the bias. */
function hangs(pattern: Pattern, ref: EdgeRef): boolean {
  const piece = pieceNamed(pattern, ref.piece);
  const widest = Math.max(0, ...levelNames(piece).map(level => levelAcross(piece, level).lengthMm));
  const hem = lengthInGarment(pattern, ref) / timesInGarment(piece);
  return (widest > 0 && hem > flaredHem * widest) || isBias(piece);
}

function buttonJobs(pattern: Pattern): readonly Job[] {
  const piecesWith = (kind: RegExp) =>
    pattern.pieces.filter(p => p.marks.some(m => kind.test(m.kind))).map(p => p.title || p.name);
  const holes = piecesWith(/buttonhole/i),
    buttons = piecesWith(/^(button|snap)s?$/i);
  const jobs: Job[] = [];
  if (holes.length > 0)
    jobs.push(job('buttonhole', 'buttonholes', `Work the buttonholes of ${listed(holes)}.`));
  if (buttons.length > 0)
    jobs.push(
      job('button', 'buttons', `Sew on the buttons of ${listed(buttons)}.`, {
        after: [{ job: 'buttonholes', because: 'each button is placed through its finished buttonhole' }],
      }),
    );
  return jobs;
}

/** The edges that share a corner with an edge. */
export function edgesBeside(pattern: Pattern, ref: EdgeRef): readonly EdgeRef[] {
  const piece = pieceNamed(pattern, ref.piece);
  const { start, end } = neighboursOf(piece, ref.edge);
  const names = new Set(edgeParts(piece).map(e => e.name));
  return [start, end].filter(n => names.has(n)).map(edge => ({ piece: ref.piece, edge }));
}
