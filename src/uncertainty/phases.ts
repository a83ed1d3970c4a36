import {
  requireChoice,
  requireFinite,
  requireGiven,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { isLevelType, parsedType, type Step, type Uncertainty } from "../reading/index";

/** The most that a phase may be off, in degrees: a quarter of a turn either way, beyond which it says no direction. */
export const MOST_PHASE = 90;

/** Refuses a phase that is hardly known, by its bound or by two standard uncertainties. */
export function requirePhaseKnown({ standard, distribution, stated, in: scale }: Uncertainty): void {
  requirePositive(standard, "a standard uncertainty above zero", { option: "standard" });
  requireChoice(distribution, ["normal", "rectangular"], "a distribution", { option: "distribution" });
  requireText(stated, "an uncertainty as it was stated", { option: "stated" });
  const most = standard * (distribution === "normal" ? 2 : Math.sqrt(3));
  if (scale === undefined && most <= MOST_PHASE * (1 + 1e-9)) return;
  throw new VeladisError("out-of-range", {
    expected: `a phase that is known to ${MOST_PHASE} degrees either way, by its bound or by two standard uncertainties`,
    received: stated,
  });
}

/** How many quarters of a turn the lag loses where a conversion differentiates. */
export function quartersOf(to: string, from: string): number {
  return parsedType(to).order - parsedType(from).order;
}

/** The phase that one step leaves, from those before it. */
function phaseAfter(
  { does, of: [from] = [], phase, phaseUncertainty, type }: Step,
  history: readonly Step[],
  before: readonly (number | undefined)[],
): number | undefined {
  if (phaseUncertainty !== undefined) {
    requirePhaseKnown(requireGiven(phaseUncertainty, "how well a phase is known", { option: "phaseUncertainty" }));
    if (does !== "given" || phase === undefined) {
      throw new VeladisError("out-of-range", {
        expected: "an uncertainty of a phase beside a phase that was given",
        received: shown(does),
        option: "does",
      });
    }
  }
  if (phase !== undefined) requireFinite(phase, "a phase lag in degrees", { option: "phase" });
  if (does === "given" || does === "vector difference") return phase;
  const own = from === undefined ? undefined : before[from];
  if (does === "scale") return phase ?? own;
  // a level has no phase
  if (does !== "convert" || own === undefined || isLevelType(type)) return undefined;
  return own - 90 * quartersOf(type, (history[from as number] as Step).type);
}

/**
 * The phase lag of each step of a history, in degrees that may be any number of turns away; undefined where it has none.
 *
 * @throws {@link VeladisError} `out-of-range` for a phase that is hardly known, and for its uncertainty without a phase
 */
export function phasesOf(history: readonly Step[]): readonly (number | undefined)[] {
  const phases: (number | undefined)[] = [];
  for (const step of history) phases.push(phaseAfter(step, history, phases));
  return phases;
}
