import { detectors } from "../detectors/index";
import { type Assumption, type ParsedType, parsedType, type Step } from "../reading/index";
import { type Quantity, type UnitSymbol, units } from "../units/index";

/** What the arithmetic of an explained step does with the value it starts from, `x`, or values, and with `by`. */
export type Operation =
  | "given"
  | "times"
  | "over"
  | "plus"
  | "sum"
  | "difference"
  | "rss"
  | "largest"
  | "smallest"
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

/** An explained step before its value is reckoned. */
type Planned = Omit<ExplainedStep, "of" | "value">;

const siUnit = { displacement: "m", velocity: "m/s", acceleration: "m/s2" } as const satisfies Record<
  Quantity,
  UnitSymbol
>;

/** Multiplication by a ratio, written as a division where that is the greater number. */
function scaledBy(ratio: number): Pick<Planned, "operation" | "by"> {
  return ratio >= 1 ? { operation: "times", by: ratio } : { operation: "over", by: 1 / ratio };
}

function ofUnits(from: UnitSymbol, to: UnitSymbol, detector: string): Planned[] {
  const [a, b] = [units[from], units[to]];
  const ratio = (a.num * b.den) / (a.den * b.num);
  return from === to ? [] : [{ ...scaledBy(ratio), type: `${to} ${detector}` }];
}

/** The step from one detector to the other, by the ratios of a sine or by a crest factor in place of its root of two. */
function ofDetectors(from: ParsedType, to: ParsedType, crestFactor: number | undefined): Planned[] {
  if (from.detector === to.detector) return [];
  const [a, b] = [detectors[from.detector], detectors[to.detector]];
  const [pi, rootTwo] = [b.pi - a.pi, b.rootTwo - a.rootTwo];
  const ratio = ((b.num * a.den) / (b.den * a.num)) * Math.PI ** pi * (crestFactor ?? Math.SQRT2) ** rootTwo;
  const type = `${to.unit} ${to.detector}`;
  if (pi === 0 && rootTwo === 0) return [{ ...scaledBy(ratio), type }];
  const by = crestFactor === undefined ? "one sine" : `crest factor ${crestFactor}`;
  return [{ ...scaledBy(ratio), type, because: by, assumed: [crestFactor === undefined ? "sine" : "crest-factor"] }];
}

/** The steps from one quantity to another at a frequency, by way of the SI units. */
function ofQuantities(from: ParsedType, to: ParsedType, hertz: number): Planned[] {
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
export function conversionSteps(before: string, { type, hertz, crestFactor }: Step): Planned[] {
  const [from, to] = [parsedType(before), parsedType(type)];
  return [
    ...(from.reference === 0
      ? []
      : [{ operation: "linear", by: from.reference, type: `${from.unit} rms` } as const satisfies Planned]),
    ...(from.order === to.order ? ofUnits(from.unit, to.unit, from.detector) : ofQuantities(from, to, hertz as number)),
    ...ofDetectors(from, to, crestFactor),
    ...(to.reference === 0
      ? []
      : [{ operation: "decibels", by: to.reference, type: to.type } as const satisfies Planned]),
  ];
}
