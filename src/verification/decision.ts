import type { Margins } from "./tolerance";

/** The rules by which a check is decided. */
export const decisionRules = /* @__PURE__ */ Object.freeze({
  "simple acceptance":
    "pass when the error is within the tolerance; at its limit up to half of all such passes are wrong (ILAC-G8:09/2019)",
  "guard band":
    "pass when the error is within the tolerance less the expanded uncertainty U (k = 2), fail when beyond the tolerance plus U, undecided between; at most 2.5 % of passes are wrong (ILAC-G8:09/2019, 4.2.3)",
} as const);

/** The name of a decision rule: a key of {@link decisionRules}. */
export type DecisionRule = keyof typeof decisionRules;

/** A verdict, and for an undecided one on which side of the tolerance it lies. */
export interface Decision {
  readonly verdict: "pass" | "fail" | "undecided";
  /** The four calls of ILAC-G8:09/2019, 4.2.3. */
  readonly call: "pass" | "conditional pass" | "conditional fail" | "fail";
  /** Largest errors that pass, below and above the known level, in its unit. */
  readonly acceptance: Margins;
}

/** Relative allowance for float noise: an error at a limit belongs to the better side. */
const NOISE = 1e-9;

/** An error, and what it is held against; all in the unit of the known level. */
export interface DecisionCase {
  readonly rule: DecisionRule;
  /** Indicated less known. */
  readonly error: number;
  readonly tolerance: Margins;
  /** The expanded uncertainty; null without one. */
  readonly uncertainty: Margins | null;
  /** The known level, to scale the allowance for float noise. */
  readonly known: number;
}

/** The decision on an error. */
export function decisionOn({ rule, error, tolerance, uncertainty, known }: DecisionCase): Decision {
  const guard = rule === "guard band" && uncertainty !== null ? uncertainty : { below: 0, above: 0 };
  const side = error < 0 ? "below" : "above";
  const within = (limit: number): boolean => Math.abs(error) <= limit + NOISE * known;
  const acceptance = {
    below: Math.max(0, tolerance.below - guard.below),
    above: Math.max(0, tolerance.above - guard.above),
  };
  const call = within(tolerance[side] - guard[side])
    ? "pass"
    : within(tolerance[side])
      ? "conditional pass"
      : within(tolerance[side] + guard[side])
        ? "conditional fail"
        : "fail";
  return {
    verdict: call === "pass" || call === "fail" ? call : "undecided",
    call,
    acceptance: Object.freeze(acceptance),
  };
}
