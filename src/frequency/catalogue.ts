import { frozen, type Ratio, type Source } from "../core/index";

/** One unit of frequency: its value in hertz is `num / den`, divided by 2 pi when it counts radians. */
export interface FrequencyUnit extends Ratio {
  readonly radian?: boolean;
  /** Other symbols; part of the types. */
  readonly also?: readonly string[];
  /** Spoken names, read without regard to case; "per minute" and "per second" are read as /min and /s. */
  readonly spoken: readonly string[];
}

/** All units of frequency and shaft speed. To add one, add its row here and below, and nowhere else. */
// biome-ignore format: a row of a table is a line
export const frequencyUnits = /* @__PURE__ */ frozen({
  Hz: { num: 1, den: 1, spoken: ["hertz", "cps", "c/s", "cycles/s"] },
  kHz: { num: 1000, den: 1, spoken: ["kilohertz"] },
  "r/min": { num: 1, den: 60, also: ["rpm", "cpm"], spoken: ["rev/min", "c/min", "min-1", "1/min", "/min", "revolutions/min", "cycles/min"] },
  "r/s": { num: 1, den: 1, spoken: ["rev/s", "rps", "revolutions/s"] },
  "rad/s": { num: 1, den: 1, radian: true, spoken: ["radians/s"] },
} as const satisfies Record<string, FrequencyUnit>);

/** The symbol of a unit of frequency: a key of {@link frequencyUnits}. */
export type FrequencyUnitSymbol = keyof typeof frequencyUnits;

/** A spelling of a unit of frequency that the types know. */
export type FrequencyUnitSpelling =
  | FrequencyUnitSymbol
  | Extract<(typeof frequencyUnits)[FrequencyUnitSymbol], { readonly also: unknown }>["also"][number];

/** What is known of a unit of frequency besides its ratio. */
export interface FrequencyUnitFacts {
  readonly name: string;
  readonly source: Source;
}

const ROTATION = {
  title: "ISO 80000-3:2019, rotational frequency; NIST SP 811, section 8",
  provenance: "memory",
  note: "r/min to rad/s is pi/30, never the rounded 0.1047198",
} as const satisfies Source;

/** Name and source of each unit of frequency, by symbol. */
export const frequencyUnitFacts: Readonly<Record<FrequencyUnitSymbol, FrequencyUnitFacts>> = /* @__PURE__ */ frozen({
  Hz: { name: "hertz", source: ROTATION },
  kHz: { name: "kilohertz", source: ROTATION },
  "r/min": { name: "revolution per minute", source: ROTATION },
  "r/s": { name: "revolution per second", source: ROTATION },
  "rad/s": { name: "radian per second", source: ROTATION },
});
