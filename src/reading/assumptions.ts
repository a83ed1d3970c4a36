import { frozen, requireChoice, requireGiven, requireList, requirePositive, withParameters } from "../core/index";

/** What an answer about an amplitude can assume, and what that means. To add one, add its row here and below. */
export const assumptions = /* @__PURE__ */ frozen({
  sine: "peak, RMS and average are related as for one sine wave (peak = 1.414 x RMS = 1.571 x average)",
  "crest-factor": "peak and RMS are related by the stated crest factor",
  "one-frequency":
    "all of the vibration is one sine at the stated frequency; an overall of several is converted wrongly",
  "in-phase": "the vibrations rise and fall together; with a phase between them the sum or difference is another",
  uncorrelated: "the vibrations have nothing to do with one another, so that their squares add",
  gaussian: "the peak is a stated number of standard deviations of a Gaussian vibration",
  independent: "the uncertainties of the inputs have nothing to do with one another",
} as const);

/** Something an answer assumed: a key of {@link assumptions}. */
export type Assumption = keyof typeof assumptions;

const words: Readonly<Record<Assumption, string>> = {
  sine: "sine",
  "crest-factor": "crest factor",
  "one-frequency": "one frequency",
  "in-phase": "in phase",
  uncorrelated: "uncorrelated",
  gaussian: "Gaussian",
  independent: "independent inputs",
};

/** The names of all assumptions. */
export const assumptionNames = /* @__PURE__ */ Object.keys(words) as readonly Assumption[];

/** The assumption that words say as {@link assumedText} writes it; undefined where they say none. */
export function assumptionOf(written: string): Assumption | undefined {
  const plain = written.trim().toLowerCase();
  if (/^crest factor(s| [\d.]+(e[+-]?\d+)?)$/.test(plain)) return "crest-factor";
  return assumptionNames.find((name) => name !== "crest-factor" && words[name].toLowerCase() === plain);
}

/** An answer that says what it assumed. */
export interface Assuming {
  readonly assumed?: readonly Assumption[];
  readonly crestFactor?: number;
  readonly history?: unknown;
}

/** Which crest factor was stated; where answers by several were put together, the steps say them. */
function crestFactorText({ crestFactor, history }: Assuming): string {
  if (crestFactor === undefined && history !== undefined) return "crest factors";
  return `crest factor ${requirePositive(crestFactor as number, "a crest factor (peak over RMS) of 1 or more", { option: "crestFactor" })}`;
}

/**
 * What an answer assumed, in the brackets that stand behind it; empty when it is nothing.
 *
 * @throws {@link VeladisError} `missing-fact`, `wrong-type`, `unknown-option`, `not-positive` for the crest factor
 * @example
 * ```ts
 * import { assumedText, convertAmplitude } from "veladis";
 *
 * assumedText(convertAmplitude("1 in/s pk at 25 Hz", "um rms")); // => "(one frequency, sine)"
 * assumedText(convertAmplitude("2 g rms", "g pk", { crestFactor: 4 })); // => "(crest factor 4)"
 * assumedText(convertAmplitude("1 in/s pk", "mm/s pk")); // => ""
 * ```
 */
export function assumedText(answer: Assuming): string {
  return withParameters({ answer }, () => {
    const texts = requireList(requireGiven(answer, "what was assumed").assumed ?? [], "what was assumed", {
      option: "assumed",
    }).map((one, index) => {
      const name = requireChoice(one, assumptionNames, "what was assumed", { option: "assumed", index });
      return name === "crest-factor" ? crestFactorText(answer) : words[name];
    });
    return texts.length === 0 ? "" : `(${texts.join(", ")})`;
  });
}
