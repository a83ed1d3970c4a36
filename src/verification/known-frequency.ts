import { type Amplitude, historyOf, ownHistory, type Step } from "../reading/index";

/**
 * A level that is converted at the frequency of the known one, with what is known of that frequency: else its tolerance
 * would be lost on the way.
 */
export function atKnownFrequency(shown: Amplitude, known: Amplitude): Amplitude {
  const { hertz, hertzUncertainty } = historyOf(known).findLast((step) => step.hertzUncertainty !== undefined) ?? {};
  const history = historyOf(shown);
  const isTold = history.some((step) => step.hertzUncertainty !== undefined);
  if (hertz === undefined || hertzUncertainty === undefined || isTold || shown.quantity === known.quantity)
    return shown;
  const start = history.findLastIndex((step) => step.does === "given");
  if (start < 0) return shown;
  const told: Step = Object.freeze({ ...(history[start] as Step), hertz, hertzUncertainty });
  return Object.freeze({ ...shown, history: ownHistory(history.with(start, told)) });
}
