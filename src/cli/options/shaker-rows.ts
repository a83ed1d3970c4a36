import type { OptionRow, OptionRows } from "./option-row";

const kilograms = { argument: "<kg>", example: "0.5" } as const;

export const load = { ...kilograms, help: "mass of sensor and fixture" } as const satisfies OptionRow;

/** A reference shaker by its data sheet, for the commands that plan with one. */
export const shakerRows = {
  shaker: {
    argument: "<range>",
    help: 'its frequencies; "159.2 Hz" for one, "40 Hz, 80 Hz" for fixed ones, "10 mm/s rms at 159.2 Hz" for one level',
    example: '"8 Hz to 3 kHz"',
  },
  stroke: { argument: "<reading>", help: "its largest displacement", example: '"5 mm pp"' },
  velocity: { argument: "<reading>", help: "its largest velocity", example: '"500 mm/s pk"' },
  acceleration: { argument: "<reading>", help: "its largest acceleration", example: '"6 g pk"' },
  force: { argument: "<N>", help: "its largest force", example: "100" },
  "moving-mass": { ...kilograms, help: "what it moves of itself" },
  payload: { ...kilograms, help: "the most that it carries" },
} as const satisfies OptionRows;
