import { frozen } from "../core/index";

/** How near to a ratio is taken for it. */
const NEAR = 0.03;

/** How far from the value in the table, either way, another edition or a misprint seldom is. */
const FAR = 1.5;

/** The squares, which are whole or nearly so, of ratios of a value to the one in the table that a slip makes more often than a misprint does, with what the slip is. */
// biome-ignore format: a row of a table is a line
const slips = /* @__PURE__ */ frozen([
  { square: 645.16,     text: "looks like mil for um, or inches for mm" },
  { square: 2,          text: "looks like peak for RMS, or RMS for peak" },
  { square: 4,          text: "looks like peak-to-peak for peak, or peak for peak-to-peak" },
  { square: 8,          text: "looks like peak-to-peak for RMS, or RMS for peak-to-peak" },
  { square: 322.58,     text: "looks like in/s peak for mm/s RMS, or mm/s RMS for in/s peak" },
  { square: 96.1703842, text: "looks like g for m/s2, or m/s2 for g" },
  { square: 1550.0031,  text: "looks like inches for m, or m for inches" },
] as const);

/** A factor by which a value may have been spoiled, and in words how. */
interface Slip {
  readonly factor: number;
  readonly text: string;
}

/** All that may have been done to a value in the table to make a value of the size of another one. */
function slipsNear(ratio: number): Slip[] {
  const power = Math.round(Math.log10(ratio));
  const known = slips.flatMap(({ square, text }) =>
    [Math.sqrt(square), 1 / Math.sqrt(square)].map((factor) => ({ factor, text })),
  );
  if (power === 0) return known;
  const shifted = "looks like a decimal point out of its place, or another unit such as cm/s for mm/s";
  return [...known, { factor: 10 ** power, text: shifted }];
}

/** True for a value that is another to two or three digits, as pages print a converted one. */
function isRounded(printed: number, exact: number): boolean {
  return [2, 3].some((digits) => Number(exact.toPrecision(digits)) === printed);
}

/**
 * What slip of unit, detector or decimal point makes one value of another, in words; undefined for none. A value far from
 * the table's is one, whatever its ratio.
 *
 * @param isSquared - true for a number under a root, which a slip of the limit changes by its square
 */
export function slipOf(printed: number, shipped: number, isSquared: boolean): string | undefined {
  const ratio = printed / shipped;
  const all = [
    ...slipsNear(ratio),
    ...(isSquared ? slipsNear(Math.sqrt(ratio)).map(({ factor, text }) => ({ factor: factor ** 2, text })) : []),
  ];
  const off = ({ factor }: Slip): number => Math.abs(Math.log(ratio / factor));
  const [nearest] = all
    .filter((one) => off(one) <= Math.log1p(NEAR) || isRounded(printed, shipped * one.factor))
    .sort((one, other) => off(one) - off(other));
  if (nearest !== undefined) return nearest.text;
  if (Math.max(ratio, 1 / ratio) <= FAR) return undefined;
  return ratio > 1 ? `is more than ${FAR} times the table's` : `is less than the table's over ${FAR}`;
}
