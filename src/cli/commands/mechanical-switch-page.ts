import type { CommandPage } from "../options/command-page";
import { explain, json } from "../options/shared-options";

/** The page of `mechanical-switch`. */
export const mechanicalSwitchPage = {
  summary: "what the setting of an acceleration-operated switch is as velocity, and where it is blind",
  usage: 'veladis mechanical-switch "<setting>" --speeds "<speeds>" --limit "<reading>"',
  does: "The setting of an acceleration-operated mechanical switch as velocity and displacement at each speed, and the speeds at which a sine at the limit does not operate it.",
  examples: [
    'veladis mechanical-switch "2 g pk" --speeds "1180 r/min, 1490 r/min, 2980 r/min" \\\n    --limit "0.35 in/s pk"',
    'veladis mechanical-switch "1.5 g pk" --speeds "590 r/min, 2980 r/min"',
  ],
  texts: { most: 1, what: 'one setting in quotation marks, such as "2 g pk"' },
  options: {
    speeds: {
      argument: "<list>",
      help: "speeds with their unit, with commas; beside --limit they may be left out",
      example: '"1180 r/min, 2980 r/min"',
    },
    limit: {
      argument: "<reading>",
      help: "the level in velocity or displacement at which it is to operate",
      example: '"0.35 in/s pk"',
      otherwise: "no speeds are called blind",
    },
    explain,
    json,
  },
  notes: [
    "Such a switch sees knocks and high frequencies at any speed; this is about one sine at the speed of the shaft.",
  ],
} as const satisfies CommandPage;
