/** Readings as they are written and read in other languages. Outside: `Intl.NumberFormat` of the engine (Unicode CLDR). */
import fc from "fast-check";
import { type FormatOptions, format, frequency, parseAmplitude, readingText, VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

const points = ["en-GB", "de-CH", "ja-JP", "ar-EG", "hi-IN"];
const commas = ["de-DE", "fr-FR", "sv-SE", "pt-BR", "ru-RU"];
const locales = [...points, ...commas];
const decimalOf = (locale: string) => (commas.includes(locale) ? "," : ".");
const types = ["mm/s rms", "um/s2 pk", "uin pp", "in/s pk", "dB re 1e-9 m/s", "g true pk"] as const;
// a level beyond 6000 dB is no reading that a number can hold
const all = fc
  .record({
    value: fc.double({ min: 1e-7, max: 1e7, noNaN: true }),
    type: fc.constantFrom(...types),
    locale: fc.constantFrom(...locales),
    symbols: fc.constantFrom("plain", "typographic") as fc.Arbitrary<"plain" | "typographic">,
  })
  .map((one) => (one.type.startsWith("dB") ? { ...one, value: one.value / 1e5 } : one));

describe("a reading in another language", () => {
  it("is read back as it was written", () => {
    fc.assert(
      fc.property(all, fc.integer({ min: 1, max: 17 }), ({ value, type, locale, symbols }, digits) => {
        const back = parseAmplitude(format(value, type, { locale, symbols, digits }), { decimal: decimalOf(locale) });
        const plain = parseAmplitude(format(value, type, { digits }));
        expect(back).toEqual(plain);
      }),
      { numRuns: 2000 },
    );
  });

  it("is read back with all that stands behind it", () => {
    fc.assert(
      fc.property(all, ({ value, type, locale, symbols }) => {
        const reading = parseAmplitude(`${value} ${type} at ${value} Hz, crest factor 1.5 (sine)`);
        const options: FormatOptions = { locale, symbols, digits: 17 };
        const back = parseAmplitude(readingText(reading, options), { decimal: decimalOf(locale) });
        expect(back).toEqual(parseAmplitude(readingText(reading, { digits: 17 })));
      }),
    );
  });

  it("has the digits of the engine's own number format", () => {
    const linear = all.filter(({ type, value }) => !type.startsWith("dB") && value >= 1e-4 && value < 1e6);
    fc.assert(
      fc.property(linear, fc.integer({ min: 0, max: 6 }), ({ value, type, locale }, fixed) => {
        const own = new Intl.NumberFormat(locale, {
          numberingSystem: "latn",
          useGrouping: false,
          minimumFractionDigits: fixed,
          maximumFractionDigits: fixed,
        });
        // the engine rounds a half of the decimal text away from zero, toFixed that of the number itself
        fc.pre(!/5(?:0*)$/.test(String(value).slice(String(value).indexOf(".") + fixed + 1)));
        expect(format(value, type, { locale, fixed })).toBe(`${own.format(value)} ${type}`);
      }),
    );
  });

  it.each([
    [{ locale: "de-DE", fixed: 2 }, "1234,50 um/s2 pk"],
    [{ locale: "de-DE", symbols: "typographic" }, "1230 µm/s² pk"],
    [{ symbols: "typographic", digits: 5 }, "1234.5 µm/s² pk"],
    [{ locale: "ar-EG", fixed: 1 }, "1234.5 um/s2 pk"],
  ] as [FormatOptions, string][])("%j", (options, expected) => {
    expect(format(1234.5, "um/s2 pk", options)).toBe(expected);
  });

  it("signs and powers are those of print where they are asked for", () => {
    expect(format(-3.25, "dB re 1e-9 m/s", { symbols: "typographic", locale: "fr-FR" })).toBe(
      "−3,3 dB re 1 × 10⁻⁹ m/s",
    );
    expect(format(2.5e7, "uin/s pk", { symbols: "typographic" })).toBe("2.50 × 10⁷ µin/s pk");
    expect(format(-0.01, "mm/s rms", { fixed: 1 })).toBe("0.0 mm/s rms");
  });
});

describe("a reading with the signs of print", () => {
  it.each([
    ["−3.2 dB re 1 nm/s", "-3.2 dB re 1 nm/s"],
    ["12\u202f500\u2009µm·s⁻² pk", "12500 um/s2 pk"],
    ["1\u00a0250\u00a0000.5 nm/s rms", "1250000.5 nm/s rms"],
    ["4.5\u2009mm·s⁻¹ rms at 1\u202f480 min⁻¹", "4.5 mm/s rms at 1480 r/min"],
    ["4.5 mm/s rms at 1480 1/min", "4.5 mm/s rms at 1480 r/min"],
    ["3\u00a0× 10⁻⁵ m pp", "3e-5 m pp"],
    ["3·10⁻⁵ m pp", "3e-5 m pp"],
    ["3e−5 m pp", "3e-5 m pp"],
  ])("%s", (written, plain) => {
    expect(parseAmplitude(written)).toEqual(parseAmplitude(plain));
  });

  it.each([
    ["7,1 mm/s rms", ["7.1"]],
    ["1,500 um pp", ["1.500", "1500"]],
    ["1,234,500.5 nm pp", ["1234500.5"]],
    ["1.234,5 nm pp", ["1234.5"]],
    ["12,5,1 nm pp", undefined],
    ["7.1 mm/s rms at 24,5 Hz", ["24.5"]],
    ["7.1 mm/s rms, crest factor 1,5", ["1.5"]],
  ])("%s is refused, with what it may mean", (written, meant) => {
    const { code, didYouMean } = refusalOf(() => parseAmplitude(written)) as VeladisError;
    expect([code, didYouMean]).toEqual(["not-a-number", meant]);
  });

  it.each(["1.234,5 mm/s rms", "1,234,5 mm/s rms", "7.1 mm/s rms", "1 mm/s rms at 24.5 Hz", "1,2.3 g pk"])(
    "%s is refused where a comma is told",
    (written) => {
      expect(() => parseAmplitude(written, { decimal: "," })).toThrow(VeladisError);
    },
  );

  it("a frequency takes a decimal comma where it is told", () => {
    expect(frequency("1477,5 min⁻¹", { decimal: "," })).toEqual({ hertz: 24.625 });
    expect(frequency("2x 1477,5 r/min", { decimal: "," })).toEqual({ hertz: 49.25 });
    expect((refusalOf(() => frequency("24,5 Hz")) as VeladisError).didYouMean).toEqual(["24.5"]);
  });
});
