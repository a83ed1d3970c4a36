// Levels a second that TripLogic.run takes, on histories of different kinds.
import { performance } from "node:perf_hooks";

const { TripLogic } = await import(process.argv[2] ?? "../dist/protection.js");

const COUNT = 1e7;
const WANTED = 150e6;
const dt = 0.001;
const settings = {
  threshold: "0.51 in/s pk",
  hysteresis: "3 %",
  onDelay: 6,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: false,
  contact: "normally open",
  coil: "normally energised",
};

/** Small repeatable random numbers from 0 to 1. */
function* random(seed) {
  for (let x = seed; ; ) {
    x = (Math.imul(x, 1664525) + 1013904223) >>> 0;
    yield x / 2 ** 32;
  }
}

function history(levelAt) {
  const chance = random(7);
  return Float64Array.from({ length: COUNT }, (_, i) => levelAt(i, chance.next().value));
}

const histories = {
  "quiet, far below the threshold": { levels: history((_, r) => 0.2 + 0.1 * r), marked: true },
  "quiet with bursts of 3 s each 100 s": {
    levels: history((i, r) => (i % 1e5 < 3e3 ? 0.6 : 0.3) + 0.05 * r),
    marked: true,
  },
  "slow swing about the threshold, with trips": {
    levels: history((i) => 0.5 + 0.1 * Math.sin(i / 5000)),
    marked: true,
  },
  "always above, latched": { levels: history((_, r) => 0.6 + 0.1 * r), marked: true, latching: true },
  "noise astride the threshold": { levels: history((_, r) => 0.46 + 0.1 * r), marked: true },
};

let short = 0;
for (const [name, { levels, marked, latching = false }] of Object.entries(histories)) {
  let best = Number.POSITIVE_INFINITY;
  let events = 0;
  for (let i = 0; i < 9; i++) {
    const logic = new TripLogic({ ...settings, latching });
    const start = performance.now();
    events = logic.run(levels, dt).length;
    best = Math.min(best, (performance.now() - start) / 1000);
  }
  const rate = COUNT / best;
  const mark = marked ? (rate >= WANTED ? "ok   " : "SHORT") : "     ";
  if (marked && rate < WANTED) short++;
  console.log(`${mark} ${(rate / 1e6).toFixed(0).padStart(5)} M levels/s  ${name} (${events} events)`);
}
console.log(`wanted: ${WANTED / 1e6} M levels/s`);
process.exitCode = short > 0 ? 1 : 0;
