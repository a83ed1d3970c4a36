import { convert, convertAmplitude, converter, equivalents } from "veladis";
import { explain } from "veladis/explain";
import { currentLoop, formatVoltage, probeGap, sensor, signalReading } from "veladis/sensor";
import { amountOf, rssDifference, sineFrequency, vectorDifference } from "../../src/amplitude/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const to: (value: unknown, from: unknown, to: unknown, options?: unknown) => number = convert as Loose;
const by: (from: string, to: string, options?: unknown) => Loose = converter as Loose;
const loop = currentLoop("0 to 25.4 mm/s rms");
const limits = { lowFault: 3.6, lowest: 3.8, highest: 20.5, highFault: 21 };
const own = sensor("100 mV/g");
const gap = (volts: string, more: object = {}) =>
  probeGap(volts, { sensitivity: "200 mV/mil", range: "-2 to -18 V", ...more });
const shared = new Float64Array(4).buffer;

const cases: Cases = {
  "convertAmplitude, no type": () => convertAmplitude("1 g pk", undefined as never),
  "a batch whose whole is a word": () =>
    converter("in/s pk", "mm/s pk").array([1], undefined, { whole: "no" } as Loose),
  "a batch into a frozen list": () => converter("in/s pk", "mm/s pk").array([1], Object.freeze([0]) as Loose),
  "convert, no type": () => to(1, undefined, "um pp"),
  "convert, another quantity without frequency": () => to(1, "mm/s rms", "um pp"),
  "convert, a frequency of zero": () => to(1, "mm/s rms", "um pp", { at: "0 Hz" }),
  "convert, a number for the frequency": () => to(1, "mm/s rms", "um pp", { at: 25 }),
  "convert, a crest factor below 1": () => to(1, "mm/s rms", "mm/s pk", { crestFactor: 0.5 }),
  "convert, a crest factor between quantities": () => to(1, "mm/s rms", "um pk", { at: "25 Hz", crestFactor: 3 }),
  "convert, a crest factor to the average": () => to(1, "mm/s rms", "mm/s avg", { crestFactor: 3 }),
  "convert, between levels, not a number": () => to(Number.NaN, "dB re 1e-9 m/s", "dB re 1e-8 m/s"),
  "converter, below zero": () => by("mm/s rms", "in/s pk")(-1),
  "converter, beyond what a number holds": () => by("m rms", "um pp")(1e308),
  "converter.array, a text in a list": () => by("mm/s rms", "in/s pk").array([1, "2"]),
  "converter.array, a text for the list": () => by("mm/s rms", "in/s pk").array("1 2"),
  "converter.array, bytes for a target": () => by("mm/s rms", "in/s pk").array([1], new Uint8Array(1)),
  "converter.array, an option that nobody has": () => by("mm/s rms", "in/s pk").array([1], undefined, { nann: "keep" }),
  "converter.array, another word for NaN": () => by("mm/s rms", "in/s pk").array([1], undefined, { nan: "skip" }),
  "converter.array, beyond a Float32Array": () => by("dB re 1e-9 m/s", "mm/s rms").array([1000], new Float32Array(1)),
  "converter.array, arrays of two lengths": () =>
    by("mm/s rms", "in/s pk").array(new Float64Array(3), new Float64Array(2)),
  "converter.array, overlapping arrays": () =>
    by("mm/s rms", "in/s pk").array(new Float64Array(shared, 0, 3), new Float64Array(shared, 8, 3)),
  "converter.array, below zero": () => by("mm/s rms", "in/s pk").array(Float64Array.of(1, -1)),
  "converter.array, not a number": () => by("mm/s rms", "in/s pk").array(Float64Array.of(1, Number.NaN)),
  "converter.array, beyond what a number holds": () => by("m rms", "um pp").array(Float64Array.of(1, 1e308)),
  "converter.array, a level not a number": () =>
    by("dB re 1e-9 m/s", "mm/s rms").array(Float64Array.of(95, Number.NaN)),
  "converter.array, zero to a level": () => by("mm/s rms", "dB re 1e-9 m/s").array(Float64Array.of(1, 0)),
  "convertAmplitude, zero to a level": () => convertAmplitude("0 mm/s rms", "dB re 1e-9 m/s"),
  "convertAmplitude, a second crest factor": () =>
    convertAmplitude(convertAmplitude("3 g rms", "g pk", { crestFactor: 4 }), "g rms", { crestFactor: 10 }),
  "convertAmplitude, null for options": () => convertAmplitude("4 mm/s rms", "in/s pk", null as Loose),
  "convertAmplitude, a Map for options": () => convertAmplitude("4 mm/s rms", "in/s pk", new Map() as Loose),
  "converter, a date for options": () => converter("mm/s rms", "in/s pk", new Date(0) as Loose),
  "convertAmplitude, a text for options": () => convertAmplitude("4 mm/s rms", "um pp", "25 Hz" as Loose),
  "equivalents, no reading": () => equivalents("" as Loose),
  "sineFrequency, zero": () => sineFrequency("0 mm/s rms", "10 um pp"),
  "sineFrequency, one quantity": () => sineFrequency("4 mm/s rms", "0.2 in/s pk"),
  "formatVoltage, no voltage": () => formatVoltage(undefined as Loose),
  "formatVoltage, no unit": () => formatVoltage({ value: 1, detector: "rms" } as Loose),
  "formatVoltage, no detector": () => formatVoltage({ value: 1, unit: "mV" } as Loose),
  "amountOf, nothing": () => amountOf(undefined as Loose, "4 mm/s rms"),
  "amountOf, no number": () => amountOf("some", "4 mm/s rms"),
  "amountOf, no unit": () => amountOf("3", "4 mm/s rms"),
  "amountOf, decibels": () => amountOf("3 dB", "4 mm/s rms"),
  "amountOf, a level": () => amountOf("3 dB re 1 nm/s", "95 dB re 1 nm/s"),
  "amountOf, below zero": () => amountOf("-5 %", "4 mm/s rms"),
  "amountOf, a number for the text": () => amountOf(3 as Loose, "4 mm/s rms"),
  "amountOf, a decimal comma": () => amountOf("3,5 %", "4 mm/s rms"),
  "amountOf, a text in a box": () => amountOf(new String("1 mm/s rms") as Loose, "4 mm/s rms"),
  "currentLoop, a limit there is none of": () =>
    currentLoop("0 to 25.4 mm/s rms", { lowFault: 3.6, lowest: 3.8, highest: 20.5, highFault: 21, low: 4 } as Loose),
  "sensor, an option there is none of": () => own.reading("10 mV rms", "g pk", { crestfactor: 4 } as Loose),
  "currentLoop, no text": () => currentLoop(undefined as Loose),
  "currentLoop, no range": () => currentLoop("25.4 mm/s rms"),
  "currentLoop, a falling range": () => currentLoop("25.4 to 0 mm/s rms"),
  "currentLoop, limits out of order": () => currentLoop("0 to 25.4 mm/s rms", { ...limits, lowest: 4.5 }),
  "currentLoop, null for limits": () => currentLoop("0 to 25.4 mm/s rms", null as Loose),
  "currentLoop, a text for a limit": () => currentLoop("0 to 25.4 mm/s rms", { ...limits, lowFault: "3.6" } as Loose),
  "currentLoop, no lowest": () => currentLoop("0 to 25.4 mm/s rms", { ...limits, lowest: undefined } as Loose),
  "currentLoop, a highest not a number": () => currentLoop("0 to 25.4 mm/s rms", { ...limits, highest: Number.NaN }),
  "currentLoop, a highFault without end": () =>
    currentLoop("0 to 25.4 mm/s rms", { ...limits, highFault: Number.POSITIVE_INFINITY }),
  "currentLoop, a failed loop": () => loop.reading(3.2),
  "currentLoop, a loop beyond its range": () => loop.reading(21.7),
  "currentLoop, a current not a number": () => loop.reading(Number.NaN),
  "currentLoop, a percentage of no number": () => loop.percent(Number.NaN),
  "signal, no text": () => signalReading(undefined as Loose),
  "signal, none": () => signalReading("4.9 mm/s rms"),
  "probeGap, no gap": () => gap(undefined as Loose),
  "probeGap, no options": () => probeGap("-9.8 V", undefined as Loose),
  "probeGap, an option there is none of": () => gap("-9.8 V", { hot: "-9 V" }),
  "probeGap, no sensitivity": () => gap("-9.8 V", { sensitivity: undefined }),
  "probeGap, no range": () => gap("-9.8 V", { range: undefined }),
  "probeGap, a number": () => gap(-9.8 as Loose),
  "probeGap, no unit": () => gap("-9.8"),
  "probeGap, no number": () => gap("V"),
  "probeGap, a comma": () => gap("-9,8 V"),
  "probeGap, a detector": () => gap("-9.8 V rms"),
  "probeGap, milliamperes": () => gap("12 mA"),
  "probeGap, outside the linear range": () => gap("-19 V"),
  "probeGap, of the other sign": () => gap("9.8 V"),
  "probeGap, a cold gap outside the linear range": () => gap("-9.8 V", { cold: "-1 V" }),
  "probeGap, a range of one end": () => gap("-9.8 V", { range: "-18 V" }),
  "probeGap, a range across zero": () => gap("-9.8 V", { range: "-2 to 18 V" }),
  "probeGap, a range without a unit": () => gap("-9.8 V", { range: "-2 to -18" }),
  "probeGap, an accelerometer": () => gap("-9.8 V", { sensitivity: "100 mV/g" }),
  "probeGap, a limit without a cold gap": () => gap("-9.8 V", { limit: "10 mil" }),
  "probeGap, a limit of velocity": () => gap("-9.8 V", { cold: "-10 V", limit: "10 mm/s" }),
  "probeGap, a limit of zero": () => gap("-9.8 V", { cold: "-10 V", limit: "0 mil" }),
  "probeGap, a range that is a number": () => gap("-9.8 V", { range: 18 }),
  "probeGap, a limit with a comma": () => gap("-9.8 V", { cold: "-10 V", limit: "1,5 mil" }),
  "probeGap, a limit in words": () => gap("-9.8 V", { cold: "-10 V", limit: "much" }),
  "probeGap, a vibration without its frequency": () => gap("-9.8 V", { vibration: "4 mm/s rms" }),
  "signal, a sensor that is a number": () => signalReading("98 mV pk", { sensor: 100 as Loose }),
  "signal, no sensor": () => signalReading("98 mV pk"),
  "signal, no loop": () => signalReading("12 mA"),
  "signal, two sensors": () => signalReading("98 mV pk by 100 mV/g", { sensor: "500 mV/g" }),
  "signal, volts of a range": () => signalReading("98 mV pk of 100 mV/g"),
  "signal, mA with a detector": () => signalReading("12 mA rms of 0 to 1 in/s pk"),
  "signal, no number of mA": () => signalReading("1,2 mA of 0 to 1 in/s pk"),
  "sensor, no text": () => sensor(undefined as Loose),
  "sensor, no sensitivity": () => sensor("mV/g"),
  "sensor, not per unit": () => sensor("100 mV"),
  "sensor, a decimal comma": () => sensor("10,2 mV/g"),
  "sensor, zero": () => sensor("0 mV/g"),
  "sensor, a unit of voltage that is none": () => sensor("100 pC/g"),
  "sensor, per a unit that is none": () => sensor("100 mV/furlong"),
  "sensor.sensitivity, per another quantity": () => own.sensitivity("mV/(mm/s)"),
  "sensor.sensitivity, no pair": () => own.sensitivity("mV"),
  "sensor.voltage, to no detector": () => own.voltage("1 g pk", "mV" as Loose),
  "sensor.reading, no text": () => own.reading(undefined as Loose, "g pk"),
  "sensor.reading, an empty text": () => own.reading("", "g pk"),
  "sensor.reading, a decimal comma": () => own.reading("70,7 mV rms", "g pk"),
  "sensor.reading, no detector": () => own.reading("100 mV", "g pk"),
  "sensor.reading, a detector that is none": () => own.reading("100 mV max", "g pk"),
  "sensor.reading, below zero": () => own.reading("-100 mV pk", "g pk"),
  "vectorDifference, two detectors": () => vectorDifference("3 mil pp", "1 mil pk", 90),
  "vectorDifference, nothing": () => vectorDifference(undefined as Loose, "1 mil pk", 90),
  "vectorDifference, no second reading": () => vectorDifference("3 mil pp", undefined as Loose, 90),
  "vectorDifference, no angle": () => vectorDifference("3 mil pp", "1 mil pp", undefined as Loose),
  "rssDifference, peaks": () => rssDifference("3 mil pp", "1 mil pp"),
  "rssDifference, a background above the reading": () => rssDifference("3 mm/s rms", "4 mm/s rms"),
  "sensor.reading, a voltage of a loop in no state": () =>
    own.reading({ value: 1, unit: "mV", detector: "pk", state: "broken" } as Loose, "g pk"),
  "sensor.reading, a voltage below zero": () => own.reading({ value: -1, unit: "mV", detector: "pk" }, "g pk"),
  "sensor.voltage, to nothing": () => own.voltage("1 g pk", "" as Loose),
  "sensor.reading, too long to be a voltage": () => own.reading(`10 mV rms${" ".repeat(90)}x`, "g pk"),
  "sensor.reading, of a detector that is none": () => own.reading("10 mV max", "g pk"),
  "explain, nothing": () => explain(undefined as Loose),
  "explain, a step that does not come to its value": () =>
    explain({
      history: [
        { does: "given", value: 1, type: "mm/s rms" },
        { does: "scale", of: [0], by: 3, value: 2, type: "mm/s rms" },
      ],
    }),
  "explain, a conversion to another quantity without its frequency": () =>
    explain({
      history: [
        { does: "given", value: 1, type: "mm/s rms" },
        { does: "convert", of: [0], value: 2, type: "um rms" },
      ],
    }),
  "explain, what has no history": () => explain({ zone: "A" } as Loose),
};

holdWording("amplitude", cases);
