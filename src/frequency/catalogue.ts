import { frozen, type Ratio, type Source } from "../core/index";

/** One unit of frequency: its value in hertz is `num / den`, divided by 2 pi when it counts radians. */
export interface FrequencyUnit extends Ratio {
  readonly name: string;
  readonly radian: boolean;
  /** Other ways of writing the symbol; part of the types. */
  readonly written: readonly string[];
  /** Spoken names, read without regard to case. */
  readonly spoken: readonly string[];
  readonly source: Source;
}

const ROTATION = {
  title: "ISO 80000-3:2019, rotational frequency; NIST SP 811, section 8",
  provenance: "memory",
  note: "r/min to rad/s is pi/30, never the rounded 0.1047198",
} as const satisfies Source;

/** All units of frequency and shaft speed. To add one, add its row here and nowhere else. */
// biome-ignore format: a row of a table is a line
export const frequencyUnits = /* @__PURE__ */ frozen({
  Hz: { name: "hertz", num: 1, den: 1, radian: false, written: [], spoken: ["hz", "hertz", "cps", "c/s", "cycles/s"], source: ROTATION },
  kHz: { name: "kilohertz", num: 1000, den: 1, radian: false, written: [], spoken: ["khz", "kilohertz"], source: ROTATION },
  "r/min": { name: "revolution per minute", num: 1, den: 60, radian: false, written: ["rpm", "cpm"], spoken: ["rev/min", "c/min", "cycles/min", "min-1", "min^-1", "revolutions per minute", "cycles per minute"], source: ROTATION },
  "r/s": { name: "revolution per second", num: 1, den: 1, radian: false, written: [], spoken: ["rev/s", "rps", "revolutions per second"], source: ROTATION },
  "rad/s": { name: "radian per second", num: 1, den: 1, radian: true, written: [], spoken: ["rad/sec", "radians per second"], source: ROTATION },
} as const satisfies Record<string, FrequencyUnit>);

/** The symbol of a unit of frequency: a key of {@link frequencyUnits}. */
export type FrequencyUnitSymbol = keyof typeof frequencyUnits;

/** A spelling of a unit of frequency that the types know. */
export type FrequencyUnitSpelling =
  | FrequencyUnitSymbol
  | (typeof frequencyUnits)[FrequencyUnitSymbol]["written"][number];
