import type { EdgeRun, Finding, Saying, Seam } from '@paperhinge/geometry';
import { sameEdge } from '../edge-refs.js';
import { type Fate, unusedOther } from './mirrored-outline.js';
import { finding, saying } from './tellings.js';

type Side = readonly EdgeRun[];
type Fates = ReadonlyMap<string, Fate>;

export interface OpenedSeams {
  readonly seams: readonly Seam[];
  readonly findings: readonly Finding[];
}

/**
 * Seams after a half piece was opened. A seam that runs to the fold now runs on across it: its other runs follow
 * twice, the second time backwards. Any other seam of the piece gets a second one for the mirrored half, sewn to the
 * same edge (which stands in the garment twice), or to what an earlier opening of the partner provided.
 */
export function openedSeams(piece: string, seams: readonly Seam[], fates: Fates): OpenedSeams {
  const findings: Finding[] = [];
  const taken = new Set(seams.map(s => s.name));
  const done = new Set<Seam>();
  const opened: Seam[] = [];
  for (const seam of seams) {
    if (done.has(seam)) continue;
    const own = [...seam.a, ...seam.b].filter(r => r.piece === piece);
    if (own.length === 0) {
      opened.push(seam);
      continue;
    }
    const twin = seams.find(s => s !== seam && !done.has(s) && ownRuns(s, piece) === ownRuns(seam, piece));
    if (twin) done.add(twin);
    if (own.some(r => crosses(r, fates))) {
      const whole = acrossFold(piece, seam, twin, fates);
      opened.push(whole.seam);
      findings.push(followed(piece, seam, whole.say, whole.sure ? 'note' : 'warning'));
    } else if (listsBothHalves(seam, piece)) {
      opened.push({
        ...seam,
        a: secondHalfNamed(seam.a, piece, fates),
        b: secondHalfNamed(seam.b, piece, fates),
      });
    } else {
      const second = twin ?? { ...seam, name: unusedOther(seam.name, taken) };
      const mirrored = (one: Seam): Seam => ({
        ...one,
        a: onOther(one.a, piece, fates),
        b: onOther(one.b, piece, fates),
      });
      // Both right sides up, two edges meet that run against one another: of a piece that was opened before, the other half.
      const crossed = twin !== undefined && needsTurning(seam, twin, piece);
      opened.push(...(crossed ? [mirrored(seam), second] : [seam, mirrored(second)]));
      findings.push(
        followed(piece, seam, saying('seam-sewn-twice', { second: { seam: second.name } }), 'note'),
      );
    }
  }
  return { seams: opened, findings };
}

const followed = (piece: string, { name }: Seam, how: Saying, severity: 'note' | 'warning'): Finding =>
  finding(
    severity,
    severity === 'note' ? 'seam-followed' : 'seam-to-check',
    { piece },
    { seam: { seam: name }, how },
  );

const ownRuns = (seam: Seam, piece: string): string => {
  const on = (side: Side) =>
    side.filter(r => r.piece === piece).map(r => `${r.edge}${r.reversed ? '<' : '>'}`);
  return `${on(seam.a).join(' ')}|${on(seam.b).join(' ')}`;
};

/**
 * Whether a seam of a piece and one that was opened before has halves together of which one would have to be turned over:
 * across a seam two outlines run against one another, along one side of it they run alike.
 */
function needsTurning(seam: Seam, twin: Seam, piece: string): boolean {
  const twins = [...twin.a, ...twin.b];
  const isOpened = (run: EdgeRun): boolean =>
    run.piece !== piece && !twins.some(other => sameEdge(other, run));
  const at = (is: (run: EdgeRun) => boolean) =>
    (['a', 'b'] as const).flatMap(side => seam[side].filter(is).map(run => ({ side, ...run })))[0];
  const own = at(run => run.piece === piece),
    partner = at(isOpened);
  if (!own || !partner) return false;
  return (own.side === partner.side) === (own.reversed !== partner.reversed);
}

const crosses = (run: EdgeRun, fates: Fates): boolean => {
  const fate = fates.get(run.edge);
  return fate !== undefined && 'crossing' in fate;
};

const listsBothHalves = ({ a, b }: Seam, piece: string): boolean =>
  [a, b].some(side => side.some((r, i) => r.piece === piece && side.findIndex(s => sameEdge(s, r)) < i));

/** The mirrored copy of an edge is travelled the same way against its own clockwise order. */
const otherOf = (run: EdgeRun, fates: Fates): EdgeRun => {
  const fate = fates.get(run.edge);
  return fate && 'other' in fate ? { ...run, edge: fate.other, reversed: !run.reversed } : run;
};

const onOther = (side: Side, piece: string, fates: Fates): Side =>
  side.map(r => (r.piece === piece ? otherOf(r, fates) : r));

const secondHalfNamed = (side: Side, piece: string, fates: Fates): Side =>
  side.map((r, i) => (r.piece === piece && side.findIndex(s => sameEdge(s, r)) < i ? otherOf(r, fates) : r));

/** Whether a run, travelled in the seam's direction, leads to the fold (or comes from it). */
function leadsToFold(run: EdgeRun, fates: Fates): boolean {
  const fate = fates.get(run.edge);
  return fate !== undefined && 'crossing' in fate && (fate.crossing === 'end') !== run.reversed;
}

/** Two runs of one crossing edge that meet at the fold are one run now. */
function meetAtFold(a: EdgeRun, b: EdgeRun, piece: string, fates: Fates): boolean {
  return (
    a.piece === piece &&
    sameEdge(a, b) &&
    crosses(a, fates) &&
    leadsToFold(a, fates) &&
    a.reversed !== b.reversed
  );
}

const collapsed = (side: Side, piece: string, fates: Fates): Side => {
  const runs: EdgeRun[] = [];
  for (const run of side) {
    const last = runs.at(-1);
    if (!last || !meetAtFold(last, run, piece, fates)) runs.push(run);
  }
  return secondHalfNamed(runs, piece, fates);
};

const backwards = (side: Side): Side => [...side].reverse().map(r => ({ ...r, reversed: !r.reversed }));

function acrossFold(
  piece: string,
  seam: Seam,
  twin: Seam | undefined,
  fates: Fates,
): { readonly seam: Seam; readonly say: Saying; readonly sure: boolean } {
  const both = (make: (side: 'a' | 'b') => Side) => ({ a: make('a'), b: make('b') });
  const once = both(side => collapsed(seam[side], piece, fates));
  if (once.a.length < seam.a.length || once.b.length < seam.b.length)
    return {
      seam: { ...seam, ...ringOnce(once, piece, fates) },
      say: saying('seam-one-run-across-fold', {}),
      sure: true,
    };
  const at = (side: 'a' | 'b', index: number) => seam[side].at(index);
  const ends = (['a', 'b'] as const).map(side => {
    const last = at(side, -1),
      first = at(side, 0);
    if (last?.piece === piece && leadsToFold(last, fates)) return 'end';
    return first?.piece === piece && crosses(first, fates) && !leadsToFold(first, fates)
      ? 'start'
      : undefined;
  });
  const end = ends.find(e => e !== undefined);
  if (!end) return { seam, say: saying('seam-left-at-fold', {}), sure: false };
  const ring = ringEnds(seam, piece, fates);
  if (ring) return ring;
  const doubled = both(side => {
    const half = seam[side];
    const second = onOther(backwards((twin ?? seam)[side]), piece, fates);
    return collapsed(end === 'end' ? [...half, ...second] : [...second, ...half], piece, fates);
  });
  const ease = 'mm' in seam.ease ? { mm: 2 * seam.ease.mm } : seam.ease;
  return {
    seam: { ...seam, ...doubled, ease },
    say: saying('seam-both-halves', {}),
    sure: true,
  };
}

/** A ring that began and ended at the fold begins where the edge across the fold begins now. */
function ringEnds(seam: Seam, piece: string, fates: Fates) {
  const opened = (['a', 'b'] as const).find(side => isRing(seam[side], piece, fates));
  if (!opened) return undefined;
  const ring = { ...seam, [opened]: closedRing(seam[opened], piece, fates) };
  return { seam: ring, say: saying('seam-begins-elsewhere', {}), sure: false };
}

function ringOnce(sides: { readonly a: Side; readonly b: Side }, piece: string, fates: Fates) {
  const once = (side: Side) => (isRing(side, piece, fates) ? closedRing(side, piece, fates) : side);
  return { a: once(sides.a), b: once(sides.b) };
}

const isRing = (side: Side, piece: string, fates: Fates): boolean =>
  side.length > 1 && meetAtFold(side.at(-1)!, side[0]!, piece, fates);

const closedRing = (side: Side, piece: string, fates: Fates): Side =>
  secondHalfNamed([side.at(-1)!, ...side.slice(1, -1)], piece, fates);
