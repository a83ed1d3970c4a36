import { shown, VeladisError } from "../core/index";
import { significant } from "../reading/index";
import type { Baseline } from "./baseline";
import { lowestMode, modesText } from "./modes";
import type { SetpointLimits } from "./setpoint-limits";
import type { SetpointWarning } from "./setpoint-warnings";

/**
 * What is to be said of a baseline of operating modes whose medians differ: the lowest of them is taken.
 *
 * @param inDevice - a value of the baseline in the type of the setpoints
 * @throws {@link VeladisError} `out-of-range` where one baseline cannot serve them: the medians differ by more than a quarter
 *   of B/C, which is a significant change by itself, or there are no limits
 */
export function modeWarnings(
  baseline: Baseline,
  limits: SetpointLimits | null,
  inDevice: (value: number) => number,
): SetpointWarning[] {
  const { modes = [], as } = baseline;
  const [lowest, highest] = [lowestMode(baseline), modes.at(-1)];
  if (lowest === undefined || highest === undefined) return [];
  const refused = (expected: string): VeladisError =>
    new VeladisError("out-of-range", {
      expected: `${expected}: name one, as in only: ${shown(lowest.mode)} of its modes, or --mode at the command`,
      received: `medians of ${modesText(modes, as)}`,
      option: "baseline",
    });
  if (limits === null)
    throw refused(
      "a baseline of one operating mode where there are no limits, since statistics of several are those of none",
    );
  const quarter = limits.lower.amplitude.value / 4;
  if (inDevice(highest.median) - inDevice(lowest.median) > quarter)
    throw refused(
      `a baseline of operating modes that differ by at most ${significant(quarter)} ${limits.lower.amplitude.unit} ${limits.lower.amplitude.detector}, a quarter of ${limits.lower.text}`,
    );
  return [
    {
      code: "mixed modes",
      text: `the operating modes differ in their medians, ${modesText(modes, as)}: the lowest is taken for the baseline, without statistics of all; better a baseline, and setpoints, of each mode`,
    },
  ];
}
