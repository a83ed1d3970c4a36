import { builtInSchemes, type Criterion, classify, limitsFor, type MachineClass, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { zonesBetween } from "../../src/severity/kinds";
import { machineFor } from "./machine-for";

const all: readonly Scheme[] = builtInSchemes.filter((scheme: Scheme) => scheme.informative === undefined);

function examples(scheme: Scheme, one: MachineClass, criterion: Criterion): number {
  const machine = machineFor(scheme, one);
  const own = limitsFor({ scheme, machine }).find(
    ({ as, limits }) => as === criterion.as && Object.keys(limits).length > 0,
  );
  const limits = Object.values(own?.limits ?? {});
  const zones = zonesBetween(
    scheme.kind,
    limits.map(({ name }) => name),
    scheme.grades ?? [],
  );
  // what the criterion itself says: a displacement may be more as a velocity at running speed
  const zoneAt = (value: number) =>
    classify(`${value} ${criterion.as}`, { scheme, machine }).criteria.find(({ bound }) => bound === "exact")?.zone;
  expect(zoneAt(0)).toBe(zones[0]);
  limits.forEach(({ value }, i) => {
    const where = `${scheme.id} ${JSON.stringify(machine)} ${criterion.as} ${value}`;
    expect(zoneAt(value), where).toBe(zones[i]);
    expect(zoneAt(value * (1 - 1e-12)), where).toBe(zones[i]);
    expect(zoneAt(value * (1 + 1e-12)), where).toBe(zones[i]);
    // the next 32-bit float is float noise, the one after it is more
    expect(zoneAt(value * (1 + 0.99 * 2 ** -23)), where).toBe(zones[i]);
    expect(zoneAt(value * (1 + 1.01 * 2 ** -23)), where).toBe(zones[i + 1]);
    expect(zoneAt(Math.fround(value)), where).toBe(zones[i]);
    expect(zoneAt(value * 1.001), where).toBe(zones[i + 1]);
    expect(zoneAt(value * 0.999), where).toBe(zones[i]);
  });
  return 1 + 8 * limits.length;
}

describe("readings at the limits", () => {
  it.each(all)("$id: at, beside and beyond every limit", (scheme) => {
    let count = 0;
    for (const one of scheme.classes) for (const criterion of one.criteria) count += examples(scheme, one, criterion);
    expect(count).toBeGreaterThanOrEqual(3);
  });

  it("the margin is to the limit that ends the zone, in the worst zone to the last one", () => {
    const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
    expect(classify("2.3 mm/s rms", table).margin).toEqual({ ratio: 1, decibels: 0 });
    expect(classify("2.25 mm/s rms", table)).toMatchObject({
      zone: "A",
      limit: { name: "A/B" },
      margin: { ratio: 2.3 / 2.25 },
    });
    const worst = classify("14.2 mm/s rms", table);
    expect(worst).toMatchObject({ zone: "D", limit: { name: "C/D", value: 7.1 }, margin: { ratio: 0.5 } });
    expect(worst.margin.decibels).toBeCloseTo(-6.0206, 4);
    expect(classify("0 mm/s rms", table).margin.ratio).toBe(Number.POSITIVE_INFINITY);
  });
});
