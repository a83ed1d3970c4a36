import { parseNumeral, shown, splitNumeral, VeladisError } from "../core/index";
import { type FrequencyText, hertz } from "../frequency/index";
import { hasPlusMinus, type Uncertainty } from "../reading/index";
import {
  halves,
  hasCoverage,
  requirePhaseKnown,
  statedBehind,
  uncertainHertz,
  uncertaintyFrom,
} from "../uncertainty/index";

const FORM = 'a phase lag with its uncertainty in degrees, as in "∠ 45 ± 3° (k=2)"';

const DEGREES = /^(?:[°º˚]|degrees?|deg)?(?:\s*lag)?$/i;

/** A phase in degrees with what stands behind its ±; none for a text without. */
export function uncertainPhase(text: string): [phase: number, uncertainty: Uncertainty | undefined] | undefined {
  if (!hasPlusMinus(text) && !hasCoverage(text)) return undefined;
  const [before, behind, coverage] = halves(text, text, false, FORM);
  const [digits, unit] = splitNumeral(before);
  const stated = statedBehind(behind as string, coverage);
  if (!DEGREES.test(unit.trim()) || !DEGREES.test(stated.unit) || unit.trim() + stated.unit === "") {
    throw new VeladisError(unit.trim() + stated.unit === "" ? "missing-unit" : "syntax", {
      expected: FORM,
      received: shown(text),
    });
  }
  const uncertainty = uncertaintyFrom(stated.amount, { ...stated, unit: "degrees" }, false);
  if (uncertainty !== undefined) requirePhaseKnown(uncertainty);
  return [parseNumeral(digits, "a phase lag in degrees"), uncertainty];
}

/** The uncertainty of a frequency that is a whole number of times as high. */
function multiplied(uncertainty: Uncertainty | undefined, order: number): Uncertainty | undefined {
  return uncertainty && Object.freeze({ ...uncertainty, standard: order * uncertainty.standard });
}

/** A shaft speed, and how well the frequency of an order of it is known. */
export function uncertainSpeed(text: string, order: number): [speed: number, ofHertz: Uncertainty | undefined] {
  if (!hasPlusMinus(text) && !hasCoverage(text)) return [hertz(text as FrequencyText), undefined];
  // as beside a frequency: the amount may mean the speed or the order
  if (order > 1 && !/%\s*(?:\(|$)/.test(text)) {
    throw new VeladisError("missing-unit", {
      expected: "a tolerance of an order of a speed in %, such as 2x of 1500 r/min ± 1 %",
      received: shown(text),
    });
  }
  const [speed, uncertainty] = uncertainHertz(text, text);
  return [speed, multiplied(uncertainty, order)];
}
