import { requireChoice, VeladisError } from "../core/index";
import { type DecisionRule, decisionRules } from "./decision";

/**
 * The rule that decides a check: the one that is named, else guard band with any uncertainty and simple acceptance without.
 *
 * @throws {@link VeladisError} `unknown-option` for another rule, `missing-fact` for a guard band without an uncertainty
 */
export function decidingRule(rule: DecisionRule | undefined, isUncertain: boolean): DecisionRule {
  if (rule === undefined) return isUncertain ? "guard band" : "simple acceptance";
  requireChoice(rule, Object.keys(decisionRules), "a decision rule", { parameter: "rule" });
  if (rule === "guard band" && !isUncertain) {
    throw new VeladisError("missing-fact", {
      expected:
        'the expanded uncertainty (k = 2) of the known level, such as "2 % (k=2)", which the guard band is made of',
      received: "nothing",
      option: "uncertainty",
    });
  }
  return rule;
}
