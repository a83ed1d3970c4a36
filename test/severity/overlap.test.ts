import { describe, expect, it } from "vitest";
import type { Interval } from "../../src/severity/interval";
import { classesMeet } from "../../src/severity/overlap";
import type { Condition, MachineClass } from "../../src/severity/scheme";

type Parts = Omit<MachineClass, "criteria">;

/** Whether the classes meet, asked in both orders. */
function meet(one: Parts, other: Parts): boolean[] {
  const a = { ...one, criteria: [] };
  const b = { ...other, criteria: [] };
  return [classesMeet(a, b), classesMeet(b, a)];
}

describe("classes that a machine can belong to two of", () => {
  // biome-ignore format: a row of a table is a line
  const ranges: [a: Interval, b: Interval, meet: boolean][] = [
    [{}, {}, true],
    [{}, { to: 15 }, true],
    [{ to: 15 }, { above: 15 }, false],
    [{ to: 15 }, { from: 15 }, true],
    [{ below: 15 }, { from: 15 }, false],
    [{ above: 10 }, { above: 20 }, true],
    [{ above: 0 }, { above: 0 }, true],
    [{ below: 10 }, { below: 20 }, true],
    [{ above: 10, below: 20 }, { above: 10, below: 20 }, true],
    [{ above: 10, to: 20 }, { above: 5, below: 11 }, true],
    [{ above: 10, below: 20 }, { above: 20, below: 30 }, false],
    [{ above: 10, below: 40 }, { above: 20, below: 30 }, true],
    [{ from: 15, to: 15 }, { to: 20 }, true],
    [{ from: 15, to: 15 }, { above: 15 }, false],
    [{ oneOf: [1500, 1800] }, { to: 1600 }, true],
    [{ oneOf: [1500, 1800] }, { to: 1400 }, false],
    [{ oneOf: [1500, 1800] }, { oneOf: [1800, 3600] }, true],
    [{ oneOf: [1500, 1800] }, { oneOf: [3000, 3600] }, false],
  ];

  it.each(ranges)("ranges %j and %j: %s", (a, b, expected) => {
    expect(meet({ when: { power: a } }, { when: { power: b } })).toEqual([expected, expected]);
  });

  // biome-ignore format: a row of a table is a line
  const labels: [a: Condition, b: Condition, meet: boolean][] = [
    [{ category: "I" }, { category: "II" }, false],
    [{ category: "BV-3" }, { category: "bv 3" }, true],
    [{ support: ["rigid", "flexible"] }, { support: "rigid" }, true],
    [{ category: ["I", "II"] }, { category: ["III", "IV"] }, false],
    [{ category: "I" }, { support: "rigid" }, true],
    [{ category: "I", support: "rigid" }, { category: "I", support: "flexible" }, false],
    [{}, { category: "I" }, true],
  ];

  it.each(labels)("labels %j and %j: %s", (a, b, expected) => {
    expect(meet({ when: a }, { when: b })).toEqual([expected, expected]);
  });

  it("not where a bound of the one parts them by a fact that the other needs", () => {
    const [small, large] = [{ power: { to: 298 } }, { power: { above: 298 } }];
    expect(meet({ when: { category: "BV-3" }, within: small }, { when: large })).toEqual([false, false]);
    expect(meet({ when: { category: "BV-5" } }, { when: large, within: { category: "BV-3" } })).toEqual([false, false]);
    // two bounds ask for nothing: without the power both would be the machine's
    expect(meet({ within: small }, { within: large })).toEqual([true, true]);
  });

  it("by their names, or by the facts that decide where both are told by facts", () => {
    const [one, two] = [{ group: "1" }, { group: "2" }];
    const [small, large] = [{ power: { to: 15 } }, { power: { above: 15 } }];
    expect(meet({ named: one, by: small }, { named: two, by: large })).toEqual([false, false]);
    expect(meet({ named: one, by: small }, { named: two, by: small })).toEqual([true, true]);
    expect(meet({ named: one, by: small }, { named: one, by: large })).toEqual([true, true]);
    expect(meet({ by: small }, { by: large })).toEqual([false, false]);
    expect(meet({ by: small }, { by: small })).toEqual([true, true]);
    expect(meet({ named: one, by: small }, { by: large })).toEqual([false, false]);
    expect(meet({ named: one, by: small }, { by: small })).toEqual([true, true]);
    expect(meet({ named: one }, { by: small })).toEqual([true, true]);
    expect(meet({ named: one }, { named: two })).toEqual([false, false]);
    expect(meet({ named: one }, { named: two, by: small })).toEqual([false, false]);
    expect(meet({ named: one, when: { support: "rigid" } }, { named: one, when: { support: "flexible" } })).toEqual([
      false,
      false,
    ]);
    expect(meet({ by: small, when: { support: "rigid" } }, { by: small, when: { support: "flexible" } })).toEqual([
      false,
      false,
    ]);
  });
});
