import fc from "fast-check";
import type { Machine } from "../../src/severity/index";

/** A nameplate as this model has it: numbers in kW, r/min, mm, m and Hz, all else as its owner writes it. */
export interface Nameplate {
  readonly type?: string;
  readonly power?: number;
  readonly speed?: number | readonly [low: number, high: number];
  readonly shaftHeight?: number;
  readonly frame?: string;
  readonly height?: number;
  readonly naturalFrequency?: number;
  readonly support?: string;
  readonly mounting?: string;
  readonly place?: string;
  readonly condition?: string;
  readonly group?: string;
  readonly class?: string;
  readonly category?: string;
  readonly grade?: string;
  readonly region?: string;
  readonly test?: string;
  readonly part?: string;
  readonly band?: string;
  readonly content?: string;
  readonly units?: string;
}

export type NameplateFact = keyof Nameplate;

/** Powers at which the scope or a class of some standard begins or ends, keyed by hand from their scopes, in kW. */
export const powerEdges = [0.15, 1, 3.7, 15, 20, 100, 200, 300, 1000, 3000, 40_000, 50_000];

/** Speeds at which a scope, a class or a criterion of some standard begins or ends, in r/min. */
export const speedEdges = [60, 120, 600, 1000, 1500, 1800, 3000, 3600, 12_000, 15_000, 30_000];

const heightEdges = [56, 132, 160, 225, 280, 315];

/** On, just beside and near an edge, or anywhere: a tenth of the numbers lie beside none. */
function near(edges: readonly number[], low: number, high: number): fc.Arbitrary<number> {
  const beside = fc.constantFrom(1, 1, 0.999, 1.001, 0.995, 1.005, 0.8, 1.25);
  return fc.oneof(
    { weight: 6, arbitrary: fc.tuple(fc.constantFrom(...edges), beside).map(([edge, by]) => edge * by) },
    {
      weight: 4,
      arbitrary: fc
        .double({ min: Math.log(low), max: Math.log(high), noNaN: true })
        .map((log) => Number(Math.exp(log).toPrecision(4))),
    },
  );
}

/** On, beside or between the edges, a little beyond what such machines have at most. */
function within(edges: readonly number[], low: number, high: number): fc.Arbitrary<number> {
  const own = edges.filter((edge) => edge >= low * 0.9 && edge <= high * 1.1);
  return near(own, low, high).map((value) => Number(value.toPrecision(6)));
}

function speedOf(low: number, high: number): fc.Arbitrary<number | readonly [number, number]> {
  const single = within(speedEdges, low, high);
  const range = fc.tuple(single, fc.constantFrom(1.2, 2, 5)).map(([least, by]) => [least, least * by] as const);
  return fc.oneof({ weight: 5, arbitrary: single }, { weight: 1, arbitrary: range });
}

const electrical = ["motor", "generator"];

/** Labels that standards for such machines have, and a few of other standards; Roman and Arabic. */
const labels = {
  pump: {
    category: ["I", "II", "1", "2", "ii"],
    class: ["between bearings", "overhung", "vertically suspended"],
    group: ["3", "4"],
  },
  fan: { category: ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5", "bv 3"], group: ["1", "2", "I", "II"] },
  motor: { group: ["1", "2", "I", "ii"], class: ["I", "II", "3", "IV"], grade: ["A", "B"] },
  generator: { group: ["1", "2", "I"], class: ["II", "3", "IV"], grade: ["A", "B"] },
  compressor: { group: ["1", "2", "II"], class: ["II", "III", "4"] },
  "screw compressor": { group: ["1", "2", "3"], band: ["A", "B"], class: ["III"] },
  "lobe blower": { group: ["1", "2"], class: ["II"] },
  "centrifugal chiller": { group: ["1", "2"], class: ["II", "III"] },
  "gear drive": { class: ["II", "3", "IV"] },
  "steam turbine": { group: ["1", "2"], class: ["III", "4"] },
  "gas turbine": { group: ["1", "2"], class: ["III", "IV"] },
  "hydro set": { group: ["1", "2", "3", "4", "IV"], part: ["location 1", "other main bearings"] },
  "reciprocating engine": { class: ["1", "3", "V", "7"] },
  "reciprocating generating set": { class: ["1", "3", "V"] },
  "reciprocating compressor": { part: ["foundation", "frame", "cylinder lateral", "piping"], class: ["2", "IV"] },
  "wind turbine": { part: ["gearbox", "generator", "nacelle and tower", "rotor bearing"], band: ["low", "high"] },
} as const satisfies Record<string, { readonly [F in NameplateFact]?: readonly string[] }>;

/** Powers in kW and speeds in r/min from which to which such machines are built, as far as standards reach and beyond. */
const sizes: Partial<
  Record<keyof typeof labels, readonly [power: number, powerTo: number, speed: number, speedTo: number]>
> = {
  "hydro set": [900, 100_000, 50, 2000],
  "reciprocating engine": [15, 5000, 100, 3600],
  "reciprocating generating set": [5, 5000, 100, 3600],
  "reciprocating compressor": [15, 5000, 110, 2000],
  "wind turbine": [190, 3300, 60, 1800],
  "steam turbine": [10, 100_000, 110, 32_000],
  "gas turbine": [100, 100_000, 500, 32_000],
};

const strange = {
  group: ["1", "2", "3"],
  class: ["I", "II", "III"],
  category: ["I", "II", "BV-3"],
  grade: ["A", "B"],
} as const;

/** A label of the standards for the machine at times, of other standards at few times, else none. */
function label(own: readonly string[] | undefined, other: readonly string[] | undefined) {
  return fc.oneof(
    { weight: 14, arbitrary: fc.constant(undefined) },
    ...(own === undefined ? [] : [{ weight: 5, arbitrary: fc.constantFrom(...own) }]),
    ...(other === undefined ? [] : [{ weight: 1, arbitrary: fc.constantFrom(...other) }]),
  );
}

function some<T>(weight: number, arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> {
  return fc.oneof({ weight: 2 * weight, arbitrary }, { weight: 20 - 2 * weight, arbitrary: fc.constant(undefined) });
}

function ofType(type: keyof typeof labels): fc.Arbitrary<Nameplate> {
  const own: { readonly [F in NameplateFact]?: readonly string[] } = labels[type];
  const [least, most, slowest, fastest] = sizes[type] ?? [0.5, 60_000, 55, 32_000];
  const isElectrical = electrical.includes(type);
  return fc
    .record({
      type: fc.constant(type),
      power: some(9, within(powerEdges, least, most)),
      speed: some(9, speedOf(slowest, fastest)),
      shaftHeight: isElectrical ? some(4, near(heightEdges, 40, 1000)) : fc.constant(undefined),
      frame: isElectrical ? some(2, fc.constantFrom("IEC", "NEMA")) : fc.constant(undefined),
      height: some(1, fc.constantFrom(1, 2.5, 4)),
      naturalFrequency: some(0.5, fc.constantFrom(10, 25, 65, 200)),
      support: some(5, fc.constantFrom("rigid", "flexible")),
      mounting: some(2, fc.constantFrom("rigid", "resilient", "free")),
      contradicts: some(1, fc.constant(true)).map((is) => is === true),
      place: some(5, fc.constantFrom("housing", "housing", "housing", "shaft")),
      condition: some(7, fc.constantFrom("in service", "in service", "new")),
      group: label(own.group, strange.group),
      class: label(own.class, strange.class),
      category: label(own.category, strange.category),
      grade: label(own.grade, strange.grade),
      region: some(type === "pump" ? 5 : 1, fc.constantFrom("preferred", "allowable")),
      test: some(type === "pump" || type === "fan" ? 5 : 1, fc.constantFrom("works", "site")),
      part: asked(own.part),
      band: asked(own.band),
      content: some(type === "pump" ? 4 : 1, fc.constantFrom("overall", "discrete", "subsynchronous")),
      units: some(type === "pump" ? 4 : 1, fc.constantFrom("metric", "customary")),
    })
    .map(stated);
}

/** A fact that a standard for the machine asks for, and that its owner mostly states. */
function asked(own: readonly string[] | undefined) {
  return own === undefined ? fc.constant(undefined) : some(7, fc.constantFrom(...own));
}

/** Mountings that mostly agree with a support: a tenth of those who say both contradict themselves. */
const agreeing: Readonly<Record<string, string>> = { rigid: "rigid", flexible: "resilient" };

interface Raw {
  readonly frame: string | undefined;
  readonly shaftHeight: number | undefined;
  readonly support: string | undefined;
  readonly mounting: string | undefined;
  readonly contradicts: boolean;
}

/** Without what is not stated; a shaft height in mm is that of a metric frame. */
function stated({ frame, contradicts, ...rest }: Raw): Nameplate {
  const { support, mounting, shaftHeight } = rest;
  const agreed = support === undefined || mounting === undefined || contradicts ? mounting : agreeing[support];
  const facts = { ...rest, mounting: agreed, ...(shaftHeight === undefined && { frame }) };
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as Nameplate;
}

/** A nameplate of any kind of machine, with many of its facts. */
export const someNameplate: fc.Arbitrary<Nameplate> = fc
  .constantFrom(...(Object.keys(labels) as (keyof typeof labels)[]))
  .chain(ofType);

/** The nameplate without some facts. */
export function without(plate: Nameplate, dropped: readonly NameplateFact[]): Nameplate {
  return Object.fromEntries(
    Object.entries(plate).filter(([fact]) => !dropped.includes(fact as NameplateFact)),
  ) as Nameplate;
}

/** The nameplate as data. */
export function asData(plate: Nameplate): Machine {
  const { power, speed, shaftHeight, height, naturalFrequency, ...texts } = plate;
  return {
    ...texts,
    ...(power !== undefined && { power: { kilowatts: power } }),
    ...(speed !== undefined && {
      speed:
        typeof speed === "number"
          ? { hertz: speed / 60 }
          : { from: { hertz: speed[0] / 60 }, to: { hertz: speed[1] / 60 } },
    }),
    ...(shaftHeight !== undefined && { shaftHeight: { millimetres: shaftHeight } }),
    ...(height !== undefined && { height: { metres: height } }),
    ...(naturalFrequency !== undefined && { naturalFrequency: { hertz: naturalFrequency } }),
  } as Machine;
}

const units = { power: "kW", shaftHeight: "mm", height: "m", naturalFrequency: "Hz", speed: "r/min" } as const;
const names: Partial<Record<NameplateFact, string>> = {
  shaftHeight: "shaft height",
  height: "measuring height",
  naturalFrequency: "natural",
};
const alone: readonly string[] = ["type", "support", "place", "condition", "power", "speed"];

/** The nameplate in words. */
export function inWords(plate: Nameplate): string {
  return (Object.entries(plate) as [NameplateFact, string | number | readonly number[]][])
    .map(([fact, value]) => {
      const text = Array.isArray(value) ? value.join(" to ") : value;
      const unit = fact in units ? ` ${units[fact as keyof typeof units]}` : "";
      const name = alone.includes(fact) ? "" : `${names[fact] ?? fact} `;
      return `${name}${text}${unit}`;
    })
    .join(", ");
}

/** Readings near the limits of all standards, in the types that people read, a few with their frequency. */
export const someReading: fc.Arbitrary<string> = fc
  .record({
    type: fc.constantFrom("mm/s rms", "mm/s rms", "mm/s pk", "in/s pk", "um pp", "um rms", "mil pp"),
    size: fc.double({ min: -1.5, max: 2, noNaN: true }),
    at: some(2, fc.constantFrom(10, 25, 50, 100)),
  })
  .map(({ type, size, at }) => {
    const scale = type.startsWith("um") ? 20 : type === "in/s pk" ? 0.05 : 1;
    const text = `${(2 * scale * Math.exp(size)).toPrecision(4)} ${type}`;
    return at === undefined ? text : `${text} at ${at} Hz`;
  });
