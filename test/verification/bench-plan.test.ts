import fc from "fast-check";
import { convert } from "veladis";
import { type BenchSettings, benchPlan, cautions, type Shaker, shakerReach, TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { practiceStroke } from "../references/common-practice";

/** The reference shaker of the invented plant, with a velocity, a force and a moving mass beside. */
const shaker = {
  lowest: "8 Hz",
  highest: "3 kHz",
  displacement: "5 mm pp",
  velocity: "300 mm/s pk",
  acceleration: "6 g pk",
  force: { newtons: 40 },
  movingMass: "0.25 kg",
  payload: "1.5 kg",
  uncertainty: "2 % (k=2)",
} as const satisfies Shaker;

/** The switch of ID fan 1. */
const settings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
  frequencies: ["1485 r/min"],
} as const;

describe("the reach of a shaker", () => {
  it("is bounded by stroke at low, by velocity in between and by acceleration or force at high frequency", () => {
    const limitedBy = (hertz: number, load: number) =>
      shakerReach(`1000000 mm/s pk at ${hertz} Hz`, { ...shaker }, `${load} kg`).highest as number;
    const { acceleration, displacement } = { acceleration: 6 * 9.80665, displacement: 2.5 };
    expect(limitedBy(8, 0)).toBeCloseTo(2 * Math.PI * 8 * displacement, 6);
    // a stroke of 5 mm comes to 393 mm/s at 25 Hz, 6 g to 375 mm/s
    expect(limitedBy(25, 0)).toBeCloseTo(300, 9);
    expect(limitedBy(50, 0)).toBeCloseTo((acceleration / (2 * Math.PI * 50)) * 1000, 6);
    // 40 N on 0.25 kg + 0.75 kg is 40 m/s2, less than 6 g
    expect(limitedBy(100, 0.75)).toBeCloseTo((40 / (2 * Math.PI * 100)) * 1000, 6);
    expect(limitedBy(100, 0)).toBeCloseTo((acceleration / (2 * Math.PI * 100)) * 1000, 6);
  });

  it("common practice, no source: a stroke as a velocity at the lowest frequency", () => {
    const { frequencies, displacement, velocity, digits } = practiceStroke;
    const [lowest, highest] = frequencies.split(" to ") as [Shaker["lowest"], Shaker["highest"]];
    const { highest: reached } = shakerReach(`1 mm/s pk at ${lowest}`, { lowest, highest, displacement }, "0 kg");
    expect(reached).toBeCloseTo(velocity, digits);
  });

  it("names what forbids a level", () => {
    expect(shakerReach("5 mm/s rms at 5 Hz", shaker, "0.1 kg").limitedBy).toEqual(["frequency"]);
    expect(shakerReach("5 mm/s rms at 50 Hz", shaker, "1.6 kg").limitedBy).toEqual(["payload"]);
    expect(shakerReach("300 mm/s rms at 50 Hz", shaker, "0.75 kg").limitedBy).toEqual([
      "velocity",
      "acceleration",
      "force",
    ]);
    expect(shakerReach("5 mm/s rms at 5 Hz", shaker, "0.1 kg").highest).toBeNull();
    expect(shakerReach("5 mm/s rms at 50 Hz", { lowest: "8 Hz", highest: "1 kHz" }, "0 kg").highest).toBeNull();
    expect(() => shakerReach("5 mm/s rms", shaker, "0 kg")).toThrow();
  });
});

describe("an edge of a shaker's reach", () => {
  const reach = (level: string, more: object = {}, load = 0) =>
    shakerReach(level, { ...shaker, ...more }, `${load} kg`);

  it("belongs to it: frequencies, levels and payload", () => {
    for (const hertz of [8, 3000]) expect(reach(`0.1 mm/s pk at ${hertz} Hz`).limitedBy).toEqual([]);
    for (const hertz of [7.99, 3001]) expect(reach(`0.1 mm/s pk at ${hertz} Hz`).limitedBy).toEqual(["frequency"]);
    const still = { displacement: undefined, acceleration: undefined, force: undefined };
    expect(reach("300 mm/s pk at 50 Hz", still)).toMatchObject({ possible: true, limitedBy: [], highest: 300 });
    expect(reach("300.01 mm/s pk at 50 Hz", still).limitedBy).toEqual(["velocity"]);
    expect(reach("0.1 mm/s pk at 50 Hz", {}, 1.5).limitedBy).toEqual([]);
    expect(reach("0.1 mm/s pk at 50 Hz", {}, 1.501).limitedBy).toEqual(["payload"]);
  });

  it("is found in any unit: stroke in mm, acceleration for a level in displacement", () => {
    expect(reach("5 mm pp at 8 Hz").limitedBy).toEqual([]);
    expect(reach("5.01 mm pp at 8 Hz").limitedBy).toEqual(["stroke"]);
    const highest = reach("1 um pp at 100 Hz", { force: undefined }).highest as number;
    expect(highest).toBeCloseTo((2e6 * 6 * 9.80665) / (2 * Math.PI * 100) ** 2, 6);
    // without a mass of its own the force moves the load alone
    const light = { movingMass: undefined, velocity: undefined, acceleration: undefined, displacement: undefined };
    expect(reach("1 m/s2 pk at 100 Hz", light, 0.5).highest).toBeCloseTo(80, 9);
    expect(reach("1 m/s2 pk at 100 Hz", { ...light, movingMass: "0.3 kg" }, 0.5).highest).toBeCloseTo(50, 9);
  });
});

describe("a bench plan", () => {
  const plan = () => benchPlan(settings, shaker);

  it("states level, displacement and acceleration of one sine", () => {
    for (const { level, displacement, acceleration, hertz, speed } of plan().steps) {
      if (level === null) continue;
      expect(speed).toBe(1485);
      const at = { at: { hertz: hertz as number } };
      expect(displacement?.value).toBeCloseTo(convert(level.value, "mm/s rms", "um pp", at), 9);
      expect(acceleration?.value).toBeCloseTo(convert(level.value, "mm/s rms", "g pk", at), 12);
    }
    // 92 % of 9 mm/s
    expect(plan().reset.value).toBeCloseTo(8.28, 12);
    expect(plan().cautions).toBe(cautions);
    expect(plan().notes.join()).toMatch(/uncertainty is ± 2 % \(k=2\)/);
  });

  it("expects what the trip logic does", () => {
    const logic = new TripLogic(settings);
    const { steps } = plan();
    const step = (what: RegExp) => steps.find((one) => what.test(one.what));
    const level = (what: RegExp) => step(what)?.level?.value as number;
    logic.step(level(/just below the threshold/), 16);
    expect(logic.status.output).toBe("healthy");
    logic.step(level(/7.2 s/), 7.2);
    logic.step(0.1, 1);
    expect(logic.status.output).toBe("healthy");
    expect(logic.step(level(/take the time/), 8).contact).toBe("open");
    expect(step(/take the time/)?.expect).toBe("trip after 8 s, contact open");
    expect(logic.reset().accepted).toBe(false);
    logic.step(level(/just above the reset level/), 1);
    expect(logic.reset().accepted).toBe(false);
    expect(logic.step(level(/below the reset level/), 1).state).toBe("latched");
    expect(logic.reset().accepted).toBe(true);
    expect(logic.step(level(/^reset by hand/), 1).contact).toBe("closed");
    expect(logic.power(false).contact).toBe("open");
    expect(step(/power/)?.expect).toBe("the relay drops and trips, contact open");
  });

  it("expects the contact the relay shows, for every relay", () => {
    for (const contact of ["normally open", "normally closed"] as const) {
      for (const coil of ["normally energised", "normally de-energised"] as const) {
        for (const latching of [true, false]) {
          const relay = { ...settings, contact, coil, latching };
          const logic = new TripLogic({ ...relay, onDelay: 0 });
          const expectations = benchPlan(relay, shaker).steps.map((one) => one.expect);
          const healthy = logic.step(0, 1).contact;
          const tripped = logic.step(10, 1).contact;
          expect(expectations.some((text) => text === `trip after 8 s, contact ${tripped}`)).toBe(true);
          expect(
            expectations.some((text) => text.startsWith(`no trip, contact ${healthy}: the device reads about`)),
          ).toBe(true);
          expect(expectations[expectations.length - 1]).toContain(`contact ${logic.power(false).contact}`);
        }
      }
    }
  });

  it("says which steps the shaker cannot do, and repeats readings at other frequencies", () => {
    const two = benchPlan({ ...settings, frequencies: ["1485 r/min", "5 Hz"] }, shaker);
    expect(two.possible).toBe(false);
    expect(two.steps.filter(({ possible }) => !possible).map(({ limitedBy }) => limitedBy[0])).toEqual([
      "frequency",
      "frequency",
      "frequency",
    ]);
    expect(benchPlan({ ...settings, load: "2 kg" }, shaker).possible).toBe(false);
  });

  it("tells what a band does to the reading, and leaves out what settings do not have", () => {
    const slow = { ...settings, frequencies: ["600 r/min"], band: { lowest: "10 Hz", highest: "1 kHz" } } as const;
    expect(benchPlan(slow, shaker).notes.join()).toMatch(/nominally reads 0\.707 of the level/);
    const plain: BenchSettings = { threshold: "7.1 mm/s rms", hysteresis: "5 %", onDelay: 0, latching: false };
    const steps = benchPlan(plain, shaker).steps;
    expect(steps[0]?.hertz).toBe(79.4);
    expect(steps.map(({ expect: text }) => text).join()).not.toMatch(/contact (open|closed)|burst/);
    expect(() => benchPlan({ ...plain, frequencies: [] }, shaker)).toThrow(
      expect.objectContaining({ code: "missing-option" }),
    );
  });

  it("is possible exactly when every level is within reach", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 3000, noNaN: true }),
        fc.double({ min: 5, max: 2000, noNaN: true }),
        (v, f) => {
          const found = benchPlan(
            { ...settings, threshold: `${v.toFixed(3)} mm/s rms`, frequencies: [{ hertz: f }] },
            shaker,
          );
          for (const { level, possible, limitedBy } of found.steps) {
            if (level === null) continue;
            const { highest } = shakerReach(level, shaker, "0 kg");
            expect(possible).toBe(highest !== null && level.value <= highest * (1 + 1e-9));
            expect(limitedBy.length === 0).toBe(possible);
          }
        },
      ),
    );
  });
});
