import { zoneRules } from "../../conformity/index";
import { requireChoice, VeladisError } from "../../core/index";
import type { ParsedOptions } from "../options/option-row";
import type { judgePage } from "./judge-page";

type Values = ParsedOptions<typeof judgePage.options>["values"];

/** Options that stand for one reading alone, refused beside several points. */
export function refuseOfOne(values: Values): void {
  if (values.since !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "one reading and its baseline, since each point has a baseline of its own",
      received: "--since with several points",
    });
  }
  if (values.uncertainty === undefined) return;
  throw new VeladisError("out-of-range", {
    expected:
      'one reading with its uncertainty; of several points, each with its own: "DE-H 3.1 ± 0.2 (k=2), DE-V 2.2 mm/s rms"',
    received: "--uncertainty with several points",
  });
}

/** What a rule asks for that the reading does not have, or the baseline cannot. */
export function requireFits(isKnown: boolean, { rule, since }: Values): void {
  if (isKnown && since !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "a reading without an uncertainty: whether a change is significant is told of best values alone",
      received: "--since with an uncertainty",
    });
  }
  if (rule !== undefined) requireChoice(rule, Object.keys(zoneRules), "a decision rule");
  if (isKnown || rule !== "guard band") return;
  throw new VeladisError("missing-fact", {
    expected: 'a reading with its uncertainty, such as "4.9 ± 0.3 mm/s rms (k=2)", for --rule',
    received: "one without",
  });
}
