import { convertedAt, multipliedAmplitude } from "../amplitude/index";
import { type Amplitude, amplitudeIn, format, significant } from "../reading/index";
import { firstWarnings } from "./first-warnings";
import type { Proposal, ProposedSetpoint } from "./proposal";
import { hysteresisFor } from "./setpoint-targets";
import type { SetpointWarning, SetpointWarningCode } from "./setpoint-warnings";

/** Warnings that rest on the reset levels, which a hysteresis moves. */
const first: readonly SetpointWarningCode[] = [
  "trip at once",
  "alarm at once",
  "alarm not below trip",
  "trip stays set",
  "alarm stays set",
];

/**
 * A proposal from one baseline level whose standard deviation is known beside it: its hysteresis is two of them, and the reset
 * levels and warnings follow.
 *
 * @param deviation - of the baseline
 * @param hertz - the running speed, where the deviation is of another quantity than the setpoints
 */
export function withSpread(proposal: Proposal, deviation: Amplitude, hertz: number | undefined): Proposal {
  const { as, baseline, alarm, trip, warnings } = proposal;
  const spread = convertedAt(deviation, as, hertz).value;
  const hysteresis = hysteresisFor(spread, (alarm ?? trip)?.asked.value);
  const { percent } = hysteresis;
  const anew = (one: ProposedSetpoint | null): ProposedSetpoint | null => {
    if (one === null) return null;
    const reset = multipliedAmplitude(one.stored, 1 - percent / 100, `less a hysteresis of ${percent} %`);
    return Object.freeze({ ...one, reset });
  };
  const [ownAlarm, ownTrip] = [anew(alarm), anew(trip)];
  const base = baseline === null ? null : amplitudeIn(as, baseline);
  const scatter = base === null ? undefined : base.value + 3 * spread;
  const inScatter: SetpointWarning[] =
    scatter === undefined || alarm === null || alarm.stored.value > scatter
      ? []
      : [
          {
            code: "alarm in scatter",
            text: `the alarm of ${format(alarm.stored)} lies within the scatter of the baseline, which reaches ${significant(scatter)} ${as}: it will come without cause`,
          },
        ];
  return Object.freeze({
    ...proposal,
    alarm: ownAlarm,
    trip: ownTrip,
    hysteresis,
    warnings: Object.freeze([
      ...firstWarnings(ownAlarm, ownTrip, base),
      ...warnings.filter(({ code }) => !first.includes(code)),
      ...inScatter,
    ]),
  });
}
