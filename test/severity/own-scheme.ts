import { type Criterion, defineScheme, type MachineClass, type Scheme, type SchemeInput } from "veladis/severity";

/** Where the limits of the invented site rules stand. */
export const inPrint = { title: "Site rule", provenance: "printed", page: "p. 3" } as const;
export const recalled = { title: "Site rule", provenance: "memory" } as const;

const limits = {
  zones: { "A/B": 2, "B/C": 4, "C/D": 8 },
  acceptance: { acceptance: 3 },
  operation: { "start-up": 2, alarm: 4, shutdown: 8 },
  grades: { calm: 2 },
} as const;

/** A scheme of the heating works, for any machine unless its parts say otherwise. Invented, for the tests only. */
export function siteRule(id: string, parts: Partial<SchemeInput> = {}): Scheme {
  const { kind = "zones" } = parts;
  const input = {
    id,
    kind,
    standard: `Site rule ${id}`,
    classes: [{ criteria: [{ as: "mm/s rms", limits: limits[kind], source: inPrint }] }],
    ...(kind === "grades" && { grades: ["calm", "lively"] }),
    ...parts,
  };
  return defineScheme(input as SchemeInput);
}

/** A criterion of zones in a reading type. */
export function zonesIn(as: string, values: Criterion["limits"], source: Criterion["source"] = inPrint): Criterion {
  return { as: as as Criterion["as"], limits: values, source };
}

/** Two classes that a machine's support tells apart. */
export function bySupport(rigid: readonly Criterion[], flexible: readonly Criterion[]): MachineClass[] {
  return [
    { when: { support: "rigid" }, criteria: rigid },
    { when: { support: "flexible" }, criteria: flexible },
  ];
}
