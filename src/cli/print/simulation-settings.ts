import type { TripSettings } from "../../device/index";
import { significant } from "../../reading/index";
import type { TripCommand } from "../../trip/index";
import { hasThresholds, type Simulation, secondsText, type TimeText } from "./simulation-text";
import { commandsText, inhibitText, multiplierText, relayText, sensorFaultText, settingRows } from "./switch-rows";

/** What a simulation was told besides the settings of the switch, in words. */
export interface SettingsTold {
  readonly settings: Omit<TripSettings, "onDelay">;
  readonly commands: readonly TripCommand[];
  /** Whether contact and coil were given. */
  readonly hasRelay: boolean;
  /** Whether it was given what a sensor fault does. */
  readonly hasSensorFault: boolean;
  /** Whether it was given when the on-delay starts over. */
  readonly hasTimerResets: boolean;
  /** The columns that were read. */
  readonly columns: string;
  /** What the levels are written in, and how they follow one another. */
  readonly levels: string;
  readonly longestGap: string;
  /** What times count from. */
  readonly times: string;
  readonly timeText: TimeText;
  readonly excursions: boolean;
}

/** Whether any of the delays that are tried takes time, so that there is a timer that can start over. */
export function hasTimer(simulations: readonly Pick<Simulation, "onDelay">[]): boolean {
  return simulations.some(({ onDelay }) => onDelay > 0);
}

function delayText(simulations: readonly Simulation[], { settings, hasTimerResets }: SettingsTold): string {
  const delays = [...new Set(simulations.map(({ onDelay }) => `${secondsText(onDelay)} s`))];
  const all = delays.length > 1 ? `${delays.join(", ")}, each tried` : `${delays[0]}`;
  if (hasTimer(simulations)) return `${all}; starts over ${settings.timerResets}`;
  return `${all}: trips at once${hasTimerResets ? "; no timer, so --timer-resets has no effect" : ""}`;
}

/** The thresholds that are tried, in their unit. */
export function thresholdsText(simulations: readonly Pick<Simulation, "logic">[]): string {
  const all = new Set(simulations.map(({ logic: { rules } }) => significant(rules.threshold.value, 4)));
  return `${[...all].join(", ")} ${simulations[0]?.logic.rules.type}`;
}

/** Every setting in force, those at their default too. */
export function settingsText(simulations: readonly Simulation[], told: SettingsTold): string {
  const { settings, commands, hasRelay, hasSensorFault } = told;
  const [{ logic }] = simulations as [Simulation];
  const { reset, type } = logic.rules;
  const { offDelay = 0, latching } = settings;
  const isEach = hasThresholds(simulations) ? ", each tried" : "";
  const resets = [...new Set(simulations.map(({ logic: { rules } }) => significant(rules.reset.value, 4)))];
  const ignored = latching && offDelay > 0 ? ", of no effect: the output latches" : "";
  return settingRows([
    ["threshold", `${thresholdsText(simulations)}${isEach}`],
    [
      "hysteresis",
      `${settings.hysteresis}: clears below ${isEach ? resets.join(", ") : significant(reset.value, 4)} ${type}`,
    ],
    ["on-delay", delayText(simulations, told)],
    ["off-delay", `${secondsText(offDelay)} s${ignored}`],
    ["latch", latching ? "latching: a trip stays until it is reset by hand" : "non-latching: a trip clears by itself"],
    ["relay", relayText(settings, hasRelay)],
    ["sensor fault", sensorFaultText(settings.sensorFault, hasSensorFault)],
    ["inhibit", inhibitText(logic.rules)],
    ["multiplier", multiplierText(logic.rules, isEach !== "")],
    ["commands", commandsText(commands, told.timeText)],
    ["columns", told.columns],
    ["levels", told.levels],
    ["times", told.times],
    ["longest gap", told.longestGap],
    ["excursions", told.excursions ? "told" : "not told"],
  ]);
}
