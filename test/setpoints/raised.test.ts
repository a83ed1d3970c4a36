import { describe, expect, it } from "vitest";
import { proposeSetpoints } from "../../src/entries/protection";

const limits = { "B/C": "100 um pp", "C/D": "160 um pp", source: "maker of the turbine" };
const machine = "steam turbine 12 MW 5400 r/min shaft";
const raised = (one: unknown, more: object = {}) =>
  proposeSetpoints({ baseline: "40 um pp", limits, machine, raised: one as string, ...more });

// a multiplier of 2 or 3 while critical speeds are passed: API 670, 5th edition, from memory
describe("a raised setpoint", () => {
  it("multiplies alarm and trip within its speeds", () => {
    const found = raised("2 times from 1900 to 2600 r/min for 30 s", { sensor: { fullScale: "500 um pp" } }).raised;
    // 40 + 100 / 4 = 65
    expect(found?.alarm?.value).toBe(130);
    expect(found?.trip?.value).toBe(320);
    expect(found?.speed.map(Math.round)).toEqual([1900, 2600]);
    expect(found?.seconds).toBe(30);
  });

  it("tells what is left unprotected", () => {
    const { raised: found, warnings } = raised({ factor: 3, from: "1900 r/min", to: "2600 r/min", seconds: 2 });
    expect(found?.unprotected).toHaveLength(4);
    expect(found?.unprotected[0]).toContain("nothing trips below 480 um pp");
    expect(found?.unprotected[1]).toContain("does not end the raised setpoint after 2 s");
    expect(warnings.filter(({ code }) => code === "raised setpoint").map(({ text }) => text)).toEqual(
      found?.unprotected,
    );
  });

  it("tells of a time longer than the delay that suits the machine", () => {
    const told = raised("2 times from 1900 to 2600 r/min for 900 s").raised?.unprotected.join();
    expect(told).toContain("raised for 900 s, longer than the 3 s of delay that suit the machine");
    expect(raised("2 times from 1900 to 2600 r/min for 3 s").raised?.unprotected.join()).not.toContain("longer than");
  });

  // 90 % of the running speed: common practice, no source
  it("may end at 90 % of the running speed", () => {
    expect(raised("2 times from 1900 to 4860 r/min for 30 s").raised?.factor).toBe(2);
  });

  it("leaves the setpoints themselves as they are", () => {
    const plain = proposeSetpoints({ baseline: "40 um pp", limits, machine });
    expect(raised("2 times from 1900 to 2600 r/min for 30 s").trip?.stored.value).toBe(plain.trip?.stored.value);
    expect(plain.raised).toBeUndefined();
  });

  it.each([
    ["of 1: nothing is raised", "1 times from 1900 to 2600 r/min for 30 s", {}, "out-of-range"],
    ["of more than 3: a bypass", "4 times from 1900 to 2600 r/min for 30 s", {}, "out-of-range"],
    ["whose speeds fall", "2 times from 2600 to 1900 r/min for 30 s", {}, "out-of-range"],
    ["at the running speed", "2 times from 4000 to 5400 r/min for 30 s", {}, "out-of-range"],
    ["just below the running speed", "3 times from 1000 to 5399 r/min for 30 s", {}, "out-of-range"],
    ["above 90 % of the running speed", "2 times from 1900 to 4861 r/min for 30 s", {}, "out-of-range"],
    ["without a time", "2 times from 1900 to 2600 r/min", {}, "missing-option"],
    ["without a time, as data", { factor: 2, from: "1900 r/min", to: "2600 r/min" }, {}, "missing-option"],
    ["above the running speed", "2 times from 6000 to 6500 r/min for 30 s", {}, "out-of-range"],
    [
      "within the speeds that a machine varies over",
      "2 times from 900 to 1400 r/min for 30 s",
      { machine: "pump 1000 to 3000 r/min" },
      "out-of-range",
    ],
    [
      "without a running speed",
      "2 times from 1900 to 2600 r/min for 30 s",
      { machine: "steam turbine shaft" },
      "missing-fact",
    ],
    [
      "without a trip",
      "2 times from 1900 to 2600 r/min for 30 s",
      { limits: undefined, scheme: "none" },
      "missing-fact",
    ],
    [
      "beyond the full scale: a bypass",
      "2 times from 1900 to 2600 r/min for 30 s",
      { sensor: { fullScale: "300 um pp" } },
      "out-of-range",
    ],
    [
      "beyond the loop",
      "2 times from 1900 to 2600 r/min for 30 s",
      { sensor: { loop: "0 to 300 um pp" } },
      "out-of-range",
    ],
    [
      "beyond the highest of the device",
      "2 times from 1900 to 2600 r/min for 30 s",
      { device: { highest: "300 um pp" } },
      "out-of-range",
    ],
    ["without speeds", "2 times", {}, "syntax"],
    ["without a unit", "2 times from 1900 to 2600", {}, "syntax"],
    ["for no time", "2 times from 1900 to 2600 r/min for 0 s", {}, "not-positive"],
  ])("is refused %s", (_, one, more, code) => {
    expect(() => raised(one, more)).toThrow(expect.objectContaining({ code }));
  });
});
