import { describe, expect, it } from "vitest";
import { VeladisError } from "../../src/index";
import { type MachinesToSqlOptions, machinesToSql, type NamedMachine } from "../../src/sql/index";
import { asked, judgesMachines } from "./judges-machines";
import { sqlite } from "./sqlite";

// the other engines take too long to start for every mutant: machines.test.ts
describe("sqlite", () => judgesMachines(["sqlite", sqlite, "TEXT", "REAL"]));

describe("a list of machines", () => {
  const of = (machines: unknown, more: object = {}) =>
    machinesToSql(machines as NamedMachine[], { ...asked, from: "mm/s rms", ...more } as MachinesToSqlOptions);
  const one = { name: "P-11", machine: "pump 90 kW category II" };

  it.each([
    ["an empty list", [], {}, "missing-option"],
    ["a name twice", [one, one], {}, "syntax"],
    ["an empty name", [{ ...one, name: "" }], {}, "syntax"],
    ["a name that a terminal obeys", [{ ...one, name: "P\u001b[2J" }], {}, "syntax"],
    ["a machine in words alone", ["pump"], {}, "wrong-type"],
    ["a key of another name", [{ ...one, tag: "P" }], {}, "unknown-option"],
    ["as without at", [one], { as: "mm/s rms" }, "missing-option"],
    ["at as a column without as", [one], { at: { column: "speed", unit: "r/min" } }, "missing-option"],
    ["no table", [one], { table: undefined }, "missing-option"],
    ["no reading type", [one], { from: undefined }, "missing-option"],
    ["an engine of another name", [one], { dialect: "duck" }, "unknown-option"],
  ])("is refused with %s", (_, machines, more, code) => {
    expect(() => of(machines, more)).toThrow(expect.objectContaining({ code }));
  });

  it("asks each branch of a CASE for its condition: ClickHouse 18 gives wrong answers where a value stands behind CASE", () => {
    for (const more of [{}, { limits: "kept" }]) expect(of([one], more).query).not.toMatch(/CASE (?!WHEN)/);
  });

  it("of a machine that is refused already holds the reason, and the machine is not judged", () => {
    const error = new VeladisError("syntax", { expected: "one pump of this name", received: "two" });
    const { rows, refused } = of([one, { name: "P-12", error }]);
    expect(refused).toEqual([{ name: "P-12", error }]);
    expect(rows.at(-1)).toMatchObject({ machine: "P-12", step: null, refused: error.message });
  });

  it("refuses a frequency of a machine beside one of all, for that machine", () => {
    const { refused } = of([{ ...one, at: "50 Hz" }], { at: "25 Hz" });
    expect(refused.map(({ error }) => error.code)).toEqual(["wrong-frequency"]);
    const byRow = { from: "g rms", as: "mm/s rms", at: { column: "speed", unit: "r/min" } };
    expect(of([{ ...one, at: "50 Hz" }], byRow).refused.map(({ error }) => error.code)).toEqual(["wrong-frequency"]);
  });
});
