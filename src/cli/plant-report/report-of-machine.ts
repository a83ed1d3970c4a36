import { attempt } from "../../core/index";
import {
  auditRules,
  machineVerdict,
  type Plant,
  type PlantChange,
  type RefusedReading,
  type RuleNotChecked,
  scheduleSetpoints,
} from "../../plant/index";
import type { Scheme } from "../../severity/index";
import { machineChecks } from "./machine-checks";
import { machineLimits } from "./machine-limits";
import type { MachineReport, ReportHistory, Standing } from "./machine-report";

/** What is known beside the standings. */
export interface Beside {
  readonly plant: Plant;
  readonly schemes: readonly Scheme[] | undefined;
  readonly refused: readonly RefusedReading[];
  /** Rules that could not be checked. */
  readonly notChecked: readonly RuleNotChecked[];
  readonly changes: readonly PlantChange[];
  /** Those of this machine. */
  readonly histories: readonly ReportHistory[];
}

/** All that is told of a machine: made when its page is, so that one at a time is held. */
export function reportOfMachine(standing: Standing, beside: Beside): MachineReport {
  const { machine, points } = standing;
  const { tag } = machine;
  const { plant, schemes, refused, notChecked, changes, histories } = beside;
  const unanswered: string[] = [];
  const [worst] = points;
  const verdict = worst && attempt(() => machineVerdict(machine, worst.verdict.reading, schemes));
  if (verdict?.ok === false) unanswered.push(`the reading cannot be drawn: ${verdict.error.message}`);
  const limits = attempt(() => machineLimits(machine, schemes));
  if (!limits.ok) unanswered.push(`the limits are not known: ${limits.error.message}`);
  // rows that share a tag are told apart by none
  const rows = { ...plant, machines: plant.machines.filter((one) => one.tag === tag), refused: [] };
  const schedule = scheduleSetpoints(rows, schemes === undefined ? {} : { schemes });
  for (const { message } of schedule.refused) unanswered.push(`no setpoints are proposed: ${message}`);
  const [scheduled] = schedule.machines;
  return {
    ...standing,
    ...(verdict?.ok && { verdict: verdict.value }),
    refused: refused.flatMap((one) =>
      one.tag === tag
        ? [
            `Refused, and not judged: ${one.point === undefined ? "" : `${one.point}, `}line ${one.line} of the ${one.from === "before" ? "route before" : "route"}: ${one.message}`,
          ]
        : [],
    ),
    limits: limits.ok ? limits.value : [],
    ...(scheduled && { scheduled }),
    ...machineChecks(machine),
    histories,
    changes: changes.filter((one) => one.tag === tag),
    notChecked: notChecked.flatMap(({ line, code, because }) =>
      line === machine.line ? [`${auditRules[code].says}: ${because}`] : [],
    ),
    unanswered,
  };
}
