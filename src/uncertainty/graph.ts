import { same, VeladisError } from "../core/index";
import { isLevelType, isUncertain, type Step } from "../reading/index";
import { arithmeticOf } from "./arithmetic";
import type { Graph, Input, Node } from "./node";
import { phasesOf } from "./phases";
import { differencePhasor, length, movedPhasor, type Phasor, polarPhasor } from "./phasor-nodes";

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

/** A graph that is being made, with what is known of each step that has a place in it. */
interface Draft {
  readonly nodes: Node[];
  readonly inputs: Input[];
  /** The node of each step. */
  readonly at: number[];
  /** The parts of each step that is a vector. */
  readonly phasors: (Phasor | undefined)[];
  readonly phases: readonly (number | undefined)[];
}

/** The parts of a vector that was given or moved; `node` is its length. */
function phasorOf(place: number, draft: Draft, history: readonly Step[], node: Node): Phasor | undefined {
  const step = history[place] as Step;
  const { nodes, inputs, at, phasors, phases } = draft;
  const { does, of: [from = 0] = [], phase, phaseUncertainty } = step;
  const add = (one: Node): number => nodes.push(one) - 1;
  if (phases[place] === undefined) return undefined;
  if (phase !== undefined && does !== "vector difference") {
    const own = phaseUncertainty && inputs.push({ name: `phase ${phase} degrees`, uncertainty: phaseUncertainty }) - 1;
    const off = own !== undefined && add({ of: [], value: 0, own, isLevel: false, isSigned: true });
    return polarPhasor(add, nodes, [at[place] as number, ...(off === false ? [] : [off])], phase);
  }
  const before = phasors[from];
  if (before === undefined || does === "vector difference") return undefined;
  const { own, hertz, hz } = node;
  return movedPhasor(add, nodes, before, {
    step,
    before: (history[from] as Step).type,
    base: node.arithmetic ?? arithmeticOf(step, history),
    inputs: { ...(own !== undefined && { own }), ...(hertz !== undefined && { hertz, hz: hz as number }) },
  });
}

/** The parts of a difference of two vectors; none for one of two lengths by a fixed angle. */
function differenceOf(step: Step, { nodes, phasors, phases }: Draft): Phasor | undefined {
  const [first = 0, second = 0] = step.of ?? [];
  const [one, other] = [phasors[first], phasors[second]];
  if (step.does !== "vector difference" || step.phase === undefined || one === undefined || other === undefined) {
    return undefined;
  }
  const between = (phases[second] as number) - (phases[first] as number);
  return differencePhasor(nodes, [one, other], step, between);
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
 * of the frequencies is its. A vector stands in it by its two parts too, in which sums are linear.
 *
 * @throws {@link VeladisError} `out-of-range` for a step that no arithmetic can follow, and for a value, a phase or a
 *   frequency that was replaced, behind an uncertain reading
 */
export function graphOf(history: readonly Step[]): Graph {
  const draft: Draft = {
    nodes: [],
    inputs: [],
    at: [],
    phasors: [],
    phases: isUncertain(history) ? phasesOf(history) : [],
  };
  const { nodes, inputs, at, phasors } = draft;
  // what each step depends on, and the frequencies of the readings that led to it
  const depends: boolean[] = [];
  const givenOf: (readonly GivenHertz[])[] = [];
  let isOfVectors = false;
  history.forEach((step, place) => {
    const { of = [], value, type, hertz, uncertainty, hertzUncertainty, phaseUncertainty, does } = step;
    requireNotReplaced(step, inputs);
    let own: number | undefined;
    if (uncertainty !== undefined) own = inputs.push({ name: uncertainty.name ?? `${value} ${type}`, uncertainty }) - 1;
    const given: GivenHertz[] = [...new Set(of.flatMap((one) => givenOf[one] as readonly GivenHertz[]))];
    if (hertz !== undefined && hertzUncertainty !== undefined) {
      given.push({ hz: hertz, input: inputs.push({ name: `${hertz} Hz`, uncertainty: hertzUncertainty }) - 1 });
    } else if (hertz !== undefined && of.length === 0) given.push({ hz: hertz });
    givenOf[place] = given;
    const by = does === "convert" && hertz !== undefined ? inputAt(hertz, given, inputs) : undefined;
    const isLive = of.some((one) => depends[one]) || by !== undefined || own !== undefined;
    depends[place] = isLive || phaseUncertainty !== undefined;
    const difference = differenceOf(step, draft);
    if (difference !== undefined) isOfVectors = true;
    const arithmetic = isLive && of.length > 0 ? (difference ? length : arithmeticOf(step, history)) : undefined;
    const node: Node = {
      of: difference ?? of.map((one) => at[one] as number),
      value,
      isLevel: isLevelType(type),
      ...(arithmetic !== undefined && { arithmetic }),
      ...(own !== undefined && { own }),
      ...(by !== undefined && { hertz: by, hz: hertz as number }),
    };
    at.push(nodes.push(node) - 1);
    phasors.push(difference ?? phasorOf(place, draft, history, node));
  });
  const [answer, vector] = [at.at(-1) as number, phasors.at(-1)];
  return { nodes, inputs: toldApart(inputs), answer, ...(vector !== undefined && { vector }), isOfVectors };
}
