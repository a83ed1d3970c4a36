import { parseNumeral, shown, VeladisError } from "../../core/index";
import type { OptionRow, OptionRows, Values } from "./option-row";
import { parts, requireOption } from "./option-values";

/** The settings of a vibration switch, for the commands that play them through. */
export const tripOptions = {
  threshold: {
    argument: "<reading>",
    help: "the setpoint with unit and detector; the output sets at this level or above",
    example: '"9 mm/s rms"',
  },
  hysteresis: {
    argument: "<share>",
    help: 'how far below it the level must fall to clear: a share ("0 %" for none), or an amount',
    example: '"8 %"',
  },
  delay: { argument: "<seconds>", help: "on-delay in s; 0 for none", example: "8" },
  "off-delay": {
    argument: "<seconds>",
    help: "seconds below the reset level before a non-latching output clears",
    example: "2",
    default: "0",
  },
  latching: { help: "a set output stays until it is reset by hand" },
  "non-latching": { help: "it clears by itself" },
  relay: {
    argument: "<words>",
    help: "contact and coil, to have them told",
    example: '"normally open, normally energised"',
    list: "relays",
  },
  "sensor-fault": {
    argument: "<what>",
    help: "what a sensor fault does: alarm, hold or bad",
    example: "alarm",
    list: "sensor faults",
  },
} as const satisfies OptionRows;

/** When the on-delay starts over, by the words of the option. */
export const timerResets = { threshold: "below threshold", "reset-level": "below reset level" } as const;

/** The option that says when the on-delay starts over. */
export const timerResetsRow = {
  argument: "<when>",
  help: "the on-delay starts over when the level falls below the threshold, or below the reset level",
  example: "threshold",
  values: ["threshold", "reset-level"],
} as const satisfies OptionRow & { readonly values: readonly (keyof typeof timerResets)[] };

/** What a command says of a switch, whatever its rows tell of the options. */
interface GivenSwitch {
  readonly values: Values<typeof tripOptions>;
  readonly options: Readonly<Record<keyof typeof tripOptions, OptionRow>>;
}

/** The settings that the options state, without the on-delay; whether the output latches has no default. */
export function switchSettings(given: GivenSwitch) {
  const { values } = given;
  if (values.latching === values["non-latching"]) {
    throw new VeladisError("missing-option", {
      expected: "either --latching or --non-latching",
      received: values.latching ? "both" : "nothing",
    });
  }
  return {
    threshold: requireOption(given, "threshold"),
    hysteresis: requireOption(given, "hysteresis"),
    offDelay: parseNumeral(values["off-delay"], "an off-delay in s"),
    latching: values.latching,
  };
}

/** Contact and coil of `"normally open, normally energised"`. */
export function relayOption(value: string): { contact: string; coil: string } {
  const [contact, coil] = parts(value);
  if (contact !== undefined && coil !== undefined) return { contact, coil };
  throw new VeladisError("syntax", {
    expected: '--relay with contact and coil, such as "normally open, normally energised"',
    received: shown(value),
  });
}
