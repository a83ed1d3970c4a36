import { frozen } from "./frozen";
import { requireChoice } from "./require-choice";

/** How a value is known, worst first; only the last two count as verified. To add a grade, add its row here. */
// biome-ignore format: a row of a table is a line
export const provenances = /* @__PURE__ */ frozen({
  memory: { verified: false, cell: "MEMORY", text: "from memory" },
  practice: { verified: false, cell: "practice", text: "of common practice, without a source" },
  reported: { verified: false, cell: "reported", text: "read on a page whose making is unknown" },
  quoted: { verified: false, cell: "quoted", text: "quoted in another document" },
  printed: { verified: true, cell: "printed", text: "read in the publication itself" },
  confirmed: { verified: true, cell: "confirmed", text: "confirmed against a printed copy" },
} as const satisfies Record<string, { verified: boolean; cell: string; text: string }>);

/** How a value is known: a key of {@link provenances}. */
export type Provenance = keyof typeof provenances;

const worstFirst = /* @__PURE__ */ Object.keys(provenances) as readonly Provenance[];

/** The worst of several; of none, memory. */
export function worstProvenance(all: readonly Provenance[]): Provenance {
  return worstFirst.find((one) => all.includes(one)) ?? "memory";
}

/** Whether a value so known was checked against a printed copy of the publication itself. */
export function isVerified(provenance: Provenance): boolean {
  return provenances[provenance].verified;
}

/** The shape of a grade in plain data: one of the table's own, since its words are printed. */
export function provenanceShape(value: unknown, where: string): unknown {
  return requireChoice(value, worstFirst, `${where}: how it is known`);
}
