/**
 * A builder of tables by length that keeps the ones last built, as many as fit into `budget` (a sum of lengths) but
 * always the last.
 *
 * The memory cannot be seen from outside: the same length always gives the same tables.
 */
export function kept<Tables>(build: (length: number) => Tables, budget: number): (length: number) => Tables {
  const known = new Map<number, Tables>();
  let sum = 0;
  return (length) => {
    const found = known.get(length);
    if (found !== undefined) return found;
    const fresh = build(length);
    for (const old of known.keys()) {
      if (sum + length <= budget) break;
      known.delete(old);
      sum -= old;
    }
    known.set(length, fresh);
    sum += length;
    return fresh;
  };
}
