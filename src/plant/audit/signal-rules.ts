import { currentLoop, linearTypeOf } from "../../amplitude/index";
import type { Source } from "../../core/index";
import { bandUse } from "../../device/index";
import { format, quantityOf, significant } from "../../reading/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { type AuditCase, known, knownSpeeds } from "./audit-case";
import type { AuditRules, Found } from "./audit-rule";
import { loopUses } from "./loop-uses";

const ISO_2954 = {
  title: "ISO 2954:2012",
  provenance: "memory",
  note: "the -3 dB edges were read in a survey that quotes the standard, the 1.26 is from memory",
} as const satisfies Source;

/** What the loop makes of the trip, as it reads the highest and the lowest that the running speed makes of it. */
function tripInLoop(machine: AuditCase) {
  const trip = known(machine.machine.trip, "a trip");
  const range = known(machine.machine.loop, "the range of the loop");
  return { trip, range, uses: loopUses(trip, range, machine) };
}

/** The running speed that lies worst in the band, where it lies so. */
function speedInBand(machine: AuditCase, place: "outside" | "at the edge"): Found | undefined {
  const band = known(machine.machine.band, "the measured band");
  const uses = knownSpeeds(machine).map((hertz) => ({ hertz, ...bandUse(hertz, band) }));
  const found = uses.find((one) => one.place === place);
  if (found === undefined) return undefined;
  const which = uses.length > 1 ? `, ${found === uses[0] ? "the lowest" : "the highest"} of its range,` : "";
  return {
    what: `the running speed of ${significant(60 * found.hertz, 4)} r/min (${significant(found.hertz)} Hz)${which} is ${found.remark}`,
  };
}

/** What sensor, loop and band are held against. */
export function signalRules() {
  return {
    "loop does not carry the trip": {
      severity: "error",
      says: "a trip beyond the range of its loop",
      why: "no level within the range of the loop makes it act",
      source: COMMON_PRACTICE,
      mend: "change the range of the loop, or find the trip that the device really holds",
      check: (machine) => {
        const { trip, range, uses } = tripInLoop(machine);
        const beyond = uses.find(({ share }) => share > 1 || share <= 0);
        if (beyond === undefined) return undefined;
        const where = beyond.share > 1 ? "above the end" : "at or below the start";
        return { what: `the trip of ${format(trip)} lies ${where} of the span ${range}` };
      },
    },
    "loop does not carry the alarm": {
      severity: "error",
      says: "an alarm beyond the range of its loop",
      why: "no level within the range of the loop sets it, or it stands all the time",
      source: COMMON_PRACTICE,
      mend: "change the range of the loop, or find the alarm that the device really holds",
      check: (machine) => {
        if (machine.machine.alarm === undefined) return undefined;
        const { alarm } = machine.machine;
        const range = known(machine.machine.loop, "the range of the loop");
        const beyond = loopUses(alarm, range, machine).find(({ share }) => share > 1 || share <= 0);
        if (beyond === undefined) return undefined;
        const where = beyond.share > 1 ? "above the end" : "at or below the start";
        return { what: `the alarm of ${format(alarm)} lies ${where} of the span ${range}` };
      },
    },
    "loop does not show the baseline": {
      severity: "warning",
      says: "a baseline outside the range of its loop",
      why: "the loop shows its end where the machine runs as usual, so that neither a change nor a dead sensor is seen",
      source: COMMON_PRACTICE,
      mend: "change the range of the loop, so that it begins below the baseline",
      check: (machine) => {
        const { level } = known(machine.machine.baseline, "a baseline");
        const range = known(machine.machine.loop, "the range of the loop");
        const beyond = loopUses(level, range, machine).find(({ share }) => share > 1 || share < 0);
        if (beyond === undefined) return undefined;
        const where = beyond.share > 1 ? "above the end" : "below the start";
        return { what: `the baseline of ${format(level)} lies ${where} of the span ${range}` };
      },
    },
    "loop wastes its span": {
      severity: "note",
      says: "a trip under a third of the span of its loop",
      why: "most of the resolution goes to levels that nobody waits for, and an error of the span is a large error of the trip",
      source: COMMON_PRACTICE,
      mend: "choose a range that has the trip near its half",
      check: (machine) => {
        const { uses } = tripInLoop(machine);
        const isCarried = uses.every(({ share }) => share > 0 && share <= 1);
        const remark = isCarried ? uses.find((one) => one.remark !== null)?.remark : undefined;
        return remark === undefined || remark === null ? undefined : { what: remark };
      },
    },
    "loop of another quantity": {
      severity: "warning",
      says: "a loop of another quantity than the trip",
      why: "a level that does not turn at running speed passes such a loop at another height than the trip is set for",
      source: COMMON_PRACTICE,
      mend: "write the trip in the quantity of the loop",
      check: (machine) => {
        const trip = known(machine.machine.trip, "a trip");
        const end = currentLoop(known(machine.machine.loop, "the range of the loop")).reading(20);
        const quantity = quantityOf(linearTypeOf(trip));
        if (end.quantity === quantity) return undefined;
        return { what: `the loop carries ${linearTypeOf(end)}, the trip is of ${quantity}` };
      },
    },
    "band does not hold 1x": {
      severity: "error",
      says: "a running speed outside the measured band; of a range its lowest and its highest",
      why: "unbalance and most other faults of a rotor show at running speed, which such a device does not see",
      source: ISO_2954,
      mend: "choose a device, or a setting of its band, that holds the running speed",
      check: (machine) => speedInBand(machine, "outside"),
    },
    "band edge at 1x": {
      severity: "warning",
      says: "a running speed at the lower edge of the measured band",
      why: "the device reads low there, and trips later than it is set",
      source: ISO_2954,
      mend: "choose a band whose lower edge is at most the running speed over 1.26, or allow for what is read low",
      check: (machine) => speedInBand(machine, "at the edge"),
    },
  } as const satisfies AuditRules;
}
