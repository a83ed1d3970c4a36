/** What stands as the source of a rule of the trade that no publication is named for. */
export const PRACTICE = "common practice, no source";
