// Times contestants in turns, round after round, so that a busy machine slows all alike; keeps each one's best.

/** Best nanoseconds per operation of each contestant: `{ name: [operations, run] }`. */
export function bestOf(contestants, rounds = 15) {
  const best = Object.fromEntries(Object.keys(contestants).map((name) => [name, Number.POSITIVE_INFINITY]));
  for (let round = 0; round < rounds; round++) {
    for (const [name, [operations, run]] of Object.entries(contestants)) {
      const start = process.hrtime.bigint();
      run();
      const each = Number(process.hrtime.bigint() - start) / operations;
      if (each < best[name]) best[name] = each;
    }
  }
  return best;
}

const marks = [];

/** Prints a figure beside its bound, and remembers whether it holds. */
export function report(name, value, bound, unit, atLeast = false) {
  const holds = atLeast ? value >= bound : value <= bound;
  marks.push(holds);
  const shown = value >= 100 ? value.toFixed(0) : value.toFixed(2);
  const mark = holds ? "ok" : "SLOW";
  console.log(`${mark.padEnd(5)} ${name.padEnd(58)} ${shown.padStart(8)} ${unit}  (${atLeast ? ">=" : "<="} ${bound})`);
}

/** Ends the script with exit code 1 when a figure did not hold. */
export function finish() {
  if (marks.includes(false)) process.exitCode = 1;
}
