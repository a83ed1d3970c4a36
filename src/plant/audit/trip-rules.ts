import { convertedAt, linearTypeOf } from "../../amplitude/index";
import { format } from "../../reading/index";
import { AS_STATED, COMMON_PRACTICE, highestOf, setpointRules } from "../../setpoints/index";
import { type AuditCase, highestIn, isAbove, known, setpointText } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** The trip with the limits it is held against and the highest that they allow, all in its type. */
function tripHeld(machine: AuditCase) {
  const trip = known(machine.machine.trip, "a trip");
  const limits = machine.limits();
  const { upper, ceilings, kind } = limits;
  const highest = highestOf(limits, "trip") ?? undefined;
  if (upper === null || highest === undefined) {
    throw known(
      undefined,
      "an upper limit of zone C or a shutdown limit in the table, which has none for this machine",
    );
  }
  const ofTable = kind === "zones" && ceilings !== null && highest.value === ceilings.trip.amplitude.value;
  return {
    trip: convertedAt(trip, linearTypeOf(trip), undefined),
    upper,
    highest,
    ceiling: ofTable ? ceilings.trip : null,
    kind,
  };
}

/** What a trip is held against. */
export function tripRules() {
  return {
    "trip above ceiling": {
      severity: "error",
      says: "a trip above the highest that the rules allow: 1.25 times C/D, the shutdown or the highest setting of the table",
      why: "up to that trip the machine runs on at levels that the limits call dangerous",
      source: setpointRules["trip cap"].source,
      mend: "lower the trip, or give the limits of the maker with their source",
      check: (machine) => {
        const { trip, upper, highest, ceiling, kind } = tripHeld(machine);
        if (!isAbove(trip.value, highest.value)) return undefined;
        const most = ceiling?.text ?? (kind === "operation" ? upper.text : `1.25 times ${upper.text}`);
        return {
          what: `the trip of ${setpointText(trip)} is above ${format(highest)}, which is ${most}`,
          source: ceiling?.source ?? (kind === "operation" ? upper.source : setpointRules["trip cap"].source),
          mend: `lower the trip to at most ${format(highest)}, or give the limits of the maker with their source`,
        };
      },
    },
    "trip above the maker's ceiling": {
      severity: "error",
      says: "a trip above the highest that the maker or the site allows",
      why: "the maker of the machine and the rules of the site govern",
      source: { title: "the ceiling in the plant's list", provenance: "memory", note: AS_STATED },
      mend: "lower the trip to the ceiling",
      check: (machine) => {
        const trip = known(machine.machine.trip, "a trip");
        const ceiling = machine.machine.ceiling;
        if (ceiling === undefined) return undefined;
        const highest = highestIn(trip, ceiling, machine);
        if (!isAbove(highest.value, ceiling.value)) return undefined;
        return { what: `the trip of ${setpointText(trip)} is above the ceiling of ${format(ceiling)}` };
      },
    },
    "trip above zone C": {
      severity: "note",
      says: "a trip between C/D and 1.25 times C/D",
      why: "it is allowed, and for the person who answers for the machine to decide",
      source: setpointRules["trip proposed"].source,
      mend: "keep it with the reason on record, or lower it to C/D",
      check: (machine) => {
        const { trip, upper, highest } = tripHeld(machine);
        const { amplitude, text } = upper;
        if (!isAbove(trip.value, amplitude.value) || isAbove(trip.value, highest.value)) return undefined;
        return { what: `the trip of ${setpointText(trip)} is above ${format(amplitude)}, ${text}` };
      },
    },
    "trip at the baseline": {
      severity: "error",
      says: "a trip at or below the baseline",
      why: "the machine would trip as soon as its delay is over",
      source: COMMON_PRACTICE,
      mend: "look at baseline and trip: one of them is wrong",
      check: (machine) => {
        const trip = known(machine.machine.trip, "a trip");
        const baseline = highestIn(known(machine.machine.baseline, "a baseline").level, trip, machine);
        if (isAbove(trip.value, baseline.value)) return undefined;
        return { what: `the trip of ${format(trip)} is not above the baseline of ${format(baseline)}` };
      },
    },
  } as const satisfies AuditRules;
}
