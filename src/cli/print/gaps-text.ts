import { significant } from "../../reading/index";
import type { LevelGap, LevelGaps } from "../../trip/index";
import { secondsText, type TimeText } from "./simulation-text";
import { dashed } from "./wrapped";

/** Gaps that are told one by one. */
const MOST = 10;

const spans = [
  ["d", 86_400, 2],
  ["h", 3600, 1],
  ["min", 60, 2],
] as const;

/** A time in the largest unit that it is worth. */
function spanText(seconds: number): string {
  const [unit, size] = spans.find(([, least, times]) => seconds >= least * times) ?? ["s", 1];
  return `${Number((seconds / size).toPrecision(3))} ${unit}`;
}

function gapText({ start: from, end: to, seconds, level, high }: LevelGap, type: string, timeText: TimeText): string {
  const before = level === null ? "the sensor fault before it" : `the level before it, ${significant(level)} ${type},`;
  const warning = level === null ? "after a sensor fault: " : "after a high level: ";
  return (
    `${high ? `warning, ${warning}` : ""}no reading for ${spanText(seconds)} from ${timeText(from)} to ${timeText(to)}; ` +
    `what happened in it is unknown, ${before} is taken to stand`
  );
}

/** The longest time that is no gap, and where it is from. */
export function longestText({ longest, median, gaps }: LevelGaps, isGiven: boolean): string {
  const from = isGiven ? "" : `, five times the median of ${secondsText(median)} s between levels`;
  return `${secondsText(longest)} s${from}${gaps.length === 0 ? "; no gap is longer" : ""}`;
}

/** The gaps of a history, those after a high level marked as warnings; nothing for none. */
export function gapsText({ longest, gaps }: LevelGaps, type: string, timeText: TimeText): string {
  if (gaps.length === 0) return "";
  const told = gaps.slice(0, MOST);
  const rest = gaps.slice(MOST);
  const high = rest.filter((gap) => gap.high).length;
  const more = rest.length === 0 ? [] : [`and ${rest.length} more, ${high} of them after a high level or a fault`];
  return `\ngaps longer than ${secondsText(longest)} s\n${dashed([...told.map((gap) => gapText(gap, type, timeText)), ...more])}`;
}
