import { describe, expect, it } from "vitest";
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
  ['readingType("', '")'],
  ['sensor("100 mV/g").reading("5 mV rms", "', '")'],
  ['currentLoop("0 to 16 mm/s rms").reading(12, "', '")'],
  ['limitsFor({ scheme: "iso-10816-3-2009", machine: "group 1 rigid", as: "', '" })'],
];

const HEAD = [
  'import { convert, convertAmplitude, converter, format, quantityOf, readingType } from "veladis";',
  'import { limitsFor } from "veladis/severity";',
  'import { currentLoop, sensor } from "veladis/sensor";',
  "",
].join("\n");

describe("what an editor offers where a reading type is typed", () => {
  const compiler = new Compiler(places.map(([before, after]) => `${HEAD}${before}${after};\n`));

  it.each(places.map(([before], i) => [before, i] as const))("%s", { timeout: 120_000 }, (before, i) => {
    const offered = compiler.completions(i, HEAD.length + before.length);
    // all spellings of units that the types know, each with all detectors, and the named references of levels
    for (const one of ["mm/s rms", "in/s pk", "µm pp", "g true pk", "dB re ISO 1683 velocity"]) {
      expect(offered).toContain(one);
    }
    expect(offered).toHaveLength(238);
  });
});
