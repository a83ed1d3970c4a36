import { factorAway, isLevelType, isUncertain, type Step, type StepName, type Uncertainty } from "../reading/index";

/** Steps that multiply, so that a share stays a share. */
const multiplying: readonly StepName[] = ["given", "convert", "scale"];

/** What a number is multiplied with at its ends, k = 2. */
function factorsOf(uncertainty: Uncertainty, of: number): readonly [low: number, high: number] {
  return [factorAway(uncertainty, of, -2), factorAway(uncertainty, of, 2)];
}

/**
 * What a reading is multiplied with for the ends of its interval, all its uncertainties (k = 2) to one side: no further in
 * than the interval itself. 0 and infinite where its steps do more than multiply.
 *
 * @param tolerances - steps that say how well the frequencies are known by which it was converted
 */
export function outerFactors(
  history: readonly Step[],
  tolerances: readonly Step[] = history,
): readonly [low: number, high: number] {
  const moves = history.some(({ does, hertz }) => does === "convert" && hertz !== undefined);
  if (!isUncertain(moves ? [...history, ...tolerances] : history)) return [1, 1];
  if (
    history.filter(({ does }) => does === "given").length > 1 ||
    history.some(({ does }) => !multiplying.includes(does))
  ) {
    return [0, Number.POSITIVE_INFINITY];
  }
  let [low, high] = [1, 1];
  for (const { does, type, value, uncertainty } of history) {
    if (uncertainty === undefined) continue;
    const own = isLevelType(type) ? { ...uncertainty, in: "dB" as const } : uncertainty;
    const [down, up] = factorsOf(own, does === "given" ? value : 1);
    low *= down;
    high *= up;
  }
  for (const { hertz = 1, hertzUncertainty } of moves ? tolerances : []) {
    if (hertzUncertainty === undefined) continue;
    // at most two integrations
    const [down] = factorsOf(hertzUncertainty, hertz);
    low *= down ** 2;
    high /= down ** 2;
  }
  return [low, high];
}
