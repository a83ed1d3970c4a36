import fc from "fast-check";
import { convertAmplitude, VeladisError } from "veladis";
import { fromJson, toJson } from "veladis/json";
import { judge } from "veladis/severity";
import { rssDifference } from "veladis/signal";
import { parseUncertain } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: a text is of no type
type Loose = any;

const text = toJson("verdict", judge("3.81 mm/s rms", "pump 90 kW 2980 r/min category II rigid"));
const reading = toJson("amplitude", convertAmplitude("0.25 in/s pk at 25 Hz", "mm rms"));

/** The reading with something changed in its text. */
const forged = (change: (envelope: Loose) => void): string => {
  const envelope = JSON.parse(reading);
  change(envelope);
  return JSON.stringify(envelope);
};

describe("a text that is torn or forged is refused, as nothing but a VeladisError", () => {
  it("at every place where it may be torn", () => {
    for (let end = 0; end < text.length; end += 7) {
      expect(() => fromJson("verdict", text.slice(0, end))).toThrow(VeladisError);
    }
  });

  it.each<[string, (envelope: Loose) => void]>([
    ["another unit", (answer) => (answer.unit = "furlong")],
    ["a quantity that is not the unit's", (answer) => (answer.quantity = "acceleration")],
    ["a value below zero", (answer) => (answer.value = -1)],
    ["a text for a value", (answer) => (answer.value = "1")],
    ["an infinite value", (answer) => (answer.value = "Infinity")],
    [
      "a list of keys to its prototype",
      (answer) => Object.defineProperty(answer, "__proto__", { value: {}, enumerable: true }),
    ],
    ["an assumption there is none of", (answer) => answer.assumed.push("luck")],
    ["a step from the future", ({ histories }) => (histories[0][1].of = [7])],
    ["a step that does nothing known", ({ histories }) => (histories[0][1].does = "guessed")],
    ["a history that is not there", (answer) => (answer.history = 3)],
    ["a place that is no number", (answer) => (answer.history = "length")],
    ["a list inherited from", (envelope) => (envelope.histories = { 0: [], length: 1 })],
  ])("%s", (_, change) => {
    expect(() => fromJson("amplitude", forged(change))).toThrow(VeladisError);
  });

  it("what a step assumed cannot be left out of the answer", () => {
    expect(fromJson("amplitude", reading).assumed).toEqual(["one-frequency", "sine"]);
    const bare = fromJson(
      "amplitude",
      forged((answer) => (answer.assumed = [])),
    );
    expect(new Set(bare.assumed)).toEqual(new Set(convertAmplitude("0.25 in/s pk at 25 Hz", "mm rms").assumed));
  });

  it("what a conversion cannot do without assuming is put back, though its step and the answer have lost it", () => {
    const bare = fromJson(
      "amplitude",
      forged((answer) => {
        delete answer.assumed;
        for (const step of answer.histories[0]) delete step.assumed;
      }),
    );
    expect(bare).toEqual(fromJson("amplitude", reading));
    const background = rssDifference("5 mm/s rms", "3 mm/s rms");
    const kept = JSON.parse(toJson("amplitude", background));
    for (const step of kept.histories[0]) delete step.assumed;
    expect(fromJson("amplitude", JSON.stringify({ ...kept, assumed: undefined })).assumed).toEqual(["uncorrelated"]);
  });

  it("a reading carried as a bound comes back without the one frequency that it does not assume", () => {
    const verdict = judge("6 mil pp", "motor 400 kW 3570 rpm rigid housing");
    expect(fromJson("verdict", toJson("verdict", verdict))).toEqual(verdict);
  });

  it("a reading whose unit, detector or frequency contradicts the last step of its history", () => {
    const micrometres = convertAmplitude("0.25 in/s pk at 25 Hz", "um pp");
    for (const changed of [{ unit: "mm" }, { detector: "pk" }, { hertz: 50 }] as const) {
      const { history, ...rest } = { ...micrometres, ...changed };
      const outside = { ...rest, history: JSON.parse(JSON.stringify(history)) };
      expect(() => convertAmplitude({ ...rest, history } as Loose, "mil pp")).toThrow(VeladisError);
      expect(() => convertAmplitude(outside as Loose, "mil pp")).toThrow(VeladisError);
      expect(() => fromJson("amplitude", toJson("amplitude", { ...rest, history } as Loose))).toThrow(VeladisError);
    }
    // a value that was replaced is told as such
    const replaced = convertAmplitude({ ...micrometres, value: 90 }, "mm pp");
    expect(replaced.history?.map(({ does }) => does)).toEqual(["given", "convert", "replaced", "convert"]);
  });

  it("nesting without end", () => {
    const deep = `${"[".repeat(50_000)}${"]".repeat(50_000)}`;
    expect(() => fromJson("amplitude", reading.replace('"unit"', `"note":${deep},"unit"`))).toThrow(VeladisError);
    expect(() => fromJson("amplitude", deep)).toThrow(VeladisError);
  });

  it("any JSON in any place", () => {
    const paths = ["criteria", "margin", "limits", "judged", "sources", "histories"] as const;
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(...paths), fc.string(), (value, path, key) => {
        const envelope = JSON.parse(text);
        const keys = Object.keys(envelope[path]);
        envelope[path][keys[key.length % keys.length] as string] = value;
        try {
          fromJson("verdict", JSON.stringify(envelope));
        } catch (error) {
          if (!(error instanceof VeladisError)) throw error;
        }
      }),
      { numRuns: 300 },
    );
  });

  it("an uncertainty of a step is checked", () => {
    const known = JSON.parse(toJson("amplitude", parseUncertain("4.9 mm/s rms ± 5 % (k=2)")));
    known.histories[0][0].uncertainty.standard = 1e9;
    expect(() => fromJson("amplitude", JSON.stringify(known))).toThrow(VeladisError);
  });
});
