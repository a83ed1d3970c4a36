import { convertAmplitude, format, parseAmplitude } from "veladis";
import { proposeSetpoints } from "veladis/protection";
import { classify, judge, judgePoints, machineClassifier } from "veladis/severity";
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
      expect(taken).toThrow(new RegExp(`did you mean ${meant}\\?.*"${key}".*value, unit, detector`, "s"));
    }
  });

  it("left undefined is none, and other data beside a reading is passed over", () => {
    expect(judge(withKey("frequency", undefined), pump).zone).toBe("B");
    expect(judge(withKey("remark", "behind the guard"), pump).zone).toBe("B");
    expect(judge(parseAmplitude("4.1 mm/s rms at 49.7 Hz"), pump).zone).toBe("B");
  });

  it("of a machine is refused with the nearest", () => {
    const machine = { type: "pump", power: "90 kW", rated: 5 } as never;
    expect(() => judge("4.1 mm/s rms", machine)).toThrow(/a fact about a machine/);
    expect(() => machineClassifier({ type: "pump", hz: 50 } as never, "mm/s rms")).toThrow(/a fact about a machine/);
  });
});
