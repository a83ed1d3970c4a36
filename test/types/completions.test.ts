import { describe, expect, it } from "vitest";
import { isReadingType } from "../../src/index";
import { Compiler } from "./compiler";

/** Each place where a text of a reading type is typed: the text before it, and what closes the call. */
const places: readonly (readonly [before: string, after: string])[] = [
  ['convert(1, "', '", "mm/s rms")'],
  ['convert(1, "in/s pk", "', '")'],
  ['converter("', '", "mm/s rms")'],
  ['converter("in/s pk", "', '")'],
  ['convertAmplitude("2 g rms", "', '")'],
  ['format(7.1, "', '")'],
  ['quantityOf("', '")'],
  ['sensor("100 mV/g").reading("5 mV rms", "', '")'],
  ['currentLoop("0 to 16 mm/s rms").reading(12, "', '")'],
  ['convertVector("40 um pp / 30 deg", "', '")'],
  ['classifier("iso-10816-3-2009", "group 1 rigid", "', '")'],
  ['new TripLogic(settings).run([1], 1, { as: "', '" })'],
  ['limitsFor({ scheme: "iso-10816-3-2009", machine: "group 1 rigid", as: "', '" })'],
];

const HEAD = [
  'import { convert, convertAmplitude, converter, format, quantityOf } from "veladis";',
  'import { convertVector } from "veladis/vector";',
  'import { TripLogic, type TripSettings } from "veladis/protection";',
  'import { classifier, limitsFor } from "veladis/severity";',
  'import { currentLoop, sensor } from "veladis/sensor";',
  "declare const settings: TripSettings;",
  "",
].join("\n");

describe("what an editor offers where a reading type is typed", () => {
  const compiler = new Compiler(places.map(([before, after]) => `${HEAD}${before}${after};\n`));

  it.each(places.map(([before], i) => [before, i] as const))("%s", { timeout: 120_000 }, (before, i) => {
    const offered = compiler.completions(i, HEAD.length + before.length);
    for (const one of ["mm/s rms", "in/s pk", "µm pp", "g true pk", "dB re ISO 1683 velocity"]) {
      expect(offered).toContain(one);
    }
    expect(offered.filter((one) => !isReadingType(one))).toEqual([]);
    // 57 spellings of units with 5 detectors each, and 10 named references of levels
    expect(offered).toHaveLength(57 * 5 + 10);
  });
});
