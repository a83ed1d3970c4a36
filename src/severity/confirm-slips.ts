import { frozen } from "../core/index";

/** How near to a ratio is taken for it. */
const NEAR = 0.01;

/** The squares, which are whole or nearly so, of ratios of a value to the one in the table that a slip makes more often than a misprint does, with what the slip is. */
// biome-ignore format: a row of a table is a line
const slips = /* @__PURE__ */ frozen([
  { square: 645.16, text: "looks like mil for um, or inches for mm" },
  { square: 2,      text: "looks like peak for RMS, or RMS for peak" },
  { square: 4,      text: "looks like peak-to-peak for peak, or peak for peak-to-peak" },
  { square: 8,      text: "looks like peak-to-peak for RMS, or RMS for peak-to-peak" },
] as const);

function isNear(ratio: number, to: number): boolean {
  return Math.abs(ratio / to - 1) <= NEAR || Math.abs(ratio * to - 1) <= NEAR;
}

/** What slip of unit, detector or decimal point a ratio of two values looks like, in words; undefined for none. */
export function slipOf(ratio: number): string | undefined {
  const found = slips.find((one) => isNear(ratio, Math.sqrt(one.square)));
  if (found !== undefined) return found.text;
  const power = Math.round(Math.log10(ratio));
  if (power === 0 || !isNear(ratio, 10 ** power)) return undefined;
  return "looks like a decimal point out of its place, or another unit such as cm/s for mm/s";
}
