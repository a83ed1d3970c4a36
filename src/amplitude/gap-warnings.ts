import { FLOAT_NOISE } from "../core/index";
import { significant } from "../reading/index";
import { probeLength, probeLengthText, probeSensitivityText } from "./probe-length";

/** 200 mV/mil, which most proximity probes have: API 670, from memory. */
const USUAL = 7.874;
/** How far from it a sensitivity may lie before a unit is doubted; common practice, no source. */
const FAR = 5;

/** What is said of a sensitivity, in mV/um, that few probes have. */
export function sensitivityWarnings(perUm: number): string[] {
  if (perUm <= USUAL * FAR && perUm >= USUAL / FAR) return [];
  return [
    `a sensitivity of ${probeSensitivityText(perUm)} is far from the usual 7.87 mV/um (200 mV/mil): look whether its unit is mV/mil or mV/um (common practice, no source)`,
  ];
}

/** What is said of a limit of movement, in um, beyond the linear range on either side of the cold gap. */
export function limitWarnings(limit: number | undefined, cold: { readonly towards: number; readonly away: number }) {
  if (limit === undefined) return [];
  const short = ([um]: readonly [number, string]): boolean => limit > um * (1 + FLOAT_NOISE);
  const sides = (
    [
      [cold.towards, "towards the probe"],
      [cold.away, "away from it"],
    ] as const
  ).filter(short);
  if (sides.length === 0) return [];
  const ends = sides.map(([um, where]) => `${probeLengthText(probeLength(um))} ${where}`);
  return [
    `the limit of ${significant(limit, 4)} um lies beyond the linear range, which from the cold gap ends ${ends.join(" and ")}: the probe leaves its range before the limit, and a movement there is never told as reaching it`,
  ];
}
