import { requireGiven, withParameters } from "../core/index";
import { type Amplitude, isClipped, isLevelType, significant } from "../reading/index";
import { type UncertaintyOf, uncertaintyOf } from "./uncertainty-of";

/** More decimals than this, or a whole part from here on that is rounded, are written with an exponent. */
const MOST_DECIMALS = 9;
const MOST_ROUNDED = 1e6;
/** From here on a number has more digits than it says. */
const MOST_PLAIN = 1e15;

/** No number has more digits than this behind its first. */
const MOST_DIGITS = 16;

/** The place of the first digit of a number: 0 for 4.9, 3 for 4900. */
function placeOf(value: number): number {
  return value === 0 ? 0 : Number(value.toExponential().split("e")[1]);
}

/** A value rounded to a place, with as many digits behind its first. */
function roundedTo(place: number, value: number): [rounded: number, digits: number] {
  const behindFirst = (one: number): number => Math.min(MOST_DIGITS, Math.max(0, placeOf(one) - place));
  const rounded = Number(value.toExponential(behindFirst(value)));
  // 9.99 may have become 10.0
  return [rounded, behindFirst(rounded)];
}

/**
 * Value and expanded uncertainty to the same place, where two digits of that end: as JCGM 100:2008, 7.2.6, has it; with
 * `digits`, each in as many.
 */
export function plusMinusText(value: number, expanded: number, digits?: number): string {
  return digits === undefined
    ? bothToTheirPlace(value, expanded)
    : `${significant(value, digits)} ± ${significant(expanded, digits)}`;
}

/** As {@link plusMinusText}, to the place that the uncertainty says. */
function bothToTheirPlace(value: number, expanded: number): string {
  const place = placeOf(Number(expanded.toPrecision(2))) - 1;
  const [rounded, digits] = roundedTo(place, value);
  const most = Math.max(Math.abs(rounded), expanded);
  if (-place > MOST_DECIMALS || most >= MOST_PLAIN || (place > 0 && most >= MOST_ROUNDED)) {
    const own = digits < MOST_DIGITS ? rounded.toExponential(digits) : rounded.toExponential();
    return `${own} ± ${expanded.toExponential(1)}`.replaceAll("e+", "e");
  }
  if (place > 0) return `${rounded} ± ${Number(expanded.toPrecision(2))}`;
  return `${value.toFixed(-place)} ± ${expanded.toFixed(-place)}`;
}

/** True where value plus and minus U would say another interval than the draws do, or go below zero. */
function isSkewed({ method, interval: [low, high], value, expanded, type }: UncertaintyOf): boolean {
  if (method === "first order") return false;
  const [below, above] = [value - low, high - value];
  const isLevel = isLevelType(type);
  return Math.max(below, above) > 1.2 * Math.min(below, above) || (!isLevel && expanded > value);
}

/**
 * A reading as an engineer writes it with its uncertainty: two digits of that, the value to the same place. Without an
 * uncertainty in three digits. Where the draws lie
 * unevenly about the value, their 95 % interval stands in place of ±. A reading that came by a loop out of its range says so, since the true one is unknown.
 *
 * @param reading - an amplitude; words as for {@link parseUncertain}
 * @throws {@link VeladisError} as {@link uncertaintyOf}
 * @example
 * ```ts
 * import { formatUncertain, parseUncertain } from "veladis/uncertainty";
 *
 * formatUncertain("0.25 in/s pk ± 5 % (k=2)"); // => "0.250 ± 0.013 in/s pk (k=2)"
 * formatUncertain("95 ± 0.5 dB re 1e-9 m/s"); // => "95.00 ± 0.58 dB re 1e-9 m/s (k=2)"
 * formatUncertain("4.9 ± 4.9 mm/s rms"); // => "4.90 mm/s rms, 95 % within 0.248 to 9.56"
 * ```
 */
export function formatUncertain(reading: string | Amplitude): string {
  return withParameters({ reading }, () => {
    const known = requireGiven(reading, "a reading", { parameter: "reading" });
    const state = typeof known === "string" ? undefined : known.state;
    return uncertainText(uncertaintyOf(known), isClipped(state) ? ` (${state})` : "");
  });
}

/** An uncertainty with its value as it is written; with `digits`, both in as many. */
export function uncertainText(uncertainty: UncertaintyOf, clipped = "", digits?: number): string {
  const { value, expanded, type, interval } = uncertainty;
  const best = significant(value, digits ?? 3);
  if (expanded === 0) return `${best} ${type}${clipped}`;
  if (isSkewed(uncertainty)) {
    const [low, high] = interval.map((end) => significant(end, digits ?? 3));
    return `${best} ${type}${clipped}, 95 % within ${low} to ${high}`;
  }
  return `${plusMinusText(value, expanded, digits)} ${type} (k=2)${clipped}`;
}
