import { cautions, counted } from "../../core/index";
import { significant } from "../../reading/index";
import type { LevelGaps } from "../../trip/index";
import { assumptionLines } from "./assumption-lines";
import { cautionsText } from "./cautions-text";
import { clockOf, clockTime, countedFrom, type Moment, timeAndClock } from "./clock-time";
import { type Explained, explainedSteps, explainedText } from "./explained";
import { gapsText, longestText } from "./gaps-text";
import { jsonLine } from "./json-line";
import { masksText } from "./masks-text";
import { hasTimer, type SettingsTold, settingsText, thresholdsText } from "./simulation-settings";
import {
  eventTable,
  hasThresholds,
  highestOf,
  runTable,
  type Simulation,
  secondsText,
  type TimeText,
} from "./simulation-text";
import { wrapped } from "./wrapped";

/** What `simulate` found, one simulation a delay. */
export interface SimulationAnswer extends Omit<SettingsTold, "longestGap" | "times" | "timeText"> {
  readonly file: string;
  /** The levels as they are written, and when the first was, where that is not at 0 s. */
  readonly history: { readonly levels: Float64Array; readonly begins?: Moment };
  /** How the levels were read, as data, and how many rows were left out. */
  readonly read: object;
  readonly leftOut: number;
  /** What the levels are written in. */
  readonly from: string;
  readonly simulations: readonly [Simulation, ...Simulation[]];
  /** Undefined where levels are evenly spaced. */
  readonly gaps: LevelGaps | undefined;
  readonly isGapGiven: boolean;
  readonly explain: boolean;
}

/** What the levels of events came by: threshold and reset level, and each event whose level was converted. */
function explainedOf({ logic, onDelay, events }: Simulation, several: boolean, each = false): Explained[] {
  const { threshold, reset } = logic.rules;
  const of = each ? `threshold ${significant(threshold.value, 4)}, ` : "";
  const which = several ? `${of}on-delay ${secondsText(onDelay)} s, ` : "";
  const ofEvents = events.flatMap(({ time, event, history }): Explained[] =>
    history === undefined ? [] : [[`${which}${event} at ${secondsText(time)} s`, { history }]],
  );
  return [[`${of}threshold`, threshold], [`${of}reset level`, reset], ...ofEvents];
}

/** The same of all on-delays that were tried: threshold and reset level are the same for all. */
function explainedOfAll(simulations: SimulationAnswer["simulations"]): Explained[] {
  const several = simulations.length > 1;
  const each = hasThresholds(simulations);
  return simulations.flatMap((one, i) => {
    const isFirst = simulations.findIndex((other) => other.logic.rules.setAt === one.logic.rules.setAt) === i;
    return explainedOf(one, several, each).slice(isFirst ? 0 : 2);
  });
}

/** What the columns of the comparison mean. */
function comparedNote(latching: boolean): string {
  const latched = latching ? "; nothing is ridden out behind a trip that latches" : "";
  return `\n${wrapped(
    `rode out: times that the level was up and fell before the on-delay had run, and the longest of them, one that is still up at the end left out; margin: how much longer that one could have lasted without a trip, - where there was one${latched}`,
  )}`;
}

/** The answer as text. */
export function simulationText(answer: SimulationAnswer): string {
  const { file, history, from, simulations, settings, hasRelay, gaps, isGapGiven, leftOut } = answer;
  const [first, ...more] = simulations;
  const { levels, begins } = history;
  const { rules } = first.logic;
  const { time } = first.status;
  const clock = begins && clockOf(begins, time);
  const timeText: TimeText = (at) => timeAndClock(secondsText(at), at, clock);
  const times = `${gaps === undefined ? "in s from the first level" : countedFrom(begins)}; so are those of commands`;
  const longestGap = gaps === undefined ? "none: evenly spaced" : longestText(gaps, isGapGiven);
  return (
    `${file}: ${counted(levels.length, "level")} over ${significant(time, 4)} s${begins ? ` from ${clockTime(begins, 0)}${begins.by === "file" ? " in the file" : ""}` : ""}, ` +
    (leftOut === 0 ? "" : `${counted(leftOut, "row")} left out, `) +
    `highest ${significant(highestOf(levels), 3)} ${from}\n` +
    `threshold ${thresholdsText(simulations)}, ` +
    (hasThresholds(simulations) ? "each tried, " : `clears below ${significant(rules.reset.value, 4)}, `) +
    `${settings.latching ? "latching" : "non-latching"}, ${hasTimer(simulations) ? `on-delay starts over ${settings.timerResets}` : "no on-delay"}\n\n` +
    (more.length > 0 || first.events.length === 0 ? runTable(simulations, clock) : "") +
    (more.length === 0 ? eventTable(first, hasRelay, clock) : "") +
    (more.length > 0 || first.events.length === 0 ? comparedNote(settings.latching) : "") +
    masksText(simulations, timeText) +
    (gaps === undefined ? "" : gapsText(gaps, rules.type, timeText)) +
    settingsText(simulations, { ...answer, longestGap, times, timeText }) +
    assumptionLines(first.logic) +
    (answer.explain ? explainedText(explainedOfAll(simulations)) : "") +
    cautionsText()
  );
}

/** The answer for one delay as a line of JSON. */
export function simulationLine(answer: SimulationAnswer, simulation: Simulation): string {
  const { file, history, from, commands, hasRelay, hasSensorFault, hasTimerResets, gaps, read } = answer;
  const { logic, settings, onDelay, events, status, unmasked, rodeOut } = simulation;
  const { begins } = history;
  const { time, state, output, coil, contact } = status;
  const { threshold, reset } = logic.rules;
  const found = {
    ...{ threshold, reset, unmasked, assumed: logic.assumed, ...(gaps && { gaps }) },
    events: begins ? events.map((event) => ({ ...event, clock: clockTime(begins, event.time) })) : events,
  };
  return jsonLine("simulation", found, {
    ...{ file, levels: history.levels.length, from, ...(begins && { begins: clockTime(begins, 0) }) },
    read,
    ...{ onDelay, settings, rodeOut },
    notGiven: Object.entries({
      relay: hasRelay,
      "sensor-fault": hasSensorFault,
      "timer-resets": hasTimerResets,
    }).flatMap(([name, isGiven]) => (isGiven ? [] : [name])),
    commands,
    timesCountFrom: gaps === undefined ? "the first level" : "the first row",
    end: { time, state, output, ...(hasRelay && { coil, contact }) },
    cautions,
    ...explainedSteps(answer.explain, ...explainedOf(simulation, false)),
  });
}
