// Classification: readings of no order through a compiled classifier, one by one and as an array.
import { bestOf, finish, report } from "./measure.mjs";

const { classifier, classify } = await import(process.argv[2] ?? "../dist/severity.js");

const N = 1e6;
const FEW = 2e3;

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
let sink = 0;

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
  classify: [
    FEW,
    () => {
      for (let i = 0; i < FEW; i++)
        sink += classify("0.25 in/s pk", { scheme: "iso-10816-7-2009", machine }).margin.ratio;
    },
  ],
});

const perSecond = (nanoseconds) => 1e3 / nanoseconds;
report("classifier(...).index, number by number", perSecond(best.index), 50, "M/s", true);
report("classifier(...), zone by zone", perSecond(best.zone), 50, "M/s", true);
report("classifier(...).array, three limits", perSecond(best.array), 50, "M/s", true);
report("classifier(...).array, eleven limits", perSecond(best.chart), 20, "M/s", true);
report("classify, everything in words", 1e6 / best.classify, 10, "k/s", true);
if (Number.isNaN(sink)) throw new Error("no reading was judged");
finish("Judging");
