import { type Provenance, provenances } from "../../core/index";
import type { LimitCount } from "../../severity/index";

/** `14 MEMORY, 10 quoted`: how many limits are known in which way, the worst known first. */
export function countsText(count: LimitCount): string {
  return (Object.keys(provenances) as Provenance[])
    .filter((one) => count[one] > 0)
    .map((one) => `${count[one]} ${provenances[one].cell}`)
    .join(", ");
}
