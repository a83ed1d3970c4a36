import type { KnownFacts } from "./machine";
import type { MachineType } from "./machine-types";
import type { Condition, Scheme } from "./scheme";
import { factsOf, verdict } from "./verdict";

/** What to know where a scheme judges machines of a kind, in a row with a condition where they meet it. To add one, add its row here. */
// biome-ignore format: a row of a table is a line
const rows = [
  [
    ["screw compressor", "lobe blower"],
    ["ISO 10816", "ISO 20816", "ISO 7919"],
    "a screw compressor or lobe blower: a maker's standard (Aerzen TN 01151 B, 2006) calls ISO 10816 inadmissible for twin-shaft positive displacement machines; ask the maker, and see vdi-3836-2012, a guide",
  ],
  [
    ["reciprocating generating set"],
    ["ISO 10816-6"],
    "a generating set: ISO 10816-6 judges the main structure of the engine; lr-generating-sets, a guide, has limits for engine and generator apart",
  ],
  [
    ["fan"],
    ["ISO 10816-3", "ISO 20816-3"],
    "a fan told by a BV category: ansi-amca-204-05, taken by name, has limits for it above 300 kW too; judge by both, the worse governs",
    { category: ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5"] },
  ],
  [
    ["fan"],
    ["ANSI/AMCA 204"],
    "a fan of 300 kW or more: ISO 20816-3 is for it too; judge by both, the worse governs",
    { power: { from: 300 } },
  ],
] as const satisfies readonly (readonly [readonly MachineType[], beginnings: readonly string[], caution: string, when?: Condition])[];

/** What to know of a machine of a kind that a scheme judges, on its housing or its shaft. */
export function kindCautions({ standard }: Scheme, given: KnownFacts): readonly string[] {
  return rows.flatMap(([types, beginnings, caution, when]) =>
    types.some((one) => one === given.type) &&
    beginnings.some((beginning) => standard.startsWith(beginning)) &&
    factsOf(when).every((fact) => verdict(when as Condition, fact, given) === "met")
      ? [caution]
      : [],
  );
}
