import { provenanceShape, requireGiven, requireShape, shown, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import type { Judgement } from "../severity/index";

function limitsShape(value: unknown, where: string): void {
  if (typeof value !== "object" || value === null || Object.keys(value).length === 0) {
    throw new VeladisError("wrong-type", {
      expected: `${where}: limits by name`,
      received: shown(value),
    });
  }
  for (const [name, limit] of Object.entries(value)) {
    requireShape(limit, { name: "text", printed: { value: "number" } }, `${where} ${shown(name)}`);
  }
}

/** What is shown of the other schemes of a verdict. */
const verdictPart = {
  headline: "text",
  standard: "text",
  edition: "text",
  measuredOn: "text",
  assumedFacts: ["text"],
} as const;

const verdictShape = { judgements: [verdictPart], deciding: ["text"] } as const;

/**
 * The judgement itself if it is one, as far as a chart draws it.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type` with the place that is wrong
 */
export function requireJudgement(judgement: Judgement): Judgement {
  requireGiven(judgement, 'a judgement, as classify("3.9 mm/s rms", ...) returns', { option: "judgement" });
  if (typeof judgement === "object" && "governing" in judgement) {
    throw new VeladisError("wrong-type", {
      expected: "one judgement: give governing.verdict, or the verdict of another of the points",
      received: "a verdict by several points",
    });
  }
  const shape = {
    headline: "text",
    kind: "text",
    zone: "text",
    possible: ["text"],
    zones: ["text"],
    word: "text",
    judged: (value: Amplitude, where: string) =>
      amplitudeOf(requireGiven(value, `${where}: the reading that was judged`)),
    limits: limitsShape,
    standard: "text",
    edition: "text",
    bound: "text",
    provenance: provenanceShape,
    verified: "truth",
    confirmed: ["text"],
    differences: ["text"],
    assumed: ["text"],
    assumedFacts: ["text"],
    setAside: ["text"],
    cautions: ["text"],
    unjudged: [{ as: "text", because: "text" }],
    criteria: [{}],
  } as const satisfies { readonly [Name in keyof Judgement]?: unknown };
  requireShape(judgement, shape, "judgement");
  if ("judgements" in judgement) requireShape(judgement, verdictShape, "judgement");
  return judgement;
}
