import { readFileSync } from "node:fs";
import { baseline, proposeSetpoints, TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";

/**
 * Levels measured on a pump rig: Skoltech Anomaly Benchmark (SKAB), I. D. Katser and V. O. Kozitsin, Kaggle 2020,
 * doi 10.34740/KAGGLE/DSV/1693952, MIT licence, see docs/examples/pump-rig.
 */
function rows(name: string): string[][] {
  const text = readFileSync(`${root}/docs/examples/pump-rig/${name}.csv`, "utf8");
  return text
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));
}

function history(name: string, channel: 1 | 2): [levels: Float64Array, times: Float64Array] {
  const found = rows(name);
  const seconds = found.map(([time]) => Date.parse(`${time?.replace(" ", "T")}Z`) / 1000);
  return [
    Float64Array.from(found, (row) => Number(row[channel])),
    Float64Array.from(seconds, (time) => time - (seconds[0] as number)),
  ];
}

const normal = baseline(
  rows("normal-every-15th").map((row) => Number(row[1])),
  { as: "g rms" },
);

const settings = {
  hysteresis: "5 %",
  timerResets: "below threshold",
  sensorFault: "alarm",
  contact: "normally open",
  coil: "normally energised",
} as const;

function events(name: string, threshold: number, onDelay: number, latching: boolean): string[] {
  const logic = new TripLogic({ ...settings, threshold: `${threshold} g rms`, onDelay, latching });
  const [levels, times] = history(name, 1);
  return logic.run(levels, times).map(({ time, event }) => `${event} ${time}`);
}

/** The trips the simple way: the first moment at which the level has been up for the delay, row by row. */
function firstTrip(name: string, threshold: number, delay: number): number | undefined {
  const [levels, times] = history(name, 1);
  let since: number | undefined;
  for (const [i, level] of levels.entries()) {
    const at = times[i] as number;
    if (since !== undefined && at - since >= delay) return since + delay;
    if (level < threshold) since = undefined;
    else since ??= at;
    if (since !== undefined && delay === 0) return since;
  }
  return undefined;
}

describe("measured levels of the pump rig", () => {
  it("the thinned baseline stands for the whole run of 9401 readings", () => {
    // Whole file by Python's statistics module: mean 0.2122769, standard deviation 0.0047285, median 0.212928.
    expect(normal.count).toBe(627);
    expect(normal.mean).toBeCloseTo(0.2122769, 3);
    expect(normal.standardDeviation).toBeCloseTo(0.0047285, 4);
    expect(normal.median).toBeCloseTo(0.212928, 3);
  });

  it("no scheme applies without speed and band, so no trip is proposed", () => {
    const proposal = proposeSetpoints({ baseline: normal, k: 3 });
    expect(proposal.trip).toBeNull();
    expect(proposal.alarm?.asked.value).toBeCloseTo(0.2265, 4);
    expect(proposal.warnings.map(({ code }) => code)).toContain("no limits");
  });

  const delays = [0, 3, 6, 10] as const;

  it.each(["imbalance-sharp", "imbalance-linear", "imbalance-impulse"])(
    "%s: first trips are the simple way's",
    (name) => {
      for (const k of [3, 6]) {
        const threshold = normal.mean + k * normal.standardDeviation;
        for (const delay of delays) {
          const found = events(name, threshold, delay, true).filter((event) => event.startsWith("trip"));
          const wanted = firstTrip(name, threshold, delay);
          expect(found).toEqual(wanted === undefined ? [] : [`trip ${wanted}`]);
        }
      }
    },
  );

  it("an impulse of 2 s trips without a delay only; a latch keeps it", () => {
    const tried = (latching: boolean) => delays.map((delay) => events("imbalance-impulse", 0.24, delay, latching));
    expect(tried(false)).toEqual([["trip 825", "clear 827"], [], [], []]);
    expect(tried(true)).toEqual([["trip 825"], [], [], []]);
  });

  it("an imbalance that stays trips with every delay, later by the delay", () => {
    expect(delays.map((delay) => events("imbalance-sharp", 0.24, delay, true))).toEqual(
      [823, 826, 829, 833].map((time) => [`trip ${time}`]),
    );
  });

  it("a rest of 33 s from the run before trips with every delay; only a latch shows it later", () => {
    expect(delays.map((delay) => events("imbalance-linear", 0.24, delay, false))).toEqual(
      delays.map((delay) => [`trip ${delay}`, "clear 33", `trip ${824 + delay}`]),
    );
    expect(delays.map((delay) => events("imbalance-linear", 0.24, delay, true))).toEqual(
      delays.map((delay) => [`trip ${delay}`]),
    );
  });
});
