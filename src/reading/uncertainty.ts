import { raised, requireChoice, requireGiven, requirePositive, requireText, VeladisError } from "../core/index";
import { isLevelType } from "./is-level-type";

/** A frequency that is known less well than this reaches towards zero, where an integration has no end. */
const MOST_OF_FREQUENCY = 0.12;

/** How a number may lie about its best value: as a bell, or anywhere within plus and minus root 3 of it alike. */
export type Distribution = "normal" | "rectangular";

/** The names of the distributions. */
const distributions: readonly Distribution[] = /* @__PURE__ */ Object.freeze(["normal", "rectangular"]);

/** How well a number of a step is known: plain data, so that it survives JSON. */
export interface Uncertainty {
  /** The standard uncertainty (one standard deviation), above zero: in what the number is written in, or in dB. */
  readonly standard: number;
  /** `"dB"` where a linear number is known by its level; left out where `standard` is in what the number is written in. */
  readonly in?: "dB";
  readonly distribution: Distribution;
  /** As it was stated, with its unit: `"± 0.3 mm/s rms (k=2)"`. */
  readonly stated: string;
  /** What it comes from, where somebody said: `"sensitivity of the sensor"`. */
  readonly name?: string;
}

/** The part of a step that says how well its numbers are known. */
interface Known {
  readonly does: string;
  readonly value: number;
  readonly type: string;
  readonly by?: number;
  readonly hertz?: number;
  readonly uncertainty?: Uncertainty;
  readonly hertzUncertainty?: Uncertainty;
  readonly phaseUncertainty?: Uncertainty;
}

function checked(one: Uncertainty): Uncertainty {
  const { standard, distribution, stated, name, in: scale } = requireGiven(one, "an uncertainty");
  requirePositive(standard, "a standard uncertainty above zero", { option: "standard" });
  requireChoice(distribution, distributions, "a distribution", { option: "distribution" });
  requireText(stated, "an uncertainty as it was stated", { option: "stated" });
  if (name !== undefined) requireText(name, "what an uncertainty comes from", { option: "name" });
  if (scale !== undefined) requireChoice(scale, ["dB"], "what an uncertainty is written in", { option: "in" });
  return Object.freeze({ ...one });
}

/** Refuses one that nobody could state: a bound above the number itself, a bell of k = 1 wider than it. */
function requireWithin(most: number, { standard, distribution, stated, in: scale }: Uncertainty): void {
  if (scale !== undefined || standard <= raised(distribution === "normal" ? most : most / Math.sqrt(3))) return;
  throw new VeladisError("out-of-range", {
    expected: `an uncertainty of at most the number it is of, ${most}`,
    received: `${stated}, with a standard uncertainty of ${standard}`,
  });
}

/** Refuses a frequency that is hardly known. */
export function requireTolerance(hertz: number, tolerance: Uncertainty | undefined): void {
  if (tolerance === undefined || (tolerance.in === undefined && tolerance.standard <= MOST_OF_FREQUENCY * hertz))
    return;
  throw new VeladisError("out-of-range", {
    expected: `a frequency with a standard uncertainty of at most 12 % of it, ${MOST_OF_FREQUENCY * hertz} Hz`,
    received: `${tolerance.stated}, which is ${Number(tolerance.standard.toPrecision(4))} ${tolerance.in ?? "Hz"}`,
  });
}

/** The uncertainties of a step from outside, checked and copied. Only what was given, or an influence, has its own. */
export function checkedUncertainties(step: Known): Pick<Known, "uncertainty" | "hertzUncertainty"> {
  const { does, value, type, by, hertz, uncertainty, hertzUncertainty } = step;
  if (uncertainty === undefined && hertzUncertainty === undefined) return {};
  const isLevel = isLevelType(type);
  // a level is not multiplied
  const isInfluence = does === "scale" && !isLevel && (by ?? 1) === 1;
  const fits = does === "given" ? hertzUncertainty === undefined || hertz !== undefined : isInfluence;
  if (!fits || (isInfluence && hertzUncertainty !== undefined)) {
    throw new VeladisError("out-of-range", {
      expected: "an uncertainty of a number that was given, or of a factor of 1",
      received: does,
    });
  }
  const tolerance = hertzUncertainty === undefined ? undefined : checked(hertzUncertainty);
  requireTolerance(hertz ?? 1, tolerance);
  const own = uncertainty === undefined ? undefined : checked(uncertainty);
  if (own !== undefined && !isLevel) requireWithin(isInfluence ? 1 : Math.abs(value), own);
  return {
    ...(own !== undefined && { uncertainty: own }),
    ...(tolerance !== undefined && { hertzUncertainty: tolerance }),
  };
}

/** True for a history in which a number has an uncertainty: it is kept whole, since no step in one could say it. */
export function isUncertain(history: readonly Known[]): boolean {
  return history.some((step) => (step.uncertainty ?? step.hertzUncertainty ?? step.phaseUncertainty) !== undefined);
}
