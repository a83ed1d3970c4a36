import type { TripSettings } from "../device/index";
import type { TripCommand, TripCommandName } from "./trip-commands";

/** What can keep a level at the threshold from setting the output, in words. */
export const tripMasks = /* @__PURE__ */ Object.freeze({
  "on-delay": "the level must stay up for so long",
  "start inhibit": "no trip is set for so long from power-up and from each start",
  multiplier: "threshold and reset level are higher for so long from power-up and from each start",
  bypass: "new trips are blocked by a command",
  "power loss": "without power no trip is set",
  "sensor fault": "a fault that is set to hold or bad is no level above the threshold",
} as const);

/** The name of a mask: a key of {@link tripMasks}. */
export type TripMask = keyof typeof tripMasks;

/** Settings and what is done while a history runs. */
interface Masked {
  readonly settings: TripSettings;
  readonly commands: readonly TripCommand[];
}

const without = (commands: Masked["commands"], ...names: readonly TripCommandName[]): Masked["commands"] =>
  commands.filter(({ do: name }) => !names.includes(name));

/** The same without one mask. */
export function unmasked({ settings, commands }: Masked, mask: TripMask): Masked {
  switch (mask) {
    case "on-delay":
      return { settings: { ...settings, onDelay: 0 }, commands };
    case "start inhibit":
      return { settings: { ...settings, startInhibit: 0 }, commands };
    case "multiplier": {
      const { multiplier: _, ...rest } = settings;
      return { settings: rest, commands };
    }
    case "bypass":
      return { settings, commands: without(commands, "bypass on", "bypass off") };
    case "power loss":
      return { settings, commands: without(commands, "power lost", "power back") };
    default:
      return { settings: { ...settings, sensorFault: "alarm" }, commands };
  }
}

/** Whether a mask can have hidden something: settings that are in force, commands that were given, faults that there were. */
export function isMaskInForce(
  mask: TripMask,
  { onDelay, startInhibit = 0, multiplier, sensorFault }: TripSettings,
  commands: Masked["commands"],
  hasFaults: boolean,
): boolean {
  const has = (wanted: TripCommandName): boolean => commands.some(({ do: name }) => name === wanted);
  const inForce: Readonly<Record<TripMask, boolean>> = {
    "on-delay": onDelay > 0,
    "start inhibit": startInhibit > 0,
    multiplier: multiplier !== undefined,
    bypass: has("bypass on"),
    "power loss": has("power lost"),
    "sensor fault": hasFaults && sensorFault !== "alarm",
  };
  return inForce[mask];
}
