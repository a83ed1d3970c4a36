import { linearTypeOf } from "../amplitude/index";
import { attempt, type Source, withParameters } from "../core/index";
import { type Amplitude, amplitudeIn } from "../reading/index";
import { COMMON_PRACTICE } from "../setpoints/index";
import { checkAgainstKnown, type KnownCheckResult } from "../verification/index";
import { levelText, percentText } from "./level-text";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
import { requirePlant } from "./require-plant";
import { requireResults } from "./require-results";
import type { TakenResult } from "./taken-result";

/** A time in which the readings of a device are in doubt. */
export interface DoubtfulPeriod {
  readonly tag: string;
  readonly line: number;
  /** The day of the check before, after which they are in doubt; null where none is known: all before. */
  readonly from: CalendarDay | null;
  /** The day of the check that showed it, up to which they are in doubt; null while it goes on. */
  readonly to: CalendarDay | null;
  /** Which way it read: one that reads low trips late, and is the dangerous kind. */
  readonly reads: "low" | "high" | "nothing";
  readonly verdict: "fail" | "undecided";
  readonly errorPercent: number;
  /** The vibration at which the trip as set really comes, the error taken as proportional; null where that is not known. */
  readonly tripsAt: Amplitude | null;
  readonly what: string;
  readonly why: string;
  readonly source: Source;
  readonly mend: string;
}

/** A check of a device, as recorded in the list or brought back from the bench. */
interface DatedCheck {
  readonly date: CalendarDay;
  readonly found: KnownCheckResult | undefined;
  /** As left, or as found where nothing was adjusted. */
  readonly left: KnownCheckResult | undefined;
}

const kinds = /* @__PURE__ */ Object.freeze({
  low: {
    what: "it reads low and trips late, the dangerous kind",
    mend: "look back at these readings as if they were higher, at trips that did not come, and at what the machine may have suffered",
  },
  high: {
    what: "it reads high and trips early",
    mend: "look back at alarms and trips in this time; limits and baseline taken from it are too high",
  },
  nothing: {
    what: "it shows nothing and protects nothing",
    mend: "find out since when; look back at what the machine may have suffered",
  },
} as const);

function readsOf({ indicated, error }: KnownCheckResult): DoubtfulPeriod["reads"] {
  if (indicated.value === 0) return "nothing";
  return error < 0 ? "low" : "high";
}

/** The trip as it really comes where the device reads a share of the vibration. */
function tripsAt({ trip }: PlantMachine, { known, indicated }: KnownCheckResult): Amplitude | null {
  if (trip === undefined || !(indicated.value > 0)) return null;
  const value = (trip.value * known.value) / indicated.value;
  return Number.isFinite(value) ? amplitudeIn(linearTypeOf(trip), value) : null;
}

function periodOf(
  machine: PlantMachine,
  check: KnownCheckResult | undefined,
  from: CalendarDay | null,
  to: CalendarDay | null,
): readonly DoubtfulPeriod[] {
  if (check === undefined || check.verdict === "pass") return [];
  const { verdict, errorPercent } = check;
  const reads = readsOf(check);
  const real = tripsAt(machine, check);
  const size = `${percentText(errorPercent)} % ${errorPercent < 0 ? "low" : "high"} at ${levelText(check.known)}`;
  const trip =
    real === null
      ? ""
      : `; a trip set to ${levelText(machine.trip as Amplitude)} comes at ${levelText(real)}, the error taken as proportional`;
  const sure = verdict === "fail" ? "" : ", which is neither within nor out of tolerance for certain";
  const when = to === null ? `as left on ${from}` : `as found on ${to}`;
  return [
    Object.freeze({
      ...{ tag: machine.tag, line: machine.line, from, to, reads, verdict, errorPercent, tripsAt: real },
      ...kinds[reads],
      why: `${when} it read ${size}${sure}${trip}`,
      source: COMMON_PRACTICE,
    }),
  ];
}

/** In which way a check, of a device as it was left on a day or found on one, puts its readings in doubt; none where it passed. */
export function doubtOf(
  machine: PlantMachine,
  check: KnownCheckResult,
  { from, to }: Pick<DoubtfulPeriod, "from" | "to">,
): DoubtfulPeriod | undefined {
  return periodOf(machine, check, from, to)[0];
}

/** The check that the list holds, as far as it can be decided. */
function listedCheck({ check }: PlantMachine): DatedCheck | undefined {
  if (check === undefined) return undefined;
  const { date, known, asFound, asLeft, tolerance } = check;
  const decided = (indicated: Amplitude | undefined): KnownCheckResult | undefined => {
    if (known === undefined || indicated === undefined || tolerance === undefined) return undefined;
    const told = attempt(() => checkAgainstKnown({ known, indicated, tolerance }));
    return told.ok ? told.value : undefined;
  };
  return { date, found: decided(asFound), left: decided(asLeft ?? asFound) };
}

/** The times in which the readings of a machine are in doubt, by its checks in the order of their days. */
function periodsOf(machine: PlantMachine, checks: readonly DatedCheck[]): readonly DoubtfulPeriod[] {
  return checks.flatMap(({ date, found, left }, i) => [
    ...periodOf(machine, found, checks[i - 1]?.date ?? null, date),
    // what it read from then on is judged by the next check where there is one
    ...(i === checks.length - 1 ? periodOf(machine, left, date, null) : []),
  ]);
}

/**
 * The times in which readings are in doubt because the device was found, or left, out of tolerance or not within it for
 * certain: by the checks in the list, and by results that came back from the bench.
 *
 * Readings after `from` and up to `to` are meant, those of the day `to` too.
 *
 * @param results - of {@link takeResults}; none if not given
 * @throws {@link VeladisError} `missing-option` and `wrong-type` for what is no plant, and no results
 * @example
 * ```ts
 * import { doubtfulPeriods, parsePlant } from "veladis/plant";
 *
 * const heading = ["tag", "kind", "trip", "check date", "known", "as found", "as left", "tolerance"];
 * const row = ["LU-01", "fan", "9 mm/s rms", "2026-12-03", "8 mm/s rms", "8.6 mm/s rms", "8 mm/s rms", "5 %"];
 * const [doubt] = doubtfulPeriods(parsePlant({ heading, rows: [row] }));
 * [doubt?.from, doubt?.to, doubt?.reads]; // => [null, "2026-12-03", "high"]
 * ```
 */
export function doubtfulPeriods(plant: Plant, results: readonly TakenResult[] = []): readonly DoubtfulPeriod[] {
  return withParameters({ plant, results }, () => {
    const { machines } = requirePlant(plant);
    requireResults(results);
    const later = new Map<number, DatedCheck[]>();
    for (const { machineLine, date, asFound, asLeft } of results) {
      const check = { date, found: asFound, left: asLeft ?? asFound };
      const checks = later.get(machineLine);
      if (checks === undefined) later.set(machineLine, [check]);
      else checks.push(check);
    }
    return Object.freeze(
      machines.flatMap((machine) => {
        const listed = listedCheck(machine);
        return periodsOf(machine, [...(listed === undefined ? [] : [listed]), ...(later.get(machine.line) ?? [])]);
      }),
    );
  });
}
