// Levels a second that TripLogic.run takes, on histories of different kinds.
import { bestOf, finish, report } from "./measure.mjs";

const { TripLogic } = await import(process.argv[2] ?? "../dist/protection.js");

const COUNT = 1e7;
const WANTED = 250;
const dt = 0.001;
const settings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: false,
  contact: "normally open",
  coil: "normally energised",
};

/** Ten million levels by a formula of the index and a repeatable random number from 0 to 1. */
function history(levelAt) {
  let state = 7;
  return Float64Array.from({ length: COUNT }, (_, i) => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    return levelAt(i, state / 2 ** 32);
  });
}

const runs = {
  "far below the threshold": [history((_, r) => 2.6 + 1.8 * r), {}],
  "bursts of 3 s each 100 s": [history((i, r) => (i % 1e5 < 3e3 ? 10.5 : 5) + r), {}],
  "slow swing about the threshold, with trips": [history((i) => 9 + 2 * Math.sin(i / 5000)), {}],
  "above the threshold, latched": [history((_, r) => 10.5 + 1.8 * r), { latching: true }],
  "noise astride the threshold": [history((_, r) => 8.1 + 1.8 * r), {}],
};
const best = bestOf(
  Object.fromEntries(
    Object.entries(runs).map(([name, [levels, more]]) => [
      name,
      [COUNT, () => new TripLogic({ ...settings, ...more }).run(levels, dt)],
    ]),
  ),
  9,
);
for (const [name, each] of Object.entries(best)) report(`run, ${name}`, 1000 / each, WANTED, "M levels/s", true);

// for comparison, without a bound: noise that trips often, plain numbers, single steps
const noise = runs["noise astride the threshold"][0];
const short = Array.from(noise.subarray(0, 1e6));
const others = bestOf(
  {
    "run, noise astride, delay of eight levels": [COUNT, () => new TripLogic(settings).run(noise, 1)],
    "run, noise astride, no delay": [COUNT, () => new TripLogic({ ...settings, onDelay: 0 }).run(noise, dt)],
    "run, excursions reported": [
      COUNT,
      () => new TripLogic(settings).run(runs["bursts of 3 s each 100 s"][0], dt, { excursions: true }),
    ],
    "run, an array of numbers": [short.length, () => new TripLogic(settings).run(short, dt)],
    "step by step": [
      1e6,
      () => {
        const logic = new TripLogic(settings);
        for (const level of short) logic.step(level, dt);
      },
    ],
  },
  3,
);
for (const [name, each] of Object.entries(others)) {
  console.log(`      ${name.padEnd(58)} ${(1000 / each).toFixed(1).padStart(8)} M levels/s`);
}
finish("Trip logic");
