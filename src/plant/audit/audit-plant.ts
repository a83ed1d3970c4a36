import {
  attempt,
  cautions,
  inPlace,
  isVerified,
  type Provenance,
  requireGiven,
  requireKnownOptions,
  requireShape,
  requireText,
  type Source,
  type VeladisError,
  withParameters,
  worstProvenance,
} from "../../core/index";
import { editionText, type SchemeRef } from "../../severity/index";
import { calendarDay } from "../calendar-day";
import { comparedTag } from "../compared-tag";
import type { LimitsChosenBy } from "../machine-verdict";
import { isParsed } from "../parsed-machines";
import type { CalendarDay, Plant, PlantMachine, RefusedRow } from "../plant-machine";
import { plantShape } from "../plant-shape";
import { requireSchemes } from "../require-schemes";
import { type AuditCase, auditCase, limitsByRow, OTHER_WAYS } from "./audit-case";
import { type FindingSeverity, findingSeverities } from "./audit-rule";
import { type AuditCode, rulesInOrder } from "./audit-rules";

/** Something that a rule found in a machine. */
export interface PlantFinding {
  readonly tag: string;
  readonly line: number;
  readonly severity: FindingSeverity;
  readonly code: AuditCode;
  readonly what: string;
  readonly why: string;
  readonly mend: string;
  readonly source: Source;
}

/** A rule that could not be checked on a machine, with what was missing. */
export interface RuleNotChecked {
  readonly tag: string;
  readonly line: number;
  readonly code: AuditCode;
  readonly because: string;
}

/** By which limits a machine was looked at. */
export interface LimitsTaken {
  readonly tag: string;
  readonly line: number;
  /** The tables, or where limits of the maker or the site come from; empty where there are none. */
  readonly tables: readonly string[];
  /** What chose them: a table that the row names, limits that it states, or the nameplate. */
  readonly by: LimitsChosenBy;
  /** How the least known of them is known. */
  readonly provenance: Provenance;
  readonly verified: boolean;
}

/** What an audit found on a plant, worst first, then in the order of the list. */
export interface PlantAudit {
  /** The day of the audit; null where nobody gave it. */
  readonly on: CalendarDay | null;
  /** How many machines were looked at. */
  readonly machines: number;
  readonly findings: readonly PlantFinding[];
  readonly notChecked: readonly RuleNotChecked[];
  readonly limits: readonly LimitsTaken[];
  /** Rows that were refused: nothing is said of their machines. */
  readonly refused: readonly RefusedRow[];
  readonly cautions: readonly string[];
}

/** What {@link auditPlant} can be told besides. */
export interface AuditOptions {
  /** The day of the audit, such as `"2026-11-28"`; without it nothing is said of what is overdue. */
  readonly on?: CalendarDay;
  /** The tables to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

const keys: Readonly<Record<keyof AuditOptions, true>> = /* @__PURE__ */ Object.freeze({ on: true, schemes: true });

const DAY = "a day such as 2026-11-28";

/** Why a rule was not checked, in words. */
function becauseText({ code, expected, message }: VeladisError): string {
  if (code === "not-finite") return "its numbers are too large to be held against one another";
  if (code === "missing-frequency") return "not known: the running speed, by which one quantity becomes another";
  return code === "missing-fact" ? `not known: ${expected.replace(OTHER_WAYS, "")}` : message;
}

/** By which limits a machine was looked at; nothing where they could not be told. */
function limitsTaken({ machine, limits }: AuditCase): LimitsTaken | undefined {
  const told = attempt(limits);
  if (!told.ok) return undefined;
  const { schemes, compared } = told.value;
  const provenance = worstProvenance(compared.map(({ source }) => source.provenance));
  return Object.freeze({
    tag: machine.tag,
    line: machine.line,
    tables:
      machine.limits === undefined
        ? schemes.map((one) => `${one.scheme} (${editionText(one)})`)
        : [machine.limits.source],
    by: machine.limits !== undefined ? "limits" : machine.table !== undefined ? "table" : "nameplate",
    provenance,
    verified: isVerified(provenance),
  });
}

/** The lines of the rows with each tag. */
function linesByTag(machines: readonly PlantMachine[]): ReadonlyMap<string, readonly number[]> {
  const lines = new Map<string, number[]>();
  for (const { tag, line } of machines) {
    const name = comparedTag(tag);
    const before = lines.get(name);
    if (before === undefined) lines.set(name, [line]);
    else before.push(line);
  }
  return lines;
}

/**
 * Every machine of a plant held against its own nameplate, its limits and the rules of the trade, worst first.
 *
 * A rule that cannot be checked since a fact is not known is told under
 * `notChecked`, never passed over. Of a speed that varies the end counts that is worse for the machine. Nothing is said of
 * rows that were refused.
 *
 * @param plant - as {@link parsePlant} returns it
 * @param options - `on`, the day of the audit; `schemes`, the tables to choose from
 * @throws {@link VeladisError} `syntax` or `out-of-range` for a day that is none
 * @example
 * ```ts
 * import { auditPlant, parsePlant } from "veladis/plant";
 *
 * const heading = ["tag", "kind", "power", "speed", "nameplate", "baseline", "alarm", "trip"];
 * const row = ["HW-P1", "pump", "90 kW", "2980 r/min", "category II", "2.2 mm/s rms", "3.5 mm/s rms", "14 mm/s rms"];
 * const audit = auditPlant(parsePlant({ heading, rows: [row] }));
 * audit.findings[0]?.code; // => "trip above ceiling"
 * audit.findings[0]?.severity; // => "error"
 * audit.notChecked.find(({ code }) => code === "check overdue")?.because; // => "not known: a check"
 * ```
 */
export function auditPlant(plant: Plant, options: AuditOptions = {}): PlantAudit {
  return withParameters({ options, plant }, () => {
    const { on, schemes } = requireKnownOptions(options, keys, {
      what: "an option of an audit",
      form: 'options such as { on: "2026-11-28" }',
    });
    const day =
      on === undefined
        ? undefined
        : inPlace({ parameter: "options", option: "on" }, () => calendarDay(requireText(on, DAY)));
    requireGiven(plant, "a plant as parsePlant returns it", { parameter: "plant" });
    if (!isParsed(plant.machines)) requireShape(plant, plantShape, "plant");
    const { machines, refused } = plant;
    requireSchemes(schemes);
    const setting = { on: day, schemes, linesOf: linesByTag(machines), limitsOf: limitsByRow(schemes) };
    const findings: PlantFinding[] = [];
    const notChecked: RuleNotChecked[] = [];
    const limits: LimitsTaken[] = [];
    for (const machine of machines) {
      const { tag, line } = machine;
      const looked = auditCase(machine, setting);
      const taken = limitsTaken(looked);
      if (taken !== undefined) limits.push(taken);
      for (const [code, { severity, why, mend, source, check }] of rulesInOrder()) {
        const told = attempt(() => check(looked) ?? null);
        if (!told.ok) notChecked.push(Object.freeze({ tag, line, code, because: becauseText(told.error) }));
        else if (told.value !== null)
          findings.push(Object.freeze({ tag, line, severity, code, why, mend, source, ...told.value }));
      }
    }
    const order = (one: PlantFinding): number => findingSeverities.indexOf(one.severity);
    findings.sort((one, other) => order(one) - order(other));
    return Object.freeze({
      on: day ?? null,
      machines: machines.length,
      findings: Object.freeze(findings),
      notChecked: Object.freeze(notChecked),
      limits: Object.freeze(limits),
      refused,
      cautions,
    });
  });
}
