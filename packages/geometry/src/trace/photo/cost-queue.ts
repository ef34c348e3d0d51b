/** States waiting by what it cost to reach them; the cheapest comes out first. One may be put in again cheaper. */
export interface CostQueue {
  put(state: number, cost: number): void;
  take(): readonly [state: number, cost: number] | undefined;
}

/** An empty queue, kept as a binary heap. */
export function costQueue(): CostQueue {
  const states: number[] = [],
    costs: number[] = [];
  return {
    put(state, cost) {
      let i = states.length;
      while (i > 0) {
        const parent = (i - 1) >> 1;
        if (costs[parent]! <= cost) break;
        states[i] = states[parent]!;
        costs[i] = costs[parent]!;
        i = parent;
      }
      states[i] = state;
      costs[i] = cost;
    },
    take() {
      if (states.length === 0) return undefined;
      const first = [states[0]!, costs[0]!] as const;
      const state = states.pop()!,
        cost = costs.pop()!;
      const n = states.length;
      if (n === 0) return first;
      let i = 0;
      for (let child = 1; child < n; child = 2 * i + 1) {
        if (child + 1 < n && costs[child + 1]! < costs[child]!) child++;
        if (costs[child]! >= cost) break;
        states[i] = states[child]!;
        costs[i] = costs[child]!;
        i = child;
      }
      states[i] = state;
      costs[i] = cost;
      return first;
    },
  };
}
