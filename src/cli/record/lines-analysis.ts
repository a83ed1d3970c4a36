import { type Amplitude, type AmplitudeType, amplitudeIn, linearOf, type ParsedType } from "../../reading/index";
import type { Band, LinesOverall, ListedLine, WindowName } from "../../signal/index";
import { linesOverall } from "../../signal/index";

/** How the lines of a file are to be counted. */
export interface LinesSettings {
  readonly type: ParsedType;
  readonly band: Band;
  readonly window: WindowName | undefined;
  readonly noiseBandwidth: number | undefined;
  readonly tones: boolean;
}

/** A multiple of the running speed, and the line there. */
export interface OrderOfLines {
  readonly order: number;
  readonly expected: number;
  readonly line: Amplitude | undefined;
  /** Whether the file reaches there. */
  readonly inFile: boolean;
}

/** How far a line may lie from a multiple of the running speed, as part of it, and in lines. */
const WITHIN = 0.02;
const LINES_WITHIN = 1.5;

/** The lines of a file in a linear type: levels in dB as what they stand for. */
export function linearLines(
  hertz: readonly number[],
  sizes: readonly number[],
  { reference }: ParsedType,
): ListedLine[] {
  return hertz.map((at, i) => {
    const size = sizes[i] as number;
    return [at, reference > 0 ? linearOf(size, reference) : size];
  });
}

/** The type that {@link linearLines} are in. */
function typeOfLines({ unit, detector }: ParsedType): AmplitudeType {
  return `${unit} ${detector}`;
}

/** The level of the lines within a band. */
export function levelOfLines(lines: readonly ListedLine[], as: AmplitudeType, settings: LinesSettings): LinesOverall {
  const { type, band, window, noiseBandwidth, tones } = settings;
  return linesOverall(lines, {
    ...{ type: typeOfLines(type), as, band, tones },
    ...(window !== undefined && { window }),
    ...(noiseBandwidth !== undefined && { noiseBandwidth }),
  });
}

/** What is smaller than this part of the highest line is what the computation of the lines left over. */
const ROUNDING = 1e-9;

/** Whether line `i` is higher than both its neighbours; a tone of a list always is a line of its own. */
function isPeak(lines: readonly ListedLine[], i: number, tones: boolean): boolean {
  const sizeAt = (k: number): number => lines[k]?.[1] ?? 0;
  return tones || (sizeAt(i) > sizeAt(i - 1) && sizeAt(i) >= sizeAt(i + 1));
}

/** The lines that stand above their neighbours, as they stand in the file, each with its frequency. */
export function peaksOfLines(lines: readonly ListedLine[], { type, tones }: LinesSettings): Amplitude[] {
  const as = typeOfLines(type);
  const least = ROUNDING * lines.reduce((most, [, size]) => Math.max(most, size), 0);
  return lines.flatMap(([hertz, size], i) =>
    hertz > 0 && size > least && isPeak(lines, i, tones) ? [amplitudeIn(as, size, hertz)] : [],
  );
}

/** The highest line at each multiple of the running speed, as it stands in the file. */
export function ordersOfLines(
  lines: readonly ListedLine[],
  peaks: readonly Amplitude[],
  {
    shaft,
    orders,
    spacing = 0,
  }: { readonly shaft: number; readonly orders: readonly number[]; readonly spacing: number | undefined },
): OrderOfLines[] {
  const [first, last] = [(lines[0] as ListedLine)[0], (lines[lines.length - 1] as ListedLine)[0]];
  return orders.map((order) => {
    const expected = order * shaft;
    const reach = Math.max(WITHIN * expected, LINES_WITHIN * spacing);
    const near = peaks.filter(({ hertz = 0 }) => Math.abs(hertz - expected) <= reach);
    const line = near.reduce<Amplitude | undefined>(
      (most, one) => (most && most.value >= one.value ? most : one),
      undefined,
    );
    return { order, expected, line, inFile: expected >= first - reach && expected <= last + reach };
  });
}
