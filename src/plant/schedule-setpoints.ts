import { cautions, requireKnownOptions, shown, VeladisError, withParameters } from "../core/index";
import { fixedHertz, type Proposal, proposeSetpoints, type SetpointWarning } from "../setpoints/index";
import type { SchemeRef } from "../severity/index";
import { rowsByTag } from "./compared-tag";
import { fittedProposal } from "./fitted-proposal";
import { type LimitsChosenBy, limitsOfRow } from "./machine-verdict";
import type { Plant, PlantMachine, RefusedRow } from "./plant-machine";
import { requirePlant } from "./require-plant";
import { requireSchemes } from "./require-schemes";
import { type SetpointChange, setpointChanges } from "./setpoint-change";

/** What {@link scheduleSetpoints} can be told besides the list. */
export interface ScheduleOptions {
  /** The schemes to choose from, such as confirmed ones; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

const keys: Readonly<Record<keyof ScheduleOptions, true>> = /* @__PURE__ */ Object.freeze({ schemes: true });

/** How what is set stands to a proposal, the worst first. */
const standings = /* @__PURE__ */ Object.freeze([
  "above the rules",
  "no trip proposed",
  "would be lowered",
  "would change",
  "as proposed",
] as const);

/** The setpoints that are proposed for a machine of a plant, beside what is set. */
export interface ScheduledMachine {
  readonly tag: string;
  /** Line of its row in the list. */
  readonly line: number;
  readonly description?: string;
  readonly chosenBy: LimitsChosenBy;
  readonly standing: (typeof standings)[number];
  readonly changes: readonly SetpointChange[];
  readonly proposal: Proposal;
}

/** A machine for which nothing could be proposed, and why. */
export interface UnscheduledMachine extends RefusedRow {
  readonly expected?: string;
  readonly received?: string;
}

/** The setpoints that are proposed for all machines of a plant. */
export interface SetpointSchedule {
  /** The worst first: what is set above the rules, where no trip can be proposed, what would be lowered, what would change, then the rest; each in the order of the list. */
  readonly machines: readonly ScheduledMachine[];
  readonly refused: readonly UnscheduledMachine[];
  readonly cautions: readonly string[];
}

const BY_ITSELF =
  "A schedule changes nothing by itself: each change is decided, approved and recorded by the people who answer for the machine.";

/** The warnings with what the list says of the baseline: of a median of several readings it is no single one. */
function warningsOf({ warnings }: Proposal, { baseline }: PlantMachine): readonly SetpointWarning[] {
  const { count, deviation } = baseline ?? {};
  if (count === undefined || count < 2) return warnings;
  const text = `the baseline is the median of ${count} readings, as the list says; ${deviation === undefined ? "their scatter plays no part here" : "of their scatter the standard deviation that the list has plays a part"}; veladis setpoints reads them from a file`;
  return Object.freeze(warnings.map((one) => (one.code === "single baseline" ? { ...one, text } : one)));
}

function standingOf(changes: readonly SetpointChange[], { trip }: Proposal): ScheduledMachine["standing"] {
  const isAbove = changes.some(
    ({ isAllowed, set, allowed }) => isAllowed === false && (set ?? 0) >= (allowed?.[1] ?? 0),
  );
  if (isAbove) return "above the rules";
  if (trip === null) return "no trip proposed";
  const levels = changes.filter(({ setting }) => setting === "trip" || setting === "alarm");
  if (levels.some(({ does }) => does === "lower")) return "would be lowered";
  return changes.every(({ does }) => does === "keep") ? "as proposed" : "would change";
}

/** Refuses a shaft of which nothing says what its setpoints are written in: a velocity would mean nothing there. */
function requireType({ machine, baseline, limits, device }: PlantMachine): void {
  const { step, lowest, highest } = device;
  if (machine.place !== "shaft" || (baseline ?? limits ?? step ?? lowest ?? highest) !== undefined) return;
  throw new VeladisError("missing-fact", {
    expected: "a baseline of the shaft, or a step of its device, which says the unit of the setpoints",
    received: "neither",
  });
}

/**
 * The setpoints proposed for a machine.
 *
 * @param lines - of its tag, where several rows have it
 * @throws {@link VeladisError} where nothing can be proposed
 */
export function scheduledMachine(
  row: PlantMachine,
  schemes: readonly SchemeRef[] | undefined,
  lines: readonly number[] | undefined,
): ScheduledMachine {
  if (lines !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "a tag that one row of the list has",
      received: `${shown(row.tag)} on lines ${lines.join(" and ")}`,
    });
  }
  const { tag, line, description, machine, limits, baseline, loop, band, device, tripDelay } = row;
  const { by, scheme } = limitsOfRow(row, schemes);
  requireType(row);
  const hertz = fixedHertz(machine);
  const proposed = proposeSetpoints({
    baseline: baseline?.level ?? "none",
    machine,
    ...(by === "limits" && limits !== undefined ? { limits } : scheme !== undefined ? { scheme } : {}),
    ...(schemes !== undefined && { schemes }),
    ...(loop !== undefined && { sensor: { loop } }),
    device: { ...device, ...(band !== undefined && { band }) },
    ...(tripDelay !== undefined && { onDelay: tripDelay }),
  });
  const fitted = fittedProposal(proposed, row, hertz);
  const proposal = Object.freeze({ ...fitted.proposal, warnings: warningsOf(fitted.proposal, row) });
  const changes = setpointChanges(row, { ...fitted, proposal }, hertz);
  return Object.freeze({
    ...{ tag, line, ...(description !== undefined && { description }), chosenBy: by },
    ...{ standing: standingOf(changes, proposal), changes, proposal },
  });
}

/** Why nothing is proposed for a machine. */
function refusal({ tag, line }: PlantMachine, error: unknown): UnscheduledMachine {
  if (!VeladisError.is(error)) throw error;
  const { code, message, expected, received } = error;
  return Object.freeze({ tag, line, code, message, expected, received });
}

/**
 * The setpoints that {@link proposeSetpoints} proposes for every machine of a plant, beside what is set: what a proposal
 * would raise or lower, by how much, and why. Nothing is changed by itself.
 *
 * A machine is proposed for by its own baseline, table or limits, loop, band, steps of its device and planned delay; the trip is
 * no higher than the ceiling of its row, the hysteresis is two of the standard deviations that the list has, the trip delay
 * is shorter than the coast-down. A level that its loop does not carry is not proposed, nor a trip whose ceiling is not
 * above alarm and baseline. A row that was refused, one of two with the same tag, and one for which nothing can be
 * proposed stand among `refused`, with the reason.
 *
 * @param plant - the list
 * @param options - `schemes` to choose from
 * @throws {@link VeladisError} `wrong-type`, `missing-option`, `unknown-option` for what is no list or option; never for a single row
 * @example
 * ```ts
 * import { parseAmplitude } from "veladis";
 * import { scheduleSetpoints } from "veladis/plant";
 *
 * const pump = {
 *   ...{ tag: "PU-03", line: 2, settings: {}, own: {} },
 *   machine: { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II" },
 *   baseline: { level: parseAmplitude("2.2 mm/s rms") },
 *   trip: parseAmplitude("11 mm/s rms"),
 *   device: { step: "0.1 mm/s rms" },
 * } as const;
 * const { machines, cautions } = scheduleSetpoints({ machines: [pump], refused: [], ownColumns: [] });
 * machines[0]?.standing; // => "above the rules"
 * machines[0]?.changes[0]?.text;
 * // => "lower by 2.500 mm/s rms, from 11.00 mm/s rms to 8.500 mm/s rms; WHAT IS SET IS ABOVE ALL THAT THE RULES ALLOW, 10.60 mm/s rms"
 * cautions[0]?.startsWith("A schedule changes nothing by itself"); // => true
 * ```
 */
export function scheduleSetpoints(plant: Plant, options: ScheduleOptions = {}): SetpointSchedule {
  return withParameters({ plant, options }, () => {
    const { schemes } = requireKnownOptions(options, keys, {
      what: "an option of a schedule",
      form: "options such as { schemes: [] }",
    });
    const { machines: all, refused: before } = requirePlant(plant);
    requireSchemes(schemes);
    const bad = new Set(before.map(({ tag }) => tag));
    const alike = rowsByTag(all);
    const found: ScheduledMachine[] = [];
    const refused: UnscheduledMachine[] = [...before];
    for (const row of all) {
      if (bad.has(row.tag)) continue;
      try {
        const lines = (alike.get(row.tag) ?? []).map(({ line }) => line);
        found.push(scheduledMachine(row, schemes, lines.length > 1 ? lines : undefined));
      } catch (error) {
        refused.push(refusal(row, error));
      }
    }
    const rank = ({ standing }: ScheduledMachine): number => standings.indexOf(standing);
    return Object.freeze({
      machines: Object.freeze(found.sort((a, b) => rank(a) - rank(b))),
      refused: Object.freeze(refused),
      cautions: Object.freeze([BY_ITSELF, ...cautions]),
    });
  });
}
