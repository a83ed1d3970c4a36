import { choice, frozen, list, positive } from "../core/index";

/** What a conversion can assume, and what that means. */
export const assumptions = /* @__PURE__ */ frozen({
  sine: "peak, RMS and average are related as for one sine wave (peak = 1.414 x RMS = 1.571 x average)",
  "crest-factor": "peak and RMS are related by the stated crest factor",
  "one-frequency":
    "all of the vibration is one sine at the stated frequency; an overall of several is converted wrongly",
} as const);

/** Something a conversion assumed: a key of {@link assumptions}. */
export type Assumption = keyof typeof assumptions;

const words: Readonly<Record<Assumption, string>> = {
  sine: "sine",
  "crest-factor": "crest factor",
  "one-frequency": "one frequency",
};

/**
 * What an answer assumed, in the brackets that stand behind it; empty when it is nothing.
 *
 * @example
 * ```ts
 * import { assumedText, convertAmplitude } from "veladis";
 *
 * assumedText(convertAmplitude("1 in/s pk at 25 Hz", "um rms")); // => "(one frequency, sine)"
 * assumedText(convertAmplitude("2 g rms", "g pk", { crestFactor: 4 })); // => "(crest factor 4)"
 * assumedText(convertAmplitude("1 in/s pk", "mm/s pk")); // => ""
 * ```
 */
export function assumedText(answer: {
  readonly assumed: readonly Assumption[];
  readonly crestFactor?: number;
}): string {
  const names = Object.keys(words) as Assumption[];
  const texts = list(answer?.assumed, "what was assumed").map((one) =>
    choice(one, names, "what was assumed") === "crest-factor"
      ? `${words[one]} ${positive(answer.crestFactor as number, "a crest factor (peak over RMS) of 1 or more")}`
      : words[one],
  );
  return texts.length === 0 ? "" : `(${texts.join(", ")})`;
}
