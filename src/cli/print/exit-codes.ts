/** Exit codes of the command. */
export const exitCodes = { done: 0, refused: 2 } as const;
