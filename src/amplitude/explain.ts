import { requireGiven, shown, VeladisError, visibleText, withParameters } from "../core/index";
import { amplitudeOf, historyOf } from "../reading/index";
import type { ExplainedStep } from "./conversion-steps";
import { explainedSteps } from "./explained-steps";
import { explainedText } from "./explained-text";
import { historiesIn, ownHistoryOf } from "./histories-in";

/** What lines of an explanation come to. */
export interface ExplainedResult {
  /** Where it stands in the answer, such as `"trip.reset"`; empty for the answer itself. */
  readonly place: string;
  /** The line that it is the value of, by its place. */
  readonly step: number;
}

/** The arithmetic that led to an answer, line by line. */
export interface Explanation {
  readonly steps: readonly ExplainedStep[];
  /** What they come to: the answer, or each amplitude of an answer that is made of several. */
  readonly results: readonly ExplainedResult[];
  /** The same as text, one line a step; each of several results below its place. */
  readonly text: string;
}

const FORM = "an answer with its history, or one made of such";

/**
 * The steps that led to an answer, with their numbers: what was given, what it was multiplied with or divided by, what
 * was assumed. They are arithmetic, not words: whoever carries them out comes to the answer.
 *
 * @param answer - a reading in words, an amplitude, anything that has a `history`, such as a judgement, or an answer made of
 *   such: a proposal, a bench plan, a list of events. Of those each amplitude is told, by its place; one that is a step on
 *   the way to another is told there
 * @returns the lines as data (`operation` on the lines `of`, with `by`, comes to `value`) and as text
 * @throws {@link VeladisError} `missing-fact` for what holds no amplitude, `out-of-range` for a step that does not come to its value, and as
 *   {@link parseAmplitude}
 * @example
 * ```ts
 * import { convertAmplitude } from "veladis";
 * import { explain } from "veladis/explain";
 *
 * const { text, steps } = explain(convertAmplitude("0.25 in/s pk", "mm/s rms"));
 * text.split("\n");
 * // => ["0.25 in/s pk", "0.25 in/s pk x 25.4 = 6.35 mm/s pk", "6.35 mm/s pk / 1.414 = 4.49 mm/s rms  (one sine)"]
 * steps.at(-1)?.assumed; // => ["sine"]
 * ```
 */
export function explain(answer: string | object): Explanation {
  return withParameters({ answer }, () => {
    const known = requireGiven(answer, FORM, { parameter: "answer" });
    const way = typeof known === "object" ? ownHistoryOf(known) : historyOf(amplitudeOf(known));
    if (way !== undefined) {
      const steps = explainedSteps(way);
      return { steps, results: [{ place: "", step: steps.length - 1 }], text: explainedText(steps) };
    }
    const parts = historiesIn(known as object);
    // of events without a level nothing was reckoned; a list of nothing holds no answer at all
    const isOfEvents = Array.isArray(known) && known.some((one) => typeof one === "object" && one !== null);
    if (parts.length === 0 && !isOfEvents) {
      throw new VeladisError("missing-fact", { expected: FORM, received: shown(known), parameter: "answer" });
    }
    const steps: ExplainedStep[] = [];
    const results: ExplainedResult[] = [];
    const blocks: string[] = [];
    for (const [place, history] of parts) {
      const lines = explainedSteps(history);
      const before = steps.length;
      steps.push(...lines.map((line) => ({ ...line, of: line.of.map((at) => before + at) })));
      results.push({ place, step: steps.length - 1 });
      blocks.push(`${visibleText(place)}\n${explainedText(lines)}`.replaceAll("\n", "\n  "));
    }
    return { steps, results, text: blocks.join("\n") };
  });
}
