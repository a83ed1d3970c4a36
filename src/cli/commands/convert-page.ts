import { detectorFacts } from "../../detectors/index";
import { type Unit, units } from "../../units/index";
import type { CommandPage } from "../options/command-page";
import { grouped } from "../options/option-row";
import { digits, explain, fileOptions, json, keepGoing } from "../options/shared-options";
import { signalOptions } from "../options/signal-options";
import { speedUnit } from "../options/speed-unit";

/** The symbols of all units, a text for each quantity. */
function unitTexts(): string[] {
  const all = Object.entries<Unit>(units);
  return [...new Set(all.map(([, { quantity }]) => quantity))].map((one) =>
    all
      .filter(([, { quantity }]) => quantity === one)
      .map(([symbol]) => symbol)
      .join(" "),
  );
}

/** The page of `convert`. */
export const convertPage = {
  summary: "a reading in other units, detectors and quantities (the word convert may be left out)",
  usage: 'veladis "<reading> [at <frequency>] [with crest factor <n>] [to <type>, <type> ...]"',
  does: 'A reading is a value, a unit and a detector. Without "to", all everyday equivalents.',
  examples: [
    'veladis "0.25 in/s pk at 1500 r/min to mm/s rms"',
    'veladis "0.25 in/s pk at 1500 r/min to mm/s rms, mil pp, g pk"',
    'veladis "0.25 in/s pk at 1500 r/min"',
    'veladis "0.25 in/s pk to mm/s rms" --explain',
    'veladis "95 dB re 1e-9 m/s to mm/s rms"',
    'veladis "4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz to um pp"',
    'veladis "2 g rms with crest factor 4 to g pk"',
    'veladis "98 mV pk by 100 mV/g at 80 Hz to in/s pk"',
    'veladis "12 mA of 0 to 20 mm/s rms"',
    "printf '4.1 mm/s rms\\n0.2 in/s pk\\n' | veladis --to \"mm/s rms\"",
    'veladis --file route.txt --to "mm/s rms"',
    'veladis --file levels.csv --column 2 --from "g rms" --to "m/s2 rms, g pk"',
  ],
  get words(): readonly (readonly [string, ...string[]])[] {
    return [
      ["units", ...unitTexts(), "and the ways people write them (m/s², ips, µm, micron, thou)"],
      [
        "detectors",
        Object.entries(detectorFacts)
          .map(([symbol, { name }]) => `${symbol} (${name})`)
          .join(", "),
      ],
      ["frequency", "25 Hz, 1500 r/min (rpm, cpm), 157 rad/s, 2x 1500 r/min"],
      [
        "with ±",
        "4.9 ± 0.3 mm/s rms (k=2), ± 5 %, ± 0.5 dB, 25 ± 0.5 Hz; +/- too. Without k it is a bound with equal chance within",
      ],
      [
        "signals",
        "98 mV pk by 100 mV/g, 12 mA of 0 to 20 mm/s rms, 50 % of 0 to 20 mm/s rms; or --sensor and --loop once for all",
      ],
      ["levels", "dB re 1e-9 m/s, dB re ISO 1683 velocity"],
    ];
  },
  texts: {},
  options: {
    to: {
      argument: "<types>",
      help: "what to convert to, when the lines do not say it",
      example: '"mm/s rms, g pk"',
      list: "types",
    },
    from: {
      argument: "<type>",
      help: "reading type of lines or cells that are bare numbers",
      example: '"g rms"',
      list: "types",
    },
    at: {
      argument: "<frequency>",
      help: "frequency for readings that say none themselves; one that a reading says must be the same",
      example: '"1500 r/min"',
    },
    "speed-unit": speedUnit,
    ...signalOptions,
    file: {
      argument: "<path>",
      help: 'a route file: "place: reading" lines, # for remarks; printed as one table',
      example: "route.txt",
    },
    column: {
      argument: "<name>",
      help: "a column of a CSV file or of piped CSV, by name or number; prints its rows with columns added",
      example: "level",
    },
    digits,
    explain,
    json,
    "keep-going": keepGoing,
    ...grouped("how the file of a column is written", fileOptions),
  },
  notes: [
    "Behind an answer, in brackets, what was assumed: sine (peak, RMS and average are related as for one sine wave), one frequency (all of the vibration is at the stated frequency). Values of CSV and JSON are always whole.",
  ],
} as const satisfies CommandPage;
