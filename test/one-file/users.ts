/** A program that uses every new name: the compiler must take it, and refuse what it marks. */
export const CONSUMER = `
import { convert, converter, type Detector, type FrequencyUnitSymbol, type LevelReferenceName, type UnitSymbol } from "veladis";
import { classify, heatingWorksFans, type SchemeId } from "veladis/severity";

export const unit: UnitSymbol = "kn";
export const detector: Detector = "half";
export const frequency: FrequencyUnitSymbol = "deg/s";
export const reference: LevelReferenceName = "works velocity";
export const scheme: SchemeId = "heating-works-fans";

convert(1, "kn pk", "mm/s rms");
convert(1, "knt half", "um pp", { at: "9000 deg/s" });
converter("dB re works velocity", "kn rms", { at: "2x 4500 dps" });
export const zone: "A" | "AB" | "B" | "C" | "D" = classify("3 mm/s rms", { scheme: "heating-works-fans" }).zone;
export const kind: "zones" = heatingWorksFans.kind;

// @ts-expect-error velocity becomes displacement: a frequency is needed
convert(1, "kn pk", "um pp");
// @ts-expect-error no such unit
convert(1, "knn pk", "mm/s pk");
`;

/** A program that asks every entry for the new names, and prints what it gets as JSON. */
export const PROBE = `
import { all, create } from "mathjs";
import { convert, convertAmplitude, format, parseAmplitude } from "veladis";
import { detectorFacts } from "veladis/facts";
import { completions, evaluateLine, newSession, registerAmplitudes } from "veladis/mathjs";
import { classify, selectSchemes } from "veladis/severity";
import { overall, overallStream } from "veladis/signal";
import { schemeToSql, toSql } from "veladis/sql";
import { files } from "./docs/site/generate";

const rate = 5120;
const wave = Float64Array.from({ length: 4 * rate }, (_, i) => Math.PI * Math.sin((2 * Math.PI * 100 * i) / rate));
const measured = { rate, unit: "mm/s", band: [10, 1000], as: "mm/s half" };
const stream = overallStream(measured);
stream.push(wave);

const math = registerAmplitudes(create(all));
const line = async (text) => (await evaluateLine(text)).text;

console.log(JSON.stringify({
  convert: [
    convert(1, "kn pk", "m/s pk"),
    convert(1, "mm/s pk", "mm/s half"),
    convert(1, "mm/s rms", "um rms", { at: "9000 deg/s" }),
    convert(0, "dB re works velocity", "nm/s rms"),
  ],
  parse: [
    parseAmplitude("3 knots half average at 9000 degrees per second"),
    parseAmplitude("20 dB re works velocity"),
  ],
  format: [format(convertAmplitude("1 m/s pk", "kn half")), format(convertAmplitude("5e-6 mm/s rms", "dB re works velocity"))],
  samples: [detectorFacts.half.ofSamples([1, -1, 3, -3]), overall(wave, measured).value, stream.read().value],
  zones: ["2 mm/s rms", "3 mm/s rms", "5 mm/s rms", "7 mm/s rms"].map((reading) =>
    classify(reading, { scheme: "heating-works-fans", machine: "flexible" }).zone),
  selected: selectSchemes("fan flexible").candidates.map(({ scheme }) => scheme),
  calculator: [
    await line("rss(3 kn rms, 4 kn rms) to m/s rms"),
    await line("2 * 1 kn half at 9000 deg/s to mm/s half"),
    await line("20 dB re works velocity to nm/s rms"),
    await line('judge(3 mm/s rms, "flexible", "heating-works-fans")'),
  ],
  completed: ["3 k", "3 kn ha", "3 kn pk at 9000 d", "3 dB re w", 'judge(3 mm/s rms, "flexible", "heat'].map(
    (text) => completions(text, newSession())[0]),
  mathjs: [
    format(math.evaluate('amplitude("3 kn half at 9000 deg/s") to "mm/s half"')),
    math.evaluate("1 kn to m/s").toString(),
    math.evaluate("1 knt to m/s").toString(),
    math.evaluate("720 dps to Hz").toString(),
  ],
  sql: [
    toSql("kn pk", "m/s half", { column: "v" }),
    toSql("kn pk", "mm pk", { column: "v", at: { column: "turning", unit: "deg/s" } }),
    toSql("dB re works velocity", "nm/s rms", { column: "v" }),
    schemeToSql("heating-works-fans", "flexible", { column: "v", from: "mm/s rms" }),
  ],
  pages: Object.fromEntries(["units", "detectors", "frequencies", "level-references", "schemes", "scheme-heating-works-fans", "bibliography"]
    .map((name) => [name, files[name + ".md"] ?? ""])),
}));
`;
