/** Exit codes of the command. `closed` is what a shell tells of a program whose reader went away: 128 and SIGPIPE. */
export const exitCodes = { done: 0, reached: 1, refused: 2, closed: 141 } as const;
