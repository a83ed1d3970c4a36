import type { CommandPage } from "../options/command-page";
import { digits, explain, json } from "../options/shared-options";

/** The page of `sum`. */
export const sumPage = {
  summary: "RMS readings put together, levels in dB too: uncorrelated, and the most that they can come to",
  usage: 'veladis sum "<reading>" "<reading>" ...',
  does: "What several RMS readings come to: the root of the sum of squares of readings that have nothing to do with one another, of whatever frequencies. Levels in dB are added as what they stand for, never as numbers.",
  examples: [
    'veladis sum "95 dB re 1e-9 m/s" "92 dB re 1e-9 m/s"',
    'veladis sum "2.1 mm/s rms" "0.8 mm/s rms" "0.03 in/s rms" --to "mm/s rms, in/s rms"',
  ],
  texts: { most: 1000, what: 'two readings or more, as in veladis sum "2.1 mm/s rms" "0.8 mm/s rms"' },
  options: {
    to: {
      argument: "<types>",
      help: "what to answer in, of RMS: the peaks of a sum hang on phases that are lost",
      example: '"mm/s rms, in/s rms"',
      otherwise: "that of the first reading",
      list: "types",
    },
    digits,
    explain,
    json,
  },
  notes: ["Readings of one frequency that rise and fall together come to more: their sum, which is told beside."],
} as const satisfies CommandPage;
