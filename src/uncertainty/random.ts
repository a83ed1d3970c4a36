/** The moduli and multipliers of the four parts of the generator. */
const parts = [
  [11600, 2147483579],
  [47003, 2147483543],
  [23000, 2147483423],
  [33000, 2147483123],
] as const;

/**
 * Numbers between 0 and 1 with equal chance, the same ones for the same seed: the enhanced Wichmann-Hill generator of
 * JCGM 101:2008, C.3, with period 2^121. All products stay below 2^53.
 *
 * @param seed - a whole number above zero
 */
export function uniformNumbers(seed: number): () => number {
  // four starting values that differ, each above zero and below its modulus
  const state = parts.map(([, modulus], i) => 1 + ((seed * (i + 1) * 7919) % (modulus - 1)));
  const next = () => {
    let sum = 0;
    for (let i = 0; i < parts.length; i++) {
      const [multiplier, modulus] = parts[i] as (typeof parts)[number];
      const value = (multiplier * (state[i] as number)) % modulus;
      state[i] = value;
      sum += value / modulus;
    }
    return sum - Math.floor(sum);
  };
  // neighbouring seeds start alike
  for (let i = 0; i < 8; i++) next();
  return next;
}

/** Standard normal numbers of uniform ones, two by two (Box and Muller, JCGM 101:2008, C.4). */
export function normalNumbers(uniform: () => number): () => number {
  let kept: number | undefined;
  return () => {
    if (kept !== undefined) {
      const last = kept;
      kept = undefined;
      return last;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}
