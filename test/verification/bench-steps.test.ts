import { type BenchSettings, benchPlan, type Shaker } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

const shaker = { lowest: "8 Hz", highest: "3 kHz", acceleration: "6 g pk" } as const satisfies Shaker;
const settings = {
  threshold: "10 mm/s rms",
  hysteresis: "10 %",
  onDelay: 8,
  latching: true,
  contact: "normally open",
  coil: "normally energised",
  sensorFault: "alarm",
  frequencies: ["50 Hz"],
} as const satisfies BenchSettings;

/** What is done, at which share of the threshold, and what is expected. */
const rows = (more: Partial<BenchSettings> = {}, of: Shaker = shaker) =>
  benchPlan({ ...settings, ...more }, of).steps.map(
    ({ what, level, expect: text }) =>
      [what, level === null ? null : Number(level.value.toPrecision(12)), text] as const,
  );
const notes = (more: Partial<BenchSettings>, of: Partial<Shaker> = {}) =>
  benchPlan({ ...settings, ...more }, { ...shaker, ...of }).notes;

/** What a level is told as that is to trip nothing. */
const MARGIN =
  "the device reads about 9.50 mm/s rms, 5 % below the threshold of 10.0 mm/s rms, as far as device and shaker may be off";

// the order of such a test is common practice, no source; a level that a device 5 % low reads as
// 10 is 10 / 0.95 = 10.53, in three digits away from the threshold 10.6
describe("the steps of a bench test", () => {
  it("prove reading, trip, latch, fault and loss of power of a latching output", () => {
    expect(rows()).toEqual([
      ["reading at 25 % of the threshold", 2.5, "the device shows 2.50 mm/s rms within 5 %; no trip"],
      ["reading at 50 % of the threshold", 5, "the device shows 5.00 mm/s rms within 5 %; no trip"],
      ["reading at 75 % of the threshold", 7.5, "the device shows 7.50 mm/s rms within 5 %; no trip"],
      ["hold just below the threshold for 16 s", 9.5, `no trip, contact closed: ${MARGIN}`],
      [
        "raise to above the threshold for 7.2 s, then to less than the reset level",
        10.6,
        "no trip: the burst is shorter than the delay of 8 s, contact closed",
      ],
      ["raise to above the threshold and take the time", 10.6, "trip after 8 s, contact open"],
      ["try to reset by hand while the level is up", 10.6, "the reset is refused"],
      [
        "lower the level to just above the reset level and try to reset",
        9.48,
        "the output stays set, contact open: the level is not below the reset level of 9.00 mm/s rms",
      ],
      ["lower the level to below the reset level", 8.55, "the output stays latched, contact open"],
      ["reset by hand", 8.55, "the output clears, contact closed"],
      [
        "disconnect the sensor for 16 s and take the time, then connect it again",
        null,
        "the fault counts as a level above the threshold: the output sets 8 s after the sensor is disconnected, contact open; it stays set once the sensor is back",
      ],
      ["shaker off, reset by hand", null, "the output clears, contact closed"],
      ["take the power away, then give it back", null, "the relay drops and trips, contact open"],
    ]);
  });

  it("prove that another output clears by itself, at once or after its delay", () => {
    const loose = { latching: false, coil: "normally de-energised", contact: "normally closed" } as const;
    expect(rows({ ...loose, onDelay: 0, sensorFault: "hold" }).slice(3)).toEqual([
      ["hold just below the threshold for 2 s", 9.5, `no trip, contact closed: ${MARGIN}`],
      ["raise to above the threshold and take the time", 10.6, "trip at once, contact open"],
      [
        "lower the level to just above the reset level",
        9.48,
        "the output stays set, contact open: the level is not below the reset level of 9.00 mm/s rms",
      ],
      ["lower the level to below the reset level", 8.55, "the output clears at once, contact closed"],
      [
        "disconnect the sensor for 2 s, then connect it again",
        null,
        "the relay does not act: the output stays as it was, contact closed, and the fault is shown",
      ],
      [
        "take the power away, then give it back",
        null,
        "the relay does not move, contact closed: loss of power goes unseen and needs another alarm",
      ],
    ]);
    expect(rows({ ...loose, offDelay: 4 }).at(-4)?.[2]).toBe("the output clears after 4 s, contact closed");
    expect(rows({ ...loose, offDelay: 4 }).at(-2)).toEqual([
      "shaker off for 4 s",
      null,
      "the output is clear, contact closed",
    ]);
  });

  it("tell the share of the threshold that the shaker sets, not the one that was wanted", () => {
    const readings = (resolution: string, threshold = "10 mm/s rms") =>
      rows({ threshold }, { ...shaker, resolution }).flatMap(([what, level]) =>
        what.startsWith("reading") ? [[what, level]] : [],
      );
    // 2.5, 5 and 7.5 in steps of 2: the nearest are 2 (or 4), 4 or 6, and 8
    const coarse = readings("2 mm/s rms");
    for (const [what, level] of coarse) {
      expect(what).toBe(`reading at ${(level as number) * 10} % of the threshold`);
      expect((level as number) % 2).toBe(0);
    }
    // in three digits 25 % of 7.1 is 1.78, which is 25.07 %
    expect(rows({ threshold: "7.1 mm/s rms" })[0]?.slice(0, 2)).toEqual(["reading at 25.1 % of the threshold", 1.78]);
    expect(readings("0.5 mm/s rms", "7 mm/s rms")).toEqual([
      ["reading at 28.6 % of the threshold", 2],
      ["reading at 50 % of the threshold", 3.5],
      ["reading at 78.6 % of the threshold", 5.5],
    ]);
  });

  it("come once where two would be alike", () => {
    // 2.5, 5 and 7.5 in steps of 4.5: 4.5, 4.5 and 9
    expect(
      rows({}, { ...shaker, resolution: "4.5 mm/s rms" })
        .map(([what]) => what)
        .filter((what) => what.startsWith("reading")),
    ).toEqual(["reading at 45 % of the threshold", "reading at 90 % of the threshold"]);
    const twice = benchPlan({ ...settings, frequencies: ["50 Hz", "3000 r/min", "80 Hz", "80 Hz"] }, shaker);
    expect(twice.steps).toEqual(benchPlan({ ...settings, frequencies: ["50 Hz", "80 Hz"] }, shaker).steps);
  });

  it("leave out what is not known of the relay", () => {
    const plain = { threshold: "10 mm/s rms", hysteresis: "10 %", onDelay: 0.5, latching: true } as const;
    const told = (more: object = {}) => benchPlan({ ...plain, ...more }, shaker).steps.map((step) => step.expect);
    for (const partly of [{}, { contact: "normally open" }]) {
      expect(told(partly).slice(3)).toEqual([
        `no trip: ${MARGIN}`,
        "no trip: the burst is shorter than the delay of 0.5 s",
        "trip after 0.5 s",
        "the reset is refused",
        "the output stays set: the level is not below the reset level of 9.00 mm/s rms",
        "the output stays latched",
        "the output clears",
        "record what the device does",
        "the output is clear",
        "record what the contact does; a fail-safe one trips",
      ]);
    }
    expect(told({ coil: "normally energised" }).at(-1)).toBe("the relay drops and trips");
    expect(told({ sensorFault: "bad" }).at(-2)).toBe("the channel is shown as bad at once and the vote changes as set");
    expect(rows({ onDelay: 0.5 })[3]?.[0]).toBe("hold just below the threshold for 2 s");
    expect(rows({ onDelay: 0.5 })[4]?.[0]).toBe(
      "raise to above the threshold for 0.45 s, then to less than the reset level",
    );
  });

  it("say that a hysteresis smaller than the tolerance cannot be proven by a level", () => {
    const narrow = rows({ hysteresis: "2 %", tolerance: "10 %" });
    expect(narrow.map(([, level]) => level).slice(3, 11)).toEqual([9, 11.2, 11.2, 11.2, null, 11.2, 8.82, 8.82]);
    expect(narrow[7]?.[2]).toContain("cannot be proven");
    // 9 / 0.95 / 0.95 is 9.972, 9 / 0.95 / 0.94 is above 10: the shaker's part counts
    expect(rows({}, { ...shaker, uncertainty: "6 % (k=2)" })[7]?.[1]).toBeNull();
    expect(rows({}, { ...shaker, uncertainty: "5 % (k=2)" })[7]?.[1]).toBe(9.98);
    expect(narrow[0]?.[2]).toBe("the device shows 2.50 mm/s rms within 10 %; no trip");
  });

  it("reach the trip for every device within its tolerance and every shaker within its uncertainty", () => {
    for (const gain of [0.95, 1, 1.05]) {
      for (const off of [0.98, 1, 1.02]) {
        const shown = rows({}, { ...shaker, uncertainty: "2 % (k=2)" }).map(([what, level]) => [
          what,
          (level ?? 0) * gain * off,
        ]);
        for (const [what, reads] of shown as [string, number][]) {
          if (/^hold just below/.test(what)) expect(reads).toBeLessThan(10);
          if (/^raise to above|level is up/.test(what)) expect(reads).toBeGreaterThan(10 * (1 - 1e-9));
          if (/just above the reset/.test(what)) expect(reads).toBeGreaterThan(9 * (1 - 1e-9));
          if (/below the reset level$|reset by hand$/.test(what)) expect(reads).toBeLessThan(9);
        }
      }
    }
  });

  it("count with what the band leaves of the level", () => {
    const band = { lowest: "10 Hz", highest: "1 kHz" } as const;
    // 3rd order, -3 dB: half the power at the edge
    // 10 / 0.95 x 1.414 = 14.89 and 9 / 0.95 x 1.414 = 13.398
    const edge = rows({ band, frequencies: ["10 Hz"] });
    expect(edge[0]?.[2]).toBe("the device shows 1.77 mm/s rms within 5 %; no trip");
    expect(edge[5]?.[1]).toBe(14.9);
    expect(edge[7]?.[1]).toBe(13.4);
    const outside = benchPlan({ ...settings, band, frequencies: ["50 Hz", "2 Hz"] }, shaker);
    expect(outside.steps.at(-1)?.expect).toContain("the device shows 0.0600 mm/s rms");
    expect(outside.notes.join(" ")).toContain("2.00 Hz lies outside the band");
    expect(outside.notes.join(" ")).not.toContain("125");
    expect(refusalOf(() => rows({ band, frequencies: ["2 Hz"] })).code).toBe("out-of-range");
  });

  it("are numbered, at one frequency and its speed, with readings anew at each other", () => {
    const { steps, possible, reset } = benchPlan({ ...settings, frequencies: ["50 Hz", "1485 r/min"] }, shaker);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    expect(steps.map(({ hertz, speed }) => [hertz, speed])).toEqual([
      ...Array(13).fill([50, 3000]),
      // some outputs that latch come back latched from a loss of power
      ...Array(4).fill([24.75, 1485]),
    ]);
    expect(steps[13]?.what).toBe("shaker off, reset by hand if the output is set");
    expect(steps.slice(14).map(({ what }) => what)).toEqual(steps.slice(0, 3).map(({ what }) => what));
    expect(possible).toBe(true);
    expect(reset).toMatchObject({ value: 9, unit: "mm/s", detector: "rms", quantity: "velocity" });
    const [power] = steps.filter(({ what }) => what.startsWith("take the power"));
    expect(power).toMatchObject({ level: null, displacement: null, acceleration: null, possible: true, limitedBy: [] });
  });
});

describe("the notes on a bench test", () => {
  const MOUNT =
    "mount the sensor as on the machine (stud torque, cable tied down); levels of a sine, one frequency at a time";
  const AWAY =
    "levels that prove threshold and reset level lie away from them by what device and shaker may be off, and are rounded further away, to three digits";
  const AFTER =
    "after: put every setting back, reconnect the device to the trip, lift every bypass, prove the whole path to the machine's trip, and record who did so and when";

  it("say before the steps that the device no longer protects the machine", () => {
    expect(benchPlan(settings, shaker).before).toEqual([
      "before: record the setting as found, and under the site's procedure disconnect this device from the trip of the running machine",
      "while it is disconnected the machine has no vibration trip from this device: stop it, or protect it in another way the site approves",
    ]);
  });

  it("say what is done after, and what readings are held against", () => {
    expect(notes({})).toEqual([AWAY, MOUNT, "readings are held against 5 %", AFTER]);
    expect(notes({ tolerance: "3 %" }, { uncertainty: "2 % (k=2)" })[2]).toBe(
      "readings are held against 3 %; the shaker's own uncertainty is ± 2 % (k=2)",
    );
    expect(refusalOf(() => notes({}, { uncertainty: "2" })).code).toBe("missing-unit");
  });

  it("say at which frequencies the band takes more than 2 % away, and what makes up for it", () => {
    const band = { lowest: "10 Hz", highest: "1 kHz" } as const;
    // 3rd order, -3 dB at the edge: half the power, so 0.707 of the level and 1.41 times as much for the same reading
    expect(notes({ band, frequencies: ["50 Hz", "10 Hz"] })).toEqual([
      AWAY,
      MOUNT,
      "readings are held against 5 %",
      "at 10.0 Hz a device of this band nominally reads 0.707 of the level, so it takes 1.41 times the level for the same reading",
      AFTER,
    ]);
    expect(notes({ band, frequencies: ["20 Hz"] })).toHaveLength(4);
    expect(notes({ band, frequencies: ["17 Hz"] })).toHaveLength(4 + 1);
  });
});
