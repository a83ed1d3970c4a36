import type { PlantColumn } from "./columns";

/** How grave a finding is, the gravest first. */
export const findingGrades = /* @__PURE__ */ Object.freeze(["error", "warning", "note"] as const);

/** Something in the list, or in what stands beside it, that someone should look at. */
export interface PlantFinding {
  readonly tag: string;
  readonly line: number;
  readonly column?: PlantColumn;
  readonly grade: (typeof findingGrades)[number];
  readonly what: string;
  readonly why: string;
  readonly source: string;
  readonly mend: string;
}
