/**
 * The limits over the root of the speed that ISO 7919-3 and its relatives share: 4800, 9000 and 13 200 over root n, um
 * peak-to-peak, n in r/min.
 */
export const over4800 = { rootOf: 23_040_000 } as const;
export const over9000 = { rootOf: 81_000_000 } as const;
export const over13200 = { rootOf: 174_240_000 } as const;
