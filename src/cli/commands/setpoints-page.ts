import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { chartOptions, plot } from "../options/picture-options";
import { skipBad, times } from "../options/series-options";
import { band, confirmed, explain, fileOptions, json, machine, name, scheme, sheet } from "../options/shared-options";
import { signalOptions } from "../options/signal-options";

/** The page of `setpoints`. */
export const setpointsPage = {
  summary: "alarm, trip, delay and hysteresis for a machine, from its baseline, with reasons",
  usage: 'veladis setpoints --baseline "<reading>" | --file <csv> --from "<type>" ...',
  does: "Alarm, trip, delay and hysteresis for a machine, from its baseline and a scheme (published table of limits), each number with its reason and the source of the rule. The proposal is for the person who answers for the machine to decide on.",
  examples: [
    'veladis setpoints --baseline "2 mm/s rms" --machine "pump 250 kW 2980 r/min rigid category I"',
    'veladis setpoints --baseline "0.12 in/s pk" --limits "0.2 in/s pk, 0.35 in/s pk" \\\n    --machine "pump 1180 r/min" --step "0.05 in/s pk" --band 10-1000 --loop "0 to 0.8 in/s pk"',
    'veladis setpoints --file steady.csv --from "g rms" --k 3',
    'veladis setpoints --baseline "2 mm/s rms" --machine "pump 250 kW 2980 r/min category I" \\\n    --loop "0 to 20 mm/s rms" --asked "9.6 mA" --multiples "alarm 1.5 times"',
    'veladis setpoints --baseline "40 um pp" --machine "steam turbine 12 MW 5400 r/min shaft" \\\n    --full-scale "500 um pp" --raised "2 times from 1900 to 2600 r/min for 30 s"',
  ],
  options: {
    ...grouped("baseline", {
      baseline: {
        argument: "<reading>",
        help: "one reading, or none; --file takes many",
        example: '"2 mm/s rms"',
      },
      file: { argument: "<csv>", help: "readings of steady running", example: "steady.csv" },
      from: {
        argument: "<type>",
        help: "what the readings of a file are written in; a signal too, mV pk with --sensor or mA with --loop",
        example: '"g rms"',
        list: "types",
      },
      column: {
        argument: "<column>",
        help: "column of the readings, by name or number",
        example: "level",
        otherwise: "the only one, or 2 where there are two",
      },
      modes: {
        argument: "<column>",
        help: "column of the operating mode, load or speed at each reading: whether their medians differ",
        example: "season",
      },
      mode: {
        argument: "<mode>",
        help: "the one mode whose readings count; of numbers a value or a range",
        example: "winter",
      },
      time: {
        argument: "<column>",
        help: "column of their times, by name or number",
        example: "seconds",
        otherwise: "1 with --start-up, else no times are read",
      },
      times,
      "start-up": {
        argument: "<seconds>",
        help: "leaves readings out that are earlier than this",
        example: "60",
      },
    }),
    ...grouped("file", { ...fileOptions, "skip-bad": skipBad }),
    ...grouped("limits", {
      scheme: {
        ...scheme,
        help: `${scheme.help}; none for a statistical alarm alone`,
        otherwise: "those that judge takes for the machine, of several the lowest limits",
      },
      confirmed,
      rule: {
        argument: "<rule>",
        help: "api shaft: alarm and trip of the shaft by speed, in place of a scheme; for speeds of 1000 to 30 000 r/min and fluid-film bearings: pump, fan, motor, generator, compressor, centrifugal chiller, gear drive, steam turbine, gas turbine, screw compressor",
        example: '"api shaft"',
      },
      limits: {
        argument: "<B/C, C/D>",
        help: "limits of the maker or the site in its place; with A/B before them, as judge takes them, that one plays no part",
        example: '"4.2, 6.8 mm/s rms"',
      },
      machine: {
        ...machine,
        help: "the machine in words, as for veladis judge; its kind and speed also decide the delay",
      },
      multiples: {
        argument: "<multiples>",
        help: "alarm, trip or both as multiples of the baseline, your own choice; lowered where the rules allow no more",
        example: '"alarm 1.5 times, trip 3 times"',
        otherwise: "the rules alone",
      },
      raised: {
        argument: "<factor, speeds, time>",
        help: "setpoints multiplied within speeds of at most 90 % of the running speed that are passed at start-up; what is left unprotected is told; never a bypass",
        example: '"2 times from 1900 to 2600 r/min for 30 s"',
        otherwise: "none",
      },
      k: { argument: "<number>", help: "standard deviations of the statistical alternative", default: "3" },
    }),
    ...grouped("sensor and device", {
      "noise-floor": {
        argument: "<reading>",
        help: "what the sensor reads where nothing moves",
        example: '"0.1 mm/s rms"',
      },
      "full-scale": { argument: "<reading>", help: "the most that it reads", example: '"25 mm/s rms"' },
      sensor: {
        ...signalOptions.sensor,
        help: "its sensitivity: also reads a baseline in volts, and tells the setpoints in mV",
      },
      loop: {
        ...signalOptions.loop,
        help: "range of its 4-20 mA loop: also reads a baseline in mA, and tells the setpoints in mA",
      },
      step: { argument: "<reading>", help: "step of the device's setpoint", example: '"0.2 mm/s rms"' },
      lowest: { argument: "<reading>", help: "lowest setpoint of the device", example: '"1 mm/s rms"' },
      highest: { argument: "<reading>", help: "highest setpoint of the device", example: '"20 mm/s rms"' },
      band,
      rounds: {
        argument: "<way>",
        help: "what the device does between two steps: down, nearest or up",
        example: "down",
        list: "roundings",
        otherwise: "nearest",
      },
      asked: {
        argument: "<reading>",
        help: "a setpoint of yours, as a reading or as its signal (mA, % or volts by --loop or --sensor): what the device makes of it, and whether the machine has reached it",
        example: '"3.3 mm/s rms"',
      },
      delay: { argument: "<seconds>", help: "a trip delay of yours, to be judged", example: "4" },
    }),
    ...grouped("answer", { ...chartOptions, plot, sheet, name, explain, json }),
  },
} as const satisfies CommandPage;
