import type { FactValue } from "./machine";
import type { MachineType } from "./machine-types";
import type { Scheme } from "./scheme";

/** What to know where a scheme judges machines of a kind. To add one, add its row here. */
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
] as const satisfies readonly (readonly [readonly MachineType[], beginnings: readonly string[], caution: string])[];

/** What to know of a machine of a kind that a scheme judges, on its housing or its shaft. */
export function kindCautions({ standard }: Scheme, type: FactValue | undefined): readonly string[] {
  return rows.flatMap(([types, beginnings, caution]) =>
    types.some((one) => one === type) && beginnings.some((beginning) => standard.startsWith(beginning))
      ? [caution]
      : [],
  );
}
