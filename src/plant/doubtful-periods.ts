import { attempt, requireGiven, requireList, type Source, withParameters } from "../core/index";
import { type Amplitude, amplitudeIn } from "../reading/index";
import { linearTypeOf } from "../amplitude/index";
import { checkAgainstKnown, type KnownCheckResult } from "../verification/index";
import { levelText } from "./level-text";
import type { CalendarDay, Plant, PlantMachine } from "./plant-machine";
import { COMMON_PRACTICE } from "../setpoints/index";
import type { TakenResult } from "./take-results";

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
  low: { what: "readings since the last check are in doubt: it read low, and trips late", mend: "look back at these readings as if they were higher, and at what the machine may have suffered" },
  high: { what: "readings since the last check are in doubt: it read high, and trips early", mend: "look back at alarms and trips in this time; limits and baseline taken from it are too high" },
  nothing: { what: "it showed nothing, and protected nothing", mend: "find out since when; look back at what the machine may have suffered" },
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
  const size = `${Math.abs(errorPercent).toFixed(1)} % ${errorPercent < 0 ? "low" : "high"} at ${levelText(check.known)}`;
  const trip = real === null ? "" : `; a trip set to ${levelText(machine.trip as Amplitude)} comes at ${levelText(real)}, the error taken as proportional`;
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
 */
export function doubtfulPeriods(plant: Plant, results: readonly TakenResult[] = []): readonly DoubtfulPeriod[] {
  return withParameters({ plant, results }, () => {
    const { machines } = requireGiven(plant, "a plant with its machines", { parameter: "plant" });
    requireList(results, "results of checks", { parameter: "results" });
    const later = new Map<number, DatedCheck[]>();
    for (const { machineLine, date, asFound, asLeft } of results) {
      const check = { date, found: asFound, left: asLeft ?? asFound };
      const checks = later.get(machineLine);
      if (checks === undefined) later.set(machineLine, [check]);
      else checks.push(check);
    }
    return Object.freeze(
      requireList(machines, "the machines of a plant", { parameter: "plant", option: "machines" }).flatMap((machine) => {
        const listed = listedCheck(machine);
        return periodsOf(machine, [...(listed === undefined ? [] : [listed]), ...(later.get(machine.line) ?? [])]);
      }),
    );
  });
}
