// Times contestants in turns, round after round, so that a busy machine slows all alike; keeps each one's best.
import { appendFileSync } from "node:fs";

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

const figures = [];

/** Prints a figure beside its bound, and remembers whether it holds. */
export function report(name, value, bound, unit, atLeast = false) {
  const holds = atLeast ? value >= bound : value <= bound;
  const isCount = unit === "" && Number.isInteger(value);
  const shown = isCount ? String(value) : value >= 100 ? value.toFixed(0) : value.toFixed(2);
  const limit = `${atLeast ? ">=" : "<="} ${bound}`;
  figures.push({ name, shown, unit, limit, holds });
  console.log(`${(holds ? "ok" : "SLOW").padEnd(5)} ${name.padEnd(58)} ${shown.padStart(8)} ${unit}  (${limit})`);
}

/** Ends the script: exit code 1 when a figure did not hold; all figures into the file that `bench/all.mjs` reads. */
export function finish(title) {
  if (figures.some(({ holds }) => !holds)) process.exitCode = 1;
  if (process.env.BENCH_FIGURES) appendFileSync(process.env.BENCH_FIGURES, `${JSON.stringify({ title, figures })}\n`);
}
