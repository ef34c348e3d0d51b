/** What an amount comes to; undefined where it cannot be done. */
export type Outcome = (amount: number) => number | undefined;

/** Where an amount may lie, and what it is to come to: between two figures, or the one where they are equal. */
export interface Search {
  readonly least: number;
  readonly most: number;
  /** How far the first try goes; each further one goes twice as far. */
  readonly stride: number;
  readonly from: number;
  readonly to: number;
  /** How near to them is near enough. */
  readonly within: number;
  /** An amount that did nearly the same, tried first. */
  readonly near?: number;
}

/** An amount and what it comes to; `reached`: that is what was wanted, else the nearest that was seen. */
export interface Found {
  readonly amount: number;
  readonly is: number;
  readonly reached: boolean;
}

/**
 * The smallest amount, either way, that comes to what is wanted; else that which comes nearest. It walks outwards from
 * nothing, doubling its stride, until two amounts lie on either side of what is wanted, then halves the stretch
 * between them by false position (the Illinois rule: Dowell and Jarratt, BIT 11, 1971 [memory]). Where an amount
 * cannot be done, the last that can is sought between, so that a goal just before it is not missed. What an outcome
 * does between two strides is not seen: one that turns back within a stride may be missed.
 * @returns undefined where no amount can be done
 */
export function findAmount(outcome: Outcome, search: Search): Found | undefined {
  const { least, most } = search;
  let nearest: Tried | undefined;
  const attempt = (amount: number): Tried | undefined => {
    const is = outcome(amount);
    if (is === undefined || !Number.isFinite(is)) return undefined;
    const tried = { amount, is, off: offGoal(is, search) };
    if (!nearest || Math.abs(tried.off) < Math.abs(nearest.off)) nearest = tried;
    return tried;
  };
  const done = (tried: Tried): Found => ({ amount: tried.amount, is: tried.is, reached: tried.off === 0 });
  const start = Math.min(Math.max(search.near ?? 0, least), most);
  const first: Reach = { amount: start, tried: attempt(start) };
  if (first.tried?.off === 0) return done(first.tried);
  const reaches = { up: first, down: first };
  const stride = search.near === undefined ? search.stride : search.stride / 16;
  for (let by = stride; reaches.up.amount < most || reaches.down.amount > least; by *= 2) {
    for (const way of ['up', 'down'] as const) {
      const last = reaches[way];
      const amount = way === 'up' ? Math.min(start + by, most) : Math.max(start - by, least);
      if (amount === last.amount) continue;
      const next: Reach = { amount, tried: attempt(amount) };
      const hit = between(last, next, attempt, search);
      if (hit) return done(hit);
      reaches[way] = next;
    }
  }
  return nearest && { ...done(nearest), reached: false };
}

interface Tried {
  readonly amount: number;
  readonly is: number;
  /** 0 where it is what is wanted. */
  readonly off: number;
}
interface Reach {
  readonly amount: number;
  readonly tried: Tried | undefined;
}
type Attempt = (amount: number) => Tried | undefined;

function offGoal(is: number, { from, to, within }: Search): number {
  if (is < from - within) return is - from;
  return is > to + within ? is - to : 0;
}

/** A stretch is not halved more often than this: 5 m come down to rounding. */
const mostHalvings = 60;

/** What is wanted between two amounts, if they lie on either side of it, or where one of them cannot be done. */
function between(one: Reach, other: Reach, attempt: Attempt, search: Search): Tried | undefined {
  if (one.tried && other.tried) return crossing(one.tried, other.tried, attempt, search);
  if (!one.tried && !other.tried) return undefined;
  let sound = (one.tried ?? other.tried)!;
  let unsound = one.tried ? other.amount : one.amount;
  for (let n = 0; n < mostHalvings / 3; n++) {
    const tried = attempt((sound.amount + unsound) / 2);
    if (!tried) {
      unsound = (sound.amount + unsound) / 2;
      continue;
    }
    const hit = crossing(sound, tried, attempt, search);
    if (hit) return hit;
    sound = tried;
  }
  return undefined;
}

/** False position towards that figure of what is wanted which lies first on the way from `one` to `other`. */
function crossing(one: Tried, other: Tried, attempt: Attempt, search: Search): Tried | undefined {
  if (one.off !== 0 && one.off * other.off > 0) return undefined;
  if (other.off === 0 && search.from === search.to) return other;
  const wanted = one.off < 0 ? search.from : search.to;
  let a = { amount: one.amount, off: one.is - wanted };
  let b = { amount: other.amount, off: other.is - wanted };
  let best = other.off === 0 ? other : undefined;
  for (let n = 0; n < mostHalvings; n++) {
    const share = n % 4 === 3 ? 1 / 2 : a.off / (a.off - b.off);
    const tried = attempt(a.amount + (b.amount - a.amount) * share);
    if (!tried) return best;
    if (Math.abs(tried.is - wanted) <= search.within) return tried;
    if (tried.off === 0) best = tried;
    const next = { amount: tried.amount, off: tried.is - wanted };
    // The end that stays twice is given half its weight.
    if (next.off * b.off < 0) [a, b] = [b, next];
    else [a, b] = [{ ...a, off: a.off / 2 }, next];
  }
  return best;
}
