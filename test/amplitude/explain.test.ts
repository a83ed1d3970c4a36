import fc from "fast-check";
import { type Amplitude, assumedText, convertAmplitude, format, parseAmplitude } from "veladis";
import { explain } from "veladis/explain";
import { currentLoop, sensor } from "veladis/sensor";
import { describe, expect, it } from "vitest";
import { madeOf } from "../../src/reading/index";
import { replay } from "./replay";

const written = ({ value, level }: Amplitude): number => level?.decibels ?? value;
const types = [
  "in/s pk",
  "mm/s rms",
  "um pp",
  "mil pk",
  "g pk",
  "m/s2 avg",
  "dB re 1 nm/s",
  "dB re ISO 1683 acceleration",
];
const type = fc.constantFrom(...types);

describe("an explanation", () => {
  it("tells the steps of the example of the trade: units first, then the detector", () => {
    expect(explain(convertAmplitude("0.25 in/s pk", "mm/s rms")).text.split("\n")).toEqual([
      "0.25 in/s pk",
      "0.25 in/s pk x 25.4 = 6.35 mm/s pk",
      "6.35 mm/s pk / 1.414 = 4.49 mm/s rms  (one sine)",
    ]);
  });

  it("names the frequency, the sensor, the loop and the crest factor", () => {
    const { text } = explain(sensor("100 mV/g").reading("98 mV pk", "in/s pk", { at: "80 Hz" }));
    expect(text).toContain("(sensor of 100 mV/g)");
    expect(text).toContain("(2 pi x 80 Hz, one frequency)");
    expect(explain(currentLoop("0 to 20 mm/s rms").reading(12)).text).toContain("(4 to 20 mA are 0 to 20 mm/s rms)");
    expect(explain(convertAmplitude("2 g rms", "g pk", { crestFactor: 4 })).text).toContain("x 4 = 8 g pk");
  });

  it("replayed comes to the answer, whatever the chain of conversions", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.array(type, { minLength: 1, maxLength: 6 }),
        (value, hertz, chain) => {
          const given: Amplitude = {
            ...{ value, unit: "mm/s", detector: "rms", quantity: "velocity", hertz },
          };
          const answer = chain.reduce<Amplitude>((reading, to) => convertAmplitude(reading, to), given);
          const { steps } = explain(answer);
          const replayed = replay(steps).at(-1) as number;
          const linear = (x: number): number => (answer.level === undefined ? x : 10 ** (x / 20));
          expect(Math.abs(linear(replayed) / linear(written(answer)) - 1)).toBeLessThan(1e-12);
          const each = replay(steps);
          for (const [i, { value: told }] of steps.entries())
            expect(Math.abs((each[i] as number) - told)).toBeLessThanOrEqual(Math.abs(told) * 1e-12);
        },
      ),
    );
  });

  it("replayed comes to the reading of a sensor and of a loop", () => {
    fc.assert(
      fc.property(fc.double({ min: 3.61, max: 20.99, noNaN: true }), type, (milliamperes, to) => {
        const answer = currentLoop("0.5 to 25 mm/s rms").reading(milliamperes, to, { at: "50 Hz" });
        const replayed = replay(explain(answer).steps).at(-1) as number;
        expect(Math.abs(replayed / written(answer) - 1)).toBeLessThan(1e-12);
      }),
    );
  });
});

/** What a step makes of readings in mm/s rms. */
function made(of: readonly Amplitude[], value: number, step: Parameters<typeof madeOf>[1]): Amplitude {
  return { value, unit: "mm/s", detector: "rms", quantity: "velocity", hertz: undefined, ...madeOf(of, step) };
}

describe("an explanation of arithmetic", () => {
  const of = ["3 mm/s rms", "4 mm/s rms"].map((one) => parseAmplitude(one));

  it.each([
    ["sum", 7, ["in-phase"], "3 mm/s rms + 4 mm/s rms = 7 mm/s rms  (in phase)"],
    ["rss", 5, ["uncorrelated"], "root of ((3 mm/s rms)^2 + (4 mm/s rms)^2) = 5 mm/s rms  (uncorrelated)"],
    ["largest", 4, [], "largest of (3 mm/s rms, 4 mm/s rms) = 4 mm/s rms"],
    ["smallest", 3, [], "smallest of (3 mm/s rms, 4 mm/s rms) = 3 mm/s rms"],
  ] as const)("tells of the %s, and what it assumed", (does, value, assumed, line) => {
    const { text, steps } = explain(made(of, value, { does, value, type: "mm/s rms", assumed }));
    expect(text.split("\n").at(-1)).toBe(line);
    expect(steps.at(-1)).toMatchObject({ operation: does, of: [0, 1], value, assumed });
    expect(replay(steps).at(-1)).toBe(value);
  });
});

describe("a history", () => {
  it("keeps all that was assumed on the way, and loses nothing", () => {
    fc.assert(
      fc.property(fc.array(type, { minLength: 1, maxLength: 40 }), (chain) => {
        let reading: Amplitude = convertAmplitude("3 mm/s rms at 25 Hz", "mm/s rms");
        const all = new Set<string>();
        for (const to of chain) {
          const bare = convertAmplitude(`1 ${reading.unit} ${reading.detector} at 25 Hz`, to);
          for (const one of bare.assumed) all.add(one);
          reading = convertAmplitude(reading, to);
        }
        expect(new Set(reading.assumed)).toEqual(all);
        expect(reading.history?.length).toBeLessThanOrEqual(65);
      }),
    );
  });

  it("survives JSON, and goes on from there", () => {
    const once = convertAmplitude("2 g rms", "g pk", { crestFactor: 4 });
    const back = JSON.parse(JSON.stringify(once)) as Amplitude;
    expect(back).toEqual({ ...once, hertz: undefined });
    expect(convertAmplitude(back, "m/s2 pk").assumed).toEqual(["crest-factor"]);
    expect(format(convertAmplitude(back, "g rms"))).toBe("2.00 g rms");
  });

  it("tells of a value that was replaced by hand", () => {
    const replaced = { ...convertAmplitude("0.25 in/s pk", "mm/s rms"), value: 4 };
    const answer = convertAmplitude(replaced, "mm/s pk");
    expect(answer.assumed).toEqual(["sine"]);
    expect(explain(answer).text).toContain("4 mm/s rms  (the value was replaced)");
  });

  it("has no crest factor where readings by two were put together", () => {
    const [four, three] = [4, 3].map((crestFactor) => convertAmplitude("2 g rms", "g pk", { crestFactor })) as [
      Amplitude,
      Amplitude,
    ];
    const step = { does: "sum", value: 1, type: "g pk" } as const;
    expect(madeOf([four, four], step).crestFactor).toBe(4);
    // the crest factor of a sum with a waveform of unknown shape is unknown
    expect(madeOf([four, parseAmplitude("1 g pk")], step)).not.toHaveProperty("crestFactor");
    const both = madeOf([four, three], step);
    expect(both).not.toHaveProperty("crestFactor");
    expect(both.assumed).toEqual(["crest-factor"]);
    expect(assumedText(both)).toBe("(crest factors)");
  });

  it("carries a crest factor back, and the state of a loop along", () => {
    const peak = convertAmplitude("2 g rms", "g pk", { crestFactor: 4 });
    expect(convertAmplitude(peak, "g rms").value).toBe(2);
    const above = currentLoop("0 to 8 mm/s rms").reading(20.9);
    expect(convertAmplitude(above, "in/s pk").state).toBe("above range");
  });

  it("writes a step that several have in common once, and tells the least and the whole number of steps", () => {
    const limit = convertAmplitude("0.25 in/s pk", "mm/s pk");
    const part = (by: number): Amplitude => {
      const value = limit.value * by;
      return { ...limit, value, ...madeOf([limit], { does: "scale", by, value, type: "mm/s pk" }) };
    };
    const both = [part(0.5), part(0.3)];
    const least = { ...limit, value: part(0.3).value };
    const made = madeOf(both, { does: "smallest", value: least.value, type: "mm/s pk" });
    expect(made.history?.map(({ does }) => does)).toEqual(["given", "convert", "scale", "scale", "smallest"]);
    const value = 1.5;
    const stored = { ...least, ...made };
    const rounded = madeOf([stored], { does: "round", by: 0.5, rounds: "down", value, type: "mm/s pk" });
    const { steps, text } = explain({ ...stored, value, ...rounded });
    expect(replay(steps).at(-1)).toBe(1.5);
    expect(text.split("\n").slice(-2)).toEqual([
      "smallest of (3.175 mm/s pk, 1.905 mm/s pk) = 1.905 mm/s pk",
      "1.905 mm/s pk down to a whole number of steps of 0.5 = 1.5 mm/s pk",
    ]);
  });
});
