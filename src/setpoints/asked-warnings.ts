import { convertAmplitude } from "../amplitude/index";
import { inPlace, orNull, requireGiven, requireShape, type Shape } from "../core/index";
import type { StoredSetpoint } from "../device/index";
import type { Frequency } from "../frequency/index";
import { type Amplitude, format, significant } from "../reading/index";
import { reaches } from "./first-warnings";
import type { Proposal } from "./proposal";
import type { SetpointWarning } from "./setpoint-warnings";

const setpointShape: Shape = /* @__PURE__ */ orNull({ range: ["number"] });
const shape = {
  as: "text",
  baseline: "number or null",
  alarm: setpointShape,
  trip: setpointShape,
  hysteresis: { percent: "number" },
} as const satisfies Shape;

/** The most that the rules of a proposal allow for any setpoint; undefined where it has none. */
function mostAllowed({ alarm, trip }: Proposal): number | undefined {
  return (trip ?? alarm)?.range[1];
}

/**
 * What is to be said of a setpoint of one's own, held against a proposal: that the machine has reached it already, that
 * it would not clear at the running level, that it is above all that the rules allow.
 *
 * @param at - frequency, where it is of another quantity than the proposal
 * @throws {@link VeladisError} `wrong-type` and `missing-option` for what is no proposal, and as {@link convertAmplitude}
 * @example
 * ```ts
 * import { askedWarnings, proposeSetpoints, storedSetpoint } from "veladis/protection";
 *
 * const proposal = proposeSetpoints({ baseline: "4 mm/s rms", machine: "pump 90 kW 2980 r/min category II" });
 * askedWarnings(storedSetpoint("3 mm/s rms", {}), proposal).map(({ code }) => code); // => ["asked at once"]
 * ```
 */
export function askedWarnings(
  asked: Pick<StoredSetpoint, "stored">,
  proposal: Proposal,
  at?: Frequency,
): readonly SetpointWarning[] {
  requireShape(proposal, shape, "proposal");
  const { stored } = requireGiven(asked, "a setpoint as storedSetpoint returns it", { parameter: "asked" });
  const { as, baseline, hysteresis } = proposal;
  const setpoint: Amplitude = inPlace({ parameter: "asked", option: "stored" }, () =>
    convertAmplitude(stored, as, at === undefined ? {} : { at }),
  );
  const name = `the setpoint asked for, ${format(stored)}`;
  const base = baseline === null ? null : convertAmplitude(`${baseline} ${as}`, as);
  const warnings: SetpointWarning[] = [];
  if (base !== null && reaches(base, setpoint)) {
    warnings.push({
      code: "asked at once",
      text: `${name}, would act at once, as an alarm or as a trip: the machine already runs at ${format(base)}`,
    });
  } else if (base !== null && base.value >= setpoint.value * (1 - hysteresis.percent / 100)) {
    warnings.push({
      code: "asked stays set",
      text: `${name}, would not clear at the running level of ${format(base)} with a hysteresis of ${hysteresis.percent} %`,
    });
  }
  const most = mostAllowed(proposal);
  if (most !== undefined && setpoint.value > most) {
    warnings.push({
      code: "asked above the rules",
      text: `${name}, is above all that the rules allow (${significant(most, 4)} ${as}): the machine is not protected as they ask`,
    });
  }
  return Object.freeze(warnings);
}
