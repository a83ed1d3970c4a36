import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { explain, json } from "../options/shared-options";
import { timerResetsRow, tripOptions } from "../options/trip-options";

/** The page of `shock`. */
export const shockPage = {
  summary: "what a vibration switch shows of a shock, and whether its delay rides it out",
  usage: 'veladis shock --running "<reading at frequency>" --threshold "<reading>" ...',
  does: "What a vibration switch makes of knocks on top of the running vibration: the largest half-sine shocks and the longest bursts that do not trip it; or, with --shock, what it shows of one shock, for how long, and whether its on-delay rides that out.",
  examples: [
    'veladis shock --running "2.6 mm/s rms at 1485 r/min" --threshold "9 mm/s rms" --hysteresis "8 %" \\\n    --delay 8 --timer-resets threshold --detector rms --time-constant 1 --high-pass 10',
    'veladis shock --running "2.6 mm/s rms at 1485 r/min" --threshold "9 mm/s rms" --hysteresis "8 %" \\\n    --delay 8 --timer-resets threshold --detector peak --time-constant 2 --high-pass 10 \\\n    --shock "20 g pk" --length 11 --shape half-sine',
  ],
  options: {
    ...grouped("settings", {
      threshold: tripOptions.threshold,
      hysteresis: tripOptions.hysteresis,
      delay: tripOptions.delay,
      "timer-resets": timerResetsRow,
      detector: {
        argument: "<kind>",
        help: "how the switch makes a level: the RMS of an exponential average, or a peak that decays",
        example: "rms",
        values: ["rms", "peak"],
      },
      "time-constant": {
        argument: "<seconds>",
        help: "averaging time of the RMS, or decay time of the peak, in s",
        example: "1",
      },
      "high-pass": {
        argument: "<Hz>",
        help: "lower corner of a switch that measures velocity, in Hz",
        example: "10",
        otherwise: "refused for a threshold in velocity; none for one in acceleration",
      },
    }),
    ...grouped("vibration", {
      running: {
        argument: "<reading>",
        help: "the running vibration with its frequency",
        example: '"2.6 mm/s rms at 1485 r/min"',
      },
      shock: { argument: "<peak>", help: "one shock: its peak as acceleration", example: '"20 g pk"' },
      length: { argument: "<ms>", help: "its length in ms; without --shock several, with commas", example: "11" },
      shape: {
        argument: "<name>",
        help: "its shape, for --shock",
        example: "half-sine",
        values: ["half-sine", "final-peak saw-tooth", "trapezoidal"],
      },
    }),
    ...grouped("answer", { explain, json }),
  },
} as const satisfies CommandPage;
