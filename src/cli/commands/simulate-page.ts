import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { chartOptions, plot } from "../options/picture-options";
import { skipBad, times } from "../options/series-options";
import { explain, fileOptions, json } from "../options/shared-options";
import { signalOptions } from "../options/signal-options";
import { timerResetsRow, tripOptions } from "../options/trip-options";

/** The page of `simulate`. */
export const simulatePage = {
  summary: "what a vibration switch with given settings does on a recorded history",
  usage: 'veladis simulate --file <csv> --from "<type>" --threshold "<reading>" ...',
  does: "What a vibration switch with these settings does on a recorded history: when it trips, when it clears, and what its delay rides out. Each level stands until the time of the next. All settings are told, and what would have happened without each mask: delay, start inhibit, multiplier, bypass.",
  examples: [
    'veladis simulate --file history.csv --from "mm/s rms" --threshold "9 mm/s rms" \\\n    --hysteresis "8 %" --delay 8 --timer-resets threshold --latching',
    'veladis simulate --file bearings.csv --from "um pp" --column front,rear,generator \\\n    --vote "1 danger and 1 alert of 3" --threshold "160 um pp" --alert "100 um pp" \\\n    --hysteresis "5 %" --delay 1 --alert-delay 1 --timer-resets threshold --latching',
    'veladis simulate --file history.csv --time seconds --column level --from "mm/s rms" \\\n    --threshold "6, 9 mm/s rms" --hysteresis "0.4 mm/s rms" --delay 0,2,5,10 \\\n    --timer-resets threshold --non-latching',
  ],
  options: {
    ...grouped("settings", {
      ...tripOptions,
      threshold: {
        ...tripOptions.threshold,
        help: `${tripOptions.threshold.help}; several, "6, 9 mm/s rms", are compared`,
      },
      delay: { ...tripOptions.delay, help: `${tripOptions.delay.help}; several, with commas, are compared` },
      "sensor-fault": {
        ...tripOptions["sensor-fault"],
        help: "what an empty cell or the word fault does: alarm (OL, over range, too), hold or bad",
        otherwise: "both refused",
      },
      "timer-resets": { ...timerResetsRow, otherwise: "with --delay 0 no timer, else refused" },
      inhibit: {
        argument: "<seconds>",
        help: "no new trip for so long from the beginning and from each start",
        default: "0",
      },
      multiplier: {
        argument: "<n for s>",
        help: "factor on the setpoint for some seconds from the beginning and from each start",
        example: '"2 for 30"',
      },
    }),
    ...grouped("vote", {
      vote: {
        argument: "<m of n>",
        help: 'channels that vote, each a column of the file: so many of them at the threshold, or "1 danger and 1 alert of 3"',
        example: "2oo3",
      },
      "bad-channel": {
        argument: "<what>",
        help: "what a channel counts for whose sensor fault is bad",
        example: '"votes to trip"',
        list: "bad channels",
        otherwise: "refused where it can matter",
      },
      alert: {
        argument: "<reading>",
        help: "the alert of every channel, below the threshold, for a vote that counts alerts",
        example: '"100 um pp"',
      },
      "alert-delay": { argument: "<seconds>", help: "on-delay of the alert in s; 0 for none", example: "1" },
    }),
    ...grouped("history", {
      file: {
        argument: "<csv>",
        help: "the levels, or piped CSV; the first line is the header",
        example: "history.csv",
      },
      time: {
        argument: "<column>",
        help: "name or number of the column of times: seconds, dates with a time, or times of day such as 08:15:00",
        example: "seconds",
        otherwise: "1",
      },
      times,
      column: {
        argument: "<column>",
        help: "name or number of the column of levels; with --vote one a channel, with commas",
        example: "level",
        otherwise: "2 where there are two; with --vote refused",
      },
      every: {
        argument: "<seconds>",
        help: "levels are evenly spaced, in place of a column of times",
        example: "0.5",
      },
      from: {
        argument: "<type>",
        help: "what the levels are written in; a signal too, mV pk with --sensor or mA with --loop",
        example: '"mm/s rms"',
        list: "types",
      },
      ...signalOptions,
      "longest-gap": {
        argument: "<seconds>",
        help: "a longer time between two levels is told as a gap",
        example: "60",
        otherwise: "five times the median time between levels",
      },
      at: {
        argument: "<frequency>",
        help: "their frequency, when they are of another quantity than the threshold",
        example: '"1485 r/min"',
      },
      commands: {
        argument: "<list>",
        help: "what is done meanwhile, at seconds from the first row; with --vote a bypass names its column: bypass on rear at 10",
        example: '"reset at 900, start at 0, bypass on at 10, power lost at 60"',
      },
    }),
    ...grouped("file", { ...fileOptions, "skip-bad": skipBad }),
    ...grouped("answer", {
      excursions: { help: "also each time the on-delay began and did not run out" },
      ...chartOptions,
      plot,
      explain,
      json,
    }),
  },
} as const satisfies CommandPage;
