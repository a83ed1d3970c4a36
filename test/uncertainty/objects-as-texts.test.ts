import { parseAmplitude, readingText } from "veladis";
import { trendChart } from "veladis/chart";
import {
  benchPlan,
  mechanicalSwitch,
  proposeSetpoints,
  shakerReach,
  shockImmunity,
  storedSetpoint,
  TripLogic,
  tripPointTest,
} from "veladis/protection";
import { changeFromBaseline } from "veladis/severity";
import { formatUncertain, parseUncertain } from "veladis/uncertainty";
import { slowRollCompensated } from "veladis/vector";
import { describe, expect, it } from "vitest";

const text = "9 ± 0.3 mm/s rms (k=2) at 40 Hz";
const known = parseUncertain(text);
const delays = { hysteresis: "8 %", onDelay: 2 };
const settings = {
  ...delays,
  ...({ threshold: "9 mm/s rms", timerResets: "below threshold", sensorFault: "alarm" } as const),
  ...({ latching: true, contact: "normally open", coil: "normally energised" } as const),
};
const shaker = { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp", acceleration: "6 g pk" } as const;
const machine = "pump 90 kW 2980 r/min rigid category II";

/** What takes a reading without an uncertainty, by name. */
const takers: Readonly<Record<string, (reading: typeof known | string) => unknown>> = {
  "a threshold": (threshold) => new TripLogic({ ...settings, threshold }),
  "a level of a trip": (level) => new TripLogic(settings).step(level, 1),
  "a threshold of a bench test": (threshold) => benchPlan({ ...delays, latching: true, threshold }, shaker),
  "a level of a shaker": (level) => shakerReach(level, shaker, "0 kg"),
  "a setpoint to store": (asked) => storedSetpoint(asked, { step: "0.2 mm/s rms" }),
  "a limit of a switch": (limit) => mechanicalSwitch("2 g pk", { limit }),
  "a running vibration": (running) =>
    shockImmunity(
      { threshold: "9 mm/s rms", ...delays, timerResets: "below threshold", detector: { kind: "rms", averaging: 1 } },
      running,
    ),
  "a setting on the bench": (setting) => tripPointTest(setting, [], { tolerance: "5 %" }),
  "a baseline": (before) => changeFromBaseline("4 mm/s rms", before, { scheme: "iso-10816-7-2009", machine }),
  "a level of a chart": (trip) => trendChart({ readings: [{ time: 0, reading: 4 }], as: "mm/s rms", trip }),
};

describe("a reading with an uncertainty", () => {
  it.each(Object.entries(takers))("is refused as %s, as an object too", (_, take) => {
    const refused = expect.objectContaining({
      code: "syntax",
      message: expect.stringContaining("a reading without ±"),
    });
    expect(() => take(text)).toThrow(refused);
    expect(() => take(known)).toThrow(refused);
  });

  it("is refused as the limit of a slow roll", () => {
    const [reading, slowRoll] = ["40 um pp ∠ 60° at 1x of 5400 r/min", "6 um pp ∠ 150° at 1x of 300 r/min"] as const;
    for (const limit of ["50 ± 2 um pp (k=2)", parseUncertain("50 ± 2 um pp (k=2)")]) {
      expect(() => slowRollCompensated(reading, slowRoll, { limit })).toThrow("a reading without ±");
    }
  });

  it("says in its text that the ± is left out, and that text is not read as exact", () => {
    expect(readingText(known)).toBe("9.00 mm/s rms at 40 Hz (2400 r/min)  (± left out)");
    expect(() => parseAmplitude(readingText(known))).toThrow("a reading without ±");
    expect(formatUncertain(known)).toBe("9.00 ± 0.30 mm/s rms (k=2)");
  });

  it("stays in what a proposal stores, and a warning names it", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the pump" };
    const baseline = parseUncertain("2 ± 0.2 mm/s rms (k=2)");
    const { warnings } = proposeSetpoints({ machine, baseline, limits });
    expect(warnings.map(({ code }) => code)).toContain("uncertain setpoint");
  });
});
