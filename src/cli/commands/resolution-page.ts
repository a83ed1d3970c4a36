import type { CommandPage } from "../options/command-page";
import { digits, json } from "../options/shared-options";

/** The page of `resolution`. */
export const resolutionPage = {
  summary: "the lines, record and averages of a spectrum that tells two frequencies apart, and the beat of the two",
  usage: 'veladis resolution "<frequency or reading>" "<frequency or reading>" --highest "<frequency>"',
  does: "What spacing of lines, what record and how many lines a spectrum needs to show two frequencies as two lines, and how the two beat. With readings, also the range in which their sum swells.",
  examples: [
    'veladis resolution "1480 r/min" "1492 r/min" --highest "400 Hz"',
    'veladis resolution "3.4 mm/s rms at 1480 r/min" "1.2 mm/s rms at 1492 r/min" \\\n    --highest "1 kHz" --averages 4 --overlap "50 %"',
  ],
  texts: { most: 2, what: 'two frequencies, as in veladis resolution "1480 r/min" "1492 r/min"' },
  options: {
    highest: {
      argument: "<frequency>",
      help: "the highest frequency that the spectrum is to show",
      example: '"1 kHz"',
    },
    window: {
      argument: "<name>",
      help: "the window of the spectrum",
      example: "hann",
      default: "hann",
      list: "windows",
    },
    averages: { argument: "<n>", help: "how many segments are averaged", default: "1" },
    overlap: {
      argument: "<share>",
      help: "part of a segment that the next one shares",
      example: '"50 %"',
      default: "50 %",
    },
    digits,
    json,
  },
  notes: [
    "The speed has to hold still for the whole record: a shaft that wanders by a line smears both lines into one.",
    "Numbers of lines (100, 200, 400, ...) and 2.56 samples a line are common practice, without a source.",
  ],
} as const satisfies CommandPage;
