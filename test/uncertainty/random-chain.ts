/** Random chains of steps with uncertain inputs, as data, and a reckoning of its own that shares no code with the library. */

type Random = () => number;

/** A step of a history, as it is written in JSON. */
interface Told {
  readonly does: string;
  readonly [name: string]: unknown;
}

/** A chain: its history, and one value of its end with all inputs drawn anew. */
export interface Chain {
  readonly history: readonly Told[];
  readonly draw: (normal: Random, uniform: Random) => number;
}

/** A repeatable random number from 0 to 1. */
export function repeatable(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Normal numbers as twelve uniform ones less six would be too short in the tails: by the polar method of Marsaglia. */
export function polar(uniform: Random): Random {
  return () => {
    for (;;) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
      const s = x * x + y * y;
      if (s > 0 && s < 1) return x * Math.sqrt((-2 * Math.log(s)) / s);
    }
  };
}

/** Units: how many SI units, and how many times the derivative of displacement. */
const units = {
  um: [1e-6, 0],
  mil: [2.54e-5, 0],
  "mm/s": [1e-3, 1],
  "in/s": [0.0254, 1],
  "m/s2": [1, 2],
  g: [9.80665, 2],
} as const;
const detectors = { rms: 1, pk: Math.SQRT2, pp: 2 * Math.SQRT2 } as const;
type Unit = keyof typeof units;
type Detector = keyof typeof detectors;

/** A value of a chain while it is made. */
interface End {
  readonly at: number;
  readonly unit: Unit;
  readonly detector: Detector;
  readonly hertz: number;
  readonly value: number;
}

/** One drawn world: the deviations of all inputs, in standard uncertainties. */
type World = readonly number[];

/** A chain of about `length` steps whose inputs have standard uncertainties of up to `most` of their values. */
export function randomChain(random: Random, length: number, most: number): Chain {
  const history: Told[] = [];
  const reckon: ((world: World, values: number[]) => number)[] = [];
  const rectangular: boolean[] = [];
  const hertzOf: (number | undefined)[] = [];
  const oneOf = <Item>(list: readonly Item[]): Item => list[Math.floor(random() * list.length)] as Item;
  const between = (low: number, high: number) => low * (high / low) ** random();

  const push = (told: Told, how: (world: World, values: number[]) => number, by: number | undefined): number => {
    history.push(told);
    reckon.push(how);
    hertzOf.push(by);
    return history.length - 1;
  };
  /** A new input, as its statement and its place in the world. */
  const input = (standard: number, decibels = false) => {
    const bound = random() < 0.4;
    rectangular.push(bound);
    const distribution = bound ? "rectangular" : "normal";
    const told = { standard, distribution, stated: `± ${standard}`, ...(decibels && { in: "dB" }) };
    return { told, place: rectangular.length - 1 };
  };

  const given = (unit: Unit, detector: Detector, hertz: number, about?: number): End => {
    const value = about === undefined ? between(0.1, 50) : about * between(0.2, 3);
    const decibels = random() < 0.25;
    const share = between(most / 10, most);
    const own = input(decibels ? (20 / Math.LN10) * share : share * value, decibels);
    // as many draws for one chain as for the other: the frequency is always thought of, and told by half of them
    const known = random() < 0.5 ? input((hertz * between(most / 10, most)) / 3) : undefined;
    const at = push(
      {
        ...{ does: "given", value, type: `${unit} ${detector}`, hertz, uncertainty: own.told },
        ...(known !== undefined && { hertzUncertainty: known.told }),
      },
      (world) => {
        const z = world[own.place] as number;
        return decibels ? value * 10 ** ((own.told.standard * z) / 20) : value + own.told.standard * z;
      },
      known?.place,
    );
    if (known !== undefined) shares.set(known.place, known.told.standard / hertz);
    return { at, unit, detector, hertz, value };
  };
  const shares = new Map<number, number>();

  const convert = (from: End, unit: Unit, detector: Detector): End => {
    const [size, order] = units[from.unit];
    const [other, power] = units[unit];
    const factor =
      (size / other) * (detectors[detector] / detectors[from.detector]) * (2 * Math.PI * from.hertz) ** (power - order);
    const by = hertzOf[from.at];
    const share = by === undefined ? 0 : (shares.get(by) as number);
    const value = from.value * factor;
    const told = { does: "convert", of: [from.at], value, type: `${unit} ${detector}` };
    const at = push(
      order === power ? told : { ...told, hertz: from.hertz },
      (world, values) =>
        (values[from.at] as number) *
        factor *
        (by === undefined ? 1 : (1 + share * (world[by] as number)) ** (power - order)),
      by,
    );
    return { ...from, at, unit, detector, value };
  };

  const influence = (from: End): End => {
    const share = between(most / 10, most);
    const own = input(share);
    const { value, unit, detector } = from;
    const at = push(
      { does: "scale", by: 1, of: [from.at], value, type: `${unit} ${detector}`, uncertainty: own.told },
      (world, values) => (values[from.at] as number) * (1 + share * (world[own.place] as number)),
      hertzOf[from.at],
    );
    return { ...from, at };
  };

  /** Two values put together; the second has the unit, the detector and the frequency of the first. */
  const together = (one: End, two: End): End => {
    const [x, y] = [one.value, two.value];
    const degrees = Math.round(360 * random());
    const rules: Record<string, (x: number, y: number) => number> = {
      sum: (a, b) => a + b,
      difference: (a, b) => a - b,
      rss: (a, b) => Math.sqrt(a * a + b * b),
      "rss difference": (a, b) => Math.sqrt(Math.max(0, a * a - b * b)),
      "vector difference": (a, b) => Math.sqrt(a * a + b * b - 2 * a * b * Math.cos((degrees * Math.PI) / 180)),
    };
    const does = oneOf(Object.keys(rules));
    const rule = rules[does] as (x: number, y: number) => number;
    // the larger one in front: what comes out stays an amplitude
    const [first, second] = x >= y ? [one, two] : [two, one];
    const value = rule(first.value, second.value);
    const told = { does, of: [first.at, second.at], value, type: `${one.unit} ${one.detector}` };
    const by = [hertzOf[first.at], hertzOf[second.at]]
      .filter((place) => place !== undefined)
      .sort((a, b) => (shares.get(b) as number) - (shares.get(a) as number))[0];
    const at = push(
      does === "vector difference" ? { ...told, by: degrees } : told,
      (_, values) => rule(values[first.at] as number, values[second.at] as number),
      by,
    );
    return { ...one, at, value };
  };

  const anyType = (): [Unit, Detector] => [
    oneOf(Object.keys(units) as Unit[]),
    oneOf(Object.keys(detectors) as Detector[]),
  ];
  let end = given(...anyType(), between(5, 200));
  while (history.length < length) {
    const next = random();
    if (next < 0.45) end = convert(end, ...anyType());
    else if (next < 0.65) end = influence(end);
    else end = together(end, given(end.unit, end.detector, end.hertz, end.value));
  }
  if (random() < 0.2) {
    const over = given(end.unit, end.detector, end.hertz, end.value);
    const [x, z] = [end.at, over.at];
    push(
      { does: "ratio", of: [x, z], value: end.value / over.value, type: "" },
      (_, values) => (values[x] as number) / (values[z] as number),
      undefined,
    );
  }
  return {
    history,
    draw(normal, uniform) {
      const world = rectangular.map((bound) => (bound ? Math.sqrt(3) * (2 * uniform() - 1) : normal()));
      const values: number[] = [];
      for (const one of reckon) values.push(one(world, values));
      return values.at(-1) as number;
    },
  };
}
