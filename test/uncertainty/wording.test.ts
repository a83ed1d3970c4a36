import { convertAmplitude } from "veladis";
import * as uncertainty from "veladis/uncertainty";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const u: Record<string, Loose> = uncertainty;
const read = (text: unknown) => u.parseUncertain(text);
const own = { standard: 0.1, distribution: "normal", stated: "± 0.2 (k=2)" };
const given = { does: "given", value: 5, type: "mm/s rms", hertz: 25 };

const phased = (more: object) => u.uncertaintyOf({ history: [{ ...given, phase: 45, ...more }] });

const cases: Cases = {
  "uncertaintyOf, a value that was replaced": () =>
    u.uncertaintyOf({ ...read("4.9 ± 0.3 mm/s rms (k=2)"), value: 5.2 }),
  "uncertaintyOf, a frequency that was left out for another": () =>
    u.uncertaintyOf(
      convertAmplitude({ ...read("4.9 mm/s rms at 25 ± 0.5 Hz"), hertz: undefined }, "um pp", { at: "50 Hz" }),
    ),
  "uncertaintyOf, a frequency that was replaced": () =>
    u.uncertaintyOf(convertAmplitude({ ...read("4.9 mm/s rms at 25 ± 0.5 Hz"), hertz: 50 }, "um pp")),
  "parseUncertain, nothing": () => u.parseUncertain(),
  "parseUncertain, no text": () => read(4.9),
  "parseUncertain, too long": () => read(`4.9 ± 0.3 mm/s rms${" ".repeat(200)}at 25 Hz`),
  "parseUncertain, two frequencies": () => read("4.9 ± 0.3 mm/s rms at 25 Hz at 50 Hz"),
  "parseUncertain, below zero": () => read("4.9 ± -0.3 mm/s rms"),
  "parseUncertain, infinite": () => read("4.9 ± 1e999 mm/s rms"),
  "parseUncertain, a word for infinite": () => read("4.9 ± Infinity mm/s rms"),
  "parseUncertain, no amount": () => read("4.9 ± mm/s rms"),
  "parseUncertain, a decimal comma": () => read("4.9 ± 0,3 mm/s rms"),
  "parseUncertain, two tolerances of a frequency": () => read("4.9 mm/s rms at 25 ± 0.5 ± 0.2 Hz"),
  "parseUncertain, two of them": () => read("4.9 ± 0.3 ± 0.2 mm/s rms"),
  "parseUncertain, an interval that is not about the reading": () => read("4.9 mm/s rms, 95 % within 5 to 9"),
  "parseUncertain, an interval with an end that is no number": () => read("4.9 mm/s rms, 95 % within 4.9.1 to 9"),
  "parseUncertain, an interval and a ±": () => read("4.9 ± 0.1 mm/s rms, 95 % within 4 to 9"),
  "parseUncertain, a coverage of another share": () => read("4.9 ± 0.3 mm/s rms (99 %)"),
  "parseUncertain, a coverage of two shares": () => read("4.9 ± 0.3 mm/s rms (k=2, 3 sigma)"),
  "parseUncertain, a factor that is not that of its share": () => read("4.9 ± 0.3 mm/s rms (k=3, 95 %)"),
  "parseUncertain, a coverage factor below 1": () => read("4.9 ± 0.3 mm/s rms (k=0.5)"),
  "parseUncertain, a coverage factor that is none": () => read("4.9 ± 0.3 mm/s rms (k=two)"),
  "parseUncertain, a coverage factor with a decimal comma": () => read("4.9 ± 0.3 mm/s rms, k=2,5"),
  "parseUncertain, two unequal sides": () => read("4.9 +0.3/-0.2 mm/s rms"),
  "parseUncertain, two coverage factors": () => read("4.9 ± 0.3 (k=2) mm/s rms (k=3)"),
  "parseUncertain, a coverage factor of nothing": () => read("4.9 mm/s rms (k=2)"),
  "parseUncertain, a share of a level": () => read("95 ± 5 % dB re 1e-9 m/s"),
  "parseUncertain, another detector": () => read("4.9 mm/s rms ± 0.3 mm/s pk"),
  "parseUncertain, another quantity": () => read("4.9 mm/s rms ± 3 um rms"),
  "parseUncertain, no unit": () => read("4.9 ± 0.3"),
  "parseUncertain, more than the reading": () => read("4.9 ± 5 mm/s rms"),
  "parseUncertain, more than all of the reading": () => read("4.9 ± 120 % mm/s rms"),
  "parseUncertain, an order with an amount": () => read("4.9 mm/s rms at 2x 1500 r/min ± 10 r/min"),
  "parseUncertain, a frequency in decibels": () => read("4.9 mm/s rms at 25 Hz ± 1 dB"),
  "parseUncertain, a frequency in decibels of a reading with its own": () => read("4.9 ± 0.1 mm/s rms at 25 Hz ± 1 dB"),
  "parseUncertain, a coverage factor of an exact frequency": () => read("4.9 ± 0.1 mm/s rms at 25 Hz (k=2)"),
  "parseUncertain, a share that may be of reading or frequency": () => read("4.9 mm/s rms at 25 Hz ± 5 % (k=2)"),
  "parseUncertain, a frequency that is hardly known": () => read("4.9 mm/s rms at 25 ± 12 Hz"),
  "withUncertainty, nothing": () => u.withUncertainty("4.9 mm/s rms"),
  "withUncertainty, no name": () => u.withUncertainty("4.9 mm/s rms", "± 5 %"),
  "withUncertainty, no amount": () => u.withUncertainty("4.9 mm/s rms", "a little", "sensor"),
  "withUncertainty, a level and a bare number": () => u.withUncertainty("95 dB re 1 nm/s", "± 0.5", "sensor"),
  "formatUncertain, nothing": () => u.formatUncertain(),
  "ratioOf, nothing": () => u.ratioOf("4.9 mm/s rms"),
  "ratioOf, other quantities": () => u.ratioOf("4.9 mm/s rms", "3 um rms"),
  "ratioOf, other detectors": () => u.ratioOf("4.9 mm/s rms", "3 mm/s pk"),
  "ratioOf, by zero": () => u.ratioOf("4.9 mm/s rms", "0 mm/s rms"),
  "ratioOf, two frequencies": () => u.ratioOf("4.9 mm/s rms at 25 Hz", "3 mm/s rms at 50 Hz"),
  "uncertaintyOf, nothing": () => u.uncertaintyOf(),
  "uncertaintyOf, no options": () => u.uncertaintyOf("4.9 mm/s rms", null),
  "uncertaintyOf, a number for options": () => u.uncertaintyOf("4.9 mm/s rms", 5),
  "uncertaintyOf, ten draws that are not drawn": () => u.uncertaintyOf("4.9 ± 0.1 mm/s rms", { draws: 10 }),
  "uncertaintyOf, no history": () => u.uncertaintyOf({}),
  "uncertaintyOf, no steps": () => u.uncertaintyOf({ history: [] }),
  "uncertaintyOf, a mistyped option": () => u.uncertaintyOf("4.9 mm/s rms", { drws: 5 }),
  "uncertaintyOf, a method that is none": () => u.uncertaintyOf("4.9 mm/s rms", { method: "second order" }),
  "uncertaintyOf, half a draw": () => u.uncertaintyOf("4.9 ± 3 mm/s rms", { draws: 0.5 }),
  "uncertaintyOf, a seed of zero": () => u.uncertaintyOf("4.9 ± 3 mm/s rms", { seed: 0 }),
  "uncertaintyOf, a divisor that may be zero": () => u.uncertaintyOf(u.ratioOf("4.9 mm/s rms", "2 ± 2 mm/s rms (k=1)")),
  "uncertaintyOf, no uncertainty of a phase": () => phased({ phaseUncertainty: null }),
  "uncertaintyOf, a phase that is none": () => phased({ phase: "late", phaseUncertainty: own }),
  "uncertaintyOf, an uncertainty of a phase without one": () => phased({ phase: undefined, phaseUncertainty: own }),
  "uncertaintyOf, a phase known to nothing": () => phased({ phaseUncertainty: { ...own, standard: 0 } }),
  "uncertaintyOf, a phase by a distribution that is none": () =>
    phased({ phaseUncertainty: { ...own, distribution: "U" } }),
  "uncertaintyOf, a phase as nobody stated it": () => phased({ phaseUncertainty: { ...own, stated: "" } }),
  "uncertaintyOf, a phase that is hardly known": () => phased({ phaseUncertainty: { ...own, standard: 46 } }),
  "uncertaintyOf, a vector difference that is none": () =>
    u.uncertaintyOf({
      history: [
        { ...given, phase: 45, phaseUncertainty: own },
        { ...given, phase: 45 },
        { does: "vector difference", of: [0, 1], by: 0, phase: 90, value: 5, type: "mm/s rms" },
      ],
    }),
  "uncertaintyOf, a step without arithmetic": () =>
    u.uncertaintyOf({
      history: [
        { ...given, uncertainty: own },
        { does: "statistic", of: [0], value: 6, type: "mm/s rms" },
      ],
    }),
};

holdWording("uncertainty", cases);
