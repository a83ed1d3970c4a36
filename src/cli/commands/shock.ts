import { cautions, parseNumeral, VeladisError } from "../../core/index";
import { parseAmplitude, significant } from "../../reading/index";
import {
  type Immunity,
  type ImmunitySettings,
  type LevelDetector,
  type ShockResponse,
  shockImmunity,
  shockResponse,
} from "../../shock/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { parts, requireOption } from "../options/option-values";
import { timerResets } from "../options/trip-options";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { labelled } from "../print/labelled";
import { secondsText } from "../print/simulation-text";
import { numberColumn, textTable } from "../print/text-table";
import type { shockPage } from "./shock-page";

type Given = ParsedOptions<typeof shockPage.options>;

function detectorOf(given: Given): LevelDetector {
  const kind = requireOption(given, "detector");
  const seconds = parseNumeral(requireOption(given, "time-constant"), "a time constant in s");
  return kind === "rms" ? { kind, averaging: seconds } : { kind, decay: seconds };
}

/** The corner of a switch that measures velocity; one that measures acceleration has none that counts here. */
function highPassOf(given: Given, threshold: string): Pick<ImmunitySettings, "highPass"> {
  if (parseAmplitude(threshold).quantity === "velocity") {
    return { highPass: parseNumeral(requireOption(given, "high-pass"), "a high-pass corner in Hz") };
  }
  if (given.values["high-pass"] === undefined) return {};
  throw new VeladisError("out-of-range", {
    expected: "--high-pass beside a threshold in velocity; with one in acceleration no corner is reckoned with",
    received: threshold,
  });
}

function settingsOf(given: Given): ImmunitySettings {
  const threshold = requireOption(given, "threshold");
  return {
    threshold: threshold as ImmunitySettings["threshold"],
    hysteresis: requireOption(given, "hysteresis") as ImmunitySettings["hysteresis"],
    onDelay: parseNumeral(requireOption(given, "delay"), "an on-delay in s"),
    timerResets: timerResets[requireOption(given, "timer-resets")],
    detector: detectorOf(given),
    ...highPassOf(given, threshold),
  };
}

function settingLines({ threshold, hysteresis, onDelay, timerResets, detector, highPass }: ImmunitySettings): string {
  const shown =
    detector.kind === "rms"
      ? `RMS of an exponential average, time constant ${detector.averaging} s`
      : `peak, decaying with a time constant of ${detector.decay} s`;
  return `${labelled("switch", [
    `threshold ${threshold}, hysteresis ${hysteresis}, on-delay ${secondsText(onDelay)} s that starts over ${timerResets}`,
    shown + (highPass === undefined ? "" : `; velocity behind a second-order high-pass at ${highPass} Hz`),
  ])}\n`;
}

/** Three digits, rounded towards zero: what is told to be ridden out is ridden out. */
function atMost(value: number): string {
  if (value === 0) return "0";
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  return significant(Math.floor(value / step) * step);
}

function immunityText({ shocks, bursts }: Immunity, onDelay: number, type: string): string {
  const most = (limit: Immunity["shocks"][number]["largest"]): string =>
    limit === null ? "above 10 000" : atMost(limit.value);
  const delayed = `with ${secondsText(onDelay)} s, g pk`;
  return (
    textTable(
      [numberColumn("half-sine, ms"), numberColumn("largest without delay, g pk"), numberColumn(delayed)],
      shocks.map((one) => [`${one.milliseconds}`, most(one.withoutDelay), most(one.largest)]),
    ) +
    "\n" +
    textTable(
      [
        numberColumn(`burst, ${type}`),
        numberColumn("x threshold"),
        numberColumn("longest without delay, s"),
        numberColumn("with it, s"),
      ],
      bursts.map((one) => [
        significant(one.level.value),
        `${one.timesThreshold}`,
        atMost(one.withoutDelay),
        atMost(one.longest),
      ]),
    ) +
    "\nthe largest shock and the longest burst that do not trip, rounded down\n"
  );
}

/** A level that may stay below the threshold: then rounded down, so that it never looks as if it reached it. */
const shownBelow = (value: number, isBelow: boolean): string => (isBelow ? atMost(value) : significant(value));

function responseText(found: ShockResponse, onDelay: number): string {
  const { shape, milliseconds, peak, highest, timesThreshold, above, trips, margin } = found;
  const verdict = trips
    ? `trips: the level is up for ${significant(above)} s, the on-delay is ${secondsText(onDelay)} s`
    : above === 0
      ? "no trip: the level does not reach the threshold"
      : `no trip: the level is up for ${significant(above)} s, ${significant(margin as number)} s less than the on-delay`;
  return (
    `${verdict}\n` +
    labelled("shock", [`${shape}, ${significant(peak.value)} ${peak.unit} ${peak.detector} for ${milliseconds} ms`]) +
    labelled("shows", [
      `at most ${shownBelow(highest.value, above === 0)} ${highest.unit} ${highest.detector}, ${shownBelow(timesThreshold, above === 0)} times the threshold`,
    ])
  );
}

/** Knocks on a vibration switch. */
export async function printShock(given: Given, io: Io): Promise<number> {
  const { values } = given;
  const running = requireOption(given, "running");
  const settings = settingsOf(given);
  const { onDelay } = settings;
  const text = (said: string, found: Immunity | ShockResponse, explained: readonly Explained[]): string =>
    `${said}\n${settingLines(settings)}${assumptionLines(found)}` +
    `${values.explain ? explainedText(explained) : ""}${cautionsText()}`;
  const told = (explained: readonly Explained[]): object => ({
    ...{ settings, running, cautions },
    ...explainedSteps(values.explain, ...explained),
  });
  if (values.shock === undefined) {
    if (values.shape !== undefined) {
      throw new VeladisError("missing-option", {
        expected: '--shock with its peak, such as "20 g pk", beside --shape: the largest shocks are half-sines',
        received: "nothing",
      });
    }
    const milliseconds =
      values.length === undefined ? undefined : parts(values.length).map((one) => parseNumeral(one, "a length in ms"));
    const found = shockImmunity(settings, running, milliseconds === undefined ? {} : { milliseconds });
    const explained = [
      ...found.shocks.flatMap(({ milliseconds: length, largest }): Explained[] =>
        largest === null ? [] : [[`largest of ${length} ms`, largest]],
      ),
      ...found.bursts.map(({ level, timesThreshold }): Explained => [`burst of ${timesThreshold} x threshold`, level]),
    ];
    const { unit, detector } = parseAmplitude(settings.threshold as string);
    await io.out(
      values.json
        ? jsonLine("immunity", found, told(explained))
        : text(immunityText(found, onDelay, `${unit} ${detector}`), found, explained),
    );
    return exitCodes.done;
  }
  const found = shockResponse(settings, running, {
    peak: values.shock,
    milliseconds: parseNumeral(requireOption(given, "length"), "a length of the shock in ms"),
    shape: requireOption(given, "shape"),
  });
  const explained: readonly Explained[] = [["highest level shown", found.highest]];
  await io.out(
    values.json
      ? jsonLine("shock response", found, told(explained))
      : text(responseText(found, onDelay), found, explained),
  );
  return exitCodes.done;
}
