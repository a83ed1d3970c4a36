import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { deviceType } from "../../device/index";
import { type Amplitude, format, parseAmplitude } from "../../reading/index";
import { COMMON_PRACTICE, setpointRules } from "../../setpoints/index";
import { type AuditCase, highestIn, isAbove, known } from "./audit-case";
import type { AuditRules, Found } from "./audit-rule";
import { loopUses } from "./loop-uses";

/** How often the time of the start-up a trip may be held back; common practice, no source. */
const MOST_START_UPS = 2;

/** Seconds that a trip may be held back where the list does not say how long the start-up takes; common practice, no source. */
const MOST_UNSAID = 60;

/** The highest factor that is usual; see the rule. */
const MOST_FACTOR = 3;

/** The least factor that rides out a start-up; common practice, no source. */
const LEAST_FACTOR = 1.5;

function inhibitTooLong({ machine: { settings, startUp } }: AuditCase): Found | undefined {
  const { startInhibit = 0, multiplier } = settings;
  const longest = startUp === undefined ? MOST_UNSAID : MOST_START_UPS * startUp;
  const texts = [
    ...(startInhibit > longest ? [`a start inhibit holds the trip back for ${startInhibit} s from each start`] : []),
    ...(multiplier !== undefined && multiplier.seconds > longest
      ? [`the trip is multiplied by ${multiplier.factor} for ${multiplier.seconds} s from each start`]
      : []),
  ];
  if (texts.length === 0) return undefined;
  const beside =
    startUp === undefined
      ? `the list does not say how long the start-up takes, so that at most ${MOST_UNSAID} s are taken as usual`
      : `the start-up takes ${startUp} s`;
  return { what: `${texts.join("; ")}; ${beside}` };
}

/** The trip while it is multiplied, with the factor; undefined without a multiplier. */
function multipliedTrip({ machine }: AuditCase) {
  const { multiplier } = machine.settings;
  if (multiplier === undefined) return undefined;
  const trip = known(machine.trip, "a trip");
  const raised: Amplitude = { ...convertedAt(trip, linearTypeOf(trip), undefined) };
  return { trip: { ...raised, value: raised.value * multiplier.factor }, multiplier };
}

/** What the multiplied trip is above, in words. */
function multipliedBeyond(machine: AuditCase): Found | undefined {
  const found = multipliedTrip(machine);
  if (found === undefined) return undefined;
  const { trip, multiplier } = found;
  const { loop, ceiling, device } = machine.machine;
  const texts: string[] = [];
  if (loop !== undefined && loopUses(trip, loop, machine).some(({ share }) => share > 1))
    texts.push(`beyond the end of the loop of ${loop}`);
  if (device.highest !== undefined) {
    const highest = convertedAt(parseAmplitude(device.highest), deviceType(device, device.highest), undefined);
    if (isAbove(highestIn(trip, highest, machine).value, highest.value))
      texts.push(`above the highest setpoint of the device, ${device.highest}`);
  }
  if (
    ceiling !== undefined &&
    isAbove(highestIn(trip, ceiling, machine).value, convertedAt(ceiling, linearTypeOf(ceiling), undefined).value)
  )
    texts.push(`above the ceiling of ${format(ceiling)}`);
  if (texts.length === 0) return undefined;
  return { what: `multiplied by ${multiplier.factor} the trip is ${format(trip)}: ${texts.join("; ")}` };
}

/** What holds the trip back from each start. */
export function startRules() {
  return {
    "trip held back too long": {
      severity: "error",
      says: `a start inhibit, or a multiplier, that lasts longer than ${MOST_START_UPS} times the start-up, or than ${MOST_UNSAID} s where its time is not known`,
      why: "the machine runs at speed without its trip",
      source: COMMON_PRACTICE,
      mend: "shorten it to the time of the start-up, or correct that time in the list",
      check: inhibitTooLong,
    },
    "multiplier above usual": {
      severity: "warning",
      says: `a multiplier above ${MOST_FACTOR}`,
      why: setpointRules["raised setpoint"].text,
      source: setpointRules["raised setpoint"].source,
      mend: `lower it to at most ${MOST_FACTOR}, or give the maker's reason`,
      check: ({ machine: { settings } }) =>
        settings.multiplier !== undefined && settings.multiplier.factor > MOST_FACTOR
          ? { what: `the trip is multiplied by ${settings.multiplier.factor}` }
          : undefined,
    },
    "multiplied trip out of reach": {
      severity: "warning",
      says: "a multiplied trip beyond the loop, above the highest setpoint of the device or above the ceiling",
      why: "while it is multiplied the machine has no trip, or a higher one than it may have",
      source: COMMON_PRACTICE,
      mend: "lower the factor, or choose a loop and a device that reach so far",
      check: multipliedBeyond,
    },
    "start-up not ridden out": {
      severity: "warning",
      says: `a trip delay, start inhibit and multiplier that are all shorter than the start-up; a multiplier under ${LEAST_FACTOR} does not count`,
      why: "vibration while the machine runs up may trip it at each start, and whoever is tired of that takes the trip out",
      source: COMMON_PRACTICE,
      mend: "raise the setpoint or inhibit the trip for the time of the start-up, on the maker's advice and with a record",
      check: ({ machine }) => {
        const startUp = known(machine.startUp, "the time of the start-up");
        const delay = known(machine.tripDelay, "the trip delay");
        const { startInhibit = 0, multiplier } = machine.settings;
        const isSlight = multiplier !== undefined && multiplier.factor < LEAST_FACTOR;
        const longest = Math.max(delay, startInhibit, isSlight ? 0 : (multiplier?.seconds ?? 0));
        if (longest >= startUp) return undefined;
        const slight = isSlight ? `; a multiplier of ${multiplier.factor} hardly raises it` : "";
        return {
          what: `the start-up takes ${startUp} s, and nothing holds the trip back for longer than ${longest} s${slight}`,
        };
      },
    },
  } as const satisfies AuditRules;
}
