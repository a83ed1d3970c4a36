/** What is kept of rows' texts: many. */
export const rowCache = { room: 4096 } as const;
