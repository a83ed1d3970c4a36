// Classification: readings of no order through a compiled classifier, one by one and as an array; and in words, each
// judged with all that an answer holds.
import { bestOf, finish, report } from "./measure.mjs";

const { classifier, classify } = await import(process.argv[2] ?? "../dist/severity.js");

const N = 1e6;
const WORDS = 5e3;

/** Readings spread over all zones, by the noise of a linear congruential generator, so that no branch is foreseen. */
let state = 1;
const readings = Float64Array.from({ length: N }, () => {
  state = (Math.imul(1664525, state) + 1013904223) >>> 0;
  return (state / 2 ** 32) * 0.5;
});
const zones = new Uint8Array(N);
const machine = "pump 90 kW 2980 r/min category II";
const judge = classifier("iso-10816-7-2009", machine, "in/s pk");
const chart = classifier("iso-10816-6-1995-grades", "reciprocating engine 500 kW", "m/s rms");
const table = { scheme: "iso-10816-7-2009", machine };
/** Two criteria, of which one takes the frequency, so that its limits are another at each. */
const twoCriteria = { scheme: "iso-10816-3-2009", machine: "motor 355 mm rigid" };
const texts = Array.from({ length: WORDS }, (_, i) => `${(0.0001 * (i + 1)).toFixed(4)} in/s pk`);
const atFrequencies = Array.from({ length: WORDS }, (_, i) => `0.25 in/s pk at ${(5 + i / 50).toFixed(2)} Hz`);
let sink = 0;

const judged = (list, options) => () => {
  for (const reading of list) sink += classify(reading, options).margin.ratio;
};

const best = bestOf({
  index: [
    N,
    () => {
      let sum = 0;
      for (let i = 0; i < N; i++) sum += judge.index(readings[i]);
      sink += sum;
    },
  ],
  zone: [
    N,
    () => {
      let worst = 0;
      for (let i = 0; i < N; i++) if (judge(readings[i]) === "D") worst++;
      sink += worst;
    },
  ],
  array: [N, () => judge.array(readings, zones)],
  chart: [N, () => chart.array(readings, zones)],
});
// apart, and in more rounds: short ones find a busy machine idle more often
const inWords = bestOf(
  {
    texts: [WORDS, judged(texts, table)],
    frequencies: [WORDS, judged(atFrequencies, table)],
    two: [WORDS, judged(atFrequencies, twoCriteria)],
  },
  60,
);

const perSecond = (nanoseconds) => 1e3 / nanoseconds;
report("classifier(...).index, number by number", perSecond(best.index), 50, "M/s", true);
report("classifier(...), zone by zone", perSecond(best.zone), 50, "M/s", true);
report("classifier(...).array, three limits", perSecond(best.array), 50, "M/s", true);
report("classifier(...).array, eleven limits", perSecond(best.chart), 20, "M/s", true);
const thousands = (nanoseconds) => 1e6 / nanoseconds;
report("classify, everything in words, 5,000 different readings", thousands(inWords.texts), 500, "k/s", true);
report("classify, another frequency each time", thousands(inWords.frequencies), 200, "k/s", true);
report("classify, another frequency each time, two criteria", thousands(inWords.two), 200, "k/s", true);
if (Number.isNaN(sink)) throw new Error("no reading was judged");
finish("Judging");
