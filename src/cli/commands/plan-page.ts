import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { band, explain, json, name, sheet, tolerance, uncertainty } from "../options/shared-options";
import { load, shakerRows } from "../options/shaker-rows";
import { fact } from "../options/sheet-facts";
import { signalOptions } from "../options/signal-options";
import { tripOptions } from "../options/trip-options";


/** The page of `plan`. */
export const planPage = {
  summary: "the steps that prove a setting on a reference shaker or by a signal, and whether it can do them",
  usage: 'veladis plan --threshold "<reading>" --hysteresis "<share>" --delay <seconds> --shaker "<range>" ...',
  does: "The steps that prove a setting on a reference shaker: level, displacement and acceleration of each, whether the shaker can give it, and what to expect; or by a signal in the place of sensor or transmitter.",
  examples: [
    'veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching --at "2400 r/min" \\\n    --relay "normally open, normally energised" --shaker "8 Hz to 3 kHz" --stroke "5 mm pp" \\\n    --acceleration "6 g pk"',
    'veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching \\\n    --shaker "10 mm/s rms at 159.2 Hz"',
    'veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching \\\n    --shaker "10 mm/s rms at 15.92 Hz, 79.6 Hz, 159.2 Hz" --at "79.6 Hz" --sensor "100 mV/g"',
    'veladis plan --threshold "7.6 mm/s rms" --hysteresis "5 %" --delay 4 --latching \\\n    --inject mA --loop "0 to 20 mm/s rms" --final-element "circuit breaker of the pump"',
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
      ...signalOptions,
      load,
    }),
    ...grouped("shaker, from its data sheet", {
      ...shakerRows,
      resolution: {
        argument: "<reading>",
        help: "the smallest step in which its level is set, or the signal that is injected",
        example: '"0.1 mm/s rms"',
        otherwise: "levels in three digits, currents in 0.01 mA,",
      },
      uncertainty: {
        ...uncertainty,
        help: "uncertainty of the shaker's level in %, dB or its unit, or of an injected signal in % of it, or mA; without (k=...) or (95 %) a bound with equal chance within",
      },
    }),
    ...grouped("injection, in place of a shaker", {
      inject: {
        argument: "<unit>",
        help: "a plan by a signal in the place of the sensor or transmitter, through the relay to the final element",
        example: "mA",
        values: ["mA", "mV"],
      },
      "final-element": {
        argument: "<text>",
        help: "what the trip moves in the end",
        example: '"circuit breaker of the fan"',
        otherwise: "breaker, contactor or stop valve",
      },
    }),
    ...grouped("answer", { sheet, name, fact, explain, json }),
  },
} as const satisfies CommandPage;
