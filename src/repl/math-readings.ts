import { convertAmplitude, rssDifference, vectorDifference } from "../amplitude/index";
import { requireFinite } from "../core/index";
import { type Amplitude, parseAmplitude } from "../reading/index";
import { meanOf, rootSumSquare } from "./combined";
import { listAsGiven, onElements, readingsIn } from "./math-lists";
import { mathOperand } from "./math-operands";
import { each, type Own, type Signatures, type Typed } from "./math-typed";
import { readableAnswer } from "./readable";
import type { Value } from "./value";

/** The functions that the trade has for readings. */
export function readingFunctions(own: Own, typed: Typed): Record<string, unknown> {
  const two = (args: readonly unknown[]) => readingsIn(args) as [Amplitude, Amplitude];
  const plain = {
    rss: (...args: unknown[]) => rootSumSquare(readingsIn(args)),
    vectorDifference: (from: unknown, off: unknown, degrees: unknown) =>
      vectorDifference(...two([from, off]), mathOperand(degrees) as number),
    rssDifference: (...args: unknown[]) => rssDifference(...two(args)),
    meanAmplitude: (...args: unknown[]) => meanOf(readingsIn(args)),
  };
  const converted = (reading: unknown, type: unknown): Value =>
    readableAnswer(convertAmplitude(reading as Amplitude, type as string));
  return {
    ...Object.fromEntries(
      Object.entries(plain).map(([name, of]) => [
        name,
        (...args: unknown[]) => readableAnswer((of as (...all: unknown[]) => Amplitude)(...args)),
      ]),
    ),
    to: typed("to", {
      ...each(["Amplitude, string"], converted),
      "Amplitudes, string": (list: unknown, type: unknown) =>
        listAsGiven(own, [list], onElements(converted, list, type)),
    } as Signatures),
    decibels: typed("decibels", {
      "number | BigNumber | Fraction": (decibels: unknown) =>
        readableAnswer({ decibels: requireFinite(mathOperand(decibels) as number, "a number of dB") }),
    } as Signatures),
    amplitude: typed("amplitude", { string: (written: string) => readableAnswer(parseAmplitude(written)) }),
  };
}
