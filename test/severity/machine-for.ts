import type { Fact } from "../../src/severity/facts";
import { facts, isNumberFact } from "../../src/severity/facts";
import type { Condition, Machine, MachineClass, Scheme } from "../../src/severity/index";
import type { Interval } from "../../src/severity/interval";

/** A number in a range, on its inclusive edge where it has one. */
function inside({ from, above, to, below, oneOf }: Interval): number {
  if (oneOf?.[0] !== undefined) return oneOf[0];
  if (to !== undefined) return to;
  if (from !== undefined) return from;
  if (above !== undefined) return above * 1.5;
  return below === undefined ? 3000 : below / 2;
}

/** A fact as a machine has it. */
export function given(fact: Fact, value: number | string): Machine[keyof Machine] {
  const entry = facts[fact];
  if (typeof value === "string" || !("unit" in entry)) return String(value);
  if (entry.unit === "kW") return { kilowatts: value };
  if (entry.unit === "mm") return { millimetres: value };
  return { hertz: entry.unit === "r/min" ? value / 60 : value };
}

/** A machine that meets the conditions. */
function machineOf(conditions: readonly (Condition | undefined)[]): Machine {
  const machine: Record<string, unknown> = {};
  for (const condition of conditions) {
    for (const [fact, wanted] of Object.entries(condition ?? {}) as [Fact, Interval | string | string[]][]) {
      if (machine[fact] !== undefined) continue;
      const value = isNumberFact(fact) ? inside(wanted as Interval) : [wanted].flat()[0];
      machine[fact] = given(fact, value as number | string);
    }
  }
  return machine as Machine;
}

/** A machine of a class, named by its label where it has one; of a slow speed, so that every criterion applies; read where the scheme is for. */
export function machineFor(scheme: Scheme, one: MachineClass): Machine {
  const slow = one.criteria.some(({ when }) => when !== undefined) ? { speed: { to: 500 } } : {};
  const place = scheme.place === "shaft" ? ({ place: "shaft" } as const) : {};
  return machineOf([one.named, one.when, one.named === undefined ? one.by : undefined, slow, place]);
}
