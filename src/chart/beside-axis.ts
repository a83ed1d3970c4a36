import { conversionAssumes, convertAmplitude } from "../amplitude/index";
import { inPlace, shown, VeladisError } from "../core/index";
import { type Assumption, amplitudeIn, parsedType } from "../reading/index";
import { type Tick, tickText } from "./axis";
import { label, stroke } from "./markup";
import { widthOf } from "./text-width";

/** A second upright axis, at the right of a plot, in another type of the same quantity. */
export interface BesideAxis {
  readonly type: string;
  /** How many of it are one of the type at the left. */
  readonly factor: number;
  readonly assumed: readonly Assumption[];
  /** What is said of it to those who do not see it. */
  readonly said: string;
}

/** Room for its numbers, in pixels. */
export const BESIDE = 46;

/**
 * A second axis in a type.
 *
 * @throws {@link VeladisError} `wrong-quantity` for one of another quantity, or for a level in dB, which no common scale
 *   shows; and as {@link parsedType}
 */
export function besideAxis(beside: string | undefined, as: string): BesideAxis | undefined {
  if (beside === undefined) return undefined;
  return inPlace({ option: "beside" }, () => {
    const [own, other] = [parsedType(as), parsedType(beside)];
    if (own.quantity !== other.quantity || own.reference !== 0 || other.reference !== 0) {
      throw new VeladisError("wrong-quantity", {
        expected: `a type of ${own.quantity} that is no level in dB, for a second axis beside ${own.type}`,
        received: shown(beside),
      });
    }
    const { value: factor } = convertAmplitude(amplitudeIn(own.type, 1), other.type);
    const assumed = conversionAssumes(own.type, other.type);
    return { type: other.type, factor, assumed, said: ` A second axis is in ${other.type}.` };
  });
}

/** The axis drawn: numbers at the right of the plot, its type above them. */
export function drawnBeside(
  { type }: BesideAxis,
  ticks: readonly Tick[],
  {
    width,
    height,
    from,
    unitAt,
  }: { readonly width: number; readonly height: number; readonly from: number; readonly unitAt: number },
): string {
  const at = width + from;
  return [
    stroke([at, 0], [at, height], "axis"),
    ...ticks.map((tick) => stroke([at, tick.at], [at + 4, tick.at], "axis")),
    ...ticks.map((tick) => label(at + 7, tick.at + 4, tick.text)),
    label(Math.max(at + BESIDE, width - 40 + widthOf(type)) - 4, unitAt, type, { "text-anchor": "end", kind: "unit" }),
  ].join("");
}

/** Ticks of the second axis at round numbers of its own. */
export function besideTicks(
  { factor }: BesideAxis,
  most: number,
  y: (value: number) => number,
  rounds: (top: number) => readonly number[],
): Tick[] {
  return rounds(most * factor).map((value) => ({ at: y(value / factor), text: tickText(value) }));
}
