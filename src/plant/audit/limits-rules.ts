import { attempt, type VeladisErrorCode } from "../../core/index";
import { format } from "../../reading/index";
import { AS_STATED, COMMON_PRACTICE } from "../../setpoints/index";
import { UNSAID_SOURCE } from "../row-limits";
import { OTHER_WAYS } from "./audit-case";
import type { AuditRules } from "./audit-rule";

/** Refusals that name what is missing, not what is wrong. */
const missing: readonly VeladisErrorCode[] = ["missing-fact", "missing-frequency", "missing-option"];

/** What the limits themselves are held against. */
export function limitsRules() {
  return {
    "limits do not fit": {
      severity: "error",
      says: "a table that is not for this machine, or limits that cannot be told",
      why: "without limits nobody can say whether the setpoints protect the machine",
      source: COMMON_PRACTICE,
      mend: "name a table that is for this machine, correct its nameplate, or give the limits of the maker",
      check: ({ limits }) => {
        const told = attempt(limits);
        if (told.ok) return undefined;
        if (missing.includes(told.error.code)) throw told.error;
        return { what: told.error.message };
      },
    },
    "limits not known": {
      severity: "error",
      says: "setpoints of a machine whose limits cannot be told, since a fact of it is missing",
      why: "without limits nobody can say whether the setpoints protect the machine, and they may be far too high",
      source: COMMON_PRACTICE,
      mend: "give the fact that is missing, in its column or under nameplate, or the limits of the maker",
      check: ({ machine, limits }) => {
        const setpoint = machine.trip ?? machine.alarm;
        if (setpoint === undefined) return undefined;
        const told = attempt(limits);
        if (told.ok || !missing.includes(told.error.code)) return undefined;
        const { expected, code } = told.error;
        const what = code === "missing-frequency" ? "the running speed" : expected.replace(OTHER_WAYS, "");
        return {
          what: `nothing holds the ${machine.trip === undefined ? "alarm" : "trip"} of ${format(setpoint)} against limits: not known: ${what}`,
        };
      },
    },
    "limits from memory": {
      severity: "note",
      says: "limits that nobody has checked against a printed copy",
      why: "a figure recalled wrongly would be taken for the standard",
      source: COMMON_PRACTICE,
      mend: "confirm them against a printed copy (veladis schemes <id> --sheet csv), or give the limits of the maker",
      check: ({ limits }) => {
        const recalled = limits().compared.filter(
          ({ source }) => source.provenance === "memory" && source.note !== AS_STATED,
        );
        const texts = [...new Set(recalled.map(({ text }) => text))];
        const [first] = recalled;
        return first === undefined ? undefined : { what: texts.join("; "), source: first.source };
      },
    },
    "limits without a source": {
      severity: "warning",
      says: "limits of the maker or the site of which the list does not say where they come from",
      why: "nobody can check them, nor see when they change",
      source: COMMON_PRACTICE,
      mend: "fill in the column limits source",
      check: ({ machine: { limits } }) =>
        limits?.source === UNSAID_SOURCE ? { what: "limits are given without a source" } : undefined,
    },
    "several tables": {
      severity: "note",
      says: "facts that admit several tables, of which the lowest limits are taken",
      why: "the limits may be lower than those that are meant for the machine",
      source: COMMON_PRACTICE,
      mend: "name the table, or the facts that decide between them",
      check: ({ limits }) => {
        const { schemes } = limits();
        if (schemes.length < 2) return undefined;
        return { what: `the facts admit ${schemes.length} tables: ${schemes.map(({ scheme }) => scheme).join(", ")}` };
      },
    },
    "facts assumed": {
      severity: "note",
      says: "facts of the machine that were not given, and taken for their lower limits",
      why: "the limits may be lower than those that are meant for the machine",
      source: COMMON_PRACTICE,
      mend: "fill in what was assumed, in its column or under nameplate",
      check: ({ limits }) => {
        const { assumedFacts } = limits();
        return assumedFacts.length === 0 ? undefined : { what: assumedFacts.join("; ") };
      },
    },
    "facts set aside": {
      severity: "note",
      says: "facts of the machine that play no part in its limits",
      why: "whoever gave them may have meant another table",
      source: COMMON_PRACTICE,
      mend: "look whether the table is the right one",
      check: ({ limits }) => {
        // words that are not understood are found by their own rule
        const setAside = limits().setAside.filter((text) => !text.endsWith(": not understood"));
        return setAside.length === 0 ? undefined : { what: setAside.join("; ") };
      },
    },
  } as const satisfies AuditRules;
}
