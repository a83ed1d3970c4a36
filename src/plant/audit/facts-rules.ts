import { attempt, shown } from "../../core/index";
import { type Device, storedSetpoint } from "../../device/index";
import { type Amplitude, format } from "../../reading/index";
import { COMMON_PRACTICE } from "../../setpoints/index";
import { comparedTag } from "../compared-tag";
import { type AuditCase, known } from "./audit-case";
import type { AuditRules, Found } from "./audit-rule";

/** What is said of a setpoint that the device cannot hold as it stands in the list. */
function notStored(name: string, setpoint: Amplitude | undefined, device: Device, hertz: number | undefined): string[] {
  if (setpoint === undefined) return [];
  const at = hertz === undefined || setpoint.hertz !== undefined ? undefined : { hertz };
  const stored = attempt(() => storedSetpoint(setpoint, device, at));
  if (!stored.ok) {
    if (stored.error.code !== "out-of-range") throw stored.error;
    return [`the ${name} of ${format(setpoint)}: ${stored.error.message}`];
  }
  return stored.value.percent === 0 ? [] : [`the ${name}: ${stored.value.effect}`];
}

function storedOtherwise({ machine, speeds }: AuditCase): Found | undefined {
  const { device, alarm, trip } = machine;
  known(Object.keys(device).length === 0 ? undefined : device, "the steps or the range of the device");
  const hertz = speeds.length === 1 ? speeds[0] : undefined;
  const texts = [...notStored("alarm", alarm, device, hertz), ...notStored("trip", trip, device, hertz)];
  return texts.length === 0 ? undefined : { what: texts.join("; ") };
}

/** What the list itself is held against. */
export function factsRules() {
  return {
    "tag twice": {
      severity: "error",
      says: "two rows with one tag",
      why: "nobody can say which of them a reading of this tag is judged by",
      source: COMMON_PRACTICE,
      mend: "give each machine, or each measured point, a tag of its own",
      check: ({ machine, linesOf }) => {
        const lines = linesOf.get(comparedTag(machine.tag)) ?? [];
        return lines.length < 2
          ? undefined
          : { what: `the tag ${shown(machine.tag)} stands on lines ${lines.join(" and ")}` };
      },
    },
    "words not understood": {
      severity: "warning",
      says: "words of the nameplate that say nothing of a machine",
      why: "a fact may be meant that plays no part now",
      source: COMMON_PRACTICE,
      mend: "correct the words, or move them to description",
      check: ({ machine: { machine } }) => {
        const words = machine.notUnderstood ?? [];
        if (words.length === 0) return undefined;
        const texts = words.map(({ word, didYouMean }) =>
          didYouMean.length === 0 ? shown(word) : `${shown(word)} (${didYouMean.join(" or ")}?)`,
        );
        return { what: texts.join(", ") };
      },
    },
    "setpoint not held": {
      severity: "warning",
      says: "a setpoint between the steps of its device, or outside its range",
      why: "the device does not hold what the list says",
      source: COMMON_PRACTICE,
      mend: "read the setpoint at the device, and correct list or device",
      check: storedOtherwise,
    },
    "date after the audit": {
      severity: "warning",
      says: "a baseline or a check of a day after that of the audit",
      why: "one of the two days is wrong",
      source: COMMON_PRACTICE,
      mend: "correct the date in the list, or give the day of the audit",
      check: ({ machine, on }) => {
        const day = known(on, "the day of the audit");
        const dates = [
          ["baseline", machine.baseline?.date],
          ["check", machine.check?.date],
        ] as const;
        const later = dates.flatMap(([name, date]) =>
          date !== undefined && date > day ? [`the ${name} is of ${date}`] : [],
        );
        return later.length === 0 ? undefined : { what: `${later.join(", ")}, the audit of ${day}` };
      },
    },
  } as const satisfies AuditRules;
}
