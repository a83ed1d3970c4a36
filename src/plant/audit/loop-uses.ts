import { loopUse } from "../../device/index";
import type { Amplitude } from "../../reading/index";
import type { AuditCase } from "./audit-case";

/** What a loop makes of a level, as it reads the highest and the lowest that the running speed makes of it. */
export function loopUses(level: Amplitude, range: string, { speeds }: AuditCase) {
  return (speeds.length === 0 ? [undefined] : speeds).map((hertz) =>
    loopUse(level, range, hertz === undefined || level.hertz !== undefined ? undefined : { at: { hertz } }),
  );
}
