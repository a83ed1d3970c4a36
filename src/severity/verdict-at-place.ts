import { VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import type { AdmittedMachines } from "./admitted-machines";
import { possibleOf, worstFirst } from "./combined-judgements";
import type { Judgement } from "./judgement";
import { judgementIn } from "./judgement-in";
import type { Zone } from "./kinds";

/** What the schemes for one place say together. */
export interface PlaceVerdict {
  /** Worst first. */
  readonly judgements: readonly Judgement[];
  readonly possible: readonly Zone[];
  /** The zones in few words, without the kind of scheme. */
  readonly short: string;
  readonly headline: string;
  readonly word: string;
}

const unreadable: readonly string[] = ["missing-frequency", "not-a-sine", "missing-fact"];

/** A scheme that cannot judge such a reading. */
interface Unread {
  readonly standard: string;
  readonly refusal: VeladisError;
}

/** The judgements by all schemes for a place, and the first scheme that cannot judge such a reading. */
function judgedAt(
  { machines }: AdmittedMachines,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): [judgements: Judgement[], unread: Unread | undefined] {
  const judgements: Judgement[] = [];
  let unread: Unread | undefined;
  for (const machine of machines) {
    try {
      judgements.push(judgementIn(machine, readings, crestFactor));
    } catch (error) {
      if (!(error instanceof VeladisError) || !unreadable.includes(error.code)) throw error;
      unread ??= { standard: machine.scheme.standard, refusal: error };
    }
  }
  return [judgements, unread];
}

function shortOf(zones: readonly Zone[], isOpen: boolean): string {
  const [best, worst] = [zones[0] as string, zones.at(-1) as string];
  return zones.length === 1 ? best : isOpen ? `${best} or worse` : `${best} to ${worst}`;
}

function headlineOf({ kind }: Judgement, short: string, isOne: boolean): string {
  if (kind === "zones") return `zone ${short}`;
  return kind === "acceptance" && !isOne ? "pass or fail, not decided" : short;
}

/**
 * The verdict of all schemes for a place together.
 *
 * @throws {@link VeladisError} the first refusal where no scheme can judge such a reading
 */
export function verdictAtPlace(
  place: AdmittedMachines,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): PlaceVerdict {
  const [judgements, unread] = judgedAt(place, readings, crestFactor);
  const sorted = worstFirst(judgements);
  const [first] = sorted;
  if (first === undefined) throw unread?.refusal;
  const found = possibleOf(sorted);
  // a scheme that could not judge leaves all open that is worse
  const possible = unread === undefined ? found : first.zones.slice(first.zones.indexOf(found[0] as Zone));
  const isOpen = unread !== undefined || sorted.some((one) => one.headline.endsWith("or worse"));
  const short = shortOf(possible, isOpen);
  const { deciding } = place;
  const depends = sorted.length > 1 && possible.length > 1 && deciding.length > 0;
  return {
    judgements: sorted,
    possible,
    short,
    headline: headlineOf(first, short, possible.length === 1),
    word: depends
      ? `state the ${deciding.join(" and the ")}`
      : unread !== undefined && possible.length > 1
        ? `${unread.standard} cannot judge this reading`
        : first.word,
  };
}
