import type { CommandPage } from "../options/command-page";
import { explain, json } from "../options/shared-options";

/** The page of `balance`. */
export const balancePage = {
  summary: "residual unbalance that a balance grade permits a rotor, and the grade of an unbalance",
  usage: 'veladis balance "<grade>" --mass "<mass>" --speed "<speed>"',
  does: "The residual unbalance that a balance grade of ISO 21940-11 permits a rotor, whole and in two planes, and its centrifugal force; or the grade that a measured residual unbalance amounts to.",
  examples: [
    'veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min"',
    'veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min" --planes "300 mm, 700 mm"',
    'veladis balance --unbalance "20 oz·in" --mass "400 kg" --speed "1480 r/min" --explain',
  ],
  texts: {},
  options: {
    mass: { argument: "<mass>", help: "mass of the rotor in kg, g, t, lb or oz", example: '"400 kg"' },
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
    explain,
    json,
  },
  notes: [
    "G is the speed of the centre of mass of the rotor turning free in space: no reading on a housing, and no limit to set a trip from.",
  ],
} as const satisfies CommandPage;
