import { frozen } from "../../core/index";
import { alarmRules } from "./alarm-rules";
import type { AuditRule, CheckedRule } from "./audit-rule";
import { baselineRules } from "./baseline-rules";
import { checkRules } from "./check-rules";
import { delayRules } from "./delay-rules";
import { factsRules } from "./facts-rules";
import { failureRules } from "./failure-rules";
import { limitsRules } from "./limits-rules";
import { protectionRules } from "./protection-rules";
import { signalRules } from "./signal-rules";
import { startRules } from "./start-rules";
import { tripRules } from "./trip-rules";

/** All groups of rules, in the order in which findings as severe are told. To add a rule, add its row to a group. */
function allRules() {
  return frozen({
    ...protectionRules(),
    ...tripRules(),
    ...alarmRules(),
    ...signalRules(),
    ...factsRules(),
    ...limitsRules(),
    ...baselineRules(),
    ...delayRules(),
    ...startRules(),
    ...checkRules(),
    ...failureRules(),
  });
}

/** The code of a rule: the key of its row. */
export type AuditCode = keyof ReturnType<typeof allRules>;

const checked: Readonly<Record<AuditCode, CheckedRule>> = /* @__PURE__ */ allRules();

/** The rules of the audit by code: how severe what they find is, what they look for, why, by which source, what would mend it. */
export const auditRules: Readonly<Record<AuditCode, AuditRule>> = checked;

/** The rules with their codes, in their order. */
export function rulesInOrder(): readonly (readonly [code: AuditCode, rule: CheckedRule])[] {
  return Object.entries(checked) as readonly (readonly [AuditCode, CheckedRule])[];
}
