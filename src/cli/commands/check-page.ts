import type { CommandPage } from "../options/command-page";
import { chartOptions, plot } from "../options/picture-options";
import { skipBad } from "../options/series-options";
import { explain, fileOptions, json, name, sheet, tolerance, uncertainty } from "../options/shared-options";
import { fact } from "../options/sheet-facts";
import { signalOptions } from "../options/signal-options";

/** The page of `check`. */
export const checkPage = {
  summary: "a reading held against a known vibration, as found and as left",
  usage: 'veladis check --known "<reading>" --indicated "<reading>" --tolerance "<share>"',
  does: "What a device shows, held against the known vibration of a reference shaker.",
  examples: [
    'veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.3 mm/s rms" --tolerance "5 %"',
    'veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.7 mm/s rms" --tolerance "5 %" \\\n    --uncertainty "2 % (k=2)"',
    'veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.3 mm/s rms" \\\n    --as-left "7.9 mm/s rms" --tolerance "5 %" --sheet markdown --name "ID fan 1, fan bearing"',
    'veladis check --known "9.8 m/s2 pk at 80 Hz" --indicated "97 mV pk" --sensor "100 mV/g" \\\n    --tolerance "5 %"',
    'veladis check --known "8 ± 0.16 mm/s rms (k=2)" --indicated "7.7 mm/s rms" --tolerance "5 %"',
    'veladis check --shaker "10 mm/s rms at 159.2 Hz" --indicated "9.8 mm/s rms" --tolerance "5 %"',
    'printf \'known,indicated\\n2,2.1\\n5,5.1\\n10,10.1\\n\' | \\\n    veladis check --from "mm/s rms" --tolerance "5 %"',
  ],
  options: {
    known: {
      argument: "<reading>",
      help: "level of the shaker, with its frequency; or the signal of a reference sensor",
      example: '"8 mm/s rms at 2400 r/min"',
    },
    shaker: {
      argument: "<shaker>",
      help: "a shaker of one level or one frequency: its level is the known one, its frequency that of --known",
      example: '"10 mm/s rms at 159.2 Hz"',
    },
    indicated: {
      argument: "<reading>",
      help: "what the device shows; in another quantity it is converted at the known frequency",
      example: '"7.3 mm/s rms"',
    },
    "as-left": {
      argument: "<reading>",
      help: "what it shows after an adjustment; --indicated is then as found",
      example: '"7.9 mm/s rms"',
    },
    ...signalOptions,
    threshold: {
      argument: "<reading>",
      help: "the trip of the device, to have it told as a signal by --loop and --sensor",
      example: '"9 mm/s rms"',
    },
    tolerance,
    uncertainty,
    rule: {
      argument: "<name>",
      help: "rule by which the check is decided",
      example: '"simple acceptance"',
      list: "decision rules",
      otherwise: "guard band with an uncertainty, simple acceptance without one,",
    },
    file: {
      argument: "<csv>",
      help: "several levels in columns known and indicated, each with its unit or all as by --from; also frequency or speed, and point, its name; no other column is read; - for piped CSV",
      example: "points.csv",
    },
    from: {
      argument: "<type>",
      help: "what that CSV is written in; at one frequency the answer is linearity too",
      example: '"mm/s rms"',
      list: "types",
    },
    "skip-bad": skipBad,
    ...fileOptions,
    ...chartOptions,
    plot,
    sheet,
    name,
    fact,
    "fail-from": {
      argument: "<verdict>",
      help: "exit 1 when any verdict, as found or as left, is this one or worse",
      example: "undecided",
      values: ["undecided", "fail"],
    },
    explain,
    json,
  },
  notes: ["The verdict is pass, fail or undecided; the exit code is 0 for all three without --fail-from."],
} as const satisfies CommandPage;
