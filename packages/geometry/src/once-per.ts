/**
 * A pure function of immutable values that works out once what it says of them, and forgets it with them. Sound as
 * nothing in a pattern is changed once it is made: what is altered is a new object. Values that make `work` throw
 * make it throw each time.
 */
export function oncePer<Key extends object, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new WeakMap<Key, Known<Value>>();
  return key => {
    const before = known.get(key);
    if (before) return before.value;
    const value = work(key);
    known.set(key, { value });
    return value;
  };
}

/** Boxed, so that nothing at all can be known too. */
interface Known<Value> {
  readonly value: Value;
}

/**
 * {@link oncePer} for a function of more: what it says is known by the values of `keysOf` in their order, which must
 * be all that decides it.
 */
export function oncePerAll<Arguments extends readonly unknown[], Value>(
  keysOf: (...given: Arguments) => readonly object[],
  work: (...given: Arguments) => Value,
): (...given: Arguments) => Value {
  interface Branch {
    known?: Known<Value>;
    readonly further: WeakMap<object, Branch>;
  }
  const branch = (): Branch => ({ further: new WeakMap() });
  const root = branch();
  return (...given) => {
    let here = root;
    for (const key of keysOf(...given)) {
      const next = here.further.get(key) ?? branch();
      here.further.set(key, next);
      here = next;
    }
    here.known ??= { value: work(...given) };
    return here.known.value;
  };
}
