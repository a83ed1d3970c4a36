/** What is kept of rows' texts: many, and refusals too, since a million rows may share one bad unit. */
export const rowCache = { room: 4096, refusals: true } as const;
