import { orNothing, requireGiven, requirePositive, requireShape, type Shape, shown, VeladisError } from "../core/index";
import { amplitudeOf, isUncertain } from "../reading/index";
import type { CriterionJudgement, Judgement, Verdict } from "../severity/index";

const FORM = 'a verdict, as judge("4.9 mm/s rms", ...) returns';

/** The limits of a criterion, one less than the zones that they part. */
function limitsOf(count: number) {
  return (value: object, where: string): void => {
    requireShape(value, {}, where);
    const rows = Object.entries(value);
    if (rows.length === 0 || rows.length !== count - 1) {
      throw new VeladisError("length-mismatch", {
        expected: `${where}: one limit less than zones, of which there are ${count}`,
        received: `${rows.length}`,
      });
    }
    for (const [name, limit] of rows) requireShape(limit, limitShape, `${where} ${shown(name)}`);
  };
}

const aboveZero = (value: number, where: string): number => requirePositive(value, `${where}: a limit above zero`);

const limitShape: Shape = {
  as: "text",
  value: aboveZero,
  printed: { value: aboveZero },
  level: /* @__PURE__ */ orNothing({ decibels: "number" }),
};

function criterionShape(value: CriterionJudgement, where: string): void {
  requireShape(value, { quantity: "text", zones: ["text"], bound: "text" }, where);
  amplitudeOf(requireGiven(value.judged, `${where}: the reading that was judged`, { option: "judged" }));
  requireShape(value.limits, limitsOf(value.zones.length), `${where}: limits`);
}

function criteriaShape(value: readonly CriterionJudgement[], where: string): void {
  requireShape(value, [criterionShape], where);
  if (value.some(({ bound }) => bound !== "most")) return;
  throw new VeladisError("missing-fact", {
    expected: `${where}: one that says what the vibration is or is at least`,
    received: "none",
  });
}

const judgementShape = {
  kind: "text",
  scheme: "text",
  zone: "text",
  zones: ["text"],
  possible: ["text"],
  headline: "text",
  word: "text",
  assumed: ["text"],
  assumedFacts: ["text"],
  unjudged: [{}],
  cautions: ["text"],
  criteria: criteriaShape,
} as const satisfies Shape;

/** True for what the schemes for a machine say, not one of them alone. */
function isVerdict(one: Judgement | Verdict): one is Verdict {
  return "judgements" in one;
}

/** What one scheme says is a verdict of one scheme. */
function asVerdict(one: Judgement | Verdict): Verdict {
  return isVerdict(one) ? one : { ...one, judgements: [one], deciding: [] };
}

/** True for a judgement of a reading whose history has an uncertainty. */
function isOfUncertain({ criteria }: Judgement): boolean {
  return criteria.some(({ judged, bound }) => bound !== "most" && isUncertain(amplitudeOf(judged).history ?? []));
}

/**
 * A judgement or verdict as a verdict, if it is one on a reading with an uncertainty.
 *
 * @throws {@link VeladisError} `missing-fact` for a reading without one, `wrong-type` with the place that is wrong
 */
export function uncertainVerdict(given: Judgement | Verdict): Verdict {
  const known = requireGiven(given, FORM);
  if (typeof known === "object" && "governing" in known) {
    throw new VeladisError("wrong-type", {
      expected: "one verdict: that of governing, or of another of the points",
      received: "a verdict by several points",
    });
  }
  requireShape(known, judgementShape, "judgement");
  const verdict = asVerdict(known);
  requireShape(verdict, { judgements: [judgementShape], deciding: ["text"] }, "judgement");
  if (verdict.judgements.some(isOfUncertain)) return verdict;
  throw new VeladisError("missing-fact", {
    expected:
      'a verdict on a reading with its uncertainty, such as judge(parseUncertain("4.9 ± 0.3 mm/s rms (k=2)"), ...)',
    received: "one without",
  });
}
