import { type Amplitude, convertAmplitude } from "veladis";
import { rssDifference, vectorDifference } from "veladis/signal";
import { parseUncertain, ratioOf, uncertaintyOf, withUncertainty } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { madeOf, type Step } from "../../src/reading/index";
import reference from "../references/uncertainties-chains.json";

const v = parseUncertain("4.9 ± 0.15 mm/s rms (k=1) at 25 ± 0.2 Hz (k=1)");
const a = parseUncertain("0.4 ± 0.006 g pk (k=1) at 25 ± 0.2 Hz (k=1)");
const [x, y] = [parseUncertain("5 ± 0.05 mm/s rms (k=1)"), parseUncertain("3 ± 0.04 mm/s rms (k=1)")];
const [b, r] = [parseUncertain("3 ± 0.04 mil pp (k=1)"), parseUncertain("1 ± 0.03 mil pp (k=1)")];
const put = (does: Step["does"], value: number, ...of: Amplitude[]) =>
  madeOf(of, { does, value, type: "mm/s rms" }) as { history: readonly Step[] };
const [inches, millimetres] = [convertAmplitude(v, "in/s rms"), convertAmplitude(v, "mm rms")];

const answers: Record<keyof typeof reference.cases, Parameters<typeof uncertaintyOf>[0]> = {
  "velocity in in/s": inches,
  "velocity to displacement": convertAmplitude(v, "um pp"),
  "acceleration to velocity": convertAmplitude(a, "mm/s pk"),
  "acceleration to displacement, sensor": convertAmplitude(withUncertainty(a, "± 2.5 % (k=1)", "sensor"), "um pp"),
  "velocity as a level": convertAmplitude(v, "dB re 1e-9 m/s"),
  sum: put("sum", 8, x, y),
  difference: put("difference", 2, x, y),
  ratio: ratioOf(x, y),
  "root of the sum of squares": put("rss", Math.hypot(5, 3), x, y),
  "root of the difference of squares": rssDifference(x, y),
  "vector difference at 50 degrees": vectorDifference(b, r, 50),
  "a reading by two ways": put("sum", inches.value + millimetres.value, inches, millimetres),
  "error of a reading of itself": put("difference", 0, x, x),
};

// test/references/uncertainties-chains.py made the figures, with uncertainties 3.1.6 for Python
describe(`the standard uncertainty that ${reference.package} gives`, () => {
  it.each(Object.entries(reference.cases))("%s", (name, { value, standard }) => {
    const answer = uncertaintyOf(answers[name as keyof typeof answers], { method: "first order" });
    expect(Math.abs(answer.value - value)).toBeLessThan(1e-12 * Math.max(1, Math.abs(value)));
    expect(Math.abs(answer.standard - standard)).toBeLessThan(1e-12 * Math.max(1, standard));
  });
});
