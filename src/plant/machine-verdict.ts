import { inPlace, VeladisError, withParameters } from "../core/index";
import type { Frequency } from "../frequency/index";
import {
  classify,
  judge,
  type MachineLadder,
  machineLadder,
  type ReadingRef,
  type Scheme,
  type SchemeRef,
  schemeById,
  schemeLadder,
  schemeOf,
  type Verdict,
} from "../severity/index";
import { limitsAsScheme } from "./limits-as-scheme";
import type { PlantMachine } from "./plant-machine";
import { requireMachine } from "./require-plant";
import { requireSchemes } from "./require-schemes";

/** What chose the limits of a row: a table that it names, limits that it states, or the nameplate. */
export type LimitsChosenBy = "table" | "limits" | "nameplate";

/** What of a row decides its limits. */
export type Judged = Pick<PlantMachine, "machine" | "table" | "limits">;

/** By what the readings of a machine are judged. */
export interface MachineLimits {
  readonly by: LimitsChosenBy;
  /** The one scheme; undefined where the nameplate chooses. */
  readonly scheme: Scheme | undefined;
}

/**
 * By what the readings of a machine are judged: the table that its row names, in its confirmed form where there is one, the
 * limits that it states, or what its nameplate admits.
 *
 * @param schemes - the schemes to choose from; the built-in ones if not given
 * @throws {@link VeladisError} `out-of-range` for a row with both, `unknown-option` for a table there is none of
 */
export function limitsOfRow({ machine, table, limits }: Judged, schemes?: readonly SchemeRef[]): MachineLimits {
  if (table !== undefined && limits !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "a table, or limits of the maker or the site: one of the two",
      received: "both on one row",
      option: "limits",
    });
  }
  if (limits !== undefined)
    return { by: "limits", scheme: inPlace({ option: "limits" }, () => limitsAsScheme(limits, machine)) };
  if (table === undefined) return { by: "nameplate", scheme: undefined };
  const own = schemes?.map((one) => schemeOf(one)).find(({ id }) => id === table);
  return { by: "table", scheme: own ?? inPlace({ option: "table" }, () => schemeById(table)) };
}

const ASSUME = "lowest limits";

/** The whole verdict on a reading by these limits. */
export function verdictBy(
  { machine }: Judged,
  { scheme }: MachineLimits,
  reading: ReadingRef,
  schemes?: readonly SchemeRef[],
): Verdict {
  if (scheme === undefined) return judge(reading, machine, { assume: ASSUME, ...(schemes && { schemes }) });
  const judgement = classify(reading, { scheme, machine, assume: ASSUME });
  return Object.freeze({ ...judgement, judgements: Object.freeze([judgement]), deciding: Object.freeze([]) });
}

/** A judge of many readings in one type by these limits, with the limits themselves. */
export function ladderBy(
  { machine }: Judged,
  { scheme }: MachineLimits,
  told: { readonly from: string; readonly at?: Frequency; readonly schemes?: readonly SchemeRef[] | undefined },
): MachineLadder {
  const { from, at, schemes } = told;
  const options = { assume: ASSUME, ...(at !== undefined && { at }) } as const;
  if (scheme !== undefined) return schemeLadder(scheme, machine, from, options);
  return machineLadder(machine, from, { ...options, ...(schemes && { schemes }) });
}

/**
 * The whole verdict on a reading of a machine of a plant, by the table that its row names, else the limits that it states,
 * else every scheme that its nameplate admits. Facts that the row leaves empty are taken for their lowest limits, and
 * named; of a range of speeds all are admitted, and the worst governs.
 *
 * @param machine - a machine of a plant
 * @param reading - as {@link judge} takes it
 * @param schemes - the schemes to choose from, such as confirmed ones; the built-in ones if not given
 * @throws {@link VeladisError} `out-of-range` for a row with a table and limits, and as {@link judge} and {@link classify}
 * @example
 * ```ts
 * import { machineVerdict } from "veladis/plant";
 *
 * const motor = {
 *   ...{ tag: "MO-02", line: 3, settings: {}, device: {}, own: {} },
 *   machine: { type: "motor", shaftHeight: "250 mm", speed: { from: "740 r/min", to: "1485 r/min" }, support: "rigid" },
 *   table: "iso-10816-3-2009",
 * } as const;
 * const { headline, scheme, limit } = machineVerdict(motor, "3.1 mm/s rms");
 * [headline, scheme, limit.name, limit.value]; // => ["zone C", "iso-10816-3-2009", "C/D", 4.5]
 * ```
 */
export function machineVerdict(machine: PlantMachine, reading: ReadingRef, schemes?: readonly SchemeRef[]): Verdict {
  return withParameters({ reading, schemes, machine }, () => {
    requireMachine(machine);
    requireSchemes(schemes, { parameter: "schemes" });
    return verdictBy(machine, limitsOfRow(machine, schemes), reading, schemes);
  });
}
