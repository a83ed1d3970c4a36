import { builtInSchemes, type Machine, type MachineType, machineTypes, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { type Fact, isNumberFact } from "../../src/severity/facts";
import { contains, type Interval } from "../../src/severity/interval";
import { knownFacts } from "../../src/severity/machine";
import { matchMachine } from "../../src/severity/match-machine";
import { classesMeet } from "../../src/severity/overlap";
import { given } from "./machine-for";

const all: readonly Scheme[] = builtInSchemes;

/** Gaps that the standards themselves leave. */
const gaps: Readonly<Record<string, RegExp>> = {
  "iec-60034-14-2003": /"grade":"B".*"mounting":"rigid"/, // no value for 56 to 132 mm
  "iso-20816-2-2017": /"type":"gas turbine"/, // 3000 and 3600 r/min only
  "iso-20816-2-2017-shaft": /"type":"gas turbine"/,
  "api-610": /overhung|between bearings/, // no discrete limit; up to 3600 r/min and 300 kW
  "ansi-amca-204-05": /"category":"BV-[123]"/, // to 0.15, 3.7 and 298 kW
  "ansi-amca-204-05-acceptance": /"category":"BV-[123]"/,
  "iso-10816-5-2000": /"group":"[123]"/, // the part matters in group 4 only
  "lr-generating-sets": /"part"/, // no values for small sets below 1300 r/min, nor for the engine in some spans
  "iso-10816-21-2015": /rotor bearing|nacelle|generator/,
};

/** All labels, and numbers on, beside and between all edges, that the decisive facts of a scheme's classes name. */
function values(scheme: Scheme, fact: Fact): (number | string)[] {
  const wanted = scheme.classes
    .flatMap(({ named, by, when }) => [named?.[fact], by?.[fact], when?.[fact]])
    .filter((one) => one !== undefined);
  if (!isNumberFact(fact)) return [...new Set(wanted.flat() as string[])];
  const edges = (wanted as Interval[]).flatMap(({ oneOf, ...bounds }) => [
    ...(oneOf ?? []),
    ...(Object.values(bounds) as number[]),
  ]);
  if (edges.length === 0) return [3000];
  const sorted = [...new Set(edges)].sort((a, b) => a - b);
  const points = sorted.flatMap((edge, i) => [
    edge * 0.999,
    edge,
    edge * 1.001,
    (edge + (sorted[i + 1] ?? edge * 3)) / 2,
  ]);
  const within = scheme.within?.[fact] as Interval | undefined;
  const discrete = (wanted as Interval[]).every(({ oneOf }) => oneOf !== undefined);
  const lowest = Math.min(...(wanted as Interval[]).map(({ from, above }) => from ?? above ?? 0));
  const highest = Math.max(...(wanted as Interval[]).map(({ to, below }) => to ?? below ?? Number.POSITIVE_INFINITY));
  return (discrete ? edges : points).filter(
    (value) => (within === undefined || contains(within, value)) && value > lowest && value <= highest,
  );
}

function combinations(scheme: Scheme, facts: readonly Fact[]): Record<string, number | string>[] {
  return facts.reduce<Record<string, number | string>[]>(
    (list, fact) => list.flatMap((one) => values(scheme, fact).map((value) => ({ ...one, [fact]: value }))),
    [{}],
  );
}

function machineWith(values: Record<string, number | string>): Machine {
  return Object.fromEntries(
    Object.entries(values).map(([fact, value]) => [fact, given(fact as Fact, value)]),
  ) as Machine;
}

describe("the classes of a table", () => {
  it.each(all)("$id: no machine belongs to two", ({ classes }) => {
    for (const [i, one] of classes.entries()) {
      for (const other of classes.slice(i + 1)) expect(classesMeet(one, other)).toBe(false);
    }
  });

  it.each(all)("$id: every machine of the scope, told by size or by label, belongs to one", (scheme) => {
    const { classes } = scheme;
    const facts = (parts: readonly ("named" | "by" | "when")[]): Fact[] => [
      ...new Set(classes.flatMap((one) => parts.flatMap((part) => Object.keys(one[part] ?? {}) as Fact[]))),
    ];
    const hasNames = classes.some(({ named }) => named !== undefined);
    const sizes = facts(["by", "when"]);
    const both = sizes.includes("power") && sizes.includes("shaftHeight");
    // power and shaft height stand for one another
    const bySize = both
      ? (["shaftHeight", "power"] as const).map((left) => sizes.filter((fact) => fact !== left))
      : [sizes];
    const ways = hasNames ? [facts(["named", "when"]), ...bySize] : [facts(["when", "by"])];
    let checked = 0;
    for (const way of ways) {
      for (const combination of combinations(scheme, way)) {
        const text = JSON.stringify(combination);
        // a shaft height is that of an electrical machine
        const { type = "motor", shaftHeight } = combination as { type?: MachineType; shaftHeight?: number };
        if (shaftHeight !== undefined && !machineTypes[type].electrical) continue;
        const { chosen, missing, exclusion, open } = matchMachine(scheme, knownFacts(machineWith(combination)));
        if (gaps[scheme.id]?.test(text) && chosen === undefined) continue;
        // ISO 10816-3:1998: pumps are told from the others by group, which the labels hold
        if (scheme.id === "iso-10816-3-1998" && way.includes("type")) continue;
        expect(exclusion, text).toBeUndefined();
        expect(chosen, `${text} misses ${missing.map(({ fact }) => fact)}, ${open.length} open`).toBeDefined();
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(0);
  });

  it("shaft height decides for electrical machines, power for others", () => {
    const scheme = all.find(({ id }) => id === "iso-10816-3-2009") as Scheme;
    const group = (machine: Machine) => matchMachine(scheme, knownFacts(machine)).chosen?.named?.group;
    expect(group({ type: "motor", power: "250 kW", shaftHeight: "315 mm", support: "rigid" })).toBe("1");
    expect(group({ type: "compressor", power: "250 kW", support: "rigid" })).toBe("2");
    expect(group({ type: "motor", power: "301 kW", support: "rigid" })).toBe("1");
    expect(group({ power: "300 kW", support: "rigid" })).toBe("2");
    expect(group({ shaftHeight: "314.9 mm", support: "rigid" })).toBe("2");
    // only an electrical machine has a shaft height, so that one of no stated kind is taken for that
    expect(group({ power: "250 kW", shaftHeight: "315 mm", support: "rigid" })).toBe("1");
    // a small shaft height with a power of the other group is no machine of either
    expect(group({ type: "motor", power: "400 kW", shaftHeight: "280 mm", support: "rigid" })).toBeUndefined();
  });
});
