// First order against Monte Carlo in random chains of readings, and of vectors: `node bench/uncertainty.mjs [--count 100] [--draws 1000000]`.
import { parseArgs } from "node:util";
import { evaluateLine, newSession } from "../dist/mathjs.js";
import { uncertaintyOf } from "../dist/uncertainty.js";
import { uncertaintyOfVector } from "../dist/vector.js";
import { finish, report } from "./measure.mjs";
import { bundled } from "./test-module.mjs";

const { values } = parseArgs({
  options: {
    count: { type: "string", default: "30" },
    draws: { type: "string", default: "1000000" },
    seed: { type: "string", default: "17" },
  },
});
const [count, draws] = [Number(values.count), Number(values.draws)];
const { randomChain, repeatable } = await bundled("uncertainty/random-chain.ts");

const random = repeatable(Number(values.seed));
const away = [];
let tried = 0;
while (away.length < count) {
  const chain = randomChain(random, 1 + Math.floor(random() * 10), 0.05);
  tried++;
  const slope = uncertaintyOf(chain, { draws: 1000 });
  if (slope.method !== "first order" || slope.parts.length === 0) continue;
  const drawn = uncertaintyOf(chain, { method: "Monte Carlo", draws, seed: tried });
  away.push({ ratio: slope.standard / drawn.standard, expanded: slope.expanded / Math.abs(slope.value) });
}
away.sort((a, b) => Math.abs(a.ratio - 1) - Math.abs(b.ratio - 1));
const percent = ({ ratio }) => 100 * Math.abs(ratio - 1);
const worst = away.at(-1);
console.log(`${tried} chains tried, ${away.length} known to first order; furthest first:`);
for (const { ratio, expanded } of away.slice(-5).reverse()) {
  console.log(`  first order / Monte Carlo ${ratio.toFixed(5)}, expanded uncertainty ${(100 * expanded).toFixed(2)} %`);
}
report(`first order off Monte Carlo, median of ${count} chains`, percent(away[count >> 1]), 1, "%");
report(`first order off Monte Carlo, worst of ${count} chains`, percent(worst), 1, "%");

// vectors: lengths and phases, by the library's own draws
const { randomVectorChain } = await bundled("vector/random-vector-chain.ts");
const off = [];
const few = Math.ceil(count / 3);
let vectors = 0;
while (vectors < few) {
  const { vector } = randomVectorChain(random);
  const slope = uncertaintyOfVector(vector, { draws: 1000 });
  if (slope.amplitude.method !== "first order" || slope.phase === null) continue;
  const drawn = uncertaintyOfVector(vector, { method: "Monte Carlo", draws, seed: ++vectors });
  for (const part of ["amplitude", "phase"]) {
    if (slope[part].standard > 0) off.push({ ratio: slope[part].standard / drawn[part].standard });
  }
}
off.sort((a, b) => percent(a) - percent(b));
report(`first order off Monte Carlo, median of ${few} vectors`, percent(off[off.length >> 1]), 1, "%");
report(`first order off Monte Carlo, worst of ${few} vectors`, percent(off.at(-1)), 1, "%");
// what a line of the calculator costs that is carried by draws, and how far its digits scatter between seeds
const session = newSession();
const lines = ["u = 4.9 ± 2 mm/s rms (k=2)", "u to in/s pk", "rss(u, 3 ± 1 mm/s rms)"];
let cost = 0;
for (const line of lines) {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 15; round++) {
    const start = performance.now();
    await evaluateLine(line, session);
    best = Math.min(best, performance.now() - start);
  }
  cost = Math.max(cost, best);
}
report("a calculator line by Monte Carlo, 200,000 draws, slowest of 3", cost, 50, "ms");
const seeds = Array.from({ length: 50 }, (_, i) => uncertaintyOf("4.9 ± 2 mm/s rms (k=2)", { seed: i + 1 }));
const scatter = (of) => {
  const all = seeds.map(of);
  const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
  return Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (all.length - 1));
};
const expanded = seeds[0].expanded;
report(
  "scatter of U between seeds, standard deviation",
  (100 * scatter((one) => one.expanded)) / expanded,
  0.5,
  "% of U",
);
const ends = Math.max(...[0, 1].map((end) => scatter((one) => one.interval[end])));
report("scatter of the ends of the interval between seeds", (100 * ends) / expanded, 0.5, "% of U");
finish("First-order uncertainty against Monte Carlo");
