import { VeladisError } from "../../core/index";
import { type Amplitude, type AmplitudeType, format, parsedType } from "../../reading/index";
import { type Scheme, schemesFor, type Verdict } from "../../severity/index";
import type { Band } from "../../signal/index";
import { type UnitSymbol, units } from "../../units/index";
import { isReached } from "../options/fail-from";
import { judgeOf } from "../options/judge-of";
import { statedScheme } from "../options/named-scheme";
import { oneSpeed, withSpeed } from "../options/one-speed";
import { judgementText } from "../print/judgement-text";
import { tableNotes } from "../print/table-notes";

/** The schemes that are to judge the levels of a record. */
export interface RecordJudge {
  /** What the limits of the schemes are written in: the record is measured in these, so that nothing is converted. */
  readonly targets: readonly AmplitudeType[];
  /** The band that the schemes ask for; of several the widest. */
  readonly band: Band | undefined;
  judgement(
    levels: readonly Amplitude[],
    band: Band,
    settings: {
      readonly digits: number;
      readonly colour: boolean;
      readonly full: boolean;
      /** The zone from which the exit code tells it, if any. */
      readonly failFrom: Parameters<typeof isReached>[0];
      /** What else to know of the levels. */
      readonly cautions?: readonly string[];
    },
  ): { readonly judgement: Verdict; readonly cautions: readonly string[]; readonly text: string };
}

/**
 * What to measure for a scheme: what its limits are written in, RMS where it has that beside peaks of one quantity.
 *
 * A scheme that prints peaks beside RMS means 1.414 times the RMS value, not the crests of a waveform.
 */
function measuredTypes({ classes }: Scheme): AmplitudeType[] {
  const types = [...new Set(classes.flatMap(({ criteria }) => criteria.map(({ as }) => as)))];
  const parsed = types.map((as) => ({ as, ...parsedType(as) }));
  return parsed
    .filter(
      ({ detector, quantity }) =>
        detector === "rms" || !parsed.some((other) => other.quantity === quantity && other.detector === "rms"),
    )
    .map(({ as }) => as);
}

/** What to measure for several schemes, one type for each quantity and detector. */
function typesFor(schemes: readonly Scheme[]): AmplitudeType[] {
  const found = new Map<string, AmplitudeType>();
  for (const as of schemes.flatMap(measuredTypes)) {
    const { quantity, detector } = parsedType(as);
    const key = `${quantity} ${detector}`;
    if (!found.has(key)) found.set(key, as);
  }
  return [...found.values()];
}

/** The band that holds those of all schemes; undefined where none is known. */
function widestBand(schemes: readonly Scheme[]): Band | undefined {
  const bands = schemes.flatMap(({ band }) => (band === null ? [] : [band]));
  if (bands.length === 0) return undefined;
  return [Math.min(...bands.map(([low]) => low)), Math.max(...bands.map(([, high]) => high))];
}

/** What a verdict of a part of a scheme's band leaves out. */
const LEFT_OUT = "what lies outside of it is not in the level, so that the machine's may be higher and its zone worse";

/** Whether a band holds the one that a scheme asks for. */
function holdsBand([low, high]: Band, asks: Band | null): boolean {
  return asks === null || (low <= asks[0] && high >= asks[1]);
}

function partRefused(band: Band, asks: Band): VeladisError {
  return new VeladisError("unknown-option", {
    expected: `a band that holds the ${asks[0]} to ${asks[1]} Hz that the scheme asks for beside --fail-from: a level of less is no more than a lower bound`,
    received: `${band[0]} to ${band[1]} Hz`,
    option: "band",
  });
}

function hertzText([low, high]: readonly [number, number]): string {
  const short = (one: number): string => String(Number(one.toPrecision(4)));
  return low === high ? short(low) : `${short(low)} to ${short(high)}`;
}

/** What a record is judged by. */
interface JudgedRecord {
  readonly unit: UnitSymbol;
  /** The scheme that is named, or limits that are given in its place. */
  readonly scheme: string | Scheme | undefined;
  readonly machine: string;
  readonly confirmed: readonly Scheme[] | undefined;
  /** The reading with the machine stopped. */
  readonly background: string | undefined;
  /** The running speed in hertz, where it is told beside the machine. */
  readonly speed: number | undefined;
}

/**
 * The judge of a machine's record, by the scheme that is named, else by all that the machine's facts admit.
 *
 * @throws {@link VeladisError} `missing-fact` for schemes of shaft vibration and samples that are no displacement, and
 *   all of {@link statedScheme} and {@link schemesFor}
 */
export async function recordJudge({
  unit,
  scheme: name,
  machine: words,
  confirmed,
  background,
  speed: told,
}: JudgedRecord): Promise<RecordJudge> {
  const speed = oneSpeed(told, words);
  const machine = withSpeed(words, told);
  const scheme = typeof name === "object" ? name : await statedScheme(name, machine, confirmed);
  const all = confirmed === undefined ? {} : { schemes: confirmed };
  const { quantity } = units[unit];
  const place = quantity === "displacement" ? "either" : "housing";
  const schemes = scheme === undefined ? schemesFor(machine, { place, ...all }).map((one) => one.scheme) : [scheme];
  const [first] = schemes as [Scheme, ...Scheme[]];
  if (quantity !== "displacement" && schemes.every(({ place }) => place === "shaft")) {
    throw new VeladisError("missing-fact", {
      expected: `samples of the shaft's displacement against its housing, as ${first.standard} needs`,
      received: `samples of ${quantity}, in ${unit}`,
    });
  }
  const targets = typesFor(schemes);
  const judge = judgeOf({
    ...{ scheme, schemes: confirmed, machine, strict: false },
    ...(background !== undefined && { background }),
  });
  return {
    targets,
    band: widestBand(schemes),
    judgement: (levels, band, settings) => {
      const measured = targets.map((as) => levels.find(({ unit, detector }) => `${unit} ${detector}` === as));
      const judgement = judge(measured.filter((level) => level !== undefined));
      const asks = judgement.band;
      const other = asks !== null && (asks[0] !== band[0] || asks[1] !== band[1]);
      const isPart = !holdsBand(band, asks);
      // a level that reaches the zone already does so whatever else there is
      if (isPart && settings.failFrom !== undefined && !isReached(settings.failFrom, [judgement])) {
        throw partRefused(band, asks as Band);
      }
      const cautions = [
        ...(other
          ? [
              `the scheme asks for a band of ${asks[0]} to ${asks[1]} Hz, the level is from ${band[0]} to ${band[1]} Hz${isPart ? `: ${LEFT_OUT}` : ""}`,
            ]
          : []),
        ...(speed !== undefined && (speed[0] < band[0] || speed[1] > band[1])
          ? [
              `the running speed, ${hertzText(speed)} Hz, lies outside the band: what vibrates at it is not in the level, so that the machine's may be higher and its zone worse`,
            ]
          : []),
        ...(judgement.judged.detector === "pk"
          ? ["the peak is a crest of the waveform; the scheme may mean 1.414 times the RMS value, which is less"]
          : []),
        ...(settings.cautions ?? []),
      ];
      const written = format(judgement.judged, { digits: settings.digits });
      return {
        judgement,
        cautions,
        text: judgementText(judgement, { ...settings, written, cautions, notes: tableNotes(schemes) }),
      };
    },
  };
}
