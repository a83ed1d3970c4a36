import { parseNumeral, pointedWords } from "../../core/index";
import { type Device, storedSetpoint } from "../../device/index";
import { bandOfText } from "../../frequency/index";
import { type Amplitude, format, limitsListed } from "../../reading/index";
import { askedWarnings, fixedHertz, type Proposal, proposeSetpoints } from "../../setpoints/index";
import { parseMachine } from "../../severity/index";
import { leftOutText } from "../input/bad-rows";
import { columnsText } from "../input/column-read";
import type { Io } from "../input/io";
import { longestGapText } from "../input/longest-gap";
import { seriesData, seriesText } from "../input/series-told";
import { confirmedOption } from "../options/confirmed-option";
import { requireLimitsAlone } from "../options/limits-option";
import { namedScheme } from "../options/named-scheme";
import type { ParsedOptions, Values } from "../options/option-row";
import { sheetText } from "../options/sheet-option";
import { signalSource, vibrationOf } from "../options/signal-options";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { baselineText, proposalPlot, proposalText, storedText } from "../print/proposal-text";
import { signalsText } from "../print/signals-text";
import { requireChart, writeChart } from "./chart-file";
import { plotWidth } from "./plot-width";
import { baselineFrom } from "./setpoint-baseline";
import type { setpointsPage } from "./setpoints-page";

type GivenMachine = ParsedOptions<typeof setpointsPage.options>;
type Said = Values<typeof setpointsPage.options>;

/** A rule by its name, in capital or small letters; the library refuses what is none. */
function ruleOf(name: string): "api shaft" {
  const plain = name.trim().toLowerCase().replace(/\s+/g, " ");
  return (plain === "api shaft" ? plain : name) as "api shaft";
}

function deviceOf(values: Said): Device {
  const { step, lowest, highest, band, rounds } = values;
  const [low, high] = band === undefined ? [] : bandOfText(band);
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
function limitsOf({ limits: written, "decimal-comma": decimalComma }: Said) {
  if (written === undefined) return {};
  const { limits } = limitsListed(pointedWords(written, decimalComma), [2, 3], LIMITS);
  const [upper, lower, best] = [...limits].reverse() as [Amplitude, Amplitude, Amplitude?];
  const aside = best === undefined ? "" : ` (A/B of ${format(best)} plays no part)`;
  return { limits: { "B/C": lower, "C/D": upper, source: `limits given by the user${aside}` } };
}

/** Proposes setpoints for a machine. */
export async function printSetpoints(given: GivenMachine, io: Io): Promise<number> {
  const { values } = given;
  requireChart(values);
  requireLimitsAlone(values);
  const width = plotWidth(io, { plot: values.plot, json: values.json });
  const source = signalSource(values);
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
    ...(values.multiples !== undefined && { multiples: values.multiples }),
    ...(values.raised !== undefined && { raised: values.raised }),
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
      : storedSetpoint(vibrationOf(values.asked, source), device, hertz === undefined ? undefined : { hertz });
  const ofAsked =
    asked === undefined ? [] : askedWarnings(asked, proposed, hertz === undefined ? undefined : { hertz });
  const proposal: Proposal = { ...proposed, warnings: [...ofAsked, ...proposed.warnings] };
  const explained: Explained[] = Object.entries({ alarm: proposal.alarm, trip: proposal.trip, asked }).flatMap(
    ([name, setpoint]) => (setpoint ? [[name, setpoint.stored] as const] : []),
  );
  const statistics = typeof known === "string" || "detector" in known ? undefined : known;
  const signals = signalsText(
    explained.map(([name, level]) => [name.toUpperCase(), level as Amplitude]),
    source,
    hertz,
  );
  const own = { ...(statistics && { statistics }), ...(asked && { asked }) };
  await writeChart(values, [values.file, values.scheme, ...values.confirmed], async (theme) =>
    (await import("../../chart/index")).setpointChart({ proposal, ...own, theme }),
  );
  const signalLine = signals.trim().replace(/\s+/g, " ");
  const told = [leftOutText(read?.leftOut), longestGapText(gap)].filter((text) => text !== "");
  if (read !== undefined) io.err(seriesText(read, values.json) + (values.json ? "" : longestGapText(gap)));
  if (values.json) {
    const answer = { ...proposal, ...own };
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
      (values.plot ? `\n${proposalPlot(proposal, own, width)}` : "") +
      (values.explain ? explainedText(explained) : "") +
      cautionsText(),
  );
  return exitCodes.done;
}
