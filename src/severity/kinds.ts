import { frozen, requireChoice, requireText } from "../core/index";

/**
 * What a table is for. They are never mixed: a machine that passes its acceptance test may still be judged in
 * service, and the other way round.
 *
 * - `zones`: in service, zones A to D
 * - `acceptance`: a test of a new or repaired machine, pass or fail
 * - `operation`: a fan's start-up, alarm and shutdown limits
 * - `grades`: grades with names of their own, as steps without a verdict and rules of thumb have them
 */
export type SchemeKind = "zones" | "acceptance" | "operation" | "grades";

/** The names of the kinds. */
export const schemeKinds: readonly SchemeKind[] = /* @__PURE__ */ Object.freeze([
  "zones",
  "acceptance",
  "operation",
  "grades",
]);

/** The names of the limits of a kind, lowest first; the grades of a chart are named by the scheme. */
export const limitNames = /* @__PURE__ */ frozen({
  zones: ["A/B", "B/C", "C/D"],
  acceptance: ["acceptance"],
  operation: ["start-up", "alarm", "shutdown"],
} as const);

/** The name of a limit, by the kind of its scheme. */
export type LimitName<K extends SchemeKind = SchemeKind> = K extends keyof typeof limitNames
  ? (typeof limitNames)[K][number]
  : string;

/** What a reading can be found to be, by kind of scheme. `AB` where the table does not part A from B. */
export interface ZonesByKind {
  readonly zones: "A" | "B" | "AB" | "C" | "D";
  readonly acceptance: "pass" | "fail";
  readonly operation: "start-up" | "service" | "alarm" | "shutdown";
  readonly grades: string;
}

/** The zone, verdict or grade of a reading. */
export type Zone<K extends SchemeKind = SchemeKind> = ZonesByKind[K];

/** Zones in words; after the zone definitions of ISO 20816-1 (from memory) and, for fans, ISO 14694. */
const words: Readonly<Record<string, string>> = {
  A: "as newly commissioned machines",
  B: "acceptable for unrestricted long-term operation",
  AB: "acceptable for long-term operation",
  C: "unsatisfactory for long-term operation: plan remedial action",
  D: "severe enough to cause damage",
  pass: "within the acceptance limit",
  fail: "above the acceptance limit",
  "start-up": "within the limit for start-up",
  service: "above the limit for start-up, below alarm",
  alarm: "above alarm: investigate",
  shutdown: "above shutdown: immediate action",
};

/**
 * What a zone means, in words; a grade is its own word.
 *
 * @throws {@link VeladisError} `missing-option`, `unknown-option`, `wrong-type`, `syntax`
 * @example
 * ```ts
 * import { zoneWord } from "veladis/severity";
 *
 * zoneWord("zones", "D"); // => "severe enough to cause damage"
 * zoneWord("grades", "grade 4.5"); // => "grade 4.5"
 * ```
 */
export function zoneWord(kind: SchemeKind, zone: string): string {
  requireChoice(kind, schemeKinds, "the kind of a scheme", { parameter: "kind" });
  requireText(zone, "the name of a zone", { parameter: "zone" });
  return kind === "grades" || !Object.hasOwn(words, zone) ? zone : (words[zone] as string);
}

/**
 * The zones that the limits part, best first: one more than there are limits.
 *
 * @param present - names of the limits that have a value, lowest first
 * @param grades - the scheme's own names, for kind `grades`
 */
export function zonesBetween(
  kind: SchemeKind,
  present: readonly string[],
  grades: readonly string[] | undefined,
): string[] {
  switch (kind) {
    case "zones":
      return [present.includes("A/B") ? "A" : "AB", ...present.map((name) => name.slice(-1))];
    case "acceptance":
      return ["pass", "fail"];
    case "operation":
      return ["start-up", ...present.map((name) => (name === "start-up" ? "service" : name))];
    case "grades":
      // where a limit has no value, the grades it would part are one, called by the worse
      return [...present, (grades as readonly string[]).at(-1) as string];
  }
}

/** How a limit is called in a sentence; one of grades by the grade that it ends. */
export function limitWords(kind: SchemeKind, name: string): string {
  if (kind === "grades") return `upper limit of "${name}"`;
  return (limitNames.zones as readonly string[]).includes(name) ? `limit ${name}` : `${name} limit`;
}
