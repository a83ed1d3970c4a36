import { amplitude, convert, convertAmplitude, converter, parseAmplitude, tryConvert, VeladisError } from "veladis";
import { defineDetector, defineUnit } from "veladis/kit";
import { exactZone } from "veladis/own";
import { classify, sealedScheme } from "veladis/severity";
import { describe, expect, it } from "vitest";

type Loose = (...args: unknown[]) => unknown;

const source = { title: "Hollowmere workshop sheet 3, invented", provenance: "memory" } as const;
const unit = { symbol: "lin/s", quantity: "velocity", num: 127, den: 60_000, name: "line per second", source };
const detector = {
  ...{ symbol: "twice", num: 1, den: 1, rootTwo: 1, name: "twice the RMS value", source },
  ofSamples: (samples: ArrayLike<number>) =>
    2 * Math.sqrt(Array.from(samples).reduce((sum, x) => sum + x * x, 0) / samples.length),
};
const scheme = sealedScheme({
  id: "hollowmere-circulation-drives",
  kind: "zones",
  standard: "Hollowmere site rule 7, invented",
  classes: [{ when: { power: { above: 15 } }, criteria: [{ as: "mm/s rms", limits: { "A/B": 2, "B/C": 4 }, source }] }],
});
const machine = { power: 200 };

/** Functions with arguments that they answer. */
const calls: Record<string, readonly [call: Loose, args: readonly unknown[], names: readonly string[]]> = {
  convert: [convert as Loose, [2, "in/s pk", "mil pp", { at: "25 Hz" }], ["value", "from", "to", "options"]],
  converter: [converter as Loose, ["in/s pk", "mil pp", { at: "25 Hz" }], ["from", "to", "options"]],
  tryConvert: [
    (...args) => {
      const answer = (tryConvert as Loose)(...args) as { ok: boolean; error: unknown };
      if (!answer.ok) throw answer.error;
      return answer;
    },
    [2, "in/s pk", "mil pp", { at: "25 Hz" }],
    ["value", "from", "to", "options"],
  ],
  amplitude: [
    amplitude as Loose,
    [{ value: 2, unit: "in/s", detector: "rms", quantity: "velocity", at: "25 Hz", crestFactor: 3 }],
    ["data"],
  ],
  defineUnit: [defineUnit as Loose, [{ ...unit, also: ["lines/s"] }], ["unit"]],
  defineDetector: [defineDetector as Loose, [detector], ["detector"]],
  exactZone: [exactZone as Loose, [3, "mm/s rms", { scheme, machine }], ["value", "from", "options"]],
};

/** Where else the trouble with a part may be: in its own parts, or in what contradicts it. */
const within: Record<string, readonly string[]> = {
  source: ["title", "provenance"],
  num: ["ofSamples"],
  den: ["ofSamples"],
  rootTwo: ["ofSamples"],
  machine: ["power"],
};

const wrong = [undefined, null, -1, Number.NaN, 7, "", "§§", {}, [], true, Symbol("x")];

const refusalOf = (call: Loose, args: readonly unknown[]): VeladisError | undefined => {
  try {
    call(...args);
    return undefined;
  } catch (error) {
    expect(error).toBeInstanceOf(VeladisError);
    return error as VeladisError;
  }
};

describe("a refusal names its place", () => {
  it.each(Object.entries(calls))("%s: the parameter", (_, [call, args, names]) => {
    expect(refusalOf(call, args)).toBeUndefined();
    for (const [i, name] of names.entries()) {
      for (const one of wrong) {
        const refused = refusalOf(call, args.with(i, one));
        if (refused !== undefined) expect([String(one), refused.parameter]).toEqual([String(one), name]);
      }
    }
  });

  it.each(Object.entries(calls))("%s: the option", (_, [call, args]) => {
    const last = args.at(-1);
    if (typeof last !== "object" || last === null) return;
    for (const key of Object.keys(last)) {
      for (const one of wrong) {
        const refused = refusalOf(call, args.with(-1, { ...last, [key]: one }));
        if (refused === undefined) continue;
        expect([key, ...(within[key] ?? [])], String(one)).toContain(refused.option ?? refused.fact);
      }
    }
  });

  it("what was left out is missing, of whichever kind it is", () => {
    const codes = [
      refusalOf(convertAmplitude as Loose, ["1 g pk"]),
      refusalOf(exactZone as Loose, [3, "mm/s rms", {}]),
      refusalOf(defineDetector as Loose, [{ ...detector, ofSamples: undefined }]),
    ].map((error) => error?.code);
    expect(codes).toEqual(["missing-option", "missing-option", "missing-option"]);
  });

  it("a fact of a machine, and what stands before the decimals", () => {
    const fact = refusalOf(exactZone as Loose, [3, "mm/s rms", { scheme, machine: { power: -1 } }]);
    expect([fact?.parameter, fact?.option, fact?.fact]).toEqual(["options", "machine", "power"]);
    const decimal = refusalOf(parseAmplitude as Loose, ["7,1 mm/s rms", { decimal: ";" }]);
    expect([decimal?.parameter, decimal?.option]).toEqual(["options", "decimal"]);
  });
});

describe("nothing that was given is lost", () => {
  it("a number that is too small to be held", () => {
    expect(refusalOf(parseAmplitude as Loose, ["1e-400 mm/s rms"])?.code).toBe("out-of-range");
    expect(parseAmplitude("0e-400 mm/s rms").value).toBe(0);
  });

  it.each(["u", "U", "±", "plusMinus", "k"])("an uncertainty of a reading as %s", (key) => {
    const reading = { ...parseAmplitude("2 mm/s rms"), [key]: 0.2 };
    expect(refusalOf(convertAmplitude as Loose, [reading, "in/s rms"])?.option).toBe(key);
  });

  it("a value or crest factor that does not follow from the history is not judged", () => {
    const options = { scheme: "iso-10816-3-2009", machine: "group 2 rigid" } as const;
    const reading = convertAmplitude("0.2 in/s pk", "mm/s rms");
    expect(classify(reading, options).zone).toBe("C");
    const changed = refusalOf(classify as Loose, [{ ...reading, value: 1 }, options]);
    expect([changed?.code, changed?.parameter, changed?.option]).toEqual(["out-of-range", "reading", "value"]);
    const peaky = convertAmplitude("2 g pk", "g rms", { crestFactor: 4 });
    expect(refusalOf(classify as Loose, [{ ...peaky, crestFactor: 2 }, options])?.option).toBe("crestFactor");
  });

  it.each([
    ["an area", { symbol: "in²" }, "symbol"],
    ["an area in digits", { symbol: "in2" }, "symbol"],
    ["one symbol twice", { also: ["lines/s", "lines/s"] }, "also"],
    ["its own symbol once more", { also: ["lin/s"] }, "also"],
    ["an empty name", { name: "" }, "name"],
  ])("a unit with %s is refused", (_, changed, option) => {
    expect(refusalOf(defineUnit as Loose, [{ ...unit, ...changed }])?.option).toBe(option);
  });

  it("a detector whose function throws is refused with what it says", () => {
    const ofSamples = () => {
      throw new TypeError("no samples here");
    };
    const refused = refusalOf(defineDetector as Loose, [{ ...detector, ofSamples }]);
    expect([refused?.option, refused?.received]).toEqual(["ofSamples", 'an error that says "no samples here"']);
  });

  it("the error class keeps its name", () => {
    expect(VeladisError.name).toBe("VeladisError");
  });
});
