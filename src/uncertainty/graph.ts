import { same, VeladisError } from "../core/index";
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

/** A frequency that a reading was given with, and the input that it is, where it is not known exactly. */
interface GivenHertz {
  readonly hz: number;
  readonly input?: number;
}

/** A value that was put in place of one with an uncertainty has none that anybody stated. */
function requireNotReplaced({ does, value, type }: Step, before: readonly Input[]): void {
  if (does !== "replaced" || before.length === 0) return;
  throw new VeladisError("out-of-range", {
    expected: "a reading with an uncertainty as it was read or converted; state another one with its own ±",
    received: `a value that was replaced by ${value} ${type}`,
  });
}

/**
 * The frequency input that a conversion at `hz` came by, the least well known of several. What is known of one frequency
 * says nothing of another.
 */
function inputAt(hz: number, given: readonly GivenHertz[], inputs: readonly Input[]): number | undefined {
  const known = given.filter(({ input }) => input !== undefined);
  if (known.length === 0) return undefined;
  const standard = ({ input }: GivenHertz): number => (inputs[input as number] as Input).uncertainty.standard;
  const own = known.filter((one) => same(one.hz, hz)).sort((a, b) => standard(b) - standard(a))[0];
  if (own !== undefined || given.some((one) => same(one.hz, hz))) return own?.input;
  throw new VeladisError("out-of-range", {
    expected: "a conversion at the frequency that the reading was given with, whose ± is that of no other",
    received: `a frequency that was replaced: ${hz} Hz in place of ${(known[0] as GivenHertz).hz} Hz`,
  });
}

/** Inputs of one name with their number behind it: `25 Hz (1)`, `25 Hz (2)`, in the order of the history. */
function toldApart(inputs: readonly Input[]): readonly Input[] {
  const counts = new Map<string, number>();
  for (const { name } of inputs) counts.set(name, (counts.get(name) ?? 0) + 1);
  const seen = new Map<string, number>();
  return inputs.map((input) => {
    if (counts.get(input.name) === 1) return input;
    const place = (seen.get(input.name) ?? 0) + 1;
    seen.set(input.name, place);
    return { ...input, name: `${input.name} (${place})` };
  });
}

/**
 * The graph of a history. Where several readings with a frequency of their own led to a conversion, the least well known
 * of the frequencies is its.
 *
 * @throws {@link VeladisError} `out-of-range` for a step that no arithmetic can follow, and for a value or a frequency that was
 *   replaced, behind an uncertain reading
 */
export function graphOf(history: readonly Step[]): Graph {
  const inputs: Input[] = [];
  const nodes: Node[] = [];
  // what each step depends on, and the frequencies of the readings that led to it
  const depends: boolean[] = [];
  const givenOf: (readonly GivenHertz[])[] = [];
  history.forEach((step, place) => {
    const { of = [], value, type, hertz, uncertainty, hertzUncertainty, does } = step;
    requireNotReplaced(step, inputs);
    let own: number | undefined;
    if (uncertainty !== undefined) own = inputs.push({ name: uncertainty.name ?? `${value} ${type}`, uncertainty }) - 1;
    const given: GivenHertz[] = [...new Set(of.flatMap((at) => givenOf[at] as readonly GivenHertz[]))];
    if (hertz !== undefined && hertzUncertainty !== undefined) {
      given.push({ hz: hertz, input: inputs.push({ name: `${hertz} Hz`, uncertainty: hertzUncertainty }) - 1 });
    } else if (hertz !== undefined && of.length === 0) given.push({ hz: hertz });
    givenOf[place] = given;
    const by = does === "convert" && hertz !== undefined ? inputAt(hertz, given, inputs) : undefined;
    const isUncertain = of.some((at) => depends[at]) || by !== undefined || own !== undefined;
    depends[place] = isUncertain;
    const arithmetic = isUncertain && of.length > 0 ? arithmeticOf(step, history) : undefined;
    nodes.push({
      of,
      value,
      isLevel: type.startsWith("dB"),
      ...(arithmetic !== undefined && { arithmetic }),
      ...(own !== undefined && { own }),
      ...(by !== undefined && { hertz: by }),
    });
  });
  return { nodes, inputs: toldApart(inputs) };
}
