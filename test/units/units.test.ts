import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitFacts } from "../../src/entries/facts";
import { type Unit, type UnitSymbol, unitSymbol, units } from "../../src/index";

const table = Object.entries(units) as [UnitSymbol, Unit][];

describe("the catalogue of units", () => {
  it("holds exact ratios in whole numbers", () => {
    for (const [symbol, { num, den }] of table) {
      expect(Number.isSafeInteger(num) && Number.isSafeInteger(den) && num > 0 && den > 0, symbol).toBe(true);
    }
  });

  it("no spelling means two units", () => {
    const spellings = table.flatMap(([symbol, { also = [], spoken = [] }]) => [symbol, ...also, ...spoken]);
    expect(new Set(spellings).size).toBe(spellings.length);
  });

  it("each spelling is read, names in any case", () => {
    for (const [symbol, { also = [], spoken = [] }] of table) {
      expect(unitSymbol(symbol)).toBe(symbol);
      for (const name of [...also, ...spoken]) {
        expect(name, "names are kept in small letters").toBe(name.toLowerCase());
        expect([unitSymbol(name), unitSymbol(name.toUpperCase())]).toEqual([symbol, symbol]);
      }
    }
  });

  it("each unit has a name and a source", () => {
    expect(Object.keys(unitFacts)).toEqual(Object.keys(units));
    for (const { name, source } of Object.values(unitFacts)) expect([name, source.title]).not.toContain("");
  });

  it("raised and careted 2 and both micro signs are read at run time as the types allow", () => {
    for (const symbol of Object.keys(units)) {
      const heads = symbol.startsWith("u") ? ["u", "µ", "μ"].map((u) => u + symbol.slice(1)) : [symbol];
      for (const head of heads) {
        for (const tail of ["s2", "s²", "s^2"]) expect(unitSymbol(head.replace(/s2$/, tail))).toBe(symbol);
      }
    }
  });

  it.each([
    ["m/s²", "m/s2"],
    ["m/s^2", "m/s2"],
    ["mm/sec", "mm/s"],
    ["in/sec", "in/s"],
    ["IPS", "in/s"],
    ["µm", "um"],
    ["μm", "um"],
    ["Microns", "um"],
    ["µm/s", "um/s"],
    ["Mils", "mil"],
    ["thou", "mil"],
    [" g ", "g"],
    ["g's", "g"],
    ["inches per second", "in/s"],
    ["Inches  per  second", "in/s"],
    ["metres per second squared", "m/s2"],
    ["Millimeters/sec", "mm/s"],
    ["microns per second", "um/s"],
    ["µin per second", "uin/s"],
    ["Inch/s²", "in/s2"],
    ["feet per second squared", "ft/s2"],
    ["µin/s", "uin/s"],
    ["mm per s", "mm/s"],
    ["metres per s squared", "m/s2"],
    ["mm/second", "mm/s"],
  ])("%j is %s", (spelling, symbol) => {
    expect(unitSymbol(spelling)).toBe(symbol);
  });

  it.each([
    "Mm/s",
    "MM",
    "G",
    "gal",
    "mG",
    "kg",
    "Mil/s",
    "mm/s/s/s",
    "m/s squared/s",
    "inches squared",
    "mils/s",
    "g/s",
    "undefined/s",
    "/s",
    "grams",
    "constructor",
    "__proto__",
    "toString",
  ])("%j is no unit: symbols are read to the letter", (spelling) => {
    expect(() => unitSymbol(spelling)).toThrow(expect.objectContaining({ code: "unknown-unit" }));
  });

  it("any other text is refused, whatever it is", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        try {
          return unitSymbol(text) in units;
        } catch (error) {
          return ["unknown-unit", "syntax"].includes((error as { code: string }).code);
        }
      }),
      { numRuns: 20_000 },
    );
  });
});
