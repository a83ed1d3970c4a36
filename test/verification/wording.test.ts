import * as protection from "veladis/protection";
import { marginsOf } from "../../src/verification/tolerance";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const known = "8 mm/s rms at 2400 r/min";
const check = { known, indicated: "7.9 mm/s rms", tolerance: "5 %" };
const checked = (changed: object) => p.checkAgainstKnown({ ...check, ...changed });
const shaker = { lowest: "10 Hz", highest: "1000 Hz" };
const settings = { threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8, latching: true };
const plan = (changed: object) => p.benchPlan({ ...settings, ...changed }, shaker);
const reach = (level: unknown, changed: object, load: unknown = "0.1 kg") =>
  p.shakerReach(level, { ...shaker, ...changed }, load);
const rest = { tolerance: "5 %" };
const steps = [
  { level: "8.9 mm/s rms", set: false },
  { level: "9.1 mm/s rms", set: true },
];

const inject = (changed: object, injection: Loose = { inject: "mA" }) =>
  p.injectionPlan({ ...settings, loop: "0 to 20 mm/s rms", ...changed }, injection);

const cases: Cases = {
  "checkAgainstKnown, nothing": () => p.checkAgainstKnown(),
  "checkAgainstKnown, no known level": () => checked({ known: undefined }),
  "checkAgainstKnown, no indicated level": () => checked({ indicated: undefined }),
  "checkAgainstKnown, a known level of zero": () => checked({ known: "0 mm/s rms" }),
  "checkAgainstKnown, no tolerance": () => checked({ tolerance: undefined }),
  "checkAgainstKnown, a tolerance without unit": () => checked({ tolerance: "5" }),
  "checkAgainstKnown, a tolerance of the known level": () => checked({ tolerance: "100 %" }),
  "checkAgainstKnown, a tolerance above the known level": () => checked({ tolerance: "8.4 mm/s rms" }),
  "checkAgainstKnown, a tolerance below zero": () => checked({ tolerance: "-0.5 dB" }),
  "checkAgainstKnown, a tolerance with a decimal comma": () => checked({ tolerance: "0,5 dB" }),
  "checkAgainstKnown, a tolerance that is no text": () => marginsOf(null as Loose, {} as Loose),
  "checkAgainstKnown, a rule that is none": () => checked({ rule: "gard band" }),
  "checkAgainstKnown, a guard band of nothing": () => checked({ rule: "guard band" }),
  "checkAgainstKnown, a mistyped key": () => checked({ uncertanty: "2 %" }),
  "checkAgainstKnown, an uncertainty without its unit": () => checked({ uncertainty: "2 (k=2)" }),
  "checkAgainstKnown, a number for an uncertainty": () => checked({ uncertainty: 2 }),
  "checkAgainstKnown, an uncertainty of an unknown coverage": () => checked({ uncertainty: "2 % (99 %)" }),
  "asFoundAsLeft, a ± on one reading": () =>
    p.asFoundAsLeft({
      ...{ known: "8 mm/s rms at 2400 r/min", tolerance: "5 %" },
      ...{ asFound: "7.3 ± 0.1 mm/s rms", asLeft: "7.7 mm/s rms" },
    }),
  "asFoundAsLeft, nothing": () => p.asFoundAsLeft(),
  "linearity, no points": () => p.linearity(undefined, rest),
  "linearity, one level": () => p.linearity([check], rest),
  "linearity, levels in two units": () =>
    p.linearity([check, { known: "0.2 in/s pk", indicated: "0.2 in/s pk" }], rest),
  "combinedUncertainty, no list": () => p.combinedUncertainty("2 %"),
  "combinedUncertainty, no unit": () => p.combinedUncertainty(["2"]),
  "combinedUncertainty, no number": () => p.combinedUncertainty(["some"]),
  "combinedUncertainty, an amount without a reading": () => p.combinedUncertainty(["0.1 mm/s rms"]),
  "combinedUncertainty, an amount of another quantity": () => p.combinedUncertainty(["3 um pp"], "4.9 mm/s rms"),
  "combinedUncertainty, of a reading of zero": () => p.combinedUncertainty(["0.1 mm/s rms"], "0 mm/s rms"),
  "combinedUncertainty, a coverage factor below 1": () => p.combinedUncertainty(["2 % (k=0.5)"]),
  "combinedUncertainty, no text": () => p.combinedUncertainty([5]),
  "combinedUncertainty, below zero": () => p.combinedUncertainty(["-2 %"]),
  "combinedUncertainty, no parts": () => p.combinedUncertainty([]),
  "combinedUncertainty, of a reading with a ± of its own": () =>
    p.combinedUncertainty(["2 % (k=2)"], "8 ± 0.3 mm/s rms"),
  "combinedUncertainty, a decimal comma": () => p.combinedUncertainty(["2,5 %"]),
  "benchPlan, a way of a sensor fault that is none": () => plan({ sensorFault: "explode" }),
  "benchPlan, a resolution of the shaker without its unit": () =>
    p.benchPlan(settings, { ...shaker, resolution: "0.1" }),
  "benchPlan, a resolution of the shaker of zero": () => p.benchPlan(settings, { ...shaker, resolution: "0 mm/s rms" }),
  "benchPlan, a number for the name of the shaker": () => p.benchPlan(settings, { ...shaker, name: 5 } as never),
  "benchPlan, a resolution of the shaker above the threshold": () =>
    p.benchPlan(settings, { ...shaker, resolution: "20 mm/s rms" }),
  "benchPlan, no settings": () => p.benchPlan(undefined, shaker),
  "benchPlan, no shaker": () => p.benchPlan(settings),
  "benchPlan, no threshold": () => plan({ threshold: undefined }),
  "benchPlan, a threshold of zero": () => plan({ threshold: "0 mm/s rms" }),
  "benchPlan, a hysteresis as large as the threshold": () => plan({ hysteresis: "100 %" }),
  "benchPlan, a mistyped key": () => plan({ freqencies: ["80 Hz"] }),
  "benchPlan, a delay below zero": () => plan({ onDelay: -1 }),
  "benchPlan, an off-delay below zero": () => plan({ offDelay: -1 }),
  "benchPlan, latching not said": () => plan({ latching: undefined }),
  "benchPlan, a word for latching": () => plan({ latching: "yes" }),
  "benchPlan, a contact that is none": () => plan({ contact: "normally opened" }),
  "benchPlan, a coil that is none": () => plan({ coil: "energized" }),
  "benchPlan, a number for a sensor fault": () => plan({ sensorFault: 1 }),
  "benchPlan, null for a load": () => plan({ load: null }),
  "shakerReach, null for a moving mass": () => reach(known, { force: { newtons: 100 }, movingMass: null }),
  "shakerReach, null for a payload": () => reach(known, { payload: null }),
  "benchPlan, a tolerance as large as the threshold": () => plan({ tolerance: "100 %" }),
  "benchPlan, a first frequency outside the band": () =>
    plan({ frequencies: ["2 Hz"], band: { lowest: "10 Hz", highest: "1 kHz" } }),
  "benchPlan, one frequency": () => plan({ frequencies: "80 Hz" }),
  "benchPlan, no frequency": () => plan({ frequencies: [] }),
  "benchPlan, a shaker without any of its fixed frequencies": () =>
    p.benchPlan(settings, { ...shaker, frequencies: [] }),
  "benchPlan, one fixed frequency": () => p.benchPlan(settings, { ...shaker, frequencies: "80 Hz" }),
  "benchPlan, a fixed frequency without its unit": () =>
    p.benchPlan(settings, { ...shaker, frequencies: ["80 Hz", "159"] }),
  "benchPlan, a loop that is none": () => plan({ loop: "20 mm/s rms" }),
  "benchPlan, a sensor without its unit": () => plan({ sensor: "100" }),
  "injectionPlan, no settings": () => p.injectionPlan(),
  "injectionPlan, no injection": () => inject({}, null),
  "injectionPlan, a signal that is none": () => inject({}, { inject: "V" }),
  "injectionPlan, a current known to decibels": () => inject({}, { inject: "mA", uncertainty: "0.1 dB" }),
  "injectionPlan, an uncertainty that is no text": () => inject({}, { inject: "mA", uncertainty: 0.5 }),
  "injectionPlan, a voltage that proves nothing": () =>
    inject({ sensor: "100 mV/g" }, { inject: "mV", uncertainty: "120 % (k=2)" }),
  "injectionPlan, a mistyped key": () => inject({}, { inject: "mA", uncertanty: "1 %" }),
  "injectionPlan, a resolution without its unit": () => inject({}, { inject: "mA", resolution: "0.01" }),
  "injectionPlan, a resolution in another unit": () => inject({}, { inject: "mA", resolution: "0.1 mV" }),
  "injectionPlan, a resolution of zero": () => inject({}, { inject: "mA", resolution: "0 mA" }),
  "injectionPlan, a resolution with a decimal comma": () => inject({}, { inject: "mA", resolution: "0,01 mA" }),
  "injectionPlan, a resolution above what it sets": () =>
    inject({ sensor: "100 mV/g" }, { inject: "mV", resolution: "500 mV" }),
  "injectionPlan, a number for a resolution": () => inject({}, { inject: "mA", resolution: 0.01 }),
  "injectionPlan, a number for the final element": () => inject({}, { inject: "mA", finalElement: 7 }),
  "injectionPlan, no loop": () => inject({ loop: undefined }),
  "injectionPlan, no sensor": () => inject({}, { inject: "mV" }),
  "injectionPlan, a frequency of a current": () => inject({ frequencies: ["80 Hz"] }),
  "injectionPlan, a band of a current": () => inject({ band: { lowest: "10 Hz", highest: "1 kHz" } }),
  "injectionPlan, two frequencies of a voltage": () =>
    inject({ sensor: "100 mV/g", frequencies: ["40 Hz", "80 Hz"] }, { inject: "mV" }),
  "injectionPlan, a voltage outside the band": () =>
    inject(
      { sensor: "100 mV/g", frequencies: ["2 Hz"], band: { lowest: "10 Hz", highest: "1 kHz" } },
      { inject: "mV" },
    ),
  "injectionPlan, a source that proves nothing": () => inject({}, { inject: "mA", uncertainty: "120 % (k=2)" }),
  "checkPoints, no list": () => p.checkPoints("8 mm/s rms", rest),
  "checkPoints, no points": () => p.checkPoints([], rest),
  "checkPoints, a number for a name": () => p.checkPoints([{ ...check, tolerance: undefined, point: 7 }], rest),
  "checkPoints, a point without its known level": () => p.checkPoints([{ indicated: "8 mm/s rms" }], rest),
  "checkPoints, nothing said of all": () => p.checkPoints([check]),
  "shakerReach, no level": () => reach(undefined, {}),
  "shakerReach, no shaker": () => p.shakerReach(known, undefined, "0.1 kg"),
  "shakerReach, a mistyped key": () => reach(known, { acceleraton: "6 g pk" }),
  "shakerReach, null for a force": () => reach(known, { force: null }),
  "shakerReach, a moving mass below zero": () => reach(known, { force: { newtons: 100 }, movingMass: "-1 kg" }),
  "shakerReach, a number for a payload": () => reach(known, { payload: 0.5 }),
  "shakerReach, no frequency": () => reach("9 mm/s rms", {}),
  "shakerReach, a load below zero": () => reach(known, {}, "-1 kg"),
  "shakerReach, a force that moves nothing": () => reach(known, { force: { newtons: 100 } }, "0 kg"),
  "shakerReach, a force of zero": () => reach(known, { force: { newtons: 0 } }),
  "tripPointTest, no threshold": () => p.tripPointTest(undefined, steps, rest),
  "tripPointTest, no steps": () => p.tripPointTest("9 mm/s rms", undefined, rest),
  "tripPointTest, a step without level": () => p.tripPointTest("9 mm/s rms", [{ set: false }], rest),
  "tripPointTest, levels that fall": () => p.tripPointTest("9 mm/s rms", [...steps].reverse(), rest),
  "tripPointTest, an output that never sets": () => p.tripPointTest("9 mm/s rms", steps.slice(0, 1), rest),
  "resetPointTest, levels that rise": () => p.resetPointTest("8.28 mm/s rms", steps, rest),
  "resetPointTest, an output that never clears": () => p.resetPointTest("8.28 mm/s rms", steps.slice(1), rest),
  "delayTest, a set delay below zero": () => p.delayTest(-1, [1], "5 %"),
  "delayTest, no list": () => p.delayTest(1, 1, "5 %"),
  "delayTest, nothing measured": () => p.delayTest(1, [], "5 %"),
  "delayTest, a measured delay below zero": () => p.delayTest(1, [-1], "5 %"),
  "delayTest, no tolerance": () => p.delayTest(1, [1]),
  "delayTest, a tolerance without unit": () => p.delayTest(1, [1], "5"),
  "delayTest, a tolerance in minutes": () => p.delayTest(1, [1], "5 min"),
  "delayTest, a tolerance of zero": () => p.delayTest(1, [1], "0 %"),
  "delayTest, a tolerance with a decimal comma": () => p.delayTest(1, [1], "0,2 s"),
};

holdWording("verification", cases);
