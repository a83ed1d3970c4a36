import { withParameters } from "../core/index";
import { requireCondition } from "./check-condition";
import { type Fact, facts } from "./facts";
import { type Interval, intervalText } from "./interval";
import type { Condition, MachineClass } from "./scheme";

/** The labels that a condition on a word admits. */
export function labels(wanted: string | readonly string[]): readonly string[] {
  return typeof wanted === "string" ? [wanted] : wanted;
}

/** What tells a class from the others of its scheme: its labels, and where it has none the facts that decide. */
export function conditionOf({ named, by, when }: MachineClass): Condition {
  return { ...named, ...when, ...(named === undefined && by) };
}

/**
 * A condition on a machine in words.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, and whatever {@link defineScheme} says of a condition
 * @example
 * ```ts
 * import { conditionText } from "veladis/severity";
 *
 * conditionText({ group: "2", power: { above: 15, to: 300 }, support: "rigid" });
 * // => "group 2, power above 15 to 300 kW, support rigid"
 * ```
 */
export function conditionText(condition: Condition): string {
  return withParameters({ condition }, () => {
    requireCondition(condition, "the condition");
    return (Object.keys(condition) as Fact[])
      .map((fact) => {
        const entry = facts[fact];
        const wanted = condition[fact];
        if (!("unit" in entry)) return `${fact} ${labels(wanted as string).join(" or ")}`;
        const range = intervalText(wanted as Interval, entry.unit);
        return `${fact === "shaftHeight" ? "shaft height" : fact} ${range}`;
      })
      .join(", ");
  });
}
