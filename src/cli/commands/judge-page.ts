import type { CommandPage } from "../options/command-page";
import { failFrom } from "../options/fail-from";
import { limits } from "../options/limits-option";
import { chartOptions, plot } from "../options/picture-options";
import {
  confirmed,
  crestFactor,
  digits,
  explain,
  full,
  json,
  keepGoing,
  machine,
  schemeFound,
  strict,
} from "../options/shared-options";
import { signalOptions } from "../options/signal-options";
import { speedUnit } from "../options/speed-unit";

/** The page of `judge`. */
export const judgePage = {
  summary: "the zones possible for a reading, by the schemes that are for the machine",
  usage: 'veladis judge "<reading>" --machine "<machine>" [--scheme <scheme>]',
  does: "Which zones are possible for a reading, by every scheme (published table of limits) that the known facts of the machine admit: one zone, or a range. Facts not given are taken for their lower limits and named; the worst governs. Readings of several points go into one text.",
  examples: [
    'veladis judge "4.1 mm/s rms" --machine "pump 90 kW 2980 r/min category II"',
    'veladis judge "DE-H 3.1, DE-V 2.2, NDE-H 2.9 mm/s rms" \\\n    --machine "fan 132 kW 1485 r/min rigid BV-3"',
    'veladis judge "4.9 ± 0.3 mm/s rms (k=2)" --machine "pump 90 kW 2980 r/min category II"',
    'veladis judge "0.25 in/s pk at 1490 r/min" --machine "motor 315 mm rigid" \\\n    --scheme iso-10816-3-2009',
    'veladis judge "12 mA" --loop "0 to 20 mm/s rms" --machine "pump 90 kW category II"',
    'veladis judge "6 mil pp" --machine "motor 3600 r/min shaft" --scheme iso-7919-3-2009',
    'veladis judge "3.1 mm/s rms" --machine "group 1 rigid" --scheme iso-10816-3-2009 \\\n    --since "1.8 mm/s rms"',
    'veladis judge "5 mm/s rms" --machine "gear drive 200 kW" --scheme site-rule.json',
    'veladis judge "5 mm/s rms" --limits "2.6, 4.2, 6.8 mm/s rms"',
    'veladis judge "6.2 mm/s rms" --machine "pump 90 kW 2980 r/min category I" \\\n    --confirmed iso-10816-7-2009.csv',
    'veladis judge "3.1 mm/s rms" --machine "pump 90 kW 2980 r/min category II" --fail-from C',
    "printf '4.1 mm/s rms\\n0.2 in/s pk\\n' | veladis judge --machine \"pump 90 kW category II\"",
  ],
  words: [
    [
      "machine",
      "a kind of machine (boiler feed pump, ID fan, screw compressor, Francis turbine, genset ...), power (kW, hp, kVA of a generator), speed (r/min, Hz, 4-pole 50 Hz, 900 to 1800 r/min), shaft height (280 mm, frame 280M), rigid, flexible or on springs (or: natural 65 Hz), housing or shaft, new or in service, and labels the schemes use: group 2, class III, category II, BV-3, grade B",
      "A word that is not understood is set aside and named.",
    ],
    [
      "points",
      'a name before each reading: "DE-H 3.1, DE-V 2.2 mm/s rms"; semicolons between points where numbers have a decimal comma',
    ],
    [
      "with ±",
      'behind the number or the reading: "4.9 ± 0.3 mm/s rms (k=2)", "0.25 in/s pk ± 5 % (k=2)"; without (k=...) a bound with equal chance within; of several points each its own: "DE-H 4.9 ± 0.3 (k=2), DE-V 2.2 mm/s rms"',
      "The zone is then the worst that the interval touches (guard band), or that of the best value (simple acceptance).",
    ],
  ],
  texts: {},
  options: {
    machine: { ...machine, default: "" },
    scheme: schemeFound,
    limits,
    confirmed,
    since: {
      argument: "<reading>",
      help: "a baseline: whether the change since is significant",
      example: '"1.8 mm/s rms"',
    },
    background: {
      argument: "<reading>",
      help: "the reading, or the signal of one, with the machine stopped; of several points one for all, or one each behind the name of its point: whether they may be judged",
      example: '"0.4 mm/s rms"',
    },
    "speed-unit": speedUnit,
    ...signalOptions,
    "crest-factor": crestFactor,
    uncertainty: {
      argument: "<amount>",
      help: "uncertainty of a reading without ±, read as behind one: without (k=...) or (95 %) a bound with equal chance within",
      example: '"5 % (k=2)"',
    },
    rule: {
      argument: "<name>",
      help: "rule by which the zone of a reading with an uncertainty is decided",
      example: '"simple acceptance"',
      list: "decision rules",
      otherwise: "guard band",
    },
    strict,
    full,
    "decimal-comma": {
      help: "numbers of readings and of the machine are written 7,1 and not 7.1; semicolons stand between points",
    },
    ...chartOptions,
    plot,
    digits,
    explain,
    json,
    "keep-going": keepGoing,
    "fail-from": failFrom,
  },
  notes: [
    "Limits that are neither printed nor confirmed were not read in the publication itself: check them against the standard (veladis schemes <scheme> --sheet html). Limits of the machine's maker, site rules, local codes and licensed practice govern.",
  ],
} as const satisfies CommandPage;
