import { convertAmplitude, vectorDistance } from "../amplitude/index";
import { shown, VeladisError } from "../core/index";
import { amplitudeIn, decibelsOf, type ParsedType, parsedType, type Step, typeOf } from "../reading/index";

/** A column of values: many draws of one number. */
type Column = Float64Array;

/** Many values at once, into `to`: a column for each of those a step starts from, and one of frequencies over the one used. */
type Apply = (x: readonly Column[], hz: Column, to: Column, count: number) => void;

/** What a step makes of the values it starts from, as a function that can be asked again with other values. */
export interface Arithmetic {
  /** The value for others in place of those of the history */
  readonly apply: Apply;
  /** How much the value changes for each of those it starts from. */
  readonly slopes: (x: readonly number[], y: number) => readonly number[];
  /** The power of the frequency in the value, its share of change for a share of the frequency's. */
  readonly power?: number;
  /**
   * True where the slopes say too little: several that may be the largest, a root at zero, a divisor that is not known
   * well; `u` are the standard uncertainties of `x`.
   */
  readonly isBent?: (x: readonly number[], y: number, u: readonly number[]) => boolean;
}

/**
 * A divisor known less well than this bends: of 1 / (1 + d) with a normal d of standard deviation u the standard deviation
 * is about u (1 + 4 u^2), so that 4 % is 0.6 % more than the slope says.
 */
export const WELL_KNOWN_DIVISOR = 0.04;

/** A function of one value or two, over columns. */
function over(of: (x: number, z: number) => number): Apply {
  return ([x, z = x], _, to, count) => {
    for (let i = 0; i < count; i++) to[i] = of((x as Column)[i] as number, (z as Column)[i] as number);
  };
}

/** The first column put together with the others, one after another. */
function folded(put: (all: number, each: number) => number): Apply {
  return (x, _, to, count) => {
    const [first, ...others] = x as readonly [Column, ...Column[]];
    to.set(first.subarray(0, count));
    for (const column of others) {
      for (let i = 0; i < count; i++) to[i] = put(to[i] as number, column[i] as number);
    }
  };
}

const one: Arithmetic["slopes"] = (x) => x.map(() => 1);

/** A level as its linear value, in units of its reference; anything else as it is. */
const linear = ({ reference }: ParsedType, value: number): number =>
  reference === 0 ? value : reference * 10 ** (value / 20);

/** Zero has no level: what goes on is refused where it ends in an answer. */
const written = ({ reference }: ParsedType, value: number): number =>
  reference === 0 ? value : value === 0 ? Number.NEGATIVE_INFINITY : decibelsOf(value, reference);

/** The slope of a value by its linear value: 1, or of a level 20 / ln 10 over the linear value. */
const byLinear = (type: ParsedType, value: number): number =>
  type.reference === 0 ? 1 : 20 / Math.LN10 / linear(type, value);

/** A conversion: linear in the value, a power of the frequency. */
function conversion({ type, hertz, crestFactor }: Step, before: string): Arithmetic {
  const [from, to] = [parsedType(before), parsedType(type)];
  const ofOne = amplitudeIn(typeOf(from.unit, from.detector), 1, hertz);
  const options = crestFactor === undefined ? {} : { crestFactor };
  const factor = convertAmplitude(ofOne, typeOf(to.unit, to.detector).type, options).value;
  const power = to.order - from.order;
  return {
    power,
    apply: ([x], hz, column, count) => {
      for (let i = 0; i < count; i++) {
        const ratio = hz[i] as number;
        const times = ratio === 1 ? factor : factor * ratio ** power;
        column[i] = written(to, linear(from, (x as Column)[i] as number) * times);
      }
    },
    slopes: ([x = 0], y) => [(factor * byLinear(to, y)) / byLinear(from, x)],
  };
}

/** A step that is no conversion. */
function plain({ does, by = 1, over: under = 1, plus = 0, value, type }: Step, nominal: readonly number[]): Arithmetic {
  switch (does) {
    case "scale":
      return { apply: over((x) => (x * by) / under), slopes: () => [by / under] };
    case "line":
      return { apply: over((x) => x * by + plus), slopes: () => [by] };
    case "sum":
      return { apply: folded((sum, each) => sum + each), slopes: one };
    case "difference":
      return {
        apply: folded((rest, each) => rest - each),
        slopes: ([, ...less]) => [1, ...less.map(() => -1)],
      };
    case "ratio":
      return {
        apply: over((x, z) => x / z),
        slopes: ([, z = 1], y) => [1 / z, -y / z],
        isBent: ([, z = 1], _, [, u = 0]) => u > WELL_KNOWN_DIVISOR * Math.abs(z),
      };
    case "rss":
      return {
        apply: (x, _, to, count) => {
          // over one of them, so that no square is too large or too small for a number
          const size = Math.max(...x.map((column) => Math.abs(column[0] as number))) || 1;
          to.fill(0, 0, count);
          for (const column of x) {
            for (let i = 0; i < count; i++) to[i] = (to[i] as number) + ((column[i] as number) / size) ** 2;
          }
          for (let i = 0; i < count; i++) to[i] = size * Math.sqrt(to[i] as number);
        },
        slopes: (x, y) => x.map((each) => (y === 0 ? 0 : each / y)),
        isBent: (_, y) => y === 0,
      };
    case "rss difference":
      return {
        // a background above the reading leaves nothing
        apply: over((x, z) => Math.sqrt(Math.max(0, (x - z) * (x + z)))),
        slopes: ([x = 0, z = 0], y) => (y === 0 ? [0, 0] : [x / y, -z / y]),
        isBent: (_, y) => y === 0,
      };
    case "vector difference": {
      const cosine = Math.cos((by * Math.PI) / 180);
      return {
        apply: over((x, z) => vectorDistance(Math.max(0, x), Math.max(0, z), by)),
        slopes: ([x = 0, z = 0], y) => (y === 0 ? [0, 0] : [(x - z * cosine) / y, (z - x * cosine) / y]),
        isBent: (_, y) => y === 0,
      };
    }
    case "largest":
    case "smallest": {
      const pick = does === "largest" ? Math.max : Math.min;
      return {
        apply: folded((best, each) => pick(best, each)),
        slopes: (x, y) => x.map((each) => (each === y ? 1 : 0)),
        isBent: (x) => x.length > 1,
      };
    }
    case "round": {
      // a setting is brought to a step once; how well it is known does not come in steps
      const moved = value - (nominal[0] as number);
      return { apply: over((x) => x + moved), slopes: one };
    }
    case "compare":
      return {
        apply: over((x) => by / x),
        slopes: ([x = 0]) => [-by / x ** 2],
        isBent: ([x = 0], _, [u = 0]) => u > WELL_KNOWN_DIVISOR * Math.abs(x),
      };
    default:
      throw new VeladisError("out-of-range", {
        expected: "steps that arithmetic can follow from the readings with an uncertainty to the answer",
        received: `${shown(does)}, which comes to ${value} ${type}`,
      });
  }
}

/** The arithmetic of a step that starts from others. */
export function arithmeticOf(step: Step, history: readonly Step[]): Arithmetic {
  const of = (step.of ?? []).map((at) => history[at] as Step);
  return step.does === "convert"
    ? conversion(step, (of[0] as Step).type)
    : plain(
        step,
        of.map(({ value }) => value),
      );
}
