import { frozen } from "../core/index";

/** A fact given as a number, with the unit it is held in. */
interface NumberFactEntry {
  readonly unit: "kW" | "r/min" | "mm" | "Hz" | "m";
  readonly ask: string;
}

/** A fact given as a word or a label. */
interface TextFactEntry {
  readonly unit?: undefined;
  readonly ask: string;
}

/** What a table can ask of a machine, each with the question to its owner. To add one, add its row here. */
// biome-ignore format: a row of a table is a line
export const facts = /* @__PURE__ */ frozen({
  type: { ask: "the kind of machine" },
  power: { unit: "kW", ask: "the rated power" },
  speed: { unit: "r/min", ask: "the running speed" },
  shaftHeight: { unit: "mm", ask: "the shaft height of the electrical machine" },
  frame: { ask: "the system of frame sizes of the electrical machine: IEC, in mm, or NEMA, in inches" },
  height: { unit: "m", ask: "the height of the measuring point above the base" },
  naturalFrequency: { unit: "Hz", ask: "the lowest natural frequency of machine and support in the measured direction" },
  support: { ask: "the support in the measured direction (rigid: lowest natural frequency of machine and support at least 25 % above the running frequency)" },
  place: { ask: "where the reading was taken: on the housing, or the shaft against its housing" },
  condition: { ask: "whether the machine is new or in service" },
  group: { ask: "the machine group of the standard" },
  class: { ask: "the machine class of the standard" },
  application: { ask: "what the fan is for" },
  category: { ask: "the category of the standard" },
  grade: { ask: "the vibration grade ordered" },
  mounting: { ask: "the mounting on the test bed" },
  region: { ask: "the operating region of the pump: preferred or allowable" },
  test: { ask: "where the test is made: at the works or on site" },
  part: { ask: "the part the reading was taken on" },
  band: { ask: "the band the reading was taken in" },
  content: { ask: "whether the reading is the overall or one discrete frequency" },
  units: { ask: "the column of units the contract uses" },
} as const satisfies Record<string, NumberFactEntry | TextFactEntry>);

/** The name of a fact about a machine: a key of {@link facts}. */
export type Fact = keyof typeof facts;

/** A fact given as a number. */
export type NumberFact = { [F in Fact]: (typeof facts)[F] extends { unit: string } ? F : never }[Fact];

/** A fact given as a word or a label. */
export type TextFact = Exclude<Fact, NumberFact>;

/** True for a fact given as a number. */
export function isNumberFact(fact: Fact): fact is NumberFact {
  return "unit" in facts[fact];
}
