import fc from "fast-check";
import { convertAmplitude, VeladisError } from "veladis";
import { builtInSchemes, classify, parseMachine, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: machines and options of every table are tried on each
type Loose = any;

const machines = [
  "",
  "group 1 rigid",
  "group 2 flexible 3000 r/min",
  "motor 355 mm rigid",
  "pump 90 kW 2980 r/min category II",
  "pump 90 kW 500 r/min category I",
  "fan 90 kW rigid BV-3 1480 r/min",
  "class I",
  "steam turbine 3000 r/min shaft",
  "reciprocating engine 500 kW",
];
const types = ["mm/s rms", "in/s pk", "um pp", "um rms", "g pk", "dB re 1 nm/s", "m/s2 avg"];

const someReading = fc
  .record({
    value: fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 1e3, noNaN: true })),
    type: fc.constantFrom(...types),
    hertz: fc.option(fc.double({ min: 5, max: 500, noNaN: true })),
    to: fc.option(fc.constantFrom(...types)),
  })
  .map(({ value, type, hertz, to }) => {
    const text = `${value} ${type}${hertz === null ? "" : ` at ${hertz} Hz`}`;
    // with a crest factor that it brings along, where it is of the same quantity
    if (to === null || type !== "mm/s rms" || to !== "in/s pk") return text;
    return convertAmplitude(text, to, { crestFactor: 3 });
  });

const someCall = fc.record({
  reading: fc.oneof(someReading, fc.array(someReading, { minLength: 1, maxLength: 3 })),
  scheme: fc.constantFrom(...(builtInSchemes as readonly Scheme[])),
  words: fc.constantFrom(...machines),
  asData: fc.boolean(),
  assume: fc.option(fc.constant("lowest limits" as const)),
  crestFactor: fc.option(fc.constantFrom(1.5, 4)),
});

/** The answer as text, in the order it is written in, or the refusal's message. */
function answer(call: Loose, scheme: Scheme): string {
  const { reading, words, asData, assume, crestFactor } = call;
  const machine = words === "" ? undefined : asData ? parseMachine(words) : words;
  const options = { scheme, machine, ...(assume && { assume }), ...(crestFactor && { crestFactor }) };
  try {
    return JSON.stringify(classify(reading, options));
  } catch (error) {
    if (error instanceof VeladisError) return error.message;
    throw error;
  }
}

/** Paths within a value that a caller could change. */
function changeable(value: unknown, path = "it"): string[] {
  if (typeof value !== "object" || value === null) return [];
  const parts = Object.entries(value).flatMap(([name, part]) => changeable(part, `${path}.${name}`));
  return Object.isFrozen(value) ? parts : [path, ...parts];
}

describe("what is remembered of a table and a machine", () => {
  it("changes no answer: a copy of the table, of which nothing is remembered, gives the same", () => {
    fc.assert(
      fc.property(fc.array(someCall, { minLength: 1, maxLength: 6 }), (calls) => {
        const first = calls.map((call) => answer(call, call.scheme));
        const anew = calls.map((call) => answer(call, structuredClone(call.scheme)));
        expect(first).toEqual(anew);
        // and in another order, when all are remembered
        expect(calls.map((call) => answer(call, call.scheme)).reverse()).toEqual(
          [...calls].reverse().map((call) => answer(call, call.scheme)),
        );
      }),
      { numRuns: 150 },
    );
  });

  it("is remembered for the machine, the assumption, the type, the frequency and the crest factor it was for", () => {
    const at = (reading: string, machine: string, more: object = {}) => {
      const { zone, limit, assumedFacts } = classify(reading, { scheme: "iso-10816-3-2009", machine, ...more });
      return [zone, Number(limit.value.toPrecision(6)), assumedFacts.length];
    };
    const rows = () => [
      at("4 mm/s rms", "group 1 rigid"),
      at("4 mm/s rms", "group 2 rigid"),
      at("4 mm/s rms", "group 1", { assume: "lowest limits" }),
      at("4 mm/s pk", "group 1 rigid"),
      at("4 mm/s pk", "group 1 rigid", { crestFactor: 2 }),
      at("4 mm/s pk", "group 1 rigid", { crestFactor: 3 }),
      at("0.4 g pk at 25 Hz", "group 1 rigid"),
      at("0.4 g pk at 50 Hz", "group 1 rigid"),
    ];
    const told = rows();
    // group 1 rigid 2.3, 4.5, 7.1 and group 2 rigid 1.4, 2.8, 4.5 mm/s RMS (ISO 10816-3:2009), and times 1.414, 2 and 3
    expect(told.slice(0, 6)).toEqual([
      ["B", 4.5, 2],
      ["C", 4.5, 2],
      ["B", 4.5, 3],
      ["B", 6.36396, 2],
      ["A", 4.6, 2],
      ["A", 6.9, 2],
    ]);
    expect(told[6]?.[1]).not.toBe(told[7]?.[1]);
    expect(rows()).toEqual(told);
    expect(() => at("4 mm/s rms", "group 1")).toThrow(VeladisError);
  });

  it("cannot be changed by who was handed it", () => {
    const judgement = classify(["0.2 in/s pk at 25 Hz", "80 um pp"], {
      scheme: "iso-10816-3-2009",
      machine: "group 1 rigid",
    });
    expect(changeable(judgement)).toEqual([]);
  });

  it("is of a table as it is: one that was not defined, and may change, is read anew", () => {
    const criteria = (high: number) => [
      { as: "mm/s rms", limits: { "B/C": high }, source: { title: "Site rule 12, invented", provenance: "memory" } },
    ];
    const own = {
      id: "rule-12",
      kind: "zones",
      standard: "Site rule 12, invented",
      classes: [{ criteria: criteria(4) }],
    };
    const zone = () => classify("5 mm/s rms", { scheme: own as Loose }).zone;
    expect(zone()).toBe("C");
    own.classes = [{ criteria: criteria(6) }];
    expect(zone()).toBe("AB");
  });

  it("keeps the limits by name, whatever a grade is called", () => {
    const limits = JSON.parse('{ "__proto__": 2, "middling": 4 }');
    const source = { title: "Site rule 12, invented", provenance: "memory" };
    const grades = ["__proto__", "middling", "lively"];
    const own = { id: "rule-12", kind: "grades", standard: "Site rule 12, invented", grades };
    const scheme = { ...own, classes: [{ criteria: [{ as: "mm/s rms", limits, source }] }] };
    const judgement = classify("3 mm/s rms", { scheme: scheme as Loose });
    expect(Object.keys(judgement.limits)).toEqual(["__proto__", "middling"]);
    expect([judgement.zone, judgement.limit.name]).toEqual(["middling", "middling"]);
  });

  it("is not a machine in words that look like facts", () => {
    const options = (machine: Loose) => ({ scheme: "iso-10816-3-2009", machine }) as const;
    expect(classify("4 mm/s rms", options({ group: "1", support: "rigid" })).zone).toBe("B");
    expect(() => classify("4 mm/s rms", options('{"group":"1","support":"rigid"}'))).toThrow(VeladisError);
  });
});
