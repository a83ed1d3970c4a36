import { type Fact, isNumberFact } from "./facts";
import { contains, type Interval } from "./interval";
import { labelKey } from "./label";
import { labels } from "./machine-class";
import type { Condition, MachineClass } from "./scheme";

function edges({ from, above, to, below }: Interval): number[] {
  return [from, above, to, below].filter((edge) => edge !== undefined);
}

/** True when a number lies in both ranges. Between their edges nothing changes, and where they touch two edges are one. */
function intervalsMeet(a: Interval, b: Interval): boolean {
  const single = a.oneOf ?? b.oneOf;
  if (single !== undefined) return single.some((value) => contains(a, value) && contains(b, value));
  const points = [-Number.MAX_VALUE, ...edges(a), ...edges(b), Number.MAX_VALUE].sort((x, y) => x - y);
  const between = points.slice(1).map((point, i) => (point + (points[i] as number)) / 2);
  return between.some((value) => contains(a, value) && contains(b, value));
}

/** True when a machine can meet both conditions. */
function conditionsMeet(a: Condition, b: Condition): boolean {
  return (Object.keys(a) as Fact[]).every((fact) => {
    const other = b[fact];
    if (other === undefined) return true;
    if (isNumberFact(fact)) return intervalsMeet(a[fact] as Interval, other as Interval);
    const others = labels(other as string).map(labelKey);
    return labels(a[fact] as string).some((label) => others.includes(labelKey(label)));
  });
}

/**
 * True when one machine can belong to both classes, by their labels or by the facts that decide. A bound of the one
 * parts them where the other needs that fact in any case: whoever belongs to the other has given it.
 */
export function classesMeet(a: MachineClass, b: MachineClass): boolean {
  if (!conditionsMeet({ ...a.when }, { ...b.within }) || !conditionsMeet({ ...b.when }, { ...a.within })) return false;
  const byLabel = conditionsMeet({ ...a.named, ...a.when }, { ...b.named, ...b.when });
  if (a.by === undefined || b.by === undefined) return byLabel;
  // classes without labels are told by the facts alone
  const named = a.named !== undefined && b.named !== undefined && byLabel;
  return named || conditionsMeet({ ...a.by, ...a.when }, { ...b.by, ...b.when });
}
