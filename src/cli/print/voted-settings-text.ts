import type { ChannelSettings, TripRules } from "../../device/index";
import { significant } from "../../reading/index";
import type { VotedCommand, VotedTripSettings } from "../../trip/index";
import { secondsText, type TimeText } from "./simulation-text";
import {
  commandsText,
  inhibitText,
  multiplierText,
  relayText,
  type SettingRow,
  sensorFaultText,
  settingRows,
} from "./switch-rows";

/** What a vote was told, in words where it is no setting of its own. */
export interface VotedTold {
  readonly settings: VotedTripSettings;
  readonly commands: readonly VotedCommand[];
  /** The rules of every channel; all are set alike. */
  readonly rules: TripRules;
  /** Those of every alert, where the vote counts them. */
  readonly alert?: TripRules;
  /** Which of these options were given. */
  readonly given: Readonly<Record<"relay" | "sensor-fault" | "bad-channel" | "timer-resets", boolean>>;
  /** The columns that were read. */
  readonly columns: string;
  /** What the levels are written in, and how they follow one another. */
  readonly levels: string;
  readonly longestGap: string;
  /** What times count from. */
  readonly times: string;
  readonly timeText: TimeText;
}

function delayText({ onDelay }: TripRules, timerResets: string): string {
  return onDelay > 0 ? `${secondsText(onDelay)} s; starts over ${timerResets}` : "0 s: trips at once";
}

function alertRows(alert: TripRules | undefined, { timerResets }: ChannelSettings): SettingRow[] {
  if (alert === undefined) return [];
  return [
    [
      "alert",
      `${significant(alert.threshold.value, 4)} ${alert.type}: clears below ${significant(alert.reset.value, 4)}`,
    ],
    ["alert delay", delayText(alert, timerResets)],
  ];
}

/** Every setting in force, those at their default too. */
export function votedSettingsText(told: VotedTold): string {
  const { settings, commands, rules, alert, given, timeText } = told;
  const [channel] = Object.values(settings.channels) as [ChannelSettings];
  const { threshold, reset, type, offDelay } = rules;
  return settingRows([
    ["vote", settings.vote],
    ["channels", `${Object.keys(settings.channels).join(", ")}; all with the settings below`],
    [
      "bad channel",
      given["bad-channel"] || channel.sensorFault === "bad"
        ? settings.badChannel
        : "not given: no sensor fault makes a channel bad",
    ],
    ["threshold", `${significant(threshold.value, 4)} ${type}`],
    ["hysteresis", `${channel.hysteresis}: clears below ${significant(reset.value, 4)} ${type}`],
    ["on-delay", delayText(rules, channel.timerResets)],
    ["off-delay", `${secondsText(offDelay)} s`],
    ...alertRows(alert, channel),
    [
      "latch",
      settings.latching
        ? "behind the vote: a trip stays until it is reset by hand"
        : "non-latching: a trip clears by itself",
    ],
    ["relay", relayText(settings, given.relay)],
    ["sensor fault", sensorFaultText(channel.sensorFault, given["sensor-fault"])],
    ["inhibit", inhibitText(rules)],
    ["multiplier", multiplierText(rules)],
    ["commands", commandsText(commands, timeText)],
    ["columns", told.columns],
    ["levels", told.levels],
    ["times", told.times],
    ["longest gap", told.longestGap],
  ]);
}
