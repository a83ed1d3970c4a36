import type { CommandPage } from "../options/command-page";
import { json } from "../options/shared-options";

/** The page of `gap`. */
export const gapPage = {
  summary: "where a shaft stands by the gap voltage of a proximity probe, and how far it has moved",
  usage: 'veladis gap "<d.c. volts>" --sensor "<sensitivity>" --range "<volts>" [--cold "<d.c. volts>"]',
  does: "The gap voltage of a proximity probe: its place in the linear range, and the movement of the shaft since the cold gap, along the axis of the probe. Nothing is judged without a limit.",
  examples: [
    'veladis gap "-9.8 V" --sensor "200 mV/mil" --range "-2 to -18 V" --cold "-10.4 V"',
    'veladis gap "-3.1 V" --sensor "8 mV/um" --range "-2 to -18 V" --cold "-9.6 V" \\\n    --vibration "300 um pp" --limit "400 um"',
  ],
  texts: { most: 1, what: 'one gap voltage in quotation marks, such as "-9.8 V"' },
  options: {
    sensor: {
      argument: "<sensitivity>",
      help: "sensitivity of probe, cable and driver as one; usually 200 mV/mil = 7.87 mV/um",
      example: '"200 mV/mil"',
    },
    range: {
      argument: "<volts>",
      help: "linear range by its calibration; a gap voltage outside it is refused",
      example: '"-2 to -18 V"',
    },
    cold: {
      argument: "<d.c. volts>",
      help: "gap voltage with the machine cold and stopped, from which the movement counts",
      example: '"-10.4 V"',
      otherwise: "no movement is told",
    },
    vibration: {
      argument: "<reading>",
      help: "vibration about the gap: whether it stays within the linear range",
      example: '"60 um pp"',
    },
    limit: {
      argument: "<length>",
      help: "movement either way that the maker or the site allows",
      example: '"10 mil"',
      otherwise: "nothing is judged",
    },
    "fail-from": {
      argument: "<verdict>",
      help: "exit 1 when the movement reaches the limit",
      example: "limit",
      values: ["limit"],
    },
    json,
  },
  notes: [
    "The exit code is 0 whether the limit is reached or not without --fail-from.",
    "One probe tells the movement along its own axis; where the shaft stands in its bearing takes two, and the clearance. Where no zero is known, the gap itself is read from the calibration curve.",
  ],
} as const satisfies CommandPage;
