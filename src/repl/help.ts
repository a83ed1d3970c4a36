import { frozen, shown, unknownName, VeladisError } from "../core/index";
import { detectorFacts } from "../detectors/index";
import { frequencyUnitFacts } from "../frequency/index";
import { assumptions, levelReferences } from "../reading/index";
import { builtInSchemes } from "../severity/index";
import { unitFacts } from "../units/index";
import { bounds } from "./bounds";
import { type CalculatorFunction, functions, numberFunctions } from "./functions";

function rows(entries: readonly (readonly [string, string])[]): string {
  const width = Math.max(...entries.map(([name]) => name.length));
  return entries.map(([name, text]) => `  ${name.padEnd(width)}  ${text}`).join("\n");
}

const named = (facts: Readonly<Record<string, { readonly name: string }>>): string =>
  rows(Object.entries(facts).map(([symbol, { name }]) => [symbol, name]));

/** What each topic of the help says. To add one, add its row here and nowhere else. */
export const topics = /* @__PURE__ */ frozen({
  lines: () =>
    [
      "A line is a reading or an expression, with a name in front and types behind if you like:",
      "",
      rows([
        ["0.25 in/s pk at 1500 r/min to mm/s rms", "a reading, converted"],
        ["a = 0.25 in/s pk at 1500 r/min", "a variable"],
        ["a * 1.25 to mm/s rms, mil pp", "arithmetic, then two types"],
        ["last / 2", "the last answer"],
        ["2 g rms with crest factor 4 to g pk", "a stated crest factor"],
        ["a > 0.2 in/s pk", "a comparison"],
        ["explain a to mm/s rms", "the arithmetic behind an answer"],
      ]),
      "",
      "A line that ends within brackets or with an operator goes on in the next.",
    ].join("\n"),
  arithmetic: () =>
    [
      "Amplitudes of one quantity, one detector and one frequency add and subtract; an amplitude times or over a number",
      "is an amplitude; one over another is a number. Peak and RMS never mix: convert one of them first, on a line of",
      "its own (c2 = c to g rms), since to stands only at the end of a line. RMS readings of different frequencies go",
      "together by rss.",
      "",
      "A sum or difference takes its readings to rise and fall together, and says so: (in phase); and (one frequency)",
      "where not both say theirs. A sum shows the root of the sum of squares beside, which it is where its readings have",
      "nothing to do with one another; a difference, the most that it may be. rss takes them so: (uncorrelated). What an",
      "answer assumed stays with it, in variables, lists and last too.",
      "",
      "Levels in dB do not add: rss(a, b) puts them together. The difference of two levels with one reference is a number",
      "of dB. A reading plus or minus a number of dB is a ratio: 4.5 mm/s rms + 6 dB. Numbers of dB add, subtract and",
      "compare with one another, and are multiplied by a number.",
      "",
      "Comparisons have the tolerance that they have for numbers.",
      "",
      "Plain numbers and truths carry nothing on: a ratio of amplitudes, value(a), hertz(a) and a comparison. A comparison",
      "prints what its amplitudes had assumed, once; a number does not. Look at the amplitudes before relying on either.",
    ].join("\n"),
  explain: () =>
    [
      "explain before an expression prints the arithmetic that led to its answer, a line a step, with what",
      "each assumed:",
      "",
      rows([
        ["explain 0.25 in/s pk to mm/s rms", "of a conversion"],
        ["explain a", "of a variable, with the steps of the lines before"],
        ['explain judge(a, "class II")', "of what was made of an amplitude"],
      ]),
      "",
      "The answer itself is the last answer, as without explain. Numbers keep no steps.",
    ].join("\n"),
  functions: () =>
    `${rows((Object.values(functions) as CalculatorFunction[]).map(({ usage, help }) => [usage, help]))}\n\nof numbers: ${numberFunctions.join(", ")}; constants pi, tau, e`,
  units: () => named(unitFacts),
  detectors: () => named(detectorFacts),
  frequencies: () => `${named(frequencyUnitFacts)}\n\norders of a shaft speed: 2x 1500 r/min`,
  levels: () =>
    `dB re a value and a unit (dB re 1e-9 m/s), or a published reference by name:\n\n${rows(
      Object.entries(levelReferences).map(([name, { value, unit }]) => [`dB re ${name}`, `${value} ${unit}`]),
    )}`,
  schemes: () =>
    `A scheme is a published table of limits.\n\n${rows(builtInSchemes.map(({ id, standard, edition }) => [id, `${standard} (${edition})`]))}`,
  assumptions: () => rows(Object.entries(assumptions)),
  bounds: () =>
    `A line has at most ${bounds.length} characters, brackets ${bounds.depth} deep and ${bounds.nodes} parts; a session ${bounds.variables} variables.`,
} as const satisfies Record<string, () => string>);

/** The page that `help` prints. */
function overview(): string {
  return [
    topics.lines(),
    "",
    `help <topic>: ${Object.keys(topics).join(", ")}, or a function`,
    "names lists the variables, exit ends.",
  ].join("\n");
}

/**
 * The help on a topic or a function, or the overview.
 *
 * @param topic - a topic that the overview names, or a function; the overview if it is empty
 * @example
 * ```ts
 * import { helpText } from "veladis/mathjs";
 *
 * helpText("rss");
 * // => "rss(2.1 mm/s rms, 0.8 mm/s rms)\n  root of the sum of squares of uncorrelated RMS readings, also of different frequencies; levels in dB too, as in rss(a, b) to dB re 1e-9 m/s"
 * helpText("rrs"); // throws unknown-option
 * ```
 *
 * @throws {@link VeladisError} `unknown-option` with the nearest topics
 */
export function helpText(topic = ""): string {
  if (typeof topic !== "string") {
    throw new VeladisError("wrong-type", {
      expected: "a topic of the help, or a function",
      received: shown(topic),
      parameter: "topic",
    });
  }
  const name = topic.trim().toLowerCase();
  if (name === "") return overview();
  if (Object.hasOwn(topics, name)) return topics[name as keyof typeof topics]();
  if (Object.hasOwn(functions, name)) {
    const { usage, help } = functions[name as keyof typeof functions];
    return `${usage}\n  ${help}`;
  }
  const all = new Map([...Object.keys(topics), ...Object.keys(functions)].map((one) => [one, one]));
  throw Object.assign(unknownName("unknown-option", "a topic of the help, or a function", topic, [all, topics]), {
    parameter: "topic",
  });
}
