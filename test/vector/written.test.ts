import fc from "fast-check";
import { formatVector, parseVector, type Vector } from "veladis/vector";
import { describe, expect, it } from "vitest";

const WHOLE = { digits: 17 };
/** A vector of any unit, phase, order and speed. */
const anyVector = fc
  .record({
    value: fc.double({ min: 0, max: 1e6, noNaN: true }),
    type: fc.constantFrom("um pp", "mil pp", "mm/s rms", "in/s pk", "g pk", "m/s2 avg"),
    phase: fc.double({ min: 0, max: 359.999, noNaN: true }),
    order: fc.integer({ min: 1, max: 20 }),
    speed: fc.oneof(fc.integer({ min: 1, max: 60_000 }), fc.double({ min: 0.1, max: 60_000, noNaN: true })),
    names: fc.constantFrom("", ", probe 1Y", ", direction 45 left", ", probe 2 X/2, direction vertical"),
  })
  .map(({ value, type, phase, order, speed, names }) =>
    parseVector(`${value} ${type} ∠ ${phase}° at ${order}x of ${speed} r/min${names}`),
  )
  .chain((vector) =>
    vector.order === 1
      ? fc
          .option(fc.double({ min: 1e-3, max: vector.speed * 0.99, noNaN: true }), { nil: undefined })
          .map((slow) =>
            slow === undefined ? vector : parseVector(formatVector({ ...vector, slowRollSpeed: slow }, WHOLE)),
          )
      : fc.constant(vector),
  );

describe("a vector in words", () => {
  it.each([
    "3.0 mil pp ∠ 45° at 1x of 3600 r/min",
    "3 mil pp ∠45° at 1x of 3600 r/min",
    "3 mil pp ∠ 45 deg at 1x 3600 rpm",
    "3 mil pp /_ 45 deg at 1X of 3600 r/min",
    "3 mil pp/_45° @ 1x of 60 Hz",
    "3 mil pp angle 45 degrees at 1x of 3600 r/min",
    "3 mil pp, angle 45°, at 1 x of 3600 r/min",
    "3 mil pp, phase 45 deg lag at 1x of 3600 cpm",
    "3 mil pp at 1x of 3600 r/min ∠ 45°",
    // the sign of an ordinal number, which stands for that of degrees on some keyboards
    "3 mil pp ∠ 45º at 1x of 3600 r/min",
    "3 mil pp ∠ 405° at 1x of 3600 r/min".replace("405", "45.0"),
  ])("%j is 3 mil pp, 45 degrees late, at 60 turns a second", (text) => {
    const { amplitude, phase, order, speed } = parseVector(text);
    expect(amplitude).toMatchObject({ value: 3, unit: "mil", detector: "pp", quantity: "displacement", hertz: 60 });
    expect({ phase, order, speed }).toEqual({ phase: 45, order: 1, speed: 60 });
  });

  it("names its probe and direction", () => {
    const text = "3.00 mil pp ∠ 45° at 2x of 3600 r/min, probe front 1Y, direction 45 left";
    const vector = parseVector(text);
    expect(vector).toMatchObject({ probe: "front 1Y", direction: "45 left", order: 2, speed: 60 });
    expect(vector.amplitude.hertz).toBe(120);
    expect(formatVector(vector)).toBe(text);
    expect(parseVector(text.replace(/(, probe.*)(, direction.*)/, "$2$1"))).toEqual(vector);
  });

  it("says that slow roll was taken off", () => {
    const text = "3.00 mil pp ∠ 45° at 1x of 3600 r/min, probe 1Y, slow roll taken off at 300 r/min";
    expect(parseVector(text).slowRollSpeed).toBe(5);
    expect(formatVector(text)).toBe(text);
    expect(parseVector(text.replace("slow roll", "Slow  Roll"))).toEqual(parseVector(text));
  });

  it("without an order is told how it is written at its own frequency", () => {
    expect(() => parseVector("3 mil pp ∠ 45° at 25 Hz")).toThrow('"at 1x of 25 Hz"');
    expect(() => parseVector("3 mil pp ∠ 45° at 1500 rpm")).toThrow('"at 1x of 1500 r/min"');
    expect(() => parseVector("3 mil pp ∠ 45° at noon")).toThrow('"at 1x of 3600 r/min"');
  });

  it("a whole turn is none, written and rounded", () => {
    expect(parseVector("3 mil pp ∠ 360° at 1x of 3600 r/min").phase).toBe(0);
    expect(formatVector("3 mil pp ∠ 359.97° at 1x of 3600 r/min")).toBe("3.00 mil pp ∠ 0° at 1x of 3600 r/min");
    expect(formatVector("3 mil pp ∠ 359.97° at 1x of 3600 r/min", { digits: 5 })).toContain("∠ 359.97°");
  });

  it.each([
    ["3 mil pp ∠ 45°", "missing-fact"],
    ["3 mil pp ∠ 45° at 3600 r/min", "missing-fact"],
    ["3 mil pp ∠ 45° at 1x", "missing-fact"],
    ["3 mil pp ∠ 45° at 1x of", "missing-fact"],
    ["3 mil pp at 1x of 3600 r/min", "missing-fact"],
    ["3 mil pp ∠ 45 at 1x of 3600 r/min", "missing-unit"],
    ["3 mil pp ∠ 0.785 rad at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ 45 ± 2 rad at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ 45 ± 2 % at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ 45 ± 2 at 1x of 3600 r/min", "missing-unit"],
    ["3 mil pp ∠ 45 ± -2° at 1x of 3600 r/min", "negative"],
    ["3 mil pp ∠ 45 ± 91° at 1x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 45 ± 2° (k=0.5) at 1x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 45° (k=2) at 1x of 3600 r/min", "syntax"],
    ["3 ± 4 mil pp ∠ 45° at 1x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 45° at 2x of 3600 ± 10 r/min", "missing-unit"],
    ["3 mil pp ∠ not determined at 1x of 3600 r/min", "not-a-number"],
    ["3 mil pp ∠ 45° lead at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ -45° at 1x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 361° at 1x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 1e999° at 1x of 3600 r/min", "not-finite"],
    ["3 mil pp ∠ NaN° at 1x of 3600 r/min", "not-a-number"],
    ["3 mil pp ∠ Infinity° at 1x of 3600 r/min", "not-a-number"],
    ["3 mil pp ∠ 45,5° at 1x of 3600 r/min", "not-a-number"],
    ["3 mil pp ∠ 45° ∠ 50° at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min at 1x of 1800 r/min", "syntax"],
    ["3 mil pp at 1x of 1800 r/min ∠ 45° at 1x of 3600 r/min", "syntax"],
    ["3 mil pp ∠ 45° at 1.5x of 3600 r/min", "out-of-range"],
    ["3 mil pp ∠ 45° at 0x of 3600 r/min", "not-positive"],
    ["3 mil pp ∠ 45° at 1x of 0 r/min", "not-positive"],
    ["3 mil pp ∠ 45° at 1x of -3600 r/min", "not-positive"],
    ["3 mil true pk ∠ 45° at 1x of 3600 r/min", "not-a-sine"],
    ["95 dB re 1 nm/s ∠ 45° at 1x of 3600 r/min", "out-of-range"],
    ["-3 mil pp ∠ 45° at 1x of 3600 r/min", "negative"],
    ["3 ∠ 45° at 1x of 3600 r/min", "missing-unit"],
    ["3 mil ∠ 45° at 1x of 3600 r/min", "missing-detector"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min, probe 1Y, probe 1X", "syntax"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min, probe ", "syntax"],
  ])("%j is refused as %s", (text, code) => {
    expect(() => parseVector(text)).toThrow(expect.objectContaining({ code }));
  });
});

describe("what the writer writes", () => {
  it("the parser reads back whole, to the last bit with 17 digits", () => {
    fc.assert(
      fc.property(anyVector, (vector) => {
        expect(parseVector(formatVector(vector, WHOLE))).toEqual(vector);
      }),
    );
  });

  it("is the same text again, in any number of digits", () => {
    fc.assert(
      fc.property(anyVector, fc.integer({ min: 1, max: 17 }), (vector, digits) => {
        const text = formatVector(vector, { digits });
        expect(formatVector(text, { digits })).toBe(text);
      }),
    );
  });

  it("comes back from JSON whole", () => {
    fc.assert(
      fc.property(anyVector, (vector) => {
        const back = JSON.parse(JSON.stringify(vector)) as Vector;
        expect(back).toEqual(vector);
        expect(formatVector(back, WHOLE)).toBe(formatVector(vector, WHOLE));
      }),
    );
  });
});

describe("a vector that was taken apart", () => {
  const parts = {
    amplitude: parseVector("3 mil pp ∠ 45° at 1x of 3600 r/min").amplitude,
    phase: 45,
    order: 1,
    speed: 60,
  };

  it.each<[string, object, string]>([
    ["a frequency that is not order times speed", { speed: 50 }, "out-of-range"],
    ["a crest factor of no sine", { amplitude: { ...parts.amplitude, crestFactor: 3 } }, "not-a-sine"],
    ["a clipped amplitude", { amplitude: { ...parts.amplitude, state: "above range" } }, "out-of-range"],
    ["a phase without end", { phase: Number.POSITIVE_INFINITY }, "not-finite"],
    ["no phase", { phase: undefined }, "missing-fact"],
    ["a part there is none of", { angle: 45 }, "unknown-option"],
    ["a name with a comma", { probe: "1Y, 1X" }, "syntax"],
    ["a name with a line end", { direction: "up\nand down" }, "syntax"],
  ])("with %s is refused", (_, wrong, code) => {
    expect(() => formatVector({ ...parts, ...wrong })).toThrow(expect.objectContaining({ code }));
  });

  it("may say the crest factor of a sine, and leave the frequency to order and speed", () => {
    const amplitude = { ...parts.amplitude, crestFactor: Math.SQRT2, hertz: undefined };
    expect(formatVector({ ...parts, amplitude })).toBe("3.00 mil pp ∠ 45° at 1x of 3600 r/min");
  });
});
