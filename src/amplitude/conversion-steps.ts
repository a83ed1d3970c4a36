import { requireGiven } from "../core/index";
import { sineRatio } from "../detectors/index";
import { type Assumption, type ParsedType, parsedType, type Step } from "../reading/index";
import { type Quantity, type UnitSymbol, unitFactor } from "../units/index";

/** What the arithmetic of an explained step does with the value it starts from, `x`, or values, and with `by`. */
export type Operation =
  | "given"
  | "times"
  | "over"
  | "plus"
  | "sum"
  | "difference"
  | "rss"
  | "vector difference"
  | "rss difference"
  | "largest"
  | "smallest"
  | "steps down"
  | "nearest step"
  | "steps up"
  | "linear"
  | "decibels"
  | "limit over";

/** One line of arithmetic: `operation` on the steps `of`, with `by`, comes to `value`. */
export interface ExplainedStep {
  readonly operation: Operation;
  /** The lines it starts from, by their place. */
  readonly of: readonly number[];
  readonly by?: number;
  readonly value: number;
  /** What `value` is written in. */
  readonly type: string;
  readonly because?: string;
  readonly assumed?: readonly Assumption[];
}

/** A line of arithmetic before it is carried out. */
export type PlannedStep = Omit<ExplainedStep, "of" | "value">;

const siUnit = { displacement: "m", velocity: "m/s", acceleration: "m/s2" } as const satisfies Record<
  Quantity,
  UnitSymbol
>;

/** Multiplication by a ratio, written as a division where that is the greater number. */
function scaledBy(ratio: number): Pick<PlannedStep, "operation" | "by"> {
  return ratio >= 1 ? { operation: "times", by: ratio } : { operation: "over", by: 1 / ratio };
}

/** The step from one unit to another of its quantity. */
function ofUnits(from: UnitSymbol, to: UnitSymbol, detector: string): PlannedStep[] {
  return from === to ? [] : [{ ...scaledBy(unitFactor(from, to)), type: `${to} ${detector}` }];
}

/** The step from one detector to the other, by the ratios of a sine or by a crest factor in place of its root of two. */
function ofDetectors(from: ParsedType, to: ParsedType, crestFactor: number | undefined): PlannedStep[] {
  if (from.detector === to.detector) return [];
  const line = {
    ...scaledBy(sineRatio(from.detector, to.detector, crestFactor)),
    type: `${to.unit} ${to.detector}`,
  };
  if (from.pi === to.pi && from.rootTwo === to.rootTwo) return [line];
  const because = crestFactor === undefined ? "one sine" : `crest factor ${crestFactor}`;
  return [{ ...line, because, assumed: [crestFactor === undefined ? "sine" : "crest-factor"] }];
}

/** The steps from one quantity to another at a frequency, by way of the SI units. */
function ofQuantities(from: ParsedType, to: ParsedType, hertz: number): PlannedStep[] {
  const steps = to.order - from.order;
  const [before, after] = [siUnit[from.quantity], siUnit[to.quantity]];
  const power = Math.abs(steps) === 1 ? "" : " squared";
  return [
    ...ofUnits(from.unit, before, from.detector),
    {
      operation: steps > 0 ? "times" : "over",
      by: (2 * Math.PI * hertz) ** Math.abs(steps),
      type: `${after} ${from.detector}`,
      because: `2 pi x ${Number(hertz.toPrecision(6))} Hz${power}, one frequency`,
      assumed: ["one-frequency"],
    },
    ...ofUnits(after, to.unit, from.detector),
  ];
}

/** The lines of arithmetic of one conversion, each still without its value. */
export function conversionSteps(before: string, { type, hertz, crestFactor }: Step): PlannedStep[] {
  const [from, to] = [parsedType(before), parsedType(type)];
  return [
    ...(from.reference === 0
      ? []
      : [{ operation: "linear", by: from.reference, type: `${from.unit} rms` } as const satisfies PlannedStep]),
    ...(from.order === to.order
      ? ofUnits(from.unit, to.unit, from.detector)
      : ofQuantities(
          from,
          to,
          requireGiven(hertz, "the frequency of a conversion to another quantity", { option: "hertz" }),
        )),
    ...ofDetectors(from, to, crestFactor),
    ...(to.reference === 0
      ? []
      : [{ operation: "decibels", by: to.reference, type: to.type } as const satisfies PlannedStep]),
  ];
}
