import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { band, explain, json, name, sheet, tolerance, uncertainty } from "../options/shared-options";
import { tripOptions } from "../options/trip-options";

const kilograms = { argument: "<kg>", example: "0.5" } as const;

/** The page of `plan`. */
export const planPage = {
  summary: "the steps that prove a setting on a reference shaker, and whether it can do them",
  usage: 'veladis plan --threshold "<reading>" --hysteresis "<share>" --delay <seconds> --shaker "<range>" ...',
  does: "The steps that prove a setting on a reference shaker: level, displacement and acceleration of each, whether the shaker can give it, and what to expect.",
  examples: [
    'veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching --at "2400 r/min" \\\n    --relay "normally open, normally energised" --shaker "8 Hz to 3 kHz" --stroke "5 mm pp" \\\n    --acceleration "6 g pk"',
    'veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching \\\n    --shaker "10 mm/s rms at 159.2 Hz"',
  ],
  options: {
    ...grouped("settings", {
      ...tripOptions,
      at: {
        argument: "<frequencies>",
        help: "to test at, with commas; the first proves the trip",
        example: '"2400 r/min"',
        otherwise: "that of a shaker of one frequency, else 79.4 Hz,",
      },
      band,
      tolerance: { ...tolerance, otherwise: "5 %" },
      load: { ...kilograms, help: "mass of sensor and fixture" },
    }),
    ...grouped("shaker, from its data sheet", {
      shaker: {
        argument: "<range>",
        help: 'its frequencies; "159.2 Hz" for one, "10 mm/s rms at 159.2 Hz" for one level',
        example: '"8 Hz to 3 kHz"',
      },
      stroke: { argument: "<reading>", help: "its largest displacement", example: '"5 mm pp"' },
      velocity: { argument: "<reading>", help: "its largest velocity", example: '"500 mm/s pk"' },
      acceleration: { argument: "<reading>", help: "its largest acceleration", example: '"6 g pk"' },
      force: { argument: "<N>", help: "its largest force", example: "100" },
      "moving-mass": { ...kilograms, help: "what it moves of itself" },
      payload: { ...kilograms, help: "the most that it carries" },
      resolution: {
        argument: "<reading>",
        help: "the smallest step in which its level is set",
        example: '"0.1 mm/s rms"',
        otherwise: "levels in three digits",
      },
      uncertainty,
    }),
    ...grouped("answer", { sheet, name, explain, json }),
  },
} as const satisfies CommandPage;
