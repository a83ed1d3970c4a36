import {
  convertVector,
  differenceOfVectors,
  parseVector,
  slowRollCompensated,
  sumOfVectors,
  type Vector,
} from "veladis/vector";

type Random = () => number;
/** A complex number: a vector of length r and lag p is r cos p and r sin p. */
type Parts = readonly [number, number];

/** A chain of vectors with ±, and its end with all inputs drawn anew. */
export interface VectorChain {
  readonly vector: Vector;
  readonly draw: (normal: Random, uniform: Random) => Parts;
  /** The largest of its amplitudes, in the type of its end. */
  readonly largest: number;
}

type World = readonly number[];

const types = { "um pp": 0, "mil pp": 0, "mm/s pk": 1, "m/s2 pk": 2 } as const;
type Type = keyof typeof types;
/** Peaks in SI over the reading. */
const sizes: Record<Type, number> = { "um pp": 0.5e-6, "mil pp": 12.7e-6, "mm/s pk": 1e-3, "m/s2 pk": 1 };
const omega = 2 * Math.PI * 90;

/** Two to five vectors at 1x of 5400 r/min, added, taken off and converted, some of them twice in. */
export function randomVectorChain(random: Random): VectorChain {
  const bounds: boolean[] = [];
  const between = (low: number, high: number): number => low * (high / low) ** random();
  const oneOf = <Item>(list: readonly Item[]): Item => list[Math.floor(random() * list.length)] as Item;
  const input = (standard: number): { stated: string; of: (world: World) => number } => {
    const bound = random() < 0.4;
    const place = bounds.push(bound) - 1;
    return {
      stated: bound ? `± ${standard * Math.sqrt(3)}` : `± ${standard}`,
      of: (world) => standard * (world[place] as number),
    };
  };
  const k = (place: number): string => (bounds[place] ? "" : " (k=1)");

  interface End {
    readonly vector: Vector;
    readonly of: (world: World) => Parts;
    readonly type: Type;
  }
  const given = (type: Type, size: number, speed = "5400"): End => {
    const [value, phase] = [size, 360 * random()];
    const own = input(value * between(0.001, 0.03));
    const first = k(bounds.length - 1);
    const off = input(between(0.1, 4));
    const text = `${value} ${type} ${own.stated} ${type}${first} ∠ ${phase} ${off.stated}°${k(bounds.length - 1)} at 1x of ${speed} r/min`;
    return {
      type,
      vector: parseVector(text),
      of: (world) => {
        const lag = ((phase + off.of(world)) * Math.PI) / 180;
        const length = value + own.of(world);
        return [length * Math.cos(lag), length * Math.sin(lag)];
      },
    };
  };
  const converted = (from: End, to: Type): End => {
    const orders = types[to] - types[from.type];
    const factor = (sizes[from.type] / sizes[to]) * omega ** orders;
    // a lag that is less by 90 degrees for each differentiation
    const turn = (-orders * Math.PI) / 2;
    return {
      type: to,
      vector: convertVector(from.vector, to),
      of: (world) => {
        const [x, y] = from.of(world);
        return [factor * (x * Math.cos(turn) - y * Math.sin(turn)), factor * (x * Math.sin(turn) + y * Math.cos(turn))];
      },
    };
  };
  const together = (one: End, two: End, sign: 1 | -1, act: (a: Vector, b: Vector) => Vector): End => ({
    type: one.type,
    vector: act(one.vector, two.vector),
    of: (world) => {
      const [[a, b], [c, d]] = [one.of(world), two.of(world)];
      return [a + sign * c, b + sign * d];
    },
  });

  let end = given(oneOf(Object.keys(types) as Type[]), between(5, 50));
  const all = [end];
  const steps = 1 + Math.floor(random() * 4);
  for (let i = 0; i < steps; i++) {
    const next = random();
    if (next < 0.2) end = converted(end, oneOf(Object.keys(types) as Type[]));
    else if (next < 0.3 && i === 0 && types[end.type] === 0) {
      end = together(end, given(end.type, end.vector.amplitude.value * between(0.05, 0.4), "300"), -1, (a, b) =>
        slowRollCompensated(a, b),
      );
    } else {
      const again =
        next > 0.85 ? converted(oneOf(all), end.type) : given(end.type, end.vector.amplitude.value * between(0.1, 2));
      all.push(again);
      end = random() < 0.5 ? together(end, again, 1, sumOfVectors) : together(end, again, -1, differenceOfVectors);
    }
  }
  return {
    vector: end.vector,
    largest: Math.max(...all.map((one) => converted(one, end.type).vector.amplitude.value)),
    draw: (normal, uniform) => end.of(bounds.map((bound) => (bound ? Math.sqrt(3) * (2 * uniform() - 1) : normal()))),
  };
}

/** A standard deviation, and the share by which that of so many draws may be off: one standard deviation of it. */
export interface Deviation {
  readonly standard: number;
  readonly noise: number;
}

/** By the fourth moment too: what has long tails is known less well by as many draws. */
function deviationOf(draws: Float64Array): Deviation {
  const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length;
  let [second, fourth] = [0, 0];
  for (const draw of draws) {
    second += (draw - mean) ** 2 / draws.length;
    fourth += (draw - mean) ** 4 / draws.length;
  }
  return { standard: Math.sqrt(second), noise: Math.sqrt((fourth / second ** 2 - 1) / (4 * draws.length)) };
}

/** How length and phase in degrees of many draws deviate; the phase is told from about its best value. */
export function deviations(draw: () => Parts, phase: number, count: number): { length: Deviation; phase: Deviation } {
  const best = (phase * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(best), Math.sin(best)];
  const [lengths, phases] = [new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    const [x, y] = draw();
    lengths[i] = Math.hypot(x, y);
    phases[i] = (Math.atan2(y * cosine - x * sine, x * cosine + y * sine) * 180) / Math.PI;
  }
  return { length: deviationOf(lengths), phase: deviationOf(phases) };
}
