/** The small judgement held against the whole one: tables of one's own, made of the rows of all built-in ones. */
import { exactZone, type KnownFacts, type PlainType, type VeladisError } from "veladis/own";
import { builtInSchemes, classify, defineScheme, type Scheme, sealedScheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { machineFor } from "./machine-for";

const own = (built: Scheme): Scheme =>
  defineScheme({ ...built, id: `hollowmere-${built.id}`, standard: `Hollowmere rule after ${built.standard}` });

const tables = (builtInSchemes as readonly Scheme[]).filter(({ informative }) => informative !== true);

describe("exactZone agrees with classify", () => {
  it.each(tables.map((one) => [one.id, one] as const))("%s", (_, built) => {
    const scheme = own(built);
    const sealed = sealedScheme(scheme);
    let judged = 0;
    for (const row of scheme.classes) {
      const described = { ...machineFor(scheme, row), place: scheme.place };
      for (const { as, limits } of row.criteria) {
        for (const limit of Object.values(limits)) {
          for (const share of [0.3, 1, 1.000001, 1.2, 40]) {
            const value = (typeof limit === "number" ? limit : 2) * share;
            const whole = (() => {
              try {
                return classify(`${value} ${as}`, { scheme, machine: described });
              } catch {
                return undefined;
              }
            })();
            if (whole === undefined) continue;
            const machine = { ...(whole.machine as KnownFacts), naturalFrequency: undefined, application: undefined };
            const small = exactZone(value, as as PlainType, { scheme: sealed, machine } as never);
            const told = `${built.id} ${JSON.stringify(described)} ${value} ${as}`;
            judged++;
            expect(small.possible, told).toEqual(expect.arrayContaining([...whole.possible]));
            if (small.unjudged.length === 0) expect(small.headline, told).toBe(whole.headline);
            expect(small.setAside, told).toEqual(whole.setAside);
            const first = whole.criteria.find(
              ({ judged: { detector }, bound }) => bound === "exact" && as.endsWith(detector),
            );
            expect(small.provenance, told).toBe(first?.provenance);
            expect(small.limits, told).toEqual(
              Object.fromEntries(Object.entries(first?.limits ?? {}).map(([name, one]) => [name, one.value])),
            );
            expect(small.cautions.length, told).toBeGreaterThanOrEqual(1);
          }
        }
      }
    }
    expect(judged).toBeGreaterThan(0);
  });
});

describe("exactZone refuses what it would have to assume", () => {
  const source = { title: "Hollowmere site rule 7", provenance: "printed", page: "p. 2" } as const;
  const rule = {
    id: "hollowmere-circulation-drives",
    kind: "zones",
    standard: "Hollowmere site rule 7, invented",
    machines: ["gear drive", "pump"],
    classes: [
      {
        when: { power: { above: 15, to: 500 } },
        criteria: [
          { as: "mm/s rms", limits: { "A/B": 1.8, "B/C": 3.5, "C/D": 5.6 }, source },
          { as: "um pp", limits: { "A/B": 40, "B/C": 70, "C/D": 110 }, source },
        ],
      },
    ],
  } as const;
  const scheme = sealedScheme(rule);
  const code = (run: () => unknown) => {
    try {
      return run();
    } catch (error) {
      return (error as VeladisError).code;
    }
  };
  const machine = { type: "pump", power: 90 } as const;

  it("another detector, a level, and a type in other than its plain spelling", () => {
    expect(code(() => exactZone(3, "mm/s pk", { scheme, machine }))).toBe("wrong-detector");
    expect(code(() => exactZone(3, "g rms", { scheme, machine }))).toBe("wrong-detector");
    expect(code(() => exactZone(90, "dB re 1 nm/s" as never, { scheme, machine }))).toBe("syntax");
    expect(code(() => exactZone(3, "ips rms" as never, { scheme, machine }))).toBe("syntax");
    expect(code(() => exactZone(3, "constructor rms" as never, { scheme, machine }))).toBe("syntax");
  });

  it("says or worse for what was not measured", () => {
    expect(exactZone(3, "mm/s rms", { scheme, machine })).toMatchObject({
      headline: "zone B or worse",
      possible: ["B", "C", "D"],
      unjudged: ["um pp"],
    });
  });

  it("a machine without the facts, outside the table, or with numbers that are texts", () => {
    expect(code(() => exactZone(3, "mm/s rms", { scheme }))).toBe("missing-fact");
    expect(code(() => exactZone(3, "um pp", { scheme, machine }))).toBe("missing-fact");
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { power: 900 } }))).toBe("out-of-range");
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { ...machine, type: "fan" } }))).toBe("out-of-range");
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { ...machine, condition: "new" } }))).toBe(
      "out-of-range",
    );
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { power: "90 kW" } }))).toBe("wrong-type");
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { ...machine, colour: 1 } as never }))).toBe(
      "unknown-option",
    );
    expect(code(() => exactZone(3, "mm/s rms", { scheme, machine: { ...machine, naturalFrequency: 30 } }))).toBe(
      "out-of-range",
    );
  });

  it("a scheme that was changed since it was sealed, and one that was never sealed", () => {
    expect(code(() => exactZone(3, "mm/s rms", { scheme: scheme.replace("3.5", "8.5"), machine }))).toBe(
      "out-of-range",
    );
    expect(code(() => exactZone(3, "mm/s rms", { scheme: JSON.stringify(rule), machine }))).toBe("out-of-range");
    expect(code(() => exactZone(3, "mm/s rms", { scheme: rule as never, machine }))).toBe("wrong-type");
  });

  it("seals no table that takes the id or the name of a built-in one", () => {
    expect(code(() => sealedScheme({ ...rule, id: "ISO-10816-3-2009" }))).toBe("out-of-range");
    expect(code(() => sealedScheme({ ...rule, standard: "ISO 10816-3", edition: "2009" }))).toBe("out-of-range");
  });
});
