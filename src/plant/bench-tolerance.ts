import { convertAmplitude } from "../amplitude/index";
import { attempt, splitNumeral } from "../core/index";
import { type Amplitude, parseAmplitude } from "../reading/index";

/** Share of a level by which a check keeps away from a setpoint where the list has no tolerance; common practice, no source. */
const USUAL = 0.05;

/** Share beyond which a tolerance leaves nothing between alarm and trip to check at. */
const MOST = 0.5;

/** A tolerance as a share of a level in its unit. */
export function toleranceShare(tolerance: string | undefined, level: Amplitude, as: string): number {
  if (tolerance === undefined) return USUAL;
  const told = attempt(() => {
    const [digits, unit] = splitNumeral(tolerance);
    if (/^dB$/i.test(unit)) return 10 ** (Number(digits) / 20) - 1;
    if (/^(?:%|percent|per cent)$/i.test(unit)) return Number(digits) / 100;
    return convertAmplitude(parseAmplitude(tolerance), as).value / level.value;
  });
  return told.ok && Number.isFinite(told.value) ? Math.min(told.value, MOST) : USUAL;
}
