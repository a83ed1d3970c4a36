import { VeladisError } from "../../core/index";
import type { ChannelSettings } from "../../device/index";
import { TripLogic, VotedTrip, voteAlternatives } from "../../trip/index";
import { columnsText } from "../input/column-read";
import type { Io } from "../input/io";
import { seriesData, seriesText } from "../input/series-told";
import { exitCodes } from "../print/exit-codes";
import { type VotedAnswer, votedLine, votedText } from "../print/voted-answer";
import { gapsOf, hasFaults, historyFile, levelsText, writtenOf } from "./history-file";
import { type GivenHistory, longestGapOf, requireInHistory } from "./simulate-settings";
import { voteTold } from "./vote-settings";

/** The names of the channels: the headings of their columns. */
function namesOf(headings: readonly string[]): readonly string[] {
  if (new Set(headings).size === headings.length && !headings.includes("vote")) return headings;
  throw new VeladisError("out-of-range", {
    expected: 'headings that name the channels apart, none of them "vote"',
    received: headings.join(", "),
  });
}

/** The highest level of each row; a sensor fault where any channel has one. */
function highestOf(levels: readonly Float64Array[]): Float64Array {
  return (levels[0] as Float64Array).map((_, i) => Math.max(...levels.map((one) => one[i] as number)));
}

/** Carries recorded histories of several channels through their vote. */
export async function simulateVote(given: GivenHistory, io: Io): Promise<number> {
  const { values } = given;
  const told = voteTold(given);
  const from = writtenOf(given).as;
  const longest = longestGapOf(given);
  const [column, ...others] = told.columns;
  // Settings are read before the file, so that a slip in them shows at once.
  new VotedTrip(told.named(told.columns));
  const { name, history, dt } = await historyFile(given, io, { column, others });
  const { columns } = history.told;
  const headings = [columns.level, ...(columns.others ?? [])].map((one) => one?.heading ?? "");
  const names = namesOf(headings);
  const settings = told.named(names);
  const { commands } = told;
  if (values.every === undefined) requireInHistory(commands, history.times, history.begins);
  const written = writtenOf(given);
  const levels = [history.levels, ...history.others];
  const histories = Object.fromEntries(names.map((one, i) => [one, levels[i] as Float64Array]));
  const trip = new VotedTrip(settings);
  const events = trip.run(histories, dt, { ...written, commands, excursions: values.excursions });
  const { latching, contact, coil } = settings;
  // all channels are set alike, so one of them tells what holds for each
  const [one] = Object.values(settings.channels) as [ChannelSettings];
  const asOne = { ...one, latching, contact, coil };
  const [alert] = Object.values(settings.alerts ?? {});
  const answer: VotedAnswer = {
    file: name,
    history,
    histories,
    read: seriesData(history.told),
    from,
    settings,
    commands,
    rules: new TripLogic(asOne).rules,
    ...(alert && { alert: new TripLogic({ ...asOne, ...alert }).rules }),
    events,
    end: trip.status,
    alternatives: voteAlternatives(settings, histories, dt, { ...written, commands }),
    assumed: trip.assumed,
    given: {
      relay: values.relay !== undefined,
      "sensor-fault": hasFaults(given),
      "bad-channel": values["bad-channel"] !== undefined,
      "timer-resets": values["timer-resets"] !== undefined,
    },
    isGapGiven: longest !== undefined,
    gaps: gapsOf(given, asOne, highestOf(levels), history.times),
    columns: columnsText(columns),
    levels: levelsText(given),
  };
  io.err(seriesText(history.told, values.json));
  await io.out(values.json ? votedLine(answer) : votedText(answer));
  return exitCodes.done;
}
