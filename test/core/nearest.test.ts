import { describe, expect, it } from "vitest";
import { convert, unitSymbol } from "../../src/index";
import { refusalOf } from "../refusals/refusal-of";

/** What is typed, and what must be offered first. Invented slips; what is meant is common practice, no source. */
// biome-ignore format: a row of a table is a line
const slips: [typed: string, first: string][] = [
  ["mn/s rms", "mm/s"],
  ["m/sx2 rms", "m/s2"],
  ["mms rms", "mm/s"],
  ["in/sc rms", "in/s"],
  ["inn/s pk", "in/s"],
  ["mill pp", "mil"],
  ["micorns pp", "um"],
  ["micrometer s rms", "um"],
  ["mm/ss rms", "mm/s"],
  ["dB re ISO 1683 velocty", "ISO 1683 velocity"],
  ["MM/S rms", "mm/s"], ["IN/S pk", "in/s"], ["G pk", "g"],
  ["mm/s rsm", "rms"],
  ["mm/s peek", "pk"],
];

describe("a name that nothing has", () => {
  it.each(slips)("%s: first offered is %s", (typed, first) => {
    expect(refusalOf(() => convert(1, typed as "g rms", typed as "g rms")).didYouMean?.[0]).toBe(first);
  });
});

/** Ways of writing that people have; common practice, no source. */
// biome-ignore format: a row of a table is a line
const spellings: [written: string, symbol: string][] = [
  ["m/s/s", "m/s2"], ["m/sec^2", "m/s2"], ["m/sec²", "m/s2"], ["m/sec/sec", "m/s2"], ["m per second per second", "m/s2"],
  ["metres per second squared", "m/s2"], ["mm·s⁻¹", "mm/s"], ["mm s^-1", "mm/s"], ["mm s-1", "mm/s"], ["m·s⁻²", "m/s2"],
  ["m s^-2", "m/s2"], ["mm∕s", "mm/s"], ["mm⁄s", "mm/s"], ["in/sec", "in/s"], ["in/sec2", "in/s2"],
  ["mms-1", "mm/s"], ["mm.s-1", "mm/s"], ["mms⁻¹", "mm/s"], ["ms-2", "m/s2"], ["m.s^-2", "m/s2"],
  ["μm/s", "um/s"], ["µm/s", "um/s"],
];

describe("a unit as people write it", () => {
  it.each(spellings)("%s is %s", (written, symbol) => {
    expect(unitSymbol(written)).toBe(symbol);
    expect(convert(1, `${written} rms` as "g rms", `${symbol} rms` as "g rms")).toBe(1);
  });

  it("but no other power of the second, and no other unit", () => {
    for (const other of ["mm s-3", "mm/s3", "mm s", "mm s1", "mm/min", "m/s/s/s", "Mm/s"]) {
      expect(refusalOf(() => unitSymbol(other)).code, other).toBe("unknown-unit");
    }
  });
});
