import type { Provenance, Source } from "../core/index";
import type { ReadingType } from "../reading/index";
import type { CriterionPlan } from "./criterion-plan";
import type { JudgementPlan } from "./judgement-plan";
import type { Zone } from "./kinds";
import { type Told, valuesIn } from "./limits-in-type";
import { conditionText } from "./machine-class";
import type { PlacedMachine } from "./placed-machine";

/** One limit of the ladder by which the readings of a machine are judged. */
export interface LadderRow {
  /** The id of the scheme. */
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  /** The row of the table, in words, e.g. `"group 2, support rigid"`. */
  readonly row: string;
  /** What the limit is written in, in the table. */
  readonly as: ReadingType;
  /** The name of the limit, e.g. `"B/C"`. */
  readonly name: string;
  /** The limit as the table has it. */
  readonly printed: number;
  /** The number of its criterion among those that judge the machine, from 1. */
  readonly criterion: number;
  /** The number of the limit among those of its criterion, 1 for the best. */
  readonly step: number;
  /** How many limits a criterion has. */
  readonly steps: number;
  /** The zone below the limit. */
  readonly zone: Zone;
  /** The zone above it. */
  readonly beyond: Zone;
  /** The limit in the type of the readings. */
  readonly limit: number;
  /** The highest reading that is still within it: with the tolerance for float noise, 2^-23. */
  readonly bound: number;
  /** `"zone"`: it counts for the zone that is judged and for the worst that is possible; `"worst"`: for the latter alone. */
  readonly decides: "zone" | "worst";
  readonly provenance: Provenance;
  readonly source: Source;
}

/** A plan and the machine that it was made for. */
type Placed = Pick<JudgementPlan, "criteria"> & { readonly machine: PlacedMachine };

function rowsOf(
  { machine }: Placed,
  plan: CriterionPlan,
  type: ReadingType,
  told: Told,
): Omit<LadderRow, "criterion">[] {
  const { scheme, machineClass } = machine;
  const { criterion, zones, limits } = plan;
  const carried = { hertz: plan.hertz ?? told.hertz, crestFactor: told.crestFactor ?? plan.crestFactor };
  const bounds = valuesIn(type, plan.bounds, criterion.as, carried);
  const values = valuesIn(
    type,
    limits.map(({ value }) => value),
    criterion.as,
    carried,
  );
  return limits.map(({ name, value, provenance, source }, i) => ({
    scheme: scheme.id,
    standard: scheme.standard,
    edition: scheme.edition,
    row: conditionText(machineClass) || "any machine",
    as: criterion.as,
    name,
    printed: value,
    step: i + 1,
    steps: limits.length,
    zone: zones[i] as Zone,
    beyond: zones[i + 1] as Zone,
    limit: values[i] as number,
    bound: bounds[i] as number,
    decides: plan.bound === "most" ? "worst" : "zone",
    provenance,
    source,
  }));
}

/** The limits of all criteria that judge readings of a machine, scheme by scheme, lowest first. */
export function ladderRows(plans: readonly Placed[], type: ReadingType, told: Told): readonly LadderRow[] {
  const ladders = plans.flatMap((placed) => placed.criteria.map((plan) => rowsOf(placed, plan, type, told)));
  return ladders.flatMap((rows, i) => rows.map((row) => ({ ...row, criterion: i + 1 })));
}
