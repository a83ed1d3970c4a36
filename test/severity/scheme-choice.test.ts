import { schemeById, schemeChoice, selectSchemes } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { schemeOf } from "../../src/severity/scheme-of";

describe("the table to judge by when none is named", () => {
  it("is the first candidate; the others are those for which no fact is missing, best first", () => {
    const machine = "pump 90 kW 2980 r/min rigid category II, in service";
    const { scheme, others } = schemeChoice(machine);
    const [first, ...rest] = selectSchemes(machine).candidates;
    expect(scheme).toBe(schemeById("iso-10816-7-2009"));
    expect(first?.scheme).toBe(scheme.id);
    expect(others).toEqual(rest.filter(({ status }) => status !== "asks"));
    expect(others.map((one) => one.scheme)).toContain("iso-10816-1-1995-annexB");
    expect(rest.map(({ status }) => status)).toContain("asks");
  });
});

describe("the id of a scheme", () => {
  it("is read in any case, with white space about it", () => {
    const scheme = schemeById("iso-10816-1-1995-annexB");
    expect(schemeById(" ISO-10816-1-1995-annexb\n")).toBe(scheme);
    expect(schemeById("Iso-10816-1-1995-AnnexB")).toBe(scheme);
    expect(schemeById("iso-10816-1-1995-annexB ")).toBe(scheme);
    expect(schemeOf(scheme)).toBe(scheme);
  });
});
