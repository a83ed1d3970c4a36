import type { Source } from "../../core/index";

/** The limits over the root of the speed that ISO 7919-3 and its relatives share: 4800, 9000 and 13200 over root n, um peak-to-peak. */
export function overRootSpeed(source: Source) {
  const limits = {
    "A/B": { rootOf: 4800 ** 2 },
    "B/C": { rootOf: 9000 ** 2 },
    "C/D": { rootOf: 13200 ** 2 },
  } as const;
  return { as: "um pp", limits, source } as const;
}
