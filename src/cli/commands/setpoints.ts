import { isSignal, type SignalSource, wayOfSignal } from "../../amplitude/index";
import { parseNumeral, VeladisError } from "../../core/index";
import { type Device, storedSetpoint } from "../../device/index";
import { type Amplitude, format } from "../../reading/index";
import {
  askedWarnings,
  type Baseline,
  baseline,
  fixedHertz,
  type Proposal,
  proposeSetpoints,
} from "../../setpoints/index";
import { parseMachine } from "../../severity/index";
import { pointedWords } from "../delimited/decimal-words";
import { writtenAs } from "../delimited/written-as";
import { leftOutText } from "../input/bad-rows";
import { columnsText } from "../input/column-read";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { type LongestGap, longestGap, longestGapText } from "../input/longest-gap";
import { inputStream, namedFile } from "../input/open-file";
import { type SeriesTold, seriesData, seriesText } from "../input/series-told";
import { signalColumn } from "../input/signal-column";
import { confirmedOption } from "../options/confirmed-option";
import { limitsListed } from "../options/limits-option";
import { namedScheme } from "../options/named-scheme";
import type { ParsedOptions, Values } from "../options/option-row";
import { bandOption, requireOption } from "../options/option-values";
import { sheetText } from "../options/sheet-option";
import { signalSource, vibrationOf } from "../options/signal-options";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { baselineText, proposalText, storedText } from "../print/proposal-text";
import { signalsText } from "../print/signals-text";
import type { setpointsPage } from "./setpoints-page";

type GivenMachine = ParsedOptions<typeof setpointsPage.options>;
type Said = Values<typeof setpointsPage.options>;

/** A rule by its name, in capital or small letters; the library refuses what is none. */
function ruleOf(name: string): "api shaft" {
  const plain = name.trim().toLowerCase().replace(/\s+/g, " ");
  return (plain === "api shaft" ? plain : name) as "api shaft";
}

/** The baseline that is told, or that of a file with what is told of its rows. */
interface KnownBaseline {
  readonly known: Baseline | string | Amplitude;
  readonly read?: SeriesTold;
  readonly gap?: LongestGap;
}

/** That of sensor and loop which reads a file in such a signal; the other tells the setpoints alone. */
function sourceOf(from: string, values: Said): SignalSource {
  const way = wayOfSignal(`12 ${from}`) as keyof SignalSource;
  const told = values[way];
  return told === undefined ? {} : { [way]: told };
}

async function baselineFrom(given: GivenMachine, io: Io): Promise<KnownBaseline> {
  const { values } = given;
  const { file, times: timesAs } = values;
  if (file === undefined) return { known: vibrationOf(requireOption(given, "baseline"), signalSource(values)) };
  const written = requireOption(given, "from");
  // beside readings that are vibrations, sensor and loop tell the setpoints alone
  const source = isSignal(`12 ${written}`) ? sourceOf(written, values) : {};
  const as = signalColumn(written, source)?.type ?? written;
  const first = values["start-up"];
  const timed = first !== undefined || values.time !== undefined;
  if (!timed && timesAs !== undefined) {
    throw new VeladisError("missing-option", {
      expected: "--time or --start-up beside --times: without them no times are read",
      received: "--times alone",
    });
  }
  const from = first === undefined ? 0 : parseNumeral(first, "the end of start-up in s");
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "readings that are piped in, for --file -",
      received: "nothing",
    });
  }
  const { levels, times, told } = await csvLevels(stream, {
    file: namedFile(file) ?? "standard input",
    from: written,
    source,
    written: writtenAs(values),
    skipBad: values["skip-bad"] ? "given" : "not given",
    column: values.column,
    faults: "never",
    timed,
    time: values.time,
    ...(timesAs !== undefined && { times: timesAs }),
  });
  const known = baseline(levels, { as, ...(first !== undefined && { time: { readings: times, start: from } }) });
  const gap = timed ? longestGap(times) : undefined;
  return { known, read: told, ...(gap !== undefined && { gap }) };
}

function deviceOf(values: Said): Device {
  const { step, lowest, highest, band, rounds } = values;
  const [low, high] = band === undefined ? [] : bandOption(band);
  return {
    ...(step !== undefined && { step }),
    ...(lowest !== undefined && { lowest }),
    ...(highest !== undefined && { highest }),
    ...(rounds !== undefined && { rounds: rounds as "nearest" }),
    ...(low !== undefined && high !== undefined && { band: { lowest: { hertz: low }, highest: { hertz: high } } }),
  };
}

const LIMITS =
  '--limits with B/C and C/D, such as "4.5, 7.1 mm/s rms", or with A/B before them, such as "2.8, 4.5, 7.1 mm/s rms"';

/** The limits to set from; a limit A/B before them plays no part, and is named. */
function limitsOf({ limits: written }: Said) {
  if (written === undefined) return {};
  const { limits } = limitsListed(written, [2, 3], LIMITS);
  const [upper, lower, best] = [...limits].reverse() as [Amplitude, Amplitude, Amplitude?];
  const aside = best === undefined ? "" : ` (A/B of ${format(best)} plays no part)`;
  return { limits: { "B/C": lower, "C/D": upper, source: `limits given by the user${aside}` } };
}

/** Proposes setpoints for a machine. */
export async function printSetpoints(given: GivenMachine, io: Io): Promise<number> {
  const { values } = given;
  const { known, read, gap } = await baselineFrom(given, io);
  const words = values.machine === undefined ? undefined : pointedWords(values.machine, values["decimal-comma"]);
  const machine = words === undefined ? undefined : parseMachine(words);
  const device = deviceOf(values);
  const hertz = fixedHertz(machine);
  const schemes = await confirmedOption(values.confirmed, io, values.json, [values.scheme]);
  const proposed = proposeSetpoints({
    baseline: known,
    ...(values.scheme !== undefined && {
      scheme: values.scheme === "none" ? values.scheme : await namedScheme(values.scheme, schemes),
    }),
    ...(schemes !== undefined && { schemes }),
    ...(values.rule !== undefined && { rule: ruleOf(values.rule) }),
    ...limitsOf(values),
    ...(words !== undefined && { machine: words }),
    sensor: {
      ...(values["noise-floor"] !== undefined && { noiseFloor: values["noise-floor"] }),
      ...(values["full-scale"] !== undefined && { fullScale: values["full-scale"] }),
      ...(values.loop !== undefined && { loop: values.loop }),
    },
    device,
    k: parseNumeral(values.k, "a number of standard deviations"),
    ...(values.delay !== undefined && { onDelay: parseNumeral(values.delay, "a delay in s") }),
  });
  const asked =
    values.asked === undefined
      ? undefined
      : storedSetpoint(values.asked, device, hertz === undefined ? undefined : { hertz });
  const ofAsked =
    asked === undefined ? [] : askedWarnings(asked, proposed, hertz === undefined ? undefined : { hertz });
  const proposal: Proposal = { ...proposed, warnings: [...ofAsked, ...proposed.warnings] };
  const explained: Explained[] = Object.entries({ alarm: proposal.alarm, trip: proposal.trip, asked }).flatMap(
    ([name, setpoint]) => (setpoint ? [[name, setpoint.stored] as const] : []),
  );
  const statistics = typeof known === "string" || "detector" in known ? undefined : known;
  const signals = signalsText(
    explained.map(([name, level]) => [name.toUpperCase(), level as Amplitude]),
    signalSource(values),
    hertz,
  );
  const signalLine = signals.trim().replace(/\s+/g, " ");
  const told = [leftOutText(read?.leftOut), longestGapText(gap)].filter((text) => text !== "");
  if (read !== undefined) io.err(seriesText(read, values.json) + (values.json ? "" : longestGapText(gap)));
  if (values.json) {
    const answer = { ...proposal, ...(statistics && { statistics }), ...(asked && { asked }) };
    await io.out(
      jsonLine("proposal", answer, {
        ...(signals !== "" && { signals: signalLine }),
        ...(read && { read: { ...seriesData(read), ...(gap && { longestGap: gap }) } }),
        ...explainedSteps(values.explain, ...explained),
      }),
    );
    return exitCodes.done;
  }
  if (values.sheet !== undefined) {
    await io.out(
      sheetText(values.sheet, {
        machine: values.name ?? values.machine ?? "Machine",
        ...(statistics && { baseline: statistics }),
        proposal,
        remarks: [
          ...(asked ? [asked.effect] : []),
          ...(signals === "" ? [] : [signalLine]),
          ...told.map((text) => text.trimEnd()),
        ],
      }),
    );
    return exitCodes.done;
  }
  await io.out(
    (statistics === undefined ? "" : baselineText(statistics, read && columnsText(read.columns), read?.leftOut?.rows)) +
      (asked === undefined ? "" : `${storedText(asked)}\n`) +
      proposalText(proposal, signals) +
      (values.explain ? explainedText(explained) : "") +
      cautionsText(),
  );
  return exitCodes.done;
}
