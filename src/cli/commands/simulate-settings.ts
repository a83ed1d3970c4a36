import { parseNumeral, shown, VeladisError } from "../../core/index";
import { multiplierOfText, type TripSettings } from "../../device/index";
import type { TripCommand, TripCommandName } from "../../trip/index";
import { writtenAs } from "../delimited/written-as";
import type { CsvLevelsOptions } from "../input/csv-levels";
import type { SeriesSettings } from "../input/read-series";
import type { Begins } from "../input/time-column";
import type { ParsedOptions } from "../options/option-row";
import { parts, requireOption } from "../options/option-values";
import { relayOption, switchSettings, timerResets } from "../options/trip-options";
import { countedFrom } from "../print/clock-time";
import type { simulatePage } from "./simulate-page";

/** What `simulate` is given. */
export type GivenHistory = ParsedOptions<typeof simulatePage.options>;

/** The relay of a switch that none was told of: it fails to the safe side, and its contact is printed only when asked for. */
const RELAY = "normally open, normally energised";

/** Refuses options of a vote where there is none. */
export function requireNoVote({ values }: GivenHistory): void {
  const name = (["bad-channel", "alert", "alert-delay"] as const).find((one) => values[one] !== undefined);
  if (name === undefined) return;
  throw new VeladisError("missing-option", {
    expected: `--vote such as 2oo3 beside --${name}: one channel alone has no vote`,
    received: "nothing",
  });
}

/** The commands of a list such as `"reset at 900, start at 0"`. */
export function commandsOf(list: string | undefined): TripCommand[] {
  return (list === undefined ? [] : parts(list)).map((one) => {
    const [, name, at] = /^(.+?)\s+at\s+(\S+?)(?:\s*s)?$/.exec(one) ?? [];
    if (name === undefined || at === undefined) {
      throw new VeladisError("syntax", { expected: 'commands such as "reset at 900"', received: shown(one) });
    }
    return { do: name as TripCommandName, time: parseNumeral(at, "a time of a command in s from the first row") };
  });
}

/** The delays that are tried, in s. */
export function delaysOf(given: GivenHistory): number[] {
  return parts(requireOption(given, "delay")).map((one) => parseNumeral(one, "an on-delay in s"));
}

/** The settings that the options state, without the delay; where there is none, no timer starts over. */
export function settingsOf(given: GivenHistory): Omit<TripSettings, "onDelay"> {
  const { values } = given;
  const relay = relayOption(values.relay ?? RELAY);
  const settings = switchSettings(given);
  const hasTimer = delaysOf(given).some((one) => one !== 0);
  return {
    ...settings,
    timerResets: timerResets[hasTimer ? requireOption(given, "timer-resets") : (values["timer-resets"] ?? "threshold")],
    sensorFault: (values["sensor-fault"] ?? "alarm") as TripSettings["sensorFault"],
    startInhibit: parseNumeral(values.inhibit, "an inhibit time in s"),
    ...(values.multiplier !== undefined && { multiplier: multiplierOfText(values.multiplier) }),
    contact: relay.contact as TripSettings["contact"],
    coil: relay.coil as TripSettings["coil"],
  };
}

/** How the rows of the file are read. */
export function seriesSettings({
  values,
}: GivenHistory): Omit<SeriesSettings, "file"> & Pick<CsvLevelsOptions, "times"> {
  const { every, times } = values;
  const isSkipped = values["skip-bad"];
  const contradicts = times !== undefined ? "--times" : isSkipped ? "--skip-bad" : undefined;
  if (every !== undefined && contradicts !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: `${contradicts} with a column of times: levels that are --every so many seconds apart ${isSkipped ? "would move in time behind one that is left out" : "have none"}`,
      received: "both",
    });
  }
  const ofVote =
    "a row in which one channel has no level has those of the others; --sensor-fault takes an empty cell as a fault";
  const cannot = "levels are evenly spaced, so none can be left out: those behind it would move in time";
  return {
    written: writtenAs(values),
    skipBad:
      values.vote !== undefined
        ? { cannot: ofVote }
        : every !== undefined
          ? { cannot }
          : isSkipped
            ? "given"
            : "not given",
    ...(times !== undefined && { times }),
  };
}

/**
 * Refuses commands that lie before the history or behind it, with what their times count from.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireInHistory(
  commands: readonly TripCommand[],
  times: Float64Array,
  begins: Begins | undefined,
): void {
  const end = times[times.length - 1] as number;
  const other = commands.find(({ time: at }) => at < 0 || at > end);
  if (other === undefined) return;
  const start = begins?.by === "file" ? begins.seconds : 0;
  const isOfFile = start !== 0 && other.time >= start && other.time <= start + end;
  throw new VeladisError("out-of-range", {
    expected: `commands between 0 s and ${end} s: their times are ${countedFrom(begins)}`,
    received: `one at ${other.time} s${isOfFile ? `, which in the file is ${Number((other.time - start).toPrecision(12))} s from the first row` : ""}`,
  });
}

/** The longest time between two levels that is no gap, where one was given. */
export function longestGapOf({ values }: GivenHistory): number | undefined {
  const written = values["longest-gap"];
  if (written === undefined) return undefined;
  if (values.every === undefined) return parseNumeral(written, "a longest time between two levels in s");
  throw new VeladisError("out-of-range", {
    expected: "--longest-gap with a column of times: levels that are --every so many seconds apart have no gaps",
    received: "both",
  });
}
