import type { CommandPage } from "../options/command-page";
import { explain, json } from "../options/shared-options";

/** The page of `balance`. */
export const balancePage = {
  summary: "residual unbalance that a balance grade permits a rotor, and the grade of an unbalance",
  usage: 'veladis balance "<grade>"|4W/N --mass "<mass>" --speed "<speed>"',
  does: "The residual unbalance that a balance grade of ISO 21940-11 permits a rotor, whole and in two planes, and its centrifugal force; or 4 W / N of API 610 and API 617 for each journal; or the grade and force that a measured residual unbalance amounts to.",
  examples: [
    'veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min"',
    'veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min" --planes "300 mm, 700 mm"',
    'veladis balance 4W/N --mass "120 kg" --speed "2980 r/min" --planes "300 mm, 500 mm" --unit "oz·in"',
    'veladis balance --unbalance "20 oz·in" --speed "1480 r/min" --unit "g·mm"',
    'veladis balance --unbalance "20 oz·in" --mass "400 kg" --speed "1480 r/min" --explain',
  ],
  texts: {},
  options: {
    mass: {
      argument: "<mass>",
      help: "mass of the rotor in kg, g, t, lb or oz; beside --unbalance it may be left out, for the force alone",
      example: '"400 kg"',
    },
    speed: { argument: "<frequency>", help: "service speed", example: '"1480 r/min"' },
    planes: {
      argument: "<l, r>",
      help: "distances from the centre of mass to the two bearings",
      example: '"300 mm, 700 mm"',
      otherwise: "half each",
    },
    unbalance: {
      argument: "<unbalance>",
      help: "a residual unbalance in g·mm, kg·mm, oz·in, lb·in, ... (a dash or a dot between)",
      example: '"20 oz·in"',
    },
    unit: {
      argument: "<unit>",
      help: "the unit of unbalance to answer in, mass times distance",
      example: '"oz·in"',
      default: "g·mm",
    },
    explain,
    json,
  },
  notes: [
    "G is the speed of the centre of mass of the rotor turning free in space: no reading on a housing, and no limit to set a trip from.",
  ],
} as const satisfies CommandPage;
