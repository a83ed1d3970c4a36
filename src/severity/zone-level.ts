import type { SchemeKind } from "./kinds";

/** How bad a zone is, to compare zones of schemes that do not share their names; 0 is the best. */
const levels: Readonly<Record<Exclude<SchemeKind, "grades">, Readonly<Record<string, number>>>> =
  /* @__PURE__ */ Object.freeze({
    zones: { A: 0, AB: 0.5, B: 1, C: 2, D: 3 },
    operation: { "start-up": 0, service: 1, alarm: 2, shutdown: 3 },
    acceptance: { pass: 0, fail: 3 },
  });

/** How bad a zone is, from 0 for the best; a grade is no verdict and has no level. */
export function zoneLevel(kind: SchemeKind, zone: string): number {
  return kind === "grades" ? 0 : (levels[kind][zone] ?? 0);
}
