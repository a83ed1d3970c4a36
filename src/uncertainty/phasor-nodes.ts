import { VeladisError } from "../core/index";
import type { Step } from "../reading/index";
import type { Arithmetic } from "./arithmetic";
import type { Node } from "./node";
import { quartersOf } from "./phases";

/**
 * The two parts of a vector as nodes of a graph, by their places: its length times cosine and sine of its lag. A sum of
 * vectors is linear in them, also where nothing is left of it.
 */
export type Phasor = readonly [cosine: number, sine: number];

/** pi / 180. */
export const RADIANS = 0.017_453_292_519_943_295;
const NOISE = 1e-12;

/** Cosine and sine in degrees, exact at whole quarters of a turn. */
function cosineAndSine(degrees: number): Phasor {
  const quarter = degrees / 90;
  if (!Number.isInteger(quarter)) return [Math.cos(degrees * RADIANS), Math.sin(degrees * RADIANS)];
  const at = ((quarter % 4) + 4) % 4;
  return [[1, 0, -1, 0][at] as number, [0, 1, 0, -1][at] as number];
}

/** One part of a vector by its length and by how far its phase is off, if that is not known exactly. */
function polar(phase: number, part: 0 | 1): Arithmetic {
  const other = part === 0 ? -1 : 1;
  const exact = cosineAndSine(phase);
  return {
    apply: ([x = 0, off]) =>
      x * (off === undefined ? exact[part] : (part === 0 ? Math.cos : Math.sin)((phase + off) * RADIANS)),
    slopes: ([x = 0, off]) => {
      const parts = cosineAndSine(phase + (off ?? 0));
      return off === undefined ? [parts[part]] : [parts[part], other * x * parts[(1 - part) as 0 | 1] * RADIANS];
    },
  };
}

/** The parts of a vector whose length, and the deviation of whose phase in degrees, stand at these places. */
export function polarPhasor(add: (node: Node) => number, nodes: readonly Node[], of: readonly number[], phase: number) {
  const x = of.map((at) => (nodes[at] as Node).value);
  return ([0, 1] as const).map((part) => {
    const arithmetic = polar(phase, part);
    return add({ of, value: arithmetic.apply(x, 1), arithmetic, isSigned: true, isLevel: false });
  }) as unknown as Phasor;
}

/** The parts of a vector that was converted or multiplied: each as the length is, and turned by whole quarters. */
export function movedPhasor(
  add: (node: Node) => number,
  nodes: readonly Node[],
  from: Phasor,
  {
    step,
    before,
    base,
    inputs,
  }: {
    readonly step: Step;
    readonly before: string;
    readonly base: Arithmetic;
    readonly inputs: Pick<Node, "own" | "hertz" | "hz">;
  },
): Phasor {
  const quarters = step.does === "convert" ? quartersOf(step.type, before) : 0;
  // a lag that is less by a quarter: the sine becomes the cosine, and the cosine the opposite of the sine
  const [cosine, sine] = cosineAndSine(90 * quarters);
  const [re, im] = from;
  const sources =
    cosine === 0
      ? ([
          [im, sine],
          [re, -sine],
        ] as const)
      : ([
          [re, cosine],
          [im, cosine],
        ] as const);
  return sources.map(([at, sign]) => {
    const { power } = base;
    const arithmetic: Arithmetic = {
      ...(power !== undefined && { power }),
      apply: (x, hz) => sign * base.apply(x, hz),
      slopes: (x, y) => base.slopes(x, sign * y).map((slope) => sign * slope),
    };
    const value = arithmetic.apply([(nodes[at] as Node).value], 1);
    return add({ of: [at], value, arithmetic, ...inputs, isSigned: true, isLevel: false });
  }) as unknown as Phasor;
}

/** The parts of one vector less another, or of the two added, as the angle of the step and their phases say. */
export function differencePhasor(
  nodes: Node[],
  [first, second]: readonly [Phasor, Phasor],
  { by = 0, phase = 0, value }: Step,
  between: number,
): Phasor {
  const turn = by - between;
  const sign = Math.abs(Math.sin((turn / 2) * RADIANS)) < 0.5 ? -1 : 1;
  const arithmetic: Arithmetic = { apply: ([x = 0, z = 0]) => x + sign * z, slopes: () => [1, sign] };
  const parts = first.map((at, part) => {
    const of = [at, second[part] as number];
    const reckoned = arithmetic.apply(
      of.map((one) => (nodes[one] as Node).value),
      1,
    );
    return nodes.push({ of, value: reckoned, arithmetic, isSigned: true, isLevel: false }) - 1;
  }) as unknown as Phasor;
  const size = [...first, ...second].reduce((sum, at) => sum + Math.abs((nodes[at] as Node).value), 0);
  const [cosine, sine] = cosineAndSine(phase);
  const [re, im] = parts.map((at) => (nodes[at] as Node).value) as unknown as Phasor;
  // what stands in a history from outside may be no difference of these
  if (Math.hypot(re - value * cosine, im - value * sine) <= 1e-6 * size) return parts;
  throw new VeladisError("out-of-range", {
    expected: `a vector difference that comes to ${Math.hypot(re, im)} at ${Math.atan2(im, re) / RADIANS} degrees`,
    received: `${value} at ${phase} degrees`,
  });
}

/** What a vector owes to every input along it, and across it. */
export function alongAndAcross(
  [re, im]: Phasor,
  [cosine, sine]: readonly [readonly number[], readonly number[]],
): [along: readonly number[], across: readonly number[]] {
  const size = Math.hypot(re, im);
  const [x, y] = size === 0 ? [1, 0] : [re / size, im / size];
  // what is left of two parts that take each other off is the noise of their last digits
  const whole = (value: number, i: number): number =>
    Math.abs(value) <= NOISE * Math.hypot(cosine[i] as number, sine[i] as number) ? 0 : value;
  return [
    cosine.map((part, i) => whole(x * part + y * (sine[i] as number), i)),
    cosine.map((part, i) => whole(x * (sine[i] as number) - y * part, i)),
  ];
}

/** Above this share of its length an expanded uncertainty of a vector, in any direction, is no small one. */
const SMALL = 0.1;

/** Above this share of the first order the second one adds 0.5 % to the standard deviation. */
export const SECOND = 0.1;

/** The length of a vector by its two parts. */
export const length: Arithmetic = {
  apply: ([re = 0, im = 0]) => Math.hypot(re, im),
  slopes: ([re = 0, im = 0], y) => (y === 0 ? [0, 0] : [re / y, im / y]),
  isBent: (x, y, _, parts) => {
    if (y === 0) return true;
    const both = alongAndAcross(x as unknown as Phasor, parts as unknown as [number[], number[]]);
    const [along, across] = both.map((one) => Math.hypot(...one)) as [number, number];
    // the length is longer by half the square across over it
    return 2 * Math.max(along, across) > SMALL * y || across ** 2 > Math.SQRT2 * SECOND * along * y;
  },
};
