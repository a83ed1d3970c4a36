import { COMMON_PRACTICE } from "../../setpoints/index";
import { known } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** What protects a machine at all. */
export function protectionRules() {
  return {
    "no setpoint": {
      severity: "error",
      says: "a machine with neither alarm nor trip",
      why: "by the list nothing warns of this machine's vibration, and nothing stops it",
      source: COMMON_PRACTICE,
      mend: "read the setpoints at the device and write them into the list, or set them (veladis plant setpoints proposes them)",
      check: ({ machine: { alarm, trip } }) =>
        alarm === undefined && trip === undefined ? { what: "the list has neither alarm nor trip" } : undefined,
    },
    "no trip": {
      severity: "warning",
      says: "a machine with an alarm and no trip",
      why: "nothing stops it unless somebody acts on the alarm in time",
      source: COMMON_PRACTICE,
      mend: "set a trip, or record who decided that an alarm is enough for this machine, and why",
      check: ({ machine: { alarm, trip } }) =>
        alarm !== undefined && trip === undefined ? { what: "the list has an alarm and no trip" } : undefined,
    },
    "no alarm": {
      severity: "warning",
      says: "a machine with a trip and no alarm",
      why: "it trips without anybody being warned",
      source: COMMON_PRACTICE,
      mend: "set an alarm below the trip",
      check: ({ machine: { alarm, trip } }) =>
        alarm === undefined && trip !== undefined ? { what: "the list has a trip and no alarm" } : undefined,
    },
    "trip not latching": {
      severity: "note",
      says: "a trip that clears by itself",
      why: "the level falls as the machine stops, the trip clears, and the machine may be started again before anybody has looked for the cause",
      source: COMMON_PRACTICE,
      mend: "let the trip, or the logic behind it, stay set until it is reset by hand",
      check: ({ machine: { trip, settings } }) => {
        known(trip, "a trip");
        return known(settings.latching, "whether the trip latches") ? undefined : { what: "latching is set to no" };
      },
    },
  } as const satisfies AuditRules;
}
