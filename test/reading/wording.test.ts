import {
  assumedText,
  convert,
  convertAmplitude,
  format,
  parseAmplitude,
  readingType,
  significant,
  writtenValue,
} from "veladis";
import { amplitudeIn, checkedSteps, linearType, madeOf } from "../../src/reading/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const to: (value: unknown, from: unknown, to: unknown, options?: unknown) => number = convert as Loose;
const reading = parseAmplitude("4 mm/s rms");
const step = { does: "given", value: 4, type: "mm/s rms" };
const known = { standard: 0.1, distribution: "normal", stated: "± 0.2 (k=2)" };
const withThe = (more: object) => () => format({ ...reading, ...more } as Loose);

const withStep = (more: object) => withThe({ history: [{ ...step, ...more }] });

const cases: Cases = {
  "format, the quantity of another unit": withThe({ quantity: "displacement" }),
  "convert, no value": () => to(undefined, "mm/s rms", "in/s pk"),
  "convert, a text for the value": () => to("1", "mm/s rms", "in/s pk"),
  "convert, below zero": () => to(-1, "mm/s rms", "in/s pk"),
  "convert, not a number": () => to(Number.NaN, "mm/s rms", "in/s pk"),
  "convert, infinite": () => to(Number.POSITIVE_INFINITY, "mm/s rms", "in/s pk"),
  "convert, beyond what a number holds": () => to(1e308, "m rms", "um pp"),
  "convert, below what a number holds": () => to(5e-324, "um rms", "m rms"),
  "convert, no type": () => to(1, undefined, "in/s pk"),
  "convert, an empty type": () => to(1, " ", "in/s pk"),
  "convert, brackets for a type": () => to(1, "()", "in/s pk"),
  "convert, a type of any length": () => to(1, "x".repeat(1000), "in/s pk"),
  "convert, no detector": () => to(1, "mm/s", "in/s pk"),
  "convert, a unit that is none": () => to(1, "mm/sec2 rms", "in/s pk"),
  "convert, a unit near one": () => to(1, "mn/s rms", "in/s pk"),
  "convert, one word that is no unit": () => to(1, "furlongs", "in/s pk"),
  "convert, a detector that is none": () => to(1, "mm/s max", "in/s pk"),
  "convert, a detector near one": () => to(1, "mm/s rmss", "in/s pk"),
  "convert, a unit of several words that is none": () => to(1, "feet per fortnight rms", "in/s pk"),
  "convert, a true peak without its crest factor": () => to(3, "g true peak", "g rms"),
  "convert, a true peak to a derived one": () => to(3, "g true peak", "g pk", { crestFactor: 4 }),
  "convert, a true peak to another quantity": () => to(3, "g true peak", "mm/s true peak", { at: "50 Hz" }),
  "a reading that says no text for its type": () => withThe({ as: 3 })(),
  "a reading that says two types": () => withThe({ as: "in/s rms" })(),
  "a frequency told twice": () => convertAmplitude("2 mm/s rms at 50 Hz", "um pp", { at: "1500 r/min" }),
  "convert, a level without its reference": () => to(95, "dB", "mm/s rms"),
  "convert, a level with a reference that is none": () => to(95, "dB re ISO", "mm/s rms"),
  "convert, a level with a reference near one": () => to(95, "dB re ISO 1683 velocty", "mm/s rms"),
  "convert, a level with a reference of zero": () => to(95, "dB re 0 m/s", "mm/s rms"),
  "convert, a level with a decimal comma": () => to(95, "dB re 1,5 m/s", "mm/s rms"),
  "convert, a level with a reference beyond what a number holds": () => to(95, "dB re 1e999 m/s", "mm/s rms"),
  "convert, a level of the peak": () => to(95, "dB re 1e-9 m/s pk", "mm/s rms"),
  "convert, a level not a number": () => to(Number.NaN, "dB re 1e-9 m/s", "mm/s rms"),
  "convert, a level beyond what a number holds": () => to(1e5, "dB re 1e-9 m/s", "mm/s rms"),
  "convert, zero to a level": () => to(0, "mm/s rms", "dB re 1e-9 m/s"),
  "parseAmplitude, no text": () => parseAmplitude(undefined as Loose),
  "parseAmplitude, no value": () => parseAmplitude("mm/s rms"),
  "parseAmplitude, two frequencies": () => parseAmplitude("1 mm/s rms at 25 Hz at 50 Hz"),
  "parseAmplitude, of any length": () => parseAmplitude(`1 mm/s rms ${"x".repeat(300)}`),
  "parseAmplitude, no unit": () => parseAmplitude("4.1"),
  "parseAmplitude, a decimal comma": () => parseAmplitude("4,1 mm/s rms"),
  "parseAmplitude, below zero": () => parseAmplitude("-4.1 mm/s rms"),
  "parseAmplitude, infinite": () => parseAmplitude("1e999 mm/s rms"),
  "parseAmplitude, no frequency behind at": () => parseAmplitude("4.1 mm/s rms at"),
  "readingType, no text": () => readingType(undefined as Loose),
  "a reading without unit": () => format({ ...reading, unit: undefined } as Loose),
  "a reading without detector": () => format({ ...reading, detector: undefined } as Loose),
  "a reading with a level for its unit": () => format({ ...reading, unit: "dB re 1", detector: "nm/s" } as Loose),
  "a reading below zero": () => format({ ...reading, value: -1 }),
  "a reading at a standstill": () => format({ ...reading, hertz: 0 }),
  "a reading with null for its level": () => format({ ...reading, level: null } as Loose),
  "a reading with a level of no number": () => format({ ...reading, level: { decibels: Number.NaN, re: "1 nm/s" } }),
  "a reading with a level of no reference": () => format({ ...reading, level: { decibels: 95 } } as Loose),
  "format, no reading": () => format(undefined as Loose),
  "writtenValue, no reading": () => writtenValue(undefined as Loose),
  "writtenValue, below zero": () => writtenValue({ value: -1 }),
  "writtenValue, a level of no number": () => writtenValue({ value: 1, level: { re: "1 nm/s" } } as Loose),
  "assumedText, no answer": () => assumedText(undefined as Loose),
  "assumedText, no list": () => assumedText({ assumed: "sine" } as Loose),
  "assumedText, what nobody assumes": () => assumedText({ assumed: ["sinus"] } as Loose),
  "assumedText, no crest factor": () => assumedText({ assumed: ["crest-factor"] }),
  "significant, too many digits": () => significant(1, 18),
  "significant, not a number": () => significant(Number.NaN),
  "format, half a digit": () => format(4.1, "mm/s rms", { digits: 0.5 }),
  "a reading with a crest factor of zero": withThe({ crestFactor: 0 }),
  "a reading with a state that no loop has": withThe({ state: "broken" }),
  "a reading with an assumption that is none": withThe({ assumed: ["luck"] }),
  "a reading with assumptions that are no list": withThe({ assumed: "sine" }),
  "a reading with a history that is none": withThe({ history: "converted" }),
  "a reading with a step that does nothing known": withThe({ history: [{ ...step, does: "guess" }] }),
  "a reading with a step without a value": withThe({ history: [{ ...step, value: undefined }] }),
  "a reading with a step without a type": withThe({ history: [{ ...step, type: " " }] }),
  "a reading with a step from what comes later": withThe({ history: [{ ...step, of: [0] }] }),
  "a reading with a step that rounds sideways": withThe({ history: [{ ...step, does: "round", rounds: "sideways" }] }),
  "a reading with a step with a number for its note": withThe({ history: [{ ...step, note: 7 }] }),
  "a reading with a step with a text for a number": withThe({ history: [{ ...step, by: "2" }] }),
  "a reading with a level that says another value": withThe({ level: { decibels: 95, re: "1 nm/s" } }),
  "a reading with a step that starts from nothing": withThe({ history: [{ ...step, does: "sum" }] }),
  "a reading with a step whose assumptions are no list": withThe({ history: [{ ...step, assumed: "sine" }] }),
  "a reading with a step that assumed what nobody assumes": withThe({ history: [{ ...step, assumed: ["luck"] }] }),
  "a reading with a step from no list": withThe({ history: [{ ...step, of: 0 }] }),
  "an answer in decibels": () => linearType("dB re 1 nm/s"),
  "an answer in nothing": () => linearType(" "),
  "an amplitude in no type": () => amplitudeIn(undefined as Loose, 4),
  "parseAmplitude, with an uncertainty": () => parseAmplitude("4.9 ± 0.3 mm/s rms"),
  "a step with an uncertainty that is none": withStep({ uncertainty: null }),
  "a step with a standard uncertainty of zero": withStep({ uncertainty: { ...known, standard: 0 } }),
  "a step with a distribution that is none": withStep({ uncertainty: { ...known, distribution: "triangular" } }),
  "a step with an uncertainty that nobody stated": withStep({ uncertainty: { ...known, stated: undefined } }),
  "a step with an uncertainty from a number": withStep({ uncertainty: { ...known, name: 7 } }),
  "a step with an uncertainty in what none is": withStep({ uncertainty: { ...known, in: "%" } }),
  "a step with a tolerance of no frequency": withStep({ hertzUncertainty: known }),
  "a step with a frequency that is hardly known": withStep({ hertz: 25, hertzUncertainty: { ...known, standard: 20 } }),
  "a step with an uncertainty of what was added": () =>
    checkedSteps([step, { does: "sum", of: [0], value: 4, type: "mm/s rms", uncertainty: known }] as Loose),
  "a step with an uncertainty of a level times 1": () =>
    checkedSteps([step, { does: "scale", of: [0], value: 4, type: "dB re 1 nm/s", uncertainty: known }] as Loose),
  "an answer of more steps than any sum has": () => {
    const one = { ...reading, history: [{ ...step, uncertainty: known }] };
    return madeOf(new Array(5000).fill(one).map((each) => structuredClone(each)) as Loose, step as Loose);
  },
};

holdWording("reading", cases);
