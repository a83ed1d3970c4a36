import type { TripRules, TripSettings } from "../../device/index";
import { significant } from "../../reading/index";
import type { VotedCommand } from "../../trip/index";
import { labelled } from "./labelled";
import { secondsText, type TimeText } from "./simulation-text";

/** A setting by its name, in words. */
export type SettingRow = readonly [name: string, text: string];

const WINDOW = "from the beginning and from each start";

/** Contact and coil, those that nobody gave too. */
export function relayText({ contact, coil }: Pick<TripSettings, "contact" | "coil">, isGiven: boolean): string {
  return `contact ${contact}, coil ${coil}${isGiven ? "" : " (not given)"}`;
}

/** What a sensor fault does. */
export function sensorFaultText(word: string, isGiven: boolean): string {
  return isGiven ? word : "not given: a cell without a level is refused";
}

/** The start inhibit. */
export function inhibitText({ inhibit }: TripRules): string {
  return inhibit > 0 ? `no trip for ${secondsText(inhibit)} s ${WINDOW}` : "none";
}

/** The multiplier of a threshold, or of each that is tried. */
export function multiplierText({ factor, multiplied, threshold, type }: TripRules, isEach = false): string {
  if (factor === 1) return "none";
  const meanwhile = isEach
    ? "each threshold times as much"
    : `threshold ${significant(factor * threshold.value, 4)} ${type}`;
  return `${factor} for ${secondsText(multiplied)} s ${WINDOW}: ${meanwhile} meanwhile`;
}

/** What is done meanwhile, each with its time; a bypass of one channel names it. */
export function commandsText(commands: readonly VotedCommand[], timeText: TimeText): string {
  if (commands.length === 0) return "none";
  return commands
    .map(({ do: name, channel, time }) => `${name}${channel === undefined ? "" : ` ${channel}`} at ${timeText(time)}`)
    .join(", ");
}

/** The settings in force, a row each. */
export function settingRows(rows: readonly SettingRow[]): string {
  return `\nsettings\n${rows.map(([name, text]) => labelled(`  ${name}`, [text], 16)).join("")}`;
}
