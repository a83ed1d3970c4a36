import { type Amplitude, convertAmplitude, format, parseAmplitude } from "veladis";
import { proposeSetpoints } from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { classify, judge, judgePoints, limitsFor, machineClassifier } from "veladis/severity";
import { overall, profileOverall } from "veladis/signal";
import { parseUncertain } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

const pump = "pump 90 kW 2980 r/min category II";
const data = { value: 4.1, unit: "mm/s", detector: "rms", quantity: "velocity" } as const;
const withKey = (key: string, value: unknown) => ({ ...data, [key]: value }) as never;

// a frequency that is passed over leaves the displacement unjudged, and the verdict milder
describe("a key that a reading does not have", () => {
  it.each([
    ["frequency", 50, "hertz"],
    ["hz", 50, "hertz"],
    ["Hz", 50, "hertz"],
    ["crest", 4, "crestFactor"],
    ["place", "shaft", "place of the machine"],
    ["speed", "2980 r/min", "speed of the machine"],
    ["at", "10 Hz", "hertz"],
    ["cf", 4, "crestFactor"],
    ["CrestFactor", 4, "crestFactor"],
    ["crestFactr", 4, "crestFactor"],
    ["Hertz", 10, "hertz"],
  ])("%s is refused by every function that takes a reading as data, with what is meant", (key, value, meant) => {
    const reading = withKey(key, value);
    for (const taken of [
      () => judge(reading, pump),
      () => classify(reading, { scheme: "iso-10816-7-2009", machine: pump }),
      () => judgePoints([{ point: "DE-H", reading }], pump),
      () => judge(data as never, pump, { background: reading }),
      () => convertAmplitude(reading, "in/s pk"),
      () => format(reading),
      () => proposeSetpoints({ baseline: reading, machine: pump }),
    ]) {
      expect(taken).toThrow(new RegExp(`(?=.*"${key}")(?=.*did you mean "?${meant}"?)`, "s"));
    }
  });

  it("near to none is refused all the same, and left undefined is none", () => {
    expect(() => judge(withKey("remark", "behind the guard"), pump)).toThrow(/a part of a reading/);
    // the other detector of a reading is no part of it, though an overall of the library has a peak
    expect(() => judge(withKey("peak", 12), pump)).toThrow(/a part of a reading/);
    expect(() => judge(withKey("order", 2), pump)).toThrow(/a part of a reading/);
    expect(judge(withKey("frequency", undefined), pump).zone).toBe("B");
    expect(judge(parseAmplitude("4.1 mm/s rms at 49.7 Hz"), pump).zone).toBe("B");
  });

  it("passes in an answer of the library, which is a reading with more beside it", () => {
    const samples = Float64Array.from({ length: 4096 }, (_, i) => 6 * Math.sin((2 * Math.PI * 50 * i) / 4096));
    const record = { rate: 4096, unit: "mm/s", band: [10, 1000], as: "mm/s rms" } as const;
    const profile = [
      [10, 0.001],
      [500, 0.001],
    ] as const;
    const level = profileOverall(profile, { unit: "g2/Hz", as: "mm/s rms" });
    const { criteria } = judge("4.1 mm/s rms at 49.7 Hz", pump);
    const setpoints = proposeSetpoints({ baseline: "4.1 mm/s rms", machine: pump });
    const answers = {
      "a converted reading": convertAmplitude("4.1 mm/s rms at 49.7 Hz", "um pp"),
      "a level": parseAmplitude("95 dB re 1e-9 m/s"),
      "a reading with ±": parseUncertain("4.1 ± 0.3 mm/s rms (k=2)"),
      "a reading of a loop": currentLoop("0 to 20 mm/s rms").reading(9, "mm/s rms"),
      "a limit": Object.values(limitsFor({ scheme: "iso-10816-7-2009", machine: pump })[0]?.limits ?? {})[0],
      "what was judged": (criteria[0] as (typeof criteria)[number]).judged,
      "a limit of a judgement": Object.values((criteria[0] as (typeof criteria)[number]).limits)[0],
      "a setpoint": setpoints.alarm?.reset,
      "an overall by spectrum": overall(samples, record),
      "the level of a profile": level,
      "a Gaussian peak": level.peak,
    };
    for (const [name, answer] of Object.entries(answers)) {
      const text = format(answer as Amplitude);
      expect(text, name).toMatch(/^\d/);
      expect(format(JSON.parse(JSON.stringify(answer))), name).toBe(text);
    }
  });

  it("of a machine is refused with the nearest", () => {
    const machine = { type: "pump", power: "90 kW", rated: 5 } as never;
    expect(() => judge("4.1 mm/s rms", machine)).toThrow(/a fact about a machine/);
    expect(() => machineClassifier({ type: "pump", hz: 50 } as never, "mm/s rms")).toThrow(/a fact about a machine/);
  });
});
