import { VeladisError } from "../core/index";
import type { Step, Uncertainty } from "../reading/index";
import { type Arithmetic, arithmeticOf } from "./arithmetic";

/** One number that is not known exactly, independent of all others. */
export interface Input {
  /** What it is: a reading, a frequency, an influence. */
  readonly name: string;
  readonly uncertainty: Uncertainty;
}

/** A step of a history as something to reckon with. */
export interface Node {
  readonly of: readonly number[];
  readonly value: number;
  /** Left out for what was given, and for all that depends on no input. */
  readonly arithmetic?: Arithmetic;
  /** The input that the value itself has, by its place in the list. */
  readonly own?: number;
  /** The input that the frequency of the step has. */
  readonly hertz?: number;
  /** True for a number in decibels. */
  readonly isLevel: boolean;
}

/** A history as a graph of numbers, with all that is uncertain in it. */
export interface Graph {
  readonly nodes: readonly Node[];
  readonly inputs: readonly Input[];
}

/** The share of a frequency that its uncertainty is. */
const shareOf = ({ uncertainty }: Input, hz: number): number => uncertainty.standard / hz;

/** A value that was put in place of one with an uncertainty has none that anybody stated. */
function requireNotReplaced({ does, value, type }: Step, before: readonly Input[]): void {
  if (does !== "replaced" || before.length === 0) return;
  throw new VeladisError("out-of-range", {
    expected: "a reading with an uncertainty as it was read or converted; state another one with its own ±",
    received: `a value that was replaced by ${value} ${type}`,
  });
}

/**
 * The graph of a history. Where several readings with a frequency of their own led to a conversion, the least well known
 * of the frequencies is its.
 *
 * @throws {@link VeladisError} `out-of-range` for a step that no arithmetic can follow, behind an uncertain reading
 */
export function graphOf(history: readonly Step[]): Graph {
  const inputs: Input[] = [];
  const nodes: Node[] = [];
  // what each step depends on, and the frequency input it came by
  const depends: boolean[] = [];
  const hertzOf: (number | undefined)[] = [];
  history.forEach((step, place) => {
    const { of = [], value, type, hertz, uncertainty, hertzUncertainty, does } = step;
    requireNotReplaced(step, inputs);
    let own: number | undefined;
    if (uncertainty !== undefined) own = inputs.push({ name: uncertainty.name ?? `${value} ${type}`, uncertainty }) - 1;
    let by = of
      .map((at) => hertzOf[at])
      .filter((one) => one !== undefined)
      .sort((a, b) => shareOf(inputs[b] as Input, hertz ?? 1) - shareOf(inputs[a] as Input, hertz ?? 1))[0];
    if (hertzUncertainty !== undefined) by = inputs.push({ name: `${hertz} Hz`, uncertainty: hertzUncertainty }) - 1;
    hertzOf[place] = by;
    const uses = does === "convert" && by !== undefined && hertz !== undefined;
    const isUncertain = of.some((at) => depends[at]) || uses || own !== undefined;
    depends[place] = isUncertain;
    const arithmetic = isUncertain && of.length > 0 ? arithmeticOf(step, history) : undefined;
    nodes.push({
      of,
      value,
      isLevel: type.startsWith("dB"),
      ...(arithmetic !== undefined && { arithmetic }),
      ...(own !== undefined && { own }),
      ...(uses && { hertz: by as number }),
    });
  });
  return { nodes, inputs };
}
