import { VeladisError } from "../../core/index";
import { isOrWorse, type Judgement, type SchemeKind, type Verdict, zoneLevel } from "../../severity/index";
import type { OptionRow } from "./option-row";

/** The option that has a bad zone tell itself by the exit code. */
export const failFrom = {
  argument: "<zone>",
  help: "exit 1 when any possible zone is this one or worse, or a background makes the verdict not reliable; alarm counts as C, shutdown and fail as D",
  example: "C",
  values: ["B", "C", "D"],
} as const satisfies OptionRow;

const levels = { B: zoneLevel("zones", "B"), C: zoneLevel("zones", "C"), D: zoneLevel("zones", "D") } as const;

/** A zone that the option can name. */
export type FailFrom = keyof typeof levels;

/** How bad a possible zone is; where A is not parted from B it may be B. */
function levelOf(kind: Judgement["kind"], zone: string): number {
  return zone === "AB" ? levels.B : zoneLevel(kind, zone);
}

/**
 * Refuses a scheme of grades.
 *
 * @throws {@link VeladisError} `wrong-type`
 */
export function requireNoGrades(kinds: readonly SchemeKind[], scheme: string): void {
  if (!kinds.includes("grades")) return;
  throw new VeladisError("wrong-type", {
    expected: "a scheme of zones, acceptance or operation beside --fail-from: a grade is no verdict",
    received: scheme,
    option: "fail-from",
  });
}

/** How bad the worst zone is that a verdict leaves possible; one that says "or worse" may be anything above. */
function worstLevel(verdict: Verdict): number {
  const all = [verdict, ...verdict.judgements];
  requireNoGrades(
    all.map(({ kind }) => kind),
    verdict.scheme,
  );
  if (all.some(isOrWorse)) return levels.D;
  const kinds = new Map(all.flatMap(({ kind, zones }) => zones.map((zone) => [zone as string, kind] as const)));
  const possible: readonly string[] = all.flatMap((one) => one.possible);
  return Math.max(...possible.map((zone) => levelOf(kinds.get(zone) ?? verdict.kind, zone)));
}

/** Whether a zone that is possible, the worst that is, reaches the named one; of one that may be worse, all may be. */
export function isZoneReached(
  from: FailFrom,
  { kind, worst, isOpen }: { readonly kind: SchemeKind; readonly worst: string; readonly isOpen: boolean },
): boolean {
  return (isOpen ? levels.D : levelOf(kind, worst)) >= levels[from];
}

/** Whether any zone that verdicts leave possible is the named one or worse; one that is not reliable leaves all possible. */
export function isReached(from: FailFrom | undefined, verdicts: readonly Verdict[]): boolean {
  if (from === undefined) return false;
  return verdicts.some((one) => worstLevel(one) >= levels[from] || one.background?.valid === false);
}
