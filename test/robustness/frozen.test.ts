import * as root from "veladis";
import * as protection from "veladis/protection";
import * as severity from "veladis/severity";
import * as signal from "veladis/signal";
import { describe, expect, it } from "vitest";
import { settings } from "../trip/trip-settings";
import { entries } from "./calls";

/** Paths within a value that a caller could change: parts that are not frozen, and maps and sets, which never are. */
function changeable(value: unknown, path: string, seen = new Set<unknown>()): string[] {
  if ((typeof value !== "object" && typeof value !== "function") || value === null || seen.has(value)) return [];
  seen.add(value);
  const open = typeof value === "object" && (!Object.isFrozen(value) || value instanceof Map || value instanceof Set);
  const parts = Object.entries(value).flatMap(([name, part]) => changeable(part, `${path}.${name}`, seen));
  return open ? [path, ...parts] : parts;
}

describe("tables are frozen to the last row", () => {
  it.each(Object.entries(entries))("%s", (_, module) => {
    for (const [name, value] of Object.entries(module)) expect(changeable(value, name)).toEqual([]);
  });
});

const machine = "group 2 rigid";
const scheme = "iso-10816-3-2009";
const levels = [1, 1.1, 1.2, 1.05, 1.1, 1.15, 1.3, 1.2, 1.1, 1.05, 1.2];

describe("what is remembered between calls cannot be changed by who was handed it", () => {
  it.each<[string, () => unknown]>([
    ["a reading", () => root.parseAmplitude("0.25 in/s pk at 1500 r/min")],
    ["a level", () => root.parseAmplitude("60 dB re 1 nm/s")],
    ["a converted reading", () => root.convertAmplitude("2 g rms", "g pk", { crestFactor: 4 })],
    ["a converter", () => root.converter("in/s pk", "mm/s rms")],
    ["a converter of levels", () => root.converter("dB re 1 nm/s", "mm/s rms")],
    ["a machine", () => severity.parseMachine("pump 90 kW rigid")],
    ["a scheme", () => severity.schemeById(scheme)],
    ["a judge", () => severity.classifier(scheme, machine, "mm/s rms")],
    ["the rules of a trip", () => new protection.TripLogic(settings).rules],
    ["the relay of a trip", () => new protection.TripLogic(settings).relay],
    ["the status of a trip", () => new protection.TripLogic(settings).status],
    ["a baseline", () => protection.baseline(levels, { as: "mm/s rms" })],
    ["a check", () => protection.checkAgainstKnown({ known: "1 g pk", indicated: "1 g pk", tolerance: "5 %" })],
    ["a spectrum", () => ({ ...signal.spectrum(levels, { rate: 100, unit: "g" }), values: undefined })],
  ])("%s", (_, made) => {
    const value = made();
    expect(Object.isFrozen(value) || typeof value === "object").toBe(true);
    expect(changeable(value, "it").filter((path) => path !== "it" || made() === value)).toEqual([]);
  });

  it("weights of a window, bins and lists of rows are made anew", () => {
    const weights = signal.windowWeights("hann", 16);
    weights.fill(0);
    expect(signal.windowWeights("hann", 16)[8]).toBeGreaterThan(0.9);
    const [row] = root.equivalents("1 mm/s rms");
    root.equivalents("1 mm/s rms").length = 0;
    expect(root.equivalents("1 mm/s rms")[0]).toEqual(row);
    const limits = severity.limitsFor({ scheme, machine });
    limits.length = 0;
    expect(severity.limitsFor({ scheme, machine })).toHaveLength(2);
    const [section] = signal.butterworth({ kind: "low-pass", order: 2, edges: [10], rate: 100 });
    (section?.b as unknown as number[])[0] = 7;
    expect(signal.butterworth({ kind: "low-pass", order: 2, edges: [10], rate: 100 })[0]?.b[0]).not.toBe(7);
  });
});
