import { type Frequency, frequency, frequencyUnitSymbol, hertz } from "veladis";
import { bandOfText } from "../../src/frequency/index";
import { holdWording } from "../refusals/hold-wording";

const of = (at: unknown) => hertz(at as Frequency);

holdWording("frequency", {
  "no frequency": () => of(undefined),
  "a number": () => of(25),
  "a text for the number of hertz": () => of({ hertz: "25" }),
  "an object of zero": () => of({ hertz: 0 }),
  "no text": () => frequency(undefined as unknown as string),
  "an empty text": () => frequency(""),
  "no unit": () => of("1500"),
  "no number": () => of("r/min"),
  "a unit near one": () => of("1500 r/mim"),
  "a unit near none": () => of("25 furlongs"),
  "a band of one edge": () => bandOfText("10 Hz"),
  "a band, no number": () => bandOfText("ten to 1000 Hz"),
  zero: () => of("0 Hz"),
  "below zero": () => of("-25 Hz"),
  "an order of zero": () => of("0x 1500 r/min"),
  "a decimal comma in the order": () => of("1,5x 1500 r/min"),
  "an order of nothing": () => of("2x"),
  "below what a number holds": () => of("5e-324 r/min"),
  "a decimal comma": () => of("1,500 r/min"),
  "a unit that is no text": () => frequencyUnitSymbol(7 as unknown as string),
});
